//! The home: every newborn with its clock, the most urgent first, each done with one tap; the big button below.

use std::collections::BTreeMap;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, LambId};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::colostrum::{self, Want};
use yeanling_core::reckon::window;
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Discharge, Duty, State};

use crate::farm::{Farm, use_farm};
use crate::parts::{
    ActionButton, Button, Empty, Fact, Facts, Figure, LinkButton, Page, Row, RowState, Rows, Section, Tally,
    Title, Weight, WhyButton, WhyText,
};
use crate::pieces::{DrawnRibbon, MilkRibbon, Standing, Top, why_text};
use crate::route::Screen;
use crate::words::common::{clock, span, volume, volume_number};
use crate::words::{animals, watch as words, why};

/// One lamb on the Watch, with all that is due for it.
#[derive(Clone, Debug, PartialEq)]
struct OnWatch {
    id: LambId,
    state: Option<State>,
    name: String,
    kind: String,
    text: String,
    says: String,
    left: String,
    age: String,
    button: Option<(String, Discharge)>,
    others: Vec<(String, Discharge)>,
    ribbon: Option<MilkRibbon>,
    facts: Vec<Fact>,
    why: Option<WhyText>,
}

/// The home.
#[component]
pub(crate) fn Watch() -> impl IntoView {
    let farm = use_farm();
    let lambs = Memo::new(move |_| on_watch(farm, farm.now()));
    let time = Signal::derive(move || clock(farm.now()));
    let count =
        move |state: State| lambs.with(|lambs| lambs.iter().filter(|lamb| lamb.state == Some(state)).count());
    let tally = move |state: State, row: RowState, word: fn(usize) -> String| {
        live(move || {
            let count = count(state);
            (count > 0).then(|| view! { <Tally state=row text=word(count) /> }).into_any()
        })
    };
    let nothing = move || {
        let due = [State::Late, State::Now, State::Coming].into_iter().map(count).sum::<usize>();
        (due == 0).then_some(words::NOTHING)
    };
    let empty = Memo::new(move |_| farm.with(|ground| ground.book.is_empty()));
    let quiet = Memo::new(move |_| lambs.with(Vec::is_empty));
    let thumb = move || {
        view! { <LinkButton href=Screen::Lambing.hash() label=words::LAMBING big=true weight=Weight::Filled /> }
    };
    view! {
        <Page thumb=thumb>
            <Top />
            <Title text=time>
                {tally(State::Late, RowState::Late, words::late)}
                {tally(State::Now, RowState::Now, words::now)}
                {tally(State::Coming, RowState::Coming, words::coming)}
                {live(move || nothing().into_any())}
            </Title>
            <Standing />
            {live(move || {
                if empty.get() {
                    view! {
                        <Empty
                            text=words::EMPTY
                            action=move || {
                                view! { <Button label=words::LOOK_ROUND on_press=move || farm.look_round() /> }
                            }
                        />
                    }
                        .into_any()
                } else if quiet.get() {
                    view! { <Empty text=words::QUIET /> }.into_any()
                } else {
                    ().into_any()
                }
            }.into_any())}
            <Group title=words::LATE state=Some(State::Late) lambs=lambs />
            <Group title=words::NOW state=Some(State::Now) lambs=lambs />
            <Group title=words::COMING state=Some(State::Coming) lambs=lambs />
            <Group title=words::WELL state=None lambs=lambs />
        </Page>
    }
}

/// The lambs of one state under their heading; nothing when there are none.
#[component]
fn Group(title: &'static str, state: Option<State>, lambs: Memo<Vec<OnWatch>>) -> impl IntoView {
    let ids = Memo::new(move |_| {
        lambs.with(|lambs| {
            lambs.iter().filter(|lamb| lamb.state == state).map(|lamb| lamb.id).collect::<Vec<_>>()
        })
    });
    let some = Memo::new(move |_| ids.with(|ids| !ids.is_empty()));
    let row = move |id: LambId| view! { <LambOnWatch id=id lambs=lambs /> }.into_any();
    live(move || {
        let rows = move || view! { <Rows>{each(move || ids.get(), LambId::to_string, row)}</Rows> };
        some.get().then(|| view! { <Section title=title>{rows()}</Section> }).into_any()
    })
}

