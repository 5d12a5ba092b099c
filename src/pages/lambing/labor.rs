//! The ewe before the lamb: her clock with its job, what is seen as large buttons, help, the vet.
//!
//! What the job asks for stands on its card, and among the other buttons when there is none: each button once.

use yeanling_core::book::{Animal, Care, Event, EweId};
use yeanling_core::flock::{Ewe, Labor, Saw, Seen};
use yeanling_core::reckon::labor::{Needs, needs};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, EweTask, State, Task, Trouble, may_be_well};
use yeanling_words::common::{clock, span};
use yeanling_words::why::LaborClock;
use yeanling_words::{animals, danger, labor as words, watch as duty_words};

use super::{held, people};
use crate::block::{Buttons, Figure, Kind, Shape, Toggle};
use crate::draft::{Draft, Fields};
use crate::due_now::{self, snooze};
use crate::duty_ribbon::duty_ribbon;
use crate::page::{Blocks, why};
use crate::ribbon::{Pin, PinShape};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Sheet};

/// Whether something was awaited of her when her part was come to, or has fallen due since. That stands above the buttons.
/// What begins by a press on them comes below until it is due, so that none of them moves under the finger.
const WAS_DUE: &str = "labor-was-due";

/// Whether her udder, or whether she stands and eats, was to be looked at when her part was come to.
const AFTER_DUE: &str = "labor-after-due";

/// Her part is come to.
pub(super) fn look(view: &View, draft: &mut Draft, ewe: Option<EweId>) {
    let due = ewe.is_some_and(|ewe| first_due(view, ewe).is_some());
    draft.fields.choose(WAS_DUE, usize::from(due));
    let after = ewe.is_some_and(|ewe| !due_now::after_lambing(view, ewe).is_empty());
    draft.fields.choose(AFTER_DUE, usize::from(after));
}

/// Returns what is due for her after lambing: what stands above all else, since it was due when her part was come to, and what
/// stands below, since a press here made it due.
pub(super) fn after_lambing(view: &View, fields: &Fields, ewe: Option<EweId>) -> (Blocks, Blocks) {
    let due = ewe.map(|ewe| due_now::after_lambing(view, ewe)).unwrap_or_default();
    if fields.chosen(AFTER_DUE) == Some(1) { (due, Blocks::new()) } else { (Blocks::new(), due) }
}

/// Something is pressed: what stands above by then stays there, also once it was done.
pub(super) fn pressed(view: &View, draft: &mut Draft, ewe: EweId) {
    if first_due(view, ewe).is_some_and(|duty| is_due(view, duty)) {
        draft.fields.choose(WAS_DUE, 1);
    }
}

fn is_due(view: &View, duty: &Duty) -> bool {
    duty.state(view.now) > State::Coming
}

/// Returns her clock and its job, then the lamb's buttons with what is told of lambs that were found, then what is seen of her,
/// and what can be done.
pub(super) fn around(view: &View, fields: &Fields, id: EweId, (lamb, found): (Blocks, Blocks)) -> Blocks {
    let duty = first_due(view, id);
    let above = fields.chosen(WAS_DUE).map_or(duty.is_some(), |was_due| was_due == 1);
    let above = above || duty.is_some_and(|duty| is_due(view, duty));
    let ewe = view.flock.ewe(id);
    let task = duty.and_then(|duty| Some(LaborClock::of(duty)?.task));
    let on_card = if above { card_buttons(view, ewe, id, task) } else { Blocks::new() };
    let due = duty.map_or_else(Blocks::new, |duty| due_card(view, duty, id));
    let jobs: &[Job] = if above { &ON_CARD } else { &[] };
    let help = buttons("help-buttons", 2, help(view, ewe, id, jobs)).then(looked(view, (ewe, id), jobs));
    let seen = buttons("sign-buttons", 3, signs(ewe, id).then(shows(id)));
    let parts = lamb.then(found).section("signs", words::SIGNS_TITLE, seen);
    let parts = parts.section("help", words::HELP_TITLE, help).then(people());
    if !above {
        return parts.then(due);
    }
    // The way to call stands there from the first, and the buttons last: what comes in with a job would push them.
    let due = due.then(crate::vet::blocks(view)).then(on_card);
    Blocks::new().group("labor-due", Shape::LaborDue, due).then(parts)
}

fn buttons(key: &'static str, columns: u8, inside: Blocks) -> Blocks {
    held(key, |inside| Kind::Buttons(Buttons { columns, inside }), inside)
}

/// All that can be seen of her, each with the time it was seen.
fn signs(ewe: Option<&Ewe>, id: EweId) -> Blocks {
    let blocks = words::SIGNS.into_iter().fold(Blocks::new(), |blocks, sign| {
        let event = Event::SignSeen { ewe: id, sign };
        let key = format!("sign-{sign:?}").to_lowercase();
        seen(blocks, key.into(), words::sign(sign), (ewe, Saw::Sign(sign)), event)
    });
    let waters = Event::WaterBagSeen { ewe: id };
    let blocks = seen(blocks, "waters".into(), words::WATERS, (ewe, Saw::WaterBag), waters);
    let straining = Event::StrainingSeen { ewe: id };
    seen(blocks, "straining".into(), words::STRAINING, (ewe, Saw::Straining), straining)
}

