//! Starts the app.

mod browser;
mod farm;
mod made_up;
mod route;

fn main() {}
