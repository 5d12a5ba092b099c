//! Illness: the worked cases, what the tables may never do, and the figures beside them.

mod ewe;
mod figures;
mod lamb;
mod laws;
