//! One entry: noted once, never changed; a small document that carries its own id.
//!
//! A fact that this version cannot read is kept as the text it was, so that it leaves as it came.

use serde::{Deserialize, Deserializer, Serialize, Serializer, de, ser};
use serde_json::value::RawValue;

use super::event::Event;
use super::fact;
use super::ids::{DeviceId, EntryId};
use super::unread::Unread;
use crate::units::Moment;

/// What was noted: a fact, when it happened, and who wrote it down when.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The entry's own id.
    pub id: EntryId,
    /// The phone that wrote it.
    pub device: DeviceId,
    /// When it was written; on one phone always later than all that phone had seen.
    pub noted: Moment,
    /// When it happened.
    pub at: Moment,
    /// The fact.
    pub event: Event,
}

#[derive(Serialize)]
struct Written<'a, E: Serialize> {
    id: EntryId,
    device: DeviceId,
    noted: Moment,
    at: Moment,
    event: &'a E,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Read<'a> {
    id: EntryId,
    device: DeviceId,
    noted: Moment,
    at: Moment,
    #[serde(borrow)]
    event: &'a RawValue,
}

impl Serialize for Entry {
    /// Writes the entry as JSON. Only a JSON serializer can carry a fact that could not be read.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let Self { id, device, noted, at, ref event } = *self;
        if let Event::Unread(unread) = event {
            let event = &RawValue::from_string(unread.as_json().to_owned())
                .map_err(<S::Error as ser::Error>::custom)?;
            Written { id, device, noted, at, event }.serialize(serializer)
        } else {
            Written { id, device, noted, at, event }.serialize(serializer)
        }
    }
}

impl<'de> Deserialize<'de> for Entry {
    /// Reads an entry from JSON. A fact that this version cannot read must still be a JSON object or string.
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let Read { id, device, noted, at, event } = Read::deserialize(deserializer)?;
        let json = event.get();
        let event = match fact::from_json::<Event>(json) {
            Ok(event) => event,
            Err(_) if json.starts_with(['{', '"']) => Event::Unread(Unread::from_json(compact(json))),
            Err(error) => return Err(de::Error::custom(error)),
        };
        Ok(Self { id, device, noted, at, event })
    }
}

/// Returns JSON without the white space between its tokens; what stands inside a string stays.
fn compact(json: &str) -> String {
    let mut out = String::with_capacity(json.len());
    pieces(json, |piece| out.push_str(piece));
    out
}

/// Gives out JSON piece by piece, without the white space between its tokens; what stands inside a string stays.
pub(super) fn pieces<'a>(json: &'a str, mut give: impl FnMut(&'a str)) {
    let (mut from, mut in_string, mut escaped) = (0, false, false);
    for (at, byte) in json.bytes().enumerate() {
        if in_string {
            in_string = escaped || byte != b'"';
            escaped = byte == b'\\' && !escaped;
        } else if matches!(byte, b' ' | b'\n' | b'\r' | b'\t') {
            give(&json[from..at]);
            from = at + 1;
        } else {
            in_string = byte == b'"';
        }
    }
    give(&json[from..]);
}
