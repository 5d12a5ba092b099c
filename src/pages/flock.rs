//! All animals: find any of them in two taps, by any tag or mark it ever wore, or by where it is.
//!
//! While something is typed Flock shows four rows of a kind, as fit above the phone's keys: who is looked for is
//! among them, or another letter is. They are rows of their own, each a place that takes other words with another
//! key.
//!
//! A small flock is numbers in their places: whoever lambs, dies or is sold stays where it stood. A larger one is a list, of
//! which twelve of a kind are shown at first.
//!
//! A number that nobody wears is added by Enter, and so is a range of them; what is called so already is gone to.

pub(crate) mod grid;
mod rounds;
mod tags;

use std::sync::Arc;

use yeanling_core::book::{Event, Past};
use yeanling_words::{animals, flock as words, lambing, past, spreadsheet};

use crate::block::{Choice, Choices, Empty, Field, FieldKind, Kind, Row};
use crate::draft::Draft;
use crate::everyone::{Found, WHICH, Which, name};
use crate::in_brief::InBrief;
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Block, Button, Does, Effect, Key, Screen};

/// What is looked for.
const FIND: &str = "flock-find";
/// What was looked for last: its rows stay, out of sight, to take other words when the next search begins.
const LAST: &str = "flock-last";
/// Which animals are shown.
const WHICH_ONES: &str = "flock-which";
/// How many rows were asked for, beyond those that are drawn at first.
const MORE_HERE: &str = "flock-more";
const MORE_FOUND: &str = "flock-more-found";

/// How many more rows are drawn with each press: still more would be slow on an old phone.
const MORE_ROWS: usize = 120;

/// A list of animals by kind, and how much of it is drawn.
struct List {
    key: &'static str,
    /// A kind of so many is drawn whole.
    whole: usize,
    /// Of a kind of more, so many rows are drawn at first.
    first: usize,
    /// Under which key it is kept how many more were asked for.
    more: &'static str,
    /// What is said when there are none.
    none: &'static str,
    /// Whether a row is a place that takes other words, which is quicker than another row.
    by_place: bool,
}

/// As many as fill the screen: in a large flock one looks by tag.
const HERE: List =
    List { key: "here", whole: 40, first: 12, more: MORE_HERE, none: words::NONE_SUCH, by_place: false };

/// While something is typed, as many as fit above the phone's keys: who is looked for is among them, or another letter is.
const FOUND: List =
    List { key: "found", whole: 4, first: 4, more: MORE_FOUND, none: words::NONE, by_place: true };

/// Returns the screen.
///
/// Nothing is put into it with a key or taken out: what is not seen now stands out of sight.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let typed = draft.fields.text(FIND, "");
    let part = typed.trim();
    let seeks = !part.is_empty();
    let sought = if seeks { part } else { draft.fields.typed(LAST).unwrap_or_default() };
    let found = if sought.is_empty() { Found::default() } else { tags::find(view, sought) };
    let enter = seeks.then(|| tags::enter(view, part, &found)).flatten();
    let field = Field { enter, ..Field::new(words::FIND, FieldKind::Search, typed.as_str()) };
    let tag = animals::tag_of(part);
    let one = Button::new("add", lambing::add(tag), Action::Does(Does::AddFound));
    let ram = Button::new("add-ram", past::add(tag), Action::Does(Does::AddRam));
    let of_ram = animals::is_of_ram(part);
    let offers =
        match tags::listed(part).filter(|_| seeks && !of_ram).map(|listed| tags::fresh(view, &listed)) {
            Some(fresh) => {
                let many =
                    Button::new("add-many", words::add_many(&fresh), Action::Does(Does::AddMany)).filled();
                // What looks like a range may be one tag.
                let one = tags::may_be_one(part).then_some(one);
                one.into_iter().fold(Blocks::new().button(many), Blocks::button)
            }
            None if of_ram => Blocks::new().button(ram.filled()),
            None => Blocks::new().button(one.filled()).button(ram),
        };
    let here = draft.kept.list.clone().filter(|_| seeks).unwrap_or_else(|| here(view, draft));
    let (ewes, rams, lambs) = view.everyone.living;
    Page::new(words::TITLE).under(words::counts(ewes, rams, lambs)).blocks(
        Blocks::new()
            .field(FIND, field)
            .seen_if(seeks && !found.taken, "offer", offers)
            .seen_if(seeks, "found", list(view, draft, &FOUND, &found, true))
            .seen_if(!seeks, "here", Blocks::new().then([here])),
    )
}

