//! An address that names no screen.

use yeanling_words::frame;

use crate::page::{Blocks, Page};
use crate::{Action, Button, Screen};

/// Returns the screen: it says so, and leads home.
pub(crate) fn page() -> Page {
    let home = Button::new("watch", frame::WATCH, Action::Go(Screen::Watch));
    Page::new(frame::LOST).back(Screen::Watch, frame::BACK).blocks(Blocks::new().empty(frame::LOST, [home]))
}
