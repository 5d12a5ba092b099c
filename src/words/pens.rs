//! The bonding pens: who is in, who may go out, and why not yet.

use yeanling_core::book::{Animal, PenSize};
use yeanling_core::flock::{Flock, Lamb, Pen};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Readiness, WhyNot};

use super::animals;
use super::common::{clock, day_and_clock, length, short_date, span, typed};

/// The screen's name.
pub const TITLE: &str = "Pens";
/// One pen, as a place to go back to.
pub const PEN: &str = "Pen";
/// Says what to do first.
pub const EMPTY: &str = "No pens yet. Set one up, then put a ewe in. Her lambs go with her.";
/// Sets a pen up.
pub const NEW: &str = "Set up a pen";
/// Labels the name.
pub const NAME: &str = "Name";
/// Labels one side.
pub const WIDE: &str = "Wide, if you like";
/// Labels the other side.
pub const DEEP: &str = "Deep, if you like";
/// Explains the size.
pub const SIZES: &str = "Published for small, medium and large ewes: 4 × 4, 5 × 5 and 5 × 6 ft (1.2 × 1.2, 1.5 × 1.5, 1.5 × 1.8 m).";
/// One side alone was given.
pub const BOTH_SIDES: &str = "Give both sides, or neither.";
/// A pen of that name stands already.
pub const SAME_NAME: &str = "There is a pen with that name. Choose another name.";
/// Puts a ewe in.
pub const PUT_IN: &str = "Put in";
/// Asks who goes in.
pub const PUT_IN_ASK: &str = "Who goes in?";
/// Lets them out.
pub const OUT: &str = "Out";
/// Lets them out before they may go.
pub const OUT_EARLY: &str = "Turn out early";
/// Moves them.
pub const MOVE: &str = "Move";
/// Asks where to.
pub const MOVE_ASK: &str = "Into which pen?";
/// Cleaned and bedded.
pub const CLEANED: &str = "Cleaned and bedded";
/// Gives another name.
pub const RENAME: &str = "Another name";
/// Takes the pen down.
pub const CLOSE: &str = "Remove pen";
/// Nobody is in.
pub const NOBODY: &str = "Empty, clean";
/// Nobody is in, and it was used.
pub const SOILED: &str = "Empty, not cleaned since";
/// They went in without cleaning.
pub const NOT_CLEANED: &str = "Was not cleaned before they went in.";
/// More than one ewe.
pub const TWO_EWES: &str = "Two ewes in one pen: lambs may be mixed up.";
/// They may go.
pub const READY: &str = "*Ready to turn out*";
/// Was taken down.
pub const CLOSED: &str = "This pen was removed. Its record stays.";

/// Says where a pen comes from.
pub const NO_PENS: &str = "There is no other pen. Set one up under Pens.";

/// Returns the name of a pen for a heading or a row.
pub fn pen(pen: &Pen) -> String {
    format!("Pen {}", pen.name)
}

/// Returns a size: "1.5 × 1.8 m".
pub fn size(size: PenSize, system: System) -> String {
    let wide = length(size.wide, system);
    let number = wide.split(' ').next().unwrap_or_default().to_owned();
    format!("{number} × {}", length(size.deep, system))
}

/// Returns who is in and since when: "Ewe 14 and 2 lambs · 1 day 2 h".
pub fn inside(flock: &Flock, animal: Animal, since: Moment, now: Moment) -> String {
    let name = animals::animal(flock, animal);
    let with = match animal {
        Animal::Ewe(ewe) => match flock.lambs_at_foot(ewe).len() {
            0 => String::new(),
            1 => " and her lamb".to_owned(),
            lambs => format!(" and {lambs} lambs"),
        },
        Animal::Lamb(_) => String::new(),
    };
    let stay = now.since(since);
    let stay =
        if stay < TimeDelta::minutes(1) { "just in".to_owned() } else { format!("in for {}", span(stay)) };
    format!("*{}*{with} · {stay}", typed(&name))
}

/// Returns whether a pair may go out, and all that holds it back.
pub fn readiness(flock: &Flock, readiness: &Readiness, now: Moment) -> String {
    if readiness.why_not.is_empty() {
        return READY.to_owned();
    }
    let why: Vec<String> =
        readiness.why_not.iter().map(|why| why_not(flock, *why, readiness.stay_over, now)).collect();
    format!("Not yet: {}", why.join("; "))
}

fn why_not(flock: &Flock, why: WhyNot, stay_over: Moment, now: Moment) -> String {
    match why {
        WhyNot::Stay => format!("stay ends {}", day_and_clock(stay_over, now)),
        WhyNot::NotFed(lamb) => format!("{} not seen to nurse, not fed", animals::lamb_of(flock, lamb)),
        WhyNot::Temperature(lamb) => {
            format!("{} was not at 39–40 °C at the last reading", animals::lamb_of(flock, lamb))
        }
        WhyNot::Held(lamb) => format!("{} is not well: open its card", animals::lamb_of(flock, lamb)),
        WhyNot::TurnedAway(lamb) => format!("{} is rejected by its dam", animals::lamb_of(flock, lamb)),
        WhyNot::NoLambs => "no living lamb with her".to_owned(),
    }
}

/// Prints the card of a pen.
pub const PRINT: &str = "Print its card";
/// Heads what is withheld, on the card.
pub const CARD_WITHHELD: &str = "In withdrawal";
/// Heads what is to do, on the card.
pub const CARD_TO_DO: &str = "Still to do";

/// Returns whose card it is and of which day: "Quarry Bank · 12 Mar 2026".
pub fn printed(farm: &str, day: &str) -> String {
    if farm.is_empty() { day.to_owned() } else { format!("{farm} · {day}") }
}

/// Returns a lamb in a line for paper: "12a, ewe lamb, born 25 Feb 03:12, 3.9 kg, navel 03:20, up 03:30, nursed 03:45".
pub fn card_lamb(flock: &Flock, lamb: &Lamb) -> String {
    // Paper lives longer than today: "yesterday" would be wrong tomorrow. The day stands once, with the birth.
    let born = lamb.born.local().date();
    let at = |moment: Moment| {
        let day = moment.local().date();
        if day == born { clock(moment) } else { format!("{} {}", short_date(day), clock(moment)) }
    };
    let first = |name: &str, times: &[Moment]| times.first().map(|time| format!("{name} {}", at(*time)));
    let weight = lamb.weight().map(|weight| super::common::mass(weight, flock.settings.system));
    let parts = [
        Some(animals::lamb(flock, lamb)),
        Some(animals::sex(lamb.sex).to_owned()),
        Some(format!("born {} {}", short_date(born), clock(lamb.born))),
        weight,
        first("navel", &lamb.navel),
        first("up", &lamb.stood),
        first("nursed", &lamb.sucked),
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// Returns when something is due, for paper: "25 Feb 05:28".
pub fn card_due(due: Moment) -> String {
    format!("{} {}", short_date(due.local().date()), clock(due))
}
