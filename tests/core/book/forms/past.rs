//! The forms of what is known from before the book began.
//!
//! These too were written by the version named above them, and are never edited.

use yeanling_core::book::{Animal, Event, EweId, LambId, Past};

/// What version 1 writes.
pub(in super::super) const PAST_1: &[&str] = &[
    r#"{"past":{"is-ram":{"animal":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"past":{"sired":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"ram":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"past":{"sired":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000003"},"ram":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"past":{"dam-of":{"animal":"019c0000-0000-7000-8000-000000000003","dam":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"past":{"born-as":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"of":2}}}"#,
    r#"{"past":{"reared-as":{"lamb":"019c0000-0000-7000-8000-000000000002","of":1}}}"#,
    r#"{"past":{"reared-as":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"past":{"is-wether":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"past":{"called":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000003"},"name":"Bramble"}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let ewe = |id: &str| -> EweId { id.parse().expect("an id") };
    let first = ewe("019c0000-0000-7000-8000-000000000001");
    let third = ewe("019c0000-0000-7000-8000-000000000003");
    let lamb: LambId = "019c0000-0000-7000-8000-000000000002".parse().expect("an id");
    [
        Past::IsRam { animal: first },
        Past::Sired { animal: Animal::Lamb(lamb), ram: first },
        Past::Sired { animal: Animal::Ewe(third), ram: first },
        Past::DamOf { animal: third, dam: first },
        Past::BornAs { animal: Animal::Lamb(lamb), of: 2 },
        Past::RearedAs { lamb, of: Some(1) },
        Past::RearedAs { lamb, of: None },
        Past::IsWether { lamb },
        Past::Called { animal: Animal::Ewe(third), name: "Bramble".to_owned() },
    ]
    .map(Event::Past)
    .into()
}
