//! Published figures: every test opens with where its expected value was printed, and how that is known.

mod adjusted_weight;
mod birth_weight;
mod body_temperature;
mod bottle;
mod chill;
mod cold_lamb;
mod colostrum;
mod feeds;
mod fisher;
mod flock_figures;
mod gain;
mod growth;
mod illness;
mod labor;
mod laws;
mod losses;
mod marking;
mod mature_weight;
mod mixing;
mod navel;
mod passive_transfer;
mod pen_stay;
mod powder;
mod quality;
mod season;
mod sources;
mod survival;
mod ten_point;
mod tube;
mod vigor;
mod warming;
mod weaning;
mod window;
mod withholding;

use yeanling_core::units::{Mass, Temperature, TimeDelta, Volume};

fn kg(kilograms: f64) -> Mass {
    Mass::from_kilograms(kilograms)
}

fn ml(milliliters: f64) -> Volume {
    Volume::from_milliliters(milliliters)
}

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees)
}

fn hours(hours: f64) -> TimeDelta {
    let milliseconds = format!("{:.0}", hours * 3_600_000.0);
    TimeDelta::milliseconds(milliseconds.parse().expect("a whole number"))
}

/// Fails unless a volume is the expected one to a thousandth of a milliliter.
#[track_caller]
fn same_ml(volume: Volume, expected: f64) {
    let got = volume.as_milliliters();
    assert!((got - expected).abs() < 1e-3, "{got} ml, expected {expected} ml");
}

/// Fails unless a figure is the expected one within a tolerance.
#[track_caller]
fn near(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{got}, expected {expected} ± {tolerance}");
}
