//! A file that the phone handed to the app: shared to it, which the worker catches, or opened with it.

use js_sys::{Array, Promise, Uint8Array};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use wasm_bindgen_futures::JsFuture;

use super::files::FileTrouble;
use super::{reach, window};

/// The cache in which the worker leaves a shared file, and the file's place in it; `worker.js` has the same.
const CACHE: &str = "yeanling-shared";
const PLACE: &str = "./shared-book";

/// Returns the file that was shared to the app, and forgets it; nothing if there is none.
///
/// # Errors
/// It is larger than `most` bytes.
pub async fn take(most: usize) -> Result<Option<Vec<u8>>, FileTrouble> {
    let Some(found) = find().await else { return Ok(None) };
    read(&found, "blob", most).await
}

async fn find() -> Option<JsValue> {
    let caches = reach::get(&window(), "caches")?;
    let cache = reach::ask(&caches, "open", &[JsValue::from_str(CACHE)]).await?;
    let place = [JsValue::from_str(PLACE)];
    let found = reach::ask(&cache, "match", &place).await.filter(|found| !found.is_undefined())?;
    reach::ask(&cache, "delete", &place).await;
    Some(found)
}

/// Waits for a file that is opened with the app, where a browser offers that; `Ok(None)` where it does not.
///
/// # Errors
/// It is larger than `most` bytes.
pub async fn opened(most: usize) -> Result<Option<Vec<u8>>, FileTrouble> {
    let Some(queue) = reach::get(&window(), "launchQueue") else { return Ok(None) };
    let mut wait = |resolve: js_sys::Function, _| {
        let taken = Closure::once_into_js(move |launch: JsValue| {
            let files = reach::get(&launch, "files").unwrap_or_default();
            let first = files.dyn_ref::<Array>().map(|files| files.get(0)).unwrap_or_default();
            if !first.is_undefined() {
                let _ = resolve.call1(&JsValue::NULL, &first);
            }
        });
        reach::call(&queue, "setConsumer", &[taken]);
    };
    let handle = JsFuture::from(Promise::new(&mut wait)).await.unwrap_or_default();
    read(&handle, "getFile", most).await
}

/// Reads what a method of `from` gives, a file or a blob.
async fn read(from: &JsValue, method: &str, most: usize) -> Result<Option<Vec<u8>>, FileTrouble> {
    let Some(blob) = reach::ask(from, method, &[]).await else { return Ok(None) };
    let size = reach::get(&blob, "size").and_then(|size| size.as_f64()).unwrap_or_default();
    #[expect(clippy::cast_precision_loss, reason = "the limit is far below 2^53")]
    let too_large = size > most as f64;
    if too_large {
        return Err(FileTrouble::TooLarge(size));
    }
    Ok(reach::ask(&blob, "arrayBuffer", &[]).await.map(|buffer| Uint8Array::new(&buffer).to_vec()))
}
