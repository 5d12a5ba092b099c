//! Any fact of groups, of ewes in the field, and of the stores.

use proptest::prelude::*;
use yeanling_core::book::{BatchId, Event, GroupId, Item, MilkedFrom, RamAge};
use yeanling_core::units::{Amount, Brix, Condition};

use super::{ewe, id, mass, text, volume};

fn group() -> impl Strategy<Value = GroupId> {
    id().prop_map(GroupId::from_uuid)
}

fn batch() -> impl Strategy<Value = BatchId> {
    id().prop_map(BatchId::from_uuid)
}

fn item() -> impl Strategy<Value = Item> {
    prop::sample::select(&Item::ALL[..])
}

fn amount() -> impl Strategy<Value = Amount> {
    prop_oneof![(0..=5000_u32).prop_map(f64::from), 0.0..=1e9].prop_map(Amount::from_units)
}

/// Any fact of groups and of ewes in the field.
pub(super) fn groups() -> impl Strategy<Value = Event> {
    let age = prop_oneof![Just(RamAge::Lamb), Just(RamAge::Yearling), Just(RamAge::Mature)];
    let days = prop::option::of(any::<u16>());
    prop_oneof![
        3 => text().prop_map(|name| Event::GroupFormed { name }),
        1 => (group(), text()).prop_map(|(group, name)| Event::GroupNamed { group, name }),
        1 => group().prop_map(|group| Event::GroupParted { group }),
        3 => (ewe(), group()).prop_map(|(ewe, group)| Event::JoinedGroup { ewe, group }),
        2 => (ewe(), group()).prop_map(|(ewe, group)| Event::LeftGroup { ewe, group }),
        3 => (group(), prop::option::of(text()), prop::option::of(age))
            .prop_map(|(group, ram, age)| Event::RamIn { group, ram, age }),
        2 => group().prop_map(|group| Event::RamOut { group }),
        1 => (group(), text()).prop_map(|(group, color)| Event::CrayonChanged { group, color }),
        1 => (ewe(), text()).prop_map(|(ewe, color)| Event::CrayonMark { ewe, color }),
        1 => (ewe(), any::<u8>(), days).prop_map(|(ewe, lambs, days)| Event::Scanned { ewe, lambs, days }),
        1 => (ewe(), 0..=20_u8)
            .prop_map(|(ewe, quarters)| Event::Conditioned { ewe, score: Condition::from_quarters(quarters) }),
        1 => (ewe(), mass()).prop_map(|(ewe, mass)| Event::EweWeighed { ewe, mass }),
        1 => (group(), mass()).prop_map(|(group, mass)| Event::FeedSet { group, mass }),
        1 => group().prop_map(|group| Event::BoosterGiven { group }),
    ]
}

/// Any fact of the stores.
pub(super) fn stores() -> impl Strategy<Value = Event> {
    let from = prop_oneof![
        ewe().prop_map(MilkedFrom::Ewe),
        Just(MilkedFrom::SomeEwe),
        Just(MilkedFrom::Goat),
        Just(MilkedFrom::Cow),
    ];
    let brix = prop::option::of((0.0..=100.0).prop_map(Brix::from_percent));
    prop_oneof![
        2 => (item(), amount()).prop_map(|(item, amount)| Event::StoreIn { item, amount }),
        1 => (item(), amount()).prop_map(|(item, amount)| Event::StoreUsed { item, amount }),
        1 => (item(), amount()).prop_map(|(item, amount)| Event::StoreThrown { item, amount }),
        1 => (item(), amount()).prop_map(|(item, amount)| Event::StoreCounted { item, amount }),
        2 => (from, any::<u8>(), volume(), brix, prop::option::of(text())).prop_map(
            |(from, bags, volume, brix, label)| Event::ColostrumFrozen { from, bags, volume, brix, label }
        ),
        1 => (batch(), any::<u8>()).prop_map(|(batch, bags)| Event::ColostrumThawed { batch, bags }),
        1 => (batch(), any::<u8>()).prop_map(|(batch, bags)| Event::ColostrumThrown { batch, bags }),
    ]
}
