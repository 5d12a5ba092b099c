//! Every screen by its public face: what it says, what a press does, and the laws over all of them.

mod both_units;
#[path = "../core/nights/chance.rs"]
#[allow(dead_code, reason = "nights ask more of it than walks do")]
mod chance;
#[path = "../core/nights/event.rs"]
mod event;
mod figures;
mod hand_over;
mod html;
mod laws;
mod limits;
mod medicines;
mod nights;
mod phone;
mod practice;
mod screens;
#[path = "../core/nights/step.rs"]
#[allow(dead_code, reason = "nights on two phones ask more of it")]
mod step;
mod tree;
mod walk;
