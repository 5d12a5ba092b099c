//! The schema in `public/` describes what is written, and nothing else.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use jsonschema::Validator;
use proptest::prelude::*;
use serde_json::{Value, json};
use yeanling_core::book::{Book, Event};

use super::arbitrary::{config, entries, event};
use super::forms::{CARE_1, ENTRY_1, LIFE_1, PAST_1, PLANNING_1, SEASON_1, VERSION_1, every_form};
use super::{file, noting};

const SCHEMA: &str = include_str!("../../../public/book.schema.json");

pub(super) fn schema() -> &'static Validator {
    static VALIDATOR: LazyLock<Validator> = LazyLock::new(|| {
        let schema: Value = serde_json::from_str(SCHEMA).expect("the schema is JSON");
        jsonschema::meta::validate(&schema).expect("the schema is a schema");
        jsonschema::validator_for(&schema).expect("the schema is a schema")
    });
    &VALIDATOR
}

/// The file of a book with one entry, as a tree.
pub(super) fn with_event(event: &str) -> Value {
    let mut file = tree(&[noting(1, "\"x\"")].into_iter().collect());
    file["entries"][0]["event"] = serde_json::from_str(event).expect("an event");
    file
}

fn tree(book: &Book) -> Value {
    serde_json::from_str(&file(book)).expect("a book is JSON")
}

#[track_caller]
pub(super) fn fits(schema: &Validator, file: &Value) {
    let faults: Vec<String> =
        schema.iter_errors(file).map(|fault| format!("{}: {fault}", fault.instance_path())).collect();
    assert!(faults.is_empty(), "{faults:#?} in {file:#}");
}

#[track_caller]
pub(super) fn does_not_fit(schema: &Validator, file: &Value) {
    assert!(!schema.is_valid(file), "{file:#}");
}

#[test]
fn every_form_ever_written_fits() {
    let schema = schema();
    for line in every_form() {
        fits(schema, &with_event(line));
    }
    fits(schema, &tree(&[super::entry(ENTRY_1)].into_iter().collect()));
    fits(schema, &tree(&Book::default()));
}

/// Gathers the words of every list of the schema, and every name of a fact.
fn words_of(schema: &Value, to: &mut BTreeSet<String>) {
    match schema {
        Value::Object(fields) => {
            let listed = fields.get("enum").and_then(Value::as_array).into_iter().flatten();
            let one = fields.get("const").into_iter();
            to.extend(listed.chain(one).filter_map(Value::as_str).map(str::to_owned));
            fields.values().for_each(|inside| words_of(inside, to));
        }
        Value::Array(all) => all.iter().for_each(|inside| words_of(inside, to)),
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
    }
}

#[test]
fn every_word_that_a_book_can_hold_stands_in_a_form() {
    let schema: Value = serde_json::from_str(SCHEMA).expect("the schema is JSON");
    let mut words = BTreeSet::new();
    words_of(&schema, &mut words);
    assert!(words.len() > 200, "{} words", words.len());
    let forms: Vec<&str> = every_form().chain(super::choices::forms()).collect();
    // What a file is, and not what is noted in it.
    let of_the_file = ["yeanling-book"];
    let missing: Vec<&String> = words
        .iter()
        .filter(|word| !of_the_file.contains(&word.as_str()))
        .filter(|word| !forms.iter().any(|form| form.contains(&format!("\"{word}\""))))
        .collect();
    assert!(missing.is_empty(), "no form has {missing:?}");
}

#[test]
fn a_fact_of_a_later_version_fits() {
    let schema = schema();
    for line in [r#"{"shorn":{}}"#, r#"{"shorn":[1e3,null]}"#, r#"{"shorn":null}"#] {
        fits(schema, &with_event(line));
    }
    for line in [r"{}", r#"{"shorn":{},"dagged":{}}"#, r"[]", "7", "null"] {
        does_not_fit(schema, &with_event(line));
    }
}

/// Whether a fact, and what it amends another to, is one that this version knows.
fn is_known(event: &Event) -> bool {
    match event {
        Event::Unread(_) => false,
        Event::Amended { event, .. } => is_known(event),
        _ => true,
    }
}

