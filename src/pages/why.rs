//! "Why?": what is asked. Its answer is put into words only when its sheet is open.

use yeanling_core::reckon::birth_weight::Against;
use yeanling_core::reckon::colostrum::Want;
use yeanling_core::reckon::feeds::Next;
use yeanling_core::reckon::growth::Expected;
use yeanling_core::reckon::marking::{RingState, Vaccine, Window};
use yeanling_core::reckon::season::ewe::Outlook;
use yeanling_core::reckon::ten_point::Score;
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::reckon::{bottle, weaning};
use yeanling_core::units::{Mass, TimeDelta};
use yeanling_core::watch::Duty;
use yeanling_words::label;
use yeanling_words::why::{self, Why};

use crate::block::{Item, ListLook};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

/// What is asked about.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// What a newborn wants of first milk.
    Milk(Want),
    /// When something is due for a ewe at work.
    Labor(Box<Duty>),
    /// What to have on the shelf.
    Shopping,
    /// How long colostrum still works at this age.
    Window(TimeDelta),
    /// The next feed of a newborn, of what it wants.
    NextFeed(Next, Want),
    /// What a bottle lamb takes in a day.
    Bottle(bottle::Day),
    /// What a birth weight means.
    BirthWeight(Against),
    /// Whether a bottle lamb can be weaned.
    Weaning(weaning::Answer),
    /// How a weight stands against the eight-week target.
    Growth {
        /// What it weighed at birth.
        birth_weight: Mass,
        /// What it weighs.
        weight: Mass,
        /// At what age.
        age: TimeDelta,
        /// What is expected then.
        at: Expected,
    },
    /// When a ring may go on.
    Ring(Window, RingState),
    /// When the first vaccine is due.
    Vaccine(Vaccine),
    /// When a ewe may lamb.
    Outlook(Outlook),
    /// A grade of vigor, in the farm's limits.
    Vigor(FourGrade),
    /// A score of ten points.
    TenPoint(Score),
}

impl Reason {
    /// Returns the answer.
    #[must_use]
    pub fn answer(&self, view: &View) -> Why {
        match self {
            Self::Milk(want) => why::colostrum(want, view.system()),
            Self::Labor(duty) => why::labor(duty, view.practice(), view.now),
            Self::Shopping => why::shopping(),
            Self::Window(age) => why::window(*age),
            Self::NextFeed(next, want) => why::next_feed(next, want, view.system()),
            Self::Bottle(day) => why::bottle(day, view.system()),
            Self::BirthWeight(against) => why::against(against, view.system()),
            Self::Weaning(answer) => why::weaning(answer, view.system()),
            Self::Growth { birth_weight, weight, age, at } => {
                why::growth(*birth_weight, *weight, *age, at, view.system())
            }
            Self::Ring(window, state) => why::marking(window, *state),
            Self::Vaccine(vaccine) => why::vaccine(vaccine),
            Self::Outlook(outlook) => why::outlook(outlook),
            Self::Vigor(grade) => why::vigor(*grade, &view.practice().limits),
            Self::TenPoint(score) => why::ten_point(score),
        }
    }
}

/// Returns the sheet with the answer.
#[must_use]
pub(crate) fn sheet(reason: &Reason, view: &View) -> SheetPage {
    let Why { heading, working, rule, sources, others, caution } = reason.answer(view);
    SheetPage::new(heading, reasons(working, rule, sources, others, caution))
}

fn reasons(
    working: Vec<String>,
    rule: String,
    sources: Vec<String>,
    others: Vec<String>,
    caution: Vec<String>,
) -> Blocks {
    let lines = |blocks: Blocks, heading: &str, look: ListLook, lines: Vec<String>| {
        if lines.is_empty() {
            return blocks;
        }
        blocks.heading(heading).list(look, lines.into_iter().map(Item::new))
    };
    let rule = if rule.is_empty() { Vec::new() } else { vec![rule] };
    let blocks = lines(Blocks::new(), label::WORKING, ListLook::Working, working);
    let blocks = lines(blocks, label::RULE, ListLook::Rule, rule);
    let blocks = if caution.is_empty() { blocks } else { blocks.caution(caution) };
    let blocks = lines(blocks, label::OTHERS, ListLook::Others, others);
    lines(blocks, label::SOURCES, ListLook::Sources, sources)
}
