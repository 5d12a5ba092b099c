//! Where a figure was printed, and how we know it; carried as data and shown on screen beside the figure.

/// How a figure is known to us.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HowKnown {
    /// The figure was read in the named source.
    Seen,
    /// The figure was recalled and has not been checked against the source.
    Memory,
    /// A rule of the trade without a source.
    CommonPractice,
    /// Our own arithmetic or safety choice.
    Ours,
}

/// A source: who, what, when, where, and how it is known.
///
/// Fields without a value are empty; a source of common practice names no author.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// Who wrote it: authors or the publishing body.
    pub authors: &'static str,
    /// What it is called, as printed; empty if not recorded.
    pub title: &'static str,
    /// The year it was printed, if recorded.
    pub year: Option<u16>,
    /// Journal, volume and page, or publisher; empty if the authors say it.
    pub place: &'static str,
    /// How the figure taken from it is known.
    pub known: HowKnown,
}
