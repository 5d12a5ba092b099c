//! Every screen as plain data: what it shows, and what a press does. No browser, no signals.
//!
//! [`page`] makes a screen of a [`View`] and a [`Draft`]; [`act`] does what a press asks and says what is left to the farm.
//! Each screen is one file or folder of its name, each sheet one file of `sheets`.
//!
//! A field passes on what is typed when the screen goes away under it, as by the phone's back button.

mod action;
mod birth_weight;
pub mod block;
mod bottle_round;
mod button;
mod calculators;
pub mod chart;
mod chart_days;
mod cold_lamb;
mod draft;
mod due_now;
mod duty_ribbon;
mod erase;
pub mod everyone;
mod ewe;
mod farm;
mod feed;
mod flock;
mod group;
mod help;
mod illness;
mod in_brief;
mod keep;
mod keypad;
mod lamb;
mod lambing;
mod lost;
mod meaning;
mod medicines;
mod milk;
mod milk_ribbon;
mod night;
mod on_keys;
mod page;
mod pens;
pub mod phone;
mod pick_many;
mod powder;
pub mod sample;
mod score_ewes;
mod settings;
mod share;

pub mod ribbon;
mod screen;
mod season;
mod setup;
mod sheets;
mod standing;
mod stores;
mod tagging;
mod text;
mod timeline;
mod to_calendar;
mod undo;
mod vet;
mod view;
mod weighing;

mod watch;
mod weight;
mod what_if;
mod why;
mod withdrawal;
mod year;

pub use action::{Action, Effect, Heard, Request, act};
pub use block::{Block, Key, Kind, State};
pub use button::{Button, Size, Stays, Weight};
pub use draft::{Draft, Fields, Noting, Open};
pub use keypad::KeyPress;
pub use meaning::Meaning;
pub use page::{Blocks, Page, SheetPage, Tally, key_of, why};
pub use screen::Screen;
pub use settings::Part as SettingsPart;
pub use share::{Ahead, Incoming};
pub use sheets::Sheet;
pub use standing::{SaveState, Top, standing, top};
pub use text::{Span, Text};
pub use to_calendar::ToCalendar;
pub use undo::{Last, offer};
pub use view::{Lazy, View};
pub use why::Reason;

use yeanling_core::book::{GroupId, LambId, PlannedJob};
use yeanling_words::danger::Found;
pub use yeanling_words::time::in_way;

/// What only one screen or sheet knows.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// Hands alarms to the phone's calendar.
    ToCalendar(ToCalendar),
    /// What the pens know.
    Pens(pens::Does),
    /// What one group gone through knows.
    ScoreEwes(score_ewes::Does),
    /// What the scales know.
    Weighing(weighing::Does),
    /// A ewe that is new to the book comes, and what she was picked for follows.
    NewEwe(sheets::ewe_picker::NewEwe),
    /// On the screen of a lamb.
    Lamb(lamb::Does),
    /// What the cold lamb knows.
    ColdLamb(cold_lamb::Does),
    /// What a lambing knows.
    Lambing(lambing::Does),
    /// A lamb was found already born, and can be so old at the most.
    FoundBorn(LambId, Found),
    /// Of the farm settings.
    FarmSettings(settings::Does),
    /// Medicines.
    Medicines(medicines::Does),
    /// A medicine given.
    Treat(sheets::TreatDoes),
    /// What was seen of an animal that is not right.
    Illness(illness::Does),
    /// Of the calculators.
    Figures(calculators::Does),
    /// Adds a ewe with the tag that was looked for.
    AddFound,
    /// Adds a ram with the tag that was looked for.
    AddRam,
    /// Adds a ewe for each tag of the range or list that was typed.
    AddMany,
    /// Of the first run.
    Setup(setup::Does),
    /// What a plan knows.
    WhatIf(what_if::Does),
    /// Saves the tag or the mark of the lamb whose turn it is.
    TagLamb(LambId),
    /// Hands the lambing kit on as a list.
    ShareKit,
    /// Something happened as it was planned.
    PlanHappened(PlannedJob, Option<GroupId>),
    /// Of sending the book and taking one in.
    Share(share::Does),
}

/// Returns a screen.
#[must_use]
pub fn page(screen: Screen, view: &View, draft: &Draft) -> Page {
    in_way(view.way(), || made(screen, view, draft))
}

