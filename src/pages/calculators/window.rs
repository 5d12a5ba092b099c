//! How long colostrum still works, from an age or a time of birth.

use chrono::NaiveTime;
use yeanling_core::reckon::window::{DISSENT, absorption, left, place_on_ribbon, stretch};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_words::common::{read_field_clock, span};
use yeanling_words::{calculators as words, lamb, why};

use super::answer::{answer, figure, head};
use super::{age, choices};
use crate::block::{Field, FieldKind};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::ribbon::{Ribbon, RibbonKind, Stretch, Tick};
use crate::view::View;
use crate::{Kind, Reason};

/// Whether the age is given by the time of birth.
const BY: &str = "figures-by";
const BYS: [(bool, &str); 2] = [(false, words::BY_HOURS), (true, words::BY_BIRTH)];
/// The age as typed.
const AGE: &str = "figures-age";
/// The time of birth as typed.
const BORN: &str = "figures-born";

/// Returns the window by age.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let (by_birth, _) = fields.pick(BY, &BYS, BYS[0]);
    let ways = choices(BY, words::HOW_OLD, BYS.into_iter().enumerate(), |(by, name)| {
        (by == by_birth, name.to_owned(), "")
    });
    let blocks = Blocks::new().choices(BY, ways.labelled());
    let (blocks, age, nothing) =
        if by_birth { by_time_of_birth(blocks, view, fields) } else { by_hours(blocks, fields) };
    let blocks = if nothing { blocks.small(words::TYPE_AGE) } else { blocks };
    match age {
        Some(age) => blocks.then(stands(age)),
        None => blocks,
    }
}

/// Asks for the age, and returns it, and whether nothing was typed.
fn by_hours(blocks: Blocks, fields: &Fields) -> (Blocks, Option<TimeDelta>, bool) {
    let text = fields.text(AGE, "");
    let read = age::read(&text);
    let error = read.as_ref().err().map(words::age_error).unwrap_or_default();
    let field = Field::new(words::AGE, FieldKind::Text, text).hint(words::AGE_HINT).error(error);
    let nothing = read == Ok(None);
    (blocks.field(AGE, field), read.ok().flatten(), nothing)
}

/// Asks for the time of birth, and returns the age, and whether nothing was typed.
fn by_time_of_birth(blocks: Blocks, view: &View, fields: &Fields) -> (Blocks, Option<TimeDelta>, bool) {
    let text = fields.text(BORN, "");
    let age = read_field_clock(&text).map(|born| view.now.since(last_time(view, born)));
    let hint = age.map_or_else(|| words::BORN_HINT.to_owned(), |age| words::born_so_long_ago(&span(age)));
    let field = Field::new(words::BORN, FieldKind::Time, text).hint(hint);
    (blocks.field(BORN, field), age, age.is_none())
}

/// Returns where in the window a lamb of this age stands.
fn stands(age: TimeDelta) -> Blocks {
    let time_left = match left(age) {
        Some(left) => figure(span(left), "", words::LEFT),
        None => figure(words::CLOSED, "", words::CLOSED_ALSO),
    };
    let reaches = figure(words::reaches(absorption(age)), "%", words::REACHES_ALSO);
    let why = || Some(Reason::Window(age));
    Blocks::new()
        .then([answer("time-left", words::TIME_LEFT, head(time_left), why())])
        .add("window", Kind::Ribbon(ribbon(age)))
        .text(words::stretch(stretch(age)))
        .then([answer("reaches", words::REACHES, reaches, why())])
        .small(words::dissent(&why::source_line(&DISSENT)))
}

fn hour(hours: i64) -> f64 {
    place_on_ribbon(TimeDelta::hours(hours))
}

fn ribbon(age: TimeDelta) -> Ribbon {
    let stretches = [
        (0, 1, RibbonKind::Best),
        (1, 2, RibbonKind::Best),
        (2, 6, RibbonKind::Good),
        (6, 12, RibbonKind::Fair),
        (12, 24, RibbonKind::Poor),
    ];
    let stretch =
        |(from, to, kind)| Stretch { from: hour(from), to: hour(to), kind, label: lamb::stretch(from, to) };
    let ticks = vec![
        Tick::new(0.0, lamb::RIBBON_BORN),
        Tick::new(hour(1), "1 h").rank(1),
        Tick::new(hour(2), "2").rank(2),
        Tick::new(hour(6), "6").rank(1),
        Tick::new(hour(12), "12").rank(2),
        Tick::new(1.0, "24 h"),
    ];
    let label = match left(age) {
        Some(left) => lamb::ribbon_label(&span(age), &span(left)),
        None => lamb::RIBBON_CLOSED.to_owned(),
    };
    let now = left(age).map(|_| place_on_ribbon(age));
    Ribbon { label, stretches: stretches.map(stretch).to_vec(), ticks, now, pins: Vec::new() }
}

/// Returns the last instant at which the clock on the wall showed this time.
fn last_time(view: &View, time: NaiveTime) -> Moment {
    let today = view.now.local().date();
    let at = (view.at_local)(today.and_time(time));
    match today.pred_opt() {
        Some(yesterday) if at > view.now => (view.at_local)(yesterday.and_time(time)),
        Some(_) | None => at,
    }
}
