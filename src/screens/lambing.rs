//! One ewe at work: each lamb as it comes, everything for it on one screen, every tap saved as it is made.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use yeanling_core::book::{Ease, EntryId, Event, EweId, LambId, Sex};
use yeanling_core::flock::{Lamb, Line, Litter};
use yeanling_core::reckon::birth_weight;
use yeanling_core::units::{Mass, System, TimeDelta};

use crate::farm::{Farm, Ground, use_farm};
use crate::parts::{
    BigButton, Button, Buttons, Choice, Choices, Keypad, LinkButton, Page, Readout, Remark, Said, Section,
    Sheet, SmallLink, Title, Toggle, Weight, WhyButton,
};
use crate::pieces::{AskPounds, EwePicker, Picked, Standing, Top, Weighed, why_text};
use crate::route::Screen;
use crate::words::common::{clock, number};
use crate::words::{animals, cautions, frame, lambing as words, noted, why};

/// Whose lambing it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Of {
    /// A ewe's.
    Ewe(EweId),
    /// Nobody's yet, and nothing is born.
    Unknown,
    /// The litter of this lamb.
    Lamb(LambId),
}

/// A lambing counts as the same while its last birth is this fresh and not all are born (ours).
const SAME_LAMBING: TimeDelta = TimeDelta::hours(24);

/// A weight is noted when the keys have rested for so long.
const KEYS_REST: Duration = Duration::from_millis(900);

/// Asks who is lambing.
#[component]
pub(crate) fn Who() -> impl IntoView {
    let farm = use_farm();
    let pick = move |picked: Picked| match picked {
        Picked::Ewe(ewe) => Screen::LambingEwe(ewe).go(),
        Picked::Unknown => Screen::LambingUnknown.go(),
    };
    let at_work = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground
                .flock
                .litters
                .values()
                .filter(|litter| litter.all_born.is_none() && now.since(litter.latest) < SAME_LAMBING)
                .map(|litter| {
                    let name = match litter.dam {
                        Some(dam) => animals::ewe_of(&ground.flock, dam),
                        None => animals::lamb_of(&ground.flock, litter.id),
                    };
                    (name, litter.id)
                })
                .collect::<Vec<_>>()
        })
    });
    view! {
        <Page>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            <Title text=words::WHO />
            <Standing />
            {move || {
                let at_work = at_work.get();
                (!at_work.is_empty()).then(|| view! {
                    <Section title=words::AT_WORK>
                        <Buttons columns=2>
                            {at_work
                                .into_iter()
                                .map(|(name, lamb)| {
                                    view! { <LinkButton href=Screen::LambingLamb(lamb).hash() label=name /> }
                                })
                                .collect_view()}
                        </Buttons>
                    </Section>
                })
            }}
            {move || {
                farm.with(|ground| ground.flock.ewes.is_empty())
                    .then(|| view! { <p class="lead"><Said text=words::NO_EWES /></p> })
            }}
            <EwePicker unknown=true on_pick=pick />
            <p class="small-print">{cautions::PEOPLE}</p>
        </Page>
    }
}

/// The litter being born.
fn litter_of(of: Of, ground: &Ground, farm: Farm) -> Option<Litter> {
    match of {
        Of::Lamb(lamb) => ground.flock.litter_of(lamb).cloned(),
        Of::Unknown => None,
        Of::Ewe(ewe) => {
            let now = farm.peek_now();
            let latest = ground.flock.litters_of(ewe).into_iter().next()?;
            let same = latest.all_born.is_none() && now.since(latest.latest) < SAME_LAMBING;
            same.then(|| latest.clone())
        }
    }
}

