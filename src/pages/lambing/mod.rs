//! One ewe at work: each lamb as it comes, everything for it on one screen, every tap saved as it is made.

mod does;
mod give_dam;
mod hand;
mod is_that_all;
mod labor;
mod one_lamb;
mod part;
mod weight;
mod who;

use std::sync::Arc;

use yeanling_core::book::{EweId, LambId, Sex};
use yeanling_core::flock::Litter;
use yeanling_core::units::TimeDelta;
use yeanling_words::danger::{self, Found};
use yeanling_words::{animals, cautions, frame, lambing as words};

pub(crate) use does::{Does, does, enter, leave, pressed, typed};
pub(crate) use give_dam::sheet as give_dam_sheet;
pub(crate) use hand::sheet as hand_sheet;
pub(crate) use is_that_all::sheet as is_that_all_sheet;
pub(crate) use part::sheet as part_sheet;
pub(crate) use who::page as who_page;

use crate::block::{Block, Choice, Choices, Heading, HeadingLook, Kind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Reason, Screen, Sheet};

/// The lamb that is chosen; without one, the one that comes next is.
const CHOSEN: &str = "lambing-lamb";
/// Whether the next lamb or the end was asked for while a weight was still asked about.
const HELD: &str = "lambing-held";
/// How old lambs can be that were found, by its place; nothing of lambs born now.
const FOUND: &str = "lambing-found";

/// A lambing as its screen has it.
#[derive(Clone, Copy, Debug)]
struct Work<'a> {
    view: &'a View<'a>,
    /// The litter being born.
    litter: Option<&'a Litter>,
    /// Whose it is.
    dam: Option<EweId>,
    /// The lamb that is chosen.
    chosen: Option<LambId>,
}

impl<'a> Work<'a> {
    fn of(view: &'a View<'a>, fields: &Fields, screen: Screen) -> Self {
        let (litter, ewe) = if let Screen::LambingLamb(lamb) = screen {
            (view.flock.litter_of(lamb), None)
        } else if let Screen::LambingEwe(ewe) = screen {
            let latest = view.flock.litters_of(ewe).into_iter().next();
            (latest.filter(|litter| is_open(view, litter)), Some(ewe))
        } else {
            (None, None)
        };
        // A lamb whose birth was undone is no longer there to be chosen.
        let chosen = in_hand(fields).filter(|lamb| litter.is_some_and(|litter| litter.lambs.contains(lamb)));
        Self { view, litter, dam: ewe.or_else(|| litter.and_then(|litter| litter.dam)), chosen }
    }

    fn lambs(&self) -> &'a [LambId] {
        self.litter.map_or(&[], |litter| &litter.lambs)
    }

    fn scanned(&self) -> Option<u8> {
        self.dam.and_then(|dam| self.view.flock.scanned_for(dam, self.view.now))
    }

    /// Says whether the scan saw more lambs than are born.
    fn are_more_to_come(&self) -> bool {
        self.scanned().is_some_and(|scanned| usize::from(scanned) > self.lambs().len())
    }

    /// Says whether another lamb may come: by her scan, or, without one, by the clock.
    fn may_be_more(&self) -> bool {
        self.litter.is_some_and(|litter| {
            let counted = self.view.flock.counted(litter, self.view.now);
            counted.may_grow || counted.lambs > litter.lambs.len()
        })
    }
}

/// Says whether a litter goes on: also one that was found a short while ago, however long ago it was born.
fn is_open(view: &View, litter: &Litter) -> bool {
    let found = |lamb: &LambId| view.flock.lamb(*lamb)?.found;
    let latest = litter.lambs.iter().filter_map(found).max();
    let was_found = latest.is_some_and(|at| view.now.since(at) < TimeDelta::hours(24));
    litter.goes_on(view.now) || (was_found && !litter.all_said_born())
}

/// Returns the lamb that was chosen last, also once it is no longer there to be chosen.
fn in_hand(fields: &Fields) -> Option<LambId> {
    fields.typed(CHOSEN)?.parse().ok()
}

/// What a press does that only this screen knows.
const fn only(does: Does) -> Action {
    Action::Does(crate::Does::Lambing(does))
}

/// Returns the screen of a ewe, or of nobody's litter, at work.
pub(crate) fn page(view: &View, draft: &Draft, screen: Screen) -> Page {
    let fields = &draft.fields;
    let work = Work::of(view, fields, screen);
    let title = match work.dam {
        Some(dam) => words::title(&animals::ewe_of(view.flock, dam)),
        None => words::UNKNOWN.to_owned(),
    };
    let chosen = work.chosen.and_then(|id| view.flock.lamb(id));
    let part = match chosen {
        Some(lamb) => one_lamb::blocks(view, fields, lamb),
        None => {
            let (next, found) = (next_lamb(work), born_when(fields));
            match work.dam {
                Some(ewe) => labor::around(view, fields, ewe, (next, found)),
                None => next.then(found).then(people()),
            }
        }
    };
    let began = work.litter.map(|litter| litter.began);
    let (above, below) = labor::after_lambing(view, fields, work.dam);
    Page::new(title)
        .back(Screen::Watch, frame::BACK)
        .under(words::under(began, work.scanned()))
        .blocks(above.then(tabs(work)).then(part).then(below).then(give_dam(work)))
        .thumb(thumb(work, fields))
}

