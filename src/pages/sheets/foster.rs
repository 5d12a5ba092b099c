//! The sheets on which a lamb finds another ewe: the ewe that rears it, or the lamb that she takes on.

use std::cmp::Reverse;

use yeanling_core::book::{Animal, Event, EweId, LambId, Life};
use yeanling_core::flock::{Ewe, Flock, Lamb};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::BeforeMilk;
use yeanling_words::{animals, lamb as of_lamb, life as words};

use super::ewe_picker::{self, Picker, Then, has_aborted};
use super::parts::whose;
use crate::block::{Choice, Choices};
use crate::draft::Fields;
use crate::milk::{before, comes_first};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button};

/// A lamb this old is hardly taken on any more (ours).
const YOUNG: TimeDelta = TimeDelta::days(14);
/// So many lambs are offered at most.
const MOST_YOUNG: usize = 20;

/// Returns the sheet on which the ewe is picked that rears a lamb from now on.
pub(super) fn foster(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let without = view.flock.lamb(lamb).and_then(|lamb| view.flock.rearer(lamb));
    let born = view.flock.lamb(lamb).map(|lamb| lamb.born);
    let picker = Picker { lambed_first: true, without, rears: true, born, ..Picker::default() };
    let rears = Then::Rears(lamb);
    let ewes = ewe_picker::blocks(view, fields, picker, |picked| rears.picked(picked));
    let aborted = aborted(view);
    let left_out = if aborted.is_empty() {
        Blocks::new()
    } else {
        Blocks::new().caution([words::aborted_left_out(&aborted)])
    };
    let first = view.flock.lamb(lamb).and_then(|lamb| not_fit(view, lamb));
    let held = first.map(|first| of_lamb::first(first, view.system()));
    let held = held.map(|lines| Blocks::new().caution(lines)).unwrap_or_default();
    SheetPage::new(words::FOSTER_ASK, held.text(words::FOSTER_SUB).then(left_out).then(ewes))
        .whose(whose(view, Animal::Lamb(lamb)))
}

/// Returns the living ewes that aborted this season, by name.
fn aborted(view: &View) -> Vec<String> {
    let ewes = view.flock.ewes.values().filter(|ewe| ewe.lives() && ewe.aborted(view.now).is_some());
    ewes.map(animals::ewe).collect()
}

/// Returns the sheet on which the lamb is picked that a ewe takes on: those on the bottle or without a ewe first, then those
/// of the largest litters.
pub(super) fn take_on(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    if has_aborted(view, ewe) {
        let never = Blocks::new().caution([words::SHE_ABORTED]);
        return SheetPage::new(words::TAKE_ON_ASK, never).whose(whose(view, Animal::Ewe(ewe)));
    }
    let (lambs, of_aborted): (Vec<&Lamb>, Vec<&Lamb>) =
        young_lambs(view, ewe).into_iter().partition(|lamb| !is_of_aborted(view, lamb));
    let more = lambs.len().saturating_sub(MOST_YOUNG);
    let lead = if lambs.is_empty() { words::NO_YOUNG_LAMBS } else { words::FOSTER_SUB };
    let options = lambs.into_iter().take(MOST_YOUNG).map(|lamb| choice(view, ewe, lamb)).collect();
    let choices = Choices::new(words::TAKE_ON_ASK, options, None).stacked();
    let asked = fields.typed(ASKED).and_then(|asked| {
        let lamb = view.flock.lambs.values().find(|lamb| lamb.id.to_string() == asked)?;
        Some(once_more(ewe, lamb, not_fit(view, lamb)?, view))
    });
    let blocks = asked.unwrap_or_default().text(lead).choices("young-lambs", choices);
    let blocks = if more > 0 { blocks.small(words::more_young(more)) } else { blocks };
    let names: Vec<String> = of_aborted.into_iter().map(|lamb| animals::lamb(view.flock, lamb)).collect();
    let blocks = if names.is_empty() { blocks } else { blocks.caution([words::lambs_left_out(&names)]) };
    SheetPage::new(words::TAKE_ON_ASK, blocks).whose(whose(view, Animal::Ewe(ewe)))
}

