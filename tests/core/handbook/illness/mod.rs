//! Illness: the worked cases, what the tables may never do, and the figures beside them.

mod ewe;
mod lamb;
mod laws;
mod published;
mod season;
