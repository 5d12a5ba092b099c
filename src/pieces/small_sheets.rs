//! The small sheets in which one thing is noted: vigor, belly, a few words, a death.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Belly, Cause, Event, LambId, Life, VigorScale};
use yeanling_core::practice::{Limits, VigorInUse};
use yeanling_core::reckon::vigor::FourGrade;

use super::whose::whose;
use super::{TenPointSheet, why_text};
use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Sheet, Weight, WhyButton};
use crate::words::{frame, lamb as words, life, noted, refusals, why};

/// Scores vigor.
#[component]
pub(crate) fn VigorSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let choose = move |score: u8| {
        if farm.tap(Event::VigorScored { lamb, scale: VigorScale::FourGrade, score }).is_some() {
            on_close.run(());
        }
    };
    let practice = untrack(|| farm.practice());
    if practice.vigor == VigorInUse::TenPoint {
        return view! { <TenPointSheet lamb=lamb on_close=on_close /> }.into_any();
    }
    view! {
        <Sheet title=words::VIGOR_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <p>{words::VIGOR_SCALE}</p>
            <Choices
                label=words::VIGOR_ASK
                options=vigor_choices(&practice.limits)
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
            <WhyButton why=why_text(why::vigor(FourGrade::One, &practice.limits)) />
        </Sheet>
    }
    .into_any()
}

/// Returns the four grades with what they look like, and what each asks for in the farm's limits.
pub(crate) fn vigor_choices(limits: &Limits) -> Vec<Choice<u8>> {
    [FourGrade::One, FourGrade::Two, FourGrade::Three, FourGrade::Four]
        .into_iter()
        .map(|grade| {
            let label = format!("{} · {}", grade.number(), why::vigor_meaning(grade));
            Choice::new(grade.number(), label).note(why::vigor_asks(grade, limits))
        })
        .collect()
}

/// Feels the belly.
#[component]
pub(crate) fn BellySheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let choose = move |belly: Belly| {
        if farm.tap(Event::BellyFelt { lamb, belly }).is_some() {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::BELLY_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <Choices
                label=words::BELLY_ASK
                options=belly_choices()
                chosen=Signal::stored(None)
                on_choose=choose
            />
            <p>{words::SIGNS}</p>
        </Sheet>
    }
}

/// Returns both answers.
pub(crate) fn belly_choices() -> Vec<Choice<Belly>> {
    vec![Choice::new(Belly::Full, words::FULL), Choice::new(Belly::Hollow, words::HOLLOW)]
}

/// Notes a tag.
#[component]
pub(crate) fn TagSheet(animal: Animal, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let event = |animal, tag| Event::Tagged { animal, tag };
    view! { <TextSheet title=words::TAG_ASK label=words::TAG_LABEL event=event animal=animal on_close=on_close /> }
}

/// Notes a mark of paint.
#[component]
pub(crate) fn PaintSheet(animal: Animal, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let event = |animal, mark| Event::Life(Life::Marked { animal, mark });
    view! { <TextSheet title=life::MARK_ASK label=life::MARK_LABEL event=event animal=animal on_close=on_close /> }
}

/// Notes what was found in a dead animal.
#[component]
pub(crate) fn ExaminedSheet(animal: Animal, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let event = |animal, finding| Event::Life(Life::Examined { animal, finding });
    view! {
        <TextSheet
            title=life::EXAMINED_ASK
            label=life::EXAMINED_LABEL
            long=true
            event=event
            animal=animal
            on_close=on_close
        />
    }
}

/// Notes a remark.
#[component]
pub(crate) fn RemarkSheet(animal: Animal, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let event = |animal, text| Event::Remarked { animal, text };
    view! {
        <TextSheet
            title=words::REMARK_ASK
            label=words::REMARK_LABEL
            long=true
            event=event
            animal=animal
            on_close=on_close
        />
    }
}

/// Notes a few words.
#[component]
fn TextSheet(
    /// The heading.
    #[prop(into)]
    title: String,
    /// What to write.
    #[prop(into)]
    label: String,
    /// Whether there is room for several lines.
    #[prop(optional)]
    long: bool,
    /// Makes the fact of the words.
    event: fn(Animal, String) -> Event,
    /// Whom it is about.
    animal: Animal,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let value = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || {
        let text = value.get_untracked().trim().to_owned();
        match farm.note(event(animal, text)) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    let kind = if long { FieldKind::Long } else { FieldKind::Text };
    view! {
        <Sheet title=title whose=whose(animal) on_close=on_close>
            <Field label=label value=value kind=kind error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Notes a death.
#[component]
pub(crate) fn DeathSheet(
    /// Who died.
    animal: Animal,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let choose = move |cause: Cause| {
        if farm.tap(Event::Died { animal, cause }).is_some() {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::DIED_ASK whose=whose(animal) on_close=on_close>
            <Choices
                label=words::DIED_ASK
                options=cause_choices()
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
        </Sheet>
    }
}

/// Returns every cause.
pub(crate) fn cause_choices() -> Vec<Choice<Cause>> {
    noted::CAUSES.iter().map(|cause| Choice::new(*cause, noted::cause(*cause))).collect()
}
