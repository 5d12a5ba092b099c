//! Blocks that hold others.

use yeanling_pages::block::{Card, Fold, Group, Notice, NoticeKind, Row, RowLook, Section, Shape};
use yeanling_pages::{Key, Text};
use yeanling_words::lambing;

use super::{button, class, family, mark, night};
use crate::node::{Element, Node, el};

pub(super) fn section(key: &Key, it: &Section) -> Element {
    let id = format!("section-{key}");
    let heading = el("h2", "").has("id", id.clone()).with(it.title.as_str());
    let head = el("div", "section-head").with(heading).all(it.aside.iter().map(|aside| button(aside).into()));
    el("section", "section")
        .has("aria-labelledby", id)
        .has_some("data-state", it.state.map(yeanling_pages::State::key))
        .with(head)
        .blocks(&it.inside)
}

pub(super) fn card(it: &Card) -> Element {
    let mut card = el("div", "card").blocks(&it.head);
    if !it.lead.is_empty() || it.action.is_some() {
        let lead = el("div", "card-lead").blocks(&it.lead);
        let action = it.action.iter().map(|action| el("div", "card-action").with(button(action)).into());
        card = card.with(el("div", "card-top").with(lead).all(action));
    }
    card.blocks(&it.inside)
}

pub(super) fn fold(it: &Fold) -> Element {
    let class = if it.sources { "source-fold" } else { "fold" };
    let open = it.open.then_some("");
    el("details", class).has_some("open", open).with(el("summary", "").said(&it.label)).blocks(&it.inside)
}

pub(super) fn group(key: &Key, it: &Group) -> Element {
    if it.shape == Shape::NightDue {
        return night::due(it);
    }
    if it.shape == Shape::Timer {
        return night::timer(it);
    }
    let group = el("div", class(it.shape));
    let group = if it.shape == Shape::Alert { group.has("role", "alert") } else { group };
    // A part of the help can be gone to.
    let group =
        if it.shape == Shape::HelpPart { group.has("id", key.as_ref()).has("tabindex", "-1") } else { group };
    let group = if it.shape == Shape::NotLiving { group.has("inert", "") } else { group };
    let group = if it.shape == Shape::LambingSeen {
        group.has("role", "group").has("aria-label", lambing::SEEN)
    } else {
        group
    };
    let group = if it.hidden { group.has("hidden", "") } else { group };
    group.blocks(&it.inside)
}

/// A duty as a row: whose it is, what to do, how it stands, and the one press that does it.
pub(super) fn row(it: &Row) -> Element {
    match it.look {
        RowLook::Paper => {}
        RowLook::Line => return family::line(it, None),
        RowLook::Alone(ground) => return family::line(it, Some(ground)),
        RowLook::Solid => return family::solid(it),
        RowLook::Night => return night::row(it),
    }
    let line = |class, text: &Text| (!text.is_empty()).then(|| Node::from(el("span", class).said(text)));
    let head = el("span", "row-head")
        .with(el("b", "row-name").with(it.name.as_str()))
        .all(line("row-kind", &it.kind));
    let says = (!it.says.is_empty()).then(|| {
        el("span", "row-says").with(mark(it.state, false)).with(el("span", "").said(&it.says)).into()
    });
    let words = match it.to {
        Some(to) => el("a", "row-words").has("href", to.hash()),
        None => el("div", "row-words"),
    };
    let words = words.with(head).all(line("row-text", &it.text)).all(says);
    let action = it.action.iter().map(|action| el("div", "row-action").with(button(action)).into());
    let has_body = !it.inside.is_empty() || !it.others.is_empty();
    let others = (!it.others.is_empty()).then(|| {
        let others = it.others.iter().map(|one| button(one).into());
        el("div", "buttons").has("data-columns", "2").all(others).into()
    });
    let body = has_body.then(|| el("div", "row-body").all(others).blocks(&it.inside).into());
    el("li", "row")
        .has("data-state", it.state.key())
        .has("data-body", has_body.to_string())
        .with(el("div", "row-top").with(words).all(action))
        .all(body)
}

pub(super) fn notice(it: &Notice) -> Element {
    let (kind, role) = match it.kind {
        NoticeKind::Calm => ("calm", None),
        NoticeKind::Warn => ("warn", None),
        NoticeKind::Bad => ("bad", Some("alert")),
    };
    el("div", "notice")
        .has("data-kind", kind)
        .has_some("role", role)
        .with(el("div", "notice-text").blocks(&it.inside))
        .all(it.buttons.iter().map(|one| button(one).into()))
}