/// A ewe, or nobody's litter, at work.
#[component]
pub(crate) fn Lambing(
    /// Whose.
    of: Of,
) -> impl IntoView {
    let farm = use_farm();
    let litter = Memo::new(move |_| farm.with(|ground| litter_of(of, ground, farm)));
    let lambs = Memo::new(move |_| litter.with(|l| l.as_ref().map(|l| l.lambs.clone()).unwrap_or_default()));
    // What is chosen: a lamb, or the one that comes next.
    let chosen = RwSignal::new(match of {
        Of::Lamb(lamb) => Some(lamb),
        Of::Ewe(_) | Of::Unknown => untrack(|| lambs.get().last().copied()),
    });
    // A lamb whose birth was undone is no longer there to be chosen.
    let selected = Memo::new(move |_| chosen.get().filter(|lamb| lambs.with(|lambs| lambs.contains(lamb))));
    let dam = Memo::new(move |_| match of {
        Of::Ewe(ewe) => Some(ewe),
        Of::Unknown | Of::Lamb(_) => litter.with(|litter| litter.as_ref().and_then(|litter| litter.dam)),
    });
    let title = Signal::derive(move || match dam.get() {
        Some(dam) => words::title(&farm.with(|ground| animals::ewe_of(&ground.flock, dam))),
        None => words::UNKNOWN.to_owned(),
    });
    let sub = Signal::derive(move || {
        litter.with(|litter| {
            litter.as_ref().map(|litter| words::began(&clock(litter.began))).unwrap_or_default()
        })
    });
    let born = move |sex: Option<Sex>, alive: bool| {
        let mate = lambs.with_untracked(|lambs| lambs.first().copied());
        let event = Event::LambBorn { dam: dam.get_untracked(), beside: mate, sex, alive };
        let Some(entry) = farm.tap(event) else { return };
        chosen.set(Some(entry.as_lamb()));
        if of == Of::Unknown {
            Screen::LambingLamb(entry.as_lamb()).replace();
        }
    };
    let all_born = move || {
        if let Some(lamb) = lambs.with_untracked(|lambs| lambs.first().copied())
            && farm.tap(Event::AllBorn { lamb }).is_some()
        {
            Screen::Watch.go();
        }
    };
    let thumb = move || {
        view! {
            {move || {
                selected.get().is_some().then(|| view! {
                    <BigButton
                        label=words::NEXT
                        weight=Weight::Outline
                        on_press=move || chosen.set(None)
                    />
                    <BigButton label=words::ALL_BORN on_press=all_born />
                })
            }}
        }
    };
    let giving = RwSignal::new(false);
    view! {
        <Page thumb=thumb>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            <Title text=title>
                <Said text=sub />
            </Title>
            <Standing />
            <LitterTabs lambs=lambs selected=selected chosen=chosen />
            {move || match selected.get() {
                Some(lamb) => view! { <OneLamb id=lamb /> }.into_any(),
                None => view! { <NextLamb first=lambs.with_untracked(Vec::is_empty) on_born=born /> }.into_any(),
            }}
            {move || {
                (dam.get().is_none() && selected.get().is_some())
                    .then(|| view! { <Button label=words::GIVE_DAM on_press=move || giving.set(true) /> })
            }}
            {move || giving.get().then(|| view! { <GiveDam lambs=lambs on_close=move || giving.set(false) /> })}
        </Page>
    }
}

/// The lambs of this litter so far, one to be chosen.
#[component]
fn LitterTabs(
    lambs: Memo<Vec<LambId>>,
    selected: Memo<Option<LambId>>,
    chosen: RwSignal<Option<LambId>>,
) -> impl IntoView {
    let farm = use_farm();
    let options = Signal::derive(move || {
        let mut options: Vec<Choice<Option<LambId>>> = farm.with(|ground| {
            lambs
                .get()
                .into_iter()
                .map(|id| Choice::new(Some(id), animals::lamb_of(&ground.flock, id)))
                .collect()
        });
        if selected.get().is_none() && !options.is_empty() {
            options.push(Choice::new(None, words::NEXT));
        }
        options
    });
    let now = Signal::derive(move || Some(selected.get()));
    // One lamb alone needs no choosing.
    move || {
        options.with(|options| options.len() > 1).then(|| {
            view! {
                <Choices
                    label=words::LITTER
                    options=options
                    chosen=now
                    on_choose=move |lamb| chosen.set(lamb)
                />
            }
        })
    }
}

/// The moment of birth: one tap that says what it is, and starts the clocks.
#[component]
fn NextLamb(first: bool, #[prop(into)] on_born: Callback<(Option<Sex>, bool)>) -> impl IntoView {
    let lead = if first { words::FIRST } else { words::ANOTHER };
    let born = move |sex: Option<Sex>, alive: bool| move || on_born.run((sex, alive));
    view! {
        <p class="lead">{lead}</p>
        <Buttons columns=2>
            <BigButton label=words::EWE_LAMB on_press=born(Some(Sex::Ewe), true) />
            <BigButton label=words::RAM_LAMB on_press=born(Some(Sex::Ram), true) />
            <BigButton label=words::NOT_SEEN weight=Weight::Outline on_press=born(None, true) />
            <BigButton label=words::BORN_DEAD weight=Weight::Outline on_press=born(None, false) />
        </Buttons>
        <p class="small-print">{cautions::PEOPLE}</p>
    }
}

