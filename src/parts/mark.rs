//! The state of a duty as a shape: a triangle with a stroke is danger, a full disc is late, a half disc is now, a ring is coming, a tick is done.
//!
//! The shape carries its word for those who listen, so that color never carries the state alone.

use super::label;
use crate::signals::prelude::*;

/// How a duty stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowState {
    /// A life hangs on it.
    Danger,
    /// Its time has passed.
    Late,
    /// Its time is now.
    Now,
    /// Its time is still to come.
    Coming,
    /// It is done.
    Done,
}

impl RowState {
    /// Returns the value of `data-state` that style and tests know.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Danger => "danger",
            Self::Late => "late",
            Self::Now => "now",
            Self::Coming => "coming",
            Self::Done => "done",
        }
    }

    /// Returns the word that is read out for the shape.
    const fn word(self) -> &'static str {
        match self {
            Self::Danger => label::DANGER,
            Self::Late => label::LATE,
            Self::Now => label::NOW,
            Self::Coming => label::COMING,
            Self::Done => label::DONE,
        }
    }
}

/// Draws the state of a duty as a small shape.
#[component]
pub fn Mark(
    /// The state to draw.
    #[prop(into)]
    state: Signal<RowState>,
    /// Whether the word already stands beside it, so that the shape is not read out.
    #[prop(optional)]
    silent: bool,
) -> impl IntoView {
    let word = move || (!silent).then(|| state.get().word());
    view! {
        <svg
            class="mark"
            viewBox="0 0 16 16"
            role=(!silent).then_some("img")
            aria-label=word
            aria-hidden=silent.then_some("true")
        >
            <path class="mark-line" d=move || outline(state.get()) />
            <path class="mark-fill" d=move || filling(state.get()) />
        </svg>
    }
}

/// Returns the drawn line of the shape.
const fn outline(state: RowState) -> &'static str {
    match state {
        RowState::Danger => "M8 1.5l7 12.5h-14z",
        RowState::Late | RowState::Now | RowState::Coming => "M8 2a6 6 0 1 1 0 12a6 6 0 1 1 0-12z",
        RowState::Done => "M2.5 8.5l4 4l7-9",
    }
}

/// Returns the filled part of the shape.
const fn filling(state: RowState) -> &'static str {
    match state {
        RowState::Danger => "M8 1.5l7 12.5h-14zM7.2 5.5l.3 4.5h1l.3-4.5zM7.3 11.2h1.4v1.4h-1.4z",
        RowState::Late => "M8 2a6 6 0 1 1 0 12a6 6 0 1 1 0-12z",
        RowState::Now => "M8 2a6 6 0 0 1 0 12z",
        RowState::Coming | RowState::Done => "",
    }
}
