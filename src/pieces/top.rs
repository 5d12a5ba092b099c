//! The line above a screen's name: the way back, or the farm's name and the way to the night; and whether everything is
//! saved.

use crate::signals::prelude::*;

use crate::farm::{Saving, use_farm};
use crate::parts::{Back, SaveMark, SaveState, SmallLink, TopBar};
use crate::route::Screen;
use crate::words::{frame, night};

/// Shows the way back and the state of keeping.
#[component]
pub(crate) fn Top(
    /// Where the way back leads; without it the farm's name stands there.
    #[prop(optional, into)]
    back: Option<(Screen, String)>,
) -> impl IntoView {
    let farm = use_farm();
    let state = Signal::derive(move || match farm.saving() {
        Saving::Opening | Saving::Under(_) => SaveState::Saving,
        Saving::Saved(_) => SaveState::Saved,
        Saving::Poorly { .. } => SaveState::NotSaved,
    });
    let text = Signal::derive(move || match farm.saving() {
        Saving::Opening => frame::OPENING.to_owned(),
        Saving::Under(_) => frame::SAVING.to_owned(),
        Saving::Saved(None) => frame::SAVED.to_owned(),
        Saving::Saved(Some(at)) => frame::saved_at(at),
        Saving::Poorly { .. } => frame::NOT_SAFE.to_owned(),
    });
    let place = Signal::derive(move || farm.practice().farm_name);
    match back {
        Some((screen, label)) => view! {
            <TopBar back=Back { href: screen.hash(), label }>
                <SaveMark state=state text=text />
            </TopBar>
        }
        .into_any(),
        None => view! {
            <TopBar place=place>
                <SmallLink href=Screen::Night.hash() label=night::TITLE />
                " "
                <SaveMark state=state text=text />
            </TopBar>
        }
        .into_any(),
    }
}
