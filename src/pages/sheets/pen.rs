//! The sheets of the pens: which ewe goes in, and into which pen.

use yeanling_core::book::{Animal, Event, PenId};
use yeanling_core::flock::Pen;
use yeanling_core::sort_small::SortSmall;
use yeanling_words::{animals, pens as words};

use super::ewe_picker::{self, Picker, Then};
use super::parts::whose;
use crate::Action;
use crate::block::{Choice, Choices};
use crate::draft::Fields;
use crate::page::{Blocks, SheetPage};
use crate::view::View;

/// Returns the sheet on which the ewe is picked that goes into a pen.
pub(super) fn put_in(view: &View, fields: &Fields, pen: PenId) -> SheetPage {
    let picker = Picker { lambed_first: true, ..Picker::default() };
    let goes_in = Then::GoesInto(pen);
    SheetPage::new(
        words::PUT_IN_ASK,
        ewe_picker::blocks(view, fields, picker, |picked| goes_in.picked(picked)),
    )
}

/// Returns the sheet on which the pen is picked into which an animal goes: empty and clean ones first, then by name.
pub(super) fn which(view: &View, animal: Animal) -> SheetPage {
    let here = view.flock.pen_of(animal).map(|(pen, _)| pen);
    let other = |pen: &&Pen| pen.closed.is_none() && Some(pen.id) != here;
    let mut open: Vec<&Pen> = view.flock.pens.values().filter(other).collect();
    open.sort_small_by_key(|pen| (!pen.inside.is_empty(), pen.soiled(), pen.name.len(), pen.name.clone()));
    let blocks = if open.is_empty() { Blocks::new().text(words::NO_PENS) } else { Blocks::new() };
    let options = open.into_iter().map(|pen| choice(view, animal, pen)).collect();
    let choices = Choices::new(words::MOVE_ASK, options, None).stacked();
    SheetPage::new(words::MOVE_ASK, blocks.choices("which-pen", choices)).whose(whose(view, animal))
}

fn choice(view: &View, animal: Animal, pen: &Pen) -> Choice {
    let note = match (pen.inside.first(), pen.soiled()) {
        (None, false) => words::NOBODY.to_owned(),
        (None, true) => words::SOILED.to_owned(),
        (Some(first), _) => animals::animal(view.flock, first.animal),
    };
    let goes_in = Event::PutInPen { animal, pen: pen.id };
    Choice::new(words::pen(pen), Action::Answer(vec![goes_in])).note(note)
}
