//! A season before it happens, planned back from its lambs, and next season from this one.

use chrono::{Datelike, NaiveDate, TimeDelta};
use proptest::prelude::*;
use yeanling_core::book::{Animal, Cause, Departure, Event, EweId, GroupId, Life, Planning};
use yeanling_core::reckon::season::gestation::BreedType;
use yeanling_core::seasons::{
    NextGroup, NoWhatIf, RAM_DAYS, WhatIf, Wish, WishedPlan, keeping, lambing_forecasts, next_month,
    next_season, what_if,
};
use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::{Mass, Moment};

use crate::book::arbitrary::config;
use crate::scribe::Scribe;

fn on(text: &str) -> Moment {
    format!("{text}T08:00:00.000+00:00").parse().expect("a moment")
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn plan(wish: Wish, ewes: u32, ram_days: u16) -> WishedPlan {
    let (bale, bag) = (Mass::from_kilograms(20.0), Mass::from_kilograms(25.0));
    WishedPlan { wish, ewes, ram_days, housing_days: 60, bale, bag }
}

#[track_caller]
fn made(scribe: &Scribe, plan: WishedPlan, today: &str) -> WhatIf {
    what_if(&scribe.flock(), &plan, on(today)).unwrap_or_else(|no| panic!("{no}"))
}

#[test]
fn all_born_before_the_20th_of_april_is_a_ram_in_the_middle_of_october() {
    // Source: ram out + 152 days is the last day to watch (Sheep 201): 18 November 2026, and 34 days before it 16 October.
    let of = made(&Scribe::new(1), plan(Wish::AllBornBefore(date("2027-04-20")), 14, 34), "2026-09-01");
    assert_eq!((of.ram_in, of.ram_out), (date("2026-10-16"), date("2026-11-18")));
    assert_eq!((of.first, of.last), (date("2027-03-07"), date("2027-04-19")));
    // 14 ewes over 44 nights: hay 4% of 70 kg over 60 days, as a breeder reckons it.
    assert!(
        (of.hay.total.as_kilograms() - 14.0 * 0.04 * of.hay.each_day.as_kilograms() / 0.04 * 60.0).abs()
            < 1e-6
    );
    assert!(of.pens.enough[1] >= 1 && of.nights_up <= 60, "{:?} {}", of.pens.enough, of.nights_up);
}

#[test]
fn lambs_in_april_come_from_the_first_of_april_on() {
    // Source: ram in + 142 days is the first day to watch (Sheep 201).
    let flock = Scribe::new(1).flock();
    let first = next_month(&flock, 4, on("2026-09-01"));
    assert_eq!(first, date("2027-04-01"));
    let of = made(&Scribe::new(1), plan(Wish::LambsFrom(first), 14, 34), "2026-09-01");
    assert_eq!((of.ram_in, of.first), (date("2026-11-10"), date("2027-04-01")));
    // Once that ram would have had to go in, it is the April after.
    assert_eq!(next_month(&flock, 4, on("2026-11-11")), date("2028-04-01"));
}

#[test]
fn a_day_for_which_the_ram_is_late_says_the_earliest_that_can_be() {
    let flock = Scribe::new(1).flock();
    let wished = |day: NaiveDate| plan(Wish::AllBornBefore(day), 14, 34);
    let Err(NoWhatIf::Passed { ram_in, earliest }) =
        what_if(&flock, &wished(date("2027-04-20")), on("2026-11-01"))
    else {
        panic!("16 October has passed")
    };
    assert_eq!((ram_in, earliest), (date("2026-10-16"), date("2027-05-06")));
    let of = what_if(&flock, &wished(earliest), on("2026-11-01")).expect("the earliest can be");
    assert_eq!(of.ram_in, date("2026-11-01"));
    let far = what_if(&flock, &wished(date("2029-12-01")), on("2026-11-01"));
    assert!(matches!(far, Err(NoWhatIf::TooFar { .. })), "{far:?}");
    let none = what_if(&flock, &plan(Wish::LambsFrom(date("2027-06-01")), 0, 34), on("2026-11-01"));
    assert!(matches!(none, Err(NoWhatIf::Refused(_))), "{none:?}");
}

#[test]
fn what_the_flock_is_counts_in_its_plan() {
    let mut scribe = Scribe::new(1);
    let wish = plan(Wish::AllBornBefore(date("2027-04-20")), 14, 34);
    let any = made(&scribe, wish, "2026-09-01");
    scribe.note(on("2026-08-01"), Event::Chose(Choice::BreedType(BreedType::FineWool)));
    // Source: fine-wool ewes carry 150 to 151 days (Montana): 5 days more than 150.5 is 156.
    let fine = made(&scribe, wish, "2026-09-01");
    assert_eq!(any.ram_in - fine.ram_in, TimeDelta::days(4));
    assert_eq!(fine.last, date("2027-04-19"));
}

proptest! {
    #![proptest_config(config(48))]

    #[test]
    fn every_plan_keeps_what_was_wished(
        day in 0..500_i64, ewes in 1..120_u32, more in 1..40_u32, cycles in 0..2_usize
    ) {
        let flock = Scribe::new(1).flock();
        let now = on("2026-09-01");
        let last = date("2027-03-20") + TimeDelta::days(day);
        let wish = plan(Wish::AllBornBefore(last), ewes, RAM_DAYS[cycles]);
        let of = what_if(&flock, &wish, now).expect("it lies ahead");
        prop_assert!(of.last < last);
        // What comes later than the last day is two in a hundred of those that lamb, at the most.
        let after: f64 =
            of.forecast.nights.iter().filter(|night| night.date > of.last).map(|night| night.births.mean).sum();
        let before: f64 =
            of.forecast.nights.iter().filter(|night| night.date < of.first).map(|night| night.births.mean).sum();
        prop_assert!(after + before <= 0.02 * of.forecast.births.mean, "{after} and {before} of {}", of.forecast.births.mean);
        // A day later is a day later all along.
        let next = plan(Wish::AllBornBefore(last + TimeDelta::days(1)), ewes, RAM_DAYS[cycles]);
        let next = what_if(&flock, &next, now).expect("it lies ahead");
        prop_assert_eq!(next.ram_in - of.ram_in, TimeDelta::days(1));
        // More ewes want no fewer pens, no fewer nights, no less feed; and what is bought covers what is fed.
        let larger = what_if(&flock, &WishedPlan { ewes: ewes + more, ..wish }, now).expect("it lies ahead");
        prop_assert!(larger.pens.enough[1] >= of.pens.enough[1]);
        prop_assert!(larger.nights_up >= of.nights_up);
        prop_assert!(larger.hay.total > of.hay.total);
        for of in [&of, &larger] {
            let grain = of.grain.as_ref().expect("70 kg has a row");
            let bought = f64::from(grain.bags) * grain.bag.as_kilograms();
            let left = bought - grain.given.as_kilograms();
            prop_assert!((0.0..grain.bag.as_kilograms()).contains(&left), "{left}");
            let hay = f64::from(of.hay.bales) * of.hay.bale.as_kilograms() - of.hay.total.as_kilograms();
            prop_assert!((-1e-6..of.hay.bale.as_kilograms()).contains(&hay), "{hay}");
        }
    }
}

/// Four ewes in "Top 2026" with Flint from Friday 2 October for 34 days; three lambed on 1 March.
struct Past {
    scribe: Scribe,
    group: GroupId,
    ewes: Vec<EweId>,
}

impl Past {
    fn new() -> Self {
        let mut scribe = Scribe::new(1);
        let came = on("2026-09-01");
        let group = scribe.group(came, "Top 2026");
        let ewes: Vec<EweId> = ["1", "2", "3", "4"].map(|tag| scribe.ewe(came, tag)).to_vec();
        for ewe in &ewes {
            scribe.note(came, Event::JoinedGroup { ewe: *ewe, group });
        }
        scribe.note(on("2026-10-02"), Event::RamIn { group, ram: Some("Flint".to_owned()), age: None });
        scribe.note(on("2026-11-04"), Event::RamOut { group });
        for ewe in &ewes[..3] {
            scribe.born(on("2027-03-01"), Some(*ewe));
        }
        Self { scribe, group, ewes }
    }

    fn next(&self, today: &str) -> Vec<NextGroup> {
        let (flock, now) = (self.scribe.flock(), on(today));
        next_season(&flock, &keeping(&flock, now), &lambing_forecasts(&flock, now), now)
    }
}

#[test]
fn next_season_has_the_same_ewes_and_ram_a_year_on_by_the_same_weekday() {
    let past = Past::new();
    assert_eq!(past.next("2027-03-10"), [], "the fourth may still lamb");
    let next = past.next("2027-08-01");
    let [next] = &next[..] else { panic!("{next:?}") };
    assert_eq!((next.from, next.name.as_str()), (past.group, "Top 2027"));
    assert_eq!(next.rams, ["Flint"]);
    assert_eq!((next.ram_in, next.ram_out), (date("2027-10-01"), Some(date("2027-11-03"))));
    assert_eq!(next.ram_in.weekday(), date("2026-10-02").weekday());
    assert_eq!(next.ewes, past.ewes);
}

#[test]
fn culls_stay_out_and_kept_ewe_lambs_come_in() {
    let mut past = Past::new();
    let rules = CullRules { lost: Some(1), ..CullRules::default() };
    past.scribe.note(on("2027-03-02"), Event::Chose(Choice::CullRules(rules)));
    let flock = past.scribe.flock();
    let lamb_of = |ewe: EweId| flock.litters_of(ewe)[0].lambs[0];
    let (lost, kept) = (lamb_of(past.ewes[0]), lamb_of(past.ewes[1]));
    past.scribe.note(on("2027-03-05"), Event::Died { animal: Animal::Lamb(lost), cause: Cause::Cold });
    let she = past.scribe.note(on("2027-06-01"), Event::Life(Life::KeptAsEwe { lamb: kept })).as_ewe();
    past.scribe.note(
        on("2027-06-02"),
        Event::Life(Life::Went { animal: Animal::Ewe(past.ewes[3]), how: Departure::Sold, to: None }),
    );
    let next = past.next("2027-08-01");
    let [next] = &next[..] else { panic!("{next:?}") };
    assert_eq!(next.culls, [past.ewes[0]]);
    assert_eq!(next.new, [she]);
    assert_eq!(next.ewes, [past.ewes[1], past.ewes[2], she]);
}

#[test]
fn of_a_ram_that_stays_there_is_no_next_season() {
    let mut past = Past::new();
    let group = past.group;
    past.scribe.note(on("2027-05-01"), Event::RamIn { group, ram: None, age: None });
    past.scribe.note(on("2027-05-02"), Event::Planning(Planning::RamStays { group, until: None }));
    assert_eq!(past.next("2027-08-01"), []);
}
