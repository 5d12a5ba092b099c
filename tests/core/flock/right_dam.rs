//! A lamb that was given to the wrong ewe is put right with all that hangs on it, and that can be taken back.

use yeanling_core::book::{Animal, EntryId, Event, EweId, Found, LambId, Sign};
use yeanling_core::flock::{Flock, GoesAlong, Saw};

use crate::scribe::{Scribe, at, birth, eased, hour};

const ALL: GoesAlong = GoesAlong { litter: true, noted: true };

/// A night as it was lived, noted of this ewe: the ids are the same whoever she is.
fn lived(by: fn(EweId, EweId) -> EweId) -> (Scribe, EweId, EweId, [LambId; 2]) {
    let mut scribe = Scribe::new(1);
    let (one, other) = (scribe.ewe(at(-90), "14"), scribe.ewe(at(-89), "41"));
    let ewe = by(one, other);
    scribe.note(at(-60), Event::SignSeen { ewe, sign: Sign::Restless });
    scribe.note(at(-30), Event::WaterBagSeen { ewe });
    scribe.note(at(-20), Event::StrainingSeen { ewe });
    scribe.note(at(-10), Event::HandChecked { ewe, found: Found::NothingYet });
    scribe.note(at(-5), Event::HelpBegun { ewe });
    scribe.note(at(-4), Event::VetCalled { animal: Animal::Ewe(ewe) });
    let first = scribe.born(at(0), Some(ewe));
    let second = scribe.note(at(9), birth(Some(ewe), Some(first))).as_lamb();
    scribe.note(at(10), eased(second));
    scribe.note(at(12), Event::AllBorn { lamb: first });
    let pen = scribe.note(at(13), Event::PenMade { name: "1".to_owned(), size: None }).as_pen();
    scribe.note(at(14), Event::PutInPen { animal: Animal::Ewe(ewe), pen });
    scribe.note(at(90), Event::AfterbirthPassed { ewe });
    (scribe, one, other, [first, second])
}

/// Notes corrections together, and returns them.
fn take(scribe: &mut Scribe, corrections: Vec<Event>) -> Vec<EntryId> {
    corrections.into_iter().map(|event| scribe.note(hour(3), event)).collect()
}

/// What two books say of their animals, whatever they call their entries.
#[track_caller]
fn alike(one: &Flock, other: &Flock) {
    assert_eq!(one.lambs, other.lambs);
    assert_eq!(one.litters, other.litters);
    assert_eq!(one.ewes, other.ewes);
    assert_eq!(one.at_work, other.at_work);
    for ewe in one.ewes.keys() {
        assert_eq!(one.pen_of(Animal::Ewe(*ewe)), other.pen_of(Animal::Ewe(*ewe)));
        assert_eq!(one.litters_of(*ewe), other.litters_of(*ewe));
    }
    for lamb in one.lambs.keys() {
        assert_eq!(one.pen_of(Animal::Lamb(*lamb)), other.pen_of(Animal::Lamb(*lamb)));
    }
}

#[test]
fn what_was_put_right_reads_as_if_it_had_been_noted_right() {
    let (mut scribe, _, right, [first, second]) = lived(|one, _| one);
    let (as_it_was, ..) = lived(|_, other| other);
    for lamb in [first, second] {
        let mut scribe = scribe.clone();
        let corrections = scribe.flock().given_to(lamb, right, ALL);
        take(&mut scribe, corrections);
        alike(&scribe.flock(), &as_it_was.flock());
    }
    let corrections = scribe.flock().given_to(first, right, ALL);
    assert!(corrections.iter().all(|event| matches!(event, Event::Amended { .. })));
    take(&mut scribe, corrections);
    assert_eq!(scribe.flock().given_to(first, right, ALL), Vec::new(), "it is hers now");
}

#[test]
fn taken_back_together_it_leaves_everything_as_it_was() {
    let (mut scribe, _, right, [first, second]) = lived(|one, _| one);
    let before = scribe.flock();
    for along in [ALL, GoesAlong { litter: true, noted: false }, GoesAlong::default()] {
        for lamb in [first, second] {
            let corrections = scribe.flock().given_to(lamb, right, along);
            assert!(!corrections.is_empty());
            for entry in take(&mut scribe, corrections) {
                scribe.strike(hour(4), entry);
            }
            alike(&scribe.flock(), &before);
        }
    }
}

