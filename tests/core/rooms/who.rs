//! Who may use whom.

use super::paths::paths;
use super::{File, files, no_faults};

/// A room and what is never mentioned in it.
struct Rule {
    /// The file or folder.
    room: String,
    /// The beginnings of paths. One that begins with `::` is any part of a path, wherever it comes from.
    never: Vec<String>,
}

impl Rule {
    fn new(room: &str, never: &[&str]) -> Self {
        Self { room: room.to_owned(), never: never.iter().map(|&path| path.to_owned()).collect() }
    }
}

/// The crate of the core, in which `crate::` is the core.
const CORE: &str = "src/core";

/// What no file of the core mentions.
const NOWHERE_IN_CORE: &[&str] = &[
    // No clock.
    "std::time",
    "::SystemTime",
    "::Instant",
    "::Local",
    "::Utc::now",
    // No chance.
    "rand",
    "::new_v1",
    "::new_v4",
    "::new_v6",
    "::new_v7",
    "::now_v1",
    "::now_v6",
    "::now_v7",
    "::RandomState",
    // No way out.
    "std::env",
    "std::fs",
    "std::io",
    "std::net",
    "std::process",
    "std::thread",
    // No web and no app.
    "::web_sys",
    "::js_sys",
    "::wasm_bindgen",
    "leptos",
    "yeanling",
];

/// The rooms of the core, each with those that it may use.
const IN_CORE: &[(&str, &[&str])] = &[
    ("units", &[]),
    ("source", &[]),
    ("terms", &["units"]),
    ("settings", &["units", "terms"]),
    ("book", &["units", "terms", "settings"]),
    ("spreadsheet", &["units", "terms", "book"]),
    ("bring", &["units", "terms", "book", "flock", "watch", "spreadsheet"]),
    ("calendar", &["units"]),
    ("reckon", &["units", "terms", "settings", "source"]),
    ("flock", &["units", "terms", "settings", "book"]),
    ("watch", &["units", "terms", "settings", "source", "reckon", "book", "flock"]),
    ("seasons", &["units", "terms", "settings", "reckon", "book", "flock"]),
];

/// Returns what is never mentioned in each room of the core, and in all of it.
fn in_core() -> Vec<Rule> {
    let room = |(room, may): &(&'static str, &[&str])| {
        let never = IN_CORE.iter().filter(|(other, _)| other != room && !may.contains(other));
        let file = format!("{CORE}/{room}.rs");
        let room = if File::is_there(&file) { file } else { format!("{CORE}/{room}") };
        Rule { room, never: never.map(|(other, _)| format!("crate::{other}")).collect() }
    };
    let nowhere = Rule::new(CORE, NOWHERE_IN_CORE);
    std::iter::once(nowhere).chain(IN_CORE.iter().map(room)).collect()
}

/// The rooms of the app. Which crate may use which is said by their manifests.
const IN_APP: &[(&str, &[&str])] = &[
    ("src/browser", &["crate::farm", "crate::show", "crate::app", "crate::words"]),
    ("src/farm.rs", &["crate::show", "crate::app", "crate::words"]),
    ("src/farm", &["crate::show", "crate::app", "crate::words"]),
    ("src/show.rs", &["crate::app"]),
    ("src/route.rs", &["leptos", "crate::farm", "crate::show", "crate::app", "crate::words"]),
];

fn in_app() -> Vec<Rule> {
    IN_APP.iter().map(|(room, never)| Rule::new(room, never)).collect()
}

/// The crates that a crate of ours is made of.
const MADE_OF: &[(&str, &[&str])] = &[
    ("src/core", &["chrono", "libm", "serde", "serde_json", "sha2", "thiserror", "uuid"]),
    ("src/words", &["chrono", "yeanling-core"]),
    ("src/pages", &["chrono", "uuid", "yeanling-core", "yeanling-words"]),
    ("src/draw", &["yeanling-pages", "yeanling-words"]),
];

/// What only the browser's room names.
const BROWSER_ALONE: &[&str] = &["::web_sys", "gloo_storage", "indexed_db_futures"];

