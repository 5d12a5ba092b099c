//! The next feed: how much, why, given against wanted; by bottle with one tap, by tube under its safety list.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::{bottle, colostrum, feeds};
use yeanling_core::units::{Moment, System, TimeDelta, Volume};
use yeanling_core::watch::{Duty, Hold, Task, duties, hold_milk, next_milk};

use super::Open;
use crate::farm::{here, use_farm};
use crate::parts::{
    ActionButton, Button, Buttons, Card, Caution, Fact, Facts, Figure, LinkButton, Progress, Remark,
    SmallButton, Weight, WhyButton, WhyText, live,
};
use crate::pieces::{tube, why_text};
use crate::route::Screen;
use crate::words::common::{clock, volume, volume_number};
use crate::words::{bottle_round, errors, lamb as words, watch, why};

/// How much at the next feed, with its reasons; nothing while the weight is not known.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Plan {
    title: &'static str,
    pub(super) volume: Option<Volume>,
    pub(super) milk: Milk,
    why: Option<WhyText>,
    facts: Vec<Fact>,
    facts_why: Option<WhyText>,
    progress: Option<(f64, String)>,
    newborn: bool,
    note: String,
    hold: Option<Hold>,
}

pub(super) fn plan(flock: &Flock, lamb: &Lamb, now: Moment) -> Plan {
    let system = flock.practice.system;
    let age = lamb.age(now);
    let milk = next_milk(lamb, now, &flock.practice);
    let hold = hold_milk(lamb);
    if age < TimeDelta::hours(24) {
        let title = if lamb.hand_fed() { words::NEXT_FEED_HAND } else { words::NEXT_FEED };
        let want = lamb
            .birth_weight()
            .and_then(|weight| colostrum::want(weight, flock.practice.day_rule, flock.practice.housing).ok());
        let Some(want) = want else {
            let note = words::NO_WEIGHT.to_owned();
            return Plan {
                title,
                volume: None,
                milk,
                why: None,
                facts: Vec::new(),
                facts_why: None,
                progress: None,
                newborn: true,
                note,
                hold,
            };
        };
        let given = lamb.given_first_day(now);
        let last = lamb.feeds.last().map(|feed| feed.at.since(lamb.born));
        let next = feeds::next(&want, given, last, age);
        let by = |wanted: Volume, hours: i64| {
            let at = clock(here(lamb.born + TimeDelta::hours(hours)));
            Fact::new(watch::of(&volume_number(given, system), &volume(wanted, system)), watch::by(&at))
        };
        let why = match &next {
            Some(next) => why::next_feed(next, &want, system),
            None => why::colostrum(&want, system),
        };
        let note = match &next {
            None => words::ENOUGH.to_owned(),
            Some(_) => due(flock, lamb, now),
        };
        let share = given.as_milliliters() / want.by_24h.as_milliliters();
        Plan {
            title,
            volume: next.map(|next| next.volume.offered(system)),
            milk,
            why: Some(why_text(why)),
            facts_why: Some(why_text(why::colostrum(&want, system))),
            facts: vec![by(want.by_6h, 6), by(want.by_18h, 18), by(want.by_24h, 24)],
            progress: lamb
                .hand_fed()
                .then(|| (share, words::given(&volume(given, system), &volume(want.by_24h, system)))),
            newborn: true,
            note,
            hold,
        }
    } else {
        let title = words::BOTTLE_FEED;
        match bottle::day(age, lamb.last_weight(now).map(|weight| weight.mass), flock.practice.bottle_table) {
            Ok(day) => Plan {
                title,
                volume: Some(day.per_feed.offered(system)),
                milk,
                why: Some(why_text(why::bottle(&day, system))),
                facts: vec![
                    Fact::new(format!("*{}*", day.feeds), words::FEEDS_A_DAY),
                    Fact::new(volume(day.day_total, system), words::IN_A_DAY),
                    Fact::new(
                        volume(lamb.given(now - TimeDelta::hours(24), now), system),
                        words::GIVEN_IN_A_DAY,
                    ),
                ],
                facts_why: None,
                progress: None,
                newborn: false,
                note: due(flock, lamb, now),
                hold,
            },
            Err(error) => Plan {
                title,
                volume: None,
                milk,
                why: None,
                facts: Vec::new(),
                facts_why: None,
                progress: None,
                newborn: false,
                note: errors::no_row(&error, system),
                hold,
            },
        }
    }
}

