//! What is typed, chosen and pressed.

use yeanling_pages::block::{Choice, Choices, ChoicesShape, DrawnButton, Field, FieldKind, FilePick, Toggle};
use yeanling_pages::{Action, Key};

use super::button::chevron;
use super::means;
use super::shown::drawing;
use crate::node::{Element, On, el};

/// A labelled field. What is wrong stands beside what was typed and never replaces it.
pub(super) fn field(key: &Key, it: &Field) -> Element {
    let id = format!("field-{key}");
    let (hint, error) = (format!("{id}-hint"), format!("{id}-error"));
    let kind = match it.kind {
        FieldKind::Text | FieldKind::Long | FieldKind::Whole | FieldKind::Decimal => "text",
        FieldKind::Phone => "tel",
        FieldKind::Time => "time",
        FieldKind::Date => "date",
        FieldKind::Moment => "datetime-local",
        FieldKind::Search => "search",
    };
    let mode = match it.kind {
        FieldKind::Whole => Some("numeric"),
        FieldKind::Decimal => Some("decimal"),
        FieldKind::Search => Some("search"),
        FieldKind::Text
        | FieldKind::Long
        | FieldKind::Phone
        | FieldKind::Time
        | FieldKind::Date
        | FieldKind::Moment => None,
    };
    let input = match it.kind {
        FieldKind::Long => el("textarea", "field-input").has("rows", "3"),
        FieldKind::Text
        | FieldKind::Whole
        | FieldKind::Decimal
        | FieldKind::Phone
        | FieldKind::Time
        | FieldKind::Date
        | FieldKind::Moment
        | FieldKind::Search => el("input", "field-input")
            .has("type", kind)
            .has_some("inputmode", mode)
            .has("autocomplete", "off"),
    };
    let on =
        On { input: Some(key.clone()), change: it.left.clone(), enter: it.enter.clone(), ..On::default() };
    let input = input
        .has("id", id.clone())
        .has("aria-describedby", format!("{hint} {error}"))
        .has_some("aria-invalid", (!it.error.is_empty()).then_some("true"))
        .has(".value", it.value.as_str())
        .on(on);
    let unit = match &it.units {
        Some(units) => Some(el("div", "field-unit").with(choices(units)).into()),
        None => (!it.unit.is_empty())
            .then(|| el("div", "field-unit").with(el("span", "").with(it.unit.as_str())).into()),
    };
    el("div", "field")
        .with(el("label", "field-label").has("for", id).with(it.label.as_str()))
        .with(el("div", "field-line").with(input).all(unit))
        .with(el("p", "field-error").has("id", error).has("role", "alert").with(it.error.as_str()))
        .with(el("p", "field-hint").has("id", hint).with(it.hint.as_str()))
}

/// They are plain buttons with `aria-pressed`, not radio inputs, so that what is shown is always what the book says and a
/// choice that was undone looks undone.
pub(super) fn choices(it: &Choices) -> Element {
    let shape = match it.shape {
        ChoicesShape::Even => "even",
        ChoicesShape::Snug => "snug",
        ChoicesShape::Stacked => "stacked",
        ChoicesShape::Gate => "gate",
    };
    let label = it
        .labelled
        .then(|| el("span", "choices-label").has("aria-hidden", "true").with(it.label.as_str()).into());
    let option = |(place, choice): (usize, &Choice)| {
        let note = (!choice.note.is_empty()).then(|| el("small", "").with(choice.note.as_str()).into());
        el("button", "button choice")
            .key(format!("choice-{place}"))
            .has("type", "button")
            .has_some("data-means", answers(&choice.does))
            .has("aria-pressed", (it.chosen == Some(place)).to_string())
            .press(&choice.does)
            .with(el("span", "").with(choice.label.as_str()))
            .all(note)
            .into()
    };
    el("div", "choices")
        .has("role", "group")
        .has("aria-label", it.label.as_str())
        .has("data-shape", shape)
        .all(label)
        .all(it.options.iter().enumerate().map(option))
}

/// One that answers a sheet saves with the tap, as any button does; one of a page is seen to be down.
const fn answers(does: &Action) -> Option<&'static str> {
    if matches!(does, Action::Answer(_)) { Some(means(does)) } else { None }
}

pub(super) fn toggle(it: &Toggle) -> Element {
    let tick = el("svg", "icon toggle-tick").has("viewBox", "0 0 16 16").has("aria-hidden", "true");
    let note = it.note.as_ref().map(|note| el("small", "toggle-note").with(note.as_str()).into());
    el("button", "button toggle")
        .has("type", "button")
        .has("aria-pressed", it.pressed.to_string())
        .press(&it.does)
        .with(tick.with(el("path", "").has("d", "M2.5 8.5l4 4l7-9")))
        .with(el("span", "").with(it.label.as_str()))
        .all(note)
}

/// The button is the field's label: a tap on it opens the phone's own picker.
pub(super) fn file_pick(key: &Key, it: &FilePick) -> Element {
    let id = format!("field-{key}");
    let on = On { change: Some(it.does.clone()), ..On::default() };
    let accepts = Some(it.accepts).filter(|accepts| !accepts.is_empty());
    let input =
        el("input", "pick-input").has("id", id.clone()).has("type", "file").has_some("accept", accepts);
    el("div", "pick").with(input.on(on)).with(
        el("label", "button")
            .has("for", id)
            .has("data-means", means(&it.does))
            .with(it.label.as_str())
            .with(chevron()),
    )
}

pub(super) fn drawn_button(it: &DrawnButton) -> Element {
    el("button", "button drawn")
        .has("type", "button")
        .has("data-means", means(&it.does))
        .press(&it.does)
        .with(drawing(&it.drawing))
        .with(el("span", "").with(it.label.as_str()))
        .with(el("small", "").with(it.note.as_str()))
}
