//! The home: every animal with its clock, the most urgent first, each done with one tap; the big button below.

mod hand;
mod lamb;
mod place;
mod row;
mod season;
mod shown;

use yeanling_core::arrange::Arrange;
use yeanling_core::book::EweId;
use yeanling_core::units::Moment;
use yeanling_core::watch::{State, round};

use crate::farm::use_farm;
use crate::parts::{
    Button, Choice, Choices, Empty, LinkButton, Page, Row, RowState, Rows, Section, Tally, Title, Weight,
    each, live,
};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::signals::prelude::*;
use crate::words::common::{clock, volume};
use crate::words::watch as words;
use crate::words::{danger, hand_over};

use hand::Hand;
use place::Count;
use row::{AnimalRow, key, sheet};
use shown::{Near, Shown};

/// How the rows are sorted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    Urgency,
    Place,
}

/// The home.
#[component]
pub(crate) fn Watch() -> impl IntoView {
    let farm = use_farm();
    let hand = Hand::new(farm);
    let shown = Memo::new(move |before: Option<&Vec<Shown>>| {
        let (fresh, still) = (shown::shown(farm, farm.now()), farm.holds_still());
        match before.filter(|_| still) {
            Some(before) => place::in_place(before, fresh, &hand.pressed()),
            None => fresh,
        }
    });
    let near = Memo::new(move |_| shown::near(farm, farm.now()));
    let time = Signal::derive(move || clock(farm.now()));
    let tally = move |state: State, row: RowState, word: fn(usize) -> String| {
        let count = Memo::new(move |_| shown.with(|shown| place::count(shown, state)));
        live(move || match count.get() {
            Count::None => ().into_any(),
            Count::Room(stood) => view! { <Tally state=row text=word(stood) empty=true /> }.into_any(),
            Count::Some(count) => view! { <Tally state=row text=word(count) /> }.into_any(),
        })
    };
    let nothing = Memo::new(move |_| shown.with(|shown| shown.iter().all(|one| one.state.is_none())));
    let empty = Memo::new(move |_| farm.with(|ground| ground.book.is_empty()));
    let quiet = Memo::new(move |_| shown.with(Vec::is_empty) && near.with(Vec::is_empty));
    let order = RwSignal::new(Order::Urgency);
    let penned = Memo::new(move |_| shown.with(|shown| shown.iter().any(|one| one.place.is_some())));
    let thumb = move || {
        view! {
            <LinkButton href=Screen::Pens.hash() label=words::PENS big=true />
            <LinkButton href=Screen::Lambing.hash() label=words::LAMBING big=true weight=Weight::Filled />
        }
    };
    view! {
        <Page thumb=thumb>
            <Top />
            <Title text=time>
                {tally(State::Danger, RowState::Danger, danger::count)}
                {tally(State::Late, RowState::Late, words::late)}
                {tally(State::Now, RowState::Now, words::now)}
                {tally(State::Coming, RowState::Coming, words::coming)}
                {live(move || nothing.get().then_some(words::NOTHING).into_any())}
            </Title>
            <Standing />
            {live(move || {
                if empty.get() {
                    view! {
                        <Empty
                            text=words::EMPTY
                            action=move || {
                                view! {
                                    <Button label=words::LOOK_ROUND on_press=move || farm.look_round() />
                                    <LinkButton href=Screen::HandOver.hash() label=hand_over::HAD_A_BOOK />
                                }
                            }
                        />
                    }
                        .into_any()
                } else if quiet.get() {
                    view! { <Empty text=words::QUIET /> }.into_any()
                } else {
                    ().into_any()
                }
            })}
            {live(move || penned.get().then(|| view! { <Orders order=order /> }).into_any())}
            <RoundLine />
            {live(move || match order.get() {
                Order::Urgency => by_urgency(shown, hand),
                Order::Place => by_place(shown, hand),
            })}
            <season::ThisWeek />
            <Tonight near=near />
            {sheet(hand)}
        </Page>
    }
}

/// By what presses, or by where they are, so that a round can be walked.
#[component]
fn Orders(order: RwSignal<Order>) -> impl IntoView {
    let options =
        vec![Choice::new(Order::Urgency, words::BY_URGENCY), Choice::new(Order::Place, words::BY_PLACE)];
    view! {
        <Choices
            label=words::ORDER
            options=options
            chosen=Signal::derive(move || Some(order.get()))
            on_choose=move |new| order.set(new)
        />
    }
}

fn by_urgency(shown: Memo<Vec<Shown>>, hand: Hand) -> AnyView {
    let groups = [
        (danger::TITLE, Some(State::Danger)),
        (words::LATE, Some(State::Late)),
        (words::NOW, Some(State::Now)),
        (words::COMING, Some(State::Coming)),
        (words::WELL, None),
    ];
    let group = |(title, state): (&str, Option<State>)| {
        group(title.to_owned(), shown, hand, move |one: &Shown| one.stood == state)
    };
    groups.into_iter().map(group).collect_view().into_any()
}

