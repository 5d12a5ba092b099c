//! Every screen by its public face: what it says, what a press does, and the laws over all of them.

mod bottle_round;
#[path = "../core/nights/chance.rs"]
#[allow(dead_code, reason = "nights ask more of it than walks do")]
mod chance;
mod flock;
mod html;
mod laws;
mod night;
mod phone;
mod tree;
mod walk;
mod watch;
