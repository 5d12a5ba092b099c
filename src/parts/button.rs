//! Buttons: one look in three weights and three sizes.
//!
//! Every target is at least `--target` high, also the small underlined ones, by padding.

use super::live;
use super::{Mark, RowState};
use crate::signals::prelude::*;
use leptos::ev::MouseEvent;

/// How much a button asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Weight {
    /// Filled with ink: the one thing to do next.
    Filled,
    /// Drawn with a line: one of several things to do.
    #[default]
    Outline,
    /// Paper without a strong line: for what is seldom used.
    Quiet,
}

impl Weight {
    /// Returns the value of `data-weight` that style knows.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Filled => "filled",
            Self::Outline => "outline",
            Self::Quiet => "quiet",
        }
    }
}

/// Shows an ordinary button, as in a grid of things that can be noted.
#[component]
pub fn Button(
    /// What a press does.
    #[prop(into)]
    label: Signal<String>,
    /// Called at every press.
    #[prop(into)]
    on_press: Callback<()>,
    /// How much it asks for.
    #[prop(optional)]
    weight: Weight,
    /// Whether it cannot be pressed now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button"
            data-weight=weight.key()
            disabled=move || disabled.get()
            on:click=move |_| on_press.run(())
        >
            {live(move || label.get().into_any())}
        </button>
    }
}

/// Shows the big button under the thumb; `Filled` unless told otherwise.
#[component]
pub fn BigButton(
    /// What a press does.
    #[prop(into)]
    label: Signal<String>,
    /// Called at every press.
    #[prop(into)]
    on_press: Callback<()>,
    /// How much it asks for.
    #[prop(default = Weight::Filled)]
    weight: Weight,
    /// Whether it cannot be pressed now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button"
            data-size="big"
            data-weight=weight.key()
            disabled=move || disabled.get()
            on:click=move |_| on_press.run(())
        >
            {live(move || label.get().into_any())}
        </button>
    }
}

/// A second press so soon (in milliseconds) and so near (in pixels) on one screen is the same one: rows move up under a
/// thumb that taps twice.
const SOON: f64 = 400.0;
const NEAR: i32 = 40;

/// When, where on the glass, and on which screen someone pressed.
#[derive(Debug)]
struct Press {
    at: f64,
    x: i32,
    y: i32,
    screen: String,
}

thread_local! {
    static LAST_PRESS: std::cell::RefCell<Option<Press>> = const { std::cell::RefCell::new(None) };
}

fn is_new_press(event: &MouseEvent) -> bool {
    // A press by keyboard counts no clicks, and is at no place.
    if event.detail() == 0 {
        return true;
    }
    let (at, x, y) = (event.time_stamp(), event.client_x(), event.client_y());
    let screen = window().location().hash().unwrap_or_default();
    let press = Press { at, x, y, screen };
    LAST_PRESS.with_borrow_mut(|last| {
        let again = last.as_ref().is_some_and(|last| {
            let near = (x - last.x).abs() < NEAR && (y - last.y).abs() < NEAR;
            near && (0.0..SOON).contains(&(at - last.at)) && press.screen == last.screen
        });
        *last = Some(press);
        !again
    })
}

/// Shows the button at the side of a row: one press does the duty, and a double tap does it once.
#[component]
pub fn ActionButton(
    /// What a press does, in a word or two.
    #[prop(into)]
    label: Signal<String>,
    /// Called at every press.
    #[prop(into)]
    on_press: Callback<()>,
    /// The whole name for those who listen, such as "Sucked, 14a".
    #[prop(optional, into)]
    name: Option<Signal<String>>,
    /// How much it asks for.
    #[prop(optional)]
    weight: Weight,
    /// Whether it cannot be pressed now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button"
            data-size="action"
            data-weight=weight.key()
            aria-label=move || name.map(|name| name.get())
            disabled=move || disabled.get()
            on:click=move |event| {
                if is_new_press(&event) {
                    on_press.run(());
                }
            }
        >
            {live(move || label.get().into_any())}
        </button>
    }
}

/// Shows, in the place and the size of an `ActionButton` that was pressed, that it is done: a tick in the corner, so that
/// the words stay where they are, and nothing to press.
#[component]
pub fn Ticked(
    /// What the button said.
    #[prop(into)]
    label: Signal<String>,
) -> impl IntoView {
    view! {
        <span class="button" data-size="action" data-done="true">
            <Mark state=RowState::Done />
            {live(move || label.get().into_any())}
        </span>
    }
}

/// Keeps the room of a button that is not asked for any more; it is neither seen nor read out.
#[component]
pub fn Emptied(
    /// What the button said.
    #[prop(into)]
    label: Signal<String>,
    /// Whether it stood at the side of a row, and not in the size of a `LinkButton`.
    action: bool,
) -> impl IntoView {
    view! {
        <span class="button" data-size=action.then_some("action") data-done="gone">
            {live(move || label.get().into_any())}
        </span>
    }
}

/// Shows a link that looks like a button.
#[component]
pub fn LinkButton(
    /// Where it leads.
    #[prop(into)]
    href: Signal<String>,
    /// What is there.
    #[prop(into)]
    label: Signal<String>,
    /// How much it asks for.
    #[prop(optional)]
    weight: Weight,
    /// Whether it is the big one under the thumb.
    #[prop(optional)]
    big: bool,
) -> impl IntoView {
    view! {
        <a class="button" data-size=big.then_some("big") data-weight=weight.key() href=move || href.get()>
            {live(move || label.get().into_any())}
        </a>
    }
}

/// Shows a small underlined button inside running text, such as "undo" beside a noted line.
#[component]
pub fn SmallButton(
    /// What a press does.
    #[prop(into)]
    label: Signal<String>,
    /// Called at every press.
    #[prop(into)]
    on_press: Callback<()>,
    /// The whole name for those who listen, such as "undo, navel dipped 02:05".
    #[prop(optional, into)]
    name: Option<Signal<String>>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="small-button"
            aria-label=move || name.map(|name| name.get())
            on:click=move |_| on_press.run(())
        >
            <span>{live(move || label.get().into_any())}</span>
        </button>
    }
}

/// Shows a small underlined link inside running text.
#[component]
pub fn SmallLink(
    /// Where it leads.
    #[prop(into)]
    href: Signal<String>,
    /// What is there.
    #[prop(into)]
    label: Signal<String>,
) -> impl IntoView {
    view! {
        <a class="small-button" href=move || href.get()>
            <span>{live(move || label.get().into_any())}</span>
        </a>
    }
}
