//! The farm's choices about milk and cold: weaning, powder, the freezer, the chill limit; each by its source's name.

use crate::signals::prelude::*;
use yeanling_core::book::Event;
use yeanling_core::practice::{self, ChillLimit, FreezerLife, Practice, USUAL_POWDER_RATE};
use yeanling_core::reckon::{powder, weaning};
use yeanling_core::units::Strength;

use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Section, live};
use crate::words::{errors, practice as words};

/// The choices about milk and cold.
#[component]
pub(super) fn Milk() -> impl IntoView {
    let weaning = weaning::RULES.map(|rule| (practice::Choice::WeaningRule(rule), words::weaning_rule(rule)));
    let powders = powder::RULES.map(|rule| (practice::Choice::PowderRule(rule), words::powder_rule(rule)));
    let lives = [FreezerLife::SixMonths, FreezerLife::OneYear, FreezerLife::TwoYears]
        .map(|life| (practice::Choice::FreezerLife(life), words::freezer_life(life)));
    let limits = [ChillLimit::Victoria1000, ChillLimit::Murdoch1100]
        .map(|limit| (practice::Choice::ChillLimit(limit), words::chill_limit(limit)));
    view! {
        {rule(words::WEANING, weaning.to_vec(), |of| practice::Choice::WeaningRule(of.weaning_rule))}
        <PowderRate />
        {rule(words::POWDER, powders.to_vec(), |of| practice::Choice::PowderRule(of.powder_rule))}
        {rule(words::FREEZER, lives.to_vec(), |of| practice::Choice::FreezerLife(of.freezer_life))}
        {rule(words::CHILL, limits.to_vec(), |of| practice::Choice::ChillLimit(of.chill_limit))}
    }
}

/// A rule of several, one tap each; what stands already is not noted again.
fn rule(
    title: &'static str,
    rules: Vec<(practice::Choice, (&'static str, &'static str))>,
    read: fn(&Practice) -> practice::Choice,
) -> AnyView {
    let farm = use_farm();
    let chosen = Signal::derive(move || Some(read(&farm.practice())));
    let options: Vec<Choice<practice::Choice>> =
        rules.into_iter().map(|(choice, (name, note))| Choice::new(choice, name).note(note)).collect();
    view! {
        <Section title=title>
            <Choices
                label=title
                options=options
                chosen=chosen
                on_choose=move |new: practice::Choice| {
                    if chosen.get_untracked().as_ref() != Some(&new) {
                        farm.tap(Event::Chose(new));
                    }
                }
                stacked=true
            />
        </Section>
    }
    .into_any()
}

/// The strength on the powder's label; what is wrong stays as it was typed.
#[component]
fn PowderRate() -> impl IntoView {
    let farm = use_farm();
    let known = Memo::new(move |_| words::rate_number(farm.practice().powder_rate));
    let typed = RwSignal::new(String::new());
    // What is typed follows the book when the book changes, as after an undo.
    Effect::new(move |_| typed.set(known.get()));
    let error = RwSignal::new(String::new());
    let changed = Memo::new(move |_| typed.with(|typed| typed.trim() != known.get()));
    let save = move || {
        let system = untrack(|| farm.system());
        let rate = Strength::parse(&typed.get_untracked())
            .map_err(|wrong| errors::typed(&wrong, errors::Field::PowderRate, system))
            .and_then(|rate| Strength::ON_A_LABEL.check(rate).map_err(|wrong| errors::powder_rate(&wrong)));
        match rate {
            Err(wrong) => error.set(wrong),
            Ok(rate) => {
                error.set(String::new());
                if farm.tap(Event::Chose(practice::Choice::PowderRate(rate))).is_some() {
                    typed.set(words::rate_number(rate));
                }
            }
        }
    };
    view! {
        <Section title=words::POWDER_RATE>
            <Field
                label=words::POWDER_RATE_LABEL
                value=typed
                kind=FieldKind::Decimal
                hint=words::powder_rate_hint(USUAL_POWDER_RATE)
                error=error
                on_input=move |_: String| error.set(String::new())
            >
                <span>"g/L"</span>
            </Field>
            {live(move || changed.get().then(|| view! { <Button label=words::SAVE_RATE on_press=save /> }).into_any())}
        </Section>
    }
}
