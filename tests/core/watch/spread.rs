//! What goes round in the flock: from how many on, for how long, and what ends it.

use yeanling_core::book::{Animal, Cause, Event, EweId, Illness, LambId};
use yeanling_core::reckon::illness::Urgency;
use yeanling_core::reckon::illness::spread::rule;
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign, Spread};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{spreading, validate};

use crate::scribe::{MS, Scribe, hour};

const DAY: i64 = 24;

fn lamb_seen(scribe: &mut Scribe, at: Moment, lamb: LambId, sign: LambSign) {
    let good = Gate::Good;
    let seen = Illness::LambSeen { lamb, head_up: good, swallows: good, warm: good, signs: vec![sign] };
    scribe.note(at, Event::Illness(seen));
}

fn ewe_seen(scribe: &mut Scribe, at: Moment, ewe: EweId, sign: EweSign) {
    let (stage, good) = (EweStage::LateInLamb, Gate::Good);
    scribe.note(
        at,
        Event::Illness(Illness::EweSeen {
            ewe,
            stage,
            standing: good,
            eating: good,
            nothing_out: good,
            signs: vec![sign],
            onset: None,
        }),
    );
}

/// So many lambs, born as the night begins.
fn lambs(scribe: &mut Scribe, count: usize) -> Vec<LambId> {
    (0..count).map(|_| scribe.born(hour(0), None)).collect()
}

/// Returns what goes round, and in how many.
fn goes_round(scribe: &Scribe, now: Moment) -> Vec<(Spread, usize)> {
    spreading(&scribe.flock(), now).into_iter().map(|of| (of.spread, of.animals.len())).collect()
}

#[test]
fn three_wet_chins_in_five_days_are_told_and_two_are_not() {
    let mut scribe = Scribe::new(1);
    let all = lambs(&mut scribe, 3);
    lamb_seen(&mut scribe, hour(26), all[0], LambSign::WetChin);
    lamb_seen(&mut scribe, hour(40), all[1], LambSign::Rattles);
    // The same lamb again is no other lamb.
    lamb_seen(&mut scribe, hour(41), all[1], LambSign::WetChin);
    assert_eq!(goes_round(&scribe, hour(42)), []);
    lamb_seen(&mut scribe, hour(60), all[2], LambSign::WetChin);
    assert_eq!(goes_round(&scribe, hour(60)), [(Spread::WetChins, 3)]);
    // Five days after the first it is two in five days.
    let first_is_old = hour(26 + 5 * DAY);
    assert_eq!(goes_round(&scribe, first_is_old - MS), [(Spread::WetChins, 3)]);
    assert_eq!(goes_round(&scribe, first_is_old), []);
}

#[test]
fn a_chin_that_may_be_wet_from_birth_does_not_count() {
    let mut scribe = Scribe::new(1);
    for lamb in lambs(&mut scribe, 3) {
        lamb_seen(&mut scribe, hour(3), lamb, LambSign::WetChin);
    }
    assert_eq!(goes_round(&scribe, hour(4)), []);
}

#[test]
fn what_was_seen_to_is_told_again_only_by_as_many_new_ones() {
    let mut scribe = Scribe::new(1);
    let all = lambs(&mut scribe, 6);
    let scours = |scribe: &mut Scribe, at: i64, lamb: LambId| {
        lamb_seen(scribe, hour(at), lamb, LambSign::WateryScour);
    };
    (0..3).for_each(|place| scours(&mut scribe, 30 + place, all[usize::try_from(place).unwrap_or(0)]));
    assert_eq!(goes_round(&scribe, hour(34)), [(Spread::Scours, 3)]);
    let seen_to = Illness::SpreadSeenTo { animal: Animal::Lamb(all[2]), spread: Spread::Scours };
    let event = Event::Illness(seen_to);
    assert_eq!(validate(&scribe.flock(), &scribe.book, &event, hour(35), hour(35)), Ok(()));
    let entry = scribe.note(hour(35), event);
    assert_eq!(goes_round(&scribe, hour(36)), []);
    scours(&mut scribe, 40, all[3]);
    scours(&mut scribe, 41, all[4]);
    assert_eq!(goes_round(&scribe, hour(42)), []);
    let mut undone = scribe.clone();
    undone.strike(hour(42), entry);
    assert_eq!(goes_round(&undone, hour(43)), [(Spread::Scours, 5)]);
    scours(&mut scribe, 43, all[5]);
    assert_eq!(goes_round(&scribe, hour(44)), [(Spread::Scours, 3)]);
}

