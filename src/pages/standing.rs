//! What stands above every screen: the line with the way back and whether everything is saved; and, while it is so, a
//! sample flock, an update, a book that is not safe, a clock that is wrong, what was missed.

use std::sync::Arc;

use yeanling_core::watch::Duty;
use yeanling_words::{animals, frame, night, share, watch};

use crate::block::{Aloud, Block, Kind, Line, LineLook, NoticeKind};
use crate::page::Blocks;
use crate::phone::{Phone, Saving, Unsent, Way};
use crate::view::View;
use crate::{Action, Button, Request, Screen, Text};

/// The line above a screen's name.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Top {
    /// The farm's name, where there is no way back.
    pub place: String,
    /// Whether everything is saved.
    pub save: SaveState,
    /// The same in words.
    pub said: String,
}

/// Whether everything is saved.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SaveState {
    /// It is being saved.
    #[default]
    Saving,
    /// It is.
    Saved,
    /// It is not, or not well.
    NotSaved,
}

/// Returns the line above a screen's name.
#[must_use]
pub fn top(farm_name: &str, saving: &Saving, way: Way) -> Top {
    let (save, said) = match saving {
        Saving::Opening => (SaveState::Saving, frame::OPENING.to_owned()),
        Saving::Under(_) => (SaveState::Saving, frame::SAVING.to_owned()),
        Saving::Saved(None) => (SaveState::Saved, frame::SAVED.to_owned()),
        Saving::Saved(Some(at)) => (SaveState::Saved, crate::in_way(way, || frame::saved_at(*at))),
        Saving::Poorly { .. } => (SaveState::NotSaved, frame::NOT_SAFE.to_owned()),
    };
    Top { place: farm_name.to_owned(), save, said }
}

/// Returns what stands above every screen while it is so.
#[must_use]
pub fn standing(view: &View, screen: Screen) -> Vec<Arc<Block>> {
    crate::in_way(view.way(), || stands(view, screen))
}

fn stands(view: &View, screen: Screen) -> Vec<Arc<Block>> {
    let phone: &Phone = &view.phone;
    let mut blocks = Blocks::new();
    if view.sample {
        let leave =
            Button::new("leave", frame::LEAVE_MADE_UP, Action::Phone(Request::StopLookingRound)).small();
        let text = Text::from(frame::MADE_UP);
        let line = Line { look: LineLook::Remark, text, aloud: Aloud::Not, buttons: vec![leave] };
        let inside = vec![Block::new("", Kind::Line(line))];
        let notice = crate::block::Notice { kind: NoticeKind::Calm, inside, buttons: Vec::new() };
        blocks = blocks.add("made-up", Kind::Notice(notice));
    }
    if phone.update {
        let take = Button::new("take", frame::TAKE_UPDATE, Action::Phone(Request::TakeUpdate));
        blocks = blocks.notice("update", NoticeKind::Calm, frame::UPDATE, [take]);
    }
    if let Saving::Poorly { memory_only, said } = &phone.saving {
        let save = Button::new("save", share::SAVE, Action::Phone(Request::SaveBook(None)));
        let text = frame::poorly(*memory_only, said.as_deref());
        blocks = blocks.notice("poorly", NoticeKind::Bad, text, phone.own_book.then_some(save));
    }
    if phone.lost_lines > 0 {
        blocks = blocks.notice("broken", NoticeKind::Warn, frame::broken(phone.lost_lines), []);
    }
    if let Some(Unsent { births, days }) = phone.unsent.filter(|_| !screen.is_at_work()) {
        let send = Button::new("send", share::GO_SEND, Action::Go(Screen::Share)).small();
        let text = Text::from(share::unsent(births, days));
        let line = Line { look: LineLook::Remark, text, aloud: Aloud::Not, buttons: vec![send] };
        let inside = vec![Block::new("", Kind::Line(line))];
        let notice = crate::block::Notice { kind: NoticeKind::Warn, inside, buttons: Vec::new() };
        blocks = blocks.add("unsent", Kind::Notice(notice));
    }
    if let Some(noted) = phone.behind {
        blocks = blocks.notice("behind", NoticeKind::Bad, night::clock_behind(noted, view.now), []);
    }
    blocks.then(missed(view)).into()
}

/// What was missed while no one looked. It makes no room for what was just done: rows stand below it, and the hand is still
/// at them.
fn missed(view: &View) -> Blocks {
    let told = |missed: &[Duty]| {
        let first = missed.first()?;
        let task = watch::task(first.task, view.system());
        let first_is = night::line(&animals::animal(view.flock, first.subject()), &task);
        Some((night::missed(missed.len(), &first_is), Screen::of(first.subject())))
    };
    let stood = told(&view.phone.missed_stood).map(|(text, _)| text);
    let (text, to) = match (told(&view.phone.missed), &stood) {
        (Some(told), _) => told,
        (None, Some(_)) => (night::MISSED_NONE.to_owned(), Screen::Watch),
        (None, None) => return Blocks::new(),
    };
    let room = stood.filter(|stood| *stood != text).unwrap_or_default();
    let line = Line::new(LineLook::To(to), Text::from(text).in_room_of(&room));
    let read = Button::new("read", frame::OK, Action::Phone(Request::LetMissedGo)).small();
    let inside = vec![Block::new("", Kind::Line(line))];
    let notice = crate::block::Notice { kind: NoticeKind::Bad, inside, buttons: vec![read] };
    Blocks::new().add("missed", Kind::Notice(notice))
}
