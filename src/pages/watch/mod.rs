//! The home: every animal with its clock, the most urgent first, each done with one tap; the big button below.
//!
//! A row of the Watch names no limit: the time that has passed stands beside it, "why?" gives the limit.

mod doors;
mod lamb;
mod place;
mod row;
mod season;
mod shown;

use std::sync::Arc;

use yeanling_core::arrange::Arrange;
use yeanling_core::units::Moment;
use yeanling_core::watch::{State as Due, round as next_round};
use yeanling_words::common::{clock, volume};
use yeanling_words::{danger, hand_over, illness, watch as words};

use place::{Count, Pressed};
use season::Week;
use shown::{Near, Shown};

use crate::block::{Choice, Choices, Row, State};
use crate::draft::Draft;
use crate::page::{Blocks, Page, Tally, key_of};
use crate::view::View;
use crate::{Action, Button, Effect, Key, Request, Screen, Text, vet};

/// How the rows are sorted.
const ORDER: &str = "watch-order";
const ORDERS: [(Order, &str); 2] = [(Order::Urgency, words::BY_URGENCY), (Order::Place, words::BY_PLACE)];

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    Urgency,
    Place,
}

/// What stands on the Watch and keeps its place while a hand is at work.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Stood {
    rows: Vec<Shown>,
    round: Option<Round>,
    week: Vec<Week>,
    /// Whether something asks for a call to the vet, or did since the hand began.
    call: bool,
    /// What the hand noted since it began.
    pressed: Vec<Pressed>,
}

/// What is said of the next round with the bottle.
#[derive(Clone, Debug, PartialEq)]
struct Round {
    text: String,
    volume: String,
    /// The text and the volume whose room is kept.
    room: (String, String),
}

impl Round {
    /// Returns its room alone: what was told of it holds no more.
    fn empty(&self) -> Self {
        let room =
            if self.text.is_empty() { self.room.clone() } else { (self.text.clone(), self.volume.clone()) };
        Self { text: String::new(), volume: String::new(), room }
    }
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let Stood { rows, round, week, call, .. } = stands(view, view.now, draft);
    let near = shown::near(view);
    let penned = rows.iter().any(|one| one.place.is_some());
    let order = draft.fields.pick(ORDER, &ORDERS, ORDERS[0]).0;
    let blocks = empty(view, rows.is_empty() && near.is_empty())
        .then(call.then(|| vet::blocks(view)).into_iter().flatten())
        .then(penned.then(|| orders(order)).into_iter().flatten())
        .then(round.iter().flat_map(round_line))
        .then(match order {
            Order::Urgency => by_urgency(&rows),
            Order::Place => by_place(&rows),
        })
        .then(season::section(view, &week))
        .then(tonight(near))
        .then(doors::blocks());
    let go = |key: &'static str, label, to| Button::new(key, label, Action::Go(to)).big();
    let thumb = Blocks::new()
        .button(go("pens", words::PENS, Screen::Pens))
        .button(go("not-right", illness::TITLE, Screen::NotRight))
        .button(go("lambing", words::LAMBING, Screen::Lambing).filled());
    let calm = rows.iter().all(|one| one.state.is_none());
    let page = Page { tallies: tallies(&rows), ..Page::new(clock(view.now)) };
    page.under(if calm { words::NOTHING } else { "" }).blocks(blocks).thumb(thumb)
}

/// Returns what stands there at an instant. While a hand is at work all that it saw keeps its place.
fn stands(view: &View, now: Moment, draft: &Draft) -> Stood {
    let rows = shown::shown(view, now);
    let fresh = Stood {
        call: rows.iter().any(|one| vet::is_said(&one.text)),
        rows,
        round: round(view, now),
        week: season::week(view, now),
        pressed: Vec::new(),
    };
    let Some(stood) = draft.kept.watch.as_ref().filter(|_| *view.still) else { return fresh };
    // What was taken back counts no more.
    let counts = |one: &&Pressed| {
        let mut animals = one.event.animals();
        animals.all(|animal| {
            let mut lines = view.flock.lines_of(animal).rev();
            lines.find(|line| line.entry == one.entry).is_some_and(|line| !line.struck)
        })
    };
    let pressed: Vec<Pressed> = stood.pressed.iter().filter(counts).cloned().collect();
    Stood {
        call: stood.call || fresh.call,
        rows: place::in_place(&stood.rows, fresh.rows, &pressed),
        round: place::line(stood.round.as_ref(), fresh.round, Round::empty),
        week: place::in_order(
            &stood.week,
            fresh.week,
            |one| one.asked,
            |was, now| now.unwrap_or_else(|| was.done()),
        ),
        pressed,
    }
}

/// Something is noted on the Watch: what stands there keeps its place until the hand lets go.
pub(crate) fn noted(view: &View, draft: &mut Draft, effects: &[Effect]) {
    let notings: Vec<Pressed> = effects
        .iter()
        .flat_map(|effect| match effect {
            Effect::Note(notings) => &notings[..],
            Effect::LetLastGo
            | Effect::Go(_)
            | Effect::Replace(_)
            | Effect::Show(_)
            | Effect::After(..)
            | Effect::There(..)
            | Effect::Phone(_) => &[],
        })
        .map(|noting| Pressed { entry: noting.id, event: noting.event.clone() })
        .collect();
    if notings.is_empty() {
        return;
    }
    let mut stood = stands(view, view.drawn, draft);
    stood.pressed.extend(notings);
    draft.kept.watch = Some(Arc::new(stood));
}

