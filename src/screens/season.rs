//! The season ahead: who is near, births a night with their spread, pens, dates, and the groups it comes from.

mod charts;
mod dates;
mod group;

use crate::parts::{each, live};
use crate::signals::after_paint;
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::figures::{Ahead, Awaited, Overdue, ahead, overdue};

pub(crate) use group::GroupScreen;

use crate::farm::use_farm;
use crate::parts::{
    Button, Empty, Fact, Facts, Field, Page, Remark, Row, RowState, Rows, Said, Section, Sheet, Title,
    Weight, WhyButton,
};
use crate::pieces::{Standing, Top, why_text};
use crate::route::{Screen, Way};
use crate::words::{ahead as words, animals, frame, group as group_words, refusals, why};

/// Who is likely enough within a day to be named (ours: one in fifty).
const NEAR: f64 = 0.02;
/// So many of them at most.
const MOST_NEAR: usize = 8;

/// The season ahead.
#[component]
pub(crate) fn Season() -> impl IntoView {
    let farm = use_farm();
    let seen = Memo::new(move |_| {
        let now = farm.now();
        farm.with_outlooks(|ground, outlooks| ahead(&ground.flock, outlooks, now))
    });
    let groups = Memo::new(move |_| {
        farm.with(|ground| {
            let mut groups: Vec<_> =
                ground.flock.groups.values().filter(|group| group.parted.is_none()).collect();
            groups.arrange_by_key(|group| (group.formed, group.id));
            groups.into_iter().map(|group| group.id).collect::<Vec<GroupId>>()
        })
    });
    let sub = Signal::derive(move || seen.with(|seen| words::stands(seen.put_to_ram, seen.lambed)));
    let forming = RwSignal::new(false);
    let some = Memo::new(move |_| seen.with(|seen| seen.put_to_ram > 0));
    // What stands further down waits until the nights are on the screen.
    let below = RwSignal::new(false);
    after_paint(move || below.set(true));
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE>
                <Said text=sub />
            </Title>
            <Standing />
            {live(move || groups.with(Vec::is_empty).then(|| view! { <Empty text=words::EMPTY /> }).into_any())}
            {live(move || some.get().then(|| view! { <Near seen=seen /> <Past /> <Nights seen=seen /> }).into_any())}
            {live(move || (below.get() && !groups.with(Vec::is_empty)).then(|| dates::dates(groups.get())).into_any())}
            <Section title=words::GROUPS>
                <Rows>{each(move || groups.get(), GroupId::to_string, move |id| group_row(id).into_any())}</Rows>
                <Button label=words::NEW_GROUP on_press=move || forming.set(true) />
            </Section>
            {live(move || forming.get().then(|| view! { <NewGroup on_close=move || forming.set(false) /> }).into_any())}
        </Page>
    }
}

fn group_row(id: GroupId) -> AnyView {
    let farm = use_farm();
    let text = Signal::derive(move || {
        let today = farm.now().local().date();
        farm.with(|ground| {
            ground.flock.groups.get(&id).map(|group| group_words::stands(group, today)).unwrap_or_default()
        })
    });
    let name = Signal::derive(move || {
        farm.with(|ground| ground.flock.groups.get(&id).map(|group| group.name.clone()).unwrap_or_default())
    });
    view! {
        <Row name=name text=text state=Signal::stored(RowState::Coming) href=Screen::Group(id).hash() />
    }
    .into_any()
}

/// The ewes that may lamb within a day, the likeliest first.
#[component]
fn Near(seen: Memo<Ahead>) -> impl IntoView {
    let farm = use_farm();
    let near = Memo::new(move |_| {
        seen.with(|seen| {
            let told = |one: &Awaited| {
                let outlook = one.outlook.as_ref().ok().filter(|outlook| outlook.within_24h >= NEAR)?;
                let name = farm.with(|ground| animals::ewe_of(&ground.flock, one.ewe));
                Some((one.ewe, name, words::within(outlook), words::days(outlook)))
            };
            seen.awaited
                .iter()
                .filter_map(told)
                .take(MOST_NEAR)
                .collect::<Vec<(EweId, String, String, String)>>()
        })
    });
    let none = Memo::new(move |_| near.with(Vec::is_empty));
    view! {
        <Section title=words::WHO>
            {live(move || none.get().then(|| view! { <p>{words::NOBODY_NEAR}</p> }).into_any())}
            <Rows>
                {each(
                    move || near.get(),
                    |(id, name, within, days)| format!("{id} {name} {within} {days}"),
                    |(id, name, within, days)| view! {
                        <Row
                            name=name
                            text=within
                            says=days
                            state=Signal::stored(RowState::Coming)
                            href=Screen::Ewe(id).hash()
                        />
                    }
                    .into_any(),
                )}
            </Rows>
            <p class="small-print">{words::SIGNS_COUNT}</p>
        </Section>
    }
}

