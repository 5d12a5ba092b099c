//! One ewe: her litters, what can be noted about her, and all that was.

mod due;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, EweId, LambId};
use yeanling_core::figures::{marks, record};

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Empty, LinkButton, Notice, NoticeKind, Page, Rows, Said, Section, Sheet, Title, Weight,
};
use crate::pieces::{
    AnimalTimeline, CameFrom, ConditionSheet, DeathSheet, DescribeSheet, EwePicker, EweWeightSheet,
    ExaminedSheet, LambRow, LeaveSheet, MarkSheet, PaintSheet, Picked, RemarkSheet, ScanSheet, Standing,
    TagSheet, TakeOnSheet, Top, TreatSheet, WhichPenSheet, Withheld,
};
use crate::route::Screen;
use crate::words::common::{date, day_and_clock};
use crate::words::{animals, ewe as words, frame, keep, life, pens, season};

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    TakeOn,
    Tag,
    Remark,
    Died,
    Examined,
    Same,
    Pen,
    Condition,
    Weight,
    Scan,
    Mark,
    Paint,
    Treat,
    Leave,
    Describe,
}

/// One ewe.
#[component]
pub(crate) fn EweScreen(
    /// Which.
    id: EweId,
) -> impl IntoView {
    let farm = use_farm();
    // Who was found to be another is shown as that one.
    let id = farm.peek(|ground| ground.flock.ewe(id).map_or(id, |ewe| ewe.id));
    let open = RwSignal::new(Open::Nothing);
    let ewe = Memo::new(move |_| farm.with(|ground| ground.flock.ewe(id).cloned()));
    let there = Memo::new(move |_| ewe.with(Option::is_some));
    let lives = Memo::new(move |_| ewe.with(|ewe| ewe.as_ref().is_some_and(|ewe| ewe.lives())));
    let dead = Memo::new(move |_| ewe.with(|ewe| ewe.as_ref().is_some_and(|ewe| ewe.died.is_some())));
    let name = Signal::derive(move || ewe.with(|ewe| ewe.as_ref().map(animals::ewe).unwrap_or_default()));
    let sub = Signal::derive(move || {
        let came = ewe.with(|ewe| ewe.as_ref().map(|ewe| words::came(&date(ewe.came))).unwrap_or_default());
        let born = farm.with(|ground| ground.flock.ewe_born(id));
        let breed = ewe.with(|ewe| ewe.as_ref().and_then(|ewe| ewe.breed.clone()));
        let came = words::about(breed, born.map(life::birth_day), came);
        let pen = farm.with(|ground| {
            let (pen, since) = ground.flock.pen_of(Animal::Ewe(id))?;
            ground.flock.pens.get(&pen).map(|pen| (pens::pen(pen), since))
        });
        match pen {
            Some((pen, since)) => words::in_pen(&pen, &day_and_clock(since, farm.now()), &came),
            None => came,
        }
    });
    let gone =
        Memo::new(move |_| ewe.with(|ewe| ewe.as_ref().and_then(|ewe| ewe.left.as_ref().map(life::left))));
    let was = Memo::new(move |_| ewe.with(|ewe| ewe.as_ref().and_then(|ewe| ewe.was)));
    let penned = Memo::new(move |_| farm.with(|ground| ground.flock.pen_of(Animal::Ewe(id)).is_some()));
    let tap = move |event: Event| {
        farm.tap(event);
    };
    let at_work = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let labor = ground.flock.ewe(id).is_some_and(|ewe| ewe.labor.is_some());
            labor || ground.flock.litters_of(id).first().is_some_and(|litter| litter.goes_on(now))
        })
    });
    let odd = Memo::new(move |_| {
        farm.with(|ground| {
            let began = ground.flock.litters_of(id).first()?.began;
            ground.flock.odd_birth(id, began)
        })
    });
    let thumb = move || {
        view! {
            {live(move || lives.get().then(|| {
                let label = if at_work.get() { words::LAMBING_ON } else { words::LAMBING };
                view! { <LinkButton href=Screen::LambingEwe(id).hash() label=label big=true weight=Weight::Filled /> }
            }).into_any())}
        }
    };
    view! {
        <Page thumb=thumb>
            <Top back=CameFrom::back(Screen::Ewe(id)) />
            {live(move || {
                if !there.get() {
                    return view! { <Title text=frame::GONE /><Standing /><Empty text=frame::GONE /> }.into_any();
                }
                view! {
                    <Title text=name>
                        <Said text=sub />
                    </Title>
                    <Standing />
                    {live(move || (!lives.get()).then(|| view! {
                        <Notice kind=NoticeKind::Calm>
                            <p>{gone.get().unwrap_or_else(|| words::DEAD.to_owned())}</p>
                        </Notice>
                    }).into_any())}
                    {live(move || lives.get().then(|| view! { <Withheld animal=Animal::Ewe(id) /> }.into_any()).into_any())}
                    {live(move || odd.get().map(|odd| view! {
                        <Notice kind=NoticeKind::Calm><p>{season::odd_birth(&odd)}</p></Notice>
                    }.into_any()).into_any())}
                    {live(move || lives.get().then(|| due::due(id)).into_any())}
                    <HerRecord id=id />
                    <Litters id=id />
                    <FosteredOn id=id />
                    <Section title=words::NOTE>
                        <Buttons columns=2>
                            {live(move || lives.get().then(|| view! {
                                <Button label=words::INTO_PEN on_press=move || open.set(Open::Pen) />
                                {live(move || penned.get().then(|| view! {
                                    <Button
                                        label=words::OUT_OF_PEN
                                        on_press=move || tap(Event::LetOut { animal: Animal::Ewe(id) })
                                    />
                                }).into_any())}
                                <Button
                                    label=words::AFTERBIRTH
                                    on_press=move || tap(Event::AfterbirthPassed { ewe: id })
                                />
                                <Button
                                    label=words::LOOKED
                                    on_press=move || tap(Event::LookedAt { animal: Animal::Ewe(id) })
                                />
                                <Button
                                    label=words::VET
                                    on_press=move || tap(Event::VetCalled { animal: Animal::Ewe(id) })
                                />
                                <Button label=life::TAKE_ON on_press=move || open.set(Open::TakeOn) />
                                <Button label=season::CONDITION on_press=move || open.set(Open::Condition) />
                                <Button label=season::WEIGH on_press=move || open.set(Open::Weight) />
                                <Button label=season::SCAN on_press=move || open.set(Open::Scan) />
                                <Button label=season::MARK on_press=move || open.set(Open::Mark) />
                                <Button label=life::TREAT on_press=move || open.set(Open::Treat) />
                                <Button label=life::MARK on_press=move || open.set(Open::Paint) />
                                <Button label=life::LEAVE on_press=move || open.set(Open::Leave) />
                            }).into_any())}
                            <Button label=life::DESCRIBE on_press=move || open.set(Open::Describe) />
                            <Button label=words::TAG on_press=move || open.set(Open::Tag) />
                            <Button label=words::REMARK on_press=move || open.set(Open::Remark) />
                            <Button label=words::SAME on_press=move || open.set(Open::Same) />
                            {live(move || if dead.get() {
                                view! { <Button label=life::EXAMINED on_press=move || open.set(Open::Examined) /> }.into_any()
                            } else {
                                view! { <Button label=words::DIED on_press=move || open.set(Open::Died) /> }.into_any()
                            })}
                        </Buttons>
                    </Section>
                    {live(move || was.get().map(|lamb| view! {
                        <LinkButton href=Screen::Lamb(lamb).hash() label=life::WAS />
                    }.into_any()).into_any())}
                    <AnimalTimeline animal=Animal::Ewe(id) />
                    <Sheets id=id open=open />
                }
                    .into_any()
            }.into_any())}
        </Page>
    }
}

