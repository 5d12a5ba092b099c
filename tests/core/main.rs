//! The core by its public face.

mod handbook;
mod units;
