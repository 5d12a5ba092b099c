//! The core by its public face.

mod arrange;
mod book;
mod calendar;
mod figures;
mod flock;
mod handbook;
mod nights;
mod rooms;
mod scribe;
mod spreadsheet;
mod tags;
mod typed;
mod units;
mod watch;
