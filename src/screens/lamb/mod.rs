//! One lamb: the window, the next feed, what to look at, and all that was noted.

mod care;
mod charts;
mod dam;
mod feeding;
mod weaning;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, LambId, Life, Milk, Sex};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::window;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, KEPT_FROM, State, Task};

use care::{BirthWeightLine, Marking, Warmth};
use dam::DamSheet;
use feeding::{Feeding, plan};
use weaning::{SolidsSheet, Weaning, weaned_from_ewe};

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Empty, Figure, FigureSize, LinkButton, Notice, NoticeKind, Page, Remark, Said, Section,
    Title, Weight, WhyButton,
};
use crate::pieces::{
    AnimalTimeline, BellySheet, CameFrom, CastrateSheet, DeathSheet, ExaminedSheet, FeedSheet, FosterSheet,
    FoundSheet, LeaveSheet, PaintSheet, RemarkSheet, Standing, TagSheet, Top, TreatSheet, VetSheet,
    VigorSheet, WeightSheet, Withheld, milk_ribbon, why_text,
};
use crate::route::{Screen, Way};
use crate::words::common::{day_and_clock, mass, span};
use crate::words::{animals, danger, frame, lamb as words, life, watch, why};

/// From this age on the register lies open (ours).
const OPEN_FROM: TimeDelta = TimeDelta::days(7);

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Vigor,
    Belly,
    Weigh,
    Feed,
    Solids,
    Tag,
    Remark,
    Died,
    Foster,
    Mark,
    Treat,
    Castrate,
    Leave,
    Examined,
    Vet,
    Found,
    Dam,
}

/// What stands at the head of the screen.
#[derive(Clone, Debug, PartialEq)]
struct Head {
    name: String,
    sub: String,
    dam: Option<(Screen, String)>,
    /// Who rears it, if that is another.
    rearer: Option<(Screen, String)>,
    /// How it left, or that she is a ewe now and where.
    gone: Option<String>,
    ewe: Option<Screen>,
    lives: bool,
    dead: bool,
    newborn: bool,
}

