//! How the book is kept on this phone, said plainly, with what can be done about it.

use yeanling_words::common::day_and_clock;
use yeanling_words::{frame, share as words};

use crate::block::Row;
use crate::draft::Draft;
use crate::page::Blocks;
use crate::phone::{Offline, Promised, Saving};
use crate::view::View;
use crate::{Action, Button, Request, State};

/// Returns how the book is kept.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let room = view.phone.room.map(|(used, most)| {
        ("room", Row::new(words::ROOM).text(words::room(used, most)).says(State::Done, ""))
    });
    let rows = [
        ("on-phone", on_phone(view)),
        ("offline", offline(view)),
        ("for-good", for_good(view, draft)),
        ("sent", sent(view)),
    ];
    let mut blocks = Blocks::new().rows("kept-rows", rows.into_iter().chain(room));
    let unread = view.own_flock.unread.len();
    if unread > 0 {
        blocks = blocks.text(frame::unread(unread));
    }
    if !view.phone.broken.is_empty() {
        let save = Action::Phone(Request::SaveUnreadLines);
        blocks = blocks.button(Button::new("save-broken", words::SAVE_BROKEN, save));
    }
    Blocks::new().section("kept", words::KEPT, blocks)
}

/// Returns how well the entries are kept.
fn on_phone(view: &View) -> Row {
    let (state, how) = match &view.phone.saving {
        Saving::Opening => (State::Coming, frame::OPENING.to_owned()),
        Saving::Under(_) => (State::Coming, frame::SAVING.to_owned()),
        Saving::Saved(None) => (State::Done, frame::SAVED.to_owned()),
        Saving::Saved(Some(at)) => (State::Done, frame::saved_at(*at)),
        Saving::Poorly { .. } => (State::Late, frame::NOT_SAFE.to_owned()),
    };
    Row::new(words::ON_PHONE).says(state, words::entries_are(view.own_book.len(), &how))
}

fn offline(view: &View) -> Row {
    let (state, says) = match view.phone.offline {
        Offline::Ready => (State::Done, frame::WORKS_OFFLINE),
        Offline::Preparing => (State::Coming, frame::NOT_YET_OFFLINE),
        Offline::Unable => (State::Now, frame::NO_OFFLINE),
    };
    Row::new(words::OFFLINE).says(state, says)
}

/// Returns what the browser promises, with the button that asks it for more.
fn for_good(view: &View, draft: &Draft) -> Row {
    let (state, says) = match view.phone.promised {
        None => (State::Coming, words::ASKING),
        Some(Promised::ForGood) => (State::Done, words::FOR_GOOD),
        Some(Promised::UntilRoomIsShort) => (State::Coming, words::UNTIL_ROOM),
        Some(Promised::Unknown) => (State::Coming, words::NO_PROMISE),
    };
    let said_no = draft.share.said_no;
    let asks = view.phone.promised == Some(Promised::UntilRoomIsShort) && !said_no;
    let ask = Button::new("keep", words::KEEP_FOR_GOOD, Action::Phone(Request::AskForGood)).action("");
    let text = if said_no { words::SAID_NO } else { "" };
    Row::new(words::PROMISE).text(text).says(state, says).action(asks.then_some(ask))
}

fn sent(view: &View) -> Row {
    let (state, says) = match (view.phone.sent, view.phone.saved_here) {
        (Some(at), _) => (State::Done, day_and_clock(at, view.now)),
        (None, Some(_)) => (State::Coming, words::ONLY_HERE.to_owned()),
        (None, None) => (State::Coming, words::NEVER_SENT.to_owned()),
    };
    Row::new(words::SENT).says(state, says)
}
