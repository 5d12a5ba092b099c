//! Day or night on this phone: a choice of the phone, not of the farm, so it stays out of the book.

use gloo_storage::{LocalStorage, Storage};

use super::local;

const LOOK: &str = "yeanling/look";

/// How the screen looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Look {
    /// As the phone has it.
    #[default]
    Phone,
    /// Ink on paper.
    Day,
    /// Dim amber on black.
    Night,
}

/// Returns the look that was chosen on this phone.
#[must_use]
pub fn load() -> Look {
    let chosen = if local::available() {
        LocalStorage::get::<String>(LOOK).unwrap_or_default()
    } else {
        String::new()
    };
    match chosen.as_str() {
        "day" => Look::Day,
        "night" => Look::Night,
        _ => Look::Phone,
    }
}

/// Shows a look and keeps it.
pub fn choose(look: Look) {
    show(look);
    if local::available() {
        // A look that cannot be kept is chosen again next time: nothing is lost.
        let _ = LocalStorage::set(LOOK, name(look));
    }
}

/// Shows a look.
pub fn show(look: Look) {
    if let Some(root) = leptos::prelude::document().document_element() {
        let _ = match look {
            Look::Phone => root.remove_attribute("data-look"),
            Look::Day | Look::Night => root.set_attribute("data-look", name(look)),
        };
    }
}

const fn name(look: Look) -> &'static str {
    match look {
        Look::Phone => "phone",
        Look::Day => "day",
        Look::Night => "night",
    }
}
