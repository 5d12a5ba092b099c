//! What the season asks for about now, and no more once it is done.

use yeanling_core::book::{Event, GroupId};
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::this_week;
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
