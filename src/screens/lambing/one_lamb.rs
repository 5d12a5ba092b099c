//! Everything for one lamb on one screen: what it is, its weight, what was seen, how the birth went.

use crate::signals::prelude::*;
use yeanling_core::book::{Ease, Event, LambId, Sex};
use yeanling_core::flock::{Lamb, Line};

use super::weight::BirthWeight;
use crate::farm::use_farm;
use crate::parts::{Buttons, Choice, Choices, Remark, SmallButton, SmallLink, Toggle, live};
use crate::pieces::FoundSheet;
use crate::route::Screen;
use crate::words::{danger, lambing as words, noted};

/// Everything for one lamb.
#[component]
pub(super) fn OneLamb(
    /// Which lamb.
    id: LambId,
    /// Whether its weight is typed and not noted, since it is still asked about.
    unanswered: RwSignal<bool>,
) -> impl IntoView {
    let farm = use_farm();
    let lamb = Memo::new(move |_| farm.with(|ground| ground.flock.lamb(id).cloned()));
    let alive = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().is_some_and(Lamb::lives)));
    // Nobody saw its birth: how old it can be is asked.
    let asks = RwSignal::new(false);
    let was_found =
        Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().is_some_and(|lamb| lamb.found.is_some())));
    let found = Signal::derive(move || {
        if was_found.get() { format!("{} ✓", danger::FOUND) } else { danger::FOUND.to_owned() }
    });
    view! {
        <SexChoice id=id lamb=lamb />
        <div class="lambing-living" inert=move || !alive.get()>
            <BirthWeight id=id lamb=lamb unanswered=unanswered />
            <div class="lambing-seen" role="group" aria-label=words::SEEN>
                <Buttons columns=3>
                    <Seen
                        label=words::NAVEL
                        lamb=lamb
                        seen=|lamb| !lamb.navel.is_empty()
                        event=Event::NavelDipped { lamb: id }
                    />
                    <Seen label=words::UP lamb=lamb seen=|lamb| !lamb.stood.is_empty() event=Event::Stood { lamb: id } />
                    <Seen
                        label=words::SUCKED
                        lamb=lamb
                        seen=|lamb| !lamb.sucked.is_empty()
                        event=Event::Sucked { lamb: id }
                    />
                </Buttons>
            </div>
        </div>
        <Help id=id lamb=lamb />
        <Remark text="">
            <SmallLink href=Screen::Lamb(id).hash() label=words::MORE />
            <SmallButton label=found name=found on_press=move || asks.set(true) />
        </Remark>
        {live(move || asks.get().then(|| view! {
            <FoundSheet lamb=id on_close=move || asks.set(false) />
        }).into_any())}
    }
}

/// What it is; a second tap corrects the first.
#[component]
fn SexChoice(id: LambId, lamb: Memo<Option<Lamb>>) -> impl IntoView {
    let farm = use_farm();
    #[derive(Clone, Copy, PartialEq)]
    enum What {
        Sex(Sex),
        Dead,
    }
    let options = vec![
        Choice::new(What::Sex(Sex::Ewe), words::EWE_LAMB),
        Choice::new(What::Sex(Sex::Ram), words::RAM_LAMB),
        Choice::new(What::Dead, words::BORN_DEAD),
    ];
    let chosen = Signal::derive(move || {
        let lamb = lamb.get()?;
        if lamb.born_alive { lamb.sex.map(What::Sex) } else { Some(What::Dead) }
    });
    let choose = move |what: What| {
        let Some(now) = lamb.get_untracked() else { return };
        let entry = id.entry();
        let was = farm.peek(|ground| {
            let line = ground.flock.lines.iter().find(|line| line.entry == entry);
            line.map(|line| (line.event.clone(), line.at))
        });
        let Some((Event::LambBorn { dam, beside, sex, alive }, at)) = was else { return };
        let (sex, alive) = match what {
            What::Sex(sex) => (Some(sex), true),
            What::Dead => (sex, !alive),
        };
        if (sex, alive) != (now.sex, now.born_alive) {
            let event = Box::new(Event::LambBorn { dam, beside, sex, alive });
            farm.tap(Event::Amended { entry, event, at });
        }
    };
    view! { <Choices label=words::SEX options=options chosen=chosen on_choose=choose /> }
}

/// Something seen or not: a tap notes it, another takes it back.
#[component]
fn Seen(
    label: &'static str,
    lamb: Memo<Option<Lamb>>,
    seen: fn(&Lamb) -> bool,
    event: Event,
) -> impl IntoView {
    let farm = use_farm();
    let pressed = Signal::derive(move || lamb.with(|lamb| lamb.as_ref().is_some_and(seen)));
    let press = move || {
        let noted = |line: &&Line| !line.struck && line.event == event;
        let before = farm.peek(|ground| ground.flock.lines.iter().rev().find(noted).map(|line| line.entry));
        match before {
            Some(entry) => {
                farm.tap(Event::Struck { entry });
            }
            None => {
                farm.tap(event.clone());
            }
        }
    };
    view! { <Toggle label=label pressed=pressed on_press=press /> }
}

/// How the birth went: one tap, another changes it.
#[component]
fn Help(id: LambId, lamb: Memo<Option<Lamb>>) -> impl IntoView {
    let farm = use_farm();
    let options = [Ease::Alone, Ease::SlightByHand, Ease::HardByHand, Ease::Vet]
        .into_iter()
        .map(|ease| Choice::new(ease, noted::ease_short(ease)))
        .collect::<Vec<_>>();
    let chosen = Signal::derive(move || lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.ease)));
    let choose = move |ease: Ease| {
        if chosen.get_untracked() != Some(ease) {
            farm.tap(Event::BirthEase { lamb: id, ease });
        }
    };
    view! {
        <div class="lambing-help">
            <Choices label=words::HELP options=options chosen=chosen on_choose=choose snug=true />
        </div>
    }
}