/// Keeps a screen a function of its own, where all of them would be made one: a browser compiles a function when it is first
/// called, and a start calls one screen.
#[inline(never)]
fn apart<T>(make: impl FnOnce() -> T) -> T {
    make()
}

fn made(screen: Screen, view: &View, draft: &Draft) -> Page {
    let mut page = match screen {
        Screen::Calculators => apart(|| calculators::page(view, draft)),
        Screen::Share => apart(|| share::page(view, draft)),
        Screen::Tables => apart(|| share::tables_page(view, draft)),
        Screen::Farm => apart(|| farm::page(view)),
        Screen::Supplies => apart(|| stores::page(view, draft)),
        Screen::Pens => apart(|| pens::page(view)),
        Screen::Pen(pen) => apart(|| pens::one_page(view, pen)),
        Screen::ScoreEwes(group) => apart(|| score_ewes::page(view, draft, group)),
        Screen::Group(group) => apart(|| group::page(view, draft, group)),
        Screen::Plan => apart(|| what_if::page(view, draft)),
        Screen::Season => apart(|| season::page(view, draft)),
        Screen::WeighLambs => apart(|| weighing::page(view, draft)),
        Screen::TagLambs => apart(|| tagging::page(view, draft)),
        Screen::Feed => apart(|| feed::page(view, draft)),
        Screen::Settings => apart(|| settings::page(view)),
        Screen::SettingsOf(part) => apart(|| settings::part_page(view, draft, part)),
        Screen::Medicines => apart(|| medicines::page(view, draft)),
        Screen::Lamb(id) => apart(|| lamb::page(view, id)),
        Screen::Ewe(id) => apart(|| ewe::page(view, id)),
        Screen::ColdLamb(lamb) => apart(|| cold_lamb::page(view, draft, lamb)),
        Screen::Lambing => apart(|| lambing::who_page(view, draft)),
        Screen::LambingEwe(_) | Screen::LambingUnknown | Screen::LambingLamb(_) => {
            apart(|| lambing::page(view, draft, screen))
        }
        Screen::NotRight => apart(|| illness::who_page(view, draft)),
        Screen::IllEwe(id) => apart(|| illness::ewe_page(view, draft, id)),
        Screen::IllLamb(id) => apart(|| illness::lamb_page(view, draft, id)),
        Screen::BottleRound => apart(|| bottle_round::page(view, draft)),
        Screen::Night => apart(|| night::page(view, draft)),
        Screen::Flock => apart(|| flock::page(view, draft)),
        Screen::Summary => apart(|| year::page(view, draft)),
        Screen::Keep => apart(|| keep::page(view, draft)),
        Screen::Help => apart(|| help::page(view, draft)),
        Screen::Topic(topic) => apart(|| help::topic_page(view, topic)),
        Screen::Ailment(ailment) => apart(|| help::ailment_page(view, ailment)),
        Screen::Lost => lost::page(),
        Screen::Setup => apart(|| setup::page(view, draft)),
        Screen::Erase => apart(|| erase::page(view, draft)),
        Screen::Watch => apart(|| watch::page(view, draft)),
    };
    page.beside = flock::beside(view, screen);
    page.sheets = sheets::pages(view, draft);
    vet::put(&mut page, view);
    page
}

/// What follows when something was typed or chosen.
fn typed(key: &Key, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    weight::chose_unit(key, draft.top_mut());
    if matches!(screen, Screen::ScoreEwes(_)) {
        score_ewes::typed(key, &mut draft.fields);
    }
    if screen == Screen::WeighLambs {
        weighing::typed(key, view, &mut draft.fields);
    }
    if screen == Screen::TagLambs {
        tagging::typed(key, &mut draft.fields);
    }
    if matches!(screen, Screen::SettingsOf(_)) {
        settings::typed(key, draft);
    }
    lamb::typed_dam(key, draft.top_mut());
    if let Screen::ColdLamb(_) = screen {
        return cold_lamb::typed(key, view, draft);
    }
    if screen == Screen::Flock {
        flock::typed(key, view, draft);
    }
    lambing::typed(key, screen, view, draft)
}

