//! A season by ram, who sired whom, and who is too near kin to be put to a ram.

use yeanling_core::book::{Animal, Cause, Event, EweId, LambId, Life, Sex};
use yeanling_core::reckon::adjusted_weight::ToAge;
use yeanling_core::seasons::{KinToRam, OfRam, RamFigure, Sire, by_ram, grown, near_kin, seasons, sire_of};

use super::days;
use crate::scribe::{Scribe, at};

/// A group of these ewes with these rams for fifty days; its lambs come from day 0 on.
fn mated(scribe: &mut Scribe, name: &str, ewes: &[EweId], rams: &[Option<&str>]) {
    let group = scribe.group(days(-160), name);
    for ewe in ewes {
        scribe.note(days(-159), Event::JoinedGroup { ewe: *ewe, group });
    }
    for ram in rams {
        let ram = ram.map(str::to_owned);
        scribe.note(days(-147), Event::RamIn { group, ram, age: None });
    }
    scribe.note(days(-97), Event::RamOut { group });
    scribe.note(days(-90), Event::GroupParted { group });
}

fn ewes(scribe: &mut Scribe, from: usize, count: usize) -> Vec<EweId> {
    (from..from + count).map(|tag| scribe.ewe(days(-300), &tag.to_string())).collect()
}

fn of(scribe: &Scribe) -> Vec<OfRam> {
    let flock = scribe.flock();
    let season = seasons(&flock).remove(0);
    by_ram(&flock, &season, &grown(&flock, &season, ToAge::Day60, days(300)), days(300))
}

/// Two groups of so many ewes, each with a ram of its own; of the second ram every lamb so far is lost.
fn two_rams(each: usize, lost: usize) -> Scribe {
    let mut scribe = Scribe::new(1);
    let all = ewes(&mut scribe, 0, each * 2);
    mated(&mut scribe, "Top", &all[..each], &[Some("R1")]);
    mated(&mut scribe, "Low", &all[each..], &[Some("R2"), Some(" r2 ")]);
    for (number, ewe) in all.iter().enumerate() {
        let lamb = scribe.born(at(i64::try_from(number).expect("few")), Some(*ewe));
        scribe.weighed(at(500), lamb, 4.0);
        if number >= each && number - each < lost {
            scribe.note(days(3), Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown });
        }
    }
    scribe
}

#[test]
fn each_ram_has_his_ewes_his_lambs_and_how_many_they_are() {
    let all = of(&two_rams(10, 2));
    let [one, other] = &all[..] else { panic!("two rams") };
    assert_eq!(one.sire, Sire::Rams(vec!["R1".to_owned()]));
    assert_eq!((other.put, other.lambed, other.born, other.born_alive, other.lost), (10, 10, 10, 10, 2));
    let first = other.first_cycle.expect("twenty days are over");
    assert_eq!((first.ewes, first.put), (10, 10));
    assert_eq!(other.birth_weight.map(|(_, of)| of), Some(10));
}

#[test]
fn what_can_be_chance_is_not_said_to_differ_and_what_seldom_is_is() {
    // Two of ten against none of ten: 0.474. Eight of ten: 0.0007.
    assert!(of(&two_rams(10, 2)).iter().all(|ram| ram.apart.is_empty()));
    let all = of(&two_rams(10, 8));
    assert_eq!(all[0].apart, [(RamFigure::Lost, false)]);
    assert_eq!(all[1].apart, [(RamFigure::Lost, true)]);
}

#[test]
fn rams_together_and_rams_without_a_name_are_told_as_such() {
    let mut scribe = Scribe::new(1);
    let all = ewes(&mut scribe, 0, 3);
    mated(&mut scribe, "Top", &all[..1], &[Some("R1"), Some("R2")]);
    mated(&mut scribe, "Low", &all[1..2], &[Some("R1"), None]);
    let lambs: Vec<LambId> = all.iter().map(|ewe| scribe.born(at(0), Some(*ewe))).collect();
    let flock = scribe.flock();
    let sires: Vec<Option<Sire>> =
        lambs.iter().map(|lamb| sire_of(&flock, flock.litter_of(*lamb).expect("a litter"))).collect();
    assert_eq!(sires[0], Some(Sire::Rams(vec!["R1".to_owned(), "R2".to_owned()])));
    assert!(matches!(sires[1], Some(Sire::OfGroup(_))));
    assert_eq!(sires[2], None, "nobody put her to a ram");
}

#[test]
fn a_lamb_that_came_too_early_for_a_ram_is_not_his() {
    let mut scribe = Scribe::new(1);
    let all = ewes(&mut scribe, 0, 1);
    mated(&mut scribe, "Top", &all, &[Some("R1")]);
    let lamb = scribe.born(days(-20), Some(all[0]));
    let flock = scribe.flock();
    assert_eq!(sire_of(&flock, flock.litter_of(lamb).expect("a litter")), None);
}

#[test]
fn his_dam_and_his_daughters_are_near_kin_of_a_ram_and_no_other_ewe_is() {
    let mut scribe = Scribe::new(1);
    let all = ewes(&mut scribe, 0, 4);
    mated(&mut scribe, "Top", &all[..1], &[Some("R1")]);
    mated(&mut scribe, "Low", &all[1..2], &[Some("R1"), Some("R2")]);
    let [daughter, perhaps, ram] = [(0, Sex::Ewe), (1, Sex::Ewe), (2, Sex::Ram)].map(|(dam, sex)| {
        let born = Event::LambBorn { dam: Some(all[dam]), beside: None, sex: Some(sex), alive: true };
        scribe.note(at(0), born).as_lamb()
    });
    scribe.note(days(40), Event::Tagged { animal: Animal::Lamb(ram), tag: "r1".to_owned() });
    let kept = [daughter, perhaps]
        .map(|lamb| scribe.note(days(200), Event::Life(Life::KeptAsEwe { lamb })).as_ewe());
    let flock = scribe.flock();
    let found = near_kin(&flock, "R1 ", flock.ewes.keys().copied());
    let expected =
        [(all[2], KinToRam::Dam), (kept[0], KinToRam::Daughter), (kept[1], KinToRam::PerhapsDaughter)];
    assert_eq!(found, expected);
    assert_eq!(near_kin(&flock, "R9", flock.ewes.keys().copied()), []);
}
