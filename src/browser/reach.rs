//! What a browser may lack, or `web_sys` not have yet: reached for by its name, with "not there" as an answer.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// Returns what lies under a name; nothing where the browser has none.
pub(super) fn get(target: &JsValue, name: &str) -> Option<JsValue> {
    let found = Reflect::get(target, &JsValue::from_str(name)).ok()?;
    (!found.is_undefined() && !found.is_null()).then_some(found)
}

/// Calls a method; nothing where there is none, or where it throws.
pub(super) fn call(target: &JsValue, name: &str, given: &[JsValue]) -> Option<JsValue> {
    let method: Function = get(target, name)?.dyn_into().ok()?;
    method.apply(target, &given.iter().collect::<Array>()).ok()
}

/// Calls a method that answers later; nothing where there is none, or where it refuses.
pub(super) async fn ask(target: &JsValue, name: &str, given: &[JsValue]) -> Option<JsValue> {
    JsFuture::from(Promise::resolve(&call(target, name, given)?)).await.ok()
}
