//! The line above a screen's name: the way back, or the farm's name and the way to the night; and whether everything is
//! saved.

use crate::signals::prelude::*;

use crate::farm::{Saving, use_farm};
use crate::parts::{Back, SaveMark, SaveState, SmallLink, TopBar};
use crate::route::Screen;
use crate::words::{frame, night};

/// The list from which an animal was opened, so that the way back leads there.
#[derive(Clone, Copy, Debug)]
pub(crate) struct CameFrom(RwSignal<(Screen, &'static str)>);

impl CameFrom {
    /// Lets screens find it; nobody came from anywhere yet.
    pub(crate) fn provide() -> Self {
        let from = Self(RwSignal::new((Screen::Watch, frame::WATCH)));
        provide_context(from);
        from
    }

    /// Takes note that this screen is left; only lists count, not animals.
    /// Returns it as a signal.
    pub(crate) const fn signal(self) -> RwSignal<(Screen, &'static str)> {
        self.0
    }

    /// Remembers the screen that is left.
    pub(crate) fn leave(self, screen: Screen) {
        if let Some(name) = screen.way_back() {
            self.0.set((screen, name));
        }
    }

    /// Whether one goes back from an animal, a group or a pen to the list one came from, where its row is looked for. The
    /// Watch begins anew at its top: what is most urgent stands there.
    pub(crate) fn goes_back(self, from: Screen, to: Screen) -> bool {
        let one = matches!(from, Screen::Ewe(_) | Screen::Lamb(_) | Screen::Group(_) | Screen::Pen(_));
        one && to != Screen::Watch && self.0.get_untracked().0 == to
    }

    /// Returns where the way back from this screen leads, and its name: never to itself.
    pub(crate) fn back(here: Screen) -> (Screen, String) {
        let from = use_context::<Self>().map(|from| from.0.get_untracked());
        let (screen, name) = from.filter(|(from, _)| *from != here).unwrap_or((Screen::Watch, frame::WATCH));
        (screen, name.to_owned())
    }
}

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
