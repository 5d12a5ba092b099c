//! The next feed by hand: in the first day from the colostrum wanted, later from the bottle table.
//!
//! A lamb seen to suck since its last feed is its dam's again and has no feeding hours. The table goes by the last
//! weight that it is known to have had, so that its stomach is safe; an old one asks to be taken again first. A feed of
//! which a part was drunk counts as that part: the next comes the sooner, and the rest is offered until then.
//!
//! A lamb that was never weighed counts as 4 kg for the guard against too much; any other as its last weight until it
//! is weighed again. On the bottle, three days unweighed in the weeks of the table put weighing first.
//!
//! A part of a feed counts as its part: nine tenths of the least printed feed is a whole one; less brings the next
//! sooner, and until an hour has passed the rest is offered.

use super::{BeforeMilk, Completion, Duty, LambTask, Task, before_milk, target};
use crate::book::{Event, Milk, Way};
use crate::flock::{Feed, Flock, Lamb};
use crate::reckon::colostrum::ColostrumTarget;
use crate::reckon::{bottle, feeds};
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta, Volume};
use crate::watch::labor::udder::{DrawFrom, draw_from};
use crate::watch::may_be_fed;

/// While the weight is not known, the next feed is due so long after the last (ours).
const WITHOUT_WEIGHT: TimeDelta = TimeDelta::hours(4);
/// A feed is late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(1);

/// Of a feed so much and more is a whole one: a tenth is left to rounding and to the teat (ours).
pub(super) const WHOLE: f64 = 0.9;
/// Feeds within so long of each other are one meal, in one stomach (ours).
const ONE_MEAL: TimeDelta = TimeDelta::hours(1);

/// So long the colostrum wanted is what counts, then the table.
const DAY: TimeDelta = TimeDelta::hours(24);
/// A bottle is filled in steps of so many milliliters.
const STEP: f64 = 5.0;

/// What the next feed is, and the least that counts as a whole one.
struct Plan {
    volume: Option<Volume>,
    whole: Option<Volume>,
}

pub(super) fn duty(flock: &Flock, lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    let last = lamb.feeds.last().filter(|_| lamb.on_bottle())?;
    let plan = plan(lamb, now, settings)?;
    let (meal, part) = meal(lamb, plan.whole);
    let due = due(lamb, last, now, settings)?;
    // While the last meal is still in its stomach, the rest of it is what can be given.
    let open = part < WHOLE && now.since(last.at) < ONE_MEAL;
    let rest = plan.whole.map(|whole| whole.as_milliliters() - meal.as_milliliters()).filter(|_| open);
    let least = |volume: Volume, rest: f64| Volume::from_milliliters(volume.as_milliliters().min(rest));
    let volume =
        plan.volume.map(|volume| rest.map_or(volume, |rest| least(volume, rest)).offered(settings.system));
    let volume = volume.and_then(|volume| let_through(lamb, volume, if open { now } else { now.max(due) }));
    let milk = next_milk(flock, lamb, now, settings);
    let before = before_milk(lamb, now, settings);
    // What waits for more than the scale has no volume beside it.
    let told = volume.filter(|_| before.and_then(BeforeMilk::before_nursing).is_none());
    Some(Duty {
        task: Task::Lamb(lamb.id, LambTask::Feed { volume: told, before }),
        since: last.at,
        from: last.at,
        due,
        late: due + LATE_AFTER,
        danger: None,
        vet: None,
        completion: if before.is_none() {
            completion(lamb, now, volume, milk, last.way)
        } else {
            Completion::Open
        },
        put_off: None,
    })
}

