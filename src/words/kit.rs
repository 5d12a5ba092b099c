//! Supplies: what is there against what the season will take, and the freezer.

use chrono::NaiveDate;
use yeanling_core::book::Item;
use yeanling_core::flock::Batch;
use yeanling_core::units::{Amount, Moment, System, Volume};

use super::common::{capital, date, number, short_date, volume};
use super::season_forecast::away;
use super::stores;

/// The screen's name.
pub const TITLE: &str = "Supplies";
/// Heads the shelf.
pub const SHELF: &str = "On hand";
/// Explains what is needed.
pub const SHELF_SUB: &str =
    "What to have before the first lamb, while the shops are open. Counts one spare of each.";
/// What is asked on the Watch.
pub const ASKED: &str = "Count the lambing kit, order what is short";
/// Counts all of it.
pub const COUNT_ALL: &str = "Count all";
/// Heads that.
pub const COUNT_ALL_ASK: &str = "What is on hand?";
/// Says what a blank means.
pub const COUNT_ALL_TEXT: &str = "Type what you counted. A blank stays as it was.";
/// Nothing was typed.
pub const NONE_COUNTED: &str = "Enter at least one count.";
/// Prints what is needed and there.
pub const PRINT_LIST: &str = "Print the list";
/// Hands it on as a table.
pub const SHARE_LIST: &str = "Share the list";
/// It was handed on.
pub const LIST_GIVEN: &str = "The list is saved or shared.";
/// The heads of the list.
pub const LIST_HEADS: [&str; 4] = ["What", "Have", "On hand", "To buy"];

/// Heads the list on paper: "Quarry Bank · Lambing kit · 8 Jan 2027".
pub fn list_head(farm: &str, day: &str) -> String {
    let farm = if farm.is_empty() { "Yeanling" } else { farm };
    format!("{farm} · Lambing kit · {day}")
}

/// Returns the name of the list's file.
pub fn list_file(day: &str) -> String {
    format!("yeanling-kit-{day}.csv")
}

/// Returns when the first lamb may come: "first lamb possible 20 Feb, in 56 days".
pub fn first_lamb(first: NaiveDate, today: NaiveDate) -> String {
    format!("first lamb possible {}, {}", short_date(first), away(first, today))
}

/// Returns what stands under a thing that is to be counted: "needed: 17", "needed: 17 · was 12".
pub fn to_count(item: Item, there: Option<Amount>, wanted: Option<Amount>, system: System) -> String {
    let told = |amount: Amount| stores::amount(item, amount, system);
    let wanted = wanted.map(|wanted| format!("needed: {}", told(wanted)));
    let was = there.map(|there| format!("was {}", told(there)));
    wanted.into_iter().chain(was).collect::<Vec<_>>().join(" · ")
}

/// Changes what is there.
pub const CHANGE: &str = "Count";
/// Asks what happened.
pub const ASK: &str = "What happened?";
/// It was counted.
pub const COUNTED: &str = "counted, on hand";
/// It came in.
pub const CAME: &str = "bought or made";
/// It was used.
pub const USED: &str = "used";
/// It was thrown away.
pub const THROWN: &str = "thrown away";
/// Shows what is neither needed nor there.
pub const OTHERS: &str = "Other things";
/// Heads the freezer.
pub const FREEZER: &str = "Colostrum in the freezer";
/// Says that it is empty.
pub const NO_COLOSTRUM: &str = "None. Freeze some from a ewe with plenty, in her first hours.";
/// Freezes some.
pub const FREEZE: &str = "Freeze colostrum";
/// Asks for the bags.
pub const BAGS: &str = "Bags";
/// Asks for what each holds.
pub const EACH: &str = "In each";
/// Asks whom it is from.
pub const FROM: &str = "From";
/// Asks which ewe.
pub const FROM_EWE: &str = "Her tag, if known";
/// Asks for the day.
pub const FROZEN_DAY: &str = "Frozen on";
/// Says that what was typed is not a day.
pub const NO_FROZEN_DAY: &str = "That is not a date. Enter the day it was frozen.";

/// Says that no ewe wears a tag.
pub fn no_such_ewe(tag: &str) -> String {
    format!("No ewe here wears {tag}. Add her on Flock first, or leave this blank.")
}