#[test]
fn a_second_abortion_in_sixty_days_is_now() {
    let mut scribe = Scribe::new(1);
    let [one, two] = ["7", "8"].map(|tag| scribe.ewe(hour(0), tag));
    ewe_seen(&mut scribe, hour(1), one, EweSign::Aborted);
    assert_eq!(goes_round(&scribe, hour(2)), []);
    ewe_seen(&mut scribe, hour(20 * DAY), two, EweSign::Aborted);
    let told = spreading(&scribe.flock(), hour(20 * DAY));
    assert_eq!(told.first().map(|of| (of.spread, of.urgency)), Some((Spread::Abortions, Urgency::Now)));
    assert_eq!(told[0].animals, [Animal::Ewe(one), Animal::Ewe(two)]);
    assert_eq!(goes_round(&scribe, hour(60 * DAY + 1)), []);
    // Neither rears another's lamb for those sixty days.
    let flock = scribe.flock();
    let aborted = |now| flock.ewe(one).and_then(|ewe| ewe.aborted(now)).is_some();
    assert!(aborted(hour(60 * DAY)) && !aborted(hour(60 * DAY + 1)));
}

#[test]
fn many_lame_and_lambs_dying_may_have_to_be_reported_and_come_first() {
    // Source: gov.uk: many lame at once, blisters, lambs dying may be notifiable; the counts are ours.
    let mut scribe = Scribe::new(1);
    let ewes: Vec<EweId> = (1..=5).map(|tag| scribe.ewe(hour(0), &tag.to_string())).collect();
    let all = lambs(&mut scribe, 6);
    for (place, ewe) in ewes.iter().enumerate() {
        let sign = if place % 2 == 0 { EweSign::Lame } else { EweSign::NoWeightOnLeg };
        ewe_seen(&mut scribe, hour(15 * DAY), *ewe, sign);
    }
    (0..3).for_each(|place| lamb_seen(&mut scribe, hour(15 * DAY), all[place], LambSign::WateryScour));
    let die = |scribe: &mut Scribe, hours, lamb, cause| {
        scribe.note(hour(hours), Event::Died { animal: Animal::Lamb(lamb), cause });
    };
    die(&mut scribe, 15 * DAY, all[3], Cause::Unknown);
    // One that a fox took, and one that died as a newborn, are none of lambs dying.
    die(&mut scribe, 15 * DAY, all[4], Cause::Predator);
    die(&mut scribe, 20, all[5], Cause::Unknown);
    let told = goes_round(&scribe, hour(15 * DAY + 1));
    assert_eq!(told, [(Spread::ManyLame, 5), (Spread::Scours, 3)]);
    die(&mut scribe, 16 * DAY, all[0], Cause::Infection);
    let told = goes_round(&scribe, hour(16 * DAY + 1));
    assert_eq!(told, [(Spread::ManyLame, 5), (Spread::LambsDying, 2), (Spread::Scours, 3)]);
}

#[test]
fn blisters_seen_once_are_told_at_once_and_nothing_is_told_before_it_was_seen() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(hour(0), "7");
    ewe_seen(&mut scribe, hour(5), ewe, EweSign::ManyIll);
    assert_eq!(goes_round(&scribe, hour(4)), []);
    assert_eq!(goes_round(&scribe, hour(5)), [(Spread::Notifiable, 1)]);
}

#[test]
fn the_most_urgent_is_told_first_and_none_is_told_for_longer_than_it_counts() {
    let urgencies = Spread::ALL.map(|spread| rule(spread).urgency);
    assert!(urgencies.windows(2).all(|pair| pair[0] >= pair[1]), "{urgencies:?}");
    assert!(Spread::ALL.iter().all(|spread| rule(*spread).within <= TimeDelta::days(60)));
}
