//! `cargo xtask doctor`: what this machine lacks, and the exact commands that get it.
//!
//! A need is a check and the ways to meet it, best first; with `--fix` the ways are tried until the check passes.
use crate::browser::ALL_ENGINES;
use crate::say::{complain, say};
use crate::tools::{TARGET, Tool, Wasm, answer, browser_tests, chromium, firefox, on_path, root, run, shown};
use anyhow::{Result, bail};
use std::process::Command;
use std::time::Instant;

const DEBIAN_WASM: [&str; 5] = ["rustc-web", "cargo-web", "rust-web-src", "rust-web-llvm", "lld-22"];

/// What a tool is needed for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Purpose {
    /// To build the app.
    Build,
    /// To run all tests; includes what the build needs.
    Tests,
    /// To run the browser journeys; includes what the build needs.
    Browser,
}

impl Purpose {
    fn includes(self, other: Self) -> bool {
        self == other || other == Self::Build || self == Self::Tests
    }
}

/// Something that must be there.
struct Need {
    name: String,
    purpose: Purpose,
    /// Returns what was found.
    check: Box<dyn Fn() -> Option<String>>,
    /// Ways to get it, best first; each a list of commands.
    ways: Vec<Vec<Command>>,
    /// How long that takes; empty for what is there at once.
    takes: &'static str,
    /// What to do by hand if no way works.
    advice: &'static str,
}

/// Lists every need, met or not; with `fix`, gets what is missing.
pub(crate) fn doctor(fix: bool) -> Result<()> {
    let mut missing = 0;
    for mut need in needs()? {
        if let Some(found) = (need.check)() {
            say(&format!("ok       {}: {found}", need.name));
            continue;
        }
        say(&format!("missing  {} (for: {:?})", need.name, need.purpose));
        if fix {
            need.meet()?;
            say(&format!("ok       {}: {}", need.name, (need.check)().unwrap_or_default()));
        } else {
            missing += 1;
            need.explain();
        }
    }
    if missing > 0 {
        bail!("{missing} missing; `cargo xtask doctor --fix` gets what it can");
    }
    Ok(())
}

/// Gets what is missing for `purpose`, saying nothing when all is there.
pub(crate) fn get(purpose: Purpose) -> Result<()> {
    let wanted = |need: &Need| purpose.includes(need.purpose) && (need.check)().is_none();
    let mut missing: Vec<Need> = needs()?.into_iter().filter(wanted).collect();
    if !missing.is_empty() {
        let all: Vec<String> = missing.iter().map(Need::told).collect();
        complain(&format!("missing on this machine, and got now, once: {}", all.join(", ")));
    }
    missing.iter_mut().try_for_each(Need::meet)
}

impl Need {
    /// Returns its name, and how long it takes to get.
    fn told(&self) -> String {
        if self.takes.is_empty() { self.name.clone() } else { format!("{} ({})", self.name, self.takes) }
    }

    fn explain(&self) {
        for (place, way) in self.ways.iter().enumerate() {
            let way: Vec<_> = way.iter().map(shown).collect();
            say(&format!("         {} {}", if place == 0 { "get it:" } else { "or:    " }, way.join(" && ")));
        }
        if !self.advice.is_empty() {
            say(&format!("         {}", self.advice));
        }
    }

    fn meet(&mut self) -> Result<()> {
        if (self.check)().is_some() {
            return Ok(());
        }
        let (told, start) = (self.told(), Instant::now());
        for way in &mut self.ways {
            let mut worked = true;
            for command in way {
                complain(&format!("getting {told}: {}", shown(command)));
                if let Err(error) = run(command) {
                    complain(&format!("{error:#}"));
                    worked = false;
                    break;
                }
            }
            if worked && (self.check)().is_some() {
                complain(&format!("{} is there after {} s", self.name, start.elapsed().as_secs()));
                return Ok(());
            }
        }
        bail!("{} is missing and could not be got. {}", self.name, self.advice)
    }
}

