//! What the round shows: who is to feed, who was fed just now, who comes later, and the one mix.

use yeanling_core::book::{Animal, EntryId, Event, LambId, Milk};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::mixing::{self, Mix, NoMix};
use yeanling_core::reckon::{bottle, colostrum, feeds};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::{Mass, Moment, TimeDelta, Volume};
use yeanling_core::watch::{self, BeforeMilk, Completion, Duty, LambTask, Task};

use yeanling_words::common::{clock, time_of_day, volume};
use yeanling_words::lamb::before_milk;
use yeanling_words::why::headings;
use yeanling_words::{animals, bottle_round as words, errors, watch as watch_words};

use crate::{Reason, State};

/// A feed so young belongs to the round that is being fed (ours).
const JUST_NOW: TimeDelta = TimeDelta::hours(1);

/// One bottle lamb.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct OnRound {
    pub(super) id: LambId,
    pub(super) name: String,
    pub(super) kind: String,
    pub(super) text: String,
    pub(super) says: String,
    pub(super) state: State,
    pub(super) day: String,
    /// Why the day is what it is: how that is called, and the reason.
    pub(super) why: Option<(&'static str, Reason)>,
    pub(super) volume: Option<Volume>,
    pub(super) amount: String,
    pub(super) milk: Milk,
    /// One tap notes this.
    pub(super) feed: Option<Event>,
    /// What comes first, if anything does.
    pub(super) before: Option<BeforeMilk>,
    /// The feed that one tap takes back.
    pub(super) fed: Option<EntryId>,
}

/// The whole round.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Round {
    /// When it is due, in words.
    pub(super) when: String,
    pub(super) to_feed: Vec<OnRound>,
    pub(super) fed: Vec<OnRound>,
    pub(super) later: Vec<OnRound>,
    /// The mix for all still to feed, and for how many.
    pub(super) mix: Option<(Result<Mix, NoMix>, usize)>,
    /// Lambs whose volume is not known.
    pub(super) unknown: usize,
    /// What is fed of colostrum or milk.
    pub(super) not_mixed: Option<Volume>,
    /// All milk of a day, its powder, and its feeds.
    pub(super) day: Option<(Volume, Mass, u16)>,
    /// The times, by how many feeds a day.
    pub(super) times: Vec<String>,
    /// What these lambs have had of powder.
    pub(super) used: f64,
}

impl Round {
    pub(super) fn lambs(&self) -> usize {
        self.to_feed.len() + self.fed.len() + self.later.len()
    }
}

/// Returns the round as it is at this instant.
pub(super) fn round(flock: &Flock, duties: &[Duty], now: Moment) -> Round {
    let settings = &flock.settings;
    let lambs: Vec<&Lamb> = flock.on_bottle.iter().filter_map(|id| flock.lamb(*id)).collect();
    let feed_of = |lamb: &Lamb| {
        let of = |duty: &&Duty| matches!(duty.task, Task::Lamb(id, LambTask::Feed { .. }) if id == lamb.id);
        duties.iter().find(of)
    };
    let next = watch::round(duties, now);
    let in_round = |lamb: &Lamb| {
        next.as_ref()
            .is_some_and(|next| next.feeds.iter().any(|duty| duty.subject() == Animal::Lamb(lamb.id)))
    };
    let mut round = Round::default();
    for lamb in &lambs {
        let one = on_round(flock, lamb, feed_of(lamb), now);
        let just_fed = lamb.feeds.last().filter(|feed| now.since(feed.at) < JUST_NOW);
        match just_fed {
            Some(feed) => round.fed.push(OnRound {
                text: words::fed(feed.volume, &clock(feed.at), settings.system),
                says: if one.says.is_empty() { String::new() } else { words::next(&one.says) },
                state: State::Done,
                fed: Some(feed.entry),
                ..one
            }),
            None if in_round(lamb) => round.to_feed.push(one),
            None => round.later.push(one),
        }
    }
    let due = |one: &OnRound| {
        lambs.iter().find(|lamb| lamb.id == one.id).and_then(|lamb| feed_of(lamb)).map(Duty::comes)
    };
    round.to_feed.sort_small_by_key(|one| (due(one), one.id));
    round.later.sort_small_by_key(|one| (due(one).is_none(), due(one), one.id));
    round.when = round.to_feed.first().map(|first| first.says.clone()).unwrap_or_default();
    let mixed = |one: &&OnRound| one.milk == Milk::Replacer;
    let volumes: Vec<Volume> = round.to_feed.iter().filter(mixed).filter_map(|one| one.volume).collect();
    round.mix = (!volumes.is_empty()).then(|| (mixing::round(&volumes, settings.powder_rate), volumes.len()));
    round.unknown = round.to_feed.iter().filter(|one| one.volume.is_none() && one.before.is_none()).count();
    let others: Vec<Volume> =
        round.to_feed.iter().filter(|one| !mixed(one)).filter_map(|one| one.volume).collect();
    round.not_mixed = (!others.is_empty()).then(|| others.into_iter().sum());
    day(&mut round, flock, &lambs, feed_of, now);
    round
}

