//! The forms of animals' lives: fostering, marks, treatments, leaving.

use chrono::NaiveDate;
use yeanling_core::book::{
    Animal, BirthDay, Castration, CullReason, Departure, Event, Life, Route, Treatment,
};
use yeanling_core::units::Price;

/// What version 1 writes of animals' lives.
pub(in super::super) const LIFE_1: &[&str] = &[
    r#"{"life":{"fostered":{"lamb":"019c0000-0000-7000-8000-000000000002","dam":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"life":{"marked":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"mark":"23 blue"}}}"#,
    r#"{"life":{"kept-as-ewe":{"lamb":"019c0000-0000-7000-8000-000000000002"}}}"#,
    r#"{"life":{"described":{"ewe":"019c0000-0000-7000-8000-000000000001"}}}"#,
    r#"{"life":{"described":{"ewe":"019c0000-0000-7000-8000-000000000001","born":{"year":2022},"breed":"Cheviot cross"}}}"#,
    r#"{"life":{"described":{"ewe":"019c0000-0000-7000-8000-000000000001","born":{"day":"2022-03-14"}}}}"#,
    r#"{"life":{"castrated":{"lamb":"019c0000-0000-7000-8000-000000000002","way":"cut"}}}"#,
    r#"{"life":{"castrated":{"lamb":"019c0000-0000-7000-8000-000000000002","way":"clamped"}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Penicillin","amount":"4 ml","route":"injection","reason":"lame","batch":"A77","by":"vet","day-only":true,"meat-days":28,"milk-days":7}}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Drench","route":"mouth","day-only":false}}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Drench","route":"skin","day-only":false}}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Drench","route":"eye","day-only":false}}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Drench","route":"udder","day-only":false}}}}"#,
    r#"{"life":{"treated":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"treatment":{"product":"Drench","route":"other","day-only":false}}}}"#,
    r#"{"life":{"went":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"how":"sold","to":"the market"}}}"#,
    r#"{"life":{"went":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"how":"sold-with-warning"}}}"#,
    r#"{"life":{"went":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"how":"slaughtered"}}}"#,
    r#"{"life":{"went":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"how":"given"}}}"#,
    r#"{"life":{"went":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"how":"missing"}}}"#,
    r#"{"life":{"examined":{"animal":{"lamb":"019c0000-0000-7000-8000-000000000002"},"finding":"milk in the lungs"}}}"#,
    r#"{"life":{"boosted":{"ewe":"019c0000-0000-7000-8000-000000000001","treatment":{"product":"Drench","route":"other","day-only":false}}}}"#,
    r#"{"life":{"sold-for":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"price":182.5}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"udder"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"age"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"empty"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"prolapse"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"lambing"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"mothering"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"poor-lambs"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"feet"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"condition"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"health"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"temper"}}}"#,
    r#"{"life":{"culled":{"animal":{"ewe":"019c0000-0000-7000-8000-000000000001"},"why":"other"}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let (ewe, lamb) = (super::ewe(), super::lamb());
    let (ewe_a, lamb_a) = (Animal::Ewe(ewe), Animal::Lamb(lamb));
    let day = NaiveDate::from_ymd_opt(2022, 3, 14).expect("a day");
    let drench = |route| Treatment {
        product: "Drench".to_owned(),
        amount: None,
        route: Some(route),
        reason: None,
        batch: None,
        by: None,
        day_only: false,
        meat_days: None,
        milk_days: None,
    };
    let full = Treatment {
        product: "Penicillin".to_owned(),
        amount: Some("4 ml".to_owned()),
        route: Some(Route::Injection),
        reason: Some("lame".to_owned()),
        batch: Some("A77".to_owned()),
        by: Some("vet".to_owned()),
        day_only: true,
        meat_days: Some(28),
        milk_days: Some(7),
    };
    let treated = |treatment| Life::Treated { animal: ewe_a, treatment: Box::new(treatment) };
    let went = |animal, how, to: Option<&str>| Life::Went { animal, how, to: to.map(str::to_owned) };
    let described =
        |born, breed: Option<&str>| Life::Described { ewe, born, breed: breed.map(str::to_owned) };
    [
        Life::Fostered { lamb, dam: ewe },
        Life::Marked { animal: lamb_a, mark: "23 blue".to_owned() },
        Life::KeptAsEwe { lamb },
        described(None, None),
        described(Some(BirthDay::Year(2022)), Some("Cheviot cross")),
        described(Some(BirthDay::Day(day)), None),
        Life::Castrated { lamb, way: Castration::Cut },
        Life::Castrated { lamb, way: Castration::Clamped },
        treated(full),
        treated(drench(Route::Mouth)),
        treated(drench(Route::Skin)),
        treated(drench(Route::Eye)),
        treated(drench(Route::Udder)),
        treated(drench(Route::Other)),
        went(ewe_a, Departure::Sold, Some("the market")),
        went(ewe_a, Departure::SoldWithWarning, None),
        went(ewe_a, Departure::Slaughtered, None),
        went(ewe_a, Departure::Given, None),
        went(lamb_a, Departure::Missing, None),
        Life::Examined { animal: lamb_a, finding: "milk in the lungs".to_owned() },
        Life::Boosted { ewe, treatment: Box::new(drench(Route::Other)) },
        Life::SoldFor { animal: ewe_a, price: Price::from_money(182.5) },
    ]
    .into_iter()
    .chain(CullReason::ALL.map(|why| Life::Culled { animal: ewe_a, why }))
    .map(Event::Life)
    .collect()
}

/// Stops compiling when a fact is added: give it a line above, and the next number here.
#[test]
fn every_fact_of_a_life_has_a_form() {
    let number = |event: &Event| match event {
        Event::Life(Life::Fostered { .. }) => Some(0),
        Event::Life(Life::Marked { .. }) => Some(1),
        Event::Life(Life::KeptAsEwe { .. }) => Some(2),
        Event::Life(Life::Described { .. }) => Some(3),
        Event::Life(Life::Castrated { .. }) => Some(4),
        Event::Life(Life::Treated { .. }) => Some(5),
        Event::Life(Life::Went { .. }) => Some(6),
        Event::Life(Life::Examined { .. }) => Some(7),
        Event::Life(Life::Boosted { .. }) => Some(8),
        Event::Life(Life::SoldFor { .. }) => Some(9),
        Event::Life(Life::Culled { .. }) => Some(10),
        _ => None,
    };
    let mut numbers: Vec<i32> = facts().iter().filter_map(number).collect();
    numbers.dedup();
    assert_eq!(numbers, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
}
