//! How long a ewe and her lambs stay in a bonding pen, and how large the pen is.

use super::cited::{common, memory, ours, seen};
use crate::source::Source;
use crate::units::{Length, TimeDelta};

/// A single stays a day, twins two, triplets two to three (equipment firm's diary; Montana says 24 to 72 h).
pub const SINGLE: TimeDelta = TimeDelta::days(1);
/// See [`SINGLE`].
pub const TWINS: TimeDelta = TimeDelta::days(2);
/// See [`SINGLE`]; the longer of two to three days.
pub const TRIPLETS: TimeDelta = TimeDelta::days(3);

/// A thriving single may go out after a few hours; at most three days (common practice).
pub const AT_MOST: TimeDelta = TimeDelta::days(3);

/// Pens as printed, in feet, by the size of the ewe: small, middling, large.
pub const SIZES: [(Length, Length); 3] = [
    (Length::from_feet(4.0), Length::from_feet(4.0)),
    (Length::from_feet(5.0), Length::from_feet(5.0)),
    (Length::from_feet(5.0), Length::from_feet(6.0)),
];

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Equipment firm", "Lambing diary: single 1 day, twins 2, triplets 2 to 3", None, ""),
    seen("Montana State", "24 to 72 hours", None, ""),
    seen("Extension guides", "Pens of 4 × 4, 5 × 5 and 5 × 6 ft", None, ""),
    seen("Irish Farmers Journal", "One pen for 7 to 8 ewes, for 5 to 6 when prolific", None, ""),
    memory("One pen for ten ewes"),
    common("A few hours for a thriving single, up to three days"),
    ours("Triplets stay the longer of two to three days"),
    ours("Out only when every lamb was seen to nurse or was fed, is not cold, and is not rejected"),
];