/// Asks for the reading.
pub const BRIX: &str = "Brix, if measured";
/// Asks for the label.
pub const LABEL: &str = "Label, if any";
/// No number of bags.
pub const NO_BAGS: &str = "Type how many bags, such as 4.";
/// One was thawed.
pub const THAWED: &str = "Thawed one";
/// All were thrown away.
pub const THROW: &str = "all thrown away";
/// Whose colostrum needs care.
pub const CAUTION: &str = "Colostrum from another flock, a goat or a cow can bring disease: ask your vet first. Thaw it in warm water, never in a microwave.";

/// There is as much as is wanted.
pub const ENOUGH: &str = "enough";
/// The oldest that is still good.
pub const USE_FIRST: &str = "*use this first*";

/// Returns how a thing stands: "12 of 17", "not counted, 17 wanted".
pub fn stands(item: Item, there: Option<Amount>, wanted: Option<Amount>, system: System) -> String {
    let told = |amount: Amount| stores::amount(item, amount, system);
    match (there, wanted) {
        (Some(there), Some(wanted)) => format!("*{}* of {}", told(there), told(wanted)),
        (Some(there), None) => format!("*{}*", told(there)),
        (None, Some(wanted)) => format!("not counted, *{}* needed", told(wanted)),
        (None, None) => "not counted".to_owned(),
    }
}

/// Returns how much is missing; nothing when nothing is.
pub fn short(item: Item, there: Option<Amount>, wanted: Option<Amount>, system: System) -> Option<String> {
    let short = wanted?.as_units() - there?.as_units();
    (short > 0.0).then(|| format!("*short of {}*", stores::amount(item, Amount::from_units(short), system)))
}

/// Returns how much was counted, where supplies are offered: "12 counted · 4 bags of colostrum".
pub fn counted(things: usize, bags: u32) -> String {
    let bags = if bags == 1 { "1 bag".to_owned() } else { format!("{bags} bags") };
    match things {
        0 => format!("Nothing counted yet · {bags} of colostrum"),
        things => format!("{things} counted · {bags} of colostrum"),
    }
}

/// Returns what there is too little of: "3 short: iodine, gloves, straw".
pub fn short_of(items: &[Item]) -> String {
    let names: Vec<&str> = items.iter().map(|item| stores::item(*item)).collect();
    format!("{} short: {}", names.len(), names.join(", "))
}

/// Returns for how many uses a thing should do: "for 45 dips".
pub fn uses(item: Item, uses: u32) -> String {
    let what = if item == Item::Iodine {
        "navel dips"
    } else if item == Item::Lubricant {
        "portions"
    } else {
        "bottles"
    };
    format!("needed for *{uses}* {what}")
}

/// Returns what to have frozen: "To have frozen: 1,600 ml, the first day of 1 lamb and one more. There are 300 ml."
pub fn to_freeze(total: Volume, lambs: u32, there: Volume, system: System) -> String {
    let lambs = if lambs == 1 { "1 lamb".to_owned() } else { format!("{lambs} lambs") };
    format!(
        "Have frozen: *{}*, the first day of {lambs} and one spare. You have *{}*.",
        volume(total, system),
        volume(there, system)
    )
}

/// Returns a thing with a capital, as it heads a row.
pub fn name(item: Item) -> String {
    capital(stores::item(item))
}

/// Returns what lies in a batch: "3 bags of 150 ml, Brix 24.5 · 14, first".
///
/// `boosted` is when the ewe that it is from had her booster, where she is known.
pub fn batch(batch: &Batch, system: System, boosted: Option<Option<Moment>>) -> String {
    let mut text = format!("*{}* of {}", stores::bags(batch.left()), volume(batch.volume, system));
    if let Some(brix) = batch.brix {
        text += &format!(", Brix {}", number(brix.as_percent(), 1));
    }
    if let Some(label) = &batch.label {
        text += &format!(" · {label}");
    }
    match boosted {
        Some(Some(at)) => text += &format!(" · ewe boosted {}", short_date(at.local().date())),
        Some(None) => text += " · no booster noted for her",
        None => {}
    }
    text
}

/// Returns how old it is: "frozen 2 Jan 2026, 54 days ago".
pub fn frozen(at: Moment, now: Moment) -> String {
    format!("frozen {}, {}", date(at), away(at.local().date(), now.local().date()))
}

/// Says that it is past the farm's own limit.
pub const TOO_OLD: &str = "*too old* by your farm settings";
