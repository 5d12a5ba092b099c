//! What holds for every season: a later ram never brings a birth forward, more ewes never need fewer pens.

use proptest::prelude::*;
use yeanling_core::reckon::season::bounds::Refused;
use yeanling_core::reckon::season::forecast::{Curve, Group, curve, forecast, lambed};
use yeanling_core::reckon::season::gestation::{BreedType, expected};
use yeanling_core::reckon::season::mating::Mating;

use super::{date, days, group, p};

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
            prop_assert!(night.births.low <= night.births.high && night.lambs.low <= night.lambs.high);
            prop_assert!(night.births.low <= night.lambs.low && night.births.high <= night.lambs.high);
            prop_assert!((0.0..=1.0 + 1e-12).contains(&night.none));
        }
        prop_assert!(forecast.nights.windows(2).all(|two| two[1].date == two[0].date + days(1)));
    }

    #[test]
    fn own_lengths_with_the_handbooks_mean_change_nothing(pairs in 8..40_usize, apart in 0..9_u16) {
        // Source: ours.
        let own: Vec<u16> = (0..pairs).flat_map(|_| [147 - apart, 147 + apart]).collect();
        let answer = expected(BreedType::Any, None, &own).expect("possible");
        prop_assert_eq!(answer.gestation, answer.handbook);
    }
}
