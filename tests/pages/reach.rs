//! What of a page is within reach: all that can be pressed and typed on what lies uppermost, and all that it says.

use std::sync::Arc;

use yeanling_pages::block::{Field, FieldKind, Keypad, Kind, LineLook};
use yeanling_pages::{Action, Block, Button, Key, Page};

use crate::phone::key_press;

/// Something that can be pressed: its whole name and what it does.
#[derive(Clone, Debug)]
pub(crate) struct Pressable {
    pub(crate) name: String,
    pub(crate) label: String,
    pub(crate) does: Action,
}

/// Returns the blocks that are within reach: those of the uppermost sheet, or of the page if none lies over it.
pub(crate) fn reached(page: &Page) -> Vec<Arc<Block>> {
    fn add(block: &Arc<Block>, to: &mut Vec<Arc<Block>>) {
        if matches!(&block.kind, Kind::Group(group) if group.hidden) {
            return;
        }
        to.push(Arc::clone(block));
        for inside in block.inside() {
            add(inside, to);
        }
    }
    let mut all = Vec::new();
    match page.sheets.last() {
        Some(sheet) => sheet.blocks.iter().for_each(|block| add(block, &mut all)),
        None => {
            page.beside.iter().chain(&page.blocks).chain(&page.thumb).for_each(|block| add(block, &mut all));
        }
    }
    all
}

/// Returns all that can be pressed within reach.
pub(crate) fn pressables(page: &Page) -> Vec<Pressable> {
    let mut all = Vec::new();
    let mut add = |label: &str, name: &str, does: &Action| {
        let name = if name.is_empty() { label } else { name };
        all.push(Pressable { name: name.to_owned(), label: label.to_owned(), does: does.clone() });
    };
    for block in reached(page) {
        for Button { label, name, does, .. } in block.buttons().into_iter().filter(|button| !button.off) {
            add(label, name, does);
        }
        match &block.kind {
            Kind::Choices(it) => it.options.iter().for_each(|one| add(&one.label, "", &one.does)),
            Kind::Field(it) => {
                let units = it.units.iter().flat_map(|units| &units.options);
                units.for_each(|one| add(&one.label, "", &one.does));
            }
            Kind::Toggle(it) => add(&it.label, "", &it.does),
            Kind::Tile(it) => add(&it.number, &it.name, &it.does),
            Kind::DrawnButton(it) => add(&it.label, "", &it.does),
            Kind::FilePick(it) => add(&it.label, "", &it.does),
            Kind::Keypad(it) => {
                let signs = "0123456789.l<".chars();
                let signs = signs.filter(|sign| *sign != '.' || it.point);
                let signs = signs.filter(|sign| *sign != 'l' || it.larger.is_some());
                signs.for_each(|sign| add(&format!("key {sign}"), "", &it.presses(key_press(sign))));
            }
            Kind::Ring(it) => add(&it.answer.label, "", &it.answer.does),
            Kind::Line(it) => match it.look {
                LineLook::To(to) | LineLook::NightNext(to) => add(&it.text.plain(), "", &Action::Go(to)),
                _ => {}
            },
            Kind::Family(it) => it.to.iter().for_each(|to| add(&it.title, "", &Action::Go(*to))),
            Kind::Row(it) => it.to.iter().for_each(|to| add(&it.name, "", &Action::Go(*to))),
            _ => {}
        }
    }
    all
}

/// Returns the fields within reach, each with its key.
pub(crate) fn fields(page: &Page) -> Vec<(Key, Field)> {
    let field = |block: Arc<Block>| match &block.kind {
        Kind::Field(field) => Some((block.key.clone(), field.clone())),
        _ => None,
    };
    reached(page).into_iter().filter_map(field).collect()
}

/// Returns the fields within reach, and what is typed on keys as the fields that they stand for.
pub(crate) fn fields_and_keys(page: &Page) -> Vec<(Key, Field)> {
    let keys = reached(page);
    let keys = keys.iter().filter_map(|block| match &block.kind {
        Kind::Keypad(pad) => on_keys(pad),
        _ => None,
    });
    fields(page).into_iter().chain(keys).collect()
}

/// A number on the keys as the field it stands for.
fn on_keys(pad: &Keypad) -> Option<(Key, Field)> {
    let readout = pad.inside.iter().find_map(|block| match &block.kind {
        Kind::Readout(readout) => Some(readout),
        _ => None,
    })?;
    let wrong = pad.below.iter().find_map(|block| match &block.kind {
        Kind::Line(line) if line.look == LineLook::Wrong => Some(line.text.plain()),
        _ => None,
    });
    let field = Field::new(&readout.label, FieldKind::Decimal, &readout.value);
    Some((pad.types.clone(), field.error(wrong.unwrap_or_default())))
}

/// Returns every text of a page and its sheets, as it is read out; not what is out of sight.
pub(crate) fn texts(page: &Page) -> Vec<String> {
    let mut all = vec![page.title.clone(), page.under.plain()];
    all.extend(page.tallies.iter().filter(|one| !one.empty).map(|one| one.text.clone()));
    for sheet in &page.sheets {
        all.extend([sheet.title.clone(), sheet.whose.clone()]);
        all.extend(sheet.refused.clone());
    }
    let mut page = page.clone();
    page.blocks.retain(|block| !matches!(&block.kind, Kind::Group(group) if group.hidden));
    for block in page.all() {
        all.extend(block.texts());
    }
    all.retain(|text| !text.is_empty());
    all
}
