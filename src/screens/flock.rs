//! All animals: find any of them in two taps.

use std::collections::BTreeMap;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Event, EweId, LambId};

use crate::farm::{Farm, use_farm};
use crate::parts::{
    Button, Empty, Field, FieldKind, Page, Row, RowState, Rows, Said, Section, Title, Weight,
};
use crate::pieces::{LambRow, Standing, Top};
use crate::route::Screen;
use crate::words::{animals, flock as words, lambing};

/// How many rows of one kind are drawn before the search must narrow them: more would be slow on an old phone.
const MOST_ROWS: usize = 150;

/// What the search found.
#[derive(Clone, Debug, Default, PartialEq)]
struct Found {
    ewes: Vec<EweRow>,
    lambs: Vec<LambId>,
    dead: Vec<LambId>,
    cut: bool,
}

#[derive(Clone, Debug, PartialEq)]
struct EweRow {
    id: EweId,
    name: String,
    kind: String,
}

/// All animals.
#[component]
pub(crate) fn Flock() -> impl IntoView {
    let farm = use_farm();
    let typed = RwSignal::new(String::new());
    let found = Memo::new(move |_| find(farm, &typed.get()));
    let empty =
        Memo::new(move |_| farm.with(|ground| ground.flock.ewes.is_empty() && ground.flock.lambs.is_empty()));
    let none = Memo::new(move |_| {
        found.with(|found| found.ewes.is_empty() && found.lambs.is_empty() && found.dead.is_empty())
    });
    let counts = Signal::derive(move || {
        farm.with(|ground| {
            let ewes = ground.flock.ewes.values().filter(|ewe| ewe.died.is_none()).count();
            let lambs = ground.flock.lambs.values().filter(|lamb| lamb.lives()).count();
            words::counts(ewes, lambs)
        })
    });
    let tag = Memo::new(move |_| typed.with(|typed| typed.trim().to_owned()));
    let taken = Memo::new(move |_| {
        tag.with(|tag| {
            farm.with(|ground| {
                let same = |here: &String| here.eq_ignore_ascii_case(tag);
                ground.flock.ewes.values().any(|ewe| ewe.tag.as_ref().is_some_and(same))
            })
        })
    });
    let add = move || {
        if farm.tap(Event::EweCame { tag: Some(tag.get_untracked()) }).is_some() {
            typed.set(String::new());
        }
    };
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>
                <Said text=counts />
            </Title>
            <Standing />
            <Field label=words::FIND value=typed kind=FieldKind::Search />
            {live(move || (!tag.with(String::is_empty) && !taken.get())
                    .then(|| view! { <Button label=lambing::add(&tag.get()) on_press=add weight=Weight::Filled /> }).into_any())}
            {live(move || {
                if empty.get() {
                    view! { <Empty text=words::EMPTY /> }.into_any()
                } else if none.get() {
                    view! { <Empty text=words::NONE /> }.into_any()
                } else {
                    ().into_any()
                }
            }.into_any())}
            {live(move || (!found.with(|found| found.ewes.is_empty())).then(|| view! {
                <Section title=words::EWES>
                    <Rows>
                        {each(
                            move || found.get().ewes,
                            |ewe| format!("{} {} {}", ewe.id, ewe.name, ewe.kind),
                            |ewe| view! {
                                <Row
                                    name=ewe.name
                                    kind=ewe.kind
                                    state=Signal::stored(RowState::Coming)
                                    href=Screen::Ewe(ewe.id).hash()
                                />
                            }
                            .into_any(),
                        )}
                    </Rows>
                </Section>
            }).into_any())}
            <Lambs title=words::LAMBS ids=Signal::derive(move || found.get().lambs) />
            <Lambs title=words::DEAD ids=Signal::derive(move || found.get().dead) />
            {live(move || found.with(|found| found.cut).then(|| view! { <p class="small-print">{words::MORE}</p> }).into_any())}
        </Page>
    }
}

/// Lambs under a heading; nothing when there are none.
#[component]
fn Lambs(title: &'static str, ids: Signal<Vec<LambId>>) -> impl IntoView {
    let some = Memo::new(move |_| ids.with(|ids| !ids.is_empty()));
    let row = |id: LambId| view! { <LambRow id=id /> }.into_any();
    live(move || {
        let rows = move || view! { <Rows>{each(move || ids.get(), LambId::to_string, row)}</Rows> };
        some.get().then(|| view! { <Section title=title>{rows()}</Section> }).into_any()
    })
}

/// Returns the animals whose name has the typed letters, ewes by tag, lambs the youngest first.
fn find(farm: Farm, typed: &str) -> Found {
    let part = typed.trim().to_lowercase();
    farm.with(|ground| {
        let flock = &ground.flock;
        let fits = |name: &str| name.to_lowercase().contains(&part);
        let mut count: BTreeMap<EweId, usize> = BTreeMap::new();
        for dam in flock.lambs.values().filter_map(|lamb| lamb.dam) {
            *count.entry(dam).or_default() += 1;
        }
        let mut ewes: Vec<EweRow> = flock
            .ewes
            .values()
            .filter(|ewe| ewe.died.is_none() || !part.is_empty())
            .map(|ewe| {
                let lambs = count.get(&ewe.id).copied().unwrap_or_default();
                EweRow { id: ewe.id, name: animals::ewe(ewe), kind: words::lambs(lambs) }
            })
            .filter(|ewe| fits(&ewe.name))
            .collect();
        ewes.sort_unstable_by(|a, b| (a.name.len(), &a.name).cmp(&(b.name.len(), &b.name)));
        let mut lambs: Vec<_> =
            flock.lambs.values().filter(|lamb| fits(&animals::lamb(flock, lamb))).collect();
        lambs.sort_unstable_by_key(|lamb| std::cmp::Reverse((lamb.born, lamb.id)));
        let (living, dead): (Vec<_>, Vec<_>) = lambs.into_iter().partition(|lamb| lamb.lives());
        let ids = |lambs: Vec<&yeanling_core::flock::Lamb>| {
            lambs.iter().take(MOST_ROWS).map(|lamb| lamb.id).collect::<Vec<_>>()
        };
        let cut = ewes.len() > MOST_ROWS || living.len() > MOST_ROWS || dead.len() > MOST_ROWS;
        ewes.truncate(MOST_ROWS);
        Found { ewes, lambs: ids(living), dead: ids(dead), cut }
    })
}