/// The lambs of this litter so far, one to be chosen.
fn tabs(work: Work) -> Blocks {
    let name = |id: LambId| animals::lamb_of(work.view.flock, id);
    // One lamb alone needs no choosing, but a name: what stands below is about it, not about the next.
    if let ([lamb], Some(_)) = (work.lambs(), work.chosen) {
        let heading = Heading { level: 2, look: HeadingLook::OneLamb, text: name(*lamb) };
        return Blocks::new().add("", Kind::Heading(heading));
    }
    let choose = |lamb: LambId| {
        // Its digits stand where it is chosen; that they wait is seen from here.
        let waits = work.chosen != Some(lamb) && weight::wait(work.view, lamb);
        let name = name(lamb);
        let label = if waits { words::weight_waits(&name) } else { name };
        Choice::new(label, only(Does::Choose(Some(lamb))))
    };
    let mut options: Vec<Choice> = work.lambs().iter().copied().map(choose).collect();
    let place = |chosen| work.lambs().iter().position(|lamb| *lamb == chosen);
    let chosen = work.chosen.map_or(Some(options.len()), place);
    if options.is_empty() {
        return Blocks::new();
    }
    if work.chosen.is_none() {
        options.push(Choice::new(words::NEXT, only(Does::Choose(None))));
    }
    Blocks::new().choices("litter", Choices::new(words::LITTER, options, chosen))
}

/// The moment of birth: one tap that says what it is, and starts the clocks. Of lambs that were found, how old they can be
/// is chosen once; they are then noted one after another.
fn next_lamb(work: Work) -> Blocks {
    // Another lamb is another button: a second press in the same place is not taken for one more.
    let born = |key: &str, label, sex, alive| {
        let key = format!("{key}-{}", work.lambs().len());
        Button::new(key, label, only(Does::Born(sex, alive))).big()
    };
    let buttons = [
        born("ewe-lamb", words::EWE_LAMB, Some(Sex::Ewe), true).filled(),
        born("ram-lamb", words::RAM_LAMB, Some(Sex::Ram), true).filled(),
        born("not-seen", words::NOT_SEEN, None, true),
        born("born-dead", words::BORN_DEAD, None, false),
    ];
    let title = if work.lambs().is_empty() { words::FIRST } else { words::ANOTHER };
    Blocks::new().section("lamb", title, Blocks::new().buttons(2, buttons))
}

/// When it was born: now, or how old one can be that was found.
fn born_when(fields: &Fields) -> Blocks {
    let now = Choice::new(danger::BORN_NOW, Action::Choose(FOUND.into(), 0));
    let found =
        |(place, found): (usize, Found)| Choice::new(found.short(), Action::Choose(FOUND.into(), place + 1));
    let options = std::iter::once(now).chain(Found::ALL.into_iter().enumerate().map(found)).collect();
    let when = Choices::new(danger::BORN, options, Some(fields.chosen(FOUND).unwrap_or(0))).snug();
    Blocks::new().section("born", danger::BORN, Blocks::new().choices(FOUND, when))
}

/// Returns how old lambs can be that were found, if they were.
fn found(fields: &Fields) -> Option<Found> {
    let place = fields.chosen(FOUND)?.checked_sub(1)?;
    Found::ALL.get(place).copied()
}

/// Who keeps away at lambing, in a line.
pub(super) fn people() -> Blocks {
    Blocks::new().remark(cautions::PEOPLE_SHORT, [why(cautions::PEOPLE_TITLE, Reason::People)])
}

fn give_dam(work: Work) -> Blocks {
    match work.lambs().first().filter(|_| work.dam.is_none()) {
        Some(first) => Blocks::new().button(Button::new(
            "give-dam",
            words::GIVE_DAM,
            Action::Ask(Sheet::GiveDam(*first)),
        )),
        None => Blocks::new(),
    }
}

/// What stands under the thumb: the next lamb, and the end; large is what comes next, by her scan or by the clock. A weight
/// that was typed and is still asked about is not noted: neither comes before it.
fn thumb(work: Work, fields: &Fields) -> Blocks {
    let chosen = work.chosen.and_then(|id| work.view.flock.lamb(id));
    let asked = chosen.is_some_and(|lamb| weight::is_asked_about(work.view, fields, lamb));
    let held = fields.chosen(HELD).is_some() && asked;
    let more = work.may_be_more();
    let mut thumb = Blocks::new().wrong(if held { words::WEIGHT_FIRST } else { "" });
    let large = |button: Button, large: bool| if large { button.big().filled() } else { button };
    if chosen.is_some() {
        thumb = thumb.button(large(Button::new("next", words::NEXT, only(Does::Next)), more));
    }
    if !work.lambs().is_empty() {
        let ends = only(if work.are_more_to_come() { Does::AskIfAll } else { Does::AllBorn });
        thumb = thumb.button(large(Button::new("all-born", words::ALL_BORN, ends), !more));
    }
    thumb
}

/// Returns blocks as those of one that holds them.
fn held(key: &'static str, kind: impl FnOnce(Vec<Arc<Block>>) -> Kind, inside: Blocks) -> Blocks {
    Blocks::new().add(key, kind(inside.into()))
}
