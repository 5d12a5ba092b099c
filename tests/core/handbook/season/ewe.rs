//! When one ewe will lamb.

use yeanling_core::reckon::season::ewe::{
    Evidence, Ground, LambingForecast, NoForecast, Scan, lambing_forecast, steps,
};
use yeanling_core::reckon::season::forecast::{Group, curve};
use yeanling_core::reckon::season::gestation::lambed_by;
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::terms::Sign;
use yeanling_core::units::{NaiveDateTime, TimeDelta};

use super::{date, days, gestation, group, near, p, with_ram};

fn at(day: &str, hour: u32) -> NaiveDateTime {
    date(day).and_hms_opt(hour, 0, 0).expect("a time")
}

/// A ewe of a group with its ram from the first of October on for 34 days, nothing else known.
fn plain() -> Evidence {
    Evidence {
        mating: with_ram("2026-10-01", 34),
        conception: p(0.75).into(),
        gestation: gestation(147.0, 2.2),
        marks: Vec::new(),
        look_days: 1,
        scan: None,
        signs: Vec::new(),
    }
}

fn marked(marks: &[&str]) -> Evidence {
    Evidence { marks: marks.iter().map(|mark| date(mark)).collect(), ..plain() }
}

#[track_caller]
fn of(evidence: &Evidence, now: NaiveDateTime) -> LambingForecast {
    lambing_forecast(evidence, now).expect("an outlook")
}

#[test]
fn one_of_whom_nothing_is_known_lambs_as_her_group() {
    // Source: ours, the group's F(t; a, b) of each cycle.
    let lambing_forecast = of(&plain(), at("2027-01-01", 0));
    let group =
        curve(&Group { gestation: gestation(147.0, 2.2), ..group(1, "2026-10-01", 34) }).expect("a ewe");
    near(lambing_forecast.in_lamb, 1.0 - 0.25 * 0.25, 1e-9);
    for (night, chance) in lambing_forecast.nights.iter().enumerate() {
        let date = lambing_forecast.today + days(i64::try_from(night).expect("few"));
        near(*chance, group.on(date), 1e-9);
    }
    assert_eq!(
        lambing_forecast.grounds,
        [Ground::Group { ram_in: date("2026-10-01"), ram_out: date("2026-11-03") }]
    );
}

#[test]
fn not_lambed_yet_leaves_the_past_without_weight() {
    // Source: ours, (F(t+1) − F(t)) / (1 − F(t)).
    let now = at("2027-03-08", 0);
    let lambing_forecast = of(&plain(), now);
    assert_eq!(lambing_forecast.today, date("2027-03-08"));
    let f = |day: f64| {
        0.75 * lambed_by(day, 0.0, 17.0, gestation(147.0, 2.2))
            + 0.1875 * lambed_by(day, 17.0, 34.0, gestation(147.0, 2.2))
    };
    let left = 1.0 - f(158.0);
    near(lambing_forecast.within_24h, (f(159.0) - f(158.0)) / left, 1e-12);
    near(lambing_forecast.within_12h, (f(158.5) - f(158.0)) / left, 1e-12);
    near(lambing_forecast.in_lamb, (0.9375 - f(158.0)) / left, 1e-12);
    near(lambing_forecast.nights.iter().sum(), lambing_forecast.in_lamb, 1e-12);
    assert!(lambing_forecast.first >= now.date());
}

#[test]
fn a_mark_holds_as_any_service_and_is_surer_once_no_other_follows() {
    // Source: ours, by hand: 75 of 100 hold to the mark; of the 25 one in three comes back unseen, and 75 of 100 of
    // those hold; the ram is gone before a third heat. One mark in twenty is none, and then she is as her group.
    let now = at("2027-01-01", 0);
    let forecast = of(&marked(&["2026-10-10"]), now);
    let (mark, back, empty) = (0.75, 0.25 / 3.0 * 0.75, 0.25 / 3.0 * 0.25);
    let told = mark + back + empty;
    near(forecast.to_mark.expect("marked"), 0.95 * mark / told, 1e-6);
    near(forecast.in_lamb, 0.95 * (mark + back) / told + 0.05 * 0.9375, 1e-6);
    assert_eq!((forecast.likely, forecast.holds), (date("2027-03-06"), 0.75));
    assert_eq!(forecast.grounds[0], Ground::Mark { on: date("2026-10-10") });
    // On the day itself nothing has followed yet, and it is a service like any other.
    let fresh = of(&marked(&["2026-10-10"]), at("2026-10-10", 20));
    near(fresh.to_mark.expect("marked"), 0.95 * 0.75, 1e-6);
    let plain = of(&plain(), now);
    let most = |forecast: &LambingForecast| forecast.nights.iter().copied().fold(0.0, f64::max);
    assert!(most(&forecast) > 3.0 * most(&plain));
    assert_eq!(plain.to_mark, None);
}

