//! A bag of colostrum: whether it is good, what a feed of it brings, how old it is, how to thaw it; and what antibody
//! in a lamb's blood suggests.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::FreezerLife;
use yeanling_core::reckon::quality::{self, GOOD_ANTIBODY, Keeps, Origin, Store};
use yeanling_core::reckon::{Strength, passive_transfer};
use yeanling_core::units::{Brix, System, Temperature, TimeDelta, Volume};

use super::answer::{Answer, Shown};
use super::typed::{Read, field, good, read};
use crate::farm::use_farm;
use crate::parts::{Choice, Choices, Field, FieldKind, Remark, Section, WhyButton, WhyText};
use crate::pieces::why_text;
use crate::words::common::{number, read_field_day};
use crate::words::{bag as words, errors, why};

/// What was typed of a bag.
#[derive(Clone, Copy)]
pub(super) struct Typed {
    brix: RwSignal<String>,
    antibody: RwSignal<String>,
    volume: RwSignal<String>,
    filled: RwSignal<String>,
    store: RwSignal<Store>,
    water: RwSignal<String>,
    serum: RwSignal<String>,
    early: RwSignal<bool>,
}

impl Typed {
    pub(super) fn new() -> Self {
        let text = || RwSignal::new(String::new());
        Self {
            brix: text(),
            antibody: text(),
            volume: text(),
            filled: text(),
            store: RwSignal::new(Store::Freezer),
            water: text(),
            serum: text(),
            early: RwSignal::new(false),
        }
    }
}

/// A bag of colostrum.
#[component]
pub(super) fn Bag(
    /// What was typed.
    typed: Typed,
) -> impl IntoView {
    view! {
        <Good typed=typed />
        <Old typed=typed />
        <Thaw typed=typed />
        <Blood typed=typed />
    }
}

/// A verdict in bold with its reasons; nothing while there is none.
fn verdict(said: Memo<Option<(String, WhyText)>>) -> AnyView {
    live(move || {
        said.get().map(|(text, why)| view! { <Remark text=text><WhyButton why=why /></Remark> }).into_any()
    })
}

/// Whether it is good, and what a feed brings.
#[component]
fn Good(typed: Typed) -> impl IntoView {
    let farm = use_farm();
    let brix = read(typed.brix, |text, system| {
        let brix = Brix::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Brix, system))?;
        Brix::OF_COLOSTRUM.check(brix).map(Brix::as_percent).map_err(|wrong| errors::brix(&wrong))
    });
    let antibody = read(typed.antibody, |text, system| {
        let read =
            Strength::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Antibody, system))?;
        let within = Strength::IN_COLOSTRUM.check(read).map(Strength::as_grams_per_liter);
        within.map_err(|wrong| errors::antibody(&wrong))
    });
    let volume = read(typed.volume, |text, system| {
        let read = Volume::parse(text, system)
            .map_err(|wrong| errors::typed(&wrong, errors::Field::Volume, system))?;
        let within = Volume::ONE_FEED.check(read).map(Volume::as_milliliters);
        within.map_err(|wrong| errors::feed(&wrong, system))
    });
    let by_brix = Memo::new(move |_| {
        let reading = quality::reading(Brix::from_percent(good(brix)?)).ok()?;
        Some((words::bold(&words::brix(&reading)), why_text(why::brix(&reading))))
    });
    let by_antibody = Memo::new(move |_| {
        let strength = Strength::from_grams_per_liter(good(antibody)?);
        let why = quality::reading(quality::GOOD_BRIX).ok().map(|reading| why_text(why::brix(&reading)))?;
        let said = words::antibody(strength, strength >= GOOD_ANTIBODY);
        Some((words::bold(&said), WhyText { working: vec![said], ..why }))
    });
    let feed = Memo::new(move |_| {
        let volume = Volume::from_milliliters(good(volume)?);
        let strength = Strength::from_grams_per_liter(good(antibody)?);
        let brings = quality::antibody(volume, strength);
        let share = words::share(quality::percent_of_wanted(brings));
        let shown = Shown::new(&format!("{} g", number(brings.as_kilograms() * 1000.0, 1)), share);
        Some((shown, why_text(why::antibody_in(volume, strength, farm.system()))))
    });
    let some = Memo::new(move |_| feed.with(Option::is_some));
    let wants = Memo::new(move |_| good(volume).is_some() && good(antibody).is_none());
    view! {
        <Section title=words::GOOD>
            {field(words::BRIX, typed.brix, brix, words::BRIX_HINT, |_| "%")}
            {verdict(by_brix)}
            {field(words::ANTIBODY, typed.antibody, antibody, words::ANTIBODY_HINT, |_| "g/L")}
            {verdict(by_antibody)}
            {field(words::VOLUME, typed.volume, volume, "", |system| match system {
                System::Metric => "ml",
                System::Us => "fl oz",
            })}
            {live(move || wants.get().then(|| view! { <p class="small-print">{words::WANTS_ANTIBODY}</p> }).into_any())}
            {live(move || some.get().then(|| view! {
                <Answer
                    label=words::IN_FEED
                    shown=Signal::derive(move || feed.get().map(|(shown, _)| shown).unwrap_or_default())
                    why=Signal::derive(move || feed.get().map(|(_, why)| why).unwrap_or_default())
                />
            }).into_any())}
        </Section>
    }
}

