//! One animal on the Watch: what is most urgent with its button, the ribbon, the volumes, and what else is due.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::Animal;
use yeanling_core::watch::State as Due;
use yeanling_words::watch as words;

use super::shown::{Act, Does, Shown};
use crate::block::{Block, Figure, Kind, Row, Shape, State};
use crate::page::{Blocks, key_of, unlike, why};
use crate::{Action, Button, Key, Sheet, Text};

/// Returns the row of an animal.
pub(super) fn row(one: &Shown) -> (Key, Row) {
    let key = match one.animal {
        Animal::Ewe(ewe) => key_of("ewe", ewe.entry()),
        Animal::Lamb(lamb) => key_of("lamb", lamb.entry()),
    };
    let state = |due: Option<Due>| due.map_or(State::Done, State::from);
    // Where it keeps its place, it keeps the size of the state in whose place it stands.
    let size = (one.stood != one.state).then(|| state(one.stood));
    let row = Row::new(&one.name)
        .kind(&one.kind)
        .text(Text::from(&one.text).in_room_of(&one.text_room))
        .says(state(one.state), Text::from(&one.says).in_room_of(&one.says_room))
        .sized(size)
        .to(one.to)
        .action(one.button.as_ref().map(|act| button(act, &one.name)))
        .inside(inside(one, &key));
    (key, row)
}

fn inside(one: &Shown, key: &str) -> Vec<Arc<Block>> {
    let under = |what: &str| format!("{key}-{what}");
    let mut blocks = Blocks::new();
    if let Some(ribbon) = one.milk.as_ref().or(one.labor.as_ref()) {
        let why = one.why.clone().map(|(about, reason)| why(about, reason));
        let figure = Figure {
            value: one.figure.clone(),
            also: one.figure_says.clone(),
            buttons: why.into_iter().collect(),
            ..Figure::default()
        };
        blocks = blocks.add(under("figure"), Kind::Figure(figure));
        blocks = blocks.add(under("ribbon"), Kind::Ribbon(ribbon.clone()));
    }
    if !one.facts.is_empty() {
        blocks = blocks.add(under("facts"), Kind::Facts(one.facts.clone()));
    }
    let mut taken = BTreeSet::new();
    let others = one.others.iter().map(|act| {
        let button = button(act, &one.name);
        Button { key: unlike(button.key.to_string(), &mut taken), ..button }
    });
    let others = others.chain(later(one)).fold(Blocks::new(), Blocks::button);
    if !others.is_empty() {
        blocks = blocks.group(under("others"), Shape::Others, others);
    }
    blocks.into()
}

/// Puts off what is most urgent; what can be put off no more keeps its room while the row keeps its place.
fn later(one: &Shown) -> Option<Button> {
    let waits = |due: Option<Due>| matches!(due, Some(Due::Now | Due::Late));
    let ask = |does| {
        Button::new("later", words::LATER, does).small().named(format!("{}, {}", words::LATER, one.name))
    };
    match one.first.as_ref().filter(|_| waits(one.state)) {
        Some(duty) => Some(ask(Action::Ask(Sheet::Later(Box::new(duty.clone()))))),
        None => waits(one.stood).then(|| ask(Action::Close).emptied()),
    }
}

/// One button: it notes with one tap, asks on a sheet, or leads to where something must be read first. What was done is a
/// tick.
fn button(act: &Act, whose: &str) -> Button {
    let button = match act.does.meant() {
        Does::Notes(event) => Action::Note(vec![event.clone()]),
        Does::Asks(sheet) => Action::Ask(sheet.clone()),
        Does::Leads(to) => return kept(act, Button::new(act.key.clone(), &act.label, Action::Go(*to))),
        Does::Done(_) | Does::Over(_) => Action::Close,
    };
    let name = format!("{}, {whose}", act.label);
    kept(act, Button::new(act.key.clone(), &act.label, button).action(name))
}

fn kept(act: &Act, button: Button) -> Button {
    match act.does {
        Does::Done(_) => button.ticked(),
        Does::Over(_) => button.emptied(),
        Does::Notes(_) | Does::Asks(_) | Does::Leads(_) => button,
    }
}
