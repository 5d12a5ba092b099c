//! What to do, in order and in large words; what never; when to look again; and what was noted so far.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{GlucoseBy, VetSaid};
use yeanling_core::reckon::body_temperature::may_be_the_first_drop;
use yeanling_core::reckon::cold_lamb::{Answer, Branch, Vet};
use yeanling_core::reckon::warming::{self, Look, Progress};
use yeanling_core::units::{Mass, System, Temperature};

use super::case::{Age, Case, asks_for_milk, is_warmed, may_be_fed};
use super::hand::{Asks, Hand};
use crate::parts::{
    Button, Buttons, Caution, Figure, FigureSize, LinkButton, Notice, NoticeKind, Remark, Section, Weight,
    WhyButton,
};
use crate::pieces::{WeightField, tube, why_text};
use crate::route::Screen;
use crate::words::common::{clock, temperature, temperature_both, volume};
use crate::words::{cold_lamb as words, danger, errors, why};

/// How old it is, as it is told beside its temperature.
fn age(case: &Case, answer: &Answer) -> String {
    match case.age {
        Age::UpToFive => words::UP_TO_FIVE.to_owned(),
        Age::OverFive => words::OVER_FIVE.to_owned(),
        Age::Unknown | Age::Known(_) | Age::Ask => words::age(answer),
    }
}

/// The reading, what it means, and what to do about it in order.
pub(super) fn what_to_do(hand: Hand, case: &Case, answer: &Answer) -> AnyView {
    let system = untrack(|| hand.farm.system());
    let other = match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    };
    let told = temperature(answer.temperature, system);
    let (number, unit) = told.split_once(' ').unwrap_or((&told, ""));
    let (number, unit) = (number.to_owned(), unit.to_owned());
    let also = temperature(answer.temperature, other);
    let old = age(case, answer);
    let young = match case.age {
        Age::Known(age) => may_be_the_first_drop(age),
        Age::UpToFive => true,
        Age::OverFive | Age::Unknown | Age::Ask => false,
    };
    let because = why_text(why::cold_lamb(answer, &old, system));
    let feed = case.feed(system);
    let steps: Vec<AnyView> = answer
        .steps
        .iter()
        .map(|step| view! { <li>{words::step(*step, feed, system)}</li> }.into_any())
        .collect();
    let nevers: Vec<AnyView> =
        answer.never.iter().map(|never| view! { <li>{words::never(*never)}</li> }.into_any()).collect();
    let title = words::heading(answer);
    let so_far = case
        .progress()
        .map(|(before, progress)| warming_so_far(before.temperature, answer, progress, system));
    let vet = (answer.vet == Vet::Now || case.stalls()).then(|| vet_now(hand, case));
    let nevers = (!nevers.is_empty())
        .then(|| view! { <Section title=words::NEVER><ul class="nevers">{nevers}</ul></Section> }.into_any());
    view! {
        <Section title=title>
            <Figure
                value=number
                unit=unit
                also=also
                size=FigureSize::Head
            >
                <Remark text=words::at_age(&old)>
                    <WhyButton why=because />
                </Remark>
            </Figure>
            {young.then(|| view! { <p class="small-print">{words::FIRST_DROP}</p> }.into_any())}
            {so_far}
            {vet}
            <ol class="steps">{steps}</ol>
        </Section>
        {nevers}
    }
    .into_any()
}

/// What the last two readings say of the warming.
fn warming_so_far(before: Temperature, answer: &Answer, progress: Progress, system: System) -> AnyView {
    let kind = match progress {
        Progress::WarmEnough | Progress::Rising => NoticeKind::Calm,
        Progress::NotRising => NoticeKind::Bad,
    };
    let from_to = words::from_to(&temperature(before, system), &temperature(answer.temperature, system));
    view! {
        <Notice kind=kind>
            <p><b>{words::progress(progress)}</b> " " {from_to}</p>
        </Notice>
    }
    .into_any()
}

/// The vet, above everything else, with the one tap that notes the call.
fn vet_now(hand: Hand, case: &Case) -> AnyView {
    match &case.vet {
        Some(call) if call.said != Some(VetSaid::NobodyReached) => {
            let line = match &call.said {
                Some(said) => format!("{} {}", danger::said_line(said), clock(call.at)),
                None => words::vet_called_at(&clock(call.at)),
            };
            view! {
                <Notice
                    kind=NoticeKind::Calm
                    action=move || view! {
                        {hand.lamb.map(|_| view! {
                            <Button label=danger::SAID on_press=move || hand.ask(Asks::Vet) />
                        })}
                    }.into_any()
                >
                    <p>{line}</p>
                </Notice>
            }
            .into_any()
        }
        Some(_) | None => view! {
            <Notice
                kind=NoticeKind::Bad
                action=move || view! {
                    <Button label=words::VET_CALLED on_press=move || hand.vet_called() weight=Weight::Filled />
                }.into_any()
            >
                <p class="lead"><b>{words::vet(Vet::Now)}</b></p>
            </Notice>
        }
        .into_any(),
    }
}

