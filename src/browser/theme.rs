//! Day or night on this phone: a choice of the phone, not of the farm, so it stays out of the book.

pub use yeanling_pages::phone::Look;

use gloo_storage::{LocalStorage, Storage};

use super::local_storage;

const LOOK: &str = "yeanling/look";
const BARS: &str = "black-bars";

/// Returns the look that was chosen on this phone.
#[must_use]
pub fn load() -> Look {
    let chosen = if local_storage::available() {
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
    if local_storage::available() {
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

/// Makes the bars that the phone draws around the app black, or gives them back to the look.
pub fn black_bars(black: bool) {
    let document = leptos::prelude::document();
    if let Some(bars) = document.get_element_by_id(BARS) {
        bars.remove();
    }
    // Of several, the first that holds counts.
    if let (true, Some(head), Ok(bars)) = (black, document.head(), document.create_element("meta")) {
        bars.set_id(BARS);
        let _ = bars.set_attribute("name", "theme-color");
        let _ = bars.set_attribute("content", "#000000");
        let _ = head.prepend_with_node_1(&bars);
    }
}

const fn name(look: Look) -> &'static str {
    match look {
        Look::Phone => "phone",
        Look::Day => "day",
        Look::Night => "night",
    }
}