/// Her record over all her years; nothing before her first lambing.
#[component]
fn HerRecord(id: EweId) -> impl IntoView {
    let farm = use_farm();
    let lines = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let flock = &ground.flock;
            let known = record(flock, id, now).filter(|known| known.litters > 0 || known.barren > 0)?;
            let mut lines = keep::record(&known, flock.practice.system);
            lines.extend(
                marks(&known, &flock.practice.keep_marks)
                    .into_iter()
                    .map(|mark| format!("{}: *{}*", keep::LOOK_AGAIN_HER, keep::mark(mark))),
            );
            Some(lines)
        })
    });
    live(move || {
        lines
            .get()
            .map(|lines| {
                let lines = lines.into_iter().map(|line| view! { <p><Said text=line /></p> }.into_any());
                view! { <Section title=keep::RECORD>{lines.collect_view()}</Section> }
            })
            .into_any()
    })
}

/// Her litters, the latest first.
#[component]
fn Litters(id: EweId) -> impl IntoView {
    let farm = use_farm();
    let litters = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground
                .flock
                .litters_of(id)
                .into_iter()
                .map(|litter| {
                    let title = words::litter(&day_and_clock(litter.began, now), litter.lambs.len());
                    (litter.id, title, litter.lambs.clone())
                })
                .collect::<Vec<(LambId, String, Vec<LambId>)>>()
        })
    });
    live(move || {
        if litters.with(Vec::is_empty) {
            return view! { <Section title=words::LAMBS><p>{words::NO_LAMBS}</p></Section> }.into_any();
        }
        litters
            .get()
            .into_iter()
            .map(|(_, title, lambs)| {
                view! {
                    <Section title=title>
                        <Rows>{lambs.into_iter().map(|lamb| view! { <LambRow id=lamb /> }).collect_view()}</Rows>
                    </Section>
                }
            })
            .collect_view()
            .into_any()
    })
}

