//! What each kind of block looks like: plain functions from data to data, a family a file.

mod button;
mod chart;
mod family;
mod hold;
mod input;
mod keypad;
mod night;
mod ribbon;
mod shown;
mod text;
mod tile;

pub(crate) use button::{button, means};
pub(crate) use shown::mark;

use yeanling_pages::block::Shape;
use yeanling_pages::{Block, Kind};

use crate::node::{Element, el};

/// Returns what a block looks like.
pub(crate) fn node(block: &Block) -> Element {
    let key = &block.key;
    match &block.kind {
        Kind::Section(it) => hold::section(key, it),
        Kind::Card(it) => hold::card(it),
        Kind::Fold(it) => hold::fold(it),
        Kind::Group(it) => hold::group(key, it),
        Kind::Rows(rows) => el("ul", "rows").has("role", "list").blocks(rows),
        Kind::Family(it) => family::family(key, it),
        Kind::Row(it) => hold::row(it),
        Kind::Tiles(tiles) => el("ul", "tiles").has("role", "list").blocks(tiles),
        Kind::Tile(it) => tile::tile(it),
        Kind::Notice(it) => hold::notice(it),
        Kind::Keypad(it) => keypad::keypad(it),
        Kind::Line(it) => text::line(it),
        Kind::Heading(it) => text::heading(it),
        Kind::List(it) => text::list(it),
        Kind::Caution(lines) => text::caution(lines),
        Kind::Empty(it) => text::empty(it),
        Kind::Figure(it) => shown::figure(it),
        Kind::Facts(facts) => shown::facts(facts),
        Kind::Ribbon(it) => ribbon::ribbon(key, it),
        Kind::Chart(it) => chart::chart(it),
        Kind::Ledger(it) => shown::ledger(it),
        Kind::Checks(checks) => shown::checks(checks),
        Kind::Progress(it) => shown::progress(it),
        Kind::Timeline(lines) => shown::timeline(lines),
        Kind::Field(it) => input::field(key, it),
        Kind::Choices(it) => input::choices(it),
        Kind::Toggle(it) => input::toggle(it),
        Kind::Readout(it) => keypad::readout(it),
        Kind::Buttons(it) => {
            el("div", "buttons").has("data-columns", it.columns.to_string()).blocks(&it.inside)
        }
        Kind::Button(it) => button(it),
        Kind::FilePick(it) => input::file_pick(key, it),
        Kind::Drawing(href) => shown::drawing(href),
        Kind::DrawnButton(it) => input::drawn_button(it),
        Kind::PaperCard(it) => text::paper_card(it),
        Kind::PaperTable(it) => text::paper_table(it),
        Kind::Ring(it) => night::ring(key, it),
    }
}

/// Returns the class of a group.
const fn class(shape: Shape) -> &'static str {
    match shape {
        Shape::Blocks => "blocks",
        Shape::Shown => "shown",
        Shape::Answers => "answers",
        Shape::Answer => "answer",
        Shape::LaborDue => "labor-due",
        Shape::Living | Shape::NotLiving => "lambing-living",
        Shape::LambingSeen => "lambing-seen",
        Shape::KeypadSays => "keypad-says",
        Shape::LambingHelp => "lambing-help",
        Shape::HelpPart => "help-part",
        Shape::DrawnLine => "drawn-line",
        Shape::Night => "night",
        Shape::NightTop => "night-top",
        Shape::NightDue => "night-overdue",
        Shape::NightFoot => "night-foot",
        Shape::Timer | Shape::Alert => "",
    }
}
