//! Every screen as plain data: what it shows, and what a press does. No browser, no signals.
//!
//! [`page`] makes a screen of a [`View`] and a [`Draft`]; [`act`] does what a press asks and says what is left to the farm.
//! Each screen is one file or folder of its name, each sheet one file of `sheets`.

mod action;
pub mod block;
mod button;
pub mod chart;
mod draft;
pub mod everyone;
mod help;
mod lost;
pub mod made_up;
mod medicines;
mod more;
mod page;
pub mod phone;
mod practice;
pub mod ribbon;
mod screen;
mod sheets;
mod standing;
mod stores;
mod text;
mod view;
mod why;
mod withheld;
mod year;

pub use action::{Action, Effect, Heard, Request, act};
pub use block::{Block, Key, Kind, State};
pub use button::{Button, Size, Weight};
pub use draft::{Draft, Fields, Noting, Open};
pub use page::{Blocks, Page, SheetPage, key_of, why};
pub use screen::Screen;
pub use sheets::Sheet;
pub use standing::{SaveState, Top, standing, top};
pub use text::{Span, Text};
pub use view::{Lazy, View};
pub use why::Reason;

/// What only one screen or sheet knows.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// Practice.
    Practice(practice::Does),
    /// Medicines.
    Medicines(medicines::Does),
    /// A medicine given.
    Treat(sheets::TreatDoes),
}

/// Returns a screen; none while it is still drawn by hand.
#[must_use]
pub fn page(screen: Screen, view: &View, draft: &Draft) -> Option<Page> {
    let mut page = match screen {
        Screen::More => more::page(view),
        Screen::Stores => stores::page(view),
        Screen::Practice => practice::page(view, draft),
        Screen::Medicines => medicines::page(view, draft),
        Screen::Year => year::page(view, draft),
        Screen::Help => help::page(view),
        Screen::Lost => lost::page(),
        Screen::Watch
        | Screen::Lambing
        | Screen::LambingEwe(_)
        | Screen::LambingUnknown
        | Screen::LambingLamb(_)
        | Screen::Lamb(_)
        | Screen::Ewe(_)
        | Screen::Flock
        | Screen::Pens
        | Screen::Pen(_)
        | Screen::BottleRound
        | Screen::ColdLamb(_)
        | Screen::Figures
        | Screen::HandOver
        | Screen::Season
        | Screen::Group(_)
        | Screen::Race(_)
        | Screen::Weighing
        | Screen::Feed
        | Screen::Night => return None,
    };
    page.sheets = sheets::pages(view, draft);
    Some(page)
}

/// Says whether a screen is made here; the others are still drawn by hand.
#[must_use]
pub const fn is_made(screen: Screen) -> bool {
    matches!(
        screen,
        Screen::More
            | Screen::Stores
            | Screen::Practice
            | Screen::Medicines
            | Screen::Year
            | Screen::Help
            | Screen::Lost
    )
}

/// What follows when something was typed or chosen.
fn typed(key: &Key, screen: Screen, _view: &View, draft: &mut Draft) -> Vec<Effect> {
    if screen == Screen::Practice {
        practice::typed(key, draft);
    }
    Vec::new()
}

/// What a screen or sheet alone knows how to do.
fn does(does: &Does, _screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Practice(does) => practice::does(*does, view, draft),
        Does::Medicines(does) => medicines::does(*does, view, draft),
        Does::Treat(does) => sheets::does_treat(*does, view, draft),
    }
}

/// What the phone has answered.
fn heard(_heard: &Heard, _screen: Screen, _view: &View, _draft: &mut Draft) -> Vec<Effect> {
    Vec::new()
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
    if screen == Screen::Practice {
        practice::left(draft);
    }
    draft.leave();
    effects
}
