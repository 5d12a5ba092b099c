//! `cargo xtask shots`: a picture of every screen, day and night, in target/shots/.
use crate::say::complain;
use crate::tools::{root, run};
use crate::{browser, build};
use anyhow::Result;

/// Builds, then lets the project `shots` write its pictures.
pub(crate) fn shots() -> Result<()> {
    build::build(false)?;
    let folder = root().join("target/shots");
    std::fs::create_dir_all(&folder)?;
    if !browser::has_specs("shots") {
        complain("tests/browser/shots holds no *.spec.ts yet");
        return Ok(());
    }
    run(browser::project("shots")?.env("YEANLING_SHOTS", &folder))
}
