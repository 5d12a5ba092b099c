//! What to do, in order and in large words; what never; when to look again; and what was noted so far.

use yeanling_core::book::{Animal, Care, Event, GlucoseBy, LambId, VetSaid, Way};
use yeanling_core::reckon::body_temperature::may_be_the_first_drop;
use yeanling_core::reckon::cold_lamb::{Branch, ColdLambAnswer, Vet};
use yeanling_core::reckon::warming::{self, Look, Progress};
use yeanling_core::units::{Mass, System};
use yeanling_core::watch::next_milk;
use yeanling_words::common::{clock, temperature, temperature_both, temperature_parts, volume};
use yeanling_words::{cautions, cold_lamb as words, danger, errors, lamb as of_lamb};

use super::case::{Age, asks_for_milk, is_warmed, may_be_fed};
use super::{AGAIN, Does, Hand, ask, new_reading};
use crate::block::{
    Aloud, Block, Buttons, Figure, FigureSize, Item, Kind, Line, LineLook, ListLook, Notice, NoticeKind,
};
use crate::draft::Fields;
use crate::milk::before;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Reason, Screen, Sheet, Text, weight};

/// The weight of a lamb without a record.
pub(super) const WEIGHT: &str = "cold-weight";

/// Returns all of it, and the next reading once it is time.
pub(super) fn all(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    let due = is_due(hand, answer);
    let form = due || hand.fields.chosen(AGAIN).is_some();
    let again = if form { ask::how_warm(hand, words::HOW_WARM_NOW) } else { Blocks::new() };
    again
        .then(what_to_do(hand, answer))
        .then(weigh(hand, answer))
        .then(done(hand, answer))
        .then(look_again(hand, answer, due))
        .then(beware(answer))
        .then(earlier(hand, false))
        .then(to_the_lamb(hand))
}

/// Says whether it is time for the next reading.
fn is_due(hand: Hand, answer: &ColdLambAnswer) -> bool {
    let over = |(last, wait)| matches!(warming::look_after(last, wait, hand.view.now), Look::Now(_));
    hand.case.last().map(|last| last.at).zip(answer.look_again).is_some_and(over)
}

/// How old it is, as it is told beside its temperature.
pub(crate) fn old(age: Age, answer: &ColdLambAnswer) -> String {
    match age {
        Age::UpToFive => words::UP_TO_FIVE.to_owned(),
        Age::OverFive => words::OVER_FIVE.to_owned(),
        Age::Unknown | Age::Known(_) | Age::Ask => words::age(answer),
    }
}

/// The reading, what it means, and what to do about it in order; and what never.
fn what_to_do(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    let Hand { case, view, .. } = hand;
    let system = view.system();
    let young = match case.age {
        Age::Known(age) => may_be_the_first_drop(age),
        Age::UpToFive => true,
        Age::OverFive | Age::Unknown | Age::Ask => false,
    };
    let (value, unit) = temperature_parts(answer.temperature, system);
    let why = why(words::TITLE, Reason::ColdLamb(Box::new(answer.clone()), case.age));
    let figure = Figure {
        value,
        unit: unit.to_owned(),
        also: temperature(answer.temperature, other(system)),
        size: FigureSize::Head,
        beside: Blocks::new().remark(words::at_age(&old(case.age, answer)), [why]).into(),
        ..Figure::default()
    };
    let feed = case.feed(system);
    let steps = answer.steps.iter().map(|step| Item::new(words::step(*step, feed, system)));
    let nevers = answer.never.iter().map(|never| Item::new(words::never(*never)));
    let mut what = Blocks::new().add("temperature", Kind::Figure(figure));
    if young {
        what = what.small(words::FIRST_DROP);
    }
    if let Some((before, progress)) = case.progress() {
        let kind = match progress {
            Progress::WarmEnough | Progress::Rising => NoticeKind::Calm,
            Progress::NotRising => NoticeKind::Bad,
        };
        let told = |read| temperature(read, system);
        let text = words::warming(progress, &told(before.temperature), &told(answer.temperature));
        what = what.notice("warming", kind, text, []);
    }
    if answer.vet == Vet::Now || case.stalls() {
        what = what.then(vet_now(hand));
    }
    Blocks::new().section("what-to-do", words::heading(answer), what.list(ListLook::Steps, steps)).section(
        "never",
        words::NEVER,
        Blocks::new().list(ListLook::Nevers, nevers),
    )
}

