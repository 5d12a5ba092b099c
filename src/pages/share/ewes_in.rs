//! Ewes from a spreadsheet: the table is read whole and shown before anything changes, then added in one piece or left.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::{Animal, DayOrder, Event, EweId, Life};
use yeanling_core::sort_small::Gather;
use yeanling_core::spreadsheet::{Column, Preview, Sheet, columns, decode, preview, read as read_table};
use yeanling_words::{ewes_in as words, rejections};

use super::{Does as Only, EWES, Reading, aloud, pick};
use crate::block::{Choice, Choices, Item, LineLook, List, ListLook, Notice, NoticeKind};
use crate::draft::{Draft, Fields, Noting};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Kind, Text};

/// Which column holds what, in the order in which they are asked for; without a choice its head tells.
const COLUMNS: [&str; 4] = ["ewes-tag", "ewes-born", "ewes-breed", "ewes-remark"];
/// What comes first in a date.
const ORDER: &str = "ewes-order";
const ORDERS: [DayOrder; 2] = [DayOrder::DayFirst, DayOrder::MonthFirst];

/// How many rows that bring no ewe are told one by one.
const TOLD: usize = 20;

/// What a table brings by the columns chosen.
struct Found {
    columns: [(Column, Option<usize>); 4],
    order: Option<DayOrder>,
    /// The first date that can be read both ways.
    two_ways: Option<String>,
    preview: Preview,
}

impl Found {
    fn of(sheet: &Sheet, view: &View, fields: &Fields) -> Self {
        let mut columns = columns(sheet);
        for ((_, column), key) in columns.iter_mut().zip(COLUMNS) {
            // The first choice is none of them.
            if let Some(place) = fields.chosen(key) {
                *column = place.checked_sub(1).filter(|column| *column < sheet.heads.len());
            }
        }
        let order = fields.chosen(ORDER).and_then(|place| ORDERS.get(place).copied());
        let here = tags(view);
        let asked = preview(sheet, &columns, &here, None);
        // Once it was asked it stays, so that the answer can be changed.
        let two_ways = asked.two_ways().map(str::to_owned);
        let preview = if order.is_some() { preview(sheet, &columns, &here, order) } else { asked };
        Self { columns, order, two_ways, preview }
    }

    fn has_tags(&self) -> bool {
        self.columns.iter().any(|(column, place)| *column == Column::Tag && place.is_some())
    }
}

/// Returns the tags that living animals wear, in small letters.
fn tags(view: &View) -> BTreeSet<String> {
    let ewes = view.flock.ewes.values().filter(|ewe| ewe.lives()).filter_map(|ewe| ewe.tag.as_ref());
    let lambs = view.flock.lambs.values().filter(|lamb| lamb.lives()).filter_map(|lamb| lamb.tag.as_ref());
    ewes.chain(lambs).map(|tag| tag.to_lowercase()).gathered()
}

/// Reads a table, or says in words why it is none.
pub(super) fn read(bytes: &[u8]) -> Result<Arc<Sheet>, String> {
    decode(bytes).and_then(|text| read_table(&text)).map(Arc::new).map_err(words::no_sheet)
}

/// Returns the part that takes ewes in from a table, and what a table would bring.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let ask = Blocks::new().text(words::SUB).add(EWES, pick(EWES, words::OPEN));
    let blocks = Blocks::new().section("ewes-in", words::TITLE, ask);
    match &draft.share.ewes {
        Reading::Nothing => blocks,
        Reading::Going => blocks.add("", aloud(LineLook::Plain, words::READING)),
        Reading::Read(sheet) => {
            blocks.section("would-bring", words::COLUMNS, would_bring(sheet, view, &draft.fields))
        }
        Reading::Wrong(wrong) => blocks.notice("ewes-wrong", NoticeKind::Bad, Text::typed(wrong), []),
        Reading::Done(_) => {
            // Who was taken back again was not added.
            let here = draft.share.came.iter().filter(|ewe| view.flock.ewes.contains_key(ewe)).count();
            if here > 0 { blocks.add("", aloud(LineLook::Plain, words::added(here))) } else { blocks }
        }
    }
}

