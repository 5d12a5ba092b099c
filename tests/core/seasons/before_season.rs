//! What is agreed with the vet before the first lamb: asked once a season, from six weeks before, until it is done.

use yeanling_core::book::{Animal, Cause, Event};
use yeanling_core::reckon::season::shopping::KIT;
use yeanling_core::seasons::{ToAgree, before_season, kit_asked, lambing_forecasts};
use yeanling_core::settings::{Choice, VetAgreed};
use yeanling_core::units::{Amount, Moment, TimeDelta};

use crate::scribe::Scribe;

fn on(text: &str) -> Moment {
    format!("{text}T08:00:00.000+00:00").parse().expect("a moment")
}

/// Three ewes put to the ram on this day.
fn put_to_ram(scribe: &mut Scribe, day: &str) {
    let came = on(day) - TimeDelta::days(30);
    let group = scribe.group(came, day);
    for tag in ["1", "2", "3"] {
        let ewe = scribe.ewe(came, &format!("{day} {tag}"));
        scribe.note(came, Event::JoinedGroup { ewe, group });
    }
    scribe.ram_in(on(day), group);
    scribe.note(on(day) + TimeDelta::days(34), Event::RamOut { group });
}

fn open(scribe: &Scribe, now: Moment) -> Vec<ToAgree> {
    let flock = scribe.flock();
    let forecasts = lambing_forecasts(&flock, now);
    before_season(&flock, &forecasts, now).map(|asked| asked.open).unwrap_or_default()
}

fn agree(scribe: &mut Scribe, at: Moment, what: VetAgreed) {
    scribe.note(at, Event::Chose(Choice::VetAgreed(what)));
}

#[test]
fn it_is_asked_from_six_weeks_before_the_first_day() {
    let mut scribe = Scribe::new(1);
    put_to_ram(&mut scribe, "2026-10-01");
    let flock = scribe.flock();
    let early = on("2026-12-20");
    let forecasts = lambing_forecasts(&flock, early);
    let known = forecasts.awaited.iter().filter_map(|one| one.lambing_forecast.as_ref().ok());
    let first = known.map(|forecast| forecast.first).min().expect("they are awaited");
    assert_eq!(open(&scribe, early), []);
    let day = |days: u64| first.checked_sub_days(chrono::Days::new(days)).expect("a day").to_string();
    assert_eq!(open(&scribe, on(&day(43))), []);
    assert_eq!(open(&scribe, on(&day(42))), ToAgree::ALL);
}

#[test]
fn the_kit_is_asked_for_eight_four_and_one_weeks_before_the_first_day_until_most_of_it_was_counted() {
    let mut scribe = Scribe::new(1);
    put_to_ram(&mut scribe, "2026-10-01");
    let first = {
        let (flock, early) = (scribe.flock(), on("2026-12-20"));
        let forecasts = lambing_forecasts(&flock, early);
        let known = forecasts.awaited.iter().filter_map(|one| one.lambing_forecast.as_ref().ok());
        known.map(|forecast| forecast.first).min().expect("they are awaited")
    };
    let before = |days: u64| on(&first.checked_sub_days(chrono::Days::new(days)).expect("a day").to_string());
    let asked = |scribe: &Scribe, now: Moment| {
        let flock = scribe.flock();
        kit_asked(&flock, &lambing_forecasts(&flock, now), now).is_some()
    };
    let told: Vec<bool> =
        [57, 56, 46, 45, 29, 28, 18, 17, 8, 7, 1].map(|days| asked(&scribe, before(days))).to_vec();
    assert_eq!(told, [false, true, true, false, false, true, true, false, false, true, true]);
    // Half of fifteen things is not most of them.
    for rate in &KIT[..7] {
        let counted = Event::StoreCounted { item: rate.item, amount: Amount::from_units(9.0) };
        scribe.note(before(56), counted);
    }
    assert!(asked(&scribe, before(55)));
    scribe.note(before(55), Event::StoreIn { item: KIT[7].item, amount: Amount::from_units(9.0) });
    assert!(!asked(&scribe, before(55)));
    assert!(asked(&scribe, before(28)), "it is asked again four weeks before");
}

