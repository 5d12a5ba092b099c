//! What the tables of illness may never do: let a sign lower an urgency, or an answer that was left empty.

use std::collections::BTreeSet;

use proptest::prelude::*;
use proptest::sample::{select, subsequence};
use yeanling_core::reckon::illness::{Answer, Urgency, ewe, lamb};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign, Onset};
use yeanling_core::units::{Ketones, Temperature, TimeDelta};

const GATES: [Gate; 4] = [Gate::Good, Gate::NotChecked, Gate::Bad, Gate::CannotCheck];
const STAGES: [EweStage; 6] = [
    EweStage::LateInLamb,
    EweStage::Labor,
    EweStage::AfterLambing,
    EweStage::Milking,
    EweStage::Other,
    EweStage::Unknown,
];

prop_compose! {
    fn ewes()(
        stage in select(&STAGES[..]),
        gates in prop::array::uniform3(select(&GATES[..])),
        signs in subsequence(EweSign::ALL.to_vec(), 0..5),
        onset in prop::option::of(select(&[Onset::Hours, Onset::Days][..])),
        tenths in prop::option::of(375_u32..=420),
        warm_twice in any::<bool>(),
        ketones in prop::option::of(0_u32..60),
        hours in prop::option::of(0_i64..80),
        others_aborted in 0_usize..4,
    ) -> ewe::Case {
        let [standing, eating, nothing_out] = gates;
        let temperature = tenths.map(|tenths| Temperature::from_celsius(f64::from(tenths) / 10.0));
        ewe::Case {
            stage, standing, eating, nothing_out, signs, onset,
            highest: temperature, lowest: temperature, warm_twice,
            ketones: ketones.map(|tenths| Ketones::from_millimoles(f64::from(tenths) / 10.0)),
            since_last_lamb: hours.map(TimeDelta::hours),
            others_aborted,
        }
    }
}

prop_compose! {
    fn lambs()(
        hours in prop::option::of(0_i64..2_000),
        cold in prop::option::of(0_i64..40),
        gates in prop::array::uniform3(select(&GATES[..])),
        signs in subsequence(LambSign::ALL.to_vec(), 0..5),
        tenths in prop::option::of(330_u32..=420),
        tent_seconds in prop::option::of(0_u8..20),
        on_bottle in any::<bool>(),
        hard_birth in any::<bool>(),
        chin_from_birth in any::<bool>(),
    ) -> lamb::Case {
        let [head_up, swallows, warm] = gates;
        lamb::Case {
            age: hours.map(TimeDelta::hours),
            first_seen_age: None,
            cold_since_age: cold.map(TimeDelta::hours),
            head_up, swallows, warm, signs,
            temperature: tenths.map(|tenths| Temperature::from_celsius(f64::from(tenths) / 10.0)),
            tent_seconds, chin_from_birth, on_bottle, hard_birth, others_dead: 0,
        }
    }
}

/// Both urgencies, now and at the next look.
fn of_ewe(case: &ewe::Case) -> (Urgency, Urgency) {
    let answer = ewe::decide(case);
    (answer.urgency, answer.no_better)
}

fn of_lamb(case: &lamb::Case) -> (Urgency, Urgency) {
    let answer = lamb::decide(case);
    (answer.urgency, answer.no_better)
}

fn no_less((now, later): (Urgency, Urgency), than: (Urgency, Urgency)) -> bool {
    now >= than.0 && (later >= than.1 || now == Urgency::Now)
}

/// Where nothing was named it is looked at again soon, for nobody knows what it is. The first sign says what it is, and a row that
/// is only watched has its own time, which may be longer: only these signs have one, and the vet is never put off by it.
fn names_what_is_watched<Row: Copy, Check>(without: &Answer<Row, Check>, with: &Answer<Row, Check>) -> bool {
    let watched = |answer: &Answer<Row, Check>| matches!(answer.urgency, Urgency::Watch(_));
    without.rows.is_empty() && watched(without) && watched(with) && with.no_better >= without.no_better
}

/// Where it was said that something is out and not what, saying what is the answer that was asked for.
fn names_what_is_out(case: &ewe::Case, sign: EweSign) -> bool {
    let named = case.signs.iter().any(|sign| ewe::OUT.contains(sign));
    case.nothing_out == Gate::Bad && !named && ewe::OUT.contains(&sign)
}