fn shows(id: EweId) -> Blocks {
    Blocks::new().button(Button::new("shows", words::SHOWS, Action::Ask(Sheet::Part(id))))
}

/// What can be done for a ewe at work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Job {
    Look,
    Hand,
    PutRight,
    Vet,
    Said,
}

/// What stands on the card of her clock, whatever it asks for: none of it moves when that changes.
const ON_CARD: [Job; 3] = [Job::Hand, Job::Vet, Job::Look];

/// What a duty asks for first.
const fn first_job(task: EweTask) -> Job {
    match task {
        EweTask::Look => Job::Look,
        EweTask::LongRestless | EweTask::HandCheck { .. } | EweTask::Progress | EweTask::NextLamb { .. } => {
            Job::Hand
        }
        EweTask::CervixClosed
        | EweTask::PutRight { .. }
        | EweTask::Afterbirth { .. }
        | EweTask::Udder { .. }
        | EweTask::Settled
        | EweTask::LetOut
        | EweTask::Ill { .. }
        | EweTask::IllLook { .. } => Job::Vet,
    }
}

/// The buttons beneath her clock, filled the one that it asks for.
fn card_buttons(view: &View, ewe: Option<&Ewe>, id: EweId, task: Option<EweTask>) -> Blocks {
    let first = task.map(first_job);
    let jobs = ON_CARD
        .into_iter()
        .fold(Blocks::new(), |blocks, one| job(blocks, view, (ewe, id), one, first == Some(one)));
    buttons("due-buttons", 3, jobs)
}

/// Adds the button of a job.
fn job(blocks: Blocks, view: &View, (ewe, id): (Option<&Ewe>, EweId), job: Job, filled: bool) -> Blocks {
    let animal = Animal::Ewe(id);
    match job {
        Job::Look => {
            let well = may_be_well(view.duties.iter(), animal, view.now);
            let off = ewe.is_none_or(|ewe| ewe.labor.is_none());
            blocks
                .button(Button::new("looked", words::looked(well), look_at(id)).filled_if(filled).off_if(off))
        }
        Job::Hand => {
            let hand = Action::Ask(Sheet::Hand(id));
            blocks.button(Button::new("hand", words::HAND, hand).filled_if(filled))
        }
        Job::PutRight => {
            let put_right = Event::Care(Care::PutRight { ewe: id });
            seen(blocks, "put-right".into(), danger::PUT_RIGHT, (ewe, Saw::PutRight), put_right)
        }
        Job::Vet => {
            // Each call counts, so it is no mark that a second tap takes back.
            let last = ewe.and_then(|ewe| ewe.vet.last()).map(|call| call.at);
            let called = words::vet_called(last.filter(|at| view.now.since(*at) < TimeDelta::hours(24)));
            let call = Action::Note(vec![Event::VetCalled { animal }]);
            blocks.button(Button::new("vet", called, call).filled_if(filled))
        }
        Job::Said => blocks.button(Button::new("said", danger::SAID, Action::Ask(Sheet::Vet(animal)))),
    }
}

/// What can be done for her beside the job on the card.
fn help(view: &View, ewe: Option<&Ewe>, id: EweId, on_card: &[Job]) -> Blocks {
    let helping = Event::HelpBegun { ewe: id };
    let blocks = seen(Blocks::new(), "helping".into(), words::HELP, (ewe, Saw::Help), helping);
    let others = [Job::Hand, Job::PutRight, Job::Vet, Job::Said].into_iter();
    let others = others.filter(|job| !on_card.contains(job));
    others.fold(blocks, |blocks, one| job(blocks, view, (ewe, id), one, false))
}

/// Of a ewe at work: someone looked, or she is not lambing after all. Before that both keep their room.
fn looked(view: &View, (ewe, id): (Option<&Ewe>, EweId), on_card: &[Job]) -> Blocks {
    let off = ewe.is_none_or(|ewe| ewe.labor.is_none());
    let not = Action::Note(vec![Event::NotLambing { ewe: id }]);
    let not = Button::new("not-lambing", words::NOT_LAMBING, not).quiet().off_if(off);
    let well = may_be_well(view.duties.iter(), Animal::Ewe(id), view.now);
    let looked = Button::new("looked", words::looked(well), look_at(id)).off_if(off);
    let look = Some(looked).filter(|_| !on_card.contains(&Job::Look));
    buttons("looked-buttons", 2, look.into_iter().fold(Blocks::new(), Blocks::button).button(not))
}

