//! One law over all that can be typed: a thousand is never read as a one, a fraction is what it looks like, and of two
//! units the larger is whole and the smaller is less than one of the larger.

use proptest::prelude::*;
use yeanling_core::units::{
    Brix, Condition, Length, Mass, Rain, Speed, Strength, System, Temperature, TypedError, UnitPair, Volume,
    parse_number,
};

/// What one kind of field makes of a text, in the unit that it is typed in.
type Read = fn(&str) -> Result<f64, TypedError>;

/// Every quantity, with a unit that can be typed behind its number and in which its answer is told.
const FIELDS: [(&str, Read); 14] = [
    ("", |text| parse_number(text)),
    (" kg", |text| Mass::parse(text, System::Metric).map(Mass::as_kilograms)),
    (" lb", |text| Mass::parse(text, System::Us).map(Mass::as_pounds)),
    ("ml", |text| Volume::parse(text, System::Metric).map(Volume::as_milliliters)),
    (" fl oz", |text| Volume::parse(text, System::Us).map(Volume::as_fluid_ounces)),
    (" °C", |text| Temperature::parse(text, System::Metric).map(Temperature::as_celsius)),
    (" F", |text| Temperature::parse(text, System::Us).map(Temperature::as_fahrenheit)),
    (" m/s", |text| Speed::parse(text, System::Metric).map(Speed::as_meters_per_second)),
    (" mm", |text| Rain::parse(text, System::Metric).map(Rain::as_millimeters)),
    (" m", |text| Length::parse(text, System::Metric).map(Length::as_meters)),
    (" ft", |text| Length::parse(text, System::Us).map(Length::as_feet)),
    (" %", |text| Brix::parse(text).map(Brix::as_percent)),
    (" g/L", |text| Strength::parse(text).map(Strength::as_grams_per_liter)),
    ("", |text| Condition::parse(text).map(Condition::as_score)),
];

/// Asks every field about a number, bare and with its unit behind it.
#[track_caller]
fn in_every_field(number: &str, check: impl Fn(&Result<f64, TypedError>) -> bool) {
    for (unit, read) in FIELDS {
        for text in [number.to_owned(), format!("{number}{unit}"), format!(" {number}{unit} ")] {
            let got = read(&text);
            assert!(check(&got), "{text:?}: {got:?}");
        }
    }
}

#[track_caller]
fn is(number: &str, expected: f64) {
    // The answer is told in the unit that was typed, so only rounding to what is kept lies between.
    in_every_field(number, |got| got.as_ref().is_ok_and(|got| (got - expected).abs() < 0.06));
}

#[test]
fn a_number_that_may_be_thousands_is_asked_back() {
    for number in
        ["1,000", "1.000", "12,500", "250,125", "1,250", "1.250", "4,196", "999,999", "-1,000", "+1.500"]
    {
        in_every_field(number, |got| matches!(got, Err(TypedError::TwoWays { .. })));
    }
    let two_ways = |given: &str, decimal: &str, thousands: &str| {
        let asked = TypedError::TwoWays {
            given: given.to_owned(),
            decimal: decimal.to_owned(),
            thousands: thousands.to_owned(),
        };
        assert_eq!(parse_number(given), Err(asked));
    };
    two_ways("1,000", "1", "1000");
    two_ways("-1,250", "-1.25", "-1250");
    two_ways("12.500", "12.5", "12500");
}

#[test]
fn what_can_be_no_thousands_is_a_decimal() {
    is("0,195", 0.195);
    is("0.250", 0.25);
    is("00,5", 0.5);
    is("1000,5", 1000.5);
    is("1000.125", 1000.125);
    is("1,00", 1.0);
    is("1,0000", 1.0);
    // A scale that reads grams, and what the app itself writes.
    is("4.125", 4.125);
    is("4.196", 4.196);
}

#[test]
fn thousands_in_any_other_dress_are_refused() {
    for number in
        ["1 000", "1\u{a0}000", "1\u{202f}000", "1,000.5", "1.000,5", "1,000,000", "1_000", "1'000", "1’000"]
    {
        in_every_field(number, |got| got.is_err());
    }
}

#[test]
fn a_fraction_is_what_it_looks_like() {
    for number in ["4½", "4 ½", "4 1/2", "4.5", "+4½"] {
        is(number, 4.5);
    }
    is("½", 0.5);
    is("1/2", 0.5);
    is("4¼", 4.25);
    is("4 1/4", 4.25);
    is("4¾", 4.75);
    is("4 3/4", 4.75);
    is("3⅛", 3.125);
    is("6 5/8", 6.625);
    is("-1½", -1.5);
    is("16½", 16.5);
}

