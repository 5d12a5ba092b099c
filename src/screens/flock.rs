//! All animals: find any of them in two taps, by any tag or mark it ever wore, or by where it is.

use std::collections::BTreeSet;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Animal, Event, EweId, LambId};
use yeanling_core::figures::seasons;
use yeanling_core::flock::{Ewe, Flock as Animals, Lamb};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Product, withheld};

use crate::farm::{Farm, use_farm};
use crate::parts::{
    Button, Choice, Choices, Empty, Field, FieldKind, Page, Row, RowState, Rows, Said, Section, Title, Weight,
};
use crate::pieces::{LambRow, Standing, Top};
use crate::route::Screen;
use crate::words::{animals, flock as words, lambing, pens};

/// How many rows of one kind are drawn at first, and how many more with each press: more would be slow on an old phone.
const ROWS: usize = 30;

/// How many while something is typed, as fit above the phone's keys: who is looked for is among them, or another letter
/// is.
const TYPED_ROWS: usize = 5;

/// A lamb is weighed at eight weeks, give or take a week (AHDB); one that was not is asked for from then on.
const WEIGH_FROM: TimeDelta = TimeDelta::days(49);

/// Which animals are looked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Which {
    /// Everyone here, this season's lambs.
    Here,
    /// On the bottle.
    Bottle,
    /// In a pen.
    Penned,
    /// Meat or milk withheld.
    Withheld,
    /// Without a tag of its own.
    Untagged,
    /// Lambs that were not weighed at eight weeks.
    Unweighed,
    /// Living lambs of earlier seasons.
    Earlier,
    /// Dead, sold or gone.
    Gone,
}

const WHICH: [(Which, &str); 8] = [
    (Which::Here, words::HERE),
    (Which::Bottle, words::BOTTLE),
    (Which::Penned, words::PENNED),
    (Which::Withheld, words::WITHHELD),
    (Which::Untagged, words::UNTAGGED),
    (Which::Unweighed, words::UNWEIGHED),
    (Which::Earlier, words::EARLIER),
    (Which::Gone, words::GONE),
];

fn name(which: Which) -> &'static str {
    WHICH.iter().find(|(other, _)| *other == which).map_or("", |(_, name)| name)
}

/// What the search found.
#[derive(Clone, Debug, Default, PartialEq)]
struct Found {
    ewes: Vec<EweId>,
    lambs: Vec<LambId>,
    dead: Vec<LambId>,
}

#[derive(Clone, Debug, PartialEq)]
struct EweRow {
    id: EweId,
    name: String,
    kind: String,
}

/// An animal with all that it is found by: its name, what it wore, its pen, in small letters.
#[derive(Clone, Debug, PartialEq)]
struct Named<Id> {
    id: Id,
    words: String,
}

/// All animals in the order of the list, so that a key pressed costs no more than the look through it.
#[derive(Clone, Debug, Default, PartialEq)]
struct Everyone {
    /// By name, the short ones first.
    ewes: Vec<Named<EweId>>,
    /// The youngest first; who became a ewe is among them.
    lambs: Vec<Named<LambId>>,
}

