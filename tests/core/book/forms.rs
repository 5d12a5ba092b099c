//! Every form ever written stays readable.
//!
//! The lines below were written by the version named above them. They are never edited: a form that changes is a form
//! that someone's book can no longer be read in. A later version adds its own.

mod care;
mod illness;
mod life;
mod past;
mod planning;
mod season;
mod signs;

pub(super) use care::CARE_1;
pub(super) use illness::ILLNESS_1;
pub(super) use life::LIFE_1;
pub(super) use past::PAST_1;
pub(super) use planning::PLANNING_1;
pub(super) use season::SEASON_1;
pub(super) use signs::SIGNS_1;

use yeanling_core::book::{
    Animal, Belly, Cause, DutyKind, Event, EweId, Found, LambId, LambingEase, Milk, Part, PenId, PenSize,
    Presentation, Ring, Sex, Sign, VigorScale, Way,
};
use yeanling_core::settings::{BottleTable, Choice, DayRule, Housing, LaborLimits, Limits, PenStay};
use yeanling_core::units::{Length, Moment, System, Temperature};

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
    r#"{"sign-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","sign":"restless"}}"#,
    r#"{"sign-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","sign":"apart"}}"#,
    r#"{"sign-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","sign":"udder-tight"}}"#,
    r#"{"sign-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","sign":"slack"}}"#,
    r#"{"sign-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","sign":"discharge"}}"#,
    r#"{"water-bag-seen":{"ewe":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"straining-seen":{"ewe":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"feet-and-nose"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"fore-feet"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"one-foot"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"head"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"hind-feet"}}"#,
    r#"{"part-showing":{"ewe":"019c0000-0000-7000-8000-000000000001","part":"tail"}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":"neck-tight"}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":"nothing-yet"}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":"empty"}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"normal"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"one-leg-back"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"both-legs-back"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"head-back"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"head-down"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"elbows-locked"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"hind-feet-first"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"tail-first"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"crosswise"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"two-tangled"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"too-big"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"upside-down"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"deformed"}}}"#,
    r#"{"help-begun":{"ewe":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"vet-called":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"looked-at":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"not-lambing":{"ewe":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"afterbirth-passed":{"ewe":"019c0000-0000-7000-8000-000000000001"}}"#,
    r#"{"accepted":{"lamb":"019c0000-0000-7000-8000-000000000002","accepts":false}}"#,
    r#"{"temperature-taken":{"lamb":"019c0000-0000-7000-8000-000000000002","celsius":36.9}}"#,
    r#"{"swallow-tried":{"lamb":"019c0000-0000-7000-8000-000000000002","able":true}}"#,
    r#"{"warmed":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"solids-eaten":{"lamb":"019c0000-0000-7000-8000-000000000002","kg":0.25}}"#,
    r#"{"weaned":{"lamb":"019c0000-0000-7000-8000-000000000002"}}"#,
    r#"{"ringed":{"lamb":"019c0000-0000-7000-8000-000000000002","ring":"tail"}}"#,
    r#"{"ringed":{"lamb":"019c0000-0000-7000-8000-000000000002","ring":"castration"}}"#,
    r#"{"pen-made":{"name":"By the door"}}"#,
    r#"{"pen-made":{"name":"2","size":{"wide-m":1.5,"deep-m":1.8}}}"#,
    r#"{"pen-named":{"pen":"019c0000-0000-7000-8000-000000000004","name":"3"}}"#,
    r#"{"pen-cleaned":{"pen":"019c0000-0000-7000-8000-000000000004"}}"#,
    r#"{"pen-closed":{"pen":"019c0000-0000-7000-8000-000000000004"}}"#,
    r#"{"put-in-pen":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"pen":"019c0000-0000-7000-8000-000000000004"}}"#,
    r#"{"let-out":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"dip-navel","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"dip-navel-again","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"get-up","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"first-milk","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"feed","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"day-total","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"weigh","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"score-vigor","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"take-temperature","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"call-vet","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"failing","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"hollow","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"ring","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"weaning-check","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"look","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"long-restless","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"hand-check","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"progress","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"neck-tight","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"put-right","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"next-lamb","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"afterbirth","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"let-out","until":"2026-02-25T03:12:00.000-05:00"}}"#,
    r#"{"vigor-scored":{"lamb":"019c0000-0000-7000-8000-000000000002","scale":"ten-point","score":7}}"#,
    r#"{"vigor-scored":{"lamb":"019c0000-0000-7000-8000-000000000002","scale":"eight-point","score":7}}"#,
    r#"{"chose":{"labor-limits":{"look-minutes":60,"restless-minutes":360,"hand-check-minutes":30,"step-in-minutes":60,"progress-minutes":30,"neck-minutes":10,"put-right-minutes":10,"next-lamb-minutes":30,"next-check-minutes":60,"afterbirth-ask-minutes":360,"afterbirth-late-minutes":720,"afterbirth-vet-minutes":1080}}}"#,
    r#"{"chose":{"pen-stay":{"single-hours":24,"twins-hours":48,"more-hours":72}}}"#,
];

