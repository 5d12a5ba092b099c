//! A ram that stays, and what a group that ended leaves behind: nothing in a later season.

use proptest::prelude::*;
use yeanling_core::book::{Animal, Book, Departure, Event, EweId, GroupId, Life, Planning, Sex};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{
    SeasonForecast, SeasonJob, group_dates, lambing_forecasts, overdue, put_to_ram, record, season_forecast,
    seasons, this_week, young_ewes,
};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::validate;

use crate::book::arbitrary::config;
use crate::flock::groups::day;
use crate::scribe::Scribe;

/// Ewes in a group, its ram in on day 0; he stays.
struct Staying {
    scribe: Scribe,
    group: GroupId,
    ewes: Vec<EweId>,
}

impl Staying {
    fn new(ewes: usize, until: Option<Moment>) -> Self {
        let mut scribe = Scribe::new(1);
        let group = scribe.group(day(-9), "Home field");
        let ewes: Vec<EweId> = (0..ewes).map(|tag| scribe.ewe(day(-9), &tag.to_string())).collect();
        for ewe in &ewes {
            scribe.note(day(-5), Event::JoinedGroup { ewe: *ewe, group });
        }
        scribe.ram_in(day(0), group);
        scribe.note(day(50), Event::Planning(Planning::RamStays { group, until }));
        Self { scribe, group, ewes }
    }

    fn joins(&mut self, at: Moment, group: GroupId) {
        for ewe in self.ewes.clone() {
            let event = Event::JoinedGroup { ewe, group };
            let flock = self.scribe.flock();
            assert_eq!(validate(&flock, &self.scribe.book, &event, at, at), Ok(()));
            self.scribe.note(at, event);
        }
    }
}

fn look(flock: &Flock, now: Moment) -> SeasonForecast {
    season_forecast(flock, &lambing_forecasts(flock, now), now)
}

#[track_caller]
fn chance(flock: &Flock, ewe: EweId, now: Moment) -> f64 {
    let forecasts = lambing_forecasts(flock, now);
    forecasts.of(ewe).expect("awaited").lambing_forecast.as_ref().expect("it can be told").in_lamb
}

#[test]
fn his_cycles_go_on_with_falling_weight_until_she_has_lambed() {
    let mut field = Staying::new(2, None);
    let flock = field.scribe.flock();
    // Long past the 210 days of three cycles, and past a whole year.
    for days in [20, 200, 230, 300, 400, 700] {
        assert!(chance(&flock, field.ewes[0], day(days)) > 0.9, "day {days}");
        assert_eq!(overdue(&flock, &lambing_forecasts(&flock, day(days)), day(days)), [], "day {days}");
    }
    // Three of four hold in each cycle: the nights of a later cycle weigh a quarter of those before.
    let seen = look(&flock, day(1)).forecast.expect("told");
    let of_cycle = |cycle: i64| -> f64 {
        let from = day(147 + 17 * (cycle - 1)).local().date();
        let to = day(147 + 17 * cycle).local().date();
        let nights = seen.nights.iter().filter(|night| (from..to).contains(&night.date));
        nights.map(|night| night.births.mean).sum()
    };
    for cycle in 1..5 {
        let falls = of_cycle(cycle + 1) / of_cycle(cycle);
        assert!((0.2..0.35).contains(&falls), "cycle {cycle}: {falls}");
    }
    assert!(of_cycle(5) > 0.0, "beyond three cycles");
    field.scribe.born(day(290), Some(field.ewes[0]));
    let flock = field.scribe.flock();
    assert!(lambing_forecasts(&flock, day(295)).of(field.ewes[0]).is_none());
    assert_eq!((look(&flock, day(295)).put_to_ram, look(&flock, day(295)).lambed), (2, 1));
}

#[test]
fn a_date_that_the_farm_sets_ends_them() {
    let field = Staying::new(1, Some(day(100)));
    let flock = field.scribe.flock();
    let dates = group_dates(&flock, &flock.groups[&field.group]);
    let out = dates.iter().find(|one| one.what == DateTask::RamOut).expect("his day out");
    assert_eq!(out.date, day(100).local().date());
    let seen = look(&flock, day(150)).forecast.expect("told");
    let after = seen.nights.iter().filter(|night| night.date > day(100 + 160).local().date());
    assert!(after.map(|night| night.births.mean).sum::<f64>() < 1e-4, "nothing of a later mating is told");
    let past = overdue(&flock, &lambing_forecasts(&flock, day(262)), day(262));
    assert_eq!(past.len(), 1, "her last day has passed");
}

#[test]
fn no_deadline_of_a_ram_that_stays_is_told_and_nobody_is_asked_to_take_him_out() {
    let field = Staying::new(1, None);
    let flock = field.scribe.flock();
    let dates = group_dates(&flock, &flock.groups[&field.group]);
    let told =
        |what: &DateTask| matches!(what, DateTask::RamOut | DateTask::WatchUntil | DateTask::FeedUntil);
    assert!(!dates.iter().any(|one| told(&one.what)), "{dates:?}");
    assert!(dates.iter().any(|one| one.what == DateTask::WatchFrom));
    let asked = this_week(&flock, day(52));
    assert!(!asked.iter().any(|job| job.dated.what == DateTask::RamOut), "{asked:?}");
}

