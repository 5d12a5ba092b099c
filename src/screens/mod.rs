//! The screens that are still drawn by hand.

mod watch;

use crate::signals::prelude::*;

use crate::route::Screen;

/// Returns the screen at an address.
pub(crate) fn show(screen: Screen) -> AnyView {
    match screen {
        Screen::Watch => view! { <watch::Watch /> }.into_any(),
        _ => ().into_any(),
    }
}
