//! All text for people: American, short, plain and calm, as it is read at 3 a.m.
//!
//! Words know what the core's types mean and nothing of how or where they are shown.

pub mod cautions;
pub mod common;
pub mod errors;
pub mod why;
