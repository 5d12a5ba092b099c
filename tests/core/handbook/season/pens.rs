//! How many bonding pens will be wanted.

use statrs::distribution::{Binomial, DiscreteCDF, Poisson};
use yeanling_core::reckon::season::forecast::{Curve, curve};
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::reckon::season::pens::{Rule, SURE, wanted};
use yeanling_core::settings::PenStay;

use super::litters::lamb_births;
use super::{date, group, near};

fn singles() -> Litters {
    Litters::from_shares([1.0, 0.0, 0.0, 0.0]).expect("shares")
}

#[test]
fn alike_ewes_want_the_quantile_of_a_binomial() {
    // Source: statrs, Binomial.
    let first = date("2027-03-01");
    let curves = [Curve::new(80, first, vec![0.05; 20], singles()).expect("chances")];
    let answer = wanted(&curves, PenStay::default()).expect("ewes");
    let binomial = Binomial::new(0.05, 80).expect("a chance");
    for (pens, sure) in answer.enough.into_iter().zip(SURE) {
        assert_eq!(u64::from(pens), binomial.inverse_cdf(sure));
    }
    near(answer.nights[5].mean, 4.0, 1e-9);
    let two_days = PenStay { single_hours: 48, ..PenStay::default() };
    let answer = wanted(&curves, two_days).expect("ewes");
    assert_eq!(u64::from(answer.enough[1]), Binomial::new(0.10, 80).expect("a chance").inverse_cdf(0.95));
    near(answer.nights[0].mean, 4.0, 1e-9);
    near(answer.nights[1].mean, 8.0, 1e-9);
    near(answer.nights.last().expect("nights").mean, 0.0, 1e-9);
}

#[test]
fn many_alike_ewes_want_the_quantile_of_a_poisson() {
    // Source: statrs, Poisson of births a day × stay; ewes are many and each night's chance is small.
    let curves = [Curve::new(3000, date("2027-03-01"), vec![0.001; 30], singles()).expect("chances")];
    let answer = wanted(&curves, PenStay::default()).expect("ewes");
    let poisson = Poisson::new(3.0).expect("a mean");
    for (pens, sure) in answer.enough.into_iter().zip(SURE) {
        assert_eq!(u64::from(pens), poisson.inverse_cdf(sure));
    }
}

#[test]
fn the_open_data_gives_the_pens_of_60_ewes() {
    // Source: Mead, lamb_births for the litters; statrs, Poisson of peak births a day × mean stay, two more at the most.
    let [_, one, two, three] = lamb_births().map(f64::from);
    let lambing = one + two + three;
    let litters = Litters::from_shares([one / lambing, two / lambing, three / lambing, 0.0]).expect("shares");
    let curves =
        [curve(&yeanling_core::reckon::season::forecast::Group { litters, ..group(60, "2026-10-01", 51) })
            .expect("ewes")];
    let answer = wanted(&curves, PenStay::default()).expect("ewes");
    let stay = (one + 2.0 * two + 3.0 * three) / lambing;
    let mean = 60.0 * 0.75 / 17.0 * stay;
    let busiest = answer.nights.iter().map(|night| night.mean).fold(0.0, f64::max);
    near(busiest, mean, 0.01);
    let poisson = Poisson::new(mean).expect("a mean");
    for (pens, sure) in answer.enough.into_iter().zip(SURE) {
        let rough = poisson.inverse_cdf(sure);
        assert!(u64::from(pens) <= rough && u64::from(pens) + 1 >= rough, "{pens} {rough}");
    }
    assert_eq!(answer.rules, [(Rule::Usual, (8, 9)), (Rule::Prolific, (10, 12)), (Rule::Ten, (6, 6))]);
    assert!(answer.busiest > date("2027-02-26") && answer.busiest < date("2027-03-20"));
}

#[test]
fn one_pen_for_seven_to_eight_ewes_or_five_to_six_when_prolific() {
    // Source: Irish Farmers Journal.
    assert_eq!((Rule::Usual.pens(100), Rule::Prolific.pens(100)), ((13, 15), (17, 20)));
}

#[test]
fn one_pen_for_ten_ewes() {
    // Source: memory.
    assert_eq!((Rule::Ten.pens(100), Rule::Ten.pens(101)), ((10, 10), (11, 11)));
}

#[test]
fn a_part_of_a_day_is_an_even_part_of_its_night() {
    // Source: ours.
    let curves = [Curve::new(100, date("2027-03-01"), vec![0.02; 10], singles()).expect("chances")];
    let stay = PenStay { single_hours: 36, ..PenStay::default() };
    near(wanted(&curves, stay).expect("ewes").nights[4].mean, 3.0, 1e-9);
}

#[test]
fn no_ewes_want_no_answer() {
    // Source: ours, 1 to 3,000.
    assert!(wanted(&[], PenStay::default()).is_err());
}
