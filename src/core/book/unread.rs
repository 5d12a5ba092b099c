//! A fact that this version cannot read: kept as it came.

/// A fact of a kind, or in a form, that this version cannot read: kept whole, handed on, never applied.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    json: String,
}

impl Unread {
    pub(super) const fn from_json(json: String) -> Self {
        Self { json }
    }

    /// Returns the fact as it was written: JSON without white space.
    #[must_use]
    pub fn as_json(&self) -> &str {
        &self.json
    }
}