proptest! {
    #![proptest_config(config(100))]

    #[test]
    fn whatever_is_written_fits(all in entries()) {
        fits(schema(), &tree(&all.into_iter().filter(|entry| is_known(&entry.event)).collect()));
    }

    #[test]
    fn what_fits_not_by_one_name_is_not_read(event in event()) {
        // A name too many, at each place where an object stands: neither the schema nor the reader takes it.
        prop_assume!(is_known(&event));
        let schema = schema();
        let whole = serde_json::to_value(&event).expect("it can be written");
        for place in objects(&whole, String::new()) {
            let mut more = whole.clone();
            more.pointer_mut(&place).expect("it is there")["more"] = json!(1);
            does_not_fit(schema, &with_event(&more.to_string()));
            prop_assert!(serde_json::from_value::<Event>(more.clone()).is_err(), "{}", more);
        }
    }
}

/// Where the objects in a value stand.
pub(super) fn objects(value: &Value, place: String) -> Vec<String> {
    let mut places = Vec::new();
    if let Value::Object(parts) = value {
        for (name, part) in parts {
            places.extend(objects(part, format!("{place}/{name}")));
        }
        places.push(place);
    }
    places
}

#[test]
fn each_part_of_a_file_must_be_there_and_of_its_kind() {
    let schema = schema();
    let whole = with_event(VERSION_1[0]);
    fits(schema, &whole);
    let wrong: &[(&str, &[Value])] = &[
        ("format", &[json!("other"), json!(1), Value::Null]),
        ("version", &[json!(0), json!(2), json!("1")]),
        ("made", &[json!("yesterday"), json!("2026-02-25"), json!("2026-02-25T03:12:00-05:00"), json!(0)]),
        ("device", &[json!("phone"), json!("019C0000-0000-7000-8000-0000000000D1"), json!(1)]),
        ("count", &[json!(-1), json!(1.5), json!("1")]),
        ("digest", &[json!("sha256-"), json!("md5-00"), json!(1)]),
        ("entries", &[json!({}), json!([1]), json!([[]]), Value::Null]),
    ];
    for (name, values) in wrong {
        for value in *values {
            let mut file = whole.clone();
            file[*name] = value.clone();
            does_not_fit(schema, &file);
        }
        let mut file = whole.clone();
        file.as_object_mut().expect("a file is an object").remove(*name);
        does_not_fit(schema, &file);
    }
}

#[test]
fn each_part_of_an_entry_must_be_there_and_of_its_kind() {
    let schema = schema();
    let whole = with_event(VERSION_1[0]);
    for name in ["id", "device", "noted", "at", "event"] {
        for value in [json!("?!"), json!(1), json!({}), Value::Null] {
            let mut file = whole.clone();
            file["entries"][0][name] = value;
            does_not_fit(schema, &file);
        }
        let mut file = whole.clone();
        file["entries"][0].as_object_mut().expect("an entry is an object").remove(name);
        does_not_fit(schema, &file);
    }
    let mut file = whole;
    file["entries"][0]["more"] = json!(1);
    does_not_fit(schema, &file);
}

