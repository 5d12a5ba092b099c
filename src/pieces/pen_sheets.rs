//! The sheet that asks into which pen an animal goes.

use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Animal, Event, PenId};

use super::whose::whose;
use crate::farm::use_farm;
use crate::parts::{Choice, Choices, Sheet};
use crate::words::pens as words;

/// Picks the pen into which an animal goes.
#[component]
pub(crate) fn WhichPenSheet(
    /// Who.
    animal: Animal,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let pens: Vec<Choice<PenId>> = farm.peek(|ground| {
        let flock = &ground.flock;
        let here = flock.pen_of(animal).map(|(pen, _)| pen);
        let mut open: Vec<_> =
            flock.pens.values().filter(|pen| pen.closed.is_none() && Some(pen.id) != here).collect();
        // Empty and clean ones first, then by name.
        open.arrange_by_key(|pen| (!pen.inside.is_empty(), pen.soiled(), pen.name.len(), pen.name.clone()));
        open.into_iter()
            .map(|pen| {
                let note = match (pen.inside.is_empty(), pen.soiled()) {
                    (true, false) => words::NOBODY.to_owned(),
                    (true, true) => words::SOILED.to_owned(),
                    (false, _) => crate::words::animals::animal(flock, pen.inside[0].animal),
                };
                Choice::new(pen.id, words::pen(pen)).note(note)
            })
            .collect()
    });
    let none = pens.is_empty();
    let choose = move |pen: PenId| {
        if farm.tap(Event::PutInPen { animal, pen }).is_some() {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::MOVE_ASK whose=whose(animal) on_close=on_close>
            {none.then(|| view! { <p>{words::NO_PENS}</p> }.into_any())}
            <Choices
                label=words::MOVE_ASK
                options=pens
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
        </Sheet>
    }
}
