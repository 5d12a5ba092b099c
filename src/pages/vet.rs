//! Calling the vet: wherever a page says to call, a button that dials stands with it, or the way to give the number.
//!
//! Whoever writes a page need not think of it: [`put`] finds the first place that says so, on the page and on each sheet over
//! it, and puts the buttons there. A page on which nothing may move puts them itself.

use std::sync::Arc;

use chrono::Timelike;
use yeanling_core::settings::dialed;
use yeanling_words::vet as words;

use crate::block::{Block, Kind, RowLook, Shape};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Screen, SettingsPart, Text};

/// From this hour on until [`DAY`] the number for the night stands first (ours).
const NIGHT: u32 = 18;
/// From this hour on the number for the day stands first (ours).
const DAY: u32 = 7;

/// What a text says that asks for a call; the first letter may be a capital.
const SAYS: [&str; 2] = ["all your vet", "all the vet"];

/// So many buttons stand there: one more is no help in a hurry, and takes the place of what is to be done.
const AT_ONCE: usize = 2;

/// Returns the buttons that call the vet, the number for this hour first, then whom to call when nobody answers; without a
/// number, the way to give one.
pub(crate) fn calls(view: &View) -> Vec<Button> {
    let phones = &view.settings().vet_phones;
    let mut numbers = vec![
        ("call-vet", words::CALL_DAY, &phones.day),
        ("call-vet-night", words::CALL_NIGHT, &phones.night),
        ("call-vet-second", words::CALL_SECOND, &phones.second),
    ];
    if !(DAY..NIGHT).contains(&view.now.local().hour()) {
        numbers.rotate_left(1);
    }
    numbers.retain(|(_, _, number)| !number.is_empty());
    let only = numbers.len() == 1;
    let call = |(key, label, number): (&'static str, &'static str, &String)| {
        let (key, label) = if only { ("call-vet", words::CALL) } else { (key, label) };
        Some(Button::new(key, label, Action::Call(dialed(number)?)))
    };
    let mut calls: Vec<Button> = numbers.into_iter().filter_map(call).take(AT_ONCE).collect();
    if calls.is_empty() {
        // It calls nobody yet: what is due keeps the room.
        let to = Screen::SettingsOf(SettingsPart::Vet);
        calls.push(Button::new("add-vet", words::ADD, Action::Go(to)).small());
    }
    calls
}

/// Returns the same as blocks.
pub(crate) fn blocks(view: &View) -> Blocks {
    let mut calls = calls(view);
    // A single one is as wide as its words.
    match (calls.pop(), calls.is_empty()) {
        (Some(only), true) => Blocks::new().button(only),
        (last, _) => Blocks::new().buttons(2, calls.into_iter().chain(last)),
    }
}

/// Says whether this text asks for a call.
pub(crate) fn is_said(text: &str) -> bool {
    SAYS.iter().any(|says| text.contains(says))
}

/// Says whether one of these blocks asks for a call.
pub(crate) fn says(blocks: &[Arc<Block>]) -> bool {
    blocks.iter().any(asks)
}

/// Puts the way to call to the first place that asks for it, on a page and on each sheet over it.
pub(crate) fn put(page: &mut Page, view: &View) {
    for blocks in std::iter::once(&mut page.blocks).chain(page.sheets.iter_mut().map(|one| &mut one.blocks)) {
        if says(blocks) && !offers(blocks) {
            insert(blocks, &self::blocks(view).into());
        }
    }
}

/// Says whether a way to call stands here already.
fn offers(blocks: &[Arc<Block>]) -> bool {
    blocks.iter().any(|block| {
        block.buttons().iter().any(|one| matches!(one.does, Action::Call(_)) || one.key == "add-vet")
            || block.inside().into_iter().any(|inside| offers(std::slice::from_ref(inside)))
    })
}

/// Puts blocks behind the first that asks for a call: inside what holds it, where there is room for a line.
fn insert(blocks: &mut Vec<Arc<Block>>, calls: &Vec<Arc<Block>>) {
    let Some(at) = blocks.iter().position(asks) else { return };
    let Some(block) = blocks.get_mut(at) else { return };
    let inside = match &mut Arc::make_mut(block).kind {
        Kind::Section(it) => Some(&mut it.inside),
        Kind::Fold(it) => Some(&mut it.inside),
        Kind::Notice(it) => Some(&mut it.inside),
        Kind::Card(it) => Some(&mut it.inside),
        Kind::Group(it) if stands_in_lines(it.shape) => Some(&mut it.inside),
        Kind::Rows(rows) => rows.iter_mut().find(|row| asks(row)).and_then(|row| room_of(row)),
        _ => None,
    };
    match inside {
        Some(inside) if says(inside) => insert(inside, calls),
        // A card says it above what stands inside, a row in its own words.
        Some(inside) => drop(inside.splice(0..0, calls.iter().cloned())),
        None => drop(blocks.splice(at + 1..=at, calls.iter().cloned())),
    }
}

/// What stands below a row's words; nothing at night, where a row is words alone.
fn room_of(row: &mut Arc<Block>) -> Option<&mut Vec<Arc<Block>>> {
    match &mut Arc::make_mut(row).kind {
        Kind::Row(row) if row.look == RowLook::Paper => Some(&mut row.inside),
        _ => None,
    }
}

/// Whether what a group holds stands in lines under each other.
const fn stands_in_lines(shape: Shape) -> bool {
    matches!(
        shape,
        Shape::Blocks | Shape::Shown | Shape::LaborDue | Shape::Living | Shape::NotLiving | Shape::HelpPart
    )
}

/// Says whether a block or one inside it asks for a call. What names a thing, and what was noted, asks for nothing.
fn asks(block: &Arc<Block>) -> bool {
    let said = |text: &Text| text.spans().iter().any(|span| is_said(&span.text));
    let own = match &block.kind {
        Kind::Group(it) if it.hidden => return false,
        Kind::Row(it) => [&it.kind, &it.text, &it.step, &it.says].into_iter().any(said),
        Kind::Line(it) => said(&it.text),
        Kind::List(it) => it.items.iter().any(|item| said(&item.text) || said(&item.note)),
        Kind::Caution(lines) => lines.iter().any(said),
        Kind::Empty(it) => said(&it.text),
        Kind::Checks(checks) => checks.iter().any(|check| said(&check.text)),
        Kind::DrawnButton(it) => is_said(&it.note),
        _ => false,
    };
    own || block.inside().into_iter().any(asks)
}
