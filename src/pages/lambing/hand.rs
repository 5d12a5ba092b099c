//! The sheet that asks what a clean hand found: the way itself, or a lamb and how it lies.

use yeanling_core::book::{Event, EweId, Found};
use yeanling_core::reckon::labor::needs;
use yeanling_words::{cautions, labor as words};

use super::held;
use crate::Action;
use crate::block::{Buttons, Choice, Choices, DrawnButton, Kind};
use crate::page::{Blocks, SheetPage};

/// Returns the sheet.
pub(crate) fn sheet(ewe: EweId) -> SheetPage {
    let found = |found: Found| Action::Answer(vec![Event::HandChecked { ewe, found }]);
    let ways = [Found::NothingYet, Found::CervixClosed, Found::Empty];
    let ways = ways.map(|way| Choice::new(words::found(way), found(way))).into();
    let lies = words::LIES.into_iter().fold(Blocks::new(), |blocks, lie| {
        let button = DrawnButton {
            drawing: format!("lies.svg#{}", words::drawing(lie)),
            label: words::lie(lie).to_owned(),
            note: words::needs(needs(lie)).to_owned(),
            does: found(Found::Lamb(lie)),
        };
        blocks.add(format!("lie-{}", words::drawing(lie)), Kind::DrawnButton(button))
    });
    let lies = held("lie-buttons", |inside| Kind::Buttons(Buttons { columns: 2, inside }), lies);
    SheetPage::new(
        words::HAND_ASK,
        Blocks::new()
            .caution([cautions::HANDS])
            .choices("ways", Choices::new(words::HAND_ASK, ways, None).stacked())
            .section("lies", words::LIES_TITLE, lies),
    )
}
