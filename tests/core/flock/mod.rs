//! The flock by its public face: what the book makes.

mod applied;
mod facts;
pub(crate) mod groups;
mod life;
mod litters;
mod means;
mod past;
mod right_dam;
mod same;
mod stores;
mod timeline;