/// The lambs of others that she rears; nothing when there are none.
#[component]
fn FosteredOn(id: EweId) -> impl IntoView {
    let farm = use_farm();
    let lambs = Memo::new(move |_| {
        farm.with(|ground| {
            let lambs = ground.flock.lambs_at_foot(id).into_iter();
            lambs.filter(|lamb| lamb.dam != Some(id)).map(|lamb| lamb.id).collect::<Vec<_>>()
        })
    });
    live(move || {
        let rows = move || lambs.get().into_iter().map(|lamb| view! { <LambRow id=lamb /> }).collect_view();
        (!lambs.with(Vec::is_empty))
            .then(|| view! { <Section title=life::FOSTERED_ON><Rows>{rows()}</Rows></Section> })
            .into_any()
    })
}

/// The sheet that lies open.
#[component]
fn Sheets(id: EweId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let close = move || open.set(Open::Nothing);
    let animal = Animal::Ewe(id);
    live(move || match open.get() {
        Open::Nothing => ().into_any(),
        Open::TakeOn => view! { <TakeOnSheet ewe=id on_close=close /> }.into_any(),
        Open::Tag => view! { <TagSheet animal=animal on_close=close /> }.into_any(),
        Open::Remark => view! { <RemarkSheet animal=animal on_close=close /> }.into_any(),
        Open::Condition => view! { <ConditionSheet ewe=id on_close=close /> }.into_any(),
        Open::Weight => view! { <EweWeightSheet ewe=id on_close=close /> }.into_any(),
        Open::Scan => view! { <ScanSheet ewe=id on_close=close /> }.into_any(),
        Open::Mark => view! { <MarkSheet ewe=id on_close=close /> }.into_any(),
        Open::Pen => view! { <WhichPenSheet animal=animal on_close=close /> }.into_any(),
        Open::Treat => view! { <TreatSheet animals=vec![animal] on_close=close /> }.into_any(),
        Open::Leave => view! { <LeaveSheet animal=animal on_close=close /> }.into_any(),
        Open::Describe => view! { <DescribeSheet ewe=id on_close=close /> }.into_any(),
        Open::Paint => view! { <PaintSheet animal=animal on_close=close /> }.into_any(),
        Open::Died => view! { <DeathSheet animal=animal on_close=close /> }.into_any(),
        Open::Examined => view! { <ExaminedSheet animal=animal on_close=close /> }.into_any(),
        Open::Same => {
            let pick = move |picked: Picked| {
                let noted = match picked {
                    Picked::Ewe(also) => {
                        farm.tap(Event::SameAnimal { keep: animal, also: Animal::Ewe(also) }).is_some()
                    }
                    Picked::Unknown => true,
                };
                if noted {
                    close();
                }
            };
            view! {
                <Sheet title=words::SAME_ASK on_close=close>
                    <EwePicker without=Some(id) on_pick=pick />
                </Sheet>
            }
            .into_any()
        }
    })
}
