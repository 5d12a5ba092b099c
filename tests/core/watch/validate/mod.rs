//! What may be noted here and now, and the exact reason for what may not.

mod birth;
mod ewe;
mod feed;
mod group;
mod life;
mod limits;
mod past;
mod stores;

use yeanling_core::book::{Animal, Book, EntryId, Event, EweId, LambId, LambingEase, Milk, Sex, Way};
use yeanling_core::settings::{Choice, DayRule, Limits};
use yeanling_core::units::{BoundFor, Mass, Moment, OutOfBounds, TimeDelta};
use yeanling_core::watch::{Rejection, validate};

use crate::scribe::{MS, Scribe, at, birth, eased, fed, hour, kg, scored};

/// A ewe, her lamb of four kilograms, seen to suck at forty minutes; it is now two hours after its birth.
struct Barn {
    scribe: Scribe,
    ewe: EweId,
    lamb: LambId,
    now: Moment,
}

impl Barn {
    fn new() -> Self {
        let mut scribe = Scribe::new(1);
        let ewe = scribe.ewe(at(-600), "23");
        let lamb = scribe.born(at(0), Some(ewe));
        scribe.weighed(at(25), lamb, 4.0);
        scribe.sucked(at(40), lamb);
        Self { scribe, ewe, lamb, now: at(120) }
    }

    fn try_at(&self, event: &Event, at: Moment) -> Result<(), Rejection> {
        validate(&self.scribe.flock(), &self.scribe.book, event, at, self.now)
    }

    #[track_caller]
    fn check(&self, event: &Event, expected: &Rejection) {
        self.check_at(event, self.now, expected);
    }

    #[track_caller]
    fn check_at(&self, event: &Event, at: Moment, expected: &Rejection) {
        assert_eq!(self.try_at(event, at).as_ref(), Err(expected), "{event:?}");
    }

    #[track_caller]
    fn ok(&self, event: &Event) {
        self.ok_at(event, self.now);
    }

    #[track_caller]
    fn ok_at(&self, event: &Event, at: Moment) {
        assert_eq!(self.try_at(event, at), Ok(()), "{event:?}");
    }
}

fn weighed(lamb: LambId, kilograms: f64) -> Event {
    Event::Weighed { lamb, mass: kg(kilograms) }
}

fn bottle(lamb: LambId, milliliters: f64) -> Event {
    fed(lamb, milliliters, Milk::DamColostrum, Way::Bottle)
}

fn amended(entry: EntryId, event: Event, at: Moment) -> Event {
    Event::Amended { entry, event: Box::new(event), at }
}

#[test]
fn what_is_right_may_be_noted() {
    let barn = Barn::new();
    let (ewe, lamb) = (barn.ewe, barn.lamb);
    let (the_ewe, the_lamb) = (Animal::Ewe(ewe), Animal::Lamb(lamb));
    for event in [
        Event::EweCame { tag: None },
        Event::EweCame { tag: Some("24".to_owned()) },
        Event::Tagged { animal: the_ewe, tag: "32".to_owned() },
        Event::Tagged { animal: the_lamb, tag: "Bramble".to_owned() },
        birth(None, None),
        birth(Some(ewe), Some(lamb)),
        Event::DamGiven { lamb, dam: ewe },
        eased(lamb),
        Event::Stood { lamb },
        Event::Sucked { lamb },
        Event::NavelDipped { lamb },
        weighed(lamb, 4.1),
        bottle(lamb, 200.0),
        fed(lamb, 60.0, Milk::PowderColostrum, Way::Tube),
        scored(lamb, 1),
        scored(lamb, 4),
        Event::AllBorn { lamb },
        Event::Remarked { animal: the_ewe, text: "Good mother".to_owned() },
        Event::Chose(Choice::FarmName(String::new())),
        Event::Chose(Choice::FarmName("Quarry Bank".to_owned())),
        Event::Chose(Choice::VetPhone("555 0100".to_owned())),
        Event::Chose(Choice::VetNightPhone(String::new())),
        Event::Chose(Choice::DayRule(DayRule::TenPercent)),
        Event::Chose(Choice::Limits(Limits::default())),
        Event::Deleted { entry: lamb.entry() },
        Event::Restored { entry: lamb.entry() },
        amended(lamb.entry(), birth(None, None), at(10)),
    ] {
        barn.ok(&event);
    }
}

