//! The medicine record: what is withheld now, and every treatment, the latest first; one medicine for many at once.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, EntryId, GroupId};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;

use crate::farm::use_farm;
use crate::parts::{
    Button, Caution, Choice, Choices, Empty, Page, Row, RowState, Rows, Section, Sheet, Title,
};
use crate::pieces::{Standing, Top, TreatSheet, told_withheld};
use crate::route::Screen;
use crate::words::common::date;
use crate::words::{animals, frame, life, medicines as words};

/// How many treatments are drawn at first, and how many more with each press.
const ROWS: usize = 30;

/// Many animals at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Many {
    Ewes,
    Lambs,
    Group(GroupId),
}

/// What is open.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Who,
    Treat(Vec<Animal>),
}

/// An animal of which something is withheld.
#[derive(Clone, Debug, PartialEq)]
struct Held {
    animal: Animal,
    name: String,
    text: String,
}

/// A treatment as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Given {
    entry: EntryId,
    animal: Animal,
    name: String,
    kind: String,
    text: String,
}

/// The medicine record.
#[component]
pub(crate) fn Medicines() -> impl IntoView {
    let farm = use_farm();
    let open = RwSignal::new(Open::Nothing);
    let most = RwSignal::new(ROWS);
    let held = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| held(&ground.flock, now))
    });
    let all = Memo::new(move |_| farm.with(|ground| ground.flock.treatments().len()));
    let given = Memo::new(move |_| farm.with(|ground| given(&ground.flock, most.get())));
    let held_row = |one: Held| {
        view! {
            <Row
                name=one.name
                text=one.text
                state=Signal::stored(RowState::Coming)
                href=Screen::of(one.animal).hash()
            />
        }
        .into_any()
    };
    let given_row = |one: Given| {
        view! {
            <Row
                name=one.name
                kind=one.kind
                text=one.text
                state=Signal::stored(RowState::Coming)
                href=Screen::of(one.animal).hash()
            />
        }
        .into_any()
    };
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE />
            <Standing />
            <Section title=words::HELD>
                {live(move || held.with(Vec::is_empty).then(|| view! { <p>{words::NONE_HELD}</p> }).into_any())}
                <Rows>{each(move || held.get(), |one| format!("{:?} {}", one.animal, one.text), held_row)}</Rows>
            </Section>
            <Section title=words::GIVEN>
                {live(move || (all.get() == 0).then(|| view! { <Empty text=words::EMPTY /> }).into_any())}
                <Rows>{each(move || given.get(), |one| format!("{} {}", one.entry, one.text), given_row)}</Rows>
                {live(move || {
                    let more = all.get().saturating_sub(most.get());
                    (more > 0).then(|| view! {
                        <Button label=crate::words::flock::more(more) on_press=move || most.update(|most| *most += 4 * ROWS) />
                    }).into_any()
                })}
                <Button label=words::MANY on_press=move || open.set(Open::Who) />
                <Caution lines=words::CAUTION.map(str::to_owned).to_vec() />
            </Section>
            {live(move || {
                let close = move || open.set(Open::Nothing);
                match open.get() {
                    Open::Nothing => ().into_any(),
                    Open::Who => view! { <WhoSheet open=open /> }.into_any(),
                    Open::Treat(animals) => view! { <TreatSheet animals=animals on_close=close /> }.into_any(),
                }
            })}
        </Page>
    }
}

/// Asks for whom: all ewes, all lambs or the ewes of a group.
#[component]
fn WhoSheet(open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let options = farm.peek(|ground| {
        let flock = &ground.flock;
        let counted = |many: Many, name: String| {
            let count = animals_of(flock, many).len();
            (count > 0).then(|| Choice::new(many, words::counted(&name, count)))
        };
        let groups = flock.groups.values().map(|group| (Many::Group(group.id), group.name.clone()));
        [(Many::Ewes, words::ALL_EWES.to_owned()), (Many::Lambs, words::ALL_LAMBS.to_owned())]
            .into_iter()
            .chain(groups)
            .filter_map(|(many, name)| counted(many, name))
            .collect::<Vec<_>>()
    });
    let none = options.is_empty();
    let close = move || {
        if untrack(|| open.get()) == Open::Who {
            open.set(Open::Nothing);
        }
    };
    let choose = move |many: Many| {
        open.set(Open::Treat(farm.peek(|ground| animals_of(&ground.flock, many))));
    };
    view! {
        <Sheet title=words::WHO on_close=close>
            {none.then(|| view! { <p>{crate::words::flock::NONE_SUCH}</p> })}
            <Choices
                label=words::WHO
                options=options
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
        </Sheet>
    }
}

fn animals_of(flock: &Flock, many: Many) -> Vec<Animal> {
    match many {
        Many::Ewes => flock.ewes.values().filter(|ewe| ewe.lives()).map(|ewe| Animal::Ewe(ewe.id)).collect(),
        Many::Lambs => {
            flock.lambs.values().filter(|lamb| lamb.lives()).map(|lamb| Animal::Lamb(lamb.id)).collect()
        }
        Many::Group(group) => flock
            .groups
            .get(&group)
            .map(|group| group.ewes().collect::<Vec<_>>())
            .unwrap_or_default()
            .into_iter()
            .filter(|ewe| flock.ewe(*ewe).is_some_and(yeanling_core::flock::Ewe::lives))
            .map(Animal::Ewe)
            .collect(),
    }
}

/// The living animals of which something is withheld.
fn held(flock: &Flock, now: Moment) -> Vec<Held> {
    let ewes = flock.ewes.values().filter(|ewe| ewe.lives()).map(|ewe| Animal::Ewe(ewe.id));
    let lambs = flock.lambs.values().filter(|lamb| lamb.lives()).map(|lamb| Animal::Lamb(lamb.id));
    ewes.chain(lambs)
        .filter_map(|animal| {
            let text = told_withheld(flock, animal, now).join(" · ");
            (!text.is_empty()).then(|| Held { animal, name: animals::animal(flock, animal), text })
        })
        .collect()
}

fn given(flock: &Flock, most: usize) -> Vec<Given> {
    let shown = |treated: &yeanling_core::flock::Treated| Given {
        entry: treated.entry,
        animal: treated.animal,
        name: animals::animal(flock, treated.animal),
        kind: date(treated.at),
        text: life::treatment_line(&treated.treatment),
    };
    flock.treatments().into_iter().take(most).map(shown).collect()
}
