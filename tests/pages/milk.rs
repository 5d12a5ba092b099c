//! The law of milk, over all screens and sheets: where anything comes before milk no press gives or notes milk, what is
//! offered in its place leads to what comes first, and what the lamb had all the same can be recorded, plainly.

use yeanling_core::book::{Event, LambId, Milk};
use yeanling_core::flock::Lamb;
use yeanling_core::watch::{BeforeMilk, DrawFrom, Hold, before_milk, dams_milk};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Button, Page, Screen, Sheet, Weight};

use crate::phone::Phone;
use crate::reach::{Pressable, pressables, reached, texts};

/// The keys of the buttons that do what a duty of milk asks, and of the one that leads to what comes before it.
const MILK: [&str; 6] = ["first-milk", "feed", "hollow", "day-total", "dam-dry", "before-milk"];

/// Says what of a page breaks the law.
pub(crate) fn broken(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let before = |lamb: LambId| before(phone, lamb);
    let mut wrong = Vec::new();
    for Pressable { name, does, .. } in pressables(page) {
        for (lamb, nursed, milk) in given(&does) {
            // The scale bears on the volume alone: a sheet may tell it by the old weight, and a lamb sucks what it wants.
            let bears = |first: BeforeMilk| {
                first != BeforeMilk::Weigh
                    || !nursed && matches!(does, Action::Note(_)) && page.sheets.is_empty()
            };
            if let Some(first) = before(lamb).filter(|first| bears(*first)) {
                wrong.push(format!(
                    "{name:?} notes milk for a lamb that must not have any: {first:?} comes first"
                ));
            }
            if milk == Some(Milk::DamColostrum) && draw_from(phone, lamb) == Some(DrawFrom::Neither) {
                wrong.push(format!("{name:?} gives milk of an udder that has none fit to be drawn"));
            }
        }
        if let Action::Ask(Sheet::Feed(lamb, volume, milk)) = &does {
            let first = before(*lamb).filter(|first| *first != BeforeMilk::Weigh);
            if let (Some(first), Some(_)) = (first, volume) {
                wrong.push(format!("{name:?} asks to give a volume, and {first:?} comes first"));
            }
            if *milk == Milk::DamColostrum && draw_from(phone, *lamb) == Some(DrawFrom::Neither) {
                wrong.push(format!("{name:?} begins with milk of an udder that has none fit to be drawn"));
            }
        }
    }
    for block in reached(page) {
        let of_row = match &block.kind {
            Kind::Row(row) => row.to.and_then(lamb_of),
            _ => None,
        };
        for button in block.buttons() {
            let on_page = lamb_of(screen).filter(|_| page.sheets.is_empty());
            let Some(lamb) = of_row.or(on_page) else { continue };
            let Some(first) = before(lamb) else { continue };
            let milk = MILK.contains(&button.key.as_ref()) && !button.off;
            if milk && !leads(lamb, first, &button.does) {
                wrong.push(format!("{:?} does not lead to {first:?}: {:?}", button.label, button.does));
            }
            if first != BeforeMilk::Weigh && gives(button, lamb) && button.weight == Weight::Filled {
                wrong.push(format!("{:?} is filled, and {first:?} comes first", button.label));
            }
        }
    }
    wrong.extend(record(phone, screen, page));
    wrong
}

fn before(phone: &Phone, lamb: LambId) -> Option<BeforeMilk> {
    let lamb = phone.flock.lamb(lamb).filter(|lamb| lamb.lives())?;
    before_milk(lamb, phone.now, &phone.flock.settings)
}

fn draw_from(phone: &Phone, lamb: LambId) -> Option<DrawFrom> {
    dams_milk(&phone.flock, phone.flock.lamb(lamb)?, phone.now)
}

/// Returns the lambs that a press notes milk for, whether it is that they sucked, and which milk else.
fn given(does: &Action) -> Vec<(LambId, bool, Option<Milk>)> {
    let (Action::Note(events) | Action::Answer(events)) = does else { return Vec::new() };
    let milk = events.iter().filter_map(|event| match event {
        Event::Fed { lamb, milk, .. } => Some((*lamb, false, Some(*milk))),
        Event::Sucked { lamb } => Some((*lamb, true, None)),
        _ => None,
    });
    milk.collect()
}

