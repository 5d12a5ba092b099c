//! The sheets of an animal's life: a foster dam, a medicine, how it left, what is known of a ewe.

use std::cmp::Reverse;

use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{
    Animal, BirthDay, Castration, Departure, Event, EweId, LambId, Life, Route, Treatment,
};
use yeanling_core::flock::{Ewe, Flock, Lamb};
use yeanling_core::units::{Moment, TimeDelta};

use super::ewe_picker::{EwePicker, Picked};
use super::ewe_sheets::read_days;
use super::whose::whose;
use crate::farm::{Farm, use_farm};
use crate::parts::{
    Button, Buttons, Caution, Choice, Choices, Field, FieldKind, Sheet, Toggle, Weight, Wrong,
};
use crate::words::common::{field_time, read_field_time};
use crate::words::{animals, frame, lamb, life as words, refusals};

/// A lamb this old is hardly taken on any more (ours).
const YOUNG: TimeDelta = TimeDelta::days(14);
/// So many lambs are offered at most.
const MOST_YOUNG: usize = 20;

/// How many medicines given before are offered.
const MOST_BEFORE: usize = 6;

/// Picks the ewe that rears a lamb from now on.
#[component]
pub(crate) fn FosterSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let error = RwSignal::new(String::new());
    let reared_by = farm.peek(|ground| ground.flock.lamb(lamb).and_then(|lamb| ground.flock.rearer(lamb)));
    let pick = move |picked: Picked| {
        if let Picked::Ewe(dam) = picked {
            foster(farm, lamb, dam, error, on_close);
        }
    };
    view! {
        <Sheet title=words::FOSTER_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <p>{words::FOSTER_SUB}</p>
            <Wrong error=error />
            <EwePicker lambed_first=true without=reared_by on_pick=pick />
        </Sheet>
    }
}

/// Picks the lamb that a ewe takes on: those on the bottle or without a ewe first, then those of the largest litters.
#[component]
pub(crate) fn TakeOnSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let error = RwSignal::new(String::new());
    let mut lambs = farm.peek(|ground| young_lambs(&ground.flock, ewe, farm.peek_now()));
    let (none, more) = (lambs.is_empty(), lambs.len().saturating_sub(MOST_YOUNG));
    lambs.truncate(MOST_YOUNG);
    let choose = move |lamb: LambId| foster(farm, lamb, ewe, error, on_close);
    view! {
        <Sheet title=words::TAKE_ON_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <p>{if none { words::NO_YOUNG_LAMBS } else { words::FOSTER_SUB }}</p>
            <Wrong error=error />
            <Choices
                label=words::TAKE_ON_ASK
                options=lambs
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
            {(more > 0).then(|| view! { <p class="small-print">{words::more_young(more)}</p> }.into_any())}
        </Sheet>
    }
}

/// Notes who rears a lamb from now on; what stands against it is said on the sheet.
fn foster(farm: Farm, lamb: LambId, dam: EweId, error: RwSignal<String>, on_close: Callback<()>) {
    match farm.note(Event::Life(Life::Fostered { lamb, dam })) {
        Ok(_) => on_close.run(()),
        Err(refusal) => {
            error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
        }
    }
}

/// The living lambs that are young enough to be taken on by a ewe that does not rear them.
fn young_lambs(flock: &Flock, ewe: EweId, now: Moment) -> Vec<Choice<LambId>> {
    let litter = |lamb: &Lamb| flock.litter_of(lamb.id).map_or(1, |litter| litter.lambs.len());
    let young = |lamb: &&Lamb| lamb.lives() && lamb.age(now) < YOUNG && flock.rearer(lamb) != Some(ewe);
    let alone = |lamb: &Lamb| {
        let dam = flock.rearer(lamb).and_then(|dam| flock.ewe(dam));
        lamb.turned_away() || !dam.is_some_and(Ewe::lives)
    };
    let mut lambs: Vec<&Lamb> = flock.lambs.values().filter(young).collect();
    lambs.arrange_by_key(|lamb| {
        (!lamb.on_bottle(), !alone(lamb), Reverse(litter(lamb)), Reverse(lamb.born), lamb.id)
    });
    let choice = |lamb: &Lamb| {
        let bottle = lamb.on_bottle().then_some(words::ON_BOTTLE);
        let alone = (bottle.is_none() && alone(lamb)).then_some(words::ALONE);
        let size = animals::litter(litter(lamb));
        let note = bottle.into_iter().chain(alone).chain([size.as_str()]).collect::<Vec<_>>().join(" · ");
        Choice::new(lamb.id, animals::lamb(flock, lamb)).note(note)
    };
    lambs.into_iter().map(choice).collect()
}

