//! What screens are made of: presentational components, one noun a file.
//!
//! A part takes text, numbers and callbacks. It knows no sheep, keeps no record and says nothing of its own
//! beyond the few words in [`label`]. Its class in `style/parts/` has the same noun; a variant is a `data-…`
//! attribute that only sets custom properties there.

#![allow(unreachable_pub, reason = "the component macro hides the function it is given")]
#![allow(dead_code, reason = "parts are a kit: a shape may wait for the screen that shows it")]

mod button;
mod card;
mod caution;
mod chart;
mod checks;
mod choices;
mod drawing;
mod each;
mod empty;
mod facts;
mod field;
mod figure;
mod frame;
mod keypad;
pub use crate::words::label;
mod ledger;
mod live;
mod mark;
mod notice;
mod pen_card;
mod progress;
mod refusal;
mod remark;
mod ribbon;
mod room;
mod row;
mod said;
mod save_mark;
mod section;
mod sheet;
mod tab_bar;
mod tally;
mod timeline;
mod title;
mod toggle;
mod top_bar;
mod undo_bar;
mod why;

pub use button::{
    ActionButton, BigButton, Button, Emptied, LinkButton, SmallButton, SmallLink, Ticked, Weight,
};
pub use card::Card;
pub use caution::Caution;
pub use chart::{Bar, Chart, ChartLine, Drawn, LineKind};
pub use checks::Checks;
pub use choices::{Choice, Choices};
pub use drawing::{Drawing, DrawnButton};
pub use each::each;
pub use empty::Empty;
pub use facts::{Fact, Facts};
pub use field::{Field, FieldKind};
pub use figure::{Figure, FigureSize};
pub use frame::{Buttons, Frame, Page, Shown};
pub use keypad::{Keypad, Readout};
pub use ledger::{Ledger, LedgerRow};
pub use live::live;
pub use mark::{Mark, RowState};
pub use notice::{Notice, NoticeKind, Wrong};
pub use pen_card::{CardList, PaperCard};
pub use progress::Progress;
pub use refusal::{Refusal, Refused};
pub use remark::Remark;
pub use ribbon::{Pin, PinShape, Ribbon, RibbonKind, Stretch, Tick};
pub use room::Room;
pub use row::{Row, Rows};
pub use said::Said;
pub use save_mark::{SaveMark, SaveState};
pub use section::Section;
pub use sheet::Sheet;
pub use tab_bar::{Tab, TabBar};
pub use tally::Tally;
pub use timeline::{Noted, Timeline};
pub use title::Title;
pub use toggle::Toggle;
pub use top_bar::{Back, TopBar};
pub use undo_bar::UndoBar;
pub use why::{WhyButton, WhyText};

/// Returns an id that no other element of this page has, for tying a label, a hint or a pattern to its owner.
fn fresh_id(noun: &str) -> String {
    use std::sync::atomic::{AtomicUsize, Ordering};
    static NEXT: AtomicUsize = AtomicUsize::new(1);
    format!("{noun}-{}", NEXT.fetch_add(1, Ordering::Relaxed))
}