/// All animals.
#[component]
pub(crate) fn Flock() -> impl IntoView {
    let farm = use_farm();
    let typed = RwSignal::new(String::new());
    let which = RwSignal::new(Which::Here);
    let most = RwSignal::new(ROWS);
    let everyone = Memo::new(move |_| farm.with(|ground| Everyone::of(&ground.flock)));
    let found = Memo::new(move |_| everyone.with(|everyone| find(farm, everyone, &typed.get(), which.get())));
    let empty =
        Memo::new(move |_| farm.with(|ground| ground.flock.ewes.is_empty() && ground.flock.lambs.is_empty()));
    let none = Memo::new(move |_| {
        found.with(|found| found.ewes.is_empty() && found.lambs.is_empty() && found.dead.is_empty())
    });
    let counts = Signal::derive(move || {
        farm.with(|ground| {
            let ewes = ground.flock.ewes.values().filter(|ewe| ewe.lives()).count();
            let lambs = ground.flock.lambs.values().filter(|lamb| lamb.lives()).count();
            words::counts(ewes, lambs)
        })
    });
    let tag = Memo::new(move |_| typed.with(|typed| typed.trim().to_owned()));
    let taken = Memo::new(move |_| {
        tag.with(|tag| {
            farm.with(|ground| {
                let same = |here: &String| here.eq_ignore_ascii_case(tag);
                let small = tag.to_lowercase();
                let lamb = |one: &Named<LambId>| one.words.lines().any(|word| word == small);
                ground.flock.ewes.values().any(|ewe| ewe.tag.as_ref().is_some_and(same))
                    || everyone.with(|everyone| everyone.lambs.iter().any(lamb))
            })
        })
    });
    let add = move || {
        if farm.tap(Event::EweCame { tag: Some(tag.get_untracked()) }).is_some() {
            typed.set(String::new());
            most.set(ROWS);
        }
    };
    let ewes = Memo::new(move |_| ewe_rows(farm, &found.with(|found| first(&found.ewes, most.get()))));
    let lambs = Memo::new(move |_| found.with(|found| first(&found.lambs, most.get())));
    let dead = Memo::new(move |_| found.with(|found| first(&found.dead, most.get())));
    let longest =
        Memo::new(move |_| found.with(|found| found.ewes.len().max(found.lambs.len()).max(found.dead.len())));
    let at_first =
        move || typed.with_untracked(|typed| if typed.trim().is_empty() { ROWS } else { TYPED_ROWS });
    let choose = move |new: Which| {
        which.set(new);
        most.set(ROWS);
    };
    let options = WHICH.map(|(which, label)| Choice::new(which, label)).to_vec();
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>
                <Said text=counts />
            </Title>
            <Standing />
            <Field label=words::FIND value=typed kind=FieldKind::Search on_input=move |_| most.set(at_first()) />
            {live(move || (!tag.with(String::is_empty) && !taken.get())
                    .then(|| view! { <Button label=lambing::add(&tag.get()) on_press=add weight=Weight::Filled /> }).into_any())}
            {live(move || (!empty.get()).then(|| view! {
                <details class="fold" hidden=move || !tag.with(String::is_empty)>
                    <summary>{live(move || words::shown(name(which.get())).into_any())}</summary>
                    <Choices
                        label=words::WHICH
                        options=options.clone()
                        chosen=Signal::derive(move || Some(which.get()))
                        on_choose=choose
                        snug=true
                    />
                </details>
            }).into_any())}
            {live(move || {
                let said = if empty.get() {
                    words::EMPTY
                } else if !none.get() {
                    return ().into_any();
                } else if tag.with(String::is_empty) {
                    words::NONE_SUCH
                } else {
                    words::NONE
                };
                view! { <Empty text=said /> }.into_any()
            })}
            <Ewes ewes=ewes />
            <Lambs title=words::LAMBS ids=lambs />
            <Lambs title=words::DEAD ids=dead />
            {live(move || {
                let more = longest.get().saturating_sub(most.get());
                (more > 0).then(|| view! {
                    <Button label=words::more(more) on_press=move || most.update(|most| *most += 4 * ROWS) />
                }).into_any()
            })}
        </Page>
    }
}

fn first<T: Clone>(all: &[T], most: usize) -> Vec<T> {
    all.iter().take(most).cloned().collect()
}

/// Ewes under their heading; nothing when there are none.
#[component]
fn Ewes(ewes: Memo<Vec<EweRow>>) -> impl IntoView {
    let some = Memo::new(move |_| ewes.with(|ewes| !ewes.is_empty()));
    let key = |ewe: &EweRow| format!("{} {} {}", ewe.id, ewe.name, ewe.kind);
    let row = |ewe: EweRow| {
        view! {
            <Row
                name=ewe.name
                kind=ewe.kind
                state=Signal::stored(RowState::Coming)
                href=Screen::Ewe(ewe.id).hash()
            />
        }
        .into_any()
    };
    live(move || {
        let rows = move || view! { <Rows>{each(move || ewes.get(), key, row)}</Rows> };
        some.get().then(|| view! { <Section title=words::EWES>{rows()}</Section> }).into_any()
    })
}

/// Lambs under a heading; nothing when there are none.
#[component]
fn Lambs(title: &'static str, ids: Memo<Vec<LambId>>) -> impl IntoView {
    let some = Memo::new(move |_| ids.with(|ids| !ids.is_empty()));
    let row = |id: LambId| view! { <LambRow id=id /> }.into_any();
    live(move || {
        let rows = move || view! { <Rows>{each(move || ids.get(), LambId::to_string, row)}</Rows> };
        some.get().then(|| view! { <Section title=title>{rows()}</Section> }).into_any()
    })
}

impl Everyone {
    fn of(flock: &Animals) -> Self {
        let pen =
            |animal: Animal| flock.pen_of(animal).and_then(|(pen, _)| flock.pens.get(&pen)).map(pens::pen);
        let words = |animal: Animal, name: &str, worn: &[String]| {
            let all: Vec<String> =
                [name.to_owned()].into_iter().chain(worn.iter().cloned()).chain(pen(animal)).collect();
            all.join("\n").to_lowercase()
        };
        let mut ewes: Vec<(String, &Ewe)> = flock.ewes.values().map(|ewe| (animals::ewe(ewe), ewe)).collect();
        ewes.arrange_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
        let ewe = |(name, ewe): (String, &Ewe)| Named {
            id: ewe.id,
            words: words(Animal::Ewe(ewe.id), &name, &ewe.worn),
        };
        let mut lambs: Vec<&Lamb> = flock.lambs.values().collect();
        lambs.arrange_by_key(|lamb| std::cmp::Reverse((lamb.born, lamb.id)));
        let lamb = |lamb: &Lamb| Named {
            id: lamb.id,
            words: words(Animal::Lamb(lamb.id), &animals::lamb(flock, lamb), &lamb.worn),
        };
        Self { ewes: ewes.into_iter().map(ewe).collect(), lambs: lambs.into_iter().map(lamb).collect() }
    }
}

