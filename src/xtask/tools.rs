//! The tools of the build: which versions, where they lie, how they are run.
//!
//! Tools that cargo must compile are kept by version in the user's cache folder, so that a fresh clone reuses them.
use anyhow::{Context, Result, bail};
use std::env;
use std::ffi::OsStr;
use std::io;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The version of Trunk that the build is made for.
pub(crate) const TRUNK: &str = "0.21.14";

/// The wasm target's name.
pub(crate) const TARGET: &str = "wasm32-unknown-unknown";

/// The variable by which a child process finds this very executable.
pub(crate) const THIS: &str = "YEANLING_XTASK";

/// Returns the top of the repository.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .ancestors()
        .nth(2)
        .expect("xtask lies two folders down")
        .to_path_buf()
}

/// Returns the folder of the browser tests.
pub(crate) fn browser_tests() -> PathBuf {
    root().join("tests/browser")
}

/// A tool that cargo compiles into the cache folder.
#[derive(Debug, Clone)]
pub(crate) struct Tool {
    /// The executable's name, and the folder's.
    pub(crate) name: &'static str,
    /// The crate that holds it.
    pub(crate) package: &'static str,
    /// The exact version.
    pub(crate) version: String,
    /// What cargo is told beside the profile.
    words: &'static [&'static str],
    /// How long it takes to compile.
    pub(crate) takes: &'static str,
}

/// A tool is compiled once on a machine and then runs for a second, so it is compiled to be there soon: as its authors
/// compile it, for speed and size, Trunk alone takes seven minutes.
const SOON: [&str; 5] = [
    "profile.release.opt-level=0",
    "profile.release.lto=false",
    "profile.release.codegen-units=256",
    "profile.release.debug=false",
    "profile.release.strip=true",
];

impl Tool {
    /// Returns Trunk.
    pub(crate) fn trunk() -> Self {
        Self {
            name: "trunk",
            package: "trunk",
            version: TRUNK.to_owned(),
            // It runs offline, so it needs nothing that speaks to a network in secret.
            words: &["--locked", "--no-default-features"],
            takes: "some 2 min on two cores",
        }
    }

    /// Returns the wasm-bindgen command line, whose version must equal the library's in Cargo.lock.
    pub(crate) fn wasm_bindgen() -> Result<Self> {
        let lock = root().join("Cargo.lock");
        let text = std::fs::read_to_string(&lock).context("Cargo.lock cannot be read")?;
        let version = text
            .split("[[package]]")
            .find(|package| package.contains("name = \"wasm-bindgen\"\n"))
            .and_then(|package| package.split("version = \"").nth(1)?.split('"').next())
            .context("Cargo.lock names no wasm-bindgen")?;
        let version = version.to_owned();
        Ok(Self {
            name: "wasm-bindgen",
            package: "wasm-bindgen-cli",
            version,
            // These two read the whole app at every build: without any help it would take as long as a compile.
            words: &[
                "--no-default-features",
                "--bin=wasm-bindgen",
                "--config=profile.release.package.walrus.opt-level=1",
                "--config=profile.release.package.wasmparser.opt-level=1",
            ],
            takes: "some 90 s on two cores",
        })
    }

    /// Returns the command that compiles it into its folder.
    pub(crate) fn install(&self) -> Command {
        let mut install = Command::new("cargo");
        install.args(["install", self.package, "--version", &self.version, "--root"]).arg(self.home());
        install.args(self.words).args(SOON.map(|setting| format!("--config={setting}")));
        install
    }

    /// Returns the folder that it is installed into.
    pub(crate) fn home(&self) -> PathBuf {
        cache().join(format!("{}-{}", self.name, self.version))
    }

    /// Returns the folder of its executable.
    pub(crate) fn bin(&self) -> PathBuf {
        self.home().join("bin")
    }

    /// Returns its executable, whether or not it is there yet.
    pub(crate) fn path(&self) -> PathBuf {
        self.bin().join(format!("{}{}", self.name, env::consts::EXE_SUFFIX))
    }
}

