//! The three questions of the aid, one at a time: how warm, how old, whether it holds its head up and swallows.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::units::{System, Temperature};

use super::case::{Able, Age};
use super::hand::Hand;
use crate::farm::use_farm;
use crate::parts::{
    BigButton, Button, Choice, Choices, Keypad, Notice, NoticeKind, Readout, Remark, Section,
};
use crate::words::{cold_lamb as words, errors};

/// What is wrong with what was typed, and the scale on which it would make sense.
#[derive(Clone, Debug, PartialEq)]
struct Wrong {
    text: String,
    other: Option<System>,
}

/// Asks how warm it is. What is typed stays until it is a reading.
#[component]
pub(super) fn HowWarm(
    /// Where the answer goes.
    hand: Hand,
    /// What stands over it.
    title: &'static str,
    /// Called once a reading is in.
    #[prop(into)]
    on_read: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let unit = RwSignal::new(untrack(|| farm.system()));
    let value = RwSignal::new(String::new());
    let wrong = RwSignal::new(None::<Wrong>);
    let read = move |system: System| {
        let typed = value.get_untracked();
        let checked = match Temperature::parse(&typed, system) {
            Err(error) => Err(Wrong {
                text: errors::typed(&error, errors::Field::LambTemperature, system),
                other: None,
            }),
            Ok(read) => read
                .in_a_lamb(system)
                .map_err(|error| Wrong { text: errors::lamb_temperature(&error), other: error.reads_like }),
        };
        match checked.and_then(|read| hand.read(read).map_err(|text| Wrong { text, other: None })) {
            Ok(()) => {
                wrong.set(None);
                value.set(String::new());
                on_read.run(());
            }
            Err(is) => wrong.set(Some(is)),
        }
    };
    let units = vec![Choice::new(System::Metric, "°C"), Choice::new(System::Us, "°F")];
    let readout = Signal::derive(move || {
        let typed = value.get();
        if typed.is_empty() { "–".to_owned() } else { typed }
    });
    view! {
        <Section title=title>
            <Remark text=words::NORMAL />
            <Keypad value=value point='.' most=5 on_change=move |_: String| wrong.set(None)>
                <Readout label=words::TEMPERATURE value=readout />
                <Choices
                    label=words::UNIT
                    options=units
                    chosen=Signal::derive(move || Some(unit.get()))
                    on_choose=move |new| {
                        unit.set(new);
                        wrong.set(None);
                    }
                    snug=true
                />
            </Keypad>
            {live(move || wrong.get().map(|is| {
                let typed = value.get_untracked();
                let take = is.other.map(|other| {
                    let label = words::take_as(&typed, other);
                    let press = move || {
                        unit.set(other);
                        read(other);
                    };
                    view! { <Button label=label on_press=press /> }.into_any()
                });
                view! {
                    <Notice kind=NoticeKind::Bad>
                        <p>{is.text}</p>
                        {take}
                    </Notice>
                }
                .into_any()
            }).into_any())}
            <BigButton label=words::READ on_press=move || read(unit.get_untracked()) />
        </Section>
    }
}

/// Asks how old it is, where no record knows.
#[component]
pub(super) fn HowOld(
    /// Where the answer goes.
    hand: Hand,
) -> impl IntoView {
    let ages = vec![
        Choice::new(Age::UpToFive, words::UP_TO_FIVE),
        Choice::new(Age::OverFive, words::OVER_FIVE),
        Choice::new(Age::Unknown, words::AGE_UNKNOWN).note(words::AGE_UNKNOWN_SUB),
    ];
    view! {
        <Section title=words::HOW_OLD>
            <Choices
                label=words::HOW_OLD
                options=ages
                chosen=Signal::stored(None)
                on_choose=move |age| hand.age(age)
                stacked=true
            />
        </Section>
    }
}

/// Asks whether it holds its head up and swallows.
#[component]
pub(super) fn HeadAndSwallow(
    /// Where the answer goes.
    hand: Hand,
) -> impl IntoView {
    let answers = vec![
        Choice::new(Able::Yes, words::ABLE),
        Choice::new(Able::No, words::NOT_ABLE),
        Choice::new(Able::NotSure, words::NOT_SURE).note(words::NOT_SURE_SUB),
    ];
    view! {
        <Section title=words::HEAD_AND_SWALLOW>
            <Remark text=words::HOW_TO_TRY />
            <Choices
                label=words::HEAD_AND_SWALLOW
                options=answers
                chosen=Signal::stored(None)
                on_choose=move |able| hand.able(able)
                stacked=true
            />
        </Section>
    }
}
