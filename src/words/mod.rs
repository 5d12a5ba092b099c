//! All text for people: American, short, plain and calm, as it is read at 3 a.m.
//!
//! Words know what the core's types mean and nothing of how or where they are shown.

pub(crate) mod ahead;
pub(crate) mod animals;
pub(crate) mod bag;
pub(crate) mod bottle_round;
pub(crate) mod cautions;
pub(crate) mod chill;
pub(crate) mod cold_lamb;
pub(crate) mod common;
pub(crate) mod danger;
pub(crate) mod errors;
pub(crate) mod ewe;
pub(crate) mod ewes_in;
pub(crate) mod feed;
pub(crate) mod figures;
pub(crate) mod flock;
pub(crate) mod frame;
pub(crate) mod group;
pub(crate) mod growth;
pub(crate) mod hand_over;
pub(crate) mod help;
pub(crate) mod keep;
pub(crate) mod kit;
pub(crate) mod labor;
pub(crate) mod lamb;
pub(crate) mod lambing;
pub(crate) mod life;
#[cfg(test)]
mod limits_told;
pub(crate) mod marking;
pub(crate) mod medicines;
pub(crate) mod more;
pub(crate) mod night;
pub(crate) mod noted;
pub(crate) mod pens;
pub(crate) mod powder;
pub(crate) mod practice;
pub(crate) mod race;
pub(crate) mod refusals;
pub(crate) mod season;
pub(crate) mod spreadsheet;
pub(crate) mod stores;
pub(crate) mod watch;
pub(crate) mod weaning;
pub(crate) mod weighing;
pub(crate) mod why;
pub(crate) mod year;