#[test]
fn a_season_is_not_without_lambs_while_he_is_in() {
    let mut field = Staying::new(2, None);
    field.scribe.born(day(150), Some(field.ewes[0]));
    let barren =
        |field: &Staying, at| record(&field.scribe.flock(), field.ewes[1], at).expect("known").barren;
    assert_eq!(barren(&field, day(260)), 0);
    assert_eq!(barren(&field, day(500)), 0);
    field.scribe.note(day(500), Event::RamOut { group: field.group });
    assert_eq!(barren(&field, day(600)), 0, "she may still lamb");
    assert_eq!(barren(&field, day(670)), 1);
}

#[test]
fn next_year_the_ewes_go_into_a_new_group_and_nothing_is_left_of_the_old() {
    let mut field = Staying::new(3, None);
    for ewe in field.ewes.clone() {
        field.scribe.born(day(150), Some(ewe));
    }
    let next = field.scribe.group(day(365), "Top field");
    field.joins(day(366), next);
    field.scribe.ram_in(day(366), next);
    let flock = field.scribe.flock();
    let seen = look(&flock, day(380));
    assert_eq!((seen.put_to_ram, seen.lambed), (3, 0));
    assert_eq!(seen.likely.expect("told").put, 3);
    let first = field.ewes[0];
    let likely = lambing_forecasts(&flock, day(380)).of(first).expect("awaited").lambing_forecast.clone();
    assert!(likely.expect("told").first >= day(366 + 138).local().date());
}

#[test]
fn a_ewe_that_did_not_lamb_goes_into_a_new_group_too() {
    let mut field = Staying::new(1, None);
    let next = field.scribe.group(day(365), "Top field");
    field.joins(day(366), next);
    field.scribe.ram_in(day(366), next);
    let flock = field.scribe.flock();
    let told =
        lambing_forecasts(&flock, day(380)).of(field.ewes[0]).expect("awaited").lambing_forecast.clone();
    assert!(told.expect("told, by the new mating").first >= day(366 + 138).local().date());
}

#[test]
fn a_lambing_from_an_unnoted_mating_starts_her_own_season() {
    let mut field = Staying::new(2, None);
    // Twenty days after the ram came: mated before him. What he brings is still to come.
    field.scribe.born(day(20), Some(field.ewes[0]));
    let flock = field.scribe.flock();
    assert_eq!((look(&flock, day(60)).put_to_ram, look(&flock, day(60)).lambed), (2, 0));
    assert!(chance(&flock, field.ewes[0], day(60)) > 0.9);
    // And who lambs without any mating that was noted is none of those put to the ram.
    let stray = field.scribe.ewe(day(30), "stray");
    field.scribe.born(day(150), Some(field.ewes[1]));
    field.scribe.born(day(155), Some(stray));
    let flock = field.scribe.flock();
    let season = &seasons(&flock)[0];
    assert_eq!(put_to_ram(&flock, season), field.ewes.iter().copied().collect());
}

#[test]
fn who_lambed_from_an_unnoted_mating_and_not_again_is_overdue() {
    let mut field = Staying::new(1, Some(day(60)));
    field.scribe.born(day(20), Some(field.ewes[0]));
    let flock = field.scribe.flock();
    let past = overdue(&flock, &lambing_forecasts(&flock, day(222)), day(222));
    assert_eq!(past.iter().map(|one| one.ewe).collect::<Vec<_>>(), field.ewes);
}

#[test]
fn ewe_lambs_near_their_first_heat_are_named_while_a_ram_stays() {
    // Source: New Mexico State University, ewes reach puberty at 5 to 12 months.
    let mut field = Staying::new(1, None);
    let born = |field: &mut Staying, at, sex| {
        let dam = Some(field.ewes[0]);
        field.scribe.note(at, Event::LambBorn { dam, beside: None, sex: Some(sex), alive: true }).as_lamb()
    };
    let ewe_lamb = born(&mut field, day(150), Sex::Ewe);
    born(&mut field, day(150), Sex::Ram);
    let named = |field: &Staying, at| -> Vec<_> {
        young_ewes(&field.scribe.flock(), at).iter().map(|one| (one.lamb, one.from)).collect()
    };
    let from = day(150 + 152).local().date();
    assert_eq!(named(&field, day(150 + 152 - 29)), []);
    assert_eq!(named(&field, day(150 + 152 - 28)), [(ewe_lamb, from)]);
    assert_eq!(named(&field, day(400)), [(ewe_lamb, from)]);
    let group = field.group;
    field.scribe.note(day(401), Event::RamOut { group });
    assert_eq!(named(&field, day(402)), []);
}

/// What a flock's last season was like: which ewes lambed on which day, and how its ram came out of it.
#[derive(Clone, Debug)]
pub(super) struct Past {
    lambed: Vec<Option<i64>>,
    end: End,
    ended: bool,
}

