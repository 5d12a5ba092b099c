//! `cargo xtask build`: the finished app, ready for any static host.
//!
//! Trunk does the work and calls the stamp step last; this only sees that everything is there.
//!
//! Where the standard library is built here anyway (Debian), it is built small; the usual one sorts faster and weighs
//! some 12 KiB more.
use crate::doctor::{self, Purpose};
use crate::say::complain;
use crate::squeeze;
use crate::tools::{TARGET, THIS, Tool, Wasm, root, run};
use anyhow::{Context, Result};
use std::path::PathBuf;
use std::process::Command;
use std::time::Instant;

/// Returns the folder that a build goes to.
pub(crate) fn folder(quick: bool) -> PathBuf {
    root().join(if quick { "dist-quick" } else { "dist" })
}

/// Returns the folder of the page that only says hello, which the app's start is measured against.
pub(crate) fn hello_folder() -> PathBuf {
    root().join("target/hello")
}

/// Gets what is missing, builds, and returns the folder of the finished app.
pub(crate) fn build(quick: bool) -> Result<PathBuf> {
    let profile = if quick { ["--cargo-profile", "quick"].as_slice() } else { &["--release"] };
    let built = trunk("index.html", folder(quick), profile)?;
    // A quick build is for the next room only, and squeezing it takes longer than it saves.
    if !quick {
        squeeze::squeeze(&built)?;
    }
    Ok(built)
}

/// Builds the page that only says hello, in every way as the finished app.
pub(crate) fn build_hello() -> Result<PathBuf> {
    trunk("tests/browser/bench/hello/index.html", hello_folder(), &["--release"])
}

/// Builds what `page` loads into `folder`, and returns that.
fn trunk(page: &str, folder: PathBuf, profile: &[&str]) -> Result<PathBuf> {
    doctor::get(Purpose::Build)?;
    let (trunk, bindgen) = (Tool::trunk(), Tool::wasm_bindgen()?);
    let wasm = Wasm::find().context("no compiler for wasm")?;

    let takes = "some 3 min on two cores the first time, then less";
    complain(&format!("building {page} into {}: {takes}", folder.display()));
    let start = Instant::now();
    // Trunk runs offline, so that it never downloads tools of its own choice: cargo brings the crates first.
    let mut fetch = Command::new("cargo");
    fetch.args(["fetch", "--quiet", "--target", TARGET]).current_dir(root());
    wasm.prepare(&mut fetch, Vec::new())?;
    run(&mut fetch)?;

    let mut build = Command::new(trunk.path());
    build.args(["build", page, "--dist"]).arg(&folder).args(profile).current_dir(root());
    build.env(THIS, std::env::current_exe()?).env("TRUNK_SKIP_VERSION_CHECK", "true");
    // Trunk 0.21 takes only the words true and false here, and stops at the usual 1.
    build.env_remove("NO_COLOR");
    wasm.prepare(&mut build, vec![trunk.bin(), bindgen.bin()])?;
    run(&mut build)?;
    complain(&format!("{page} is built after {} s", start.elapsed().as_secs()));
    Ok(folder)
}