/// Returns the animals that fit: by what was typed among all that ever were, else by where and how they are.
fn find(farm: Farm, everyone: &Everyone, typed: &str, which: Which) -> Found {
    let part = typed.trim().to_lowercase();
    farm.with(|ground| {
        let flock = &ground.flock;
        let (ewes, lambs): (Vec<EweId>, Vec<&Lamb>) = if part.is_empty() {
            let (now, latest) = (farm.now(), this_season(flock));
            let ewe = |one: &&Named<EweId>| {
                flock.ewes.get(&one.id).is_some_and(|ewe| ewe_is(flock, ewe, which, now))
            };
            let lambs = everyone.lambs.iter().filter_map(|one| flock.lambs.get(&one.id));
            let ewes = everyone.ewes.iter().filter(ewe).map(|one| one.id).collect();
            (ewes, lambs.filter(|lamb| lamb_is(flock, lamb, which, &latest, now)).collect())
        } else {
            let ewes = everyone.ewes.iter().filter(|one| one.words.contains(&part)).map(|one| one.id);
            let lambs = everyone.lambs.iter().filter(|one| one.words.contains(&part));
            let lambs = lambs.filter_map(|one| flock.lambs.get(&one.id)).filter(|lamb| lamb.kept.is_none());
            (ewes.collect(), lambs.collect())
        };
        let (living, dead): (Vec<_>, Vec<_>) = lambs.into_iter().partition(|lamb| lamb.lives());
        let ids = |lambs: Vec<&Lamb>| lambs.iter().map(|lamb| lamb.id).collect::<Vec<_>>();
        Found { ewes, lambs: ids(living), dead: ids(dead) }
    })
}

fn ewe_rows(farm: Farm, ewes: &[EweId]) -> Vec<EweRow> {
    farm.with(|ground| {
        let row = |ewe: &Ewe| {
            let lambs = ground.flock.litters_of(ewe.id).iter().map(|litter| litter.lambs.len()).sum();
            EweRow { id: ewe.id, name: animals::ewe(ewe), kind: words::ewe_kind(lambs, ewe) }
        };
        ewes.iter().filter_map(|id| ground.flock.ewes.get(id)).map(row).collect()
    })
}

/// The lambs of the latest season.
fn this_season(flock: &Animals) -> BTreeSet<LambId> {
    seasons(flock).into_iter().next().map(|season| season.lambs.into_iter().collect()).unwrap_or_default()
}

fn ewe_is(flock: &Animals, ewe: &Ewe, which: Which, now: Moment) -> bool {
    let animal = Animal::Ewe(ewe.id);
    match which {
        Which::Here => ewe.lives(),
        Which::Penned => ewe.lives() && flock.pen_of(animal).is_some(),
        Which::Withheld => {
            let held = |product| withheld(flock, animal, product, now).is_some();
            ewe.lives() && (held(Product::Meat) || held(Product::Milk))
        }
        Which::Untagged => ewe.lives() && ewe.tag.is_none(),
        Which::Gone => !ewe.lives(),
        Which::Bottle | Which::Unweighed | Which::Earlier => false,
    }
}

fn lamb_is(flock: &Animals, lamb: &Lamb, which: Which, latest: &BTreeSet<LambId>, now: Moment) -> bool {
    let animal = Animal::Lamb(lamb.id);
    match which {
        Which::Here => {
            latest.contains(&lamb.id) && (lamb.lives() || (lamb.kept.is_none() && lamb.left.is_none()))
        }
        Which::Bottle => lamb.on_bottle(),
        Which::Penned => lamb.lives() && flock.pen_of(animal).is_some(),
        Which::Withheld => lamb.lives() && withheld(flock, animal, Product::Meat, now).is_some(),
        Which::Untagged => lamb.lives() && lamb.tag.is_none(),
        Which::Unweighed => {
            let weighed = lamb.weights.iter().any(|weight| weight.at.since(lamb.born) >= WEIGH_FROM);
            lamb.lives() && lamb.age(now) >= WEIGH_FROM && latest.contains(&lamb.id) && !weighed
        }
        Which::Earlier => lamb.lives() && !latest.contains(&lamb.id),
        Which::Gone => !lamb.lives() && lamb.kept.is_none(),
    }
}
