//! Night: a dark clock for the nail on the barn wall, with what comes next in figures for reading across a room.
//!
//! It is black whatever the look, and it holds the screen awake; what it cannot do it says.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::Animal;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, State, Task};

use crate::farm::{Alarm, Awake, Ground, use_farm};
use crate::parts::{BigButton, Figure, FigureSize, LinkButton, Mark, Page, Said, SmallLink, Weight};
use crate::pieces::{Standing, ToCalendar, row_state};
use crate::route::Screen;
use crate::words::common::{clock, day_and_clock};
use crate::words::{animals, frame, night as words, watch};

/// How many that are due stand in large words; the Watch has the rest.
const MOST_DUE: usize = 3;

/// How many of those to come stand under the next.
const MOST_THEN: usize = 3;

/// A duty in words.
#[derive(Clone, Debug, PartialEq)]
struct Line {
    of: (Animal, Task),
    name: String,
    text: String,
    says: String,
    href: String,
    due: Moment,
    state: State,
}

/// The night's clock.
#[component]
pub(crate) fn Night() -> impl IntoView {
    let farm = use_farm();
    farm.begin_night();
    on_cleanup(move || farm.end_night());
    Effect::new(move |_| {
        let now = farm.now();
        farm.with_duties(|_, duties| farm.hear(duties, now));
    });
    let of = move |due: bool| {
        let now = farm.now();
        let wanted = |duty: &&Duty| (duty.state(now) > State::Coming) == due;
        let told = |ground: &Ground, duties: &[Duty]| {
            duties.iter().filter(wanted).map(|duty| line(&ground.flock, duty, now)).collect::<Vec<_>>()
        };
        farm.with_duties(|ground, duties| told(ground, duties))
    };
    let due = Memo::new(move |_| of(true));
    let coming = Memo::new(move |_| of(false));
    view! {
        <Page thumb=move || view! { <Thumb /> }>
            <div class="night">
                <div class="night-top">
                    <SmallLink href=Screen::Watch.hash() label=frame::BACK />
                    <h1 id="title">
                        {words::TITLE}
                    </h1>
                    <span>{live(move || clock(farm.now()).into_any())}</span>
                </div>
                <Standing />
                {live(move || overdue(due.get()))}
                {live(move || next(due.with(Vec::is_empty), coming.get(), farm.now()))}
                <div class="night-foot">
                    <p role="status">{live(move || said(farm.night().alarm).into_any())}</p>
                    {live(move || coming.get().first().map(|next| view! { <ToCalendar one=next.of /> }).into_any())}
                    <ToCalendar />
                </div>
            </div>
            <div role="alert">{live(ring)}</div>
        </Page>
    }
}

fn line(flock: &yeanling_core::flock::Flock, duty: &Duty, now: Moment) -> Line {
    Line {
        of: (duty.subject, duty.task),
        name: animals::animal(flock, duty.subject),
        text: watch::task(duty.task, flock.practice.system),
        says: words::stands(duty, now),
        href: Screen::of(duty.subject).hash(),
        due: duty.comes(),
        state: duty.state(now),
    }
}

/// What is late and what is due: the most urgent in large words.
fn overdue(lines: Vec<Line>) -> AnyView {
    let more = lines.len().saturating_sub(MOST_DUE);
    let shown = lines.into_iter().take(MOST_DUE).map(|line| {
        let state = row_state(line.state);
        view! {
            <li>
                <a class="night-due" data-state=state.key() href=line.href>
                    <b>{line.name}</b>
                    <span>
                        <Said text=line.text />
                    </span>
                    <span class="night-says">
                        <Mark state=Signal::stored(state) />
                        <span>
                            <Said text=line.says />
                        </span>
                    </span>
                </a>
            </li>
        }
    });
    let more = (more > 0).then(|| {
        view! {
            <li>
                <SmallLink href=Screen::Watch.hash() label=words::more(more) />
            </li>
        }
    });
    view! {
        <ul class="night-overdue" role="list">
            {shown.collect_view()} {more}
        </ul>
    }
    .into_any()
}

