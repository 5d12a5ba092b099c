//! One more entry told to a flock that stands gives what the fold gives; where it might not, it is not told so.

use proptest::prelude::*;
use yeanling_core::book::{Animal, Book, Cause, Entry, Event, Life, Part, Ring, Sex, Sign};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::{Moment, TimeDelta};

use crate::book::arbitrary::{config, entries};
use crate::scribe::{Scribe, at, kg, night};

/// Tells a flock an entry after another; where it does not learn one it is folded anew, as the app does.
fn tell_all(noted: Vec<Entry>) -> Result<(), TestCaseError> {
    let (mut book, mut flock) = (Book::default(), Flock::default());
    for entry in noted {
        let before = flock.clone();
        let learned = flock.apply(&entry);
        book.add(entry.clone());
        if learned {
            prop_assert_eq!(&flock, &fold(&book), "{:?}", entry.event);
        } else {
            prop_assert_eq!(&flock, &before, "a flock that does not learn stays as it was");
            flock = fold(&book);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(config(1000))]

    #[test]
    fn what_is_noted_in_turn_is_learned_as_it_is_folded(
        mut noted in entries(), ties in prop::collection::vec(any::<bool>(), 10)
    ) {
        let mut now = night();
        for (entry, tie) in noted.iter_mut().zip(ties) {
            now = now + TimeDelta::hours(1);
            entry.noted = now;
            entry.at = if tie { night() + TimeDelta::days(1) } else { now };
        }
        tell_all(noted)?;
    }

    #[test]
    fn what_comes_in_any_order_is_learned_as_it_is_folded(noted in entries()) {
        tell_all(noted)?;
    }

    #[test]
    fn lambs_that_come_in_turn_are_learned_as_they_are_folded(
        births in prop::collection::vec((0..3_usize, 0..200_i64, any::<bool>()), 1..12)
    ) {
        let mut scribe = Scribe::new(1);
        let dams = ["1", "2"].map(|tag| scribe.ewe(at(-600), tag));
        let mut now = night();
        for (dam, hours, alive) in births {
            now = now + TimeDelta::hours(hours);
            let dam = dams.get(dam).copied();
            scribe.note(now, Event::LambBorn { dam, beside: None, sex: Some(Sex::Ewe), alive });
        }
        let mut noted: Vec<Entry> = scribe.book.entries().cloned().collect();
        noted.sort_unstable_by_key(|entry| entry.noted);
        let mut flock = Flock::default();
        prop_assert!(noted.iter().all(|entry| flock.apply(entry)), "each came after the last");
        prop_assert_eq!(flock, scribe.flock());
    }
}

#[track_caller]
fn check(learned: bool, event: impl FnOnce(&mut Scribe) -> (Moment, Event)) {
    let mut scribe = Scribe::new(1);
    let dam = scribe.ewe(at(-600), "40");
    scribe.born(at(0), Some(dam));
    let (when, event) = event(&mut scribe);
    let mut flock = scribe.flock();
    let id = scribe.note(when, event);
    let entry = scribe.book.entry(id).expect("it was noted");
    assert_eq!(flock.apply(entry), learned, "{:?}", entry.event);
    if learned {
        assert_eq!(flock, scribe.flock());
    }
}

#[test]
fn a_tap_at_the_lamb_or_its_ewe_is_learned() {
    let lamb = |scribe: &Scribe| *scribe.flock().lambs.keys().next().expect("a lamb");
    let ewe = |scribe: &Scribe| *scribe.flock().ewes.keys().next().expect("a ewe");
    check(true, |scribe| (at(5), Event::Stood { lamb: lamb(scribe) }));
    check(true, |scribe| (at(5), Event::Sucked { lamb: lamb(scribe) }));
    check(true, |scribe| (at(5), Event::NavelDipped { lamb: lamb(scribe) }));
    check(true, |scribe| (at(5), Event::Weighed { lamb: lamb(scribe), mass: kg(4.1) }));
    check(true, |scribe| (at(5), Event::Ringed { lamb: lamb(scribe), ring: Ring::Tail }));
    check(true, |scribe| (at(5), Event::Tagged { animal: Animal::Lamb(lamb(scribe)), tag: "7".to_owned() }));
    check(true, |scribe| (at(5), Event::Died { animal: Animal::Ewe(ewe(scribe)), cause: Cause::Unknown }));
    check(true, |scribe| (at(5), Event::SignSeen { ewe: ewe(scribe), sign: Sign::Restless }));
    check(true, |scribe| (at(5), Event::PartShowing { ewe: ewe(scribe), part: Part::ForeFeet }));
    check(true, |scribe| (at(5), Event::AllBorn { lamb: lamb(scribe) }));
    check(true, |scribe| {
        let dam = Some(ewe(scribe));
        (at(5), Event::LambBorn { dam, beside: None, sex: None, alive: true })
    });
    check(true, |_| (at(5), Event::EweCame { tag: Some("41".to_owned()) }));
}

#[test]
fn what_came_earlier_or_reads_otherwise_what_was_is_folded() {
    let lamb = |scribe: &Scribe| *scribe.flock().lambs.keys().next().expect("a lamb");
    check(false, |scribe| (at(-5), Event::Stood { lamb: lamb(scribe) }));
    check(false, |scribe| {
        let entry = scribe.note(at(2), Event::Stood { lamb: lamb(scribe) });
        (at(5), Event::Deleted { entry })
    });
    check(false, |scribe| (at(5), Event::Life(Life::KeptAsEwe { lamb: lamb(scribe) })));
    check(false, |scribe| {
        let other = scribe.ewe(at(3), "41");
        (at(5), Event::DamGiven { lamb: lamb(scribe), dam: other })
    });
}

#[test]
fn what_a_correction_waits_for_is_folded() {
    let mut late = Scribe::new(2);
    let ewe = late.ewe(at(0), "40");
    let bag = late.note_when(at(9), at(-1), Event::WaterBagSeen { ewe });
    let struck = late.strike(at(10), bag);
    let mut scribe = Scribe::new(1);
    let others = late.book.entries().filter(|entry| entry.id != bag).cloned();
    scribe.book.union(others);
    let entry = late.book.entry(bag).expect("it was noted");
    assert!(!scribe.flock().apply(entry), "it was taken back before it came");
    scribe.meet(&late);
    assert_eq!(scribe.flock().lines.iter().filter(|line| line.struck).count(), 1, "{struck}");
}

#[test]
fn a_tap_is_learned_though_another_phone_lived_in_2099() {
    let far = || "2099-03-14T03:00:00.000-05:00".parse().expect("a moment");
    let mut other = Scribe::new(2);
    let ewe = other.ewe(far(), "99");
    other.born(far(), Some(ewe));
    let mut scribe = Scribe::new(1);
    let dam = scribe.ewe(at(-600), "40");
    let lamb = scribe.born(at(0), Some(dam));
    scribe.meet(&other);
    let mut flock = scribe.flock();
    for (minutes, event) in [
        (5, Event::Stood { lamb }),
        (6, Event::Weighed { lamb, mass: kg(4.1) }),
        (7, Event::SignSeen { ewe: dam, sign: Sign::Restless }),
        (8, Event::LambBorn { dam: Some(dam), beside: None, sex: Some(Sex::Ram), alive: true }),
        (9, Event::AllBorn { lamb }),
        (10, Event::EweCame { tag: Some("41".to_owned()) }),
        (11, Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown }),
    ] {
        let id = scribe.note(at(minutes), event);
        let entry = scribe.book.entry(id).expect("it was noted");
        assert!(flock.apply(entry), "{:?} needs no fold", entry.event);
        assert_eq!(flock, scribe.flock(), "{:?}", entry.event);
    }
}
