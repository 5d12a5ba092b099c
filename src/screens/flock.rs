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
    Button, Choice, Choices, Empty, Field, FieldKind, Page, Row, RowState, Rows, Said, Section, Shown, Title,
    Weight,
};
use crate::pieces::{Standing, Top, lamb_words};
use crate::route::Screen;
use crate::words::{animals, flock as words, lambing, pens};

/// A kind of so many animals is drawn whole.
const WHOLE: usize = 40;

/// Of a kind of more, so many rows are drawn at first, as fill the screen: in a large flock one looks by tag.
const ROWS: usize = 12;

/// How many more rows are drawn with each press: still more would be slow on an old phone.
const MORE_ROWS: usize = 120;

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

/// The animals that are shown.
#[derive(Clone, Debug, Default, PartialEq)]
struct Found {
    ewes: Vec<EweId>,
    lambs: Vec<LambId>,
    dead: Vec<LambId>,
    /// Whether just this name is worn already.
    taken: bool,
}

/// An animal as a row.
#[derive(Clone, Debug, Default, PartialEq)]
struct Line {
    name: String,
    kind: String,
    href: String,
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
    let everyone = Memo::new(move |_| farm.with(|ground| Everyone::of(&ground.flock)));
    let here = Memo::new(move |_| everyone.with(|everyone| browse(farm, everyone, which.get())));
    // With nothing typed the last rows stay, out of sight, to take other words when the next search begins.
    let found = Memo::new(move |before: Option<&Found>| {
        typed.with(|typed| match typed.trim() {
            "" => before.cloned().unwrap_or_default(),
            part => everyone.with(|everyone| find(farm, everyone, part)),
        })
    });
    // How many rows were asked for, beyond those that are drawn at first.
    let (more_here, more_found) = (RwSignal::new(0), RwSignal::new(0));
    let empty =
        Memo::new(move |_| farm.with(|ground| ground.flock.ewes.is_empty() && ground.flock.lambs.is_empty()));
    let counts = Signal::derive(move || {
        farm.with(|ground| {
            let ewes = ground.flock.ewes.values().filter(|ewe| ewe.lives()).count();
            let lambs = ground.flock.lambs.values().filter(|lamb| lamb.lives()).count();
            words::counts(ewes, lambs)
        })
    });
    let seeks = Memo::new(move |_| typed.with(|typed| !typed.trim().is_empty()));
    let offers = Memo::new(move |_| seeks.get() && found.with(|found| !found.taken));
    let label = Signal::derive(move || typed.with(|typed| lambing::add(typed.trim())));
    let add = move || {
        let tag = typed.with_untracked(|typed| typed.trim().to_owned());
        if farm.tap(Event::EweCame { tag: Some(tag) }).is_some() {
            typed.set(String::new());
            more_here.set(0);
        }
    };
    let choose = move |new: Which| {
        which.set(new);
        more_here.set(0);
    };
    let options = WHICH.map(|(which, label)| Choice::new(which, label)).to_vec();
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>
                <Said text=counts />
            </Title>
            <Standing />
            <Field label=words::FIND value=typed kind=FieldKind::Search on_input=move |_| more_found.set(0) />
            {live(move || offers.get()
                    .then(|| view! { <Button label=label on_press=add weight=Weight::Filled /> }).into_any())}
            <Shown when=seeks>
                <Animals found=found whole=TYPED_ROWS first=TYPED_ROWS more=more_found none=words::NONE />
            </Shown>
            // It stays while something is typed, out of sight: to draw it anew would be what a key costs most.
            <Shown when=Signal::derive(move || !seeks.get())>
                {live(move || if empty.get() {
                    view! { <Empty text=words::EMPTY /> }.into_any()
                } else {
                    view! {
                        <details class="fold">
                            <summary>{live(move || words::shown(name(which.get())).into_any())}</summary>
                            <Choices
                                label=words::WHICH
                                options=options.clone()
                                chosen=Signal::derive(move || Some(which.get()))
                                on_choose=choose
                                snug=true
                            />
                        </details>
                        <Animals found=here whole=WHOLE first=ROWS more=more_here none=words::NONE_SUCH />
                    }.into_any()
                })}
            </Shown>
        </Page>
    }
}

/// The first of the animals found, by kind, and the way to more of them.
#[component]
fn Animals(
    found: Memo<Found>,
    /// A kind of so many is drawn whole.
    whole: usize,
    /// Of a kind of more, so many are drawn at first.
    first: usize,
    /// How many more were asked for.
    more: RwSignal<usize>,
    /// What is said when there are none.
    none: &'static str,
) -> impl IntoView {
    let farm = use_farm();
    let most = move |all: usize| if all <= whole { all } else { all.min(first + more.get()) };
    let ewes = Memo::new(move |_| found.with(|found| ewe_lines(farm, &found.ewes[..most(found.ewes.len())])));
    let of_lambs = move |part: fn(&Found) -> &Vec<LambId>| {
        Memo::new(move |_| {
            found.with(|found| {
                let lambs = part(found);
                lamb_lines(farm, &lambs[..most(lambs.len())])
            })
        })
    };
    let (lambs, dead) = (of_lambs(|found| &found.lambs), of_lambs(|found| &found.dead));
    let left = Memo::new(move |_| {
        let lengths = found.with(|found| [found.ewes.len(), found.lambs.len(), found.dead.len()]);
        lengths.into_iter().map(|all| all - most(all)).max().unwrap_or(0)
    });
    let empty = Memo::new(move |_| found.with(Found::is_empty));
    let some = Memo::new(move |_| left.get() > 0);
    let show = move || more.update(|more| *more += MORE_ROWS);
    view! {
        {live(move || empty.get().then(|| view! { <Empty text=none /> }).into_any())}
        <Lines title=words::EWES lines=ewes />
        <Lines title=words::LAMBS lines=lambs />
        <Lines title=words::DEAD lines=dead />
        {live(move || some.get().then(|| view! {
            <Button label=Signal::derive(move || words::more(left.get())) on_press=show />
        }).into_any())}
    }
}

