//! Whether a lamb can be weaned, from its age, its weights and what it eats, by any of the rules.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::reckon::weaning::{self, Answer, RULES};
use yeanling_core::units::{Mass, System, TimeDelta, TypedError};

use super::Asked;
use super::answer::reasons;
use super::bottle::read_days;
use crate::farm::use_farm;
use crate::parts::{Checks, Choice, Choices, Field, FieldKind, Remark, WhyButton, WhyText};
use crate::pieces::WeightField;
use crate::words::{errors, figures as words, practice, weaning as said, why};

/// Weaning by a rule.
#[component]
pub(super) fn Weaning(
    /// What was typed and chosen.
    asked: Asked,
) -> impl IntoView {
    let farm = use_farm();
    let days = Memo::new(move |_| asked.days.with(|days| read_days(days)));
    let born = Memo::new(move |_| {
        let unit = asked.unit.get();
        let weight = weight(&asked.weight.get(), unit)?;
        weight
            .map(|weight| Mass::AT_BIRTH.check(weight))
            .transpose()
            .map_err(|wrong| errors::weight(&wrong, unit))
    });
    let today = Memo::new(move |_| {
        let unit = asked.unit.get();
        let weight = weight(&asked.today.get(), unit)?;
        weight
            .map(|weight| weaning::WEIGHT.check(weight))
            .transpose()
            .map_err(|wrong| errors::weight(&wrong, unit))
    });
    let answer: Memo<Option<Answer>> = Memo::new(move |_| {
        let age = TimeDelta::days(i64::from(days.get().ok().flatten()?));
        let (birth_weight, weight) = (born.get().ok()?, today.get().ok()?);
        let lamb = weaning::Lamb { age, weight, birth_weight, eats_solids: asked.solids.get() };
        weaning::wean(lamb, asked.weaning.get()).ok()
    });
    let some = Memo::new(move |_| answer.with(Option::is_some));
    let nothing = Memo::new(move |_| days.with(|days| *days == Ok(None)));
    let verdict = Signal::derive(move || {
        answer.with(|answer| {
            answer.as_ref().map(|answer| format!("*{}*", said::verdict(answer))).unwrap_or_default()
        })
    });
    let checks = Memo::new(move |_| {
        let system = farm.system();
        answer.with(|answer| answer.as_ref().map(|answer| said::checks(answer, system)).unwrap_or_default())
    });
    let because = Signal::derive(move || {
        let system = farm.system();
        answer.with(|answer| {
            let why = answer.as_ref().map(|answer| reasons(words::WEANING, why::weaning(answer, system)));
            why.unwrap_or_else(WhyText::default)
        })
    });
    let error = |read: Memo<Result<Option<Mass>, String>>| {
        Signal::derive(move || read.get().err().unwrap_or_default())
    };
    let eats = vec![
        Choice::new(Some(true), said::EATS),
        Choice::new(Some(false), said::EATS_NOT),
        Choice::new(None, said::EATS_UNKNOWN),
    ];
    let rules = RULES.map(|rule| {
        let (name, note) = practice::weaning_rule(rule);
        Choice::new(rule, name).note(note)
    });
    view! {
        <Field
            label=words::DAYS
            value=asked.days
            kind=FieldKind::Whole
            hint=words::DAYS_HINT
            error=Signal::derive(move || days.get().err().unwrap_or_default())
        />
        <WeightField value=asked.weight system=asked.unit error=error(born) label=words::BIRTH_WEIGHT />
        <WeightField value=asked.today system=asked.unit error=error(today) label=words::TODAY />
        <Choices
            label=said::EATS_ASK
            labelled=true
            options=eats
            chosen=Signal::derive(move || Some(asked.solids.get()))
            on_choose=move |new| asked.solids.set(new)
        />
        {live(move || nothing.get().then(|| view! { <p class="small-print">{said::TYPE_DAYS}</p> }).into_any())}
        {live(move || some.get().then(|| view! {
            <Remark text=verdict>
                <WhyButton why=because />
            </Remark>
            <Checks checks=checks />
        }).into_any())}
        <Choices
            label=said::RULE
            labelled=true
            options=rules.to_vec()
            chosen=Signal::derive(move || Some(asked.weaning.get()))
            on_choose=move |new| asked.weaning.set(new)
            stacked=true
        />
    }
}

fn weight(text: &str, unit: System) -> Result<Option<Mass>, String> {
    match Mass::parse(text, unit) {
        Ok(weight) => Ok(Some(weight)),
        Err(TypedError::Empty) => Ok(None),
        Err(wrong) => Err(errors::typed(&wrong, errors::Field::Mass, unit)),
    }
}
