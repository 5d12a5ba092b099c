//! The bottle round: every bottle lamb with its volume and its times, one tick each, and one mix for all still to feed.

mod round;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Event, LambId};
use yeanling_core::reckon::mixing::made_up_to;
use yeanling_core::units::{Mass, System, Volume};

use round::{OnRound, Round, round};

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Caution, Empty, Fact, Facts, Figure, LinkButton, Page, Remark, Row, RowState, Rows, Said,
    Section, SmallButton, Title, Weight, WhyButton,
};
use crate::pieces::{CameFrom, FeedSheet, PowderToWeaning, Standing, Top, why_text};
use crate::route::Screen;
use crate::words::common::{feed_mass, volume, volume_as_given};
use crate::words::{bottle_round as words, errors, frame, why};

/// All bottle lambs at once.
#[component]
pub(crate) fn BottleRound() -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |_| {
        let now = farm.now();
        farm.with_duties(|ground, duties| round(&ground.flock, duties, now))
    });
    let open = RwSignal::new(None::<LambId>);
    let none = Memo::new(move |_| shown.with(|round| round.lambs() == 0));
    let all_fed = Memo::new(move |_| shown.with(|round| round.to_feed.is_empty() && !round.fed.is_empty()));
    let sub = Signal::derive(move || {
        shown.with(|round| {
            let to_feed = round.to_feed.len();
            if to_feed > 0 { words::sub(to_feed, &round.when) } else { String::new() }
        })
    });
    view! {
        <Page>
            <Top back=CameFrom::back(Screen::BottleRound) />
            <Title text=words::TITLE>
                <Said text=sub />
            </Title>
            <Standing />
            {live(move || {
                if none.get() {
                    let link = move || view! { <LinkButton href=Screen::Flock.hash() label=frame::FLOCK /> };
                    return view! { <Empty text=words::EMPTY action=link /> }.into_any();
                }
                view! {
                    <Group title=words::TO_FEED lambs=shown read=|round| &round.to_feed open=open />
                    {live(move || all_fed.get().then(|| view! { <Remark text=words::ALL_FED /> }).into_any())}
                    <MixCard shown=shown />
                    <Group title=words::FED lambs=shown read=|round| &round.fed open=open />
                    <Group title=words::LATER lambs=shown read=|round| &round.later open=open />
                    <Day shown=shown />
                    <Until shown=shown />
                }
                    .into_any()
            })}
            <Sheets shown=shown open=open />
        </Page>
    }
}

/// The lambs of one kind under their heading; nothing when there are none.
#[component]
fn Group(
    title: &'static str,
    lambs: Memo<Round>,
    read: fn(&Round) -> &Vec<OnRound>,
    open: RwSignal<Option<LambId>>,
) -> impl IntoView {
    let ids = Memo::new(move |_| {
        lambs.with(|round| read(round).iter().map(|lamb| lamb.id).collect::<Vec<LambId>>())
    });
    let some = Memo::new(move |_| ids.with(|ids| !ids.is_empty()));
    let row = move |id: LambId| view! { <Lamb id=id round=lambs open=open /> }.into_any();
    live(move || {
        let rows = move || view! { <Rows>{each(move || ids.get(), LambId::to_string, row)}</Rows> };
        some.get().then(|| view! { <Section title=title>{rows()}</Section> }).into_any()
    })
}

/// One lamb: what it gets with its tick, how its day stands, and another amount.
#[component]
fn Lamb(id: LambId, round: Memo<Round>, open: RwSignal<Option<LambId>>) -> impl IntoView {
    let farm = use_farm();
    let lamb = Memo::new(move |_| round.with(|round| round.find(id).cloned()));
    let text = move |read: fn(&OnRound) -> &String| {
        Signal::derive(move || {
            lamb.with(|lamb| lamb.as_ref().map(|lamb| read(lamb).clone()).unwrap_or_default())
        })
    };
    let named = move |what: &'static str| {
        Signal::derive(move || {
            lamb.with(|lamb| {
                let lamb = lamb.as_ref();
                let name = lamb.map(|lamb| lamb.name.as_str()).unwrap_or_default();
                let amount = lamb.filter(|_| what == words::TICK).map(|lamb| lamb.amount.as_str());
                match amount {
                    Some(amount) => format!("{what} {amount}, {name}"),
                    None => format!("{what}, {name}"),
                }
            })
        })
    };
    let state =
        Signal::derive(move || lamb.with(|lamb| lamb.as_ref().map_or(RowState::Coming, |lamb| lamb.state)));
    let what = Memo::new(move |_| {
        lamb.with(|lamb| {
            let lamb = lamb.as_ref()?;
            let due = matches!(lamb.state, RowState::Late | RowState::Now);
            Some((lamb.fed, lamb.feed.clone().map(|feed| (feed, due)), !lamb.says.is_empty()))
        })
    });
    let press = move || {
        live(move || match what.get() {
            Some((Some(entry), ..)) => {
                let undo = move || {
                    farm.tap(Event::Struck { entry });
                };
                view! { <ActionButton label=words::UNDO name=named(words::UNDO) on_press=undo weight=Weight::Quiet /> }
                    .into_any()
            }
            Some((None, Some((event, due)), _)) => {
                let weight = if due { Weight::Filled } else { Weight::Outline };
                let tick = move || {
                    farm.tap(event.clone());
                };
                view! { <ActionButton label=words::TICK name=named(words::TICK) on_press=tick weight=weight /> }
                    .into_any()
            }
            Some((None, None, true)) => view! {
                <ActionButton
                    label=words::OPEN
                    name=named(words::OPEN)
                    on_press=move || open.set(Some(id))
                />
            }
            .into_any(),
            Some((None, None, false)) | None => ().into_any(),
        })
    };
    let why = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().and_then(|lamb| lamb.why.clone())));
    let other = Memo::new(move |_| lamb.with(|lamb| lamb.as_ref().is_some_and(|lamb| lamb.fed.is_none())));
    view! {
        <Row
            name=text(|lamb| &lamb.name)
            kind=text(|lamb| &lamb.kind)
            text=text(|lamb| &lamb.text)
            says=text(|lamb| &lamb.says)
            state=state
            href=Screen::Lamb(id).hash()
            action=press
        >
            <Remark text=text(|lamb| &lamb.day)>
                {live(move || why.get().map(|why| view! { <WhyButton why=why /> }).into_any())}
                " "
                {live(move || other.get().then(|| view! {
                    <SmallButton
                        label=words::OTHER
                        name=named(words::OTHER)
                        on_press=move || open.set(Some(id))
                    />
                }).into_any())}
            </Remark>
        </Row>
    }
}

