//! A weight as it is typed: unit beside it, the error under it, and the question whether pounds were meant.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::reckon::gain::odd;
use yeanling_core::units::{Mass, System, TimeDelta};
use yeanling_core::watch::allow;

use super::whose::whose;
use crate::farm::{Farm, use_farm};
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Notice, NoticeKind, Sheet, Weight};
use crate::words::common::{mass, number, short_date};
use crate::words::{errors, frame, lamb as words, refusals, weighing};

/// What was made of a typed weight.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Weighed {
    /// Nothing is typed.
    Nothing,
    /// A weight.
    Good(Mass),
    /// A birth weight so heavy that the other unit may have been meant: as typed, and as meant.
    Ask(Mass, Mass),
    /// What is wrong, in words.
    Wrong(String),
}

impl Weighed {
    /// Reads a birth weight. Typed as kilograms and from 8 kg on, it is asked about.
    pub(crate) fn at_birth(text: &str, system: System) -> Self {
        if text.trim().is_empty() {
            return Self::Nothing;
        }
        let typed = match Mass::parse(text, system) {
            Ok(typed) => typed,
            Err(error) => return Self::Wrong(errors::typed(&error, errors::Field::Mass, system)),
        };
        let meant = Mass::parse(&number(typed.as_kilograms(), 3), System::Us).ok();
        let likely = meant.filter(|meant| {
            typed >= Mass::ASK_FROM && system == System::Metric && Mass::AT_BIRTH.check(*meant).is_ok()
        });
        match (Mass::AT_BIRTH.check(typed), likely) {
            (Ok(typed), Some(meant)) => Self::Ask(typed, meant),
            (Ok(typed), None) => Self::Good(typed),
            (Err(error), _) => Self::Wrong(errors::weight(&error, system)),
        }
    }
}

/// A field for a weight with the choice of its unit.
#[component]
pub(crate) fn WeightField(
    /// What was typed, exactly.
    value: RwSignal<String>,
    /// The unit it is read in.
    system: RwSignal<System>,
    /// What is wrong with it.
    #[prop(into)]
    error: Signal<String>,
    /// Which weight, where there are several.
    #[prop(default = words::WEIGHT)]
    label: &'static str,
) -> impl IntoView {
    let units = vec![Choice::new(System::Metric, "kg"), Choice::new(System::Us, "lb")];
    let chosen = Signal::derive(move || Some(system.get()));
    let unit = view! {
        <Choices
            label=words::UNIT
            options=units
            chosen=chosen
            on_choose=move |unit| system.set(unit)
            snug=true
        />
    };
    view! {
        <Field label=label value=value kind=FieldKind::Decimal error=error>
            {unit}
        </Field>
    }
}

/// Asks about a weight that is unlike the lamb's last: once for what was typed, so that pressed again it is taken.
pub(crate) fn asks_once(
    farm: Farm,
    lamb: LambId,
    weighed: Mass,
    typed: (String, System),
    sure: RwSignal<Option<(String, System)>>,
) -> Option<String> {
    if sure.get_untracked().as_ref() == Some(&typed) {
        return None;
    }
    let now = farm.peek_now();
    let question = farm.peek(|ground| {
        let last = ground.flock.lamb(lamb)?.weights.last()?;
        // What cannot be noted at all is refused with its own reason.
        allow(&ground.flock, &ground.book, &Event::Weighed { lamb, mass: weighed }, now, now).ok()?;
        // A number stays on one line with its unit.
        let told = |weight: Mass| mass(weight, ground.flock.practice.system).replace(' ', "\u{a0}");
        let on = short_date(last.at.local().date());
        odd((last.at, last.mass), (now, weighed))
            .then(|| weighing::odd(&told(last.mass), &on, &told(weighed)))
    })?;
    sure.set(Some(typed));
    Some(question)
}

/// A sheet in which a lamb's weight is noted.
#[component]
pub(crate) fn WeightSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let value = RwSignal::new(String::new());
    let system = RwSignal::new(untrack(|| farm.system()));
    let error = RwSignal::new(String::new());
    let ask = RwSignal::new(None::<(Mass, Mass)>);
    let sure = RwSignal::new(None);
    // What was asked about other digits goes with them.
    Effect::new(move |_| {
        value.get();
        system.get();
        error.set(String::new());
        ask.set(None);
    });
    let note = move |weight: Mass| match farm.note(Event::Weighed { lamb, mass: weight }) {
        Ok(_) => on_close.run(()),
        Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system.get_untracked())),
    };
    let save = move || {
        error.set(String::new());
        ask.set(None);
        let (text, unit) = (value.get_untracked(), system.get_untracked());
        let newborn = farm.peek(|ground| {
            ground.flock.lamb(lamb).is_some_and(|lamb| lamb.age(farm.peek_now()) < TimeDelta::hours(24))
        });
        if !newborn {
            match Mass::parse(&text, unit) {
                Ok(weight) => match asks_once(farm, lamb, weight, (text, unit), sure) {
                    Some(question) => error.set(question),
                    None => note(weight),
                },
                Err(wrong) => error.set(errors::typed(&wrong, errors::Field::Mass, unit)),
            }
            return;
        }
        match Weighed::at_birth(&text, unit) {
            Weighed::Good(weight) => note(weight),
            Weighed::Ask(typed, meant) => ask.set(Some((typed, meant))),
            Weighed::Wrong(wrong) => error.set(wrong),
            Weighed::Nothing => {
                error.set(errors::typed(&yeanling_core::units::TypedError::Empty, errors::Field::Mass, unit));
            }
        }
    };
    view! {
        <Sheet title=words::WEIGH_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <WeightField value=value system=system error=error />
            {live(move || ask.get().map(|(typed, meant)| view! { <AskPounds typed=typed meant=meant on_answer=note /> }).into_any())}
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Asks whether pounds were meant, with both answers as buttons.
#[component]
pub(crate) fn AskPounds(
    /// The weight as it was typed.
    typed: Mass,
    /// The weight in pounds.
    meant: Mass,
    /// Called with the one that is right.
    #[prop(into)]
    on_answer: Callback<(Mass,)>,
) -> impl IntoView {
    let kilograms = mass(typed, System::Metric);
    let pounds = mass(meant, System::Us);
    let (ask, yes, no) =
        (words::ask_pounds(&kilograms, &pounds), words::meant(&pounds), words::keep(&kilograms));
    view! {
        <Notice kind=NoticeKind::Warn>
            <p role="alert">{ask}</p>
        </Notice>
        <div class="buttons" data-columns="2">
            <Button label=yes on_press=move || on_answer.run((meant,)) />
            <Button label=no on_press=move || on_answer.run((typed,)) />
        </div>
    }
}
