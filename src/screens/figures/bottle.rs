//! How much a bottle lamb takes, from its age in days and, if it is known, its weight today.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::BottleTable;
use yeanling_core::reckon::bottle::{self, Day, Milk, NoRow};
use yeanling_core::reckon::mixing::mix;
use yeanling_core::units::{Mass, System, TimeDelta, TypedError, Volume};

use super::Asked;
use super::answer::{Answer, Shown, other, reasons};
use crate::farm::use_farm;
use crate::parts::{Caution, Choice, Choices, Field, FieldKind, FigureSize, LinkButton};
use crate::pieces::{PowderToWeaning, WeightField, tube};
use crate::route::Screen;
use crate::words::{bottle_round, errors, figures as words, practice, why};

/// The bottle by age.
#[component]
pub(super) fn Bottle(
    /// What was typed and chosen.
    asked: Asked,
) -> impl IntoView {
    let days = Memo::new(move |_| asked.days.with(|days| read_days(days)));
    let weight = Memo::new(move |_| match Mass::parse(&asked.today.get(), asked.unit.get()) {
        Ok(weight) => Ok(Some(weight)),
        Err(TypedError::Empty) => Ok(None),
        Err(wrong) => Err(wrong),
    });
    let day = Memo::new(move |_| {
        let (days, weight) = (days.get().ok().flatten()?, weight.get().ok()?);
        Some(bottle::day(TimeDelta::days(i64::from(days)), weight, asked.table.get()))
    });
    let age_error = Signal::derive(move || match (days.get(), day.get()) {
        (Err(wrong), _) => wrong,
        (Ok(_), Some(Err(error @ (NoRow::TooYoung { .. } | NoRow::TooOld { .. })))) => {
            errors::no_row(&error, asked.unit.get())
        }
        (Ok(_), Some(Ok(_) | Err(NoRow::NotAWeight(_))) | None) => String::new(),
    });
    let weight_error = Signal::derive(move || {
        let unit = asked.unit.get();
        match weight.get() {
            Err(wrong) => errors::typed(&wrong, errors::Field::Mass, unit),
            Ok(Some(weight)) => match Mass::ON_THE_BOTTLE.check(weight) {
                Ok(_) => String::new(),
                Err(wrong) => errors::weight(&wrong, unit),
            },
            Ok(None) => String::new(),
        }
    });
    let good = Memo::new(move |_| day.get().and_then(Result::ok));
    let some = Memo::new(move |_| good.with(Option::is_some));
    let nothing = Memo::new(move |_| days.with(|days| *days == Ok(None)));
    let tables = [BottleTable::VetSupplier, BottleTable::UsHandbook]
        .map(|table| Choice::new(table, practice::bottle_table(table).0))
        .to_vec();
    view! {
        <Field
            label=words::DAYS
            value=asked.days
            kind=FieldKind::Whole
            hint=words::DAYS_HINT
            error=age_error
        />
        <WeightField value=asked.today system=asked.unit error=weight_error label=words::TODAY />
        <p class="small-print">{words::WEIGHT_TODAY}</p>
        {live(move || nothing.get().then(|| view! { <p class="small-print">{words::TYPE_DAYS}</p> }).into_any())}
        {live(move || some.get().then(|| view! { <Feeds day=good /> }).into_any())}
        <Choices
            label=words::TABLE
            labelled=true
            options=tables
            chosen=Signal::derive(move || Some(asked.table.get()))
            on_choose=move |new| asked.table.set(new)
        />
        <LinkButton href=Screen::BottleRound.hash() label=bottle_round::LINK />
        <PowderToWeaning lambs=String::new() used=Signal::stored(Mass::from_kilograms(0.0)) />
        <Caution lines=vec![
            words::MIX_CAUTION.to_owned(),
            words::SICK.to_owned(),
            tube().join(" "),
        ] />
    }
}

/// The feeds of the day and what goes into them.
#[component]
fn Feeds(day: Memo<Option<Day>>) -> impl IntoView {
    let farm = use_farm();
    let shown = move |read: fn(&Day, System) -> Shown| {
        Signal::derive(move || {
            let system = farm.system();
            day.with(|day| day.as_ref().map(|day| read(day, system)).unwrap_or_default())
        })
    };
    let why = move |heading: &'static str| {
        Signal::derive(move || {
            let system = farm.system();
            day.with(|day| {
                day.as_ref().map(|day| reasons(heading, why::bottle(day, system))).unwrap_or_default()
            })
        })
    };
    let row = Signal::derive(move || {
        let system = farm.system();
        day.with(|day| {
            day.as_ref().map(|day| words::row(day.feeds, day.least, day.most, system)).unwrap_or_default()
        })
    });
    let is = move |read: fn(&Day) -> bool| Memo::new(move |_| day.with(|day| day.as_ref().is_some_and(read)));
    let (capped, weighed) = (is(|day| day.capped), is(|day| day.cap.is_some()));
    let powder = is(|day| match day.milk {
        Milk::Milk => true,
        Milk::Colostrum => false,
    });
    view! {
        <Answer
            label=words::EACH_FEED
            shown=shown(|day, system| Shown::volume(day.per_feed, system))
            why=why(words::EACH_FEED)
            size=FigureSize::Head
        />
        <p class="small-print">{row}</p>
        {live(move || capped.get().then(|| view! { <p>{words::CAPPED}</p> }).into_any())}
        <div class="answers">
            <Answer
                label=words::FEEDS_A_DAY
                shown=shown(|day, _| Shown::new(&day.feeds.to_string(), ""))
                why=why(words::FEEDS_A_DAY)
            />
            <Answer
                label=words::DAY_TOTAL
                shown=shown(day_total)
                why=why(words::DAY_TOTAL)
            />
            {live(move || weighed.get().then(|| view! {
                    <Answer label=words::CAP shown=shown(most_in_a_day) why=why(words::CAP) />
                }).into_any())}
            {live(move || powder.get().then(|| view! {
                    <Answer
                        label=words::MIX_FEED
                        shown=shown(|day, system| mixed(day.per_feed, system))
                        why=why(words::MIX_FEED)
                    />
                    <Answer
                        label=words::MIX_DAY
                        shown=shown(|day, system| mixed(day.day_total, system))
                        why=why(words::MIX_DAY)
                    />
                }).into_any())}
        </div>
        {live(move || (!weighed.get()).then(|| view! { <p class="small-print">{words::NO_CAP}</p> }).into_any())}
        {live(move || (!powder.get()).then(|| view! { <p>{words::COLOSTRUM}</p> }).into_any())}
    }
}

/// A day held to its cap is shown as the cap is, rounded down, so that one volume never reads as two.
fn day_total(day: &Day, system: System) -> Shown {
    if day.capped && day.cap == Some(day.day_total) {
        Shown::new(&words::cap(day.day_total, system), words::cap(day.day_total, other(system)))
    } else {
        Shown::volume(day.day_total, system)
    }
}

fn most_in_a_day(day: &Day, system: System) -> Shown {
    day.cap
        .map(|cap| {
            let also = format!("{} · {}", words::cap(cap, other(system)), words::CAP_ALSO);
            Shown::new(&words::cap(cap, system), also)
        })
        .unwrap_or_default()
}

fn mixed(finished: Volume, system: System) -> Shown {
    let (powder, water) = mix(finished);
    Shown::new(&words::powder(powder), words::water(water, system))
}

/// Reads whole days; nothing typed is `Ok(None)`.
pub(super) fn read_days(text: &str) -> Result<Option<u16>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    text.parse().map(Some).map_err(|_| words::days_error(text))
}