/// Says whether the dam of a lamb, or the ewe that rears it, aborted this season.
fn is_of_aborted(view: &View, lamb: &Lamb) -> bool {
    lamb.dam.into_iter().chain(view.flock.rearer(lamb)).any(|ewe| has_aborted(view, ewe))
}

/// The living lambs that are young enough to be taken on by a ewe that does not rear them.
fn young_lambs<'a>(view: &View<'a>, ewe: EweId) -> Vec<&'a Lamb> {
    let (flock, now) = (view.flock, view.now);
    let young = |lamb: &&Lamb| lamb.lives() && lamb.age(now) < YOUNG && flock.rearer(lamb) != Some(ewe);
    let mut lambs: Vec<&Lamb> = flock.lambs.values().filter(young).collect();
    lambs.sort_small_by_key(|lamb| {
        (
            not_fit(view, lamb).is_some(),
            !lamb.on_bottle(),
            !is_alone(flock, lamb),
            Reverse(litter(flock, lamb)),
            Reverse(lamb.born),
            lamb.id,
        )
    });
    lambs
}

/// Which lamb in danger or on hold was picked, and is asked about once.
const ASKED: &str = "take-on-asked";

/// What comes before milk for a lamb that is in danger or on hold: it goes to another ewe only once that was read.
fn not_fit(view: &View, lamb: &Lamb) -> Option<BeforeMilk> {
    before(view, lamb)
        .filter(|first| matches!(first, BeforeMilk::Hold(_) | BeforeMilk::Ill | BeforeMilk::Vet))
}

/// Asks once whether a lamb is given to her that is in danger or on hold.
fn once_more(dam: EweId, lamb: &Lamb, first: BeforeMilk, view: &View) -> Blocks {
    let fostered = Action::Answer(vec![Event::Life(Life::Fostered { lamb: lamb.id, dam })]);
    Blocks::new()
        .lead(animals::lamb(view.flock, lamb))
        .caution(of_lamb::first(first, view.system()))
        .button(comes_first(lamb.id, first).filled())
        .button(Button::new("take-on-all-the-same", words::TAKE_ON_ALL_THE_SAME, fostered))
}

fn choice(view: &View, dam: EweId, lamb: &Lamb) -> Choice {
    let flock = view.flock;
    let bottle = lamb.on_bottle().then_some(words::ON_BOTTLE);
    let alone = (bottle.is_none() && is_alone(flock, lamb)).then_some(words::ALONE);
    let size = animals::litter(litter(flock, lamb));
    let first = not_fit(view, lamb);
    let why = first.map(|first| of_lamb::before_milk(first, view.system()).replace('*', ""));
    let note = why.as_deref().into_iter().chain(bottle).chain(alone).chain([size.as_str()]);
    let note = note.collect::<Vec<_>>().join(" · ");
    let fostered = Event::Life(Life::Fostered { lamb: lamb.id, dam });
    let does = match first {
        Some(_) => Action::Type(ASKED.into(), lamb.id.to_string()),
        None => Action::Answer(vec![fostered]),
    };
    Choice::new(animals::lamb(flock, lamb), does).note(note)
}

/// How many lambs were born with it, itself too.
fn litter(flock: &Flock, lamb: &Lamb) -> usize {
    flock.litter_of(lamb.id).map_or(1, |litter| litter.lambs.len())
}

/// Whether no ewe that lives rears it.
pub(crate) fn is_alone(flock: &Flock, lamb: &Lamb) -> bool {
    let dam = flock.rearer(lamb).and_then(|dam| flock.ewe(dam));
    lamb.turned_away() || !dam.is_some_and(Ewe::lives)
}
