//! How long colostrum still works, from an age or a time of birth.

use crate::parts::live;
use crate::signals::prelude::*;
use chrono::NaiveTime;
use yeanling_core::reckon::window::{DISSENT, absorption, left, place_on_ribbon, stretch};
use yeanling_core::units::{Moment, TimeDelta};

use super::answer::{Answer, Shown, reasons};
use super::{Asked, age};
use crate::farm::{Farm, use_farm};
use crate::parts::{Choice, Choices, Field, FieldKind, FigureSize, Ribbon, RibbonKind, Stretch, Tick};
use crate::words::common::{read_field_clock, span};
use crate::words::{figures as words, lamb, why};

/// The window by age.
#[component]
pub(super) fn Window(
    /// What was typed and chosen.
    asked: Asked,
) -> impl IntoView {
    let farm = use_farm();
    let typed = Memo::new(move |_| age::read(&asked.age.get()));
    let by_clock = Memo::new(move |_| {
        let now = farm.now();
        asked.born.with(|born| read_field_clock(born)).map(|born| now.since(last_time(farm, born, now)))
    });
    let age = Memo::new(move |_| {
        if asked.by_birth.get() { by_clock.get() } else { typed.with(|typed| typed.clone().ok().flatten()) }
    });
    let some = Memo::new(move |_| age.with(Option::is_some));
    let nothing = Memo::new(move |_| {
        if asked.by_birth.get() {
            by_clock.with(Option::is_none)
        } else {
            typed.with(|typed| *typed == Ok(None))
        }
    });
    let error = Signal::derive(move || {
        typed.with(|typed| typed.as_ref().err().map(words::age_error).unwrap_or_default())
    });
    let ways = vec![Choice::new(false, words::BY_HOURS), Choice::new(true, words::BY_BIRTH)];
    let field = move || {
        if asked.by_birth.get() {
            let hint = Signal::derive(move || match by_clock.get() {
                Some(age) => words::born_so_long_ago(&span(age)),
                None => words::BORN_HINT.to_owned(),
            });
            view! { <Field label=words::BORN value=asked.born kind=FieldKind::Time hint=hint /> }.into_any()
        } else {
            view! { <Field label=words::AGE value=asked.age hint=words::AGE_HINT error=error /> }.into_any()
        }
    };
    view! {
        <Choices
            label=words::HOW_OLD
            labelled=true
            options=ways
            chosen=Signal::derive(move || Some(asked.by_birth.get()))
            on_choose=move |new| asked.by_birth.set(new)
        />
        {field}
        {live(move || nothing.get().then(|| view! { <p class="small-print">{words::TYPE_AGE}</p> }).into_any())}
        {live(move || some.get().then(|| view! { <Standing age=age /> }).into_any())}
    }
}

/// Where in the window a lamb of this age stands.
#[component]
fn Standing(age: Memo<Option<TimeDelta>>) -> impl IntoView {
    let age = Signal::derive(move || age.get().unwrap_or_default());
    let time_left = Signal::derive(move || match left(age.get()) {
        Some(left) => Shown::new(&span(left), words::LEFT),
        None => Shown::new(words::CLOSED, words::CLOSED_ALSO),
    });
    let reaches =
        Signal::derive(move || Shown::new(&format!("{:.1} %", absorption(age.get())), words::REACHES_ALSO));
    let why = move |heading: &'static str| Signal::derive(move || reasons(heading, why::window(age.get())));
    let label = Signal::derive(move || match left(age.get()) {
        Some(left) => lamb::ribbon_label(&span(age.get()), &span(left)),
        None => lamb::RIBBON_CLOSED.to_owned(),
    });
    let now = Signal::derive(move || left(age.get()).map(|_| place_on_ribbon(age.get())));
    view! {
        <Answer
            label=words::TIME_LEFT
            shown=time_left
            why=why(words::TIME_LEFT)
            size=FigureSize::Head
        />
        <Ribbon label=label stretches=stretches() ticks=ticks() now=now />
        <p>{live(move || words::stretch(stretch(age.get())).into_any())}</p>
        <Answer label=words::REACHES shown=reaches why=why(words::REACHES) />
        <p class="small-print">{words::dissent(&why::source_line(&DISSENT))}</p>
    }
}

fn hour(hours: i64) -> f64 {
    place_on_ribbon(TimeDelta::hours(hours))
}

fn stretches() -> Vec<Stretch> {
    [
        (0, 1, RibbonKind::Best),
        (1, 2, RibbonKind::Best),
        (2, 6, RibbonKind::Good),
        (6, 12, RibbonKind::Fair),
        (12, 24, RibbonKind::Poor),
    ]
    .into_iter()
    .map(|(from, to, kind)| Stretch { from: hour(from), to: hour(to), kind, label: lamb::stretch(from, to) })
    .collect()
}

fn ticks() -> Vec<Tick> {
    vec![
        Tick::new(0.0, lamb::RIBBON_BORN),
        Tick::new(hour(1), "1 h").rank(1),
        Tick::new(hour(2), "2").rank(2),
        Tick::new(hour(6), "6").rank(1),
        Tick::new(hour(12), "12").rank(2),
        Tick::new(1.0, "24 h"),
    ]
}

/// Returns the last instant at which the clock on the wall showed this time.
fn last_time(farm: Farm, time: NaiveTime, now: Moment) -> Moment {
    let today = now.local().date();
    let at = farm.at_local(today.and_time(time));
    match today.pred_opt() {
        Some(yesterday) if at > now => farm.at_local(yesterday.and_time(time)),
        Some(_) | None => at,
    }
}