/// One lamb: what is most urgent with its button, the ribbon, the volumes, and what else is due.
#[component]
fn LambOnWatch(id: LambId, lambs: Memo<Vec<OnWatch>>) -> impl IntoView {
    let farm = use_farm();
    let lamb = Memo::new(move |_| lambs.with(|lambs| lambs.iter().find(|lamb| lamb.id == id).cloned()));
    let text = move |read: fn(&OnWatch) -> &String| {
        Signal::derive(move || {
            lamb.with(|lamb| lamb.as_ref().map(|lamb| read(lamb).clone()).unwrap_or_default())
        })
    };
    let state = Signal::derive(move || match lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.state)) {
        Some(State::Late) => RowState::Late,
        Some(State::Now) => RowState::Now,
        Some(State::Coming) => RowState::Coming,
        None => RowState::Done,
    });
    let button = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.button.clone())));
    let others = Memo::new(move |_| {
        lamb.with(|lamb| lamb.as_ref().map(|lamb| lamb.others.clone()).unwrap_or_default())
    });
    let ribbon = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.ribbon.clone())));
    let facts = Memo::new(move |_| {
        lamb.with(|lamb| lamb.as_ref().map(|lamb| lamb.facts.clone()).unwrap_or_default())
    });
    let named = move |label: String| {
        Signal::derive(move || {
            let name = lamb.with(|lamb| lamb.as_ref().map(|lamb| lamb.name.clone()).unwrap_or_default());
            format!("{label}, {name}")
        })
    };
    let press = move || {
        button.get().map(|(label, discharge)| match discharge {
            Discharge::Note(event) => view! {
                <ActionButton
                    label=label.clone()
                    name=named(label)
                    on_press=move || {
                        farm.tap(event.clone());
                    }
                />
            }
            .into_any(),
            Discharge::Open => view! { <LinkButton href=Screen::Lamb(id).hash() label=label /> }.into_any(),
        })
    };
    let why = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.why.clone())));
    let has_ribbon = Memo::new(move |_| ribbon.with(Option::is_some));
    view! {
        <Row
            name=text(|lamb| &lamb.name)
            kind=text(|lamb| &lamb.kind)
            text=text(|lamb| &lamb.text)
            says=text(|lamb| &lamb.says)
            state=state
            href=Screen::Lamb(id).hash()
            action=move || view! { {press} }
        >
            {live(move || has_ribbon.get().then(|| view! {
                <Figure value=text(|lamb| &lamb.left) also=text(|lamb| &lamb.age)>
                    {live(move || why.get().map(|why| view! { <WhyButton why=why /> }).into_any())}
                </Figure>
                <DrawnRibbon ribbon=ribbon.into() />
            }).into_any())}
            {live(move || (!facts.with(Vec::is_empty)).then(|| view! { <Facts facts=facts /> }).into_any())}
            {live(move || {
                let others = others.get();
                (!others.is_empty()).then(|| view! { <Others id=id others=others name=named /> })
            }.into_any())}
        </Row>
    }
}

/// What else can be ticked off for this lamb.
#[component]
fn Others(
    id: LambId,
    others: Vec<(String, Discharge)>,
    name: impl Fn(String) -> Signal<String> + Copy + 'static,
) -> impl IntoView {
    let farm = use_farm();
    let buttons = others
        .into_iter()
        .map(|(label, discharge)| match discharge {
            Discharge::Note(event) => view! {
                <ActionButton
                    label=label.clone()
                    name=name(label)
                    on_press=move || {
                        farm.tap(event.clone());
                    }
                />
            }
            .into_any(),
            Discharge::Open => view! { <LinkButton href=Screen::Lamb(id).hash() label=label /> }.into_any(),
        })
        .collect_view();
    view! { <div class="others">{buttons}</div> }
}

