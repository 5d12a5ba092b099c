//! The worker's stamp: the version of the build, and the list of files that it keeps for work without a network.
use crate::stamp::{digest, files};
use crate::tools::root;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::Path;

/// The worker's file name in the finished app; it must never change, or old installs miss updates.
pub(crate) const NAME: &str = "worker.js";

const VERSION_MARK: &str = "\"VERSION\"";
const FILES_MARK: &str = "[\"FILES\"]";

/// Writes the worker into `folder`, stamped with the digest of everything there and the list of what to keep.
pub(crate) fn stamp(folder: &Path) -> Result<()> {
    let template = fs::read_to_string(root().join("src/browser/worker.js")).context("no worker template")?;
    let mut all = template.clone().into_bytes();
    for name in files(folder)?.iter().filter(|name| *name != NAME) {
        all.extend_from_slice(name.as_bytes());
        all.extend_from_slice(digest(&fs::read(folder.join(name))?).as_bytes());
    }
    for mark in [VERSION_MARK, FILES_MARK] {
        ensure!(template.matches(mark).count() == 1, "the worker template must hold {mark} once");
    }
    let list: Vec<String> = kept(folder)?.into_iter().map(|name| address(&name)).collect();
    let worker = template
        .replace(VERSION_MARK, &format!("\"{}\"", digest(&all)))
        .replace(FILES_MARK, &serde_json::to_string(&list)?);
    fs::write(folder.join(NAME), worker)?;
    Ok(())
}

/// Returns the files that a visit may load, which are the files that the worker keeps.
pub(crate) fn kept(folder: &Path) -> Result<Vec<String>> {
    let mut names = files(folder)?;
    names.retain(|name| may_be_loaded(name));
    Ok(names)
}

/// Returns whether the page may load the file. Licenses and schemas are only there, and so are the pictures: those of
/// the manifest are for the phone, which fetches what it wants of them once, when the app is put on its home screen.
fn may_be_loaded(name: &str) -> bool {
    let only_there = [".txt", ".schema.json", ".map", ".png"].iter().any(|end| name.ends_with(end));
    !only_there && name != "_headers" && name != NAME
}

/// Returns the address of a file, relative to the app; the page's own is the folder, since hosts redirect index.html.
fn address(name: &str) -> String {
    if name == "index.html" { "./".to_owned() } else { format!("./{name}") }
}
