//! The birth weight: typed on large keys, noted when the keys rest, with a plain verdict.
//!
//! The digits stay as they were typed as long as what is noted is what they made it. What an undo, another phone or another
//! tab changed takes their place.
//!
//! A weight is noted when the keys have rested 0.7 s, or when the screen is left: not once for each digit. If the
//! digits that follow make no weight, what was noted of the first is taken back.

use std::time::Duration;

use yeanling_core::book::{EntryId, Event, LambId};
use yeanling_core::flock::{Lamb, Line};
use yeanling_core::units::{Mass, Moment, System};
use yeanling_words::{calculators, lambing as words};

use super::{Does, only};
use crate::birth_weight;
use crate::draft::{Draft, Fields};
use crate::on_keys::{OnKeys, What, keyed};
use crate::page::{Blocks, why};
use crate::phone::HalfTyped;
use crate::view::View;
use crate::weight::{Weighed, pounds_or_not, pounds_question, unit, unit_key, unit_place, units};
use crate::{Button, Effect, Reason, Request, Text};

/// What is typed.
const DIGITS: &str = "lambing-weight";
/// Whether that waits for the keys to rest.
const WAITS: &str = "lambing-weight-waits";
/// Whether it is asked about for so long that the next key begins anew.
const OLD: &str = "lambing-weight-old";
/// What stood noted before it was typed.
const BEFORE: &str = "lambing-weight-before";
/// What it made stand noted.
const MADE: &str = "lambing-weight-made";

/// A weight is noted when the keys have rested for so long.
const KEYS_REST: Duration = Duration::from_millis(700);

/// Digits that are asked about are old after so long (ours): the next key begins a new reading.
const OLD_AFTER: Duration = Duration::from_secs(10);

/// What stands on the keys of a lamb.
#[derive(Clone, Debug)]
struct Keys {
    digits: String,
    unit: System,
    read: Weighed,
    /// What stands noted.
    noted: Option<Mass>,
    /// An old question does not stand in the way of a new reading: the next key begins it.
    anew: bool,
}

impl Keys {
    fn of(view: &View, fields: &Fields, lamb: &Lamb) -> Self {
        let noted = lamb.birth_weight();
        let unit = unit(fields, DIGITS, view.system());
        if let Some(digits) = fields.typed(DIGITS)
            && stays(fields, &Weighed::at_birth(digits, unit), noted)
        {
            let anew = fields.chosen(OLD).is_some();
            return Self {
                digits: digits.to_owned(),
                unit,
                read: Weighed::at_birth(digits, unit),
                noted,
                anew,
            };
        }
        if let Some(HalfTyped { digits, unit, .. }) = half_typed(view, lamb) {
            let read = Weighed::at_birth(digits, *unit);
            return Self { digits: digits.clone(), unit: *unit, read, noted, anew: true };
        }
        let digits = noted.map(|noted| keyed(noted, unit)).unwrap_or_default();
        Self { digits, unit, read: noted.map_or(Weighed::Nothing, Weighed::Good), noted, anew: false }
    }

    /// Says whether it is still asked about.
    fn are_asked_about(&self) -> bool {
        match &self.read {
            Weighed::Wrong(_) => true,
            Weighed::Ask(typed, meant) => self.noted != Some(*typed) && self.noted != Some(*meant),
            Weighed::Good(_) | Weighed::Nothing => false,
        }
    }
}

/// Says whether digits stay: they do while what is noted is what they made it, and while they wait. What was undone does not
/// stand on the keys as if it were noted, and a weight that was noted elsewhere settles what is still asked about here.
fn stays(fields: &Fields, read: &Weighed, noted: Option<Mass>) -> bool {
    let by_keys = fields.chosen(WAITS).is_some() || kept(fields, MADE) == noted;
    by_keys
        || match read {
            Weighed::Good(mass) => noted == Some(*mass),
            Weighed::Ask(..) | Weighed::Wrong(_) | Weighed::Nothing => noted.is_none(),
        }
}

fn kept(fields: &Fields, key: &str) -> Option<Mass> {
    fields.typed(key).and_then(|kilograms| kilograms.parse().ok()).map(Mass::from_kilograms)
}

fn keep(fields: &mut Fields, key: &'static str, mass: Option<Mass>) {
    fields.set(key, mass.map(|mass| mass.as_kilograms().to_string()).unwrap_or_default());
}

/// Digits that were still asked about when this lamb was left, unless it was weighed since.
fn half_typed<'a>(view: &'a View, lamb: &Lamb) -> Option<&'a HalfTyped> {
    view.phone.half_typed.get(&lamb.id).filter(|left| left.noted == lamb.birth_weight())
}

