//! The birth weight: typed on large keys, noted when the keys rest, with a plain verdict.

use std::collections::BTreeMap;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::time::Duration;

use crate::signals::prelude::*;
use yeanling_core::book::{EntryId, Event, LambId};
use yeanling_core::flock::{Lamb, Line};
use yeanling_core::reckon::birth_weight;
use yeanling_core::units::{Mass, Moment, System};

use crate::farm::{Farm, use_farm};
use crate::parts::{Button, Choice, Choices, Keypad, Readout, Remark, WhyButton};
use crate::pieces::{AskPounds, Weighed, why_text};
use crate::words::common::number;
use crate::words::{animals, lambing as words, why};

/// A weight is noted when the keys have rested for so long.
const KEYS_REST: Duration = Duration::from_millis(700);

/// Digits that are asked about are old after so long (ours): the next key begins a new reading.
const OLD_AFTER: Duration = Duration::from_secs(10);

/// Digits that are still asked about when their screen is left, by lamb, with the weight that stood noted: they stand there
/// again when one comes back, unless it was weighed since.
#[derive(Clone, Copy, Debug)]
pub(crate) struct HalfTyped(StoredValue<BTreeMap<LambId, (String, Option<Mass>)>>);

impl HalfTyped {
    /// Lets the screen find them.
    pub(crate) fn provide() {
        provide_context(Self(StoredValue::new(BTreeMap::new())));
    }

    /// Says whether digits of this lamb wait for an answer.
    pub(super) fn waits(self, lamb: LambId) -> bool {
        self.0.with_value(|all| all.contains_key(&lamb))
    }

    fn take(self, lamb: LambId, noted: Option<Mass>) -> Option<String> {
        let (digits, stood) = self.0.try_update_value(|all| all.remove(&lamb)).flatten()?;
        (stood == noted).then_some(digits)
    }

    fn keep(self, lamb: LambId, digits: String, noted: Option<Mass>) {
        self.0.update_value(|all| _ = all.insert(lamb, (digits, noted)));
    }
}

/// What the digits come to.
#[derive(Clone, Copy, Debug)]
enum Typed {
    Weight(Mass),
    /// None yet, or none that may stand without a question.
    NoWeight,
}