/// One lamb.
#[component]
pub(crate) fn LambScreen(
    /// Which.
    id: LambId,
) -> impl IntoView {
    let farm = use_farm();
    let head = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).map(|lamb| head(&ground.flock, lamb, now)))
    });
    let there = Memo::new(move |_| head.with(Option::is_some));
    let part = move |read: fn(&Head) -> String| {
        Signal::derive(move || head.with(|head| head.as_ref().map(read).unwrap_or_default()))
    };
    let lives = Memo::new(move |_| head.with(|head| head.as_ref().is_some_and(|head| head.lives)));
    let dead = Memo::new(move |_| head.with(|head| head.as_ref().is_some_and(|head| head.dead)));
    // The sign and the step, as on the Watch: one answer for one lamb.
    let in_danger = Memo::new(move |_| {
        let system = farm.system();
        farm.with_duties(|_, duties| {
            let duty = duties
                .iter()
                .find(|duty| duty.subject == Animal::Lamb(id) && matches!(duty.task, Task::Danger(_)))?;
            let called = duty.vet.as_ref().map(danger::called);
            let task = watch::task(duty.task, system);
            Some([Some(task), called].into_iter().flatten().collect::<Vec<_>>().join(" · "))
        })
    });
    let newborn = Memo::new(move |_| head.with(|head| head.as_ref().is_some_and(|head| head.newborn)));
    let gone = Memo::new(move |_| head.with(|head| head.as_ref().and_then(|head| head.gone.clone())));
    let ewe = Memo::new(move |_| head.with(|head| head.as_ref().and_then(|head| head.ewe)));
    let dam = Memo::new(move |_| head.with(|head| head.as_ref().and_then(|head| head.dam.clone())));
    let has_dam =
        Memo::new(move |_| farm.with(|ground| ground.flock.lamb(id).is_some_and(|lamb| lamb.dam.is_some())));
    let rearer = Memo::new(move |_| head.with(|head| head.as_ref().and_then(|head| head.rearer.clone())));
    let open = RwSignal::new(Open::Nothing);
    view! {
        <Page>
            <Top back=CameFrom::back(Screen::Lamb(id)) />
            {live(move || {
                if !there.get() {
                    return view! { <Title text=frame::GONE /><Standing /><Empty text=frame::GONE /> }.into_any();
                }
                view! {
                    <Title text=part(|head| head.name.clone())>
                        <Said text=part(|head| head.sub.clone()) />
                    </Title>
                    <Standing />
                    {live(move || (!lives.get()).then(|| view! {
                        <Notice kind=NoticeKind::Calm>
                            <p>{gone.get().unwrap_or_else(|| words::DEAD.to_owned())}</p>
                        </Notice>
                    }).into_any())}
                    {live(move || dead.get().then(|| view! {
                        <Button label=life::EXAMINED on_press=move || open.set(Open::Examined) />
                    }).into_any())}
                    {live(move || ewe.get().map(|screen| view! {
                        <LinkButton href=screen.hash() label=words::AS_EWE />
                    }.into_any()).into_any())}
                    {live(move || lives.get().then(|| view! { <Withheld animal=Animal::Lamb(id) /> }.into_any()).into_any())}
                    {live(move || in_danger.get().map(|line| view! {
                        <Notice kind=NoticeKind::Bad><p class="lead"><Said text=line /></p></Notice>
                    }).into_any())}
                    {live(move || (lives.get() && newborn.get()).then(|| view! { <FirstMilk id=id /> }).into_any())}
                    {live(move || lives.get().then(|| view! { <Feeding id=id open=open /> }).into_any())}
                    {live(move || (lives.get() && newborn.get()).then(|| charts::first_day_milk(id)).into_any())}
                    {live(move || lives.get().then(|| view! { <Warmth id=id /> }.into_any()).into_any())}
                    {live(move || lives.get().then(|| view! { <Weaning id=id open=open /> }).into_any())}
                    {live(move || lives.get().then(|| view! { <Looks id=id open=open /> <BirthWeightLine id=id /> <Marking id=id /> }).into_any())}
                    {live(move || lives.get().then(|| register(id, open)).into_any())}
                    {charts::weights(id)}
                    <AnimalTimeline animal=Animal::Lamb(id) />
                    {live(move || rearer.get().map(|(screen, name)| view! { <LinkButton href=screen.hash() label=name /> }).into_any())}
                    {live(move || dam.get().map(|(screen, name)| view! { <LinkButton href=screen.hash() label=name /> }).into_any())}
                    {live(move || has_dam.get().then(|| view! {
                        <Button label=words::WRONG_EWE weight=Weight::Quiet on_press=move || open.set(Open::Dam) />
                    }).into_any())}
                    <Sheets id=id open=open />
                }
                    .into_any()
            }.into_any())}
        </Page>
    }
}

fn head(flock: &Flock, lamb: &Lamb, now: Moment) -> Head {
    let system = flock.practice.system;
    let size = flock.litter_of(lamb.id).map_or(1, |litter| litter.lambs.len());
    let mut parts = vec![
        animals::sex(lamb.sex).to_owned(),
        animals::litter(size),
        words::born_at(&day_and_clock(lamb.born, now)),
    ];
    let rearer = lamb.foster_dam().map(|ewe| (ewe, animals::ewe_of(flock, ewe)));
    parts.extend(rearer.as_ref().map(|(_, name)| life::with_ewe(name)));
    parts.extend(lamb.weight().map(|weight| format!("*{}*", mass(weight, system))));
    Head {
        name: animals::lamb(flock, lamb),
        sub: parts.join(" · "),
        dam: Some(match lamb.dam {
            Some(dam) => (Screen::Ewe(dam), words::dam(&animals::ewe_of(flock, dam))),
            None => (Screen::LambingLamb(lamb.id), words::GIVE_DAM.to_owned()),
        }),
        rearer: rearer.map(|(ewe, name)| (Screen::Ewe(ewe), words::reared_by(&name))),
        gone: match (&lamb.left, lamb.kept) {
            (Some(left), _) => Some(life::left(left)),
            (None, Some(ewe)) => Some(life::kept(&animals::ewe_of(flock, ewe))),
            (None, None) => None,
        },
        ewe: lamb.kept.map(Screen::Ewe),
        lives: lamb.lives(),
        dead: lamb.died.is_some() || !lamb.born_alive,
        newborn: lamb.age(now) < TimeDelta::hours(24),
    }
}

