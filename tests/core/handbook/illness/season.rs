//! Not everything may be red: over the worked cases and made-up seasons of 60 ewes at published rates of illness at most a
//! third of all answers are "now".
//!
//! A rate is so many animals in a thousand over one lambing, each with its source or its mark; how grave it is when it is first
//! seen is ours. `YEANLING_CASES` says how many seasons; `cargo xtask soak` prints what came of a thousand.

use std::io::{Write, stdout};

use yeanling_core::reckon::illness::{Urgency, ewe, lamb};
use yeanling_core::terms::{EweSign as E, EweStage as Stage, Gate, LambSign as L, Onset};
use yeanling_core::units::{Ketones, Temperature, TimeDelta};

use crate::nights::chance::Chance;

/// How many seasons are made up where nobody asks for more.
const SEASONS: u64 = 20;
const EWES: u32 = 60;
/// Lambs born alive by 60 ewes: 1.7 each (ours, between the printed 1.6 and 1.75 of flocks kept indoors).
const LAMBS: u32 = 102;

/// How it is when it is first seen, and in how many of a hundred.
type Seen<T> = &'static [(u32, fn() -> T)];

fn hours(hours: i64) -> TimeDelta {
    TimeDelta::hours(hours)
}

/// She stands, eats, and nothing is out.
fn up(stage: Stage, signs: &[E]) -> ewe::Case {
    let good = Gate::Good;
    let (standing, eating, nothing_out) = (good, good, good);
    ewe::Case { stage, standing, eating, nothing_out, signs: signs.to_vec(), ..ewe::Case::default() }
}

/// The same off her feed.
fn off_feed(stage: Stage, signs: &[E]) -> ewe::Case {
    ewe::Case { eating: Gate::Bad, ..up(stage, signs) }
}

/// The same down for hours.
fn down(stage: Stage) -> ewe::Case {
    ewe::Case { standing: Gate::Bad, onset: Some(Onset::Hours), ..off_feed(stage, &[]) }
}

/// Its head is up, it sucks and is warm.
fn bright(age: TimeDelta, signs: &[L]) -> lamb::Case {
    let good = Gate::Good;
    let (head_up, swallows, warm) = (good, good, good);
    lamb::Case { age: Some(age), head_up, swallows, warm, signs: signs.to_vec(), ..lamb::Case::default() }
}

/// The same and does not suck.
fn no_suck(age: TimeDelta, signs: &[L]) -> lamb::Case {
    lamb::Case { swallows: Gate::Bad, ..bright(age, signs) }
}

const LATE: Stage = Stage::LateInLamb;
const AFTER: Stage = Stage::AfterLambing;
const MILKING: Stage = Stage::Milking;
const DAY: i64 = 24;

/// What ails a thousand ewes over one lambing.
const OF_EWES: [(u32, &str, Seen<ewe::Case>); 14] = [
    (50, "lame: memory", &[(80, || up(MILKING, &[E::Lame])), (20, || up(MILKING, &[E::NoWeightOnLeg]))]),
    (
        10,
        "vagina out: NADIS, about 1%",
        &[
            (50, || ewe::Case { nothing_out: Gate::Bad, ..up(LATE, &[E::SmoothOut, E::WentBack]) }),
            (50, || ewe::Case { nothing_out: Gate::Bad, ..up(LATE, &[E::SmoothOut]) }),
        ],
    ),
    (
        12,
        "afterbirth kept: 1.2% of 7,660, Greece",
        &[
            (90, || ewe::Case { since_last_lamb: Some(hours(13)), ..up(AFTER, &[E::AfterbirthHangs]) }),
            (10, || ewe::Case { since_last_lamb: Some(hours(13)), ..off_feed(AFTER, &[E::AfterbirthHangs]) }),
        ],
    ),
    (
        20,
        "toxemia: memory",
        &[
            (60, || ewe::Case { onset: Some(Onset::Days), ..up(LATE, &[E::KeepsApart, E::Sees]) }),
            (40, || ewe::Case { onset: Some(Onset::Days), ..off_feed(LATE, &[E::KeepsApart]) }),
        ],
    ),
    (10, "low calcium: memory", &[(100, || down(LATE))]),
    (
        30,
        "mastitis: memory",
        &[
            (60, || up(MILKING, &[E::UdderHot])),
            (20, || off_feed(MILKING, &[E::UdderHot])),
            (20, || up(MILKING, &[E::UdderCold])),
        ],
    ),
    (15, "no milk or firm: memory", &[(100, || up(AFTER, &[E::UdderFirm]))]),
    (
        20,
        "womb infection: memory",
        &[(70, || up(AFTER, &[E::FoulDischarge])), (30, || off_feed(AFTER, &[E::FoulDischarge]))],
    ),
    (
        10,
        "cough: memory",
        &[(75, || up(MILKING, &[E::Coughs])), (25, || off_feed(MILKING, &[E::Coughs, E::Dull]))],
    ),
    (20, "abortion: memory", &[(100, || up(LATE, &[E::Aborted]))]),
    (
        40,
        "off feed, nothing else: memory",
        &[(60, || off_feed(AFTER, &[])), (40, || off_feed(MILKING, &[E::Dull]))],
    ),
    (10, "cast: memory", &[(90, || up(LATE, &[E::OnBack])), (10, || down(LATE))]),
    (20, "pale or swollen jaw: memory", &[(100, || up(MILKING, &[E::PaleEyelids]))]),
    (
        5,
        "womb out, listeria, fits: memory",
        &[
            (40, || ewe::Case { nothing_out: Gate::Bad, ..up(AFTER, &[E::RawOut]) }),
            (60, || off_feed(LATE, &[E::FaceOneSided])),
        ],
    ),
];

