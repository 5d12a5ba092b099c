//! What holds for every input: heavier never gets less, later never a longer window, colder never a milder band.

use super::{celsius, kg, ml};
use proptest::prelude::*;
use yeanling_core::reckon::Strength;
use yeanling_core::reckon::body_temperature::band;
use yeanling_core::reckon::bottle::{self, MOST_IN_A_DAY};
use yeanling_core::reckon::chill::chill;
use yeanling_core::reckon::cold_lamb::{self, Step, Vet, decide};
use yeanling_core::reckon::colostrum::target;
use yeanling_core::reckon::feeds::{self, FIRST_WEEK};
use yeanling_core::reckon::mixing::sample_to;
use yeanling_core::reckon::window::{absorption, left, stretch};
use yeanling_core::settings::{BottleTable, ChillLimit, DayRule, Housing};
use yeanling_core::units::{Rain, Speed, TimeDelta, Volume};

fn rule() -> impl Strategy<Value = DayRule> {
    prop_oneof![Just(DayRule::Ahdb200), Just(DayRule::Ruma210), Just(DayRule::TenPercent)]
}

fn housing() -> impl Strategy<Value = Housing> {
    prop_oneof![Just(Housing::Housed), Just(Housing::Outdoors)]
}

fn table() -> impl Strategy<Value = BottleTable> {
    prop_oneof![Just(BottleTable::VetSupplier), Just(BottleTable::UsHandbook)]
}

fn swallows() -> impl Strategy<Value = Option<bool>> {
    prop_oneof![Just(None), Just(Some(true)), Just(Some(false))]
}

