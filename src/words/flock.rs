//! All animals.

use yeanling_core::book::Departure;

/// The screen's name.
pub const TITLE: &str = "Flock";
/// Labels the search.
pub const FIND: &str = "Find a tag or a name";
/// Heads the ewes.
pub const EWES: &str = "Ewes";
/// Heads the lambs.
pub const LAMBS: &str = "Lambs";
/// Heads the dead.
pub const DEAD: &str = "Dead or gone";
/// Says what to do first.
pub const EMPTY: &str = "No animals yet. Type a tag above to add a ewe, or 1-18 to add eighteen. Or import a table under Farm. Or add her when she starts to lamb.";
/// Shows every animal again.
pub const SHOW_ALL: &str = "Show all here";
/// Says that nothing fits.
pub const NONE: &str = "Nothing is called that.";
/// Says that no animal is so.
pub const NONE_SUCH: &str = "None at the moment.";
/// Chooses which animals are shown.
pub const WHICH: &str = "Which animals";
/// Everyone here.
pub const HERE: &str = "Here";
/// Those that have not lambed this season.
pub const TO_LAMB: &str = "Not lambed";
/// On the bottle.
pub const BOTTLE: &str = "On the bottle";
/// In a pen.
pub const PENNED: &str = "In a pen";
/// Withheld after a medicine.
pub const WITHHELD: &str = "In withdrawal";
/// Without a tag.
pub const UNTAGGED: &str = "No tag";
/// Not weighed at eight weeks.
pub const UNWEIGHED: &str = "To weigh";
/// Living lambs of seasons before.
pub const EARLIER: &str = "Earlier seasons";
/// Dead, sold or gone.
pub const GONE: &str = "Dead or gone";

/// Says which animals are shown, where others can be chosen: "Shown: here".
pub fn shown(which: &str) -> String {
    format!("Shown: {}", which.to_lowercase())
}

/// Asks for the rows that are not shown yet.
pub fn more(rows: usize) -> String {
    format!("Show more ({rows})")
}

/// Returns the button that adds many ewes at once: "Add 18 ewes: 1 to 18".
pub fn add_many(tags: &[String]) -> String {
    match tags {
        [] => String::new(),
        [one] => super::lambing::add(one),
        [first, .., last] => format!("Add {} ewes: {first} to {last}", tags.len()),
    }
}

/// Returns in a word how an animal left.
pub const fn gone(how: Departure) -> &'static str {
    match how {
        Departure::Sold | Departure::SoldWithWarning => "sold",
        Departure::Slaughtered => "slaughtered",
        Departure::Given => "given away",
        Departure::Missing => "missing",
    }
}

/// Returns how many there are: "24 ewes · 2 rams · 40 lambs"; no word of rams where none is in the book.
pub fn counts(ewes: usize, rams: usize, lambs: usize) -> String {
    let part =
        |count: usize, one: &str, many: &str| format!("*{count}* {}", if count == 1 { one } else { many });
    let rams = (rams > 0).then(|| part(rams, "ram", "rams"));
    let all = [Some(part(ewes, "ewe", "ewes")), rams, Some(part(lambs, "lamb", "lambs"))];
    all.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}
