//! What was noted, what is, what is due, and what the handbooks say: the whole of Yeanling but its face.
//!
//! The book makes the flock, the flock makes the watch and the season's figures; `reckon` stands beside them. There is no browser here, no
//! clock, no chance and no text for people: an instant or an id is always handed in. `calendar` writes plain alarms down,
//! `spreadsheet` plain tables; `sort_small` puts things in order for all, and `terms` are the trade's words beneath all but
//! the units.

#![warn(clippy::unwrap_used, clippy::wildcard_enum_match_arm)]

pub mod book;
pub mod bring;
pub mod calendar;
pub mod flock;
pub mod reckon;
mod sanitize;
pub mod seasons;
pub mod settings;
pub mod sort_small;
pub mod source;
pub mod spreadsheet;
pub mod terms;
pub mod units;
pub mod watch;