fn config() -> ProptestConfig {
    ProptestConfig { failure_persistence: None, ..ProptestConfig::default() }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_heavier_lamb_never_gets_less_colostrum(
        light in 0.5..12.0, more in 0.0..11.5, rule in rule(), housing in housing(),
    ) {
        // Source: ours.
        let heavy = f64::min(light + more, 12.0);
        let of = |kilograms| target(kg(kilograms), rule, housing).expect("in bounds");
        let (light, heavy) = (of(light), of(heavy));
        prop_assert!(light.next_feed <= heavy.next_feed && light.by_6h <= heavy.by_6h);
        prop_assert!(light.by_18h <= heavy.by_18h && light.by_24h <= heavy.by_24h);
    }

    #[test]
    fn a_heavier_bottle_lamb_never_gets_less(
        light in 0.5..30.0, more in 0.0..29.5, hours in 0..900_i64, table in table(),
    ) {
        // Source: ours.
        let heavy = f64::min(light + more, 30.0);
        let of = |kilograms| bottle::day(TimeDelta::hours(hours), Some(kg(kilograms)), table);
        if let (Ok(light), Ok(heavy)) = (of(light), of(heavy)) {
            prop_assert!(light.per_feed <= heavy.per_feed && light.day_total <= heavy.day_total);
        }
    }

    #[test]
    fn a_heavier_cold_lamb_never_gets_less(light in 0.5..30.0, more in 0.0..29.5) {
        // Source: ours.
        let of = |kilograms: f64| cold_lamb::feed(kg(kilograms.min(30.0))).expect("in bounds");
        prop_assert!(of(light) <= of(light + more));
    }

    #[test]
    fn no_bottle_plan_is_over_the_cap_of_the_day(
        kilograms in 0.5..30.0, hours in 0..900_i64, table in table(),
    ) {
        // Source: a vet supplier's table, never over 200 ml/kg a day.
        let weight = kg(kilograms);
        if let Ok(day) = bottle::day(TimeDelta::hours(hours), Some(weight), table) {
            let most = MOST_IN_A_DAY.of(weight).as_milliliters() + 1e-6;
            prop_assert!(day.day_total.as_milliliters() <= most, "{day:?}");
        }
    }

    #[test]
    fn no_colostrum_plan_is_over_what_the_guard_lets_through(
        kilograms in 0.5..12.0, rule in rule(), housing in housing(),
    ) {
        // Source: ours, 60 ml/kg at once and 300 ml/kg in a day.
        let target = target(kg(kilograms), rule, housing).expect("in bounds");
        let (mut given, mut last) = (Volume::ZERO, None);
        while let Some(next) = feeds::next(&target, given, last, last.unwrap_or_default()) {
            if next.volume.as_milliliters() >= 1.0 {
                let let_through = feeds::check(next.volume, Some(target.weight), FIRST_WEEK / 7, given);
                prop_assert!(let_through.is_ok(), "{let_through:?}");
            }
            given = given + next.volume;
            last = Some(next.due_age);
        }
    }

    #[test]
    fn an_older_lamb_never_has_a_longer_window(minutes in -60..3000_i64, more in 0..3000_i64) {
        // Source: ours, from Dominguez et al. 2001.
        let (young, old) = (TimeDelta::minutes(minutes), TimeDelta::minutes(minutes + more));
        prop_assert!(left(old).unwrap_or_default() <= left(young).unwrap_or_default());
        prop_assert!(absorption(old) <= absorption(young));
        prop_assert!(stretch(young) <= stretch(old));
    }

    #[test]
    fn a_colder_lamb_never_has_a_milder_band(low in 15.0..44.0, more in 0.0..29.0) {
        // Source: ours, from the UK hypothermia sheet.
        let high = f64::min(low + more, 44.0);
        prop_assert!(band(celsius(low)).expect("in bounds") <= band(celsius(high)).expect("in bounds"));
    }

    #[test]
    fn a_colder_or_an_older_lamb_never_needs_the_vet_less(
        low in 15.0..40.0, more in 0.0..25.0, minutes in 0..3000_i64, later in 0..3000_i64,
        swallows in swallows(),
    ) {
        // Source: ours.
        let high = f64::min(low + more, 40.0);
        let vet = |degrees, age| decide(celsius(degrees), age, swallows).expect("in bounds").vet;
        let (young, old) = (Some(TimeDelta::minutes(minutes)), Some(TimeDelta::minutes(minutes + later)));
        prop_assert!(vet(high, young) <= vet(low, young));
        prop_assert!(vet(low, young) <= vet(low, old));
        prop_assert!(vet(low, old) <= vet(low, None));
    }

    #[test]
    fn the_vet_is_called_by_a_step_whenever_the_answer_says_now(
        degrees in 15.0..44.0, minutes in prop::option::of(-10..3000_i64), swallows in swallows(),
    ) {
        // Source: ours.
        let answer = decide(celsius(degrees), minutes.map(TimeDelta::minutes), swallows).expect("in bounds");
        prop_assert_eq!(answer.vet == Vet::Now, answer.steps.contains(&Step::CallVet));
        prop_assert!(!answer.steps.is_empty());
        let times = |step| answer.steps.iter().filter(|one| **one == step).count();
        prop_assert!(answer.steps.iter().all(|step| times(*step) == 1), "{:?}", answer);
    }

    #[test]
    fn colder_windier_or_wetter_weather_never_chills_less(
        air in -30.0..40.0, warmer in 0.0..70.0, wind in 0.0..40.0, rain in 0.0..300.0, more in 0.0..10.0,
    ) {
        // Source: ours, from Nixon-Smith 1972.
        let of = |air: f64, wind: f64, rain: f64| {
            let wind = Speed::from_meters_per_second(wind.min(40.0));
            let rain = Rain::from_millimeters(rain.min(300.0));
            let limit = ChillLimit::default();
            chill(celsius(air.min(40.0)), wind, rain, Housing::Outdoors, limit).expect("in bounds").index
        };
        let index = of(air, wind, rain);
        prop_assert!(of(air + warmer, wind, rain) <= index);
        prop_assert!(index <= of(air, wind + more, rain) && index <= of(air, wind, rain + more));
    }

    #[test]
    fn powder_and_water_are_always_the_mix_and_adding_is_always_weaker(
        milliliters in 1.0..100_000.0, grams in 100.0..300.0,
    ) {
        // Source: ours, from a feed maker.
        let mix = sample_to(ml(milliliters), Strength::from_grams_per_liter(grams)).expect("in bounds");
        let whole = mix.powder.as_kilograms() * 1000.0 + mix.water.as_milliliters();
        prop_assert!((whole - milliliters).abs() < 1e-6);
        prop_assert!(mix.if_added < mix.rate);
    }
}
