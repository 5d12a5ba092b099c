//! One ewe at work: each lamb as it comes, everything for it on one screen, every tap saved as it is made.

mod labor;
mod one_lamb;
mod weight;
mod who;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Event, EweId, LambId, Sex};
use yeanling_core::flock::Litter;

pub(crate) use weight::HalfTyped;
pub(crate) use who::Who;

use labor::LaborPart;
use one_lamb::OneLamb;

use crate::farm::{Farm, Ground, use_farm};
use crate::parts::{BigButton, Button, Buttons, Choice, Choices, Page, Said, Sheet, Title, Weight};
use crate::pieces::{EwePicker, Picked, Standing, Top};
use crate::route::{Screen, Way};
use crate::words::common::clock;
use crate::words::{animals, cautions, frame, lambing as words};

/// The lamb whose birth was noted last, for the screen that is made anew by it.
#[derive(Clone, Copy, Debug)]
pub(crate) struct JustBorn(StoredValue<Option<LambId>>);

impl JustBorn {
    /// Lets the screen find it.
    pub(crate) fn provide() {
        provide_context(Self(StoredValue::new(None)));
    }

    fn take(self) -> Option<LambId> {
        self.0.try_update_value(Option::take).flatten()
    }
}

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

/// The litter being born.
fn litter_of(of: Of, ground: &Ground, farm: Farm) -> Option<Litter> {
    match of {
        Of::Lamb(lamb) => ground.flock.litter_of(lamb).cloned(),
        Of::Unknown => None,
        Of::Ewe(ewe) => {
            let now = farm.peek_now();
            let latest = ground.flock.litters_of(ewe).into_iter().next()?;
            latest.goes_on(now).then(|| latest.clone())
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
    let some = Memo::new(move |_| lambs.with(|lambs| !lambs.is_empty()));
    // What is chosen: a lamb, or the one that comes next. Who opens a lambing again has come for the next: on the keys of
    // one that was born before, its sex and weight would be noted of the wrong lamb.
    let just_born = expect_context::<JustBorn>();
    let chosen = RwSignal::new(just_born.take().filter(|born| of == Of::Lamb(*born)));
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
    let scanned = Memo::new(move |_| {
        let now = farm.now();
        dam.get().and_then(|dam| farm.with(|ground| ground.flock.scanned_for(dam, now)))
    });
    let sub = Signal::derive(move || {
        let began = litter.with(|litter| litter.as_ref().map(|litter| words::began(&clock(litter.began))));
        let parts: Vec<String> = began.into_iter().chain(scanned.get().map(words::scanned)).collect();
        parts.join(" · ")
    });
    let to_come = Memo::new(move |_| {
        lambs.with(|lambs| scanned.get().is_some_and(|scanned| usize::from(scanned) > lambs.len()))
    });
    let born = move |sex: Option<Sex>, alive: bool| {
        let mate = lambs.with_untracked(|lambs| lambs.first().copied());
        let event = Event::LambBorn { dam: dam.get_untracked(), beside: mate, sex, alive };
        let Some(entry) = farm.tap(event) else { return };
        chosen.set(Some(entry.as_lamb()));
        if of == Of::Unknown {
            just_born.0.set_value(Some(entry.as_lamb()));
            Screen::LambingLamb(entry.as_lamb()).replace();
        }
    };
    // A weight that was typed and is still asked about is not noted: neither the next lamb nor the end comes before it.
    let unanswered = RwSignal::new(false);
    let held = RwSignal::new(false);
    let free = move || {
        held.set(unanswered.get_untracked());
        !held.get_untracked()
    };
    let asking = RwSignal::new(false);
    let end = move || {
        if let Some(lamb) = lambs.with_untracked(|lambs| lambs.first().copied())
            && farm.tap(Event::AllBorn { lamb }).is_some()
        {
            Screen::Watch.go();
        }
    };
    let all_born = move || {
        if !free() {
            return;
        }
        if to_come.get_untracked() {
            asking.set(true);
        } else {
            end();
        }
    };
    let next = move || {
        if free() {
            chosen.set(None);
        }
    };
    let weight = |likely: bool| if likely { Weight::Filled } else { Weight::Outline };
    let thumb = move || {
        view! {
            {live(move || (held.get() && unanswered.get())
                .then(|| view! { <p class="field-error" role="alert">{words::WEIGHT_FIRST}</p> }).into_any())}
            {live(move || selected.get().is_some().then(|| view! {
                    <BigButton label=words::NEXT weight=weight(to_come.get()) on_press=next />
                }).into_any())}
            {live(move || some.get().then(|| view! {
                    <BigButton label=words::ALL_BORN weight=weight(!to_come.get()) on_press=all_born />
                }).into_any())}
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
            {live(move || { match selected.get() {
                Some(lamb) => view! { <OneLamb id=lamb unanswered=unanswered /> }.into_any(),
                None => view! {
                    <NextLamb first=lambs.with_untracked(Vec::is_empty) on_born=born />
                    {live(move || dam.get().map(|ewe| view! { <LaborPart ewe=ewe /> }).into_any())}
                }
                .into_any(),
            } }.into_any())}
            {live(move || (dam.get().is_none() && some.get())
                    .then(|| view! { <Button label=words::GIVE_DAM on_press=move || giving.set(true) /> }).into_any())}
            {live(move || asking.get().then(|| {
                let saw_more = scanned
                    .get_untracked()
                    .map(|scanned| words::scan_saw_more(scanned, lambs.with_untracked(Vec::len)))
                    .unwrap_or_default();
                let answer = move |all: bool| {
                    asking.set(false);
                    if all { end() } else { chosen.set(None) }
                };
                view! { <IsThatAll saw_more=saw_more on_answer=answer on_close=move || asking.set(false) /> }
            }).into_any())}
            {live(move || giving.get().then(|| view! { <GiveDam lambs=lambs on_close=move || giving.set(false) /> }).into_any())}
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
    let half_typed = expect_context::<HalfTyped>();
    let options = Signal::derive(move || {
        let chosen_now = selected.get();
        let mut options: Vec<Choice<Option<LambId>>> = farm.with(|ground| {
            lambs
                .get()
                .into_iter()
                .map(|id| {
                    let name = animals::lamb_of(&ground.flock, id);
                    // Its digits stand where it is chosen; that they wait is seen from here.
                    let waits = chosen_now != Some(id) && half_typed.waits(id);
                    Choice::new(Some(id), if waits { words::weight_waits(&name) } else { name })
                })
                .collect()
        });
        if selected.get().is_none() && !options.is_empty() {
            options.push(Choice::new(None, words::NEXT));
        }
        options
    });
    let now = Signal::derive(move || Some(selected.get()));
    let count = Memo::new(move |_| options.with(Vec::len));
    live(move || match count.get() {
        0 => ().into_any(),
        // One lamb alone needs no choosing, but a name: what stands below is about it, not about the next.
        1 => {
            let name = move || options.with(|one| one.first().map(|one| one.label.clone()));
            view! { <h2 class="litter-one">{live(move || name().into_any())}</h2> }.into_any()
        }
        _ => view! {
            <Choices label=words::LITTER options=options chosen=now on_choose=move |lamb| chosen.set(lamb) />
        }
        .into_any(),
    })
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

/// Asks whether that was all, when a scan saw more.
#[component]
fn IsThatAll(
    saw_more: String,
    #[prop(into)] on_answer: Callback<(bool,)>,
    #[prop(into)] on_close: Callback<()>,
) -> impl IntoView {
    view! {
        <Sheet title=words::ALL_ASK on_close=on_close>
            <p>
                <Said text=saw_more />
            </p>
            <Buttons columns=2>
                <Button label=words::ALL_NO weight=Weight::Filled on_press=move || on_answer.run((false,)) />
                <Button label=words::ALL_YES on_press=move || on_answer.run((true,)) />
            </Buttons>
        </Sheet>
    }
}

/// Gives a litter its dam.
#[component]
fn GiveDam(lambs: Memo<Vec<LambId>>, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let pick = move |picked: Picked| {
        let noted = match picked {
            Picked::Ewe(dam) => {
                let given = lambs.get_untracked().into_iter().map(|lamb| Event::DamGiven { lamb, dam });
                farm.tap_all(given.collect())
            }
            Picked::Unknown => true,
        };
        if noted {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::WHICH_DAM on_close=on_close>
            <EwePicker on_pick=pick />
        </Sheet>
    }
}
