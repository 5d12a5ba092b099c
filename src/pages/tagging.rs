//! Tag lambs, one after another: the next number stands ready, one press saves it and turns to the next lamb. Paint marks go
//! the same way, with the dam's number.

use yeanling_core::book::{Animal, Event, LambId, Life};
use yeanling_core::flock::Lamb;
use yeanling_core::units::next_tag;
use yeanling_words::{animals, frame, rejections, tagging as words, watch, weighing};

use crate::block::{Choice, Choices, Field, FieldKind, Heading, HeadingLook, Kind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::weighing::in_order;
use crate::{Action, Button, Effect, Key, Screen};

/// What goes on.
const WHAT: &str = "tagging-what";
/// Whose turn it is, by its place.
const AT: &str = "tagging-at";
/// The tag that was put on last.
const LAST: &str = "tagging-last";

/// What goes on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Tag,
    Paint,
}

const WHATS: [(What, &str); 2] = [(What::Tag, words::TAGS), (What::Paint, words::PAINT)];

fn what(fields: &Fields) -> What {
    fields.pick(WHAT, &WHATS, WHATS[0]).0
}

fn has(lamb: &Lamb, what: What) -> bool {
    match what {
        What::Tag => lamb.tag.is_some(),
        What::Paint => !lamb.worn.is_empty(),
    }
}

/// Whose turn it is: the one that was turned to, else the first that has none.
fn turn(fields: &Fields, lambs: &[&Lamb], what: What) -> usize {
    let first = || lambs.iter().position(|lamb| !has(lamb, what)).unwrap_or(lambs.len());
    fields.chosen(AT).unwrap_or_else(first)
}

const fn turn_to(place: usize) -> Action {
    Action::Choose(Key::Borrowed(AT), place)
}

/// Where a lamb's tag or mark is kept while it is typed.
fn key(lamb: LambId, what: What) -> Key {
    match what {
        What::Tag => key_of("tagging", lamb.entry()),
        What::Paint => key_of("painting", lamb.entry()),
    }
}

/// What stands ready: the number after the last, or the dam's.
fn ready(view: &View, fields: &Fields, lamb: &Lamb, what: What) -> String {
    match what {
        What::Tag => fields.typed(LAST).and_then(next_tag),
        What::Paint => lamb.dam.and_then(|dam| view.flock.ewe(dam)).and_then(|dam| dam.tag.clone()),
    }
    .unwrap_or_default()
}

/// Returns how many living lambs of the season have a tag, and how many there are.
pub(crate) fn tagged(view: &View) -> (usize, usize) {
    let lambs = in_order(view.flock);
    (lambs.iter().filter(|lamb| has(lamb, What::Tag)).count(), lambs.len())
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let (lambs, what) = (in_order(view.flock), what(fields));
    let whats = WHATS.iter().enumerate();
    let whats = whats.map(|(place, (_, name))| Choice::new(*name, Action::Choose(WHAT.into(), place)));
    let whats = Choices::new(words::WHAT, whats.collect(), Some(fields.chosen(WHAT).unwrap_or(0)));
    let at = turn(fields, &lambs, what);
    let blocks = Blocks::new().choices(WHAT, whats);
    let blocks = match lambs.get(at) {
        Some(lamb) => blocks.card("turn", card(view, fields, &lambs, at, lamb)),
        None if lambs.is_empty() => {
            let lambing = Button::new("lambing", watch::LAMBING, Action::Go(Screen::Lambing));
            blocks.empty(words::NO_LAMBS, [lambing])
        }
        None => blocks.text(words::ALL_DONE).button(Button::new("again", weighing::AGAIN, turn_to(0))),
    };
    Page::new(words::TITLE).back(Screen::Flock, frame::FLOCK).blocks(blocks)
}

/// The lamb whose turn it is.
fn card(view: &View, fields: &Fields, lambs: &[&Lamb], at: usize, lamb: &Lamb) -> Blocks {
    let what = what(fields);
    let key = key(lamb.id, what);
    let done = lambs.iter().filter(|lamb| has(lamb, what)).count();
    let name = Heading { level: 2, look: HeadingLook::Turn, text: animals::lamb(view.flock, lamb) };
    let (label, hint) = match what {
        What::Tag => (words::TAG, words::TAG_HINT),
        What::Paint => (words::MARK, words::MARK_HINT),
    };
    let save = Action::Does(crate::Does::TagLamb(lamb.id));
    let field = Field::new(label, FieldKind::Text, fields.text(&key, &ready(view, fields, lamb, what)));
    let field = field.hint(hint).error(fields.error(&key)).enter(save.clone());
    let skip = Button::new("skip", weighing::SKIP, turn_to(at + 1));
    let back = at.checked_sub(1).map(|at| Button::new("back", weighing::BACK, turn_to(at)).quiet());
    let dam = lamb.dam.map(|dam| animals::ewe_of(view.flock, dam));
    let about = std::iter::once(animals::kind(lamb).to_owned()).chain(dam).collect::<Vec<_>>().join(" · ");
    Blocks::new()
        .remark(words::done(what == What::Tag, done, lambs.len()), [])
        .add("name", Kind::Heading(name))
        .text(about)
        .field(key, field)
        .button(Button::new("save", weighing::NEXT, save).filled())
        .buttons(2, [skip].into_iter().chain(back))
}

/// Whoever comes back to a round that was gone through is at the first lamb that has none.
pub(crate) fn enter(view: &View, draft: &mut Draft) {
    if draft.fields.chosen(AT).is_some_and(|at| at >= in_order(view.flock).len()) {
        draft.fields.forget(AT);
    }
}

/// Another thing to put on begins with the first lamb that has none.
pub(crate) fn typed(key: &str, fields: &mut Fields) {
    if key == WHAT {
        fields.forget(AT);
    }
}

/// Saves the tag or the mark, and turns to the next that has none.
pub(crate) fn does(lamb: LambId, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let fields = &draft.fields;
    let (lambs, what) = (in_order(view.flock), what(fields));
    let key = key(lamb, what);
    let Some(place) = lambs.iter().position(|one| one.id == lamb) else { return Vec::new() };
    let ready = lambs.get(place).map(|one| ready(view, fields, one, what)).unwrap_or_default();
    let text = fields.text(&key, &ready).trim().to_owned();
    if text.is_empty() {
        return draft.say_wrong(key, words::NOTHING);
    }
    let animal = Animal::Lamb(lamb);
    let event = match what {
        What::Tag => Event::Tagged { animal, tag: text.clone() },
        What::Paint => Event::Life(Life::Marked { animal, mark: text.clone() }),
    };
    let noting = vec![view.noting(event)];
    if let Err(rejection) = view.validate(&noting) {
        return draft.say_wrong(key, rejections::rejection(&rejection, view.now, view.system()));
    }
    let next = (place + 1..lambs.len()).find(|at| lambs.get(*at).is_some_and(|one| !has(one, what)));
    let fields = &mut draft.fields;
    fields.forget(&key);
    fields.choose(AT, next.unwrap_or(lambs.len()));
    if what == What::Tag {
        fields.set(LAST, text);
    }
    vec![Effect::Note(noting)]
}
