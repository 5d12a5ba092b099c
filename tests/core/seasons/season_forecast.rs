//! The season ahead, from what was noted of groups, marks, scans, signs and births.

use yeanling_core::book::{Animal, Departure, Event, EweId, GroupId, Life, RamAge, Sign};
use yeanling_core::reckon::season::breeding::{BreedingSeason, Latitude};
use yeanling_core::reckon::season::condition::{ConditionStage, Flag, System, flags};
use yeanling_core::reckon::season::cycles::Settled;
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{
    SeasonForecast, Served, group_dates, lambing_forecasts, overdue, put_to_ram, record, season_forecast,
    seasons, served, settled, standing,
};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Condition, Moment};

use crate::scribe::Scribe;

fn on(text: &str) -> Moment {
    format!("{text}:00.000-05:00").parse().expect("a moment")
}

/// Ten ewes with a ram from the first of October to the twentieth of November: 51 days, three whole cycles.
fn ten_ewes() -> (Scribe, GroupId, Vec<EweId>) {
    let mut scribe = Scribe::new(1);
    let formed = on("2026-09-20T09:00");
    let group = scribe.note(formed, Event::GroupFormed { name: "Lower field".to_owned() }).as_group();
    let ewes: Vec<EweId> = (1..=10).map(|tag| scribe.ewe(formed, &tag.to_string())).collect();
    for ewe in &ewes {
        scribe.note(formed, Event::JoinedGroup { ewe: *ewe, group });
    }
    scribe.note(on("2026-10-01T09:00"), Event::RamIn { group, ram: None, age: None });
    scribe.note(on("2026-11-20T09:00"), Event::RamOut { group });
    (scribe, group, ewes)
}

fn look(scribe: &Scribe, now: Moment) -> SeasonForecast {
    let flock = scribe.flock();
    season_forecast(&flock, &lambing_forecasts(&flock, now), now)
}

#[track_caller]
fn near(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{got}, expected {expected} ± {tolerance}");
}

#[test]
fn a_group_brings_as_many_births_as_three_cycles_hold() {
    // Source: season figures, three cycles: 1 − (1−p)³ of the ewes, p as a Beta(36, 12): the mean of its third moment.
    let (scribe, ..) = ten_ewes();
    let found = look(&scribe, on("2027-01-01T09:00"));
    let forecast = found.forecast.expect("ten are awaited");
    let empty = (12.0 * 13.0 * 14.0) / (48.0 * 49.0 * 50.0);
    near(forecast.births.mean, 10.0 * (1.0 - empty), 0.002);
    assert_eq!((found.put_to_ram, found.lambed, found.awaited.len()), (10, 0, 10));
    let likely = found.likely.expect("it can be told");
    assert!(likely.low >= 7 && likely.high == 10, "{likely:?}");
    assert!(found.pens.expect("pens").enough.is_sorted());
}

#[test]
fn ewes_mated_out_of_season_have_a_wide_forecast_that_says_so_where_the_farm_lies_so() {
    // Source: ours, Beta(2, 2) out of season; Burke 2005 and Wildeus: fewest hold in spring, near the equator all year.
    let mut scribe = Scribe::new(1);
    let formed = on("2027-04-01T09:00");
    let group = scribe.note(formed, Event::GroupFormed { name: "Spring".to_owned() }).as_group();
    for tag in 1..=20 {
        let ewe = scribe.ewe(formed, &tag.to_string());
        scribe.note(formed, Event::JoinedGroup { ewe, group });
    }
    scribe.note(on("2027-04-10T09:00"), Event::RamIn { group, ram: None, age: None });
    scribe.note(on("2027-05-13T09:00"), Event::RamOut { group });
    let now = on("2027-06-01T09:00");
    let north = look(&scribe, now);
    assert_eq!(north.conception.season, BreedingSeason::Outside);
    let likely = |found: &SeasonForecast| found.likely.clone().expect("it can be told");
    assert!(likely(&north).low <= 6 && likely(&north).high >= 19, "{:?}", north.likely);
    scribe.note(now, Event::Chose(Choice::Latitude(Latitude::Tropics)));
    let tropics = look(&scribe, on("2027-06-02T09:00"));
    assert_eq!(tropics.conception.season, BreedingSeason::Within);
    assert!(likely(&tropics).low >= 15, "{:?}", tropics.likely);
}

