//! The lambing kit as a list: on paper for the shop, or handed to the phone as a table.

use yeanling_core::spreadsheet::{Cell, write};
use yeanling_core::units::Amount;
use yeanling_words::common::date;
use yeanling_words::{kit as words, share, stores};

use super::{OnShelf, coming, shelf};
use crate::block::{Aloud, Kind, Line, LineLook, PaperTable};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::phone::FileTrouble;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Key, Request};

/// Under which key the phone tells what became of the list.
const KEY: &str = "kit-list-given";

/// Returns the ways to print the list and to hand it on, and what became of it.
pub(super) fn buttons(view: &View, draft: &Draft) -> Blocks {
    let print = Button::new("print", words::PRINT_LIST, Action::Phone(Request::Print));
    let share = Button::new("share-list", words::SHARE_LIST, Action::Does(Does::ShareKit));
    let text = draft.said(KEY).into();
    let said = Line { look: LineLook::Small, text, aloud: Aloud::Politely, buttons: Vec::new() };
    let share = (!view.sample).then_some(share);
    Blocks::new().buttons(2, [print].into_iter().chain(share)).add(KEY, Kind::Line(said))
}

/// The cells of a thing: what it is, how much to have, how much there is, how much to buy.
fn cells(view: &View, one: &OnShelf) -> [String; 4] {
    let told = |amount: Option<Amount>| {
        amount.map(|amount| stores::amount(one.item, amount, view.system())).unwrap_or_default()
    };
    let short = one.wanted.map(|wanted| wanted.less(one.there.unwrap_or(Amount::NONE)));
    let short = short.filter(|short| short.as_units() > 0.0);
    let have = one.wanted.map_or_else(
        || one.uses.as_ref().map(|uses| uses.replace('*', "")).unwrap_or_default(),
        |wanted| told(Some(wanted)),
    );
    [words::name(one.item), have, told(one.there), told(short)]
}

/// Returns what is printed: what is wanted or was counted.
pub(super) fn paper(view: &View, shelf: &[OnShelf]) -> PaperTable {
    PaperTable {
        head: words::list_head(&view.settings().farm_name, &date(view.now)),
        heads: words::LIST_HEADS.map(str::to_owned).to_vec(),
        rows: shelf.iter().map(|one| cells(view, one).to_vec()).collect(),
        on_screen: false,
    }
}

/// Hands the list to the phone.
pub(crate) fn does(view: &View) -> Vec<Effect> {
    let shelf = shelf(view.flock, coming(view));
    let known = shelf.iter().filter(|one| one.known);
    let rows: Vec<Vec<Cell>> =
        known.map(|one| cells(view, one).map(|cell| Cell::text(Some(cell))).to_vec()).collect();
    let name = words::list_file(&view.now.local().date().to_string());
    vec![Effect::Phone(Request::GiveTable(KEY.into(), name, write(&words::LIST_HEADS, rows)))]
}

/// Says how it went.
pub(crate) fn given(key: &Key, trouble: Option<&FileTrouble>, draft: &mut Draft) {
    let said = match trouble {
        None => words::LIST_GIVEN.to_owned(),
        Some(FileTrouble::Failed(browser)) => share::not_saved(browser),
        Some(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => String::new(),
    };
    draft.say(key.clone(), said);
}

/// Says whether a key is that of the list.
pub(crate) fn is_ours(key: &str) -> bool {
    key == KEY
}
