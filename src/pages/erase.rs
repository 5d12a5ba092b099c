//! Erasing this phone's book: the backup is offered first, it is asked twice, and then both copies go.

use yeanling_words::common::day_and_clock;
use yeanling_words::{erase as words, frame, share};

use crate::block::NoticeKind;
use crate::draft::Draft;
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Request, Screen, Text};

/// Whether it was asked for once: the next press does it.
const ASKED: &str = "erase-asked";
/// Under which key it is said that it did not go.
pub(crate) const SAID: &str = "erase-said";

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let page = Page::new(words::TITLE).back(Screen::Farm, frame::FARM);
    if view.own_book.is_empty() {
        let open = Button::new("open-book", share::HAD_A_BOOK, Action::Go(Screen::Share));
        return page.blocks(Blocks::new().empty(words::NOTHING, [open]));
    }
    let ewes = view.own_flock.ewes.len();
    let what = words::what(ewes, view.own_flock.lambs.len(), view.own_book.len());
    let blocks = Blocks::new().lead(what).text(backup(view));
    let blocks = if draft.fields.chosen(ASKED) == Some(1) { sure() } else { ask(blocks) };
    page.blocks(blocks.failed(Text::typed(draft.said(SAID))))
}

/// When the book went elsewhere last.
fn backup(view: &View) -> String {
    match view.phone.sent {
        Some(at) => words::backed_up(&day_and_clock(at, view.now)),
        None => words::NO_BACKUP.to_owned(),
    }
}

/// The first question: the backup stands before it.
fn ask(blocks: Blocks) -> Blocks {
    let back_up = Button::new("back-up", share::GO_SEND, Action::Go(Screen::Share)).filled();
    let erase = Button::new("erase", words::ERASE, Action::Choose(ASKED.into(), 1));
    blocks.button(back_up).button(erase)
}

/// The second question, worded anew: whoever only taps on keeps the book.
fn sure() -> Blocks {
    let keep = Button::new("keep", words::KEEP, Action::Choose(ASKED.into(), 0)).filled();
    let all = Button::new("erase-all", words::ERASE_ALL, Action::Phone(Request::EraseBook));
    Blocks::new().notice("sure", NoticeKind::Bad, words::SURE, []).button(keep).button(all)
}

/// Whoever comes is asked anew.
pub(crate) fn enter(draft: &mut Draft) {
    draft.fields.forget(ASKED);
}
