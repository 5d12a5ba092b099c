//! It is not right: one lamb, what is seen of it, and the answer. A cold lamb goes on in Cold lamb.

use yeanling_core::book::{Animal, Event, Illness, LambId};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::body_temperature::warm_enough_to_feed;
use yeanling_core::reckon::illness::lamb::{self as table, Case, Check, Row};
use yeanling_core::terms::{Gate, LambSign, Mouth, Suck};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Course, Hold, hold_milk, lamb_case, lamb_illness};
use yeanling_words::illness::{self as words, lamb as of_lamb};
use yeanling_words::{animals, danger, frame};

use super::answer::{self, Told};
use super::ask::{self, answered, forget, gate, more_key, pressed};
use super::{Does, card, place};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::watch::spread_notice;
use crate::{Action, Button, Effect, Screen, Sheet};

const GATES: [(&str, Check); 3] =
    [("head-up", Check::HeadUp), ("swallows", Check::Swallows), ("warm", Check::Warm)];

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft, id: LambId) -> Page {
    let back = Screen::Lamb(id);
    let Some(lamb) = view.flock.lamb(id) else {
        return Page::new(frame::NOT_HERE).back(Screen::NotRight, words::TITLE).blocks(Blocks::new().gone());
    };
    let name = animals::lamb(view.flock, lamb);
    let page = Page::new(of_lamb::NOT_RIGHT).back(back, name.clone()).under(name);
    if !lamb.lives() {
        return page.blocks(spread_notice(view, Animal::Lamb(lamb.id)).then(dead()));
    }
    let asked_more = draft.fields.chosen(&more_key(Animal::Lamb(lamb.id))) == Some(1);
    match lamb_illness(lamb, view.now).filter(|_| !asked_more) {
        Some(course) => {
            page.blocks(spread_notice(view, Animal::Lamb(lamb.id)).then(told(view, lamb, &course)))
        }
        None => page.blocks(asked(view, &draft.fields, lamb)).thumb(see_button(lamb.id)),
    }
}

/// What is done with a lamb that was found dead.
fn dead() -> Blocks {
    let row = of_lamb::row(Row::FoundDead);
    let inside = row.until.iter().chain(row.may_be).fold(Blocks::new(), |blocks, line| blocks.text(*line));
    Blocks::new().section("ill-dead", row.name, inside.remark(row.tells, [])).small(words::HELPS)
}

fn see_button(id: LambId) -> Blocks {
    let see = Action::Does(crate::Does::Illness(Does::Lamb(id)));
    Blocks::new().button(Button::new("ill-see", words::ANSWER, see).big().filled())
}

/// How long what a finger or a thermometer said of its warmth, and a try of its swallow, is taken as answered (ours).
const KNOWN: TimeDelta = TimeDelta::minutes(20);

/// What was felt, read or tried just now is asked no second time.
fn known(view: &View, lamb: &Lamb, check: Check) -> Gate {
    let fresh = |at: Moment| view.now.since(at) < KNOWN;
    let gate = |good: bool| if good { Gate::Good } else { Gate::Bad };
    let read = lamb.temperatures.last().filter(|read| fresh(read.at));
    let felt = lamb.mouth.last().filter(|felt| fresh(felt.at));
    let tried = lamb.swallow.last().filter(|(at, able)| *able && fresh(*at));
    let known = match (check, felt) {
        (Check::Warm, Some(felt)) if read.is_none_or(|read| read.at < felt.at) => match felt.mouth {
            Mouth::Warm => Some(Gate::Good),
            Mouth::Cold => Some(Gate::Bad),
            Mouth::Cool => None,
        },
        (Check::Warm, _) => read.map(|read| gate(warm_enough_to_feed(read.temperature))),
        (Check::Swallows, Some(felt)) => match felt.suck {
            Suck::Strong => Some(Gate::Good),
            Suck::None => Some(Gate::Bad),
            Suck::Weak => None,
        },
        (Check::HeadUp | Check::Swallows, _) => tried.map(|_| Gate::Good),
    };
    known.unwrap_or(Gate::NotChecked)
}

fn asked(view: &View, fields: &Fields, lamb: &Lamb) -> Blocks {
    let animal = Animal::Lamb(lamb.id);
    let gates = GATES.iter().fold(Blocks::new(), |blocks, (what, check)| {
        blocks.then(gate(fields, what, of_lamb::check(*check), (animal, known(view, lamb, *check))))
    });
    let breathes = LambSign::NotBreathing;
    let others = |sign: &LambSign| !sign.is_good_news() && *sign != breathes;
    let bad = LambSign::ALL.into_iter().filter(others);
    let good = LambSign::ALL.into_iter().filter(|sign| sign.is_good_news());
    let mouth = Button::new("ill-mouth", danger::MOUTH, Action::Ask(Sheet::Mouth(lamb.id)));
    let hands = said(lamb, |_, signs| signs.push(breathes));
    let hands = Button::new("ill-not-breathing", of_lamb::NOT_BREATHING, Action::Note(vec![hands]));
    Blocks::new()
        .button(hands)
        .section("ill-first", words::FIRST, gates.button(mouth))
        .section(
            "ill-seen",
            words::SEEN,
            Blocks::new().remark(words::SEEN_HINT, []).then(ask::by_place(
                fields,
                animal,
                bad,
                place::of_lamb,
                of_lamb::sign,
            )),
        )
        .section("ill-good", words::GOOD, ask::signs(fields, animal, good, of_lamb::sign))
        .small(words::HELPS)
}

