//! The pen board: who is in, since when, who may go out, and why not yet.

mod card;
mod one;

use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Animal, Event, PenId, PenSize};
use yeanling_core::flock::{Flock, Pen};
use yeanling_core::units::{Length, Moment};
use yeanling_core::watch::{Readiness, readiness};

pub(crate) use one::PenScreen;

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, BigButton, Button, Empty, Field, FieldKind, Page, Remark, Ribbon, RibbonKind, Row,
    RowState, Rows, Sheet, Stretch, Tick, Title, Weight, each, live,
};
use crate::pieces::{PutInSheet, Standing, Top};
use crate::route::Screen;
use crate::words::common::day_and_clock;
use crate::words::{errors, frame, pens as words, refusals};

/// A pen as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Shown {
    name: String,
    size: String,
    text: String,
    says: String,
    state: RowState,
    ribbon: Option<Stay>,
    remarks: Vec<&'static str>,
    action: Action,
}

/// What one tap can do for it.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Action {
    /// Lets an animal out, perhaps before it may go.
    Out {
        animal: Animal,
        early: bool,
    },
    Clean,
    PutIn,
}

/// A stay on its ribbon.
#[derive(Clone, Debug, PartialEq)]
struct Stay {
    over: f64,
    now: f64,
    since: String,
    until: String,
}

/// The pen board.
#[component]
pub(crate) fn Pens() -> impl IntoView {
    let farm = use_farm();
    let ids = Memo::new(move |_| {
        farm.with(|ground| {
            let mut open: Vec<&Pen> = ground.flock.pens.values().filter(|pen| pen.closed.is_none()).collect();
            // By length first, so that 2 comes before 10.
            open.arrange_by_key(|pen| (pen.name.len(), &pen.name, pen.id));
            open.into_iter().map(|pen| pen.id).collect::<Vec<_>>()
        })
    });
    let making = RwSignal::new(false);
    let putting = RwSignal::new(None::<PenId>);
    let thumb = move || {
        view! {
            <BigButton
                label=words::NEW
                weight=Weight::Outline
                on_press=move || making.set(true)
            />
        }
    };
    view! {
        <Page thumb=thumb>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            <Title text=words::TITLE />
            <Standing />
            {live(move || ids.with(Vec::is_empty).then(|| view! { <Empty text=words::EMPTY /> }).into_any())}
            <Rows>
                {each(
                    move || ids.get(),
                    PenId::to_string,
                    move |id| view! { <PenRow id=id putting=putting /> }.into_any(),
                )}
            </Rows>
            {live(move || {
                making.get().then(|| view! { <NewPen on_close=move || making.set(false) /> }).into_any()
            })}
            {live(move || {
                putting
                    .get()
                    .map(|pen| view! { <PutInSheet pen=pen on_close=move || putting.set(None) /> })
                    .into_any()
            })}
        </Page>
    }
}

/// One pen: who is in, the ribbon of their stay, and one button.
#[component]
fn PenRow(id: PenId, putting: RwSignal<Option<PenId>>) -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.pens.get(&id).map(|pen| shown(&ground.flock, pen, now)))
    });
    let text =
        move |read: fn(Shown) -> String| Signal::derive(move || shown.get().map(read).unwrap_or_default());
    let state = Signal::derive(move || shown.get().map_or(RowState::Done, |shown| shown.state));
    let press = move || {
        live(move || {
            let Some(shown) = shown.get() else { return ().into_any() };
            let (label, action) = (label(shown.action), shown.action);
            let act = move || match action {
                Action::Out { animal, .. } => _ = farm.tap(Event::LetOut { animal }),
                Action::Clean => _ = farm.tap(Event::PenCleaned { pen: id }),
                Action::PutIn => putting.set(Some(id)),
            };
            let name = format!("{label} {}", shown.name);
            view! { <ActionButton label=label name=Signal::stored(name) on_press=act /> }.into_any()
        })
    };
    view! {
        <Row
            name=text(|shown| shown.name)
            kind=text(|shown| shown.size)
            text=text(|shown| shown.text)
            says=text(|shown| shown.says)
            state=state
            href=Screen::Pen(id).hash()
            action=press
        >
            {live(move || {
                let ribbon = shown.get().and_then(|shown| shown.ribbon);
                ribbon.map(|stay| view! { <StayRibbon stay=stay /> }).into_any()
            })}
            {live(move || {
                let remarks = shown.get().map(|shown| shown.remarks).unwrap_or_default();
                remarks.into_iter().map(|text| view! { <Remark text=text /> }).collect_view().into_any()
            })}
        </Row>
    }
}

const fn label(action: Action) -> &'static str {
    match action {
        Action::Out { early: false, .. } => words::OUT,
        Action::Out { early: true, .. } => words::OUT_EARLY,
        Action::Clean => words::CLEANED,
        Action::PutIn => words::PUT_IN,
    }
}

