//! The sheet that asks whether that was all, when a scan saw more.

use yeanling_core::book::LambId;
use yeanling_words::lambing as words;

use super::{Does, only};
use crate::Button;
use crate::page::{Blocks, SheetPage};
use crate::view::View;

/// Returns the sheet.
pub(crate) fn sheet(view: &View, lamb: LambId) -> SheetPage {
    let litter = view.flock.litter_of(lamb);
    let scanned = litter.and_then(|litter| view.flock.scanned_for(litter.dam?, view.now));
    let saw_more = scanned.zip(litter).map(|(saw, litter)| words::scan_saw_more(saw, litter.lambs.len()));
    let answers = [
        Button::new("one-more", words::ALL_NO, only(Does::OneMore)).filled(),
        Button::new("all", words::ALL_YES, only(Does::End)),
    ];
    SheetPage::new(words::ALL_ASK, Blocks::new().text(saw_more.unwrap_or_default()).buttons(2, answers))
}
