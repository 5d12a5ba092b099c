//! The core by its public face.

mod book;
mod calendar;
mod figures;
mod flock;
mod handbook;
mod rooms;
mod scribe;
mod spreadsheet;
mod units;
mod watch;
