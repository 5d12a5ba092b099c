//! Extra feed by group: who is in which, what each gets, the card for the feed store, and the bags.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::reckon::season::feed_groups::{FeedGroup, FeedingCard, NoCard, Portion};
use yeanling_core::reckon::season::requirement::Energy;
use yeanling_core::units::{Mass, System};

use super::common::{feed_mass, mass, number, short_date};
use super::feed::{POUND, heavy, outside, refused};

/// Extra feed by group.
pub const GROUPS: &str = "Extra feed by group";
/// The same on its button.
pub const GROUPS_SHORT: &str = "Groups";
/// Where the counts come from.
pub const GROUPS_SUB: &str = "Ewes awaited, by scan and last score. Change any number.";
/// When it begins.
pub const FEED_FROM: &str = "First day of feeding";
/// When it should.
pub const FEED_FROM_HINT: &str = "Six weeks before the first lamb.";
/// Asks for what is missing.
pub const TYPE_GROUPS: &str = "Fill in every field to see what each group gets.";
/// How strong grain is.
pub const GRAIN_HINT: &str = "Grain, unconfirmed. Your feed’s label says better.";
/// One bag.
pub const BAG: &str = "Bag weight";
/// It is much for one feed.
pub const TWO_FEEDS: &str = "Give it in two feeds a day";
/// Prints the card.
pub const PRINT_CARD: &str = "Print the feeding card";
/// Heads the days of the card.
pub const FROM_DAY: &str = "From";

/// Returns the energy of a feed as it is typed.
pub fn energy_shown(energy: Energy, system: System) -> String {
    match system {
        System::Metric => number(energy.as_megajoules(), 1),
        System::Us => number(energy.as_megacalories() * POUND, 2),
    }
}

/// Returns what a bag usually weighs, in kilograms: 25 kg, or 50 lb.
pub fn bag_kilograms(system: System) -> f64 {
    match system {
        System::Metric => 25.0,
        System::Us => 50.0 * POUND,
    }
}

/// Returns the name of a group.
pub const fn feed_group(group: FeedGroup) -> &'static str {
    match group {
        FeedGroup::Single => "Singles",
        FeedGroup::Twins => "Twins",
        FeedGroup::Triplets => "Triplets and more",
        FeedGroup::Thin => "Thin",
        FeedGroup::NotScanned => "Not scanned",
    }
}

/// Returns who is in it, where that is not in its name.
pub const fn feed_group_hint(group: FeedGroup) -> &'static str {
    match group {
        FeedGroup::Thin => "Last score under 2.5, with one or two lambs.",
        FeedGroup::NotScanned => "Fed as twins.",
        FeedGroup::Single | FeedGroup::Twins | FeedGroup::Triplets => "",
    }
}

/// Returns how many ewes.
pub fn ewes(count: u32) -> String {
    super::animals::ewes(usize::try_from(count).unwrap_or(usize::MAX))
}

/// Returns what a ewe gets once it is brought in, and what goes into the trough: "380 g each a day, 3.8 kg for all".
pub fn each(portion: &Portion, system: System) -> String {
    let all = Mass::from_kilograms(portion.each.as_kilograms() * f64::from(portion.ewes));
    format!("*{}* each a day, *{}* for all", feed_mass(portion.each, system), mass(all, system))
}

/// Returns its steps: "11 Jan 100 g · 13 Jan 200 g".
pub fn steps(portion: &Portion, from: NaiveDate, system: System) -> String {
    let step = |(day, each): (i64, Mass)| {
        format!("{} {}", short_date(from + TimeDelta::days(day)), feed_mass(each, system))
    };
    portion.steps.all().into_iter().map(step).collect::<Vec<_>>().join(" · ")
}

/// Returns what to buy: "Buy *13 bags* of 25 kg: 312 kg over 63 days. On hand 100 kg."
pub fn bags(card: &FeedingCard, there: Option<Mass>, system: System) -> String {
    let bags = if card.bags == 1 { "1 bag".to_owned() } else { format!("{} bags", card.bags) };
    let there = there.map(|there| format!(" On hand {}.", heavy(there, system))).unwrap_or_default();
    format!(
        "In all *{bags}* of {}: {} as fed over {} days.{there}",
        heavy(card.bag, system),
        heavy(card.given, system),
        card.days
    )
}

/// Returns why there is no card.
pub fn no_card(error: &NoCard, system: System) -> String {
    match error {
        NoCard::Refused(error) => refused(error, system),
        NoCard::Outside(error) => outside(error, system),
    }
}

/// Returns the head of a group on the card: "Twins, 12 ewes".
pub fn portion_head(portion: &Portion) -> String {
    format!("{}, {}", feed_group(portion.group), ewes(portion.ewes))
}

/// Returns what stands on the card for a group from a day on: "200 g each, 2.4 kg in the trough".
pub fn cell(portion: &Portion, day: i64, system: System) -> String {
    let each = feed_mass(portion.steps.on_day(day), system);
    format!("{each} each, {} in the trough", mass(portion.trough(day), system))
}

/// Returns what stands over the card.
pub fn card_head(farm: &str, day: &str) -> String {
    if farm.is_empty() { format!("{GROUPS} · {day}") } else { format!("{farm} · {GROUPS} · {day}") }
}
