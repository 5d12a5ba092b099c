//! Printing: results to standard output, everything else to standard error.
//!
//! A closed pipe is no reason to panic, so write errors are dropped.
use std::io::{Write, stderr, stdout};

/// Prints a line to standard output.
pub(crate) fn say(line: &str) {
    writeln!(stdout(), "{line}").ok();
}

/// Prints a line to standard error.
pub(crate) fn complain(line: &str) {
    writeln!(stderr(), "{line}").ok();
}
