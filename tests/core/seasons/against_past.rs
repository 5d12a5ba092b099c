//! What was lost and what ailed, against the flock's own past seasons.

use yeanling_core::book::{Animal, Cause, Event, Illness, LambId};
use yeanling_core::reckon::illness::{Ailment, ewe, lamb};
use yeanling_core::reckon::losses::Span;
use yeanling_core::seasons::{Against, AgainstPast, Rate, against_past, seasons};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign};
use yeanling_core::units::{Moment, TimeDelta};

use crate::scribe::{Scribe, night};

fn days(days: i64) -> Moment {
    night() + TimeDelta::days(days)
}

/// So many lambs of dams unknown, a year `years` after the first; so many of them die of cold at 30 hours.
fn born(scribe: &mut Scribe, years: i64, lambs: usize, cold: usize) -> Vec<LambId> {
    let at = days(365 * years);
    let all: Vec<LambId> = (0..lambs).map(|_| scribe.born(at, None)).collect();
    for lamb in &all[..cold] {
        let died = Event::Died { animal: Animal::Lamb(*lamb), cause: Cause::Cold };
        scribe.note(at + TimeDelta::hours(30), died);
    }
    all
}

fn latest(scribe: &Scribe, now: Moment) -> AgainstPast {
    let flock = scribe.flock();
    against_past(&flock, &seasons(&flock)[0], now)
}

const fn rate(count: u32, of: u32) -> Rate {
    Rate { count, of }
}

#[test]
fn losses_stand_against_all_seasons_before_and_of_their_age() {
    let mut scribe = Scribe::new(1);
    born(&mut scribe, 0, 20, 1);
    born(&mut scribe, 1, 20, 2);
    born(&mut scribe, 2, 40, 12);
    let against = latest(&scribe, days(365 * 2 + 200));
    assert_eq!((against.seasons, against.born), (2, (40, 40)));
    let [lost] = &against.losses[..] else { panic!("{against:?}") };
    assert_eq!((lost.span, lost.all), (Span::SecondDay, Against { season: rate(12, 40), past: rate(3, 40) }));
    assert_eq!(lost.causes, [(Cause::Cold, lost.all)]);
    // Source: Wilson's interval (1927): 12 of 40 is 0.181 to 0.454, 3 of 40 is 0.026 to 0.199: they meet.
    assert_eq!(lost.all.more(), None);
    assert_eq!(Against { season: rate(20, 40), past: rate(3, 40) }.more(), Some(true));
    assert_eq!(Against { season: rate(3, 40), past: rate(20, 40) }.more(), Some(false));
}

#[test]
fn of_too_few_nothing_stands_out() {
    let mut scribe = Scribe::new(1);
    born(&mut scribe, 0, 29, 0);
    born(&mut scribe, 1, 60, 60);
    let against = latest(&scribe, days(365 + 200));
    assert!(!against.losses[0].all.can_be_compared());
    assert_eq!(against.losses[0].all.more(), None, "29 are too few");
    let (_, flock) = ((), Scribe::new(2).flock());
    assert!(seasons(&flock).is_empty());
}

#[test]
fn a_season_that_goes_on_is_held_only_against_the_ages_it_has_passed_through() {
    let mut scribe = Scribe::new(1);
    born(&mut scribe, 0, 40, 2);
    let lambs = born(&mut scribe, 1, 40, 0);
    let now = days(365) + TimeDelta::hours(40);
    let died = Event::Died { animal: Animal::Lamb(lambs[0]), cause: Cause::Starved };
    scribe.note(days(365) + TimeDelta::hours(36), died);
    let against = latest(&scribe, now);
    let lost = &against.losses[0];
    assert_eq!(
        lost.all,
        Against { season: rate(1, 1), past: rate(2, 40) },
        "of the 39 it cannot be told yet"
    );
    assert_eq!(
        lost.causes.iter().map(|(cause, _)| *cause).collect::<Vec<_>>(),
        [Cause::Starved, Cause::Cold]
    );
}

#[test]
fn what_ailed_is_told_once_an_animal_at_its_first_age() {
    let mut scribe = Scribe::new(1);
    let before = born(&mut scribe, 0, 10, 0);
    let here = born(&mut scribe, 1, 10, 0);
    let seen = |lamb, signs: &[LambSign]| {
        let good = Gate::Good;
        let (head_up, swallows, warm) = (good, good, good);
        Event::Illness(Illness::LambSeen { lamb, head_up, swallows, warm, signs: signs.to_vec() })
    };
    scribe.note(days(6), seen(before[0], &[LambSign::HotJoint]));
    for (lamb, day) in [(here[0], 9), (here[0], 12), (here[1], 40)] {
        scribe.note(days(365 + day), seen(lamb, &[LambSign::HotJoint]));
    }
    let ewe = scribe.ewe(days(300), "14");
    scribe.born(days(366), Some(ewe));
    let udder = Illness::EweSeen {
        ewe,
        stage: EweStage::Milking,
        standing: Gate::Good,
        eating: Gate::Good,
        nothing_out: Gate::Good,
        signs: vec![EweSign::UdderHot],
        onset: None,
    };
    scribe.note(days(380), Event::Illness(udder));
    let ailments = latest(&scribe, days(365 + 60)).ailments;
    let told: Vec<_> = ailments.iter().map(|one| (one.ailment, one.all, one.ages.clone())).collect();
    let ages = vec![(Span::FourWeeks, 1), (Span::ToWeaning, 1)];
    assert_eq!(
        told,
        [
            (Ailment::Lamb(lamb::Row::Joint), Against { season: rate(2, 11), past: rate(1, 10) }, ages),
            (Ailment::Ewe(ewe::Row::UdderHot), Against { season: rate(1, 1), past: rate(0, 0) }, vec![]),
        ]
    );
}
