//! What the app is made of: under which licenses, and which crates it carries twice.
//!
//! It reads what `cargo metadata` says of the wasm build, without a network.
use crate::tools::{TARGET, root};
use anyhow::{Context, Result, ensure};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

/// Licenses under which a crate may come: they ask for no more than that their text is kept.
const ALLOWED: &[&str] = &[
    "0BSD",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "MPL-2.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Crates that the app carries in two versions, since what it uses has not agreed on one yet.
const TWICE: &[&str] = &["gloo-utils", "thiserror"];

/// Refuses a license that is not allowed, and a crate carried twice that is not known to be.
pub(crate) fn check() -> Result<()> {
    let known = metadata()?;
    let odd = licenses(&known)?;
    ensure!(odd.is_empty(), "licenses that nobody has allowed: {}", odd.join(", "));
    let twice = twice(&known)?;
    ensure!(twice == TWICE, "carried in two versions: {twice:?}; known to be: {TWICE:?}");
    Ok(())
}

fn metadata() -> Result<Value> {
    let mut command = Command::new("cargo");
    command.args(["metadata", "--format-version", "1", "--locked", "--offline", "--filter-platform", TARGET]);
    let output = command.current_dir(root()).output()?;
    ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    Ok(serde_json::from_slice(&output.stdout)?)
}

/// Returns each package whose license is not allowed, with what it says.
fn licenses(known: &Value) -> Result<Vec<String>> {
    let mut odd = Vec::new();
    for package in list(&known["packages"])? {
        let license = text(&package["license"]).unwrap_or("none");
        if !allowed(license) {
            odd.push(format!("{} ({license})", text(&package["name"])?));
        }
    }
    Ok(odd)
}

/// Returns whether a license expression can be met by what is allowed: one side of each OR, both sides of each AND.
fn allowed(expression: &str) -> bool {
    let spaced = expression.replace('(', " ( ").replace(')', " ) ").replace('/', " OR ");
    let mut words = spaced.split_whitespace().peekable();
    either(&mut words).is_some_and(|met| met && words.next().is_none())
}

type Words<'a> = std::iter::Peekable<std::str::SplitWhitespace<'a>>;

/// Returns whether what comes next can be met; `None` if it is no expression.
fn either(words: &mut Words) -> Option<bool> {
    let mut met = both(words)?;
    while words.next_if_eq(&"OR").is_some() {
        met |= both(words)?;
    }
    Some(met)
}

fn both(words: &mut Words) -> Option<bool> {
    let mut met = one(words)?;
    while words.next_if_eq(&"AND").is_some() {
        met &= one(words)?;
    }
    Some(met)
}

fn one(words: &mut Words) -> Option<bool> {
    let word = words.next()?;
    if word == "(" {
        let met = either(words)?;
        return words.next_if_eq(&")").map(|_| met);
    }
    // An exception only takes conditions away.
    if words.next_if_eq(&"WITH").is_some() {
        words.next()?;
    }
    Some(ALLOWED.contains(&word))
}

/// Returns the names of the crates that the app carries in more than one version, sorted; what only compiles it aside.
fn twice(known: &Value) -> Result<Vec<&str>> {
    let packages = by_id(&known["packages"])?;
    let nodes = by_id(&known["resolve"]["nodes"])?;
    let app = packages.iter().find(|(_, package)| package["name"] == "yeanling").context("no app")?;
    let (mut carried, mut waiting) = (BTreeSet::new(), vec![*app.0]);
    while let Some(id) = waiting.pop() {
        if !carried.insert(id) {
            continue;
        }
        for used in list(&nodes[id]["deps"])? {
            let id = text(&used["pkg"])?;
            let carries = list(&used["dep_kinds"])?.iter().any(|kind| kind["kind"].is_null());
            let compiles =
                list(&packages[id]["targets"])?.iter().any(|target| target["kind"][0] == "proc-macro");
            if carries && !compiles {
                waiting.push(id);
            }
        }
    }
    let mut names = Vec::new();
    for id in carried {
        names.push(text(&packages[id]["name"])?);
    }
    names.sort_unstable();
    let mut twice: Vec<&str> =
        names.windows(2).filter(|pair| pair[0] == pair[1]).map(|pair| pair[0]).collect();
    twice.dedup();
    Ok(twice)
}

fn by_id(value: &Value) -> Result<BTreeMap<&str, &Value>> {
    list(value)?.iter().map(|one| Ok((text(&one["id"])?, one))).collect()
}

fn list(value: &Value) -> Result<&[Value]> {
    value.as_array().map(Vec::as_slice).context("cargo metadata has another form")
}

fn text(value: &Value) -> Result<&str> {
    value.as_str().context("cargo metadata has another form")
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[track_caller]
    fn check(expression: &str, expected: bool) {
        assert_eq!(allowed(expression), expected, "{expression}");
    }

    #[test]
    fn one_side_of_an_or_and_both_sides_of_an_and_must_be_allowed() {
        check("MIT", true);
        check("GPL-3.0-only", false);
        check("MIT OR GPL-3.0-only", true);
        check("LGPL-2.1-or-later/MIT", true);
        check("MIT AND GPL-3.0-only", false);
        check("(MIT OR GPL-3.0-only) AND Unicode-3.0", true);
        check("(MIT OR Apache-2.0) AND SSPL-1.0", false);
        check("Apache-2.0 WITH LLVM-exception OR GPL-2.0-only", true);
    }

    #[test]
    fn what_cannot_be_read_is_not_allowed() {
        for expression in ["", "none", "MIT OR", "(MIT", "MIT)", "MIT MIT"] {
            check(expression, false);
        }
    }

    #[test]
    fn a_crate_in_two_versions_is_found_and_one_that_only_compiles_the_app_is_not() {
        let package =
            |id: &str, name: &str, kind: &str| json!({"id": id, "name": name, "targets": [{"kind": [kind]}]});
        let used = |id: &str, kind: Value| json!({"pkg": id, "dep_kinds": [{"kind": kind}]});
        let node = |id: &str, deps: Value| json!({"id": id, "deps": deps});
        let known = json!({
            "packages": [
                package("app", "yeanling", "bin"),
                package("a1", "a", "lib"),
                package("a2", "a", "lib"),
                package("b1", "b", "lib"),
                package("b2", "b", "lib"),
                package("m", "m", "proc-macro"),
            ],
            "resolve": {"nodes": [
                node("app", json!([used("a1", Value::Null), used("b1", Value::Null), used("m", Value::Null), used("b2", json!("build"))])),
                node("b1", json!([used("a2", Value::Null)])),
                node("a1", json!([])),
                node("a2", json!([])),
                node("b2", json!([])),
                node("m", json!([used("b2", Value::Null)])),
            ]},
        });
        assert_eq!(twice(&known).expect("a graph"), ["a"]);
    }
}
