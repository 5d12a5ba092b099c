//! Every screen as plain data: what it shows, and what a press does. No browser, no signals.
//!
//! [`page`] makes a screen of a [`View`] and a [`Draft`]; [`act`] does what a press asks and says what is left to the farm.
//! Each screen is one file or folder of its name, each sheet one file of `sheets`.

mod action;
pub mod block;
mod bottle_round;
mod button;
pub mod chart;
mod draft;
mod duty_ribbon;
pub mod everyone;
mod flock;
mod lamb_row;
pub mod made_up;
mod milk;
mod milk_ribbon;
mod more;
mod night;
mod page;
pub mod phone;
mod powder;
pub mod ribbon;
mod screen;
mod sheets;
mod standing;
mod stores;
mod text;
mod timeline;
mod to_calendar;
mod view;
mod watch;
mod weight;
mod why;
mod withheld;

pub use action::{Action, Effect, Heard, Request, act};
pub use block::{Block, Key, Kind, State};
pub use button::{Button, Size, Stays, Weight};
pub use draft::{Draft, Fields, Noting, Open};
pub use page::{Blocks, Page, SheetPage, Tally, key_of, why};
pub use screen::Screen;
pub use sheets::Sheet;
pub use standing::{SaveState, Top, standing, top};
pub use text::{Span, Text};
pub use to_calendar::ToCalendar;
pub use view::{Lazy, View};
pub use why::Reason;

use yeanling_core::book::LambId;
use yeanling_words::danger::Found;

/// What only one screen or sheet knows.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// A ewe that is new to the book comes, and what she was picked for follows.
    NewEwe(sheets::ewe_picker::NewEwe),
    /// Adds a ewe with the tag that was looked for.
    AddFound,
    /// Hands alarms to the phone's calendar.
    ToCalendar(ToCalendar),
    /// A lamb was found already born, and can be so old at the most.
    FoundBorn(LambId, Found),
}

/// Returns a screen; none while it is still drawn by hand.
#[must_use]
pub fn page(screen: Screen, view: &View, draft: &Draft) -> Option<Page> {
    let mut page = match screen {
        Screen::More => more::page(view),
        Screen::Stores => stores::page(view),
        Screen::BottleRound => bottle_round::page(view, draft),
        Screen::Night => night::page(view, draft),
        Screen::Flock => flock::page(view, draft),
        Screen::Watch => watch::page(view, draft),
        Screen::Lambing
        | Screen::LambingEwe(_)
        | Screen::LambingUnknown
        | Screen::LambingLamb(_)
        | Screen::Lamb(_)
        | Screen::Ewe(_)
        | Screen::Pens
        | Screen::Pen(_)
        | Screen::ColdLamb(_)
        | Screen::Figures
        | Screen::HandOver
        | Screen::Help
        | Screen::Practice
        | Screen::Season
        | Screen::Group(_)
        | Screen::Race(_)
        | Screen::Medicines
        | Screen::Weighing
        | Screen::Feed
        | Screen::Year
        | Screen::Lost => return None,
    };
    page.sheets = sheets::pages(view, draft);
    Some(page)
}

/// Says whether a screen is made here; the others are still drawn by hand.
#[must_use]
pub const fn is_made(screen: Screen) -> bool {
    matches!(
        screen,
        Screen::More | Screen::Stores | Screen::BottleRound | Screen::Night | Screen::Flock | Screen::Watch
    )
}

/// What follows when something was typed or chosen.
fn typed(key: &Key, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    weight::chose_unit(key, draft.top_mut());
    if screen == Screen::Flock {
        flock::typed(key, view, draft);
    }
    Vec::new()
}

/// What a screen or sheet alone knows how to do.
fn does(does: &Does, _screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::NewEwe(new) => sheets::ewe_picker::does(new, view, draft),
        Does::AddFound => flock::add(view, draft),
        Does::ToCalendar(what) => to_calendar::does(what, view, draft),
        Does::FoundBorn(lamb, found) => sheets::found_born(*lamb, *found, view, draft),
    }
}

/// Something is about to be noted, perhaps: what a screen keeps of how it stood.
fn noted(screen: Screen, view: &View, draft: &mut Draft, effects: &[Effect]) {
    if screen == Screen::Watch {
        watch::noted(view, draft, effects);
    }
}

/// What the phone has answered.
fn heard(heard: &Heard, _screen: Screen, _view: &View, draft: &mut Draft) -> Vec<Effect> {
    match heard {
        Heard::Given(key, trouble) if to_calendar::is_ours(key) => {
            to_calendar::given(key, trouble.as_ref(), draft);
        }
        Heard::Given(..) | Heard::Saved(..) | Heard::Shared(_) => {}
    }
    Vec::new()
}

/// The screen is come to.
pub fn enter(screen: Screen, view: &View, draft: &mut Draft) {
    if screen == Screen::Flock {
        flock::enter(view, draft);
    }
    if screen == Screen::Watch {
        watch::enter(draft);
    }
}

/// The screen is left: what was typed into a field that saves when it is left is saved, and sheets on which nothing was typed
/// are closed.
pub fn leave(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let mut effects = Vec::new();
    if draft.sheets.is_empty()
        && let Some(page) = page(screen, view, draft)
    {
        for block in page.all() {
            let Kind::Field(block::Field { left: Some(left), .. }) = &block.kind else { continue };
            if draft.fields.typed(&block.key).is_some() {
                effects.extend(act(left, screen, view, draft));
            }
        }
    }
    draft.leave();
    effects
}
