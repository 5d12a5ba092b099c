//! How long what a shepherd writes may be.

/// The most characters of a tag, a name or a label.
pub const MOST_TAG: usize = 24;
/// The most characters of a breed, of a medicine and of the words about it.
pub const MOST_WORDS: usize = 80;
/// The most characters of a remark.
pub const MOST_REMARK: usize = 1000;