proptest! {
    #[test]
    fn one_sign_more_never_lowers_a_ewes_urgency(case in ewes(), sign in select(&EweSign::ALL[..])) {
        if sign.is_good_news() || names_what_is_out(&case, sign) {
            return Ok(());
        }
        let mut more = case.clone();
        more.signs.push(sign);
        let named = names_what_is_watched(&ewe::decide(&case), &ewe::decide(&more));
        prop_assert!(named || no_less(of_ewe(&more), of_ewe(&case)), "{sign:?} in {case:?}");
    }

    #[test]
    fn one_sign_more_never_lowers_a_lambs_urgency(case in lambs(), sign in select(&LambSign::ALL[..])) {
        if sign.is_good_news() {
            return Ok(());
        }
        let mut more = case.clone();
        more.signs.push(sign);
        let named = names_what_is_watched(&lamb::decide(&case), &lamb::decide(&more));
        prop_assert!(named || no_less(of_lamb(&more), of_lamb(&case)), "{sign:?} in {case:?}");
    }

    #[test]
    fn an_answer_left_empty_never_lowers_a_ewes_urgency(case in ewes()) {
        let asked = of_ewe(&case);
        let without = |change: fn(&mut ewe::Case)| {
            let mut less = case.clone();
            change(&mut less);
            less
        };
        // A stage, a count of hours and good news are what the answer was taken from; without them it is no milder.
        let empty = [
            without(|case| case.stage = EweStage::Unknown),
            without(|case| case.since_last_lamb = None),
            without(|case| case.signs.retain(|sign| !sign.is_good_news())),
        ];
        for less in empty {
            let out = less.signs.contains(&EweSign::SmoothOut);
            if case.signs.contains(&EweSign::WentBack) && !out && less.signs != case.signs {
                continue;
            }
            prop_assert!(no_less(of_ewe(&less), asked), "{less:?} for {case:?}");
        }
        // A good answer to what is asked first lowers nothing that is not asked for, and the worse answer is no milder.
        let gates: [fn(&mut ewe::Case) -> &mut Gate; 3] =
            [|case| &mut case.standing, |case| &mut case.eating, |case| &mut case.nothing_out];
        for gate in gates {
            let with = |answer: Gate| {
                let mut case = case.clone();
                *gate(&mut case) = answer;
                of_ewe(&case)
            };
            let all = GATES.map(with);
            prop_assert!(all.windows(2).all(|pair| no_less(pair[1], pair[0])), "{all:?} of {case:?}");
        }
    }

    #[test]
    fn an_answer_left_empty_never_lowers_a_lambs_urgency(case in lambs()) {
        let asked = of_lamb(&case);
        let mut less = case.clone();
        less.signs.retain(|sign| !sign.is_good_news());
        prop_assert!(no_less(of_lamb(&less), asked), "{less:?}");
        let mut less = case.clone();
        (less.age, less.cold_since_age) = (None, None);
        prop_assert!(no_less(of_lamb(&less), asked), "{less:?}");
        let gates: [fn(&mut lamb::Case) -> &mut Gate; 3] =
            [|case| &mut case.head_up, |case| &mut case.swallows, |case| &mut case.warm];
        for gate in gates {
            let with = |answer: Gate| {
                let mut case = case.clone();
                *gate(&mut case) = answer;
                of_lamb(&case)
            };
            let all = GATES.map(with);
            prop_assert!(all.windows(2).all(|pair| no_less(pair[1], pair[0])), "{all:?} of {case:?}");
        }
    }

    #[test]
    fn a_low_reading_or_a_normal_temperature_lowers_nothing(case in ewes(), reading in 0_u32..60) {
        let mut without = case.clone();
        (without.ketones, without.highest, without.lowest) = (None, None, None);
        let mut with = case;
        with.ketones = Some(Ketones::from_millimoles(f64::from(reading) / 10.0));
        prop_assert!(no_less(of_ewe(&with), of_ewe(&without)), "{with:?}");
    }

    #[test]
    fn a_lambs_normal_temperature_or_quick_tent_lowers_no_danger(case in lambs()) {
        let mut without = case.clone();
        without.temperature = None;
        prop_assert!(no_less(of_lamb(&case), of_lamb(&without)), "{case:?}");
        let mut quick = case.clone();
        quick.tent_seconds = Some(0);
        let mut unread = case;
        unread.tent_seconds = None;
        let scour_alone = lamb::decide(&unread).urgency <= Urgency::Today;
        prop_assert!(scour_alone || lamb::decide(&quick).urgency == Urgency::Now, "{quick:?}");
    }

    #[test]
    fn a_down_ewe_is_always_now(case in ewes(), down in select(&[Gate::Bad, Gate::CannotCheck][..])) {
        let case = ewe::Case { standing: down, ..case };
        let answer = ewe::decide(&case);
        prop_assert_eq!(answer.urgency, Urgency::Now);
        prop_assert!(!answer.rows.is_empty() && answer.nothing_by_mouth);
    }

    #[test]
    fn the_answer_is_the_most_urgent_of_its_rows(case in ewes(), lamb in lambs()) {
        let ewe = ewe::decide(&case);
        let lamb = lamb::decide(&lamb);
        prop_assert!(ewe.rows.iter().all(|found| found.urgency <= ewe.urgency));
        prop_assert!(lamb.rows.iter().all(|found| found.urgency <= lamb.urgency));
        if !ewe.rows.is_empty() {
            prop_assert!(ewe.rows.iter().any(|found| found.urgency == ewe.urgency), "{:?}", ewe);
        }
        prop_assert!(!matches!(ewe.urgency, Urgency::Watch(_)) || ewe.look.is_some());
    }
}

