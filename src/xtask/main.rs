//! Build chores in Rust: `cargo xtask COMMAND`.
//!
//! One chore a file, named by its command; what they share is in `tools` and `say`.
mod bench;
mod browser;
mod build;
mod doctor;
#[cfg(any(test, feature = "measure"))]
mod fold_growth;
#[cfg(any(test, feature = "measure"))]
mod forecast_ratio;
mod handbook;
#[cfg(any(test, feature = "measure"))]
mod history;
mod ledger;
mod licenses;
#[cfg(any(test, feature = "measure"))]
mod load_ratio;
#[cfg(any(test, feature = "measure"))]
mod measure;
#[cfg(feature = "measure")]
mod merge_ratio;
#[cfg(any(test, feature = "measure"))]
mod quickest;
#[cfg(any(test, feature = "measure"))]
mod sample_book;
#[cfg(any(test, feature = "measure"))]
mod sample_history;
mod say;
mod serve;
mod shots;
mod soak;
mod squeeze;
mod stamp;
#[cfg(any(test, feature = "measure"))]
mod stranger;
mod test;
mod tools;
#[cfg(any(test, feature = "measure"))]
mod watch_ratio;
mod worker;
#[cfg(any(test, feature = "measure"))]
mod year_ratio;

use anyhow::{Result, bail};
use say::{complain, say};
use std::process::ExitCode;

const COMMANDS: &str = "\
cargo xtask COMMAND

  serve [--port 8080] [--quick] [--no-build]
                   build, then serve the app at a local address
  test             format, lints, tests, the release build, journeys in real browsers
  build [--quick]  the finished app in dist/ (a fast debugging build in dist-quick/)
  bench            what the app weighs and asks for, one `name value unit` a line
  soak             what is too long for every day: a million files from strangers, a million nights, a million
                   presses on the screens, each browser killed 50 times
  shots            a picture of every screen, in target/shots/
  doctor [--fix]   what is missing on this machine and how to get it
  measure          the ratios that bench prints; bench calls it in a build of its own
  stamp DIR        the last step of a build; Trunk calls it";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let Some((&command, rest)) = words.split_first() else { return list() };
    let outcome = match command {
        "serve" => serve::serve(rest),
        "test" => flags(rest, []).and_then(|[]| test::test()),
        "build" => flags(rest, ["--quick"]).and_then(|[quick]| build::build(quick).map(|_| ())),
        "bench" => flags(rest, []).and_then(|[]| bench::bench()),
        "soak" => flags(rest, []).and_then(|[]| soak::soak()),
        #[cfg(any(test, feature = "measure"))]
        "measure" => flags(rest, []).and_then(|[]| measure::measure()),
        "shots" => flags(rest, []).and_then(|[]| shots::shots()),
        "doctor" => flags(rest, ["--fix"]).and_then(|[fix]| doctor::doctor(fix)),
        "stamp" => stamp::command(rest),
        _ => return list(),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            complain(&format!("xtask {command}: {error:#}"));
            ExitCode::FAILURE
        }
    }
}

/// Prints the list of commands; not having been understood is exit code 2.
fn list() -> ExitCode {
    say(COMMANDS);
    ExitCode::from(2)
}

/// Returns which of the `known` flags were given, in their order, or an error naming the first unknown word.
fn flags<const N: usize>(given: &[&str], known: [&str; N]) -> Result<[bool; N]> {
    match given.iter().find(|word| !known.contains(word)) {
        Some(word) => bail!("`{word}` is not known here; known: {}", known.join(" ")),
        None => Ok(known.map(|flag| given.contains(&flag))),
    }
}
