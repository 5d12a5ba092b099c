//! The small sheets in which something is noted of a ewe in the field: condition, weight, scan, crayon mark.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, EweId};
use yeanling_core::units::{Condition, Mass, System, TypedError, parse_number};
use yeanling_core::watch::Refusal;

use super::weight_field::WeightField;
use super::whose::whose;
use crate::farm::{Farm, use_farm};
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Sheet, Weight, Wrong};
use crate::words::{errors, frame, refusals, season as words};

/// Notes a fact and closes the sheet, or says what is wrong.
fn note(farm: Farm, event: Event, error: RwSignal<String>, on_close: Callback<()>) {
    let said = |refusal: &Refusal| refusals::refusal(refusal, farm.peek_now(), untrack(|| farm.system()));
    match farm.note(event) {
        Ok(_) => on_close.run(()),
        Err(refusal) => error.set(said(&refusal)),
    }
}

/// Scores a ewe's condition, in quarters.
#[component]
pub(crate) fn ConditionSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let whole = RwSignal::new(None::<u8>);
    let quarters = RwSignal::new(0_u8);
    let error = RwSignal::new(String::new());
    let save = move || match whole.get_untracked() {
        None => error.set(words::NO_SCORE.to_owned()),
        Some(whole) => {
            let score = Condition::from_quarters(4 * whole + quarters.get_untracked());
            note(farm, Event::Conditioned { ewe, score }, error, on_close);
        }
    };
    let wholes: Vec<Choice<u8>> = (1..=5).map(|score: u8| Choice::new(score, score.to_string())).collect();
    let parts: Vec<Choice<u8>> = (0..4).zip(words::QUARTER).map(|(q, label)| Choice::new(q, label)).collect();
    view! {
        <Sheet title=words::CONDITION_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <p>{words::CONDITION_HOW}</p>
            <Choices
                label=words::WHOLE
                options=wholes
                chosen=Signal::derive(move || whole.get())
                on_choose=move |score| whole.set(Some(score))
                snug=true
            />
            <Choices
                label=words::QUARTERS
                options=parts
                chosen=Signal::derive(move || Some(quarters.get()))
                on_choose=move |part| quarters.set(part)
                snug=true
            />
            <Wrong error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Weighs a ewe.
#[component]
pub(crate) fn EweWeightSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let value = RwSignal::new(String::new());
    let system = RwSignal::new(untrack(|| farm.system()));
    let error = RwSignal::new(String::new());
    let save = move || {
        let unit = system.get_untracked();
        match Mass::parse(&value.get_untracked(), unit) {
            Ok(mass) => note(farm, Event::EweWeighed { ewe, mass }, error, on_close),
            Err(wrong) => error.set(errors::typed(&wrong, errors::Field::EweWeight, unit)),
        }
    };
    view! {
        <Sheet title=words::WEIGH_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <WeightField value=value system=system error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// Notes what a scan showed.
#[component]
pub(crate) fn ScanSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let lambs = RwSignal::new(None::<u8>);
    let days = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || match (lambs.get_untracked(), read_days(&days.get_untracked())) {
        (None, _) => error.set(words::NO_SCAN.to_owned()),
        (Some(_), Err(wrong)) => error.set(wrong),
        (Some(lambs), Ok(days)) => note(farm, Event::Scanned { ewe, lambs, days }, error, on_close),
    };
    view! {
        <Sheet title=words::SCAN_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <ScanFields lambs=lambs days=days />
            <Wrong error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// How many lambs a scan showed, and how old they were said to be.
#[component]
pub(crate) fn ScanFields(
    /// How many lambs.
    lambs: RwSignal<Option<u8>>,
    /// How old, as it was typed; may be empty.
    days: RwSignal<String>,
) -> impl IntoView {
    let counts: Vec<Choice<u8>> =
        (0..).zip(words::SCANNED).map(|(count, label)| Choice::new(count, label)).collect();
    view! {
        <Choices
            label=words::SCAN_ASK
            options=counts
            chosen=Signal::derive(move || lambs.get())
            on_choose=move |count| lambs.set(Some(count))
        />
        <Field label=words::SCAN_DAYS value=days kind=FieldKind::Whole>
            <span>{words::DAYS}</span>
        </Field>
    }
}

/// Reads an age in whole days; nothing when nothing was typed.
pub(crate) fn read_days(text: &str) -> Result<Option<u16>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let wrong = |error: &TypedError| errors::typed(error, errors::Field::Days, System::Metric);
    let days = parse_number(text).map_err(|error| wrong(&error))?;
    let whole =
        format!("{days}").parse().map_err(|_| TypedError::NotANumber { given: text.trim().to_owned() });
    whole.map(Some).map_err(|error| wrong(&error))
}

/// Notes a crayon mark; the crayon that is on the rams of her group is written ready.
#[component]
pub(crate) fn MarkSheet(
    /// Which ewe.
    ewe: EweId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let color = farm.peek(|ground| {
        let crayon = ground.flock.group_of(ewe).and_then(|group| group.crayon().map(str::to_owned));
        crayon.unwrap_or_default()
    });
    let color = RwSignal::new(color);
    let error = RwSignal::new(String::new());
    let save = move || {
        let color = color.get_untracked().trim().to_owned();
        note(farm, Event::CrayonMark { ewe, color }, error, on_close);
    };
    view! {
        <Sheet title=words::MARK_ASK whose=whose(Animal::Ewe(ewe)) on_close=on_close>
            <Field label=words::COLOR value=color error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