#[test]
fn nobody_put_to_the_ram_nothing_ahead() {
    let mut scribe = Scribe::new(1);
    scribe.ewe(on("2026-09-20T09:00"), "1");
    let found = look(&scribe, on("2027-01-01T09:00"));
    assert_eq!((found.forecast, found.awaited.len(), found.put_to_ram), (None, 0, 0));
}

#[test]
fn a_mark_narrows_her_days_and_a_tight_udder_outweighs_them() {
    let (mut scribe, _, ewes) = ten_ewes();
    let width = |scribe: &Scribe, ewe: EweId, now| {
        let found = look(scribe, now);
        let one = found.awaited.into_iter().find(|one| one.ewe == ewe).expect("awaited");
        one.lambing_forecast.expect("it can be told")
    };
    let now = on("2027-02-10T09:00");
    let before = width(&scribe, ewes[0], now);
    scribe.note(on("2026-10-10T09:00"), Event::CrayonMark { ewe: ewes[0], color: "red".to_owned() });
    let after = width(&scribe, ewes[0], now);
    // 10 October and 147 days: 6 March.
    assert_eq!(after.likely.to_string(), "2027-03-06");
    let chance_of = |lambing_forecast: &yeanling_core::reckon::season::ewe::LambingForecast| {
        lambing_forecast.nights.iter().copied().fold(0.0, f64::max)
    };
    assert!(chance_of(&after) > 2.0 * chance_of(&before), "her days are fewer");
    // The reverse order of the list: who shows signs stands first, whatever her date.
    let seen = on("2027-03-01T21:00");
    scribe.note(seen, Event::SignSeen { ewe: ewes[7], sign: Sign::UdderTight });
    let tonight = look(&scribe, on("2027-03-01T22:00"));
    assert_eq!(tonight.awaited[0].ewe, ewes[7]);
    let chance = tonight.awaited[0].lambing_forecast.as_ref().expect("told").within_24h;
    let of_others = tonight.awaited[2].lambing_forecast.as_ref().expect("told").within_24h;
    assert!(chance > 5.0 * of_others, "{chance} against {of_others}");
}

#[test]
fn who_has_lambed_is_no_longer_awaited_and_stands_in_what_happened() {
    let (mut scribe, _, ewes) = ten_ewes();
    let now = on("2027-03-02T09:00");
    let before = look(&scribe, now);
    scribe.born(on("2027-02-28T04:00"), Some(ewes[2]));
    let after = look(&scribe, now);
    assert_eq!((before.awaited.len(), after.awaited.len()), (10, 9));
    assert_eq!((after.put_to_ram, after.lambed), (10, 1));
    assert_eq!(after.happened.iter().map(|(_, ewes)| *ewes).collect::<Vec<_>>(), [1]);
    let season = &seasons(&scribe.flock())[0];
    assert_eq!(put_to_ram(&scribe.flock(), season).len(), 10);
    assert!(before.forecast.expect("told").births.mean > after.forecast.expect("told").births.mean);
}

#[test]
fn a_night_that_has_passed_has_no_weight() {
    let (scribe, ..) = ten_ewes();
    let now = on("2027-03-10T09:00");
    let forecast = look(&scribe, now).forecast.expect("told");
    assert!(forecast.nights.iter().all(|night| night.date >= now.local().date()));
}

#[test]
fn a_ewe_scanned_empty_is_not_awaited_and_one_with_three_brings_three() {
    let (mut scribe, _, ewes) = ten_ewes();
    let scanned = on("2026-12-28T09:00");
    for ewe in &ewes[1..] {
        scribe.note(scanned, Event::Scanned { ewe: *ewe, lambs: 0, days: None });
    }
    scribe.note(scanned, Event::Scanned { ewe: ewes[0], lambs: 3, days: Some(80) });
    let found = look(&scribe, on("2027-01-10T09:00"));
    assert_eq!(found.awaited.len(), 1);
    let forecast = found.forecast.expect("told");
    near(forecast.births.mean, 1.0, 1e-6);
    near(forecast.lambs, 3.0, 1e-6);
    // 28 December less 80 days, and 147: 6 March, give or take the scan's spread.
    let likely = found.awaited[0].lambing_forecast.as_ref().expect("told").likely;
    assert!(["2027-03-05", "2027-03-06"].contains(&likely.to_string().as_str()), "{likely}");
}

