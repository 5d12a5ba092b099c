//! Tags and paint marks, one lamb after another.

/// The screen's name.
pub const TITLE: &str = "Tag lambs";
/// Chooses what is put on.
pub const WHAT: &str = "What goes on";
/// Tags.
pub const TAGS: &str = "Tags";
/// Paint marks.
pub const PAINT: &str = "Paint marks";
/// What is typed.
pub const TAG: &str = "Tag";
/// What is painted.
pub const MARK: &str = "Mark";
/// Where the next tag comes from.
pub const TAG_HINT: &str = "The next number stands there once you have saved one.";
/// Where the mark comes from.
pub const MARK_HINT: &str =
    "Its dam’s number stands there: one mark for a family. Common practice, no source.";
/// Nothing was typed.
pub const NOTHING: &str = "Type it, or skip this lamb.";
/// There is no lamb.
pub const NO_LAMBS: &str = "No live lambs this season.";
/// All were gone through.
pub const ALL_DONE: &str = "All lambs done.";

/// Returns how far the round has come: "5 of 12 have a tag".
pub fn done(what_is_tag: bool, done: usize, of: usize) -> String {
    let what = if what_is_tag { "a tag" } else { "a mark" };
    format!("*{done}* of {of} have {what}")
}