fn by_place(shown: Memo<Vec<Shown>>, hand: Hand) -> AnyView {
    let places = Memo::new(move |_| {
        let mut places: Vec<Option<String>> =
            shown.with(|shown| shown.iter().map(|one| one.place.clone()).collect());
        // By length first, so that pen 2 comes before pen 10; the barn last.
        places
            .arrange_by_key(|place| (place.is_none(), place.as_ref().map_or(0, String::len), place.clone()));
        places.dedup();
        places
    });
    let one = move |place: Option<String>| {
        let title = place.clone().unwrap_or_else(|| words::BARN.to_owned());
        group(title, shown, hand, move |one: &Shown| one.place == place)
    };
    live(move || places.get().into_iter().map(one).collect_view().into_any()).into_any()
}

/// The rows of one kind under their heading; nothing when there are none.
fn group(
    title: String,
    shown: Memo<Vec<Shown>>,
    hand: Hand,
    is_of: impl Fn(&Shown) -> bool + Send + Sync + 'static,
) -> AnyView {
    let of = Memo::new(move |_| {
        shown.with(|shown| shown.iter().filter(|one| is_of(one)).map(|one| one.animal).collect::<Vec<_>>())
    });
    let some = Memo::new(move |_| of.with(|of| !of.is_empty()));
    let row = move |animal| view! { <AnimalRow animal=animal shown=shown hand=hand /> }.into_any();
    live(move || {
        let title = title.clone();
        let rows = move || view! { <Rows>{each(move || of.get(), |animal| key(*animal), row)}</Rows> };
        some.get().then(|| view! { <Section title=title>{rows()}</Section> }).into_any()
    })
    .into_any()
}

/// What is said of the next round with the bottle.
#[derive(Clone, Debug, PartialEq)]
struct Round {
    text: String,
    volume: String,
    /// The text and the volume whose room is kept.
    room: (String, String),
}

impl Round {
    /// Returns its room alone: what was told of it holds no more.
    fn empty(&self) -> Self {
        let room =
            if self.text.is_empty() { self.room.clone() } else { (self.text.clone(), self.volume.clone()) };
        Self { text: String::new(), volume: String::new(), room }
    }
}

/// The next round with the bottle, when it serves several lambs.
#[component]
fn RoundLine() -> impl IntoView {
    let farm = use_farm();
    let line = Memo::new(move |before: Option<&Option<Round>>| {
        let (now, still): (Moment, bool) = (farm.now(), farm.holds_still());
        let round = farm.with_duties(|_, duties| round(duties, now)).filter(|round| round.feeds.len() > 1);
        let round = round.map(|round| Round {
            text: words::round(round.feeds.len(), &clock(round.due)),
            volume: volume(round.volume, farm.system()),
            room: Default::default(),
        });
        match before.filter(|_| still) {
            Some(before) => place::line(before.as_ref(), round, Round::empty),
            None => round,
        }
    });
    live(move || {
        let row = |Round { text, volume, room: (text_room, volume_room) }: Round| {
            view! {
                <Rows>
                    <Row
                        name=words::ROUND
                        kind=volume
                        text=text
                        text_room=text_room
                        kind_room=volume_room
                        state=Signal::stored(RowState::Coming)
                        href=Screen::BottleRound.hash()
                    />
                </Rows>
            }
        };
        line.get().map(row).into_any()
    })
}

/// Who may lamb tonight, by the signs that were noted.
#[component]
fn Tonight(near: Memo<Vec<Near>>) -> impl IntoView {
    let row = move |id: EweId| {
        let of = move |read: fn(&Near) -> String| {
            Signal::derive(move || {
                near.with(|near| near.iter().find(|near| near.ewe == id).map(read).unwrap_or_default())
            })
        };
        view! {
            <Row
                name=of(|near| near.name.clone())
                kind=of(|near| near.place.clone().unwrap_or_default())
                text=of(|near| near.text.clone())
                state=Signal::stored(RowState::Coming)
                href=Screen::LambingEwe(id).hash()
            />
        }
        .into_any()
    };
    let ids = Memo::new(move |_| near.with(|near| near.iter().map(|near| near.ewe).collect::<Vec<_>>()));
    live(move || {
        let rows = move || view! { <Rows>{each(move || ids.get(), EweId::to_string, row)}</Rows> };
        (!ids.with(Vec::is_empty))
            .then(|| view! { <Section title=words::TONIGHT>{rows()}</Section> })
            .into_any()
    })
}