#[test]
fn nothing_may_be_noted_of_the_future() {
    let barn = Barn::new();
    let (now, slack) = (barn.now, TimeDelta::minutes(2));
    let in_future = |at| Rejection::InFuture { at, now };
    for event in
        [birth(None, None), Event::Sucked { lamb: barn.lamb }, Event::Deleted { entry: barn.lamb.entry() }]
    {
        barn.ok_at(&event, now + slack);
        barn.check_at(&event, now + slack + MS, &in_future(now + slack + MS));
    }
    let moved = |at| amended(barn.lamb.entry(), Event::EweCame { tag: None }, at);
    barn.ok(&moved(now + slack));
    barn.check(&moved(now + slack + MS), &in_future(now + slack + MS));
}

#[test]
fn a_weight_is_a_lambs() {
    let barn = Barn::new();
    for kilograms in [0.0, -3.0, 0.49, 12.1, 40.0, f64::INFINITY] {
        let allowed = Mass::AT_BIRTH;
        barn.check(
            &weighed(barn.lamb, kilograms),
            &Rejection::Weight(OutOfBounds { given: kg(kilograms), allowed }),
        );
    }
    assert!(matches!(barn.try_at(&weighed(barn.lamb, f64::NAN), barn.now), Err(Rejection::Weight(_))));
    barn.ok(&weighed(barn.lamb, 0.5));
    barn.ok(&weighed(barn.lamb, 12.0));
}

#[test]
fn after_a_day_a_lamb_may_weigh_more() {
    let mut barn = Barn::new();
    barn.now = hour(180 * 24);
    barn.ok(&weighed(barn.lamb, 40.0));
    barn.ok(&weighed(barn.lamb, 90.0));
    let mut allowed = Mass::AT_BIRTH;
    (allowed.most, allowed.why) = (kg(90.0), BoundFor::LambOfItsAge);
    barn.check(&weighed(barn.lamb, 90.1), &Rejection::Weight(OutOfBounds { given: kg(90.1), allowed }));
    barn.check(&weighed(barn.lamb, 0.4), &Rejection::Weight(OutOfBounds { given: kg(0.4), allowed }));
    let at_birth = Rejection::Weight(OutOfBounds { given: kg(12.5), allowed: Mass::AT_BIRTH });
    let (younger, older) = (barn.scribe.born(at(1), None), barn.scribe.born(at(0), None));
    barn.check_at(&weighed(younger, 12.5), hour(24), &at_birth);
    barn.ok_at(&weighed(older, 12.5), hour(24));
}

#[test]
fn who_and_what_is_not_in_the_book_cannot_be_written_about() {
    let barn = Barn::new();
    let mut elsewhere = Scribe::new(2);
    let (ewe, lamb) = (elsewhere.ewe(at(0), "99"), elsewhere.born(at(0), None));
    for event in [
        Event::Tagged { animal: Animal::Ewe(ewe), tag: "1".to_owned() },
        Event::Tagged { animal: Animal::Lamb(lamb), tag: "1".to_owned() },
        Event::Tagged { animal: Animal::Lamb(barn.ewe.entry().as_lamb()), tag: "1".to_owned() },
        birth(Some(ewe), None),
        birth(None, Some(lamb)),
        Event::DamGiven { lamb, dam: barn.ewe },
        Event::DamGiven { lamb: barn.lamb, dam: ewe },
        eased(lamb),
        Event::Stood { lamb },
        Event::Sucked { lamb },
        Event::NavelDipped { lamb },
        weighed(lamb, 4.0),
        bottle(lamb, 60.0),
        scored(lamb, 2),
        Event::BellyFelt { lamb, belly: yeanling_core::book::Belly::Full },
        Event::AllBorn { lamb },
        Event::Died { animal: Animal::Ewe(ewe), cause: yeanling_core::book::Cause::Cold },
        Event::Remarked { animal: Animal::Lamb(lamb), text: "?".to_owned() },
        Event::SameAnimal { keep: Animal::Ewe(barn.ewe), also: Animal::Ewe(ewe) },
        Event::SameAnimal { keep: Animal::Ewe(ewe), also: Animal::Ewe(barn.ewe) },
    ] {
        barn.check(&event, &Rejection::NoSuchAnimal);
    }
    for event in [
        Event::Deleted { entry: lamb.entry() },
        Event::Restored { entry: lamb.entry() },
        amended(lamb.entry(), birth(None, None), at(0)),
    ] {
        barn.check(&event, &Rejection::NoSuchEntry);
    }
}

