//! One of a few: buttons side by side, of which one is down.
//!
//! They are plain buttons with `aria-pressed`, not radio inputs, so that what is shown is always what the book
//! says and a choice that was undone looks undone.

use leptos::prelude::*;

/// One thing that can be chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice<T> {
    /// What it stands for.
    pub value: T,
    /// What its button says.
    pub label: String,
    /// A few more words under the label; may be empty.
    pub note: String,
}

impl<T> Choice<T> {
    /// Returns a choice without a note.
    pub fn new(value: T, label: impl Into<String>) -> Self {
        Self { value, label: label.into(), note: String::new() }
    }

    /// Returns the same choice with a few more words.
    #[must_use]
    pub fn note(self, note: impl Into<String>) -> Self {
        Self { note: note.into(), ..self }
    }
}

/// Shows a few choices of which at most one stands.
#[component]
pub fn Choices<T>(
    /// What is being chosen, read out before the choices.
    #[prop(into)]
    label: Signal<String>,
    /// Whether the label is also seen.
    #[prop(optional)]
    labelled: bool,
    /// The choices.
    #[prop(into)]
    options: Signal<Vec<Choice<T>>>,
    /// The one that stands.
    #[prop(into)]
    chosen: Signal<Option<T>>,
    /// Called with the value at every press, also of the one that stands.
    #[prop(into)]
    on_choose: Callback<(T,)>,
    /// Whether the buttons are only as wide as their words, as for units.
    #[prop(optional)]
    snug: bool,
    /// Whether the choices stand under each other, for long labels and notes.
    #[prop(optional)]
    stacked: bool,
) -> impl IntoView
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let shape = if stacked {
        "stacked"
    } else if snug {
        "snug"
    } else {
        "even"
    };
    let buttons = move || {
        options
            .get()
            .into_iter()
            .map(|option| {
                let value = option.value.clone();
                let pressed = move || chosen.with(|chosen| chosen.as_ref() == Some(&value)).to_string();
                let value = option.value;
                let note = option.note;
                view! {
                    <button
                        type="button"
                        class="button choice"
                        aria-pressed=pressed
                        on:click=move |_| on_choose.run((value.clone(),))
                    >
                        <span>{option.label}</span>
                        {(!note.is_empty()).then(|| view! { <small>{note}</small> })}
                    </button>
                }
            })
            .collect_view()
    };
    view! {
        <div class="choices" role="group" aria-label=move || label.get() data-shape=shape>
            {labelled
                .then(|| view! { <span class="choices-label" aria-hidden="true">{move || label.get()}</span> })}
            {buttons}
        </div>
    }
}