/// Says how a ram lamb was castrated.
#[component]
pub(crate) fn CastrateSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let choose = move |way: Castration| {
        if farm.tap(Event::Life(Life::Castrated { lamb, way })).is_some() {
            on_close.run(());
        }
    };
    let ways = [Castration::Cut, Castration::Clamped].map(|way| Choice::new(way, words::castration(way)));
    view! {
        <Sheet title=words::CASTRATE_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <Caution lines=vec![words::CASTRATE_CAUTION.to_owned()] />
            <Choices
                label=words::CASTRATE_ASK
                options=ways.to_vec()
                chosen=Signal::stored(None)
                on_choose=choose
            />
        </Sheet>
    }
}

/// Notes how an animal left.
#[component]
pub(crate) fn LeaveSheet(
    /// Who.
    animal: Animal,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let how = RwSignal::new(None::<Departure>);
    let to = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let ways = words::DEPARTURES.map(|how| Choice::new(how, words::departure(how))).to_vec();
    let save = move || {
        let Some(how) = how.get_untracked() else { return error.set(words::NO_HOW.to_owned()) };
        match farm.note(Event::Life(Life::Went { animal, how, to: written(to) })) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    view! {
        <Sheet title=words::LEAVE_ASK whose=whose(animal) on_close=on_close>
            <Choices
                label=words::LEAVE_ASK
                options=ways
                chosen=Signal::derive(move || how.get())
                on_choose=move |new| how.set(Some(new))
                stacked=true
            />
            <Wrong error=error />
            <Field label=words::TO value=to />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Notes what is known of a ewe from before.
#[component]
pub(crate) fn DescribeSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let (was_born, was_breed) = farm.peek(|ground| {
        let her = ground.flock.ewe(ewe);
        let born = her.and_then(|her| her.born).map(typed_birth_day).unwrap_or_default();
        (born, her.and_then(|her| her.breed.clone()).unwrap_or_default())
    });
    let (born, breed) = (RwSignal::new(was_born), RwSignal::new(was_breed));
    let error = RwSignal::new(String::new());
    let save = move || {
        let typed = born.get_untracked();
        let born = match BirthDay::parse(&typed) {
            _ if typed.trim().is_empty() => None,
            Ok(born) => Some(born),
            Err(wrong) => return error.set(words::no_birth_day(&wrong)),
        };
        match farm.note(Event::Life(Life::Described { ewe, born, breed: written(breed) })) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    view! {
        <Sheet title=words::DESCRIBE_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <Field label=words::BORN value=born hint=words::BORN_HINT error=error />
            <Field label=words::BREED value=breed />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

fn typed_birth_day(born: BirthDay) -> String {
    match born {
        BirthDay::Year(year) => year.to_string(),
        BirthDay::Day(day) => day.to_string(),
    }
}

/// Notes a medicine given to one animal or to many; what was given before is filled in with one tap.
#[component]
pub(crate) fn TreatSheet(
    /// Who.
    animals: Vec<Animal>,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let one = if let [animal] = animals[..] { whose(animal) } else { Signal::stored(String::new()) };
    let now = farm.peek_now();
    let text = || RwSignal::new(String::new());
    let (product, meat, milk) = (text(), text(), text());
    let (amount, reason, batch, by) = (text(), text(), text(), text());
    let route = RwSignal::new(None::<Route>);
    let day_only = RwSignal::new(false);
    let was = field_time(now);
    let when = RwSignal::new(was.clone());
    let (error, meat_wrong, milk_wrong) = (text(), text(), text());
    let before = farm.peek(|ground| given_before(&ground.flock));
    let fill = move |from: &Treatment| {
        product.set(from.product.clone());
        meat.set(from.meat_days.map(|days| days.to_string()).unwrap_or_default());
        milk.set(from.milk_days.map(|days| days.to_string()).unwrap_or_default());
        amount.set(from.amount.clone().unwrap_or_default());
        reason.set(from.reason.clone().unwrap_or_default());
        batch.set(from.batch.clone().unwrap_or_default());
        by.set(from.by.clone().unwrap_or_default());
        route.set(from.route);
    };
    let save = move || {
        for wrong in [error, meat_wrong, milk_wrong] {
            wrong.set(String::new());
        }
        let days = |typed: RwSignal<String>, wrong: RwSignal<String>| {
            read_days(&typed.get_untracked()).map_err(|said| wrong.set(said))
        };
        let (Ok(meat_days), Ok(milk_days)) = (days(meat, meat_wrong), days(milk, milk_wrong)) else { return };
        let typed = when.get_untracked();
        let at = if typed == was { Some(now) } else { read_field_time(&typed).map(|at| farm.at_local(at)) };
        let Some(at) = at else { return error.set(lamb::NO_TIME.to_owned()) };
        let treatment = Treatment {
            product: product.get_untracked().trim().to_owned(),
            amount: written(amount),
            route: route.get_untracked(),
            reason: written(reason),
            batch: written(batch),
            by: written(by),
            day_only: day_only.get_untracked(),
            meat_days,
            milk_days,
        };
        let fact = |animal: &Animal| {
            Event::Life(Life::Treated { animal: *animal, treatment: Box::new(treatment.clone()) })
        };
        match farm.note_all(animals.iter().map(fact).collect(), at) {
            Ok(()) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    let press = move |from: Treatment| {
        let label = from.product.clone();
        view! { <Button label=label on_press=move || fill(&from) /> }.into_any()
    };
    let some = !before.is_empty();
    let routes = words::ROUTES.map(|way| Choice::new(way, words::route(way))).to_vec();
    view! {
        <Sheet title=words::TREAT_ASK whose=one on_close=on_close>
            {some.then(|| view! {
                <p>{words::BEFORE}</p>
                <Buttons columns=2>{before.into_iter().map(press).collect_view()}</Buttons>
            })}
            <Field label=words::MEDICINE value=product error=error />
            <Field label=words::MEAT_DAYS value=meat kind=FieldKind::Whole error=meat_wrong hint=words::DAYS_HINT>
                <span>{words::DAYS}</span>
            </Field>
            <Field label=words::MILK_DAYS value=milk kind=FieldKind::Whole error=milk_wrong>
                <span>{words::DAYS}</span>
            </Field>
            <details class="fold">
                <summary>{words::RECORD}</summary>
                <Field label=words::AMOUNT value=amount />
                <Choices
                    label=words::ROUTE
                    labelled=true
                    options=routes
                    chosen=Signal::derive(move || route.get())
                    on_choose=move |way| route.set(Some(way))
                    snug=true
                />
                <Field label=words::REASON value=reason />
                <Field label=words::BATCH value=batch />
                <Field label=words::BY value=by />
                <Field label=words::WHEN value=when kind=FieldKind::Moment />
                <Toggle
                    label=words::DAY_ONLY
                    pressed=Signal::derive(move || day_only.get())
                    on_press=move || day_only.update(|only| *only = !*only)
                />
            </details>
            <Caution lines=words::TREAT_CAUTION.map(str::to_owned).to_vec() />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Returns the last treatment with each of the medicines given last.
fn given_before(flock: &Flock) -> Vec<Treatment> {
    let mut seen: Vec<Treatment> = Vec::new();
    for treated in flock.treatments() {
        if seen.len() == MOST_BEFORE {
            break;
        }
        if seen.iter().all(|other| other.product != treated.treatment.product) {
            seen.push(treated.treatment.clone());
        }
    }
    seen
}

/// Returns what was written, or nothing.
fn written(text: RwSignal<String>) -> Option<String> {
    Some(text.get_untracked().trim().to_owned()).filter(|text| !text.is_empty())
}
