//! What the handbooks say: one published calculation a file, each with its bounds, its reasons and its sources.
//!
//! A calculation is a pure function. It knows no book and no flock, so that a figure can be had without any record.

pub mod adjusted_weight;
pub mod birth_weight;
pub mod body_temperature;
pub mod bottle;
pub mod chill;
pub mod cold_lamb;
pub mod colostrum;
pub mod feeds;
pub mod fisher;
pub mod flock_figures;
pub mod gain;
pub mod growth;
pub mod illness;
pub mod labor;
pub mod losses;
pub mod marking;
pub mod mature_weight;
pub mod mixing;
pub mod navel;
pub mod passive_transfer;
pub mod pen_stay;
pub mod powder;
pub mod quality;
pub mod season;
pub mod survival;
pub mod ten_point;
pub mod tube;
pub mod vigor;
pub mod warming;
pub mod weaning;
pub mod window;
pub mod withholding;

mod cited;
mod per_kilogram;

pub use crate::units::Strength;
pub use per_kilogram::PerKilogram;

use crate::source::Source;

/// Names one calculation, so that its sources can be listed under a heading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// How much colostrum.
    Colostrum,
    /// How long colostrum works.
    Window,
    /// How often, and how much is too much.
    Feeds,
    /// How good colostrum is, and how long it keeps.
    Quality,
    /// How much a bottle lamb takes.
    Bottle,
    /// What a birth weight means.
    BirthWeight,
    /// How lively a newborn is.
    Vigor,
    /// How long labor may take.
    Labor,
    /// How long a pair stays in its pen.
    PenStay,
    /// What a lamb's temperature means.
    BodyTemperature,
    /// What to do with a cold lamb, in order.
    ColdLamb,
    /// How a cold lamb is warmed, and when it is looked at again.
    Warming,
    /// What antibody in a lamb's serum suggests.
    PassiveTransfer,
    /// How lively a newborn is, on the ten-point score.
    TenPoint,
    /// Whether the weather chills lambs.
    Chill,
    /// Whether a lamb may be fed by tube.
    Tube,
    /// How powder is mixed.
    Mixing,
    /// How much powder until weaning.
    Powder,
    /// Whether a bottle lamb can be weaned.
    Weaning,
    /// When a navel is dipped.
    Navel,
    /// Rings, tags, and the clostridial vaccine.
    Marking,
    /// How a lamb grows to eight weeks.
    Growth,
    /// How fast a lamb grew between two weights.
    Gain,
    /// What a lamb would weigh at a set age, were it like the others.
    AdjustedWeight,
    /// Until when meat or milk of a treated animal may not be used.
    Withholding,
    /// A season in figures.
    FlockFigures,
    /// Whether two rams differ by more than chance.
    Fisher,
    /// When lambs are lost.
    Losses,
    /// How many lambs of a birth weight live.
    Survival,
    /// What stands above the tables of illness.
    Illness,
    /// A ewe that is not right.
    EweIllness,
    /// A lamb that is not right.
    LambIllness,
    /// The udder after lambing.
    Udder,
    /// Without a thermometer.
    ByHand,
    /// How dry a lamb is, and its fluids.
    Fluids,
    /// What a ketone reading means.
    Ketones,
    /// What goes round in a flock.
    Spread,
}

/// Returns every source of every calculation, in the order in which a lamb meets them.
///
/// ```
/// use yeanling_core::reckon::all_sources;
/// assert!(all_sources().iter().all(|(_, sources)| !sources.is_empty()));
/// ```
#[must_use]
pub fn all_sources() -> Vec<(Subject, &'static [Source])> {
    vec![
        (Subject::Colostrum, colostrum::SOURCES),
        (Subject::Window, window::SOURCES),
        (Subject::Feeds, feeds::SOURCES),
        (Subject::Quality, quality::SOURCES),
        (Subject::Bottle, bottle::SOURCES),
        (Subject::BirthWeight, birth_weight::SOURCES),
        (Subject::Vigor, vigor::SOURCES),
        (Subject::Labor, labor::SOURCES),
        (Subject::PenStay, pen_stay::SOURCES),
        (Subject::BodyTemperature, body_temperature::SOURCES),
        (Subject::ColdLamb, cold_lamb::SOURCES),
        (Subject::Warming, warming::SOURCES),
        (Subject::PassiveTransfer, passive_transfer::SOURCES),
        (Subject::TenPoint, ten_point::SOURCES),
        (Subject::Chill, chill::SOURCES),
        (Subject::Tube, tube::SOURCES),
        (Subject::Mixing, mixing::SOURCES),
        (Subject::Powder, powder::SOURCES),
        (Subject::Weaning, weaning::SOURCES),
        (Subject::Navel, navel::SOURCES),
        (Subject::Marking, marking::SOURCES),
        (Subject::Growth, growth::SOURCES),
        (Subject::Gain, gain::SOURCES),
        (Subject::AdjustedWeight, adjusted_weight::SOURCES),
        (Subject::Withholding, withholding::SOURCES),
        (Subject::FlockFigures, flock_figures::SOURCES),
        (Subject::Fisher, fisher::SOURCES),
        (Subject::Losses, losses::SOURCES),
        (Subject::Survival, survival::SOURCES),
        (Subject::Illness, illness::SOURCES),
        (Subject::EweIllness, illness::ewe::SOURCES),
        (Subject::LambIllness, illness::lamb::SOURCES),
        (Subject::Udder, illness::udder::SOURCES),
        (Subject::ByHand, illness::by_hand::SOURCES),
        (Subject::Fluids, illness::fluids::SOURCES),
        (Subject::Ketones, illness::ketones::SOURCES),
        (Subject::Spread, illness::spread::SOURCES),
    ]
}
