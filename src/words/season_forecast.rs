//! The season ahead: who lambs tonight, lambings per night, pens, dates.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::reckon::season::conception::Likely;
use yeanling_core::reckon::season::dates::{DateTask, Dated};
use yeanling_core::reckon::season::ewe::{Ground, LambingForecast, NoForecast};
use yeanling_core::reckon::season::forecast::Forecast;
use yeanling_core::reckon::season::pens::Rule;
use yeanling_core::seasons::Overdue;
use yeanling_core::units::System;

use super::common::{feed_mass, number, short_date};
use super::labor;

/// The screen's name.
pub const TITLE: &str = "Season";
/// Says what to do first.
pub const EMPTY: &str =
    "Form a group. Add its ewes and the ram: then you see the season’s nights, dates and pens.";
/// Heads who is near.
pub const WHO: &str = "Close to lambing";
/// Says that nobody is.
pub const NOBODY_NEAR: &str = "No ewe is likely within 24 hours.";
/// Heads the ewes whose days have passed.
pub const OVERDUE: &str = "Overdue";
/// Says what that may be.
pub const OVERDUE_LEAD: &str = "Not lambed, and the last day has passed: another date, empty, lambed unseen, or a dead lamb inside. Look at each ewe. Dull, off her feed or a bad smell: call your vet now.";
/// Says of them on the Watch what is up.
pub const OVERDUE_TEXT: &str = "Overdue, not lambed";
/// And what to do.
pub const OVERDUE_SAYS: &str = "look at each";
/// Heads the lambings by night.
pub const NIGHTS: &str = "Lambings per night";
/// Names the bars.
pub const EXPECTED: &str = "expected";
/// Names the spreads.
pub const SPREAD: &str = "range, 9 nights in 10";
/// Counts them at the side of their chart.
pub const LAMBINGS: &str = "lambings";
/// Names what was.
pub const HAPPENED: &str = "lambed";
/// Says that nobody is awaited.
pub const NOBODY: &str = "No lambings expected.";
/// Heads the pens.
pub const PENS: &str = "Bonding pens";
/// Counts them at the side of their chart.
pub const PENS_UNIT: &str = "pens";
/// Folds their chart.
pub const PENS_BY_NIGHT: &str = "Pens night by night";
/// Names the bars of the pens.
pub const PENS_EXPECTED: &str = "on average";
/// Names the line of the pens.
pub const PENS_ENOUGH: &str = "enough 95 nights in 100";
/// Heads the dates.
pub const DATES: &str = "Dates";
/// Hands the dates to the calendar.
pub const TO_CALENDAR: &str = "Add dates to my calendar";
/// The name of the calendar file.
pub const FILE: &str = "yeanling-season.ics";
/// Heads the groups.
pub const GROUPS: &str = "Groups";
/// Forms a group.
pub const NEW_GROUP: &str = "Form a group";
/// Asks for its name.
pub const NAME: &str = "Name";
/// A group of that name stands already.
pub const SAME_NAME: &str = "There is a group with that name. Choose another name.";
/// Heads when a ewe may lamb.
pub const HERS: &str = "When she may lamb";
/// What is uncertain in any forecast.
pub const MAY_BUNCH: &str = "Ewes long away from a ram come in heat about 18 and 24 days after he comes: then lambings peak twice, about 6 days apart.";
/// How a sign counts.
pub const SIGNS_COUNT: &str = "A sign seen tonight counts far more than any date. Look at her.";

