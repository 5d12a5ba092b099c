//! The pen board: who is in, since when, who may go out, and why not yet.

mod card;
mod name;
mod new;
mod one;

use yeanling_core::book::{Animal, Event, PenId};
use yeanling_core::flock::{Flock, Pen, Stay};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Readiness, readiness};
use yeanling_words::common::day_and_clock;
use yeanling_words::{frame, pens as words};

pub(crate) use name::{save as save_name, sheet as name_sheet};
pub(crate) use new::{save as save_new, sheet as new_sheet};
pub(crate) use one::{does, page as one_page};

use crate::block::{Block, Kind, Row};
use crate::page::{Blocks, Page};
use crate::ribbon::{Ribbon, RibbonKind, Stretch, Tick};
use crate::view::View;
use crate::{Action, Button, Key, Screen, Sheet, State};

/// What only the pens know how to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Takes a pen down, and leads to the others.
    TakeDown(PenId),
}

/// Returns the screen.
pub(crate) fn page(view: &View) -> Page {
    let pens = standing(view.flock);
    let blocks = if pens.is_empty() { Blocks::new().empty(words::EMPTY, []) } else { Blocks::new() };
    let new = Button::new("new", words::NEW, Action::Ask(Sheet::NewPen)).big();
    Page::new(words::TITLE)
        .back(Screen::Watch, frame::BACK)
        .blocks(blocks.rows("pens", pens.into_iter().map(|pen| row(view, pen))))
        .thumb(Blocks::new().button(new))
}

/// The pens that stand, by length first, so that 2 comes before 10.
fn standing(flock: &Flock) -> Vec<&Pen> {
    let mut standing: Vec<&Pen> = flock.pens.values().filter(|pen| pen.closed.is_none()).collect();
    standing.sort_small_by_key(|pen| (pen.name.len(), &pen.name, pen.id));
    standing
}

/// One pen: who is in, the ribbon of their stay, and one button.
fn row(view: &View, pen: &Pen) -> (Key, Row) {
    let row = Row::new(words::pen(pen)).to(Screen::Pen(pen.id));
    let row = match pen.size {
        Some(size) => row.kind(words::size(size, view.system())),
        None => row,
    };
    let row = match pen.inside.first() {
        None => empty(row, pen, view.now),
        Some(first) => taken(row, view, pen, first),
    };
    (format!("pen-{}", pen.id).into(), row)
}

/// The button of a pen's row, named after it.
fn press(pen: &Pen, label: &str, does: Action) -> Button {
    Button::new("press", label, does).action(format!("{label} {}", words::pen(pen)))
}

fn empty(row: Row, pen: &Pen, now: Moment) -> Row {
    match pen.left.filter(|_| pen.soiled()) {
        Some(left) => {
            let text = format!("{} {}", words::SOILED, day_and_clock(left, now));
            let cleaned = Action::Note(vec![Event::PenCleaned { pen: pen.id }]);
            row.text(text).says(State::Coming, "").action(press(pen, words::CLEANED, cleaned))
        }
        None => {
            let put_in = press(pen, words::PUT_IN, Action::Ask(Sheet::PutIn(pen.id)));
            row.text(words::NOBODY).says(State::Done, "").action(put_in)
        }
    }
}

fn taken(row: Row, view: &View, pen: &Pen, first: &Stay) -> Row {
    let (flock, now) = (view.flock, view.now);
    let inside = pen.inside.iter().map(|stay| words::inside(flock, stay.animal, stay.since, now));
    let text = inside.collect::<Vec<_>>().join(" · ");
    let ready = readiness_of(view, first);
    let out = Action::Note(vec![Event::LetOut { animal: first.animal }]);
    let label = if is_early(ready.as_ref()) { words::OUT_EARLY } else { words::OUT };
    let (state, says) = match &ready {
        Some(ready) if ready.why_not.is_empty() => (State::Now, words::readiness(flock, ready, now)),
        Some(ready) => (State::Coming, words::readiness(flock, ready, now)),
        None => (State::Coming, String::new()),
    };
    let ribbon = ready.map(|ready| {
        let ribbon = Kind::Ribbon(stay(first.since, ready.stay_over, now));
        Block::new(format!("stay-{}", pen.id), ribbon)
    });
    let blocks = remarks(pen, first)
        .into_iter()
        .fold(Blocks::new().then(ribbon), |blocks, text| blocks.remark(text, []));
    row.text(text).says(state, says).action(press(pen, label, out)).inside(blocks)
}

/// Whether a ewe may go out, and why not yet; a lamb alone may.
fn readiness_of(view: &View, stay: &Stay) -> Option<Readiness> {
    match stay.animal {
        Animal::Ewe(ewe) => Some(readiness(view.flock, ewe, stay.since, view.now)),
        Animal::Lamb(_) => None,
    }
}

fn is_early(ready: Option<&Readiness>) -> bool {
    ready.is_some_and(|ready| !ready.why_not.is_empty())
}

fn remarks(pen: &Pen, first: &Stay) -> Vec<&'static str> {
    let ewes = pen.inside.iter().filter(|stay| matches!(stay.animal, Animal::Ewe(_))).count();
    let not_cleaned =
        pen.left.is_some_and(|left| left <= first.since && pen.cleaned.is_none_or(|clean| clean < left));
    let all = [(ewes > 1, words::TWO_EWES), (not_cleaned, words::NOT_CLEANED)];
    all.into_iter().filter_map(|(is, text)| is.then_some(text)).collect()
}

/// The stay: held until it is over, then free.
fn stay(since: Moment, over: Moment, now: Moment) -> Ribbon {
    let (needed, passed) = (over.since(since), now.since(since));
    let whole = needed.max(passed).as_seconds_f64().max(60.0) * 1.12;
    let at = |span: TimeDelta| (span.as_seconds_f64() / whole).clamp(0.0, 1.0);
    let stretch = |from, to, kind| Stretch { from, to, kind, label: String::new() };
    let (begins, ends) = (day_and_clock(since, now), day_and_clock(over, now));
    Ribbon {
        label: format!("{begins} – {ends}"),
        stretches: vec![
            stretch(0.0, at(needed), RibbonKind::Held),
            stretch(at(needed), 1.0, RibbonKind::Best),
        ],
        ticks: vec![Tick::new(0.0, begins), Tick::new(at(needed), ends)],
        now: Some(at(passed)),
        pins: Vec::new(),
    }
}
