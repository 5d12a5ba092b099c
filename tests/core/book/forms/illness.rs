//! The forms of illness: what was seen, what was measured, how it went on.

use yeanling_core::book::{Animal, DutyKind, Event, Illness};
use yeanling_core::terms::{Change, EweSign, EweStage, Gate, LambSign, Onset, Spread, UdderHalf};
use yeanling_core::units::{Ketones, Moment, Temperature};

/// What version 1 writes of illness.
pub(in super::super) const ILLNESS_1: &[&str] = &[
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"late-in-lamb","standing":"bad","eating":"not-checked","nothing-out":"good","signs":["wobbly","cud-at-nose"],"onset":"hours"}}}"#,
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"unknown","standing":"cannot-check","eating":"good","nothing-out":"not-checked","signs":[]}}}"#,
    r#"{"illness":{"lamb-seen":{"lamb":"019c0000-0000-7000-8000-000000000002","head-up":"good","swallows":"bad","warm":"cannot-check","signs":["wet-chin","tight-belly"]}}}"#,
    r#"{"illness":{"changed":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"change":"better"}}}"#,
    r#"{"illness":{"changed":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"change":"worse"}}}"#,
    r#"{"illness":{"ewe-temperature":{"ewe":"019c0000-0000-7000-8000-000000000001","celsius":40.6}}}"#,
    r#"{"illness":{"pulse":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"per-minute":96}}}"#,
    r#"{"illness":{"breaths":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"per-minute":60}}}"#,
    r#"{"illness":{"ketones-read":{"ewe":"019c0000-0000-7000-8000-000000000001","millimoles":1.4}}}"#,
    r#"{"illness":{"skin-tent":{"lamb":"019c0000-0000-7000-8000-000000000002","seconds":8}}}"#,
    r#"{"illness":{"udder-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","left":"milks","right":"dry"}}}"#,
    r#"{"illness":{"udder-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","left":"hard-or-hot","right":"cold-or-blue"}}}"#,
    r#"{"illness":{"milk-allowed":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"illness":{"changed":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"change":"same"}}}"#,
    r#"{"illness":{"changed":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"change":"well"}}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"illness-look","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"duty":"illness","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"illness":{"ewe-seen":{"ewe":"019c0000-0000-7000-8000-000000000001","stage":"after-lambing","standing":"good","eating":"good","nothing-out":"good","signs":["no-milk"]}}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"udder","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"duty":"settled","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"duty":"dam-dry","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"duty":"weigh-again","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"put-off":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"duty":"hard-birth","until":"2026-02-25T04:12:00.000-05:00"}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"spread":"wet-chins"}}}"#,
    r#"{"illness":{"spread-seen-to":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"spread":"many-lame"}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let (ewe, lamb) = (super::ewe(), super::lamb());
    let (ewe_a, lamb_a) = (Animal::Ewe(ewe), Animal::Lamb(lamb));
    let until: Moment = "2026-02-25T04:12:00.000-05:00".parse().expect("a moment");
    let changed = |animal, change| Illness::Changed { animal, change };
    let checked = |left, right| Illness::UdderChecked { ewe, left, right };
    let illness = [
        Illness::EweSeen {
            ewe,
            stage: EweStage::LateInLamb,
            standing: Gate::Bad,
            eating: Gate::NotChecked,
            nothing_out: Gate::Good,
            signs: vec![EweSign::Wobbly, EweSign::CudAtNose],
            onset: Some(Onset::Hours),
        },
        Illness::EweSeen {
            ewe,
            stage: EweStage::Unknown,
            standing: Gate::CannotCheck,
            eating: Gate::Good,
            nothing_out: Gate::NotChecked,
            signs: Vec::new(),
            onset: None,
        },
        Illness::LambSeen {
            lamb,
            head_up: Gate::Good,
            swallows: Gate::Bad,
            warm: Gate::CannotCheck,
            signs: vec![LambSign::WetChin, LambSign::TightBelly],
        },
        changed(ewe_a, Change::Better),
        changed(lamb_a, Change::Worse),
        Illness::EweTemperature { ewe, temperature: Temperature::from_celsius(40.6) },
        Illness::Pulse { animal: ewe_a, per_minute: 96 },
        Illness::Breaths { animal: lamb_a, per_minute: 60 },
        Illness::KetonesRead { ewe, ketones: Ketones::from_millimoles(1.4) },
        Illness::SkinTent { lamb, seconds: 8 },
        checked(UdderHalf::Milks, UdderHalf::Dry),
        checked(UdderHalf::HardOrHot, UdderHalf::ColdOrBlue),
        Illness::MilkAllowed { lamb },
        changed(lamb_a, Change::Same),
        changed(ewe_a, Change::Well),
    ];
    let put_off = [
        Event::PutOff { animal: ewe_a, duty: DutyKind::IllnessLook, until },
        Event::PutOff { animal: lamb_a, duty: DutyKind::Illness, until },
    ];
    let good = Gate::Good;
    let no_milk = Event::Illness(Illness::EweSeen {
        ewe,
        stage: EweStage::AfterLambing,
        standing: good,
        eating: good,
        nothing_out: good,
        signs: vec![EweSign::NoMilk],
        onset: None,
    });
    let later = [
        (ewe_a, DutyKind::Udder),
        (ewe_a, DutyKind::Settled),
        (lamb_a, DutyKind::DamDry),
        (lamb_a, DutyKind::WeighAgain),
        (lamb_a, DutyKind::HardBirth),
    ];
    let later = later.into_iter().map(|(animal, duty)| Event::PutOff { animal, duty, until });
    let seen_to = [(lamb_a, Spread::WetChins), (ewe_a, Spread::ManyLame)]
        .map(|(animal, spread)| Event::Illness(Illness::SpreadSeenTo { animal, spread }));
    illness
        .into_iter()
        .map(Event::Illness)
        .chain(put_off)
        .chain([no_milk])
        .chain(later)
        .chain(seen_to)
        .collect()
}
