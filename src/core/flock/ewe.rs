//! A ewe as the book has her.

use super::Death;
use crate::book::EweId;
use crate::units::Moment;

/// A ewe.
#[derive(Clone, Debug, PartialEq)]
pub struct Ewe {
    /// Her id.
    pub id: EweId,
    /// When she came into the book.
    pub came: Moment,
    /// What she is called by, if anything.
    pub tag: Option<String>,
    /// Her death, if she has died.
    pub died: Option<Death>,
}
