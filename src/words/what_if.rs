//! A season before it happens: what is asked, what two plans come to side by side, and next season from this one.

use chrono::{Datelike, NaiveDate};
use yeanling_core::reckon::season::breeding::BreedingSeason;
use yeanling_core::reckon::season::budget::Budget;
use yeanling_core::reckon::season::feed_groups::FeedingCard;
use yeanling_core::seasons::{NextGroup, NoWhatIf, WhatIf};
use yeanling_core::units::System;

use super::common::{long_date, number, short_date};
use super::feed::{heavy, refused};
use super::season_forecast::chance;
use super::{animals, time};

/// The screen's name.
pub const TITLE: &str = "Plan a season";
/// What it does, where it is offered.
pub const SUB: &str = "Ram, nights, pens and feed, before it happens";
/// Says that nothing is noted.
pub const UNDER: &str = "Try what you like: nothing counts until you take a plan.";
/// Heads what there is.
pub const FARM: &str = "What you have";
/// How many ewes go to the ram.
pub const EWES: &str = "Ewes to put to the ram";
/// How many pens there are.
pub const PENS: &str = "Bonding pens there are";
/// How many people.
pub const PEOPLE: &str = "People who can be up at night";
/// How long they are housed.
pub const HOUSING: &str = "Days in the barn on hay";
/// The unit of that.
pub const DAYS: &str = "days";
/// Heads the plans.
pub const PLANS: [&str; 2] = ["Plan A", "Plan B"];
/// What a plan goes by.
pub const BY: &str = "It goes by";
/// A month of lambing.
pub const MONTH: &str = "Lambing month";
/// A last day.
pub const LAST: &str = "All born before";
/// There is no second plan.
pub const NO_PLAN: &str = "No second plan";
/// The last day, as it is typed.
pub const LAST_DAY: &str = "All born before";
/// How long the ram is in.
pub const RAM_DAYS: &str = "Ram in for";
/// Heads what it comes to.
pub const RESULT: &str = "What it comes to";
/// What is still to be typed.
pub const TYPE_ALL: &str = "Enter the ewes, and a month or a day.";
/// No day.
pub const NO_DAY: &str = "That is not a date. Enter year, month, day.";
/// Out of season.
pub const OUT_OF_SEASON: &str =
    "The ram goes in out of season: many ewes may not be in heat. These nights are a wide guess.";
/// The housing is too short.
pub const TOO_SHORT: &str = "Lambing lasts longer than the days in the barn.";
/// For whom a plan is taken.
pub const FOR: &str = "Take it for";
/// A new group.
pub const NEW_GROUP: &str = "a new group";
/// Heads next season.
pub const NEXT: &str = "Next season from this one";
/// Says what it does.
pub const NEXT_TEXT: &str = "The same groups and rams a year on, by the same weekday. Ewes that meet a cull rule stay out, kept ewe lambs come in.";
/// Takes it.
pub const TAKE: &str = "Take it";

/// The names of the rows.
pub const RAM_IN: &str = "Ram in";
/// He comes out.
pub const RAM_OUT: &str = "Ram out";
/// The first lambs.
pub const FIRST: &str = "First lambs possible";
/// The last lambs.
pub const LAST_LAMBS: &str = "Last lambs";
/// Half of the births.
pub const HALF: &str = "Half of the lambings";
/// The busiest night.
pub const BUSIEST: &str = "Busiest night";
/// Nights on which someone is up.
pub const UP: &str = "Nights to be up";
/// Pens that are needed.
pub const NEED_PENS: &str = "Pens needed";
/// Hay.
pub const HAY: &str = "Hay";
/// Grain.
pub const GRAIN: &str = "Extra feed";

/// Returns a month of the year by its number, 1 to 12: "Apr".
pub fn month(number: u32) -> &'static str {
    NaiveDate::from_ymd_opt(2000, number, 1).map_or("", time::month)
}

/// Returns for how long the ram is in: "34 days, 2 cycles".
pub fn ram_days(days: u16) -> String {
    format!("{days} days, {} cycles", days / 17)
}

/// Returns a day with its year, since it lies ahead: "10 Nov 2026".
pub fn day(day: NaiveDate) -> String {
    long_date(day)
}

/// Joins what is said of one plan, or of both.
fn each(said: &[String]) -> String {
    match said {
        [one] => one.clone(),
        all => all
            .iter()
            .zip(["A", "B"])
            .map(|(said, plan)| format!("{plan}: {said}"))
            .collect::<Vec<_>>()
            .join(" · "),
    }
}

/// Returns the nights that hold half of the lambings: "Half of the lambings: 6 Apr to 19 Apr".
pub fn half(of: &[&WhatIf]) -> String {
    let told = |one: &&WhatIf| {
        let (from, to) = one.forecast.most;
        if from == to { short_date(from) } else { format!("{} to {}", short_date(from), short_date(to)) }
    };
    format!("{HALF}: {}", each(&of.iter().map(told).collect::<Vec<_>>()))
}

/// Returns the busiest night: "9 Apr".
pub fn busiest(of: &WhatIf) -> String {
    short_date(of.forecast.busiest.0)
}

/// Returns how many lamb on the busiest night, and on most of such nights at most: "about 2.6 ewes, rarely over 5".
pub fn on_the_busiest(of: &[&WhatIf]) -> String {
    let told = |one: &&WhatIf| {
        let (night, ewes) = one.forecast.busiest;
        let high = one.forecast.nights.iter().find(|one| one.date == night).map_or(0, |one| one.births.high);
        format!("about {} ewes, rarely over {high}", number(ewes, 1))
    };
    format!("{BUSIEST}: {}", each(&of.iter().map(told).collect::<Vec<_>>()))
}

