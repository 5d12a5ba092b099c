//! Starts the app.

#![allow(unreachable_pub, reason = "a binary has no outside: `pub` says what a room offers to the others")]

mod app;
mod browser;
mod farm;
mod route;
mod show;

use yeanling_words as words;

fn main() {
    leptos::mount::mount_to_body(app::start);
}
