//! `cargo xtask soak`: what takes too long for every day: the same checks as in the tests, many more times.
use crate::say::say;
use crate::tools::{answer, root, run};
use crate::{browser, build};
use anyhow::{Context, Result, ensure};
use std::process::Command;

/// How many files from strangers are tried.
const FILES: &str = "1000000";

/// How many flocks are made up, each followed through its season.
const FLOCKS: &str = "1000";

/// How many nights are played.
const NIGHTS: &str = "1000000";

/// How many presses are made on the screens.
const PRESSES: &str = "1000000";

/// How often each browser is killed.
const KILLS: &str = "50";

/// Runs all long checks, stopping at the first failure.
pub(crate) fn soak() -> Result<()> {
    strangers()?;
    coverage()?;
    red()?;
    nights()?;
    walks()?;
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
    core("seasons::coverage", FLOCKS)
}

/// Makes up a thousand seasons of illness; prints `illness_now_share`, how many of a hundred answers are "now".
fn red() -> Result<()> {
    say(&format!("--- illness in {FLOCKS} flocks"));
    core("illness::season", FLOCKS)
}

/// Runs the core's tests of this name with so many cases.
fn core(name: &str, count: &str) -> Result<()> {
    cases("yeanling-core", "core", name, count)
}

/// Runs a package's tests of this name with so many cases.
fn cases(package: &str, test: &str, name: &str, count: &str) -> Result<()> {
    let tests = |more: &[&str]| {
        let words = ["test", "--profile", "soak", "--package", package, "--test", test, name];
        let mut command = Command::new("cargo");
        command.args(words).args(more).env("YEANLING_CASES", count).current_dir(root());
        command
    };
    // A name that no test has any more would pass at once.
    let found = answer(&mut tests(&["--", "--list"])).context("the tests cannot be listed")?;
    ensure!(found.lines().any(|line| line.ends_with(": test")), "no test of `{test}` is named {name}");
    run(&mut tests(&[]))
}

/// Plays a million nights of lambing and holds each step against the laws of the Watch; the first that breaks one is told.
fn nights() -> Result<()> {
    say(&format!("--- {NIGHTS} nights of lambing"));
    core("nights::", NIGHTS)?;
    say("nights_failed 0");
    Ok(())
}

/// Makes a million presses on a phone without a browser, and holds each page on the way against the laws of every screen.
fn walks() -> Result<()> {
    say(&format!("--- {PRESSES} presses"));
    cases("yeanling-pages", "pages", "walk::", PRESSES)?;
    say("presses_failed 0");
    Ok(())
}

/// Kills each browser right after entries were saved, and looks whether they are there.
fn kill() -> Result<()> {
    say(&format!("--- each browser killed {KILLS} times"));
    build::build(false)?;
    run(browser::project("kill")?.env("YEANLING_KILLS", KILLS))
}
