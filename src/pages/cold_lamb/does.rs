//! Where the answers go: into the book for a lamb with a record, else onto this phone.

use std::time::Duration;

use yeanling_core::book::{Event, GlucoseBy, LambId};
use yeanling_core::flock::{Reading, VetCall};
use yeanling_core::units::System;
use yeanling_words::rejections;

use super::answer::{WEIGHT, typed_weight};
use super::ask::{DEGREES, SCALE, SCALES, reading, scale};
use super::case::{Able, Age, Case};
use super::{AGAIN, UNSURE, kept};
use crate::draft::Draft;
use crate::view::View;
use crate::weight::unit_key;
use crate::{Action, Effect, Request, Screen};

/// The keys rest so long before a whole reading is taken (ours): as long as a hand takes to put a digit right, and longer
/// than it takes to press the button.
const KEYS_REST: Duration = Duration::from_millis(1500);

/// What only this screen does. For a lamb with a record, most answers are plain facts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Does {
    /// Takes what was typed as a reading on this scale, or says why not.
    Read(System),
    /// The keys have rested on a reading of so many tenths on this scale.
    Rested(System, i32),
    /// Its age, of one without a record.
    Age(Age),
    /// Whether it holds its head up and swallows, of one without a record; or that nobody is sure.
    Able(Able),
    /// Its warming began.
    Warmed,
    /// It was given glucose.
    Glucose(GlucoseBy),
    /// The vet was called.
    VetCalled,
    /// Forgets everything that was answered without a record.
    StartOver,
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, screen: Screen, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Screen::ColdLamb(lamb) = screen else { return Vec::new() };
    let now = view.now;
    match does {
        Does::Read(system) => read(system, lamb, view, draft),
        Does::Rested(system, tenths) => {
            let stands = scale(view, &draft.fields) == system && whole(view, draft) == Some((system, tenths));
            if stands && draft.sheets.is_empty() { read(system, lamb, view, draft) } else { Vec::new() }
        }
        Does::Age(age) => change(view, |case| case.age = age),
        Does::Able(able) => match lamb {
            Some(lamb) => {
                let last = view.flock.lamb(lamb).and_then(|lamb| lamb.temperatures.last());
                if let Some(last) = last {
                    draft.fields.set(UNSURE, last.at.to_string());
                }
                Vec::new()
            }
            None => change(view, |case| case.able = able),
        },
        Does::Warmed => change(view, |case| case.warmed = Some(now)),
        Does::Glucose(by) => change(view, |case| case.glucose = Some((now, by))),
        Does::VetCalled => change(view, |case| case.vet = Some(VetCall { at: now, said: None })),
        Does::StartOver => {
            [WEIGHT, DEGREES, AGAIN].into_iter().for_each(|key| draft.fields.forget(key));
            change(view, |case| *case = Case::default())
        }
    }
}

/// Changes what is kept on this phone.
fn change(view: &View, change: impl FnOnce(&mut Case)) -> Vec<Effect> {
    let mut case = kept::read(&view.phone.cold_lamb);
    change(&mut case);
    vec![Effect::Phone(Request::KeepColdLamb(kept::write(&case)))]
}

fn read(system: System, lamb: Option<LambId>, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if let Some(place) = SCALES.iter().position(|one| *one == system) {
        draft.fields.choose(SCALE, place);
    }
    let temperature = match reading(&draft.fields.text(DEGREES, ""), system) {
        Ok(temperature) => temperature,
        Err(wrong) => return draft.say_wrong(DEGREES, wrong.text),
    };
    let effects = match lamb {
        Some(lamb) => {
            let read = vec![view.noting(Event::TemperatureTaken { lamb, temperature })];
            if let Err(rejection) = view.validate(&read) {
                return draft.say_wrong(DEGREES, rejections::rejection(&rejection, view.now, view.system()));
            }
            draft.note(view, read)
        }
        None => change(view, |case| kept::take(case, Reading { at: view.now, temperature })),
    };
    [DEGREES, AGAIN].into_iter().for_each(|key| draft.fields.forget(key));
    effects
}

/// Returns a reading that is typed to its end: one with a tenth that a lamb can have, as thermometers show it. Of one without
/// nobody knows whether a digit is still to come.
fn whole(view: &View, draft: &Draft) -> Option<(System, i32)> {
    let (typed, system) = (draft.fields.text(DEGREES, ""), scale(view, &draft.fields));
    let (degrees, tenth) = typed.split_once('.').filter(|(_, tenth)| tenth.len() == 1)?;
    reading(&typed, system).ok()?;
    format!("{degrees}{tenth}").parse().ok().map(|tenths| (system, tenths))
}

/// Something was typed or chosen: another scale is no mistake yet, a reading is taken once the keys rest on all of it, and a
/// weight is kept as it is typed.
pub(crate) fn typed(key: &str, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if key == SCALE {
        draft.fields.right(DEGREES);
    }
    if key == DEGREES
        && let Some((system, tenths)) = whole(view, draft)
    {
        let rested = Action::Does(crate::Does::ColdLamb(Does::Rested(system, tenths)));
        return vec![Effect::After(KEYS_REST, rested)];
    }
    if key != WEIGHT && key != unit_key(WEIGHT) {
        return Vec::new();
    }
    match typed_weight(view, &draft.fields) {
        None => Vec::new(),
        Some(Ok(weight)) => {
            draft.fields.right(WEIGHT);
            change(view, |case| case.weight = weight)
        }
        Some(Err(wrong)) => {
            draft.fields.wrong(WEIGHT, wrong);
            change(view, |case| case.weight = None)
        }
    }
}
