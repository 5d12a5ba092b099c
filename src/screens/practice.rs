//! The farm's choices, each noted in the book as it is made, and the look of this phone, which is not.

mod care;
mod keep;
mod milk;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::Event;
use yeanling_core::practice::{
    self, BottleTable, DayRule, Housing, LaborLimits, Limit, LimitError, Limits, PenStay, Practice as Chosen,
};
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
            <milk::Milk />
            <care::Care />
            <LimitFields group=NEWBORN />
            <LimitFields group=LABOR />
            <LimitFields group=STAY />
            <keep::Keep />
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

/// Limits that are read and saved together.
#[derive(Clone, Copy)]
struct Group {
    title: &'static str,
    sub: &'static str,
    unit: &'static str,
    save: &'static str,
    limits: &'static [Limit],
    /// Makes the choice of the figures, in the order of `limits`, or says which is wrong.
    make: fn(&[u16]) -> Result<practice::Choice, LimitError>,
}

/// In the order in which a lamb meets them.
const NEWBORN: Group = Group {
    title: words::LIMITS,
    sub: words::LIMITS_SUB,
    unit: words::MINUTES,
    save: words::SAVE_LIMITS,
    limits: &[Limit::Up, Limit::Help, Limit::Red, Limit::LastCall, Limit::NavelAgain],
    make: |figures| {
        let mut all = Limits::default();
        if let [up, help, red, last_call, navel_again] = figures {
            (all.up_minutes, all.help_minutes, all.red_minutes) = (*up, *help, *red);
            (all.last_call_minutes, all.navel_again_minutes) = (*last_call, *navel_again);
        }
        all.checked().map(practice::Choice::Limits)
    },
};

/// In the order of a night.
const LABOR: Group = Group {
    title: words::LABOR,
    sub: words::LABOR_SUB,
    unit: words::MINUTES,
    save: words::SAVE_LIMITS,
    limits: &[
        Limit::Look,
        Limit::Restless,
        Limit::HandCheck,
        Limit::StepIn,
        Limit::Progress,
        Limit::Neck,
        Limit::PutRight,
        Limit::NextLamb,
        Limit::NextCheck,
        Limit::AfterbirthAsk,
        Limit::AfterbirthLate,
        Limit::AfterbirthVet,
    ],
    make: |figures| {
        let mut all = LaborLimits::default();
        if let [look, restless, hand, step_in, progress, neck, put_right, next, check, ask, late, vet] =
            figures
        {
            (all.look_minutes, all.restless_minutes) = (*look, *restless);
            (all.hand_check_minutes, all.step_in_minutes) = (*hand, *step_in);
            (all.progress_minutes, all.neck_minutes, all.put_right_minutes) = (*progress, *neck, *put_right);
            (all.next_lamb_minutes, all.next_check_minutes) = (*next, *check);
            (all.afterbirth_ask_minutes, all.afterbirth_late_minutes) = (*ask, *late);
            all.afterbirth_vet_minutes = *vet;
        }
        all.checked().map(practice::Choice::LaborLimits)
    },
};

/// By how many lambs there are.
const STAY: Group = Group {
    title: words::STAY,
    sub: words::STAY_SUB,
    unit: words::HOURS,
    save: words::SAVE_STAY,
    limits: &[Limit::StaySingle, Limit::StayTwins, Limit::StayMore],
    make: |figures| {
        let mut all = PenStay::default();
        if let [single, twins, more] = figures {
            (all.single_hours, all.twins_hours, all.more_hours) = (*single, *twins, *more);
        }
        all.checked().map(practice::Choice::PenStay)
    },
};

fn figure(of: &Chosen, limit: Limit) -> u16 {
    match limit {
        Limit::Up => of.limits.up_minutes,
        Limit::Help => of.limits.help_minutes,
        Limit::Red => of.limits.red_minutes,
        Limit::LastCall => of.limits.last_call_minutes,
        Limit::NavelAgain => of.limits.navel_again_minutes,
        Limit::Look => of.labor.look_minutes,
        Limit::Restless => of.labor.restless_minutes,
        Limit::HandCheck => of.labor.hand_check_minutes,
        Limit::StepIn => of.labor.step_in_minutes,
        Limit::Progress => of.labor.progress_minutes,
        Limit::Neck => of.labor.neck_minutes,
        Limit::PutRight => of.labor.put_right_minutes,
        Limit::NextLamb => of.labor.next_lamb_minutes,
        Limit::NextCheck => of.labor.next_check_minutes,
        Limit::AfterbirthAsk => of.labor.afterbirth_ask_minutes,
        Limit::AfterbirthLate => of.labor.afterbirth_late_minutes,
        Limit::AfterbirthVet => of.labor.afterbirth_vet_minutes,
        Limit::StaySingle => of.stay.single_hours,
        Limit::StayTwins => of.stay.twins_hours,
        Limit::StayMore => of.stay.more_hours,
    }
}

fn usual(limit: Limit) -> u16 {
    figure(&Chosen::default(), limit)
}

/// One limit as it is typed, and what is wrong with it.
#[derive(Clone, Copy)]
struct Typed {
    limit: Limit,
    text: RwSignal<String>,
    error: RwSignal<String>,
}

impl Typed {
    fn new(limit: Limit) -> Self {
        Self { limit, text: RwSignal::new(String::new()), error: RwSignal::new(String::new()) }
    }

    /// Returns the figure, or shows what is wrong.
    fn read(self) -> Option<u16> {
        let text = self.text.get_untracked().trim().to_owned();
        let figure = text.parse().ok();
        self.error.set(match figure {
            Some(_) => String::new(),
            None => words::not_whole(&text, usual(self.limit)),
        });
        figure
    }
}

/// A group of limits, saved together. What is wrong stays as it was typed.
#[component]
fn LimitFields(group: Group) -> impl IntoView {
    let farm = use_farm();
    let fields: Vec<Typed> = group.limits.iter().copied().map(Typed::new).collect();
    let shown = fields.clone();
    Effect::new(move |_| {
        let practice = farm.practice();
        for field in &shown {
            field.text.set(figure(&practice, field.limit).to_string());
        }
    });
    let said = RwSignal::new(String::new());
    let typed = fields.clone();
    let save = move || {
        said.set(String::new());
        let figures: Vec<u16> = typed.iter().filter_map(|field| field.read()).collect();
        if figures.len() < typed.len() {
            return;
        }
        let practice = untrack(|| farm.practice());
        let same = typed.iter().zip(&figures).all(|(field, new)| figure(&practice, field.limit) == *new);
        match (group.make)(&figures) {
            Err(wrong) => {
                if let Some(field) = typed.iter().find(|field| field.limit == wrong.limit) {
                    field.error.set(errors::limit(&wrong));
                }
            }
            Ok(_) if same => said.set(words::UNCHANGED.to_owned()),
            Ok(choice) => {
                if farm.tap(Event::Chose(choice)).is_some() {
                    said.set(words::SAVED.to_owned());
                }
            }
        }
    };
    view! {
        <Section title=group.title>
            <p class="small-print">{group.sub}</p>
            {fields
                .into_iter()
                .map(|field| {
                    view! {
                        <Field
                            label=words::limit(field.limit)
                            value=field.text
                            kind=FieldKind::Whole
                            hint=Signal::derive(move || {
                                words::usual(field.text.get().trim().parse().ok(), usual(field.limit), group.unit)
                            })
                            error=field.error
                            on_input=move |_: String| said.set(String::new())
                        >
                            <span>{group.unit}</span>
                        </Field>
                    }
                })
                .collect_view()}
            <Button label=group.save on_press=save />
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
