//! `cargo xtask test`: everything that must hold, in order, stopping at the first failure; the release build goes beside
//! the native tests.
//!
//! Output streams as it comes; the last line is always `N passed, M failed`.
use crate::doctor::{self, Purpose};
use crate::say::{complain, say};
use crate::tools::{root, run, shown};
use crate::{browser, licenses};
use anyhow::{Context, Result, anyhow, bail, ensure};
use std::env;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::thread;
use std::time::Instant;

/// Tests counted over all steps.
#[derive(Debug, Default)]
struct Counts {
    passed: u32,
    failed: u32,
}

/// Runs all steps and prints how long each took.
pub(crate) fn test() -> Result<()> {
    let mut counts = Counts::default();
    let outcome = steps(&mut counts);
    if let Err(error) = &outcome {
        complain(&format!("stopped: {error:#}"));
        counts.failed = counts.failed.max(1);
    }
    say(&format!("{} passed, {} failed", counts.passed, counts.failed));
    outcome
}

fn steps(counts: &mut Counts) -> Result<()> {
    doctor::get(Purpose::Tests)?;
    timed("format", || run(&mut cargo(&["fmt", "--all", "--check"])))?;
    timed("lints", || run(&mut cargo(&["clippy", "--workspace", "--all-targets", "--", "-D", "warnings"])))?;
    timed("tests, and beside them the release build", || beside(this(&["build"])?, counts))?;
    timed("licenses", licenses::check)?;
    timed("browser journeys", || count(&mut browser::project("journeys")?, counts))?;
    if !browser::ALL_ENGINES {
        say("--- other engines: on Linux only");
        return Ok(());
    }
    timed("other engines", || count(&mut browser::project("engines")?, counts))?;
    timed("browsers killed", || count(&mut browser::project("kill")?, counts))
}

/// Runs the native tests while `other` runs: each alone leaves one of two processors idle for a minute, the one while it
/// links and the other while it looks at the whole app at once. What `other` printed comes after the tests.
fn beside(mut other: Command, counts: &mut Counts) -> Result<()> {
    thread::scope(|scope| {
        let (start, name) = (Instant::now(), shown(&other));
        let other = scope.spawn(move || (other.output(), start.elapsed()));
        let tests = count(&mut cargo(&["test", "--workspace"]), counts);
        let took = start.elapsed();
        let (output, other_took) = other.join().map_err(|_| anyhow!("the other step broke off"))?;
        let output = output.with_context(|| format!("cannot start `{name}`"))?;
        complain(String::from_utf8_lossy(&output.stderr).trim_end());
        say(&format!(
            "--- of these, tests: {:.0} s, `{name}`: {:.0} s",
            took.as_secs_f64(),
            other_took.as_secs_f64()
        ));
        tests?;
        ensure!(output.status.success(), "`{name}` ended with {}", output.status);
        Ok(())
    })
}

/// Returns the command that runs a chore of this very executable.
fn this(words: &[&str]) -> Result<Command> {
    let mut command = Command::new(env::current_exe()?);
    command.args(words).current_dir(root()).stdin(Stdio::null());
    Ok(command)
}

fn timed(name: &str, step: impl FnOnce() -> Result<()>) -> Result<()> {
    say(&format!("--- {name}"));
    let start = Instant::now();
    step()?;
    say(&format!("--- {name}: {:.0} s", start.elapsed().as_secs_f64()));
    Ok(())
}

fn cargo(words: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.args(words).current_dir(root());
    command
}

/// Runs `command`, showing its lines as they come and adding up the results that they report.
fn count(command: &mut Command, counts: &mut Counts) -> Result<()> {
    let mut child = command.env("NO_COLOR", "1").env_remove("FORCE_COLOR").stdout(Stdio::piped()).spawn()?;
    let lines = child.stdout.take().context("no output to read")?;
    for line in BufReader::new(lines).split(b'\n') {
        let line = line?;
        let line = String::from_utf8_lossy(&line);
        let (passed, failed) = results(&line);
        counts.passed += passed;
        counts.failed += failed;
        say(&line);
    }
    let status = child.wait()?;
    if !status.success() {
        bail!("`{}` ended with {status}", shown(command));
    }
    Ok(())
}

/// Returns what a line reports as passed and failed, in the words of cargo or of Playwright.
fn results(line: &str) -> (u32, u32) {
    let line = line.trim();
    if let Some(report) = line.strip_prefix("test result: ") {
        let before = |word| {
            let part = report.split(['.', ';']).map(str::trim).find(|part| part.ends_with(word));
            part.and_then(|part| part.split(' ').next()?.parse().ok()).unwrap_or(0)
        };
        return (before(" passed"), before(" failed"));
    }
    let mut words = line.split(' ');
    let number = words.next().and_then(|word| word.parse().ok());
    match (number, words.next(), words.next()) {
        (Some(passed), Some("passed"), Some(time)) if time.starts_with('(') => (passed, 0),
        (Some(failed), Some("failed" | "interrupted"), None) => (0, failed),
        (Some(flaky), Some("flaky"), None) => (0, flaky),
        _ => (0, 0),
    }
}

#[cfg(test)]
mod tests {
    use super::results;

    #[track_caller]
    fn check(line: &str, expected: (u32, u32)) {
        assert_eq!(results(line), expected, "{line}");
    }

    #[test]
    fn results_are_read_from_both_kinds_of_report() {
        check(
            "test result: ok. 12 passed; 0 failed; 0 ignored; 0 measured; 3 filtered out; finished in 0.01s",
            (12, 0),
        );
        check("test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out", (3, 2));
        check("  5 passed (12.3s)", (5, 0));
        check("  2 failed", (0, 2));
        check("    5 passed over there", (0, 0));
        check("running 3 tests", (0, 0));
    }
}
