//! The worker that makes the app work with no signal: registered, asked whether all is kept, updated when told to.

pub use yeanling_pages::phone::Offline;

use std::rc::Rc;

use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    MessageChannel, MessageEvent, RegistrationOptions, ServiceWorker, ServiceWorkerContainer,
    ServiceWorkerRegistration, ServiceWorkerState, ServiceWorkerUpdateViaCache,
};

use super::window;

/// Registers the worker; `offline` hears how far it is, `update` that another version waits.
pub fn register(offline: impl Fn(Offline) + 'static, update: impl Fn() + 'static) {
    let Some(container) = container() else {
        offline(Offline::Unable);
        return;
    };
    let offline = Rc::new(offline);
    let update = Rc::new(update);
    spawn_local(async move {
        let options = RegistrationOptions::new();
        options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
        let registered = JsFuture::from(container.register_with_options("./worker.js", &options)).await;
        let Ok(registration) = registered.map(JsCast::unchecked_into::<ServiceWorkerRegistration>) else {
            // With no signal the register call fails although a worker is at work: that one is asked below.
            ask_when_ready(&container, offline).await;
            return;
        };
        watch_for_updates(&registration, update);
        ask_when_ready(&container, offline).await;
    });
}

/// Lets the waiting version take over, and loads it once it has. Only ever on a tap.
pub fn take_update() {
    let Some(container) = container() else { return };
    let reload = Closure::once_into_js(|| {
        let _ = window().location().reload();
    });
    let _ = container.add_event_listener_with_callback("controllerchange", reload.unchecked_ref());
    spawn_local(async move {
        let Ok(registration) = JsFuture::from(container.get_registration()).await else { return };
        let Ok(registration) = registration.dyn_into::<ServiceWorkerRegistration>() else { return };
        if let Some(waiting) = registration.waiting() {
            let _ = waiting.post_message(&message("skip-waiting"));
        }
    });
}

fn container() -> Option<ServiceWorkerContainer> {
    let navigator = window().navigator();
    let there = Reflect::get(&navigator, &JsValue::from_str("serviceWorker")).ok()?;
    (!there.is_undefined()).then(|| navigator.service_worker())
}

async fn ask_when_ready(container: &ServiceWorkerContainer, offline: Rc<impl Fn(Offline) + 'static>) {
    let Ok(ready) = container.ready() else { return };
    let Ok(registration) = JsFuture::from(ready).await else { return };
    let Some(active) = registration.unchecked_into::<ServiceWorkerRegistration>().active() else { return };
    let Ok(channel) = MessageChannel::new() else { return };
    let heard = Closure::once_into_js(move |event: MessageEvent| {
        let ready =
            Reflect::get(&event.data(), &JsValue::from_str("ready")).is_ok_and(|ready| ready.is_truthy());
        offline(if ready { Offline::Ready } else { Offline::Preparing });
    });
    channel.port1().set_onmessage(Some(heard.unchecked_ref()));
    let _ = active.post_message_with_transferable(&message("ready?"), &js_sys::Array::of1(&channel.port2()));
}

fn watch_for_updates(registration: &ServiceWorkerRegistration, update: Rc<impl Fn() + 'static>) {
    if registration.waiting().is_some() && registration.active().is_some() {
        update();
    }
    let found = registration.clone();
    let listener = Closure::<dyn Fn()>::new(move || {
        let Some(installing) = found.installing() else { return };
        let (found, update, worker) = (found.clone(), Rc::clone(&update), installing.clone());
        let changed = Closure::<dyn Fn()>::new(move || {
            if waits(&worker) && found.active().is_some() {
                update();
            }
        });
        let _ = installing.add_event_listener_with_callback("statechange", changed.as_ref().unchecked_ref());
        changed.forget();
    });
    let _ = registration.add_event_listener_with_callback("updatefound", listener.as_ref().unchecked_ref());
    listener.forget();
}

fn waits(worker: &ServiceWorker) -> bool {
    worker.state() == ServiceWorkerState::Installed
}

fn message(kind: &str) -> JsValue {
    let message = js_sys::Object::new();
    let _ = Reflect::set(&message, &JsValue::from_str("type"), &JsValue::from_str(kind));
    message.into()
}
