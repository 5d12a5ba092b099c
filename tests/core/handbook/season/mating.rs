//! When a ram is with his ewes.

use yeanling_core::reckon::season::gestation::{BreedType, Gestation};
use yeanling_core::reckon::season::mating::{Mating, OPEN_DAYS, WrongDates, ewes_to_one, ewes_to_rams};
use yeanling_core::terms::RamAge;

use super::{date, days, with_ram};

#[test]
fn without_marks_the_window_reaches_from_ram_in_to_ram_out() {
    // Source: Sheep 201 and Montana, 142 to 152 d; in 2026-10-01, out 2026-11-20.
    let mating = Mating::new(date("2026-10-01"), Some(date("2026-11-20"))).expect("in order");
    assert_eq!(mating.window(Gestation::default()), (date("2027-02-20"), date("2027-04-21")));
    assert_eq!((mating.days(), mating.is_open()), (51, false));
    let hair = mating.window(Gestation::of(BreedType::Hair, Some(1)));
    assert_eq!(hair, (date("2027-02-20"), date("2027-04-24")));
}

#[test]
fn a_ram_out_before_he_went_in_is_refused() {
    // Source: ours.
    let (ram_in, ram_out) = (date("2026-10-01"), date("2026-09-30"));
    assert_eq!(Mating::new(ram_in, Some(ram_out)), Err(WrongDates::OutBeforeIn { ram_in, ram_out }));
    assert_eq!(Mating::new(ram_in, Some(ram_in)).map(Mating::days), Ok(1));
}

#[test]
fn a_ram_in_for_more_than_a_year_is_refused() {
    // Source: ours, 366 d.
    let ram_in = date("2026-10-01");
    assert!(Mating::new(ram_in, Some(ram_in + days(365))).is_ok());
    assert!(matches!(Mating::new(ram_in, Some(ram_in + days(366))), Err(WrongDates::TooLong(_))));
}

#[test]
fn a_ram_whose_day_out_is_not_known_counts_three_cycles() {
    // Source: ours.
    let mating = Mating::new(date("2026-10-01"), None).expect("in order");
    assert_eq!((mating.days(), mating.is_open()), (OPEN_DAYS, true));
    assert_eq!(mating.ram_out(), date("2026-11-20"));
}

#[test]
fn a_ewe_is_in_one_group_on_one_day() {
    // Source: ours.
    let first = with_ram("2026-10-01", 34);
    assert!(first.overlaps(with_ram("2026-11-03", 10)), "the last day is shared");
    assert!(!first.overlaps(with_ram("2026-11-04", 10)));
    assert!(first.overlaps(first));
}

#[test]
fn a_grown_ram_serves_35_to_50_ewes_a_yearling_30_and_a_ram_lamb_15_to_25() {
    // Source: a veterinary manual; a breed society. That several serve as many as each is ours.
    assert_eq!(ewes_to_one(RamAge::Mature), (35, 50));
    assert_eq!(ewes_to_one(RamAge::Yearling), (30, 30));
    assert_eq!(ewes_to_one(RamAge::Lamb), (15, 25));
    assert_eq!(ewes_to_rams(&[RamAge::Mature, RamAge::Yearling, RamAge::Lamb]), (80, 105));
    assert_eq!(ewes_to_rams(&[]), (0, 0));
}
