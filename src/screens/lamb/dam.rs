//! A lamb that was given to the wrong ewe: which ewe it is of, what goes along, and one press that puts it all right.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, EweId, LambId};
use yeanling_core::flock::GoesAlong;

use crate::farm::{Ground, use_farm};
use crate::parts::{Button, Choice, Choices, Said, Sheet, Weight, live};
use crate::pieces::{EwePicker, Picked};
use crate::words::common::day_and_clock;
use crate::words::{animals, lamb as words, noted};

/// What is asked about before a lamb is moved.
#[derive(Clone, Debug, PartialEq)]
struct Asked {
    name: String,
    from: String,
    to: String,
    lambs: usize,
    /// What was noted of the wrong ewe at this lambing.
    noted: Vec<String>,
}

/// Picks the right ewe, asks what goes along, and moves it.
#[component]
pub(super) fn DamSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let wrong = farm.peek(|ground| ground.flock.lamb(lamb).and_then(|lamb| lamb.dam));
    let whose = farm.peek(|ground| animals::animal(&ground.flock, Animal::Lamb(lamb)));
    let right = RwSignal::new(None::<EweId>);
    let litter = RwSignal::new(true);
    let noted = RwSignal::new(true);
    let pick = move |picked: Picked| match picked {
        Picked::Ewe(ewe) => right.set(Some(ewe)),
        Picked::Unknown => {}
    };
    let go = move |dam: EweId| {
        let along = GoesAlong { litter: litter.get_untracked(), noted: noted.get_untracked() };
        if farm.tap_all(farm.peek(|ground| ground.flock.given_to(lamb, dam, along))) {
            on_close.run(());
        }
    };
    let confirm = move |dam: EweId| {
        let now = farm.peek_now();
        let Asked { name, from, to, lambs, noted: lines } =
            farm.peek(|ground| asked(ground, lamb, dam, |at| day_and_clock(at, now)));
        let which = vec![Choice::new(true, words::all_go(lambs)), Choice::new(false, words::one_goes(&name))];
        let seen = vec![Choice::new(true, words::was_her(&to)), Choice::new(false, words::stays_with(&from))];
        let of = words::noted_of(&from);
        // One lamb of several says little of who was seen to lamb.
        let choose_litter = move |all: bool| {
            litter.set(all);
            noted.set(all);
        };
        view! {
            <p><Said text=words::from_to(&from, &to) /></p>
            {(lambs > 1).then(|| view! {
                <Choices
                    label=words::WHICH_GO
                    labelled=true
                    options=which
                    chosen=Signal::derive(move || Some(litter.get()))
                    on_choose=choose_litter
                />
            }.into_any())}
            {(!lines.is_empty()).then(|| view! {
                <Choices
                    label=of
                    labelled=true
                    options=seen
                    chosen=Signal::derive(move || Some(noted.get()))
                    on_choose=move |along| noted.set(along)
                />
                <ul class="readings" role="list">
                    {lines.into_iter().map(|line| view! { <li><Said text=line /></li> }.into_any()).collect_view()}
                </ul>
            }.into_any())}
            <Button label=words::ANOTHER_EWE weight=Weight::Quiet on_press=move || right.set(None) />
            <Button label=words::move_to(&to) weight=Weight::Filled on_press=move || go(dam) />
        }
        .into_any()
    };
    view! {
        <Sheet title=words::RIGHT_EWE_ASK whose=whose on_close=on_close>
            {live(move || match right.get() {
                None => view! { <EwePicker without=wrong lambed_first=true on_pick=pick /> }.into_any(),
                Some(dam) => confirm(dam),
            })}
        </Sheet>
    }
}

fn asked(
    ground: &Ground,
    lamb: LambId,
    dam: EweId,
    when: impl Fn(yeanling_core::units::Moment) -> String,
) -> Asked {
    let flock = &ground.flock;
    let from = flock.lamb(lamb).and_then(|lamb| lamb.dam);
    let lines = flock.noted_at_lambing(lamb);
    Asked {
        name: animals::lamb_of(flock, lamb),
        from: from.map(|ewe| animals::ewe_of(flock, ewe)).unwrap_or_default(),
        to: animals::ewe_of(flock, dam),
        lambs: flock.litter_of(lamb).map_or(1, |litter| litter.lambs.len()),
        noted: lines
            .into_iter()
            .map(|line| {
                format!("{} · {}", when(line.at), noted::line(&line.event, flock, flock.practice.system))
            })
            .collect(),
    }
}