#[test]
fn one_lamb_of_a_litter_can_go_alone_and_all_stay_born_for_the_others() {
    for place in [0, 1] {
        let (mut scribe, wrong, right, lambs) = lived(|one, _| one);
        let (goes, stays) = (lambs[place], lambs[1 - place]);
        let corrections = scribe.flock().given_to(goes, right, GoesAlong::default());
        take(&mut scribe, corrections);
        let flock = scribe.flock();
        assert_eq!(flock.lamb(goes).and_then(|lamb| lamb.dam), Some(right));
        assert_eq!(flock.lamb(stays).and_then(|lamb| lamb.dam), Some(wrong));
        assert_eq!(flock.litter_of(goes).map(|litter| litter.lambs.clone()), Some(vec![goes]));
        let left = flock.litter_of(stays).expect("it is here");
        assert_eq!((left.lambs.clone(), left.all_born), (vec![stays], Some(at(12))));
        assert_eq!(
            flock.ewe(right).map(|ewe| ewe.seen.len()),
            Some(0),
            "what was noted of the ewe stays hers"
        );
        assert_eq!(flock.ewe(wrong).map(|ewe| ewe.seen.len()), Some(7));
    }
}

#[test]
fn of_a_litter_without_a_dam_one_lamb_can_be_given_to_her() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-90), "14");
    let first = scribe.born(at(0), None);
    let (second, third) = (scribe.born_beside(at(5), first), scribe.born_beside(at(9), first));
    let corrections = scribe.flock().given_to(first, ewe, GoesAlong::default());
    take(&mut scribe, corrections);
    let flock = scribe.flock();
    assert_eq!(flock.lamb(first).and_then(|lamb| lamb.dam), Some(ewe));
    for lamb in [second, third] {
        assert_eq!(flock.lamb(lamb).and_then(|lamb| lamb.dam), None);
    }
    assert_eq!(flock.litter_of(second).map(|litter| litter.lambs.clone()), Some(vec![second, third]));
}

#[test]
fn a_dam_that_was_given_later_is_put_right_where_she_was_given() {
    let mut scribe = Scribe::new(1);
    let (wrong, right) = (scribe.ewe(at(-90), "14"), scribe.ewe(at(-89), "41"));
    let first = scribe.born(at(0), None);
    let second = scribe.born_beside(at(5), first);
    for lamb in [first, second] {
        scribe.note(at(20), Event::DamGiven { lamb, dam: wrong });
    }
    let corrections = scribe.flock().given_to(second, right, ALL);
    take(&mut scribe, corrections);
    let flock = scribe.flock();
    for lamb in [first, second] {
        assert_eq!(flock.lamb(lamb).and_then(|lamb| lamb.dam), Some(right));
    }
    assert_eq!(flock.litters.len(), 1);
    assert_eq!(flock.litters_of(wrong).len(), 0);
}

#[test]
fn what_belongs_to_another_lambing_stays_and_what_was_struck_does_not_go() {
    let (mut scribe, wrong, right, [first, _]) = lived(|one, _| one);
    let slip = scribe.note(at(-25), Event::StrainingSeen { ewe: wrong });
    scribe.strike(at(-24), slip);
    scribe.note(hour(-24 * 20), Event::SignSeen { ewe: wrong, sign: Sign::Restless });
    scribe.note(hour(24 * 5), Event::LookedAt { animal: Animal::Ewe(wrong) });
    let noted: Vec<EntryId> = scribe.flock().noted_at_lambing(first).iter().map(|line| line.entry).collect();
    assert_eq!(noted.len(), 8, "seven seen of her, and her pen");
    assert!(!noted.contains(&slip));
    let corrections = scribe.flock().given_to(first, right, ALL);
    take(&mut scribe, corrections);
    let flock = scribe.flock();
    let seen = flock.ewe(wrong).map(|ewe| ewe.seen.iter().map(|seen| seen.what).collect::<Vec<_>>());
    assert_eq!(seen, Some(vec![Saw::Sign(Sign::Restless), Saw::Look]));
}
