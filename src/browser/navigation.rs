//! The address: the part behind the `#`, read, set and followed.
//!
//! The screen's heading has no `tabindex` of its own: whoever moves the focus to it sets it. Taken off the focused
//! heading with each change of screen, it cost a layout of the screen that goes.

use std::rc::Rc;

use wasm_bindgen::{JsCast, closure::Closure};

use super::window;

/// Returns what stands behind the `#`, with the `#`.
#[must_use]
pub fn hash() -> String {
    window().location().hash().unwrap_or_default()
}

/// Goes to another screen, so that the phone's back button returns from it.
pub fn go(hash: &str) {
    let _ = window().location().set_hash(hash);
}

/// Goes to another screen in place of this one.
pub fn replace(hash: &str) {
    let _ = window().location().replace(hash);
}

/// Loads the page anew at its first screen, with nothing kept in memory.
pub fn start_anew() {
    let location = window().location();
    let _ = location.set_hash("");
    let _ = location.reload();
}

/// Calls `moved` whenever the address changes.
pub fn on_move(moved: impl Fn() + 'static) {
    listen("hashchange", moved);
}

/// Returns the whole address of a screen, for those who open it from outside.
#[must_use]
pub fn whole(hash: &str) -> String {
    let address = window().location().href().unwrap_or_default();
    format!("{}{hash}", address.split('#').next().unwrap_or_default())
}

/// Calls `seen` with `true` whenever the page comes back before someone's eyes, with `false` when it leaves them.
pub fn on_return(seen: impl Fn(bool) + 'static) {
    let seen = Rc::new(move || seen(!leptos::prelude::document().hidden()));
    for event in ["focus", "pageshow"] {
        let seen = Rc::clone(&seen);
        listen(event, move || seen());
    }
    let listener = Closure::<dyn Fn()>::new(move || seen());
    let document = leptos::prelude::document();
    let _ = document.add_event_listener_with_callback("visibilitychange", listener.as_ref().unchecked_ref());
    listener.forget();
}

/// Scrolls to the top, as a new screen should begin.
pub fn to_top() {
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Moves the focus to the screen's heading once the screen stands, so that it is read out and the keyboard starts there.
pub fn to_heading() {
    let go = || {
        let heading = leptos::prelude::document().get_element_by_id("title");
        if let Some(heading) = heading.and_then(|heading| heading.dyn_into::<web_sys::HtmlElement>().ok()) {
            heading.set_tab_index(-1);
            // It may be the one of the screen before, and must be announced anew.
            let _ = heading.blur();
            let _ = heading.focus();
            to_top();
        }
    };
    leptos::prelude::set_timeout(go, std::time::Duration::ZERO);
}

/// Brings the link that leads to `hash` back before the eyes, and the focus with it: it is where one came from. A list
/// may draw it only in the next frames.
pub fn to_link(hash: &str) {
    let which = format!("main a[href=\"{hash}\"]:not(.top-bar a)");
    leptos::prelude::set_timeout(move || look_for_link(&which, LINK_FRAMES), std::time::Duration::ZERO);
}

/// Within so many frames a list has drawn all of its rows.
const LINK_FRAMES: u8 = 12;

fn look_for_link(which: &str, frames: u8) {
    let link = leptos::prelude::document().query_selector(which).ok().flatten();
    match link.and_then(|link| link.dyn_into::<web_sys::HtmlElement>().ok()) {
        Some(link) => {
            let options = web_sys::ScrollIntoViewOptions::new();
            options.set_block(web_sys::ScrollLogicalPosition::Center);
            link.scroll_into_view_with_scroll_into_view_options(&options);
            let options = web_sys::FocusOptions::new();
            options.set_prevent_scroll(true);
            let _ = link.focus_with_options(&options);
        }
        None if frames > 0 => {
            let which = which.to_owned();
            leptos::prelude::request_animation_frame(move || look_for_link(&which, frames - 1));
        }
        None => {}
    }
}

fn listen(event: &str, call: impl Fn() + 'static) {
    let listener = Closure::<dyn Fn()>::new(call);
    let _ = window().add_event_listener_with_callback(event, listener.as_ref().unchecked_ref());
    listener.forget();
}
