//! A ewe as the book has her.

use super::{Death, Labor, Saw, Seen};
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
    /// What was seen of her around lambing, in the order in which it happened.
    pub seen: Vec<Seen>,
    /// Her labor, if one goes on or is near.
    pub labor: Option<Labor>,
}

impl Ewe {
    /// Returns a ewe of whom nothing else is known.
    #[must_use]
    pub const fn new(id: EweId, came: Moment) -> Self {
        Self { id, came, tag: None, died: None, seen: Vec::new(), labor: None }
    }

    /// Returns what was seen of her at this very instant, the last noted if several; nothing if nothing was.
    #[must_use]
    pub fn saw_at(&self, at: Moment) -> Option<Saw> {
        self.seen.iter().rev().find(|seen| seen.at == at).map(|seen| seen.what)
    }
}