const fn other(system: System) -> System {
    match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    }
}

/// The vet, above everything else, with the one tap that notes the call.
fn vet_now(hand: Hand) -> Blocks {
    let reached = |call: &&yeanling_core::flock::VetCall| call.said != Some(VetSaid::NobodyReached);
    if let Some(call) = hand.case.vet.as_ref().filter(reached) {
        let line = match &call.said {
            Some(said) => danger::said_at(said, call.at),
            None => words::vet_called_at(&clock(call.at)),
        };
        let asks = |lamb| Action::Ask(Sheet::Vet(Animal::Lamb(lamb)));
        let said = hand.lamb.map(|lamb| Button::new("said", danger::SAID, asks(lamb)));
        return Blocks::new().notice("vet", NoticeKind::Calm, Text::typed(&line), said);
    }
    let call = answered(hand, Does::VetCalled, |lamb| Event::VetCalled { animal: Animal::Lamb(lamb) });
    let text = Text::strong(words::vet(Vet::Now));
    let line = Line { look: LineLook::Lead, text, aloud: Aloud::Not, buttons: Vec::new() };
    let inside = vec![Block::new("", Kind::Line(line))];
    let buttons = vec![Button::new("call", words::VET_CALLED, call).filled()];
    Blocks::new().add("vet", Kind::Notice(Notice { kind: NoticeKind::Bad, inside, buttons }))
}

/// What notes an answer: a fact of a lamb with a record, else something that this phone keeps.
fn answered(hand: Hand, does: Does, event: impl FnOnce(LambId) -> Event) -> Action {
    match hand.lamb {
        Some(lamb) => Action::Note(vec![event(lamb)]),
        None => Action::Does(crate::Does::ColdLamb(does)),
    }
}

/// Where the weight decides the volume and is not known: asks for it.
fn weigh(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    if !asks_for_milk(answer) {
        return Blocks::new();
    }
    match hand.lamb {
        Some(lamb) if hand.case.weight.is_none() => {
            Blocks::new().button(Button::new("weigh", words::WEIGH_IT, Action::Ask(Sheet::Weight(lamb))))
        }
        Some(_) => Blocks::new(),
        None => weight_of_it(hand),
    }
}

/// Asks a lamb without a record for its weight, so that the volume can be told.
fn weight_of_it(hand: Hand) -> Blocks {
    let Hand { view, fields, case, .. } = hand;
    let system = view.system();
    let unit = weight::unit(fields, WEIGHT, system);
    let known = case.weight.map(|known| weight::as_typed(known, unit)).unwrap_or_default();
    let field = weight::field(fields, WEIGHT, of_lamb::WEIGHT, (&known, system));
    Blocks::new().remark(words::WEIGHT_FOR_VOLUME, []).field(WEIGHT, field)
}

/// The weight as it is typed, or what is wrong with it; nothing while none was typed.
pub(super) fn typed_weight(view: &View, fields: &Fields) -> Option<Result<Option<Mass>, String>> {
    let typed = fields.typed(WEIGHT)?;
    let unit = weight::unit(fields, WEIGHT, view.system());
    if typed.trim().is_empty() {
        return Some(Ok(None));
    }
    let parsed = Mass::parse(typed, unit).map_err(|wrong| errors::typed(&wrong, errors::Field::Mass, unit));
    Some(parsed.and_then(|weight| {
        Mass::ON_THE_BOTTLE.check(weight).map(Some).map_err(|wrong| errors::weight(&wrong, unit))
    }))
}

/// The taps that note what was done.
fn done(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    let other = hand.lamb.filter(|_| asks_for_milk(answer));
    let other = other.map(|id| Button::new("other", words::OTHER_FEED, Action::Go(Screen::Lamb(id))));
    let inside = glucose(hand, answer).then(warmed(hand, answer)).then(fed(hand, answer));
    let inside = other.into_iter().fold(inside, Blocks::button);
    if inside.is_empty() {
        return inside;
    }
    Blocks::new().add("done", Kind::Buttons(Buttons { columns: 2, inside: inside.into() }))
}

/// A line that says that something is done.
fn done_line(key: &'static str, text: String) -> Blocks {
    let line =
        Line { look: LineLook::Done, text: Text::typed(&text), aloud: Aloud::Not, buttons: Vec::new() };
    Blocks::new().add(key, Kind::Line(line))
}