/// Says whether digits of this lamb wait for an answer.
pub(super) fn wait(view: &View, lamb: LambId) -> bool {
    view.flock.lamb(lamb).is_some_and(|lamb| half_typed(view, lamb).is_some())
}

/// Says whether its weight is typed and not noted, since it is still asked about.
pub(super) fn is_asked_about(view: &View, fields: &Fields, lamb: &Lamb) -> bool {
    Keys::of(view, fields, lamb).are_asked_about()
}

/// Says whether just these digits were typed.
pub(super) fn stands(fields: &Fields, digits: &str) -> bool {
    fields.typed(DIGITS) == Some(digits)
}

/// The keys, and what they come to.
pub(super) fn blocks(view: &View, fields: &Fields, lamb: &Lamb) -> Blocks {
    let keys = Keys::of(view, fields, lamb);
    let units = crate::block::Choices { chosen: unit_place(keys.unit), ..units(fields, DIGITS, keys.unit) };
    let (says, asks) = (comes_to(view, lamb, &keys), asks(&keys));
    let Keys { digits: value, unit: system, anew, .. } = keys;
    let on_keys =
        OnKeys { what: What::Weight, types: DIGITS.into(), label: words::WEIGHT, value, system, anew };
    on_keys.pad(Some((unit_key(DIGITS), units)), Some(says), asks)
}

/// The verdict, once it is a weight; until then what can have been meant, as buttons.
fn comes_to(view: &View, lamb: &Lamb, keys: &Keys) -> Blocks {
    let id = lamb.id;
    match &keys.read {
        Weighed::Ask(typed, meant) if keys.are_asked_about() => {
            let answers = pounds_or_not(*typed, *meant, |mass| {
                let unit = if mass == *meant { System::Us } else { System::Metric };
                only(Does::Weighs(id, mass, unit))
            });
            Blocks::new().buttons(2, answers)
        }
        Weighed::Ask(_, meant) if keys.noted == Some(*meant) => verdict(view, lamb, *meant),
        Weighed::Ask(mass, _) | Weighed::Good(mass) => verdict(view, lamb, *mass),
        Weighed::Wrong(_) => {
            let offers = meant_by(&keys.digits, keys.unit).into_iter().enumerate();
            let offer = |(place, (digits, unit)): (usize, (String, System))| {
                let label = words::meant(&digits, unit);
                Button::new(format!("meant-{place}"), label, only(Does::Meant(id, digits, unit)))
            };
            let offers: Vec<Button> = offers.map(offer).collect();
            if offers.is_empty() { Blocks::new() } else { Blocks::new().buttons(2, offers) }
        }
        Weighed::Nothing => Blocks::new(),
    }
}

/// What is wrong with it, or asked about it, in words.
fn asks(keys: &Keys) -> Blocks {
    match &keys.read {
        Weighed::Wrong(wrong) => Blocks::new().wrong(Text::typed(wrong)),
        Weighed::Ask(typed, meant) if keys.are_asked_about() => pounds_question(*typed, *meant),
        Weighed::Ask(..) | Weighed::Good(_) | Weighed::Nothing => Blocks::new(),
    }
}

/// A plain verdict on the weight, which can be asked why.
fn verdict(view: &View, lamb: &Lamb, mass: Mass) -> Blocks {
    let Some((text, band)) = birth_weight::verdict(view, lamb, mass) else { return Blocks::new() };
    Blocks::new().remark(text, [why(calculators::BIRTH_WEIGHT, Reason::BirthBand(Box::new(band)))])
}

/// Returns what can have been meant by digits that are too much for a lamb: a point is missing ("4.2" for "42"), they are
/// pounds ("16"), or pounds and ounces ("8 lb 4" for "84").
fn meant_by(digits: &str, system: System) -> Vec<(String, System)> {
    let is_good =
        |(digits, unit): &(String, System)| matches!(Weighed::at_birth(digits, *unit), Weighed::Good(_));
    let point = places_of(digits).map(|(whole, rest)| (format!("{whole}.{rest}"), system)).find(is_good);
    let ounces = places_of(digits).map(|(pounds, ounces)| (format!("{pounds} lb {ounces}"), System::Us));
    let ounces = ounces.filter(|_| system == System::Us).find(is_good);
    let pounds = Some((digits.to_owned(), System::Us)).filter(|_| system == System::Metric).filter(is_good);
    pounds.into_iter().chain(point).chain(ounces).collect()
}