/// The window of first milk: the time left in large figures, how it stands, and the ribbon.
#[component]
fn FirstMilk(id: LambId) -> impl IntoView {
    let farm = use_farm();
    let age = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).map(|lamb| lamb.age(now)).unwrap_or_default())
    });
    // Once it should have had some, the long time left would tell a late lamb as a calm one.
    let hungry = Memo::new(move |_| {
        let now = farm.now();
        let first_milk = |duty: &Duty| matches!(duty.task, Task::FirstMilk { .. });
        let due = |duty: &Duty| duty.subject == Animal::Lamb(id) && duty.state(now) > State::Coming;
        farm.with_duties(|_, duties| duties.iter().any(|duty| first_milk(duty) && due(duty)))
    });
    let left = Signal::derive(move || match window::left(age.get()) {
        Some(_) if hungry.get() => span(age.get()),
        Some(left) => span(left),
        None => words::CLOSED.to_owned(),
    });
    let also = Signal::derive(move || match window::left(age.get()) {
        Some(left) if hungry.get() => watch::no_milk(&span(left)),
        Some(_) => words::LEFT.to_owned(),
        None => words::CLOSED_ALSO.to_owned(),
    });
    let says = Signal::derive(move || {
        let now = farm.now();
        let limits = farm.practice().limits;
        farm.with(|ground| {
            ground.flock.lamb(id).map(|lamb| words::stands(lamb, &limits, now)).unwrap_or_default()
        })
    });
    let because = Signal::derive(move || why_text(why::window(age.get())));
    view! {
        <Section title=words::FIRST_MILK>
            <Figure value=left also=also size=FigureSize::Head>
                <Remark text=says>
                    <WhyButton why=because />
                </Remark>
            </Figure>
            {milk_ribbon(id, true)}
        </Section>
    }
}

/// The buttons of what to look at; what was seen is ticked.
#[component]
fn Looks(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let seen = move |read: fn(&Lamb) -> bool, label: &'static str| {
        Signal::derive(move || {
            let seen = farm.with(|ground| ground.flock.lamb(id).is_some_and(read));
            if seen { format!("{label} ✓") } else { label.to_owned() }
        })
    };
    let note = move |event: Event| {
        move || {
            farm.tap(event.clone());
        }
    };
    let opens = move |sheet: Open| move || open.set(sheet);
    let newborn = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).is_some_and(|lamb| lamb.age(now) < TimeDelta::hours(24)))
    });
    view! {
        <Section title=words::LOOK>
            <Buttons columns=3>
                <Button
                    label=seen(|lamb| !lamb.sucked.is_empty(), words::SUCKED)
                    on_press=note(Event::Sucked { lamb: id })
                />
                <Button label=seen(|lamb| !lamb.belly.is_empty(), words::BELLY) on_press=opens(Open::Belly) />
                <Button label=seen(|lamb| !lamb.vigor.is_empty(), words::VIGOR) on_press=opens(Open::Vigor) />
                <Button
                    label=seen(|lamb| !lamb.stood.is_empty(), words::UP)
                    on_press=note(Event::Stood { lamb: id })
                />
                <Button label=seen(|lamb| !lamb.weights.is_empty(), words::WEIGH) on_press=opens(Open::Weigh) />
                <Button
                    label=seen(|lamb| !lamb.navel.is_empty(), words::NAVEL)
                    on_press=note(Event::NavelDipped { lamb: id })
                />
                <Button
                    label=seen(|lamb| lamb.accepted.last().is_some_and(|(_, accepts)| *accepts), words::ACCEPTED)
                    on_press=note(Event::Accepted { lamb: id, accepts: true })
                />
                <Button
                    label=seen(Lamb::turned_away, words::TURNED_AWAY)
                    on_press=note(Event::Accepted { lamb: id, accepts: false })
                />
                <Button label=words::TAG on_press=opens(Open::Tag) />
                <Button label=words::REMARK on_press=opens(Open::Remark) />
                <Button label=words::DIED on_press=opens(Open::Died) />
                <Button
                    label=seen(|lamb| !lamb.vet.is_empty(), danger::CALLED)
                    on_press=note(Event::VetCalled { animal: Animal::Lamb(id) })
                />
                <Button label=danger::SAID on_press=opens(Open::Vet) />
                {live(move || newborn.get().then(|| view! {
                    <Button label=seen(|lamb| lamb.found.is_some(), danger::FOUND) on_press=opens(Open::Found) />
                }).into_any())}
            </Buttons>
        </Section>
    }
}

