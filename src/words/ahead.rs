//! The season ahead: who lambs tonight, births a night, pens, dates, and the groups that it comes from.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::flock::Group;
use yeanling_core::reckon::season::conception::Likely;
use yeanling_core::reckon::season::dates::What;
use yeanling_core::reckon::season::ewe::{Ground, NoOutlook, Outlook, Sign};
use yeanling_core::reckon::season::forecast::Forecast;
use yeanling_core::reckon::season::mating::Mating;
use yeanling_core::reckon::season::pens::Rule;
use yeanling_core::units::{System, Unread};

use super::common::{feed_mass, number, short_date};
use super::labor;

/// The screen's name.
pub(crate) const TITLE: &str = "Season";
/// What the screen is for, where it is offered.
pub(crate) const SUB: &str = "From ram in to the last lamb: who is near, births a night, pens, dates";
/// Says what to do first.
pub(crate) const EMPTY: &str =
    "Form a group, put its ewes and the ram in, and the season’s nights, dates and pens stand here.";
/// Heads who is near.
pub(crate) const WHO: &str = "Who is near";
/// Says that nobody is.
pub(crate) const NOBODY_NEAR: &str = "No ewe is likely within 24 hours.";
/// Heads the births by night.
pub(crate) const NIGHTS: &str = "Births a night";
/// Names the bars.
pub(crate) const EXPECTED: &str = "expected";
/// Names the spreads.
pub(crate) const SPREAD: &str = "nine nights in ten";
/// Names what was.
pub(crate) const HAPPENED: &str = "lambed";
/// Says that nobody is awaited.
pub(crate) const NOBODY: &str = "No lambing is awaited.";
/// Heads the pens.
pub(crate) const PENS: &str = "Bonding pens in use";
/// Names the bars of the pens.
pub(crate) const PENS_EXPECTED: &str = "on the mean";
/// Names the line of the pens.
pub(crate) const PENS_ENOUGH: &str = "enough 95 times in 100";
/// Heads the dates.
pub(crate) const DATES: &str = "Dates";
/// Hands the dates to the calendar.
pub(crate) const TO_CALENDAR: &str = "The dates to my calendar";
/// The name of the calendar file.
pub(crate) const FILE: &str = "yeanling-season.ics";
/// Heads the groups.
pub(crate) const GROUPS: &str = "Groups";
/// Forms a group.
pub(crate) const NEW_GROUP: &str = "Form a group";
/// Asks for its name.
pub(crate) const NAME: &str = "What it is called";
/// A group of that name stands already.
pub(crate) const SAME_NAME: &str = "There is a group of that name. Give this one another.";
/// The group was broken up.
pub(crate) const PARTED: &str = "This group was broken up. Its record stays.";
/// Puts the ram in.
pub(crate) const RAM_IN: &str = "Ram in…";
/// Asks when he went in.
pub(crate) const RAM_IN_ASK: &str = "When did the ram go in?";
/// Takes the ram out.
pub(crate) const RAM_OUT: &str = "Ram out…";
/// Asks when he came out.
pub(crate) const RAM_OUT_ASK: &str = "When did he come out?";
/// Labels the day.
pub(crate) const DAY: &str = "Day";
/// No day was given.
pub(crate) const NO_DAY: &str = "That is no day. Give it as year, month, day.";
/// Labels the ram's name.
pub(crate) const RAM: &str = "His name or tag, if you like";
/// Adds ewes.
pub(crate) const ADD: &str = "Put ewes in…";
/// Asks for their tags.
pub(crate) const ADD_ASK: &str = "Which ewes?";
/// Labels the list.
pub(crate) const TAGS: &str = "Tags, a list or ranges";
/// Shows how it is typed.
pub(crate) const TAGS_HINT: &str = "Such as 101–140, 7, 9";
/// Since when they are in.
pub(crate) const SINCE: &str = "In the group since";
/// Breaks the group up.
pub(crate) const PART: &str = "Break it up";
/// Heads its ewes.
pub(crate) const EWES: &str = "Its ewes";
/// Says that there are none.
pub(crate) const NO_EWES: &str = "No ewes yet.";
/// Takes a ewe out.
pub(crate) const OUT: &str = "Out";
/// Heads when a ewe may lamb.
pub(crate) const HERS: &str = "When she may lamb";
/// What is uncertain in any forecast.
pub(crate) const MAY_BUNCH: &str =
    "After a long time without a ram, matings bunch: then there are two peaks, seventeen days apart.";
