//! The way in: a file is read whole and shown before anything changes, then added or left.

use std::sync::Arc;

use yeanling_words::common::day_and_clock;
use yeanling_words::{frame, share as words};

use super::{BOOK, Does as Only, Incoming, Read, Reading, aloud, pick};
use crate::block::{LineLook, NoticeKind};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Request, Text};

/// Returns the part that takes a book in, and what a file would add.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let ask = Blocks::new().text(words::TAKE_SUB).add(BOOK, pick(BOOK, words::OPEN));
    let blocks = Blocks::new().section("take", words::TAKE, ask);
    match &draft.share.book {
        Reading::Nothing => blocks,
        Reading::Going => blocks.add("", aloud(LineLook::Plain, words::READING)),
        Reading::Read(read) => blocks.section("would-add", words::PREVIEW, would_add(view, &read.0)),
        Reading::Wrong(wrong) => blocks.notice("book-wrong", NoticeKind::Bad, Text::typed(wrong), []),
        Reading::Done(entries) => blocks.add("", aloud(LineLook::Plain, words::taken_in(*entries))),
    }
}

/// Reads a book beside this phone's own, or says in words what is wrong with it.
pub(super) fn read(bytes: &[u8], view: &View) -> Result<Read, String> {
    match Incoming::read(bytes, view.own_book, view.own_flock, view.now) {
        Ok(incoming) => Ok(Read(Arc::new(incoming))),
        Err(error) => Err(words::file_error(&error)),
    }
}

/// Takes in what was read.
pub(super) fn take_in(draft: &mut Draft) -> Vec<Effect> {
    let Reading::Read(Read(incoming)) = &draft.share.book else { return Vec::new() };
    let incoming = Arc::clone(incoming);
    draft.share.book = Reading::Done(incoming.entries);
    vec![Effect::Phone(Request::TakeIn(incoming))]
}

/// Returns what a file would add, with both answers.
fn would_add(view: &View, incoming: &Incoming) -> Blocks {
    let when = |moment| day_and_clock(moment, view.now);
    let file = &incoming.file;
    let from = words::from(file.device == view.device, &file.device.to_string(), &when(file.made));
    let text = if incoming.entries > 0 {
        words::would_add(incoming.ewes, incoming.lambs, incoming.entries)
    } else {
        words::NOTHING_NEW.to_owned()
    };
    let mut blocks = Blocks::new().add("", aloud(LineLook::Lead, text)).small(from);
    if view.sample {
        blocks = blocks.text(words::INTO_YOUR_OWN);
    }
    if let Some(ahead) = incoming.ahead {
        let told =
            words::dated_ahead(ahead.entries, &when(ahead.latest), &day_and_clock(view.now, ahead.latest));
        blocks = blocks.notice("ahead", NoticeKind::Bad, told, []);
    }
    if !incoming.twice.is_empty() {
        blocks = blocks.text(Text::typed(&words::would_ask(&incoming.twice)));
    }
    if incoming.unread > 0 {
        blocks = blocks.text(frame::unread(incoming.unread));
    }
    if incoming.clashes > 0 {
        blocks = blocks.notice("clashes", NoticeKind::Warn, words::clashes(incoming.clashes), []);
    }
    let merge = if incoming.ahead.is_some() { words::MERGE_ALL_THE_SAME } else { words::MERGE };
    let does = |does| Action::Does(Does::Share(does));
    let add = Button::new("add", merge, does(Only::TakeIn)).filled();
    let leave = Button::new("leave", words::LEAVE, does(Only::LeaveBook));
    blocks.buttons(2, (incoming.entries > 0).then_some(add).into_iter().chain([leave]))
}
