//! The flock's own share that holds.

use statrs::distribution::{Beta, ContinuousCDF};
use yeanling_core::reckon::season::conception::{Open, PRIOR, Record, Whose, learned};

use super::near;

#[test]
fn the_handbook_is_a_beta_over_the_printed_range() {
    // Source: guides, 0.75 (0.60 to 0.85); quantiles by SciPy 1.17.1, beta.ppf([.05, .95], 36, 12).
    let handbook = learned(Record::default());
    assert_eq!(handbook.whose, Whose::Handbook);
    near(handbook.conception.as_share(), 0.75, 1e-12);
    near(handbook.at_most(0.05), 0.642_473_09, 2e-4);
    near(handbook.at_most(0.95), 0.845_571_75, 2e-4);
    near(handbook.at_most(0.025), 0.619_742_7, 2e-4);
    near(handbook.at_most(0.975), 0.860_550_88, 2e-4);
}

#[test]
fn what_is_seen_moves_it_as_a_beta_moves() {
    // Source: statrs, Beta.
    for (held, missed) in [(0, 0), (3, 5), (30, 4), (10, 40), (400, 100)] {
        let learned = learned(Record { held, missed });
        let beta = Beta::new(PRIOR.0 + f64::from(held), PRIOR.1 + f64::from(missed)).expect("a curve");
        for chance in [0.05, 0.25, 0.5, 0.75, 0.95] {
            near(beta.cdf(learned.at_most(chance)), chance, 3e-3);
        }
    }
}

#[test]
fn of_40_put_to_the_ram_so_many_will_likely_lamb() {
    // Source: SciPy 1.17.1, quad over p of beta.pdf(p, a, b) * binom.pmf(e, 40, (1 - p)**n).
    let likely = |held, missed, cycles_left| {
        let open = [Open { ewes: 40, cycles_left }];
        learned(Record { held, missed }).likely(0, &open).expect("40 ewes")
    };
    let three = likely(0, 0, 3);
    assert_eq!((three.put, three.low, three.high), (40, 37, 40));
    near(three.mean, 39.257_142_857, 1e-6);
    let two = likely(0, 0, 2);
    assert_eq!((two.low, two.high), (34, 40));
    near(two.mean, 37.346_938_776, 1e-6);
    let own = likely(30, 4, 2);
    assert_eq!((own.low, own.high, own.whose), (36, 40, Whose::Own));
    near(own.mean, 38.401_410_52, 1e-6);
}

#[test]
fn one_that_lambed_late_missed_before() {
    // Source: ours.
    let record = Record::default().lambed(1).lambed(3).not_lambed(2).lambed(0);
    assert_eq!(record, Record { held: 3, missed: 4 });
}

#[test]
fn those_that_have_lambed_are_certain() {
    // Source: ours.
    let handbook = learned(Record::default());
    let done = handbook.likely(38, &[Open { ewes: 2, cycles_left: 0 }]).expect("40 ewes");
    assert_eq!((done.put, done.low, done.high), (40, 38, 38));
    near(done.mean, 38.0, 1e-9);
    assert!(handbook.likely(0, &[]).is_err());
    assert!(handbook.likely(3000, &[Open { ewes: 1, cycles_left: 1 }]).is_err());
}

#[test]
fn own_matings_with_the_handbooks_mean_leave_the_mean() {
    // Source: ours.
    for times in [1, 10, 200] {
        let learned = learned(Record { held: 3 * times, missed: times });
        near(learned.conception.as_share(), 0.75, 1e-12);
    }
}
