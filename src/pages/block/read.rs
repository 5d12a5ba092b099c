//! Reading a page: what stands inside a block, its buttons, its texts.

use std::sync::Arc;

use super::{Block, CardList, Choices, Group, Key, Kind, LedgerRow, Shape};
use crate::button::Button;
use crate::button::Stays;
use crate::text::Text;

impl Block {
    /// Returns blocks as one, as if nothing held them.
    pub fn seen(key: impl Into<Key>, inside: impl Into<Vec<Arc<Self>>>) -> Arc<Self> {
        Self::new(key, Kind::Group(Group { shape: Shape::Shown, hidden: false, inside: inside.into() }))
    }

    /// Returns a block.
    pub fn new(key: impl Into<Key>, kind: Kind) -> Arc<Self> {
        Arc::new(Self { key: key.into(), kind })
    }

    /// Returns the blocks inside, those beside a card's action first.
    #[must_use]
    pub fn inside(&self) -> Vec<&Arc<Self>> {
        match &self.kind {
            Kind::Section(it) => it.inside.iter().collect(),
            Kind::Card(it) => it.head.iter().chain(&it.lead).chain(&it.inside).collect(),
            Kind::Fold(it) => it.inside.iter().collect(),
            Kind::Group(it) => it.inside.iter().collect(),
            Kind::Rows(inside) | Kind::Tiles(inside) => inside.iter().collect(),
            Kind::Family(it) => it.lines.iter().collect(),
            Kind::Row(it) => it.inside.iter().collect(),
            Kind::Notice(it) => it.inside.iter().collect(),
            Kind::Keypad(it) => it.inside.iter().chain(&it.below).collect(),
            Kind::Buttons(it) => it.inside.iter().collect(),
            Kind::Figure(it) => it.beside.iter().collect(),
            Kind::Line(_)
            | Kind::Heading(_)
            | Kind::List(_)
            | Kind::Caution(_)
            | Kind::Empty(_)
            | Kind::Facts(_)
            | Kind::Ribbon(_)
            | Kind::Chart(_)
            | Kind::Ledger(_)
            | Kind::Checks(_)
            | Kind::Progress(_)
            | Kind::Timeline(_)
            | Kind::Tile(_)
            | Kind::Field(_)
            | Kind::Choices(_)
            | Kind::Toggle(_)
            | Kind::Readout(_)
            | Kind::Button(_)
            | Kind::FilePick(_)
            | Kind::Drawing(_)
            | Kind::DrawnButton(_)
            | Kind::PaperCard(_)
            | Kind::PaperTable(_)
            | Kind::Ring(_) => Vec::new(),
        }
    }

    /// Returns every button of its own; not those of the blocks inside.
    #[must_use]
    pub fn buttons(&self) -> Vec<&Button> {
        match &self.kind {
            Kind::Section(it) => it.aside.iter().collect(),
            Kind::Card(it) => it.action.iter().collect(),
            Kind::Family(it) => it.action.iter().collect(),
            Kind::Row(it) => it.action.iter().chain(&it.others).collect(),
            Kind::Notice(it) => it.buttons.iter().collect(),
            Kind::Line(it) => it.buttons.iter().collect(),
            Kind::List(it) => it.items.iter().flat_map(|item| &item.buttons).collect(),
            Kind::Empty(it) => it.buttons.iter().collect(),
            Kind::Figure(it) => it.buttons.iter().collect(),
            Kind::Timeline(lines) => lines.iter().flat_map(|line| &line.buttons).collect(),
            Kind::Button(it) => vec![it],
            Kind::Fold(_)
            | Kind::Group(_)
            | Kind::Rows(_)
            | Kind::Tiles(_)
            | Kind::Tile(_)
            | Kind::Keypad(_)
            | Kind::Heading(_)
            | Kind::Caution(_)
            | Kind::Facts(_)
            | Kind::Ribbon(_)
            | Kind::Chart(_)
            | Kind::Ledger(_)
            | Kind::Checks(_)
            | Kind::Progress(_)
            | Kind::Field(_)
            | Kind::Choices(_)
            | Kind::Toggle(_)
            | Kind::Readout(_)
            | Kind::Buttons(_)
            | Kind::FilePick(_)
            | Kind::Drawing(_)
            | Kind::DrawnButton(_)
            | Kind::PaperCard(_)
            | Kind::PaperTable(_)
            | Kind::Ring(_) => Vec::new(),
        }
    }
}

