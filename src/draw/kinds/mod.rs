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

/// Keeps a kind a function of its own, where all of them would be made one: a browser compiles a function when it is first
/// called, and a screen has few kinds.
#[inline(never)]
fn apart(make: impl FnOnce() -> Element) -> Element {
    make()
}

/// Returns what a block looks like.
pub(crate) fn node(block: &Block) -> Element {
    let key = &block.key;
    match &block.kind {
        Kind::Section(it) => apart(|| hold::section(key, it)),
        Kind::Card(it) => apart(|| hold::card(it)),
        Kind::Fold(it) => apart(|| hold::fold(it)),
        Kind::Group(it) => apart(|| hold::group(key, it)),
        Kind::Rows(rows) => el("ul", "rows").has("role", "list").blocks(rows),
        Kind::Family(it) => apart(|| family::family(key, it)),
        Kind::Row(it) => apart(|| hold::row(it)),
        Kind::Tiles(tiles) => el("ul", "tiles").has("role", "list").blocks(tiles),
        Kind::Tile(it) => apart(|| tile::tile(it)),
        Kind::Notice(it) => apart(|| hold::notice(it)),
        Kind::Keypad(it) => apart(|| keypad::keypad(it)),
        Kind::Line(it) => apart(|| text::line(it)),
        Kind::Heading(it) => apart(|| text::heading(it)),
        Kind::List(it) => apart(|| text::list(it)),
        Kind::Caution(lines) => apart(|| text::caution(lines)),
        Kind::Empty(it) => apart(|| text::empty(it)),
        Kind::Figure(it) => apart(|| shown::figure(it)),
        Kind::Facts(facts) => apart(|| shown::facts(facts)),
        Kind::Ribbon(it) => apart(|| ribbon::ribbon(key, it)),
        Kind::Chart(it) => apart(|| chart::chart(it)),
        Kind::Ledger(it) => apart(|| shown::ledger(it)),
        Kind::Checks(checks) => apart(|| shown::checks(checks)),
        Kind::Progress(it) => apart(|| shown::progress(it)),
        Kind::Timeline(lines) => apart(|| shown::timeline(lines)),
        Kind::Field(it) => apart(|| input::field(key, it)),
        Kind::Choices(it) => apart(|| input::choices(it)),
        Kind::Toggle(it) => apart(|| input::toggle(it)),
        Kind::Readout(it) => apart(|| keypad::readout(it)),
        Kind::Buttons(it) => {
            el("div", "buttons").has("data-columns", it.columns.to_string()).blocks(&it.inside)
        }
        Kind::Button(it) => button(it),
        Kind::FilePick(it) => apart(|| input::file_pick(key, it)),
        Kind::Drawing(href) => apart(|| shown::drawing(href)),
        Kind::DrawnButton(it) => apart(|| input::drawn_button(it)),
        Kind::PaperCard(it) => apart(|| text::paper_card(it)),
        Kind::PaperTable(it) => apart(|| text::paper_table(it)),
        Kind::Ring(it) => apart(|| night::ring(key, it)),
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
