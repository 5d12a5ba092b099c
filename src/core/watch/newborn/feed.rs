//! The next feed by hand: in the first day from the colostrum wanted, later from the bottle table.
//!
//! A lamb seen to suck since its last feed is its dam's again and has no feeding hours. The table goes by the present
//! weight; an old one is none.

use super::{Discharge, Duty, Task, hold_milk, want};
use crate::book::{Animal, Event, Milk, Way};
use crate::flock::Lamb;
use crate::practice::Practice;
use crate::reckon::{bottle, feeds};
use crate::units::{Moment, TimeDelta, Volume};

/// While the weight is not known, the next feed is due so long after the last (ours).
const WITHOUT_WEIGHT: TimeDelta = TimeDelta::hours(4);
/// A feed is late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(1);

pub(super) fn duty(lamb: &Lamb, now: Moment, practice: &Practice) -> Option<Duty> {
    let last = lamb.feeds.last().filter(|_| lamb.hand_fed())?;
    let age = lamb.age(now);
    let (due, volume) = if age < TimeDelta::hours(24) {
        match want(lamb, practice) {
            Some(want) => {
                let given = lamb.given_first_day(now);
                let next = feeds::next(&want, given, Some(last.at.since(lamb.born)), age)?;
                (lamb.born + next.due_age, Some(next.volume.offered(practice.system)))
            }
            None => (last.at + WITHOUT_WEIGHT, None),
        }
    } else {
        let day = bottle::day(age, lamb.recent_weight(now), practice.bottle_table).ok()?;
        let between = TimeDelta::minutes(24 * 60 / i64::from(day.feeds.max(1)));
        (last.at + between, Some(day.per_feed.offered(practice.system)))
    };
    let milk = next_milk(lamb, now, practice);
    let hold = hold_milk(lamb).is_some();
    Some(Duty {
        subject: Animal::Lamb(lamb.id),
        task: Task::Feed { volume: volume.filter(|_| !hold), hold },
        since: last.at,
        from: last.at,
        due,
        late: due + LATE_AFTER,
        discharge: if hold { Discharge::Open } else { discharge(lamb, now, volume, milk, last.way) },
        put_off: None,
    })
}

/// A tube is never one tap away: its safety list is read first. Nor is a feed that the guard would refuse.
fn discharge(lamb: &Lamb, now: Moment, volume: Option<Volume>, milk: Milk, way: Way) -> Discharge {
    let day = lamb.given(now - TimeDelta::hours(24), now);
    let guarded = |volume: &Volume| feeds::check(*volume, lamb.weight(), lamb.age(now), day).is_ok();
    match (volume.filter(guarded), way) {
        (Some(volume), Way::Bottle) => {
            Discharge::Note(Event::Fed { lamb: lamb.id, volume, milk, way: Way::Bottle })
        }
        (Some(_), Way::Tube) | (None, Way::Bottle | Way::Tube) => Discharge::Open,
    }
}

/// Returns what the next feed by hand is, going by the last.
///
/// In the first day it is colostrum: its dam's, or another ewe's where the dam is not known. After that colostrum
/// gives way to milk replacer, unless milk was given already; where the farm's table still says colostrum, it stays.
#[must_use]
pub fn next_milk(lamb: &Lamb, now: Moment, practice: &Practice) -> Milk {
    let last = lamb.feeds.last().map(|feed| feed.milk);
    let age = lamb.age(now);
    let colostrum = age < TimeDelta::hours(24)
        || bottle::day(age, lamb.recent_weight(now), practice.bottle_table)
            .is_ok_and(|day| day.milk == bottle::Milk::Colostrum);
    match (last, colostrum) {
        (Some(last), true) => last,
        (None, true) if lamb.dam.is_some() => Milk::DamColostrum,
        (None, true) => Milk::EweColostrum,
        (Some(Milk::Milk), false) => Milk::Milk,
        (
            Some(
                Milk::DamColostrum
                | Milk::EweColostrum
                | Milk::OtherColostrum
                | Milk::PowderColostrum
                | Milk::Replacer,
            )
            | None,
            false,
        ) => Milk::Replacer,
    }
}