#[test]
fn a_scan_is_of_the_litter_that_comes_and_of_no_other() {
    let (mut scribe, _, ewes) = ten_ewes();
    let scanned = |scribe: &Scribe, now| scribe.flock().scanned_for(ewes[0], on(now));
    assert_eq!(scanned(&scribe, "2027-03-01T03:00"), None);
    scribe.note(on("2027-01-05T09:00"), Event::Scanned { ewe: ewes[0], lambs: 2, days: None });
    assert_eq!(scanned(&scribe, "2027-03-01T03:00"), Some(2));
    // The first lamb is born, and the second still to come.
    scribe.born(on("2027-03-01T03:00"), Some(ewes[0]));
    assert_eq!(scanned(&scribe, "2027-03-01T04:00"), Some(2));
    assert_eq!(scanned(&scribe, "2027-05-01T04:00"), None, "that litter is long born");
    assert_eq!(scanned(&scribe, "2028-03-01T04:00"), None, "that was last year");
    scribe.note(on("2027-01-06T09:00"), Event::Scanned { ewe: ewes[0], lambs: 0, days: None });
    assert_eq!(scanned(&scribe, "2027-03-01T04:00"), None, "the last scan counts");
}

#[test]
fn who_was_scanned_empty_or_is_gone_is_no_longer_likely_to_lamb() {
    let (mut scribe, _, ewes) = ten_ewes();
    for ewe in &ewes[..3] {
        scribe.note(on("2027-01-05T09:00"), Event::Scanned { ewe: *ewe, lambs: 0, days: None });
    }
    let likely = look(&scribe, on("2027-01-06T09:00")).likely.expect("it can be told");
    assert_eq!((likely.put, likely.high), (10, 7));
}

#[test]
fn one_scanned_empty_while_the_ram_stays_is_told_apart_and_is_none_of_the_likely() {
    // Source: ours; the ram is still in, so that she may hold yet.
    let mut scribe = Scribe::new(1);
    let formed = on("2026-09-20T09:00");
    let group = scribe.note(formed, Event::GroupFormed { name: "Top".to_owned() }).as_group();
    let ewes: Vec<EweId> = (1..=24).map(|tag| scribe.ewe(formed, &tag.to_string())).collect();
    for ewe in &ewes {
        scribe.note(formed, Event::JoinedGroup { ewe: *ewe, group });
    }
    scribe.note(on("2026-10-01T09:00"), Event::RamIn { group, ram: None, age: None });
    for (ewe, lambs) in ewes.iter().zip([0].into_iter().chain([2; 23])) {
        scribe.note(on("2026-12-20T09:00"), Event::Scanned { ewe: *ewe, lambs, days: None });
    }
    let found = look(&scribe, on("2026-12-21T09:00"));
    let likely = found.likely.expect("it can be told");
    assert_eq!((likely.put, likely.empty, likely.low, likely.high), (24, 1, 23, 23), "{likely:?}");
    near(likely.mean, 23.0, 1e-3);
    assert!(found.forecast.expect("told").births.mean > 23.0, "her own chance stays in the nights");
}

#[test]
fn a_ewe_past_her_days_is_told_of_for_a_month_unless_she_lambed_or_was_empty() {
    let (mut scribe, _, ewes) = ten_ewes();
    scribe.note(on("2027-01-05T09:00"), Event::Scanned { ewe: ewes[0], lambs: 0, days: None });
    scribe.note(on("2027-01-05T09:00"), Event::Scanned { ewe: ewes[5], lambs: 2, days: None });
    for ewe in &ewes[1..4] {
        scribe.born(on("2027-03-10T09:00"), Some(*ewe));
    }
    let seen = |now| {
        let flock = scribe.flock();
        overdue(&flock, &lambing_forecasts(&flock, now), now)
    };
    assert!(seen(on("2027-04-10T09:00")).is_empty(), "she may still lamb");
    // 20 November and 159 days: 28 April.
    for day in ["2027-04-29T09:00", "2027-05-20T09:00"] {
        let found = seen(on(day));
        let who: Vec<EweId> = found.iter().map(|one| one.ewe).collect();
        assert_eq!(who, [&ewes[5..6], &ewes[4..5], &ewes[6..]].concat(), "{day}");
        assert_eq!(found[0].lambs, Some(2));
        assert!(found.iter().all(|one| one.last < on(day).local().date()));
    }
    assert!(seen(on("2027-07-01T09:00")).is_empty(), "that was last season");
}

