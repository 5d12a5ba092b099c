//! A family on one card, the lines on it, and the card in full ink of what a life hangs on.

use yeanling_pages::block::{Family, Row};
use yeanling_pages::{Key, State, Text};

use super::{button, mark};
use crate::node::{Element, Node, el};

/// A longer name leaves no room beside it for the job.
const LONG: usize = 9;
/// What is said in no more than this stands beside the name.
const SHORT: usize = 18;

pub(super) fn family(key: &Key, it: &Family) -> Element {
    let id = format!("{key}-head");
    let title = match it.to {
        Some(to) => el("a", "").has("href", to.hash()).with(it.title.as_str()),
        None => el("span", "").with(it.title.as_str()),
    };
    let heading = el("h3", "family-name").has("id", id.clone()).with(title);
    let aside = line_of("family-aside", &it.aside);
    let action = it.action.iter().map(|one| button(one).into());
    let head = el("div", "family-head").with(heading).all(aside).all(action);
    let lines = el("ul", "family-lines").has("role", "list").has("aria-labelledby", id).blocks(&it.lines);
    el("li", "family").has("data-ground", it.state.key()).with(head).with(lines)
}

/// A line: its job, its time, and its buttons in their place. Alone it has a ground of its own.
pub(super) fn line(it: &Row, alone: Option<State>) -> Element {
    let head = el("span", "row-head").with(name(it)).all(line_of("row-text", &it.text));
    let foot: Vec<Node> = says(it).into_iter().chain(line_of("row-kind", &it.kind)).collect();
    let foot = (!foot.is_empty()).then(|| el("span", "row-foot").all(foot).into());
    let words = words(it).with(head).all(foot);
    let body = (!it.inside.is_empty()).then(|| el("div", "row-body").blocks(&it.inside).into());
    el("li", "row")
        .has("data-look", if alone.is_some() { "alone" } else { "line" })
        .has("data-state", it.state.key())
        .has_some("data-ground", alone.map(State::key))
        .has_some("data-long", (it.name.chars().count() > LONG).then_some("true"))
        .with(el("div", "row-top").with(words).all(actions(it)))
        .all(body)
}

/// Whose it is and since when, the sign as the headline, then the step, then what is known of the vet.
pub(super) fn solid(it: &Row) -> Element {
    let (short, long) =
        if it.says.plain().chars().count() <= SHORT { (says(it), None) } else { (None, says(it)) };
    let head = el("span", "row-head").with(name(it)).all(short).all(line_of("row-kind", &it.kind));
    let words =
        words(it).with(head).all(line_of("row-text", &it.text)).all(line_of("row-step", &it.step)).all(long);
    el("li", "row").has("data-look", "solid").has("data-state", it.state.key()).with(words).all(actions(it))
}

fn name(it: &Row) -> Element {
    el("b", "row-name").with(it.name.as_str())
}

fn words(it: &Row) -> Element {
    match it.to {
        Some(to) => el("a", "row-words").has("href", to.hash()),
        None => el("div", "row-words"),
    }
}

fn says(it: &Row) -> Option<Node> {
    (!it.says.is_empty()).then(|| {
        el("span", "row-says").with(mark(it.state, false)).with(el("span", "").said(&it.says)).into()
    })
}

fn actions(it: &Row) -> Option<Node> {
    let all: Vec<Node> = it.action.iter().chain(&it.others).map(|one| button(one).into()).collect();
    (!all.is_empty()).then(|| el("div", "row-action").all(all).into())
}

fn line_of(class: &'static str, text: &Text) -> Option<Node> {
    (!text.is_empty()).then(|| el("span", class).said(text).into())
}