/// Notes what is seen.
pub(super) fn see(view: &View, draft: &mut Draft, id: LambId) -> Vec<Effect> {
    let animal = Animal::Lamb(id);
    let Some(lamb) = view.flock.lamb(id) else { return Vec::new() };
    let [head_up, swallows, warm] =
        GATES.map(|(what, check)| answered(&draft.fields, what, (animal, known(view, lamb, check))));
    let signs = pressed(&draft.fields, animal, &LambSign::ALL);
    let seen = Illness::LambSeen { lamb: id, head_up, swallows, warm, signs };
    let mut effects = draft.note(view, vec![view.noting(Event::Illness(seen))]);
    if !effects.is_empty() {
        // The answer is read from its top.
        effects.push(Effect::Show("title".into()));
        forget(&mut draft.fields, animal, &["head-up", "swallows", "warm"], &LambSign::ALL);
    }
    effects
}

/// One thing said of it alone.
fn said(lamb: &Lamb, change: impl FnOnce(&mut [Gate; 3], &mut Vec<LambSign>)) -> Event {
    let (mut gates, mut signs) = ([Gate::NotChecked; 3], Vec::new());
    change(&mut gates, &mut signs);
    let [head_up, swallows, warm] = gates;
    Event::Illness(Illness::LambSeen { lamb: lamb.id, head_up, swallows, warm, signs })
}

fn told(view: &View, lamb: &Lamb, course: &Course<Row, Check>) -> Blocks {
    let case = lamb_case(lamb, view.now, None);
    let checks = course.answer.check_now.iter().map(|check| {
        let place = GATES.iter().position(|(_, gate)| gate == check).unwrap_or(0);
        let events =
            [Gate::Good, Gate::Bad, Gate::CannotCheck].map(|gate| said(lamb, |gates, _| gates[place] = gate));
        (of_lamb::check(*check), events)
    });
    let answer = &course.answer;
    let seen = seen(&case);
    answer::blocks(Told {
        animal: Animal::Lamb(lamb.id),
        urgency: course.urgency,
        no_better: answer.no_better,
        look_again: course.look_again(),
        called: course.called.as_ref(),
        rows: answer.rows.iter().map(|found| of_lamb::row(found.row)).collect(),
        hands: answer.has(Row::NotBreathing).then_some(&of_lamb::BREATHE[..]),
        nothing_by_mouth: answer.nothing_by_mouth,
        down: false,
        rears: false,
        checks: checks.collect(),
        good: good(lamb, &case),
        card: card::of_lamb(view, lamb, &seen),
        ways: ways(lamb, course),
    })
}

/// A cold lamb goes on in Cold lamb; milk that belly or chin holds back waits for the vet's word.
fn ways(lamb: &Lamb, course: &Course<Row, Check>) -> Vec<Button> {
    let mut ways = Vec::new();
    if course
        .answer
        .rows
        .iter()
        .any(|found| matches!(found.row, Row::ColdYoung | Row::ColdOlder | Row::NoSwallow))
    {
        let cold = Action::Go(Screen::ColdLamb(Some(lamb.id)));
        ways.push(Button::new("ill-cold", danger::STEPS, cold).filled());
    }
    ways.extend(milk_allowed(lamb));
    ways
}

/// The button with which the vet's word is noted, while belly, chin or mouth holds milk back.
pub(crate) fn milk_allowed(lamb: &Lamb) -> Option<Button> {
    let allowed = Event::Illness(Illness::MilkAllowed { lamb: lamb.id });
    let button = Button::new("ill-milk", words::MILK_ALLOWED, Action::Note(vec![allowed]));
    let vets = matches!(hold_milk(lamb), Some(Hold::Belly { .. } | Hold::Mouth { .. }))
        || lamb.belly_or_chin().is_some();
    vets.then_some(button)
}

fn seen(case: &Case) -> Vec<&'static str> {
    let gates = [(case.head_up, "head down"), (case.swallows, "no suck or swallow"), (case.warm, "cold")];
    let bad = gates.into_iter().filter(|(gate, _)| gate.is_bad()).map(|(_, bad)| bad);
    bad.chain(case.signs.iter().map(|sign| of_lamb::sign(*sign))).collect()
}

/// Good news that would make it less urgent, were it so.
fn good(lamb: &Lamb, case: &Case) -> Vec<(&'static str, Event)> {
    let now = table::decide(case).urgency;
    let lowers = |sign: &LambSign| {
        let mut with = case.clone();
        with.signs.push(*sign);
        table::decide(&with).urgency < now
    };
    let all = LambSign::ALL.into_iter().filter(|sign| sign.is_good_news() && !case.signs.contains(sign));
    let event = |sign: LambSign| said(lamb, |_, signs| signs.push(sign));
    all.filter(lowers).map(|sign| (of_lamb::sign(sign), event(sign))).collect()
}
