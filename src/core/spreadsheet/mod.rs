//! Plain tables as comma-separated values (RFC 4180): written for any spreadsheet, read from any.

mod ewes;
mod read;
mod write;

pub use ewes::{Column, NewEwe, NoRow, Preview, RowTrouble, columns, preview};
pub use read::{MOST_BYTES, MOST_ROWS, Sheet, SheetError, decode, read};
pub use write::{Cell, write};
