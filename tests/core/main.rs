//! The core by its public face.

mod book;
mod calendar;
mod flock;
mod handbook;
mod rooms;
mod scribe;
mod tags;
mod units;
mod watch;