/// How a sign counts.
pub(crate) const SIGNS_COUNT: &str = "A sign seen tonight weighs far more than any date. Look at her.";

/// Returns how the season stands: "60 ewes with the ram · 12 have lambed".
pub(crate) fn stands(put: u32, lambed: u32) -> String {
    if put == 0 {
        return String::new();
    }
    let lambed = match lambed {
        0 => "none has lambed".to_owned(),
        1 => "1 has lambed".to_owned(),
        lambed => format!("{lambed} have lambed"),
    };
    format!("*{put}* put to the ram · {lambed}")
}

/// Returns a chance in percent: "38 %", "under 1 %".
pub(crate) fn chance(share: f64) -> String {
    if share < 0.01 { "under 1 %".to_owned() } else { format!("{} %", number(share * 100.0, 0)) }
}

/// Returns the chances of a ewe: "*38 %* within 12 h, *62 %* within 24 h".
pub(crate) fn within(outlook: &Outlook) -> String {
    format!("*{}* within 12 h, *{}* within 24 h", chance(outlook.within_12h), chance(outlook.within_24h))
}

/// Returns her days: "likely 6 Mar, 2 to 11 Mar".
pub(crate) fn days(outlook: &Outlook) -> String {
    format!(
        "likely {}, between {} and {}",
        short_date(outlook.likely),
        short_date(outlook.first),
        short_date(outlook.last)
    )
}

/// Returns that a ewe has lambed: "lambed 24 Feb, 2 lambs".
pub(crate) fn has_lambed(on: NaiveDate, lambs: usize) -> String {
    let lambs = if lambs == 1 { "1 lamb".to_owned() } else { format!("{lambs} lambs") };
    format!("*lambed* {}, {lambs}", short_date(on))
}

/// Returns on what her days rest.
pub(crate) fn ground(ground: &Ground) -> String {
    match ground {
        Ground::Sign { sign, factor } => {
            format!("{}: the next hours count {} times", sign_name(*sign), number(*factor, 0))
        }
        Ground::AgeAtScan { on, age_days } => {
            format!("Scanned {}: lambs of {age_days} days", short_date(*on))
        }
        Ground::Mark { on } => format!("Crayon mark {}", short_date(*on)),
        Ground::Group { ram_in, ram_out } => {
            format!("Ram with her group {} to {}", short_date(*ram_in), short_date(*ram_out))
        }
    }
}

const fn sign_name(sign: Sign) -> &'static str {
    labor::sign(match sign {
        Sign::Slack => yeanling_core::book::Sign::Slack,
        Sign::Apart => yeanling_core::book::Sign::Apart,
        Sign::Discharge => yeanling_core::book::Sign::Discharge,
        Sign::UdderTight => yeanling_core::book::Sign::UdderTight,
        Sign::Restless => yeanling_core::book::Sign::Restless,
    })
}

/// Returns why nothing can be told of a ewe.
pub(crate) fn no_outlook(why: &NoOutlook) -> String {
    match why {
        NoOutlook::ScannedEmpty { on } => format!("Scanned empty on {}.", short_date(*on)),
        NoOutlook::ScanTooEarly { day } => {
            format!("Scanned {day} days after ram in: too early to count. Scan her again from day 30 on.")
        }
        NoOutlook::ScanDoesNotFit { on, age_days } => format!(
            "The scan of {} says {age_days} days, and no mating in her group fits. Another ram, or another date?",
            short_date(*on)
        ),
        NoOutlook::InLambWithoutMating { on } => {
            format!("In lamb on {}, though no mating is known.", short_date(*on))
        }
        NoOutlook::MarkWithoutRam { mark, ram_in, ram_out } => format!(
            "The mark of {} is not from the ram’s days, {} to {}.",
            short_date(*mark),
            short_date(*ram_in),
            short_date(*ram_out)
        ),
        NoOutlook::Passed { last } => {
            format!("Her last day, {}, has passed: empty, another date, or lambed unseen?", short_date(*last))
        }
        NoOutlook::Refused(_) => {
            "What is noted of her cannot be reckoned with. Look through her entries.".to_owned()
        }
    }
}

