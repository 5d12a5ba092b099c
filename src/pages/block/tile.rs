//! An animal at its place in a grid of numbers.

use super::State;
use crate::Action;

/// An animal at its place in a grid: its number, and in a word or two how it is. It keeps its place whatever happens to it.
#[derive(Clone, Debug, PartialEq)]
pub struct Tile {
    /// Whose it is, as it is read out: "Ewe 14"; it ends with the number.
    pub name: String,
    /// Its number or name, as it is seen: "14".
    pub number: String,
    /// How it is, in a word or two; empty where nothing is known.
    pub says: String,
    /// How that stands, as a shape beside the words; none where there is nothing to mark.
    pub state: Option<State>,
    /// Whether it is past: it has lambed, or is here no more.
    pub past: bool,
    /// Whether it is the one whose screen stands beside the grid.
    pub here: bool,
    /// Where it leads.
    pub does: Action,
}