/// How a count is said.
type Word = fn(usize) -> String;

/// Whoever comes to the Watch finds each row where it belongs.
pub(crate) fn enter(draft: &mut Draft) {
    draft.kept.watch = None;
}

fn tallies(rows: &[Shown]) -> Vec<Tally> {
    let tally = |(due, word): (Due, Word)| {
        let (count, empty) = match place::count(rows, due) {
            Count::None => return None,
            Count::Room(stood) => (stood, true),
            Count::Some(count) => (count, false),
        };
        Some(Tally { state: due.into(), text: word(count), empty })
    };
    let all: [(Due, Word); 4] = [
        (Due::Danger, danger::count),
        (Due::Late, words::late),
        (Due::Now, words::now),
        (Due::Coming, words::coming),
    ];
    all.into_iter().filter_map(tally).collect()
}

fn empty(view: &View, quiet: bool) -> Blocks {
    if view.book.is_empty() {
        let set_up = Button::new("set-up", words::SET_UP, Action::Go(Screen::Setup)).filled();
        let look = Button::new("look-round", words::LOOK_ROUND, Action::Phone(Request::LookRound));
        let had = Button::new("had-a-book", hand_over::HAD_A_BOOK, Action::Go(Screen::Share));
        Blocks::new().empty(words::EMPTY, [set_up, look, had])
    } else if quiet {
        Blocks::new().empty(words::QUIET, [])
    } else {
        Blocks::new()
    }
}

/// By what presses, or by where they are, so that a round can be walked.
fn orders(order: Order) -> Blocks {
    let option =
        |(place, (_, name)): (usize, &(Order, &str))| Choice::new(*name, Action::Choose(ORDER.into(), place));
    let options = ORDERS.iter().enumerate().map(option).collect();
    let chosen = ORDERS.iter().position(|(one, _)| *one == order);
    Blocks::new().choices(ORDER, Choices::new(words::ORDER, options, chosen))
}

fn by_urgency(rows: &[Shown]) -> Blocks {
    let groups = [
        ("danger", danger::TITLE, Some(Due::Danger)),
        ("late", words::LATE, Some(Due::Late)),
        ("now", words::NOW, Some(Due::Now)),
        ("coming", words::COMING, Some(Due::Coming)),
        ("well", words::WELL, None),
    ];
    groups.into_iter().fold(Blocks::new(), |blocks, (key, title, due)| {
        group(blocks, key, title, rows.iter().filter(|one| one.stood == due))
    })
}

fn by_place(rows: &[Shown]) -> Blocks {
    let mut places: Vec<Option<&String>> = rows.iter().map(|one| one.place.as_ref()).collect();
    // By length first, so that pen 2 comes before pen 10; the barn last.
    places.arrange_by_key(|place| (place.is_none(), place.map_or(0, String::len), place.cloned()));
    places.dedup();
    places.into_iter().enumerate().fold(Blocks::new(), |blocks, (number, place)| {
        let title = place.map_or(words::BARN, String::as_str);
        let here = rows.iter().filter(|one| one.place.as_ref() == place);
        group(blocks, format!("place-{number}"), title, here)
    })
}

fn group<'a>(
    blocks: Blocks,
    key: impl Into<Key>,
    title: &str,
    rows: impl Iterator<Item = &'a Shown>,
) -> Blocks {
    let key = key.into();
    let rows = Blocks::new().rows(format!("{key}-rows"), rows.map(row::row));
    blocks.section(key, title, rows)
}

/// The next round with the bottle, when it serves several lambs.
fn round(view: &View, now: Moment) -> Option<Round> {
    let round = next_round(&view.duties, now).filter(|round| round.feeds.len() > 1)?;
    Some(Round {
        text: words::round(round.feeds.len(), &clock(round.due)),
        volume: volume(round.volume, view.system()),
        room: Default::default(),
    })
}

fn round_line(round: &Round) -> Blocks {
    let Round { text, volume, room: (text_room, volume_room) } = round;
    let row = Row::new(words::ROUND)
        .kind(Text::from(volume).in_room_of(volume_room))
        .text(Text::from(text).in_room_of(text_room))
        .to(Screen::BottleRound);
    Blocks::new().rows("round", [("round-row", row)])
}

/// Who may lamb tonight, by the signs that were noted.
fn tonight(near: Vec<Near>) -> Blocks {
    let row = |near: Near| {
        let row = Row::new(near.name)
            .kind(near.place.unwrap_or_default())
            .text(near.text)
            .says(State::Coming, "")
            .to(Screen::LambingEwe(near.ewe));
        (key_of("near", near.ewe.entry()), row)
    };
    let rows = Blocks::new().rows("tonight-rows", near.into_iter().map(row));
    Blocks::new().section("tonight", words::TONIGHT, rows)
}
