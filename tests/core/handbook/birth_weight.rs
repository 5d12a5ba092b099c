//! What a birth weight means.

use super::{kg, near};
use yeanling_core::reckon::birth_weight::{
    HAIR_BREEDS, MeanUsed, OWN_FROM, OwnMean, Reason, Verdict, against, band, breed_mean, litter_alarm,
};
use yeanling_core::settings::BreedMeans;
use yeanling_core::units::Mass;

#[track_caller]
fn check(kilograms: f64, litter_size: u8, verdict: Verdict) {
    let band = band(kg(kilograms), litter_size).expect("in bounds");
    assert_eq!(band.verdict, verdict, "{band:?}");
}

#[test]
fn the_optimum_is_scaled_by_litter_size() {
    // Source: AWI (4.5–5.5 kg single, Merino); Hanrahan & Keady 2013 (93 % and 78 %).
    for (litter, least, most) in [(1, 4.5, 5.5), (2, 4.185, 5.115), (3, 3.51, 4.29), (5, 3.51, 4.29)] {
        let (low, high) = band(kg(4.0), litter).expect("in bounds").optimum;
        near(low.as_kilograms(), least, 1e-9);
        near(high.as_kilograms(), most, 1e-9);
    }
}

#[test]
fn an_ordinary_lamb_is_good_in_its_litter() {
    // Source: ours, half a kilogram under the optimum to 6 kg.
    check(4.2, 1, Verdict::Good);
    check(5.0, 1, Verdict::Good);
    check(3.9, 2, Verdict::Good);
    check(3.3, 3, Verdict::Good);
}

#[test]
fn the_edges_are_where_they_are_said_to_be() {
    // Source: memory (3.0 kg); Hanrahan & Keady 2013 (factors); the edges are ours.
    check(2.99, 1, Verdict::VeryLight);
    check(3.0, 1, Verdict::Light);
    check(3.99, 1, Verdict::Light);
    check(4.0, 1, Verdict::Good);
    check(2.78, 2, Verdict::VeryLight);
    check(2.80, 2, Verdict::Light);
    check(3.68, 2, Verdict::Light);
    check(3.69, 2, Verdict::Good);
    check(2.33, 3, Verdict::VeryLight);
    check(2.35, 3, Verdict::Light);
    check(3.00, 3, Verdict::Light);
    check(3.02, 3, Verdict::Good);
}

/// A weight a hair under and a hair over what is meant, as pounds turned into kilograms leave it.
fn with_dust(grams: u32) -> [f64; 3] {
    let kilograms = f64::from(grams) / 1000.0;
    [kilograms - 1e-12, kilograms, kilograms + 1e-12]
}

#[test]
fn a_weight_to_the_gram_falls_on_the_side_of_every_edge_that_whole_grams_say() {
    // Source: Hanrahan & Keady 2013 (100, 93 and 78 %) of AWI's 4.5 to 5.5 kg; the edges are ours, in whole grams.
    for (litter, percent) in [(0, 100), (1, 100), (2, 93), (3, 78), (4, 78)] {
        let of_single = |grams: u32| grams * percent / 100;
        let (low, high) = (of_single(4500), of_single(5500));
        let (very_light, good, heavy) = (of_single(3000), (low - 500).max(3000), 6000);
        for edge in [very_light, good, low, high, 3000, heavy] {
            for grams in edge - 1..=edge + 1 {
                let verdict = match grams {
                    _ if grams < very_light => Verdict::VeryLight,
                    _ if grams < good => Verdict::Light,
                    _ if grams <= heavy => Verdict::Good,
                    _ => Verdict::Heavy,
                };
                for kilograms in with_dust(grams) {
                    let band = band(kg(kilograms), litter).expect("in bounds");
                    assert_eq!(band.verdict, verdict, "{grams} g of {litter}");
                    let has = |reason| band.reasons.contains(&reason);
                    assert_eq!(has(Reason::UnderThreeKilograms), grams < 3000, "{grams} g of {litter}");
                    assert_eq!(has(Reason::HardBirth), grams > heavy, "{grams} g of {litter}");
                    assert_eq!(has(Reason::UnderOptimum), grams < low, "{grams} g of {litter}");
                    assert_eq!(has(Reason::OverOptimum), grams > high, "{grams} g of {litter}");
                }
            }
        }
    }
    check(3.01, 3, Verdict::Good);
}

#[test]
fn a_gap_to_the_gram_falls_on_the_side_of_the_alarms_edge_that_whole_grams_say() {
    // Source: Wilson 2025, more than 1 kg under the litter's mean, in whole grams.
    for litter in (3000..4500).step_by(7) {
        for (gap, alarm) in [(999, false), (1000, false), (1001, true)] {
            for (kilograms, mean) in with_dust(litter - gap).into_iter().zip(with_dust(litter)) {
                assert_eq!(litter_alarm(kg(kilograms), kg(mean), kg(5.0)), alarm, "{litter} g less {gap} g");
            }
        }
    }
}

#[test]
fn under_three_kilograms_is_watched_in_every_litter() {
    // Source: memory.
    for litter in 0..=6 {
        let band = band(kg(2.99), litter).expect("in bounds");
        assert!(band.verdict <= Verdict::Light, "{band:?}");
        assert_eq!(band.reasons.first(), Some(&Reason::UnderThreeKilograms));
    }
}