/// The stay: held until it is over, then free.
#[component]
fn StayRibbon(stay: Stay) -> impl IntoView {
    let stretch = |from, to, kind| Stretch { from, to, kind, label: String::new() };
    let stretches =
        vec![stretch(0.0, stay.over, RibbonKind::Held), stretch(stay.over, 1.0, RibbonKind::Best)];
    let label = format!("{} – {}", stay.since, stay.until);
    let ticks = vec![Tick::new(0.0, stay.since), Tick::new(stay.over, stay.until)];
    view! { <Ribbon label=label stretches=stretches ticks=ticks now=Some(stay.now) /> }
}

fn shown(flock: &Flock, pen: &Pen, now: Moment) -> Shown {
    let system = flock.practice.system;
    let name = words::pen(pen);
    let size = pen.size.map(|size| words::size(size, system)).unwrap_or_default();
    let Some(first) = pen.inside.first() else {
        let soiled = pen.soiled();
        let text = match (soiled, pen.left) {
            (true, Some(left)) => format!("{} {}", words::SOILED, day_and_clock(left, now)),
            _ => words::NOBODY.to_owned(),
        };
        let (state, action) =
            if soiled { (RowState::Coming, Action::Clean) } else { (RowState::Done, Action::PutIn) };
        return Shown {
            name,
            size,
            text,
            says: String::new(),
            state,
            ribbon: None,
            remarks: Vec::new(),
            action,
        };
    };
    let text = pen.inside.iter().map(|stay| words::inside(flock, stay.animal, stay.since, now));
    let text = text.collect::<Vec<_>>().join(" · ");
    let ready = match first.animal {
        Animal::Ewe(ewe) => Some(readiness(flock, ewe, first.since, now)),
        Animal::Lamb(_) => None,
    };
    let says = ready.as_ref().map(|ready| words::readiness(flock, ready, now)).unwrap_or_default();
    let state = match &ready {
        Some(ready) if ready.why_not.is_empty() => RowState::Now,
        Some(_) | None => RowState::Coming,
    };
    let mut remarks = Vec::new();
    if pen.inside.iter().filter(|stay| matches!(stay.animal, Animal::Ewe(_))).count() > 1 {
        remarks.push(words::TWO_EWES);
    }
    if pen.left.is_some_and(|left| left <= first.since && pen.cleaned.is_none_or(|clean| clean < left)) {
        remarks.push(words::NOT_CLEANED);
    }
    let early = ready.as_ref().is_some_and(|ready| !ready.why_not.is_empty());
    let ribbon = ready.map(|ready| stay(first.since, &ready, now));
    let action = Action::Out { animal: first.animal, early };
    Shown { name, size, text, says, state, ribbon, remarks, action }
}

fn stay(since: Moment, ready: &Readiness, now: Moment) -> Stay {
    let (needed, passed) = (ready.stay_over.since(since), now.since(since));
    let whole = needed.max(passed).as_seconds_f64().max(60.0) * 1.12;
    let at = |span: yeanling_core::units::TimeDelta| (span.as_seconds_f64() / whole).clamp(0.0, 1.0);
    Stay {
        over: at(needed),
        now: at(passed),
        since: day_and_clock(since, now),
        until: day_and_clock(ready.stay_over, now),
    }
}

/// Sets a pen up: a name, and its sides if someone likes.
#[component]
fn NewPen(#[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let next = farm.peek(|ground| ground.flock.pens.len() + 1).to_string();
    let name = RwSignal::new(next);
    let (wide, deep) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let error = RwSignal::new(String::new());
    let side_error = RwSignal::new(String::new());
    let save = move || {
        error.set(String::new());
        side_error.set(String::new());
        let name = name.get_untracked().trim().to_owned();
        let taken = farm.peek(|ground| {
            let mut open = ground.flock.pens.values().filter(|pen| pen.closed.is_none());
            open.any(|pen| pen.name.eq_ignore_ascii_case(&name))
        });
        if taken {
            return error.set(words::SAME_NAME.to_owned());
        }
        let sides = [wide, deep].map(|side| side.get_untracked().trim().to_owned());
        let size = match sides.each_ref().map(String::is_empty) {
            [true, true] => None,
            [false, false] => {
                let read = |text: &str| Length::parse(text, system);
                match (read(&sides[0]), read(&sides[1])) {
                    (Ok(wide), Ok(deep)) => Some(PenSize { wide, deep }),
                    (Err(wrong), _) | (_, Err(wrong)) => {
                        return side_error.set(errors::typed(&wrong, errors::Field::Length, system));
                    }
                }
            }
            [true, false] | [false, true] => return side_error.set(words::BOTH_SIDES.to_owned()),
        };
        match farm.note(Event::PenMade { name, size }) {
            Ok(_) => on_close.run(()),
            Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system)),
        }
    };
    let unit = match system {
        yeanling_core::units::System::Metric => "m",
        yeanling_core::units::System::Us => "ft",
    };
    view! {
        <Sheet title=words::NEW on_close=on_close>
            <Field label=words::NAME value=name kind=FieldKind::Text error=error />
            <Field label=words::WIDE value=wide kind=FieldKind::Decimal error=side_error>
                <span>{unit}</span>
            </Field>
            <Field label=words::DEEP value=deep kind=FieldKind::Decimal>
                <span>{unit}</span>
            </Field>
            <p class="small-print">{words::SIZES}</p>
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