/// Returns what a table would bring by the columns chosen, with both answers.
fn would_bring(sheet: &Sheet, view: &View, fields: &Fields) -> Blocks {
    let found = Found::of(sheet, view, fields);
    let mut blocks = Blocks::new();
    for ((column, place), key) in found.columns.into_iter().zip(COLUMNS) {
        blocks = blocks.choices(key, which_column(sheet, column, place, key));
    }
    if let Some(text) = &found.two_ways {
        blocks = blocks.choices(ORDER, day_or_month(text, found.order));
    }
    let count = found.preview.ewes.len();
    let blocks = if found.has_tags() {
        would_add(left_out(blocks, &found.preview), &found.preview)
    } else {
        blocks.notice("no-tags", NoticeKind::Warn, words::NO_TAGS, [])
    };
    let wrong = fields.error(EWES);
    let blocks = if wrong.is_empty() {
        blocks
    } else {
        blocks.notice("ewes-refused", NoticeKind::Bad, Text::typed(wrong), [])
    };
    let does = |does| Action::Does(Does::Share(does));
    let add = Button::new("add", words::add(count), does(Only::AddEwes)).filled();
    let leave = Button::new("leave", words::LEAVE, does(Only::LeaveEwes));
    let add = (count > 0 && found.has_tags()).then_some(add);
    blocks.buttons(2, add.into_iter().chain([leave]))
}

fn which_column(sheet: &Sheet, column: Column, place: Option<usize>, key: &'static str) -> Choices {
    let names = std::iter::once(words::NO_COLUMN).chain(sheet.heads.iter().map(String::as_str));
    let options = names.enumerate().map(|(place, name)| {
        // A column without a head is told by its letter, as spreadsheets do.
        let name = if name.trim().is_empty() { words::letter(place) } else { name.to_owned() };
        Choice::new(name, Action::Choose(key.into(), place))
    });
    let chosen = place.map_or(0, |place| place + 1);
    Choices::new(words::column(column), options.collect(), Some(chosen)).labelled().snug()
}

fn day_or_month(text: &str, order: Option<DayOrder>) -> Choices {
    let options = ORDERS.iter().enumerate().map(|(place, order)| {
        let choice = Choice::new(words::order(*order), Action::Choose(ORDER.into(), place));
        choice.note(words::would_be(text, *order))
    });
    let chosen = order.and_then(|order| ORDERS.iter().position(|one| *one == order));
    Choices::new(words::ORDER, options.collect(), chosen).labelled().stacked()
}

fn would_add(blocks: Blocks, found: &Preview) -> Blocks {
    let tags: Vec<&str> = found.ewes.iter().map(|ewe| ewe.tag.as_str()).collect();
    if tags.is_empty() { blocks } else { blocks.remark(words::would_add(&tags), []) }
}

fn left_out(blocks: Blocks, found: &Preview) -> Blocks {
    let rows = &found.left_out;
    if rows.is_empty() {
        return blocks;
    }
    let more = rows.len().saturating_sub(TOLD);
    let lines = rows.iter().take(TOLD).map(|row| Text::typed(&words::left_out(row)));
    let more = (more > 0).then(|| Text::from(words::and_more(more)));
    let items = lines.chain(more).map(Item::new).collect();
    let list = Kind::List(List { look: ListLook::Plain, items });
    let inside = Blocks::new().text(words::LEFT_OUT).add("", list).into();
    let notice = Notice { kind: NoticeKind::Warn, inside, buttons: Vec::new() };
    blocks.add("left-out", Kind::Notice(notice))
}

/// Adds the ewes of the table that was read, each with what is known of her: all of them or none.
pub(super) fn add(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Reading::Read(sheet) = &draft.share.ewes else { return Vec::new() };
    let ewes = Found::of(sheet, view, &draft.fields).preview.ewes;
    let mut notings: Vec<Noting> =
        ewes.iter().map(|ewe| view.noting(Event::EweCame { tag: Some(ewe.tag.clone()) })).collect();
    let came: Vec<EweId> = notings.iter().map(|noting| noting.id.as_ewe()).collect();
    let mut whose: Vec<&str> = ewes.iter().map(|ewe| ewe.tag.as_str()).collect();
    for (ewe, new) in came.iter().copied().zip(&ewes) {
        let described = (new.born.is_some() || new.breed.is_some())
            .then(|| Event::Life(Life::Described { ewe, born: new.born, breed: new.breed.clone() }));
        let remarked = new.remark.clone().map(|text| Event::Remarked { animal: Animal::Ewe(ewe), text });
        for event in described.into_iter().chain(remarked) {
            notings.push(view.noting(event));
            whose.push(&new.tag);
        }
    }
    if let Err((place, rejection)) = view.allow_each(&notings) {
        let why = rejections::rejection(&rejection, view.now, view.system());
        let tag = whose.get(place).copied().unwrap_or_default();
        return draft.say_wrong(EWES, words::refused(tag, &why));
    }
    draft.share.ewes = Reading::Done(came.len());
    draft.share.came = came;
    forget(draft);
    vec![Effect::Note(notings)]
}

/// Forgets what was chosen of a table: another has other columns.
pub(super) fn forget(draft: &mut Draft) {
    for key in COLUMNS.into_iter().chain([ORDER, EWES]) {
        draft.fields.forget(key);
    }
}
