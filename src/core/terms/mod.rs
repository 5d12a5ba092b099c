//! The trade's own words as closed lists: what a fact in the book chooses from, and what a calculation speaks of.
//!
//! They stand beneath both, so that a sign in the book is the sign of which a handbook prints a figure, with nothing to
//! turn one into the other. None holds an animal of this farm. A list that one fact alone knows stands beside it in
//! `book`. The book's file writes them by the names given here: an arm is never renamed in it, only added.

mod birth;
mod cull;
mod illness;
mod lamb;
mod milk;
mod pen;
mod ram;
mod spread;
mod store;

pub use birth::{Found, LambingEase, Part, Presentation, Sign};
pub use cull::CullReason;
pub use illness::{Change, EweSign, EweStage, Gate, LambSign, Onset, UdderHalf};
pub use lamb::{Belly, Cause, Mouth, Ring, Sex, Suck, VigorScale};
pub use milk::{Milk, Way};
pub use pen::PenSize;
pub use ram::RamAge;
pub use spread::Spread;
pub use store::{Item, Measure};