#[test]
fn the_days_told_hold_eight_in_ten() {
    // Source: ours; counted over the nights themselves.
    for evidence in [plain(), marked(&["2026-10-10"]), marked(&["2026-10-03", "2026-10-20"])] {
        let forecast = of(&evidence, at("2027-01-01", 0));
        let within = |from, to| -> f64 {
            let dated = forecast.nights.iter().zip(forecast.today.iter_days());
            dated.filter(|(_, day)| (from..=to).contains(day)).map(|(chance, _)| chance).sum::<f64>()
                / forecast.in_lamb
        };
        let (from, to) = forecast.run;
        assert!(within(from, to) >= 0.8 - 1e-9, "{}", within(from, to));
        assert!(within(from + days(1), to) < 0.8 && within(from, to - days(1)) < 0.8);
        assert!(within(forecast.first, forecast.last) > 0.98);
    }
}

#[test]
fn of_two_marks_the_last_stands_first() {
    // Source: ours; one marked again did not hold before.
    let lambing_forecast = of(&marked(&["2026-10-03", "2026-10-20"]), at("2027-01-01", 0));
    assert_eq!(lambing_forecast.likely, date("2027-03-16"));
    assert_eq!(
        lambing_forecast,
        of(
            &Evidence { marks: vec![date("2026-10-20"), date("2026-10-03"), date("2026-10-20")], ..plain() },
            at("2027-01-01", 0)
        )
    );
}

#[test]
fn the_ribbon_of_a_marked_ewe_is_about_the_days_to_watch() {
    // Source: ours, one in a hundred left out before and one in a thousand after; Sheep 201 watches from 142 to 152 d.
    let sure = Evidence {
        scan: Some(Scan { on: date("2026-12-10"), lambs: Some(2), age_days: Some(61) }),
        ..marked(&["2026-10-10"])
    };
    let lambing_forecast = of(&sure, at("2027-01-01", 0));
    assert!(
        (date("2027-02-28")..=date("2027-03-02")).contains(&lambing_forecast.first),
        "{}",
        lambing_forecast.first
    );
    assert_eq!(lambing_forecast.likely, date("2027-03-06"));
    assert!(
        (date("2027-03-10")..=date("2027-03-13")).contains(&lambing_forecast.last),
        "{}",
        lambing_forecast.last
    );
}

#[test]
fn a_scan_with_an_age_narrows_a_ewe_without_marks() {
    // Source: ours.
    let scan = Some(Scan { on: date("2026-12-20"), lambs: Some(2), age_days: Some(70) });
    let (scanned, plain) =
        (of(&Evidence { scan, ..plain() }, at("2027-01-01", 0)), of(&plain(), at("2027-01-01", 0)));
    near(scanned.in_lamb, 1.0, 1e-9);
    assert_eq!(scanned.likely, date("2027-03-07"));
    assert!(scanned.last - scanned.first < plain.last - plain.first);
    assert_eq!(scanned.grounds[0], Ground::AgeAtScan { on: date("2026-12-20"), age_days: 70 });
}

#[test]
fn a_scan_that_cannot_be_is_told() {
    // Source: ours, 30 d after ram in; "scanned 4 at day 20".
    let of = |on: &str, lambs, age_days| {
        let scan = Some(Scan { on: date(on), lambs, age_days });
        lambing_forecast(&Evidence { scan, ..plain() }, at("2027-01-01", 0)).map(|_| ())
    };
    assert_eq!(of("2026-10-21", Some(4), None), Err(NoForecast::ScanTooEarly { day: 20 }));
    assert_eq!(of("2026-12-20", Some(0), None), Err(NoForecast::ScannedEmpty { on: date("2026-12-20") }));
    assert!(matches!(of("2026-12-20", Some(8), None), Err(NoForecast::Refused(_))));
    assert!(matches!(of("2026-12-20", Some(2), Some(200)), Err(NoForecast::Refused(_))));
    let age_days = 120;
    let on = date("2026-12-20");
    assert_eq!(of("2026-12-20", Some(2), Some(age_days)), Err(NoForecast::ScanDoesNotFit { on, age_days }));
    assert_eq!(of("2026-12-20", Some(4), None), Ok(()));
}