#[test]
fn who_may_still_lamb_was_not_without_lambs_this_season() {
    let (mut scribe, _, ewes) = ten_ewes();
    scribe.note(on("2027-01-05T09:00"), Event::Scanned { ewe: ewes[0], lambs: 0, days: None });
    scribe.born(on("2027-03-01T09:00"), Some(ewes[1]));
    let barren = |ewe, now| record(&scribe.flock(), ewe, on(now)).expect("a record").barren;
    assert_eq!((barren(ewes[2], "2027-03-10T09:00"), barren(ewes[0], "2027-03-10T09:00")), (0, 1));
    assert_eq!(barren(ewes[2], "2027-06-10T09:00"), 1);
}

#[test]
fn the_groups_dates_come_from_its_first_and_last_day() {
    // Source: season figures: ram in 2026-10-01, out 2026-11-20: 2027-02-20 to 2027-04-21, booster 2027-01-23.
    let (scribe, group, _) = ten_ewes();
    let flock = scribe.flock();
    let dates = group_dates(&flock, &flock.groups[&group]);
    let of = |what: fn(&DateTask) -> bool| {
        dates.iter().find(|one| what(&one.what)).map(|one| one.date.to_string()).expect("it is there")
    };
    assert_eq!(of(|what| matches!(what, DateTask::WatchFrom)), "2027-02-20");
    assert_eq!(of(|what| matches!(what, DateTask::WatchUntil)), "2027-04-21");
    assert_eq!(of(|what| matches!(what, DateTask::Booster { .. })), "2027-01-23");
    assert_eq!(of(|what| matches!(what, DateTask::RamOut)), "2026-11-20");
}

#[test]
fn who_left_before_her_day_is_no_miss() {
    // Source: ours: what is left of the flock holds as the handbook says.
    let (mut scribe, _, ewes) = ten_ewes();
    for ewe in &ewes[..8] {
        let sold = Life::Went { animal: Animal::Ewe(*ewe), how: Departure::Sold, to: None };
        scribe.note(on("2026-12-05T09:00"), Event::Life(sold));
    }
    let found = look(&scribe, on("2027-02-01T09:00"));
    near(found.conception.conception.as_share(), 0.75, 1e-3);
    let likely = found.likely.expect("it can be told");
    assert_eq!((likely.put, likely.high), (10, 2));
}

#[test]
fn half_the_births_of_the_first_cycle_say_nothing_of_the_other_half() {
    // Source: ours; five of ten by the ninth of March, as a flock in which three in four hold has.
    let (mut scribe, _, ewes) = ten_ewes();
    for (ewe, day) in ewes.iter().zip(["02-25", "02-28", "03-03", "03-05", "03-08"]) {
        scribe.born(on(&format!("2027-{day}T04:00")), Some(*ewe));
    }
    let found = look(&scribe, on("2027-03-09T09:00"));
    near(found.conception.conception.as_share(), 0.75, 0.02);
    let peak = |from: &str, to: &str| -> f64 {
        let nights = &found.forecast.as_ref().expect("told").nights;
        let inside = nights.iter().filter(|night| (from..=to).contains(&night.date.to_string().as_str()));
        inside.map(|night| night.births.mean).sum()
    };
    // Of the five left one in three held in the second cycle, some weeks from now.
    assert!(peak("2027-03-19", "2027-04-05") > 1.2, "{}", peak("2027-03-19", "2027-04-05"));
}

