//! The forms of the season: groups, rams, what is seen in the field, stores.
//!
//! These too were written by the version named above them, and are never edited.

use yeanling_core::book::{BatchId, Event, GroupId, Item, MilkedFrom, RamAge};
use yeanling_core::units::{Amount, Brix, Condition};

use crate::scribe::{kg, ml};

/// What version 1 writes.
pub(in super::super) const SEASON_1: &[&str] = &[
    r#"{"group-formed":{"name":"Texel"}}"#,
    r#"{"group-named":{"group":"019c0000-0000-7000-8000-000000000005","name":"Top field"}}"#,
    r#"{"group-parted":{"group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"joined-group":{"ewe":"019c0000-0000-7000-8000-000000000001","group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"left-group":{"ewe":"019c0000-0000-7000-8000-000000000001","group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000005","ram":"Oscar","age":"lamb"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000005","ram":"Oscar","age":"yearling"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000005","ram":"Oscar","age":"mature"}}"#,
    r#"{"ram-out":{"group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"crayon-changed":{"group":"019c0000-0000-7000-8000-000000000005","color":"red"}}"#,
    r#"{"crayon-mark":{"ewe":"019c0000-0000-7000-8000-000000000001","color":"red"}}"#,
    r#"{"scanned":{"ewe":"019c0000-0000-7000-8000-000000000001","lambs":0}}"#,
    r#"{"scanned":{"ewe":"019c0000-0000-7000-8000-000000000001","lambs":2,"days":60}}"#,
    r#"{"conditioned":{"ewe":"019c0000-0000-7000-8000-000000000001","score":2.75}}"#,
    r#"{"ewe-weighed":{"ewe":"019c0000-0000-7000-8000-000000000001","kg":72.5}}"#,
    r#"{"feed-set":{"group":"019c0000-0000-7000-8000-000000000005","kg":0.2}}"#,
    r#"{"booster-given":{"group":"019c0000-0000-7000-8000-000000000005"}}"#,
    r#"{"store-in":{"item":"hay","amount":12.0}}"#,
    r#"{"store-in":{"item":"straw","amount":12.0}}"#,
    r#"{"store-in":{"item":"grain","amount":12.0}}"#,
    r#"{"store-in":{"item":"milk-powder","amount":12.0}}"#,
    r#"{"store-in":{"item":"colostrum-powder","amount":12.0}}"#,
    r#"{"store-in":{"item":"electrolyte","amount":12.0}}"#,
    r#"{"store-in":{"item":"iodine","amount":12.0}}"#,
    r#"{"store-in":{"item":"disinfectant","amount":12.0}}"#,
    r#"{"store-in":{"item":"lubricant","amount":12.0}}"#,
    r#"{"store-in":{"item":"gloves","amount":12.0}}"#,
    r#"{"store-in":{"item":"ropes","amount":12.0}}"#,
    r#"{"store-in":{"item":"harnesses","amount":12.0}}"#,
    r#"{"store-in":{"item":"towels","amount":12.0}}"#,
    r#"{"store-in":{"item":"bottles","amount":12.0}}"#,
    r#"{"store-in":{"item":"teats","amount":12.0}}"#,
    r#"{"store-in":{"item":"tubes","amount":12.0}}"#,
    r#"{"store-in":{"item":"syringes","amount":12.0}}"#,
    r#"{"store-in":{"item":"thermometers","amount":12.0}}"#,
    r#"{"store-in":{"item":"markers","amount":12.0}}"#,
    r#"{"store-in":{"item":"crayons","amount":12.0}}"#,
    r#"{"store-in":{"item":"tags","amount":12.0}}"#,
    r#"{"store-in":{"item":"rings","amount":12.0}}"#,
    r#"{"store-used":{"item":"hay","amount":37.5}}"#,
    r#"{"store-thrown":{"item":"hay","amount":37.5}}"#,
    r#"{"store-counted":{"item":"hay","amount":37.5}}"#,
    r#"{"colostrum-frozen":{"from":{"ewe":"019c0000-0000-7000-8000-000000000001"},"bags":4,"ml":60.0,"brix":26.5,"label":"first milk"}}"#,
    r#"{"colostrum-frozen":{"from":"some-ewe","bags":4,"ml":60.0}}"#,
    r#"{"colostrum-frozen":{"from":"goat","bags":4,"ml":60.0}}"#,
    r#"{"colostrum-frozen":{"from":"cow","bags":4,"ml":60.0}}"#,
    r#"{"colostrum-thawed":{"batch":"019c0000-0000-7000-8000-000000000006","bags":1}}"#,
    r#"{"colostrum-thrown":{"batch":"019c0000-0000-7000-8000-000000000006","bags":2}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let ewe = super::ewe();
    let group: GroupId = "019c0000-0000-7000-8000-000000000005".parse().expect("an id");
    let batch: BatchId = "019c0000-0000-7000-8000-000000000006".parse().expect("an id");
    let ram_in = |age| Event::RamIn { group, ram: Some("Oscar".to_owned()), age: Some(age) };
    let store_in = |item| Event::StoreIn { item, amount: Amount::from_units(12.0) };
    let frozen = |from, brix, label| Event::ColostrumFrozen { from, bags: 4, volume: ml(60.0), brix, label };
    vec![
        Event::GroupFormed { name: "Texel".to_owned() },
        Event::GroupNamed { group, name: "Top field".to_owned() },
        Event::GroupParted { group },
        Event::JoinedGroup { ewe, group },
        Event::LeftGroup { ewe, group },
        Event::RamIn { group, ram: None, age: None },
        ram_in(RamAge::Lamb),
        ram_in(RamAge::Yearling),
        ram_in(RamAge::Mature),
        Event::RamOut { group },
        Event::CrayonChanged { group, color: "red".to_owned() },
        Event::CrayonMark { ewe, color: "red".to_owned() },
        Event::Scanned { ewe, lambs: 0, days: None },
        Event::Scanned { ewe, lambs: 2, days: Some(60) },
        Event::Conditioned { ewe, score: Condition::from_score(2.75) },
        Event::EweWeighed { ewe, mass: kg(72.5) },
        Event::FeedSet { group, mass: kg(0.2) },
        Event::BoosterGiven { group },
        store_in(Item::Hay),
        store_in(Item::Straw),
        store_in(Item::Grain),
        store_in(Item::MilkPowder),
        store_in(Item::ColostrumPowder),
        store_in(Item::Electrolyte),
        store_in(Item::Iodine),
        store_in(Item::Disinfectant),
        store_in(Item::Lubricant),
        store_in(Item::Gloves),
        store_in(Item::Ropes),
        store_in(Item::Harnesses),
        store_in(Item::Towels),
        store_in(Item::Bottles),
        store_in(Item::Teats),
        store_in(Item::Tubes),
        store_in(Item::Syringes),
        store_in(Item::Thermometers),
        store_in(Item::Markers),
        store_in(Item::Crayons),
        store_in(Item::Tags),
        store_in(Item::Rings),
        Event::StoreUsed { item: Item::Hay, amount: Amount::from_units(37.5) },
        Event::StoreThrown { item: Item::Hay, amount: Amount::from_units(37.5) },
        Event::StoreCounted { item: Item::Hay, amount: Amount::from_units(37.5) },
        frozen(MilkedFrom::Ewe(ewe), Some(Brix::from_percent(26.5)), Some("first milk".to_owned())),
        frozen(MilkedFrom::SomeEwe, None, None),
        frozen(MilkedFrom::Goat, None, None),
        frozen(MilkedFrom::Cow, None, None),
        Event::ColostrumThawed { batch, bags: 1 },
        Event::ColostrumThrown { batch, bags: 2 },
    ]
}
