//! Share & back up: sending the book, importing one, and how it is kept.

mod incoming;
mod kept;
mod paper;
mod send;
mod spreadsheet;
mod table_in;
mod tables;
mod take;
mod twice;

use std::sync::Arc;

use yeanling_core::book::EweId;
use yeanling_words::{frame, share as words, spreadsheet as table_words};

use crate::block::{Aloud, FilePick, Line, LineLook};
use crate::draft::Draft;
use crate::page::{Blocks, Page};
use crate::phone::{FileTrouble, Promised};
use crate::view::View;
use crate::{Action, Button, Effect, Heard, Key, Kind, Request, Screen};

pub use incoming::{Ahead, Incoming};
pub(crate) use spreadsheet::Table;

/// Under which key a book is picked.
const BOOK: &str = "book-file";
/// Under which key a table is picked.
const TABLE: &str = "table-file";

/// What only this screen does.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// The file that was picked in the field of this key is read.
    Read(Key),
    /// What was read of a book is left.
    LeaveBook,
    /// What was read of a table is left.
    LeaveTable,
    /// Something of the table is put right.
    Table(table_in::Change),
    /// The book that was read is taken in.
    TakeIn,
    /// What the table brings is added.
    AddTable,
    /// What the last table brought is taken back.
    TakeTableBack,
    /// A table of the book is handed to the phone.
    Give(Table),
    /// Two records of one tag are of two ewes.
    Apart(EweId, EweId),
}

/// What is under way on this screen: it ends when the screen is left.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct UnderWay {
    /// How the book went out.
    sent: send::Sent,
    /// A book on its way in.
    book: Reading<Read>,
    /// A table on its way in.
    table: Reading<Arc<table_in::Import>>,
    /// What came of the last table.
    came: table_in::Came,
    /// What became of a table of the book.
    given: spreadsheet::Given,
    /// The pairs of records that are of two ewes.
    apart: Vec<(EweId, EweId)>,
    /// Whether the browser was asked to keep the book for good and said no.
    said_no: bool,
}

/// How far reading a file is.
#[derive(Clone, Debug, Default, PartialEq)]
enum Reading<T> {
    /// None is picked.
    #[default]
    Nothing,
    /// It is being read.
    Going,
    /// It was read and found whole.
    Read(T),
    /// It is none that can be taken in; why, in words.
    Wrong(String),
    /// It was taken in; how much came.
    Done(usize),
}

/// A book that was read. It is as large as a file may be: the same one is known by its place before it is looked through.
#[derive(Clone, Debug)]
struct Read(Arc<Incoming>);

impl PartialEq for Read {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0) || self.0 == other.0
    }
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let blocks = Blocks::new()
        .then(send::blocks(view, draft))
        .then(take::blocks(view, draft))
        .then(twice::blocks(view, draft));
    Page::new(words::TITLE)
        .under(words::SUB)
        .back(Screen::Farm, frame::FARM)
        .blocks(blocks.then(kept::blocks(view, draft)))
}

/// Returns the screen of tables: ewes from one, the book as some, and the ewes on paper. Nothing of the sample flock goes out.
pub(crate) fn tables_page(view: &View, draft: &Draft) -> Page {
    let page = Page::new(table_words::SCREEN).back(Screen::Farm, frame::FARM);
    if view.sample {
        let leave =
            Button::new("leave-sample", frame::LEAVE_MADE_UP, Action::Phone(Request::StopLookingRound));
        return page.blocks(Blocks::new().empty(table_words::NOT_OF_SAMPLE, [leave]));
    }
    page.blocks(table_in::blocks(view, draft).then(spreadsheet::blocks(draft)).then(paper::blocks(view)))
}

/// Returns what is asked when the screen opens: for a file that was handed to the app, and how the book is kept.
pub(crate) fn enter() -> Vec<Effect> {
    vec![Effect::Phone(Request::ReadHandedIn(BOOK.into())), Effect::Phone(Request::LookAtRoom)]
}

/// The screen is left.
pub(crate) fn leave(draft: &mut Draft) {
    draft.share = UnderWay::default();
    draft.fields.forget(TABLE);
}

/// Does what only this screen knows.
pub(crate) fn does(does: &Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Read(key) => {
            if key == TABLE {
                draft.share.table = Reading::Going;
                draft.fields.forget(TABLE);
            } else {
                draft.share.book = Reading::Going;
            }
            return vec![Effect::Phone(Request::ReadFile(key.clone()))];
        }
        Does::LeaveBook => draft.share.book = Reading::Nothing,
        Does::LeaveTable => draft.share.table = Reading::Nothing,
        Does::Table(change) => table_in::change(change, view, draft),
        Does::TakeIn => return take::take_in(draft),
        Does::AddTable => return table_in::add(view, draft),
        Does::TakeTableBack => return table_in::take_back(view, draft),
        Does::Give(table) => return spreadsheet::give(*table, view, draft),
        Does::Apart(older, newer) => draft.share.apart.push((*older, *newer)),
    }
    Vec::new()
}

/// The phone has answered.
pub(crate) fn heard(heard: &Heard, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match heard {
        Heard::Saved(saved, trouble) => return send::saved(saved, trouble.as_ref(), view, draft),
        Heard::Shared(trouble) => return send::shared(trouble.as_ref(), view, draft),
        Heard::Given(_, trouble) => spreadsheet::given(trouble.as_ref(), draft),
        Heard::File(key, file) if key == TABLE => {
            draft.share.table = read(file, |bytes| table_in::read(bytes, view));
        }
        Heard::File(_, file) => draft.share.book = read(file, |bytes| take::read(bytes, view)),
        Heard::NotErased(_) => {}
        Heard::Promised(promised) => draft.share.said_no = *promised == Promised::UntilRoomIsShort,
    }
    Vec::new()
}

/// Reads a file that the phone gave, or says in words why it did not; nothing when it was only not chosen.
fn read<T>(
    file: &Result<Option<Arc<[u8]>>, FileTrouble>,
    read: impl Fn(&[u8]) -> Result<T, String>,
) -> Reading<T> {
    match file {
        Ok(Some(bytes)) => read(bytes).map_or_else(Reading::Wrong, Reading::Read),
        Ok(None) | Err(FileTrouble::Closed | FileTrouble::CannotShare) => Reading::Nothing,
        Err(FileTrouble::TooLarge(bytes)) => Reading::Wrong(words::too_large(*bytes)),
        Err(FileTrouble::Failed(browser)) => Reading::Wrong(words::not_read(browser)),
    }
}

/// Returns the button that opens the phone's files.
fn pick(key: &'static str, label: &str) -> Kind {
    let does = Action::Does(crate::Does::Share(Does::Read(key.into())));
    Kind::FilePick(FilePick { label: label.to_owned(), accepts: "", does })
}

/// Returns a line of this look that is read out when it comes.
fn aloud(look: LineLook, text: impl Into<crate::Text>) -> Kind {
    Kind::Line(Line { look, text: text.into(), aloud: Aloud::Politely, buttons: Vec::new() })
}
