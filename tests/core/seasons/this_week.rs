//! What the season asks for about now, and no more once it is done.

use yeanling_core::book::{Event, EweId, GroupId, Life, Planning, Treatment};
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{SeasonJob, this_week, without_booster};
use yeanling_core::units::{Condition, Mass, Moment};

use crate::scribe::Scribe;

fn on(text: &str) -> Moment {
    format!("{text}T08:00:00.000+00:00").parse().expect("a moment")
}

/// Three ewes put to the ram on 1 October 2026; no ewe of theirs lambs before 20 February 2027 (147 days less 5).
fn put_to_ram() -> (Scribe, GroupId) {
    let mut scribe = Scribe::new(1);
    let came = on("2026-09-01");
    let group = scribe.group(came, "Top");
    for tag in ["1", "2", "3"] {
        let ewe = scribe.ewe(came, tag);
        scribe.note(came, Event::JoinedGroup { ewe, group });
    }
    scribe.ram_in(on("2026-10-01"), group);
    (scribe, group)
}

#[track_caller]
fn asked(scribe: &Scribe, day: &str) -> Vec<DateTask> {
    this_week(&scribe.flock(), on(day)).into_iter().map(|asked| asked.dated.what).collect()
}

#[test]
fn the_crayon_is_asked_for_from_three_days_before_until_it_is_changed() {
    // Source: crayons every 16 days: 17 October.
    let (mut scribe, group) = put_to_ram();
    let change = DateTask::CrayonChange { number: 1 };
    assert!(!asked(&scribe, "2026-10-13").contains(&change));
    assert!(asked(&scribe, "2026-10-14").contains(&change));
    assert!(asked(&scribe, "2026-10-20").contains(&change));
    scribe.note(on("2026-10-18"), Event::CrayonChanged { group, color: "red".to_owned() });
    assert!(!asked(&scribe, "2026-10-20").contains(&change));
}

#[test]
fn scores_are_asked_for_until_more_than_half_were_felt() {
    let (mut scribe, _) = put_to_ram();
    assert!(asked(&scribe, "2026-10-01").contains(&DateTask::ScoreAtRam));
    let ewes: Vec<_> = scribe.flock().ewes.keys().copied().collect();
    let score = Condition::from_score(3.0);
    scribe.note(on("2026-10-02"), Event::Conditioned { ewe: ewes[0], score });
    assert!(asked(&scribe, "2026-10-03").contains(&DateTask::ScoreAtRam));
    scribe.note(on("2026-10-03"), Event::Conditioned { ewe: ewes[1], score });
    assert!(!asked(&scribe, "2026-10-03").contains(&DateTask::ScoreAtRam));
}

#[test]
fn the_booster_is_asked_for_in_its_span_until_it_was_given() {
    // Source: 28 days before the earliest lambing (Maryland, NCSU, Missouri): 23 January, as in the dates' own test.
    let (mut scribe, group) = put_to_ram();
    let is_booster = |what: &DateTask| matches!(what, DateTask::Booster { .. });
    assert!(!asked(&scribe, "2027-01-01").iter().any(is_booster));
    assert!(asked(&scribe, "2027-01-23").iter().any(is_booster));
    scribe.note(on("2027-01-24"), Event::BoosterGiven { group });
    assert!(!asked(&scribe, "2027-01-25").iter().any(is_booster));
}

/// The booster that is asked for on a day, if it is.
fn booster(scribe: &Scribe, day: &str) -> Option<SeasonJob> {
    let is_booster = |job: &SeasonJob| matches!(job.dated.what, DateTask::Booster { .. });
    this_week(&scribe.flock(), on(day)).into_iter().find(is_booster)
}

fn boosted(scribe: &mut Scribe, day: &str, ewe: EweId) {
    let treatment = Box::new(Treatment {
        product: "Eight in one".to_owned(),
        amount: None,
        route: None,
        reason: None,
        batch: None,
        by: None,
        day_only: false,
        meat_days: Some(21),
        milk_days: None,
    });
    scribe.note(on(day), Event::Life(Life::Boosted { ewe, treatment }));
}

