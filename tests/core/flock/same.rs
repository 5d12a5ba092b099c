//! Two records of one animal: joined, in chains, in circles, and apart again.

use yeanling_core::book::{Animal, Event, EweId, LambId, Sex};

use crate::scribe::{Scribe, at};

fn e(ewe: EweId) -> Animal {
    Animal::Ewe(ewe)
}

fn l(lamb: LambId) -> Animal {
    Animal::Lamb(lamb)
}

fn three_ewes() -> (Scribe, [EweId; 3]) {
    let mut scribe = Scribe::new(1);
    let ewes = [scribe.ewe(at(0), "23"), scribe.ewe(at(1), "23b"), scribe.ewe(at(2), "23c")];
    (scribe, ewes)
}

/// Fails unless each of these is read as the one.
#[track_caller]
fn one(scribe: &Scribe, of: &[EweId], expected: EweId) {
    for ewe in of {
        assert_eq!(scribe.flock().ewe(*ewe).map(|ewe| ewe.id), Some(expected));
    }
}

#[test]
fn joined_ewes_are_one_with_the_lambs_of_both() {
    let (mut scribe, [a, b, c]) = three_ewes();
    let (first, second) = (scribe.born(at(10), Some(a)), scribe.born(at(20), Some(b)));
    let joined = scribe.same(at(30), e(a), e(b));
    one(&scribe, &[a, b], a);
    let flock = scribe.flock();
    assert_eq!(flock.ewes.keys().copied().collect::<Vec<_>>(), [a, c]);
    assert_eq!(flock.litters_of(b)[0].lambs, [first, second]);
    assert_eq!(flock.lines_of(e(b)).count(), 5, "both came, both births, and the join");
    scribe.strike(at(31), joined);
    one(&scribe, &[b], b);
    assert_eq!(scribe.flock().litters_of(a)[0].lambs, [first]);
}

#[test]
fn the_record_that_stays_says_what_she_is_called() {
    let (mut scribe, [a, b, _]) = three_ewes();
    scribe.same(at(30), e(b), e(a));
    one(&scribe, &[a, b], b);
    let flock = scribe.flock();
    let ewe = flock.ewe(a).expect("she is here");
    assert_eq!((ewe.tag.as_deref(), ewe.came), (Some("23b"), at(1)));
}

#[test]
fn what_the_record_that_stays_left_open_the_other_fills_in() {
    let mut scribe = Scribe::new(1);
    let nameless = scribe.note(at(0), Event::EweCame { tag: None }).as_ewe();
    let named = scribe.ewe(at(1), "23");
    scribe.same(at(2), e(nameless), e(named));
    assert_eq!(scribe.flock().ewe(named).and_then(|ewe| ewe.tag.clone()).as_deref(), Some("23"));
}

#[test]
fn an_animal_is_here_although_the_record_that_stays_was_struck() {
    let (mut scribe, [a, b, _]) = three_ewes();
    scribe.same(at(30), e(a), e(b));
    scribe.strike(at(31), a.entry());
    one(&scribe, &[a, b], a);
    assert_eq!(scribe.flock().ewe(a).and_then(|ewe| ewe.tag.clone()).as_deref(), Some("23b"));
}

#[test]
fn a_chain_of_joins_leads_to_its_end() {
    let (mut scribe, [a, b, c]) = three_ewes();
    scribe.same(at(30), e(b), e(c));
    scribe.same(at(31), e(a), e(b));
    one(&scribe, &[a, b, c], a);
}

#[test]
fn the_joins_of_a_chain_may_come_in_any_order() {
    let (mut scribe, [a, b, c]) = three_ewes();
    scribe.same(at(30), e(a), e(b));
    scribe.same(at(31), e(b), e(c));
    one(&scribe, &[a, b, c], a);
}

#[test]
fn a_join_that_would_close_a_circle_is_passed_over() {
    let (mut scribe, [a, b, c]) = three_ewes();
    scribe.same(at(30), e(a), e(b));
    scribe.same(at(31), e(b), e(c));
    scribe.same(at(32), e(c), e(a));
    scribe.same(at(33), e(b), e(b));
    one(&scribe, &[a, b, c], a);
}

#[test]
fn two_phones_that_join_the_same_two_the_other_way_round_agree() {
    let (mut one, [a, b, _]) = three_ewes();
    let mut other = Scribe::new(2);
    other.meet(&one);
    one.same(at(30), e(a), e(b));
    other.same(at(30), e(b), e(a));
    one.meet(&other);
    other.meet(&one);
    assert_eq!(one.flock(), other.flock());
    assert_eq!(one.flock().ewes.len(), 2);
}

#[test]
fn a_lamb_is_never_a_ewe() {
    let (mut scribe, [a, ..]) = three_ewes();
    let lamb = scribe.born(at(10), Some(a));
    scribe.same(at(30), e(a), l(lamb));
    scribe.same(at(31), l(lamb), e(a));
    one(&scribe, &[a], a);
    assert_eq!(scribe.flock().lamb(lamb).map(|lamb| (lamb.id, lamb.dam)), Some((lamb, Some(a))));
}

#[test]
fn joined_lambs_are_one_with_what_was_seen_of_both() {
    let mut one = Scribe::new(1);
    let ewe = one.ewe(at(-9), "23");
    let mut other = Scribe::new(2);
    other.meet(&one);
    let a = one.born(at(5), Some(ewe));
    let ewe_lamb = Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(Sex::Ewe), alive: false };
    let b = other.note(at(0), ewe_lamb).as_lamb();
    one.weighed(at(30), a, 4.0);
    other.sucked(at(40), b);
    one.meet(&other);
    assert_eq!(one.flock().litter_of(a).map(|litter| litter.lambs.len()), Some(2));
    one.same(at(60), l(a), l(b));
    let flock = one.flock();
    assert_eq!(flock.litter_of(b).map(|litter| litter.lambs.clone()), Some(vec![a]));
    let lamb = flock.lamb(b).expect("it is here");
    assert_eq!((lamb.id, lamb.weights.len(), lamb.sucked.len()), (a, 1, 1));
    assert_eq!(
        (lamb.born, lamb.born_alive, lamb.sex),
        (at(5), true, Some(Sex::Ewe)),
        "the kept record holds"
    );
}