/// Every line, the season's last.
pub(super) fn every_form() -> impl Iterator<Item = &'static str> {
    VERSION_1
        .iter()
        .chain(SEASON_1)
        .chain(LIFE_1)
        .chain(CARE_1)
        .chain(ILLNESS_1)
        .chain(PLANNING_1)
        .chain(PAST_1)
        .chain(SIGNS_1)
        .copied()
}

/// The facts that all lines stand for, in their order.
fn every_fact() -> Vec<Event> {
    facts()
        .into_iter()
        .chain(season::facts())
        .chain(life::facts())
        .chain(care::facts())
        .chain(illness::facts())
        .chain(planning::facts())
        .chain(past::facts())
        .chain(signs::facts())
        .collect()
}

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
        ease(LambingEase::Alone),
        ease(LambingEase::SlightByHand),
        ease(LambingEase::HardByHand),
        ease(LambingEase::Vet),
        ease(LambingEase::Surgery),
        ease(LambingEase::PlannedSurgery),
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
        Event::Deleted { entry: lamb.entry() },
        Event::Restored { entry: lamb.entry() },
    ]
    .into_iter()
    .chain(lambing_facts())
    .collect()
}

/// The facts of labor, pens and failing lambs, which came later.
fn lambing_facts() -> Vec<Event> {
    let (ewe_a, lamb_a, ewe, lamb) = (Animal::Ewe(ewe()), Animal::Lamb(lamb()), ewe(), lamb());
    let pen: PenId = "019c0000-0000-7000-8000-000000000004".parse().expect("an id");
    let size = PenSize { wide: Length::from_meters(1.5), deep: Length::from_meters(1.8) };
    let until: Moment = "2026-02-25T03:12:00.000-05:00".parse().expect("a moment");
    let sign = |sign| Event::SignSeen { ewe, sign };
    let part = |part| Event::PartShowing { ewe, part };
    let checked = |found| Event::HandChecked { ewe, found };
    let put_off = |duty| Event::PutOff { animal: ewe_a, duty, until };
    vec![
        sign(Sign::Restless),
        sign(Sign::Apart),
        sign(Sign::UdderTight),
        sign(Sign::Slack),
        sign(Sign::Discharge),
        Event::WaterBagSeen { ewe },
        Event::StrainingSeen { ewe },
        part(Part::FeetAndNose),
        part(Part::ForeFeet),
        part(Part::OneFoot),
        part(Part::Head),
        part(Part::HindFeet),
        part(Part::Tail),
        checked(Found::CervixClosed),
        checked(Found::NothingYet),
        checked(Found::Empty),
        checked(Found::Lamb(Presentation::Normal)),
        checked(Found::Lamb(Presentation::OneLegBack)),
        checked(Found::Lamb(Presentation::BothLegsBack)),
        checked(Found::Lamb(Presentation::HeadBack)),
        checked(Found::Lamb(Presentation::HeadDown)),
        checked(Found::Lamb(Presentation::ElbowsLocked)),
        checked(Found::Lamb(Presentation::HindFeetFirst)),
        checked(Found::Lamb(Presentation::TailFirst)),
        checked(Found::Lamb(Presentation::Crosswise)),
        checked(Found::Lamb(Presentation::TwoTangled)),
        checked(Found::Lamb(Presentation::TooBig)),
        checked(Found::Lamb(Presentation::UpsideDown)),
        checked(Found::Lamb(Presentation::Deformed)),
        Event::HelpBegun { ewe },
        Event::VetCalled { animal: ewe_a },
        Event::LookedAt { animal: lamb_a },
        Event::NotLambing { ewe },
        Event::AfterbirthPassed { ewe },
        Event::Accepted { lamb, accepts: false },
        Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(36.9) },
        Event::SwallowTried { lamb, able: true },
        Event::Warmed { lamb },
        Event::SolidsEaten { lamb, mass: kg(0.25) },
        Event::Weaned { lamb },
        Event::Ringed { lamb, ring: Ring::Tail },
        Event::Ringed { lamb, ring: Ring::Castration },
        Event::PenMade { name: "By the door".to_owned(), size: None },
        Event::PenMade { name: "2".to_owned(), size: Some(size) },
        Event::PenNamed { pen, name: "3".to_owned() },
        Event::PenCleaned { pen },
        Event::PenClosed { pen },
        Event::PutInPen { animal: ewe_a, pen },
        Event::LetOut { animal: ewe_a },
        put_off(DutyKind::DipNavel),
        put_off(DutyKind::DipNavelAgain),
        put_off(DutyKind::GetUp),
        put_off(DutyKind::FirstMilk),
        put_off(DutyKind::Feed),
        put_off(DutyKind::DayTotal),
        put_off(DutyKind::Weigh),
        put_off(DutyKind::ScoreVigor),
        put_off(DutyKind::TakeTemperature),
        put_off(DutyKind::CallVet),
        put_off(DutyKind::Failing),
        put_off(DutyKind::Hollow),
        put_off(DutyKind::Ring),
        put_off(DutyKind::WeaningCheck),
        put_off(DutyKind::Look),
        put_off(DutyKind::LongRestless),
        put_off(DutyKind::HandCheck),
        put_off(DutyKind::Progress),
        put_off(DutyKind::CervixClosed),
        put_off(DutyKind::PutRight),
        put_off(DutyKind::NextLamb),
        put_off(DutyKind::Afterbirth),
        put_off(DutyKind::LetOut),
        Event::VigorScored { lamb, scale: VigorScale::TenPoint, score: 7 },
        Event::VigorScored { lamb, scale: VigorScale::EightPoint, score: 7 },
        Event::Chose(Choice::LaborLimits(LaborLimits::default())),
        Event::Chose(Choice::PenStay(PenStay::default())),
    ]
}

