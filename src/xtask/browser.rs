//! Running the browser tests: one Playwright project at a time, against the finished app.
use crate::doctor::{self, Purpose};
use crate::tools::{THIS, browser_tests, chromium};
use anyhow::{Context, Result};
use std::process::Command;

/// Returns the command that runs `project`, everything that it needs being there.
pub(crate) fn project(name: &str) -> Result<Command> {
    doctor::get(Purpose::Browser)?;
    let mut command = Command::new(if cfg!(windows) { "npx.cmd" } else { "npx" });
    command.args(["--no-install", "playwright", "test"]).arg(format!("--project={name}"));
    command.current_dir(browser_tests());
    command.env("CHROMIUM", chromium().context("no Chromium")?).env(THIS, std::env::current_exe()?);
    Ok(command)
}

/// Returns whether `project` has anything to run yet.
pub(crate) fn has_specs(project: &str) -> bool {
    let specs = browser_tests().join(project).read_dir();
    specs.is_ok_and(|files| files.flatten().any(|file| file.file_name().to_string_lossy().contains(".spec.")))
}
