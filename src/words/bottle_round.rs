//! The bottle round: every bottle lamb at once, one mix, a tick each.

use yeanling_core::book::Milk;
use yeanling_core::reckon::mixing::Mix;
use yeanling_core::units::{System, TimeDelta, Volume};

use super::common::{feed_mass, number, strength, volume, volume_as_given};
use super::noted::milk;
use super::watch;

/// The screen's name.
pub const TITLE: &str = "Bottle round";
/// Says what to do when no lamb is fed by hand.
pub const EMPTY: &str =
    "No lamb is on the bottle. Note the first feed of one, and it shows here with its volume and times.";
/// Heads the lambs of which one may be fed.
pub const WHICH: &str = "Which lamb gets a bottle?";
/// Heads the lambs still to feed.
pub const TO_FEED: &str = "To feed";
/// Heads the lambs that were fed within the hour.
pub const FED: &str = "Fed just now";
/// Heads the lambs whose feed comes later.
pub const LATER: &str = "Later";
/// Heads the mix.
pub const MIX: &str = "One mix for all still to feed";
/// Labels the powder of the mix.
pub const POWDER: &str = "Powder";
/// Labels the water of the mix.
pub const WATER: &str = "Water";
/// Heads the day.
pub const TODAY: &str = "In 24 hours";
/// Notes the feed.
pub const TICK: &str = "Fed";
/// Notes all that are due with what is planned: "All 3 fed".
pub fn all_fed(lambs: usize) -> String {
    format!("All {lambs} fed")
}
/// Opens the sheet for a feed that cannot be ticked.
pub const OPEN: &str = "Feed";
/// Opens the sheet for another amount.
pub const OTHER: &str = "other amount";
/// Takes a feed back.
pub const UNDO: &str = "Undo";
/// Returns what a lamb gets whose weight is old.
pub fn weigh_first(gets: &str) -> String {
    format!("*Weigh it first*, then {gets}")
}

/// Says that milk must wait.
pub fn held(why: &str) -> String {
    format!("*No milk yet*: {why}")
}
/// Says that the round is done.
pub const ALL_FED: &str = "All of this round are fed.";
/// Leads to the round.
pub const LINK: &str = "All bottle lambs";
/// Says whose rate it is.
pub const LABEL_FIRST: &str = "The label’s own rate comes first: set it in Farm settings.";

/// Returns when the next round is, and for how many: "3 lambs · *late*: was due 03:15".
pub fn sub(lambs: usize, when: &str) -> String {
    let lambs = if lambs == 1 { "1 lamb".to_owned() } else { format!("{lambs} lambs") };
    format!("{lambs} · {when}")
}

/// Returns how old it is: in hours for its first two days, then in days, which the tables count.
pub fn age(age: TimeDelta) -> String {
    if age < TimeDelta::days(2) { watch::age(age) } else { format!("{} days old", age.num_days()) }
}

/// Returns what a lamb gets: "*125 ml* of milk replacer".
pub fn gets(amount: Option<Volume>, what: Milk, system: System) -> String {
    match amount {
        Some(amount) => format!("*{}* of {}", volume(amount, system), milk(what)),
        None => "Weigh it for the volume".to_owned(),
    }
}

/// Returns how the last day stands: "250 of 625 ml in 24 h · 5 feeds a day".
pub fn day(given: Volume, total: Volume, feeds: u8, system: System) -> String {
    format!("{} · {feeds} feeds a day", of(given, total, system))
}

/// Returns how the first day stands: "250 of 800 ml in its first 24 h".
pub fn first_day(given: Volume, total: Volume, system: System) -> String {
    of(given, total, system).replace("in 24 h", "in its first 24 h")
}

fn of(given: Volume, total: Volume, system: System) -> String {
    format!("{} of {} in 24 h", volume(given, system), volume(total, system))
}

/// Returns what was given and when: "Fed *125 ml* 03:15".
pub fn fed(amount: Volume, at: &str, system: System) -> String {
    format!("Fed *{}* {at}", volume_as_given(amount, system))
}

