//! Lamb after lamb over the scales: the weight of each, then how they grew, side by side with their like.

use crate::parts::{Wrong, each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Event, LambId};
use yeanling_core::figures::{Grown, REARED_AT, grown, seasons};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::units::{Mass, Moment, TimeDelta};

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Card, Choice, Choices, Empty, Field, FieldKind, Keypad, Page, Readout, Remark, Row,
    RowState, Rows, Said, Section, Sheet, Title, Weight, WhyButton,
};
use crate::pieces::{Standing, Top, asks_once, why_text};
use crate::route::Screen;
use crate::words::common::mass;
use crate::words::{animals, errors, frame, lamb, refusals, weighing as words, why};

/// How many lambs stand under how they grew at first.
const ROWS: usize = 40;

/// Lamb after lamb.
#[component]
pub(crate) fn Weighing() -> impl IntoView {
    let farm = use_farm();
    let lambs = Memo::new(move |_| farm.with(|ground| in_order(&ground.flock)));
    let at = RwSignal::new(0_usize);
    let find = RwSignal::new(String::new());
    let jump = move |text: String| {
        let part = text.trim().to_lowercase();
        if part.is_empty() {
            return;
        }
        let found = farm.peek(|ground| {
            lambs.with_untracked(|lambs| lambs.iter().position(|id| goes_by(&ground.flock, *id, &part)))
        });
        if let Some(place) = found {
            at.set(place);
        }
    };
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE />
            <Standing />
            {live(move || {
                let lambs = lambs.get();
                if lambs.is_empty() {
                    return view! { <Empty text=words::NO_LAMBS /> }.into_any();
                }
                let of = lambs.len();
                match lambs.get(at.get()).copied() {
                    Some(id) => view! { <One id=id at=at of=of find=find jump=jump /> }.into_any(),
                    None => view! {
                        <p>{words::ALL_DONE}</p>
                        <Button label=words::AGAIN on_press=move || at.set(0) />
                    }
                    .into_any(),
                }
            })}
            <ToWean />
            <HowTheyGrew />
        </Page>
    }
}

/// Lambs with their ewes, to be weaned together; nothing while none is old enough.
#[component]
fn ToWean() -> impl IntoView {
    let farm = use_farm();
    let lambs = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| to_wean(&ground.flock, now))
    });
    let count = Memo::new(move |_| lambs.with(Vec::len));
    let asking = RwSignal::new(false);
    let wean = move || {
        if farm.tap_all(lambs.get_untracked().into_iter().map(|lamb| Event::Weaned { lamb }).collect()) {
            asking.set(false);
        }
    };
    live(move || {
        let of = count.get();
        (of > 0)
            .then(|| {
                view! {
                    <Section title=words::WEANING>
                        <p><Said text=words::with_ewes(of) /></p>
                        <Button label=words::wean(of) on_press=move || asking.set(true) />
                        {live(move || asking.get().then(|| view! {
                            <Sheet title=words::WEAN_ASK on_close=move || asking.set(false)>
                                <p><Said text=words::with_ewes(of) /></p>
                                <Button label=words::weaned(of) on_press=wean weight=Weight::Filled />
                            </Sheet>
                        }).into_any())}
                    </Section>
                }
            })
            .into_any()
    })
}

/// The living lambs of the latest season that go with a ewe, are six weeks old and not weaned.
fn to_wean(flock: &Flock, now: Moment) -> Vec<LambId> {
    let is = |lamb: &Lamb| lamb.to_be_weaned_from_ewe() && lamb.age(now) >= REARED_AT;
    in_order(flock).into_iter().filter(|id| flock.lambs.get(id).is_some_and(is)).collect()
}

/// The living lambs of the latest season, the oldest first.
fn in_order(flock: &Flock) -> Vec<LambId> {
    let season = seasons(flock).into_iter().next();
    let lambs = season.map(|season| season.lambs).unwrap_or_default();
    lambs.into_iter().filter(|id| flock.lambs.get(id).is_some_and(Lamb::lives)).collect()
}

/// Says whether a lamb is called so, or ever was.
fn goes_by(flock: &Flock, id: LambId, part: &str) -> bool {
    let called = |text: &str| text.to_lowercase() == part;
    flock
        .lamb(id)
        .is_some_and(|lamb| called(&animals::lamb(flock, lamb)) || lamb.worn.iter().any(|worn| called(worn)))
}

