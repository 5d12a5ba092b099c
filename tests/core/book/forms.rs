//! Every form ever written stays readable.
//!
//! The lines below were written by the version named above them. They are never edited: a form that changes is a form
//! that someone's book can no longer be read in. A later version adds its own.

use yeanling_core::book::{Animal, Belly, Cause, Ease, Event, EweId, LambId, Milk, Sex, VigorScale, Way};
use yeanling_core::practice::{BottleTable, Choice, DayRule, Housing, Limits};
use yeanling_core::units::{Moment, System};

use crate::scribe::{kg, ml};

/// What version 1 writes.
pub(super) const VERSION_1: &[&str] = &[
    r#"{"ewe-came":{"tag":"23"}}"#,
    r#"{"ewe-came":{}}"#,
    r#"{"tagged":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"tag":"UK 012345 00023"}}"#,
    r#"{"tagged":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"tag":"Bramble"}}"#,
    r#"{"lamb-born":{"alive":true}}"#,
    r#"{"lamb-born":{"dam":"019c0000-0000-7000-8000-000000000001","beside":"019c0000-0000-7000-8000-000000000002","sex":"ram","alive":false}}"#,
    r#"{"lamb-born":{"sex":"ewe","alive":true}}"#,
    r#"{"dam-given":{"lamb":"019c0000-0000-7000-8000-000000000002","dam":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"alone"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"slight-by-hand"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"hard-by-hand"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"vet"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"surgery"}}"#,
    r#"{"birth-ease":{"lamb":"019c0000-0000-7000-8000-000000000002","ease":"planned-surgery"}}"#,
    r#"{"stood":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"sucked":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"navel-dipped":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"weighed":{"lamb":"019c0000-0000-7000-8000-000000000002","kg":4.2}}"#,
    r#"{"weighed":{"lamb":"019c0000-0000-7000-8000-000000000002","kg":4.0}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":195.0,"milk":"dam-colostrum","way":"bottle"}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":195.2,"milk":"ewe-colostrum","way":"tube"}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":60.0,"milk":"other-colostrum","way":"tube"}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":60.0,"milk":"powder-colostrum","way":"tube"}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":125.0,"milk":"replacer","way":"bottle"}}"#,
    r#"{"fed":{"lamb":"019c0000-0000-7000-8000-000000000002","ml":125.0,"milk":"milk","way":"bottle"}}"#,
    r#"{"vigor-scored":{"lamb":"019c0000-0000-7000-8000-000000000002","scale":"four-grade","score":2}}"#,
    r#"{"belly-felt":{"lamb":"019c0000-0000-7000-8000-000000000002","belly":"full"}}"#,
    r#"{"belly-felt":{"lamb":"019c0000-0000-7000-8000-000000000002","belly":"hollow"}}"#,
    r#"{"all-born":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"died":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"cause":"starved"}}"#,
    r#"{"died":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"cause":"cold"}}"#,
    r#"{"died":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"cause":"hard-birth"}}"#,
    r#"{"died":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"cause":"infection"}}"#,
    r#"{"died":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"cause":"predator"}}"#,
    r#"{"died":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"cause":"deformity"}}"#,
    r#"{"died":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"cause":"accident"}}"#,
    r#"{"died":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"cause":"unknown"}}"#,
    r#"{"remarked":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"text":"Hard on one side,\n\"vet seen\"."}}"#,
    r#"{"chose":{"farm-name":"Quarry Bank"}}"#,
    r#"{"chose":{"system":"metric"}}"#,
    r#"{"chose":{"system":"us"}}"#,
    r#"{"chose":{"day-rule":"ahdb200"}}"#,
    r#"{"chose":{"day-rule":"ruma210"}}"#,
    r#"{"chose":{"day-rule":"ten-percent"}}"#,
    r#"{"chose":{"housing":"housed"}}"#,
    r#"{"chose":{"housing":"outdoors"}}"#,
    r#"{"chose":{"bottle-table":"vet-supplier"}}"#,
    r#"{"chose":{"bottle-table":"us-handbook"}}"#,
    r#"{"chose":{"limits":{"up-minutes":30,"help-minutes":60,"red-minutes":120,"last-call-minutes":360,"navel-again-minutes":360}}}"#,
    r#"{"same-animal":{"keep":{"ewe":"019c0000-0000-7000-8000-000000000001"},"also":{"ewe":"019c0000-0000-7000-8000-000000000003"}}}"#,
    r#"{"amended":{"entry":"019c0000-0000-7000-8000-000000000002","event":{"stood":{"lamb":"019c0000-0000-7000-8000-000000000002"}},"at":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"struck":{"entry":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"restored":{"entry":"019c0000-0000-7000-8000-000000000002"}}"#,
];

