//! All animals.

use yeanling_core::book::Departure;
use yeanling_core::flock::Ewe;

/// The screen's name.
pub(crate) const TITLE: &str = "Flock";
/// Labels the search.
pub(crate) const FIND: &str = "Find a tag or a name";
/// Heads the ewes.
pub(crate) const EWES: &str = "Ewes";
/// Heads the lambs.
pub(crate) const LAMBS: &str = "Lambs";
/// Heads the dead.
pub(crate) const DEAD: &str = "Dead or gone";
/// Says what to do first.
pub(crate) const EMPTY: &str = "No animals yet. Type a tag above to add a ewe, take a whole table in under Hand over, or add her on the spot when she starts to lamb.";
/// Says that nothing fits.
pub(crate) const NONE: &str = "Nothing is called that.";
/// Says that no animal is so.
pub(crate) const NONE_SUCH: &str = "None at the moment.";
/// Chooses which animals are shown.
pub(crate) const WHICH: &str = "Which animals";
/// Everyone here.
pub(crate) const HERE: &str = "Here";
/// On the bottle.
pub(crate) const BOTTLE: &str = "On the bottle";
/// In a pen.
pub(crate) const PENNED: &str = "In a pen";
/// Withheld after a medicine.
pub(crate) const WITHHELD: &str = "Withheld";
/// Without a tag.
pub(crate) const UNTAGGED: &str = "No tag";
/// Not weighed at eight weeks.
pub(crate) const UNWEIGHED: &str = "To weigh";
/// Living lambs of seasons before.
pub(crate) const EARLIER: &str = "Earlier seasons";
/// Dead, sold or gone.
pub(crate) const GONE: &str = "Dead or gone";

/// Says which animals are shown, where others can be chosen: "Shown: here".
pub(crate) fn shown(which: &str) -> String {
    format!("Shown: {}", which.to_lowercase())
}

/// Asks for the rows that are not shown yet.
pub(crate) fn more(rows: usize) -> String {
    format!("Show more ({rows})")
}

/// Returns a few soft words about a ewe: "2 lambs", "sold".
pub(crate) fn ewe_kind(count: usize, ewe: &Ewe) -> String {
    let lambs = Some(lambs(count)).filter(|lambs| !lambs.is_empty());
    let gone = match (&ewe.died, &ewe.left) {
        (Some(_), _) => Some("died".to_owned()),
        (None, Some(left)) => Some(gone(left.how).to_owned()),
        (None, None) => None,
    };
    lambs.into_iter().chain(gone).collect::<Vec<_>>().join(" · ")
}

/// Returns in a word how an animal left.
pub(crate) const fn gone(how: Departure) -> &'static str {
    match how {
        Departure::Sold | Departure::SoldWithWarning => "sold",
        Departure::Slaughtered => "slaughtered",
        Departure::Given => "given away",
        Departure::Missing => "missing",
    }
}

/// Returns how many there are.
pub(crate) fn counts(ewes: usize, lambs: usize) -> String {
    let part =
        |count: usize, one: &str, many: &str| format!("*{count}* {}", if count == 1 { one } else { many });
    format!("{} · {}", part(ewes, "ewe", "ewes"), part(lambs, "lamb", "lambs"))
}

/// Returns how many lambs a ewe has.
fn lambs(count: usize) -> String {
    match count {
        0 => String::new(),
        1 => "1 lamb".to_owned(),
        more => format!("{more} lambs"),
    }
}