/// Says whether a button bears on feeding this lamb.
fn gives(button: &Button, lamb: LambId) -> bool {
    let asks = matches!(&button.does, Action::Ask(Sheet::Feed(of, ..)) if *of == lamb);
    asks || given(&button.does).iter().any(|(of, ..)| *of == lamb)
}

fn lamb_of(screen: Screen) -> Option<LambId> {
    match screen {
        // A lambing has several lambs, and its address only the first.
        Screen::Lamb(lamb) | Screen::IllLamb(lamb) | Screen::ColdLamb(Some(lamb)) => Some(lamb),
        _ => None,
    }
}

/// Says whether a press leads to what comes before milk.
fn leads(lamb: LambId, first: BeforeMilk, does: &Action) -> bool {
    match first {
        BeforeMilk::Hold(Hold::Belly { .. } | Hold::Mouth { .. }) | BeforeMilk::Ill | BeforeMilk::Look => {
            *does == Action::Go(Screen::IllLamb(lamb))
        }
        BeforeMilk::Hold(_) | BeforeMilk::Vet | BeforeMilk::Temperature => {
            *does == Action::Go(Screen::ColdLamb(Some(lamb)))
        }
        BeforeMilk::Weigh => *does == Action::Ask(Sheet::Weight(lamb)),
    }
}

/// What it had all the same can be recorded from its own page: on a sheet that says what comes first and that it is a record,
/// and whose way to what comes first is filled, not its save. Of one half of an udder it is said which.
fn record(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let mut wrong = Vec::new();
    let asked = |lamb: &Lamb| {
        let mut all = pressables(page).into_iter();
        all.any(|one| matches!(&one.does, Action::Ask(Sheet::Feed(of, None, _)) if *of == lamb.id))
    };
    if let Screen::Lamb(lamb) = screen
        && page.sheets.is_empty()
        && let Some(first) = before(phone, lamb).filter(|first| *first != BeforeMilk::Weigh)
        && !phone.flock.lamb(lamb).is_some_and(asked)
    {
        wrong.push(format!("{first:?} comes first, and what it had all the same cannot be recorded"));
    }
    let draft = phone.draft();
    let Some(Sheet::Feed(lamb, _, milk)) = draft.sheets.last().map(|open| &open.sheet) else { return wrong };
    let Some(sheet) = page.sheets.last() else { return wrong };
    let buttons: Vec<Button> = reached(page)
        .iter()
        .flat_map(|block| block.buttons().into_iter().cloned().collect::<Vec<_>>())
        .collect();
    let said = texts(page);
    if let Some(first) = before(phone, *lamb).filter(|first| *first != BeforeMilk::Weigh) {
        let filled: Vec<&Button> = buttons.iter().filter(|one| one.weight == Weight::Filled).collect();
        if filled.len() != 1 || !leads(*lamb, first, &filled[0].does) {
            wrong.push(format!(
                "on {:?} the one filled button does not lead to {first:?}: {filled:?}",
                sheet.title
            ));
        }
        if !said.iter().any(|text| text.contains("already had")) {
            wrong.push(format!("{:?} does not say that it is a record", sheet.title));
        }
    } else if *milk == Milk::DamColostrum && !said.iter().any(|text| text.contains("already had")) {
        let half = match draw_from(phone, *lamb) {
            Some(DrawFrom::Left) => "left half",
            Some(DrawFrom::Right) => "right half",
            Some(DrawFrom::Either | DrawFrom::Neither) | None => return wrong,
        };
        let chosen = draft.sheets.last().is_some_and(|open| open.fields.chosen("fed-milk").is_some());
        if !chosen && !said.iter().any(|text| text.contains(half)) {
            wrong.push(format!("{:?} does not say to draw the {half}", sheet.title));
        }
    }
    wrong
}
