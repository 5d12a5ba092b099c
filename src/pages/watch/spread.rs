//! What goes round in the flock, above what the season asks for: how many in how many days, what to do, and that it was
//! seen to.

use yeanling_core::book::{Animal, Event, Illness};
use yeanling_core::reckon::illness::Urgency;
use yeanling_core::reckon::illness::spread::rule;
use yeanling_core::terms::Spread;
use yeanling_core::watch::{Spreading, spreading};
use yeanling_words::spread as words;

use crate::block::{Kind, Notice, NoticeKind, Row, State};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key, Screen};

/// What goes round, as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Round {
    pub(super) spread: Spread,
    count: String,
    urgency: Urgency,
    seen_to: Option<Event>,
    /// Whether it was seen to just now, and its tick stands in its place.
    done: bool,
}

impl Round {
    fn new(of: &Spreading) -> Self {
        let latest = of.animals.last().copied();
        let seen_to = |animal| Event::Illness(Illness::SpreadSeenTo { animal, spread: of.spread });
        Self {
            spread: of.spread,
            count: words::count(of.spread, of.animals.len()),
            urgency: of.urgency,
            seen_to: latest.map(seen_to),
            done: false,
        }
    }

    /// Returns the same once it was seen to.
    pub(super) fn done(&self) -> Self {
        Self { done: true, ..self.clone() }
    }

    /// Says whether it asks for a call to the vet.
    pub(super) fn calls(&self) -> bool {
        self.urgency == Urgency::Now && !self.done
    }

    fn row(&self) -> (Key, Row) {
        let action = self.seen_to.clone().map(|event| {
            let name = format!("{}: {}", words::SEEN_TO, words::name(self.spread));
            let button = Button::new("seen-to", words::SEEN_TO, Action::Note(vec![event])).action(name);
            if self.done { button.ticked() } else { button }
        });
        let state = if self.urgency == Urgency::Now { State::Late } else { State::Now };
        let row = Row::new(words::name(self.spread))
            .text(words::step(self.spread))
            .says(state, &self.count)
            .to(Screen::Ailment(rule(self.spread).about))
            .action(action);
        (format!("spread-{:?}", self.spread).to_lowercase().into(), row)
    }
}

/// Returns what goes round, the most urgent first.
pub(super) fn rounds(view: &View) -> Vec<Round> {
    spreading(view.flock, view.now).iter().map(Round::new).collect()
}

/// Returns the part of the Watch; nothing while nothing goes round.
pub(super) fn section(rounds: &[Round]) -> Blocks {
    let rows = rounds.iter().map(Round::row);
    Blocks::new().section("spread", words::TITLE, Blocks::new().rows("spread-rows", rows))
}

/// Returns what is told above the answer of an animal that has what goes round.
pub(crate) fn notice(view: &View, animal: Animal) -> Blocks {
    let has = |of: &Spreading| of.animals.contains(&animal);
    spreading(view.flock, view.now).into_iter().filter(has).fold(Blocks::new(), |blocks, of| {
        let kind = if of.urgency == Urgency::Now { NoticeKind::Bad } else { NoticeKind::Warn };
        let head = format!("{}: {}.", words::name(of.spread), words::count(of.spread, of.animals.len()));
        let inside = Blocks::new().text(head).text(words::step(of.spread));
        let notice = Notice { kind, inside: inside.into(), buttons: Vec::new() };
        blocks.add(format!("spread-{:?}", of.spread).to_lowercase(), Kind::Notice(notice))
    })
}
