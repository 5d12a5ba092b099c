//! What the season asks for this week, under what presses tonight: each with the one tap that does it.

use crate::signals::prelude::*;
use yeanling_core::book::{Event, GroupId};
use yeanling_core::figures::{Asked, overdue, this_week};
use yeanling_core::reckon::season::dates::What;

use super::place::in_order;
use crate::farm::use_farm;
use crate::parts::{ActionButton, Row, RowState, Rows, Section, Ticked, each, live};
use crate::route::Screen;
use crate::words::{ahead, animals, watch as words};

/// One thing asked for, as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Shown {
    asked: Asked,
    group: String,
    text: String,
    says: String,
    late: bool,
    /// Whether it was done just now, and its tick stands in its place.
    done: bool,
}

impl Shown {
    fn done(&self) -> Self {
        Self { done: true, ..self.clone() }
    }
}

/// What the season asks for; nothing while it asks for nothing.
#[component]
pub(super) fn ThisWeek() -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |before: Option<&Vec<Shown>>| {
        let still = farm.holds_still();
        let (now, system) = (farm.now(), farm.system());
        let today = now.local().date();
        let fresh = farm.with(|ground| {
            this_week(&ground.flock, now)
                .into_iter()
                .map(|asked| Shown {
                    asked,
                    group: name(&ground.flock, asked.group),
                    text: ahead::what(&asked.dated.what, system),
                    says: ahead::away(asked.dated.date, today),
                    late: asked.dated.date < today,
                    done: false,
                })
                .collect::<Vec<Shown>>()
        });
        match before.filter(|_| still) {
            Some(before) => {
                in_order(before, fresh, |one| one.asked, |was, now| now.unwrap_or_else(|| was.done()))
            }
            None => fresh,
        }
    });
    let row = move |one: Shown| {
        let group = one.asked.group;
        let (label, event) = match one.asked.dated.what {
            What::RamOut => (Some(words::RAM_IS_OUT), Some(Event::RamOut { group })),
            What::Booster { .. } => (Some(words::GIVEN), Some(Event::BoosterGiven { group })),
            What::Feed { each } => (Some(words::FED_SO), Some(Event::FeedSet { group, mass: each })),
            What::FeedUntil => {
                let none = yeanling_core::units::Mass::from_kilograms(0.0);
                (Some(words::STOPPED), Some(Event::FeedSet { group, mass: none }))
            }
            What::ScoreBeforeRam
            | What::ScoreAtRam
            | What::CrayonChange { .. }
            | What::ScoreAtMid
            | What::ScoreLate
            | What::WatchFrom
            | What::WatchUntil => (None, None),
        };
        let href = match one.asked.dated.what {
            What::ScoreBeforeRam | What::ScoreAtRam | What::ScoreAtMid | What::ScoreLate => {
                Screen::Race(group)
            }
            What::RamOut
            | What::Booster { .. }
            | What::Feed { .. }
            | What::FeedUntil
            | What::CrayonChange { .. }
            | What::WatchFrom
            | What::WatchUntil => Screen::Group(group),
        };
        let state = Signal::stored(if one.late { RowState::Now } else { RowState::Coming });
        match label.zip(event) {
            Some((label, event)) => {
                let named = format!("{label}: {}, {}", one.group, one.text);
                let press = move || {
                    farm.tap(event.clone());
                };
                let action = move || {
                    if one.done {
                        view! { <Ticked label=label /> }.into_any()
                    } else {
                        view! { <ActionButton label=label name=named.clone() on_press=press.clone() /> }
                            .into_any()
                    }
                };
                view! {
                    <Row
                        name=one.group
                        text=one.text
                        says=one.says
                        state=state
                        href=href.hash()
                        action=action
                    />
                }
                .into_any()
            }
            None => view! { <Row name=one.group text=one.text says=one.says state=state href=href.hash() /> }
                .into_any(),
        }
    };
    let past = Memo::new(move |_| {
        let now = farm.now();
        farm.with_outlooks(|ground, outlooks| overdue(&ground.flock, outlooks, now).len())
    });
    let past_row = move || {
        (past.get() > 0)
            .then(|| {
                view! {
                    <Row
                        name=animals::ewes(past.get())
                        text=ahead::OVERDUE_TEXT.to_owned()
                        says=ahead::OVERDUE_SAYS.to_owned()
                        state=Signal::stored(RowState::Now)
                        href=Screen::Season.hash()
                    />
                }
            })
            .into_any()
    };
    live(move || {
        let key = |one: &Shown| format!("{} {} {} {}", one.asked.group, one.text, one.says, one.done);
        let rows = move || view! { <Rows>{live(past_row)} {each(move || shown.get(), key, row)}</Rows> };
        (past.get() > 0 || !shown.with(Vec::is_empty))
            .then(|| view! { <Section title=words::THIS_WEEK>{rows()}</Section> })
            .into_any()
    })
}

fn name(flock: &yeanling_core::flock::Flock, group: GroupId) -> String {
    flock.groups.get(&group).map(|group| group.name.clone()).unwrap_or_default()
}
