//! One animal on the Watch: its line with its button, and, of the most urgent, the ribbon and the volumes.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::Animal;
use yeanling_core::watch::State as Due;

use super::acts::{Act, Does};
use super::shown::Shown;
use crate::block::{Block, Kind, Row, RowLook, State};
use crate::page::{Blocks, key_of, unlike, why};
use crate::{Button, Key, Text};

/// Returns the key of an animal's row.
pub(super) fn key(animal: Animal) -> Key {
    match animal {
        Animal::Ewe(ewe) => key_of("ewe", ewe.entry()),
        Animal::Lamb(lamb) => key_of("lamb", lamb.entry()),
    }
}

/// Returns how something stands that is due so.
pub(super) fn state(due: Option<Due>) -> State {
    due.map_or(State::Done, State::from)
}

/// Returns the row of an animal.
pub(super) fn row(one: &Shown, look: RowLook) -> Row {
    let mut taken = BTreeSet::new();
    let mut button = |act: &Act| {
        let button = act.button(&one.name);
        Button { key: unlike(button.key.to_string(), &mut taken), ..button }
    };
    let main = one.button.as_ref().map(&mut button);
    let others: Vec<Button> = one.others.iter().map(|act| button(act).quiet()).collect();
    let (main, others) = if look == RowLook::Solid { steps_first(one, main, others) } else { (main, others) };
    Row::new(&one.name)
        .look(look)
        .kind(kind(one, look))
        .text(Text::from(&one.text).in_room_of(&one.rooms.text))
        .step(Text::from(&one.step).in_room_of(&one.rooms.step))
        .says(state(one.state), Text::from(&one.says).in_room_of(&one.rooms.says))
        .to(one.to)
        .action(main)
        .others(others)
        .inside(inside(one))
}

/// Where a life hangs on it, the way to what to do now comes before what notes that the vet was called.
fn steps_first(one: &Shown, main: Option<Button>, mut others: Vec<Button>) -> (Option<Button>, Vec<Button>) {
    let leads = one.others.first().is_some_and(|act| matches!(act.does.meant(), Does::Leads(_)));
    match main {
        Some(main) if leads => {
            let steps = others.remove(0);
            others.insert(0, main);
            (Some(steps.filled()), others)
        }
        main => (main.map(Button::filled), others),
    }
}

/// On a card of its own it says where it is: no head does.
fn kind(one: &Shown, look: RowLook) -> String {
    let place = match look {
        RowLook::Alone(_) | RowLook::Solid => one.seat.place.clone().unwrap_or_default(),
        RowLook::Paper | RowLook::Line | RowLook::Night => String::new(),
    };
    [one.kind.clone(), place].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// The ribbon and the volumes of the most urgent.
fn inside(one: &Shown) -> Vec<Arc<Block>> {
    if !one.seat.leads {
        return Vec::new();
    }
    let key = key(one.animal);
    let under = |what: &str| format!("{key}-{what}");
    let mut blocks = Blocks::new();
    if let Some(ribbon) = &one.ribbon {
        blocks = blocks.add(under("ribbon"), Kind::Ribbon(ribbon.clone()));
    }
    if !one.facts.is_empty() {
        blocks = blocks.add(under("facts"), Kind::Facts(one.facts.clone()));
    }
    if let Some((about, reason)) = one.why.clone().filter(|_| !blocks.is_empty()) {
        blocks = blocks.remark("", [why(about, reason)]);
    }
    blocks.into()
}
