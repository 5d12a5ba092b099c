//! The season ahead: dates, nights, pens and feed against what is printed and against other people's arithmetic.
//!
//! Where a check names SciPy, its values came from SciPy 1.17.1; the script stands with the check.

mod bounds;
mod breeding;
mod budget;
mod conception;
mod condition;
mod cycles;
mod dates;
mod ewe;
mod feed_groups;
mod feed_steps;
mod forecast;
mod gestation;
mod laws;
mod litters;
mod marks;
mod mating;
mod minerals;
mod pens;
mod ration;
mod requirement;
mod shopping;
mod water;

use yeanling_core::reckon::season::cycles::Conception;
use yeanling_core::reckon::season::forecast::Group;
use yeanling_core::reckon::season::gestation::Gestation;
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::reckon::season::mating::Mating;
use yeanling_core::units::{NaiveDate, TimeDelta};

use super::near;

#[track_caller]
fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn days(days: i64) -> TimeDelta {
    TimeDelta::days(days)
}

fn p(share: f64) -> Conception {
    Conception::from_share(share).expect("a share")
}

fn gestation(mean: f64, spread: f64) -> Gestation {
    Gestation::from_days(mean, spread).expect("in bounds")
}

/// A ram in from this day on for so many days.
fn with_ram(ram_in: &str, for_days: i64) -> Mating {
    let ram_in = date(ram_in);
    Mating::new(ram_in, Some(ram_in + days(for_days - 1))).expect("in bounds")
}

/// Ewes put to the ram on this day for so many days, all else by the handbook.
fn group(ewes: u32, ram_in: &str, for_days: i64) -> Group {
    Group {
        ewes,
        mating: with_ram(ram_in, for_days),
        conception: Conception::default(),
        gestation: Gestation::default(),
        litters: Litters::default(),
    }
}
