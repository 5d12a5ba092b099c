//! All animals: find any of them in two taps, by any tag or mark it ever wore, or by where it is.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, EweId, LambId};
use yeanling_core::flock::{Ewe, Lamb};

use yeanling_pages::everyone::{Everyone, Found, WHICH, Which, name};

use crate::farm::{Farm, use_farm};
use crate::parts::{
    Button, Choice, Choices, Empty, Field, FieldKind, Page, Row, RowState, Rows, Said, Section, Shown, Title,
    Weight,
};
use crate::pieces::{CameFrom, Standing, Top, lamb_words};
use crate::route::{Screen, Way};
use crate::words::{animals, flock as words, lambing};

/// A kind of so many animals is drawn whole.
const WHOLE: usize = 40;

/// Of a kind of more, so many rows are drawn at first, as fill the screen: in a large flock one looks by tag.
const ROWS: usize = 12;

/// How many more rows are drawn with each press: still more would be slow on an old phone.
const MORE_ROWS: usize = 120;

/// How many while something is typed, as fit above the phone's keys: who is looked for is among them, or another letter
/// is.
const TYPED_ROWS: usize = 4;

/// An animal as a row.
#[derive(Clone, Debug, Default, PartialEq)]
struct Line {
    name: String,
    kind: String,
    href: String,
}

/// What was looked for last: it stands again for those who come back from an animal.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sought {
    typed: RwSignal<String>,
    which: RwSignal<Which>,
}

impl Sought {
    /// Lets the screen find it.
    pub(crate) fn provide() {
        provide_context(Self { typed: RwSignal::new(String::new()), which: RwSignal::new(Which::Here) });
    }

    fn again() -> Self {
        let sought = expect_context::<Self>();
        if CameFrom::back(Screen::Watch).0 != Screen::Flock {
            sought.typed.set(String::new());
            sought.which.set(Which::Here);
        }
        sought
    }
}

/// All animals.
#[component]
pub(crate) fn Flock() -> impl IntoView {
    let farm = use_farm();
    let Sought { typed, which } = Sought::again();
    let everyone = Memo::new(move |_| farm.with(|ground| Everyone::of(&ground.flock)));
    let here = Memo::new(move |_| {
        let (which, now) = (which.get(), farm.now());
        everyone.with(|everyone| farm.with(|ground| everyone.browse(&ground.flock, which, now)))
    });
    // With nothing typed the last rows stay, out of sight, to take other words when the next search begins.
    let found = Memo::new(move |before: Option<&Found>| {
        typed.with(|typed| match typed.trim() {
            "" => before.cloned().unwrap_or_default(),
            part => everyone.with(|everyone| everyone.find(part)),
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
    let label = Signal::derive(move || typed.with(|typed| lambing::add(animals::tag_of(typed))));
    let add = move || {
        let tag = typed.with_untracked(|typed| animals::tag_of(typed).to_owned());
        if farm.tap(Event::EweCame { tag: Some(tag) }).is_some() {
            typed.set(String::new());
            more_here.set(0);
        }
    };
    // Enter goes to the only one found; a ewe is not added by it, since a slip would add her.
    let enter = move || {
        let only = found.with_untracked(Found::only);
        if let Some(animal) = only.filter(|_| seeks.get_untracked()) {
            match animal {
                Animal::Ewe(ewe) => Screen::Ewe(ewe).go(),
                Animal::Lamb(lamb) => Screen::Lamb(lamb).go(),
            }
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
            <Field
                label=words::FIND
                value=typed
                kind=FieldKind::Search
                on_input=move |_| more_found.set(0)
                on_enter=enter
            />
            // Neither is put in and taken away: to look anew at all that follows is what a key costs most.
            <Shown when=offers>
                <Button label=label on_press=add weight=Weight::Filled />
            </Shown>
            <Shown when=seeks>
                <Animals found=found whole=TYPED_ROWS first=TYPED_ROWS more=more_found none=words::NONE />
            </Shown>
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
        let part = move |part: fn(&Line) -> &String| Memo::new(move |_| line.with(|line| part(line).clone()));
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
