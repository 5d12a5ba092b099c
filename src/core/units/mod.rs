//! Quantities that never travel without their unit: one file each, SI inside, both systems at the edges.

mod bounds;
mod length;
mod mass;
mod moment;
mod quantity;
mod system;
mod temperature;
mod typed;
mod volume;

pub use bounds::{Bounds, OutOfBounds, Why};
pub use chrono::TimeDelta;
pub use length::Length;
pub use mass::Mass;
pub use moment::{Moment, MomentError};
pub use system::System;
pub use temperature::{NotInALamb, Temperature};
pub use typed::{TypedError, parse_number};
pub use volume::Volume;