#[derive(Clone, Copy, Debug)]
enum End {
    Out(i64),
    Never,
    Stays,
    StaysUntil(i64),
}

pub(super) fn past() -> impl Strategy<Value = Past> {
    let end = prop_oneof![
        (20..120_i64).prop_map(End::Out),
        Just(End::Never),
        Just(End::Stays),
        (60..300_i64).prop_map(End::StaysUntil)
    ];
    let lambed = prop::collection::vec(prop::option::weighted(0.8, 140..230_i64), 1..6);
    (lambed, end, any::<bool>()).prop_map(|(lambed, end, ended)| Past { lambed, end, ended })
}

/// A flock with that season behind it, its ewes in a new group since a year; and the facts of the old group alone.
pub(super) fn two_seasons(past: &Past, first: i64) -> (Scribe, GroupId, GroupId, Vec<EweId>) {
    let mut scribe = Scribe::new(1);
    let old = scribe.group(day(-9), "Old");
    let mut ewes = Vec::new();
    for (tag, lambed) in past.lambed.iter().enumerate() {
        let ewe = scribe.ewe(day(-9), &tag.to_string());
        scribe.note(day(-5), Event::JoinedGroup { ewe, group: old });
        if let Some(lambed) = lambed {
            scribe.born(day(*lambed), Some(ewe));
        }
        ewes.push(ewe);
    }
    scribe.ram_in(day(0), old);
    match past.end {
        End::Out(days) => _ = scribe.note(day(days), Event::RamOut { group: old }),
        End::Never => {}
        End::Stays => {
            _ = scribe.note(day(50), Event::Planning(Planning::RamStays { group: old, until: None }));
        }
        End::StaysUntil(days) => {
            let until = Some(day(days));
            _ = scribe.note(day(50), Event::Planning(Planning::RamStays { group: old, until }));
        }
    }
    let next = scribe.group(day(first - 2), "New");
    // The last ewe was sold before.
    let sold = ewes.pop().expect("one at least");
    let went = Life::Went { animal: Animal::Ewe(sold), how: Departure::Sold, to: None };
    scribe.note(day(300), Event::Life(went));
    let fresh = scribe.ewe(day(first - 2), "fresh");
    ewes.push(fresh);
    for ewe in &ewes {
        scribe.note(day(first - 1), Event::JoinedGroup { ewe: *ewe, group: next });
    }
    if past.ended {
        scribe.note(day(first - 1) + TimeDelta::minutes(5), Event::GroupParted { group: old });
    }
    scribe.ram_in(day(first), next);
    (scribe, old, next, ewes)
}

fn without(book: &Book, group: GroupId) -> Book {
    let of_it = |event: &Event, id: GroupId| event.group() == Some(group) || id == group;
    book.entries().filter(|entry| !of_it(&entry.event, entry.id.as_group())).cloned().collect()
}

/// Everything that is told of the season that goes on.
pub(super) fn told(
    flock: &Flock,
    next: GroupId,
    ewes: &[EweId],
    now: Moment,
) -> impl PartialEq + std::fmt::Debug + use<> {
    let forecasts = lambing_forecasts(flock, now);
    let seen = season_forecast(flock, &forecasts, now);
    let asked: Vec<SeasonJob> = this_week(flock, now);
    let late = overdue(flock, &forecasts, now);
    let dates = group_dates(flock, &flock.groups[&next]);
    let this = seasons(flock).into_iter().find(|season| season.first > day(300));
    let put = this.as_ref().map(|season| put_to_ram(flock, season));
    let windows: Vec<_> = ewes.iter().map(|ewe| forecasts.of(*ewe).map(|one| one.lambs)).collect();
    (seen, asked, late, dates, put, windows)
}

#[test]
fn who_lambs_early_to_the_new_ram_brings_nothing_of_the_old_season_back() {
    let past = Past { lambed: vec![None, None, Some(140)], end: End::Never, ended: true };
    let (mut scribe, old, next, ewes) = two_seasons(&past, 350);
    scribe.born(day(488), ewes.first().copied());
    let (with, without) = (scribe.flock(), fold(&without(&scribe.book, old)));
    assert_eq!(told(&with, next, &ewes, day(501)), told(&without, next, &ewes, day(501)));
}

proptest! {
    #![proptest_config(config(96))]

    #[test]
    fn a_group_that_ended_changes_no_later_season(
        past in past(), first in 350..400_i64, later in 1..240_i64, lambs in prop::collection::vec(138..190_i64, 0..5)
    ) {
        let (mut scribe, old, next, ewes) = two_seasons(&past, first);
        for (ewe, days) in ewes.iter().zip(lambs) {
            if days < later {
                scribe.born(day(first + days), Some(*ewe));
            }
        }
        let (with, without) = (scribe.flock(), fold(&without(&scribe.book, old)));
        let now = day(first + later);
        prop_assert_eq!(told(&with, next, &ewes, now), told(&without, next, &ewes, now));
        let seen = look(&with, now);
        prop_assert_eq!(seen.likely.map(|likely| likely.put), Some(seen.put_to_ram), "of one number of ewes");
    }
}
