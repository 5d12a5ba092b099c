//! A number as it is typed into a field: nothing, a figure in the unit that is kept inside, or what is wrong in words.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::units::System;

use crate::farm::use_farm;
use crate::parts::{Field, FieldKind};

/// What became of a typed number.
pub(super) type Read = Memo<Result<Option<f64>, String>>;

/// Reads a field with `read`, which gives the figure in the unit kept inside, or what is wrong; nothing typed is none.
pub(super) fn read(text: RwSignal<String>, read: fn(&str, System) -> Result<f64, String>) -> Read {
    let farm = use_farm();
    Memo::new(move |_| {
        let system = farm.system();
        let typed = text.get();
        if typed.trim().is_empty() { Ok(None) } else { read(&typed, system).map(Some) }
    })
}

/// Returns the figure, if one was typed and is right.
pub(super) fn good(read: Read) -> Option<f64> {
    read.get().ok().flatten()
}

/// Shows the field with what is wrong under it.
pub(super) fn field(
    label: &'static str,
    text: RwSignal<String>,
    read: Read,
    hint: &'static str,
    unit: fn(System) -> &'static str,
) -> AnyView {
    let farm = use_farm();
    view! {
        <Field
            label=label
            value=text
            kind=FieldKind::Decimal
            hint=hint
            error=Signal::derive(move || read.get().err().unwrap_or_default())
        >
            <span>{live(move || unit(farm.system()).into_any())}</span>
        </Field>
    }
    .into_any()
}
