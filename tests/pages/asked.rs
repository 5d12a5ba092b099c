//! Every quantity that the program worked out can be asked "why?" beside it; what a person typed, and what is printed for every
//! farm, need not.

use std::collections::BTreeSet;
use std::sync::Arc;

use yeanling_core::book::Event;
use yeanling_core::units::{Mass, Moment, System};
use yeanling_pages::block::{Kind, Line, LineLook, ListLook, Row};
use yeanling_pages::{Action, Block, Page, Screen, Sheet, sample};

use crate::both_units::{Quantity, quantities};
use crate::phone::Phone;
use crate::reach::texts;

/// The quantities that need no reason.
struct Known(Vec<Quantity>);

impl Known {
    /// Those that were noted, as a timeline tells them, and those that stand in an empty book.
    fn of(phone: &Phone) -> Self {
        let system = phone.flock.settings.system;
        let lines = phone.flock.lines.iter();
        let noted = lines.map(|line| yeanling_words::noted::line(&line.event, &phone.flock, system));
        let mut empty = Phone::with(Default::default(), phone.now);
        empty.note(Event::Chose(yeanling_core::settings::Choice::System(system)));
        let printed = empty.screens().into_iter().flat_map(|screen| texts(&empty.page_of(screen)));
        Self(noted.chain(printed).flat_map(|text| quantities(&text.replace('*', ""))).collect())
    }

    /// Says whether a quantity is one of these, as it is rounded.
    fn has(&self, one: &Quantity) -> bool {
        let is = |known: &Quantity| {
            known.kind == one.kind && (known.value - one.value).abs() <= one.off.max(known.off) / 2.0 + 1e-9
        };
        self.0.iter().any(is)
    }
}

fn asks(block: &Block) -> bool {
    block.buttons().iter().any(|button| matches!(button.does, Action::Ask(Sheet::Why(_))))
}

/// Whether it is about one thing, so that a "why?" in it is not about what stands beside it.
fn is_one(block: &Block) -> bool {
    matches!(block.kind, Kind::Row(_) | Kind::Card(_) | Kind::Notice(_))
}

/// Whether "why?" stands in what a block holds; not in the rows and cards of it.
fn asks_inside(block: &Arc<Block>) -> bool {
    asks(block) || block.inside().into_iter().filter(|one| !is_one(one)).any(asks_inside)
}

fn asks_anywhere(block: &Arc<Block>) -> bool {
    asks(block) || block.inside().into_iter().any(asks_anywhere)
}

/// Says whether a row, or what comes next at night, leads to a page on which it can be asked.
fn leads_there(phone: &Phone, block: &Block) -> bool {
    let to = match &block.kind {
        Kind::Row(Row { to: Some(to), .. }) => *to,
        Kind::Line(Line { look: LineLook::NightNext(to), .. }) => *to,
        _ => return false,
    };
    phone.page_of(to).all().into_iter().any(|one| asks(one))
}

/// Gathers the texts whose quantities nobody can ask about; `asked` says whether "why?" stands around them.
fn gather(phone: &Phone, block: &Arc<Block>, asked: bool, known: &Known, to: &mut BTreeSet<String>) {
    // What was noted stands there as it was typed, and on paper nothing can be pressed. What comes at night is read from
    // afar; each line of it stands on the Watch, where it is asked.
    let at_night = matches!(&block.kind, Kind::List(list) if list.look == ListLook::NightThen);
    if at_night || matches!(block.kind, Kind::Timeline(_) | Kind::PaperCard(_)) {
        return;
    }
    let around =
        matches!(block.kind, Kind::Section(_) | Kind::Fold(_) | Kind::Group(_)) && asks_inside(block);
    let asked =
        asked || around || is_one(block) && asks_anywhere(block) || asks(block) || leads_there(phone, block);
    if !asked {
        let unknown = |text: &String| quantities(text).iter().any(|one| !known.has(one));
        to.extend(block.texts().into_iter().filter(unknown));
    }
    block.inside().into_iter().for_each(|inside| gather(phone, inside, asked, known, to));
}

