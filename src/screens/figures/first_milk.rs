//! How much colostrum, from a weight alone, while it is typed.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::{DayRule, Housing};
use yeanling_core::reckon::colostrum::{self, COLD_EXTRA, Caution as Warning, Want};
use yeanling_core::reckon::feeds;
use yeanling_core::units::{Mass, System, TimeDelta, Volume};

use super::Asked;
use super::answer::{Answer, Shown, reasons};
use crate::farm::use_farm;
use crate::parts::{Caution, Choice, Choices, FigureSize, Said, Section, WhyText};
use crate::pieces::{AskPounds, Weighed, WeightField};
use crate::words::common::number;
use crate::words::{figures as words, practice, why};

/// First milk by weight.
#[component]
pub(super) fn FirstMilk(
    /// What was typed and chosen.
    asked: Asked,
) -> impl IntoView {
    let read = Memo::new(move |_| Weighed::at_birth(&asked.weight.get(), asked.unit.get()));
    let error = Signal::derive(move || match read.get() {
        Weighed::Wrong(wrong) => wrong,
        Weighed::Nothing | Weighed::Good(_) | Weighed::Ask(..) => String::new(),
    });
    let weight = Memo::new(move |_| match read.get() {
        Weighed::Good(mass) => Some(mass),
        Weighed::Ask(typed, _) => (asked.confirmed.get() == Some(typed)).then_some(typed),
        Weighed::Nothing | Weighed::Wrong(_) => None,
    });
    let ask = Memo::new(move |_| match read.get() {
        Weighed::Ask(typed, meant) if weight.get().is_none() => Some((typed, meant)),
        Weighed::Ask(..) | Weighed::Nothing | Weighed::Good(_) | Weighed::Wrong(_) => None,
    });
    let answer = move |mass: Mass| {
        if let Some((typed, _)) = ask.get_untracked()
            && typed != mass
        {
            asked.unit.set(System::Us);
            asked.weight.set(number(mass.as_pounds(), 2));
        }
        asked.confirmed.set(Some(mass));
    };
    let want = Memo::new(move |_| colostrum::want(weight.get()?, asked.rule.get(), asked.housing.get()).ok());
    let some = Memo::new(move |_| want.with(Option::is_some));
    let nothing = Memo::new(move |_| read.with(|read| *read == Weighed::Nothing));
    view! {
        <WeightField value=asked.weight system=asked.unit error=error />
        {live(move || ask.get().map(|(typed, meant)| view! { <AskPounds typed=typed meant=meant on_answer=answer /> }).into_any())}
        {live(move || nothing.get().then(|| view! { <p class="small-print">{words::TYPE_WEIGHT}</p> }).into_any())}
        {live(move || some.get().then(|| view! { <Volumes want=want /> }).into_any())}
        <HousingChoice housing=asked.housing />
        <RuleChoice rule=asked.rule />
    }
}

/// Every volume, each with its reasons.
#[component]
fn Volumes(want: Memo<Option<Want>>) -> impl IntoView {
    let farm = use_farm();
    let shown = move |read: fn(&Want) -> Volume| {
        Signal::derive(move || {
            let system = farm.system();
            want.with(|want| want.as_ref().map(|want| Shown::volume(read(want), system)).unwrap_or_default())
        })
    };
    let why = move |heading: &'static str| {
        Signal::derive(move || {
            let system = farm.system();
            want.with(|want| {
                want.as_ref().map(|want| reasons(heading, why::colostrum(want, system))).unwrap_or_default()
            })
        })
    };
    let count = Signal::derive(move || {
        let count =
            want.with(|want| want.as_ref().and_then(|want| feeds::count(want.by_24h, want.next_feed)));
        count.map(|count| Shown::new(&count.to_string(), words::FEEDS_ALSO)).unwrap_or_default()
    });
    let cold = Signal::derive(move || {
        let system = farm.system();
        want.with(|want| want.as_ref().map(|want| said_of_cold(want, system)).unwrap_or_default())
    });
    let half = Memo::new(move |_| match want.with(|want| want.as_ref().and_then(Want::caution)) {
        Some(Warning::HalfTheGuidance) => true,
        None => false,
    });
    view! {
        <Answer
            label=words::A_FEED
            shown=shown(|want| want.next_feed)
            why=Signal::derive(move || next_feed(want.get(), farm.system(), words::A_FEED))
            size=FigureSize::Head
        />
        <div class="answers">
            <Answer label=words::BY_6 shown=shown(|want| want.by_6h) why=why(words::BY_6) />
            <Answer label=words::BY_18 shown=shown(|want| want.by_18h) why=why(words::BY_18) />
            <Answer label=words::BY_24 shown=shown(|want| want.by_24h) why=why(words::BY_24) />
            <Answer
                label=words::FEEDS
                shown=count
                why=Signal::derive(move || next_feed(want.get(), farm.system(), words::FEEDS))
            />
        </div>
        {live(move || half.get().then(|| view! { <Caution lines=vec![words::HALF.to_owned()] /> }).into_any())}
        <p><Said text=cold /></p>
    }
}

/// Returns the reasons of the first feed, and of how many there are.
fn next_feed(want: Option<Want>, system: System, heading: &str) -> WhyText {
    want.and_then(|want| {
        let next = feeds::next(&want, Volume::ZERO, None, TimeDelta::zero())?;
        Some(reasons(heading, why::next_feed(&next, &want, system)))
    })
    .unwrap_or_default()
}

/// Returns what cold weather adds, over all who say so.
fn said_of_cold(want: &Want, system: System) -> String {
    let least = COLD_EXTRA.iter().map(|extra| extra.low_percent).min().unwrap_or_default();
    let most = COLD_EXTRA.iter().map(|extra| extra.high_percent).max().unwrap_or_default();
    let more = |percent: u8| {
        Volume::from_milliliters(want.by_24h.as_milliliters() * (1.0 + f64::from(percent) / 100.0))
    };
    words::cold(least, most, more(least), more(most), system)
}

#[component]
fn HousingChoice(housing: RwSignal<Housing>) -> impl IntoView {
    let options = [Housing::Housed, Housing::Outdoors]
        .map(|housing| Choice::new(housing, practice::housing(housing)))
        .to_vec();
    view! {
        <Choices
            label=words::HOUSING
            labelled=true
            options=options
            chosen=Signal::derive(move || Some(housing.get()))
            on_choose=move |new| housing.set(new)
        />
    }
}

#[component]
fn RuleChoice(rule: RwSignal<DayRule>) -> impl IntoView {
    let options = [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent]
        .map(|rule| {
            let (who, figure) = words::rule(rule);
            Choice::new(rule, who).note(figure)
        })
        .to_vec();
    view! {
        <Section title=words::RULE>
            <Choices
                label=words::RULE
                options=options
                chosen=Signal::derive(move || Some(rule.get()))
                on_choose=move |new| rule.set(new)
            />
            <p class="small-print">{words::RULE_SUB}</p>
        </Section>
    }
}
