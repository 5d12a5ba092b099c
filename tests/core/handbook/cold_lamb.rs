//! The decision for a cold lamb, cell by cell.

use super::{celsius, kg, ml};
use yeanling_core::reckon::cold_lamb::{Branch, ColdLambAnswer, Dissent, Never, Step, Vet, decide, feed};
use yeanling_core::units::{Temperature, TimeDelta};

const YES: Option<bool> = Some(true);
const NO: Option<bool> = Some(false);

fn old(minutes: i64) -> Option<TimeDelta> {
    Some(TimeDelta::minutes(minutes))
}

fn answer(degrees: f64, age: Option<TimeDelta>, swallows: Option<bool>) -> ColdLambAnswer {
    decide(celsius(degrees), age, swallows).expect("in bounds")
}

/// Ages on both sides of every edge, and none.
fn ages() -> Vec<Option<TimeDelta>> {
    let minutes = [-5, 0, 59, 60, 240, 299, 300, 301, 330, 360, 361, 1440, 20_000];
    minutes.into_iter().map(old).chain([None]).collect()
}

#[track_caller]
fn check(degrees: f64, age: Option<TimeDelta>, swallows: Option<bool>, steps: &[Step], vet: Vet) {
    let answer = answer(degrees, age, swallows);
    assert_eq!((answer.steps.as_slice(), answer.vet), (steps, vet), "{answer:?}");
    let again = answer.steps.contains(&Step::LookAgain);
    let fever = answer.branch == Branch::Fever;
    let wait = if fever { Some(30) } else { again.then_some(20) };
    assert_eq!(answer.look_again, wait.map(TimeDelta::minutes));
}

const DRY_AND_FEED: &[Step] = &[Step::Dry, Step::Shelter, Step::Feed, Step::BackToEwe, Step::LookAgain];
const MILD_NO_TUBE: &[Step] = &[Step::DoNotTube, Step::Dry, Step::Warm, Step::CallVet, Step::LookAgain];
const WARM_THEN_FEED: &[Step] =
    &[Step::Dry, Step::WarmTo37, Step::LookAgain, Step::FeedAt37, Step::BackToEwe];
/// Shelter and the phone, energy, then warmth; and what if there is no energy to be had.
fn energy_first(energy: &[Step]) -> Vec<Step> {
    let after = [
        Step::WarmTo37,
        Step::LookAgain,
        Step::FeedAt37,
        Step::BackToEwe,
        Step::NoGlucose,
        Step::NobodyReached,
        Step::WarmSlowly,
    ];
    [&[Step::ShelterAndWrap, Step::CallVet], energy, &after].concat()
}

const BY_MOUTH: &[Step] = &[Step::GlucoseByMouthFirst];
const BY_VET: &[Step] = &[Step::NothingByMouth, Step::GlucoseByVetFirst];

#[test]
fn a_mild_lamb_that_swallows_is_dried_sheltered_fed_and_looked_at_again() {
    // Source: Irish Farmers Journal; Henderson 1997.
    for degrees in [37.0, 38.0, 38.9] {
        for age in ages() {
            check(degrees, age, YES, DRY_AND_FEED, Vet::IfNoBetter);
        }
    }
    assert!(answer(38.0, old(60), YES).never.is_empty());
}

#[test]
fn a_mild_lamb_that_does_not_swallow_is_not_tubed_but_warmed_and_the_vet_called() {
    // Source: Irish Farmers Journal; Henderson 1997.
    for degrees in [37.0, 38.9] {
        for age in ages() {
            check(degrees, age, NO, MILD_NO_TUBE, Vet::Now);
            assert!(answer(degrees, age, NO).never.contains(&Never::TubeWithoutSwallow));
        }
    }
}

#[test]
fn a_severe_lamb_of_up_to_five_hours_is_warmed_and_then_fed() {
    // Source: Henderson 1996; US extension.
    for minutes in [0, 60, 299, 300] {
        check(36.9, old(minutes), YES, WARM_THEN_FEED, Vet::IfNoBetter);
        check(30.0, old(minutes), YES, WARM_THEN_FEED, Vet::IfNoBetter);
    }
}