/// Returns the folder that tools are kept in, `XDG_CACHE_HOME` respected.
fn cache() -> PathBuf {
    let home = || env::home_dir().unwrap_or_else(env::temp_dir).join(".cache");
    let cache = env::var_os("XDG_CACHE_HOME").map(PathBuf::from).filter(|path| path.is_absolute());
    cache.unwrap_or_else(home).join("yeanling/tools")
}

/// How this machine can compile to wasm.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Wasm {
    /// The usual compiler has the target's library.
    Usual,
    /// Debian's compiler builds the target's library from its source package.
    Debian,
}

impl Wasm {
    /// Returns the way that works here, or nothing.
    pub(crate) fn find() -> Option<Self> {
        let mut ask = Command::new("rustc");
        ask.args(["--print", "target-libdir", "--target", TARGET]).current_dir(root());
        let library = answer(&mut ask).map(PathBuf::from);
        if library.is_some_and(|folder| folder.read_dir().is_ok_and(|mut files| files.next().is_some())) {
            return Some(Self::Usual);
        }
        let parts = ["/usr/bin/rustc", "/usr/bin/cargo", "/usr/bin/rust-lld"];
        let source = answer(Command::new("/usr/bin/rustc").args(["--print", "sysroot"]))
            .map(|sysroot| Path::new(&sysroot).join("lib/rustlib/src/rust/library/std/Cargo.toml"));
        (parts.iter().all(|part| Path::new(part).exists()) && source.is_some_and(|file| file.exists()))
            .then_some(Self::Debian)
    }

    /// Gives `command`, and what it starts, the compiler of this way and the folders `first` on the path.
    pub(crate) fn prepare(self, command: &mut Command, mut first: Vec<PathBuf>) -> Result<()> {
        if self == Self::Debian {
            first.push("/usr/bin".into());
            command.env("RUSTC", "/usr/bin/rustc").env("RUSTC_BOOTSTRAP", "1");
            command.env("CARGO_UNSTABLE_BUILD_STD", "std,panic_abort");
            // The library is built here anyway, so it is built small: plain sorting, plain formatting.
            command.env("CARGO_UNSTABLE_BUILD_STD_FEATURES", "optimize_for_size");
            // Set by cargo for its children; they would bring the other compiler back.
            command.env_remove("CARGO").env_remove("RUSTUP_TOOLCHAIN").env_remove("LD_LIBRARY_PATH");
        }
        let path = env::var_os("PATH").unwrap_or_default();
        command.env("PATH", env::join_paths(first.into_iter().chain(env::split_paths(&path)))?);
        Ok(())
    }
}

/// Returns where `name` is on the path.
pub(crate) fn on_path(name: &str) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    env::split_paths(&path)
        .map(|folder| folder.join(format!("{name}{}", env::consts::EXE_SUFFIX)))
        .find(|file| file.is_file())
}

/// Returns the first of Chromium's usual places that exists; the variable `CHROMIUM` goes before all.
pub(crate) fn chromium() -> Option<PathBuf> {
    let told = env::var_os("CHROMIUM").map(PathBuf::from).filter(|path| path.is_file());
    let mac = || Some(PathBuf::from("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"));
    let names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
    told.or_else(|| names.iter().find_map(|name| on_path(name)))
        .or_else(|| mac().filter(|path| path.is_file()))
}

/// Returns Firefox on the path; the variable `FIREFOX` goes before it.
pub(crate) fn firefox() -> Option<PathBuf> {
    let told = env::var_os("FIREFOX").map(PathBuf::from).filter(|path| path.is_file());
    told.or_else(|| ["firefox-esr", "firefox"].iter().find_map(|name| on_path(name)))
}

/// Runs `command` to its end and returns what it printed, or nothing if it failed or is not there.
pub(crate) fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs `command` to its end, its output going to standard error; anything but success is an error.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    command.stdout(io::stderr());
    let status = command.status().with_context(|| format!("cannot start `{}`", shown(command)))?;
    if !status.success() {
        bail!("`{}` ended with {status}", shown(command));
    }
    Ok(())
}

/// Returns `command` as one would type it.
pub(crate) fn shown(command: &Command) -> String {
    let program = Path::new(command.get_program()).file_name().unwrap_or(command.get_program());
    let words: Vec<_> = [program].into_iter().chain(command.get_args()).map(OsStr::to_string_lossy).collect();
    words.join(" ")
}
