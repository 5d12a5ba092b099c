//! When a navel is dipped: at birth in iodine of about 10%, and again some hours later.

use super::cited::{ours, seen};
use crate::source::Source;
use crate::units::TimeDelta;

/// How strong the iodine is, in percent (Sheep Veterinary Society).
pub const IODINE_PERCENT: u8 = 10;

/// How long after the first dip the second follows (FAS). Our default; the farm's own limit starts from it.
pub const AGAIN_AFTER: TimeDelta = TimeDelta::hours(6);

/// When others dip again: after 2 to 4 h, or after 12 h.
pub const OTHERS_AGAIN_AFTER: [(TimeDelta, TimeDelta); 2] =
    [(TimeDelta::hours(2), TimeDelta::hours(4)), (TimeDelta::hours(12), TimeDelta::hours(12))];

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Sheep Veterinary Society", "Iodine of about 10% at birth", None, ""),
    seen("FAS", "Again after about 6 h", None, ""),
    ours("The second dip is 6 h after the first; others say 2 to 4 h, or 12 h"),
];
