//! What a crayon mark says as its days pass: one model of a mark and its returns, whose chances fall without a jump.

use proptest::prelude::*;
use yeanling_core::reckon::season::ewe::{Evidence, LambingForecast, Scan, lambing_forecast};
use yeanling_core::terms::Sign;
use yeanling_core::units::{NaiveDateTime, NaiveTime, TimeDelta};

use super::{date, days, gestation, p, with_ram};

/// A ewe of a group with its ram from the first of October on, marked once on its tenth day.
fn marked_once(for_days: i64) -> Evidence {
    Evidence {
        mating: with_ram("2026-10-01", for_days),
        conception: p(0.75).into(),
        gestation: gestation(147.0, 2.2),
        marks: vec![date("2026-10-10")],
        look_days: 1,
        scan: None,
        signs: Vec::new(),
    }
}

/// The middle of the days on which she lambs to her mark.
fn her_day() -> NaiveDateTime {
    date("2026-10-10").and_time(NaiveTime::MIN) + TimeDelta::hours(147 * 24 + 12)
}

fn of(evidence: &Evidence, now: NaiveDateTime) -> LambingForecast {
    lambing_forecast(evidence, now).expect("a forecast")
}

#[test]
fn the_days_told_leave_out_no_ewe_that_came_back_twice() {
    // Source: ours; the ram was with her for two more heats, 17 and 34 days after the mark.
    let forecast = of(&marked_once(68), date("2027-01-01").and_time(NaiveTime::MIN));
    assert!(forecast.last >= date("2026-10-10") + days(147 + 34), "{}", forecast.last);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn the_chance_of_a_mark_falls_as_its_days_pass_and_the_next_day_follows(
        for_days in 12..70_i64, scanned in any::<bool>(), sign in prop::option::of(0..5_usize), past in 48..140_i64,
    ) {
        // Source: ours. A ewe past her mark's day, with a sign seen then or none: hour by hour nothing new is noted.
        let seen = her_day() + TimeDelta::hours(past);
        let scan = scanned.then(|| Scan { on: date("2026-12-30"), lambs: Some(2), age_days: None });
        let signs = sign.map(|sign| (Sign::ALL[sign], seen)).into_iter().collect();
        let evidence = Evidence { scan, signs, ..marked_once(for_days) };
        let mut before: Option<(f64, f64)> = None;
        for hour in 0..72 {
            let Ok(now) = lambing_forecast(&evidence, seen + TimeDelta::hours(hour)) else { break };
            let to_mark = now.to_mark.expect("she is marked");
            prop_assert!(to_mark <= now.in_lamb + 1e-9);
            if let Some((mark, within)) = before {
                prop_assert!(to_mark <= mark + 1e-9, "to her mark, hour {hour}: {mark} then {to_mark}");
                prop_assert!(mark - to_mark < 0.05, "no jump at hour {hour}: {mark} then {to_mark}");
                // Who is in lamb for sure is the likelier to lamb the longer she has not.
                prop_assert!(scanned || now.within_24h <= within + 0.005, "within 24 h, hour {hour}: {within} then {}", now.within_24h);
                prop_assert!((within - now.within_24h).abs() < 0.06, "no jump at hour {hour}: {within} then {}", now.within_24h);
            }
            before = Some((to_mark, now.within_24h));
        }
    }
}
