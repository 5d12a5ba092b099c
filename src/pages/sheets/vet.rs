//! The sheet in which is noted what came of a call to the vet.

use yeanling_core::book::{Animal, Care, Event, VetSaid};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_words::common::span;
use yeanling_words::danger as words;

use super::parts::{choices, save_button, whose};
use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Effect};

const ANSWER: &str = "vet-answer";
const AGAIN: &str = "vet-again";
const WORDS: &str = "vet-words";

/// When the vet asks to look again, in minutes (ours).
const LOOK_AGAIN: [i64; 5] = [20, 60, 120, 360, 720];

/// Which answer of the vet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Answer {
    Coming,
    Advised,
    Saw,
    NobodyReached,
}

const ANSWERS: [Answer; 4] = [Answer::Coming, Answer::Advised, Answer::Saw, Answer::NobodyReached];

impl Answer {
    /// Returns it as it is noted, with what was said and when to look again.
    fn said(self, words: Option<String>, look_again: Moment) -> VetSaid {
        match self {
            Self::Coming => VetSaid::Coming,
            Self::Advised => VetSaid::Advised { what: words, look_again },
            Self::Saw => VetSaid::Saw { plan: words, look_again },
            Self::NobodyReached => VetSaid::NobodyReached,
        }
    }
}

/// Returns the sheet: an answer that says all closes it, of others it is asked when to look again.
pub(super) fn sheet(view: &View, fields: &Fields, animal: Animal) -> SheetPage {
    let option = |(place, answer): (usize, &Answer)| {
        let said = answer.said(None, view.now);
        let label = words::said(&said);
        let does = match answer {
            Answer::Coming | Answer::NobodyReached => {
                Action::Answer(vec![Event::Care(Care::VetSaid { animal, said })])
            }
            Answer::Advised | Answer::Saw => Action::Choose(ANSWER.into(), place),
        };
        Choice::new(label, does)
    };
    let answers = ANSWERS.iter().enumerate().map(option).collect();
    let answers = Choices::new(words::SAID_ASK, answers, fields.chosen(ANSWER)).stacked();
    let blocks = Blocks::new().choices(ANSWER, answers);
    let blocks = if fields.chosen(ANSWER).is_some() { blocks.then(more(fields)) } else { blocks };
    SheetPage::new(words::SAID_ASK, blocks).whose(whose(view, animal))
}

/// Asks when to look again, and for the vet's words.
fn more(fields: &Fields) -> Blocks {
    let times = LOOK_AGAIN.map(|minutes| span(TimeDelta::minutes(minutes)));
    let again = choices(AGAIN, words::LOOK_AGAIN, times, Some(fields.chosen(AGAIN).unwrap_or(0)));
    let said =
        Field::new(words::SAID_LABEL, FieldKind::Text, fields.text(WORDS, "")).error(fields.error(WORDS));
    Blocks::new().choices(AGAIN, again.labelled()).field(WORDS, said).button(save_button())
}

/// Saves what was advised.
pub(super) fn save(view: &View, draft: &mut Draft, animal: Animal) -> Vec<Effect> {
    let fields = draft.top();
    let Some(answer) = fields.chosen(ANSWER).and_then(|place| ANSWERS.get(place)) else { return Vec::new() };
    let look_again = view.now + TimeDelta::minutes(fields.pick(AGAIN, &LOOK_AGAIN, LOOK_AGAIN[0]));
    let said = answer.said(fields.written(WORDS), look_again);
    draft.save(view, WORDS, vec![view.noting(Event::Care(Care::VetSaid { animal, said }))])
}
