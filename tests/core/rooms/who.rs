//! Who may use whom.

use super::paths::paths;
use super::{File, files, no_faults};

/// A room and what is never mentioned in it.
struct Rule {
    /// The file or folder.
    room: &'static str,
    /// The beginnings of paths. One that begins with `::` is any part of a path, wherever it comes from.
    never: &'static [&'static str],
}

/// The crate of the core, in which `crate::` is the core.
const CORE: &str = "src/core";

/// The rooms of the core. The arrows: units ← all, calendar and spreadsheet too; terms ← book, reckon and all above them;
/// book ← spreadsheet; source ← reckon; reckon ← watch, figures; book ← flock ← watch, figures.
const IN_CORE: &[Rule] = &[
    Rule {
        room: "src/core",
        never: &[
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
        ],
    },
    Rule {
        room: "src/core/units",
        never: &[
            "crate::source",
            "crate::terms",
            "crate::practice",
            "crate::reckon",
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/terms",
        never: &[
            "crate::source",
            "crate::practice",
            "crate::reckon",
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/source.rs",
        never: &[
            "crate::units",
            "crate::terms",
            "crate::practice",
            "crate::reckon",
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/calendar.rs",
        never: &[
            "crate::source",
            "crate::terms",
            "crate::practice",
            "crate::reckon",
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
        ],
    },
    Rule {
        room: "src/core/spreadsheet",
        never: &[
            "crate::source",
            "crate::practice",
            "crate::reckon",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
        ],
    },
    Rule {
        room: "src/core/practice",
        never: &[
            "crate::source",
            "crate::reckon",
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/reckon",
        never: &[
            "crate::book",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/book",
        never: &[
            "crate::source",
            "crate::reckon",
            "crate::flock",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule {
        room: "src/core/flock",
        never: &[
            "crate::source",
            "crate::reckon",
            "crate::watch",
            "crate::figures",
            "crate::calendar",
            "crate::spreadsheet",
        ],
    },
    Rule { room: "src/core/watch", never: &["crate::figures", "crate::calendar", "crate::spreadsheet"] },
    Rule {
        room: "src/core/figures",
        never: &["crate::source", "crate::watch", "crate::calendar", "crate::spreadsheet"],
    },
];

/// The rooms of the app. Which crate may use which is said by their manifests.
const IN_APP: &[Rule] = &[
    Rule { room: "src/browser", never: &["crate::farm", "crate::show", "crate::app", "crate::words"] },
    Rule { room: "src/farm.rs", never: &["crate::show", "crate::app", "crate::words"] },
    Rule { room: "src/farm", never: &["crate::show", "crate::app", "crate::words"] },
    Rule { room: "src/show.rs", never: &["crate::app"] },
    Rule {
        room: "src/route.rs",
        never: &["leptos", "crate::farm", "crate::show", "crate::app", "crate::words"],
    },
];

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
fn faults(file: &File, never: &[&str]) -> Vec<String> {
    let mut faults = Vec::new();
    for path in mentions(file) {
        faults.extend(
            never.iter().filter(|never| is_of(&path, never)).map(|_| format!("{}: {path}", file.name)),
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
        for file in all.iter().filter(|file| is_in(file, rule.room)) {
            found.extend(faults(file, rule.never));
        }
    }
    found
}

#[test]
fn each_room_of_the_core_uses_only_what_it_may() {
    let all = files(CORE, ".rs");
    for rule in IN_CORE {
        assert!(all.iter().any(|file| is_in(file, rule.room)), "{} is there", rule.room);
    }
    no_faults(&keep(IN_CORE, &all));
}

#[test]
fn each_room_of_the_app_uses_only_what_it_may() {
    no_faults(&keep(IN_APP, &app()));
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
    let rules = if is_in(&file, CORE) { IN_CORE } else { IN_APP };
    let mut found = keep(rules, std::slice::from_ref(&file));
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
