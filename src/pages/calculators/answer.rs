//! One figure under its name, in the farm's units with the other beside it, which can be asked why.

use std::sync::Arc;

use yeanling_core::units::{System, Volume};
use yeanling_words::common::{volume, volume_number, volume_unit};

use crate::block::{Aloud, Block, Figure, FigureSize, Group, Line, LineLook, Shape};
use crate::page::why;
use crate::{Key, Kind, Reason};

/// Returns a figure alone.
pub(super) fn figure(value: impl Into<String>, unit: &str, also: impl Into<String>) -> Figure {
    Figure { value: value.into(), unit: unit.to_owned(), also: also.into(), ..Figure::default() }
}

/// Returns a volume in the farm's units, the other system's beside it.
pub(super) fn in_both(milk: Volume, system: System) -> Figure {
    figure(volume_number(milk, system), volume_unit(system), volume(milk, other(system)))
}

/// Returns the system that the farm does not read.
pub(super) const fn other(system: System) -> System {
    match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    }
}

/// Returns a figure under its name, with its reasons.
pub(super) fn answer(
    key: impl Into<Key>,
    label: &'static str,
    figure: Figure,
    reason: Option<Reason>,
) -> Arc<Block> {
    let line =
        Line { look: LineLook::AnswerLabel, text: label.into(), aloud: Aloud::Not, buttons: Vec::new() };
    let buttons = reason.map(|reason| why(label, Reason::Of(label, Box::new(reason)))).into_iter().collect();
    let figure = Figure { buttons, ..figure };
    let inside = vec![Block::new("", Kind::Line(line)), Block::new("", Kind::Figure(figure))];
    Block::new(key, Kind::Group(Group { shape: Shape::Answer, hidden: false, inside }))
}

/// Returns the same figure at the head of the screen.
pub(super) fn head(figure: Figure) -> Figure {
    Figure { size: FigureSize::Head, ..figure }
}