#[test]
fn every_form_of_version_1_is_read_and_written_as_it_was() {
    let facts = every_fact();
    let lines: Vec<&str> = every_form().collect();
    assert_eq!(facts.len(), lines.len());
    for (line, fact) in lines.iter().zip(facts) {
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
        Event::Deleted { .. } => 18,
        Event::Restored { .. } => 19,
        Event::SignSeen { .. } => 20,
        Event::WaterBagSeen { .. } => 21,
        Event::StrainingSeen { .. } => 22,
        Event::PartShowing { .. } => 23,
        Event::HandChecked { .. } => 24,
        Event::HelpBegun { .. } => 25,
        Event::VetCalled { .. } => 26,
        Event::LookedAt { .. } => 27,
        Event::NotLambing { .. } => 28,
        Event::AfterbirthPassed { .. } => 29,
        Event::Accepted { .. } => 30,
        Event::TemperatureTaken { .. } => 31,
        Event::SwallowTried { .. } => 32,
        Event::Warmed { .. } => 33,
        Event::SolidsEaten { .. } => 34,
        Event::Weaned { .. } => 35,
        Event::Ringed { .. } => 36,
        Event::PenMade { .. } => 37,
        Event::PenNamed { .. } => 38,
        Event::PenCleaned { .. } => 39,
        Event::PenClosed { .. } => 40,
        Event::PutInPen { .. } => 41,
        Event::LetOut { .. } => 42,
        Event::PutOff { .. } => 43,
        Event::GroupFormed { .. } => 44,
        Event::GroupNamed { .. } => 45,
        Event::GroupParted { .. } => 46,
        Event::JoinedGroup { .. } => 47,
        Event::LeftGroup { .. } => 48,
        Event::RamIn { .. } => 49,
        Event::RamOut { .. } => 50,
        Event::CrayonChanged { .. } => 51,
        Event::CrayonMark { .. } => 52,
        Event::Scanned { .. } => 53,
        Event::Conditioned { .. } => 54,
        Event::EweWeighed { .. } => 55,
        Event::FeedSet { .. } => 56,
        Event::BoosterGiven { .. } => 57,
        Event::StoreIn { .. } => 58,
        Event::StoreUsed { .. } => 59,
        Event::StoreThrown { .. } => 60,
        Event::StoreCounted { .. } => 61,
        Event::ColostrumFrozen { .. } => 62,
        Event::ColostrumThawed { .. } => 63,
        Event::ColostrumThrown { .. } => 64,
        Event::Life(_) => 65,
        Event::Care(_) => 66,
        Event::Illness(_) => 67,
        Event::Planning(_) => 68,
        Event::Past(_) => 69,
        Event::Unread(_) => 70,
    };
    let mut numbers: Vec<i32> = every_fact().iter().map(number).collect();
    numbers.sort_unstable();
    numbers.dedup();
    assert_eq!(numbers, (0..70).collect::<Vec<_>>());
}
