//! Files in and out: what was picked is read, what was made is shared or saved.

pub use yeanling_pages::phone::FileTrouble;

use js_sys::{Array, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, File, FilePropertyBag, HtmlAnchorElement, HtmlInputElement, ShareData, Url,
};

use super::{said, window};

/// Reads the file picked in the field of this id, and clears the field so that the same file can be picked again.
///
/// # Errors
/// It is larger than `most` bytes, or cannot be read. Nothing picked is `Ok(None)`.
pub async fn read_picked(id: &str, most: usize) -> Result<Option<Vec<u8>>, FileTrouble> {
    let field = leptos::prelude::document().get_element_by_id(id);
    let Some(field) = field.and_then(|field| field.dyn_into::<HtmlInputElement>().ok()) else {
        return Ok(None);
    };
    let Some(file) = field.files().and_then(|files| files.get(0)) else { return Ok(None) };
    #[expect(clippy::cast_precision_loss, reason = "the limit is far below 2^53")]
    let too_large = file.size() > most as f64;
    if too_large {
        field.set_value("");
        return Err(FileTrouble::TooLarge(file.size()));
    }
    let buffer =
        JsFuture::from(file.array_buffer()).await.map_err(|error| FileTrouble::Failed(said(&error)))?;
    field.set_value("");
    Ok(Some(Uint8Array::new(&buffer).to_vec()))
}

/// Says whether this browser may share files at all; it can still refuse one.
#[must_use]
pub fn can_share() -> bool {
    let navigator = window().navigator();
    ["share", "canShare"].iter().all(|name| {
        js_sys::Reflect::get(&navigator, &JsValue::from_str(name)).is_ok_and(|value| value.is_function())
    })
}

/// Offers texts, each with its name, as files of this media type in the phone's share sheet.
///
/// # Errors
/// The sheet was closed, or the browser cannot share this.
pub async fn share(all: &[(String, String)], media: &str) -> Result<(), FileTrouble> {
    if !can_share() {
        return Err(FileTrouble::CannotShare);
    }
    let kind = FilePropertyBag::new();
    kind.set_type(media);
    let files = Array::new();
    for (name, text) in all {
        let parts = Array::of1(&JsValue::from_str(text));
        let file = File::new_with_str_sequence_and_options(&parts, name, &kind)
            .map_err(|error| FileTrouble::Failed(said(&error)))?;
        files.push(&file);
    }
    let data = ShareData::new();
    data.set_files(&files);
    if let Some((name, _)) = all.first() {
        data.set_title(name);
    }
    let navigator = window().navigator();
    if !navigator.can_share_with_data(&data) {
        return Err(FileTrouble::CannotShare);
    }
    match JsFuture::from(navigator.share_with_data(&data)).await {
        Ok(_) => Ok(()),
        Err(error) => {
            let name = error.dyn_ref::<js_sys::Error>().map(|error| String::from(error.name()));
            match name.as_deref() {
                Some("AbortError") => Err(FileTrouble::Closed),
                Some("NotAllowedError" | "TypeError") => Err(FileTrouble::CannotShare),
                Some(_) | None => Err(FileTrouble::Failed(said(&error))),
            }
        }
    }
}

/// Saves a text as a file of this media type among the phone's downloads.
///
/// # Errors
/// The browser failed.
pub fn save(name: &str, text: &str, media: &str) -> Result<(), FileTrouble> {
    save_inner(name, text, media).map_err(|error| FileTrouble::Failed(said(&error)))
}

fn save_inner(name: &str, text: &str, media: &str) -> Result<(), JsValue> {
    let kind = BlobPropertyBag::new();
    kind.set_type(&format!("{media};charset=utf-8"));
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&JsValue::from_str(text)), &kind)?;
    let address = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = leptos::prelude::document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // The browser reads the address after the click: it is given up a minute later.
    leptos::prelude::set_timeout(
        move || {
            let _ = Url::revoke_object_url(&address);
        },
        std::time::Duration::from_secs(60),
    );
    Ok(())
}
