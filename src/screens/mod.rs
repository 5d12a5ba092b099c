//! The screens that are still drawn by hand.

mod help;
mod lost;
mod watch;
mod year;

use crate::signals::prelude::*;

use crate::route::Screen;

/// Returns the screen at an address.
pub(crate) fn show(screen: Screen) -> AnyView {
    match screen {
        Screen::Watch => view! { <watch::Watch /> }.into_any(),
        Screen::Help => view! { <help::Help /> }.into_any(),
        Screen::Year => view! { <year::Year /> }.into_any(),
        Screen::Lost => view! { <lost::Lost /> }.into_any(),
        _ => ().into_any(),
    }
}