#[test]
fn each_sign_leads_to_a_row_in_every_stage_and_at_every_age() {
    // Source: ours.
    for sign in EweSign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
        for stage in STAGES {
            let case = ewe::Case { stage, signs: vec![sign], ..ewe::Case::default() };
            assert!(!ewe::decide(&case).rows.is_empty(), "{sign:?} in {stage:?}");
        }
    }
    for sign in LambSign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
        for age in [None, Some(0), Some(5), Some(30), Some(100), Some(600), Some(1_500)] {
            let age = age.map(TimeDelta::hours);
            let case = lamb::Case { age, signs: vec![sign], ..lamb::Case::default() };
            assert!(!lamb::decide(&case).rows.is_empty(), "{sign:?} at {age:?}");
        }
    }
}

#[test]
fn each_row_is_reached_by_some_sign() {
    // Source: ours.
    let mut ewe_rows: Vec<ewe::Row> = Vec::new();
    for stage in STAGES {
        for standing in GATES {
            for sign in EweSign::ALL {
                let case = ewe::Case { stage, standing, signs: vec![sign], ..ewe::Case::default() };
                ewe_rows.extend(ewe::decide(&case).rows.iter().map(|found| found.row));
            }
        }
    }
    for row in ewe::Row::ALL {
        assert!(ewe_rows.contains(&row), "{row:?}");
        assert!(!row.sources().is_empty(), "{row:?}");
    }
    let mut lamb_rows: Vec<lamb::Row> = lamb::found_dead(0).rows.iter().map(|found| found.row).collect();
    for hours in [1, 4, 30, 100, 600] {
        for warm in GATES {
            for sign in LambSign::ALL {
                let case = lamb::Case {
                    age: Some(TimeDelta::hours(hours)),
                    warm,
                    swallows: warm,
                    hard_birth: true,
                    temperature: (hours == 100).then(|| Temperature::from_celsius(40.8)),
                    signs: vec![sign],
                    ..lamb::Case::default()
                };
                lamb_rows.extend(lamb::decide(&case).rows.iter().map(|found| found.row));
            }
        }
    }
    for row in lamb::Row::ALL {
        assert!(lamb_rows.contains(&row), "{row:?}");
        assert!(!row.sources().is_empty(), "{row:?}");
    }
}

/// Every sign alone, added to a case in which none was named, whatever the gates, the age and the warmth.
#[test]
fn the_first_sign_lowers_nothing_but_the_time_of_a_row_that_is_only_watched() {
    let gates = |at: usize| [at, at / 4, at / 16].map(|at| GATES[at % GATES.len()]);
    let ages = [None, Some(0), Some(3), Some(12), Some(30), Some(90), Some(200), Some(600), Some(1_500)];
    let reads = [None, Some(36.0), Some(38.0), Some(39.5), Some(40.3)];
    let good: Vec<Vec<LambSign>> =
        LambSign::ALL.into_iter().filter(|sign| sign.is_good_news()).map(|sign| vec![sign]).collect();
    let mut of_lambs = BTreeSet::new();
    for ((age, read), at) in ages
        .into_iter()
        .flat_map(|age| reads.map(|read| (age, read)))
        .flat_map(|one| (0..64).map(move |at| (one, at)))
    {
        let [head_up, swallows, warm] = gates(at);
        for signs in std::iter::once(&Vec::new()).chain(&good) {
            let (age, temperature) = (age.map(TimeDelta::hours), read.map(Temperature::from_celsius));
            let case = lamb::Case {
                age,
                head_up,
                swallows,
                warm,
                temperature,
                signs: signs.clone(),
                ..lamb::Case::default()
            };
            for sign in LambSign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
                let mut more = case.clone();
                more.signs.push(sign);
                if !no_less(of_lamb(&more), of_lamb(&case)) {
                    assert!(
                        names_what_is_watched(&lamb::decide(&case), &lamb::decide(&more)),
                        "{sign:?} in {case:?}"
                    );
                    of_lambs.insert(format!("{sign:?}"));
                }
            }
        }
    }
    let mut of_ewes = BTreeSet::new();
    for (stage, at) in STAGES.into_iter().flat_map(|stage| (0..64).map(move |at| (stage, at))) {
        let [standing, eating, nothing_out] = gates(at);
        let case = ewe::Case { stage, standing, eating, nothing_out, ..ewe::Case::default() };
        for sign in
            EweSign::ALL.into_iter().filter(|sign| !sign.is_good_news() && !names_what_is_out(&case, *sign))
        {
            let mut more = case.clone();
            more.signs.push(sign);
            if !no_less(of_ewe(&more), of_ewe(&case)) {
                assert!(
                    names_what_is_watched(&ewe::decide(&case), &ewe::decide(&more)),
                    "{sign:?} in {case:?}"
                );
                of_ewes.insert(format!("{sign:?}"));
            }
        }
    }
    assert_eq!(Vec::from_iter(of_lambs), ["LidIn", "NoDung", "ScabsOnLips"]);
    assert_eq!(Vec::from_iter(of_ewes), ["Lame"]);
}
