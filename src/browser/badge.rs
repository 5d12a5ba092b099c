//! How much is due, told from outside the page: before its title, and on the app's icon where there is one.

use leptos::prelude::document;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;

use super::{reach, window};

/// Shows a count before the title and on the icon; none at all for 0.
pub fn show(title: &str, count: u16) {
    let title = if count > 0 { format!("({count}) {title}") } else { title.to_owned() };
    document().set_title(&title);
    spawn_local(async move {
        let given = [JsValue::from(count)];
        // A browser without icons to mark has nothing to say, and the title says it too.
        let _ = match count {
            0 => reach::ask(&window().navigator(), "clearAppBadge", &[]).await,
            _ => reach::ask(&window().navigator(), "setAppBadge", &given).await,
        };
    });
}