/// Returns when the next feed is due, or that it is late; nothing for a lamb that was never fed by hand.
fn due(flock: &Flock, lamb: &Lamb, now: Moment) -> String {
    let subject = Animal::Lamb(lamb.id);
    duties(flock, now, &flock.practice)
        .into_iter()
        .find(|duty| duty.subject == subject && matches!(duty.task, Task::Feed { .. }))
        .map(|duty| {
            let duty =
                Duty { due: here(duty.due), late: here(duty.late), put_off: duty.put_off.map(here), ..duty };
            watch::when(&duty, now)
        })
        .unwrap_or_default()
}

/// The next feed by bottle with one tap, or by tube once its safety list is read.
#[component]
pub(super) fn Feeding(id: LambId, open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let plan = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).map(|lamb| plan(&ground.flock, lamb, now)))
    });
    let hand = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground.flock.lamb(id).is_some_and(|lamb| lamb.on_bottle() || lamb.age(now) < TimeDelta::hours(48))
        })
    });
    let on_bottle =
        Memo::new(move |_| farm.with(|ground| ground.flock.lamb(id).is_some_and(Lamb::on_bottle)));
    let to_round = move || {
        let link = move || view! { <LinkButton href=Screen::BottleRound.hash() label=bottle_round::LINK /> };
        live(move || on_bottle.get().then(link).into_any())
    };
    let fed = move |way: Way| {
        if let Some(Plan { volume: Some(volume), milk, .. }) = plan.get_untracked() {
            farm.tap(Event::Fed { lamb: id, volume, milk, way });
        }
    };
    live(move || {
        if !hand.get() {
            return view! {
                <Buttons columns=2>
                    <Button label=words::OTHER_FEED on_press=move || open.set(Open::Feed) />
                </Buttons>
            }
            .into_any();
        }
        let Some(plan) = plan.get() else { return ().into_any() };
        let system = farm.system();
        if let Some(hold) = plan.hold {
            return view! { {held(id, hold, system, open)} {to_round()} }.into_any();
        }
        let label = plan.volume.map(|next| volume(next, system));
        let tube_label = label.clone().filter(|_| plan.newborn);
        let other = match system {
            System::Metric => System::Us,
            System::Us => System::Metric,
        };
        let also = plan.volume.map(|next| volume(next, other)).unwrap_or_default();
        view! {
            <Card>
                <Remark text=plan.title />
                {label.map(|label| {
                    let (number, unit) = label.split_once(' ').unwrap_or((&label, ""));
                    let (number, unit) = (number.to_owned(), unit.to_owned());
                    let fed_label = words::fed(&number);
                    view! {
                        <div class="card-top">
                            <div class="card-lead">
                                <Figure value=number unit=unit also=also />
                            </div>
                            <div class="card-action">
                                <ActionButton
                                    label=fed_label
                                    on_press=move || fed(Way::Bottle)
                                    weight=Weight::Filled
                                />
                            </div>
                        </div>
                    }
                })}
                <Remark text=plan.note>
                    {plan.why.map(|why| view! { <WhyButton why=why /> })}
                </Remark>
                {(!plan.facts.is_empty()).then(|| view! { <Facts facts=plan.facts /> })}
                {plan.progress.map(|(share, text)| view! { <Progress share=share text=text /> })}
                <Remark text="">
                    {plan.facts_why.map(|why| view! { <WhyButton why=why text=words::WHY_DAY /> })}
                    " "
                    <SmallButton label=words::OTHER_FEED on_press=move || open.set(Open::Feed) />
                </Remark>
            </Card>
            {to_round()}
            {tube_label.map(|label| view! {
                <details class="fold">
                    <summary>{words::BY_TUBE}</summary>
                    <Caution lines=tube() />
                    <Button label=words::tubed(&label) on_press=move || fed(Way::Tube) />
                </details>
            })}
        }
        .into_any()
    })
}

/// What stands there while milk must wait: why, and the way to what comes first; no volume, so that none is given.
fn held(id: LambId, hold: Hold, system: System, open: RwSignal<Open>) -> AnyView {
    view! {
        <Card>
            <Remark text=words::HOLD />
            <Caution lines=words::hold(hold, system) />
            <LinkButton href=Screen::ColdLamb(Some(id)).hash() label=words::COLD_NOW />
            <Remark text="">
                <SmallButton label=words::OTHER_FEED on_press=move || open.set(Open::Feed) />
            </Remark>
        </Card>
    }
    .into_any()
}
