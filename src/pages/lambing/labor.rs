//! The ewe before the lamb: what is due for her now, the signs as large buttons, the clean hand, the vet.

use yeanling_core::book::{Animal, Care, Event, EweId};
use yeanling_core::flock::{Ewe, Labor, Saw, Seen};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, EweTask, Task, Trouble, may_be_well};
use yeanling_words::common::{clock, span};
use yeanling_words::why::LaborClock;
use yeanling_words::{danger, labor as words, watch as duty_words};

use super::held;
use crate::block::{Buttons, Figure, Kind, Shape, Toggle};
use crate::draft::{Draft, Fields};
use crate::duty_ribbon::duty_ribbon;
use crate::page::{Blocks, why};
use crate::ribbon::{Pin, PinShape};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Sheet};

/// Whether something was due for her when her part was come to. That stands above the buttons. What begins by a press on
/// them comes below, so that none of them moves under the finger.
const WAS_DUE: &str = "labor-was-due";

/// Her part is come to.
pub(super) fn look(view: &View, draft: &mut Draft, ewe: Option<EweId>) {
    let due = ewe.is_some_and(|ewe| first_due(view, ewe).is_some());
    draft.fields.choose(WAS_DUE, usize::from(due));
}

/// Returns what was seen of a ewe, and what it asks for.
pub(super) fn blocks(view: &View, fields: &Fields, id: EweId) -> Blocks {
    let due = first_due(view, id).map(|duty| due_card(view, duty, id)).unwrap_or_default();
    let above = fields.chosen(WAS_DUE).map_or(!due.is_empty(), |was_due| was_due == 1);
    let ewe = view.flock.ewe(id);
    let labor = buttons("labor-buttons", in_labor_now(view, ewe, id)).then(looked(view, ewe));
    let parts = Blocks::new()
        .section("signs", words::SIGNS_TITLE, buttons("sign-buttons", signs(ewe, id)))
        .section("labor", words::LABOR_TITLE, labor);
    if above { Blocks::new().group("labor-due", Shape::LaborDue, due).then(parts) } else { parts.then(due) }
}

fn buttons(key: &'static str, inside: Blocks) -> Blocks {
    held(key, |inside| Kind::Buttons(Buttons { columns: 2, inside }), inside)
}

fn signs(ewe: Option<&Ewe>, id: EweId) -> Blocks {
    words::SIGNS.into_iter().fold(Blocks::new(), |blocks, sign| {
        let event = Event::SignSeen { ewe: id, sign };
        let key = format!("sign-{sign:?}").to_lowercase();
        seen(blocks, key.into(), words::sign(sign), (ewe, Saw::Sign(sign)), event)
    })
}

fn in_labor_now(view: &View, ewe: Option<&Ewe>, id: EweId) -> Blocks {
    let animal = Animal::Ewe(id);
    // Each call counts, so it is no mark that a second tap takes back.
    let last = ewe.and_then(|ewe| ewe.vet.last()).map(|call| call.at);
    let called = words::vet_called(last.filter(|at| view.now.since(*at) < TimeDelta::hours(24)));
    let call = Action::Note(vec![Event::VetCalled { animal }]);
    let put_right = Event::Care(Care::PutRight { ewe: id });
    let blocks = Blocks::new();
    let blocks =
        seen(blocks, "waters".into(), words::WATERS, (ewe, Saw::WaterBag), Event::WaterBagSeen { ewe: id });
    let blocks = seen(
        blocks,
        "straining".into(),
        words::STRAINING,
        (ewe, Saw::Straining),
        Event::StrainingSeen { ewe: id },
    )
    .button(Button::new("shows", words::SHOWS, Action::Ask(Sheet::Part(id))))
    .button(Button::new("hand", words::HAND, Action::Ask(Sheet::Hand(id))));
    let blocks = seen(blocks, "helping".into(), words::HELP, (ewe, Saw::Help), Event::HelpBegun { ewe: id });
    seen(blocks, "put-right".into(), danger::PUT_RIGHT, (ewe, Saw::PutRight), put_right)
        .button(Button::new("vet", called, call))
        .button(Button::new("said", danger::SAID, Action::Ask(Sheet::Vet(animal))))
}

/// Of a ewe at work: someone looked, or she is not lambing after all.
fn looked(view: &View, ewe: Option<&Ewe>) -> Blocks {
    let Some(ewe) = ewe.filter(|ewe| ewe.labor.is_some()) else { return Blocks::new() };
    let animal = Animal::Ewe(ewe.id);
    let well = may_be_well(view.duties.iter(), animal, view.now);
    let looked = Action::Note(vec![Event::LookedAt { animal }]);
    let not = Action::Note(vec![Event::NotLambing { ewe: ewe.id }]);
    let not = Button::new("not-lambing", words::NOT_LAMBING, not).quiet();
    Blocks::new().buttons(2, [Button::new("looked", words::looked(well), looked), not])
}

/// The most urgent duty of this ewe.
fn first_due<'a>(view: &'a View, id: EweId) -> Option<&'a Duty> {
    let of_her =
        |duty: &&Duty| matches!(duty.task, Task::Ewe(ewe, task) if ewe == id && task != EweTask::LetOut);
    view.duties.iter().find(of_her)
}

/// What is due, large, with its reasons.
fn due_card(view: &View, duty: &Duty, id: EweId) -> Blocks {
    let now = view.now;
    let (Some(ewe), Some(clock)) = (view.flock.ewe(id), LaborClock::of(duty)) else { return Blocks::new() };
    let since = (now.since(duty.since) >= TimeDelta::minutes(1)).then(|| span(now.since(duty.since)));
    let figure = Figure {
        also: since.as_ref().map(|_| words::SO_FAR.to_owned()).unwrap_or_default(),
        value: since.unwrap_or_else(|| words::JUST_BEGUN.to_owned()),
        buttons: vec![why(duty_words::why_title(clock.task), Reason::Labor(clock))],
        ..Figure::default()
    };
    let inside = Blocks::new()
        .remark(duty_words::task(duty.task, view.system()), [])
        .add("due-since", Kind::Figure(figure))
        .add("due-ribbon", Kind::Ribbon(duty_ribbon(duty, now, false, &pins(ewe))))
        .remark(words::counted(ewe.saw_at(duty.since), duty, now), []);
    let inside = match clock.task {
        EweTask::PutRight { trouble: Trouble::Lies(lie) } => inside.caution([words::what_to_do(lie)]),
        EweTask::Look
        | EweTask::LongRestless
        | EweTask::HandCheck { .. }
        | EweTask::Progress
        | EweTask::NeckTight
        | EweTask::PutRight { trouble: Trouble::Shows(_) | Trouble::Helped }
        | EweTask::NextLamb { .. }
        | EweTask::Afterbirth { .. }
        | EweTask::LetOut => inside,
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
    let event = noted.map_or(event, |(entry, _)| Event::Struck { entry });
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
