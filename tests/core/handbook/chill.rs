//! Whether the weather chills lambs, against both worked examples.

use super::{celsius, hours, kg, near};
use yeanling_core::reckon::chill::{
    AtRisk, Chill, NoIndex, SUMMIT_WATTS_PER_KILOGRAM, Verdict, WET_ADDS_WATTS_PER_KILOGRAM, at_risk, chill,
    indoors, limit_of, source,
};
use yeanling_core::settings::{ChillLimit, Housing};
use yeanling_core::units::{Rain, Speed, TimeDelta};

const VICTORIA: ChillLimit = ChillLimit::Victoria1000;

fn outdoors(air: f64, wind: f64, rain: f64, limit: ChillLimit) -> Result<Chill, NoIndex> {
    let (wind, rain) = (Speed::from_meters_per_second(wind), Rain::from_millimeters(rain));
    chill(celsius(air), wind, rain, Housing::Outdoors, limit)
}

fn index(air: f64, wind: f64, rain: f64) -> f64 {
    outdoors(air, wind, rain, VICTORIA).expect("in bounds").index.as_kilojoules()
}

#[test]
fn the_index_of_a_dry_and_of_a_wet_day_comes_out() {
    // Source: memory, Nixon-Smith 1972 by Donnelly 1984; inputs and units at Agriculture Victoria.
    near(index(10.0, 4.0, 0.0), 1018.0, 0.05);
    near(index(5.0, 5.0, 10.0), 1270.9, 0.05);
}

#[test]
fn over_1000_is_a_high_risk() {
    // Source: Agriculture Victoria, 1000 kJ/m²/h.
    near(limit_of(VICTORIA).as_kilojoules(), 1000.0, 0.0);
    let verdict = |air| outdoors(air, 4.0, 0.0, VICTORIA).expect("in bounds").verdict;
    assert_eq!(verdict(10.0), Verdict::HighRisk);
    assert_eq!(verdict(12.0), Verdict::Usual);
    assert_eq!(source(VICTORIA).authors, "Agriculture Victoria");
}

#[test]
fn over_1100_is_cold_stress() {
    // Source: Murdoch University, 1100 kJ/m²/h.
    let limit = ChillLimit::Murdoch1100;
    near(limit_of(limit).as_kilojoules(), 1100.0, 0.0);
    let verdict = |air, rain| outdoors(air, 4.0, rain, limit).expect("in bounds").verdict;
    assert_eq!(verdict(10.0, 0.0), Verdict::Usual);
    assert_eq!(verdict(10.0, 10.0), Verdict::HighRisk);
    assert_eq!(source(limit).authors, "Murdoch University");
}

#[test]
fn a_barn_is_refused() {
    // Source: Agriculture Victoria, for paddocks; not valid inside a barn.
    let (still, dry) = (Speed::from_meters_per_second(0.0), Rain::from_millimeters(0.0));
    assert_eq!(chill(celsius(5.0), still, dry, Housing::Housed, VICTORIA), Err(NoIndex::Indoors));
    let nonsense = chill(celsius(500.0), still, dry, Housing::Housed, VICTORIA);
    assert_eq!(nonsense, Err(NoIndex::Indoors), "the place is asked first");
}

#[test]
fn a_wet_lamb_can_chill_at_15_degrees_under_a_roof() {
    // Source: McCutcheon et al. 1983.
    let wet = |air| indoors(celsius(air)).expect("in bounds").wet_can_chill;
    assert!(wet(15.0) && wet(-5.0));
    assert!(!wet(15.1));
    assert_eq!(WET_ADDS_WATTS_PER_KILOGRAM, (3.8, 7.0));
}

#[test]
fn a_dry_newborn_makes_heat_below_29_degrees() {
    // Source: Alexander 1961.
    let dry = |air| indoors(celsius(air)).expect("in bounds").dry_makes_heat;
    assert!(dry(28.9));
    assert!(!dry(29.0));
}

#[test]
fn the_most_heat_a_lamb_can_make_is_17_kcal_per_kilogram_and_hour() {
    // Source: Alexander 1962.
    near(SUMMIT_WATTS_PER_KILOGRAM, 17.0 * 4184.0 / 3600.0, 0.05);
}

#[test]
fn the_wet_the_new_the_light_and_the_many_are_most_at_risk() {
    // Source: McCutcheon et al. 1983 (wet); Alexander 1961 (newborn); memory (3.0 kg); common practice (twins).
    assert_eq!(at_risk(hours(1.0), Some(kg(2.9)), 2, true), AtRisk::ALL);
    assert_eq!(at_risk(hours(24.0), Some(kg(3.0)), 1, false), []);
    assert_eq!(at_risk(hours(30.0), None, 0, true), [AtRisk::Wet]);
    let authors = AtRisk::ALL.map(|reason| reason.source().authors);
    assert_eq!(authors, ["McCutcheon et al.", "Alexander", "", ""]);
}

#[test]
fn weather_that_is_none_is_refused() {
    // Source: ours, −30 to 40 °C, 0 to 40 m/s, 0 to 300 mm.
    for (air, wind, rain) in [(-31.0, 2.0, 0.0), (41.0, 2.0, 0.0), (f64::NAN, 2.0, 0.0)] {
        assert!(matches!(outdoors(air, wind, rain, VICTORIA), Err(NoIndex::Temperature(_))));
    }
    for wind in [-2.0, 40.1, f64::NAN] {
        assert!(matches!(outdoors(5.0, wind, 0.0, VICTORIA), Err(NoIndex::Wind(_))));
    }
    for rain in [-1.0, 300.1, f64::INFINITY] {
        assert!(matches!(outdoors(5.0, 2.0, rain, VICTORIA), Err(NoIndex::Rain(_))));
    }
    assert!(indoors(celsius(41.0)).is_err());
    assert!(at_risk(TimeDelta::days(3), Some(kg(f64::NAN)), 1, false).is_empty());
}
