//! How many births to expect each night.

use statrs::distribution::{Beta, Binomial, Continuous, Discrete, DiscreteCDF};
use yeanling_core::reckon::season::conception::{Belief, learned};
use yeanling_core::reckon::season::ewe::{Evidence, lambing_forecast};
use yeanling_core::reckon::season::forecast::{
    Caution, Counts, Curve, Group, births, births_on, cautions, curve, forecast, lambed, lambs_on,
};
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::reckon::season::mating::Mating;

use super::{date, days, gestation, group, near, p};

/// The group of the worked example: 60 ewes, p 0.75, three cycles, 147 d, spread 2.0 d.
fn sixty() -> Group {
    Group { gestation: gestation(147.0, 2.0), conception: p(0.75), ..group(60, "2026-10-01", 51) }
}

#[test]
fn sixty_ewes_lamb_as_the_worked_example_says() {
    // Source: SciPy 1.17.1, quad over 17 d of norm.cdf; 8.10 by day 150, 43.42 by 164, 59.06 by 203.
    for (day, ewes) in [
        (150.0, 8.096_330_084_624_855),
        (164.0, 43.415_964_474_866_72),
        (181.0, 55.853_991_118_719_16),
        (203.0, 59.061_836_866_374_55),
    ] {
        near(60.0 * lambed(&sixty(), day), ewes, 1e-9);
    }
}

#[test]
fn the_busiest_night_of_a_group_is_its_first_cycle_over_17_days() {
    // Source: ours, N·p/17 = 2.647 a day.
    let forecast = forecast(&[curve(&sixty()).expect("ewes")]).expect("ewes");
    let busiest = forecast.nights.iter().map(|night| night.births.mean).fold(0.0, f64::max);
    near(busiest, 60.0 * 0.75 / 17.0, 0.001);
    assert!((date("2027-02-26")..date("2027-03-16")).contains(&forecast.busiest.0), "{:?}", forecast.busiest);
    near(forecast.busiest.1, busiest, 1e-12);
}

#[test]
fn most_lambings_are_the_fewest_nights_that_hold_half_of_them() {
    // Source: ours; every run of nights is tried one by one, here and in no other way there.
    for groups in [
        vec![sixty()],
        vec![group(3, "2026-10-01", 34), group(40, "2026-11-20", 51)],
        vec![group(1, "2026-10-01", 1)],
    ] {
        let curves: Vec<Curve> = groups.iter().map(|group| curve(group).expect("ewes")).collect();
        let forecast = forecast(&curves).expect("ewes");
        let mean = |from: usize, to: usize| -> f64 {
            forecast.nights[from..=to].iter().map(|night| night.births.mean).sum()
        };
        let half = forecast.births.mean / 2.0;
        let nights = forecast.nights.len();
        let all = (0..nights).flat_map(|from| (from..nights).map(move |to| (from, to)));
        let fewest = all
            .filter(|(from, to)| mean(*from, *to) >= half - 1e-9)
            .map(|(from, to)| to - from)
            .min()
            .expect("all hold half");
        let place = |day| forecast.nights.iter().position(|night| night.date == day).expect("a night");
        let (from, to) = (place(forecast.most.0), place(forecast.most.1));
        assert!(mean(from, to) >= half - 1e-9);
        assert_eq!(to - from, fewest);
        assert!((from..=to).contains(&place(forecast.busiest.0)) || groups.len() > 1);
    }
}

#[test]
fn the_nights_sum_to_the_ewes_that_hold() {
    // Source: ours, Σ N·(1−(1−p)^n).
    let curves: Vec<Curve> =
        [sixty(), group(40, "2026-11-01", 34)].iter().map(|group| curve(group).expect("ewes")).collect();
    let forecast = forecast(&curves).expect("ewes");
    let held = 60.0 * (1.0 - 0.25_f64.powi(3)) + 40.0 * (1.0 - 0.25_f64.powi(2));
    near(forecast.births.mean, held, 1e-8);
    near(forecast.lambs, held * Litters::default().mean(), 1e-8);
    near(forecast.nights.iter().map(|night| night.births.mean).sum(), held, 1e-8);
    assert_eq!(forecast.ewes, 100);
    assert!(f64::from(forecast.births.low) < held && held < f64::from(forecast.births.high));
}

/// The two groups of the next checks, and the night on which both lamb.
fn two_groups() -> (Vec<Curve>, yeanling_core::units::NaiveDate) {
    let litters = Litters::from_shares([0.3, 0.6, 0.1, 0.0]).expect("shares");
    let one = Group { litters, ..group(40, "2026-10-01", 51) };
    let other = Group {
        litters,
        conception: p(0.7),
        gestation: gestation(145.0, 2.2),
        ..group(25, "2026-10-11", 34)
    };
    let curves = [one, other].iter().map(|group| curve(group).expect("ewes")).collect();
    (curves, date("2026-10-01") + days(155))
}