#[test]
fn a_mark_without_a_ram_is_told() {
    // Source: ours.
    for mark in ["2026-09-30", "2026-11-05"] {
        let told = lambing_forecast(&marked(&[mark]), at("2027-01-01", 0)).expect_err("no ram");
        assert!(matches!(told, NoForecast::MarkWithoutRam { mark: given, .. } if given == date(mark)));
    }
    assert!(
        lambing_forecast(&marked(&["2026-11-04"]), at("2027-01-01", 0)).is_ok(),
        "seen the morning after"
    );
    let last_day = of(&marked(&["2026-11-03"]), at("2027-01-01", 0));
    assert_eq!(of(&marked(&["2026-11-04"]), at("2027-01-01", 0)).nights, last_day.nights);
    let none = Evidence { look_days: 0, ..plain() };
    assert!(matches!(lambing_forecast(&none, at("2027-01-01", 0)), Err(NoForecast::Refused(_))));
}

#[test]
fn an_udder_tight_since_this_morning_weighs_more_than_a_date() {
    // Source: ours, 20 times; common practice for the sign.
    let now = at("2027-03-01", 18);
    let near_day = of(&marked(&["2026-10-06"]), now).within_24h;
    let tight =
        Evidence { signs: vec![(Sign::UdderTight, now - TimeDelta::hours(10))], ..marked(&["2026-10-20"]) };
    let (before, after) = (of(&marked(&["2026-10-20"]), now).within_24h, of(&tight, now));
    assert!(before < 0.01 && near_day > 0.15);
    assert!(after.within_24h > 8.0 * before);
    let likely_day = of(&Evidence { marks: vec![date("2026-10-06")], ..tight }, now);
    assert!(likely_day.within_24h > 0.6, "{}", likely_day.within_24h);
    assert_eq!(likely_day.grounds[0], Ground::Sign { sign: Sign::UdderTight, factor: 20.0 });
}

#[test]
fn every_sign_raises_the_next_hours_and_fades() {
    // Source: ours.
    let now = at("2027-03-01", 6);
    let base = of(&marked(&["2026-10-08"]), now);
    for sign in Sign::ALL {
        let with = |ago: i64| {
            let signs = vec![(sign, now - TimeDelta::hours(ago))];
            of(&Evidence { signs, ..marked(&["2026-10-08"]) }, now)
        };
        let (fresh, old, ahead) = (with(0), with(200), with(-1));
        assert!(fresh.within_12h > base.within_12h && fresh.within_24h > base.within_24h, "{sign:?}");
        near(fresh.nights.iter().sum(), fresh.in_lamb, 1e-9);
        near(old.within_24h, base.within_24h, 1e-9);
        near(ahead.within_24h, base.within_24h, 1e-9);
        let steps = steps(sign);
        assert!(steps.windows(2).all(|two| two[0].0 < two[1].0 && two[0].1 > two[1].1));
    }
    let both = Evidence { signs: vec![(Sign::Slack, now), (Sign::Restless, now)], ..marked(&["2026-10-08"]) };
    let one = Evidence { signs: vec![(Sign::Restless, now)], ..marked(&["2026-10-08"]) };
    assert!(of(&both, now).within_12h <= of(&one, now).within_12h + 1e-12, "only the strongest counts");
}

#[test]
fn crayons_looked_at_once_a_week_leave_a_week_open() {
    // Source: ours.
    let weekly = Evidence { look_days: 7, ..marked(&["2026-10-20"]) };
    let (daily, weekly) =
        (of(&marked(&["2026-10-20"]), at("2027-01-01", 0)), of(&weekly, at("2027-01-01", 0)));
    assert_eq!((daily.likely, weekly.likely), (date("2027-03-16"), date("2027-03-13")));
    let most =
        |lambing_forecast: &LambingForecast| lambing_forecast.nights.iter().copied().fold(0.0, f64::max);
    assert!(most(&weekly) < most(&daily));
}

#[test]
fn one_whose_days_have_all_passed_is_told() {
    // Source: ours.
    let told = lambing_forecast(&marked(&["2026-10-10"]), at("2027-06-01", 0)).expect_err("passed");
    assert!(matches!(told, NoForecast::Passed { last } if last < date("2027-06-01")));
}

#[test]
fn what_is_left_of_a_group_makes_a_forecast() {
    // Source: ours.
    let lambing_forecast = of(&plain(), at("2027-03-08", 0));
    let curve = lambing_forecast.curve(20, Litters::default()).expect("ewes");
    assert_eq!((curve.first(), curve.ewes()), (date("2027-03-08"), 20));
    near(curve.lambs_at_all(), lambing_forecast.in_lamb, 1e-12);
    assert!(lambing_forecast.mean_days() > 0.0);
}