#[test]
fn over_six_kilograms_is_a_hard_birth() {
    // Source: common practice.
    check(6.0, 1, Verdict::Good);
    check(6.1, 1, Verdict::Heavy);
    assert_eq!(band(kg(6.1), 1).expect("in bounds").reasons, [Reason::HardBirth, Reason::OverOptimum]);
}

#[test]
fn a_litter_of_unknown_size_counts_as_a_single() {
    // Source: ours, the safer branch.
    let (unknown, single) = (band(kg(3.5), 0).expect("in bounds"), band(kg(3.5), 1).expect("in bounds"));
    assert_eq!((unknown.verdict, unknown.optimum), (single.verdict, single.optimum));
}

#[test]
fn a_weight_no_lamb_is_born_with_is_refused() {
    // Source: ours, 0.5 to 12 kg.
    for kilograms in [0.0, -3.0, 40.0, f64::NAN] {
        assert_eq!(band(kg(kilograms), 1).expect_err("out of bounds").allowed, Mass::AT_BIRTH);
    }
}

#[test]
fn a_kilogram_under_a_light_litter_raises_the_alarm() {
    // Source: Wilson 2025, 74,448 US range records.
    assert!(litter_alarm(kg(2.8), kg(3.9), kg(4.1)));
    assert!(!litter_alarm(kg(2.9), kg(3.9), kg(4.1)), "exactly 1 kg is not more than 1 kg");
    assert!(!litter_alarm(kg(2.8), kg(4.1), kg(4.1)), "the litter is not under the flock");
    assert!(!litter_alarm(kg(2.8), kg(f64::NAN), kg(4.1)));
}

#[test]
fn hair_breeds_have_starting_values() {
    // Source: memory, low confidence.
    let katahdin = HAIR_BREEDS.iter().find(|mean| mean.breed == "Katahdin").expect("listed");
    let means = katahdin.by_litter.map(|range| range.map(|(least, _)| least));
    assert_eq!(means, [Some(kg(4.6)), Some(kg(3.9)), Some(kg(3.3))]);
}

fn own(mean: f64, lambs: u16) -> Option<OwnMean> {
    Some(OwnMean { mean: kg(mean), lambs })
}

#[test]
fn a_triplet_far_under_a_light_litter_is_red() {
    // Source: Wilson 2025, 74,448 US range records.
    let red = |weight, litter, flock| {
        against(kg(weight), 3, Some(kg(litter)), own(flock, 40), BreedMeans::NoBreed).expect("in bounds").red
    };
    assert!(red(2.8, 3.9, 4.1));
    assert!(!red(2.9, 3.9, 4.1), "exactly 1 kg");
    assert!(!red(2.8, 3.9, 3.9), "the litter is not light");
    let no_litter = against(kg(2.8), 3, None, own(4.1, 40), BreedMeans::NoBreed).expect("in bounds");
    assert!(!no_litter.red);
}

#[test]
fn from_15_lambs_on_the_flocks_own_mean_replaces_a_breeds() {
    // Source: ours.
    assert_eq!(OWN_FROM, 15);
    let of = |own, breed| against(kg(3.5), 2, None, own, breed).expect("in bounds");
    let katahdin = BreedMeans::Katahdin;
    let enough = of(own(4.1, 15), katahdin);
    assert_eq!((enough.used, enough.mean), (MeanUsed::Own { lambs: 15 }, Some(kg(4.1))));
    let few = of(own(4.1, 14), katahdin);
    assert_eq!((few.used, few.mean), (MeanUsed::Breed { breed: katahdin, lambs: 14 }, Some(kg(3.9))));
    let neither = of(own(4.1, 14), BreedMeans::NoBreed);
    assert_eq!((neither.used, neither.mean), (MeanUsed::Optimum { lambs: 14 }, None));
    assert_eq!(of(None, BreedMeans::Dorper).used, MeanUsed::Optimum { lambs: 0 }, "no mean for twins");
}

#[test]
fn a_recalled_mean_is_no_ground_for_an_alarm() {
    // Source: ours.
    let litter_mean = Some(kg(3.2));
    let of = |own| against(kg(2.1), 3, litter_mean, own, BreedMeans::Katahdin).expect("in bounds").red;
    assert!(!of(None) && !of(own(4.1, 14)));
    assert!(of(own(4.1, 15)));
}

#[test]
fn a_breeds_mean_is_the_middle_of_what_is_recalled() {
    // Source: memory, low confidence.
    assert_eq!(breed_mean(BreedMeans::Katahdin, 3), Some(kg(3.3)));
    assert_eq!(breed_mean(BreedMeans::Katahdin, 5), Some(kg(3.3)));
    assert_eq!(breed_mean(BreedMeans::StCroix, 1), Some(kg(3.0)));
    assert_eq!(breed_mean(BreedMeans::Dorper, 1), Some(kg(4.25)));
    assert_eq!(breed_mean(BreedMeans::StCroix, 2), None);
    assert_eq!(breed_mean(BreedMeans::NoBreed, 1), None);
}

#[test]
fn a_mean_no_litter_has_is_refused() {
    // Source: ours, 0.5 to 12 kg.
    for mean in [0.0, 40.0, f64::NAN] {
        assert!(against(kg(3.0), 2, Some(kg(mean)), None, BreedMeans::NoBreed).is_err());
        assert!(against(kg(3.0), 2, None, own(mean, 40), BreedMeans::NoBreed).is_err());
    }
}