/// Says whether there is no animal.
fn is_empty(view: &View) -> bool {
    view.flock.ewes.is_empty() && view.flock.rams.is_empty() && view.flock.lambs.is_empty()
}

/// Returns the list that stands beside an animal on a wide screen: a small flock at its places, else the first of a larger
/// one; nothing on a phone, or on another screen.
pub(crate) fn beside(view: &View, screen: Screen) -> Vec<Arc<Block>> {
    let of_flock = matches!(screen, Screen::Flock | Screen::Ewe(_) | Screen::Lamb(_));
    if !of_flock || !*view.wide || is_empty(view) {
        return Vec::new();
    }
    match grid::blocks(view, Some(screen)) {
        Some(grid) => grid.into(),
        None if screen == Screen::Flock => Vec::new(),
        None => {
            let found = view.everyone.browse(view.flock, Which::Here, view.now);
            list(view, &Draft::default(), &HERE, &found, false).into()
        }
    }
}

/// All that is shown while nothing is looked for, as one block: it stays the same while something is.
fn here(view: &View, draft: &Draft) -> Arc<Block> {
    let inside = if is_empty(view) {
        let table = Button::new("table", spreadsheet::SCREEN, Action::Go(Screen::Tables));
        let empty = Empty { text: words::EMPTY.into(), buttons: vec![table] };
        Blocks::new().add("no-animals", Kind::Empty(empty))
    } else {
        let chosen = draft.fields.chosen(WHICH_ONES).unwrap_or(0);
        let which = WHICH.get(chosen).map_or(Which::Here, |(which, _)| *which);
        let option = |(place, (_, name)): (usize, &(Which, &str))| {
            Choice::new(*name, Action::Choose(WHICH_ONES.into(), place))
        };
        let options = WHICH.iter().enumerate().map(option).collect();
        let choices = Choices::new(words::WHICH, options, Some(chosen)).snug();
        let shown = match grid::blocks(view, None).filter(|_| which == Which::Here) {
            // It stands beside the page.
            Some(_) if *view.wide => rams(view),
            Some(grid) => grid.then(rams(view)),
            None => list(view, draft, &HERE, &view.everyone.browse(view.flock, which, view.now), true),
        };
        rounds::blocks(view)
            .fold("which", words::shown(name(which)), Blocks::new().choices(WHICH_ONES, choices))
            .then(shown)
    };
    Block::seen("here-list", inside)
}

/// The rams that are here, under the places of a small flock.
fn rams(view: &View) -> Blocks {
    let found = view.everyone.browse(view.flock, Which::Here, view.now);
    let brief = InBrief::of(view);
    rows(&HERE, "rams", past::RAMS, found.rams.iter().filter_map(|id| brief.ram_row(*id)))
}

/// The first of the animals found, by kind, and the way to more of them where that is asked for.
fn list(view: &View, draft: &Draft, list: &List, found: &Found, and_more: bool) -> Blocks {
    if found.is_empty() {
        // Who is looked for in vain is added above; of a kind that none is of, all are a tap away.
        let all = Button::new("all", words::SHOW_ALL, Action::Choose(WHICH_ONES.into(), 0));
        let of_a_kind = !list.by_place && draft.fields.chosen(WHICH_ONES).unwrap_or(0) != 0;
        let buttons = if of_a_kind { vec![all] } else { Vec::new() };
        let empty = Empty { text: list.none.into(), buttons };
        return Blocks::new().add(format!("{}-none", list.key), Kind::Empty(empty));
    }
    let asked = draft.fields.chosen(list.more).unwrap_or(0);
    let most = |all: usize| if all <= list.whole { all } else { all.min(list.first + asked) };
    let mut blocks = Blocks::new();
    let brief = InBrief::of(view);
    let ewes = found.ewes.iter().take(most(found.ewes.len())).filter_map(|id| brief.ewe_row(*id));
    blocks = blocks.then(rows(list, "ewes", words::EWES, ewes));
    let rams = found.rams.iter().take(most(found.rams.len())).filter_map(|id| brief.ram_row(*id));
    blocks = blocks.then(rows(list, "rams", past::RAMS, rams));
    for (kind, title, of) in [("lambs", words::LAMBS, &found.lambs), ("dead", words::DEAD, &found.dead)] {
        let lambs = of.iter().take(most(of.len())).map(|id| brief.lamb_row(*id));
        blocks = blocks.then(rows(list, kind, title, lambs));
    }
    let lengths = [found.ewes.len(), found.rams.len(), found.lambs.len(), found.dead.len()];
    let left = lengths.into_iter().map(|all| all - most(all)).max().unwrap_or(0);
    if left == 0 || !and_more {
        return blocks;
    }
    let more = Action::Choose(list.more.into(), asked + MORE_ROWS);
    blocks.button(Button::new(format!("{}-more", list.key), words::more(left), more))
}

