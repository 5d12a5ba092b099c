//! Quantities that never travel without their unit: one file each, SI inside, both systems at the edges.

mod amount;
mod bounds;
mod brix;
mod condition;
mod ketones;
mod length;
mod mass;
mod moment;
mod offered;
mod quantity;
mod rain;
mod speed;
mod strength;
mod system;
mod tags;
mod temperature;
mod typed;
mod volume;

pub use amount::Amount;
pub use bounds::{BoundFor, Bounds, OutOfBounds};
pub use brix::Brix;
pub use chrono::{NaiveDate, NaiveDateTime, NaiveTime, TimeDelta};
pub use condition::Condition;
pub use ketones::Ketones;
pub use length::Length;
pub use mass::Mass;
pub use moment::{Moment, MomentError};
pub use rain::Rain;
pub use speed::Speed;
pub use strength::Strength;
pub use system::System;
pub use tags::{MOST_TAGS, TagList, Unread, parse_tags};
pub use temperature::{NotInALamb, Temperature};
pub use typed::{TypedError, UnitPair, parse_number};
pub use volume::Volume;
