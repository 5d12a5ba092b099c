//! A family on one card: whose it is, and a line for each animal.

use std::sync::Arc;

use super::{Block, State};
use crate::Screen;
use crate::button::Button;
use crate::text::Text;

/// The animals of one family, a line each.
#[derive(Clone, Debug, PartialEq)]
pub struct Family {
    /// Whose it is and where.
    pub title: String,
    /// A few soft words at the far end of the head.
    pub aside: Text,
    /// Where the head leads.
    pub to: Option<Screen>,
    /// How loudly its ground speaks: that of what a life hangs on, else no louder than what is due now.
    pub state: State,
    /// What can be done for all of it with one press.
    pub action: Option<Button>,
    /// Its rows; at least one.
    pub lines: Vec<Arc<Block>>,
}
