//! The core by its public face.

mod book;
mod flock;
mod handbook;
mod scribe;
mod units;
mod watch;
