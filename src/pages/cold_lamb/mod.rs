//! The cold lamb: at most four taps from the thermometer to what to do, in order, for a lamb with a record or without.
//!
//! Every answer is kept as it is given, in the book or on this phone, so that the aid goes on where it was left.

mod answer;
mod ask;
mod case;
mod does;
mod kept;

use yeanling_core::book::LambId;
use yeanling_core::reckon::cold_lamb::{ColdLambAnswer, Step};
use yeanling_core::watch::{Hold, holds};
use yeanling_words::{
    animals, cautions, cold_lamb as words, cold_lamb::courses, danger, frame, help, lamb as of_lamb,
};

pub(crate) use answer::old;
pub(crate) use case::Age;
pub(crate) use does::{Does, does, typed};

use case::Case;

use crate::block::{Item, ListLook};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Screen, Sheet};

/// The reading at which nobody was sure of the lamb's swallow; that is no fact, so it is not noted.
const UNSURE: &str = "cold-unsure";
/// Whether another reading is asked for before its time.
const AGAIN: &str = "cold-again";

/// How far the aid has come.
#[derive(Clone, Debug, PartialEq)]
enum Stage {
    Gone,
    Dead,
    HowWarm,
    HowOld,
    HeadAndSwallow,
    Answer(Box<ColdLambAnswer>),
}

/// The lamb in hand, and what is known of it.
#[derive(Clone, Copy, Debug)]
struct Hand<'a> {
    view: &'a View<'a>,
    fields: &'a Fields,
    /// Which lamb; none without a record.
    lamb: Option<LambId>,
    case: &'a Case,
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft, lamb: Option<LambId>) -> Page {
    let (back, name) = match lamb {
        Some(id) => (Screen::Lamb(id), of_lamb::BACK),
        None => (Screen::Help, frame::HELP),
    };
    let case = known(view, &draft.fields, lamb);
    let stage = stage(view, lamb, case.as_ref());
    let case = case.unwrap_or_default();
    let hand = Hand { view, fields: &draft.fields, lamb, case: &case };
    Page::new(words::TITLE).back(back, name).under(under(view, lamb)).blocks(
        held(view, lamb)
            .then(told(hand, &stage))
            .then(mouth(hand, &stage))
            .then(start_over(lamb, &stage))
            .then(how_to_read(&stage))
            .then(fold("care", help::HYGIENE, cautions::HYGIENE, cautions::HYGIENE_SOURCE))
            .small(cautions::GENERAL),
    )
}

/// Returns what is known; nothing once the lamb is gone from the book.
fn known(view: &View, fields: &Fields, lamb: Option<LambId>) -> Option<Case> {
    let Some(id) = lamb else { return Some(kept::read(&view.phone.cold_lamb)) };
    let unsure = fields.typed(UNSURE).and_then(|at| at.parse().ok());
    view.flock.lamb(id).map(|lamb| Case::of_lamb(lamb, unsure, view.now))
}

fn stage(view: &View, lamb: Option<LambId>, case: Option<&Case>) -> Stage {
    let Some(case) = case else { return Stage::Gone };
    let lives = lamb.is_none_or(|id| view.flock.lamb(id).is_some_and(|lamb| lamb.lives()));
    if !lives {
        Stage::Dead
    } else if case.stale(view.now) {
        Stage::HowWarm
    } else if case.age == Age::Ask {
        Stage::HowOld
    } else {
        case.answer()
            .map_or(Stage::HeadAndSwallow, |answer| Stage::Answer(Box::new(without_milk(view, lamb, answer))))
    }
}

/// While belly, chin or mouth holds milk back no step of the answer is milk, from a bottle or from the ewe.
fn without_milk(view: &View, lamb: Option<LambId>, mut answer: ColdLambAnswer) -> ColdLambAnswer {
    let milk =
        |step: &Step| matches!(step, Step::Feed | Step::FeedAt37 | Step::LeaveWithEwe | Step::BackToEwe);
    if shut(view, lamb).is_some() {
        answer.steps.retain(|step| !milk(step));
    }
    answer
}

