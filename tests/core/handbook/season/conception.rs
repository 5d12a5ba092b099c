//! The flock's own share that holds.

use statrs::distribution::{Beta, ContinuousCDF};
use yeanling_core::reckon::season::conception::{Fate, PRIOR, Whose, Witness, learned};
use yeanling_core::reckon::season::ewe::{Evidence, lambing_forecast};
use yeanling_core::reckon::season::forecast::forecast;
use yeanling_core::reckon::season::gestation::lambed_by;
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::units::NaiveDateTime;

use super::{date, days, gestation, near, with_ram};

fn at(day: &str) -> NaiveDateTime {
    date(day).and_hms_opt(0, 0, 0).expect("a time")
}

/// Ewes with a ram for just one cycle from the first of October on.
fn one_cycle(ewes: u32, fate: Fate) -> Witness {
    Witness { ewes, mating: with_ram("2026-10-01", 17), gestation: gestation(147.0, 2.2), fate }
}

fn held(ewes: u32) -> Witness {
    one_cycle(ewes, Fate::Lambed(date("2027-03-05")))
}

fn missed(ewes: u32) -> Witness {
    one_cycle(ewes, Fate::Open(at("2027-06-01")))
}

#[test]
fn the_handbook_is_a_beta_over_the_printed_range() {
    // Source: guides, 0.75 (0.60 to 0.85); quantiles by SciPy 1.17.1, beta.ppf([.05, .95], 36, 12).
    let handbook = learned(&[]);
    assert_eq!(handbook.whose, Whose::Handbook);
    near(handbook.conception.as_share(), 0.75, 1e-9);
    near(handbook.at_most(0.05), 0.642_473_09, 2e-4);
    near(handbook.at_most(0.95), 0.845_571_75, 2e-4);
    near(handbook.at_most(0.025), 0.619_742_7, 2e-4);
    near(handbook.at_most(0.975), 0.860_550_88, 2e-4);
}

#[test]
fn what_is_seen_moves_it_as_a_beta_moves() {
    // Source: statrs, Beta; with one cycle each ewe is a trial, and its end is known.
    for (good, bad) in [(1, 1), (3, 5), (30, 4), (10, 40), (400, 100)] {
        let learned = learned(&[held(good), missed(bad)]);
        let beta = Beta::new(PRIOR.0 + f64::from(good), PRIOR.1 + f64::from(bad)).expect("a curve");
        for chance in [0.05, 0.25, 0.5, 0.75, 0.95] {
            near(beta.cdf(learned.at_most(chance)), chance, 3e-3);
        }
    }
}

#[test]
fn of_40_put_to_the_ram_so_many_will_likely_lamb() {
    // Source: SciPy 1.17.1, quad over p of beta.pdf(p, a, b) * binom.pmf(e, 40, (1 - p)**n).
    let likely = |witnesses: &[Witness], cycles: i64| {
        let evidence = Evidence {
            mating: with_ram("2026-10-01", 17 * cycles),
            conception: learned(witnesses).belief,
            gestation: gestation(147.0, 2.2),
            marks: Vec::new(),
            look_days: 1,
            scan: None,
            signs: Vec::new(),
        };
        let lambing_forecast = lambing_forecast(&evidence, at("2027-01-01")).expect("an outlook");
        forecast(&[lambing_forecast.curve(40, Litters::default()).expect("ewes")]).expect("ewes").births
    };
    let three = likely(&[], 3);
    assert_eq!((three.low, three.high), (37, 40));
    near(three.mean, 39.257_142_857, 2e-3);
    let two = likely(&[], 2);
    assert_eq!((two.low, two.high), (34, 40));
    near(two.mean, 37.346_938_776, 2e-3);
    let own = likely(&[held(30), missed(4)], 2);
    assert_eq!((own.low, own.high), (36, 40));
    near(own.mean, 38.401_410_52, 2e-3);
}

#[test]
fn who_is_still_waited_for_is_no_miss() {
    // Source: ours; on day 158 of three cycles half of the first cycle has come, and nothing more can have.
    let three = with_ram("2026-10-01", 51);
    let of = |ewes, fate| Witness { ewes, mating: three, gestation: gestation(147.0, 2.2), fate };
    let now = date("2027-03-08");
    let mut seen: Vec<Witness> =
        (0..11).map(|day| of(12, Fate::Lambed(date("2027-02-25") + days(day)))).collect();
    // As many wait as in a flock of which three in four hold: 132 of 272 have lambed by then.
    near(132.0 / 272.0, 0.75 * lambed_by(158.0, 0.0, 17.0, gestation(147.0, 2.2)), 0.001);
    seen.push(of(272 - 132, Fate::Open(now.and_hms_opt(0, 0, 0).expect("a time"))));
    let learned = learned(&seen);
    assert_eq!(learned.whose, Whose::Own);
    near(learned.conception.as_share(), 0.75, 0.02);
}

#[test]
fn one_that_left_before_her_day_tells_nothing_and_after_it_all() {
    // Source: ours.
    let left = |day| learned(&[one_cycle(100, Fate::Open(at(day)))]).conception.as_share();
    near(left("2027-01-15"), 0.75, 1e-6);
    near(left("2027-06-01"), 36.0 / 148.0, 1e-3);
    assert_eq!(learned(&[one_cycle(100, Fate::Open(at("2027-01-15")))]).whose, Whose::Handbook);
}

#[test]
fn a_scan_is_evidence_either_way() {
    // Source: ours; with one cycle a ewe in lamb held once and an empty one missed once.
    let scanned = [one_cycle(12, Fate::Carrying(at("2027-01-15"))), one_cycle(4, Fate::Missed)];
    near(learned(&scanned).conception.as_share(), 48.0 / 64.0, 1e-6);
    near(learned(&[scanned[0]]).conception.as_share(), 48.0 / 60.0, 1e-4);
    near(learned(&[scanned[1]]).conception.as_share(), 36.0 / 52.0, 1e-4);
}

#[test]
fn a_birth_that_no_mating_explains_tells_nothing() {
    // Source: ours.
    let odd = learned(&[one_cycle(20, Fate::Lambed(date("2027-01-02")))]);
    near(odd.conception.as_share(), 0.75, 1e-6);
}
