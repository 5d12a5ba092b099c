//! Running the browser tests: one Playwright project at a time, against the finished app.
use crate::doctor::{self, Purpose};
use crate::tools::{THIS, browser_tests, chromium, firefox};
use anyhow::{Context, Result};
use std::process::Command;

/// Whether Firefox and WebKit are run and browsers killed: WebKit's small browser and the way to find processes are
/// Linux's.
pub(crate) const ALL_ENGINES: bool = cfg!(target_os = "linux");

/// Returns the command that runs `project`, everything that it needs being there.
pub(crate) fn project(name: &str) -> Result<Command> {
    doctor::get(Purpose::Browser)?;
    let mut command = Command::new(if cfg!(windows) { "npx.cmd" } else { "npx" });
    command.args(["--no-install", "playwright", "test"]).arg(format!("--project={name}"));
    command.current_dir(browser_tests());
    command.env("CHROMIUM", chromium().context("no Chromium")?);
    command.env(THIS, std::env::current_exe()?);
    if let Some(firefox) = firefox() {
        command.env("FIREFOX", firefox);
    }
    Ok(command)
}

/// Returns whether `project` has anything to run yet.
pub(crate) fn has_specs(project: &str) -> bool {
    let specs = browser_tests().join(project).read_dir();
    specs.is_ok_and(|files| files.flatten().any(|file| file.file_name().to_string_lossy().contains(".spec.")))
}