/// Returns digits in two at each of their places; nothing of what is not digits alone.
fn places_of(digits: &str) -> impl Iterator<Item = (&str, &str)> {
    let alone = digits.bytes().all(|digit| digit.is_ascii_digit());
    (1..digits.len()).filter(move |_| alone).map(|place| digits.split_at(place))
}

/// Something was typed, or its unit chosen. Later keys start their own wait; this one then finds other digits, or nothing
/// waiting.
pub(super) fn typed(key: &str, view: &View, draft: &mut Draft, lamb: &Lamb) -> Vec<Effect> {
    let (fields, noted, is_unit) = (&mut draft.fields, lamb.birth_weight(), key == unit_key(DIGITS));
    if key != DIGITS && !is_unit {
        return Vec::new();
    }
    let left = half_typed(view, lamb);
    if is_unit {
        let stood =
            fields.typed(DIGITS).is_some() && (fields.chosen(WAITS).is_some() || kept(fields, MADE) == noted);
        match (stood, left) {
            (true, _) => {}
            (false, Some(left)) => fields.set(DIGITS, left.digits.clone()),
            // What is noted stands there: it is told in the other unit.
            (false, None) => {
                [DIGITS, BEFORE, MADE].into_iter().for_each(|key| fields.forget(key));
                return Vec::new();
            }
        }
    } else if let Some(left) = left.filter(|_| fields.chosen(&unit_key(DIGITS)).is_none()) {
        choose_unit(fields, left.unit);
    }
    let digits = fields.text(DIGITS, "");
    if fields.typed(BEFORE).is_none() || (fields.chosen(WAITS).is_none() && kept(fields, MADE) != noted) {
        keep(fields, BEFORE, noted);
        keep(fields, MADE, noted);
    }
    fields.forget(OLD);
    fields.choose(WAITS, 1);
    let unit = unit(fields, DIGITS, view.system());
    // Kept as typed: a page that is closed before the keys rest loses nothing.
    let left = HalfTyped { digits: digits.clone(), unit, noted, at: view.now };
    vec![
        Effect::Phone(Request::KeepDigits(lamb.id, Some(left))),
        Effect::After(KEYS_REST, only(Does::Rested(lamb.id, digits.clone()))),
        Effect::After(OLD_AFTER, only(Does::Old(lamb.id, digits))),
    ]
}

/// Notes the digits that were left before their keys had rested, as of when they were typed; those that are still asked about
/// stay.
pub(super) fn settle_left(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let mut effects = Vec::new();
    for (id, left) in &view.phone.half_typed {
        let stands = view.flock.lamb(*id).is_some_and(|lamb| left.noted == lamb.birth_weight());
        let Weighed::Good(mass) = Weighed::at_birth(&left.digits, left.unit) else { continue };
        if stands && left.noted != Some(mass) {
            let event = weighed(view, *id, mass);
            effects.extend(draft.note(view, vec![view.noting_at(event, left.at)]));
        }
        effects.push(Effect::Phone(Request::KeepDigits(*id, None)));
    }
    effects
}

fn choose_unit(fields: &mut Fields, unit: System) {
    if let Some(place) = unit_place(unit) {
        fields.choose(unit_key(DIGITS), place);
    }
}

/// One tap puts in what was meant.
pub(super) fn meant(view: &View, draft: &mut Draft, id: LambId, digits: &str, unit: System) -> Vec<Effect> {
    let Some(lamb) = view.flock.lamb(id) else { return Vec::new() };
    draft.fields.set(DIGITS, digits);
    choose_unit(&mut draft.fields, unit);
    typed(DIGITS, view, draft, lamb)
}

/// The question is answered: what is noted stands there, in the unit it was meant in.
pub(super) fn answer(view: &View, draft: &mut Draft, id: LambId, mass: Mass, unit: System) -> Vec<Effect> {
    draft.fields.forget(WAITS);
    let mut effects = note_weight(view, draft, id, mass);
    if draft.refused.is_none() {
        clear(&mut draft.fields);
        choose_unit(&mut draft.fields, unit);
        effects.push(Effect::Phone(Request::KeepDigits(id, None)));
    }
    effects
}

fn clear(fields: &mut Fields) {
    [DIGITS, WAITS, OLD, BEFORE, MADE].into_iter().for_each(|key| fields.forget(key));
    fields.forget(&unit_key(DIGITS));
}

/// Digits that are still asked about are old now.
pub(super) fn grow_old(view: &View, draft: &mut Draft, lamb: &Lamb) {
    if is_asked_about(view, &draft.fields, lamb) {
        draft.fields.choose(OLD, 1);
    }
}

