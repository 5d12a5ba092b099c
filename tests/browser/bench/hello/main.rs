//! A page that only says hello, of the same Leptos and the same profile as the app; the app's start is measured against it.

use leptos::prelude::*;

fn main() {
    mount_to_body(|| view! { <main><h1>"Hello"</h1></main> });
}
