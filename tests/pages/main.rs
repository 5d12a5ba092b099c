//! Every screen by its public face: what it says, what a press does, and the laws over all of them.

mod after_lambing;
mod asked;
mod both_units;
mod bottle_round;
mod busy;
mod calculators;
#[path = "../core/nights/chance.rs"]
#[allow(dead_code, reason = "nights ask more of it than walks do")]
mod chance;
mod charts;
mod cold_lamb;
mod erase;
#[path = "../core/nights/event.rs"]
mod event;
mod ewe;
mod feed;
mod first_night;
mod first_screen;
mod fits;
mod flock;
mod glance;
mod help;
mod help_illness;
mod html;
mod illness;
mod in_a_row;
mod keep;
mod lamb;
mod lambing;
mod lambing_weight;
mod laws;
mod length;
mod limits;
mod meaning;
mod medicines;
mod milk;
mod night;
mod nights;
mod one_place;
mod one_rounding;
mod pens;
mod phone;
mod plan;
mod rams;
mod reach;
mod score_ewes;
mod screens;
mod season;
mod settings;
mod setup;
mod share;
mod sheets;
mod speech;
mod spread;
mod stands;
#[path = "../core/nights/step.rs"]
#[allow(dead_code, reason = "nights on two phones ask more of it")]
mod step;
mod stores;
mod stories;
mod timeline;
mod times;
mod tree;
mod two_rams;
mod unusual;
mod vet;
mod walk;
mod watch;
mod weighing;
mod what_if;
mod year;
