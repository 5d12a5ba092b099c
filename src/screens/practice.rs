//! The farm's choices, each noted in the book as it is made, and the look of this phone, which is not.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::Event;
use yeanling_core::practice::{self, BottleTable, DayRule, Housing, Limit, Limits};
use yeanling_core::units::System;

use crate::farm::{Look, use_farm};
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Page, Section, Title};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::{errors, more, practice as words, refusals};

/// The farm's choices.
#[component]
pub(crate) fn Practice() -> impl IntoView {
    view! {
        <Page>
            <Top back=(Screen::More, more::TITLE.to_owned()) />
            <Title text=words::TITLE>{words::SUB}</Title>
            <Standing />
            <FarmName />
            <Rules />
            <LimitFields />
            <LookChoice />
        </Page>
    }
}

/// What the farm is called.
#[component]
fn FarmName() -> impl IntoView {
    let farm = use_farm();
    let known = Memo::new(move |_| farm.practice().farm_name);
    let typed = RwSignal::new(String::new());
    // What is typed follows the book when the book changes, as after an undo.
    Effect::new(move |_| typed.set(known.get()));
    let error = RwSignal::new(String::new());
    let changed = Memo::new(move |_| typed.with(|typed| typed.trim() != known.get()));
    let save = move || {
        let name = typed.get_untracked().trim().to_owned();
        if name == known.get_untracked() {
            return;
        }
        match farm.note(Event::Chose(practice::Choice::FarmName(name))) {
            Ok(_) => error.set(String::new()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    view! {
        <Section title=words::FARM>
            <Field label=words::FARM_NAME value=typed hint=words::FARM_NAME_SUB error=error />
            {live(move || changed.get().then(|| view! { <Button label=words::SAVE_NAME on_press=save /> }).into_any())}
        </Section>
    }
}

/// Units, first milk, housing, bottle: one tap each.
#[component]
fn Rules() -> impl IntoView {
    let farm = use_farm();
    let system = Signal::derive(move || Some(farm.system()));
    let rule = Signal::derive(move || Some(farm.practice().day_rule));
    let housing = Signal::derive(move || Some(farm.practice().housing));
    let table = Signal::derive(move || Some(farm.practice().bottle_table));
    let choose = move |choice: practice::Choice| {
        farm.tap(Event::Chose(choice));
    };
    let systems =
        [System::Metric, System::Us].map(|system| Choice::new(system, words::system(system))).to_vec();
    let rules = [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent]
        .map(|rule| {
            let (name, note) = words::day_rule(rule);
            Choice::new(rule, name).note(note)
        })
        .to_vec();
    let housings = [Housing::Housed, Housing::Outdoors]
        .map(|housing| Choice::new(housing, words::housing(housing)))
        .to_vec();
    let tables = [BottleTable::VetSupplier, BottleTable::UsHandbook]
        .map(|table| {
            let (name, note) = words::bottle_table(table);
            Choice::new(table, name).note(note)
        })
        .to_vec();
    view! {
        <Section title=words::UNITS>
            <Choices
                label=words::UNITS
                options=systems
                chosen=system
                on_choose=move |new| {
                    if system.get_untracked() != Some(new) {
                        choose(practice::Choice::System(new));
                    }
                }
            />
        </Section>
        <Section title=words::FIRST_MILK>
            <Choices
                label=words::FIRST_MILK
                options=rules
                chosen=rule
                on_choose=move |new| {
                    if rule.get_untracked() != Some(new) {
                        choose(practice::Choice::DayRule(new));
                    }
                }
                stacked=true
            />
        </Section>
        <Section title=words::NEWBORNS>
            <Choices
                label=words::NEWBORNS
                options=housings
                chosen=housing
                on_choose=move |new| {
                    if housing.get_untracked() != Some(new) {
                        choose(practice::Choice::Housing(new));
                    }
                }
            />
        </Section>
        <Section title=words::BOTTLE>
            <Choices
                label=words::BOTTLE
                options=tables
                chosen=table
                on_choose=move |new| {
                    if table.get_untracked() != Some(new) {
                        choose(practice::Choice::BottleTable(new));
                    }
                }
                stacked=true
            />
        </Section>
    }
}

/// Every limit, in the order in which a lamb meets them.
const LIMITS: [Limit; 5] = [Limit::Up, Limit::Help, Limit::Red, Limit::LastCall, Limit::NavelAgain];

const fn minutes(limits: &Limits, limit: Limit) -> u16 {
    match limit {
        Limit::Up => limits.up_minutes,
        Limit::Help => limits.help_minutes,
        Limit::Red => limits.red_minutes,
        Limit::LastCall => limits.last_call_minutes,
        Limit::NavelAgain => limits.navel_again_minutes,
    }
}

/// One limit as it is typed, and what is wrong with it.
#[derive(Clone, Copy)]
struct Typed {
    limit: Limit,
    text: RwSignal<String>,
    error: RwSignal<String>,
}

impl Typed {
    /// Returns the minutes, or shows what is wrong.
    fn read(self) -> Option<u16> {
        let text = self.text.get_untracked().trim().to_owned();
        let minutes = text.parse().ok();
        self.error.set(match minutes {
            Some(_) => String::new(),
            None => words::not_minutes(&text, minutes_usual(self.limit)),
        });
        minutes
    }
}

fn minutes_usual(limit: Limit) -> u16 {
    minutes(&Limits::default(), limit)
}

/// When the watch speaks up: five fields, saved together. What is wrong stays as it was typed.
#[component]
fn LimitFields() -> impl IntoView {
    let farm = use_farm();
    let known = Memo::new(move |_| farm.practice().limits);
    let fields = LIMITS.map(|limit| Typed {
        limit,
        text: RwSignal::new(String::new()),
        error: RwSignal::new(String::new()),
    });
    Effect::new(move |_| {
        let limits = known.get();
        for field in fields {
            field.text.set(minutes(&limits, field.limit).to_string());
        }
    });
    let said = RwSignal::new(String::new());
    let save = move || {
        said.set(String::new());
        let [up, help, red, last_call, navel_again] = fields.map(Typed::read);
        let (Some(up), Some(help), Some(red), Some(last_call), Some(navel_again)) =
            (up, help, red, last_call, navel_again)
        else {
            return;
        };
        let limits = Limits {
            up_minutes: up,
            help_minutes: help,
            red_minutes: red,
            last_call_minutes: last_call,
            navel_again_minutes: navel_again,
        };
        if let Err(wrong) = limits.checked() {
            if let Some(field) = fields.iter().find(|field| field.limit == wrong.limit) {
                field.error.set(errors::limit(&wrong));
            }
        } else if limits == known.get_untracked() {
            said.set(words::UNCHANGED.to_owned());
        } else if farm.tap(Event::Chose(practice::Choice::Limits(limits))).is_some() {
            said.set(words::SAVED.to_owned());
        }
    };
    view! {
        <Section title=words::LIMITS>
            <p class="small-print">{words::LIMITS_SUB}</p>
            {fields
                .map(|field| {
                    view! {
                        <Field
                            label=words::limit(field.limit)
                            value=field.text
                            kind=FieldKind::Whole
                            hint=words::usual(minutes_usual(field.limit))
                            error=field.error
                            on_input=move |_: String| said.set(String::new())
                        >
                            <span>{words::MINUTES}</span>
                        </Field>
                    }
                })
                .collect_view()}
            <Button label=words::SAVE_LIMITS on_press=save />
            <p role="status">{said}</p>
        </Section>
    }
}

/// Day or night, on this phone.
#[component]
fn LookChoice() -> impl IntoView {
    let farm = use_farm();
    let looks = vec![
        Choice::new(Look::Phone, words::LOOK_PHONE),
        Choice::new(Look::Day, words::LOOK_DAY),
        Choice::new(Look::Night, words::LOOK_NIGHT),
    ];
    view! {
        <Section title=words::LOOK>
            <Choices
                label=words::LOOK
                options=looks
                chosen=Signal::derive(move || Some(farm.look()))
                on_choose=move |look| farm.choose_look(look)
            />
            <p class="small-print">{words::LOOK_SUB}</p>
        </Section>
    }
}
