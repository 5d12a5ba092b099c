//! `cargo xtask soak`: what takes too long for every day: the same checks as in the tests, many more times.
use crate::say::say;
use crate::tools::{root, run};
use crate::{browser, build};
use anyhow::Result;
use std::process::Command;

/// How many files from strangers are tried.
const FILES: &str = "1000000";

/// How often each browser is killed.
const KILLS: &str = "50";

/// Runs all long checks, stopping at the first failure.
pub(crate) fn soak() -> Result<()> {
    strangers()?;
    kill()
}

/// Gives the book a million broken and hostile files, with every overflow told.
fn strangers() -> Result<()> {
    say(&format!("--- {FILES} files from strangers"));
    let words = ["test", "--profile", "soak", "--package", "yeanling-core", "--test", "core", "strangers"];
    run(Command::new("cargo").args(words).env("YEANLING_CASES", FILES).current_dir(root()))
}

/// Kills each browser right after entries were saved, and looks whether they are there.
fn kill() -> Result<()> {
    say(&format!("--- each browser killed {KILLS} times"));
    build::build(false)?;
    run(browser::project("kill")?.env("YEANLING_KILLS", KILLS))
}