/// A whole entry as version 1 writes it.
pub(super) const ENTRY_1: &str = r#"{"id":"019c0000-0000-7000-8000-000000000002","device":"019c0000-0000-7000-8000-0000000000d1","noted":"2026-02-25T03:12:30.250-05:00","at":"2026-02-25T03:12:00.000-05:00","event":{"lamb-born":{"alive":true}}}"#;

fn ewe() -> EweId {
    "019c0000-0000-7000-8000-000000000001".parse().expect("an id")
}

fn lamb() -> LambId {
    "019c0000-0000-7000-8000-000000000002".parse().expect("an id")
}

/// The facts that the lines of version 1 stand for, in their order.
fn facts() -> Vec<Event> {
    let (ewe_a, lamb_a, lamb) = (Animal::Ewe(ewe()), Animal::Lamb(lamb()), lamb());
    let fed = |milliliters, milk, way| Event::Fed { lamb, volume: ml(milliliters), milk, way };
    let tagged = |animal, tag: &str| Event::Tagged { animal, tag: tag.to_owned() };
    let born = |dam, beside, sex, alive| Event::LambBorn { dam, beside, sex, alive };
    let ease = |ease| Event::BirthEase { lamb, ease };
    let died = |animal, cause| Event::Died { animal, cause };
    let at: Moment = "2026-02-25T03:12:00.000-05:00".parse().expect("a moment");
    let remark = "Hard on one side,\n\"vet seen\".".to_owned();
    let also = "019c0000-0000-7000-8000-000000000003".parse().expect("an id");
    vec![
        Event::EweCame { tag: Some("23".to_owned()) },
        Event::EweCame { tag: None },
        tagged(ewe_a, "UK 012345 00023"),
        tagged(lamb_a, "Bramble"),
        born(None, None, None, true),
        born(Some(ewe()), Some(lamb), Some(Sex::Ram), false),
        born(None, None, Some(Sex::Ewe), true),
        Event::DamGiven { lamb, dam: ewe() },
        ease(Ease::Alone),
        ease(Ease::SlightByHand),
        ease(Ease::HardByHand),
        ease(Ease::Vet),
        ease(Ease::Surgery),
        ease(Ease::PlannedSurgery),
        Event::Stood { lamb },
        Event::Sucked { lamb },
        Event::NavelDipped { lamb },
        Event::Weighed { lamb, mass: kg(4.2) },
        Event::Weighed { lamb, mass: kg(4.0) },
        fed(195.0, Milk::DamColostrum, Way::Bottle),
        fed(195.2, Milk::EweColostrum, Way::Tube),
        fed(60.0, Milk::OtherColostrum, Way::Tube),
        fed(60.0, Milk::PowderColostrum, Way::Tube),
        fed(125.0, Milk::Replacer, Way::Bottle),
        fed(125.0, Milk::Milk, Way::Bottle),
        Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 2 },
        Event::BellyFelt { lamb, belly: Belly::Full },
        Event::BellyFelt { lamb, belly: Belly::Hollow },
        Event::AllBorn { lamb },
        died(lamb_a, Cause::Starved),
        died(lamb_a, Cause::Cold),
        died(lamb_a, Cause::HardBirth),
        died(ewe_a, Cause::Infection),
        died(ewe_a, Cause::Predator),
        died(lamb_a, Cause::Deformity),
        died(lamb_a, Cause::Accident),
        died(ewe_a, Cause::Unknown),
        Event::Remarked { animal: ewe_a, text: remark },
        Event::Chose(Choice::FarmName("Quarry Bank".to_owned())),
        Event::Chose(Choice::System(System::Metric)),
        Event::Chose(Choice::System(System::Us)),
        Event::Chose(Choice::DayRule(DayRule::Ahdb200)),
        Event::Chose(Choice::DayRule(DayRule::Ruma210)),
        Event::Chose(Choice::DayRule(DayRule::TenPercent)),
        Event::Chose(Choice::Housing(Housing::Housed)),
        Event::Chose(Choice::Housing(Housing::Outdoors)),
        Event::Chose(Choice::BottleTable(BottleTable::VetSupplier)),
        Event::Chose(Choice::BottleTable(BottleTable::UsHandbook)),
        Event::Chose(Choice::Limits(Limits::default())),
        Event::SameAnimal { keep: ewe_a, also: Animal::Ewe(also) },
        Event::Amended { entry: lamb.entry(), event: Box::new(Event::Stood { lamb }), at },
        Event::Struck { entry: lamb.entry() },
        Event::Restored { entry: lamb.entry() },
    ]
}

