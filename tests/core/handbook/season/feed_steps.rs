//! How a new feed is brought in.

use yeanling_core::reckon::season::feed_steps::{Caution, EVERY_DAYS, OVER_DAYS, STEPS, Steps};

use super::near;
use crate::handbook::kg;

#[test]
fn a_hundred_grams_more_every_second_day() {
    // Source: ours, 100,100,200,200,300,300,400,400,500,500,600…
    let steps = Steps::new(kg(0.1), 2, kg(0.6)).expect("in bounds");
    let grams = [100.0, 100.0, 200.0, 200.0, 300.0, 300.0, 400.0, 400.0, 500.0, 500.0, 600.0, 600.0, 600.0];
    for (day, grams) in (0..).zip(grams) {
        near(steps.on_day(day).as_kilograms() * 1000.0, grams, 1e-9);
    }
    near(steps.on_day(-1).as_kilograms(), 0.0, 0.0);
    near(steps.on_day(400).as_kilograms(), 0.6, 1e-12);
    near(steps.together(13).as_kilograms(), 4.8, 1e-9);
    assert_eq!((steps.days_to_whole(), steps, steps.caution()), (10, Steps::default(), None));
    assert_eq!(steps.all().len(), 6);
}

#[test]
fn steps_are_small_and_seldom() {
    // Source: memory (50 to 100 g every 2 to 3 d over 10 to 14 d).
    assert_eq!((STEPS, EVERY_DAYS, OVER_DAYS), ((kg(0.05), kg(0.1)), (2, 3), (10, 14)));
    let caution = |step, every| Steps::new(kg(step), every, kg(0.6)).expect("in bounds").caution();
    assert_eq!(caution(0.05, 3), None);
    assert_eq!(caution(0.15, 2), Some(Caution::Fast));
    assert_eq!(caution(0.1, 1), Some(Caution::Fast));
}

#[test]
fn the_last_step_is_cut_to_what_is_wanted() {
    // Source: ours.
    let steps = Steps::new(kg(0.1), 3, kg(0.25)).expect("in bounds");
    let all: Vec<(i64, f64)> = steps.all().iter().map(|(day, mass)| (*day, mass.as_kilograms())).collect();
    assert_eq!(all.len(), 3);
    near(all[2].1, 0.25, 1e-12);
    assert_eq!(all[2].0, 6);
    assert_eq!(Steps::new(kg(0.1), 2, kg(0.05)).expect("in bounds").days_to_whole(), 0);
}

#[test]
fn leaps_are_refused() {
    // Source: ours.
    for (step, every, to) in [(0.5, 2, 0.6), (0.0, 2, 0.6), (0.1, 0, 0.6), (0.1, 8, 0.6), (0.1, 2, 16.0)] {
        assert!(Steps::new(kg(step), every, kg(to)).is_err(), "{step} {every} {to}");
    }
}
