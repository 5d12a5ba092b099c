//! The forms of care: what the vet said, glucose, a finger in the mouth, the afterbirth, a lamb put right or found.

use yeanling_core::book::{
    Animal, Awaited, Care, Event, Found, GlucoseBy, Mouth, Presentation, Suck, VetSaid,
};
use yeanling_core::units::Moment;

/// What version 1 writes of care.
pub(in super::super) const CARE_1: &[&str] = &[
    r#"{"care":{"vet-said":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"said":"coming"}}}"#,
    r#"{"care":{"vet-said":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"said":{"advised":{"what":"keep it dry","look-again":"2026-02-25T04:12:00.000-05:00"}}}}}"#,
    r#"{"care":{"vet-said":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"said":{"advised":{"look-again":"2026-02-25T04:12:00.000-05:00"}}}}}"#,
    r#"{"care":{"vet-said":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"said":"nobody-reached"}}}"#,
    r#"{"care":{"vet-said":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"said":{"saw":{"plan":"calcium given","look-again":"2026-02-25T04:12:00.000-05:00"}}}}}"#,
    r#"{"care":{"vet-said":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"said":{"saw":{"look-again":"2026-02-25T04:12:00.000-05:00"}}}}}"#,
    r#"{"care":{"glucose-given":{"lamb":"019c0000-0000-7000-8000-000000000002","by":"vet"}}}"#,
    r#"{"care":{"glucose-given":{"lamb":"019c0000-0000-7000-8000-000000000002","by":"trained"}}}"#,
    r#"{"care":{"mouth-felt":{"lamb":"019c0000-0000-7000-8000-000000000002","mouth":"cold","suck":"none"}}}"#,
    r#"{"care":{"mouth-felt":{"lamb":"019c0000-0000-7000-8000-000000000002","mouth":"cool","suck":"weak"}}}"#,
    r#"{"care":{"mouth-felt":{"lamb":"019c0000-0000-7000-8000-000000000002","mouth":"warm","suck":"strong"}}}"#,
    r#"{"care":{"afterbirth-awaited":{"ewe":"019c0000-0000-7000-8000-000000000001","seen":"hanging"}}}"#,
    r#"{"care":{"afterbirth-awaited":{"ewe":"019c0000-0000-7000-8000-000000000001","seen":"not-seen-bright"}}}"#,
    r#"{"care":{"put-right":{"ewe":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"care":{"found-born":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"care":{"settled":{"ewe":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"hand-checked":{"ewe":"019c0000-0000-7000-8000-000000000001","found":{"lamb":"dead"}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let (ewe, lamb) = (super::ewe(), super::lamb());
    let (ewe_a, lamb_a) = (Animal::Ewe(ewe), Animal::Lamb(lamb));
    let look_again: Moment = "2026-02-25T04:12:00.000-05:00".parse().expect("a moment");
    let words = |words: &str| Some(words.to_owned());
    let said = |animal, said| Care::VetSaid { animal, said };
    let felt = |mouth, suck| Care::MouthFelt { lamb, mouth, suck };
    let care = [
        said(ewe_a, VetSaid::Coming),
        said(lamb_a, VetSaid::Advised { what: words("keep it dry"), look_again }),
        said(lamb_a, VetSaid::Advised { what: None, look_again }),
        said(lamb_a, VetSaid::NobodyReached),
        said(ewe_a, VetSaid::Saw { plan: words("calcium given"), look_again }),
        said(ewe_a, VetSaid::Saw { plan: None, look_again }),
        Care::GlucoseGiven { lamb, by: GlucoseBy::Vet },
        Care::GlucoseGiven { lamb, by: GlucoseBy::Trained },
        felt(Mouth::Cold, Suck::None),
        felt(Mouth::Cool, Suck::Weak),
        felt(Mouth::Warm, Suck::Strong),
        Care::AfterbirthAwaited { ewe, seen: Awaited::Hanging },
        Care::AfterbirthAwaited { ewe, seen: Awaited::NotSeenBright },
        Care::PutRight { ewe },
        Care::FoundBorn { lamb },
        Care::Settled { ewe },
    ];
    let dead = Event::HandChecked { ewe, found: Found::Lamb(Presentation::Dead) };
    care.into_iter().map(Event::Care).chain([dead]).collect()
}

/// Stops compiling when a fact is added: give it a line above, and the next number here.
#[test]
fn every_fact_of_care_has_a_form() {
    let number = |care: &Care| match care {
        Care::VetSaid { .. } => 0,
        Care::GlucoseGiven { .. } => 1,
        Care::MouthFelt { .. } => 2,
        Care::AfterbirthAwaited { .. } => 3,
        Care::PutRight { .. } => 4,
        Care::FoundBorn { .. } => 5,
        Care::Settled { .. } => 6,
    };
    let care =
        facts().into_iter().filter_map(|event| if let Event::Care(care) = event { Some(care) } else { None });
    let mut numbers: Vec<i32> = care.map(|care| number(&care)).collect();
    numbers.dedup();
    assert_eq!(numbers, [0, 1, 2, 3, 4, 5, 6]);
}
