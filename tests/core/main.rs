//! The core by its public face.

mod book;
mod handbook;
mod scribe;
mod units;