/// Everything for one lamb.
#[component]
fn OneLamb(id: LambId) -> impl IntoView {
    let farm = use_farm();
    let lamb = Memo::new(move |_| farm.with(|ground| ground.flock.lamb(id).cloned()));
    let alive = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().is_some_and(Lamb::lives)));
    view! {
        <SexChoice id=id lamb=lamb />
        {move || alive.get().then(|| view! {
            <BirthWeight id=id lamb=lamb />
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
        })}
        <Help id=id lamb=lamb />
        <Remark text="">
            <SmallLink href=Screen::Lamb(id).hash() label=words::MORE />
        </Remark>
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

/// The weight: typed on large keys, noted as soon as the keys rest, with a plain verdict.
#[component]
fn BirthWeight(id: LambId, lamb: Memo<Option<Lamb>>) -> impl IntoView {
    let farm = use_farm();
    let system = RwSignal::new(untrack(|| farm.system()));
    let shown = move |mass: Mass, system: System| match system {
        System::Metric => number(mass.as_kilograms(), 2),
        System::Us => number(mass.as_pounds(), 1),
    };
    let known = untrack(|| lamb.get()).and_then(|lamb| lamb.birth_weight());
    let value = RwSignal::new(known.map(|mass| shown(mass, system.get_untracked())).unwrap_or_default());
    let read = Memo::new(move |_| Weighed::at_birth(&value.get(), system.get()));
    let note = move |mass: Mass| note_weight(farm, id, mass);
    let settle = move || {
        if let Weighed::Good(mass) = read.get_untracked() {
            note(mass);
        }
    };
    let resting = StoredValue::new(None::<TimeoutHandle>);
    let typed = move || {
        if let Some(before) = resting.get_value() {
            before.clear();
        }
        resting.set_value(set_timeout_with_handle(settle, KEYS_REST).ok());
    };
    on_cleanup(move || {
        if let Some(before) = resting.get_value() {
            before.clear();
            settle();
        }
    });
    let answer = move |mass: Mass| {
        // The answer is shown in the unit it was meant in, so that it is not asked about again.
        if read.get_untracked() != Weighed::Good(mass) {
            note(mass);
        }
    };
    let units = vec![Choice::new(System::Metric, "kg"), Choice::new(System::Us, "lb")];
    let says = move || {
        let noted = lamb.with(|lamb| lamb.as_ref().and_then(Lamb::birth_weight));
        match read.get() {
            Weighed::Wrong(wrong) => view! { <p class="field-error" role="alert">{wrong}</p> }.into_any(),
            Weighed::Ask(typed, _) if noted == Some(typed) => verdict(farm, id, typed).into_any(),
            Weighed::Ask(typed, meant) if noted != Some(meant) => {
                view! { <AskPounds typed=typed meant=meant on_answer=answer /> }.into_any()
            }
            Weighed::Ask(_, meant) => verdict(farm, id, meant).into_any(),
            Weighed::Good(mass) => verdict(farm, id, mass).into_any(),
            Weighed::Nothing => ().into_any(),
        }
    };
    let readout = Signal::derive(move || {
        let typed = value.get();
        if typed.is_empty() { "–".to_owned() } else { typed }
    });
    view! {
        <Keypad value=value point='.' on_change=move |_: String| typed()>
            <Readout label=words::WEIGHT value=readout />
            <Choices
                label=words::UNITS
                options=units
                chosen=Signal::derive(move || Some(system.get()))
                on_choose=move |unit| {
                    system.set(unit);
                    typed();
                }
                snug=true
            />
            {says}
        </Keypad>
    }
}

/// Notes a birth weight, or corrects the one that was noted.
fn note_weight(farm: Farm, id: LambId, mass: Mass) {
    let before: Option<(EntryId, Mass, yeanling_core::units::Moment)> = farm.peek(|ground| {
        let lamb = ground.flock.lamb(id)?;
        let first = lamb.birth_weight().and(lamb.weights.first())?;
        let is_it = |line: &&Line| {
            !line.struck
                && line.at == first.at
                && matches!(line.event, Event::Weighed { lamb, .. } if lamb == id)
        };
        ground.flock.lines.iter().find(is_it).map(|line| (line.entry, first.mass, line.at))
    });
    match before {
        Some((_, noted, _)) if noted == mass => {}
        Some((entry, _, at)) => {
            farm.tap(Event::Amended { entry, event: Box::new(Event::Weighed { lamb: id, mass }), at });
        }
        None => {
            farm.tap(Event::Weighed { lamb: id, mass });
        }
    }
}

/// A plain verdict on the weight, which can be asked why.
fn verdict(farm: Farm, id: LambId, mass: Mass) -> impl IntoView {
    let size = farm.peek(|ground| ground.flock.litter_of(id).map_or(1, |litter| litter.lambs.len()));
    let band = birth_weight::band(mass, u8::try_from(size).unwrap_or(u8::MAX)).ok();
    band.map(|band| {
        let text = words::verdict(why::verdict(band.verdict), &animals::litter(size));
        view! {
            <Remark text=text>
                <WhyButton why=why_text(why::birth_weight(&band, untrack(|| farm.system()))) />
            </Remark>
        }
    })
}

/// Gives a litter its dam.
#[component]
fn GiveDam(lambs: Memo<Vec<LambId>>, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let pick = move |picked: Picked| {
        if let Picked::Ewe(dam) = picked {
            for lamb in lambs.get_untracked() {
                farm.tap(Event::DamGiven { lamb, dam });
            }
        }
        on_close.run(());
    };
    view! {
        <Sheet title=words::WHICH_DAM on_close=on_close>
            <EwePicker unknown=false on_pick=pick />
        </Sheet>
    }
}
