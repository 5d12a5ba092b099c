//! What is shown: figures, facts, ledgers, checks, progress, what was noted, drawings, and the mark of a state.

use yeanling_pages::State;
use yeanling_pages::block::{Check, Fact, Figure, FigureSize, Ledger, LedgerRow, Noted, Progress};
use yeanling_words::label;

use super::button;
use crate::node::{Element, Node, el};

/// The state as a shape: a triangle with a stroke is danger, a full disc late, a half disc now, a ring coming, a tick done. It
/// carries its word for those who listen, unless that stands beside it.
pub(crate) fn mark(state: State, silent: bool) -> Element {
    let disc = "M8 2a6 6 0 1 1 0 12a6 6 0 1 1 0-12z";
    let (word, line, fill) = match state {
        State::Danger => (
            label::DANGER,
            "M8 1.5l7 12.5h-14z",
            "M8 1.5l7 12.5h-14zM7.2 5.5l.3 4.5h1l.3-4.5zM7.3 11.2h1.4v1.4h-1.4z",
        ),
        State::Late => (label::LATE, disc, disc),
        State::Now => (label::NOW, disc, "M8 2a6 6 0 0 1 0 12z"),
        State::Coming => (label::COMING, disc, ""),
        State::Done => (label::DONE, "M2.5 8.5l4 4l7-9", ""),
    };
    let mark = el("svg", "mark").has("viewBox", "0 0 16 16");
    let mark = if silent {
        mark.has("aria-hidden", "true")
    } else {
        mark.has("role", "img").has("aria-label", word)
    };
    mark.with(el("path", "mark-line").has("d", line)).with(el("path", "mark-fill").has("d", fill))
}

pub(super) fn figure(it: &Figure) -> Element {
    let size = match it.size {
        FigureSize::Card => "card",
        FigureSize::Head => "head",
        FigureSize::Barn => "barn",
    };
    let unit =
        (!it.unit.is_empty()).then(|| el("span", "figure-unit").with(it.gap()).with(it.unit.as_str()).into());
    let number = el("span", "figure-number").with(el("b", "").with(it.value.as_str())).all(unit);
    let line = el("p", "figure-line").with(number).with(" ");
    let line = line.with(el("span", "figure-also").with(it.also.as_str()));
    let beside =
        el("div", "figure-side").blocks(&it.beside).all(it.buttons.iter().map(|one| button(one).into()));
    let side = (!beside.inside.is_empty()).then(|| beside.into());
    el("div", "figure").has("data-size", size).with(line).all(side)
}

pub(super) fn facts(facts: &[Fact]) -> Element {
    let fact = |fact: &Fact| {
        let value = el("span", "").said(&fact.value);
        el("li", "fact").with(value).with(el("small", "").with(fact.note.as_str())).into()
    };
    el("ul", "facts").has("role", "list").all(facts.iter().map(fact))
}

pub(super) fn ledger(it: &Ledger) -> Element {
    let two = !it.heads.1.is_empty();
    let head = two.then(|| {
        let column = |class, name: &str| el("th", class).has("scope", "col").with(name);
        let heads = el("tr", "").with(el("td", "")).with(column("", &it.heads.0));
        el("thead", "").with(heads.with(column("ledger-other", &it.heads.1))).into()
    });
    let row = |row: &LedgerRow| -> Node {
        let note = (!row.note.is_empty()).then(|| el("small", "").with(row.note.as_str()).into());
        let name = el("th", "").has("scope", "row").with(row.name.as_str()).with(" ").all(note);
        let other = two.then(|| el("td", "ledger-other").said(&row.other).into());
        el("tr", "").with(name).with(el("td", "").said(&row.value)).all(other).into()
    };
    el("table", "ledger")
        .has("aria-label", it.label.as_str())
        .all(head)
        .with(el("tbody", "").all(it.rows.iter().map(row)))
}

pub(super) fn checks(checks: &[Check]) -> Element {
    let check = |check: &Check| {
        let (key, state) = match check.met {
            Some(true) => ("yes", State::Done),
            Some(false) => ("no", State::Coming),
            None => ("unknown", State::Now),
        };
        let text = el("span", "").said(&check.text);
        el("li", "check").has("data-met", key).with(mark(state, true)).with(text).into()
    };
    el("ul", "checks").has("role", "list").all(checks.iter().map(check))
}

pub(super) fn progress(it: &Progress) -> Element {
    let width = format!("{:.2}%", it.share.clamp(0.0, 1.0) * 100.0);
    let given = el("rect", "progress-given").has("width", width).has("height", "100%");
    el("div", "progress")
        .has("data-full", (it.share >= 1.0).to_string())
        .with(el("p", "progress-text").said(&it.text))
        .with(el("svg", "progress-bar").has("aria-hidden", "true").with(given))
}

pub(super) fn timeline(lines: &[Noted]) -> Element {
    let line = |line: &Noted| {
        let text = el("span", "noted-text");
        let text = if line.struck { text.with(el("s", "").said(&line.text)) } else { text.said(&line.text) };
        let note = (!line.note.is_empty()).then(|| el("small", "").with(line.note.as_str()).into());
        let buttons = line.buttons.iter().map(|one| button(one).into());
        let actions = (!line.buttons.is_empty()).then(|| el("span", "noted-actions").all(buttons).into());
        el("li", "noted")
            .key(line.key.clone())
            .with(el("span", "noted-time").with(line.time.as_str()))
            .with(text.all(note))
            .all(actions)
            .into()
    };
    el("ol", "timeline").has("role", "list").all(lines.iter().map(line))
}

/// One symbol out of a sheet of drawings, in the ink of the text around it; the words beside it say what it is.
pub(super) fn drawing(href: &str) -> Element {
    el("svg", "drawing")
        .has("viewBox", "0 0 120 80")
        .has("aria-hidden", "true")
        .with(el("use", "").has("href", href))
}
