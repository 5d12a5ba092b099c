//! Quantities by their public face: both systems agree, and what people type is read or refused with its reason.

use proptest::prelude::*;
use uom::si::f64::{
    Length as UomLength, Mass as UomMass, ThermodynamicTemperature as UomTemperature,
    Velocity as UomVelocity, Volume as UomVolume,
};
use uom::si::length::{inch, millimeter};
use uom::si::mass::{kilogram, pound};
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
use uom::si::velocity::{kilometer_per_hour, meter_per_second, mile_per_hour};
use uom::si::volume::{fluid_ounce, milliliter};
use yeanling_core::reckon::colostrum::target;
use yeanling_core::settings::{DayRule, Housing};
use yeanling_core::units::{
    Brix, Mass, Moment, Rain, Speed, Strength, System, Temperature, TimeDelta, TypedError, Volume,
};

#[track_caller]
fn near(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{got}, expected {expected} ± {tolerance}");
}

proptest! {
    #[test]
    fn pounds_agree_with_an_independent_library(pounds in 0.0..1100.0) {
        let expected = UomMass::new::<pound>(pounds).get::<kilogram>();
        near(Mass::from_pounds(pounds).as_kilograms(), expected, 1e-4);
        near(Mass::from_pounds(pounds).as_pounds(), pounds, 1e-9);
    }

    #[test]
    fn fluid_ounces_agree_with_an_independent_library(ounces in 0.0..600.0) {
        let expected = UomVolume::new::<fluid_ounce>(ounces).get::<milliliter>();
        near(Volume::from_fluid_ounces(ounces).as_milliliters(), expected, 1e-2);
        near(Volume::from_fluid_ounces(ounces).as_fluid_ounces(), ounces, 1e-9);
    }

    #[test]
    fn fahrenheit_agrees_with_an_independent_library(fahrenheit in -76.0..248.0) {
        let expected = UomTemperature::new::<degree_fahrenheit>(fahrenheit).get::<degree_celsius>();
        near(Temperature::from_fahrenheit(fahrenheit).as_celsius(), expected, 1e-9);
        near(Temperature::from_fahrenheit(fahrenheit).as_fahrenheit(), fahrenheit, 1e-9);
    }

    #[test]
    fn winds_agree_with_an_independent_library(number in 0.0..150.0) {
        let miles = UomVelocity::new::<mile_per_hour>(number).get::<meter_per_second>();
        near(Speed::from_miles_per_hour(number).as_meters_per_second(), miles, 1e-3);
        near(Speed::from_miles_per_hour(number).as_miles_per_hour(), number, 1e-9);
        let kilometers = UomVelocity::new::<kilometer_per_hour>(number).get::<meter_per_second>();
        near(Speed::from_kilometers_per_hour(number).as_meters_per_second(), kilometers, 1e-4);
        near(Speed::from_kilometers_per_hour(number).as_kilometers_per_hour(), number, 1e-9);
    }

    #[test]
    fn inches_of_rain_agree_with_an_independent_library(inches in 0.0..12.0) {
        let expected = UomLength::new::<inch>(inches).get::<millimeter>();
        near(Rain::from_inches(inches).as_millimeters(), expected, 1e-9);
        near(Rain::from_inches(inches).as_inches(), inches, 1e-9);
    }

    #[test]
    fn a_farm_in_pounds_gives_the_same_milliliters(pounds in 2.0..26.0) {
        let kilograms = UomMass::new::<pound>(pounds).get::<kilogram>();
        let of = |weight| target(weight, DayRule::Ahdb200, Housing::Outdoors).expect("in bounds");
        let (us, metric) = (of(Mass::from_pounds(pounds)), of(Mass::from_kilograms(kilograms)));
        near(us.next_feed.as_milliliters(), metric.next_feed.as_milliliters(), 0.01);
        near(us.by_24h.as_milliliters(), metric.by_24h.as_milliliters(), 0.01);
    }

    #[test]
    fn nothing_typed_can_bring_a_field_down(text in ".{0,40}") {
        for system in [System::Metric, System::Us] {
            let _ = Mass::parse(&text, system);
            let _ = Volume::parse(&text, system);
            let _ = Temperature::parse(&text, system);
            let _ = Speed::parse(&text, system);
            let _ = Rain::parse(&text, system);
        }
        let _ = Brix::parse(&text);
        let _ = Strength::parse(&text);
        let _ = text.parse::<Moment>();
    }

    #[test]
    fn a_moment_is_read_back_as_it_was_written(ms in -2_208_988_800_000_i64..253_402_214_400_000, offset in -1080_i16..=1080) {
        let moment = Moment::from_unix_milliseconds(ms, offset);
        prop_assert_eq!(moment.to_string().parse::<Moment>(), Ok(moment));
    }
}

