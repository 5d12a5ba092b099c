//! One thing noted, as it stands after corrections: what a timeline shows.

use crate::book::{DeviceId, EntryId, Event};
use crate::units::Moment;

/// A noted thing.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The entry that noted it.
    pub entry: EntryId,
    /// The phone that wrote it.
    pub device: DeviceId,
    /// When it was written.
    pub noted: Moment,
    /// When it happened.
    pub at: Moment,
    /// What.
    pub event: Event,
    /// Whether it was amended since.
    pub amended: bool,
    /// Whether it was struck and does not count.
    pub struck: bool,
}
