//! The sheet that gives a litter its dam.

use yeanling_core::book::LambId;
use yeanling_words::lambing as words;

use crate::draft::Fields;
use crate::page::SheetPage;
use crate::sheets::ewe_picker::{self, Picker, Then};
use crate::view::View;

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let lambs = view.flock.litter_of(lamb).map(|litter| litter.lambs.clone()).unwrap_or_default();
    let then = Then::IsDamOf(lambs);
    let born = view.flock.lamb(lamb).map(|lamb| lamb.born);
    let picker = Picker { lambed_first: true, born, ..Picker::default() };
    let picker = ewe_picker::blocks(view, fields, picker, |picked| then.picked(picked));
    SheetPage::new(words::WHICH_DAM, picker)
}
