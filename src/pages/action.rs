//! What a press does, as plain data, and what is left to the farm.

use std::sync::Arc;
use std::time::Duration;

use yeanling_core::book::{Event, LambId};
use yeanling_core::calendar::Alarm;
use yeanling_core::units::Moment;

use crate::draft::{Draft, Noting};
use crate::phone::{FileTrouble, HalfTyped, Look, Promised};
use crate::share::Incoming;
use crate::view::View;
use crate::{Does, Key, Screen, Sheet, sheets};

/// What a press does.
#[derive(Clone, Debug, PartialEq)]
pub enum Action {
    /// Nothing: what is chosen stands already.
    Nothing,
    /// Notes facts that happen now.
    Note(Vec<Event>),
    /// Notes them and closes the uppermost sheet.
    Answer(Vec<Event>),
    /// Opens a sheet.
    Ask(Sheet),
    /// Closes the uppermost sheet.
    Close,
    /// What was refused was read.
    Read,
    /// Saves what was typed on the uppermost sheet.
    Save,
    /// Types.
    Type(Key, String),
    /// Chooses one of a few, by its place.
    Choose(Key, usize),
    /// Goes to a screen; the phone's back button leads back.
    Go(Screen),
    /// Calls a telephone number, as it is dialed; the phone does it itself, as with any link.
    Call(String),
    /// Brings a block of this page into sight, by its key, and puts the focus there.
    Show(Key),
    /// What only one screen or sheet knows.
    Does(Does),
    /// Asks something of the phone.
    Phone(Request),
    /// The phone has answered.
    Heard(Heard),
}

/// What is asked of the phone or of the app around the pages.
#[derive(Clone, Debug, PartialEq)]
pub enum Request {
    /// Undoes what was done last.
    Undo,
    /// Puts the sample flock in front of the real one, and leads to the Watch.
    LookRound,
    /// Returns to the real flock, and leads to the Watch.
    StopLookingRound,
    /// Lets the waiting version take over.
    TakeUpdate,
    /// Chooses how this phone looks.
    ChooseLook(Look),
    /// Prints the page.
    Print,
    /// Arms the alarm and plays its test.
    Arm,
    /// Disarms it.
    Disarm,
    /// Answers its ring.
    Answer,
    /// What was missed was read.
    LetMissedGo,
    /// Saves the book as files on this phone: all of them, or the one of this place.
    SaveBook(Option<usize>),
    /// Shares the book.
    ShareBook,
    /// What was noted until then lies elsewhere too: someone says so.
    SafeElsewhere(Moment),
    /// Hands a table to the phone: its name and its text; it tells with `Heard::Given` of this key.
    GiveTable(Key, String, String),
    /// Hands a calendar of these alarms to the phone under a name; it tells with `Heard::Given` of this key. An alarm's address
    /// is the one within the app, to which the phone adds its own.
    GiveCalendar(Key, String, Vec<Alarm>),
    /// Asks the browser to keep the book for good; it tells with `Heard::Promised`.
    AskForGood,
    /// Asks the browser what it promises about keeping the book, and how much room there is.
    LookAtRoom,
    /// What was noted until then was saved on this phone, file by file.
    SavedHere(Moment),
    /// Saves the lines that could not be read as a file on this phone.
    SaveUnreadLines,
    /// Reads the file that was picked in the field of this key; it tells with `Heard::File` of this key.
    ReadFile(Key),
    /// Reads the file that was handed to the app, or waits for one; it tells with `Heard::File` of this key if there is one.
    ReadHandedIn(Key),
    /// Takes a book that was read into this phone's own: everything that is new in it, in one piece. Whoever looked round in
    /// the sample flock is back in their own.
    TakeIn(Arc<Incoming>),
    /// Erases this phone's book and all else that is kept of it, then starts anew; it tells with `Heard::NotErased` if that
    /// fails.
    EraseBook,
    /// Keeps what was answered about a cold lamb without a record.
    KeepColdLamb(String),
    /// Keeps how tables were read, for the next with the same heads.
    KeepTables(String),
    /// Keeps the digits of a lamb's birth weight that are not noted yet, or lets them go.
    KeepDigits(LambId, Option<HalfTyped>),
}

/// What the phone has answered.
#[derive(Clone, Debug, PartialEq)]
pub enum Heard {
    /// The book was saved as files: the places of those that were saved until now.
    Saved(Vec<usize>, Option<FileTrouble>),
    /// The book was shared, or not.
    Shared(Option<FileTrouble>),
    /// A table or calendar was handed over, or not.
    Given(Key, Option<FileTrouble>),
    /// A file was read, none was picked, or it could not be.
    File(Key, Result<Option<Arc<[u8]>>, FileTrouble>),
    /// What the browser promises about keeping the book, now that it was asked for more.
    Promised(Promised),
    /// The book could not be erased; what the browser said.
    NotErased(String),
}

/// What is left to the farm after a press.
#[derive(Clone, Debug, PartialEq)]
pub enum Effect {
    /// Notes facts, all of them or none.
    Note(Vec<Noting>),
    /// Lets the offer to undo what was done last go.
    LetLastGo,
    /// Goes to a screen.
    Go(Screen),
    /// Goes to a screen in the place of this one.
    Replace(Screen),
    /// Brings a block of this page into sight.
    Show(Key),
    /// Does something on this screen after a while.
    After(Duration, Action),
    /// Does something on another screen, as it will stand there when one comes.
    There(Screen, Action),
    /// Asks something of the phone.
    Phone(Request),
}

impl Effect {
    /// Returns the effect of noting one fact.
    #[must_use]
    pub fn note(noting: Noting) -> Self {
        Self::Note(vec![noting])
    }
}

/// Does what can be done on the page, and returns what is left to the farm.
pub fn act(action: &Action, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    crate::in_way(view.way(), || {
        let effects = done(action, screen, view, draft);
        crate::noted(screen, view, draft, &effects);
        effects
    })
}

fn done(action: &Action, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let notings = |events: &[Event]| events.iter().map(|event| view.noting(event.clone())).collect();
    match action {
        Action::Nothing | Action::Call(_) => {}
        Action::Note(events) => return draft.note(view, notings(events)),
        Action::Answer(events) => return draft.answer(view, notings(events)),
        Action::Ask(sheet) => draft.ask(sheet.clone()),
        Action::Close => draft.close(),
        Action::Read => draft.refused = None,
        Action::Save => return sheets::save(view, draft),
        Action::Type(key, text) => {
            let top = draft.top_mut();
            top.set(key.clone(), text.clone());
            top.right(key);
            return crate::typed(key, screen, view, draft);
        }
        Action::Choose(key, place) => {
            let top = draft.top_mut();
            top.choose(key.clone(), *place);
            top.right(key);
            return crate::typed(key, screen, view, draft);
        }
        Action::Go(screen) => return vec![Effect::Go(*screen)],
        Action::Show(key) => return vec![Effect::Show(key.clone())],
        Action::Does(does) => return crate::does(does, screen, view, draft),
        Action::Phone(request) => return vec![Effect::Phone(request.clone())],
        Action::Heard(heard) => return crate::heard(heard, screen, view, draft),
    }
    Vec::new()
}