fn rows(list: &List, kind: &str, title: &str, rows: impl Iterator<Item = (Key, Row)>) -> Blocks {
    let keyed = |(place, (key, row)): (usize, (Key, Row))| {
        let key = if list.by_place { place.to_string().into() } else { key };
        (format!("{}-{kind}-{key}", list.key), row)
    };
    let key = format!("{}-{kind}", list.key);
    let rows = Blocks::new().rows(format!("{key}-rows"), rows.enumerate().map(keyed));
    Blocks::new().section(key, title, rows)
}

/// What follows when something was typed or chosen.
pub(crate) fn typed(key: &str, view: &View, draft: &mut Draft) {
    if key == WHICH_ONES {
        draft.fields.forget(MORE_HERE);
    }
    if key != FIND {
        return;
    }
    draft.fields.forget(MORE_FOUND);
    let Some(part) = draft.fields.written(FIND) else {
        draft.kept.list = None;
        return;
    };
    draft.fields.set(LAST, part);
    if draft.kept.list.is_none() {
        draft.kept.list = Some(here(view, draft));
    }
}

/// Adds a ewe for each tag of the range or list that was typed, all or none.
pub(crate) fn add_many(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(part) = draft.fields.written(FIND) else { return Vec::new() };
    let Some(listed) = tags::listed(&part) else { return Vec::new() };
    let came =
        tags::fresh(view, &listed).into_iter().map(|tag| view.noting(Event::EweCame { tag: Some(tag) }));
    let notings: Vec<_> = came.collect();
    let effects = if notings.is_empty() { Vec::new() } else { draft.note(view, notings) };
    if !effects.is_empty() {
        added(draft);
    }
    effects
}

/// Adds a ewe with the tag that was looked for.
pub(crate) fn add(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(tag) = draft.fields.written(FIND) else { return Vec::new() };
    let tag = Some(animals::tag_of(&tag).to_owned());
    let effects = draft.note(view, vec![view.noting(Event::EweCame { tag })]);
    if !effects.is_empty() {
        added(draft);
    }
    effects
}

/// Adds a ram with the tag that was looked for.
pub(crate) fn add_ram(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(tag) = draft.fields.written(FIND) else { return Vec::new() };
    let tag = Some(animals::tag_of(&tag).to_owned());
    let came = view.noting(Event::EweCame { tag });
    let is_ram = view.noting(Event::Past(Past::IsRam { animal: came.id.as_ewe() }));
    let effects = draft.note(view, vec![came, is_ram]);
    if !effects.is_empty() {
        added(draft);
    }
    effects
}

/// What was looked for is there now: the whole list stands again.
fn added(draft: &mut Draft) {
    draft.fields.forget(FIND);
    draft.fields.forget(MORE_HERE);
    draft.kept.list = None;
}

/// What was looked for stands again for those who come back from an animal; who comes from elsewhere begins anew.
pub(crate) fn enter(view: &View, draft: &mut Draft) {
    if view.from.0 != Screen::Flock {
        *draft = Draft::default();
    } else if draft.fields.written(FIND).is_none() {
        // A row that is out of sight is not the one that one comes back to.
        draft.fields.forget(LAST);
    }
}