/// How old it is, by the farm's choice and by the others.
#[component]
fn Old(typed: Typed) -> impl IntoView {
    let farm = use_farm();
    let age = Memo::new(move |_| {
        let text = typed.filled.get();
        if text.trim().is_empty() {
            return Ok(None);
        }
        let day = read_field_day(&text).ok_or(words::NO_DAY)?;
        let today = farm.now().local().date();
        let age = TimeDelta::days(today.signed_duration_since(day).num_days());
        if age < TimeDelta::zero() { Err(words::DAY_TO_COME) } else { Ok(Some(age)) }
    });
    let keeps = Memo::new(move |_| {
        let (age, store) = (age.get().ok().flatten()?, typed.store.get());
        let life = farm.practice().freezer_life;
        let keep = quality::bag(age, store, life);
        Some((words::bold(&words::keeps(keep, store)), why_text(why::bag(keep, store, life))))
    });
    let others = Memo::new(move |_| {
        let Some(age) = age.get().ok().flatten().filter(|_| typed.store.get() == Store::Freezer) else {
            return Vec::new();
        };
        let own = farm.practice().freezer_life;
        [FreezerLife::SixMonths, FreezerLife::OneYear, FreezerLife::TwoYears]
            .into_iter()
            .filter(|life| *life != own)
            .map(|life| {
                words::by_other(life, matches!(quality::bag(age, Store::Freezer, life), Keeps::Still(_)))
            })
            .collect::<Vec<String>>()
    });
    let stores = vec![Choice::new(Store::Freezer, words::FREEZER), Choice::new(Store::Fridge, words::FRIDGE)];
    view! {
        <Section title=words::OLD>
            <Choices
                label=words::WHERE
                options=stores
                chosen=Signal::derive(move || Some(typed.store.get()))
                on_choose=move |new| typed.store.set(new)
            />
            <Field
                label=words::FILLED
                value=typed.filled
                kind=FieldKind::Date
                error=Signal::derive(move || age.get().err().unwrap_or_default().to_owned())
            />
            {verdict(keeps)}
            {live(move || {
                let lines = others.get().into_iter().map(|line| view! { <li>{line}</li> }.into_any());
                view! { <ul class="reading">{lines.collect_view()}</ul> }.into_any()
            })}
        </Section>
    }
}

/// How it is thawed, and where colostrum comes from when there is none.
#[component]
fn Thaw(typed: Typed) -> impl IntoView {
    let water: Read = read(typed.water, |text, system| {
        Temperature::parse(text, system)
            .map(Temperature::as_celsius)
            .map_err(|wrong| errors::typed(&wrong, errors::Field::Water, system))
    });
    let says = Signal::derive(move || {
        good(water)
            .map(|celsius| words::thaw(quality::thaw(Temperature::from_celsius(celsius))))
            .unwrap_or_default()
            .to_owned()
    });
    let steps = words::THAWING.iter().map(|line| view! { <li>{*line}</li> }.into_any()).collect_view();
    let origins =
        Origin::ALL.map(|origin| view! { <li>{words::origin(origin)}</li> }.into_any()).collect_view();
    view! {
        <Section title=words::THAW>
            <ul class="reading">{steps}</ul>
            {field(words::WATER, typed.water, water, "", |system| match system {
                System::Metric => "°C",
                System::Us => "°F",
            })}
            <Remark text=says />
        </Section>
        <Section title=words::NONE_THERE>
            <ol class="reading">{origins}</ol>
            <p class="small-print">{words::ORIGIN_SOURCE}</p>
        </Section>
    }
}

/// What antibody in a lamb's blood suggests.
#[component]
fn Blood(typed: Typed) -> impl IntoView {
    let serum = read(typed.serum, |text, system| {
        let read =
            Strength::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Serum, system))?;
        let within = Strength::IN_SERUM.check(read).map(Strength::as_grams_per_liter);
        within.map_err(|wrong| errors::antibody(&wrong))
    });
    let says = Memo::new(move |_| {
        let age = if typed.early.get() { TimeDelta::zero() } else { passive_transfer::MEASURED_AT };
        let reading = passive_transfer::reading(Strength::from_grams_per_liter(good(serum)?), age).ok()?;
        Some((words::blood(&reading), why_text(why::passive_transfer(&reading))))
    });
    let ages = vec![Choice::new(false, words::FROM_24), Choice::new(true, words::BEFORE_24)];
    view! {
        <Section title=words::BLOOD>
            {field(words::SERUM, typed.serum, serum, words::SERUM_HINT, |_| "g/L")}
            <Choices
                label=words::TAKEN
                labelled=true
                options=ages
                chosen=Signal::derive(move || Some(typed.early.get()))
                on_choose=move |new| typed.early.set(new)
            />
            {verdict(says)}
        </Section>
    }
}
