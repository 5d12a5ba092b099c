//! What a press on a lambing does that is no plain fact: a birth, which lamb is chosen, the end, and what the keys come to.

use yeanling_core::book::{Care, Event, LambId, Sex};
use yeanling_core::units::{Mass, System, TimeDelta};

use super::{CHOSEN, FOUND, HELD, Work, found, in_hand, labor, only, weight};
use crate::draft::Draft;
use crate::sheets::ewe_picker;
use crate::view::View;
use crate::{Action, Effect, Screen, Sheet};

/// What only a lambing does.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// Whoever lambs on this screen was picked.
    Lambs(Screen),
    /// A lamb is born: its sex, if seen, and whether it lives.
    Born(Option<Sex>, bool),
    /// A lamb of the litter is chosen, or the one that comes next.
    Choose(Option<LambId>),
    /// The next lamb is wanted, unless a weight is still asked about.
    Next,
    /// Asks whether all are born where the scan saw more, unless a weight is still asked about.
    AskIfAll,
    /// All are born, unless a weight is still asked about.
    AllBorn,
    /// All are born, whatever the scan saw.
    End,
    /// One is still to come.
    OneMore,
    /// The keys have rested on these digits.
    Rested(LambId, String),
    /// These digits have stood there for long.
    Old(LambId, String),
    /// These digits were meant, in this unit.
    Meant(LambId, String, System),
    /// This is its weight, meant in this unit.
    Weighs(LambId, Mass, System),
}

/// Says whether a lambing is drawn here.
const fn is_lambing(screen: Screen) -> bool {
    matches!(screen, Screen::LambingEwe(_) | Screen::LambingUnknown | Screen::LambingLamb(_))
}

/// Does what only a lambing knows.
pub(crate) fn does(does: &Does, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let work = Work::of(view, &draft.fields, screen);
    match does {
        Does::Lambs(screen) => vec![Effect::Go(*screen)],
        Does::Born(sex, alive) => born(work, screen, draft, (*sex, *alive)),
        Does::Choose(lamb) => choose(work, draft, *lamb),
        Does::Next => {
            if is_free(work, draft) {
                choose(work, draft, None)
            } else {
                Vec::new()
            }
        }
        Does::AskIfAll => {
            if let Some(first) = work.lambs().first().filter(|_| is_free(work, draft)) {
                draft.ask(Sheet::IsThatAll(*first));
            }
            Vec::new()
        }
        Does::AllBorn => {
            let Some(first) = work.lambs().first().filter(|_| is_free(work, draft)) else {
                return Vec::new();
            };
            let end = vec![view.noting(Event::AllBorn { lamb: *first })];
            leads_to_watch(draft.note(view, end))
        }
        Does::End => {
            let Some(first) = work.lambs().first() else { return Vec::new() };
            let end = vec![view.noting(Event::AllBorn { lamb: *first })];
            leads_to_watch(draft.answer(view, end))
        }
        Does::OneMore => {
            draft.close();
            choose(work, draft, None)
        }
        Does::Rested(lamb, digits) => {
            let stands = work.chosen == Some(*lamb) && weight::stands(&draft.fields, digits);
            if stands { weight::settle(view, draft, *lamb) } else { Vec::new() }
        }
        Does::Old(lamb, digits) => {
            let chosen = work.chosen.filter(|chosen| chosen == lamb).and_then(|id| view.flock.lamb(id));
            if let Some(lamb) = chosen.filter(|_| weight::stands(&draft.fields, digits)) {
                weight::grow_old(view, draft, lamb);
            }
            Vec::new()
        }
        Does::Meant(lamb, digits, unit) => weight::meant(view, draft, *lamb, digits, *unit),
        Does::Weighs(lamb, mass, unit) => weight::answer(view, draft, *lamb, *mass, *unit),
    }
}

fn leads_to_watch(mut noted: Vec<Effect>) -> Vec<Effect> {
    if !noted.is_empty() {
        noted.push(Effect::Go(Screen::Watch));
    }
    noted
}

