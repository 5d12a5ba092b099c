//! What may be said of the time before the book: who can be a ram, whose parent, one of how many, and how old at that time.

use yeanling_core::book::{Animal, BirthDay, Cause, Event, EweId, Life, Past};
use yeanling_core::watch::{LifeRejection, Rejection};

use super::Barn;
use crate::scribe::at;

fn refused(rejection: LifeRejection) -> Rejection {
    rejection.into()
}

fn is_ram(animal: EweId) -> Event {
    Event::Past(Past::IsRam { animal })
}

fn born(ewe: EweId, year: u16) -> Event {
    Event::Life(Life::Described { ewe, born: Some(BirthDay::Year(year)), breed: None })
}

#[test]
fn no_ewe_with_lambs_becomes_a_ram_and_nothing_of_a_lambing_is_noted_of_one() {
    let mut barn = Barn::new();
    barn.check(&is_ram(barn.ewe), &refused(LifeRejection::SheIsAEwe));
    let ram = barn.scribe.ewe(at(-500), "R7");
    barn.ok(&is_ram(ram));
    barn.scribe.note(at(-499), is_ram(ram));
    for event in [
        Event::StrainingSeen { ewe: ram },
        Event::LookedAt { animal: Animal::Ewe(ram) },
        Event::LambBorn { dam: Some(ram), beside: None, sex: None, alive: true },
        Event::DamGiven { lamb: barn.lamb, dam: ram },
    ] {
        barn.check(&event, &Rejection::NoSuchAnimal);
    }
    for event in [
        Event::Remarked { animal: Animal::Ewe(ram), text: "Butts".to_owned() },
        Event::Died { animal: Animal::Ewe(ram), cause: Cause::Unknown },
        Event::Tagged { animal: Animal::Ewe(ram), tag: "R8".to_owned() },
    ] {
        barn.ok(&event);
    }
    // His tag is his: a ewe does not wear it too.
    let worn = LifeRejection::TagWorn { tag: "R7".to_owned(), by: Animal::Ewe(ram) };
    barn.check(&Event::EweCame { tag: Some("R7".to_owned()) }, &refused(worn));
}

#[test]
fn a_parent_is_another_animal_born_in_a_year_before() {
    let mut barn = Barn::new();
    let (ram, ewe) = (barn.scribe.ewe(at(-500), "R7"), barn.ewe);
    let sired = |animal| Event::Past(Past::Sired { animal, ram });
    barn.check(&sired(Animal::Lamb(barn.lamb)), &refused(LifeRejection::NotARam));
    barn.scribe.note(at(-499), is_ram(ram));
    barn.ok(&sired(Animal::Lamb(barn.lamb)));
    barn.check(&sired(Animal::Ewe(ram)), &refused(LifeRejection::OwnParent));
    barn.scribe.note(at(-400), born(ram, 2023));
    barn.scribe.note(at(-400), born(ewe, 2021));
    let younger = LifeRejection::ParentYounger { parent: 2023, own: 2021 };
    barn.check(&sired(Animal::Ewe(ewe)), &refused(younger));
    barn.ok(&Event::Past(Past::DamOf { animal: ram, dam: ewe }));
}

#[test]
fn a_litter_has_one_to_six() {
    let barn = Barn::new();
    let born_as = |of| Event::Past(Past::BornAs { animal: Animal::Lamb(barn.lamb), of });
    let reared_as = |of| Event::Past(Past::RearedAs { lamb: barn.lamb, of });
    for of in [0, 7] {
        let wrong = refused(LifeRejection::LitterOf { given: of, most: 6 });
        barn.check(&born_as(of), &wrong);
        barn.check(&reared_as(Some(of)), &wrong);
    }
    barn.ok(&born_as(6));
    barn.ok(&reared_as(Some(1)));
    barn.ok(&reared_as(None));
}

#[test]
fn how_old_a_ewe_can_be_is_judged_by_when_that_was_or_by_her_end() {
    let mut barn = Barn::new();
    let ewe = barn.scribe.ewe(at(-500), "91");
    let wrong = LifeRejection::BirthYear { given: 1991, least: 1996, most: 2026 };
    barn.check(&born(ewe, 1991), &refused(wrong));
    let then = "1996-03-01T08:00:00.000-05:00".parse().expect("a moment");
    barn.scribe.note(then, Event::Died { animal: Animal::Ewe(ewe), cause: Cause::Unknown });
    barn.ok(&born(ewe, 1991));
    let later = LifeRejection::BirthYear { given: 1997, least: 1966, most: 1996 };
    barn.check(&born(ewe, 1997), &refused(later));
}