/// What comes next with the time to it, the plain line for a phone in a pocket, and what comes then.
fn next(quiet: bool, lines: Vec<Line>, now: Moment) -> AnyView {
    let Some(first) = lines.first() else {
        return quiet.then(|| view! { <p class="night-calm">{words::NOTHING}</p> }).into_any();
    };
    let (value, unit) = words::time_to(first.due, now);
    let long = unit.is_empty().then_some("true");
    let then = lines.iter().skip(1).take(MOST_THEN).map(|line| {
        view! {
            <li>
                <span>{day_and_clock(line.due, now)}</span>
                <span><b>{line.name.clone()}</b> " · " <Said text=line.text.clone() /></span>
            </li>
        }
    });
    view! {
        {quiet.then(|| view! { <p class="night-calm"><Said text=words::calm(first.due, now) /></p> })}
        <a class="night-next" href=first.href.clone()>
            <b>{first.name.clone()}</b> " · " <Said text=first.text.clone() />
        </a>
        <div role="timer" aria-label=words::TIME_TO_IT data-long=long>
            <Figure value=value unit=unit size=FigureSize::Barn />
        </div>
        <p class="night-pocket">
            <Said text=words::set_alarm(first.due, now) />
        </p>
        <ol class="night-then" role="list">{then.collect_view()}</ol>
    }
    .into_any()
}

/// How the alarm stands.
fn said(alarm: Alarm) -> AnyView {
    let text = match alarm {
        Alarm::Off => words::OFF.to_owned(),
        Alarm::Mute => words::MUTE.to_owned(),
        Alarm::Armed(tested) => words::armed(tested),
        Alarm::Unable => words::NO_SOUND.to_owned(),
    };
    view! { <Said text=text /> }.into_any()
}

/// Whether the screen stays on.
fn awake(awake: Awake) -> AnyView {
    let text = words::awake(match awake {
        Awake::Unasked => None,
        Awake::Held => Some(true),
        Awake::Refused | Awake::Unable => Some(false),
    });
    view! { <Said text=text /> }.into_any()
}

/// What the alarm cannot do, and the big button: it arms and disarms; after a ring another leads to the animal.
#[component]
fn Thumb() -> impl IntoView {
    let farm = use_farm();
    live(move || {
        let night = farm.night();
        let button = match night.alarm {
            Alarm::Off => view! { <BigButton label=words::ARM on_press=move || farm.arm() /> }.into_any(),
            Alarm::Mute => view! { <BigButton label=words::ARM_AGAIN on_press=move || farm.arm() /> }.into_any(),
            Alarm::Armed(_) => {
                view! { <BigButton label=words::DISARM on_press=move || farm.disarm() weight=Weight::Outline /> }
                    .into_any()
            }
            Alarm::Unable => ().into_any(),
        };
        let to = night.answered.map(|animal| {
            let label = words::go_to(&farm.with(|ground| animals::animal(&ground.flock, animal)));
            view! { <LinkButton href=Screen::of(animal).hash() label=label big=true weight=Weight::Filled /> }
        });
        view! {
            <p class="night-only">{words::ONLY_HERE} " " {awake(night.awake)}</p>
            {to}
            {button}
        }
        .into_any()
    })
}

/// What rings, over the whole screen: a tap anywhere answers it.
fn ring() -> AnyView {
    let farm = use_farm();
    let ringing = farm.night().ringing;
    let Some(first) = ringing.first() else { return ().into_any() };
    let (name, text) = farm.with(|ground| {
        let name = animals::animal(&ground.flock, first.subject);
        (name, watch::task(first.task, ground.flock.practice.system))
    });
    let long = (name.chars().count() > 4).then_some("true");
    let more = (ringing.len() > 1).then(|| view! { <span>{words::more(ringing.len() - 1)}</span> });
    view! {
        <button type="button" class="ring" on:click=move |_| farm.answer()>
            <b class="ring-name" data-long=long>
                {name}
            </b>
            <span><Said text=text /></span>
            {more}
            <span class="ring-up"><b>{words::UP}</b> <span>{words::ANYWHERE}</span></span>
        </button>
    }
    .into_any()
}
