//! If the app itself breaks: say how safe what was noted is, and offer to open it again.

use wasm_bindgen::{JsCast, closure::Closure};

use super::safety::{Safety, safety};
use super::window;

/// Shows what `words` says and a button that reloads, should the app break; what happened goes to the console.
pub(crate) fn on_panic(words: fn(Safety) -> &'static str, button: &'static str) {
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
        note.set_text_content(Some(words(safety())));
        reload.set_class_name("button");
        reload.set_text_content(Some(button));
        let again = Closure::once_into_js(|| {
            let _ = window().location().reload();
        });
        let _ = reload.add_event_listener_with_callback("click", again.unchecked_ref());
        let _ = note.append_child(&reload);
        // What breaks once may break again on the way: one notice, with what is true by now.
        if let Ok(Some(before)) = document.query_selector(".broke") {
            before.remove();
        }
        let _ = body.prepend_with_node_1(&note);
    }));
}
