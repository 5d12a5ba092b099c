//! All animals.

/// The screen's name.
pub(crate) const TITLE: &str = "Flock";
/// Labels the search.
pub(crate) const FIND: &str = "Find a tag or a name";
/// Heads the ewes.
pub(crate) const EWES: &str = "Ewes";
/// Heads the lambs.
pub(crate) const LAMBS: &str = "Lambs";
/// Heads the dead.
pub(crate) const DEAD: &str = "Dead";
/// Says what to do first.
pub(crate) const EMPTY: &str = "No animals yet. Add your ewes here, or on the spot when one starts to lamb.";
/// Says that nothing fits.
pub(crate) const NONE: &str = "Nothing is called that.";
/// Says that a row list is cut.
pub(crate) const MORE: &str = "Type a tag to see the others.";

/// Returns how many there are.
pub(crate) fn counts(ewes: usize, lambs: usize) -> String {
    let part =
        |count: usize, one: &str, many: &str| format!("*{count}* {}", if count == 1 { one } else { many });
    format!("{} · {}", part(ewes, "ewe", "ewes"), part(lambs, "lamb", "lambs"))
}

/// Returns how many lambs a ewe has.
pub(crate) fn lambs(count: usize) -> String {
    match count {
        0 => String::new(),
        1 => "1 lamb".to_owned(),
        more => format!("{more} lambs"),
    }
}