/// The weight: typed on large keys, noted as soon as the keys rest, with a plain verdict.
#[component]
pub(super) fn BirthWeight(id: LambId, lamb: Memo<Option<Lamb>>, unanswered: RwSignal<bool>) -> impl IntoView {
    let farm = use_farm();
    let system = RwSignal::new(untrack(|| farm.system()));
    let shown = move |mass: Mass, system: System| match system {
        System::Metric => number(mass.as_kilograms(), 2),
        System::Us => number(mass.as_pounds(), 1),
    };
    let known = untrack(|| lamb.get()).and_then(|lamb| lamb.birth_weight());
    let half_typed = expect_context::<HalfTyped>();
    let noted = || known.map(|mass| shown(mass, system.get_untracked())).unwrap_or_default();
    let left = half_typed.take(id, known);
    // An old question does not stand in the way of a new reading: the next key begins it.
    let anew = RwSignal::new(left.is_some());
    let value = RwSignal::new(left.unwrap_or_else(noted));
    let read = Memo::new(move |_| Weighed::at_birth(&value.get(), system.get()));
    // What is typed waits here for the keys to rest; it outlives this screen, so that leaving early loses nothing.
    let waiting: Arc<Mutex<Option<Typed>>> = Arc::default();
    let resting = Arc::clone(&waiting);
    let changed = Arc::new(AtomicBool::new(false));
    // Whether what is noted changes by these keys, and not by another phone, another tab or an undo.
    let by_keys = Arc::new(AtomicBool::new(false));
    let (by_answer, seen_here) = (Arc::clone(&by_keys), Arc::clone(&by_keys));
    let settle = {
        let waiting = Arc::clone(&waiting);
        move || match waiting.lock().ok().and_then(|mut waiting| waiting.take()) {
            Some(Typed::Weight(mass)) => {
                by_keys.store(note_weight(farm, id, mass), Ordering::Relaxed);
                changed.store(true, Ordering::Relaxed);
            }
            // What was noted of the first digits is not left standing beside others: what stood before comes back.
            Some(Typed::NoWeight) if changed.swap(false, Ordering::Relaxed) => {
                match (known, noted_weight(farm, id)) {
                    (Some(before), Some(_)) => {
                        by_keys.store(note_weight(farm, id, before), Ordering::Relaxed);
                    }
                    (None, Some((entry, ..))) => {
                        by_keys.store(true, Ordering::Relaxed);
                        farm.tap(Event::Struck { entry });
                        // Other digits stand on the keys: to bring the first back is not offered.
                        farm.let_last_go();
                    }
                    (_, None) => {}
                }
            }
            Some(Typed::NoWeight) | None => {}
        }
    };
    on_cleanup(settle.clone());
    let typed = move || {
        if let Ok(mut waiting) = waiting.lock() {
            *waiting = Some(match Weighed::at_birth(&value.get_untracked(), system.get_untracked()) {
                Weighed::Good(mass) => Typed::Weight(mass),
                Weighed::Nothing | Weighed::Ask(..) | Weighed::Wrong(_) => Typed::NoWeight,
            });
        }
        let (settle, now) = (settle.clone(), value.get_untracked());
        // Later keys start their own wait; this one then finds other digits, or nothing waiting.
        let rested = move || {
            if value.try_get_untracked().is_none_or(|value| value == now) {
                settle();
            }
        };
        set_timeout(rested, KEYS_REST);
        let asked_about = value.get_untracked();
        let old = move || {
            if value.try_get_untracked().is_some_and(|value| value == asked_about) {
                anew.set(unanswered.get_untracked());
            }
        };
        set_timeout(old, OLD_AFTER);
    };
    let (typed_unit, typed_point) = (typed.clone(), typed.clone());
    let answer = Callback::new(move |(mass,): (Mass,)| {
        // The answer is shown in the unit it was meant in, so that it is not asked about again.
        if read.get_untracked() != Weighed::Good(mass) {
            by_answer.store(note_weight(farm, id, mass), Ordering::Relaxed);
        }
    });
    Effect::new(move |_| {
        let noted = lamb.with(|lamb| lamb.as_ref().and_then(Lamb::birth_weight));
        unanswered.set(match read.get() {
            Weighed::Wrong(_) => true,
            Weighed::Ask(typed, meant) => noted != Some(typed) && noted != Some(meant),
            Weighed::Good(_) | Weighed::Nothing => false,
        });
    });
    // What was undone does not stand on the keys as if it were noted, and a weight that was noted elsewhere settles what is
    // still asked about here.
    Effect::new(move |before: Option<Option<Mass>>| {
        let noted = lamb.with(|lamb| lamb.as_ref().and_then(Lamb::birth_weight));
        let typing = resting.lock().is_ok_and(|waiting| waiting.is_some());
        let elsewhere = !seen_here.swap(false, Ordering::Relaxed) && noted.is_some();
        let gives_way = match read.get_untracked() {
            Weighed::Good(mass) => Some(mass) != noted,
            Weighed::Ask(..) | Weighed::Wrong(_) => elsewhere,
            Weighed::Nothing => false,
        };
        if before.is_some_and(|before| before != noted) && gives_way && !typing {
            value.set(noted.map(|mass| shown(mass, system.get_untracked())).unwrap_or_default());
        }
        noted
    });
    on_cleanup(move || {
        if unanswered.get_untracked() {
            let noted = noted_weight(farm, id).map(|(_, mass, _)| mass);
            half_typed.keep(id, value.get_untracked(), noted);
        }
        unanswered.set(false);
    });
    let units = vec![Choice::new(System::Metric, "kg"), Choice::new(System::Us, "lb")];
    let says = move || {
        let noted = lamb.with(|lamb| lamb.as_ref().and_then(Lamb::birth_weight));
        match read.get() {
            Weighed::Wrong(wrong) => {
                let typed = typed_point.clone();
                let offer = move |(digits, unit): (String, System)| {
                    let (label, typed) = (words::meant(&digits, unit), typed.clone());
                    let take = move || {
                        value.set(digits.clone());
                        system.set(unit);
                        typed();
                    };
                    view! { <Button label=label on_press=take /> }.into_any()
                };
                let meant = value.with(|value| meant(value, system.get()));
                view! {
                    <p class="field-error" role="alert">{wrong}</p>
                    {meant.into_iter().map(offer).collect_view()}
                }
                .into_any()
            }
            Weighed::Ask(typed, _) if noted == Some(typed) => verdict(farm, id, typed).into_any(),
            Weighed::Ask(typed, meant) if noted != Some(meant) => {
                view! { <AskPounds typed=typed meant=meant on_answer=answer /> }.into_any()
            }
            Weighed::Ask(_, meant) => verdict(farm, id, meant).into_any(),
            Weighed::Good(mass) => verdict(farm, id, mass).into_any(),
            Weighed::Nothing => ().into_any(),
        }
    };
    let readout = Signal::derive(move || {
        let typed = value.get();
        if typed.is_empty() { "–".to_owned() } else { typed }
    });
    view! {
        <Keypad value=value point='.' anew=anew on_change=move |_: String| typed()>
            <Readout label=words::WEIGHT value=readout />
            <Choices
                label=words::UNITS
                options=units
                chosen=Signal::derive(move || Some(system.get()))
                on_choose=move |unit| {
                    system.set(unit);
                    typed_unit();
                }
                snug=true
            />
            {says}
        </Keypad>
    }
}

