//! Families as cards: a head with ewe and pen, a line for each animal; ewes of whom the same afterbirth is asked share one.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::{Animal, Event};
use yeanling_core::watch::State as Due;
use yeanling_words::{danger, life, watch as words};

use super::acts::Does;
use super::row;
use super::shown::Shown;
use crate::block::{Block, Family, Kind, RowLook, Section, State};
use crate::page::Blocks;
use crate::{Action, Button, Sheet, Text};

/// The animals on one card.
pub(super) type Members<'a> = Vec<&'a Shown>;

/// Returns animals card by card, each where its first stands.
pub(super) fn cards<'a>(rows: impl IntoIterator<Item = &'a Shown>) -> Vec<Members<'a>> {
    let mut cards: Vec<Members> = Vec::new();
    for one in rows {
        let card = cards.iter_mut().find(|card| {
            card.first().is_some_and(|first| {
                first.seat.family == one.seat.family && !first.seat.newly && !one.seat.newly
            })
        });
        match card {
            Some(card) => card.push(one),
            None => cards.push(vec![one]),
        }
    }
    asked_alike(cards)
}

/// Puts together the ewes of whom the same afterbirth is asked, and who have nobody beside them.
fn asked_alike(cards: Vec<Members>) -> Vec<Members> {
    let mut together: Vec<Members> = Vec::new();
    for card in cards {
        let same =
            alike(&card).and_then(|asked| together.iter_mut().find(|other| alike(other) == Some(asked)));
        match same {
            Some(other) => other.extend(card),
            None => together.push(card),
        }
    }
    together
}

/// Returns what is asked alike of all on a card, and in which state's place they stand.
fn alike(card: &[&Shown]) -> Option<(bool, Option<Due>)> {
    let asked = |one: &Shown| Some((one.seat.alike.filter(|_| !one.seat.newly)?, one.stood));
    let first = asked(card.first()?)?;
    card.iter().all(|one| asked(one) == Some(first)).then_some(first)
}

/// Returns in which state's place a card stands: that of its most urgent.
pub(super) fn stands(card: &[&Shown]) -> Option<Due> {
    card.iter().map(|one| one.stood).max().flatten()
}

/// Returns the cards as they are drawn.
pub(super) fn blocks(key: &str, cards: &[Members]) -> Blocks {
    if cards.is_empty() {
        return Blocks::new();
    }
    let mut taken = BTreeSet::new();
    let cards: Vec<Arc<Block>> = cards.iter().map(|card| block(key, card, &mut taken)).collect();
    Blocks::new().add(format!("{key}-cards"), Kind::Rows(cards))
}

fn block(section: &str, card: &[&Shown], taken: &mut BTreeSet<String>) -> Arc<Block> {
    let ground = ground(card);
    let line = |one: &&Shown, look| Block::new(row::key(one.animal), Kind::Row(row::row(one, look)));
    let Some(first) = card.first() else { return Block::seen("", Vec::new()) };
    let asked = alike(card).filter(|_| card.len() > 1);
    let wants_ewe =
        card.iter().find(|one| one.seat.wants_ewe && one.state.is_some_and(|state| state > Due::Coming));
    if card.len() == 1 && wants_ewe.is_none() {
        return line(first, RowLook::Alone(ground));
    }
    let lines: Vec<Arc<Block>> = match asked {
        // The head asks it of all of them.
        Some(_) => card.iter().map(|one| line(&&of_many(one), RowLook::Line)).collect(),
        None => card.iter().map(|one| line(one, RowLook::Line)).collect(),
    };
    let key =
        |noun: &str| crate::page::unlike(format!("{section}-{noun}-{}", row::key(first.seat.family)), taken);
    if let Some((vet, _)) = asked {
        let title = words::afterbirths(vet, card.len());
        let (aside, to, action) = (Text::default(), None, Some(all_passed(card)));
        let family = Family { title, aside, to, state: ground, action, lines };
        return Block::new(format!("{section}-afterbirths-{vet}"), Kind::Family(family));
    }
    let foster = wants_ewe.and_then(|one| foster(one));
    let seat = &first.seat;
    let (title, aside, to) = (seat.title.clone(), Text::from(&seat.aside), seat.to);
    let mut key = key;
    Block::new(key("family"), Kind::Family(Family { title, aside, to, state: ground, action: foster, lines }))
}

/// Returns one of several of whom the same is asked: where she is stands in the place of what is asked.
fn of_many(one: &Shown) -> Shown {
    let place = one.seat.place.clone().unwrap_or_default();
    let text = if one.state.is_none() { one.text.clone() } else { String::new() };
    let mut of_many = Shown { text, kind: place, ..one.clone() };
    of_many.rooms.text.clear();
    of_many
}

/// How loudly a card speaks: a missed navel is late, and no red.
fn ground(card: &[&Shown]) -> State {
    let loud = |one: &&Shown| match row::state(one.state) {
        State::Late if one.soft => State::Now,
        state => state,
    };
    card.iter().map(loud).min().unwrap_or(State::Done)
}

/// The way to a ewe for a lamb that none rears.
fn foster(one: &Shown) -> Option<Button> {
    let Animal::Lamb(lamb) = one.animal else { return None };
    let name = format!("{}, {}", life::FOSTER, one.name);
    Some(Button::new("foster", life::FOSTER, Action::Ask(Sheet::Foster(lamb))).named(name).quiet())
}

/// Notes of each that is still asked that her afterbirth passed.
fn all_passed(card: &[&Shown]) -> Button {
    let passed = |one: &&Shown| {
        let Does::Notes(event @ Event::AfterbirthPassed { .. }) = &one.button.as_ref()?.does else {
            return None;
        };
        Some(event.clone())
    };
    let events: Vec<Event> = card.iter().filter_map(passed).collect();
    let done = events.is_empty();
    let button =
        Button::new("all-passed", words::ALL_PASSED, Action::Note(events)).action(words::ALL_PASSED_NAME);
    if done { button.ticked() } else { button }
}

/// Returns the rows of animals that are pinned above all others, each a card in full ink.
pub(super) fn pinned<'a>(key: &'static str, rows: impl IntoIterator<Item = &'a Shown>) -> Blocks {
    let row = |one: &Shown| Block::new(row::key(one.animal), Kind::Row(row::row(one, RowLook::Solid)));
    let rows: Vec<Arc<Block>> = rows.into_iter().map(row).collect();
    if rows.is_empty() {
        return Blocks::new();
    }
    let inside = vec![Block::new(format!("{key}-rows"), Kind::Rows(rows))];
    let (title, state) = (danger::TITLE.to_owned(), Some(State::Danger));
    Blocks::new().add(key, Kind::Section(Section { title, state, aside: None, inside }))
}