/// The keys rest: notes what they come to, if anything waits for it.
pub(super) fn settle(view: &View, draft: &mut Draft, id: LambId) -> Vec<Effect> {
    if draft.fields.chosen(WAITS).is_none() {
        return Vec::new();
    }
    draft.fields.forget(WAITS);
    let unit = unit(&draft.fields, DIGITS, view.system());
    let digits = draft.fields.text(DIGITS, "");
    let mut effects = match Weighed::at_birth(&digits, unit) {
        Weighed::Good(mass) => {
            let mut effects = note_weight(view, draft, id, mass);
            effects.push(Effect::Phone(Request::KeepDigits(id, None)));
            return effects;
        }
        Weighed::Nothing => vec![Effect::Phone(Request::KeepDigits(id, None))],
        Weighed::Ask(..) | Weighed::Wrong(_) => {
            let left = HalfTyped { digits, unit, noted: kept(&draft.fields, BEFORE), at: view.now };
            vec![Effect::Phone(Request::KeepDigits(id, Some(left)))]
        }
    };
    effects.extend(take_back(view, draft, id));
    effects
}

/// Takes back what was noted of the first digits of a number that is none.
fn take_back(view: &View, draft: &mut Draft, id: LambId) -> Vec<Effect> {
    // What was noted of the first digits is not left standing beside others: what stood before comes back.
    let (before, made) = (kept(&draft.fields, BEFORE), kept(&draft.fields, MADE));
    let noted = noted_weight(view, id);
    if before == made || made != noted.map(|(_, mass, _)| mass) {
        return Vec::new();
    }
    match (before, noted) {
        (Some(before), Some(_)) => note_weight(view, draft, id, before),
        (None, Some((entry, ..))) => {
            let mut effects = draft.note(view, vec![view.noting(Event::Deleted { entry })]);
            if !effects.is_empty() {
                keep(&mut draft.fields, MADE, None);
                // Other digits stand on the keys: to bring the first back is not offered.
                effects.push(Effect::LetLastGo);
            }
            effects
        }
        (_, None) => Vec::new(),
    }
}

/// The lamb is no longer in hand: what waits is noted now, and what is still asked about waits for an answer.
pub(super) fn put_down(view: &View, draft: &mut Draft, id: LambId) -> Vec<Effect> {
    let mut effects = settle(view, draft, id);
    let noted = effects.iter().any(|effect| matches!(effect, Effect::Note(_)));
    let lamb = view.flock.lamb(id).filter(|_| draft.fields.typed(DIGITS).is_some());
    if let Some(lamb) = lamb {
        let made = if noted { kept(&draft.fields, MADE) } else { lamb.birth_weight() };
        let keys = Keys { noted: made, ..Keys::of(view, &draft.fields, lamb) };
        if keys.are_asked_about() {
            let Keys { digits, unit, noted, .. } = keys;
            let left = HalfTyped { digits, unit, noted, at: view.now };
            effects.push(Effect::Phone(Request::KeepDigits(id, Some(left))));
        }
    }
    clear(&mut draft.fields);
    effects
}

/// The birth weight that stands noted: by which entry, how much, and when.
fn noted_weight(view: &View, id: LambId) -> Option<(EntryId, Mass, Moment)> {
    let lamb = view.flock.lamb(id)?;
    let first = lamb.birth_weight().and(lamb.weights.first())?;
    let is_it = |line: &&Line| {
        !line.struck && line.at == first.at && matches!(line.event, Event::Weighed { lamb, .. } if lamb == id)
    };
    view.flock.lines.iter().find(is_it).map(|line| (line.entry, first.mass, line.at))
}

/// Notes a birth weight, or corrects the one that was noted; nothing when it stands so already.
fn note_weight(view: &View, draft: &mut Draft, id: LambId, mass: Mass) -> Vec<Effect> {
    if noted_weight(view, id).is_some_and(|(_, noted, _)| noted == mass) {
        keep(&mut draft.fields, MADE, Some(mass));
        return Vec::new();
    }
    let effects = draft.note(view, vec![view.noting(weighed(view, id, mass))]);
    if !effects.is_empty() {
        keep(&mut draft.fields, MADE, Some(mass));
    }
    effects
}

/// Returns the fact that a lamb weighs so much: a new one, or one that corrects the weight that is noted.
fn weighed(view: &View, id: LambId, mass: Mass) -> Event {
    let weighed = Event::Weighed { lamb: id, mass };
    match noted_weight(view, id) {
        Some((entry, _, at)) => Event::Amended { entry, event: Box::new(weighed), at },
        None => weighed,
    }
}