fn look_at(id: EweId) -> Action {
    Action::Note(vec![Event::LookedAt { animal: Animal::Ewe(id) }])
}

/// The most urgent duty of this ewe.
fn first_due<'a>(view: &'a View, id: EweId) -> Option<&'a Duty> {
    // What waits until she has lambed has a place of its own.
    let after = |task: EweTask| matches!(task, EweTask::LetOut | EweTask::Udder { .. } | EweTask::Settled);
    let of_her = |duty: &&Duty| matches!(duty.task, Task::Ewe(ewe, task) if ewe == id && !after(task));
    view.duties.iter().find(of_her)
}

/// Her clock and its job: how long, what to do, the ribbon, and the buttons that do it.
fn due_card(view: &View, duty: &Duty, id: EweId) -> Blocks {
    let now = view.now;
    let (Some(ewe), Some(reason)) = (view.flock.ewe(id), LaborClock::of(duty)) else { return Blocks::new() };
    let long = now.since(duty.since) >= TimeDelta::minutes(1);
    let figure = Figure {
        value: if long { span(now.since(duty.since)) } else { words::UNDER_A_MINUTE.to_owned() },
        also: words::since(ewe.saw_at(duty.since), &clock(duty.since)),
        ..Figure::default()
    };
    let inside =
        Blocks::new()
            .add("due-since", Kind::Figure(figure))
            .lead(duty_words::task(duty.task, view.system()))
            .add("due-ribbon", Kind::Ribbon(duty_ribbon(duty, now, false, &pins(ewe))))
            .remark(
                duty_words::when(duty, now),
                std::iter::once(why(duty_words::why_title(reason.task), Reason::Labor(reason)))
                    .chain(snooze(view, duty, &animals::ewe(ewe))),
            );
    let inside = match reason.task {
        EweTask::PutRight { trouble: Trouble::Lies(lie) } if needs(lie) == Needs::Vet => {
            inside.caution([words::what_to_do(lie)])
        }
        EweTask::PutRight { trouble: Trouble::Lies(lie) } => inside.text(words::what_to_do(lie)),
        EweTask::Look
        | EweTask::LongRestless
        | EweTask::HandCheck { .. }
        | EweTask::Progress
        | EweTask::CervixClosed
        | EweTask::PutRight { trouble: Trouble::Shows(_) | Trouble::Helped }
        | EweTask::NextLamb { .. }
        | EweTask::Afterbirth { .. }
        | EweTask::Udder { .. }
        | EweTask::Settled
        | EweTask::LetOut
        | EweTask::Ill { .. }
        | EweTask::IllLook { .. } => inside,
    };
    Blocks::new().card("due", inside)
}

/// What was seen of her, as pins.
fn pins(ewe: &Ewe) -> Vec<(Moment, Pin)> {
    let pin = |seen: &Seen| {
        let shape = match seen.what {
            Saw::Look => PinShape::Bar,
            Saw::Check(_) | Saw::Help | Saw::PutRight | Saw::Vet => PinShape::Dot,
            Saw::Sign(_)
            | Saw::WaterBag
            | Saw::Straining
            | Saw::Part(_)
            | Saw::NotLambing
            | Saw::Awaited(_)
            | Saw::Afterbirth => PinShape::Ring,
        };
        (seen.at, Pin { at: 0.0, shape, title: words::saw_at(seen.what, seen.at) })
    };
    ewe.seen.iter().map(pin).collect()
}

/// Something seen in this labor, or not: a tap notes it, another takes it back.
fn seen(blocks: Blocks, key: Key, label: &str, (ewe, what): (Option<&Ewe>, Saw), event: Event) -> Blocks {
    let noted = ewe.and_then(|ewe| {
        let labor = ewe.labor.as_ref()?;
        let last = ewe.seen.iter().rev().find(|seen| seen.what == what)?;
        in_labor(labor, what, last.at).then_some((last.entry, last.at))
    });
    let event = noted.map_or(event, |(entry, _)| Event::Deleted { entry });
    let note = noted.map(|(_, at)| clock(at)).unwrap_or_default();
    let does = Action::Note(vec![event]);
    let label = label.to_owned();
    blocks.add(key, Kind::Toggle(Toggle { label, pressed: noted.is_some(), note: Some(note), does }))
}

/// Says whether something seen then is part of this labor.
fn in_labor(labor: &Labor, what: Saw, at: Moment) -> bool {
    match what {
        Saw::Sign(sign) => labor.signs.contains(&(at, sign)),
        Saw::WaterBag => labor.waters.is_some_and(|first| first <= at),
        Saw::Straining => labor.straining.is_some_and(|first| first <= at),
        Saw::Help => labor.help.contains(&at),
        Saw::PutRight => labor.put_right.contains(&at),
        Saw::Part(_)
        | Saw::Check(_)
        | Saw::Vet
        | Saw::Look
        | Saw::NotLambing
        | Saw::Awaited(_)
        | Saw::Afterbirth => false,
    }
}
