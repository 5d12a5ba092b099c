//! A lamb that was given to the wrong ewe: which ewe it is of, what goes along, and one press that puts it all right.

use yeanling_core::book::{Animal, EweId, LambId};
use yeanling_core::flock::GoesAlong;
use yeanling_words::common::day_and_clock;
use yeanling_words::{animals, lamb as words, noted};

use crate::block::{Choice, Choices, Item, ListLook};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::sheets::ewe_picker::{self, Picker, Then};
use crate::view::View;
use crate::{Action, Button, Effect};

/// The right ewe, once she was picked.
const RIGHT: &str = "dam-right";
/// Whether the whole litter goes, or this lamb alone.
const LITTER: &str = "dam-litter";
/// Whether what was noted of the wrong ewe goes along.
const NOTED: &str = "dam-noted";

/// Returns the sheet: it picks the right ewe, then asks what goes along.
pub(crate) fn sheet(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let blocks = match right(view, fields) {
        Some(right) => confirm(view, fields, lamb, right),
        None => {
            let without = view.flock.lamb(lamb).and_then(|lamb| lamb.dam);
            let born = view.flock.lamb(lamb).map(|lamb| lamb.born);
            let picker =
                Picker { on_page: false, unknown: false, lambed_first: true, without, rears: false, born };
            ewe_picker::blocks(view, fields, picker, |picked| Then::IsKept(RIGHT.into()).picked(picked))
        }
    };
    SheetPage::new(words::RIGHT_EWE_ASK, blocks).whose(animals::animal(view.flock, Animal::Lamb(lamb)))
}

/// Returns the ewe that was picked, while she is in the book.
fn right(view: &View, fields: &Fields) -> Option<EweId> {
    ewe_picker::kept(fields, RIGHT).filter(|ewe| view.flock.ewe(*ewe).is_some())
}

fn confirm(view: &View, fields: &Fields, lamb: LambId, right: EweId) -> Blocks {
    let flock = view.flock;
    let name = |ewe: Option<EweId>| ewe.map(|ewe| animals::ewe_of(flock, ewe)).unwrap_or_default();
    let (from, to) = (name(flock.lamb(lamb).and_then(|lamb| lamb.dam)), name(Some(right)));
    let mut blocks = Blocks::new().text(words::from_to(&from, &to));
    let lambs = flock.litter_of(lamb).map_or(1, |litter| litter.lambs.len());
    if lambs > 1 {
        let which = [words::all_go(lambs), words::one_goes(&animals::lamb_of(flock, lamb))];
        blocks = blocks.choices(LITTER, two(words::WHICH_GO, which, LITTER, fields));
    }
    let lines: Vec<Item> = flock
        .noted_at_lambing(lamb)
        .into_iter()
        .map(|line| {
            let noted = noted::line(&line.event, flock, view.system());
            Item::new(words::noted_then(&day_and_clock(line.at, view.now), &noted))
        })
        .collect();
    if !lines.is_empty() {
        let whose = [words::was_her(&to), words::stays_with(&from)];
        blocks = blocks
            .choices(NOTED, two(&words::noted_of(&from), whose, NOTED, fields))
            .list(ListLook::Readings, lines);
    }
    let another = Action::Type(RIGHT.into(), String::new());
    blocks
        .button(Button::new("another", words::ANOTHER_EWE, another).quiet())
        .button(Button::new("save", words::move_to(&to), Action::Save).filled())
}

/// Two answers, the first until the other is chosen.
fn two(label: &str, names: [String; 2], key: &'static str, fields: &Fields) -> Choices {
    let options = names.into_iter().enumerate();
    let options = options.map(|(place, name)| Choice::new(name, Action::Choose(key.into(), place))).collect();
    Choices::new(label, options, Some(fields.chosen(key).unwrap_or(0))).labelled()
}

/// One lamb of several says little of who was seen to lamb; and who was picked is looked for no longer.
pub(crate) fn typed(key: &str, fields: &mut Fields) {
    match key {
        LITTER => {
            let place = fields.chosen(LITTER).unwrap_or(0);
            fields.choose(NOTED, place);
        }
        RIGHT => fields.forget(ewe_picker::FIND),
        _ => {}
    }
}

/// Gives the lamb to the right ewe, with what goes along.
pub(crate) fn save(view: &View, draft: &mut Draft, lamb: LambId) -> Vec<Effect> {
    let fields = draft.top();
    let Some(right) = right(view, fields) else { return Vec::new() };
    let goes = |key| fields.chosen(key).unwrap_or(0) == 0;
    let along = GoesAlong { litter: goes(LITTER), noted: goes(NOTED) };
    let right: Vec<Noting> =
        view.flock.given_to(lamb, right, along).into_iter().map(|event| view.noting(event)).collect();
    if right.is_empty() {
        draft.close();
        return Vec::new();
    }
    draft.answer(view, right)
}
