//! `cargo xtask build`: the finished app, ready for any static host.
//!
//! Trunk does the work and calls the stamp step last; this only sees that everything is there.
use crate::doctor::{self, Purpose};
use crate::tools::{TARGET, THIS, Tool, Wasm, root, run};
use anyhow::{Context, Result};
use std::path::PathBuf;
use std::process::Command;

/// Returns the folder that a build goes to.
pub(crate) fn folder(quick: bool) -> PathBuf {
    root().join(if quick { "dist-quick" } else { "dist" })
}

/// Gets what is missing, builds, and returns the folder of the finished app.
pub(crate) fn build(quick: bool) -> Result<PathBuf> {
    doctor::get(Purpose::Build)?;
    let (trunk, bindgen) = (Tool::trunk(), Tool::wasm_bindgen()?);
    let wasm = Wasm::find().context("no compiler for wasm")?;

    // Trunk runs offline, so that it never downloads tools of its own choice: cargo brings the crates first.
    let mut fetch = Command::new("cargo");
    fetch.args(["fetch", "--quiet", "--target", TARGET]).current_dir(root());
    wasm.prepare(&mut fetch, Vec::new())?;
    run(&mut fetch)?;

    let mut build = Command::new(trunk.path());
    build.arg("build").arg("--dist").arg(folder(quick)).current_dir(root());
    build.args(if quick { ["--cargo-profile", "quick"].as_slice() } else { &["--release"] });
    build.env(THIS, std::env::current_exe()?).env("TRUNK_SKIP_VERSION_CHECK", "true");
    // Trunk 0.21 takes only the words true and false here, and stops at the usual 1.
    build.env_remove("NO_COLOR");
    wasm.prepare(&mut build, vec![trunk.bin(), bindgen.bin()])?;
    run(&mut build)?;
    Ok(folder(quick))
}
