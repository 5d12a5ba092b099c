//! The book by its public face.

pub(crate) mod arbitrary;
mod choices;
mod clash;
mod clock;
mod file;
mod forms;
mod laws;
mod schema;
mod split;
mod strangers;

use yeanling_core::book::{Book, DeviceId, Entry};
use yeanling_core::units::Moment;

/// Reads one entry from its JSON.
#[track_caller]
fn entry(json: &str) -> Entry {
    serde_json::from_str(json).expect("this is an entry")
}

fn made() -> Moment {
    "2026-02-25T08:00:00.000+00:00".parse().expect("a moment")
}

fn device() -> DeviceId {
    "019c0000-0000-7000-8000-0000000000d1".parse().expect("an id")
}

/// Writes a book as a file.
fn file(book: &Book) -> String {
    yeanling_core::book::write(book, made(), device())
}

/// An entry with this event, given as JSON; `number` makes its id.
#[track_caller]
fn noting(number: u32, event: &str) -> Entry {
    entry(&format!(
        r#"{{"id":"019c0000-0000-7000-8000-{number:012}","device":"{}","noted":"{}","at":"{}","event":{event}}}"#,
        device(),
        made(),
        made()
    ))
}
