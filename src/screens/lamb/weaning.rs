//! Whether a bottle lamb can be weaned: the verdict by the farm's rule, each condition, and what decides it.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Event, LambId};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::weaning::Verdict;
use yeanling_core::units::{Mass, System, TimeDelta};
use yeanling_core::watch::may_be_weaned;

use super::Open;
use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Checks, Field, FieldKind, Remark, Section, Sheet, Weight, WhyButton, WhyText,
};
use crate::pieces::why_text;
use crate::words::{errors, frame, refusals, weaning as words, why};

/// It is shown a week before the earliest age of any rule (ours), or once solids were noted.
const SHOWN_FROM: TimeDelta = TimeDelta::days(21);

/// What stands on the card.
#[derive(Clone, Debug, PartialEq)]
struct Shown {
    verdict: String,
    ready: bool,
    checks: Vec<(Option<bool>, String)>,
    why: Option<WhyText>,
}

/// Weaning; nothing for a lamb that is not on the bottle or too young to ask.
#[component]
pub(super) fn Weaning(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let system = ground.flock.practice.system;
            let lamb = ground.flock.lamb(id).filter(|lamb| lamb.on_bottle())?;
            if lamb.age(now) < SHOWN_FROM && lamb.solids.is_empty() {
                return None;
            }
            Some(match may_be_weaned(lamb, now, ground.flock.practice.weaning_rule) {
                Ok(answer) => Shown {
                    verdict: words::verdict(&answer),
                    ready: answer.verdict == Verdict::Ready,
                    checks: words::checks(&answer, system),
                    why: Some(why_text(why::weaning(&answer, system))),
                },
                Err(wrong) => {
                    let verdict = errors::weight(&wrong, system);
                    Shown { verdict, ready: false, checks: Vec::new(), why: None }
                }
            })
        })
    });
    let there = Memo::new(move |_| shown.with(Option::is_some));
    let verdict = Signal::derive(move || {
        shown.with(|shown| shown.as_ref().map(|shown| format!("*{}*", shown.verdict)).unwrap_or_default())
    });
    let checks = Memo::new(move |_| {
        shown.with(|shown| shown.as_ref().map(|shown| shown.checks.clone()).unwrap_or_default())
    });
    let ready = Memo::new(move |_| shown.with(|shown| shown.as_ref().is_some_and(|shown| shown.ready)));
    let why = Memo::new(move |_| shown.with(|shown| shown.as_ref().and_then(|shown| shown.why.clone())));
    let wean = move || {
        farm.tap(Event::Weaned { lamb: id });
    };
    live(move || {
        if !there.get() {
            return ().into_any();
        }
        view! {
            <Section title=words::TITLE>
                <Remark text=verdict>
                    {live(move || why.get().map(|why| view! { <WhyButton why=why /> }).into_any())}
                </Remark>
                <Checks checks=checks />
                <Buttons columns=3>
                    <Button label=words::SOLIDS on_press=move || open.set(Open::Solids) />
                    <Button label=words::WEIGH on_press=move || open.set(Open::Weigh) />
                    {live(move || {
                        let weight = if ready.get() { Weight::Filled } else { Weight::Outline };
                        view! { <Button label=words::WEANED on_press=wean weight=weight /> }.into_any()
                    })}
                </Buttons>
            </Section>
        }
        .into_any()
    })
}

/// The button that says that a lamb was taken from its ewe; nothing while it is too young, or has none to be taken from.
pub(super) fn weaned_from_ewe(id: LambId) -> AnyView {
    let farm = use_farm();
    let can = Memo::new(move |_| {
        let now = farm.now();
        let can = |lamb: &Lamb| lamb.to_be_weaned_from_ewe() && lamb.age(now) >= SHOWN_FROM;
        farm.with(|ground| ground.flock.lamb(id).is_some_and(can))
    });
    let wean = move || {
        farm.tap(Event::Weaned { lamb: id });
    };
    live(move || can.get().then(|| view! { <Button label=words::WEANED on_press=wean /> }).into_any())
}

/// Notes what a lamb ate of solid feed in a day.
#[component]
pub(super) fn SolidsSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let value = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || {
        error.set(String::new());
        let mass = match Mass::parse(&words::with_unit(&value.get_untracked(), system), system) {
            Ok(mass) => mass,
            Err(wrong) => return error.set(errors::typed(&wrong, errors::Field::Feed, system)),
        };
        match farm.note(Event::SolidsEaten { lamb, mass }) {
            Ok(_) => on_close.run(()),
            Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system)),
        }
    };
    let unit = match system {
        System::Metric => "g",
        System::Us => "oz",
    };
    view! {
        <Sheet title=words::SOLIDS_ASK on_close=on_close>
            <Field
                label=words::SOLIDS_LABEL
                value=value
                kind=FieldKind::Decimal
                hint=words::solids_hint(system)
                error=error
            >
                <span>{unit}</span>
            </Field>
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
