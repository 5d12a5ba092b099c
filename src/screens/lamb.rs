//! One lamb: the window, the next feed, what to look at, and all that was noted.

use leptos::prelude::*;
use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::{bottle, colostrum, feeds, window};
use yeanling_core::units::{Moment, System, TimeDelta, Volume};

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Button, Buttons, Card, Caution, Empty, Fact, Facts, Figure, FigureSize, LinkButton, Notice,
    NoticeKind, Page, Progress, Remark, Said, Section, SmallButton, Title, Weight, WhyButton, WhyText,
};
use crate::pieces::{
    AnimalTimeline, BellySheet, DeathSheet, FeedSheet, Standing, TextSheet, Top, VigorSheet, WeightSheet,
    milk_ribbon, tube, why_text,
};
use crate::route::Screen;
use crate::words::common::{clock, day_and_clock, mass, volume, volume_number};
use crate::words::{animals, errors, frame, lamb as words, watch, why};

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Vigor,
    Belly,
    Weigh,
    Feed,
    Tag,
    Remark,
    Died,
}

/// What stands at the head of the screen.
#[derive(Clone, Debug, PartialEq)]
struct Head {
    name: String,
    sub: String,
    dam: Option<(Screen, String)>,
    lives: bool,
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
    let newborn = Memo::new(move |_| head.with(|head| head.as_ref().is_some_and(|head| head.newborn)));
    let dam = Memo::new(move |_| head.with(|head| head.as_ref().and_then(|head| head.dam.clone())));
    let open = RwSignal::new(Open::Nothing);
    view! {
        <Page>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            {move || {
                if !there.get() {
                    return view! { <Title text=frame::GONE /><Standing /><Empty text=frame::GONE /> }.into_any();
                }
                view! {
                    <Title text=part(|head| head.name.clone())>
                        <Said text=part(|head| head.sub.clone()) />
                    </Title>
                    <Standing />
                    {move || (!lives.get()).then(|| view! {
                        <Notice kind=NoticeKind::Calm><p>{words::DEAD}</p></Notice>
                    })}
                    {move || (lives.get() && newborn.get()).then(|| view! { <FirstMilk id=id /> })}
                    {move || lives.get().then(|| view! { <Feeding id=id open=open /> })}
                    {move || lives.get().then(|| view! { <Looks id=id open=open /> })}
                    <AnimalTimeline animal=Animal::Lamb(id) />
                    {move || {
                        dam.get().map(|(screen, name)| view! { <LinkButton href=screen.hash() label=name /> })
                    }}
                    <Sheets id=id open=open />
                }
                    .into_any()
            }}
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
    parts.extend(lamb.weight().map(|weight| format!("*{}*", mass(weight, system))));
    Head {
        name: animals::lamb(flock, lamb),
        sub: parts.join(" · "),
        dam: Some(match lamb.dam {
            Some(dam) => (Screen::Ewe(dam), words::dam(&animals::ewe_of(flock, dam))),
            None => (Screen::LambingLamb(lamb.id), words::GIVE_DAM.to_owned()),
        }),
        lives: lamb.lives(),
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
    let left = Signal::derive(move || match window::left(age.get()) {
        Some(left) => crate::words::common::span(left),
        None => words::CLOSED.to_owned(),
    });
    let also = Signal::derive(move || match window::left(age.get()) {
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

/// How much at the next feed, with its reasons; nothing while the weight is not known.
#[derive(Clone, Debug, PartialEq)]
struct Plan {
    title: &'static str,
    volume: Option<Volume>,
    milk: Milk,
    why: Option<WhyText>,
    facts: Vec<Fact>,
    progress: Option<(f64, String)>,
    newborn: bool,
    note: String,
}

fn plan(flock: &Flock, lamb: &Lamb, now: Moment) -> Plan {
    let system = flock.practice.system;
    let age = lamb.age(now);
    let milk = lamb.feeds.last().map(|feed| feed.milk);
    if age < TimeDelta::hours(24) {
        let title = if lamb.hand_fed() { words::NEXT_FEED_HAND } else { words::NEXT_FEED };
        let milk = milk.unwrap_or(Milk::DamColostrum);
        let want = lamb
            .birth_weight()
            .and_then(|weight| colostrum::want(weight, flock.practice.day_rule, flock.practice.housing).ok());
        let Some(want) = want else {
            let note = words::NO_WEIGHT.to_owned();
            return Plan {
                title,
                volume: None,
                milk,
                why: None,
                facts: Vec::new(),
                progress: None,
                newborn: true,
                note,
            };
        };
        let given = lamb.given_first_day(now);
        let last = lamb.feeds.last().map(|feed| feed.at.since(lamb.born));
        let next = feeds::next(&want, given, last, age);
        let by = |wanted: Volume, hours: i64| {
            let at = clock(lamb.born + TimeDelta::hours(hours));
            Fact::new(watch::of(&volume_number(given, system), &volume(wanted, system)), watch::by(&at))
        };
        let why = match &next {
            Some(next) => why::next_feed(next, &want, system),
            None => why::colostrum(&want, system),
        };
        let note = match &next {
            None => words::ENOUGH.to_owned(),
            Some(next) if last.is_some() => words::due(&day_and_clock(lamb.born + next.due_age, now)),
            Some(_) => String::new(),
        };
        let share = given.as_milliliters() / want.by_24h.as_milliliters();
        Plan {
            title,
            volume: next.map(|next| next.volume.to_nearest_five()),
            milk,
            why: Some(why_text(why)),
            facts: vec![by(want.by_6h, 6), by(want.by_18h, 18), by(want.by_24h, 24)],
            progress: lamb
                .hand_fed()
                .then(|| (share, words::given(&volume(given, system), &volume(want.by_24h, system)))),
            newborn: true,
            note,
        }
    } else {
        let milk = milk.unwrap_or(Milk::Replacer);
        let title = words::BOTTLE_FEED;
        match bottle::day(age, lamb.recent_weight(now), flock.practice.bottle_table) {
            Ok(day) => Plan {
                title,
                volume: Some(day.per_feed.to_nearest_five()),
                milk,
                why: Some(why_text(why::bottle(&day, system))),
                facts: vec![
                    Fact::new(format!("*{}*", day.feeds), words::FEEDS_A_DAY),
                    Fact::new(volume(day.day_total, system), words::IN_A_DAY),
                    Fact::new(
                        volume(lamb.given(now - TimeDelta::hours(24), now), system),
                        words::GIVEN_IN_A_DAY,
                    ),
                ],
                progress: None,
                newborn: false,
                note: String::new(),
            },
            Err(error) => Plan {
                title,
                volume: None,
                milk,
                why: None,
                facts: Vec::new(),
                progress: None,
                newborn: false,
                note: errors::no_row(&error, system),
            },
        }
    }
}

/// The next feed by bottle with one tap, or by tube once its safety list is read.
#[component]
fn Feeding(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let plan = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).map(|lamb| plan(&ground.flock, lamb, now)))
    });
    let hand = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground.flock.lamb(id).is_some_and(|lamb| lamb.hand_fed() || lamb.age(now) < TimeDelta::hours(48))
        })
    });
    let fed = move |way: Way| {
        if let Some(Plan { volume: Some(volume), milk, .. }) = plan.get_untracked() {
            farm.tap(Event::Fed { lamb: id, volume, milk, way });
        }
    };
    move || {
        if !hand.get() {
            return view! {
                <Buttons columns=2>
                    <Button label=words::OTHER_FEED on_press=move || open.set(Open::Feed) />
                </Buttons>
            }
            .into_any();
        }
        let Some(plan) = plan.get() else { return ().into_any() };
        let system = farm.system();
        let label = plan.volume.map(|next| volume(next, system));
        let tube_label = label.clone().filter(|_| plan.newborn);
        let other = match system {
            System::Metric => System::Us,
            System::Us => System::Metric,
        };
        let also = plan.volume.map(|next| volume(next, other)).unwrap_or_default();
        view! {
            <Card>
                <Remark text=plan.title />
                {label.map(|label| {
                    let (number, unit) = label.split_once(' ').unwrap_or((&label, ""));
                    let (number, unit) = (number.to_owned(), unit.to_owned());
                    let fed_label = words::fed(&number);
                    view! {
                        <div class="card-top">
                            <div class="card-lead">
                                <Figure value=number unit=unit also=also />
                            </div>
                            <div class="card-action">
                                <ActionButton
                                    label=fed_label
                                    on_press=move || fed(Way::Bottle)
                                    weight=Weight::Filled
                                />
                            </div>
                        </div>
                    }
                })}
                <Remark text=plan.note>
                    {plan.why.map(|why| view! { <WhyButton why=why /> })}
                </Remark>
                {(!plan.facts.is_empty()).then(|| view! { <Facts facts=plan.facts /> })}
                {plan.progress.map(|(share, text)| view! { <Progress share=share text=text /> })}
                <Remark text="">
                    <SmallButton label=words::OTHER_FEED on_press=move || open.set(Open::Feed) />
                </Remark>
            </Card>
            {tube_label.map(|label| view! {
                <details class="fold">
                    <summary>{words::BY_TUBE}</summary>
                    <Caution lines=tube() />
                    <Button label=words::tubed(&label) on_press=move || fed(Way::Tube) />
                </details>
            })}
        }
        .into_any()
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
                <Button label=words::TAG on_press=opens(Open::Tag) />
                <Button label=words::REMARK on_press=opens(Open::Remark) />
                <Button label=words::DIED on_press=opens(Open::Died) />
            </Buttons>
        </Section>
    }
}

/// The sheet that lies open.
#[component]
fn Sheets(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let close = move || open.set(Open::Nothing);
    let animal = Animal::Lamb(id);
    move || match open.get() {
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
        Open::Tag => view! {
            <TextSheet
                title=words::TAG_ASK
                label=words::TAG_LABEL
                event=|animal, tag| Event::Tagged { animal, tag }
                animal=animal
                on_close=close
            />
        }
        .into_any(),
        Open::Remark => view! {
            <TextSheet
                title=words::REMARK_ASK
                label=words::REMARK_LABEL
                long=true
                event=|animal, text| Event::Remarked { animal, text }
                animal=animal
                on_close=close
            />
        }
        .into_any(),
        Open::Died => view! { <DeathSheet animal=animal on_close=close /> }.into_any(),
    }
}