/// What ails a thousand lambs born alive until they are weaned.
const OF_LAMBS: [(u32, &str, Seen<lamb::Case>); 15] = [
    (80, "hungry: memory", &[(100, || bright(hours(20), &[L::Hunched, L::HollowBelly]))]),
    (
        50,
        "cold up to 5 h: memory",
        &[
            (70, || lamb::Case { warm: Gate::Bad, ..bright(hours(3), &[]) }),
            (30, || lamb::Case { warm: Gate::Bad, ..no_suck(hours(3), &[]) }),
        ],
    ),
    (20, "cold over 5 h: memory", &[(100, || lamb::Case { warm: Gate::Bad, ..bright(hours(DAY), &[]) })]),
    (20, "watery mouth: memory", &[(100, || bright(hours(26), &[L::Dull, L::WetChin]))]),
    (
        60,
        "scour: memory",
        &[
            (70, || lamb::Case {
                tent_seconds: Some(1),
                ..bright(hours(7 * DAY), &[L::WateryScour, L::Lively])
            }),
            (20, || bright(hours(7 * DAY), &[L::WateryScour, L::Dull])),
            (10, || lamb::Case { tent_seconds: Some(8), ..bright(hours(7 * DAY), &[L::WateryScour]) }),
        ],
    ),
    (
        20,
        "joint ill: memory",
        &[(75, || bright(hours(9 * DAY), &[L::HotJoint])), (25, || no_suck(hours(9 * DAY), &[L::HotJoint]))],
    ),
    (
        15,
        "navel ill: memory",
        &[
            (75, || bright(hours(5 * DAY), &[L::ThickNavel])),
            (25, || bright(hours(5 * DAY), &[L::ThickNavel, L::Dull])),
        ],
    ),
    (
        40,
        "lid turned in: memory",
        &[
            (90, || bright(hours(2 * DAY), &[L::LidIn, L::EyeClear])),
            (10, || bright(hours(3 * DAY), &[L::CloudyEye])),
        ],
    ),
    (
        20,
        "cough: memory",
        &[
            (75, || bright(hours(30 * DAY), &[L::CoughsOften])),
            (25, || no_suck(hours(30 * DAY), &[L::BreathesFast])),
        ],
    ),
    (
        20,
        "orf: memory",
        &[
            (90, || bright(hours(20 * DAY), &[L::ScabsOnLips])),
            (10, || no_suck(hours(20 * DAY), &[L::ScabsOnLips])),
        ],
    ),
    (
        15,
        "a leg: memory",
        &[(80, || bright(hours(8 * DAY), &[L::Limps])), (20, || bright(hours(2 * DAY), &[L::LegDangles]))],
    ),
    (
        30,
        "dull: memory",
        &[(70, || bright(hours(36), &[L::Dull])), (30, || bright(hours(9 * DAY), &[L::Dull]))],
    ),
    (
        30,
        "coccidia: memory",
        &[
            (80, || bright(hours(35 * DAY), &[L::DarkStraining])),
            (20, || bright(hours(35 * DAY), &[L::BloodInDung, L::Dull])),
        ],
    ),
    (5, "stiff: memory", &[(100, || bright(hours(35 * DAY), &[L::StiffLegs]))]),
    (
        10,
        "wounds: memory",
        &[(80, || bright(hours(10 * DAY), &[L::Wound])), (20, || bright(hours(10 * DAY), &[L::DeepWound]))],
    ),
];