#[track_caller]
fn mass(text: &str, system: System, kilograms: f64) {
    let read = Mass::parse(text, system).expect("this is a mass");
    near(read.as_kilograms(), kilograms, 1e-9);
}

#[test]
fn a_mass_is_read_as_people_type_it() {
    for text in ["4.2", "4,2", " 4.2 ", "4.2kg", "4.2 kg", "4.2 KG", "4200 g", "+4.2", "4.20"] {
        mass(text, System::Metric, 4.2);
    }
    for text in ["9 lb 4 oz", "9lb4oz", "9lb4", "9 lbs 4", "9.25", "9.25 lb", "9,25 lb.", "148 oz"] {
        mass(text, System::Us, 4.196);
    }
    mass("9.9", System::Metric, 9.9);
    mass("9.9", System::Us, 4.491);
    mass("9 lb 4 oz", System::Metric, 4.196);
    mass("4.2 kg", System::Us, 4.2);
}

#[test]
fn a_minus_is_read_and_left_to_the_bounds() {
    mass("-3", System::Metric, -3.0);
    mass("\u{2212}3", System::Metric, -3.0);
    let read = Mass::parse("-3", System::Metric).expect("a number");
    assert!(Mass::AT_BIRTH.check(read).is_err());
}

#[track_caller]
fn no_mass(text: &str, expected: &TypedError) {
    for system in [System::Metric, System::Us] {
        assert_eq!(Mass::parse(text, system).as_ref(), Err(expected), "{text:?}");
    }
}

#[test]
fn what_is_no_mass_is_refused_with_what_was_given() {
    no_mass("", &TypedError::Empty);
    no_mass("   ", &TypedError::Empty);
    for text in ["abc", "kg", "-", ".", "1e3", "4-2", "4 kg 2 kg", "4 2", "0 5", "nan", "inf"] {
        let read = Mass::parse(text, System::Metric);
        assert!(matches!(read, Err(TypedError::NotANumber { .. })), "{text:?}: {read:?}");
    }
    no_mass("4..2", &TypedError::TwoPoints { given: "4..2".to_owned() });
    no_mass("4.2 km", &TypedError::OtherUnit { given: "4.2 km".to_owned() });
    no_mass("4.2 ml", &TypedError::OtherUnit { given: "4.2 ml".to_owned() });
}

#[test]
fn a_volume_is_read_as_people_type_it() {
    let read = |text, system| Volume::parse(text, system).expect("this is a volume").as_milliliters();
    for text in ["195", "195 ml", "195,0", "0,195 l", "195cc"] {
        near(read(text, System::Metric), 195.0, 1e-9);
    }
    near(read("6.6", System::Us), 195.2, 1e-9);
    near(read("6.6 fl oz", System::Metric), 195.2, 1e-9);
    assert!(matches!(Volume::parse("4 kg", System::Metric), Err(TypedError::OtherUnit { .. })));
}

#[test]
fn a_temperature_is_read_as_people_type_it() {
    let read = |text, system| Temperature::parse(text, system).expect("this is a temperature").as_celsius();
    near(read("38,5", System::Metric), 38.5, 1e-9);
    near(read("38.5 °C", System::Us), 38.5, 1e-9);
    near(read("102.2", System::Us), 39.0, 1e-9);
    near(read("102.2 F", System::Metric), 39.0, 1e-9);
    assert!(matches!(Temperature::parse("39 kg", System::Metric), Err(TypedError::OtherUnit { .. })));
}

#[test]
fn a_wind_is_read_as_people_type_it() {
    let read = |text, system| Speed::parse(text, system).expect("this is a wind").as_meters_per_second();
    for text in ["4", "4 m/s", "4,0 m/s", "14.4 km/h", "14.4 kph", "14.4KM/H"] {
        near(read(text, System::Metric), 4.0, 1e-9);
    }
    near(read("9", System::Us), 4.02, 1e-9);
    near(read("9 mph", System::Metric), 4.02, 1e-9);
    near(read("4 m/s", System::Us), 4.0, 1e-9);
    near(read("-2", System::Metric), -2.0, 1e-9);
    assert!(matches!(Speed::parse("4 mm", System::Metric), Err(TypedError::OtherUnit { .. })));
    assert!(matches!(Speed::parse("4 m 2 s", System::Metric), Err(TypedError::NotANumber { .. })));
}

