//! Lambs with their ewes, to be weaned together; nothing while none is old enough.

use yeanling_core::book::{Event, LambId};
use yeanling_core::seasons::REARED_AT;
use yeanling_words::weighing as words;

use super::in_order;
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Sheet};

/// The living lambs of the latest season that go with a ewe, are six weeks old and not weaned.
fn to_wean(view: &View) -> Vec<LambId> {
    let lambs = in_order(view.flock).into_iter();
    let old = lambs.filter(|lamb| lamb.to_be_weaned_from_ewe() && lamb.age(view.now) >= REARED_AT);
    old.map(|lamb| lamb.id).collect()
}

/// Returns the part of the screen.
pub(super) fn blocks(view: &View) -> Blocks {
    let of = to_wean(view).len();
    if of == 0 {
        return Blocks::new();
    }
    let ask = Button::new("wean", words::wean(of), Action::Ask(Sheet::WeanAll));
    Blocks::new().section("weaning", words::WEANING, Blocks::new().text(words::with_ewes(of)).button(ask))
}

/// Returns the sheet that asks whether all of them are.
pub(crate) fn sheet(view: &View) -> SheetPage {
    let lambs = to_wean(view);
    let of = lambs.len();
    let weaned = lambs.into_iter().map(|lamb| Event::Weaned { lamb }).collect();
    let yes = (of > 0).then(|| Button::new("yes", words::weaned(of), Action::Answer(weaned)).filled());
    SheetPage::new(
        words::WEAN_ASK,
        yes.into_iter().fold(Blocks::new().text(words::with_ewes(of)), Blocks::button),
    )
}
