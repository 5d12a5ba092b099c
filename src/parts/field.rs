//! A labelled field for what must be typed, with its hint, its unit and what is wrong with it.
//!
//! What is wrong stands beside what was typed and never replaces it.

use super::live;
use crate::signals::prelude::*;

/// What is typed into a field, which decides the keyboard that comes up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FieldKind {
    /// A few words.
    #[default]
    Text,
    /// Several lines of words.
    Long,
    /// A whole number.
    Whole,
    /// A number with a point or a comma.
    Decimal,
    /// A time of day.
    Time,
    /// A day.
    Date,
    /// A day and a time.
    Moment,
    /// Something to look for.
    Search,
}

impl FieldKind {
    const fn input_type(self) -> &'static str {
        match self {
            Self::Text | Self::Long | Self::Whole | Self::Decimal => "text",
            Self::Time => "time",
            Self::Date => "date",
            Self::Moment => "datetime-local",
            Self::Search => "search",
        }
    }

    const fn input_mode(self) -> Option<&'static str> {
        match self {
            Self::Whole => Some("numeric"),
            Self::Decimal => Some("decimal"),
            Self::Search => Some("search"),
            Self::Text | Self::Long | Self::Time | Self::Date | Self::Moment => None,
        }
    }
}

/// Shows a labelled field.
#[component]
pub fn Field(
    /// What to type.
    #[prop(into)]
    label: Signal<String>,
    /// What was typed, exactly.
    value: RwSignal<String>,
    /// What kind of thing it is.
    #[prop(optional)]
    kind: FieldKind,
    /// A few words that help; empty for none.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What is wrong; empty when nothing is.
    #[prop(optional, into)]
    error: Signal<String>,
    /// Called with the text at every stroke.
    #[prop(optional, into)]
    on_input: Option<Callback<(String,)>>,
    /// Called with the text when the field is left or Enter is pressed.
    #[prop(optional, into)]
    on_change: Option<Callback<(String,)>>,
    /// Called when Enter is pressed.
    #[prop(optional, into)]
    on_enter: Option<Callback<()>>,
    /// What stands beside the input, such as the choice of units or a unit's name.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let id = super::fresh_id("field");
    let hint_id = format!("{id}-hint");
    let error_id = format!("{id}-error");
    let described = {
        let (hint_id, error_id) = (hint_id.clone(), error_id.clone());
        move || format!("{hint_id} {error_id}")
    };
    let invalid = move || error.with(|error| !error.is_empty()).then_some("true");
    // What was typed and not yet passed on.
    let waits = StoredValue::new(false);
    let typed = move |text: String| {
        waits.set_value(true);
        value.set(text.clone());
        if let Some(on_input) = on_input {
            on_input.run((text,));
        }
    };
    let left = move || {
        waits.set_value(false);
        if let Some(on_change) = on_change {
            on_change.run((value.get_untracked(),));
        }
    };
    // The phone's back button takes the screen away under what is typed: that counts too.
    on_cleanup(move || {
        if waits.get_value() {
            left();
        }
    });
    // Afterwards the browser may still say that the field was left.
    let left = move || {
        if waits.try_get_value().is_some() {
            left();
        }
    };
    let pressed = move |key: String| {
        if let Some(on_enter) = on_enter.filter(|_| key == "Enter") {
            on_enter.run(());
        }
    };
    let input = match kind {
        FieldKind::Long => view! {
            <textarea
                class="field-input"
                id=id.clone()
                rows="3"
                aria-describedby=described
                aria-invalid=invalid
                prop:value=move || value.get()
                on:input=move |event| typed(event_target_value(&event))
                on:change=move |_| left()
            ></textarea>
        }
        .into_any(),
        FieldKind::Text
        | FieldKind::Whole
        | FieldKind::Decimal
        | FieldKind::Time
        | FieldKind::Date
        | FieldKind::Moment
        | FieldKind::Search => view! {
            <input
                class="field-input"
                id=id.clone()
                type=kind.input_type()
                inputmode=kind.input_mode()
                autocomplete="off"
                aria-describedby=described
                aria-invalid=invalid
                prop:value=move || value.get()
                on:input=move |event| typed(event_target_value(&event))
                on:keydown=move |event| pressed(event.key())
                on:change=move |_| left()
            />
        }
        .into_any(),
    };
    view! {
        <div class="field">
            <label class="field-label" for=id>
                {live(move || label.get().into_any())}
            </label>
            <div class="field-line">
                {input} {children.map(|children| view! { <div class="field-unit">{children()}</div> }.into_any())}
            </div>
            <p class="field-error" id=error_id role="alert">
                {live(move || error.get().into_any())}
            </p>
            <p class="field-hint" id=hint_id>
                {live(move || hint.get().into_any())}
            </p>
        </div>
    }
}
