//! Starts the app.
#[allow(dead_code, reason = "the screens come next")]
pub mod parts;

fn main() {}
