//! Why some people keep away at lambing.

use super::Why;
use crate::cautions;

/// Returns who keeps away, from what, and who says so.
pub fn people() -> Why {
    Why {
        heading: cautions::PEOPLE_TITLE.to_owned(),
        working: Vec::new(),
        rule: String::new(),
        sources: vec![cautions::HYGIENE_SOURCE.to_owned()],
        others: Vec::new(),
        caution: vec![cautions::PEOPLE.to_owned(), cautions::TOUCHED.to_owned()],
    }
}
