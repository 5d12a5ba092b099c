//! The flock by its public face: what the book makes.

mod facts;
mod litters;
mod means;
mod same;
mod timeline;
