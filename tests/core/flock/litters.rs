//! Who was born with whom: by dam and time, by mate, and through corrections.

use yeanling_core::book::{Event, EweId, LambId};
use yeanling_core::units::TimeDelta;

use crate::scribe::{MS, Scribe, at, birth};

/// Fails unless these are the litters, each with its lambs in the order of their birth.
#[track_caller]
fn check(scribe: &Scribe, expected: &[&[LambId]]) {
    let flock = scribe.flock();
    let mut litters: Vec<Vec<LambId>> = flock.litters.values().map(|litter| litter.lambs.clone()).collect();
    let mut expected: Vec<Vec<LambId>> = expected.iter().map(|lambs| lambs.to_vec()).collect();
    litters.sort();
    expected.sort();
    assert_eq!(litters, expected);
    for (id, litter) in &flock.litters {
        assert_eq!((*id, litter.id), (litter.lambs[0], litter.lambs[0]), "the first lamb names the litter");
        let of = |lamb: &LambId| flock.lamb(*lamb).expect("it is here");
        assert_eq!(litter.began, of(&litter.lambs[0]).born);
        assert_eq!(Some(litter.latest), litter.lambs.last().map(|last| of(last).born));
        for (order, lamb) in litter.lambs.iter().enumerate() {
            assert_eq!((of(lamb).order, of(lamb).litter, of(lamb).dam), (order, *id, litter.dam));
            assert_eq!(flock.litter_of(*lamb), Some(litter));
        }
    }
}

#[track_caller]
fn dam_of(scribe: &Scribe, lamb: LambId, dam: Option<EweId>) {
    assert_eq!(scribe.flock().lamb(lamb).expect("it is here").dam, dam);
}

fn with_ewe() -> (Scribe, EweId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-60), "23");
    (scribe, ewe)
}

#[test]
fn twins_stand_in_the_order_of_their_birth_however_they_were_noted() {
    let (mut scribe, ewe) = with_ewe();
    let second = scribe.born(at(12), Some(ewe));
    let first = scribe.born(at(0), Some(ewe));
    check(&scribe, &[&[first, second]]);
    assert_eq!(scribe.flock().litters_of(ewe).len(), 1);
}

#[test]
fn lambs_of_two_ewes_are_two_litters() {
    let (mut scribe, ewe) = with_ewe();
    let other = scribe.ewe(at(-50), "24");
    let (a, b, c) =
        (scribe.born(at(0), Some(ewe)), scribe.born(at(1), Some(other)), scribe.born(at(2), Some(ewe)));
    check(&scribe, &[&[a, c], &[b]]);
}

#[test]
fn a_litter_ends_seven_days_after_its_last_lamb() {
    let week = TimeDelta::days(7);
    let (mut scribe, ewe) = with_ewe();
    let first = scribe.born(at(0), Some(ewe));
    let second = scribe.born(at(0) + week, Some(ewe));
    check(&scribe, &[&[first, second]]);
    let third = scribe.born(at(0) + week + week, Some(ewe));
    check(&scribe, &[&[first, second, third]]);
    let next = scribe.born(at(0) + week + week + week + MS, Some(ewe));
    check(&scribe, &[&[first, second, third], &[next]]);
    let began: Vec<_> = scribe.flock().litters_of(ewe).iter().map(|litter| litter.id).collect();
    assert_eq!(began, [next, first], "the latest litter comes first");
}

#[test]
fn lambs_of_no_known_dam_are_alone_unless_noted_beside_each_other() {
    let mut scribe = Scribe::new(1);
    let (a, b) = (scribe.born(at(0), None), scribe.born(at(1), None));
    let c = scribe.born_beside(at(2), a);
    let d = scribe.born_beside(at(3), c);
    check(&scribe, &[&[a, c, d], &[b]]);
    dam_of(&scribe, d, None);
}

#[test]
fn a_dam_given_to_one_twin_is_the_dam_of_both() {
    let (mut scribe, ewe) = with_ewe();
    let a = scribe.born(at(0), None);
    let b = scribe.born_beside(at(5), a);
    let given = scribe.note(at(90), Event::DamGiven { lamb: b, dam: ewe });
    check(&scribe, &[&[a, b]]);
    dam_of(&scribe, a, Some(ewe));
    assert_eq!(scribe.flock().litters_of(ewe).len(), 1);
    scribe.strike(at(91), given);
    check(&scribe, &[&[a, b]]);
    dam_of(&scribe, a, None);
}

