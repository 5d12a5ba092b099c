//! One pen: who is in, what can be done for it, and all that was noted.

use yeanling_core::book::{Animal, Event, PenId};
use yeanling_core::flock::{Pen, Stay};
use yeanling_words::{animals, frame, pens as words};

use super::{Does, card, is_early, readiness_of};
use crate::block::{Buttons, Kind, NoticeKind};
use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::{Action, Button, Effect, Key, Request, Screen, Sheet, timeline};

/// Returns the screen.
pub(crate) fn page(view: &View, id: PenId) -> Page {
    let Some(pen) = view.flock.pens.get(&id) else {
        let gone = Page::new(frame::NOT_HERE).back(Screen::Pens, words::TITLE);
        return gone.blocks(Blocks::new().gone());
    };
    let inside = pen.inside.iter().fold(Blocks::new(), |blocks, stay| inhabitant(blocks, view, stay));
    let blocks = match pen.closed {
        None => inside.section("chores", words::TITLE, chores(id)),
        Some(_) => inside.notice("closed", NoticeKind::Calm, words::CLOSED, []),
    };
    let print = Button::new("print", words::PRINT, Action::Phone(Request::Print)).quiet();
    let page = Page::new(words::pen(pen)).back(Screen::Pens, words::TITLE).under(size(view, pen));
    let card = Kind::PaperCard(card::card(view, pen));
    page.blocks(blocks.button(print).then(timeline::of_pen(view, id)).add("card", card))
}

fn size(view: &View, pen: &Pen) -> String {
    pen.size.map(|size| words::size(size, view.system())).unwrap_or_default()
}

/// Someone who is in, with what holds them back, the way out and the way on.
fn inhabitant(blocks: Blocks, view: &View, stay: &Stay) -> Blocks {
    let (flock, now, animal) = (view.flock, view.now, stay.animal);
    let ready = readiness_of(view, stay);
    let out = Action::Note(vec![Event::LetOut { animal }]);
    let out = if is_early(ready.as_ref()) {
        Button::new("out", words::OUT_EARLY, out).quiet()
    } else {
        Button::new("out", words::OUT, out).filled()
    };
    let move_on = Button::new("move", words::MOVE, Action::Ask(Sheet::WhichPen(animal)));
    let look = Button::new("look", animals::animal(flock, animal), Action::Go(Screen::of(animal)));
    let buttons = [out, move_on, look].into_iter().fold(Blocks::new(), Blocks::button);
    let blocks = blocks.remark(words::inside(flock, animal, stay.since, now), []);
    let blocks = match &ready {
        Some(ready) => blocks.remark(words::readiness(flock, ready, now), []),
        None => blocks,
    };
    let buttons = Buttons { columns: 3, inside: buttons.into() };
    blocks.add(key(animal), Kind::Buttons(buttons))
}

fn key(animal: Animal) -> Key {
    match animal {
        Animal::Ewe(ewe) => key_of("in", ewe.entry()),
        Animal::Lamb(lamb) => key_of("in", lamb.entry()),
    }
}

/// What can be done for the pen itself.
fn chores(pen: PenId) -> Blocks {
    let cleaned = Action::Note(vec![Event::PenCleaned { pen }]);
    Blocks::new().buttons(
        2,
        [
            Button::new("put-in", words::PUT_IN, Action::Ask(Sheet::PutIn(pen))),
            Button::new("cleaned", words::CLEANED, cleaned),
            Button::new("rename", words::RENAME, Action::Ask(Sheet::PenName(pen))),
            Button::new("take-down", words::CLOSE, Action::Does(crate::Does::Pens(Does::TakeDown(pen))))
                .quiet(),
        ],
    )
}

/// Does what only the pens know.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::TakeDown(pen) => {
            let mut effects = draft.note(view, vec![view.noting(Event::PenClosed { pen })]);
            if !effects.is_empty() {
                effects.push(Effect::Go(Screen::Pens));
            }
            effects
        }
    }
}
