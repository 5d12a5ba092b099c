//! `cargo xtask soak`: what is too long for every day.
use crate::say::say;
use crate::tools::{root, run};
use anyhow::Result;
use std::process::Command;

/// How many files from strangers are tried.
const FILES: &str = "1000000";

/// Runs every long test.
pub(crate) fn soak() -> Result<()> {
    strangers()
}

/// Gives the book a million broken and hostile files, with every overflow told.
fn strangers() -> Result<()> {
    say(&format!("--- {FILES} files from strangers"));
    let words = ["test", "--profile", "soak", "--package", "yeanling-core", "--test", "core", "strangers"];
    run(Command::new("cargo").args(words).env("YEANLING_CASES", FILES).current_dir(root()))
}
