//! The ledger of bytes: how much of the wasm's code each room takes, by the names that the build leaves in it, and how much
//! is data: texts, and tables of addresses.
//!
//! The stamp step reads the names, writes the ledger, and takes the names out of what is published.
use crate::say::say;
use crate::tools::root;
use anyhow::{Context, Result};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use wasmparser::{KnownCustom, Name, Parser, Payload};

/// The sections that nobody needs who runs the app.
const UNNEEDED: &[&str] = &["name", "producers", "target_features"];

/// What stands in the ledger for all that is no code.
const DATA: &str = "data";

fn place() -> PathBuf {
    root().join("target/ledger.txt")
}

/// Writes the ledger of a wasm file, and takes out of it what only the ledger needs.
pub(crate) fn take(file: &Path) -> Result<()> {
    let wasm = fs::read(file).with_context(|| file.display().to_string())?;
    let rooms = rooms(&wasm)?;
    if !rooms.is_empty() {
        let lines: Vec<String> = rooms.iter().map(|(room, bytes)| format!("{room} {bytes}")).collect();
        fs::create_dir_all(root().join("target"))?;
        fs::write(place(), lines.join("\n"))?;
    }
    let slim = without(&wasm)?;
    if slim.len() < wasm.len() {
        fs::write(file, slim)?;
    }
    Ok(())
}

/// Prints the rooms of the last build, the largest first.
pub(crate) fn print() -> Result<()> {
    let ledger = fs::read_to_string(place()).context("no ledger was written")?;
    let mut rooms: Vec<(&str, usize)> = ledger
        .lines()
        .filter_map(|line| line.rsplit_once(' '))
        .filter_map(|(room, bytes)| Some((room, bytes.parse().ok()?)))
        .collect();
    rooms.sort_by_key(|(_, bytes)| std::cmp::Reverse(*bytes));
    for (room, bytes) in rooms {
        let kind = if room == DATA { "" } else { "code_" };
        say(&format!("{kind}{room}_kib {:.1} KiB", f64::from(u32::try_from(bytes)?) / 1024.0));
    }
    Ok(())
}

/// Returns how many bytes of code each room has, and how many are data; nothing if no names are left.
fn rooms(wasm: &[u8]) -> Result<BTreeMap<String, usize>> {
    let (mut imported, mut data, mut sizes, mut names) = (0, 0, Vec::new(), BTreeMap::new());
    for payload in Parser::new(0).parse_all(wasm) {
        match payload? {
            Payload::ImportSection(section) => {
                for import in section {
                    imported += u32::from(matches!(import?.ty, wasmparser::TypeRef::Func(_)));
                }
            }
            Payload::DataSection(section) => data = section.range().len(),
            Payload::CodeSectionEntry(body) => sizes.push(body.range().len()),
            Payload::CustomSection(section) => {
                let KnownCustom::Name(section) = section.as_known() else { continue };
                for part in section {
                    let Name::Function(map) = part? else { continue };
                    for name in map {
                        let name = name?;
                        names.insert(name.index, name.name.to_owned());
                    }
                }
            }
            _ => {}
        }
    }
    let mut rooms = BTreeMap::new();
    if names.is_empty() {
        return Ok(rooms);
    }
    rooms.insert(DATA.to_owned(), data);
    for (place, size) in sizes.into_iter().enumerate() {
        let index = imported + u32::try_from(place)?;
        let name = names.get(&index).map_or("", String::as_str);
        *rooms.entry(room(name)).or_default() += size;
    }
    Ok(rooms)
}

/// Returns the room of a function by its name, such as `<yeanling_core::book::event::Event as serde::…>::deserialize`.
fn room(name: &str) -> String {
    let name = format!("{:#}", rustc_demangle::demangle(name));
    let path = name.trim_start_matches(|c: char| !c.is_ascii_alphabetic());
    let path = path.trim_start_matches("dyn ").trim_start_matches("mut ");
    let end = path.find(|c: char| !(c.is_ascii_alphanumeric() || c == '_' || c == ':')).unwrap_or(path.len());
    let parts: Vec<&str> = path[..end].split("::").collect();
    match parts.as_slice() {
        ["yeanling_core", room, ..] => format!("core_{room}"),
        ["yeanling_pages", room, ..] if room.starts_with(|c: char| c.is_ascii_lowercase()) => {
            format!("pages_{room}")
        }
        ["yeanling_words", ..] => "words".to_owned(),
        ["yeanling_draw", ..] => "draw".to_owned(),
        ["yeanling", room, ..] => format!("app_{room}"),
        ["core" | "alloc" | "std" | "dlmalloc" | "compiler_builtins" | "hashbrown", ..] => "std".to_owned(),
        ["serde" | "serde_json" | "serde_core", ..] => "serde".to_owned(),
        [
            "leptos" | "leptos_dom" | "tachys" | "reactive_graph" | "reactive_stores" | "any_spawner"
            | "throw_error",
            ..,
        ] => "leptos".to_owned(),
        [
            "wasm_bindgen" | "wasm_bindgen_futures" | "js_sys" | "web_sys" | "gloo_storage" | "gloo_utils",
            ..,
        ] => "web".to_owned(),
        ["indexed_db_futures", ..] => "indexed_db".to_owned(),
        _ => "others".to_owned(),
    }
}

/// Returns the wasm without the sections that nobody needs who runs it.
fn without(wasm: &[u8]) -> Result<Vec<u8>> {
    let mut slim = wasm.get(..8).context("no wasm")?.to_vec();
    let mut at = 8;
    while at < wasm.len() {
        let (length, after) = number(wasm, at + 1)?;
        let end = after + length;
        let whole = wasm.get(at..end).context("a section ends behind the file")?;
        let unneeded = wasm[at] == 0 && {
            let (length, name) = number(wasm, after)?;
            UNNEEDED.iter().any(|one| wasm.get(name..name + length) == Some(one.as_bytes()))
        };
        if !unneeded {
            slim.extend_from_slice(whole);
        }
        at = end;
    }
    Ok(slim)
}

/// Reads a number as wasm writes it (LEB128), and returns it with where it ends.
fn number(wasm: &[u8], mut at: usize) -> Result<(usize, usize)> {
    let (mut value, mut shift) = (0_usize, 0);
    loop {
        let byte = *wasm.get(at).context("a number ends behind the file")?;
        value |= usize::from(byte & 0x7f) << shift;
        at += 1;
        if byte & 0x80 == 0 {
            return Ok((value, at));
        }
        shift += 7;
    }
}

#[cfg(test)]
mod tests {
    use super::{room, without};

    #[test]
    fn a_function_belongs_to_the_room_of_its_name() {
        assert_eq!(room("yeanling_pages::lambing::page"), "pages_lambing");
        assert_eq!(room("<yeanling_core::book::Event as serde::Deserialize>::deserialize"), "core_book");
        assert_eq!(room("<alloc::vec::Vec<yeanling_core::book::Entry> as Clone>::clone"), "std");
        assert_eq!(room("yeanling::farm::Farm::note"), "app_farm");
    }

    #[test]
    fn only_what_nobody_needs_goes() {
        let head = [0, b'a', b's', b'm', 1, 0, 0, 0];
        let names = [0, 6, 4, b'n', b'a', b'm', b'e', 9];
        let other = [0, 4, 2, b'x', b'y', 9];
        let wasm = [&head[..], &names, &other].concat();
        assert_eq!(without(&wasm).expect("it is whole"), [&head[..], &other].concat());
    }
}