#[test]
fn every_form_of_version_1_is_read_and_written_as_it_was() {
    let facts = facts();
    assert_eq!(facts.len(), VERSION_1.len());
    for (line, fact) in VERSION_1.iter().zip(facts) {
        assert_eq!(serde_json::from_str::<Event>(line).ok().as_ref(), Some(&fact), "{line}");
        assert_eq!(serde_json::to_string(&fact).ok().as_deref(), Some(*line));
    }
}

#[test]
fn an_entry_of_version_1_is_read_and_written_as_it_was() {
    let entry = super::entry(ENTRY_1);
    assert_eq!(entry.event, Event::LambBorn { dam: None, beside: None, sex: None, alive: true });
    assert_eq!(entry.id, lamb().entry());
    assert_eq!(entry.noted.to_string(), "2026-02-25T03:12:30.250-05:00");
    assert_eq!(entry.at.to_string(), "2026-02-25T03:12:00.000-05:00");
    assert_eq!(serde_json::to_string(&entry).ok().as_deref(), Some(ENTRY_1));
}

/// Stops compiling when a fact is added: give it a line above, and the next number here.
#[test]
fn every_fact_has_a_form() {
    let number = |event: &Event| match event {
        Event::EweCame { .. } => 0,
        Event::Tagged { .. } => 1,
        Event::LambBorn { .. } => 2,
        Event::DamGiven { .. } => 3,
        Event::BirthEase { .. } => 4,
        Event::Stood { .. } => 5,
        Event::Sucked { .. } => 6,
        Event::NavelDipped { .. } => 7,
        Event::Weighed { .. } => 8,
        Event::Fed { .. } => 9,
        Event::VigorScored { .. } => 10,
        Event::BellyFelt { .. } => 11,
        Event::AllBorn { .. } => 12,
        Event::Died { .. } => 13,
        Event::Remarked { .. } => 14,
        Event::Chose(_) => 15,
        Event::SameAnimal { .. } => 16,
        Event::Amended { .. } => 17,
        Event::Struck { .. } => 18,
        Event::Restored { .. } => 19,
        Event::Unread(_) => 20,
    };
    let mut numbers: Vec<i32> = facts().iter().map(number).collect();
    numbers.dedup();
    assert_eq!(numbers, (0..20).collect::<Vec<_>>());
}
