//! What a timeline shows: every line about an animal, as it stands, struck ones too.

use yeanling_core::book::{Animal, EntryId, Event};

use crate::scribe::{Scribe, at, birth};

#[track_caller]
fn check(scribe: &Scribe, animal: Animal, expected: &[EntryId]) {
    let flock = scribe.flock();
    let lines: Vec<EntryId> = flock.lines_of(animal).map(|line| line.entry).collect();
    assert_eq!(lines, expected);
}

#[test]
fn a_birth_is_a_line_of_the_lamb_and_of_its_dam() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-9), "23");
    let lamb = scribe.born(at(0), Some(ewe));
    let sucked = scribe.sucked(at(20), lamb);
    let weighed = scribe.weighed(at(10), lamb, 4.0);
    check(&scribe, Animal::Ewe(ewe), &[ewe.entry(), lamb.entry()]);
    check(&scribe, Animal::Lamb(lamb), &[lamb.entry(), weighed, sucked]);
}

#[test]
fn a_dam_found_later_has_the_births_in_her_lines() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-9), "23");
    let a = scribe.born(at(0), None);
    let b = scribe.born_beside(at(5), a);
    check(&scribe, Animal::Ewe(ewe), &[ewe.entry()]);
    let given = scribe.note(at(30), Event::DamGiven { lamb: b, dam: ewe });
    check(&scribe, Animal::Ewe(ewe), &[ewe.entry(), a.entry(), b.entry(), given]);
    check(&scribe, Animal::Lamb(a), &[a.entry()]);
}

#[test]
fn struck_lines_stay_and_say_so() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    let sucked = scribe.sucked(at(20), lamb);
    scribe.strike(at(21), sucked);
    scribe.strike(at(22), lamb.entry());
    check(&scribe, Animal::Lamb(lamb), &[lamb.entry(), sucked]);
    assert!(scribe.flock().lines_of(Animal::Lamb(lamb)).all(|line| line.struck));
    scribe.restore(at(23), sucked);
    let struck: Vec<bool> = scribe.flock().lines_of(Animal::Lamb(lamb)).map(|line| line.struck).collect();
    assert_eq!(struck, [true, false]);
}

#[test]
fn an_amended_line_reads_as_amended_and_stands_where_it_now_belongs() {
    let mut scribe = Scribe::new(1);
    let (a, b) = (scribe.born(at(0), None), scribe.born(at(1), None));
    let stood = scribe.note(at(30), Event::Stood { lamb: a });
    let sucked = scribe.sucked(at(20), b);
    scribe.amend(at(40), stood, Event::Stood { lamb: b }, at(10));
    check(&scribe, Animal::Lamb(a), &[a.entry()]);
    check(&scribe, Animal::Lamb(b), &[b.entry(), stood, sucked]);
    let flock = scribe.flock();
    let line = flock.lines_of(Animal::Lamb(b)).nth(1).expect("a line");
    assert_eq!((line.at, line.amended, line.struck), (at(10), true, false));
    assert_eq!(line.event, Event::Stood { lamb: b });
}

#[test]
fn corrections_and_choices_are_lines_of_no_animal() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    let amended = scribe.amend(at(1), lamb.entry(), birth(None, None), at(-1));
    scribe.strike(at(2), amended);
    assert_eq!(scribe.flock().lines.len(), 1, "only what was noted of the lamb");
    check(&scribe, Animal::Lamb(lamb), &[lamb.entry()]);
}