/// Returns what a file mentions, with `use` trees laid out and `super` followed.
fn mentions(file: &File) -> Vec<String> {
    let crates = ["src/core/", "src/words/", "src/pages/", "src/draw/"];
    let root = crates.into_iter().find(|root| file.name.starts_with(root)).unwrap_or("src/");
    let inside = file.name.strip_prefix(root).unwrap_or(&file.name);
    let module: Vec<String> = inside
        .trim_end_matches(".rs")
        .split('/')
        .filter(|part| !matches!(*part, "mod" | "lib" | "main"))
        .map(str::to_owned)
        .collect();
    paths(&file.text, &module)
}

/// Says whether a path is one that a rule forbids.
fn is_of(path: &str, never: &str) -> bool {
    if never.starts_with("::") {
        format!("::{path}::").contains(&format!("{never}::"))
    } else {
        path == never || path.strip_prefix(never).is_some_and(|rest| rest.starts_with("::"))
    }
}

fn is_in(file: &File, room: &str) -> bool {
    file.name == room || file.name.strip_prefix(room).is_some_and(|rest| rest.starts_with('/'))
}

/// Returns what a file mentions of what is never to be mentioned in it.
fn faults<S: AsRef<str>>(file: &File, never: &[S]) -> Vec<String> {
    let mut faults = Vec::new();
    for path in mentions(file) {
        faults.extend(
            never
                .iter()
                .filter(|never| is_of(&path, never.as_ref()))
                .map(|_| format!("{}: {path}", file.name)),
        );
    }
    faults
}

/// The files of the app and its crates: everything but the core and the build chores.
fn app() -> Vec<File> {
    let mut files = files("src", ".rs");
    files.retain(|file| !is_in(file, CORE) && !is_in(file, "src/xtask"));
    files
}

fn keep(rules: &[Rule], all: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for rule in rules {
        for file in all.iter().filter(|file| is_in(file, &rule.room)) {
            found.extend(faults(file, &rule.never));
        }
    }
    found
}

#[test]
fn each_room_of_the_core_uses_only_what_it_may() {
    let all = files(CORE, ".rs");
    for rule in in_core() {
        assert!(all.iter().any(|file| is_in(file, &rule.room)), "{} is there", rule.room);
    }
    no_faults(&keep(&in_core(), &all));
}

#[test]
fn each_room_of_the_app_uses_only_what_it_may() {
    no_faults(&keep(&in_app(), &app()));
}

#[test]
fn only_the_browser_room_names_what_the_browser_gives() {
    let all = app();
    let others = all.iter().filter(|file| !is_in(file, "src/browser"));
    no_faults(&others.flat_map(|file| faults(file, BROWSER_ALONE)).collect::<Vec<_>>());
    let named =
        all.iter().filter(|file| is_in(file, "src/browser")).flat_map(|file| faults(file, BROWSER_ALONE));
    assert!(named.count() > 5, "the rule can see what it forbids");
}

/// The files that make elements: the one that `draw` makes a screen with, and those whose elements are no part of a screen.
const MAKERS: &[(&str, &str)] = &[
    ("src/browser/dom.rs", "what `draw` says is made here"),
    ("src/browser/files.rs", "the link that a download needs"),
    ("src/browser/panic.rs", "what is said when the app is broken, and draws no more"),
    ("src/browser/theme.rs", "the color of the phone's own bars, in the head"),
];

#[test]
fn nothing_but_draw_makes_elements_of_a_screen() {
    let made = ["create_element", "insert_adjacent_html", "set_inner_html", "set_outer_html", "view!"];
    let makes = |file: &&File| made.iter().any(|made| file.text.contains(made));
    let all = app();
    let found: Vec<&str> = all.iter().filter(makes).map(|file| file.name.as_str()).collect();
    let expected: Vec<&str> = MAKERS.iter().map(|(file, _)| *file).collect();
    assert_eq!(found, expected);
}

