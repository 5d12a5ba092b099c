//! The answer: the vet and what never to do first, then what to do until then, what it may be, and what to read out.

use yeanling_core::book::{Animal, Event, Illness};
use yeanling_core::reckon::illness::Urgency;
use yeanling_core::terms::{Change, Gate};
use yeanling_core::units::Moment;
use yeanling_core::watch::Called;
use yeanling_words::danger;
use yeanling_words::illness::{self as words, RowWords};

use super::ask::more_key;
use crate::block::{Choice, Choices, Item, Kind, ListLook, Notice, NoticeKind};
use crate::page::Blocks;
use crate::{Action, Button, Sheet};

/// What is told of an animal that is not right.
pub(super) struct Told<'a> {
    pub(super) animal: Animal,
    pub(super) urgency: Urgency,
    pub(super) no_better: Urgency,
    pub(super) look_again: Moment,
    pub(super) called: Option<&'a Called>,
    /// The rows that fit, in order.
    pub(super) rows: Vec<RowWords>,
    /// What hands do first; nothing where the phone comes first.
    pub(super) hands: Option<&'static [&'static str]>,
    pub(super) nothing_by_mouth: bool,
    pub(super) down: bool,
    /// Whether lambs are at her foot.
    pub(super) rears: bool,
    /// What was not checked yet, with what each answer notes.
    pub(super) checks: Vec<(&'static str, [Event; 3])>,
    /// Good news that would make it less urgent, with what each notes.
    pub(super) good: Vec<(&'static str, Event)>,
    /// What is read out to the vet.
    pub(super) card: Vec<String>,
    /// Where else to go on.
    pub(super) ways: Vec<Button>,
}

/// Returns all that is told.
pub(super) fn blocks(told: Told) -> Blocks {
    let lines = |pick: fn(&RowWords) -> &'static [&'static str]| {
        let mut lines: Vec<&'static str> = Vec::new();
        for line in told.rows.iter().flat_map(pick) {
            if !lines.contains(line) {
                lines.push(line);
            }
        }
        lines
    };
    let mut never = lines(|row| row.never);
    if told.nothing_by_mouth && !never.iter().any(|line| line.to_lowercase().contains("nothing by mouth")) {
        never.insert(0, words::NOTHING_BY_MOUTH);
    }
    let mut until = lines(|row| row.until);
    if told.down {
        until.extend(words::DOWN);
        until.extend(told.rears.then_some(words::DOWN_LAMBS));
    }
    if matches!(told.animal, Animal::Ewe(_)) && !told.rears {
        until.retain(|line| !words::for_her_lambs(line));
    }
    if told.down || told.nothing_by_mouth {
        until.retain(|line| !words::by_mouth(line));
    }
    if told.urgency == Urgency::Now {
        until.push(words::NO_VET);
    }
    let hands = told.hands.unwrap_or_default().iter().fold(Blocks::new(), |all, line| all.lead(*line));
    hands
        .then(head(&told))
        .then(checks(&told))
        .then(section("ill-never", words::NEVER, &never, ListLook::Nevers))
        .then(section("ill-until", words::UNTIL, &until, ListLook::Steps))
        .then(good(&told))
        .then(may_be(&told.rows))
        .then(how_now(told.animal))
        .then(card(&told.card))
        .small(words::HELPS)
        .small(words::UNREAD)
}

