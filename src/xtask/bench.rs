//! `cargo xtask bench`: what the app weighs and what it asks of a hand, one `name value unit` a line.
//!
//! Nothing but such lines goes to standard output.
use crate::say::say;
use crate::tools::root;
use crate::{browser, build, handbook, ledger, squeeze, worker};
use anyhow::{Context, Result, bail};
use std::fs;
use std::io::{Write, stderr};
use std::path::Path;
use std::process::{Command, Stdio};

/// Builds, weighs, measures the core, counts the checks of published figures, then passes on what the
/// project `bench` measures in the browser.
pub(crate) fn bench() -> Result<()> {
    let folder = build::build(false)?;
    weigh(&folder)?;
    ledger::print()?;
    measure(&mut optimized())?;
    handbook::figures()?;
    if !browser::has_specs("bench") {
        return Ok(());
    }
    build::build_hello()?;
    measure(&mut browser::project("bench")?)
}

/// Returns `xtask measure` in a build of its own: a ratio of unoptimized code says nothing.
fn optimized() -> Command {
    let mut command = Command::new("cargo");
    command.args(["run", "--quiet", "--profile", "measure", "--package", "xtask", "--features", "measure"]);
    command.args(["--", "measure"]).current_dir(root());
    // Memory that was once had is kept, as a phone's wasm keeps it: else the system's clearing of pages is measured, which
    // a large book alone pays at each run.
    for name in ["MALLOC_MMAP_THRESHOLD_", "MALLOC_TRIM_THRESHOLD_"] {
        command.env(name, "4000000000");
    }
    command
}

/// Prints the weight of the wasm, and of all that a first visit loads: every file that the worker keeps, and itself.
fn weigh(folder: &Path) -> Result<()> {
    let mut names = worker::kept(folder)?;
    names.push(worker::NAME.to_owned());
    let (mut download, mut wasm) = (0, Vec::new());
    for name in &names {
        let content = fs::read(folder.join(name)).with_context(|| name.clone())?;
        download += sent(name, &content)?;
        if name.ends_with(".wasm") {
            wasm = content;
        }
    }
    print("wasm_kib", wasm.len());
    print("wasm_gzip_kib", squeeze::gzip(&wasm)?.len());
    print("download_brotli_kib", download);
    say(&format!("download_files {} files", names.len()));
    Ok(())
}

/// Returns the bytes that a static host sends: brotli at quality 11, except for what is compressed already.
fn sent(name: &str, content: &[u8]) -> Result<usize> {
    if [".png", ".woff2"].iter().any(|end| name.ends_with(end)) {
        return Ok(content.len());
    }
    Ok(squeeze::brotli(content)?.len())
}

/// Prints a size, in KiB to one decimal, rounded up so that a limit is never passed unseen.
fn print(name: &str, bytes: usize) {
    let tenths = (bytes * 10).div_ceil(1024);
    say(&format!("{name} {}.{} KiB", tenths / 10, tenths % 10));
}

/// Runs `command`, passing lines of the form `name value unit` on and all others to standard error.
fn measure(command: &mut Command) -> Result<()> {
    let output = command.stderr(Stdio::inherit()).output()?;
    for line in String::from_utf8_lossy(&output.stdout).lines() {
        if is_figure(line) {
            say(line);
        } else {
            writeln!(stderr(), "{line}")?;
        }
    }
    if !output.status.success() {
        bail!("the measurements failed");
    }
    Ok(())
}

/// Returns whether `line` is a figure: a name in snake case, a number, a unit.
fn is_figure(line: &str) -> bool {
    let words: Vec<_> = line.split(' ').collect();
    let [name, value, unit] = words[..] else { return false };
    let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_';
    !name.is_empty() && name.bytes().all(plain) && value.parse::<f64>().is_ok() && !unit.is_empty()
}
