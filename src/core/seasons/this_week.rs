//! What the season asks for this week: the dates of the groups that are near and not done yet.

use chrono::{Days, NaiveDate};

use super::group_dates;
use crate::book::{EweId, GroupId};
use crate::flock::{Ewe, Flock, Group, Plan};
use crate::reckon::season::dates::{BOOSTER_WINDOW, DateTask, Dated};
use crate::sort_small::SortSmall;
use crate::units::{Mass, Moment, TimeDelta};

/// A date is told from so many days before it (ours).
const AHEAD: u64 = 3;
/// And for so many days after it, while it is not done (ours).
const BEHIND: u64 = 10;
/// A crayon changed so many days before its date, or later, was changed for it (ours).
const EARLY: u64 = 4;
/// A score so near to its date was felt for it (ours).
const NEAR: u64 = 10;
/// A step of feed is made when a ewe gets at least this share of it (ours): scoops are not scales.
const NEARLY: f64 = 0.9;

/// A booster given so late is not in the colostrum any more, and its use is past.
const SERVES_FROM: i64 = -BOOSTER_WINDOW.1;
/// Where a ram stays nobody knows the last lambing: the booster is asked for over three heats more (ours).
const THREE_HEATS: u64 = 51;

/// Something the season asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeasonJob {
    /// Of which group.
    pub group: GroupId,
    /// What, and when.
    pub dated: Dated,
}

impl SeasonJob {
    /// Says whether its time has passed on a day: of a booster not before the last day of its window.
    #[must_use]
    pub fn is_late(&self, today: NaiveDate) -> bool {
        match self.dated.what {
            DateTask::Booster { until, .. } => until < today,
            DateTask::ScoreBeforeRam
            | DateTask::ScoreAtRam
            | DateTask::CrayonChange { .. }
            | DateTask::RamOut
            | DateTask::ScoreAtMid
            | DateTask::ScoreLate
            | DateTask::Feed { .. }
            | DateTask::FeedUntil
            | DateTask::WatchFrom
            | DateTask::WatchUntil => self.dated.date < today,
        }
    }
}

/// Returns what is asked for about now, the earliest first: from three days before its date to ten after, while it is
/// not done. Of the steps of extra feed only the latest that has come.
#[must_use]
pub fn this_week(flock: &Flock, now: Moment) -> Vec<SeasonJob> {
    let today = now.local().date();
    let mut asked: Vec<SeasonJob> = Vec::new();
    for group in flock.groups.values().filter(|group| group.parted.is_none()) {
        let dates = group_dates(flock, group);
        let step =
            dates.iter().rposition(|one| matches!(one.what, DateTask::Feed { .. }) && one.date <= today);
        let of_now = dates.iter().enumerate().filter(|(place, one)| {
            let feed = matches!(one.what, DateTask::Feed { .. });
            let is_near = near(one, today) || is_of_use(&dates, one, today) || waited(group, one, today);
            let is_it = !feed || (step.is_none_or(|step| *place == step) && !waits(group, today));
            is_near && is_it && !done(flock, group, one)
        });
        asked.extend(of_now.map(|(_, dated)| SeasonJob { group: group.id, dated: *dated }));
    }
    asked.sort_small_by_key(|one| one.dated.date);
    asked
}

/// Returns what is planned for about now, the earliest first: from three days before its day until it is answered.
#[must_use]
pub fn plans_near(flock: &Flock, now: Moment) -> Vec<Plan> {
    let until = later(now.local().date(), AHEAD);
    flock.planned().into_iter().filter(|plan| plan.on <= until).collect()
}

fn near(one: &Dated, today: NaiveDate) -> bool {
    let (until, from) = match one.what {
        DateTask::Booster { until, from } => (until, from),
        // Nothing is done about these: they are told on their day and the day after.
        DateTask::WatchFrom | DateTask::WatchUntil => (later(one.date, 1), one.date),
        DateTask::ScoreBeforeRam
        | DateTask::ScoreAtRam
        | DateTask::CrayonChange { .. }
        | DateTask::RamOut
        | DateTask::ScoreAtMid
        | DateTask::ScoreLate
        | DateTask::Feed { .. }
        | DateTask::FeedUntil => (later(one.date, BEHIND), one.date),
    };
    (earlier(from, AHEAD)..=until.max(later(one.date, 1))).contains(&today)
}

