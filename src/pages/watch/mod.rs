//! The home: danger pinned, then every family a card and every animal a line, the most urgent first, each done with one
//! tap; the big button below.
//!
//! A row of the Watch names no limit: the time that has passed stands beside it, "why?" gives the limit. What else can be
//! done for an animal is folded behind its line: its own page has it all.

mod acts;
mod cards;
mod doors;
mod lamb;
mod near;
mod order;
mod place;
mod row;
mod season;
mod seat;
mod shown;
mod spread;

use std::sync::Arc;

use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Moment;
use yeanling_core::watch::{State as Due, round as next_round};
use yeanling_words::common::{clock, volume};
use yeanling_words::{danger, illness, share, watch as words};

pub(crate) use acts::{act, answers};
pub(crate) use spread::notice as spread_notice;

use cards::{Members, cards};
use near::Near;
use order::Count;
use place::Pressed;
use season::Week;
use shown::Shown;

use crate::block::{Choice, Choices, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page, Tally};
use crate::view::View;
use crate::{Action, Button, Effect, Request, Screen, Text, vet};

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
    spread: Vec<spread::Round>,
    week: Vec<Week>,
    near: Vec<Near>,
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
    let Stood { rows, round, spread, week, near, call, .. } = stands(view, view.now, draft);
    let season = spread::section(&spread).then(season::section(view, &week));
    let penned = rows.iter().any(|one| one.seat.place.is_some());
    let order = draft.fields.pick(ORDER, &ORDERS, ORDERS[0]).0;
    let quiet = rows.is_empty() && near.is_empty() && season.is_empty();
    let danger = |one: &&Shown| one.stood == Some(Due::Danger);
    let mut dangers = rows.iter().filter(danger);
    let first = cards::pinned("danger", dangers.by_ref().take(1));
    let pinned = cards::pinned("dangers", dangers);
    let others: Vec<&Shown> = rows.iter().filter(|one| !danger(one)).collect();
    let blocks = empty(view, quiet)
        .then(first)
        .then(call.then(|| vet::blocks(view)).into_iter().flatten())
        .then(pinned)
        .then(match order {
            Order::Urgency => by_urgency(&others, round.as_ref()),
            Order::Place => by_place(&others).then(round.iter().flat_map(round_line)),
        })
        .then(season)
        .then(near::section(&near))
        .then(penned.then(|| orders(order)).into_iter().flatten())
        .then(doors::blocks());
    let go = |key: &'static str, label, to| Button::new(key, label, Action::Go(to)).big();
    let thumb = Blocks::new()
        .button(go("pens", words::PENS, Screen::Pens))
        .button(go("not-right", illness::TITLE, Screen::NotRight))
        .button(go("lambing", words::LAMBING, Screen::Lambing).filled());
    // Where something is asked for further down, nothing says that nothing is.
    let calm = rows.iter().all(|one| one.state.is_none()) && week.is_empty();
    let calm = calm && spread.is_empty() && season::past(view) == 0 && season::vet(view).is_none();
    let page = Page { tallies: tallies(&rows), ..Page::new(clock(view.now)) };
    page.under(if calm { words::NOTHING } else { "" }).blocks(blocks).thumb(thumb)
}

/// Returns what stands there at an instant. While a hand is at work all that it saw keeps its place.
fn stands(view: &View, now: Moment, draft: &Draft) -> Stood {
    let rows = shown::shown(view, now);
    let spread = spread::rounds(view);
    let said = |one: &Shown| vet::is_said(&one.text) || vet::is_said(&one.step);
    let fresh = Stood {
        call: rows.iter().any(said) || spread.iter().any(spread::Round::calls),
        rows,
        round: round(view, now),
        spread,
        week: season::week(view, now),
        near: near::near(view),
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
        round: order::line(stood.round.as_ref(), fresh.round, Round::empty),
        spread: order::in_order(
            &stood.spread,
            fresh.spread,
            |one| one.spread,
            |was, now| now.unwrap_or_else(|| was.done()),
        ),
        week: order::in_order(
            &stood.week,
            fresh.week,
            |one| one.asked,
            |was, now| now.unwrap_or_else(|| was.done()),
        ),
        near: order::in_order(
            &stood.near,
            fresh.near,
            |one| one.ewe,
            |was, now| now.filter(|now| now.signs == was.signs).unwrap_or_else(|| was.done()),
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
        let (count, empty) = match order::count(rows, due) {
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
        let had = Button::new("had-a-book", share::HAD_A_BOOK, Action::Go(Screen::Share));
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

/// The round stands behind what is due, since it is a way to it, and before what is to come.
fn by_urgency(rows: &[&Shown], round: Option<&Round>) -> Blocks {
    let (due, others): (Vec<&Shown>, Vec<&Shown>) =
        rows.iter().copied().partition(|one| one.stood > Some(Due::Coming));
    let (coming, well): (Vec<&Shown>, Vec<&Shown>) =
        others.into_iter().partition(|one| one.stood == Some(Due::Coming));
    let (late, now): (Vec<Members>, Vec<Members>) =
        cards(due).into_iter().partition(|card| cards::stands(card) == Some(Due::Late));
    let section = |blocks: Blocks, (key, title, cards): (&'static str, &'static str, Vec<Members>)| {
        blocks.section(key, title, cards::blocks(key, &cards))
    };
    let due = [("late", words::LATE, late), ("now", words::NOW, now)];
    let others = [("coming", words::COMING, cards(coming)), ("well", words::WELL, cards(well))];
    let blocks = due.into_iter().fold(Blocks::new(), section).then(round.into_iter().flat_map(round_line));
    others.into_iter().fold(blocks, section)
}

fn by_place(rows: &[&Shown]) -> Blocks {
    let place = |one: &Shown| one.seat.place.clone();
    let mut places: Vec<Option<String>> = rows.iter().map(|one| place(one)).collect();
    // By length first, so that pen 2 comes before pen 10; the barn last.
    places.sort_small_by_key(|place| (place.is_none(), place.as_ref().map_or(0, String::len), place.clone()));
    places.dedup();
    places.into_iter().enumerate().fold(Blocks::new(), |blocks, (number, here)| {
        let title = here.as_deref().unwrap_or(words::BARN);
        let cards = cards(rows.iter().copied().filter(|one| place(one) == here));
        let key = format!("place-{number}");
        let inside = cards::blocks(&key, &cards);
        blocks.section(key, title, inside)
    })
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
