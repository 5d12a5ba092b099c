//! Sheets for an animal in trouble: what the vet said, when a lamb that was found was born.

use yeanling_core::book::{Animal, Care, Event, LambId, VetSaid};
use yeanling_core::units::TimeDelta;

use super::whose::whose;
use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Remark, Sheet, Weight, live};
use crate::signals::prelude::*;
use crate::words::common::span;
use crate::words::danger::{self as words, Found};
use crate::words::{frame, refusals};

/// When the vet asks to look again, in minutes (ours).
const LOOK_AGAIN: [i64; 5] = [20, 60, 120, 360, 720];

/// Which answer of the vet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Answer {
    Coming,
    Advised,
    NobodyReached,
    Saw,
}

/// Notes what came of a call to the vet.
#[component]
pub(crate) fn VetSheet(
    /// For which animal.
    animal: Animal,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let answer = RwSignal::new(None::<Answer>);
    let minutes = RwSignal::new(LOOK_AGAIN[0]);
    let text = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let note = move |said: VetSaid| match farm.note(Event::Care(Care::VetSaid { animal, said })) {
        Ok(_) => on_close.run(()),
        Err(refusal) => {
            let system = untrack(|| farm.system());
            error.set(refusals::refusal(&refusal, farm.peek_now(), system));
        }
    };
    let choose = move |chosen: Answer| match chosen {
        Answer::Coming => note(VetSaid::Coming),
        Answer::NobodyReached => note(VetSaid::NobodyReached),
        Answer::Advised | Answer::Saw => answer.set(Some(chosen)),
    };
    let look = farm.peek_now();
    let sample = |answer: Answer| match answer {
        Answer::Coming => VetSaid::Coming,
        Answer::NobodyReached => VetSaid::NobodyReached,
        Answer::Advised => VetSaid::Advised { what: None, look_again: look },
        Answer::Saw => VetSaid::Saw { plan: None, look_again: look },
    };
    let answers = [Answer::Coming, Answer::Advised, Answer::Saw, Answer::NobodyReached]
        .map(|answer| Choice::new(answer, words::said(&sample(answer))));
    let save = move || {
        let look_again = farm.peek_now() + TimeDelta::minutes(minutes.get_untracked());
        let typed = text.get_untracked().trim().to_owned();
        let words = (!typed.is_empty()).then_some(typed);
        match answer.get_untracked() {
            Some(Answer::Advised) => note(VetSaid::Advised { what: words, look_again }),
            Some(Answer::Saw) => note(VetSaid::Saw { plan: words, look_again }),
            Some(Answer::Coming | Answer::NobodyReached) | None => {}
        }
    };
    view! {
        <Sheet title=words::SAID_ASK whose=whose(animal) on_close=on_close>
            <Choices
                label=words::SAID_ASK
                options=answers.to_vec()
                chosen=Signal::derive(move || answer.get())
                on_choose=choose
                stacked=true
            />
            {live(move || {
                answer
                    .get()
                    .map(|_| {
                        let times = LOOK_AGAIN
                            .map(|minutes| Choice::new(minutes, span(TimeDelta::minutes(minutes))))
                            .to_vec();
                        view! {
                            <Choices
                                label=words::LOOK_AGAIN
                                labelled=true
                                options=times
                                chosen=Signal::derive(move || Some(minutes.get()))
                                on_choose=move |new| minutes.set(new)
                            />
                            <Field label=words::SAID_LABEL value=text kind=FieldKind::Text error=error />
                            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
                        }
                    })
                    .into_any()
            })}
        </Sheet>
    }
}

/// Notes that a lamb was found already born, and how old it can be at the most.
#[component]
pub(crate) fn FoundSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let choose = move |found: Found| {
        farm.found_born(lamb, TimeDelta::hours(found.hours()));
        on_close.run(());
    };
    let answers = Found::ALL.map(|found| Choice::new(found, found.words()));
    view! {
        <Sheet title=words::FOUND_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <Choices
                label=words::FOUND_ASK
                options=answers.to_vec()
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
            <Remark text=words::FOUND_NOTE />
        </Sheet>
    }
}
