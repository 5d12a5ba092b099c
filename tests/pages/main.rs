//! Every screen by its public face: what it says, what a press does, and the laws over all of them.

#[path = "../core/nights/chance.rs"]
#[allow(dead_code, reason = "nights ask more of it than walks do")]
mod chance;
mod feed;
mod html;
mod laws;
mod pens;
mod phone;
mod race;
mod season;
mod tree;
mod walk;
mod weighing;
