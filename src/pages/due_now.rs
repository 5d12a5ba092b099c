//! What is due for one animal, on its own page: every answer to it, and until when it may wait. On the Watch stands one
//! button; all others are here.

use yeanling_core::book::{Animal, EweId};
use yeanling_core::watch::{Duty, EweTask, LambTask, State, Task, hold_milk, may_be_well};
use yeanling_words::{animals, danger, watch as words};

use crate::block::{Row, RowLook};
use crate::page::Blocks;
use crate::view::View;
use crate::watch::{act, answers};
use crate::{Action, Button, Sheet, vet};

/// Returns what is due for an animal; nothing when nothing is. A lamb's danger has a place of its own.
pub(crate) fn blocks(view: &View, animal: Animal) -> Blocks {
    let due = view.duties.iter().filter(|duty| {
        let danger = matches!(duty.task, Task::Lamb(_, LambTask::Danger(_)));
        duty.subject() == animal && duty.state(view.now) > State::Coming && !danger
    });
    section(view, animal, due, "due-now", words::DUE)
}

/// Returns what is due for a ewe once she has lambed: her udder, and that she stands and eats; nothing when neither is.
pub(crate) fn after_lambing(view: &View, ewe: EweId) -> Blocks {
    let due = view.duties.iter().filter(|duty| {
        let after = matches!(duty.task, Task::Ewe(of, EweTask::Udder { .. } | EweTask::Settled) if of == ewe);
        after && duty.state(view.now) > State::Coming
    });
    section(view, Animal::Ewe(ewe), due, "after-lambing", words::AFTER_LAMBING)
}

fn section<'a>(
    view: &View,
    animal: Animal,
    due: impl Iterator<Item = &'a Duty>,
    key: &'static str,
    title: &'static str,
) -> Blocks {
    let due: Vec<&Duty> = due.collect();
    let calls = due.iter().any(|duty| vet::is_said(&words::task(duty.task, view.system())));
    let rows = due.iter().map(|duty| (format!("due-{}", duty.task.kind()), row(view, animal, duty)));
    let rows = Blocks::new().rows(format!("{key}-rows"), rows);
    let calls = if calls { vet::blocks(view) } else { Blocks::new() };
    Blocks::new().section(key, title, rows.then(calls))
}

fn row(view: &View, animal: Animal, duty: &Duty) -> Row {
    let name = animals::animal(view.flock, animal);
    let well = may_be_well(view.duties.iter(), animal, view.now);
    let main = act(duty, well, view.system()).button(&name);
    let more = match duty.task {
        Task::Ewe(ewe, task) => answers(ewe, task),
        Task::Lamb(..) => Vec::new(),
    };
    let more = more.iter().map(|answer| answer.button(&name).quiet());
    let called = duty.vet.as_ref().map(danger::called);
    let task = words::task(duty.task, view.system()).replace('*', "");
    Row::new(task)
        .look(RowLook::Alone(ground(view, animal, duty)))
        .kind(called.unwrap_or_default())
        .says(duty.state(view.now).into(), words::need(duty, None, view.now))
        .action(main)
        .others(more.chain(snooze(view, duty, &name)))
}

/// What no life hangs on is late without a red ground, as on the Watch; so is what a hold keeps back, which stands above.
fn ground(view: &View, animal: Animal, duty: &Duty) -> crate::State {
    let held = match animal {
        Animal::Lamb(lamb) => view.flock.lamb(lamb).and_then(hold_milk).is_some(),
        Animal::Ewe(_) => false,
    };
    let state = crate::State::from(duty.state(view.now));
    if state == crate::State::Late && (held || duty.task.weight() > 1) { crate::State::Now } else { state }
}

/// Puts it off, to its red limit and no further; a danger waits for nothing.
pub(crate) fn snooze(view: &View, duty: &Duty, whose: &str) -> Option<Button> {
    let waits = matches!(duty.state(view.now), State::Now | State::Late);
    let ask = Action::Ask(Sheet::Later(Box::new(duty.clone())));
    let name = format!("{}, {whose}", words::LATER);
    waits.then(|| Button::new("later", words::LATER, ask).named(name).quiet())
}