/// Returns how the season stands: "60 ewes with the ram · 12 have lambed".
pub fn stands(put: u32, lambed: u32) -> String {
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

/// Returns a chance in percent: "38%", "under 1%".
pub fn chance(share: f64) -> String {
    if share < 0.01 { "under 1%".to_owned() } else { format!("{}%", number(share * 100.0, 0)) }
}

/// Returns the chances of a ewe: "*38%* within 12 h, *62%* within 24 h".
pub fn within(lambing_forecast: &LambingForecast) -> String {
    format!(
        "*{}* within 12 h, *{}* within 24 h",
        chance(lambing_forecast.within_12h),
        chance(lambing_forecast.within_24h)
    )
}

/// Returns her days: "likely 6 Mar · 8 in 10 from 3 to 9 Mar · last 13 Apr".
pub fn days(lambing_forecast: &LambingForecast) -> String {
    let (from, to) = lambing_forecast.run;
    format!(
        "likely {} · 8 in 10 {} · last {}",
        short_date(lambing_forecast.likely),
        span(from, to),
        short_date(lambing_forecast.last)
    )
}

/// Returns from which day to which: "from 3 Mar to 9 Mar", "on 3 Mar".
fn span(from: NaiveDate, to: NaiveDate) -> String {
    if from == to {
        format!("on {}", short_date(from))
    } else {
        format!("from {} to {}", short_date(from), short_date(to))
    }
}

/// Returns how likely she is in lamb to her last mark: "In lamb to the mark of 3 Oct: *62%*"; nothing without a mark.
pub fn to_mark(lambing_forecast: &LambingForecast) -> String {
    let marked = |ground: &Ground| match ground {
        Ground::Mark { on } => Some(*on),
        Ground::Sign { .. } | Ground::AgeAtScan { .. } | Ground::Group { .. } => None,
    };
    let on = lambing_forecast.grounds.iter().find_map(marked);
    let told = |(share, on): (f64, NaiveDate)| {
        format!("In lamb to the mark of {}: *{}*", short_date(on), chance(share))
    };
    lambing_forecast.to_mark.zip(on).map(told).unwrap_or_default()
}

/// Returns that a ewe has lambed: "lambed 24 Feb, 2 lambs".
pub fn has_lambed(on: NaiveDate, lambs: usize) -> String {
    let lambs = if lambs == 1 { "1 lamb".to_owned() } else { format!("{lambs} lambs") };
    format!("*lambed* {}, {lambs}", short_date(on))
}

/// Returns on what her days rest.
pub fn ground(ground: &Ground) -> String {
    match ground {
        Ground::Sign { sign, factor } => {
            format!("{}: lambing now about {} times likelier", labor::sign(*sign), number(*factor, 0))
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

/// Returns the sum of her days, in whole days as it is told: "3 Oct + 147 days = 27 Feb"; of a sign, which names no day, none.
pub fn sum(ground: &Ground, carries_days: f64) -> Option<String> {
    let carries: i64 = number(carries_days, 0).parse().ok()?;
    let after = |day: NaiveDate, days: i64| short_date(day + TimeDelta::days(days));
    let sum = |day: NaiveDate| format!("{} + {carries} days = *{}*", short_date(day), after(day, carries));
    match ground {
        Ground::Sign { .. } => None,
        Ground::AgeAtScan { on, age_days } => {
            let lambs = after(*on, carries - i64::from(*age_days));
            Some(format!("{} − {age_days} + {carries} days = *{lambs}*", short_date(*on)))
        }
        Ground::Mark { on } => Some(sum(*on)),
        Ground::Group { ram_in, ram_out } => Some(format!("{}, to {}", sum(*ram_in), sum(*ram_out))),
    }
}

/// Returns why nothing can be told of a ewe.
pub fn no_outlook(why: &NoForecast) -> String {
    match why {
        NoForecast::ScannedEmpty { on } => format!("Scanned empty on {}.", short_date(*on)),
        NoForecast::ScanTooEarly { day } => {
            format!(
                "Scanned {day} days after ram in: too early to count on. Scan her again on day 30 or later."
            )
        }
        NoForecast::ScanDoesNotFit { on, age_days } => format!(
            "The scan of {} says {age_days} days, and no mating in her group fits that. Another ram, or another date?",
            short_date(*on)
        ),
        NoForecast::InLambWithoutMating { on } => {
            format!("Scanned in lamb on {}, but no mating is noted.", short_date(*on))
        }
        NoForecast::MarkWithoutRam { mark, ram_in, ram_out } => format!(
            "The mark of {} is outside the ram’s days, {} to {}.",
            short_date(*mark),
            short_date(*ram_in),
            short_date(*ram_out)
        ),
        NoForecast::Passed { last } => {
            format!("Overdue since {}: empty, another date, or lambed unseen?", short_date(*last))
        }
        NoForecast::Refused(_) => "Her entries do not add up. Check them.".to_owned(),
    }
}

/// Returns how long a ewe is past her days: "last day *19 Jan*, 7 days ago · scanned *2*".
pub fn overdue(one: &Overdue, today: NaiveDate) -> String {
    let scanned = one.lambs.map(|lambs| format!(" · scanned *{lambs}*")).unwrap_or_default();
    format!("last day *{}*, {}{scanned}", short_date(one.last), away(one.last, today))
}

/// Returns how many will lamb: "Of 40 put to the ram, 36 to 39 will lamb, 9 times in 10. 1 was scanned empty."
pub fn likely(likely: &Likely) -> String {
    let Likely { put, low, high, empty, .. } = likely;
    let range = if low == high { low.to_string() } else { format!("{low} to {high}") };
    let empty = match empty {
        0 => String::new(),
        1 => " *1* was scanned empty.".to_owned(),
        empty => format!(" *{empty}* were scanned empty."),
    };
    format!("Of *{put}* put to the ram, *{range}* will lamb, 9 times in 10.{empty}")
}

/// Says that ewes were put to the ram out of season, so that every range is wide.
pub const OUT_OF_SEASON: &str = "Mated out of season: many ewes may not have been in heat. The ranges are wide until lambings or a scan tell more.";

/// Returns where a group starts, for the legend of a chart: "Lower field from 20 Feb".
pub fn starts(group: &str, on: NaiveDate) -> String {
    format!("{group} from {}", short_date(on))
}

/// Returns how many pens to have and when, as the chart behind it draws them, and how many there are: "Have *4 pens* from
/// 18 Mar to 27 Mar, the first on 12 Mar, the last until 3 Apr. 3 are set up."
pub fn have_pens(
    pens: u32,
    most: Option<(NaiveDate, NaiveDate)>,
    any: Option<(NaiveDate, NaiveDate)>,
    (there, taken): (usize, usize),
) -> String {
    let (Some(most), Some(any)) = (most.filter(|_| pens > 0), any) else {
        return "No pens needed.".to_owned();
    };
    let pens = if pens == 1 { "1 pen".to_owned() } else { format!("{pens} pens") };
    let when = |(first, last): (NaiveDate, NaiveDate)| {
        if first == last {
            format!("on {}", short_date(first))
        } else {
            format!("from {} to {}", short_date(first), short_date(last))
        }
    };
    let outer = if most == any {
        String::new()
    } else {
        format!(", fewer from {} and until {}", short_date(any.0), short_date(any.1))
    };
    let there = match there {
        0 => "None is set up.".to_owned(),
        1 => "1 is set up.".to_owned(),
        there => format!("{there} are set up."),
    };
    let taken = match taken {
        0 => String::new(),
        1 => " The 1 in use now comes on top.".to_owned(),
        taken => format!(" The {taken} in use now come on top."),
    };
    format!("Have *{pens}* {}{outer}. {there}{taken}", when(most))
}

/// Returns when most lamb: "Half of the lambings *from 2 Mar to 9 Mar* · busiest night *4 Mar*, about *2.6*".
pub fn most(forecast: &Forecast) -> String {
    let ((from, to), (busiest, ewes)) = (forecast.most, forecast.busiest);
    format!(
        "Half of the lambings *{}* · busiest night *{}*, about *{}*",
        span(from, to),
        short_date(busiest),
        number(ewes, 1)
    )
}

/// Tells the chart of births in words.
pub fn nights_label(forecast: &Forecast) -> String {
    let (low, high) = (forecast.births.low, forecast.births.high);
    let range = if low == high { String::new() } else { format!(", {low} to {high} 9 times in 10") };
    format!(
        "{} lambings to come{range}. {}.",
        number(forecast.births.mean, 0),
        most(forecast).replace('*', "")
    )
}

/// Labels how sure a number of pens is.
pub fn sure(times: u8) -> String {
    format!("enough {times} nights in 100")
}

/// Tells the chart of pens in words.
pub fn pens_label(enough: [u32; 3], busiest: NaiveDate) -> String {
    let [ninety, ninety_five, ninety_nine] = enough;
    format!(
        "Most pens around {}: {ninety}, {ninety_five} and {ninety_nine} are enough on 90, 95 and 99 nights in 100.",
        short_date(busiest)
    )
}

/// Returns what a rule of thumb says.
pub fn rule(rule: Rule, pens: (u32, u32)) -> String {
    let name = match rule {
        Rule::Usual => "One for 7 to 8 ewes",
        Rule::Prolific => "One for 5 to 6 ewes, prolific",
        Rule::Ten => "One for ten ewes",
    };
    let (few, many) = pens;
    if few == many { format!("{name}: {few}") } else { format!("{name}: {few} to {many}") }
}

/// Returns what is to be done on a date.
pub fn what(what: &DateTask, system: System) -> String {
    match what {
        DateTask::ScoreBeforeRam => "Score the ewes: eight weeks to correct condition".to_owned(),
        DateTask::ScoreAtRam => "Ram in: score the ewes".to_owned(),
        DateTask::CrayonChange { .. } => "Change the crayon".to_owned(),
        DateTask::RamOut => "Ram out".to_owned(),
        DateTask::ScoreAtMid => "Score the ewes in mid pregnancy".to_owned(),
        DateTask::ScoreLate => "Score the ewes before the last weeks".to_owned(),
        DateTask::Feed { each } => {
            format!("Extra feed: up to {} a ewe, by its group’s card", feed_mass(*each, system))
        }
        DateTask::Booster { from, until } => {
            format!("Booster, from {} to {}. Ask your vet", short_date(*from), short_date(*until))
        }
        DateTask::WatchFrom => "First lambs possible: watch at night".to_owned(),
        DateTask::WatchUntil => "Last night to watch".to_owned(),
        DateTask::FeedUntil => "Stop the extra feed if there is grass".to_owned(),
    }
}

/// Returns how many of a group are still to have their booster: "Booster for the 3 ewes that have not had it".
pub fn without_booster(ewes: usize) -> String {
    match ewes {
        1 => "Booster for the 1 ewe that has not had it. Ask your vet".to_owned(),
        ewes => format!("Booster for the {ewes} ewes that have not had it. Ask your vet"),
    }
}

/// Returns when a thing is asked for: how far its day is; of a booster whose window is open, until when that is.
pub fn when(dated: &Dated, today: NaiveDate) -> String {
    match dated.what {
        DateTask::Booster { from, until } if (from..=until).contains(&today) => {
            format!("due, until {}", short_date(until))
        }
        DateTask::Booster { until, .. } if until < today => {
            format!("late, its best days ended {}", away(until, today))
        }
        DateTask::Booster { .. }
        | DateTask::ScoreBeforeRam
        | DateTask::ScoreAtRam
        | DateTask::CrayonChange { .. }
        | DateTask::RamOut
        | DateTask::ScoreAtMid
        | DateTask::ScoreLate
        | DateTask::Feed { .. }
        | DateTask::WatchFrom
        | DateTask::WatchUntil
        | DateTask::FeedUntil => away(dated.date, today),
    }
}

/// Names a date for good, so that a second calendar file moves it.
pub fn key(what: &DateTask, place: usize) -> String {
    let name = match what {
        DateTask::ScoreBeforeRam => "score-before-ram",
        DateTask::ScoreAtRam => "score-at-ram",
        DateTask::CrayonChange { number } => return format!("crayon-{number}"),
        DateTask::RamOut => "ram-out",
        DateTask::ScoreAtMid => "score-mid",
        DateTask::ScoreLate => "score-late",
        DateTask::Feed { .. } => return format!("feed-{place}"),
        DateTask::Booster { .. } => "booster",
        DateTask::WatchFrom => "watch-from",
        DateTask::WatchUntil => "watch-until",
        DateTask::FeedUntil => "feed-until",
    };
    name.to_owned()
}

/// Says how many days away a date is: "today", "in 3 days", "5 days ago".
pub fn away(date: NaiveDate, today: NaiveDate) -> String {
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
    fn the_sum_of_a_ewes_days_is_one_that_can_be_checked() {
        let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day).expect("a day");
        let sum = |ground| sum(&ground, 146.6).unwrap_or_default();
        assert_eq!(sum(Ground::Mark { on: day(10, 3) }), "3 Oct + 147 days = *27 Feb*");
        assert_eq!(
            sum(Ground::AgeAtScan { on: day(12, 12), age_days: 70 }),
            "12 Dec − 70 + 147 days = *27 Feb*"
        );
        let group = Ground::Group { ram_in: day(10, 1), ram_out: day(11, 20) };
        assert_eq!(sum(group), "1 Oct + 147 days = *25 Feb*, to 20 Nov + 147 days = *16 Apr*");
    }

    #[test]
    fn a_small_chance_is_not_told_as_none() {
        assert_eq!((chance(0.004).as_str(), chance(0.386).as_str()), ("under 1%", "39%"));
    }
}
