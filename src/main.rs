//! Starts the app.

#![allow(unreachable_pub, reason = "a binary has no outside: `pub` says what a room offers to the others")]

mod app;
mod browser;
mod farm;
mod parts;
mod pieces;
mod route;
mod screens;
mod show;
mod signals;

use yeanling_words as words;

use crate::signals::prelude::*;

fn main() {
    mount_to_body(app::App);
    if let Some(splash) = document().get_element_by_id("splash") {
        splash.remove();
    }
}
