//! Starts the app: what guards it, the farm, and the screen of the address. It lives as long as the page.

use std::time::Duration;

use leptos::prelude::{Owner, set_timeout};

use crate::browser::safety::Safety;
use crate::browser::{focus, panic, press, theme};
use crate::farm::Farm;
use crate::show::Shown;
use crate::words::frame as words;

/// Starts the app.
pub(crate) fn start() {
    panic::on_panic(broke, words::RELOAD);
    theme::show(theme::load());
    press::guard();
    focus::keep();
    let farm = Farm::open();
    // A task of its own, so that a press between the two is heard.
    let owner = Owner::current().unwrap_or_default();
    set_timeout(move || owner.with(|| Shown::start(farm)), Duration::ZERO);
}

/// Says that the app broke, and what became of what was noted.
const fn broke(safety: Safety) -> &'static str {
    match safety {
        Safety::Saved => words::BROKE_SAVED,
        Safety::OnItsWay => words::BROKE_ON_ITS_WAY,
        Safety::LocalOnly => words::BROKE_LOCAL_ONLY,
        Safety::MemoryOnly => words::BROKE_MEMORY_ONLY,
    }
}
