//! Whole nights as they happen, thousands of them, each step held against what must never be otherwise.
//!
//! A night that breaks a law is made as short as it can be and told in words. `YEANLING_CASES` says how many nights are
//! played, over all; `cargo xtask soak` plays a million.

mod barn;
pub(crate) mod chance;
mod event;
mod laws;
mod model;
mod step;
mod story;

use barn::play;
use step::{About, Step, night};
use story::Story;

/// How many nights are played, over all, where nobody asks for more.
const NIGHTS: u64 = 100_000;
/// The nights are played in so many parts, one a test, so that they run beside each other.
const PARTS: u64 = 8;
/// One night in so many is also folded anew, and each of its worse signs held against the hours that follow; every one
/// where someone asks how many are played.
const THOROUGH: u64 = 16;

#[track_caller]
fn nights(about: About, half: u64) {
    let asked: Option<u64> = std::env::var("YEANLING_CASES").ok().and_then(|cases| cases.parse().ok());
    let each = asked.unwrap_or(NIGHTS).div_ceil(PARTS);
    let every = if asked.is_some() { 1 } else { THOROUGH };
    for seed in half * each..(half + 1) * each {
        let steps = night(about, seed);
        let thorough = seed % every == 0;
        if let Err(broken) = play(&steps, thorough, &mut Story::default()) {
            let steps = shortest(steps, broken.law, thorough);
            let mut story = Story::written();
            let told = play(&steps, thorough, &mut story).err().map(|broken| broken.told);
            panic!(
                "{}\n{}\n{}\n({about:?}, night {seed})",
                broken.law,
                story.told(),
                told.unwrap_or(broken.told)
            );
        }
    }
}

/// Takes steps out of a night, and makes what is left simpler, for as long as it breaks the same law.
fn shortest(mut steps: Vec<Step>, law: &str, thorough: bool) -> Vec<Step> {
    let breaks =
        |steps: &[Step]| play(steps, thorough, &mut Story::default()).is_err_and(|broken| broken.law == law);
    loop {
        let before = steps.clone();
        for place in (0..steps.len()).rev() {
            let mut fewer = steps.clone();
            let taken = fewer.remove(place);
            if breaks(&fewer) {
                steps = fewer;
                continue;
            }
            // Its time may matter where it does not.
            if let Some(next) = fewer.get_mut(place) {
                next.wait += taken.wait;
            }
            if breaks(&fewer) {
                steps = fewer;
            }
        }
        for place in 0..steps.len() {
            let step = steps[place];
            let minute = step.wait / 60 * 60;
            let simpler = [
                Step { wait: 60, ..step },
                Step { wait: minute / 60 * 60 + 60, ..step },
                Step { wait: minute / 3600 * 3600, ..step },
                Step { wait: minute / 600 * 600, ..step },
                Step { wait: minute, ..step },
                Step { ago: 0, ..step },
                Step { second: false, ..step },
            ];
            for simpler in simpler {
                let is_simpler = simpler.wait < steps[place].wait || simpler.wait == step.wait;
                let mut other = steps.clone();
                other[place] = Step { wait: simpler.wait.min(steps[place].wait), ..simpler };
                if is_simpler && other != steps && breaks(&other) {
                    steps = other;
                    break;
                }
            }
        }
        if steps == before {
            return steps;
        }
    }
}

#[test]
fn each_law_has_much_to_judge() {
    for about in [About::Labor, About::Cold, About::Bottle, About::Barn] {
        for seed in 0..200 {
            assert!(play(&night(about, seed), seed % 4 == 0, &mut Story::default()).is_ok());
        }
    }
    for (law, times) in laws::judged() {
        assert!(times >= 20, "{law:?} had {times} times something to judge");
    }
}

#[test]
fn a_ewe_in_labor_is_watched_by_the_laws() {
    nights(About::Labor, 0);
}

#[test]
fn a_ewe_in_labor_is_watched_by_the_laws_on_other_nights() {
    nights(About::Labor, 1);
}

#[test]
fn a_cold_or_failing_lamb_is_watched_by_the_laws() {
    nights(About::Cold, 0);
}

#[test]
fn a_cold_or_failing_lamb_is_watched_by_the_laws_on_other_nights() {
    nights(About::Cold, 1);
}

#[test]
fn a_lamb_on_the_bottle_is_watched_by_the_laws() {
    nights(About::Bottle, 0);
}

#[test]
fn a_lamb_on_the_bottle_is_watched_by_the_laws_on_other_nights() {
    nights(About::Bottle, 1);
}

#[test]
fn a_barn_with_two_phones_is_watched_by_the_laws() {
    nights(About::Barn, 0);
}

#[test]
fn a_barn_with_two_phones_is_watched_by_the_laws_on_other_nights() {
    nights(About::Barn, 1);
}