/// One lamb on the scales.
#[component]
fn One(
    id: LambId,
    at: RwSignal<usize>,
    of: usize,
    find: RwSignal<String>,
    #[prop(into)] jump: Callback<(String,)>,
) -> impl IntoView {
    let farm = use_farm();
    let value = RwSignal::new(String::new());
    let system = RwSignal::new(untrack(|| farm.system()));
    let error = RwSignal::new(String::new());
    let sure = RwSignal::new(None);
    let now = farm.peek_now();
    let (name, last, weighed) = farm.peek(|ground| told(&ground.flock, id, now));
    let next = move || {
        find.set(String::new());
        at.update(|at| *at += 1);
    };
    let save = move || {
        error.set(String::new());
        let (text, unit) = (value.get_untracked(), system.get_untracked());
        if text.is_empty() {
            return error.set(words::NOTHING.to_owned());
        }
        match Mass::parse(&text, unit) {
            Err(wrong) => error.set(errors::typed(&wrong, errors::Field::Mass, unit)),
            Ok(mass) => match asks_once(farm, id, mass, (text, unit), sure) {
                Some(question) => error.set(question),
                None => match farm.note(Event::Weighed { lamb: id, mass }) {
                    Ok(_) => next(),
                    Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), unit)),
                },
            },
        }
    };
    let readout = Signal::derive(move || {
        let typed = value.get();
        if typed.is_empty() { "–".to_owned() } else { typed }
    });
    let units = vec![
        Choice::new(yeanling_core::units::System::Metric, "kg"),
        Choice::new(yeanling_core::units::System::Us, "lb"),
    ];
    let place = words::place(at.get_untracked(), of, weighed);
    let back = (at.get_untracked() > 0).then(|| {
        view! { <Button label=words::BACK on_press=move || at.update(|at| *at -= 1) weight=Weight::Quiet /> }
    });
    view! {
        <Card>
            <Remark text=place />
            <h2 class="race-name">{name}</h2>
            <p><Said text=last /></p>
            <Keypad value=value point='.' on_change=move |_: String| error.set(String::new())>
                <Readout label=lamb::WEIGHT value=readout />
                <Choices
                    label=lamb::UNIT
                    options=units
                    chosen=Signal::derive(move || Some(system.get()))
                    on_choose=move |unit| system.set(unit)
                    snug=true
                />
            </Keypad>
            <Wrong error=error />
            <Button label=words::NEXT on_press=save weight=Weight::Filled />
            <Buttons columns=2>
                <Button label=words::SKIP on_press=next />
                {back}
            </Buttons>
            <Field label=words::FIND value=find kind=FieldKind::Search on_change=move |text: String| jump.run((text,)) />
        </Card>
    }
}

/// Returns a lamb's name, what is known of it, and how many lambs were weighed today.
fn told(flock: &Flock, id: LambId, now: Moment) -> (String, String, usize) {
    let Some(lamb) = flock.lamb(id) else { return (frame::GONE.to_owned(), String::new(), 0) };
    let system = flock.practice.system;
    let last = lamb.weights.last().map(|weight| {
        format!("*{}* at {} days", mass(weight.mass, system), weight.at.since(lamb.born).num_days())
    });
    let kind = animals::kind(lamb);
    let today = now.local().date();
    let weighed = flock.lambs.values().filter(|lamb| {
        lamb.weights.last().is_some_and(|weight| {
            weight.at.local().date() == today && weight.at.since(lamb.born) >= TimeDelta::days(1)
        })
    });
    (
        animals::lamb(flock, lamb),
        words::last(kind, lamb.age(now).num_days(), last.as_deref()),
        weighed.count(),
    )
}

/// A lamb and how it grew, as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Shown {
    id: LambId,
    name: String,
    kind: String,
    text: String,
    says: String,
    lags: bool,
}

/// How the lambs of the latest season grew.
#[component]
fn HowTheyGrew() -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let flock = &ground.flock;
            let season = seasons(flock).into_iter().next();
            let all = season.map(|season| grown(flock, &season, now)).unwrap_or_default();
            all.iter().take(ROWS).map(|one| show(flock, one)).collect::<Vec<Shown>>()
        })
    });
    let none = Memo::new(move |_| shown.with(Vec::is_empty));
    let row = |one: Shown| {
        let state = if one.lags { RowState::Now } else { RowState::Coming };
        view! {
            <Row
                name=one.name
                kind=one.kind
                text=one.text
                says=one.says
                state=Signal::stored(state)
                href=Screen::Lamb(one.id).hash()
            />
        }
        .into_any()
    };
    view! {
        <Section title=words::GROWN>
            <Remark text=Signal::derive(move || {
                if none.get() { words::NONE_GROWN.to_owned() } else { words::ALIKE.to_owned() }
            })>
                <WhyButton why=why_text(why::grown()) />
            </Remark>
            <Rows>{each(move || shown.get(), |one| format!("{} {} {}", one.id, one.text, one.says), row)}</Rows>
        </Section>
    }
}

fn show(flock: &Flock, one: &Grown) -> Shown {
    let system = flock.practice.system;
    let alike = words::alike(&one.adjusted, system);
    Shown {
        id: one.lamb,
        name: animals::lamb_of(flock, one.lamb),
        kind: words::born_and_reared(one.born, one.reared),
        text: words::grew(one, system),
        says: if one.lags { format!("{} · {alike}", words::LAGS) } else { alike },
        lags: one.lags,
    }
}
