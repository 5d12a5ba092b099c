//! Weigh lambs, one after another over the scales: the weight of each, then how they grew, side by side with their like.

mod grew;
mod wean;

use yeanling_core::book::{Event, LambId};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::seasons::seasons;
use yeanling_core::units::{Mass, Moment, TimeDelta};
use yeanling_words::{animals, errors, frame, lamb as lamb_words, rejections, watch, weighing as words};

pub(crate) use wean::sheet as wean_sheet;

use crate::block::{Field, FieldKind, Heading, HeadingLook, Kind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::{Action, Button, Effect, Key, Screen, weight};

/// Whose turn it is, by its place.
const AT: &str = "weighing-at";
/// Who is looked for.
const FIND: &str = "weighing-find";

/// What only this screen knows how to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Notes the weight of the lamb whose turn it is, and turns to the next.
    Save(LambId),
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let lambs = in_order(view.flock);
    let at = draft.fields.chosen(AT).unwrap_or(0);
    let turn = match lambs.get(at) {
        Some(lamb) => Blocks::new().card("turn", turn(view, &draft.fields, lamb, (at, lambs.len()))),
        None if lambs.is_empty() => {
            let lambing = Button::new("lambing", watch::LAMBING, Action::Go(Screen::Lambing));
            Blocks::new().empty(words::NO_LAMBS, [lambing])
        }
        None => Blocks::new().text(words::ALL_DONE).button(Button::new("again", words::AGAIN, turn_to(0))),
    };
    Page::new(words::TITLE)
        .back(Screen::Flock, frame::FLOCK)
        .blocks(turn.then(wean::blocks(view)).then(grew::blocks(view, &draft.fields)))
}

/// The living lambs of the latest season, the oldest first.
pub(crate) fn in_order(flock: &Flock) -> Vec<&Lamb> {
    let season = seasons(flock).into_iter().next();
    let lambs = season.map(|season| season.lambs).unwrap_or_default();
    lambs.into_iter().filter_map(|id| flock.lamb(id)).filter(|lamb| lamb.lives()).collect()
}

const fn turn_to(place: usize) -> Action {
    Action::Choose(Key::Borrowed(AT), place)
}

/// Where a lamb's weight is kept while it is typed: of no other, whoever's turn it is by then.
fn key(lamb: LambId) -> Key {
    key_of("weighing", lamb.entry())
}

/// The lamb whose turn it is: its name, what it weighed last, and the keys.
fn turn(view: &View, fields: &Fields, lamb: &Lamb, (at, of): (usize, usize)) -> Blocks {
    let key = key(lamb.id);
    let name = Heading { level: 2, look: HeadingLook::Turn, text: animals::lamb(view.flock, lamb) };
    let save = Action::Does(crate::Does::Weighing(Does::Save(lamb.id)));
    let skip = Button::new("skip", words::SKIP, turn_to(at + 1));
    let back = at.checked_sub(1).map(|at| Button::new("back", words::BACK, turn_to(at)).quiet());
    Blocks::new()
        .remark(words::place(at, of, weighed_today(view.flock, view.now)), [])
        .add("name", Kind::Heading(name))
        .text(last(view, lamb))
        .then(weight::pad(fields, key, lamb_words::WEIGHT, view.system(), Blocks::new()))
        .button(Button::new("save", words::NEXT, save).filled())
        .buttons(2, [skip].into_iter().chain(back))
        .field(FIND, Field::new(words::FIND, FieldKind::Search, fields.text(FIND, "")))
}

/// What it is, how old, and what it weighed last.
fn last(view: &View, lamb: &Lamb) -> String {
    let last = lamb.weights.last();
    let last = last.map(|last| words::weighed(last.mass, last.at.since(lamb.born).num_days(), view.system()));
    words::last(animals::kind(lamb), lamb.age(view.now).num_days(), last.as_deref())
}

/// How many lambs were weighed today; a weight at birth was noted in the pen.
fn weighed_today(flock: &Flock, now: Moment) -> usize {
    let today = now.local().date();
    let weighed = flock.lambs.values().filter(|lamb| {
        lamb.weights.last().is_some_and(|weight| {
            weight.at.local().date() == today && weight.at.since(lamb.born) >= TimeDelta::days(1)
        })
    });
    weighed.count()
}

/// Whoever comes back to a round that was gone through begins anew.
pub(crate) fn enter(view: &View, draft: &mut Draft) {
    if draft.fields.chosen(AT).is_some_and(|at| at >= in_order(view.flock).len()) {
        draft.fields.forget(AT);
    }
}

/// Who is looked for has its turn; whose turn it is needs not be looked for.
pub(crate) fn typed(key: &str, view: &View, fields: &mut Fields) {
    if key == AT {
        fields.forget(FIND);
    }
    if key == FIND
        && let Some(part) = fields.written(FIND)
    {
        let part = part.to_lowercase();
        let found = in_order(view.flock).iter().position(|lamb| goes_by(view.flock, lamb, &part));
        if let Some(place) = found {
            fields.choose(AT, place);
        }
    }
}

/// Says whether a lamb is called so, or ever was.
fn goes_by(flock: &Flock, lamb: &Lamb, part: &str) -> bool {
    let called = |text: &str| text.to_lowercase() == part;
    called(&animals::lamb(flock, lamb)) || lamb.worn.iter().any(|worn| called(worn))
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Save(lamb) => save(view, draft, lamb),
    }
}

/// Notes the weight, or says what is wrong with it; one unlike the last is asked about once.
fn save(view: &View, draft: &mut Draft, lamb: LambId) -> Vec<Effect> {
    let (key, fields) = (key(lamb), &mut draft.fields);
    let (text, unit) = (fields.text(&key, ""), weight::unit(fields, &key, view.system()));
    if text.is_empty() {
        return draft.say_wrong(key, words::NOTHING);
    }
    let mass = match Mass::parse(&text, unit) {
        Ok(mass) => mass,
        Err(wrong) => return draft.say_wrong(key, errors::typed(&wrong, errors::Field::Mass, unit)),
    };
    if let Some(question) = weight::asks_once(view, fields, &key, lamb, mass) {
        return draft.say_wrong(key, question);
    }
    let weighed = vec![view.noting(Event::Weighed { lamb, mass })];
    if let Err(rejection) = view.validate(&weighed) {
        return draft.say_wrong(key, rejections::rejection(&rejection, view.now, unit));
    }
    let at = fields.chosen(AT).unwrap_or(0);
    fields.choose(AT, at + 1);
    fields.forget(FIND);
    weight::answered(fields, &key);
    vec![Effect::Note(weighed)]
}
