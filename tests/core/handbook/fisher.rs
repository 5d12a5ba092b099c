//! Whether two shares differ by more than chance: worked by hand, and against every table counted out.

use super::near;
use proptest::prelude::*;
use yeanling_core::reckon::fisher::{Sample, chance};

use crate::book::arbitrary::config;

const fn of(yes: u32, no: u32) -> Sample {
    Sample { yes, no }
}

#[test]
fn tables_worked_by_hand_come_out() {
    // Source: ours; each is a count of ways out of all ways.
    near(chance(of(3, 1), of(1, 3)), 34.0 / 70.0, 1e-12);
    near(chance(of(4, 0), of(0, 4)), 2.0 / 70.0, 1e-12);
    // Ten of ten against none of ten: two of the 184,756 ways to choose ten of twenty.
    near(chance(of(10, 0), of(0, 10)), 2.0 / 184_756.0, 1e-15);
    near(chance(of(0, 0), of(5, 9)), 1.0, 0.0);
    near(chance(of(5, 9), of(0, 0)), 1.0, 0.0);
    near(chance(of(7, 0), of(9, 0)), 1.0, 0.0);
}

#[test]
fn a_recalled_table_comes_out() {
    // Source: memory; one of twelve against nine of twelve, 0.0028.
    near(chance(of(1, 11), of(9, 3)), 0.002_759_456_185_220_089, 1e-12);
}

/// So many ways to choose some of all.
fn ways(all: u32, some: u32) -> f64 {
    (0..some).fold(1.0, |ways, one| ways * f64::from(all - one) / f64::from(one + 1))
}

proptest! {
    #![proptest_config(config(500))]

    #[test]
    fn it_is_the_count_of_all_tables_no_likelier(a in 0..25_u32, b in 0..25_u32, c in 0..25_u32, d in 0..25_u32) {
        let (first, second, yes) = (a + b, c + d, a + c);
        let weight = |one: u32| ways(first, one) * ways(second, yes - one);
        let tables: Vec<u32> = (0..=yes).filter(|one| *one <= first && yes - one <= second).collect();
        let all: f64 = tables.iter().map(|one| weight(*one)).sum();
        let seen = weight(a) * (1.0 + 1e-9);
        let as_far: f64 = tables.iter().map(|one| weight(*one)).filter(|weight| *weight <= seen).sum();
        let found = chance(of(a, b), of(c, d));
        prop_assert!((found - as_far / all).abs() < 1e-9, "{} {}", found, as_far / all);
        prop_assert!((found - chance(of(c, d), of(a, b))).abs() < 1e-9, "whichever comes first");
    }

    #[test]
    fn of_thousands_it_is_still_a_chance(a in 0..3000_u32, b in 0..3000_u32, c in 0..3000_u32, d in 0..3000_u32) {
        let found = chance(of(a, b), of(c, d));
        prop_assert!((0.0..=1.0 + 1e-9).contains(&found), "{}", found);
    }
}
