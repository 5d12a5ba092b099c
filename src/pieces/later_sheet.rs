//! A sheet in which a duty is put off for a while: to its red limit and no further.

use yeanling_core::book::Event;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, may_wait_until};

use super::whose::whose;
use crate::farm::use_farm;
use crate::parts::{Choice, Choices, Sheet};
use crate::signals::prelude::*;
use crate::words::common::{clock, span};
use crate::words::watch as words;

/// For how many minutes a duty can be put off, as far as its limit allows.
const WAITS: [i64; 4] = [10, 15, 30, 60];

/// Puts a duty off.
#[component]
pub(crate) fn LaterSheet(
    /// Which duty.
    duty: Duty,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let now = farm.peek_now();
    let (animal, kind) = (duty.subject, duty.task.kind());
    let most = farm.peek(|ground| may_wait_until(&ground.flock, animal, kind, now)).unwrap_or(now);
    let options: Vec<Choice<Moment>> = WAITS
        .iter()
        .map(|minutes| now + TimeDelta::minutes(*minutes))
        .filter(|until| *until <= most)
        .map(|until| Choice::new(until, clock(until)).note(span(until.since(now))))
        .collect();
    let lead = words::later_until(&clock(most), options.is_empty());
    let choose = move |until: Moment| {
        if farm.tap(Event::PutOff { animal, duty: kind, until }).is_some() {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::LATER_ASK whose=whose(animal) on_close=on_close>
            <p>{lead}</p>
            <Choices label=words::LATER_ASK options=options chosen=Signal::stored(None) on_choose=choose />
        </Sheet>
    }
}
