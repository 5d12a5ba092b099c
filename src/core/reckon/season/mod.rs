//! The season ahead: from ram in to dates, nights, pens, feed and a shopping list.
//!
//! A day is counted from ram in: day 0 is the day he went in. A night is a date, from midnight to midnight.

pub mod bounds;
pub mod breeding;
pub mod budget;
pub mod conception;
pub mod condition;
pub mod cycles;
pub mod dates;
pub mod ewe;
pub mod feed_groups;
pub mod feed_steps;
pub mod forecast;
pub mod gestation;
pub mod litters;
pub mod mating;
pub mod minerals;
pub mod pens;
pub mod ration;
pub mod requirement;
pub mod shopping;
pub mod water;

mod chances;
mod common;
mod days;
mod matings;
mod run;

use crate::source::Source;

/// Names one calculation of the season, so that its sources can be listed under a heading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// How long a ewe carries.
    Gestation,
    /// When a ram is with his ewes.
    Mating,
    /// How a group holds cycle by cycle.
    Cycles,
    /// Whether ewes are mated in their season.
    Breeding,
    /// The flock's own share that holds.
    Conception,
    /// How many lambs a lambing brings.
    Litters,
    /// How many births to expect each night.
    Forecast,
    /// When one ewe will lamb.
    Ewe,
    /// How many bonding pens will be wanted.
    Pens,
    /// The dates of a season.
    Dates,
    /// How a new feed is brought in.
    FeedSteps,
    /// Extra feed by group.
    FeedGroups,
    /// What a ewe's condition should be.
    Condition,
    /// What a ewe needs in a day.
    Requirement,
    /// What feeds give her.
    Ration,
    /// Copper and selenium.
    Minerals,
    /// Hay and grain.
    Budget,
    /// Water and trough.
    Water,
    /// What to have in the house.
    Shopping,
}

/// Returns every source of every calculation of the season, in the order of the season.
///
/// ```
/// use yeanling_core::reckon::season::all_sources;
/// assert!(all_sources().iter().all(|(_, sources)| !sources.is_empty()));
/// ```
#[must_use]
pub fn all_sources() -> Vec<(Subject, &'static [Source])> {
    vec![
        (Subject::Gestation, gestation::SOURCES),
        (Subject::Mating, mating::SOURCES),
        (Subject::Cycles, cycles::SOURCES),
        (Subject::Breeding, breeding::SOURCES),
        (Subject::Conception, conception::SOURCES),
        (Subject::Litters, litters::SOURCES),
        (Subject::Forecast, forecast::SOURCES),
        (Subject::Ewe, ewe::SOURCES),
        (Subject::Pens, pens::SOURCES),
        (Subject::Dates, dates::SOURCES),
        (Subject::FeedSteps, feed_steps::SOURCES),
        (Subject::FeedGroups, feed_groups::SOURCES),
        (Subject::Condition, condition::SOURCES),
        (Subject::Requirement, requirement::SOURCES),
        (Subject::Ration, ration::SOURCES),
        (Subject::Minerals, minerals::SOURCES),
        (Subject::Budget, budget::SOURCES),
        (Subject::Water, water::SOURCES),
        (Subject::Shopping, shopping::SOURCES),
    ]
}