/// The worked cases, each with what it must say: so that the share counts the same answers as they are tested for.
fn worked() -> Vec<Urgency> {
    let ketones = |millimoles| Some(Ketones::from_millimoles(millimoles));
    let fever = Some(Temperature::from_celsius(40.8));
    let apart =
        ewe::Case { onset: Some(Onset::Days), ketones: ketones(1.4), ..up(LATE, &[E::KeepsApart, E::Sees]) };
    let ewes = [
        ewe::Case { ketones: ketones(0.6), ..down(LATE) },
        apart.clone(),
        ewe::Case { ketones: ketones(4.1), signs: vec![E::KeepsApart, E::Blind], ..apart },
        ewe::Case { nothing_out: Gate::Bad, ..up(LATE, &[E::SmoothOut, E::WentBack]) },
        ewe::Case { nothing_out: Gate::Bad, ..up(AFTER, &[E::RawOut]) },
        ewe::Case { since_last_lamb: Some(hours(14)), ..up(AFTER, &[E::AfterbirthHangs]) },
        ewe::Case { highest: fever, ..up(AFTER, &[E::FoulDischarge]) },
        up(MILKING, &[E::UdderCold, E::Lame]),
        up(MILKING, &[E::Stiff, E::Twitches]),
        ewe::Case { others_aborted: 1, ..up(LATE, &[E::Aborted]) },
    ];
    let cold = |case: lamb::Case| lamb::Case { warm: Gate::Bad, ..case };
    let scours = |seconds| lamb::Case {
        tent_seconds: Some(seconds),
        ..bright(hours(7 * DAY), &[L::WateryScour, L::Lively])
    };
    let lambs = [
        cold(bright(hours(4), &[])),
        cold(no_suck(hours(4), &[])),
        cold(no_suck(hours(30), &[])),
        bright(hours(26), &[L::WetChin, L::TightBelly]),
        lamb::Case { on_bottle: true, ..bright(hours(21 * DAY), &[L::TightBelly, L::Dull]) },
        scours(1),
        scours(8),
        bright(hours(9 * DAY), &[L::HotJoint]),
        bright(hours(35 * DAY), &[L::BloodInDung, L::Dull]),
        bright(hours(2 * DAY), &[L::LidIn, L::EyeClear]),
    ];
    let dead = lamb::found_dead(0).urgency;
    let ewes = ewes.iter().map(|case| ewe::decide(case).urgency);
    ewes.chain(lambs.iter().map(|case| lamb::decide(case).urgency)).chain([dead]).collect()
}

/// Who is ill in one season, each once for what ails it.
fn season(seed: u64) -> Vec<Urgency> {
    let mut chance = Chance::new(seed);
    let mut all = Vec::new();
    for _ in 0..EWES {
        for (rate, _, seen) in OF_EWES {
            all.extend(draw(&mut chance, rate, seen).map(|case| ewe::decide(&case).urgency));
        }
    }
    for _ in 0..LAMBS {
        for (rate, _, seen) in OF_LAMBS {
            all.extend(draw(&mut chance, rate, seen).map(|case| lamb::decide(&case).urgency));
        }
    }
    all
}

fn draw<T>(chance: &mut Chance, rate: u32, seen: Seen<T>) -> Option<T> {
    if chance.below(1000) >= rate {
        return None;
    }
    let mut left = chance.below(100);
    for (share, case) in seen {
        if left < *share {
            return Some(case());
        }
        left -= share;
    }
    None
}

fn now(all: &[Urgency]) -> usize {
    all.iter().filter(|urgency| **urgency == Urgency::Now).count()
}

#[test]
fn at_most_a_third_of_all_answers_are_now() {
    for (_, source, seen) in OF_EWES {
        assert_eq!(seen.iter().map(|(share, _)| share).sum::<u32>(), 100, "{source}");
    }
    for (_, source, seen) in OF_LAMBS {
        assert_eq!(seen.iter().map(|(share, _)| share).sum::<u32>(), 100, "{source}");
    }
    let asked: Option<u64> = std::env::var("YEANLING_CASES").ok().and_then(|cases| cases.parse().ok());
    let seasons = asked.unwrap_or(SEASONS);
    let worked = worked();
    assert_eq!((worked.len(), now(&worked)), (21, 13), "those of the worked cases that are now");
    let (mut answers, mut red) = (0, 0);
    for seed in 0..seasons {
        let one = season(seed);
        answers += one.len() + worked.len();
        red += now(&one) + now(&worked);
    }
    let percent = 100.0 * f64::from(u32::try_from(red).unwrap_or(u32::MAX))
        / f64::from(u32::try_from(answers).unwrap_or(1));
    if asked.is_some() {
        let per_season = answers / usize::try_from(seasons).unwrap_or(1);
        writeln!(stdout(), "illness_now_share {percent:.1} percent of {per_season} answers a season").ok();
    }
    // A season in which nobody is ill, or none is grave, proves nothing.
    assert!(answers > 50 && red * 10 > answers, "{red} of {answers}");
    assert!(red * 3 <= answers, "{red} of {answers} answers are now: {percent:.1}%");
}
