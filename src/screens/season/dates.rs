//! The dates of the season, those to come, and the way of them into the phone's calendar.

use crate::signals::prelude::*;
use chrono::{NaiveDate, NaiveTime, TimeDelta};
use leptos::task::spawn_local;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::GroupId;
use yeanling_core::calendar::{self, Alarm};
use yeanling_core::figures::group_dates;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::season::dates::Dated;

use crate::farm::{Farm, FileTrouble, use_farm};
use crate::parts::{Button, Ledger, LedgerRow, Section, live};
use crate::route::{Screen, Way};
use crate::words::common::short_date;
use crate::words::{ahead as words, hand_over, night};

/// What was due so many days ago is no longer told (ours).
const TOLD_FOR: TimeDelta = TimeDelta::days(7);
/// So many steps of extra feed are told; the rest stands with the group (ours).
const MOST: usize = 14;
/// When a date rings, by the wall clock (ours): before the morning round.
const RINGS_AT: (u32, u32) = (7, 0);

/// One date with whose it is.
#[derive(Clone, Debug, PartialEq)]
struct Told {
    dated: Dated,
    group: GroupId,
    of: String,
    place: usize,
}

fn all(flock: &Flock, groups: &[GroupId], today: NaiveDate) -> Vec<Told> {
    let mut told: Vec<Told> = groups
        .iter()
        .filter_map(|id| flock.groups.get(id))
        .flat_map(|group| {
            let dates = group_dates(flock, group).into_iter().enumerate();
            dates.map(|(place, dated)| Told { dated, group: group.id, of: group.name.clone(), place })
        })
        .filter(|told| told.dated.date >= today - TOLD_FOR)
        .collect();
    told.arrange_by_key(|told| told.dated.date);
    told
}

/// The dates of these groups, and the button that hands them to the calendar.
pub(super) fn dates(groups: Vec<GroupId>) -> AnyView {
    let farm = use_farm();
    let said = RwSignal::new(String::new());
    let shown = groups.clone();
    let told = Memo::new(move |_| {
        let today = farm.now().local().date();
        farm.with(|ground| all(&ground.flock, &shown, today))
    });
    let rows = Signal::derive(move || {
        let (system, today) = (farm.system(), farm.now().local().date());
        let row = |told: Told| LedgerRow {
            name: words::what(&told.dated.what, system),
            note: format!("{} · {}", told.of, words::away(told.dated.date, today)),
            value: format!("*{}*", short_date(told.dated.date)),
            other: String::new(),
        };
        told.get().into_iter().take(MOST).map(row).collect::<Vec<_>>()
    });
    let hand = move || {
        let alarms = alarms(farm, &groups);
        let text = calendar::write(&alarms, farm.peek_now());
        spawn_local(async move {
            said.set(match farm.give_calendar(words::FILE, &text).await {
                Ok(()) => night::IN_CALENDAR.to_owned(),
                Err(FileTrouble::Failed(browser)) => hand_over::not_saved(&browser),
                Err(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => {
                    String::new()
                }
            });
        });
    };
    let some = Memo::new(move |_| told.with(|told| !told.is_empty()));
    live(move || {
        let hand = hand.clone();
        some.get()
            .then(move || {
                let button = if farm.is_made_up() {
                    view! { <p class="small-print">{night::MADE_UP}</p> }.into_any()
                } else {
                    view! { <Button label=words::TO_CALENDAR on_press=hand /> }.into_any()
                };
                view! {
                    <Section title=words::DATES>
                        <Ledger
                            label=words::DATES
                            heads=Signal::stored((String::new(), String::new()))
                            rows=rows
                        />
                        {button}
                        <p class="small-print" role="status">{said}</p>
                    </Section>
                }
            })
            .into_any()
    })
}

/// The dates to come as alarms of the morning.
fn alarms(farm: Farm, groups: &[GroupId]) -> Vec<Alarm> {
    let now = farm.peek_now();
    let system = untrack(|| farm.system());
    let told = farm.peek(|ground| all(&ground.flock, groups, now.local().date()));
    let rings = NaiveTime::from_hms_opt(RINGS_AT.0, RINGS_AT.1, 0).unwrap_or_default();
    told.into_iter()
        .map(|told| {
            let what = words::what(&told.dated.what, system);
            Alarm {
                uid: format!("season-{}-{}@yeanling", told.group, words::key(&told.dated.what, told.place)),
                at: farm.at_local(told.dated.date.and_time(rings)),
                lead: TimeDelta::zero(),
                summary: format!("{}: {what}", told.of),
                description: what,
                url: Screen::Season.address(),
            }
        })
        .filter(|alarm| alarm.at > now)
        .collect()
}
