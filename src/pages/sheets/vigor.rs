//! The sheet in which a lamb's vigor is scored, on the scale that the farm uses.

use yeanling_core::book::{Animal, Event, LambId, VigorScale};
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::settings::{Limits, VigorInUse};
use yeanling_core::units::TimeDelta;
use yeanling_words::{lamb as words, why as reasons};

use super::parts::whose;
use super::ten_point;
use crate::block::{Choice, Choices};
use crate::draft::Fields;
use crate::page::{Blocks, SheetPage, why};
use crate::view::View;
use crate::{Action, Reason};

/// From this age on a score is a late one (ours): twice the age that it is meant for.
const LATE_FROM: TimeDelta = TimeDelta::minutes(10);

/// The four grades.
pub(super) const GRADES: [FourGrade; 4] = [FourGrade::One, FourGrade::Two, FourGrade::Three, FourGrade::Four];

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    match view.settings().vigor {
        VigorInUse::TenPoint => ten_point::sheet(view, fields, lamb),
        VigorInUse::FourGrade => four_grades(view, lamb),
    }
}

fn four_grades(view: &View, lamb: LambId) -> SheetPage {
    let limits = &view.settings().limits;
    let score = |grade: FourGrade| {
        let event = Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: grade.number() };
        choice(grade, (limits, age(view, lamb)), Action::Answer(vec![event]))
    };
    let choices = Choices::new(ask(view, lamb), GRADES.map(score).to_vec(), None).stacked();
    let about = reasons::vigor(FourGrade::One, limits).heading;
    let blocks = Blocks::new()
        .text(words::VIGOR_SCALE)
        .then(late(view, lamb))
        .choices("vigor-grade", choices)
        .button(why(&about, Reason::Vigor(FourGrade::One)));
    SheetPage::new(ask(view, lamb), blocks).whose(whose(view, Animal::Lamb(lamb)))
}

fn age(view: &View, lamb: LambId) -> TimeDelta {
    view.flock.lamb(lamb).map(|lamb| lamb.age(view.now)).unwrap_or_default()
}

/// Asks how it is, at its own age.
pub(super) fn ask(view: &View, lamb: LambId) -> String {
    words::vigor_ask(age(view, lamb))
}

/// Says of a late score what it is worth.
pub(super) fn late(view: &View, lamb: LambId) -> Blocks {
    if age(view, lamb) > LATE_FROM { Blocks::new().text(words::VIGOR_LATE) } else { Blocks::new() }
}

/// Returns a grade with what it looks like, and what it asks for in the farm's limits.
///
/// What should have been by now is not told as something to come.
pub(super) fn choice(grade: FourGrade, (limits, age): (&Limits, TimeDelta), does: Action) -> Choice {
    let label = format!("{} · {}", grade.number(), reasons::vigor_meaning(grade));
    Choice::new(label, does).note(reasons::vigor_asks(grade, limits, age))
}
