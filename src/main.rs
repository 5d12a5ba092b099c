//! Starts the app.

mod app;
mod browser;
mod farm;
mod made_up;
mod parts;
mod route;
mod screens;
mod words;

use leptos::prelude::*;

fn main() {
    mount_to_body(app::App);
    if let Some(splash) = document().get_element_by_id("splash") {
        splash.remove();
    }
}
