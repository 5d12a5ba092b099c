//! The forms of what is noted of groups, of ewes in the field, and of the stores. The lines are never edited.

use yeanling_core::book::{BatchId, Event, GroupId, Item, MilkedFrom, RamAge};
use yeanling_core::units::{Amount, Brix, Condition};

use super::ewe;
use crate::scribe::{kg, ml};

/// What version 1 writes of them.
pub(crate) const SEASON: &[&str] = &[
    r#"{"group-formed":{"name":"Lower field"}}"#,
    r#"{"group-named":{"group":"019c0000-0000-7000-8000-000000000007","name":"Hill"}}"#,
    r#"{"group-parted":{"group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"joined-group":{"ewe":"019c0000-0000-7000-8000-000000000001","group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"left-group":{"ewe":"019c0000-0000-7000-8000-000000000001","group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000007","ram":"Oscar","age":"lamb"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000007","age":"yearling"}}"#,
    r#"{"ram-in":{"group":"019c0000-0000-7000-8000-000000000007","age":"mature"}}"#,
    r#"{"ram-out":{"group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"crayon-changed":{"group":"019c0000-0000-7000-8000-000000000007","color":"red"}}"#,
    r#"{"crayon-mark":{"ewe":"019c0000-0000-7000-8000-000000000001","color":"red"}}"#,
    r#"{"scanned":{"ewe":"019c0000-0000-7000-8000-000000000001","lambs":0}}"#,
    r#"{"scanned":{"ewe":"019c0000-0000-7000-8000-000000000001","lambs":2,"days":78}}"#,
    r#"{"conditioned":{"ewe":"019c0000-0000-7000-8000-000000000001","score":2.75}}"#,
    r#"{"ewe-weighed":{"ewe":"019c0000-0000-7000-8000-000000000001","kg":63.5}}"#,
    r#"{"feed-set":{"group":"019c0000-0000-7000-8000-000000000007","kg":0.3}}"#,
    r#"{"booster-given":{"group":"019c0000-0000-7000-8000-000000000007"}}"#,
    r#"{"store-in":{"item":"hay","amount":12.5}}"#,
    r#"{"store-in":{"item":"straw","amount":12.5}}"#,
    r#"{"store-in":{"item":"grain","amount":12.5}}"#,
    r#"{"store-in":{"item":"milk-powder","amount":12.5}}"#,
    r#"{"store-in":{"item":"colostrum-powder","amount":12.5}}"#,
    r#"{"store-in":{"item":"electrolyte","amount":12.5}}"#,
    r#"{"store-in":{"item":"iodine","amount":12.5}}"#,
    r#"{"store-in":{"item":"disinfectant","amount":12.5}}"#,
    r#"{"store-in":{"item":"lubricant","amount":12.5}}"#,
    r#"{"store-in":{"item":"gloves","amount":12.5}}"#,
    r#"{"store-in":{"item":"ropes","amount":12.5}}"#,
    r#"{"store-in":{"item":"harnesses","amount":12.5}}"#,
    r#"{"store-in":{"item":"towels","amount":12.5}}"#,
    r#"{"store-in":{"item":"bottles","amount":12.5}}"#,
    r#"{"store-in":{"item":"teats","amount":12.5}}"#,
    r#"{"store-in":{"item":"tubes","amount":12.5}}"#,
    r#"{"store-in":{"item":"syringes","amount":12.5}}"#,
    r#"{"store-in":{"item":"thermometers","amount":12.5}}"#,
    r#"{"store-in":{"item":"markers","amount":12.5}}"#,
    r#"{"store-in":{"item":"crayons","amount":12.5}}"#,
    r#"{"store-in":{"item":"tags","amount":12.5}}"#,
    r#"{"store-in":{"item":"rings","amount":12.5}}"#,
    r#"{"store-used":{"item":"hay","amount":20.0}}"#,
    r#"{"store-thrown":{"item":"iodine","amount":250.0}}"#,
    r#"{"store-counted":{"item":"gloves","amount":100.0}}"#,
    r#"{"colostrum-frozen":{"from":{"ewe":"019c0000-0000-7000-8000-000000000001"},"bags":4,"ml":150.0,"brix":24.5,"label":"14, first"}}"#,
    r#"{"colostrum-frozen":{"from":"some-ewe","bags":4,"ml":150.0}}"#,
    r#"{"colostrum-frozen":{"from":"goat","bags":4,"ml":150.0}}"#,
    r#"{"colostrum-frozen":{"from":"cow","bags":4,"ml":150.0}}"#,
    r#"{"colostrum-thawed":{"batch":"019c0000-0000-7000-8000-000000000008","bags":1}}"#,
    r#"{"colostrum-thrown":{"batch":"019c0000-0000-7000-8000-000000000008","bags":3}}"#,
];

pub(super) fn facts() -> Vec<Event> {
    let ewe = ewe();
    let group: GroupId = "019c0000-0000-7000-8000-000000000007".parse().expect("an id");
    let batch: BatchId = "019c0000-0000-7000-8000-000000000008".parse().expect("an id");
    let units = Amount::from_units;
    let frozen = |from, brix, label: Option<&str>| Event::ColostrumFrozen {
        from,
        bags: 4,
        volume: ml(150.0),
        brix,
        label: label.map(str::to_owned),
    };
    let ram = |ram: Option<&str>, age| Event::RamIn { group, ram: ram.map(str::to_owned), age };
    let mut facts = vec![
        Event::GroupFormed { name: "Lower field".to_owned() },
        Event::GroupNamed { group, name: "Hill".to_owned() },
        Event::GroupParted { group },
        Event::JoinedGroup { ewe, group },
        Event::LeftGroup { ewe, group },
        ram(None, None),
        ram(Some("Oscar"), Some(RamAge::Lamb)),
        ram(None, Some(RamAge::Yearling)),
        ram(None, Some(RamAge::Mature)),
        Event::RamOut { group },
        Event::CrayonChanged { group, color: "red".to_owned() },
        Event::CrayonMark { ewe, color: "red".to_owned() },
        Event::Scanned { ewe, lambs: 0, days: None },
        Event::Scanned { ewe, lambs: 2, days: Some(78) },
        Event::Conditioned { ewe, score: Condition::from_score(2.75) },
        Event::EweWeighed { ewe, mass: kg(63.5) },
        Event::FeedSet { group, mass: kg(0.3) },
        Event::BoosterGiven { group },
    ];
    facts.extend(Item::ALL.map(|item| Event::StoreIn { item, amount: units(12.5) }));
    facts.extend([
        Event::StoreUsed { item: Item::Hay, amount: units(20.0) },
        Event::StoreThrown { item: Item::Iodine, amount: units(250.0) },
        Event::StoreCounted { item: Item::Gloves, amount: units(100.0) },
        frozen(MilkedFrom::Ewe(ewe), Some(Brix::from_percent(24.5)), Some("14, first")),
        frozen(MilkedFrom::SomeEwe, None, None),
        frozen(MilkedFrom::Goat, None, None),
        frozen(MilkedFrom::Cow, None, None),
        Event::ColostrumThawed { batch, bags: 1 },
        Event::ColostrumThrown { batch, bags: 3 },
    ]);
    facts
}
