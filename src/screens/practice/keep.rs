//! The farm's own marks for keeping or culling: a number each, or nothing.

use crate::signals::prelude::*;
use yeanling_core::book::Event;
use yeanling_core::practice::{Choice, KeepMarks};
use yeanling_core::units::System;

use crate::farm::use_farm;
use crate::parts::{Field, FieldKind, Section};
use crate::words::{errors, keep as words, refusals};

/// One mark: what it is called, how it is read and how it is set.
type Mark = (&'static str, fn(&KeepMarks) -> Option<u8>, fn(&mut KeepMarks, Option<u8>));

const MARKS: [Mark; 5] = [
    (words::HARD, |marks| marks.hard_births, |marks, from| marks.hard_births = from),
    (words::LOST, |marks| marks.lost, |marks, from| marks.lost = from),
    (words::TURNED_AWAY, |marks| marks.turned_away, |marks, from| marks.turned_away = from),
    (words::BARREN, |marks| marks.barren, |marks, from| marks.barren = from),
    (words::YEARS, |marks| marks.years, |marks, from| marks.years = from),
];

/// The marks, each noted when its field is left.
#[component]
pub(super) fn Keep() -> impl IntoView {
    let fields = MARKS.map(|mark| view! { <OneMark mark=mark /> }.into_any());
    view! {
        <Section title=words::MARKS>
            <p class="small-print">{words::MARKS_SUB}</p>
            {Vec::from(fields)}
        </Section>
    }
}

#[component]
fn OneMark(mark: Mark) -> impl IntoView {
    let farm = use_farm();
    let (label, read, set) = mark;
    let marks = Memo::new(move |_| farm.practice().keep_marks);
    let value = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    Effect::new(move |_| value.set(read(&marks.get()).map(|from| from.to_string()).unwrap_or_default()));
    let left = move |typed: String| {
        error.set(String::new());
        let typed = typed.trim();
        let from = match typed.parse::<u8>() {
            _ if typed.is_empty() => None,
            Ok(from) => Some(from),
            Err(_) => {
                let given = yeanling_core::units::TypedError::NotANumber { given: typed.to_owned() };
                return error.set(errors::typed(&given, errors::Field::Pieces, System::Metric));
            }
        };
        let mut new = marks.get_untracked();
        set(&mut new, from);
        if new != marks.get_untracked()
            && let Err(refusal) = farm.note(Event::Chose(Choice::KeepMarks(new)))
        {
            error.set(refusals::refusal(&refusal, farm.peek_now(), System::Metric));
        }
    };
    view! { <Field label=label value=value kind=FieldKind::Whole error=error on_change=left /> }
}
