//! Rams parted from the ewes, parents that were said, and how a lamb was born and reared where others are not in the book.

use yeanling_core::book::{Animal, Event, EweId, LambId, Past, Sex};
use yeanling_core::flock::{Flock, Reared};
use yeanling_core::seasons::{KinToRam, Sire, near_kin, sire_of};
use yeanling_core::units::TimeDelta;

use crate::scribe::{Scribe, at, hour, kg};

fn ram(scribe: &mut Scribe, tag: &str) -> EweId {
    let ram = scribe.ewe(at(-500), tag);
    scribe.note(at(-499), Event::Past(Past::IsRam { animal: ram }));
    ram
}

fn sired(scribe: &mut Scribe, animal: Animal, ram: EweId) {
    scribe.note(at(300), Event::Past(Past::Sired { animal, ram }));
}

fn lamb(flock: &Flock, id: LambId) -> &yeanling_core::flock::Lamb {
    flock.lamb(id).expect("it is here")
}

#[test]
fn a_ram_is_no_ewe_and_keeps_what_was_noted_of_him() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-600), "14");
    let ram = ram(&mut scribe, "R7");
    scribe.note(at(-400), Event::Tagged { animal: Animal::Ewe(ram), tag: "R70".to_owned() });
    scribe.note(at(-300), Event::EweWeighed { ewe: ram, mass: kg(92.0) });
    let flock = scribe.flock();
    assert_eq!(flock.ewes.keys().copied().collect::<Vec<_>>(), [ewe]);
    assert!(flock.ewe(ram).is_none() && flock.grown(ram).is_some());
    let found = flock.ram_called("r7").expect("found by the tag that he wore");
    assert_eq!((found.id, found.tag.as_deref(), found.weights.len()), (ram, Some("R70"), 1));
}

#[test]
fn who_was_taken_for_a_ram_is_a_ewe_again_once_that_is_struck() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-600), "14");
    let said = scribe.note(at(-400), Event::Past(Past::IsRam { animal: ewe }));
    scribe.note(at(-300), Event::EweWeighed { ewe, mass: kg(60.0) });
    assert!(scribe.flock().ewes.is_empty());
    scribe.note(at(-200), Event::Deleted { entry: said });
    let flock = scribe.flock();
    assert!(flock.rams.is_empty());
    assert_eq!(flock.ewe(ewe).map(|ewe| ewe.weights.len()), Some(1));
}

#[test]
fn a_twin_whose_sibling_is_in_no_book_is_a_twin_and_how_it_was_reared_is_as_said() {
    let mut scribe = Scribe::new(1);
    let dam = scribe.ewe(at(-600), "14");
    let twin = scribe.born(at(0), Some(dam));
    let flock = scribe.flock();
    assert_eq!(flock.born_as(lamb(&flock, twin)), 1);
    scribe.note(at(10), Event::Past(Past::BornAs { animal: Animal::Lamb(twin), of: 2 }));
    scribe.note(at(11), Event::Past(Past::RearedAs { lamb: twin, of: None }));
    let flock = scribe.flock();
    assert_eq!(flock.born_as(lamb(&flock, twin)), 2);
    assert_eq!(flock.reared(lamb(&flock, twin), hour(1000)), Some(Reared::ByHand));
    // More that are here than were said are still here.
    scribe.born(at(20), Some(dam));
    scribe.born(at(40), Some(dam));
    scribe.note(at(50), Event::Past(Past::RearedAs { lamb: twin, of: Some(2) }));
    let flock = scribe.flock();
    assert_eq!(flock.born_as(lamb(&flock, twin)), 3);
    assert_eq!(flock.reared(lamb(&flock, twin), hour(1000)), Some(Reared::ByEwe(2)));
}

#[test]
fn a_sire_that_was_said_stands_before_what_the_groups_tell_and_his_daughters_are_near_kin() {
    let mut scribe = Scribe::new(1);
    let (dam, daughter) = (scribe.ewe(at(-600), "14"), scribe.ewe(at(-600), "15"));
    let group = scribe.group(at(-550), "Top");
    let day = |days: i64| at(0) - TimeDelta::days(days);
    scribe.note(day(170), Event::JoinedGroup { ewe: dam, group });
    scribe.note(day(160), Event::RamIn { group, ram: Some("Moss".to_owned()), age: None });
    scribe.note(day(120), Event::RamOut { group });
    let born = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(Sex::Ewe), alive: true };
    let young = scribe.note(at(0), born).as_lamb();
    let ram = ram(&mut scribe, "R7");
    sired(&mut scribe, Animal::Lamb(young), ram);
    sired(&mut scribe, Animal::Ewe(daughter), ram);
    scribe.note(at(310), Event::Past(Past::DamOf { animal: ram, dam }));
    let flock = scribe.flock();
    let litter = flock.litter_of(young).expect("a litter");
    assert_eq!(sire_of(&flock, litter), Some(Sire::Rams(vec!["R7".to_owned()])));
    let kin = near_kin(&flock, " r7", [dam, daughter].into_iter());
    assert_eq!(kin, [(dam, KinToRam::Dam), (daughter, KinToRam::Daughter)]);
    assert_eq!(flock.sired_by(ram).iter().map(|lamb| lamb.id).collect::<Vec<_>>(), [young]);
}
