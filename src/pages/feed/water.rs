//! Water.

use yeanling_core::reckon::season::water;
use yeanling_words::feed as words;

use super::ewes;
use crate::Reason;
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let (ewes, system) = (ewes(view, fields), view.system());
    let blocks = ewes.field(Blocks::new(), words::EWES, "", "");
    match ewes.whole().map(water::wanted) {
        None => blocks,
        Some(Ok(wanted)) => blocks.remark(words::water(&wanted, system), [why(words::WATER, Reason::Water)]),
        Some(Err(error)) => blocks.failed(words::refused(&error, system)),
    }
}