/// Glucose, where it comes first: by whom it was given, or that it was.
fn glucose(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    if answer.branch != Branch::SevereOlder {
        return Blocks::new();
    }
    if let Some((at, by)) = hand.case.glucose {
        return done_line("glucose", danger::glucose_at(by, at));
    }
    let button = |(key, by)| {
        let given = answered(hand, Does::Glucose(by), |lamb| Event::Care(Care::GlucoseGiven { lamb, by }));
        Button::new(key, danger::glucose(by), given)
    };
    let both = [("glucose-vet", GlucoseBy::Vet), ("glucose-trained", GlucoseBy::Trained)];
    both.map(button).into_iter().fold(Blocks::new(), Blocks::button)
}

fn warmed(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    if !is_warmed(answer) {
        return Blocks::new();
    }
    match hand.case.warmed {
        Some(at) => done_line("warmed", words::warming_since(&clock(at))),
        None => {
            let begun = answered(hand, Does::Warmed, |lamb| Event::Warmed { lamb });
            Blocks::new().button(Button::new("warm", words::WARMING_BEGUN, begun))
        }
    }
}

/// A feed by bottle, of the milk that comes next.
fn fed(hand: Hand, answer: &ColdLambAnswer) -> Blocks {
    let Hand { view, case, .. } = hand;
    let system = view.system();
    if let Some((at, given)) = case.fed {
        return done_line("fed", words::fed_at(&volume(given, system), &clock(at)));
    }
    let lamb = hand.lamb.filter(|_| may_be_fed(answer)).and_then(|id| view.flock.lamb(id));
    let lamb = lamb.filter(|lamb| before(view, lamb).is_none());
    let Some((lamb, feed)) = lamb.zip(case.feed(system)) else { return Blocks::new() };
    let milk = next_milk(view.flock, lamb, view.now, view.settings());
    let fed = Action::Note(vec![Event::Fed { lamb: lamb.id, volume: feed, milk, way: Way::Bottle }]);
    Blocks::new().button(Button::new("feed", words::fed_by_bottle(&volume(feed, system)), fed))
}

/// When it is looked at again: the clock time, and how long until then.
fn look_again(hand: Hand, answer: &ColdLambAnswer, due: bool) -> Blocks {
    let Some((last, wait)) = hand.case.last().zip(answer.look_again) else {
        return Blocks::new().button(new_reading());
    };
    let figure = Figure {
        value: clock(last.at + wait),
        also: words::look(warming::look_after(last.at, wait, hand.view.now)),
        size: FigureSize::Head,
        ..Figure::default()
    };
    let mut inside = Blocks::new().add("when", Kind::Figure(figure));
    if answer.vet == Vet::IfNoBetter {
        inside = inside.text(words::vet(Vet::IfNoBetter));
    }
    if !due {
        inside = inside.button(new_reading());
    }
    Blocks::new().section("look-again", words::LOOK_AGAIN, inside)
}

/// The cautions that go with it, and what others would do.
fn beware(answer: &ColdLambAnswer) -> Blocks {
    let dissent = answer.dissent.map(words::dissent);
    let blocks = dissent.into_iter().fold(Blocks::new(), Blocks::small);
    if asks_for_milk(answer) { blocks.caution(cautions::TUBE.iter().copied()) } else { blocks }
}

/// The readings before the last, newest first; or all of them.
pub(super) fn earlier(hand: Hand, all: bool) -> Blocks {
    let (readings, system) = (&hand.case.readings, hand.view.system());
    let shown = if all { readings.len() } else { readings.len().saturating_sub(1) };
    let lines = readings[..shown].iter().rev().map(|reading| {
        let told = temperature_both(reading.temperature, system);
        Item::new(words::reading(&clock(reading.at), &told, reading.temperature))
    });
    let lines = Blocks::new().list(ListLook::Readings, lines);
    Blocks::new().section("earlier", words::EARLIER, lines)
}

fn to_the_lamb(hand: Hand) -> Blocks {
    let to = hand.lamb.map(|id| Button::new("lamb", words::TO_THE_LAMB, Action::Go(Screen::Lamb(id))));
    to.into_iter().fold(Blocks::new(), Blocks::button)
}
