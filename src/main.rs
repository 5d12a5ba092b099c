//! Starts the app.
fn main() {}
