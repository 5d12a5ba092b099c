//! Text: lines, headings, lists, cautions, what an empty screen says, and cards for paper.

use yeanling_pages::Text;
use yeanling_pages::block::{
    Aloud, CardList, Empty, Heading, HeadingLook, Item, Line, LineLook, List, ListLook, PaperCard, PaperTable,
};
use yeanling_words::label;

use super::button;
use super::shown::drawing;
use crate::node::{Element, Node, el};

pub(super) fn line(it: &Line) -> Element {
    let class = match it.look {
        LineLook::Plain => "",
        LineLook::Lead => "lead",
        LineLook::Small => "small-print",
        LineLook::Remark => "remark",
        LineLook::Wrong => "field-error",
        LineLook::Done => "done-line",
        LineLook::AnswerLabel => "answer-label",
        LineLook::NightCalm => "night-calm",
        LineLook::NightPocket => "night-pocket",
        LineLook::NightOnly => "night-only",
        LineLook::PaperHead => "paper-head",
        LineLook::To(to) => return el("a", "").has("href", to.hash()).said(&it.text),
        LineLook::NightNext(to) => return el("a", "night-next").has("href", to.hash()).said(&it.text),
    };
    let role = match it.aloud {
        Aloud::Not => None,
        Aloud::Politely => Some("status"),
        Aloud::AtOnce => Some("alert"),
    };
    behind(el("p", class).has_some("role", role).said(&it.text), &it.buttons)
}

/// Small buttons behind a line, with room between.
fn behind(mut line: Element, buttons: &[yeanling_pages::Button]) -> Element {
    for one in buttons {
        line = line.with(" ").with(button(one));
    }
    line
}

pub(super) fn heading(it: &Heading) -> Element {
    let class = match it.look {
        HeadingLook::Plain => "",
        HeadingLook::Turn => "race-name",
        HeadingLook::OneLamb => "litter-one",
    };
    match it.level {
        1 => el("h1", class).has("id", "title"),
        2 => el("h2", class),
        _ => el("h3", class),
    }
    .with(it.text.as_str())
}

pub(super) fn list(it: &List) -> Element {
    let (tag, class, kind) = match it.look {
        ListLook::Plain => ("ul", "", None),
        ListLook::Steps => ("ol", "steps", None),
        ListLook::Nevers => ("ul", "nevers", None),
        ListLook::Readings => ("ul", "readings", None),
        ListLook::Reading => ("ul", "reading", None),
        ListLook::Ranked => ("ol", "reading", None),
        ListLook::Pair => ("ol", "pair", None),

        ListLook::Contents => return contents(&it.items),
        ListLook::Working => ("ul", "why-lines", Some("working")),
        ListLook::Rule => ("ul", "why-lines", Some("rule")),
        ListLook::Others => ("ul", "why-lines", Some("others")),
        ListLook::Sources => ("ul", "why-lines", Some("sources")),
        ListLook::NightThen => {
            return el("ol", "night-then").has("role", "list").all(it.items.iter().map(then));
        }
    };
    el(tag, class).has("role", "list").has_some("data-kind", kind).all(it.items.iter().map(item))
}

/// The list that leads down a page.
fn contents(items: &[Item]) -> Element {
    let line = |item: &Item| el("li", "").all(item.buttons.iter().map(|one| button(one).into())).into();
    let list = el("ul", "").has("role", "list").all(items.iter().map(line));
    el("nav", "contents").has("aria-label", label::CONTENTS).with(list)
}

fn item(item: &Item) -> Node {
    if !item.drawing.is_empty() {
        let line = el("li", "drawn-line").with(drawing(&item.drawing));
        return line.with(el("span", "").said(&item.text)).into();
    }
    let note = (!item.note.is_empty()).then(|| el("small", "").said(&item.note).into());
    behind(el("li", "").said(&item.text), &item.buttons).all(note).into()
}

/// What comes then at night: its time stands first.
fn then(item: &Item) -> Node {
    let time = el("span", "").said(&item.note);
    el("li", "").with(time).with(el("span", "").said(&item.text)).into()
}

/// Cautions under a triangle and the word, never folded away.
pub(super) fn caution(lines: &[Text]) -> Element {
    let triangle = el("svg", "caution-mark").has("viewBox", "0 0 16 16").has("aria-hidden", "true");
    let triangle = triangle.with(el("path", "").has("d", "M8 1.5L15.5 14.5H.5z"));
    el("div", "caution")
        .has("role", "note")
        .has("aria-label", label::CAUTION)
        .with(el("p", "caution-head").with(triangle).with(label::CAUTION))
        .all(lines.iter().map(|line| el("p", "").said(line).into()))
}

pub(super) fn empty(it: &Empty) -> Element {
    el("div", "empty").with(el("p", "").said(&it.text)).all(it.buttons.iter().map(|one| button(one).into()))
}

pub(super) fn paper_table(it: &PaperTable) -> Element {
    let head = |text: &String| el("th", "").has("scope", "col").with(text.as_str()).into();
    let cell = |text: &String| el("td", "").with(text.as_str()).into();
    let row = |row: &Vec<String>| el("tr", "").all(row.iter().map(cell)).into();
    let class = if it.on_screen { "on-paper paper-table seen-table" } else { "on-paper paper-table" };
    el("table", class)
        .with(el("caption", "").with(it.head.as_str()))
        .with(el("thead", "").with(el("tr", "").all(it.heads.iter().map(head))))
        .with(el("tbody", "").all(it.rows.iter().map(row)))
}

pub(super) fn paper_card(it: &PaperCard) -> Element {
    let list = |list: &CardList| {
        let lines = list.lines.iter().map(|line| el("li", "").with(line.as_str()).into());
        let class = if list.boxes { "pen-card-boxes" } else { "" };
        [el("h3", "").with(list.heading.as_str()).into(), el("ul", class).all(lines).into()]
    };
    el("div", "on-paper pen-card")
        .with(el("p", "").with(it.sub.as_str()))
        .all(it.lists.iter().filter(|list| !list.lines.is_empty()).flat_map(list))
}
