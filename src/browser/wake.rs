//! Holding the screen awake. The browser lets go whenever the page is out of sight, so it is asked again on return.

pub use yeanling_pages::phone::Awake;

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::Reflect;
use wasm_bindgen::{JsValue, closure::Closure};
use wasm_bindgen_futures::spawn_local;

use super::{reach, window};

thread_local! {
    /// What the browser gave, and whether it is still wanted.
    static HELD: RefCell<(Option<JsValue>, bool)> = const { RefCell::new((None, false)) };
}

/// Holds the screen awake from now on; `told` hears how it stands, now and when the phone lets go.
pub fn hold(told: impl Fn(Awake) + 'static) {
    hold_inner(Rc::new(told));
}

fn hold_inner(told: Rc<dyn Fn(Awake)>) {
    let held = HELD.with_borrow_mut(|(held, wanted)| {
        *wanted = true;
        held.as_ref().and_then(|held| reach::get(held, "released")).and_then(|released| released.as_bool())
    });
    if held == Some(false) {
        return;
    }
    let Some(lock) = reach::get(&window().navigator(), "wakeLock") else {
        told(Awake::Unable);
        return;
    };
    spawn_local(async move {
        let Some(sentinel) = reach::ask(&lock, "request", &[JsValue::from_str("screen")]).await else {
            told(Awake::Refused);
            return;
        };
        let before = HELD.with_borrow_mut(|(held, wanted)| {
            if *wanted { held.replace(sentinel.clone()) } else { Some(sentinel.clone()) }
        });
        // A second answer to two quick returns, or one that came after the screen was left.
        if let Some(before) = before {
            reach::call(&before, "release", &[]);
        }
        let hears = Rc::clone(&told);
        let let_go = Closure::once_into_js(move || {
            // Out of sight it always lets go; in sight the phone has taken it away.
            if HELD.with_borrow(|(_, wanted)| *wanted) && !leptos::prelude::document().hidden() {
                hears(Awake::Refused);
            }
        });
        let _ = Reflect::set(&sentinel, &JsValue::from_str("onrelease"), &let_go);
        told(Awake::Held);
    });
}

/// Lets the screen sleep again.
pub fn release() {
    let held = HELD.with_borrow_mut(|(held, wanted)| {
        *wanted = false;
        held.take()
    });
    if let Some(held) = held {
        reach::call(&held, "release", &[]);
    }
}
