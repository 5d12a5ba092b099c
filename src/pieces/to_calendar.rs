//! Alarms handed to the phone's own calendar, which rings in a pocket: all that lie ahead, or one.

use crate::parts::live;
use crate::signals::prelude::*;
use leptos::task::spawn_local;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::Animal;
use yeanling_core::calendar::{self, Alarm};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, Task};

use crate::farm::{Farm, FileTrouble, Ground, use_farm};
use crate::parts::{Button, Said, SmallButton};
use crate::route::{Screen, Way};
use crate::words::{animals, hand_over, night as words, watch};

/// Hands alarms to the phone's calendar; nothing of the made-up flock.
#[component]
pub(crate) fn ToCalendar(
    /// The one duty whose alarm is handed over, by a small button; without it all are, by a button.
    #[prop(optional, into)]
    one: Option<(Animal, Task)>,
) -> impl IntoView {
    let farm = use_farm();
    let said = RwSignal::new(String::new());
    let hand = move || {
        let now = farm.peek_now();
        let mut alarms = ahead(farm, now);
        alarms
            .retain(|(duty, _)| one.is_none_or(|(animal, task)| (duty.subject, duty.task) == (animal, task)));
        if alarms.is_empty() {
            said.set(words::NONE_AHEAD.to_owned());
            return;
        }
        let alarms: Vec<Alarm> = alarms.into_iter().map(|(_, alarm)| alarm).collect();
        let text = calendar::write(&alarms, now);
        spawn_local(async move {
            said.set(match farm.give_calendar(words::FILE, &text).await {
                Ok(()) => words::IN_CALENDAR.to_owned(),
                Err(FileTrouble::Failed(browser)) => hand_over::not_saved(&browser),
                Err(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => {
                    String::new()
                }
            });
        });
    };
    let button = move || match one {
        Some(_) if farm.is_made_up() => ().into_any(),
        None if farm.is_made_up() => view! { <p class="small-print">{words::MADE_UP}</p> }.into_any(),
        Some(_) => view! { <SmallButton label=words::ONE_TO_CALENDAR on_press=hand /> }.into_any(),
        None => view! { <Button label=words::ALL_TO_CALENDAR on_press=hand /> }.into_any(),
    };
    view! {
        {live(button)}
        <p class="small-print" role="status">
            <Said text=said />
        </p>
    }
}

/// Returns the alarms that lie ahead, each with its duty, by when they ring: at the due instant, or at the late one
/// once that has passed.
fn ahead(farm: Farm, now: Moment) -> Vec<(Duty, Alarm)> {
    let duties = untrack(|| farm.with_duties(|_, duties| duties.to_vec()));
    farm.peek(|ground| {
        let mut found: Vec<(Duty, Alarm)> = duties
            .into_iter()
            .filter_map(|duty| alarm(ground, &duty, now).map(|alarm| (duty, alarm)))
            .collect();
        found.arrange_by_key(|(_, alarm)| alarm.at);
        found
    })
}

fn alarm(ground: &Ground, duty: &Duty, now: Moment) -> Option<Alarm> {
    let at = [duty.comes(), duty.late].into_iter().find(|at| at.since(now) > TimeDelta::zero())?;
    let flock = &ground.flock;
    let name = animals::animal(flock, duty.subject);
    let id = match duty.subject {
        Animal::Ewe(id) => id.to_string(),
        Animal::Lamb(id) => id.to_string(),
    };
    Some(Alarm {
        uid: format!("{id}-{}@yeanling", duty.task.kind()),
        at,
        lead: TimeDelta::zero(),
        summary: words::line(&name, &watch::task(duty.task, flock.practice.system)),
        description: words::note(duty),
        url: Screen::of(duty.subject).address(),
    })
}