#[test]
fn a_severe_young_lamb_that_does_not_swallow_is_warmed_first_too_and_the_vet_called() {
    // Source: Henderson 1996; US extension. DIFFERENCE: the call to the vet is ours.
    let mut steps = WARM_THEN_FEED.to_vec();
    steps.insert(2, Step::CallVet);
    for swallows in [NO, None] {
        check(36.9, old(299), swallows, &steps, Vet::Now);
        check(36.9, old(300), swallows, &steps, Vet::Now);
    }
}

#[test]
fn a_severe_older_lamb_that_swallows_has_energy_before_warmth() {
    // Source: Henderson 1996. DIFFERENCE: sources split on tubing first; nothing milk-based under 37 °C is ours.
    for minutes in [301, 330, 360, 1440] {
        check(36.9, old(minutes), YES, &energy_first(BY_MOUTH), Vet::Now);
        let answer = answer(36.9, old(minutes), YES);
        assert_eq!(answer.dissent, Some(Dissent::TubeBeforeWarming));
        assert_eq!(answer.never, [Never::WarmBeforeGlucose, Never::MilkUnder37]);
    }
}

#[test]
fn a_severe_older_lamb_that_does_not_swallow_has_glucose_by_a_vet_before_warming() {
    // Source: Eales et al. 1982, Veterinary Record 110:121.
    for minutes in [301, 360, 1440] {
        check(36.9, old(minutes), NO, &energy_first(BY_VET), Vet::Now);
        let answer = answer(36.9, old(minutes), NO);
        assert_eq!(answer.dissent, None);
        assert!(answer.never.contains(&Never::TubeWithoutSwallow));
    }
}

#[test]
fn an_unknown_age_takes_the_older_branch() {
    // Source: ours, the safer branch.
    for swallows in [YES, NO, None] {
        let energy = if swallows == YES { BY_MOUTH } else { BY_VET };
        check(36.9, None, swallows, &energy_first(energy), Vet::Now);
        assert_eq!(answer(36.9, None, swallows).branch, Branch::SevereOlder);
    }
}

#[test]
fn five_hours_to_the_minute_are_young_and_a_minute_more_is_older() {
    // Source: Henderson 1996 (up to 5 h); that 5 to 6 h count as older is ours.
    let branch = |minutes| answer(36.9, old(minutes), YES).branch;
    assert_eq!([branch(299), branch(300)], [Branch::SevereYoung; 2]);
    assert_eq!([branch(301), branch(330), branch(360)], [Branch::SevereOlder; 3]);
    let second_more = Some(TimeDelta::hours(5) + TimeDelta::seconds(1));
    assert_eq!(answer(36.9, second_more, YES).branch, Branch::SevereOlder);
    assert_eq!(branch(-5), Branch::SevereYoung, "a clock that disagrees");
}

#[test]
fn the_branch_changes_at_the_printed_temperatures() {
    // Source: UK hypothermia sheet; the edges are ours.
    let branch = |degrees| answer(degrees, old(600), YES).branch;
    assert_eq!(branch(36.9), Branch::SevereOlder);
    assert_eq!(branch(36.95), Branch::SevereOlder);
    assert_eq!(branch(37.0), Branch::Mild);
    assert_eq!(branch(39.0), Branch::Normal);
    assert_eq!(branch(40.0), Branch::Normal);
    assert_eq!(branch(40.1), Branch::Fever);
}

#[test]
fn a_fever_is_out_of_the_heat_and_for_the_vet_unless_it_is_low_and_the_lamb_bright() {
    // Source: UK hypothermia sheet, over 40 °C. Ours: out of the heat, again in 30 min; up to 40.5 °C in a lamb that is
    // bright and sucks one reading is not yet the vet's.
    let now = [Step::OutOfHeat, Step::CallVet, Step::LookAfterHeat];
    for age in ages() {
        for (degrees, swallows) in [(40.1, NO), (40.1, None), (40.6, YES), (40.6, NO), (41.5, None)] {
            check(degrees, age, swallows, &now, Vet::Now);
        }
        for degrees in [40.1, 40.5] {
            check(degrees, age, YES, &[Step::OutOfHeat, Step::LookAfterHeat], Vet::IfNoBetter);
        }
    }
}

#[test]
fn a_normal_lamb_is_left_with_the_ewe_unless_it_cannot_swallow() {
    // Source: ours; 39 to 40 °C is normal (UK hypothermia sheet).
    for degrees in [39.0, 39.5, 40.0] {
        for age in ages() {
            check(degrees, age, YES, &[Step::LeaveWithEwe], Vet::NotNeeded);
            check(degrees, age, None, &[Step::LeaveWithEwe], Vet::NotNeeded);
            check(degrees, age, NO, &[Step::DoNotTube, Step::CallVet], Vet::Now);
        }
    }
}

