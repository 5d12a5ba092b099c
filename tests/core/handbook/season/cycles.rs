//! How a group holds cycle by cycle.

use yeanling_core::reckon::season::conception;
use yeanling_core::reckon::season::cycles::{
    self, CYCLE_DAYS, CYCLE_RANGE_DAYS, Conception, HOLDS_RANGE, Settled, cycles, settled,
};
use yeanling_core::source::HowKnown;

use super::{date, near, p, with_ram};

#[test]
fn of_those_still_open_seven_in_ten_hold_each_cycle() {
    // Source: Raising Sheep, a cycle of 17 d; shares p(1−p)^(k−1), p 0.70 → 0.700, 0.210, 0.063.
    let shares = [1, 2, 3].map(|k| p(0.7).in_cycle(k));
    for (share, expected) in shares.into_iter().zip([0.7, 0.21, 0.063]) {
        near(share, expected, 1e-12);
    }
    near(p(0.7).empty_after(2), 0.09, 1e-12);
    near(p(0.7).in_cycle(0), 0.0, 0.0);
    let by_days: Vec<f64> =
        cycles(with_ram("2026-10-01", 51), p(0.7)).iter().map(|cycle| cycle.share).collect();
    assert_eq!(by_days.len(), 3);
    for (share, expected) in by_days.into_iter().zip([0.7, 0.21, 0.063]) {
        near(share, expected, 1e-12);
    }
}

#[test]
fn a_cycle_is_17_days_14_to_19() {
    // Source: Raising Sheep.
    assert_eq!((CYCLE_DAYS, CYCLE_RANGE_DAYS), (17, (14, 19)));
}

#[test]
fn three_in_four_hold_with_a_printed_range() {
    // Source: guides, 0.75 (0.60 to 0.85).
    near(Conception::default().as_share(), 0.75, 0.0);
    assert_eq!(HOLDS_RANGE, (0.60, 0.85));
}

#[test]
fn a_share_outside_nothing_to_all_is_refused() {
    // Source: ours.
    for share in [-0.1, 1.1, 75.0, f64::NAN] {
        assert!(Conception::from_share(share).is_err(), "{share}");
    }
    near(p(1.0).empty_after(1), 0.0, 0.0);
    near(p(0.0).empty_after(9), 1.0, 0.0);
}

#[test]
fn a_last_cycle_cut_short_counts_for_its_days() {
    // Source: ours.
    let all = cycles(with_ram("2026-10-01", 20), p(0.75));
    assert_eq!(all.len(), 2);
    near(all[1].share, 0.25 * 0.75 * 3.0 / 17.0, 1e-12);
    assert_eq!((all[1].from_day, all[1].to_day), (17.0, 20.0));
    let one_day = cycles(with_ram("2026-10-01", 1), p(0.75));
    near(one_day[0].share, 0.75 / 17.0, 1e-12);
}

#[test]
fn what_holds_and_what_is_empty_is_all() {
    // Source: ours, arithmetic.
    for days in [1, 16, 17, 18, 34, 51, 120, 366] {
        for share in [0.0, 0.3, 0.75, 1.0] {
            let all = cycles(with_ram("2026-10-01", days), p(share));
            let held: f64 = all.iter().map(|cycle| cycle.share).sum();
            assert!((0.0..=1.0 + 1e-12).contains(&held));
            if days % 17 == 0 {
                let number = u8::try_from(days / 17).expect("few");
                near(held, 1.0 - p(share).empty_after(number), 1e-12);
            }
            assert!(all.windows(2).all(|two| two[0].to_day.to_bits() == two[1].from_day.to_bits()));
        }
    }
}

#[test]
fn what_was_seen_and_what_is_recalled_of_the_share_that_holds_are_told_apart() {
    // Source: guides, 0.75 (0.60 to 0.85), memory; New Zealand data of 1975, 0.72 to 0.79, seen.
    for sources in [cycles::SOURCES, conception::SOURCES] {
        let known = |figure: &str| sources.iter().find(|one| one.title.contains(figure)).map(|one| one.known);
        assert_eq!(known("0.60 to 0.85"), Some(HowKnown::Memory));
        assert_eq!(known("0.72 to 0.79"), Some(HowKnown::Seen));
    }
}

#[test]
fn who_lambs_within_20_days_of_the_first_settled_in_the_first_cycle() {
    // Source: Oregon State University: ewes lambing within 20 d of the first ÷ ewes put to the ram.
    let first = date("2027-02-25");
    let on = |days: &[i64]| days.iter().map(|day| first + super::days(*day)).collect::<Vec<_>>();
    let of = |lambed: &[i64], put, today| settled(&on(lambed), put, first + super::days(today));
    assert_eq!(of(&[20, 0, 21, 3, 40], 8, 60), Some(Settled { ewes: 3, put: 8 }));
    near(of(&[0, 20, 21, 22], 4, 21).expect("told").share(), 0.5, 0.0);
    assert_eq!(of(&[0, 20], 8, 20), None, "another may still lamb within the 20 days");
    assert_eq!(of(&[], 8, 60), None);
    assert_eq!(of(&[0, 1, 2], 2, 60), None, "more lambings than ewes");
}
