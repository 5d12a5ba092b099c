//! The core by its public face.

mod book;
mod bring;
mod calendar;
mod flock;
mod handbook;
mod nights;
mod rooms;
mod scribe;
mod seasons;
mod sort_small;
mod spreadsheet;
mod tags;
mod typed;
mod units;
mod watch;
