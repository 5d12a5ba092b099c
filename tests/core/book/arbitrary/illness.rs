//! Any fact of illness.

use proptest::prelude::*;
use yeanling_core::book::{Event, Illness};
use yeanling_core::terms::{Change, EweSign, EweStage, Gate, LambSign, Onset, Spread, UdderHalf};
use yeanling_core::units::Ketones;

use super::{animal, ewe, lamb};

pub(super) fn illness() -> impl Strategy<Value = Event> {
    let gate =
        || prop_oneof![Just(Gate::Good), Just(Gate::Bad), Just(Gate::NotChecked), Just(Gate::CannotCheck)];
    let gates = || (gate(), gate(), gate());
    let stage = prop_oneof![Just(EweStage::LateInLamb), Just(EweStage::Milking), Just(EweStage::Unknown)];
    let onset = prop::option::of(prop_oneof![Just(Onset::Hours), Just(Onset::Days)]);
    let of_ewe = prop::sample::subsequence(EweSign::ALL.to_vec(), 0..4);
    let of_lamb = prop::sample::subsequence(LambSign::ALL.to_vec(), 0..4);
    let change =
        prop_oneof![Just(Change::Better), Just(Change::Same), Just(Change::Worse), Just(Change::Well)];
    let half = || prop_oneof![Just(UdderHalf::Milks), Just(UdderHalf::Dry), Just(UdderHalf::HardOrHot)];
    prop_oneof![
        3 => (ewe(), stage, gates(), of_ewe, onset).prop_map(
            |(ewe, stage, (standing, eating, nothing_out), signs, onset)| Illness::EweSeen {
                ewe, stage, standing, eating, nothing_out, signs, onset,
            }
        ),
        3 => (lamb(), gates(), of_lamb).prop_map(
            |(lamb, (head_up, swallows, warm), signs)| Illness::LambSeen { lamb, head_up, swallows, warm, signs }
        ),
        2 => (animal(), change).prop_map(|(animal, change)| Illness::Changed { animal, change }),
        1 => (animal(), any::<u16>()).prop_map(|(animal, per_minute)| Illness::Pulse { animal, per_minute }),
        1 => (ewe(), 0.0..30.0_f64).prop_map(|(ewe, millimoles)| Illness::KetonesRead {
            ewe, ketones: Ketones::from_millimoles(millimoles),
        }),
        1 => (lamb(), any::<u8>()).prop_map(|(lamb, seconds)| Illness::SkinTent { lamb, seconds }),
        1 => (ewe(), half(), half()).prop_map(|(ewe, left, right)| Illness::UdderChecked { ewe, left, right }),
        1 => lamb().prop_map(|lamb| Illness::MilkAllowed { lamb }),
        1 => (animal(), prop::sample::select(&Spread::ALL[..]))
            .prop_map(|(animal, spread)| Illness::SpreadSeenTo { animal, spread }),
    ]
    .prop_map(Event::Illness)
}
