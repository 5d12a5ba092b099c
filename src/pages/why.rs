//! "Why?": what is asked. Its answer is put into words only when its sheet is open.

use yeanling_core::reckon::colostrum::Want;
use yeanling_core::reckon::flock_figures::Figures;
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
    /// The figures of a season.
    FlockFigures(Figures),
}

impl Reason {
    /// Returns the answer.
    #[must_use]
    pub fn answer(&self, view: &View) -> Why {
        match self {
            Self::Milk(want) => why::colostrum(want, view.system()),
            Self::Labor(duty) => why::labor(duty, view.practice(), view.now),
            Self::Shopping => why::shopping(),
            Self::FlockFigures(figures) => why::flock_figures(figures),
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