#[test]
fn a_known_fact_without_one_of_its_parts_does_not_fit_and_is_not_read() {
    let schema = schema();
    let optional = [
        "/ewe-came/tag",
        "/lamb-born/dam",
        "/lamb-born/beside",
        "/lamb-born/sex",
        "/pen-made/size",
        "/ram-in/ram",
        "/ram-in/age",
        "/scanned/days",
        "/colostrum-frozen/brix",
        "/colostrum-frozen/label",
        "/life/described/born",
        "/life/described/breed",
        "/life/treated/treatment/amount",
        "/life/treated/treatment/route",
        "/life/treated/treatment/reason",
        "/life/treated/treatment/batch",
        "/life/treated/treatment/by",
        "/life/treated/treatment/meat-days",
        "/life/treated/treatment/milk-days",
        "/life/boosted/treatment/route",
        "/life/went/to",
        "/care/vet-said/said/advised/what",
        "/care/vet-said/said/saw/plan",
        "/illness/ewe-seen/onset",
        "/planning/ram-stays/until",
        "/planning/planned/group",
        "/planning/planned/on",
        "/planning/happened/group",
        "/past/reared-as/of",
    ];
    for line in every_form() {
        let whole: Value = serde_json::from_str(line).expect("an event");
        for place in objects(&whole, String::new()) {
            let Some(Value::Object(parts)) = whole.pointer(&place) else { continue };
            for name in parts.keys().filter(|name| !optional.contains(&format!("{place}/{name}").as_str())) {
                let mut less = whole.clone();
                let parts = less.pointer_mut(&place).and_then(Value::as_object_mut);
                parts.expect("it is there").remove(name);
                does_not_fit(schema, &with_event(&less.to_string()));
                assert!(serde_json::from_value::<Event>(less.clone()).is_err(), "{less}");
            }
        }
    }
}

#[test]
fn a_quantity_out_of_its_span_or_a_name_that_is_none_does_not_fit_and_is_not_read() {
    let schema = schema();
    for (line, from, to) in [
        (VERSION_1[17], "4.2", "500.1"),
        (VERSION_1[17], "4.2", "-0.1"),
        (VERSION_1[17], "4.2", "\"4.2\""),
        (VERSION_1[19], "195.0", "20000.1"),
        (VERSION_1[19], "dam-colostrum", "cream"),
        (VERSION_1[19], "bottle", "bucket"),
        (VERSION_1[25], "2}", "256}"),
        (VERSION_1[25], "2}", "2.5}"),
        (VERSION_1[5], "ram", "wether"),
        (VERSION_1[5], "false", "0"),
        (VERSION_1[8], "alone", "1"),
        (VERSION_1[29], "starved", "murder"),
        (VERSION_1[29], "lamb", "dog"),
        (VERSION_1[48], ":30", ":65536"),
        (VERSION_1[48], ":30", ":-1"),
        (VERSION_1[50], "T03:12", "T25:12"),
        (VERSION_1[51], "019c", "xyz!"),
        (SEASON_1[8], "mature", "old"),
        (SEASON_1[13], ":2,", ":256,"),
        (SEASON_1[13], "60", "65536"),
        (SEASON_1[14], "2.75", "5.25"),
        (SEASON_1[18], "hay", "gold"),
        (SEASON_1[18], "12.0", "1000000001.0"),
        (SEASON_1[43], "{\"ewe\"", "{\"goat\""),
        (SEASON_1[43], "26.5", "100.5"),
        (LIFE_1[4], "2022", "65536"),
        (LIFE_1[5], "2022-03-14", "2022-13-14"),
        (LIFE_1[6], "cut", "bitten"),
        (LIFE_1[8], "injection", "dart"),
        (LIFE_1[8], ":28", ":-28"),
        (LIFE_1[8], "true", "\"yes\""),
        (LIFE_1[14], "sold", "lent"),
        (PLANNING_1[1], "T23:59", "T25:59"),
        (PLANNING_1[2], "ram-in", "ram-lent"),
        (PLANNING_1[3], "2026-11-20", "2026-11-32"),
        (PLANNING_1[7], "scan", "scans"),
        (PAST_1[4], ":2", ":-2"),
        (PAST_1[2], "\"ram\"", "\"rams\""),
        (CARE_1[0], "coming", "asleep"),
        (CARE_1[1], "T04:12", "T25:12"),
        (CARE_1[6], "vet", "neighbor"),
        (CARE_1[8], "cold", "dry"),
        (CARE_1[8], "none", "some"),
        (CARE_1[11], "hanging", "eaten"),
    ] {
        let wrong = line.replacen(from, to, 1);
        assert_ne!(wrong, line, "{from} is in the line");
        does_not_fit(schema, &with_event(&wrong));
        assert!(serde_json::from_str::<Event>(&wrong).is_err(), "{wrong}");
    }
}