/// Returns what can have been meant by digits that are too much for a lamb: a point is missing ("4.2" for "42"), or
/// they are pounds ("16").
fn meant(digits: &str, system: System) -> Vec<(String, System)> {
    let is_good =
        |(digits, unit): &(String, System)| matches!(Weighed::at_birth(digits, *unit), Weighed::Good(_));
    let places = (1..digits.len()).filter(|_| digits.bytes().all(|digit| digit.is_ascii_digit()));
    let point =
        places.map(|place| (format!("{}.{}", &digits[..place], &digits[place..]), system)).find(is_good);
    let pounds = Some((digits.to_owned(), System::Us)).filter(|_| system == System::Metric).filter(is_good);
    pounds.into_iter().chain(point).collect()
}

/// The birth weight that stands noted: by which entry, how much, and when.
fn noted_weight(farm: Farm, id: LambId) -> Option<(EntryId, Mass, Moment)> {
    farm.peek(|ground| {
        let lamb = ground.flock.lamb(id)?;
        let first = lamb.birth_weight().and(lamb.weights.first())?;
        let is_it = |line: &&Line| {
            !line.struck
                && line.at == first.at
                && matches!(line.event, Event::Weighed { lamb, .. } if lamb == id)
        };
        ground.flock.lines.iter().find(is_it).map(|line| (line.entry, first.mass, line.at))
    })
}

/// Notes a birth weight, or corrects the one that was noted, and says whether that changed anything.
fn note_weight(farm: Farm, id: LambId, mass: Mass) -> bool {
    let weighed = Event::Weighed { lamb: id, mass };
    let event = match noted_weight(farm, id) {
        Some((_, noted, _)) if noted == mass => return false,
        Some((entry, _, at)) => Event::Amended { entry, event: Box::new(weighed), at },
        None => weighed,
    };
    farm.tap(event).is_some()
}

/// A plain verdict on the weight, which can be asked why.
fn verdict(farm: Farm, id: LambId, mass: Mass) -> impl IntoView {
    let size = farm.peek(|ground| ground.flock.litter_of(id).map_or(1, |litter| litter.lambs.len()));
    let band = birth_weight::band(mass, u8::try_from(size).unwrap_or(u8::MAX)).ok();
    band.map(|band| {
        let text = words::verdict(why::verdict(band.verdict), &animals::litter(size));
        view! {
            <Remark text=text>
                <WhyButton why=why_text(why::birth_weight(&band, untrack(|| farm.system()))) />
            </Remark>
        }
    })
}
