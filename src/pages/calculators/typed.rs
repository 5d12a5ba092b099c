//! A number as it is typed into a field: nothing, a quantity, or what is wrong in words.

use yeanling_core::units::System;

use crate::block::{Field, FieldKind};
use crate::draft::Fields;

/// What became of what was typed: nothing typed is none.
pub(super) type Read<T> = Result<Option<T>, String>;

/// Reads what was typed under a key with `parse`, which says in words what is wrong.
pub(super) fn read<T>(
    fields: &Fields,
    key: &str,
    system: System,
    parse: impl Fn(&str, System) -> Result<T, String>,
) -> Read<T> {
    let typed = fields.text(key, "");
    if typed.trim().is_empty() { Ok(None) } else { parse(&typed, system).map(Some) }
}

/// Returns the quantity, if one was typed and is right.
pub(super) fn good<T: Copy>(read: &Read<T>) -> Option<T> {
    read.as_ref().ok().copied().flatten()
}

/// Returns what is wrong; empty when nothing is.
pub(super) fn wrong<T>(read: &Read<T>) -> String {
    read.as_ref().err().cloned().unwrap_or_default()
}

/// Returns the field of a number with its unit, and with what is wrong under it.
pub(super) fn field<T>(fields: &Fields, key: &str, label: &str, read: &Read<T>, unit: &str) -> Field {
    Field::new(label, FieldKind::Decimal, fields.text(key, "")).error(wrong(read)).unit(unit)
}
