//! The focus of a keyboard: it stays near what was pressed, also when that goes away with the press.
//!
//! A button that notes something often leaves the page with it, and so does the sheet that it stood on. The browser
//! then lets the focus fall to the page, where the keyboard begins anew and who listens hears nothing.

use std::cell::RefCell;
use std::time::Duration;

use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{Element, HtmlElement, UiEvent};

use super::navigation;

/// What the keyboard can come to by itself.
const REACHED: &str = "a[href], button:enabled, input:enabled, textarea:enabled, select:enabled";

/// Around these there is only the screen as a whole, which begins at its heading.
const SCREEN: &str = "body, .frame, .page, .page-body";

/// Keeps the focus from now on.
pub fn keep() {
    // Where the last press outside a sheet was: who leaves a sheet comes back there.
    let outside: RefCell<Vec<Element>> = RefCell::default();
    let pressed = move |event: UiEvent| {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let Some(target) = target else { return };
        let on_sheet = matches!(target.closest("dialog"), Ok(Some(_)));
        if !on_sheet {
            *outside.borrow_mut() =
                std::iter::successors(Some(target), |inner| inner.parent_element()).collect();
        }
        // Only a press without a finger counts no clicks.
        if event.detail() == 0 {
            let around = outside.borrow().clone();
            leptos::prelude::set_timeout(move || find(&around), Duration::ZERO);
        }
    };
    let listener = Closure::<dyn Fn(UiEvent)>::new(pressed);
    let document = leptos::prelude::document();
    let call = listener.as_ref().unchecked_ref();
    // Before the press does anything: afterwards no one knows what it stood in.
    let _ = document.add_event_listener_with_callback_and_bool("click", call, true);
    listener.forget();
}

/// Gives a lost focus to the nearest thing that is left of `around`, else to the screen's heading.
fn find(around: &[Element]) {
    let lost = leptos::prelude::document().active_element().is_none_or(|active| active.tag_name() == "BODY");
    if !lost {
        return;
    }
    let is = |element: &Element, which| element.matches(which).unwrap_or(false);
    let near =
        around.iter().filter(|element| element.is_connected()).take_while(|element| !is(element, SCREEN));
    let near = near.filter_map(|element| {
        if is(element, REACHED) {
            Some(element.clone())
        } else {
            element.query_selector(REACHED).ok().flatten()
        }
    });
    match near.filter_map(|element| element.dyn_into::<HtmlElement>().ok()).next() {
        Some(element) => {
            let _ = element.focus();
        }
        None => navigation::to_heading(),
    }
}