#[test]
fn the_births_of_a_night_are_the_convolution_of_both_groups() {
    // Source: SciPy 1.17.1, numpy.convolve(binom.pmf(range(41), 40, p1), binom.pmf(range(26), 25, p2)).
    let (curves, night) = two_groups();
    near(curves[0].on(night), 0.044_112_728_922_601_874, 1e-12);
    near(curves[1].on(night), 0.024_258_675_759_343_852, 1e-12);
    let counts = births_on(&curves, night);
    for (number, chance) in [
        0.089_050_138_399_824_87,
        0.219_729_728_468_256_3,
        0.266_608_716_243_549_37,
        0.212_041_085_242_984_73,
        0.124_326_893_354_963_3,
        0.057_308_813_572_339_58,
        0.021_627_046_872_860_87,
        0.006_870_723_322_922_306_5,
    ]
    .into_iter()
    .enumerate()
    {
        near(counts.chance_of(number), chance, 1e-12);
    }
    let forecast = forecast(&curves).expect("ewes");
    let found = forecast.nights.iter().find(|one| one.date == night).expect("it is there");
    assert_eq!((found.births.low, found.births.high), (0, 5));
    near(found.births.mean, 2.370_976_050_887_670_7, 1e-10);
    near(found.none, 0.089_050_138_399_824_87, 1e-12);
}

#[test]
fn the_middle_of_a_night_is_that_of_the_whole_spread_on_every_night() {
    // Source: ours, the whole convolution, summed from none on.
    let (mut curves, _) = two_groups();
    curves.push(Curve::new(3, date("2027-03-01"), vec![0.9, 0.05], Litters::default()).expect("ewes"));
    curves.push(curve(&group(900, "2026-10-05", 34)).expect("ewes"));
    let forecast = forecast(&curves).expect("ewes");
    assert!(forecast.nights.iter().any(|night| night.births.high > 40));
    for night in &forecast.nights {
        let whole = births_on(&curves, night.date);
        near(night.none, whole.chance_of(0), 1e-15);
        let middle = [0.05, 0.95].map(|chance| whole.at_most(chance));
        assert_eq!([night.births.low, night.births.high], middle, "{}", night.date);
    }
}

#[test]
fn the_lambs_of_a_night_are_the_convolution_of_all_litters() {
    // Source: SciPy 1.17.1 with NumPy, [1 − p, 0.3 p, 0.6 p, 0.1 p] convolved with itself 40 and 25 times.
    let (curves, night) = two_groups();
    let counts = lambs_on(&curves, night);
    for (number, chance) in [
        0.089_050_138_399_825,
        0.065_918_918_540_476_96,
        0.155_832_621_542_873_42,
        0.123_677_219_996_064_11,
        0.147_333_364_467_829_58,
        0.114_615_109_975_896_09,
    ]
    .into_iter()
    .enumerate()
    {
        near(counts.chance_of(number), chance, 1e-12);
    }
    near(counts.mean(), 4.267_756_891_597_813, 1e-10);
    assert_eq!((counts.at_most(0.05), counts.at_most(0.95)), (0, 10));
}

#[test]
fn twelve_ewes_agree_with_every_way_it_can_go() {
    // Source: ours, brute force over all 4,096 ways in which twelve unlike ewes lamb or do not.
    for scale in [0.02, 0.1, 0.9] {
        let chances: Vec<f64> = (1..=12).map(|ewe| scale * f64::from(ewe) / 12.0).collect();
        let mut expected = [0.0; 13];
        for way in 0_u32..1 << 12 {
            let each = chances.iter().enumerate();
            let chance: f64 =
                each.map(|(ewe, chance)| if way >> ewe & 1 == 1 { *chance } else { 1.0 - chance }).product();
            expected[usize::try_from(way.count_ones()).expect("few")] += chance;
        }
        let night = date("2027-03-01");
        let curves: Vec<Curve> = chances
            .iter()
            .map(|chance| Curve::new(1, night, vec![*chance], Litters::default()).expect("a chance"))
            .collect();
        let counts = births_on(&curves, night);
        for (number, chance) in expected.into_iter().enumerate() {
            near(counts.chance_of(number), chance, 1e-14);
        }
    }
}

#[test]
fn alike_ewes_are_a_binomial() {
    // Source: statrs, Binomial.
    for (ewes, chance) in [(1, 0.3), (60, 0.044), (1000, 0.044), (3000, 0.19), (200, 0.5), (50, 0.97)] {
        let binomial = Binomial::new(chance, u64::from(ewes)).expect("a chance");
        let counts = Counts::of_alike(ewes, chance);
        for number in 0..=ewes {
            let place = usize::try_from(number).expect("small");
            near(counts.chance_of(place), binomial.pmf(u64::from(number)), 1e-11);
        }
        for chance in [0.05, 0.5, 0.9, 0.95, 0.99] {
            assert_eq!(u64::from(counts.at_most(chance)), binomial.inverse_cdf(chance), "{ewes}");
        }
    }
}

#[test]
fn a_forecast_says_what_it_takes_for_granted() {
    // Source: ours.
    assert_eq!(cautions(&[sixty()]), [Caution::MayBunch]);
    let open = Group { mating: Mating::new(date("2026-10-01"), None).expect("a date"), ..sixty() };
    assert_eq!(cautions(&[sixty(), open]), [Caution::MayBunch, Caution::RamOutAssumed]);
}

