//! The sheet that asks what shows of the lamb.

use yeanling_core::book::{Event, EweId, Part};
use yeanling_words::labor as words;

use crate::Action;
use crate::block::{Choice, Choices};
use crate::page::{Blocks, SheetPage};

/// Returns the sheet.
pub(crate) fn sheet(ewe: EweId) -> SheetPage {
    let shows = |part: &Part| {
        Choice::new(words::part(*part), Action::Answer(vec![Event::PartShowing { ewe, part: *part }]))
    };
    let parts = words::PARTS.iter().map(shows).collect();
    let parts = Choices::new(words::SHOWS_ASK, parts, None).stacked();
    SheetPage::new(words::SHOWS_ASK, Blocks::new().choices("parts", parts))
}
