//! One animal on the Watch: what is most urgent with its button, the ribbon, the volumes, and what else is due.

use yeanling_core::book::Animal;
use yeanling_core::watch::State;

use super::hand::Hand;
use super::shown::{Act, Asked, Because, Does, Shown};
use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Emptied, Facts, Figure, LinkButton, Ribbon, Row, RowState, SmallButton, Ticked, WhyButton,
    each, live,
};
use crate::pieces::{DrawnRibbon, LaterSheet, VetSheet, VigorSheet, WeightSheet, row_state};
use crate::signals::prelude::*;
use crate::words::watch as words;

/// Returns an animal as a key among rows.
pub(super) fn key(animal: Animal) -> String {
    match animal {
        Animal::Ewe(ewe) => format!("e{ewe}"),
        Animal::Lamb(lamb) => format!("l{lamb}"),
    }
}

/// One animal.
#[component]
pub(super) fn AnimalRow(animal: Animal, shown: Memo<Vec<Shown>>, hand: Hand) -> impl IntoView {
    let farm = use_farm();
    let one = Memo::new(move |_| shown.with(|shown| shown.iter().find(|one| one.animal == animal).cloned()));
    // Memos, so that of a row in which a minute has passed only the words with that minute are written anew.
    let text = move |read: fn(&Shown) -> &String| -> Signal<String> {
        Memo::new(move |_| one.with(|one| one.as_ref().map(|one| read(one).clone()).unwrap_or_default()))
            .into()
    };
    let state = Memo::new(move |_| {
        one.with(|one| one.as_ref().and_then(|one| one.state)).map_or(RowState::Done, row_state)
    });
    // Where it keeps its place, it keeps the size of the state in whose place it stands.
    let size = Memo::new(move |_| {
        one.with(|one| {
            let one = one.as_ref().filter(|one| one.stood != one.state)?;
            Some(one.stood.map_or(RowState::Done, row_state))
        })
    });
    let name = text(|one| &one.name);
    let button = Memo::new(move |_| one.with(|one| one.as_ref().and_then(|one| one.button.clone())));
    let others =
        Memo::new(move |_| one.with(|one| one.as_ref().map(|one| one.others.clone()).unwrap_or_default()));
    let milk = Memo::new(move |_| one.with(|one| one.as_ref().and_then(|one| one.milk.clone())));
    let labor = Memo::new(move |_| one.with(|one| one.as_ref().and_then(|one| one.labor.clone())));
    let facts =
        Memo::new(move |_| one.with(|one| one.as_ref().map(|one| one.facts.clone()).unwrap_or_default()));
    let because = Memo::new(move |_| one.with(|one| one.as_ref().and_then(|one| one.why.clone())));
    let why = Memo::new(move |_| {
        // The clock is followed only where it is counted by.
        let now = || {
            if because.with(|because| matches!(because, Some(Because::Labor(_)))) {
                farm.now()
            } else {
                farm.peek_now()
            }
        };
        because.with(|because| because.as_ref().map(|because| because.text(now(), &farm.practice())))
    });
    let href = one.with_untracked(|one| one.as_ref().map(|one| one.href.clone()).unwrap_or_default());
    let has_milk = Memo::new(move |_| milk.with(Option::is_some));
    let late_or_now = |state: Option<State>| matches!(state, Some(State::Now | State::Late));
    let waits = Memo::new(move |_| one.with(|one| one.as_ref().is_some_and(|one| late_or_now(one.state))));
    let waited = Memo::new(move |_| one.with(|one| one.as_ref().is_some_and(|one| late_or_now(one.stood))));
    let count = Memo::new(move |_| others.with(Vec::len));
    let some = Memo::new(move |_| count.get() > 0 || waits.get() || waited.get());
    let figure = move || {
        view! {
            <Figure value=text(|one| &one.figure) also=text(|one| &one.figure_says)>
                {live(move || why.get().map(|why| view! { <WhyButton why=why /> }).into_any())}
            </Figure>
        }
    };
    view! {
        <Row
            name=name
            kind=text(|one| &one.kind)
            text=text(|one| &one.text)
            says=text(|one| &one.says)
            text_room=text(|one| &one.text_room)
            says_room=text(|one| &one.says_room)
            state=state
            size=size
            href=href
            action=move || live(move || button.get().map(|act| tap(act, animal, name, hand)).into_any())
        >
            {live(move || {
                if has_milk.get() {
                    view! {
                        {figure()}
                        <DrawnRibbon ribbon=milk.into() />
                    }
                        .into_any()
                } else if let Some(ribbon) = labor.get() {
                    view! {
                        {figure()}
                        <Ribbon
                            label=ribbon.label
                            stretches=ribbon.stretches
                            ticks=ribbon.ticks
                            now=ribbon.now
                            pins=ribbon.pins
                        />
                    }
                        .into_any()
                } else {
                    ().into_any()
                }
            })}
            {live(move || (!facts.with(Vec::is_empty)).then(|| view! { <Facts facts=facts /> }).into_any())}
            {live(move || {
                // A button each for its place, so that those beside the one that was pressed stay what they are.
                let act = move |at: usize| {
                    let act = Memo::new(move |_| others.with(|others| others.get(at).cloned()));
                    live(move || act.get().map(|act| tap(act, animal, name, hand)).into_any()).into_any()
                };
                let wait = move || {
                    let name = Signal::derive(move || format!("{}, {}", words::LATER, name.get()));
                    let press = move || {
                        let duty = one.with_untracked(|one| one.as_ref().and_then(|one| one.first.clone()));
                        hand.asked.set(duty.map(Box::new).map(Asked::Later));
                    };
                    if waits.get() {
                        view! { <SmallButton label=words::LATER name=name on_press=press /> }.into_any()
                    } else if waited.get() {
                        view! {
                            <span class="small-button" data-done="gone">
                                {words::LATER}
                            </span>
                        }
                            .into_any()
                    } else {
                        ().into_any()
                    }
                };
                some.get()
                    .then(|| {
                        let acts = each(move || (0..count.get()).collect(), usize::to_string, act);
                        view! { <div class="others">{acts} {live(wait)}</div> }
                    })
                    .into_any()
            })}
        </Row>
    }
}