/// What a screen or sheet alone knows how to do.
fn does(does: &Does, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Pens(does) => apart(|| pens::does(*does, view, draft)),
        Does::ScoreEwes(does) => apart(|| score_ewes::does(does, view, draft)),
        Does::Weighing(does) => apart(|| weighing::does(*does, view, draft)),
        Does::ToCalendar(what) => apart(|| to_calendar::does(what, view, draft)),
        Does::NewEwe(new) => apart(|| sheets::ewe_picker::does(new, view, draft)),
        Does::Lamb(does) => apart(|| lamb::does(*does, view, draft)),
        Does::ColdLamb(does) => apart(|| cold_lamb::does(*does, screen, view, draft)),
        Does::Lambing(does) => apart(|| lambing::does(does, screen, view, draft)),
        Does::FoundBorn(lamb, found) => apart(|| sheets::found_born(*lamb, *found, view, draft)),
        Does::FarmSettings(does) => apart(|| settings::does(*does, view, draft)),
        Does::Medicines(does) => apart(|| medicines::does(*does, view, draft)),
        Does::Treat(does) => apart(|| sheets::does_treat(*does, view, draft)),
        Does::Illness(does) => apart(|| illness::does(*does, view, draft)),
        Does::Figures(does) => apart(|| calculators::does(does, view, draft)),
        Does::AddFound => apart(|| flock::add(view, draft)),
        Does::AddRam => apart(|| flock::add_ram(view, draft)),
        Does::AddMany => apart(|| flock::add_many(view, draft)),
        Does::Setup(does) => apart(|| setup::does(*does, view, draft)),
        Does::WhatIf(does) => apart(|| what_if::does(*does, view, draft)),
        Does::TagLamb(lamb) => apart(|| tagging::does(*lamb, view, draft)),
        Does::ShareKit => apart(|| stores::share_list(view)),
        Does::PlanHappened(what, group) => apart(|| season::plan_happened(*what, *group, view, draft)),
        Does::Share(does) => apart(|| share::does(does, view, draft)),
    }
}

/// Something is about to be noted, perhaps: what a screen keeps of how it stood.
fn noted(screen: Screen, view: &View, draft: &mut Draft, effects: &[Effect]) {
    if screen == Screen::Watch {
        watch::noted(view, draft, effects);
    }
    lambing::pressed(screen, view, draft);
}

/// What the phone has answered.
fn heard(heard: &Heard, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if matches!(screen, Screen::Share | Screen::Tables) {
        return share::heard(heard, view, draft);
    }
    match heard {
        Heard::Given(key, trouble) if to_calendar::is_ours(key) => {
            to_calendar::given(key, trouble.as_ref(), draft);
        }
        Heard::Given(key, trouble) if stores::is_list(key) => {
            stores::list_given(key, trouble.as_ref(), draft);
        }
        Heard::NotErased(said) => draft.say(erase::SAID, yeanling_words::erase::not_erased(said)),
        Heard::Given(..) | Heard::Saved(..) | Heard::Shared(_) | Heard::File(..) | Heard::Promised(_) => {}
    }
    Vec::new()
}

/// The screen is come to.
pub fn enter(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    in_way(view.way(), || entered(screen, view, draft))
}

fn entered(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let mut effects = lambing::enter(screen, view, draft);
    match screen {
        Screen::Flock => flock::enter(view, draft),
        Screen::Help => help::enter(view, draft),
        Screen::Watch => watch::enter(draft),
        Screen::Erase => erase::enter(draft),
        Screen::WeighLambs => weighing::enter(view, draft),
        Screen::TagLambs => tagging::enter(view, draft),
        Screen::ScoreEwes(group) => score_ewes::enter(view, draft, group),
        Screen::Share => effects.extend(share::enter()),
        _ => {}
    }
    effects
}

/// The screen is left: what was typed into a field that saves when it is left is saved, and sheets on which nothing was typed
/// are closed.
pub fn leave(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    in_way(view.way(), || left(screen, view, draft))
}

fn left(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let mut effects = Vec::new();
    if draft.sheets.is_empty() {
        for block in page(screen, view, draft).all() {
            let Kind::Field(block::Field { left: Some(left), .. }) = &block.kind else { continue };
            if draft.fields.typed(&block.key).is_some() {
                effects.extend(act(left, screen, view, draft));
            }
        }
    }
    if matches!(screen, Screen::SettingsOf(_)) {
        settings::left(draft);
    }
    effects.extend(lambing::leave(screen, view, draft));
    if matches!(screen, Screen::Share | Screen::Tables) {
        share::leave(draft);
    }
    draft.leave();
    effects
}
