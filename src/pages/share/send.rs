//! The way out: the file is ready before the tap, since a share sheet opens only straight from one.
//!
//! What is saved on this phone is lost with it: only what was shared, or what someone says is safe, lies elsewhere.

use yeanling_core::book::SPEAK_FROM;
use yeanling_core::units::Moment;
use yeanling_words::common::day_and_clock;
use yeanling_words::share as words;

use crate::block::NoticeKind;
use crate::draft::Draft;
use crate::page::Blocks;
use crate::phone::{FileTrouble, Outgoing};
use crate::view::View;
use crate::{Action, Button, Effect, Request, Text};

/// How the book went out.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Sent {
    /// What became of the last press.
    last: Last,
    /// Which of its files were saved, of the book that goes out with what was noted until then.
    saved: Option<(Moment, Vec<usize>)>,
}

/// What became of the last press.
#[derive(Clone, Debug, Default, PartialEq)]
enum Last {
    /// Nothing that has to be said.
    #[default]
    Nothing,
    /// It was shared.
    Shared,
    /// All of it was saved.
    Saved,
    /// One file of several was.
    SavedPart,
    /// Several files cannot be shared at once.
    SaveEach,
    /// It could not be saved; what the browser said.
    NotSaved(String),
    /// It could not be shared; what the browser said.
    NotSent(String),
}

/// Returns the part that sends the book.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let (said, wrong) = match &draft.share.sent.last {
        Last::Nothing => ("", String::new()),
        Last::Shared => (words::SHARED, String::new()),
        Last::Saved => (words::SAVED_FILE, String::new()),
        Last::SavedPart => (words::SAVED_PART, String::new()),
        Last::SaveEach => (words::SAVE_EACH, String::new()),
        Last::NotSaved(browser) => ("", words::not_saved(browser)),
        Last::NotSent(browser) => ("", words::not_sent(browser)),
    };
    let book = if view.sample {
        Blocks::new().text(words::MADE_UP)
    } else {
        match &*view.outgoing {
            Some(book) => own(view, book),
            None => Blocks::new().text(words::NOTHING_TO_SEND),
        }
    };
    Blocks::new().section("send", words::SEND, book.status(said).failed(Text::typed(&wrong)))
}

/// Returns the ways out of this phone's own book.
fn own(view: &View, book: &Outgoing) -> Blocks {
    let (count, bytes) = (book.files.len(), book.bytes());
    let mut blocks = Blocks::new().text(words::SEND_SUB);
    if bytes >= SPEAK_FROM {
        blocks = blocks.text(words::large(bytes, count));
    }
    if view.phone.can_share {
        let share = Action::Phone(Request::ShareBook);
        blocks = blocks.button(Button::new("share", words::SHARE, share).filled());
    }
    for place in 0..count {
        let label = if count == 1 { words::SAVE.to_owned() } else { words::save_part(place + 1, count) };
        let save = Action::Phone(Request::SaveBook(Some(place)));
        let save = Button::new(format!("save-{place}"), label, save).filled_if(!view.phone.can_share);
        blocks = blocks.button(save);
    }
    for (name, text) in &book.files {
        blocks = blocks.small(Text::typed(&words::file_is(name, text.len())));
    }
    // Whether the file that was saved on this phone has left it.
    if let Some(saved) = view.phone.saved_here {
        let safe = Action::Phone(Request::SafeElsewhere(saved));
        let safe = Button::new("safe-elsewhere", words::SAFE_ELSEWHERE, safe);
        let still = words::still_here(&day_and_clock(saved, view.now));
        blocks = blocks.notice("still-here", NoticeKind::Warn, still, [safe]);
    }
    blocks
}

/// Files of the book were saved, or not.
pub(super) fn saved(
    places: &[usize],
    trouble: Option<&FileTrouble>,
    view: &View,
    draft: &mut Draft,
) -> Vec<Effect> {
    let Some(book) = &*view.outgoing else { return Vec::new() };
    let sent = &mut draft.share.sent;
    let mut all = match sent.saved.take() {
        Some((up_to, saved)) if up_to == book.up_to => saved,
        Some(_) | None => Vec::new(),
    };
    all.extend(places);
    let whole = (0..book.files.len()).all(|place| all.contains(&place));
    sent.saved = Some((book.up_to, all));
    sent.last = match trouble {
        None if whole => Last::Saved,
        None => Last::SavedPart,
        Some(FileTrouble::Failed(browser)) => Last::NotSaved(browser.clone()),
        Some(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => Last::Nothing,
    };
    if whole { vec![Effect::Phone(Request::SavedHere(book.up_to))] } else { Vec::new() }
}

/// The book was shared, or not: what cannot be shared is saved, if it is one file.
pub(super) fn shared(trouble: Option<&FileTrouble>, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let one_file = view.outgoing.as_ref().is_some_and(|book| book.files.len() == 1);
    let last = &mut draft.share.sent.last;
    *last = match trouble {
        None => Last::Shared,
        Some(FileTrouble::CannotShare) if one_file => {
            return vec![Effect::Phone(Request::SaveBook(Some(0)))];
        }
        Some(FileTrouble::CannotShare) => Last::SaveEach,
        Some(FileTrouble::Failed(browser)) => Last::NotSent(browser.clone()),
        Some(FileTrouble::Closed | FileTrouble::TooLarge(_)) => Last::Nothing,
    };
    Vec::new()
}