/// How urgent, what is known of the vet, and the buttons of that.
fn head(told: &Told) -> Blocks {
    let animal = told.animal;
    let call = Action::Note(vec![Event::VetCalled { animal }]);
    let said = Action::Ask(Sheet::Vet(animal));
    let reached = told.called.is_some_and(|called| !called.nobody_reached());
    let lead = match told.urgency {
        // The next look has one time: what was not checked asks for it sooner than the row does.
        Urgency::Watch(_) => words::look_again_lead(told.look_again),
        Urgency::Now | Urgency::Today => words::urgency(told.urgency),
    };
    let mut inside = Blocks::new().lead(lead);
    if let Some(called) = told.called {
        inside = inside.text(danger::called(called));
    }
    inside = match told.urgency {
        Urgency::Now => inside,
        Urgency::Today => {
            inside.text(words::look_again(told.look_again)).text(words::no_better(told.no_better))
        }
        Urgency::Watch(_) => inside.text(words::no_better(told.no_better)),
    };
    let buttons = vec![
        Button::new("ill-called", danger::CALLED, call)
            .filled_if(!reached && told.urgency > Urgency::hours(0)),
        Button::new("ill-said", danger::SAID, said).filled_if(reached),
    ];
    let kind = match told.urgency {
        Urgency::Now => NoticeKind::Bad,
        Urgency::Today => NoticeKind::Warn,
        Urgency::Watch(_) => NoticeKind::Calm,
    };
    let notice = Notice { kind, inside: inside.into(), buttons };
    told.ways.iter().cloned().fold(Blocks::new().add("ill-head", Kind::Notice(notice)), Blocks::button)
}

/// What was not checked yet: three answers each, noted with one press.
fn checks(told: &Told) -> Blocks {
    let mut inside = Blocks::new();
    for (place, (label, events)) in told.checks.iter().enumerate() {
        let gates = [Gate::Good, Gate::Bad, Gate::CannotCheck].into_iter().zip(events);
        let options =
            gates.map(|(gate, event)| Choice::new(words::gate(gate), Action::Note(vec![event.clone()])));
        let choices = Choices::new(*label, options.collect(), None).labelled();
        inside = inside.choices(format!("ill-check-{place}"), choices);
    }
    Blocks::new().section("ill-checks", words::CHECK_NOW, inside)
}

fn section(key: &'static str, title: &str, lines: &[&str], look: ListLook) -> Blocks {
    let items = lines.iter().map(|line| Item::new(*line));
    Blocks::new().section(key, title, Blocks::new().list(look, items))
}

/// Good news that someone may be sure of.
fn good(told: &Told) -> Blocks {
    let buttons: Vec<Button> = told
        .good
        .iter()
        .enumerate()
        .map(|(place, (label, event))| {
            Button::new(format!("ill-good-{place}"), *label, Action::Note(vec![event.clone()]))
        })
        .collect();
    if buttons.is_empty() {
        return Blocks::new();
    }
    Blocks::new().section("ill-good", words::GOOD, Blocks::new().buttons(2, buttons))
}

/// What it may be, row by row: its name, its causes in order, and what separates them.
fn may_be(rows: &[RowWords]) -> Blocks {
    if rows.is_empty() {
        return Blocks::new().text(words::NOTHING_NAMED);
    }
    let row = |blocks: Blocks, row: &RowWords| {
        let causes = row.may_be.iter().map(|cause| Item::new(*cause));
        blocks.heading(row.name).list(ListLook::Ranked, causes).remark(row.tells, [])
    };
    Blocks::new().section("ill-may-be", words::MAY_BE, rows.iter().fold(Blocks::new(), row))
}

/// How it is now, and the way to tell more.
fn how_now(animal: Animal) -> Blocks {
    let changes = [Change::Better, Change::Same, Change::Worse, Change::Well];
    let button = |change: Change| {
        let event = Event::Illness(Illness::Changed { animal, change });
        let key = format!("ill-{change:?}").to_lowercase();
        Button::new(key, words::change(change), Action::Note(vec![event]))
    };
    let more = Action::Choose(more_key(animal), 1);
    let inside = Blocks::new()
        .buttons(2, changes.map(button))
        .button(Button::new("ill-more", words::SEE_MORE, more))
        .button(Button::new("ill-measure", words::MEASURE, Action::Ask(Sheet::Measures(animal))));
    Blocks::new().section("ill-how-now", words::HOW_NOW, inside)
}

/// What is read out over the phone.
fn card(lines: &[String]) -> Blocks {
    let items = lines.iter().map(|line| Item::new(line.as_str()));
    let inside = Blocks::new().remark(words::CALL_CARD_HINT, []).list(ListLook::Plain, items);
    Blocks::new().section("ill-card", words::CALL_CARD, inside)
}

/// Returns a line of the card with its label.
pub(super) fn line(label: &str, text: &str) -> String {
    format!("{label}: {text}")
}