/// Says whether no weight is asked about; one that is holds the next lamb back, and the end.
fn is_free(work: Work, draft: &mut Draft) -> bool {
    let chosen = work.chosen.and_then(|id| work.view.flock.lamb(id));
    let asked = chosen.is_some_and(|lamb| weight::is_asked_about(work.view, &draft.fields, lamb));
    draft.fields.forget(HELD);
    if asked {
        draft.fields.choose(HELD, 1);
    }
    !asked
}

fn choose(work: Work, draft: &mut Draft, lamb: Option<LambId>) -> Vec<Effect> {
    if lamb == work.chosen {
        return Vec::new();
    }
    let effects = put_down(work.view, draft);
    match lamb {
        Some(lamb) => draft.fields.set(CHOSEN, lamb.to_string()),
        None => labor::look(work.view, draft, work.dam),
    }
    effects
}

/// Whoever was in hand no longer is: what was typed for it is noted, or waits for an answer.
fn put_down(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let effects = in_hand(&draft.fields).map(|lamb| weight::put_down(view, draft, lamb)).unwrap_or_default();
    [CHOSEN, HELD, FOUND].into_iter().for_each(|key| draft.fields.forget(key));
    effects
}

fn born(work: Work, screen: Screen, draft: &mut Draft, (sex, alive): (Option<Sex>, bool)) -> Vec<Effect> {
    let (view, found) = (work.view, found(&draft.fields));
    let beside = work.lambs().first().copied();
    let event = Event::LambBorn { dam: work.dam, beside, sex, alive };
    let at = found.map_or(view.now, |found| view.now - TimeDelta::hours(found.hours()));
    let born = view.noting_at(event, at);
    let lamb = born.id.as_lamb();
    let was_found = found.map(|_| view.noting(Event::Care(Care::FoundBorn { lamb })));
    let mut effects = draft.note(view, std::iter::once(born).chain(was_found).collect());
    if effects.is_empty() {
        return effects;
    }
    if work.litter.is_none() && !matches!(screen, Screen::LambingEwe(_)) {
        // Nobody's litter has the address of its first lamb.
        let there = Screen::LambingLamb(lamb);
        let then = match draft.fields.chosen(FOUND).filter(|_| found.is_some()) {
            Some(place) => Action::Choose(FOUND.into(), place),
            None => only(Does::Choose(Some(lamb))),
        };
        effects.push(Effect::There(there, then));
        effects.push(Effect::Replace(there));
    } else if found.is_none() {
        effects.extend(put_down(view, draft));
        draft.fields.set(CHOSEN, lamb.to_string());
    }
    effects
}

/// A screen is come to, whichever it is: digits that an end of the app left are noted.
pub(crate) fn enter(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if is_lambing(screen) {
        let dam = Work::of(view, &draft.fields, screen).dam;
        labor::look(view, draft, dam);
    }
    weight::settle_left(view, draft)
}

/// Something is pressed on a screen.
pub(crate) fn pressed(screen: Screen, view: &View, draft: &mut Draft) {
    if let Some(dam) =
        Some(screen).filter(|one| is_lambing(*one)).and_then(|one| Work::of(view, &draft.fields, one).dam)
    {
        labor::pressed(view, draft, dam);
    }
}

/// The screen is left. Who opens a lambing again has come for the next lamb: on the keys of one that was born before, its
/// sex and weight would be noted of the wrong lamb.
pub(crate) fn leave(screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if screen == Screen::Lambing {
        draft.fields.forget(ewe_picker::FIND_ON_PAGE);
    }
    if !is_lambing(screen) {
        return Vec::new();
    }
    put_down(view, draft)
}

/// Something was typed or chosen.
pub(crate) fn typed(key: &str, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let chosen = Work::of(view, &draft.fields, screen).chosen.filter(|_| is_lambing(screen));
    match chosen.and_then(|id| view.flock.lamb(id)) {
        Some(lamb) => weight::typed(key, view, draft, lamb),
        None => Vec::new(),
    }
}