/// Returns how many will lamb: "of 40 put to the ram, likely 36 to 39 will lamb".
pub(crate) fn likely(likely: &Likely) -> String {
    let Likely { put, low, high, .. } = likely;
    if low == high {
        format!("Of *{put}* put to the ram, likely *{low}* will lamb.")
    } else {
        format!("Of *{put}* put to the ram, likely *{low} to {high}* will lamb.")
    }
}

/// Returns the busiest nights: "Most births 2 to 9 Mar".
pub(crate) fn peaks(forecast: &Forecast) -> String {
    match (forecast.peaks.first(), forecast.peaks.last()) {
        (Some(first), Some(last)) if first == last => format!("Most births *{}*", short_date(*first)),
        (Some(first), Some(last)) => format!("Most births *{} to {}*", short_date(*first), short_date(*last)),
        _ => String::new(),
    }
}

/// Tells the chart of births in words.
pub(crate) fn nights_label(forecast: &Forecast) -> String {
    format!(
        "{} births still to come, {} to {}. {}.",
        number(forecast.births.mean, 1),
        forecast.births.low,
        forecast.births.high,
        peaks(forecast).replace('*', "")
    )
}

/// Labels how sure a number of pens is.
pub(crate) fn sure(times: u8) -> String {
    format!("enough {times} in 100")
}

/// Tells the chart of pens in words.
pub(crate) fn pens_label(enough: [u32; 3], busiest: NaiveDate) -> String {
    let [ninety, ninety_five, ninety_nine] = enough;
    format!(
        "Most pens around {}: {ninety}, {ninety_five} and {ninety_nine} are enough 90, 95 and 99 times in 100.",
        short_date(busiest)
    )
}

/// Returns what a rule of thumb says.
pub(crate) fn rule(rule: Rule, pens: (u32, u32)) -> String {
    let name = match rule {
        Rule::Usual => "One for 7 to 8 ewes",
        Rule::Prolific => "One for 5 to 6 ewes, prolific",
        Rule::Ten => "One for ten ewes",
    };
    let (few, many) = pens;
    if few == many { format!("{name}: {few}") } else { format!("{name}: {few} to {many}") }
}

/// Returns what is to be done on a date.
pub(crate) fn what(what: &What, system: System) -> String {
    match what {
        What::ScoreBeforeRam => "Score the ewes: eight weeks to mend them".to_owned(),
        What::ScoreAtRam => "Ram in: score the ewes".to_owned(),
        What::CrayonChange { .. } => "Change the crayon".to_owned(),
        What::RamOut => "Ram out".to_owned(),
        What::ScoreAtMid => "Score the ewes at mid pregnancy".to_owned(),
        What::ScoreLate => "Score the ewes before the lambs’ last growth".to_owned(),
        What::Feed { each } => format!("Extra feed: {} a ewe a day", feed_mass(*each, system)),
        What::Booster { from, until } => {
            format!("Booster, from {} to {}. Ask your vet", short_date(*from), short_date(*until))
        }
        What::WatchFrom => "First lambs may come: watch by night".to_owned(),
        What::WatchUntil => "Last night to watch".to_owned(),
        What::FeedUntil => "Stop the extra feed, if there is grass".to_owned(),
    }
}

/// Names a date for good, so that a second calendar file moves it.
pub(crate) fn key(what: &What, place: usize) -> String {
    let name = match what {
        What::ScoreBeforeRam => "score-before-ram",
        What::ScoreAtRam => "score-at-ram",
        What::CrayonChange { number } => return format!("crayon-{number}"),
        What::RamOut => "ram-out",
        What::ScoreAtMid => "score-mid",
        What::ScoreLate => "score-late",
        What::Feed { .. } => return format!("feed-{place}"),
        What::Booster { .. } => "booster",
        What::WatchFrom => "watch-from",
        What::WatchUntil => "watch-until",
        What::FeedUntil => "feed-until",
    };
    name.to_owned()
}

/// Says that ewes count only from after the ram came: "33 ewes are in the group only since 28 Nov, …".
pub(crate) fn came_late(ewes: usize, since: NaiveDate, ram_in: NaiveDate) -> String {
    let who = if ewes == 1 { "1 ewe is".to_owned() } else { format!("{ewes} ewes are") };
    format!(
        "{who} in the group only since {}, and the ram since {}. Their days are counted from when both were there.",
        short_date(since),
        short_date(ram_in)
    )
}

