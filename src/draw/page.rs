//! What a whole page looks like: the line above its name, its name, what stands on it, what stands under the thumb, and the
//! sheets over it.

use std::sync::Arc;

use yeanling_pages::{Action, Block, Button, Page, Request, SaveState, Screen, SheetPage, Tally, Top};
use yeanling_words::{flock, label, night};

use crate::frame::refused;
use crate::kinds::{button, mark};
use crate::node::{Element, Node, On, el};

/// What stands above every page.
#[derive(Clone, Copy, Debug)]
pub struct Around<'a> {
    /// The line above its name.
    pub top: &'a Top,
    /// What stands above every screen while it is so.
    pub standing: &'a [Arc<Block>],
    /// What was just noted and can be undone.
    pub undo: Option<&'a str>,
}

/// Returns what a page looks like. Its key is the screen: another screen is another element.
#[must_use]
pub fn page(screen: Screen, page: &Page, around: Around<'_>) -> Vec<Node> {
    let mut body = el("div", "page-body");
    if !page.bare {
        body = body.with(top_bar(page, around)).with(title(page)).blocks(around.standing);
    }
    let sheets = page.sheets.iter().enumerate().map(|(place, one)| sheet(place, one).into());
    let body = body.blocks(&page.blocks).all(sheets);
    let thumb = (!page.thumb.is_empty()).then(|| el("div", "thumb").blocks(&page.thumb).into());
    let main = el("main", "page").key(screen.hash()).with(body).all(thumb).into();
    // The list stays the same element from animal to animal: it keeps its place. It is read after the page it stands beside.
    let beside = (!page.beside.is_empty()).then(|| {
        let list = el("nav", "beside").key("beside").has("aria-label", flock::TITLE);
        list.blocks(&page.beside).into()
    });
    [main].into_iter().chain(beside).collect()
}

/// The line above the page's name stays in sight. The offer to undo stands in it, where it covers nothing and a second tap on
/// what was pressed cannot land on it.
fn top_bar(page: &Page, Around { top, undo, .. }: Around<'_>) -> Element {
    let save = save_mark(top);
    let bar = el("div", "top-bar");
    let undo = undo.map(|text| offer(text).into());
    match &page.back {
        Some((to, name)) => {
            let arrow = el("svg", "icon").has("viewBox", "0 0 16 16").has("aria-hidden", "true");
            let arrow = arrow.with(el("path", "").has("d", "M10.5 2.5L5 8l5.5 5.5"));
            let back = el("a", "top-bar-back").has("href", to.hash()).with(arrow).with(name.as_str());
            bar.with(back).all(undo).with(el("span", "top-bar-aside").with(save))
        }
        None => {
            let night = button(&Button::new("night", night::TITLE, Action::Go(Screen::Night)).small());
            let aside = el("span", "top-bar-aside").with(night).with(" ").with(save);
            let place = el("span", "top-bar-place").with(top.place.as_str());
            bar.with(place).all(undo).with(aside)
        }
    }
}

fn offer(text: &str) -> Element {
    let undo = Button::new("undo", label::UNDO, Action::Phone(Request::Undo)).small();
    el("div", "undo-bar").key("undo-bar").with(el("p", "").with(text)).with(button(&undo))
}

fn save_mark(top: &Top) -> Element {
    let (key, sign) = match top.save {
        SaveState::Saving => ("saving", "M3 8h.1M8 8h.1M13 8h.1"),
        SaveState::Saved => ("saved", "M2.5 8.5l4 4l7-9"),
        SaveState::NotSaved => ("not-saved", "M8 2v7.5M8 13.5v.1"),
    };
    let icon = el("svg", "icon").has("viewBox", "0 0 16 16").has("aria-hidden", "true");
    el("span", "save-mark")
        .has("data-state", key)
        .with(icon.with(el("path", "").has("d", sign)))
        .with(el("span", "").has("role", "status").with(top.said.as_str()))
}

fn title(page: &Page) -> Element {
    let title = el("div", "title").with(el("h1", "").has("id", "title").with(page.title.as_str()));
    if page.under.is_empty() && page.tallies.is_empty() {
        return title;
    }
    let mut under = el("p", "title-sub");
    for one in &page.tallies {
        under = under.with(tally(one)).with(" ");
    }
    title.with(under.said(&page.under))
}

fn tally(one: &Tally) -> Element {
    let key = one.state.key();
    el("b", "tally")
        .key(key)
        .has("data-state", key)
        .has_some("data-empty", one.empty.then_some("true"))
        .with(mark(one.state, true))
        .with(one.text.as_str())
}

/// The browser's own modal dialog: the focus moves to its heading and back to where it was, Escape closes it, and the page
/// behind is out of reach. A tap beside it closes it too.
fn sheet(place: usize, sheet: &SheetPage) -> Element {
    let (title, whose) = (format!("sheet-{place}"), format!("sheet-{place}-whose"));
    let refused = sheet.refused.as_ref().map(|text| refused(text).into());
    let about = (!sheet.whose.is_empty())
        .then(|| el("p", "sheet-whose").has("id", whose.clone()).with(sheet.whose.as_str()).into());
    let named_by = if sheet.whose.is_empty() { title.clone() } else { format!("{whose} {title}") };
    let heading = el("h2", "sheet-title").has("id", title).has("tabindex", "-1").has("autofocus", "");
    let foot = el("div", "sheet-foot").with(button(&Button::new("", label::CLOSE, Action::Close)));
    let paper = el("div", "sheet-paper")
        .with(el("div", "refusal").has("data-on", "sheet").all(refused))
        .all(about)
        .with(heading.with(sheet.title.as_str()))
        .with(el("div", "sheet-body").blocks(&sheet.blocks))
        .with(foot);
    el("dialog", "sheet")
        .key(format!("sheet-{}", sheet.opened))
        .has("aria-labelledby", named_by)
        .has(".modal", "")
        .on(On { close: Some(Action::Close), ..On::default() })
        .with(paper)
}
