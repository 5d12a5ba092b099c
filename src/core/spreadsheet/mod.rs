//! Plain tables as comma-separated values (RFC 4180): written for any spreadsheet, read from any.
//!
//! A table is read in three steps, each of which a person sees and can put right: its cells (`read`), what its columns hold
//! (`meaning`), and the facts that its rows bring (the room `bring`). Nothing is left out in silence.

mod codes;
mod dates;
mod heads;
mod meaning;
mod read;
mod write;

pub use codes::{Code, CodeOf, says_nothing};
pub use dates::{Dated, NoDate, date, order_of};
pub use meaning::{Column, Meaning, TableKind, as_of, column_of, guess};
pub use read::{MOST_BYTES, MOST_ROWS, Sheet, SheetError, decode, of_lines, read};
pub use write::{Cell, write};