/// The next whole feed: in the first day from the colostrum wanted, later from the bottle table.
fn plan(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Plan> {
    if lamb.least_age(now) < DAY {
        let Some(target) = target(lamb, settings) else { return Some(Plan { volume: None, whole: None }) };
        let next = first_day(lamb, &target, lamb.given_first_day(now), lamb.least_age(now))?;
        return Some(Plan { volume: Some(next.volume), whole: Some(target.next_feed) });
    }
    let day = table(lamb, lamb.age(now), now, settings)?;
    Some(Plan { volume: Some(day.per_feed), whole: Some(whole(&day)) })
}

/// When the next feed is due, by the hours that held when the last was given: no turn of a day makes it later.
fn due(lamb: &Lamb, last: &Feed, now: Moment, settings: &FarmSettings) -> Option<Moment> {
    let (wait, whole) = hours(lamb, last, now, settings)?;
    Some(last.at + scaled(wait, meal(lamb, whole).1))
}

/// How long after this feed, if it is a whole one, the next is due, and what a whole one is.
fn hours(
    lamb: &Lamb,
    last: &Feed,
    now: Moment,
    settings: &FarmSettings,
) -> Option<(TimeDelta, Option<Volume>)> {
    if lamb.least_age(last.at) < DAY {
        let Some(target) = target(lamb, settings) else { return Some((WITHOUT_WEIGHT, None)) };
        let given = lamb.given_first_day(last.at);
        if let Some(next) = first_day(lamb, &target, given, lamb.least_age(last.at)) {
            return Some(((lamb.born + next.due_age).since(last.at), Some(target.next_feed)));
        }
    }
    let day = table(lamb, lamb.age(last.at).max(DAY), now, settings)?;
    Some((TimeDelta::minutes(24 * 60 / i64::from(day.feeds.max(1))), Some(whole(&day))))
}

/// What its first day still wants after its last feed, if it wants more.
fn first_day(lamb: &Lamb, target: &ColostrumTarget, given: Volume, age: TimeDelta) -> Option<feeds::Next> {
    feeds::next(target, given, Some(lamb.feeds.last()?.at.since(lamb.born)), age)
}

/// The row of the farm's table for that age, by the last weight.
fn table(lamb: &Lamb, age: TimeDelta, now: Moment, settings: &FarmSettings) -> Option<bottle::Day> {
    let weight = lamb.last_weight(now).map(|weight| weight.mass);
    bottle::day(age, weight, settings.bottle_table).ok()
}

/// Returns the least that is one whole feed of this lamb at that time, if its weight lets it be known.
pub(super) fn one_feed(lamb: &Lamb, at: Moment, settings: &FarmSettings) -> Option<Volume> {
    if lamb.least_age(at) < DAY {
        return Some(target(lamb, settings)?.next_feed);
    }
    Some(whole(&table(lamb, lamb.age(at), at, settings)?))
}

/// The least that is a whole feed: the least of the printed row, or what a cap leaves of it.
fn whole(day: &bottle::Day) -> Volume {
    if day.per_feed < day.least { day.per_feed } else { day.least }
}

/// What was drunk at the last meal, and which part of a whole feed that is.
fn meal(lamb: &Lamb, whole: Option<Volume>) -> (Volume, f64) {
    let Some(last) = lamb.feeds.last() else { return (Volume::ZERO, 1.0) };
    let meal: Volume =
        lamb.feeds.iter().filter(|feed| last.at.since(feed.at) < ONE_MEAL).map(|feed| feed.volume).sum();
    let part = whole.map_or(1.0, |whole| meal.as_milliliters() / whole.as_milliliters());
    (meal, if part < WHOLE { part.max(0.0) } else { 1.0 })
}

/// A span times a part between 0 and 1, to the minute.
fn scaled(span: TimeDelta, part: f64) -> TimeDelta {
    let minutes = (0..=span.num_minutes().max(0)).rev();
    let most = span.as_seconds_f64() / 60.0 * part;
    let found =
        minutes.into_iter().find(|minute| TimeDelta::minutes(*minute).as_seconds_f64() / 60.0 <= most);
    if part >= 1.0 { span } else { TimeDelta::minutes(found.unwrap_or(0)) }
}

/// As much of a feed as the gate lets through when it comes, in whole steps of a bottle: the day goes by the birth weight,
/// and the stomach by the last one.
fn let_through(lamb: &Lamb, volume: Volume, at: Moment) -> Option<Volume> {
    let steps = std::iter::successors(Some(volume.as_milliliters()), |milliliters| Some(milliliters - STEP));
    let volumes = steps.take_while(|milliliters| *milliliters > 0.0).map(Volume::from_milliliters);
    volumes.into_iter().find(|volume| may_be_fed(lamb, None, *volume, at).is_ok())
}

/// A tube is never one tap away: its safety list is read first. Nor is a feed that would not be let through.
fn completion(lamb: &Lamb, now: Moment, volume: Option<Volume>, milk: Milk, way: Way) -> Completion {
    let guarded = |volume: &Volume| may_be_fed(lamb, None, *volume, now).is_ok();
    match (volume.filter(guarded), way) {
        (Some(volume), Way::Bottle) => {
            Completion::Note(Event::Fed { lamb: lamb.id, volume, milk, way: Way::Bottle })
        }
        (Some(_), Way::Tube) | (None, Way::Bottle | Way::Tube) => Completion::Open,
    }
}

/// Returns which half of its dam's udder its colostrum may be drawn from, neither of a dam that is here no more; nothing where
/// the dam is not known.
#[must_use]
pub fn dams_milk(flock: &Flock, lamb: &Lamb, now: Moment) -> Option<DrawFrom> {
    let dam = flock.ewe(lamb.dam?)?;
    Some(if dam.lives() { draw_from(dam, now) } else { DrawFrom::Neither })
}

/// Returns what the next feed by hand is, going by the last.
///
/// In the first day it is colostrum: its dam's, or another ewe's where the dam is not known or no half of her udder is fit
/// to be drawn, whatever was given before. After that colostrum gives way to milk replacer, unless milk was given already; where the farm's table still says colostrum, it stays.
#[must_use]
pub fn next_milk(flock: &Flock, lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Milk {
    let last = lamb.feeds.last().map(|feed| feed.milk);
    let age = lamb.age(now);
    let colostrum = lamb.least_age(now) < DAY
        || bottle::day(age, None, settings.bottle_table).is_ok_and(|day| day.colostrum);
    match (last, colostrum) {
        (Some(Milk::DamColostrum) | None, true) => match dams_milk(flock, lamb, now) {
            Some(DrawFrom::Either | DrawFrom::Left | DrawFrom::Right) => Milk::DamColostrum,
            Some(DrawFrom::Neither) => Milk::EweColostrum,
            // Somebody drew it, though the book does not know of whom.
            None => last.unwrap_or(Milk::EweColostrum),
        },
        (Some(last), true) => last,
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