/// Says whether a booster that was not given still reaches the colostrum of the last ewes to lamb.
fn is_of_use(dates: &[Dated], one: &Dated, today: NaiveDate) -> bool {
    let DateTask::Booster { from, until } = one.what else { return false };
    let last = dates.iter().find(|one| matches!(one.what, DateTask::WatchUntil)).map(|one| one.date);
    let last = last.map_or_else(|| later(until, THREE_HEATS), |last| last + TimeDelta::days(SERVES_FROM));
    (from..=last.max(until)).contains(&today)
}

/// Says whether the next step of extra feed was put off, and its day has not come.
fn waits(group: &Group, today: NaiveDate) -> bool {
    group.feed_waits.is_some_and(|(_, until)| today < until)
}

/// Says whether a step of extra feed is asked again because it was put off until about now.
fn waited(group: &Group, one: &Dated, today: NaiveDate) -> bool {
    let DateTask::Feed { .. } = one.what else { return false };
    let since = |since: Moment| one.date <= since.local().date();
    group.feed_waits.is_some_and(|(at, until)| since(at) && (until..=later(until, BEHIND)).contains(&today))
}

/// Returns the ewes of a group that are to have the booster and have not had it for this season, by id: who lives, was not
/// scanned empty and has not lambed since the ram came.
#[must_use]
pub fn without_booster(flock: &Flock, group: &Group, from: NaiveDate) -> Vec<EweId> {
    let from = earlier(from, EARLY);
    let day = |at: Moment| at.local().date();
    let came = group.ram_times().last().map(|(came, _)| *came);
    let is_to_have = |ewe: &&Ewe| {
        let empty =
            ewe.scans.last().is_some_and(|scan| scan.lambs == 0 && came.is_none_or(|came| scan.at >= came));
        let lambed = || {
            let began = flock.litters_of(ewe.id).first().map(|litter| litter.began);
            began.is_some_and(|began| came.is_some_and(|came| began > came))
        };
        ewe.lives() && !empty && !lambed()
    };
    let had = |ewe: &Ewe| flock.boosters(ewe.id).into_iter().any(|at| day(at) >= from);
    let ewes = group.ewes().filter_map(|ewe| flock.ewe(ewe)).filter(is_to_have);
    ewes.filter(|ewe| !had(ewe)).map(|ewe| ewe.id).collect()
}

fn done(flock: &Flock, group: &Group, one: &Dated) -> bool {
    let day = |at: Moment| at.local().date();
    match one.what {
        DateTask::RamOut => group.rams_in().next().is_none(),
        DateTask::CrayonChange { .. } => {
            let from = earlier(one.date, EARLY);
            group.crayons.iter().any(|(at, _)| day(*at) >= from)
        }
        DateTask::ScoreBeforeRam | DateTask::ScoreAtRam | DateTask::ScoreAtMid | DateTask::ScoreLate => {
            let span = earlier(one.date, NEAR)..=later(one.date, NEAR);
            let ewes: Vec<_> =
                group.ewes().filter_map(|ewe| flock.ewe(ewe)).filter(|ewe| ewe.lives()).collect();
            let scored =
                ewes.iter().filter(|ewe| ewe.scores.iter().any(|score| span.contains(&day(score.at))));
            scored.count() * 2 > ewes.len()
        }
        DateTask::Feed { each } => {
            let enough = |kilograms: f64| kilograms >= each.as_kilograms() * NEARLY;
            fed(group).is_some_and(|mass| enough(mass.as_kilograms()))
        }
        DateTask::Booster { from, .. } => {
            let since = earlier(from, EARLY);
            let whole = group.boosters.iter().any(|at| day(*at) >= since);
            whole || without_booster(flock, group, from).is_empty()
        }
        DateTask::FeedUntil => fed(group).is_none_or(|mass| mass.as_kilograms() <= 0.0),
        DateTask::WatchFrom | DateTask::WatchUntil => false,
    }
}

/// What a ewe gets of extra feed since the ram came last: what was fed for the season before him is no step of this one.
fn fed(group: &Group) -> Option<Mass> {
    let (came, _) = group.ram_times().last().copied()?;
    group.feeds.last().filter(|(since, _)| *since >= came).map(|(_, mass)| *mass)
}

fn earlier(date: NaiveDate, days: u64) -> NaiveDate {
    date.checked_sub_days(Days::new(days)).unwrap_or(date)
}

fn later(date: NaiveDate, days: u64) -> NaiveDate {
    date.checked_add_days(Days::new(days)).unwrap_or(date)
}