#[test]
fn each_is_asked_until_it_is_agreed_and_the_numbers_until_there_are_two_for_the_night() {
    let mut scribe = Scribe::new(1);
    put_to_ram(&mut scribe, "2026-10-01");
    let now = on("2027-02-10");
    agree(&mut scribe, now, VetAgreed::Trained);
    agree(&mut scribe, now, VetAgreed::Killing);
    assert_eq!(open(&scribe, now), [ToAgree::Agreed(VetAgreed::Glucose), ToAgree::NightNumbers]);
    scribe.note(now, Event::Chose(Choice::VetNightPhone("555 0100".to_owned())));
    assert!(open(&scribe, now).contains(&ToAgree::NightNumbers), "one is not two");
    scribe.note(now, Event::Chose(Choice::VetSecondPhone("555 0101".to_owned())));
    agree(&mut scribe, now, VetAgreed::Glucose);
    assert_eq!(open(&scribe, now), []);
}

/// Returns when the first lamb is looked for, if anything is asked.
fn first(scribe: &Scribe, now: Moment) -> Option<Option<String>> {
    let flock = scribe.flock();
    let asked = before_season(&flock, &lambing_forecasts(&flock, now), now)?;
    Some(asked.first.map(|first| first.to_string()))
}

#[test]
fn where_nothing_says_when_it_is_asked_at_once_and_once() {
    let mut scribe = Scribe::new(1);
    assert_eq!(first(&scribe, on("2027-01-10")), None, "no ewe, no lamb");
    let ewe = scribe.ewe(on("2027-01-09"), "14");
    assert_eq!(first(&scribe, on("2027-01-10")), Some(None));
    assert_eq!(open(&scribe, on("2027-01-10")), ToAgree::ALL);
    for what in VetAgreed::ALL {
        agree(&mut scribe, on("2027-01-11"), what);
    }
    assert_eq!(open(&scribe, on("2027-01-12")), [ToAgree::NightNumbers]);
    assert_eq!(
        open(&scribe, on("2027-11-12")),
        [ToAgree::NightNumbers],
        "once is enough while nothing says when"
    );
    scribe.note(on("2027-11-13"), Event::Died { animal: Animal::Ewe(ewe), cause: Cause::Accident });
    assert_eq!(open(&scribe, on("2027-11-14")), []);
}

#[test]
fn a_scan_that_saw_none_asks_nothing_and_one_that_tells_how_old_they_are_says_when() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(on("2027-01-09"), "14");
    scribe.note(on("2027-01-10"), Event::Scanned { ewe, lambs: 0, days: None });
    assert_eq!(first(&scribe, on("2027-01-11")), None);
    scribe.note(on("2027-02-10"), Event::Scanned { ewe, lambs: 2, days: Some(70) });
    // 68 days to the earliest birth, on 19 April: asked from six weeks before.
    assert_eq!(first(&scribe, on("2027-03-07")), None);
    assert_eq!(first(&scribe, on("2027-03-08")), Some(Some("2027-04-19".to_owned())));
    assert_eq!(first(&scribe, on("2027-05-30")), Some(None), "overdue, and nothing else says when");
}

#[test]
fn where_no_ram_was_noted_last_years_days_say_when() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(on("2027-01-09"), "14");
    scribe.born(on("2027-03-01"), Some(ewe));
    scribe.born(on("2027-04-10"), None);
    assert_eq!(first(&scribe, on("2027-03-20")), Some(Some("2027-03-20".to_owned())), "lambing goes on");
    assert_eq!(first(&scribe, on("2027-06-01")), None);
    assert_eq!(first(&scribe, on("2028-01-18")), None);
    assert_eq!(first(&scribe, on("2028-01-19")), Some(Some("2028-03-01".to_owned())));
    assert_eq!(
        first(&scribe, on("2028-05-10")),
        Some(Some("2028-03-01".to_owned())),
        "a month past its last day"
    );
    assert_eq!(first(&scribe, on("2028-05-11")), None);
    // A ram that was noted says it better.
    put_to_ram(&mut scribe, "2027-12-01");
    assert_eq!(first(&scribe, on("2028-02-10")), None);
}

#[test]
fn the_next_season_asks_anew_and_a_flock_of_nobody_is_asked_nothing() {
    let mut scribe = Scribe::new(1);
    assert_eq!(open(&scribe, on("2027-02-10")), []);
    put_to_ram(&mut scribe, "2026-10-01");
    for what in VetAgreed::ALL {
        agree(&mut scribe, on("2027-02-10"), what);
    }
    assert_eq!(open(&scribe, on("2027-03-20")), [ToAgree::NightNumbers]);
    put_to_ram(&mut scribe, "2027-10-01");
    assert_eq!(open(&scribe, on("2028-02-10")), ToAgree::ALL);
}