#[test]
fn each_crate_is_made_of_few() {
    for (room, expected) in MADE_OF {
        let manifest = File::read(&format!("{room}/Cargo.toml")).text;
        let (_, after) = manifest.split_once("[dependencies]\n").expect("there are dependencies");
        let (dependencies, _) = after.split_once("\n[").expect("something follows");
        let names = dependencies.lines().filter_map(|line| line.split(['.', ' ', '=']).next());
        let crates: Vec<&str> = names.filter(|name| !name.is_empty()).collect();
        assert_eq!(&crates, expected, "{room}");
    }
    let workspace = File::read("Cargo.toml").text;
    let line = |name: &str| {
        let line =
            workspace.lines().find(|line| line.starts_with(&format!("{name} = "))).expect("it is there");
        line.to_owned()
    };
    assert!(line("chrono").contains("default-features = false"), "chrono has no clock");
    for feature in ["clock", "now", "std", "v4", "v7", "js"] {
        let feature = format!("\"{feature}\"");
        assert!(!line("chrono").contains(&feature) && !line("uuid").contains(&feature), "{feature}");
    }
}

#[track_caller]
fn bites(name: &str, text: &str, expected: &[&str]) {
    let file = File { name: name.to_owned(), text: text.to_owned() };
    let rules = if is_in(&file, CORE) { in_core() } else { in_app() };
    let mut found = keep(&rules, std::slice::from_ref(&file));
    if !is_in(&file, CORE) && !is_in(&file, "src/browser") {
        found.extend(faults(&file, BROWSER_ALONE));
    }
    let found: Vec<&str> = found.iter().filter_map(|fault| Some(fault.split_once(": ")?.1)).collect();
    assert_eq!(found, expected, "{name}: {text}");
}

#[test]
fn the_rules_bite() {
    bites("src/core/book/x.rs", "use crate::flock::Flock;", &["crate::flock::Flock"]);
    bites("src/core/book/x.rs", "use crate::{units::Mass, watch};", &["crate::watch"]);
    bites("src/core/book/mod.rs", "use super::reckon::bottle;", &["crate::reckon::bottle"]);
    bites(
        "src/core/flock/mod.rs",
        "mod tests { use super::super::watch::duties; }",
        &["crate::watch::duties"],
    );
    bites("src/core/calendar.rs", "use crate::watch::Duty;", &["crate::watch::Duty"]);
    bites("src/core/calendar.rs", "use crate::spreadsheet::Table;", &["crate::spreadsheet::Table"]);
    bites("src/core/source.rs", "use crate::terms::Lie;", &["crate::terms::Lie"]);
    bites("src/core/watch/x.rs", "use crate::calendar::Alarm;", &["crate::calendar::Alarm"]);
    bites("src/core/watch/x.rs", "use std::time::Duration;", &["std::time::Duration"]);
    bites("src/core/watch/x.rs", "fn f() { chrono::Utc::now(); }", &["chrono::Utc::now"]);
    bites("src/core/watch/x.rs", "use chrono::{Local, Utc};", &["chrono::Local"]);
    bites("src/core/watch/x.rs", "fn f() { uuid::Uuid::now_v7(); }", &["uuid::Uuid::now_v7"]);
    bites(
        "src/core/terms/x.rs",
        "use crate::book::EweId; use crate::units::Length;",
        &["crate::book::EweId"],
    );
    bites("src/core/reckon/x.rs", "use crate::terms::Lie; use crate::book::Found;", &["crate::book::Found"]);
    bites("src/core/watch/x.rs", "use crate::{book, flock, reckon, units};", &[]);
    bites("src/draw/x.rs", "fn f(x: web_sys::Event) {}", &["web_sys::Event"]);
    bites("src/pages/x.rs", "// use leptos::prelude::*;\nuse yeanling_core::book::Sex;", &[]);
    bites("src/browser/x.rs", "use web_sys::Window; use super::super::farm::Farm;", &["crate::farm::Farm"]);
    bites("src/farm.rs", "use crate::words::frame;", &["crate::words::frame"]);
    bites("src/farm/x.rs", "use crate::words::frame;", &["crate::words::frame"]);
}