/// Animals under a heading; nothing when there are none. A row is a place in the list: with another key typed it takes
/// other words, which is quicker than another row.
#[component]
fn Lines(title: &'static str, lines: Memo<Vec<Line>>) -> impl IntoView {
    let some = Memo::new(move |_| lines.with(|lines| !lines.is_empty()));
    let row = move |place: usize| {
        let line = Memo::new(move |_| lines.with(|lines| lines.get(place).cloned().unwrap_or_default()));
        let part =
            move |part: fn(&Line) -> &String| Signal::derive(move || line.with(|line| part(line).clone()));
        view! {
            <Row
                name=part(|line| &line.name)
                kind=part(|line| &line.kind)
                state=Signal::stored(RowState::Coming)
                href=part(|line| &line.href)
            />
        }
        .into_any()
    };
    let places = move || (0..lines.with(Vec::len)).collect();
    live(move || {
        let rows = move || view! { <Rows>{each(places, usize::to_string, row)}</Rows> };
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

/// Returns the animals by where and how they are.
fn browse(farm: Farm, everyone: &Everyone, which: Which) -> Found {
    farm.with(|ground| {
        let flock = &ground.flock;
        let (now, latest) = (farm.now(), this_season(flock));
        let ewe =
            |one: &&Named<EweId>| flock.ewes.get(&one.id).is_some_and(|ewe| ewe_is(flock, ewe, which, now));
        let lambs = everyone.lambs.iter().filter_map(|one| flock.lambs.get(&one.id));
        let ewes = everyone.ewes.iter().filter(ewe).map(|one| one.id).collect();
        Found::new(ewes, lambs.filter(|lamb| lamb_is(flock, lamb, which, &latest, now)))
    })
}

/// Returns the animals with this in a name or a pen, among all that ever were.
fn find(farm: Farm, everyone: &Everyone, part: &str) -> Found {
    let part = part.to_lowercase();
    farm.with(|ground| {
        let flock = &ground.flock;
        let ewes: Vec<&Named<EweId>> = everyone.ewes.iter().filter(|one| one.words.contains(&part)).collect();
        let lambs: Vec<&Named<LambId>> =
            everyone.lambs.iter().filter(|one| one.words.contains(&part)).collect();
        let tag = |one: &EweId| flock.ewes.get(one).and_then(|ewe| ewe.tag.as_ref());
        let taken = ewes.iter().any(|one| tag(&one.id).is_some_and(|tag| tag.to_lowercase() == part))
            || lambs.iter().any(|one| one.words.lines().any(|word| word == part));
        let lambs =
            lambs.iter().filter_map(|one| flock.lambs.get(&one.id)).filter(|lamb| lamb.kept.is_none());
        Found { taken, ..Found::new(ewes.iter().map(|one| one.id).collect(), lambs) }
    })
}

impl Found {
    fn new<'a>(ewes: Vec<EweId>, lambs: impl Iterator<Item = &'a Lamb>) -> Self {
        let (living, dead): (Vec<&Lamb>, Vec<&Lamb>) = lambs.partition(|lamb| lamb.lives());
        let ids = |lambs: Vec<&Lamb>| lambs.iter().map(|lamb| lamb.id).collect::<Vec<_>>();
        Self { ewes, lambs: ids(living), dead: ids(dead), taken: false }
    }

    const fn is_empty(&self) -> bool {
        self.ewes.is_empty() && self.lambs.is_empty() && self.dead.is_empty()
    }
}

fn ewe_lines(farm: Farm, ewes: &[EweId]) -> Vec<Line> {
    farm.with(|ground| {
        let line = |ewe: &Ewe| {
            let lambs = ground.flock.litters_of(ewe.id).iter().map(|litter| litter.lambs.len()).sum();
            Line {
                name: animals::ewe(ewe),
                kind: words::ewe_kind(lambs, ewe),
                href: Screen::Ewe(ewe.id).hash(),
            }
        };
        ewes.iter().filter_map(|id| ground.flock.ewes.get(id)).map(line).collect()
    })
}

fn lamb_lines(farm: Farm, lambs: &[LambId]) -> Vec<Line> {
    let now = farm.now();
    farm.with(|ground| {
        let line = |lamb: &Lamb| {
            let (name, kind) = lamb_words(&ground.flock, lamb, now);
            Line { name, kind, href: Screen::Lamb(lamb.id).hash() }
        };
        lambs.iter().filter_map(|id| ground.flock.lambs.get(id)).map(line).collect()
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
