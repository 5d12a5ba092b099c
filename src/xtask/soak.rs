//! `cargo xtask soak`: what takes too long for every day: the same checks as in the tests, many more times.
use crate::say::say;
use crate::tools::{root, run};
use crate::{browser, build};
use anyhow::Result;
use std::process::Command;

/// How many files from strangers are tried.
const FILES: &str = "1000000";

/// How many flocks are made up, each followed through its season.
const FLOCKS: &str = "1000";

/// How many nights are played.
const NIGHTS: &str = "1000000";

/// How often each browser is killed.
const KILLS: &str = "50";

/// Runs all long checks, stopping at the first failure.
pub(crate) fn soak() -> Result<()> {
    strangers()?;
    coverage()?;
    nights()?;
    kill()
}

/// Gives the book a million broken and hostile files, with every overflow told.
fn strangers() -> Result<()> {
    say(&format!("--- {FILES} files from strangers"));
    core("strangers", FILES)
}

/// Holds the forecasts of a thousand flocks against what then came; prints `forecast_coverage_worst`.
fn coverage() -> Result<()> {
    say(&format!("--- the seasons of {FLOCKS} flocks"));
    core("figures::coverage", FLOCKS)
}

/// Runs the core's tests of this name with so many cases.
fn core(name: &str, cases: &str) -> Result<()> {
    let words = ["test", "--profile", "soak", "--package", "yeanling-core", "--test", "core", name];
    run(Command::new("cargo").args(words).env("YEANLING_CASES", cases).current_dir(root()))
}

/// Plays a million nights of lambing and holds each step against the laws of the Watch; the first that breaks one is told.
fn nights() -> Result<()> {
    say(&format!("--- {NIGHTS} nights of lambing"));
    core("nights::", NIGHTS)?;
    say("nights_failed 0");
    Ok(())
}

/// Kills each browser right after entries were saved, and looks whether they are there.
fn kill() -> Result<()> {
    say(&format!("--- each browser killed {KILLS} times"));
    build::build(false)?;
    run(browser::project("kill")?.env("YEANLING_KILLS", KILLS))
}