/// The ewes whose days have passed without a lamb; nothing while there are none.
#[component]
fn Past() -> impl IntoView {
    let farm = use_farm();
    let past = Memo::new(move |_| {
        let now = farm.now();
        farm.with_outlooks(|ground, outlooks| {
            let row = |one: &Overdue| {
                let name = animals::ewe_of(&ground.flock, one.ewe);
                (one.ewe, name, words::overdue(one, now.local().date()))
            };
            overdue(&ground.flock, outlooks, now).iter().map(row).collect::<Vec<(EweId, String, String)>>()
        })
    });
    let some = Memo::new(move |_| past.with(|past| !past.is_empty()));
    let row = |(id, name, text): (EweId, String, String)| {
        let state = Signal::stored(RowState::Now);
        view! { <Row name=name text=text state=state href=Screen::Ewe(id).hash() /> }.into_any()
    };
    let rows = move || each(move || past.get(), |(id, _, text)| format!("{id} {text}"), row);
    live(move || {
        some.get()
            .then(|| {
                view! {
                    <Section title=words::OVERDUE>
                        <p>{words::OVERDUE_LEAD}</p>
                        <Rows>{rows()}</Rows>
                    </Section>
                }
            })
            .into_any()
    })
}

/// Births a night and the pens they take.
#[component]
fn Nights(seen: Memo<Ahead>) -> impl IntoView {
    let farm = use_farm();
    live(move || {
        let today = farm.now().local().date();
        let seen = seen.get();
        let because = why_text(why::nights(&seen));
        let likely = seen.likely.as_ref().map(words::likely).unwrap_or_default();
        let Some(forecast) = &seen.forecast else {
            return view! { <Section title=words::NIGHTS><p>{words::NOBODY}</p></Section> }.into_any();
        };
        let peaks = words::peaks(forecast);
        let births = charts::births(forecast, &seen.happened, today);
        let pens = seen.pens.as_ref().map(|wanted| {
            let [ninety, ninety_five, ninety_nine] = wanted.enough.map(|pens| format!("*{pens}*"));
            let facts = vec![
                Fact::new(ninety, words::sure(90)),
                Fact::new(ninety_five, words::sure(95)),
                Fact::new(ninety_nine, words::sure(99)),
            ];
            let because = why_text(why::pens_wanted(wanted));
            let drawn = charts::pens(wanted);
            view! {
                <Section title=words::PENS>
                    {drawn}
                    <Facts facts=facts />
                    <Remark text="">
                        <WhyButton why=because />
                    </Remark>
                </Section>
            }
            .into_any()
        });
        view! {
            <Section title=words::NIGHTS>
                {births}
                <Remark text=peaks>
                    <WhyButton why=because />
                </Remark>
                <p>
                    <Said text=likely />
                </p>
            </Section>
            {pens}
        }
        .into_any()
    })
}

/// Forms a group.
#[component]
fn NewGroup(#[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let name = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || {
        let name = name.get_untracked().trim().to_owned();
        let taken = farm.peek(|ground| {
            let same = |there: &str| there.eq_ignore_ascii_case(&name);
            ground.flock.groups.values().any(|group| group.parted.is_none() && same(&group.name))
        });
        if taken {
            return error.set(words::SAME_NAME.to_owned());
        }
        match farm.note(Event::GroupFormed { name }) {
            Ok(entry) => {
                on_close.run(());
                Screen::Group(entry.as_group()).go();
            }
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    view! {
        <Sheet title=words::NEW_GROUP on_close=on_close>
            <Field label=words::NAME value=name error=error />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
