//! `cargo xtask soak`: what takes too long for every change: the same checks as in the tests, many more times.
use crate::tools::run;
use crate::{browser, build};
use anyhow::Result;

/// How often each browser is killed.
const KILLS: &str = "50";

/// Runs all long checks, stopping at the first failure.
pub(crate) fn soak() -> Result<()> {
    kill()
}

/// Kills each browser right after entries were saved, and looks whether they are there.
fn kill() -> Result<()> {
    build::build(false)?;
    run(browser::project("kill")?.env("YEANLING_KILLS", KILLS))
}