#[test]
fn no_ewes_and_too_many_are_refused() {
    // Source: ours, 1 to 3,000.
    assert!(forecast(&[]).is_err());
    assert!(curve(&group(0, "2026-10-01", 51)).is_err());
    let many = curve(&group(2000, "2026-10-01", 51)).expect("ewes");
    assert!(forecast(&[many.clone(), many]).is_err());
    let far = |ram_in| curve(&group(10, ram_in, 51)).expect("ewes");
    assert!(forecast(&[far("2026-10-01"), far("2029-10-01")]).is_err(), "more than 800 nights");
}

#[test]
fn chances_that_are_none_make_no_curve() {
    // Source: ours.
    for nights in [vec![1.1], vec![-0.1], vec![f64::NAN], vec![0.6, 0.6]] {
        assert!(Curve::new(1, date("2027-03-01"), nights, Litters::default()).is_err());
    }
    let curve = Curve::new(1, date("2027-03-01"), vec![0.25, 0.75], Litters::default()).expect("chances");
    near(curve.lambs_at_all(), 1.0, 1e-12);
    for (day, chance) in [(-1, 0.0), (0, 0.25), (1, 0.75), (2, 0.0)] {
        near(curve.on(date("2027-03-01") + days(day)), chance, 0.0);
    }
}

fn place(number: u32) -> usize {
    usize::try_from(number).expect("few")
}

/// The shares that may hold, and the ewes' curves if each does: what a forecast is a mixture of.
fn mixture(ewes: u32, now: &str) -> (Curve, Vec<(f64, Curve)>) {
    let of = |conception: Belief| {
        let (mating, marks) = (group(1, "2026-10-01", 51).mating, Vec::new());
        let gestation = gestation(147.0, 2.2);
        let evidence =
            Evidence { mating, conception, gestation, marks, look_days: 1, scan: None, signs: Vec::new() };
        let lambing_forecast =
            lambing_forecast(&evidence, date(now).and_hms_opt(0, 0, 0).expect("a time")).expect("an outlook");
        lambing_forecast.curve(ewes, Litters::default()).expect("ewes")
    };
    let beta = Beta::new(36.0, 12.0).expect("a curve");
    let parts =
        (0..400_u32).map(|part| (f64::from(part) + 0.5) / 400.0).filter(|share| beta.pdf(*share) > 1e-9);
    let parts = parts.map(|share| (beta.pdf(share) / 400.0, of(p(share).into()))).collect();
    (of(learned(&[]).belief), parts)
}

#[test]
fn what_is_not_known_of_the_share_that_holds_widens_every_night_and_the_whole_as_a_mixture_does() {
    // Source: statrs, Beta(36, 12), and Binomial for each share; the spread is their weighed sum.
    for ewes in [12, 60, 300] {
        let (curve, parts) = mixture(ewes, "2027-01-01");
        let mixed = |chance: &dyn Fn(&Curve) -> f64, most: u32| -> Vec<f64> {
            let of = |(weight, curve): &(f64, Curve)| {
                let chance = chance(curve).clamp(0.0, 1.0);
                let binomial = Binomial::new(chance, u64::from(ewes)).expect("a chance");
                (0..=u64::from(most)).map(|number| weight * binomial.pmf(number)).collect::<Vec<f64>>()
            };
            parts.iter().map(of).fold(vec![0.0; place(ewes) + 1], |mut sum, one| {
                sum.iter_mut().zip(one).for_each(|(sum, one)| *sum += one);
                sum
            })
        };
        let curves = [curve];
        // The whole: exact but for the strips into which the belief is cut.
        let expected = mixed(&|curve| curve.lambs_at_all(), ewes);
        let whole = births(&curves);
        let mut off: f64 = 0.0;
        for (number, chance) in expected.into_iter().enumerate() {
            off += (whole.chance_of(number) - chance).abs() / 2.0;
        }
        assert!(off < 0.003, "{off} of the whole of {ewes}");
        // Nights of the first, the second and the third cycle: as near as a Gamma comes.
        for night in ["2027-03-04", "2027-03-21", "2027-04-07"].map(date) {
            let expected = mixed(&|curve| curve.on(night), ewes);
            let counts = births_on(&curves, night);
            let mean: f64 =
                expected.iter().zip(0_u32..).map(|(chance, number)| chance * f64::from(number)).sum();
            near(counts.mean(), mean, 1e-3 * (1.0 + mean));
            let off: f64 = expected
                .iter()
                .enumerate()
                .map(|(number, chance)| (counts.chance_of(number) - chance).abs())
                .sum();
            assert!(off / 2.0 < 0.01, "{} of {night}, {ewes} ewes", off / 2.0);
            let known = births_on(
                &[Curve::new(ewes, night, vec![curves[0].on(night)], Litters::default()).expect("a chance")],
                night,
            );
            let spread = |counts: &Counts| {
                let around =
                    |number: u32| (f64::from(number) - mean).powi(2) * counts.chance_of(place(number));
                (0..=ewes).map(around).sum::<f64>()
            };
            assert!(spread(&counts) > spread(&known), "what is not known widens it");
        }
    }
}