#[test]
fn rain_is_read_as_people_type_it() {
    let read = |text, system| Rain::parse(text, system).expect("this is rain").as_millimeters();
    for text in ["10", "10 mm", "1 cm", "10,0"] {
        near(read(text, System::Metric), 10.0, 1e-9);
    }
    near(read("0.4", System::Us), 10.16, 1e-9);
    near(read("0.4 in", System::Metric), 10.16, 1e-9);
    near(read("0.4\"", System::Us), 10.16, 1e-9);
    assert!(matches!(Rain::parse("10 ml", System::Metric), Err(TypedError::OtherUnit { .. })));
    assert!(matches!(Rain::parse("1 in 2 in", System::Us), Err(TypedError::NotANumber { .. })));
}

#[test]
fn a_brix_reading_and_a_strength_are_read_as_people_type_them() {
    for text in ["26.5", "26,5", "26.5 %", "26.5 Brix", "26.5°Bx"] {
        assert_eq!(Brix::parse(text), Ok(Brix::from_percent(26.5)), "{text}");
    }
    for text in ["200", "200 g/l", "200 G/L", "20 g/dL", "200 g per liter"] {
        assert_eq!(Strength::parse(text), Ok(Strength::from_grams_per_liter(200.0)), "{text}");
    }
    assert!(matches!(Brix::parse("26.5 g"), Err(TypedError::OtherUnit { .. })));
    assert!(matches!(Strength::parse("200 ml"), Err(TypedError::OtherUnit { .. })));
    assert!(matches!(Brix::parse("26 5"), Err(TypedError::NotANumber { .. })));
    assert!(matches!(Strength::parse("1 g/l 2"), Err(TypedError::NotANumber { .. })));
    assert_eq!(Brix::parse(" "), Err(TypedError::Empty));
}

#[test]
fn what_cannot_be_compared_is_out_of_bounds() {
    for kilograms in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -3.0, 40.0] {
        assert!(Mass::AT_BIRTH.check(Mass::from_kilograms(kilograms)).is_err());
    }
}

#[track_caller]
fn moment(text: &str) -> Moment {
    text.parse().expect("this is a moment")
}

#[test]
fn the_same_instant_is_told_by_each_offset_in_its_own_way() {
    let (here, there) = (moment("2026-02-25T03:12:00.000-05:00"), moment("2026-02-25T08:12:00.000Z"));
    assert_eq!(here.as_unix_milliseconds(), there.as_unix_milliseconds());
    assert_eq!(here.since(there), TimeDelta::zero());
    assert_eq!(here.local().format("%H:%M").to_string(), "03:12");
    assert_eq!(here.offset_minutes(), -300);
    assert_eq!(moment("2026-02-25T03:12:00+05:45").offset_minutes(), 345);
}

#[test]
fn the_hour_that_comes_twice_in_autumn_is_two_moments() {
    let (summer, winter) = (moment("2026-10-25T01:30:00+01:00"), moment("2026-10-25T01:30:00+00:00"));
    assert_eq!(summer.local(), winter.local());
    assert_eq!(winter.since(summer), TimeDelta::hours(1));
    assert!(summer < winter);
}

#[test]
fn a_span_added_keeps_the_offset_it_was_lived_at() {
    let later = moment("2026-03-28T23:00:00+00:00") + TimeDelta::hours(6);
    assert_eq!(later.to_string(), "2026-03-29T05:00:00.000+00:00");
    assert_eq!((later - TimeDelta::hours(6)).to_string(), "2026-03-28T23:00:00.000+00:00");
}

#[test]
fn what_is_no_moment_is_refused() {
    let texts = [
        "",
        "yesterday",
        "2026-02-25",
        "2026-02-25T03:12:00",
        "2026-02-30T03:12:00Z",
        "2026-02-25T25:12:00Z",
        "2026-02-25T03:12:00+19:00",
        "1899-12-31T23:59:59Z",
        "10000-01-01T00:00:00Z",
    ];
    for text in texts {
        assert_eq!(text.parse::<Moment>().map_err(|error| error.given), Err(text.to_owned()));
    }
}
