//! Plans: what is planned waits for its day, is answered once, and changes no figure of what was noted.

use std::collections::BTreeSet;

use chrono::NaiveDate;
use proptest::prelude::*;
use yeanling_core::book::{Book, Entry, EntryId, Event, GroupId, PlannedJob, Planning};
use yeanling_core::flock::fold;
use yeanling_core::seasons::{lambing_forecasts, plans_near, season_forecast, seasons, this_week};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{GroupRejection, Rejection, duties, validate};

use super::stays::{past, told, two_seasons};
use crate::book::arbitrary::{config, entries};
use crate::flock::groups::day;
use crate::scribe::Scribe;

fn date(days: i64) -> NaiveDate {
    day(days).local().date()
}

fn planned(what: PlannedJob, group: Option<GroupId>, on: Option<NaiveDate>) -> Event {
    Event::Planning(Planning::Planned { what, group, on })
}

fn days_of(scribe: &Scribe) -> Vec<(PlannedJob, NaiveDate)> {
    scribe.flock().planned().iter().map(|plan| (plan.what, plan.on)).collect()
}

#[test]
fn a_ram_in_five_days_ahead_can_be_planned_and_no_ram_is_in() {
    let mut scribe = Scribe::new(1);
    let group = scribe.group(day(0), "Top field");
    let plan = planned(PlannedJob::RamIn, Some(group), Some(date(5)));
    assert_eq!(validate(&scribe.flock(), &scribe.book, &plan, day(0), day(0)), Ok(()));
    scribe.note(day(0), plan);
    assert_eq!(days_of(&scribe), [(PlannedJob::RamIn, date(5))]);
    assert_eq!(scribe.flock().groups[&group].rams_in().count(), 0);
    // It is told from three days before, until he is in.
    assert_eq!(plans_near(&scribe.flock(), day(1)).len(), 0);
    assert_eq!(plans_near(&scribe.flock(), day(2)).len(), 1);
    assert_eq!(plans_near(&scribe.flock(), day(40)).len(), 1);
    scribe.ram_in(day(6), group);
    assert_eq!(days_of(&scribe), []);
}

#[test]
fn a_plan_takes_the_place_of_the_one_before_it_and_can_be_dropped() {
    let mut scribe = Scribe::new(1);
    let group = scribe.group(day(0), "Top field");
    scribe.note(day(0), planned(PlannedJob::Scan, Some(group), Some(date(80))));
    scribe.note(day(0), planned(PlannedJob::Shearing, None, Some(date(200))));
    scribe.note(day(1), planned(PlannedJob::Scan, Some(group), Some(date(82))));
    assert_eq!(days_of(&scribe), [(PlannedJob::Scan, date(82)), (PlannedJob::Shearing, date(200))]);
    scribe.note(day(82), Event::Planning(Planning::Happened { what: PlannedJob::Scan, group: Some(group) }));
    scribe.note(day(90), planned(PlannedJob::Shearing, None, None));
    assert_eq!(days_of(&scribe), []);
}

#[test]
fn a_group_that_ends_plans_nothing_more() {
    let mut scribe = Scribe::new(1);
    let group = scribe.group(day(0), "Top field");
    scribe.note(day(0), planned(PlannedJob::RamIn, Some(group), Some(date(5))));
    scribe.note(day(1), Event::GroupParted { group });
    assert_eq!(days_of(&scribe), []);
}

#[test]
fn a_day_that_has_passed_or_lies_years_ahead_is_not_planned() {
    let mut scribe = Scribe::new(1);
    let group = scribe.group(day(0), "Top field");
    let try_on = |on| {
        let plan = planned(PlannedJob::RamIn, Some(group), Some(on));
        validate(&scribe.flock(), &scribe.book, &plan, day(10), day(10))
    };
    for on in [date(10), date(740)] {
        assert_eq!(try_on(on), Ok(()));
    }
    for given in [date(9), date(741)] {
        let (today, most) = (date(10), date(740));
        assert_eq!(try_on(given), Err(Rejection::from(GroupRejection::NotAhead { day: given, today, most })));
    }
}

fn is_plan(event: &Event) -> bool {
    match event {
        Event::Planning(
            Planning::Planned { .. } | Planning::Happened { .. } | Planning::RamsMeant { .. },
        ) => true,
        Event::Amended { event, .. } => is_plan(event),
        _ => false,
    }
}

/// The book without its plans, and the same with them; what corrects a plan, or makes one of a fact, is left out of both.
fn with_and_without(entries: Vec<Entry>) -> (Book, Book) {
    let plans: BTreeSet<EntryId> =
        entries.iter().filter(|entry| is_plan(&entry.event)).map(|entry| entry.id).collect();
    let corrects = |entry: &Entry| entry.event.corrects().is_some_and(|of| plans.contains(&of));
    // What says that a noted fact should have been a plan takes that fact away, as it should.
    let turns = |entry: &Entry| matches!(&entry.event, Event::Amended { event, .. } if is_plan(event));
    let all: Vec<Entry> = entries.into_iter().filter(|entry| !corrects(entry) && !turns(entry)).collect();
    let bare = all.iter().filter(|entry| !is_plan(&entry.event)).cloned().collect();
    (all.into_iter().collect(), bare)
}

fn any_plan() -> impl Strategy<Value = (PlannedJob, u8, Option<i64>, i64)> {
    let what = prop::sample::select(&PlannedJob::ALL[..]);
    (what, 0..3_u8, prop::option::of(0..700_i64), 0..600_i64)
}

proptest! {
    #![proptest_config(config(128))]

    #[test]
    fn a_plan_changes_no_figure_of_what_was_noted(entries in entries(), now in 0..40_i64) {
        let (with, without) = with_and_without(entries);
        let now = Moment::from_unix_milliseconds(1_772_000_000_000, 0) + TimeDelta::hours(now);
        let (a, b) = (fold(&with), fold(&without));
        prop_assert_eq!(&a.ewes, &b.ewes);
        prop_assert_eq!(&a.lambs, &b.lambs);
        prop_assert_eq!(&a.litters, &b.litters);
        prop_assert_eq!(&a.groups, &b.groups);
        prop_assert_eq!(&a.stores, &b.stores);
        prop_assert_eq!(&a.settings, &b.settings);
        prop_assert_eq!(seasons(&a), seasons(&b));
        prop_assert_eq!(duties(&a, now, &a.settings), duties(&b, now, &b.settings));
        prop_assert_eq!(this_week(&a, now), this_week(&b, now));
        let of = |flock| season_forecast(flock, &lambing_forecasts(flock, now), now);
        prop_assert_eq!(of(&a), of(&b));
    }

    #[test]
    fn nor_of_two_seasons(
        past in past(), first in 350..400_i64, later in 1..240_i64, plans in prop::collection::vec(any_plan(), 1..8)
    ) {
        let (mut scribe, old, next, ewes) = two_seasons(&past, first);
        let now = day(first + later);
        let before = told(&scribe.flock(), next, &ewes, now);
        for (what, whose, on, at) in plans {
            let group = [None, Some(old), Some(next)][usize::from(whose)];
            scribe.note(day(at), planned(what, group, on.map(date)));
        }
        prop_assert_eq!(told(&scribe.flock(), next, &ewes, now), before);
    }
}
