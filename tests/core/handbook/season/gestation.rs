//! Gestation.

use statrs::distribution::{ContinuousCDF, Normal};
use yeanling_core::reckon::season::gestation::{
    BreedType, Due, Gestation, Impossible, MayMean, MeanUsed, OWN_FROM, POSSIBLE, SPREAD_DAYS, WATCH, due,
    expected, lambed_by, length,
};
use yeanling_core::units::NaiveDate;

use super::{date, days, gestation, near};

#[track_caller]
fn check(mated: &str, first: &str, likely: &str, last: &str) {
    let due = due(date(mated), Gestation::default());
    assert_eq!(due, Due { first: date(first), likely: date(likely), last: date(last) });
}

#[test]
fn mated_on_the_first_of_october_lambs_on_the_25th_of_february() {
    // Source: Sheep 201 and Montana, 147 d, watch 142 to 152; the day of mating is day 0.
    check("2026-10-01", "2027-02-20", "2027-02-25", "2027-03-02");
    assert_eq!(due(date("2026-09-01"), Gestation::default()).likely, date("2027-01-26"));
}

#[test]
fn a_leap_day_is_counted() {
    // Source: Sheep 201, 147 d; the dates by an almanac.
    check("2027-10-05", "2028-02-24", "2028-02-29", "2028-03-05");
    check("2027-10-20", "2028-03-10", "2028-03-15", "2028-03-20");
}

