//! Night: a dark clock for the nail on the barn wall, with what comes next in figures for reading across a room.
//!
//! It is black whatever the look, and it holds the screen awake; what it cannot do it says.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::Animal;
use yeanling_core::watch::{Duty, State};
use yeanling_words::common::{clock, day_and_clock};
use yeanling_words::{animals, frame, night as words, watch};

use crate::block::{
    Aloud, Block, Choice, Figure, FigureSize, Heading, HeadingLook, Item, Kind, Line, LineLook, ListLook,
    Ring, Row, Shape,
};
use crate::draft::Draft;
use crate::page::{Blocks, Page, unlike};
use crate::phone::{Alarm, Awake};
use crate::to_calendar::{self, ToCalendar};
use crate::view::View;
use crate::{Action, Button, Request, Screen, Text, standing, vet};

/// How many that are due stand in large words; the Watch has the rest.
const MOST_DUE: usize = 3;

/// How many of those to come stand under the next.
const MOST_THEN: usize = 3;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let (due, coming): (Vec<&Duty>, Vec<&Duty>) =
        view.duties.iter().partition(|duty| duty.state(view.now) > State::Coming);
    let comes: Vec<Arc<Block>> = overdue(view, &due).then(next(view, due.is_empty(), &coming)).into();
    let foot = foot(view, draft, coming.first().copied(), vet::says(&comes));
    let clock = Blocks::new()
        .group("night-top", Shape::NightTop, top(view))
        .then(standing(view, Screen::Night))
        .then(comes)
        .group("night-foot", Shape::NightFoot, foot);
    let blocks = Blocks::new().group("night", Shape::Night, clock).group("ringing", Shape::Alert, ring(view));
    Page { bare: true, ..Page::new(words::TITLE).blocks(blocks).thumb(thumb(view)) }
}

fn top(view: &View) -> Blocks {
    let heading = Heading { level: 1, look: HeadingLook::Plain, text: words::TITLE.to_owned() };
    Blocks::new()
        .button(Button::new("back", frame::BACK, Action::Go(Screen::Watch)).small())
        .add("", Kind::Heading(heading))
        .text(clock(view.now))
}

/// What is late and what is due: the most urgent in large words.
fn overdue(view: &View, due: &[&Duty]) -> Blocks {
    let mut taken = BTreeSet::new();
    let row = |duty: &&Duty| {
        let row = Row::new(name(view, duty))
            .text(task(view, duty))
            .says(duty.state(view.now).into(), words::stands(duty, view.now))
            .to(Screen::of(duty.subject()));
        let key = unlike(format!("due-{}-{}", entry(duty.subject()), duty.task.kind()), &mut taken);
        Block::new(key, Kind::Row(row.at_night()))
    };
    let mut rows = Blocks::new().then(due.iter().take(MOST_DUE).map(row));
    if due.len() > MOST_DUE {
        let label = words::more(due.len() - MOST_DUE);
        rows = rows.button(Button::new("more-due", label, Action::Go(Screen::Watch)).small());
    }
    if rows.is_empty() { rows } else { Blocks::new().group("due", Shape::NightDue, rows) }
}

/// What comes next with the time to it, the plain line for a phone in a pocket, and what comes then.
fn next(view: &View, quiet: bool, coming: &[&Duty]) -> Blocks {
    let line = |look, text: Text| Block::new("", Kind::Line(Line::new(look, text)));
    let Some((first, others)) = coming.split_first() else {
        // Ewes past their days are no comfort.
        let overdue = yeanling_core::seasons::overdue(view.flock, &view.lambing_forecasts, view.now).len();
        let said = if overdue > 0 { words::overdue(overdue) } else { words::NOTHING.to_owned() };
        return Blocks::new().then(quiet.then(|| line(LineLook::NightCalm, said.into())));
    };
    let (now, comes) = (view.now, first.comes());
    let whose = |duty: &Duty| Text::strong(&name(view, duty)).then(" · ").then(task(view, duty));
    let (value, unit) = words::time_to(comes, now);
    let figure = Figure { value, unit: unit.to_owned(), size: FigureSize::Barn, ..Figure::default() };
    let then = others
        .iter()
        .take(MOST_THEN)
        .map(|duty| Item::new(whose(duty)).note(day_and_clock(duty.comes(), now)));
    Blocks::new()
        .then(quiet.then(|| line(LineLook::NightCalm, words::calm(comes, now).into())))
        .then([line(LineLook::NightNext(Screen::of(first.subject())), whose(first))])
        .group("timer", Shape::Timer, Blocks::new().add("time-to-it", Kind::Figure(figure)))
        .then([line(LineLook::NightPocket, words::set_alarm(comes, now).into())])
        .list(ListLook::NightThen, then)
}