fn shut(view: &View, lamb: Option<LambId>) -> Option<Hold> {
    let holds = holds(view.flock.lamb(lamb?)?);
    holds.into_iter().find(|hold| matches!(hold, Hold::Belly { .. } | Hold::Mouth { .. }))
}

/// That belly, chin or mouth holds milk back, above all else.
fn held(view: &View, lamb: Option<LambId>) -> Blocks {
    let Some(hold) = shut(view, lamb) else { return Blocks::new() };
    Blocks::new().caution(of_lamb::hold(hold, view.system()))
}

/// Whose temperature it is.
fn under(view: &View, lamb: Option<LambId>) -> String {
    let Some(id) = lamb else { return words::NO_RECORD.to_owned() };
    let whose = |lamb| words::whose(&animals::lamb(view.flock, lamb), lamb, view.now, view.system());
    view.flock.lamb(id).map(whose).unwrap_or_default()
}

fn told(hand: Hand, stage: &Stage) -> Blocks {
    match stage {
        Stage::Gone => Blocks::new().gone(),
        Stage::Dead => {
            let another = Button::new("another", words::ANOTHER, Action::Go(Screen::ColdLamb(None)));
            Blocks::new().empty(of_lamb::DEAD, [another])
        }
        Stage::HowWarm => ask::how_warm(hand, words::HOW_WARM).then(answer::earlier(hand, true)),
        Stage::HowOld => just_read(hand).then(ask::how_old()).then(another(hand)),
        Stage::HeadAndSwallow => just_read(hand).then(ask::head_and_swallow(hand)).then(another(hand)),
        Stage::Answer(answer) => answer::all(hand, answer),
    }
}

/// The reading that was just given, over the next question.
fn just_read(hand: Hand) -> Blocks {
    let last = hand.case.last().map(|last| words::just_read(last.temperature, hand.view.system()));
    Blocks::new().lead(last.unwrap_or_default())
}

/// Another reading, under a question that was not answered: it does not wait for the answer.
fn another(hand: Hand) -> Blocks {
    if hand.fields.chosen(AGAIN).is_some() {
        ask::how_warm(hand, words::HOW_WARM_NOW)
    } else {
        Blocks::new().button(new_reading())
    }
}

/// The button that asks for another reading before its time.
fn new_reading() -> Button {
    Button::new("again", words::NEW_READING, Action::Choose(AGAIN.into(), 0))
}

/// What a finger in its mouth said, until a thermometer says more.
fn mouth(hand: Hand, stage: &Stage) -> Blocks {
    let Some(id) = hand.lamb.filter(|_| *stage == Stage::HowWarm) else { return Blocks::new() };
    let felt = hand.view.flock.lamb(id).and_then(|lamb| {
        let felt = lamb.mouth.last()?;
        let read = lamb.temperatures.last().is_some_and(|read| read.at >= felt.at);
        let hold = yeanling_core::watch::hold_milk(lamb);
        (!read).then(|| words::felt(felt.mouth, felt.suck, hold, hand.view.system()))
    });
    let blocks = felt.into_iter().fold(Blocks::new(), Blocks::lead);
    blocks.button(Button::new("mouth", danger::MOUTH, Action::Ask(Sheet::Mouth(id))))
}

fn start_over(lamb: Option<LambId>, stage: &Stage) -> Blocks {
    if lamb.is_some() || *stage == Stage::HowWarm {
        return Blocks::new();
    }
    let over = Action::Does(crate::Does::ColdLamb(Does::StartOver));
    Blocks::new().button(Button::new("start-over", words::START_OVER, over))
}

/// How its temperature is taken, folded away for those who know.
fn how_to_read(stage: &Stage) -> Blocks {
    if *stage != Stage::HowWarm {
        return Blocks::new();
    }
    fold("thermometer", courses::THERMOMETER, &courses::THERMOMETER_STEPS, courses::THERMOMETER_SOURCE)
}

fn fold(key: &'static str, title: &str, lines: &[&str], source: &str) -> Blocks {
    let lines = lines.iter().map(|line| Item::new(*line));
    Blocks::new().fold(key, title, Blocks::new().list(ListLook::Ranked, lines).small(source))
}
