//! Starts the app.
use leptos::prelude::*;
use web_sys::{RegistrationOptions, ServiceWorkerUpdateViaCache};

fn main() {
    if let Some(splash) = document().get_element_by_id("splash") {
        splash.remove();
    }
    mount_to_body(|| view! { <main><h1>"Yeanling"</h1></main> });
    let options = RegistrationOptions::new();
    options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
    // The promise is the browser's to keep: without the worker the app still works with a network.
    let _registration = window().navigator().service_worker().register_with_options("./worker.js", &options);
}
