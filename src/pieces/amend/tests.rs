//! Drafts against facts: what is typed changes the fact, what is not stays, and nothing is dropped.

use yeanling_core::book::{Animal, EweId, GroupId, LambId, PenId, Treatment};
use yeanling_core::units::Amount;

use super::*;

fn lamb() -> LambId {
    LambId::from_uuid(uuid::Uuid::from_u128(2))
}

fn ewe() -> EweId {
    EweId::from_uuid(uuid::Uuid::from_u128(1))
}

/// Facts of which something beside the time can be changed, one of each kind.
fn changeable() -> Vec<Event> {
    let (lamb, ewe, group) = (lamb(), ewe(), GroupId::from_uuid(uuid::Uuid::from_u128(3)));
    let pen = PenId::from_uuid(uuid::Uuid::from_u128(4));
    let (animal, words) = (Animal::Ewe(ewe), || "one".to_owned());
    let mass = Mass::from_kilograms(4.0);
    let (item, amount) = (Item::ALL[0], Amount::from_units(3.0));
    let treatment = Treatment {
        product: words(),
        amount: None,
        route: None,
        reason: None,
        batch: None,
        by: None,
        day_only: false,
        meat_days: Some(7),
        milk_days: Some(5),
    };
    vec![
        Event::EweCame { tag: Some(words()) },
        Event::Tagged { animal, tag: words() },
        Event::LambBorn { dam: None, beside: None, sex: Some(Sex::Ewe), alive: true },
        Event::BirthEase { lamb, ease: Ease::Alone },
        Event::Weighed { lamb, mass },
        Event::Fed { lamb, volume: Volume::from_milliliters(200.0), milk: Milk::Milk, way: Way::Bottle },
        Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 2 },
        Event::BellyFelt { lamb, belly: Belly::Full },
        Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(39.0) },
        Event::PenMade { name: words(), size: None },
        Event::PenNamed { pen, name: words() },
        Event::GroupFormed { name: words() },
        Event::GroupNamed { group, name: words() },
        Event::RamIn { group, ram: Some(words()), age: None },
        Event::CrayonChanged { group, color: words() },
        Event::CrayonMark { ewe, color: words() },
        Event::Scanned { ewe, lambs: 1, days: Some(80) },
        Event::Conditioned { ewe, score: Condition::from_score(3.0) },
        Event::EweWeighed { ewe, mass: Mass::from_kilograms(70.0) },
        Event::FeedSet { group, mass: Mass::from_kilograms(0.5) },
        Event::StoreIn { item, amount },
        Event::StoreUsed { item, amount },
        Event::StoreThrown { item, amount },
        Event::StoreCounted { item, amount },
        Event::Died { animal, cause: Cause::Cold },
        Event::Remarked { animal, text: words() },
        Event::Life(Life::Marked { animal, mark: words() }),
        Event::Life(Life::Examined { animal, finding: words() }),
        Event::Life(Life::Treated { animal, treatment: Box::new(treatment) }),
    ]
}

/// Types or chooses something else in a draft; says whether there is anything to change.
fn disturb(draft: Draft) -> bool {
    match draft {
        Draft::Weighed { text, .. } | Draft::Fed { text, .. } | Draft::Stock { text, .. } => {
            text.set("1".to_owned());
        }
        Draft::Temperature { text, .. } => text.set("38".to_owned()),
        Draft::Born { alive, .. } => alive.set(false),
        Draft::Ease(ease) => ease.set(Ease::Vet),
        Draft::Vigor(score) => score.set(4),
        Draft::Belly(belly) => belly.set(Belly::Hollow),
        Draft::Cause(cause) => cause.set(Cause::Predator),
        Draft::Text { text, .. } => text.set("other".to_owned()),
        Draft::Condition(text) => text.set("2".to_owned()),
        Draft::Scan { lambs, .. } => lambs.set(Some(2)),
        Draft::Withheld { meat, .. } => meat.set("9".to_owned()),
        Draft::TimeAlone => return false,
    }
    true
}

#[test]
fn what_is_not_changed_stays_as_it_was() {
    for event in changeable() {
        let draft = Draft::of(&event, System::Metric);
        assert_eq!(draft.read(&event), Ok(event));
    }
}

#[test]
fn what_is_changed_in_the_sheet_is_changed_in_the_fact() {
    for event in changeable() {
        let draft = Draft::of(&event, System::Metric);
        assert!(disturb(draft), "{event:?} can be changed");
        let read = draft.read(&event);
        assert!(read.as_ref().is_ok_and(|read| *read != event), "{event:?} became {read:?}");
    }
}

#[test]
fn a_draft_of_another_fact_is_refused_and_never_dropped() {
    let sucked = Event::Sucked { lamb: lamb() };
    for event in changeable() {
        assert_eq!(Draft::of(&event, System::Metric).read(&sucked), Err(words::NOT_CHANGED.to_owned()));
        assert!(Draft::of(&sucked, System::Metric).read(&event).is_err());
    }
    assert_eq!(Draft::of(&sucked, System::Metric).read(&sucked), Ok(sucked));
}
