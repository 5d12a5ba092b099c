//! The medicine record: what is withheld now, and every treatment, the latest first; one medicine for many at once.

mod who;

use yeanling_core::book::{Animal, GroupId};
use yeanling_core::flock::{Group, Treated};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Moment;
use yeanling_words::common::date;
use yeanling_words::{animals, flock, frame, life, medicines as words};

pub(crate) use who::{Many, choose, sheet as who_sheet};

use crate::block::{Kind, Line, LineLook, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::withdrawal::told_withheld;
use crate::{Action, Button, Effect, Key, Screen, Sheet, Text};

/// What only this screen does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Asks what many were treated with.
    Treat(Many),
}

/// How many more treatments were asked for.
const MORE: &str = "medicines-more";

/// How many treatments are drawn at first, and how many times that more with each press.
const ROWS: usize = 30;
const TIMES: usize = 4;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    Page::new(words::TITLE).back(Screen::Flock, frame::FLOCK).blocks(
        Blocks::new().section("held", words::HELD, held(view)).section(
            "given",
            words::GIVEN,
            given(view, draft.fields.chosen(MORE).unwrap_or(0)),
        ),
    )
}

/// The living animals of which something is withheld.
fn held(view: &View) -> Blocks {
    let ewes = view.flock.ewes.values().filter(|ewe| ewe.lives()).map(|ewe| Animal::Ewe(ewe.id));
    let lambs = view.flock.lambs.values().filter(|lamb| lamb.lives()).map(|lamb| Animal::Lamb(lamb.id));
    let row = |animal: Animal| {
        let told = told_withheld(view, animal).join(" · ");
        let row = Row::new(animals::animal(view.flock, animal)).text(&told).to(Screen::of(animal));
        (!told.is_empty()).then(|| (held_key(animal), row))
    };
    let rows: Vec<(Key, Row)> = ewes.chain(lambs).filter_map(row).collect();
    if rows.is_empty() {
        return Blocks::new().text(words::NONE_HELD);
    }
    Blocks::new().rows("held-rows", rows)
}

fn held_key(animal: Animal) -> Key {
    match animal {
        Animal::Ewe(id) => format!("held-{id}").into(),
        Animal::Lamb(id) => format!("held-{id}").into(),
    }
}

fn given(view: &View, more: usize) -> Blocks {
    let all = together(view.flock.treatments());
    let most = ROWS + more * TIMES * ROWS;
    let row = |given: &Vec<&Treated>| row(view, given);
    let many = || Button::new("many", words::MANY, Action::Ask(Sheet::Who));
    if all.is_empty() {
        return Blocks::new().empty(words::EMPTY, [many()]).caution(words::CAUTION);
    }
    let blocks = Blocks::new();
    let blocks = blocks.rows("given-rows", all.iter().take(most).filter_map(row));
    let blocks = match all.len().saturating_sub(most) {
        0 => blocks,
        left => blocks.button(Button::new("more", flock::more(left), Action::Choose(MORE.into(), more + 1))),
    };
    let of_groups = of_groups(view);
    let blocks = if of_groups.is_empty() {
        blocks
    } else {
        blocks.fold("group-boosters", words::GROUP_BOOSTERS, of_groups)
    };
    blocks.button(many()).caution(words::CAUTION)
}

/// The boosters that were noted of a group as a whole, as earlier versions did, the latest first.
fn of_groups(view: &View) -> Blocks {
    let of_group = |group: &'_ Group| {
        let (id, name) = (group.id, group.name.clone());
        group.boosters.clone().into_iter().map(move |at| (at, id, name.clone()))
    };
    let mut given: Vec<_> = view.flock.groups.values().flat_map(of_group).collect();
    given.sort_small_by_key(|(at, id, _)| (std::cmp::Reverse(*at), *id));
    let row = |(place, (at, id, name)): (usize, (Moment, GroupId, String))| {
        let row = Row::new(name).kind(date(at)).text(words::GROUP_BOOSTER).to(Screen::Group(id));
        (format!("group-booster-{place}"), row)
    };
    let rows: Vec<_> = given.into_iter().enumerate().map(row).collect();
    if rows.is_empty() { Blocks::new() } else { Blocks::new().rows("of-groups", rows) }
}

/// Returns treatments by what was given: the same on one day is one treatment of all who had it; the latest first.
fn together(all: Vec<&Treated>) -> Vec<Vec<&Treated>> {
    let mut given: Vec<Vec<&Treated>> = Vec::new();
    for one in all {
        let day = one.at.local().date();
        let of_day =
            |group: &&mut Vec<&Treated>| group.first().is_some_and(|first| first.at.local().date() == day);
        // The latest first: those of one day stand together. Who had it twice was treated twice.
        let same = given.iter_mut().rev().take_while(of_day).find(|group| {
            let is_alike =
                |other: &&Treated| other.treatment == one.treatment && other.booster == one.booster;
            group.iter().all(|other| is_alike(other) && other.animal != one.animal)
        });
        match same {
            Some(group) => group.push(one),
            None => given.push(vec![one]),
        }
    }
    given
}

/// One treatment: of one animal, or of so many with their names folded behind it.
fn row(view: &View, given: &[&Treated]) -> Option<(Key, Row)> {
    let first = given.first()?;
    let told = |row: Row| row.kind(date(first.at)).text(life::given_line(first));
    let row = if given.len() == 1 {
        told(Row::new(animals::animal(view.flock, first.animal))).to(Screen::of(first.animal))
    } else {
        let ewes = given.iter().filter(|one| matches!(one.animal, Animal::Ewe(_))).count();
        let who = given.iter().fold(Blocks::new(), |blocks, one| {
            let name = animals::animal(view.flock, one.animal);
            let to = LineLook::To(Screen::of(one.animal));
            blocks.add(key_of("who", one.entry), Kind::Line(Line::new(to, Text::typed(&name))))
        });
        let fold = Blocks::new().fold(key_of("whose", first.entry), words::WHICH, who);
        told(Row::new(words::how_many(ewes, given.len() - ewes))).inside(fold)
    };
    Some((key_of("given", first.entry), row))
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Treat(many) => choose(many, view, draft),
    }
}
