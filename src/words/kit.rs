//! The stores: what is there against what the season will take, and the freezer.

use yeanling_core::book::Item;
use yeanling_core::flock::Batch;
use yeanling_core::units::{Amount, Moment, System};

use super::ahead::away;
use super::common::{date, number, volume};
use super::stores;

/// The screen's name.
pub(crate) const TITLE: &str = "Stores";
/// What the screen is for, where it is offered.
pub(crate) const SUB: &str = "What is on the shelf and in the freezer, against what lambing takes";
/// Heads the shelf.
pub(crate) const SHELF: &str = "On the shelf";
/// Explains what is needed.
pub(crate) const SHELF_SUB: &str =
    "What to have before the first lamb, while the shops are open. One spare of each is counted in.";
/// Changes what is there.
pub(crate) const CHANGE: &str = "Count…";
/// Asks what happened.
pub(crate) const ASK: &str = "What happened?";
/// It was counted.
pub(crate) const COUNTED: &str = "counted: there are";
/// It came in.
pub(crate) const CAME: &str = "came in";
/// It was used.
pub(crate) const USED: &str = "used";
/// It was thrown away.
pub(crate) const THROWN: &str = "thrown away";
/// Shows what is neither needed nor there.
pub(crate) const OTHERS: &str = "Other things";
/// Heads the freezer.
pub(crate) const FREEZER: &str = "Colostrum in the freezer";
/// Says that it is empty.
pub(crate) const NO_COLOSTRUM: &str = "None. Freeze some from a ewe with plenty, within her first hours.";
/// Freezes some.
pub(crate) const FREEZE: &str = "Freeze colostrum";
/// Asks for the bags.
pub(crate) const BAGS: &str = "Bags";
/// Asks for what each holds.
pub(crate) const EACH: &str = "In each";
/// Asks whom it is from.
pub(crate) const FROM: &str = "From";
/// Asks for the reading.
pub(crate) const BRIX: &str = "Brix, if anyone looked";
/// Asks for the label.
pub(crate) const LABEL: &str = "What is written on it, if anything";
/// No number of bags.
pub(crate) const NO_BAGS: &str = "Type how many bags, such as 4.";
/// One was thawed.
pub(crate) const THAWED: &str = "Thawed one";
/// All were thrown away.
pub(crate) const THROW: &str = "all thrown away";
/// Whose colostrum needs care.
pub(crate) const CAUTION: &str = "Colostrum of another flock, a goat or a cow can bring disease: ask your vet first. Thaw it in warm water, never in a microwave.";

/// Returns how a thing stands: "12 of 17", "not counted, 17 wanted".
pub(crate) fn stands(item: Item, there: Option<Amount>, wanted: Option<u32>, system: System) -> String {
    match (there, wanted) {
        (Some(there), Some(wanted)) => format!("*{}* of {wanted}", stores::amount(item, there, system)),
        (Some(there), None) => format!("*{}*", stores::amount(item, there, system)),
        (None, Some(wanted)) => format!("not counted, *{wanted}* wanted"),
        (None, None) => "not counted".to_owned(),
    }
}

/// Returns how many are missing; nothing when none are.
pub(crate) fn short(there: Option<Amount>, wanted: Option<u32>) -> Option<String> {
    let short = f64::from(wanted?) - there?.as_units();
    (short > 0.0).then(|| format!("*short of {}*", number(short, 1)))
}

/// Returns a thing with a capital, as it heads a row.
pub(crate) fn name(item: Item) -> String {
    let name = stores::item(item);
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Returns what lies in a batch: "3 bags of 150 ml, Brix 24.5 · 14, first".
pub(crate) fn batch(batch: &Batch, system: System) -> String {
    let mut text = format!("*{}* of {}", stores::bags(batch.left()), volume(batch.volume, system));
    if let Some(brix) = batch.brix {
        text += &format!(", Brix {}", number(brix.as_percent(), 1));
    }
    if let Some(label) = &batch.label {
        text += &format!(" · {label}");
    }
    text
}

/// Returns how old it is: "frozen 2 Jan 2026, 54 days ago".
pub(crate) fn frozen(at: Moment, now: Moment) -> String {
    format!("frozen {}, {}", date(at), away(at.local().date(), now.local().date()))
}

/// Says that it is past the farm's own limit.
pub(crate) const TOO_OLD: &str = "*too old* by your Practice";