/// What is noted of its life beyond the first days, folded away until it is wanted.
fn register(id: LambId, open: RwSignal<Open>) -> AnyView {
    let farm = use_farm();
    let opens = move |sheet: Open| move || open.set(sheet);
    let sex = Memo::new(move |_| farm.with(|ground| ground.flock.lamb(id).and_then(|lamb| lamb.sex)));
    let grown = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).is_some_and(|lamb| lamb.age(now) >= KEPT_FROM))
    });
    // In the first days it is folded away: what is pressed then stands above.
    let now = farm.peek_now();
    let older = farm.peek(|ground| ground.flock.lamb(id).is_some_and(|lamb| lamb.age(now) >= OPEN_FROM));
    let keep = move || {
        if let Some(entry) = farm.tap(Event::Life(Life::KeptAsEwe { lamb: id })) {
            Screen::Ewe(entry.as_ewe()).go();
        }
    };
    view! {
        <details class="fold" open=older>
            <summary>{life::LIFE}</summary>
            <Buttons columns=2>
                <Button label=life::FOSTER on_press=opens(Open::Foster) />
                <Button label=life::TREAT on_press=opens(Open::Treat) />
                <Button label=life::MARK on_press=opens(Open::Mark) />
                <Button label=life::LEAVE on_press=opens(Open::Leave) />
                {weaned_from_ewe(id)}
                {live(move || (sex.get() != Some(Sex::Ewe)).then(|| view! {
                    <Button label=life::CASTRATE on_press=opens(Open::Castrate) />
                }).into_any())}
                {live(move || (grown.get() && sex.get() != Some(Sex::Ram)).then(|| view! {
                    <Button label=life::KEEP on_press=keep />
                }).into_any())}
            </Buttons>
        </details>
    }
    .into_any()
}

/// The sheet that lies open.
#[component]
fn Sheets(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let close = move || open.set(Open::Nothing);
    let animal = Animal::Lamb(id);
    live(move || match open.get() {
        Open::Nothing => ().into_any(),
        Open::Vigor => view! { <VigorSheet lamb=id on_close=close /> }.into_any(),
        Open::Belly => view! { <BellySheet lamb=id on_close=close /> }.into_any(),
        Open::Weigh => view! { <WeightSheet lamb=id on_close=close /> }.into_any(),
        Open::Feed => {
            let (volume, milk) = farm.peek(|ground| {
                let lamb = ground.flock.lamb(id);
                let plan = lamb.map(|lamb| plan(&ground.flock, lamb, farm.peek_now()));
                plan.map_or((None, Milk::DamColostrum), |plan| (plan.volume, plan.milk))
            });
            view! { <FeedSheet lamb=id volume=volume milk=milk on_close=close /> }.into_any()
        }
        Open::Solids => view! { <SolidsSheet lamb=id on_close=close /> }.into_any(),
        Open::Tag => view! { <TagSheet animal=animal on_close=close /> }.into_any(),
        Open::Remark => view! { <RemarkSheet animal=animal on_close=close /> }.into_any(),
        Open::Foster => view! { <FosterSheet lamb=id on_close=close /> }.into_any(),
        Open::Treat => view! { <TreatSheet animals=vec![animal] on_close=close /> }.into_any(),
        Open::Castrate => view! { <CastrateSheet lamb=id on_close=close /> }.into_any(),
        Open::Leave => view! { <LeaveSheet animal=animal on_close=close /> }.into_any(),
        Open::Mark => view! { <PaintSheet animal=animal on_close=close /> }.into_any(),
        Open::Vet => view! { <VetSheet animal=animal on_close=close /> }.into_any(),
        Open::Found => view! { <FoundSheet lamb=id on_close=close /> }.into_any(),
        Open::Died => view! { <DeathSheet animal=animal on_close=close /> }.into_any(),
        Open::Examined => view! { <ExaminedSheet animal=animal on_close=close /> }.into_any(),
        Open::Dam => view! { <DamSheet lamb=id on_close=close /> }.into_any(),
    })
}
