//! The cold lamb: at most four taps from the thermometer to what to do, in order, for a lamb with a record or without.
//!
//! Every answer is kept as it is given, in the book or on this phone, so that the aid goes on where it was left.

mod answer;
mod ask;
mod case;
mod draft;
mod hand;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, LambId};
use yeanling_core::flock::Reading;
use yeanling_core::reckon::warming::{self, Look};
use yeanling_core::watch::hold_milk;

use answer::WeightOfIt;
use ask::{HeadAndSwallow, HowOld, HowWarm};
use case::{Able, Age, Case, asks_for_milk};
use hand::{Asks, Hand};

use crate::farm::use_farm;
use crate::parts::{Button, Empty, LinkButton, Page, Said, Title};
use crate::pieces::{MouthSheet, Standing, Top, VetSheet, WeightSheet};
use crate::route::Screen;
use crate::words::{
    animals, cautions, cold_lamb as words, cold_lamb::courses, danger, figures, frame, help, lamb as of_lamb,
};

/// How far the aid has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stage {
    Gone,
    Dead,
    HowWarm,
    HowOld,
    HeadAndSwallow,
    Answer,
}

/// The cold lamb.
#[component]
pub(crate) fn ColdLamb(
    /// Which lamb; none without a record.
    lamb: Option<LambId>,
) -> impl IntoView {
    let farm = use_farm();
    let hand = Hand::new(farm, lamb);
    let case = Memo::new(move |_| hand.case());
    let again = RwSignal::new(false);
    let lives = Memo::new(move |_| {
        lamb.is_none_or(|id| farm.with(|ground| ground.flock.lamb(id).is_some_and(|lamb| lamb.lives())))
    });
    let stage = Memo::new(move |_| match case.get() {
        None => Stage::Gone,
        Some(_) if !lives.get() => Stage::Dead,
        Some(case) => stage(&case, farm.now()),
    });
    let sub = Signal::derive(move || match lamb {
        None => words::NO_RECORD.to_owned(),
        Some(id) => {
            let now = farm.now();
            farm.with(|ground| {
                let flock = &ground.flock;
                flock
                    .lamb(id)
                    .map(|lamb| words::whose(&animals::lamb(flock, lamb), lamb, now, flock.practice.system))
                    .unwrap_or_default()
            })
        }
    });
    // What a finger in its mouth said, until a thermometer says more.
    let mouth = Memo::new(move |_| {
        let system = farm.system();
        farm.with(|ground| {
            let lamb = ground.flock.lamb(lamb?)?;
            let felt = lamb.mouth.last()?;
            let read = lamb.temperatures.last().is_some_and(|read| read.at >= felt.at);
            let line = danger::mouth_line(felt.mouth, felt.suck);
            let held = hold_milk(lamb).map(|hold| of_lamb::held(hold, system));
            (!read).then(|| [Some(line), held].into_iter().flatten().collect::<Vec<_>>().join(". "))
        })
    });
    let back = match lamb {
        Some(id) => (Screen::Lamb(id), of_lamb::BACK.to_owned()),
        None => (Screen::Figures, figures::TITLE.to_owned()),
    };
    view! {
        <Page>
            <Top back=back />
            <Title text=words::TITLE>
                <Said text=sub />
            </Title>
            <Standing />
            {live(move || match stage.get() {
                Stage::Gone => view! { <Empty text=frame::GONE /> }.into_any(),
                Stage::Dead => view! { <Empty text=of_lamb::DEAD /> }.into_any(),
                Stage::HowWarm => view! {
                    <HowWarm hand=hand title=words::HOW_WARM on_read=move || again.set(false) />
                    {live(move || case.get().map(|case| answer::earlier(hand, &case, true)).into_any())}
                }
                .into_any(),
                Stage::HowOld => view! { <Reading case=case /> <HowOld hand=hand /> {another(hand, again)} }.into_any(),
                Stage::HeadAndSwallow => view! {
                    <Reading case=case />
                    <HeadAndSwallow hand=hand />
                    {another(hand, again)}
                }
                .into_any(),
                Stage::Answer => view! { <Answered hand=hand case=case again=again /> }.into_any(),
            })}
            {live(move || (lamb.is_some() && stage.get() == Stage::HowWarm).then(|| view! {
                {live(move || mouth.get().map(|line| view! { <p class="lead"><Said text=line /></p> }).into_any())}
                <Button label=danger::MOUTH on_press=move || hand.ask(Asks::Mouth) />
            }.into_any()).into_any())}
            {live(move || sheet(hand))}
            {live(move || (lamb.is_none() && stage.get() != Stage::HowWarm).then(|| view! {
                <Button label=words::START_OVER on_press=move || hand.start_over() />
            }.into_any()).into_any())}
            {live(move || (stage.get() == Stage::HowWarm).then(how_to_read).into_any())}
            {care()}
            <p class="small-print">{cautions::GENERAL}</p>
        </Page>
    }
}

/// How its temperature is taken, folded away for those who know.
fn how_to_read() -> AnyView {
    fold(courses::THERMOMETER, &courses::THERMOMETER_STEPS, courses::THERMOMETER_SOURCE)
}