#[test]
fn a_dam_given_later_brings_lambs_together() {
    let (mut scribe, ewe) = with_ewe();
    let (a, b) = (scribe.born(at(0), Some(ewe)), scribe.born(at(9), None));
    check(&scribe, &[&[a], &[b]]);
    scribe.note(at(20), Event::DamGiven { lamb: b, dam: ewe });
    check(&scribe, &[&[a, b]]);
}

#[test]
fn of_two_dams_given_the_later_holds_and_parts_the_twins() {
    let (mut scribe, ewe) = with_ewe();
    let other = scribe.ewe(at(-50), "24");
    let a = scribe.born(at(0), Some(ewe));
    let b = scribe.born_beside(at(5), a);
    dam_of(&scribe, b, Some(ewe));
    scribe.note(at(10), Event::DamGiven { lamb: b, dam: other });
    check(&scribe, &[&[a], &[b]]);
    scribe.note(at(11), Event::DamGiven { lamb: b, dam: ewe });
    check(&scribe, &[&[a, b]]);
}

#[test]
fn a_birth_moved_before_its_mates_keeps_the_litter() {
    let mut scribe = Scribe::new(1);
    let a = scribe.born(at(10), None);
    let b = scribe.born_beside(at(20), a);
    let c = scribe.born_beside(at(30), a);
    scribe.amend(at(40), b.entry(), birth(None, Some(a)), at(5));
    scribe.amend(at(41), c.entry(), birth(None, Some(a)), at(4));
    check(&scribe, &[&[c, b, a]]);
}

#[test]
fn mates_a_week_apart_are_no_litter() {
    let mut scribe = Scribe::new(1);
    let a = scribe.born(at(0), None);
    let b = scribe.born_beside(at(0) + TimeDelta::days(7), a);
    check(&scribe, &[&[a, b]]);
    let c = scribe.born_beside(at(0) + TimeDelta::days(14) + MS, a);
    check(&scribe, &[&[a, b], &[c]]);
}

#[test]
fn a_lamb_noted_beside_itself_or_beside_nobody_is_alone() {
    let mut scribe = Scribe::new(1);
    let a = scribe.born(at(0), None);
    scribe.amend(at(1), a.entry(), birth(None, Some(a)), at(0));
    let elsewhere = Scribe::new(2).born(at(0), None);
    let b = scribe.born_beside(at(2), elsewhere);
    check(&scribe, &[&[a], &[b]]);
}

#[test]
fn mates_hold_together_although_the_one_between_them_was_struck() {
    let mut scribe = Scribe::new(1);
    let a = scribe.born(at(0), None);
    let b = scribe.born_beside(at(1), a);
    let c = scribe.born_beside(at(2), a);
    scribe.strike(at(3), a.entry());
    check(&scribe, &[&[b, c]]);
    scribe.restore(at(4), a.entry());
    check(&scribe, &[&[a, b, c]]);
}

#[test]
fn all_born_holds_for_the_litter_whichever_lamb_it_names() {
    let (mut scribe, ewe) = with_ewe();
    let (a, b) = (scribe.born(at(0), Some(ewe)), scribe.born(at(9), Some(ewe)));
    let all_born = |scribe: &Scribe| scribe.flock().litter_of(a).expect("a litter").all_born;
    assert_eq!(all_born(&scribe), None);
    let said = scribe.note(at(40), Event::AllBorn { lamb: b });
    assert_eq!(all_born(&scribe), Some(at(40)));
    scribe.strike(at(41), said);
    assert_eq!(all_born(&scribe), None);
}

#[test]
fn a_lambing_goes_on_until_all_are_said_to_be_born_and_again_when_one_more_comes() {
    let (mut scribe, ewe) = with_ewe();
    let first = scribe.born(at(0), Some(ewe));
    let goes_on = |scribe: &Scribe, now| scribe.flock().litter_of(first).expect("a litter").goes_on(now);
    assert!(goes_on(&scribe, at(30)));
    assert!(!goes_on(&scribe, at(24 * 60)), "a day after the last birth it is over");
    scribe.note(at(40), Event::AllBorn { lamb: first });
    assert!(!goes_on(&scribe, at(41)));
    scribe.born(at(55), Some(ewe));
    assert!(goes_on(&scribe, at(56)));
}