impl Block {
    /// Returns every text of its own, as it is read out; not those of the blocks inside.
    #[must_use]
    pub fn texts(&self) -> Vec<String> {
        let mut all: Vec<String> = Vec::new();
        for button in self.buttons().into_iter().filter(|button| button.stays != Stays::Room) {
            all.extend([button.label.clone(), button.name.clone()]);
        }
        match &self.kind {
            Kind::Section(it) => all.push(it.title.clone()),
            Kind::Fold(it) => all.push(it.label.plain()),
            Kind::Family(it) => all.extend([it.title.clone(), it.aside.plain()]),
            Kind::Row(it) => {
                let texts = [&it.kind, &it.text, &it.step, &it.says];
                all.extend(std::iter::once(it.name.clone()).chain(texts.map(Text::plain)));
            }
            Kind::Tile(it) => all.extend([it.name.clone(), it.says.clone()]),
            Kind::Line(it) => all.push(it.text.plain()),
            Kind::Heading(it) => all.push(it.text.clone()),
            Kind::List(it) => {
                all.extend(it.items.iter().flat_map(|one| [one.text.plain(), one.note.plain()]));
            }
            Kind::Caution(lines) => all.extend(lines.iter().map(Text::plain)),
            Kind::Empty(it) => all.push(it.text.plain()),
            Kind::Figure(it) => {
                all.extend([format!("{}{}{}", it.value, it.gap(), it.unit), it.also.clone()]);
            }
            Kind::Facts(facts) => {
                all.extend(facts.iter().flat_map(|one| [one.value.plain(), one.note.clone()]));
            }
            Kind::Ribbon(it) => {
                all.push(it.label.clone());
                all.extend(it.stretches.iter().map(|one| one.label.clone()));
                all.extend(it.ticks.iter().map(|one| one.text.clone()));
                all.extend(it.pins.iter().map(|one| one.title.clone()));
            }
            Kind::Chart(it) => {
                all.extend([
                    it.label.clone(),
                    it.unit.clone(),
                    it.band_name.clone(),
                    it.bars_name.clone(),
                    it.spreads_name.clone(),
                ]);
                all.extend(it.lines.iter().map(|one| one.name.clone()));
                all.extend(it.starts.iter().map(|one| one.name.clone()));
                all.extend(it.across.iter().chain(&it.up).map(|(_, text)| text.clone()));
            }
            Kind::Ledger(it) => {
                all.extend([it.label.clone(), it.heads.0.clone(), it.heads.1.clone()]);
                let row = |one: &LedgerRow| {
                    [one.name.clone(), one.note.clone(), one.value.plain(), one.other.plain()]
                };
                all.extend(it.rows.iter().flat_map(row));
            }
            Kind::Checks(checks) => all.extend(checks.iter().map(|one| one.text.plain())),
            Kind::Progress(it) => all.push(it.text.plain()),
            Kind::Timeline(lines) => {
                all.extend(
                    lines.iter().flat_map(|one| [one.time.clone(), one.text.plain(), one.note.clone()]),
                );
            }
            Kind::Field(it) => {
                all.extend([it.label.clone(), it.hint.clone(), it.error.clone(), it.unit.clone()]);
                all.extend(it.units.iter().flat_map(Choices::texts));
            }
            Kind::Choices(it) => all.extend(it.texts()),
            Kind::Toggle(it) => all.extend([it.label.clone(), it.note.clone().unwrap_or_default()]),
            Kind::Readout(it) => {
                let figures = it.figures.iter().map(|(number, unit)| format!("{number} {unit}"));
                all.push(it.label.clone());
                all.push(figures.collect::<Vec<_>>().join(" "));
                all.push(it.also.clone());
            }
            Kind::FilePick(it) => all.push(it.label.clone()),
            Kind::DrawnButton(it) => all.extend([it.label.clone(), it.note.clone()]),
            Kind::PaperCard(it) => {
                all.push(it.sub.clone());
                let list = |one: &CardList| {
                    std::iter::once(one.heading.clone()).chain(one.lines.clone()).collect::<Vec<_>>()
                };
                all.extend(it.lists.iter().flat_map(list));
            }
            Kind::PaperTable(it) => {
                all.push(it.head.clone());
                all.extend(it.heads.iter().chain(it.rows.iter().flatten()).cloned());
            }
            Kind::Ring(it) => {
                all.extend([it.name.clone(), it.text.plain(), it.more.clone()]);
                all.extend([it.answer.label.clone(), it.answer.note.clone()]);
            }
            Kind::Card(_)
            | Kind::Group(_)
            | Kind::Rows(_)
            | Kind::Tiles(_)
            | Kind::Notice(_)
            | Kind::Keypad(_)
            | Kind::Buttons(_)
            | Kind::Button(_)
            | Kind::Drawing(_) => {}
        }
        all.retain(|text| !text.is_empty());
        all
    }
}