/// What whoever takes it into the house has to know.
fn care() -> AnyView {
    fold(help::HYGIENE, cautions::HYGIENE, cautions::HYGIENE_SOURCE)
}

fn fold(title: &'static str, lines: &[&'static str], source: &'static str) -> AnyView {
    let lines: Vec<AnyView> =
        lines.iter().map(|line| view! { <li><Said text=*line /></li> }.into_any()).collect();
    view! {
        <details class="fold">
            <summary>{title}</summary>
            <ol class="reading">{lines}</ol>
            <p class="small-print">{source}</p>
        </details>
    }
    .into_any()
}

/// The sheet that lies open.
fn sheet(hand: Hand) -> AnyView {
    let close = move || hand.ask(Asks::Nothing);
    match (hand.asks(), hand.lamb) {
        (Asks::Vet, Some(lamb)) => view! { <VetSheet animal=Animal::Lamb(lamb) on_close=close /> }.into_any(),
        (Asks::Mouth, Some(lamb)) => view! { <MouthSheet lamb=lamb on_close=close /> }.into_any(),
        (Asks::Nothing, _) | (Asks::Vet | Asks::Mouth, None) => ().into_any(),
    }
}

/// Another reading, under a question that was not answered: it does not wait for the answer.
fn another(hand: Hand, again: RwSignal<bool>) -> AnyView {
    live(move || {
        if again.get() {
            view! { <HowWarm hand=hand title=words::HOW_WARM_NOW on_read=move || again.set(false) /> }
                .into_any()
        } else {
            view! { <Button label=words::NEW_READING on_press=move || again.set(true) /> }.into_any()
        }
    })
}

fn stage(case: &Case, now: yeanling_core::units::Moment) -> Stage {
    if case.stale(now) {
        Stage::HowWarm
    } else if case.age == Age::Ask {
        Stage::HowOld
    } else if case.able == Able::Ask {
        Stage::HeadAndSwallow
    } else {
        Stage::Answer
    }
}

/// The reading that was just given, over the next question.
#[component]
fn Reading(case: Memo<Option<Case>>) -> impl IntoView {
    let farm = use_farm();
    let text = Signal::derive(move || {
        let system = farm.system();
        let last = case.with(|case| case.as_ref().and_then(Case::last));
        last.map(|last| words::just_read(last.temperature, system)).unwrap_or_default()
    });
    view! { <p class="lead"><Said text=text /></p> }
}

/// What to do, and the next reading once it is time.
#[component]
fn Answered(hand: Hand, case: Memo<Option<Case>>, again: RwSignal<bool>) -> impl IntoView {
    let farm = use_farm();
    let weigh = RwSignal::new(false);
    let answer = Memo::new(move |_| case.with(|case| case.as_ref().and_then(Case::answer)));
    let due = Memo::new(move |_| {
        let last = case.with(|case| case.as_ref().and_then(Case::last));
        let wait = answer.with(|answer| answer.as_ref().and_then(|answer| answer.look_again));
        let over = |last: Reading| {
            wait.is_some_and(|wait| matches!(warming::look_after(last.at, wait, farm.now()), Look::Now(_)))
        };
        last.is_some_and(over)
    });
    let form = Memo::new(move |_| again.get() || due.get());
    let milk = Memo::new(move |_| answer.with(|answer| answer.as_ref().is_some_and(asks_for_milk)));
    let weightless =
        Memo::new(move |_| case.with(|case| case.as_ref().is_none_or(|case| case.weight.is_none())));
    let part = move |show: fn(Hand, &Case, &yeanling_core::reckon::cold_lamb::Answer) -> AnyView| {
        live(move || {
            let (case, answer) = (case.get(), answer.get());
            case.zip(answer).map(|(case, answer)| show(hand, &case, &answer)).into_any()
        })
    };
    let ask_again = Callback::new(move |()| again.set(true));
    view! {
        {live(move || form.get().then(|| view! {
            <HowWarm hand=hand title=words::HOW_WARM_NOW on_read=move || again.set(false) />
        }.into_any()).into_any())}
        {part(answer::what_to_do)}
        {live(move || match (milk.get(), hand.lamb) {
            (false, _) => ().into_any(),
            (true, None) => {
                let known = case.with_untracked(|case| case.as_ref().and_then(|case| case.weight));
                view! { <WeightOfIt hand=hand known=known /> }.into_any()
            }
            (true, Some(_)) => live(move || weightless.get().then(|| view! {
                <Button label=words::WEIGH_IT on_press=move || weigh.set(true) />
            }.into_any()).into_any()),
        })}
        {part(answer::done)}
        {live(move || {
            let (case, answer) = (case.get(), answer.get());
            case.zip(answer).map(|(case, answer)| answer::look_again(hand, &case, &answer, ask_again)).into_any()
        })}
        {part(|_, _, answer| answer::beware(answer))}
        {part(|hand, case, _| answer::earlier(hand, case, false))}
        {hand.lamb.map(|id| view! {
            <LinkButton href=Screen::Lamb(id).hash() label=words::TO_THE_LAMB />
            {live(move || weigh.get().then(|| view! {
                <WeightSheet lamb=id on_close=move || weigh.set(false) />
            }.into_any()).into_any())}
        }.into_any())}
    }
}