/// Returns everything that is needed, in the order to get it.
fn needs() -> Result<Vec<Need>> {
    let mut needs = vec![
        Need {
            name: "a C compiler and linker (cc)".to_owned(),
            purpose: Purpose::Build,
            check: Box::new(|| {
                ["cc", "link"].iter().find_map(|name| on_path(name)).map(|path| path.display().to_string())
            }),
            ways: debian(&["build-essential"]),
            takes: "",
            advice: "Install the C compiler of your system.",
        },
        Need {
            name: format!("the target {TARGET}"),
            purpose: Purpose::Build,
            check: Box::new(|| {
                Wasm::find().map(|way| match way {
                    Wasm::Usual => "in the usual toolchain".to_owned(),
                    Wasm::Debian => "Debian's compiler builds it".to_owned(),
                })
            }),
            ways: rustup(&["target", "add", TARGET]).into_iter().chain(debian(&DEBIAN_WASM)).collect(),
            takes: "",
            advice: "Install Rust with rustup, or a Debian or Ubuntu with the package rustc-web.",
        },
        compiled(Tool::trunk()),
        compiled(Tool::wasm_bindgen()?),
        component("rustfmt", &["fmt", "--version"]),
        component("clippy", &["clippy", "--version"]),
        Need {
            name: "Node 20 or newer".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(|| {
                let version = answer(Command::new("node").arg("--version"))?;
                let major: u32 = version.trim_start_matches('v').split('.').next()?.parse().ok()?;
                (major >= 20).then_some(version)
            }),
            ways: Vec::new(),
            takes: "",
            advice: "Install Node 20 or newer with npm: https://nodejs.org",
        },
        Need {
            name: "Chromium".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(|| chromium().map(|path| path.display().to_string())),
            ways: debian(&["chromium"]),
            takes: "",
            advice: "Install Chromium or Chrome, or set CHROMIUM to its executable.",
        },
        Need {
            name: "the browser tests' packages".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(packages),
            ways: vec![vec![npm_ci()]],
            takes: "",
            advice: "Run `npm ci` in tests/browser.",
        },
    ];
    if ALL_ENGINES {
        needs.extend(engines());
    }
    Ok(needs)
}

/// Returns what the engines other than Chromium need.
fn engines() -> [Need; 3] {
    [
        Need {
            name: "Firefox".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(|| firefox().map(|path| path.display().to_string())),
            ways: debian(&["firefox-esr"]),
            takes: "",
            advice: "Install Firefox, or set FIREFOX to its executable.",
        },
        Need {
            name: "WebKitGTK's WebDriver".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(|| on_path("WebKitWebDriver").map(|path| path.display().to_string())),
            // It brings the library, and that WebKit's small browser.
            ways: debian(&["webkit2gtk-driver"]),
            takes: "",
            advice: "Install WebKitGTK with its WebDriver and its MiniBrowser.",
        },
        Need {
            name: "a screen that is not there (Xvfb)".to_owned(),
            purpose: Purpose::Browser,
            check: Box::new(|| on_path("Xvfb").map(|path| path.display().to_string())),
            ways: debian(&["xvfb"]),
            takes: "",
            advice: "Install Xvfb.",
        },
    ]
}

/// Returns the need of a tool that cargo compiles into the cache.
fn compiled(tool: Tool) -> Need {
    let install = tool.install();
    let (name, takes) = (format!("{} {}", tool.name, tool.version), tool.takes);
    let check = Box::new(move || {
        answer(Command::new(tool.path()).arg("--version"))?;
        Some(tool.path().display().to_string())
    });
    Need {
        name,
        purpose: Purpose::Build,
        check,
        ways: vec![vec![install]],
        takes,
        advice: "It is compiled once and kept in your cache folder.",
    }
}

/// Returns the need of a part of the usual toolchain, asked for by running cargo with `ask`.
fn component(name: &'static str, ask: &'static [&'static str]) -> Need {
    Need {
        name: name.to_owned(),
        purpose: Purpose::Tests,
        check: Box::new(move || answer(Command::new("cargo").args(ask).current_dir(root()))),
        ways: rustup(&["component", "add", name]),
        takes: "",
        advice: "Install it with your Rust toolchain.",
    }
}

/// Returns the way through rustup, if rustup is there.
fn rustup(words: &[&str]) -> Vec<Vec<Command>> {
    let mut command = Command::new("rustup");
    command.args(words).current_dir(root());
    if on_path("rustup").is_some() { vec![vec![command]] } else { Vec::new() }
}

/// Returns the way through Debian's packages, if this is such a system; with sudo when not root.
fn debian(packages: &[&str]) -> Vec<Vec<Command>> {
    if on_path("apt-get").is_none() {
        return Vec::new();
    }
    let root = answer(Command::new("id").arg("-u")).is_some_and(|id| id == "0");
    let apt = |words: &[&str]| {
        let mut command = Command::new(if root { "env" } else { "sudo" });
        command.args(["DEBIAN_FRONTEND=noninteractive", "apt-get"]).args(words);
        command
    };
    let install = ["install", "--yes", "--no-install-recommends"];
    vec![vec![apt(&["update"]), apt(&[&install, packages].concat())]]
}

fn npm_ci() -> Command {
    let mut command = Command::new(if cfg!(windows) { "npm.cmd" } else { "npm" });
    command.args(["--prefix", "tests/browser", "ci", "--no-fund", "--no-audit"]).current_dir(root());
    command
}

/// Returns how old the installed packages are against the lock: they count only when not older.
fn packages() -> Option<String> {
    let changed = |file: &str| browser_tests().join(file).metadata().and_then(|file| file.modified()).ok();
    let (lock, installed) = (changed("package-lock.json")?, changed("node_modules/.package-lock.json")?);
    (installed >= lock).then(|| "tests/browser/node_modules".to_owned())
}