/// Returns when the next feed is.
pub fn next(when: &str) -> String {
    format!("next {when}")
}

/// Returns for whom the mix is: "375 ml for 3 lambs, at 200 g/L".
pub fn mix_for(mix: &Mix, lambs: usize, system: System) -> String {
    let lambs = if lambs == 1 { "1 lamb".to_owned() } else { format!("{lambs} lambs") };
    format!(
        "*{}* for {lambs}, at {}",
        volume(mix.finished, system),
        strength(mix.rate.as_grams_per_liter(), system)
    )
}

/// Returns how it is made: weigh the powder, fill up to the volume.
pub fn how(mix: &Mix, system: System) -> String {
    let (powder, finished) = (feed_mass(mix.powder, system), volume(mix.finished, system));
    format!("Weigh *{powder}* of powder, fill up *to {finished}*. Water under 45 °C (113 °F).")
}

/// Returns the trap: "200 g added to 1 L of water is only 167 g/L", "26.7 oz added to 1 gallon of water is only 22.3 oz/gal".
pub fn trap(liter: &Mix, system: System) -> String {
    let (grams, weak) = (liter.powder.as_kilograms() * 1000.0, liter.if_added.as_grams_per_liter());
    // Grams in a liter are as many ounces in a gallon as `strength` says.
    let ounces = |grams: f64| strength(grams, System::Us).split(' ').next().unwrap_or_default().to_owned();
    match system {
        System::Metric => format!(
            "Made up *to* a liter, not added to one: {} g added to 1 L of water is only {} g/L, and starves a lamb slowly.",
            number(grams, 1),
            number(weak, 0)
        ),
        System::Us => format!(
            "Made up *to* a gallon, not added to one: {} oz added to 1 gallon of water is only {} oz/gal, and starves a lamb slowly.",
            ounces(grams),
            ounces(weak)
        ),
    }
}

/// Returns that some lambs are not in the mix since nobody knows their volume.
pub fn unknown(lambs: usize) -> String {
    if lambs == 1 {
        "One lamb has no volume yet and is not in this mix: weigh it.".to_owned()
    } else {
        format!("{lambs} lambs have no volume yet and are not in this mix: weigh them.")
    }
}

/// Returns what of this round is no milk replacer.
pub fn not_mixed(colostrum: Volume, system: System) -> String {
    format!("Not in this mix: {} of colostrum or milk.", volume(colostrum, system))
}

/// Labels the milk of a day.
pub const DAY_MILK: &str = "milk, all lambs";
/// Labels the powder of a day.
pub const DAY_POWDER: &str = "powder";
/// Labels the feeds of a day.
pub const DAY_FEEDS: &str = "feeds, all lambs";

/// Returns the times of a day: "5 feeds: 03:15 · 08:03 · 12:51 · 17:39 · 22:27".
pub fn times(feeds: u8, times: &[String]) -> String {
    format!("*{feeds} feeds:* {}", times.join(" · "))
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::mixing::{MIX as RATE, sample_to};

    fn ml(milliliters: f64) -> Volume {
        Volume::from_milliliters(milliliters)
    }

    #[test]
    fn the_trap_is_told_at_the_labels_own_rate() {
        let liter = sample_to(ml(1000.0), RATE).expect("in bounds");
        assert!(trap(&liter, System::Metric).contains("200 g added to 1 L of water is only 167 g/L"));
        let us = trap(&liter, System::Us);
        assert!(us.contains("26.7 oz added to 1 gallon of water is only 22.3 oz/gal"), "{us}");
    }

    #[test]
    fn a_mix_is_told_in_the_farms_units() {
        let mix = sample_to(ml(375.0), RATE).expect("in bounds");
        assert_eq!(mix_for(&mix, 3, System::Metric), "*375 ml* for 3 lambs, at 200 g/L");
        assert_eq!(
            how(&mix, System::Us),
            "Weigh *2.6 oz* of powder, fill up *to 12.7 fl oz*. Water under 45 °C (113 °F)."
        );
    }
}