/// One mix for all still to feed, and the trap of a weak one.
#[component]
fn MixCard(shown: Memo<Round>) -> impl IntoView {
    let farm = use_farm();
    let mix = Memo::new(move |_| {
        shown.with(|round| (round.mix, round.unknown, round.not_mixed, round.to_feed.is_empty()))
    });
    live(move || {
        let (mix, unknown, not_mixed, none) = mix.get();
        if none {
            return ().into_any();
        }
        let system = farm.system();
        let other = match system {
            System::Metric => System::Us,
            System::Us => System::Metric,
        };
        let figure = |text: String| {
            let (number, unit) = text.split_once(' ').unwrap_or((&text, ""));
            (number.to_owned(), unit.to_owned())
        };
        let card = mix.map(|(mix, lambs)| {
            let mix = match mix {
                Ok(mix) => mix,
                Err(wrong) => return view! { <Remark text=errors::no_mix(&wrong, system) /> }.into_any(),
            };
            let (powder, powder_unit) = figure(feed_mass(mix.powder, system));
            let (water, water_unit) = figure(volume_as_given(mix.water, system));
            let trap = made_up_to(Volume::from_milliliters(1000.0), mix.rate)
                .map(|liter| words::trap(&liter))
                .unwrap_or_default();
            view! {
                <Remark text=words::mix_for(&mix, lambs, system)>
                    <WhyButton why=why_text(why::mixing(&mix, system)) />
                </Remark>
                <div class="answers">
                    <div class="answer">
                        <p class="answer-label">{words::POWDER}</p>
                        <Figure value=powder unit=powder_unit also=feed_mass(mix.powder, other) />
                    </div>
                    <div class="answer">
                        <p class="answer-label">{words::WATER}</p>
                        <Figure value=water unit=water_unit also=volume_as_given(mix.water, other) />
                    </div>
                </div>
                <p><Said text=words::how(&mix, system) /></p>
                <Caution lines=vec![trap, words::LABEL_FIRST.to_owned()] />
            }
            .into_any()
        });
        view! {
            <Section title=words::MIX>
                {card}
                {(unknown > 0).then(|| view! { <Remark text=words::unknown(unknown) /> })}
                {not_mixed.map(|milk| view! { <Remark text=words::not_mixed(milk, system) /> })}
            </Section>
        }
        .into_any()
    })
}

/// What all lambs past their first day take in a day, and when.
#[component]
fn Day(shown: Memo<Round>) -> impl IntoView {
    let farm = use_farm();
    let day = Memo::new(move |_| shown.with(|round| round.day.map(|day| (day, round.times.clone()))));
    live(move || {
        let system = farm.system();
        day.get()
            .map(|((milk, powder, feeds), times)| {
                let facts = vec![
                    Fact::new(format!("*{}*", volume(milk, system)), words::DAY_MILK),
                    Fact::new(format!("*{}*", feed_mass(powder, system)), words::DAY_POWDER),
                    Fact::new(format!("*{feeds}*"), words::DAY_FEEDS),
                ];
                let times = times.into_iter().map(|text| view! { <p><Said text=text /></p> }.into_any());
                view! {
                    <Section title=words::TODAY>
                        <Facts facts=facts />
                        {times.collect_view()}
                    </Section>
                }
            })
            .into_any()
    })
}

/// The powder until weaning, for as many lambs as are on the bottle.
#[component]
fn Until(shown: Memo<Round>) -> impl IntoView {
    let used = Memo::new(move |_| shown.with(|round| round.used));
    let used = Signal::derive(move || Mass::from_kilograms(used.get()));
    let lambs = shown.with_untracked(Round::lambs).to_string();
    view! { <PowderToWeaning lambs=lambs used=used /> }
}

/// The sheet of another amount.
#[component]
fn Sheets(shown: Memo<Round>, open: RwSignal<Option<LambId>>) -> impl IntoView {
    live(move || {
        open.get()
            .and_then(|id| {
                shown.with_untracked(|round| round.find(id).map(|lamb| (id, lamb.volume, lamb.milk)))
            })
            .map(|(id, volume, milk)| {
                view! { <FeedSheet lamb=id volume=volume milk=milk on_close=move || open.set(None) /> }
            })
            .into_any()
    })
}
