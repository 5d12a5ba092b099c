//! One of a few: buttons side by side, of which one is down.
//!
//! They are plain buttons with `aria-pressed`, not radio inputs, so that what is shown is always what the book
//! says and a choice that was undone looks undone.

use super::live;
use crate::signals::prelude::*;

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
        Shape::Stacked
    } else if snug {
        Shape::Snug
    } else {
        Shape::Even
    };
    // What a value is does not matter to the buttons: they know its place, so that they are compiled once for all.
    let words = Signal::derive(move || {
        options.with(|options| {
            options.iter().map(|option| (option.label.clone(), option.note.clone())).collect()
        })
    });
    let place = Signal::derive(move || {
        let chosen = chosen.get()?;
        options.with(|options| options.iter().position(|option| option.value == chosen))
    });
    let choose = Callback::new(move |place: usize| {
        if let Some(value) = options.with_untracked(|options| options.get(place).map(|it| it.value.clone())) {
            on_choose.run((value,));
        }
    });
    buttons(label, labelled, words, place, choose, shape)
}

#[derive(Clone, Copy)]
enum Shape {
    Even,
    Snug,
    Stacked,
}

fn buttons(
    label: Signal<String>,
    labelled: bool,
    words: Signal<Vec<(String, String)>>,
    chosen: Signal<Option<usize>>,
    on_choose: Callback<usize>,
    shape: Shape,
) -> AnyView {
    let shape = match shape {
        Shape::Even => "even",
        Shape::Snug => "snug",
        Shape::Stacked => "stacked",
    };
    let button = move |(place, (text, note)): (usize, (String, String))| {
        let pressed = Signal::derive(move || (chosen.get() == Some(place)).to_string());
        view! {
            <button
                type="button"
                class="button choice"
                aria-pressed=pressed
                on:click=move |_| on_choose.run(place)
            >
                <span>{text}</span>
                {(!note.is_empty()).then(|| view! { <small>{note}</small> }.into_any())}
            </button>
        }
        .into_any()
    };
    view! {
        <div class="choices" role="group" aria-label=label data-shape=shape>
            {labelled.then(|| view! { <span class="choices-label" aria-hidden="true">{label}</span> }.into_any())}
            {live(move || words.get().into_iter().enumerate().map(button).collect_view().into_any())}
        </div>
    }
    .into_any()
}