/// Returns the lambs that are on the Watch: those with something due, and those in their first day.
fn on_watch(farm: Farm, now: Moment) -> Vec<OnWatch> {
    let duties = farm.duties(now);
    farm.with(|ground| {
        let mut of: BTreeMap<LambId, Vec<&Duty>> = BTreeMap::new();
        let mut order: Vec<LambId> = Vec::new();
        for duty in &duties {
            let Animal::Lamb(id) = duty.subject else { continue };
            if !order.contains(&id) {
                order.push(id);
            }
            of.entry(id).or_default().push(duty);
        }
        let day = TimeDelta::hours(24);
        let newborns = ground.flock.lambs.values().filter(|lamb| lamb.lives() && lamb.age(now) < day);
        let quiet: Vec<LambId> =
            newborns.filter(|lamb| !of.contains_key(&lamb.id)).map(|lamb| lamb.id).collect();
        order
            .into_iter()
            .chain(quiet)
            .filter_map(|id| {
                let lamb = ground.flock.lamb(id)?;
                Some(one(&ground.flock, lamb, of.get(&id).map_or(&[][..], Vec::as_slice), now))
            })
            .collect()
    })
}

fn one(flock: &Flock, lamb: &Lamb, duties: &[&Duty], now: Moment) -> OnWatch {
    let practice = &flock.practice;
    let system = practice.system;
    let first = duties.first();
    let newborn = lamb.age(now) < TimeDelta::hours(24);
    let act = |duty: &&Duty| (words::done(duty.task, system), duty.discharge.clone());
    let want = lamb
        .birth_weight()
        .and_then(|weight| colostrum::want(weight, practice.day_rule, practice.housing).ok());
    OnWatch {
        id: lamb.id,
        state: first.map(|duty| duty.state(now)),
        name: animals::lamb(flock, lamb),
        kind: kind(lamb, newborn, system),
        text: text(duties, lamb, now, system),
        says: first.map(|duty| words::when(duty, now)).unwrap_or_default(),
        left: window::left(lamb.age(now)).map(span).unwrap_or_default(),
        age: words::left(&words::age(lamb.age(now))),
        button: first.map(act),
        others: duties.iter().skip(1).map(act).collect(),
        ribbon: newborn.then(|| MilkRibbon::of(lamb, now, false)),
        why: want.filter(|_| newborn).map(|want| why_text(why::colostrum(&want, system))),
        facts: if newborn {
            want.map(|want| facts(&want, lamb, now, system)).unwrap_or_default()
        } else {
            Vec::new()
        },
    }
}

/// What is due, all of it; when nothing is, what comes first; when nothing comes, how it is doing.
fn text(duties: &[&Duty], lamb: &Lamb, now: Moment, system: System) -> String {
    let due = duties.iter().filter(|duty| duty.state(now) > State::Coming).count().max(1);
    let tasks: Vec<String> = duties.iter().take(due).map(|duty| words::task(duty.task, system)).collect();
    if tasks.is_empty() { words::well(lamb, now) } else { tasks.join(" · ") }
}

/// A few soft words: what it is, its weight, and in its first day its vigor.
fn kind(lamb: &Lamb, newborn: bool, system: System) -> String {
    let kind = animals::lamb_kind(lamb, system);
    match lamb.vigor.last() {
        Some(scored) if newborn => format!("{kind} · {}", words::vigor(scored.score)),
        Some(_) | None => kind,
    }
}

/// What it should take at the next feed and by 6, 18 and 24 hours, against what it was given by hand.
fn facts(want: &Want, lamb: &Lamb, now: Moment, system: System) -> Vec<Fact> {
    let given = lamb.given_first_day(now);
    let by = |wanted, hours: i64| {
        let at = clock(lamb.born + TimeDelta::hours(hours));
        let wanted = volume_number(wanted, system);
        let text =
            if lamb.feeds.is_empty() { wanted } else { words::of(&volume_number(given, system), &wanted) };
        Fact::new(text, words::by(&at))
    };
    vec![
        Fact::new(volume(want.next_feed, system), words::A_FEED),
        by(want.by_6h, 6),
        by(want.by_18h, 18),
        by(want.by_24h, 24),
    ]
}