/// Works out the day of all lambs past their first, and the times by how many feeds they have.
fn day<'a>(
    round: &mut Round,
    flock: &Flock,
    lambs: &[&'a Lamb],
    feed_of: impl Fn(&'a Lamb) -> Option<&'a Duty>,
    now: Moment,
) {
    let settings = &flock.settings;
    let mut total = Volume::ZERO;
    let mut feeds = 0_u16;
    let mut first: Vec<(u8, Moment)> = Vec::new();
    let mut used = 0.0;
    for &lamb in lambs {
        used += lamb
            .feeds
            .iter()
            .filter(|feed| feed.milk == Milk::Replacer)
            .map(|feed| {
                feed.volume.as_milliliters() / 1000.0 * settings.powder_rate.as_grams_per_liter() / 1000.0
            })
            .sum::<f64>();
        let Some(day) = of_table(flock, lamb, now) else { continue };
        total = total + day.day_total;
        feeds += u16::from(day.feeds);
        let Some(due) = feed_of(lamb).map(Duty::comes) else { continue };
        match first.iter_mut().find(|(of, _)| *of == day.feeds) {
            Some((_, at)) => *at = due.min(*at),
            None => first.push((day.feeds, due)),
        }
    }
    first.sort_small_by_key(|(feeds, _)| std::cmp::Reverse(*feeds));
    round.times = first
        .into_iter()
        .map(|(feeds, due)| {
            let times = bottle::times(feeds, due.local().time());
            words::times(feeds, &times.into_iter().map(time_of_day).collect::<Vec<_>>())
        })
        .collect();
    round.used = used;
    round.day = mixing::sample_to(total, settings.powder_rate).ok().map(|mix| (total, mix.powder, feeds));
}

/// The table's day of a lamb past its first 24 hours.
fn of_table(flock: &Flock, lamb: &Lamb, now: Moment) -> Option<bottle::Day> {
    let age = lamb.age(now);
    if age < TimeDelta::hours(24) {
        return None;
    }
    bottle::day(age, lamb.last_weight(now).map(|weight| weight.mass), flock.settings.bottle_table).ok()
}

fn on_round(flock: &Flock, lamb: &Lamb, duty: Option<&Duty>, now: Moment) -> OnRound {
    let settings = &flock.settings;
    let system = settings.system;
    let age = lamb.age(now);
    let milk = watch::next_milk(flock, lamb, now, settings);
    let (amount, before) = match duty.map(|duty| duty.task) {
        Some(Task::Lamb(_, LambTask::Feed { volume, before })) => (volume, before),
        Some(_) | None => (None, None),
    };
    let gets = match before {
        Some(BeforeMilk::Weigh) => words::weigh_first(&words::gets(amount, milk, system)),
        Some(before) => words::held(&before_milk(before, system)),
        None => words::gets(amount, milk, system),
    };
    let (day, why) = if age < TimeDelta::hours(24) {
        first_day(flock, lamb, now)
    } else {
        match bottle::day(age, lamb.last_weight(now).map(|weight| weight.mass), settings.bottle_table) {
            Ok(day) => {
                let given = lamb.given(now - TimeDelta::hours(24), now);
                (
                    words::day(given, day.day_total, day.feeds, system),
                    Some((headings::BOTTLE, Reason::Bottle(Box::new(day)))),
                )
            }
            Err(error) => (errors::no_row(&error, system), None),
        }
    };
    OnRound {
        id: lamb.id,
        name: animals::lamb(flock, lamb),
        kind: format!("{} · {}", animals::lamb_kind(lamb, system), words::age(age)),
        text: if duty.is_some() { gets } else { String::new() },
        says: duty.map(|duty| watch_words::when(duty, now)).unwrap_or_default(),
        state: duty.map_or(State::Coming, |duty| duty.state(now).into()),
        day,
        why,
        volume: amount,
        amount: amount.map(|amount| volume(amount, system)).unwrap_or_default(),
        milk,
        feed: duty.and_then(|duty| match &duty.completion {
            Completion::Note(event) => Some(event.clone()),
            Completion::Open => None,
        }),
        before,
        fed: None,
    }
}

/// How the first day of a lamb fed by hand stands, and why the next feed is what it is.
fn first_day(flock: &Flock, lamb: &Lamb, now: Moment) -> (String, Option<(&'static str, Reason)>) {
    let settings = &flock.settings;
    let system = settings.system;
    let target = lamb
        .birth_weight()
        .and_then(|weight| colostrum::target(weight, settings.day_rule, settings.housing).ok());
    let Some(target) = target else { return (String::new(), None) };
    let given = lamb.given_first_day(now);
    let last = lamb.feeds.last().map(|feed| feed.at.since(lamb.born));
    let why = match feeds::next(&target, given, last, lamb.age(now)) {
        Some(next) => (headings::NEXT_FEED, Reason::NextFeed(Box::new((next, target)))),
        None => (headings::COLOSTRUM, Reason::Milk(target)),
    };
    (words::first_day(given, target.by_24h, system), Some(why))
}