#[test]
fn a_booster_is_due_in_its_window_late_after_it_and_asked_for_as_long_as_it_serves_a_ewe() {
    // Source: 42 to 14 days before the earliest lambing, 20 February: 9 January to 6 February (Maryland, NCSU, Missouri).
    let (mut scribe, group) = put_to_ram();
    scribe.note(on("2026-11-10"), Event::RamOut { group });
    let is_late = |day: &str| booster(&scribe, day).map(|job| job.is_late(on(day).local().date()));
    assert_eq!(is_late("2027-01-05"), None);
    assert_eq!(is_late("2027-01-06"), Some(false));
    assert_eq!(is_late("2027-02-06"), Some(false));
    assert_eq!(is_late("2027-02-07"), Some(true));
    // The last ewe lambs by 11 April (10 November and 147 + 5 days): two weeks before that its use is past.
    assert_eq!(is_late("2027-03-28"), Some(true));
    assert_eq!(is_late("2027-03-29"), None);
}

#[test]
fn a_booster_given_to_each_ewe_ends_the_asking_and_one_left_out_is_named() {
    let (mut scribe, group) = put_to_ram();
    let ewes: Vec<_> = scribe.flock().ewes.keys().copied().collect();
    boosted(&mut scribe, "2027-01-20", ewes[0]);
    boosted(&mut scribe, "2027-01-21", ewes[1]);
    let without = |scribe: &Scribe, day: &str| {
        let DateTask::Booster { from, .. } = booster(scribe, day)?.dated.what else { return None };
        let flock = scribe.flock();
        Some(without_booster(&flock, &flock.groups[&group], from))
    };
    assert_eq!(without(&scribe, "2027-01-22"), Some(vec![ewes[2]]));
    // Who was scanned empty, or is sold, needs none.
    let mut empty = scribe.clone();
    empty.note(on("2027-01-22"), Event::Scanned { ewe: ewes[2], lambs: 0, days: None });
    assert_eq!(booster(&empty, "2027-01-23"), None);
    boosted(&mut scribe, "2027-01-22", ewes[2]);
    assert_eq!(booster(&scribe, "2027-01-23"), None);
    // One of last year ends nothing.
    let (mut last_year, _) = put_to_ram();
    let ewes: Vec<_> = last_year.flock().ewes.keys().copied().collect();
    for ewe in ewes {
        boosted(&mut last_year, "2026-09-10", ewe);
    }
    assert!(booster(&last_year, "2027-01-23").is_some());
}

#[test]
fn a_step_of_feed_that_was_put_off_is_asked_for_again_on_its_day() {
    let (mut scribe, group) = put_to_ram();
    let is_asked = |scribe: &Scribe, day: &str| {
        asked(scribe, day).iter().any(|what| matches!(what, DateTask::Feed { .. }))
    };
    assert!(is_asked(&scribe, "2027-01-23"));
    let until = on("2027-01-26").local().date();
    scribe.note(on("2027-01-23"), Event::Planning(Planning::FeedPutOff { group, until }));
    assert!(!is_asked(&scribe, "2027-01-25"));
    assert!(is_asked(&scribe, "2027-01-26"));
}

#[test]
fn of_the_steps_of_feed_the_latest_is_asked_for_and_done_when_she_gets_it() {
    let (mut scribe, group) = put_to_ram();
    let feeds = |scribe: &Scribe, day: &str| -> Vec<f64> {
        let feed = |what: DateTask| match what {
            DateTask::Feed { each } => Some(each.as_kilograms()),
            _ => None,
        };
        asked(scribe, day).into_iter().filter_map(feed).collect()
    };
    let first = feeds(&scribe, "2027-01-23");
    assert_eq!(first.len(), 1, "{first:?}");
    scribe.note(on("2027-01-23"), Event::FeedSet { group, mass: Mass::from_kilograms(first[0]) });
    assert_eq!(feeds(&scribe, "2027-01-23"), [] as [f64; 0]);
    let later = feeds(&scribe, "2027-02-10");
    assert!(later.len() == 1 && later[0] > first[0], "{first:?} then {later:?}");
}

#[test]
fn a_group_that_was_parted_asks_for_nothing() {
    let (mut scribe, group) = put_to_ram();
    assert!(!asked(&scribe, "2026-11-20").is_empty());
    scribe.note(on("2026-11-19"), Event::RamOut { group });
    scribe.note(on("2026-11-19"), Event::GroupParted { group });
    assert_eq!(asked(&scribe, "2026-11-20"), []);
}