/// Counts days by the rule of the Gregorian calendar alone, one after the other.
fn almanac(mut year: i32, mut month: u32, mut day: u32, days: u32) -> NaiveDate {
    for _ in 0..days {
        let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
        let long = [31, if leap { 29 } else { 28 }, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        day += 1;
        if day > long[usize::try_from(month - 1).expect("a month")] {
            (day, month) = (1, month + 1);
        }
        if month > 12 {
            (month, year) = (1, year + 1);
        }
    }
    NaiveDate::from_ymd_opt(year, month, day).expect("a date")
}

#[test]
fn every_day_of_five_years_agrees_with_a_table_of_its_own() {
    // Source: Sheep 201, 142, 147 and 152 d; the table counts the calendar day by day.
    for year in 2096..=2100 {
        for month in 1..=12 {
            for day in [1, 15, 28] {
                let mated = NaiveDate::from_ymd_opt(year, month, day).expect("a date");
                let of = |days| almanac(year, month, day, days);
                let expected = Due { first: of(142), likely: of(147), last: of(152) };
                assert_eq!(due(mated, Gestation::default()), expected, "{mated}");
            }
        }
    }
}

#[test]
fn hair_sheep_carry_by_litter() {
    // Source: breed and mating-season effects in landrace hair sheep, abstract 121; St Croix, Blackbelly, n 1,291.
    let mean = |litter| Gestation::of(BreedType::Hair, Some(litter)).mean_days();
    for (litter, days) in [(1, 149.8), (2, 147.4), (3, 146.7), (4, 146.7)] {
        near(mean(litter), days, 0.0);
    }
    near(Gestation::of(BreedType::Hair, None).mean_days(), 147.4, 0.0);
}

#[test]
fn finn_prolific_and_suffolk_carry_shorter() {
    // Source: Arcott study, 7,083 ewes: Finn 144, prolific 145, Suffolk 146 d.
    let mean = |breed| Gestation::of(breed, None).mean_days();
    near(mean(BreedType::Finn), 144.0, 0.0);
    near(mean(BreedType::Prolific), 145.0, 0.0);
    near(mean(BreedType::Suffolk), 146.0, 0.0);
}

#[test]
fn meat_breeds_carry_147_and_fine_wool_150_to_151_days() {
    // Source: Montana State, Farm Flock handbook.
    near(Gestation::of(BreedType::Meat, None).mean_days(), 147.0, 0.0);
    let fine = expected(BreedType::FineWool, None, &[]).expect("no lengths");
    assert_eq!(fine.range_days, (150.0, 151.0));
    near(fine.gestation.mean_days(), 150.5, 0.0);
}

#[test]
fn every_printed_mean_lies_in_its_own_range_and_in_what_is_possible() {
    // Source: Sheep 201, 138 to 159 d; the ranges by breed type as printed.
    for breed in BreedType::ALL {
        for litter in [None, Some(1), Some(2), Some(3)] {
            let answer = expected(breed, litter, &[]).expect("no lengths");
            let (mean, (least, most)) = (answer.gestation.mean_days(), answer.range_days);
            assert!(least <= mean && mean <= most, "{answer:?}");
            let (first, last) = answer.gestation.watch_days();
            assert!(i64::from(POSSIBLE.0) <= first && last <= i64::from(POSSIBLE.1));
            assert!(first <= i64::from(WATCH.0) && i64::from(WATCH.1) <= last);
        }
    }
}

#[test]
fn a_breed_that_carries_longer_is_watched_longer() {
    // Source: ours, 5 d to either side of the mean, as 142 to 152 lie around 147.
    assert_eq!(Gestation::of(BreedType::Hair, Some(1)).watch_days(), (142, 155));
    assert_eq!(Gestation::of(BreedType::Finn, None).watch_days(), (139, 152));
}

#[test]
fn a_spread_of_two_days_and_a_fifth() {
    // Source: memory (Forbes 1967 and others, 2.0 to 2.5 d).
    near(SPREAD_DAYS, 2.2, 0.0);
    near(Gestation::default().spread_days(), 2.2, 0.0);
}

#[test]
fn lambing_at_day_120_or_170_cannot_be() {
    // Source: Sheep 201 and Montana, impossible outside 138 to 159 d.
    let mated = date("2026-10-01");
    for (lambed, possible) in
        [(120, false), (137, false), (138, true), (159, true), (160, false), (170, false)]
    {
        let answer = length(mated, mated + days(lambed));
        assert_eq!(answer.is_ok(), possible, "{lambed}");
        if let Err(error) = answer {
            assert_eq!((error.days, Impossible::allowed()), (lambed, (138, 159)));
            assert!(error.to_string().ends_with("another ram, another date, or lost early?"));
        }
    }
    assert_eq!(length(mated, mated - days(3)).expect_err("before").days, -3);
    assert_eq!(Impossible::PERHAPS, [MayMean::AnotherRam, MayMean::AnotherDate, MayMean::LostEarly]);
}

#[test]
fn the_flocks_own_mean_counts_from_15_lambings_on() {
    // Source: ours.
    assert_eq!(OWN_FROM, 15);
    let of = |own: &[u16]| expected(BreedType::Hair, Some(1), own).expect("possible");
    let few = of(&[145; 14]);
    assert_eq!((few.used, few.gestation), (MeanUsed::Handbook { lambings: 14 }, few.handbook));
    let mut own = vec![145; 10];
    own.extend([148; 5]);
    let enough = of(&own);
    assert_eq!(enough.used, MeanUsed::Own { lambings: 15 });
    near(enough.gestation.mean_days(), 146.0, 1e-12);
    near(enough.gestation.spread_days(), SPREAD_DAYS, 0.0);
    near(enough.handbook.mean_days(), 149.8, 0.0);
}

#[test]
fn one_length_that_cannot_be_spoils_no_mean() {
    // Source: ours, from the 138 to 159 d of Sheep 201.
    let mut own = vec![147; 20];
    own.push(170);
    assert_eq!(expected(BreedType::Any, None, &own), Err(Impossible { days: 170 }));
}

#[test]
fn a_mean_or_a_spread_that_no_ewe_has_is_refused() {
    // Source: ours, from the 138 to 159 d of Sheep 201.
    for (mean, spread) in [(137.9, 2.2), (159.1, 2.2), (147.0, 0.9), (147.0, 5.1), (f64::NAN, 2.2)] {
        assert!(Gestation::from_days(mean, spread).is_err(), "{mean} {spread}");
    }
}

#[test]
fn the_closed_form_is_the_integral() {
    // Source: SciPy 1.17.1, quad(lambda u: norm.cdf(t, mu + u, s) / (b - a), a, b).
    let usual = gestation(147.0, 2.2);
    for (day, share) in [
        (142.0, 0.000_513_094_141_032_758_4),
        (147.0, 0.051_627_824_522_538_45),
        (155.5, 0.5),
        (160.0, 0.762_941_325_357_043_8),
        (168.0, 0.998_235_442_968_334_3),
    ] {
        near(lambed_by(day, 0.0, 17.0, usual), share, 1e-12);
    }
    let hair = gestation(149.8, 2.2);
    for (day, share) in [(150.0, 0.068_476_438_486_918_26), (153.3, 0.5), (156.0, 0.888_162_742_056_613_2)] {
        near(lambed_by(day, 3.0, 4.0, hair), share, 1e-12);
    }
}

#[test]
fn a_single_day_of_mating_is_a_normal_curve() {
    // Source: statrs, Normal.
    let normal = Normal::new(147.0, 2.2).expect("a curve");
    for day in 120..180 {
        let day = f64::from(day) + 0.3;
        near(lambed_by(day, 0.0, 0.0, gestation(147.0, 2.2)), normal.cdf(day), 1e-10);
        let narrow = lambed_by(day, -0.000_5, 0.000_5, gestation(147.0, 2.2));
        near(narrow, normal.cdf(day), 1e-7);
    }
}