#[test]
fn a_correction_is_not_amended_and_nothing_is_amended_into_one() {
    let mut barn = Barn::new();
    let struck = barn.scribe.strike(at(50), barn.ewe.entry());
    barn.check(&amended(struck, birth(None, None), at(0)), &Rejection::NoSuchEntry);
    let restore = Event::Restored { entry: barn.ewe.entry() };
    barn.check(&amended(barn.lamb.entry(), restore, at(0)), &Rejection::NoSuchEntry);
    barn.ok(&Event::Deleted { entry: struck });
}

#[test]
fn an_amendment_passes_the_same_gate_as_a_new_fact() {
    let mut barn = Barn::new();
    let lamb = barn.lamb;
    let fed = barn.scribe.fed(at(60), lamb, 200.0);
    barn.ok(&amended(fed, bottle(lamb, 100.0), at(61)));
    barn.ok(&amended(fed, Event::BirthEase { lamb, ease: LambingEase::Vet }, at(61)));
    barn.check(
        &amended(fed, bottle(lamb, 100.0), at(-1)),
        &Rejection::BeforeBirth { at: at(-1), born: at(0) },
    );
    barn.check(&amended(fed, scored(lamb, 9), at(61)), &Rejection::Score { given: 9, least: 1, most: 4 });
    barn.check(&amended(fed, Event::EweCame { tag: Some(" ".to_owned()) }, at(61)), &Rejection::NoText);
}

#[test]
fn a_score_is_on_its_scale() {
    let barn = Barn::new();
    for given in [0, 5, 255] {
        barn.check(&scored(barn.lamb, given), &Rejection::Score { given, least: 1, most: 4 });
    }
}

#[track_caller]
fn text(barn: &Barn, most: usize, event: impl Fn(String) -> Event) {
    for empty in ["", " ", "\t\n\u{a0}"] {
        barn.check(&event(empty.to_owned()), &Rejection::NoText);
    }
    // Counted by characters, not by bytes.
    barn.ok(&event("🐑".repeat(most)));
    barn.check(&event("🐑".repeat(most + 1)), &Rejection::LongText { given: most + 1, most });
}

#[test]
fn a_text_says_something_and_not_too_much() {
    let barn = Barn::new();
    text(&barn, 24, |tag| Event::EweCame { tag: Some(tag) });
    text(&barn, 24, |tag| Event::Tagged { animal: Animal::Ewe(barn.ewe), tag });
    text(&barn, 1000, |text| Event::Remarked { animal: Animal::Ewe(barn.ewe), text });
    let long = Event::Chose(Choice::FarmName("x".repeat(25)));
    barn.check(&long, &Rejection::LongText { given: 25, most: 24 });
    barn.check(&Event::Chose(Choice::FarmName(" ".to_owned())), &Rejection::NoText);
    barn.check(&Event::Chose(Choice::VetPhone("ask Jo".to_owned())), &Rejection::NotAPhoneNumber);
}

#[test]
fn only_two_records_of_one_kind_can_be_one_animal() {
    let mut barn = Barn::new();
    let other = barn.scribe.ewe(at(1), "24");
    let twin = barn.scribe.born(at(2), Some(barn.ewe));
    let (ewe, lamb) = (Animal::Ewe(barn.ewe), Animal::Lamb(barn.lamb));
    let same = |keep, also| Event::SameAnimal { keep, also };
    barn.ok(&same(ewe, Animal::Ewe(other)));
    barn.ok(&same(lamb, Animal::Lamb(twin)));
    for (keep, also) in [(ewe, ewe), (lamb, lamb), (ewe, lamb), (lamb, ewe)] {
        barn.check(&same(keep, also), &Rejection::NotOneAnimal);
    }
    barn.scribe.same(at(3), ewe, Animal::Ewe(other));
    barn.check(&same(Animal::Ewe(other), ewe), &Rejection::NotOneAnimal);
}

#[test]
fn a_book_is_not_changed_by_asking() {
    let barn = Barn::new();
    let before: Book = barn.scribe.book.clone();
    let ram = Event::LambBorn { dam: None, beside: None, sex: Some(Sex::Ram), alive: true };
    barn.ok(&ram);
    assert_eq!(barn.scribe.book, before);
}