/// Says that they were there from the first.
pub(crate) fn with_him_from(ram_in: NaiveDate) -> String {
    format!("They were with him from {}", short_date(ram_in))
}

/// Returns how a group stands: "24 ewes · ram in since 1 Oct, counted as in until 21 Nov".
pub(crate) fn group(group: &Group, today: NaiveDate) -> String {
    let ewes = match group.ewes().count() {
        1 => "1 ewe".to_owned(),
        ewes => format!("{ewes} ewes"),
    };
    let ram = match group.ram_times().last() {
        None => "no ram yet".to_owned(),
        Some((came, None)) => {
            let day = came.local().date();
            let until = Mating::new(day, None).map(|mating| mating.ram_out());
            let counted = until.map(|until| {
                let until_when = short_date(until);
                if today > until {
                    format!(", counted only until {until_when}: say when he came out")
                } else {
                    format!(", counted as in until {until_when}")
                }
            });
            format!("ram in since {}{}", short_date(day), counted.unwrap_or_default())
        }
        Some((came, Some(out))) => {
            format!("ram in {} to {}", short_date(came.local().date()), short_date(out.local().date()))
        }
    };
    format!("{ewes} · {ram}")
}

/// Returns what a typed list would do, a line each: known, new, repeated, unread.
pub(crate) fn preview(
    known: usize,
    fresh: &[String],
    repeated: &[String],
    unread: &[(String, Unread)],
) -> Vec<String> {
    let mut lines = Vec::new();
    if known > 0 {
        lines.push(format!("*{known}* of your ewes"));
    }
    if !fresh.is_empty() {
        // A slip of the finger shows first, not behind the dots: what is unlike most.
        let (mut odd, mut tags): (Vec<String>, Vec<String>) =
            fresh.iter().cloned().partition(|tag| tag.contains(char::is_alphabetic));
        if odd.len() > tags.len() {
            std::mem::swap(&mut odd, &mut tags);
        }
        lines.push(format!("*{}* new to the book: {}", fresh.len(), few(&[odd, tags].concat())));
    }
    if !repeated.is_empty() {
        lines.push(format!("More than once, counted once: {}", few(repeated)));
    }
    lines.extend(unread.iter().take(5).map(|(bit, why)| {
        let why = match why {
            Unread::Backwards => "ends before it begins",
            Unread::TooMany => "is more than 2000 tags",
            Unread::NoRange => "is no range",
        };
        format!("“{bit}” {why}: *left out*")
    }));
    lines
}

fn few(tags: &[String]) -> String {
    const SHOWN: usize = 6;
    let mut shown = tags.iter().take(SHOWN).cloned().collect::<Vec<_>>().join(", ");
    if tags.len() > SHOWN {
        shown += ", …";
    }
    shown
}

/// Returns the button that puts them in.
pub(crate) fn put_in(ewes: usize) -> String {
    if ewes == 1 { "Put 1 ewe in".to_owned() } else { format!("Put {ewes} ewes in") }
}

/// Says how many days away a date is: "today", "in 3 days", "5 days ago".
pub(crate) fn away(date: NaiveDate, today: NaiveDate) -> String {
    let days: TimeDelta = date.signed_duration_since(today);
    match days.num_days() {
        0 => "today".to_owned(),
        1 => "tomorrow".to_owned(),
        -1 => "yesterday".to_owned(),
        days @ 2.. => format!("in {days} days"),
        days => format!("{} days ago", -days),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_small_chance_is_not_told_as_none() {
        assert_eq!((chance(0.004).as_str(), chance(0.386).as_str()), ("under 1 %", "39 %"));
    }

    #[test]
    fn a_list_of_tags_says_what_becomes_of_each() {
        let tags = |range: std::ops::Range<u8>| range.map(|tag| tag.to_string()).collect::<Vec<_>>();
        let lines = preview(3, &tags(1..9), &tags(4..5), &[("9-3".to_owned(), Unread::Backwards)]);
        assert_eq!(
            lines,
            [
                "*3* of your ewes",
                "*8* new to the book: 1, 2, 3, 4, 5, 6, …",
                "More than once, counted once: 4",
                "“9-3” ends before it begins: *left out*",
            ]
        );
    }
}