#[test]
fn an_empty_scan_leaves_what_it_could_not_see() {
    // Source: ours; scanned on day 60, so 21 days with the ram are unseen, of 17 of which three in four hold.
    let (mut scribe, _, ewes) = ten_ewes();
    for ewe in &ewes {
        scribe.note(on("2026-11-30T09:00"), Event::Scanned { ewe: *ewe, lambs: 0, days: None });
    }
    let found = look(&scribe, on("2026-12-20T09:00"));
    assert!(found.conception.conception.as_share() < 0.75, "ten of ten missed at first");
    let forecast = found.forecast.expect("they may still lamb");
    assert!((5.0..9.0).contains(&forecast.births.mean), "{}", forecast.births.mean);
}

#[test]
fn a_ewe_with_two_rams_one_after_the_other_is_one_ewe() {
    // Source: ours.
    let (mut scribe, group, ewes) = ten_ewes();
    scribe.ram_in(on("2026-11-22T09:00"), group);
    scribe.note(on("2026-12-08T09:00"), Event::RamOut { group });
    scribe.born(on("2027-04-20T04:00"), Some(ewes[0]));
    let found = look(&scribe, on("2027-04-21T09:00"));
    let likely = found.likely.expect("it can be told");
    assert_eq!((found.put_to_ram, found.lambed, likely.put), (10, 1, 10));
}

#[test]
fn a_ewe_too_fat_in_her_last_month_is_told_of_from_what_was_noted() {
    // Source: NADIS, score 4 and over in the last month; the ribbon of a ewe begins on 23 February.
    let (mut scribe, _, ewes) = ten_ewes();
    let scored = |scribe: &mut Scribe, day: &str, quarters| {
        let score = Condition::from_quarters(quarters);
        scribe.note(on(&format!("{day}T09:00")), Event::Conditioned { ewe: ewes[0], score });
    };
    let told = |scribe: &Scribe, now| {
        let flock = scribe.flock();
        let (score, standing) = standing(
            &lambing_forecasts(&flock, on(now)),
            &flock.ewes[&ewes[0]],
            ConditionStage::LatePregnancy,
            on(now),
        )
        .expect("she was scored");
        flags(System::Lowland, score, standing)
    };
    scored(&mut scribe, "2027-01-02", 16);
    assert_eq!(told(&scribe, "2027-01-03T09:00"), []);
    scored(&mut scribe, "2027-02-10", 16);
    assert_eq!(told(&scribe, "2027-02-11T09:00"), [Flag::TooFatLate]);
    scored(&mut scribe, "2027-02-12", 12);
    assert_eq!(told(&scribe, "2027-02-13T09:00"), [Flag::ChangedLate], "too fast");
    scored(&mut scribe, "2027-03-01", 17);
    scribe.born(on("2027-03-02T04:00"), Some(ewes[0]));
    assert!(!told(&scribe, "2027-03-03T09:00").contains(&Flag::TooFatLate), "she has lambed");
}

#[test]
fn a_group_has_its_rams_share_and_who_settled_first() {
    // Source: season figures: a ram lamb serves 15 to 25; lambing within 20 d of the first ÷ put to the ram.
    let (mut scribe, group, ewes) = ten_ewes();
    let of = |scribe: &Scribe, now: &str| {
        let flock = scribe.flock();
        (served(&flock, &flock.groups[&group]), settled(&flock, &flock.groups[&group], on(now)))
    };
    for (ewe, day) in ewes.iter().zip(["02-25", "03-17", "03-18"]) {
        scribe.born(on(&format!("2027-{day}T04:00")), Some(*ewe));
    }
    assert_eq!(of(&scribe, "2027-03-17T09:00"), (None, None), "no ram is in, and the 20 days are not over");
    assert_eq!(of(&scribe, "2027-03-20T09:00").1, Some(Settled { ewes: 2, put: 10 }));
    scribe.note(on("2027-10-01T09:00"), Event::RamIn { group, ram: None, age: Some(RamAge::Lamb) });
    assert_eq!(of(&scribe, "2027-10-02T09:00").0, Some(Served { ewes: 10, printed: (15, 25) }));
    assert!(!Served { ewes: 25, printed: (15, 25) }.is_too_many());
    assert!(Served { ewes: 26, printed: (15, 25) }.is_too_many());
    scribe.note(on("2027-10-03T09:00"), Event::RamIn { group, ram: None, age: None });
    assert_eq!(of(&scribe, "2027-10-04T09:00").0, None, "one ram's age is not known");
}
