//! What holds for every season: a later ram never brings a birth forward, more ewes never need fewer pens.

use proptest::prelude::*;
use yeanling_core::reckon::season::bounds::Refused;
use yeanling_core::reckon::season::ewe::{Evidence, lambing_forecast};
use yeanling_core::reckon::season::forecast::{Curve, Group, curve, forecast, lambed, lambs_on};
use yeanling_core::reckon::season::gestation::{BreedType, expected};
use yeanling_core::reckon::season::mating::Mating;
use yeanling_core::reckon::season::pens::wanted;
use yeanling_core::settings::PenStay;
use yeanling_core::terms::Sign;
use yeanling_core::units::{NaiveTime, TimeDelta};

use super::{date, days, gestation, group, p, with_ram};

fn config() -> ProptestConfig {
    ProptestConfig { failure_persistence: None, cases: 64, ..ProptestConfig::default() }
}

fn a_curve(group: &Group) -> Result<Curve, Refused> {
    curve(group)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_later_ram_never_brings_a_birth_forward(
        later in 0..40_i64, share in 0.0..1.0, long in 1..80_i64, day in 130..260_i64,
    ) {
        // Source: ours.
        let ram_in = date("2026-10-01");
        let of = |by: i64| {
            let mating = Mating::new(ram_in + days(by), Some(ram_in + days(by + long - 1))).expect("in order");
            Group { mating, conception: p(share), ..group(40, "2026-10-01", 51) }
        };
        let (early, late) = (of(0), of(later));
        let by = |group: &Group, start: i64| lambed(group, f64::from(i32::try_from(day - start).expect("few")));
        prop_assert!(by(&late, later) <= by(&early, 0) + 1e-12);
        prop_assert!(late.mating.window(late.gestation) >= early.mating.window(early.gestation));
    }

    #[test]
    fn the_nights_of_a_forecast_sum_to_its_births(
        ewes in 1..200_u32, others in 1..200_u32, share in 0.0..1.0, apart in 0..60_i64, long in 1..90_i64,
    ) {
        // Source: ours.
        let one = Group { conception: p(share), ..group(ewes, "2026-10-01", long) };
        let ram_in = date("2026-10-01") + days(apart);
        let mating = Mating::new(ram_in, None).expect("in order");
        let curves = [a_curve(&one).expect("ewes"), a_curve(&Group { mating, ..group(others, "2026-10-01", 1) }).expect("ewes")];
        let forecast = forecast(&curves).expect("ewes");
        let held: f64 = curves.iter().map(|curve| f64::from(curve.ewes()) * curve.lambs_at_all()).sum();
        let sum: f64 = forecast.nights.iter().map(|night| night.births.mean).sum();
        prop_assert!((sum - held).abs() < 1e-8);
        for night in &forecast.nights {
            let lambs = lambs_on(&curves, night.date);
            let (few, many) = (lambs.at_most(0.05), lambs.at_most(0.95));
            prop_assert!(night.births.low <= night.births.high && few <= many);
            prop_assert!(night.births.low <= few && night.births.high <= many);
            prop_assert!((lambs.mean() - night.lambs).abs() < 1e-8);
            prop_assert!((0.0..=1.0 + 1e-12).contains(&night.none));
        }
        prop_assert!(forecast.nights.windows(2).all(|two| two[1].date == two[0].date + days(1)));
    }

    #[test]
    fn more_ewes_never_want_fewer_pens(
        ewes in 1..150_u32, more in 0..150_u32, long in 1..60_i64, share in 0.0..1.0, hours in 2..200_u16,
    ) {
        // Source: ours.
        let stay = PenStay { twins_hours: hours, ..PenStay::default() };
        let of = |ewes| {
            let curve = a_curve(&Group { conception: p(share), ..group(ewes, "2026-10-01", long) }).expect("ewes");
            wanted(&[curve], stay).expect("ewes").enough
        };
        let (few, many) = (of(ewes), of(ewes + more));
        prop_assert!(few.iter().zip(many).all(|(few, many)| *few <= many), "{:?} {:?}", few, many);
        prop_assert!(few[0] <= few[1] && few[1] <= few[2]);
    }

    #[test]
    fn no_night_that_has_passed_has_weight(
        mark in prop::option::of(0..34_i64), hour in 0..3_000_i64, sign in prop::option::of(0..5_usize), ago in 0..90_i64,
    ) {
        // Source: ours.
        let now = date("2026-12-20").and_time(NaiveTime::MIN) + TimeDelta::hours(hour);
        let evidence = Evidence {
            mating: with_ram("2026-10-01", 34),
            conception: p(0.75).into(),
            gestation: gestation(147.0, 2.2),
            marks: mark.map(|day| date("2026-10-01") + days(day)).into_iter().collect(),
            look_days: 1,
            scan: None,
            signs: sign.map(|sign| (Sign::ALL[sign], now - TimeDelta::hours(ago))).into_iter().collect(),
        };
        if let Ok(lambing_forecast) = lambing_forecast(&evidence, now) {
            prop_assert_eq!(lambing_forecast.today, now.date());
            prop_assert!(lambing_forecast.first >= now.date() && lambing_forecast.first <= lambing_forecast.likely && lambing_forecast.likely <= lambing_forecast.last);
            let sum: f64 = lambing_forecast.nights.iter().sum();
            prop_assert!((sum - lambing_forecast.in_lamb).abs() < 1e-9 && sum <= 1.0 + 1e-9);
            prop_assert!(lambing_forecast.nights.iter().all(|night| *night >= 0.0));
            prop_assert!(lambing_forecast.within_12h <= lambing_forecast.within_24h && lambing_forecast.within_24h <= lambing_forecast.in_lamb + 1e-12);
            prop_assert!(lambing_forecast.within_24h <= lambing_forecast.nights[0] + lambing_forecast.nights[1] + 1e-12);
            let gone = evidence.mating.window(evidence.gestation).0 > now.date() + days(12);
            prop_assert!(!gone || lambing_forecast.within_24h < 1e-3);
        }
    }

    #[test]
    fn own_lengths_with_the_handbooks_mean_change_nothing(pairs in 8..40_usize, apart in 0..9_u16) {
        // Source: ours.
        let own: Vec<u16> = (0..pairs).flat_map(|_| [147 - apart, 147 + apart]).collect();
        let answer = expected(BreedType::Any, None, &own).expect("possible");
        prop_assert_eq!(answer.gestation, answer.handbook);
    }
}
