//! Everything for one lamb on one screen: what it is, its weight, what was seen, how the birth went.

use yeanling_core::book::{Event, LambingEase, Sex};
use yeanling_core::flock::{Lamb, Line};
use yeanling_core::watch::BeforeMilk;
use yeanling_words::{animals, danger, lambing as words, noted};

use super::{held, weight};
use crate::block::{Buttons, Choice, Choices, Group, Kind, Shape, Toggle};
use crate::draft::Fields;
use crate::milk::{before, comes_first};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Screen, Sheet};

const EASES: [LambingEase; 4] =
    [LambingEase::Alone, LambingEase::SlightByHand, LambingEase::HardByHand, LambingEase::Vet];

/// Returns everything for one lamb.
pub(super) fn blocks(view: &View, fields: &Fields, lamb: &Lamb) -> Blocks {
    // What is noted of a living lamb keeps its room, and cannot be pressed of one that is dead.
    let shape = if lamb.lives() { Shape::Living } else { Shape::NotLiving };
    let living = weight::blocks(view, fields, lamb).then(seen(view, lamb));
    let group = |inside| Kind::Group(Group { shape, hidden: false, inside });
    let more = Button::new("more", words::MORE, Action::Go(Screen::Lamb(lamb.id))).small();
    // Nobody saw its birth: how old it can be is asked.
    let found = danger::found(lamb.found.is_some());
    let asks = Button::new("found", found.clone(), Action::Ask(Sheet::Found(lamb.id))).small().named(found);
    Blocks::new()
        .choices("what", what(view, lamb))
        .then(held("living", group, living))
        .group("help", Shape::LambingHelp, Blocks::new().choices("eases", eases(lamb)))
        .remark("", [more, asks])
}

/// What it is; a second tap corrects the first.
fn what(view: &View, lamb: &Lamb) -> Choices {
    let entry = lamb.id.entry();
    let line = view.flock.lines.iter().rev().find(|line| line.entry == entry);
    let amended = |new: (Option<Sex>, bool)| {
        let Some(Line { event: Event::LambBorn { dam, beside, .. }, at, .. }) = line else {
            return Action::Nothing;
        };
        if new == (lamb.sex, lamb.born_alive) {
            return Action::Nothing;
        }
        let (sex, alive) = new;
        let event = Box::new(Event::LambBorn { dam: *dam, beside: *beside, sex, alive });
        Action::Note(vec![Event::Amended { entry, event, at: *at }])
    };
    let options = vec![
        Choice::new(words::EWE_LAMB, amended((Some(Sex::Ewe), true))),
        Choice::new(words::RAM_LAMB, amended((Some(Sex::Ram), true))),
        Choice::new(words::BORN_DEAD, amended((lamb.sex, !lamb.born_alive))),
    ];
    let chosen = match (lamb.born_alive, lamb.sex) {
        (false, _) => Some(2),
        (true, Some(Sex::Ewe)) => Some(0),
        (true, Some(Sex::Ram)) => Some(1),
        (true, None) => None,
    };
    Choices::new(words::sex_of(&animals::lamb(view.flock, lamb)), options, chosen)
}

/// What was seen of it, or not: a tap notes it, another takes it back.
fn seen(view: &View, lamb: &Lamb) -> Blocks {
    let toggle = |label: &str, pressed: bool, event: Event| {
        let noted = |line: &&Line| !line.struck && line.event == event;
        let before = || view.flock.lines.iter().rev().find(noted).map(|line| line.entry);
        let event = match pressed.then(before).flatten() {
            Some(entry) => Event::Deleted { entry },
            None => event,
        };
        Kind::Toggle(Toggle { label: label.to_owned(), pressed, note: None, does: Action::Note(vec![event]) })
    };
    let id = lamb.id;
    let toggles = Blocks::new()
        .add("navel", toggle(words::NAVEL, !lamb.navel.is_empty(), Event::NavelDipped { lamb: id }))
        .add("up", toggle(words::UP, !lamb.stood.is_empty(), Event::Stood { lamb: id }));
    // While something comes before milk nothing asks it to suck; that it did can be taken back.
    let sucked = !lamb.sucked.is_empty();
    let first = before(view, lamb).and_then(BeforeMilk::before_nursing).filter(|_| !sucked);
    let toggles = match first {
        Some(first) => toggles.button(comes_first(id, first)),
        None => toggles.add("sucked", toggle(words::SUCKED, sucked, Event::Sucked { lamb: id })),
    };
    let buttons = held("ticks", |inside| Kind::Buttons(Buttons { columns: 3, inside }), toggles);
    Blocks::new().group("seen", Shape::LambingSeen, buttons)
}

/// How the birth went: one tap, another changes it.
fn eases(lamb: &Lamb) -> Choices {
    let choice = |ease: &LambingEase| {
        let does = if lamb.ease == Some(*ease) {
            Action::Nothing
        } else {
            Action::Note(vec![Event::BirthEase { lamb: lamb.id, ease: *ease }])
        };
        Choice::new(noted::ease_short(*ease), does)
    };
    let chosen = EASES.iter().position(|ease| lamb.ease == Some(*ease));
    Choices::new(words::HELP, EASES.iter().map(choice).collect(), chosen).snug()
}