#[test]
fn what_is_no_fraction_is_refused() {
    for number in [
        "4.5½",
        "½4",
        "4½½",
        "½½",
        "½ ½",
        "4½.5",
        "4½ 1/2",
        "4 1/2 1/2",
        "1/0",
        "0/2",
        "3/2",
        "11/2",
        "4/5",
        "1/",
        "/2",
        "1//2",
        "1/2/3",
        "1.5/2",
        "4 -1/2",
        "3/4/2022",
        "4.5 1/2",
    ] {
        in_every_field(number, |got| got.is_err());
    }
}

#[track_caller]
fn pounds(text: &str, expected: f64) {
    let got = Mass::parse(text, System::Us).map(Mass::as_pounds);
    assert!(got.as_ref().is_ok_and(|got| (got - expected).abs() < 0.002), "{text:?}: {got:?}");
}

#[test]
fn of_two_units_the_smaller_is_less_than_one_of_the_larger() {
    pounds("9 lb 15 oz", 9.9375);
    pounds("9 lb 15.5 oz", 9.96875);
    pounds("9 lb 4½ oz", 9.28125);
    pounds("9lb4 1/2oz", 9.28125);
    pounds("9 lb 0 oz", 9.0);
    for text in [
        "9 lb 16 oz",
        "9lb16",
        "9 lb 100 oz",
        "9 lb -4 oz",
        "-9 lb 4 oz",
        "9.5 lb 4 oz",
        "9½ lb 4 oz",
        "9 lb 4 oz 2",
        "9 lb 004 oz",
    ] {
        for system in [System::Metric, System::Us] {
            assert!(Mass::parse(text, system).is_err(), "{text:?}");
        }
    }
    let feet = |text| Length::parse(text, System::Us).map(Length::as_feet);
    assert!(feet("5 ft 6 in").is_ok_and(|got| (got - 5.5).abs() < 0.002));
    assert!(feet("5'6\"").is_ok_and(|got| (got - 5.5).abs() < 0.002));
    for text in ["5 ft 12 in", "5'12", "5 ft -6 in", "-5 ft 6 in", "5.5 ft 6 in", "5'000", "5 ft 100 in"] {
        assert!(feet(text).is_err(), "{text:?}: {:?}", feet(text));
    }
}

proptest! {
    #[test]
    fn no_thousands_are_read_as_ones(thousands in 1_u16..1000, rest in 0_u16..1000) {
        let with_comma = format!("{thousands},{rest:03}");
        for (unit, read) in FIELDS {
            let read = read(&format!("{with_comma}{unit}"));
            prop_assert!(read.is_err(), "{}: {:?}", with_comma, read);
        }
    }

    #[test]
    fn what_the_app_writes_is_read_back(number in 0.0..500.0_f64, places in 0_usize..=3) {
        // As `words::common::number` writes it: with a point, and no zeros at its end.
        let text = format!("{number:.places$}");
        let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
        let read = parse_number(text);
        prop_assert_eq!(read, Ok(text.parse::<f64>().expect("a number")));
    }

    #[test]
    fn a_fraction_adds_to_the_whole_before_it(whole in 0_u16..300, quarters in 1_u8..4) {
        let sign = ["¼", "½", "¾"][usize::from(quarters) - 1];
        let expected = f64::from(whole) + f64::from(quarters) / 4.0;
        prop_assert_eq!(parse_number(&format!("{whole}{sign}")), Ok(expected));
        prop_assert_eq!(parse_number(&format!("{whole} {quarters}/4")), Ok(expected));
    }
}

#[test]
fn what_is_wrong_with_two_units_is_told_of_the_one_that_is_wrong() {
    let wrong = |text| Mass::parse(text, System::Us).expect_err("refused");
    for (text, smaller) in [("9 lb 16 oz", "16"), ("9lb 16½", "16½"), ("9 lb -4 oz", "-4")] {
        let (given, smaller) = (text.to_owned(), smaller.to_owned());
        let pair = UnitPair::PoundsOunces;
        assert_eq!(wrong(text), TypedError::SmallerTooMuch { given, smaller, pair });
    }
    for (text, larger) in [("9.5 lb 4 oz", "9.5"), ("-9 lb 4 oz", "-9"), ("9½lb 4", "9½")] {
        let (given, larger) = (text.to_owned(), larger.to_owned());
        let pair = UnitPair::PoundsOunces;
        assert_eq!(wrong(text), TypedError::LargerNotWhole { given, larger, pair });
    }
}