/// The taps that note what was done.
pub(super) fn done(hand: Hand, case: &Case, answer: &Answer) -> AnyView {
    let system = untrack(|| hand.farm.system());
    let warmed = match case.warmed {
        Some(at) => words::warming_since(&clock(at)),
        None => words::WARMING_BEGUN.to_owned(),
    };
    let warm = is_warmed(answer).then(|| match case.warmed {
        Some(_) => view! { <p class="done-line">{warmed}</p> }.into_any(),
        None => view! { <Button label=warmed on_press=move || hand.warmed() /> }.into_any(),
    });
    let fed = match (hand.lamb, case.feed(system), case.fed) {
        (_, _, Some((at, given))) => {
            let line = words::fed_at(&volume(given, system), &clock(at));
            Some(view! { <p class="done-line">{line}</p> }.into_any())
        }
        (Some(_), Some(feed), None) if may_be_fed(answer) => {
            let label = words::fed_by_bottle(&volume(feed, system));
            Some(view! { <Button label=label on_press=move || hand.fed(feed) /> }.into_any())
        }
        (Some(_) | None, _, None) => None,
    };
    let lamb = hand
        .lamb
        .filter(|_| asks_for_milk(answer))
        .map(|id| view! { <LinkButton href=Screen::Lamb(id).hash() label=words::OTHER_FEED /> }.into_any());
    let glucose = glucose(hand, case, answer);
    if warm.is_none() && fed.is_none() && lamb.is_none() && glucose.is_none() {
        return ().into_any();
    }
    view! { <Buttons columns=2>{glucose} {warm} {fed} {lamb}</Buttons> }.into_any()
}

/// Glucose, where it comes first: by whom it was given, or that it was.
fn glucose(hand: Hand, case: &Case, answer: &Answer) -> Option<AnyView> {
    if answer.branch != Branch::SevereOlder {
        return None;
    }
    Some(match case.glucose {
        Some((at, by)) => view! { <p class="done-line">{danger::glucose_at(by, at)}</p> }.into_any(),
        None => [GlucoseBy::Vet, GlucoseBy::Trained]
            .map(|by| view! { <Button label=danger::glucose(by) on_press=move || hand.glucose(by) /> })
            .into_iter()
            .collect_view()
            .into_any(),
    })
}

/// When it is looked at again: the clock time, and how long until then.
pub(super) fn look_again(hand: Hand, case: &Case, answer: &Answer, on_again: Callback<()>) -> AnyView {
    let (Some(last), Some(_)) = (case.last(), answer.look_again) else {
        return view! { <Button label=words::NEW_READING on_press=move || on_again.run(()) /> }.into_any();
    };
    let Some(wait) = answer.look_again else { return ().into_any() };
    let left = Signal::derive(move || words::look(warming::look_after(last.at, wait, hand.farm.now())));
    let due = Memo::new(move |_| matches!(warming::look_after(last.at, wait, hand.farm.now()), Look::Now(_)));
    let vet =
        (answer.vet == Vet::IfNoBetter).then(|| view! { <p>{words::vet(Vet::IfNoBetter)}</p> }.into_any());
    view! {
        <Section title=words::LOOK_AGAIN>
            <Figure value=clock(last.at + wait) also=left size=FigureSize::Head />
            {vet}
            {live(move || (!due.get()).then(|| view! {
                <Button label=words::NEW_READING on_press=move || on_again.run(()) />
            }.into_any()).into_any())}
        </Section>
    }
    .into_any()
}

/// The cautions that go with it, and what others would do.
pub(super) fn beware(answer: &Answer) -> AnyView {
    let milk = asks_for_milk(answer);
    let dissent = answer.dissent.map(words::dissent);
    view! {
        {dissent.map(|dissent| view! { <p class="small-print">{dissent}</p> }.into_any())}
        {milk.then(|| view! { <Caution lines=tube() /> }.into_any())}
    }
    .into_any()
}

/// The readings before the last, newest first.
pub(super) fn earlier(hand: Hand, case: &Case, all: bool) -> AnyView {
    let system = untrack(|| hand.farm.system());
    let shown = if all { case.readings.len() } else { case.readings.len().saturating_sub(1) };
    if shown == 0 {
        return ().into_any();
    }
    let lines: Vec<AnyView> = case.readings[..shown]
        .iter()
        .rev()
        .map(|reading| {
            let line = words::reading(
                &clock(reading.at),
                &temperature_both(reading.temperature, system),
                reading.temperature,
            );
            view! { <li>{line}</li> }.into_any()
        })
        .collect();
    view! {
        <Section title=words::EARLIER>
            <ul class="readings" role="list">{lines}</ul>
        </Section>
    }
    .into_any()
}

/// Asks a lamb without a record for its weight, so that the volume can be told.
#[component]
pub(super) fn WeightOfIt(
    /// Where the answer goes.
    hand: Hand,
    /// What is known so far.
    known: Option<Mass>,
) -> impl IntoView {
    let unit = RwSignal::new(untrack(|| hand.farm.system()));
    let text = known.map(|weight| match unit.get_untracked() {
        System::Metric => crate::words::common::number(weight.as_kilograms(), 2),
        System::Us => crate::words::common::number(weight.as_pounds(), 1),
    });
    let value = RwSignal::new(text.unwrap_or_default());
    let error = Memo::new(move |_| {
        let (typed, unit) = (value.get(), unit.get());
        if typed.trim().is_empty() {
            return Ok(None);
        }
        match Mass::parse(&typed, unit) {
            Err(wrong) => Err(errors::typed(&wrong, errors::Field::Mass, unit)),
            Ok(weight) => {
                Mass::ON_THE_BOTTLE.check(weight).map(Some).map_err(|wrong| errors::weight(&wrong, unit))
            }
        }
    });
    Effect::new(move |_| match error.get() {
        Ok(weight) => hand.weight(weight),
        Err(_) => hand.weight(None),
    });
    let said = Signal::derive(move || error.get().err().unwrap_or_default());
    view! {
        <Remark text=words::WEIGHT_FOR_VOLUME />
        <WeightField value=value system=unit error=said />
    }
}
