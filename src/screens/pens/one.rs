//! One pen: who is in, what can be done for it, and all that was noted.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, PenId};
use yeanling_core::flock::Pen;
use yeanling_core::watch::readiness;

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Empty, Field, FieldKind, LinkButton, Notice, NoticeKind, Page, Remark, Said, Section,
    Sheet, Title, Weight, live,
};
use crate::pieces::{PenTimeline, PutInSheet, Standing, Top, WhichPenSheet};
use crate::route::{Screen, Way};
use crate::words::{animals, frame, pens as words, refusals};

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    PutIn,
    Move(Animal),
    Name,
}

/// Someone in the pen, as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Inside {
    animal: Animal,
    name: String,
    text: String,
    ready: String,
    /// Whether they may not go out yet.
    early: bool,
}

/// One pen.
#[component]
pub(crate) fn PenScreen(
    /// Which.
    id: PenId,
) -> impl IntoView {
    let farm = use_farm();
    let open = RwSignal::new(Open::Nothing);
    let pen = Memo::new(move |_| farm.with(|ground| ground.flock.pens.get(&id).cloned()));
    let name = Signal::derive(move || pen.with(|pen| pen.as_ref().map(words::pen).unwrap_or_default()));
    let size = Signal::derive(move || {
        let size = pen.with(|pen| pen.as_ref().and_then(|pen| pen.size));
        size.map(|size| words::size(size, farm.system())).unwrap_or_default()
    });
    let stands = Memo::new(move |_| pen.with(|pen| pen.as_ref().is_some_and(|pen| pen.closed.is_none())));
    let there = Memo::new(move |_| pen.with(Option::is_some));
    view! {
        <Page>
            <Top back=(Screen::Pens, words::TITLE.to_owned()) />
            {live(move || {
                if !there.get() {
                    return view! { <Title text=frame::GONE /><Standing /><Empty text=frame::GONE /> }.into_any();
                }
                view! {
                    <Title text=name>
                        <Said text=size />
                    </Title>
                    <Standing />
                    <Inhabitants pen=pen open=open />
                    {live(move || {
                        if stands.get() {
                            view! { <Chores id=id open=open /> }.into_any()
                        } else {
                            view! { <Notice kind=NoticeKind::Calm><p>{words::CLOSED}</p></Notice> }.into_any()
                        }
                    })}
                    <Button label=words::PRINT on_press=move || farm.print() weight=Weight::Quiet />
                    <PenTimeline pen=id />
                    <super::card::Card id=id />
                    {live(move || sheet(id, open))}
                }
                .into_any()
            })}
        </Page>
    }
}

/// Who is in, each with what holds them back, the way out and the way on.
#[component]
fn Inhabitants(pen: Memo<Option<Pen>>, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let inside = Memo::new(move |_| {
        let now = farm.now();
        let stays = pen.with(|pen| pen.as_ref().map(|pen| pen.inside.clone()).unwrap_or_default());
        farm.with(|ground| {
            let flock = &ground.flock;
            let one = |stay: &yeanling_core::flock::Stay| {
                let ready = match stay.animal {
                    Animal::Ewe(ewe) => Some(readiness(flock, ewe, stay.since, now)),
                    Animal::Lamb(_) => None,
                };
                Inside {
                    animal: stay.animal,
                    name: animals::animal(flock, stay.animal),
                    text: words::inside(flock, stay.animal, stay.since, now),
                    ready: ready
                        .as_ref()
                        .map(|ready| words::readiness(flock, ready, now))
                        .unwrap_or_default(),
                    early: ready.is_some_and(|ready| !ready.why_not.is_empty()),
                }
            };
            stays.iter().map(one).collect::<Vec<_>>()
        })
    });
    live(move || {
        let one = |inside: Inside| {
            let animal = inside.animal;
            let href = match animal {
                Animal::Ewe(ewe) => Screen::Ewe(ewe).hash(),
                Animal::Lamb(lamb) => Screen::Lamb(lamb).hash(),
            };
            view! {
                <Remark text=inside.text />
                <Remark text=inside.ready />
                <Buttons columns=3>
                    <Button
                        label=if inside.early { words::OUT_EARLY } else { words::OUT }
                        weight=if inside.early { Weight::Quiet } else { Weight::Filled }
                        on_press=move || {
                            farm.tap(Event::LetOut { animal });
                        }
                    />
                    <Button label=words::MOVE on_press=move || open.set(Open::Move(animal)) />
                    <LinkButton href=href label=inside.name />
                </Buttons>
            }
            .into_any()
        };
        inside.get().into_iter().map(one).collect_view().into_any()
    })
}

/// What can be done for the pen itself.
#[component]
fn Chores(id: PenId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let close = move || {
        if farm.tap(Event::PenClosed { pen: id }).is_some() {
            Screen::Pens.go();
        }
    };
    view! {
        <Section title=words::TITLE>
            <Buttons columns=2>
                <Button label=words::PUT_IN on_press=move || open.set(Open::PutIn) />
                <Button
                    label=words::CLEANED
                    on_press=move || {
                        farm.tap(Event::PenCleaned { pen: id });
                    }
                />
                <Button label=words::RENAME on_press=move || open.set(Open::Name) />
                <Button label=words::CLOSE on_press=close weight=Weight::Quiet />
            </Buttons>
        </Section>
    }
}

fn sheet(id: PenId, open: RwSignal<Open>) -> AnyView {
    let close = move || open.set(Open::Nothing);
    match open.get() {
        Open::Nothing => ().into_any(),
        Open::PutIn => view! { <PutInSheet pen=id on_close=close /> }.into_any(),
        Open::Move(animal) => view! { <WhichPenSheet animal=animal on_close=close /> }.into_any(),
        Open::Name => view! { <NameSheet id=id on_close=close /> }.into_any(),
    }
}

/// Gives the pen another name.
#[component]
fn NameSheet(id: PenId, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let value = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || {
        let name = value.get_untracked().trim().to_owned();
        match farm.note(Event::PenNamed { pen: id, name }) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    view! {
        <Sheet title=words::RENAME on_close=on_close>
            <Field label=words::NAME value=value kind=FieldKind::Text error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