/// One button: it notes with one tap, asks on a sheet, or leads to where something must be read first. What was done is a
/// tick.
fn tap(act: Act, animal: Animal, name: Signal<String>, hand: Hand) -> AnyView {
    let label = act.label.clone();
    match &act.does {
        Does::Leads(href) => view! { <LinkButton href=href.clone() label=label /> }.into_any(),
        Does::Done(_) => view! { <Ticked label=label /> }.into_any(),
        Does::Over(meant) => {
            let action = !matches!(**meant, Does::Leads(_));
            view! { <Emptied label=label action=action /> }.into_any()
        }
        Does::Notes(_) | Does::Asks(_) => {
            let said = label.clone();
            let name = Signal::derive(move || format!("{said}, {}", name.get()));
            let press = move || hand.press(animal, &act);
            view! { <ActionButton label=label name=name on_press=press /> }.into_any()
        }
    }
}

/// The sheet with what is asked.
pub(super) fn sheet(hand: Hand) -> AnyView {
    let asked = hand.asked;
    let close = move || asked.set(None);
    live(move || match asked.get() {
        None => ().into_any(),
        Some(Asked::Later(duty)) => view! { <LaterSheet duty=*duty on_close=close /> }.into_any(),
        Some(Asked::Weight(lamb)) => view! { <WeightSheet lamb=lamb on_close=close /> }.into_any(),
        Some(Asked::Vet(animal)) => view! { <VetSheet animal=animal on_close=close /> }.into_any(),
        Some(Asked::Vigor(lamb)) => view! { <VigorSheet lamb=lamb on_close=close /> }.into_any(),
    })
    .into_any()
}