#[test]
fn a_cold_lamb_of_which_nobody_says_that_it_swallows_counts_as_one_that_does_not() {
    // Source: ours, the safer branch.
    for degrees in [30.0, 36.9, 37.0, 38.9, 40.1] {
        for age in ages() {
            let (unknown, cannot) = (answer(degrees, age, None), answer(degrees, age, NO));
            assert_eq!((unknown.steps, unknown.never, unknown.vet), (cannot.steps, cannot.never, cannot.vet));
        }
    }
}

#[test]
fn the_misprint_of_glucose_under_five_hours_is_never_followed() {
    // Source: one page has it backwards, glucose for lambs under five hours. Known misprint, never followed.
    for tenths in 150..=440 {
        for age in ages().into_iter().flatten().filter(|age| *age <= TimeDelta::hours(5)) {
            for swallows in [YES, NO, None] {
                let answer = answer(f64::from(tenths) / 10.0, Some(age), swallows);
                let glucose = [Step::GlucoseByVetFirst, Step::GlucoseByMouthFirst];
                assert!(!glucose.iter().any(|step| answer.steps.contains(step)), "{answer:?}");
                if answer.branch == Branch::SevereYoung {
                    assert!(answer.never.contains(&Never::GlucoseWhenYoung));
                }
            }
        }
    }
}

#[test]
fn nothing_is_fed_under_37_degrees_and_glucose_always_comes_before_warmth() {
    // Source: Henderson 1996; Eales et al. 1982.
    let place = |answer: &ColdLambAnswer, step| answer.steps.iter().position(|one| *one == step);
    for tenths in 150..370 {
        for age in ages() {
            for swallows in [YES, NO, None] {
                let answer = answer(f64::from(tenths) / 10.0, age, swallows);
                assert_eq!(place(&answer, Step::Feed), None, "{answer:?}");
                let (warm, fed) = (place(&answer, Step::WarmTo37), place(&answer, Step::FeedAt37));
                assert!(warm.is_some() && warm < fed, "{answer:?}");
                let glucose =
                    place(&answer, Step::GlucoseByVetFirst).or(place(&answer, Step::GlucoseByMouthFirst));
                assert!(glucose < warm, "{answer:?}");
                if answer.branch == Branch::SevereOlder {
                    assert!(glucose.is_some(), "{answer:?}");
                    assert_eq!(answer.steps[0], Step::ShelterAndWrap, "shelter is no heat");
                }
                assert!(answer.never.contains(&Never::MilkUnder37));
            }
        }
    }
}

#[test]
fn one_feed_is_50_ml_per_kilogram() {
    // Source: Irish Farmers Journal; Henderson 1997, 50 ml/kg.
    assert_eq!(feed(kg(4.0)), Ok(ml(200.0)));
    assert_eq!(feed(kg(30.0)), Ok(ml(1000.0)), "never over the largest printed feed");
    for kilograms in [0.0, -3.0, 31.0, f64::NAN] {
        assert!(feed(kg(kilograms)).is_err());
    }
}

#[test]
fn a_temperature_no_lamb_has_is_refused() {
    // Source: ours, 15 to 44 °C.
    for degrees in [45.0, 98.6, 0.0, f64::NAN] {
        let refused = decide(celsius(degrees), old(60), YES).expect_err("out of bounds");
        assert_eq!(refused.allowed, Temperature::IN_A_LAMB);
    }
}

#[test]
fn every_row_names_where_it_was_printed() {
    // Source: UK hypothermia sheet; Irish Farmers Journal; Henderson 1996 and 1997; Eales et al. 1982; US extension.
    let authors = |degrees, minutes| {
        let sources = answer(degrees, old(minutes), YES).sources();
        sources.iter().map(|source| source.authors).collect::<Vec<_>>()
    };
    assert_eq!(authors(38.0, 60), ["Irish Farmers Journal", "Henderson"]);
    assert_eq!(authors(36.0, 60), ["Henderson", "US extension"]);
    assert_eq!(authors(36.0, 600), ["Henderson", "Eales et al.", "Trial of 19 lambs", ""]);
    assert_eq!(authors(41.0, 600), ["UK hypothermia sheet", "Irish Farmers Journal"]);
}