/// Returns the texts of blocks whose quantities were worked out and cannot be asked about.
fn unasked(phone: &Phone, blocks: &[Arc<Block>], known: &Known) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    let asked = blocks.iter().filter(|one| !is_one(one)).any(asks_inside);
    blocks.iter().for_each(|block| gather(phone, block, asked, known, &mut found));
    found
}

/// Returns the sheets of feeds that a page opens: only these have volumes that were worked out.
fn feeds_of(page: &Page) -> Vec<Sheet> {
    let blocks = page.all();
    let opened = blocks.iter().flat_map(|block| block.buttons()).filter_map(|button| match &button.does {
        Action::Ask(sheet @ Sheet::Feed(..)) => Some(sheet.clone()),
        _ => None,
    });
    opened.collect()
}

/// Returns what a phone says unasked, each with its screen or sheet.
fn all(phone: &Phone) -> BTreeSet<String> {
    let known = Known::of(phone);
    let mut found = BTreeSet::new();
    let mut add = |place: String, blocks: &[Arc<Block>]| {
        let place = place.split('(').next().unwrap_or_default().to_owned();
        found.extend(unasked(phone, blocks, &known).into_iter().map(|text| format!("{place}: {text}")));
    };
    for screen in phone.screens() {
        let Page { blocks, thumb, .. } = phone.page_of(screen);
        add(format!("{screen:?}"), &[blocks, thumb].concat());
    }
    let feeds: Vec<Sheet> =
        phone.screens().into_iter().flat_map(|screen| feeds_of(&phone.page_of(screen))).collect();
    let others = crate::sheets::every(phone).into_iter().filter(|sheet| !matches!(sheet, Sheet::Feed(..)));
    for sheet in others.chain(feeds) {
        // A feed is asked about on the page of its lamb.
        let of_a_feed = |lamb| phone.page_of(Screen::Lamb(lamb)).all().into_iter().any(|one| asks(one));
        let asked = match &sheet {
            Sheet::Why(_) => true,
            Sheet::Feed(lamb, ..) => of_a_feed(*lamb),
            _ => false,
        };
        if asked {
            continue;
        }
        let mut asked = phone.clone();
        asked.act(&Action::Ask(sheet.clone()));
        let sheets = asked.page().sheets;
        add(format!("{sheet:?}"), &sheets.last().map(|sheet| sheet.blocks.clone()).unwrap_or_default());
    }
    found
}

#[test]
fn every_quantity_that_was_worked_out_can_be_asked_about() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut found = BTreeSet::new();
    for system in [System::Metric, System::Us] {
        for hours in [0, 5, 30] {
            let mut phone = Phone::with(sample::book(begins, system), begins);
            phone.later(hours * 60);
            found.extend(all(&phone));
        }
    }
    assert!(found.is_empty(), "{}", found.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn a_quantity_that_nobody_can_ask_about_is_found() {
    use yeanling_pages::{Blocks, Button};
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(3.9) });
    let known = Known::of(&phone);
    let count = |blocks: Blocks| unasked(&phone, &Vec::from(blocks), &known).len();
    assert_eq!(count(Blocks::new().text("It weighs 3.9 kg.")), 0);
    assert_eq!(count(Blocks::new().text("It wants 193 ml.")), 1);
    let why = || {
        let reason = yeanling_pages::Reason::Shopping;
        Button::new("why", "why?", Action::Ask(Sheet::Why(Box::new(reason)))).small()
    };
    assert_eq!(count(Blocks::new().remark("It wants 193 ml.", [why()])), 0);
    // A reason in one card is none for the next.
    let asked = Blocks::new().card("one", Blocks::new().remark("It wants 193 ml.", [why()]));
    assert_eq!(count(asked.card("other", Blocks::new().text("It wants 197 ml."))), 1);
}
