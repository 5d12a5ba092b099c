//! Which of the farm's choices may be noted.

use yeanling_core::book::Event;
use yeanling_core::settings::{Choice, FreezerLife, RingDaysError, RingRule, Rings, WeaningRule};
use yeanling_core::units::{OutOfBounds, Strength};
use yeanling_core::watch::{Rejection, validate};

use crate::scribe::{Scribe, at};

fn choose(choice: Choice) -> Result<(), Rejection> {
    let scribe = Scribe::new(1);
    validate(&scribe.flock(), &scribe.book, &Event::Chose(choice), at(0), at(0))
}

#[test]
fn a_powder_rate_that_no_label_has_is_refused() {
    let rate = Strength::from_grams_per_liter;
    for grams in [100.0, 150.0, 300.0] {
        assert_eq!(choose(Choice::PowderRate(rate(grams))), Ok(()));
    }
    for grams in [0.0, 99.9, 300.1] {
        let out = OutOfBounds { given: rate(grams), allowed: Strength::ON_A_LABEL };
        assert_eq!(choose(Choice::PowderRate(rate(grams))), Err(Rejection::PowderRate(out)));
    }
}

#[test]
fn rings_end_neither_on_the_first_day_nor_after_six_months() {
    let rings = |rule| Choice::Rings(Rings { rule, tails: true, ram_lambs: true });
    for rule in
        [RingRule::NoRings, RingRule::EnglandWales, RingRule::Own { days: 2 }, RingRule::Own { days: 181 }]
    {
        assert_eq!(choose(rings(rule)), Ok(()), "{rule:?}");
    }
    for given in [0, 1, 182] {
        let error = RingDaysError { given, least: 2, most: 181 };
        assert_eq!(choose(rings(RingRule::Own { days: given })), Err(Rejection::Rings(error)));
    }
}

#[test]
fn a_choice_among_names_may_always_be_noted() {
    assert_eq!(choose(Choice::FreezerLife(FreezerLife::TwoYears)), Ok(()));
    assert_eq!(choose(Choice::WeaningRule(WeaningRule::FourWeeks)), Ok(()));
}
