//! Every screen by its public face: what it says, what a press does, and the laws over all of them.

#[path = "../core/nights/chance.rs"]
#[allow(dead_code, reason = "nights ask more of it than walks do")]
mod chance;
mod cold_lamb;
mod html;
mod lambing;
mod lambing_weight;
mod laws;
mod phone;
mod tree;
mod walk;
