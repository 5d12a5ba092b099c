//! What was noted about an animal, newest first; each line can be changed, taken back, and brought back.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, EntryId, Event};
use yeanling_core::flock::{Flock, Line};
use yeanling_core::units::Moment;

use super::AmendSheet;
use crate::farm::use_farm;
use crate::parts::{Noted, Section, SmallButton, Timeline};
use crate::words::common::day_and_clock;
use crate::words::{frame, noted};

#[derive(Clone, Debug, PartialEq)]
struct Told {
    entry: EntryId,
    at: Moment,
    text: String,
    amended: bool,
    struck: bool,
    readable: bool,
}

fn told(line: &Line, flock: &Flock) -> Told {
    Told {
        entry: line.entry,
        at: line.at,
        text: noted::line(&line.event, flock, flock.practice.system),
        amended: line.amended,
        struck: line.struck,
        readable: !matches!(line.event, Event::Unread(_)),
    }
}

/// Shows the timeline of an animal.
#[component]
pub(crate) fn AnimalTimeline(
    /// Whose.
    animal: Animal,
) -> impl IntoView {
    let farm = use_farm();
    let all = Memo::new(move |_| {
        farm.with(|ground| {
            let flock = &ground.flock;
            flock.lines_of(animal).rev().map(|line| told(line, flock)).collect::<Vec<_>>()
        })
    });
    view! { <Lines told=all /> }
}

#[component]
fn Lines(told: Memo<Vec<Told>>) -> impl IntoView {
    let farm = use_farm();
    let entries =
        Memo::new(move |_| told.with(|told| told.iter().map(|line| line.entry).collect::<Vec<_>>()));
    let changing = RwSignal::new(None::<EntryId>);
    let line = move |entry: EntryId| {
        let line =
            Memo::new(move |_| told.with(|told| told.iter().find(|line| line.entry == entry).cloned()));
        let time = Signal::derive(move || {
            line.get().map(|line| day_and_clock(line.at, farm.now())).unwrap_or_default()
        });
        let text = Signal::derive(move || line.get().map(|line| line.text).unwrap_or_default());
        let note = Signal::derive(move || {
            if line.get().is_some_and(|line| line.amended) {
                frame::AMENDED.to_owned()
            } else {
                String::new()
            }
        });
        let struck = Signal::derive(move || line.get().is_some_and(|line| line.struck));
        let name = move |what: &'static str| {
            Signal::derive(move || {
                let text = line.get().map(|line| line.text).unwrap_or_default();
                format!("{what}: {}", text.replace('*', ""))
            })
        };
        let actions = move || {
            let line = line.get()?;
            Some(if line.struck {
                view! {
                    <SmallButton
                        label=frame::RESTORE
                        name=name(frame::RESTORE)
                        on_press=move || {
                            farm.tap(Event::Restored { entry });
                        }
                    />
                }
                .into_any()
            } else {
                view! {
                    {line.readable.then(|| view! {
                        <SmallButton
                            label=frame::CHANGE
                            name=name(frame::CHANGE)
                            on_press=move || changing.set(Some(entry))
                        />
                    })}
                    <SmallButton
                        label=frame::UNDO
                        name=name(frame::UNDO)
                        on_press=move || {
                            farm.tap(Event::Struck { entry });
                        }
                    />
                }
                .into_any()
            })
        };
        view! {
            <Noted time=time text=text note=note struck=struck>
                {live(move || actions().into_any())}
            </Noted>
        }
        .into_any()
    };
    view! {
        <Section title=frame::NOTED>
            <Timeline>
                {each(move || entries.get(), EntryId::to_string, line)}
            </Timeline>
        </Section>
        {live(move || changing.get().map(|entry| view! { <AmendSheet entry=entry on_close=move || changing.set(None) /> }).into_any())}
    }
}