/// Returns how many nights each person is up: "19 each for 2 people".
pub fn shared(of: &[&WhatIf], people: u32) -> String {
    let told = |one: &&WhatIf| match people {
        0 => "nobody to share them".to_owned(),
        1 => "all of them yours".to_owned(),
        people => format!("{} each", one.nights_up.div_ceil(people)),
    };
    let said = of.iter().map(told).collect::<Vec<_>>();
    let each = if said.iter().all(|one| Some(one) == said.first()) {
        said.first().cloned().unwrap_or_default()
    } else {
        each(&said)
    };
    format!("{UP}: those with a lambing 1 time in 10 or more; {each}")
}

/// Returns whether the pens are enough: "6 there: short of 2", "8 there: enough".
pub fn pens(of: &[&WhatIf], there: u32) -> String {
    let told = |one: &&WhatIf| match one.pens.enough[1].saturating_sub(there) {
        0 => "enough".to_owned(),
        short => format!("short of {short}"),
    };
    format!(
        "{NEED_PENS}: enough 95 times in 100; {there} there: {}",
        each(&of.iter().map(told).collect::<Vec<_>>())
    )
}

/// Returns hay as its weight.
pub fn hay(hay: &Budget, system: System) -> String {
    heavy(hay.total, system)
}

/// Returns the hay in bales: "525 bales of 20 kg, over 60 days".
pub fn bales(of: &[&WhatIf], system: System) -> String {
    let told = |one: &&WhatIf| format!("{} bales of {}", one.hay.bales, heavy(one.hay.bale, system));
    let days = of.first().map_or(0, |one| one.hay.days);
    let first = of.first().map(told).unwrap_or_default();
    format!("{HAY}: {first}, over {days} days")
}

/// Returns the grain as its weight.
pub fn grain(card: Option<&FeedingCard>, system: System) -> String {
    card.map_or_else(|| "–".to_owned(), |card| heavy(card.given, system))
}

/// Returns the grain in bags: "21 bags of 25 kg, all fed as twins".
pub fn bags(of: &[&WhatIf], system: System) -> String {
    let told = |one: &&WhatIf| {
        one.grain.as_ref().map(|card| format!("{} bags of {}", card.bags, heavy(card.bag, system)))
    };
    let said: Vec<String> = of.iter().filter_map(told).collect();
    format!("{GRAIN}: from six weeks before the first lamb, all as twins; {}", each(&said))
}

/// Returns a plan in one line, for those who take it: "Plan A: ram in 10 Nov 2026, lambs 1 Apr to 15 May".
pub fn in_a_line(place: usize, of: &WhatIf) -> String {
    let name = PLANS.get(place).copied().unwrap_or_default();
    format!(
        "*{name}*: ram in *{}* to {}, lambs *{}* to *{}*",
        day(of.ram_in),
        short_date(of.ram_out),
        short_date(of.first),
        short_date(of.last)
    )
}

/// Returns what must be said of a plan; nothing where nothing must.
pub fn cautions(of: &WhatIf) -> Vec<&'static str> {
    let outside = match of.season {
        BreedingSeason::Outside => Some(OUT_OF_SEASON),
        BreedingSeason::Within => None,
    };
    outside.into_iter().chain(of.housed_too_short.then_some(TOO_SHORT)).collect()
}

/// Returns the button that takes a plan: "Take plan A".
pub fn take(place: usize) -> String {
    format!("Take {}", PLANS.get(place).copied().unwrap_or_default().replace('P', "p"))
}

/// Returns what a new group is called: "Lambing Apr 2027".
pub fn group_name(first: NaiveDate) -> String {
    format!("Lambing {} {}", time::month(first), first.year())
}

/// Returns why a plan cannot be.
pub fn no_plan(why: &NoWhatIf, system: System) -> String {
    match why {
        NoWhatIf::Passed { ram_in, earliest } => format!(
            "The ram would have had to go in on {}. The earliest day you can enter is {}.",
            long_date(*ram_in),
            long_date(*earliest)
        ),
        NoWhatIf::TooFar { ram_in, most } => {
            format!("The ram would go in on {}. You can plan to {}.", long_date(*ram_in), long_date(*most))
        }
        NoWhatIf::Refused(error) => refused(error, system),
    }
}

/// Returns a group of next season in a line: "24 ewes · ram Flint in 2 Oct 2027".
pub fn next(next: &NextGroup) -> String {
    let rams = if next.rams.is_empty() { "ram".to_owned() } else { format!("ram {}", next.rams.join(", ")) };
    format!("{} · {rams} in *{}*", animals::ewes(next.ewes.len()), day(next.ram_in))
}

/// Returns who stays out and who comes in: "2 culls out · 3 new in"; nothing where it is the same ewes.
pub fn changed(next: &NextGroup) -> String {
    let told = |count: usize, one: &str, more: &str| match count {
        0 => None,
        1 => Some(format!("1 {one}")),
        count => Some(format!("{count} {more}")),
    };
    let out = told(next.culls.len(), "cull out", "culls out");
    let new = told(next.new.len(), "kept ewe lamb in", "kept ewe lambs in");
    out.into_iter().chain(new).collect::<Vec<_>>().join(" · ")
}

/// Returns how often a night counts as one to be up: "10%".
pub fn up_from(share: f64) -> String {
    chance(share)
}
