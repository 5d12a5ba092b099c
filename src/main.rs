//! Starts the app.

#[allow(
    dead_code,
    unused_imports,
    unreachable_pub,
    reason = "the screens that speak these words are to come"
)]
mod words;

fn main() {}
