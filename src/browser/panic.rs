//! If the app itself breaks: say that the book is safe, and offer to open it again.

use wasm_bindgen::{JsCast, closure::Closure};

use super::window;

/// Shows these words and a button that reloads, should the app break; what happened goes to the console.
pub(crate) fn on_panic(words: &'static str, button: &'static str) {
    std::panic::set_hook(Box::new(move |info| {
        web_sys::console::error_1(&info.to_string().into());
        let document = leptos::prelude::document();
        let (Some(body), Ok(note), Ok(reload)) =
            (document.body(), document.create_element("div"), document.create_element("button"))
        else {
            return;
        };
        note.set_class_name("broke");
        let _ = note.set_attribute("role", "alert");
        note.set_text_content(Some(words));
        reload.set_class_name("button");
        reload.set_text_content(Some(button));
        let again = Closure::once_into_js(|| {
            let _ = window().location().reload();
        });
        let _ = reload.add_event_listener_with_callback("click", again.unchecked_ref());
        let _ = note.append_child(&reload);
        let _ = body.prepend_with_node_1(&note);
    }));
}
