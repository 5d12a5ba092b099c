//! Starts the app: what guards it, the farm, and the screen of the address. It lives as long as the page.

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
    Shown::start(Farm::open());
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
