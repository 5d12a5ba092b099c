//! All text for people: American, short, plain and calm, as it is read at 3 a.m.
//!
//! Words know what the core's types mean and nothing of how or where they are shown.

pub mod animals;
pub mod bag;
pub mod bottle_round;
pub mod calculators;
pub mod cautions;
pub mod chill;
pub mod cold_lamb;
pub mod common;
pub mod cull_rules;
pub mod danger;
pub mod dry;
pub mod erase;
pub mod errors;
pub mod ewe;
pub mod ewes_in;
pub mod farm;
pub mod feed;
pub mod flock;
pub mod frame;
pub mod group;
pub mod growth;
pub mod help;
pub mod illness;
pub mod in_brief;
pub mod kit;
pub mod label;
pub mod labor;
pub mod lamb;
pub mod lambing;
pub mod life;
#[cfg(test)]
mod limits_told;
pub mod marking;
pub mod medicines;
pub mod night;
pub mod noted;
pub mod pens;
pub mod powder;
pub mod rejections;
pub mod rounds;
pub mod score_ewes;
pub mod season;
pub mod season_forecast;
pub mod settings;
pub mod setup;
pub mod share;
pub mod spreadsheet;
pub mod stores;
pub mod time;
pub mod vet;
pub mod watch;
pub mod weaning;
pub mod weighing;
pub mod why;
pub mod year;
