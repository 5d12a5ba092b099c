//! What the published figures are checked by: how many checks name a printed source, and how much of `reckon` runs.
use crate::say::{complain, say};
use crate::tools::root;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

/// Where the checks are.
const CHECKS: &str = "tests/core/handbook";

/// How a check opens that rests on something printed.
const SOURCE: &str = "// Source: ";

/// How a source begins that was not printed.
const NOT_PRINTED: [&str; 3] = ["memory", "common practice", "ours"];

/// Prints the number of checks that name a printed source, and the share of lines of `reckon` that tests run.
pub(crate) fn figures() -> Result<()> {
    say(&format!("handbook_checks {} checks", printed_in(&root().join(CHECKS))?));
    match line_coverage()? {
        Some(percent) => say(&format!("reckon_line_coverage {percent:.1} %")),
        None => complain("reckon_line_coverage is left out: `cargo install cargo-llvm-cov` brings it"),
    }
    Ok(())
}

/// Returns how many checks under a folder name a printed source.
fn printed_in(folder: &Path) -> Result<usize> {
    let mut checks = 0;
    for one in fs::read_dir(folder).with_context(|| folder.display().to_string())? {
        let path = one?.path();
        checks += if path.is_dir() { printed_in(&path)? } else { printed(&fs::read_to_string(&path)?) };
    }
    Ok(checks)
}

/// Returns how many checks of a file name a printed source.
fn printed(text: &str) -> usize {
    let sources = text.lines().filter_map(|line| line.trim_start().strip_prefix(SOURCE));
    sources.filter(|source| !NOT_PRINTED.iter().any(|word| source.starts_with(word))).count()
}

/// Returns the share of lines under `reckon` that the core's tests run, in percent; none without cargo-llvm-cov.
fn line_coverage() -> Result<Option<f64>> {
    let cargo = |words: &[&str]| {
        let mut command = Command::new("cargo");
        command.args(words).current_dir(root());
        command
    };
    let known = cargo(&["llvm-cov", "--version"]).stdout(Stdio::null()).stderr(Stdio::null()).status();
    if !known.is_ok_and(|status| status.success()) {
        return Ok(None);
    }
    let words = ["llvm-cov", "--package", "yeanling-core", "--json", "--summary-only"];
    let output = cargo(&words).stderr(Stdio::inherit()).output()?;
    if !output.status.success() {
        bail!("cargo llvm-cov failed");
    }
    // The report goes to standard output after whatever the tests print.
    let text = String::from_utf8_lossy(&output.stdout);
    let report =
        text.lines().find(|line| line.starts_with("{\"data\"")).context("llvm-cov gave no report")?;
    Ok(Some(share(report)?))
}

/// Returns the share of lines of `reckon` that ran, in percent, from llvm-cov's summary.
fn share(report: &str) -> Result<f64> {
    let report: serde_json::Value = serde_json::from_str(report)?;
    let files = report["data"][0]["files"].as_array().context("the report lists no files")?;
    let (mut all, mut run) = (0.0, 0.0);
    for file in files.iter().filter(|file| file["filename"].as_str().is_some_and(of_reckon)) {
        let lines = &file["summary"]["lines"];
        all += lines["count"].as_f64().context("no count of lines")?;
        run += lines["covered"].as_f64().context("no covered lines")?;
    }
    if all > 0.0 { Ok(run / all * 100.0) } else { bail!("the report has no file of reckon") }
}

fn of_reckon(name: &str) -> bool {
    name.replace('\\', "/").contains("/src/core/reckon/")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_was_printed_counts() {
        let text = "    // Source: AHDB, 50 ml/kg.\n    // Source: ours.\n    // Source: memory (3.0 kg); AWI.\n\
                    // Source: common practice.\n    // A source: none.\n    // Source: Bond 2020 (6 h), the rest ours.";
        assert_eq!(printed(text), 2);
    }

    #[test]
    fn at_least_sixty_checks_name_a_printed_source() {
        let checks = printed_in(&root().join(CHECKS)).expect("the checks can be read");
        assert!(checks >= 60, "{checks}");
    }

    #[test]
    fn the_share_is_of_reckon_alone() {
        let file = |name: &str, count, covered| serde_json::json!({ "filename": name, "summary": { "lines": { "count": count, "covered": covered } } });
        let files = [file("/x/src/core/reckon/feeds.rs", 30, 27), file("/x/src/core/book/mod.rs", 50, 0)];
        let report = serde_json::json!({ "data": [{ "files": files }] }).to_string();
        assert!((share(&report).expect("a share") - 90.0).abs() < 1e-9);
        assert!(share("{\"data\":[{\"files\":[]}]}").is_err());
    }
}