/// How the alarm stands, the way to the phone's own, and to the vet while something asks for that.
fn foot(view: &View, draft: &Draft, next: Option<&Duty>, call: bool) -> Blocks {
    let said = match view.phone.night.alarm {
        Alarm::Off => words::OFF.to_owned(),
        Alarm::Mute => words::MUTE.to_owned(),
        Alarm::Armed(tested) => words::armed(tested),
        Alarm::Unable => words::NO_SOUND.to_owned(),
    };
    let one = next.map(|duty| ToCalendar::One(duty.task));
    let calls = if call { vet::blocks(view) } else { Blocks::new() };
    calls
        .status(said)
        .then(one.iter().flat_map(|one| to_calendar::blocks(view, draft, one)))
        .then(to_calendar::blocks(view, draft, &ToCalendar::All))
}

/// What rings, over the whole screen: a tap anywhere answers it.
fn ring(view: &View) -> Blocks {
    let ringing = &view.phone.night.ringing;
    let Some(first) = ringing.first() else { return Blocks::new() };
    let more = if ringing.len() > 1 { words::more(ringing.len() - 1) } else { String::new() };
    let ring = Ring {
        name: animals::animal(view.flock, first.task.subject()),
        text: watch::task(first.task, view.system()).into(),
        more,
        answer: Choice::new(words::UP, Action::Phone(Request::Answer)).note(words::ANYWHERE),
    };
    Blocks::new().add("ring", Kind::Ring(ring))
}

/// What the alarm cannot do, and the big button: it arms and disarms; after a ring another leads to the animal.
fn thumb(view: &View) -> Blocks {
    let night = &view.phone.night;
    let awake = match night.awake {
        Awake::Unasked => None,
        Awake::Held => Some(true),
        Awake::Refused | Awake::Unable => Some(false),
    };
    let only = Line {
        look: LineLook::NightOnly,
        text: words::only_here(awake).into(),
        aloud: Aloud::Not,
        buttons: Vec::new(),
    };
    let arm = |key: &'static str, label, request| Button::new(key, label, Action::Phone(request)).big();
    let arm = match night.alarm {
        Alarm::Off => Some(arm("arm", words::ARM, Request::Arm).filled()),
        Alarm::Mute => Some(arm("arm-again", words::ARM_AGAIN, Request::Arm).filled()),
        Alarm::Armed(_) => Some(arm("disarm", words::DISARM, Request::Disarm)),
        Alarm::Unable => None,
    };
    let to = night.answered.map(|animal| {
        let label = words::go_to(&animals::animal(view.flock, animal));
        Button::new("go-to", label, Action::Go(Screen::of(animal))).big().filled()
    });
    to.into_iter().chain(arm).fold(Blocks::new().add("", Kind::Line(only)), Blocks::button)
}

fn name(view: &View, duty: &Duty) -> String {
    animals::animal(view.flock, duty.subject())
}

fn task(view: &View, duty: &Duty) -> Text {
    watch::task(duty.task, view.system()).into()
}

const fn entry(animal: Animal) -> yeanling_core::book::EntryId {
    match animal {
        Animal::Ewe(ewe) => ewe.entry(),
        Animal::Lamb(lamb) => lamb.entry(),
    }
}
