//! The dates of the season, those to come, and the way of them into the phone's calendar.

use chrono::{NaiveDate, NaiveTime, TimeDelta};
use yeanling_core::book::GroupId;
use yeanling_core::calendar::Alarm;
use yeanling_core::flock::Group;
use yeanling_core::reckon::season::dates::Dated;
use yeanling_core::seasons::group_dates;
use yeanling_core::sort_small::SortSmall;
use yeanling_words::common::short_date;
use yeanling_words::season_forecast as words;

use crate::block::{Kind, Ledger, LedgerRow};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::view::View;
use crate::{Screen, Text, ToCalendar, to_calendar};

/// What was due so many days ago is no longer told (ours).
const TOLD_FOR: TimeDelta = TimeDelta::days(7);
/// So many steps of extra feed are told; the rest stands with the group (ours).
const MOST: usize = 14;
/// When a date rings, by the wall clock (ours): before the morning round.
const RINGS_AT: (u32, u32) = (7, 0);

/// One date with whose it is.
struct Told<'a> {
    dated: Dated,
    group: &'a Group,
    place: usize,
}

fn all<'a>(view: &View, groups: &[&'a Group]) -> Vec<Told<'a>> {
    let from = today(view) - TOLD_FOR;
    let mut told: Vec<Told> = groups
        .iter()
        .flat_map(|group| {
            let dates = group_dates(view.flock, group).into_iter().enumerate();
            dates.map(|(place, dated)| Told { dated, group, place })
        })
        .filter(|told| told.dated.date >= from)
        .collect();
    told.sort_small_by_key(|told| told.dated.date);
    told
}

fn today(view: &View) -> NaiveDate {
    view.now.local().date()
}

/// Returns the dates of these groups, and the button that hands them to the calendar; nothing without any.
pub(crate) fn blocks(view: &View, draft: &Draft, groups: &[&Group]) -> Blocks {
    let told = all(view, groups);
    if told.is_empty() {
        return Blocks::new();
    }
    let rows = told.iter().take(MOST).map(|told| row(view, told)).collect();
    let ledger = Ledger { label: words::DATES.to_owned(), heads: <(String, String)>::default(), rows };
    let hand = ToCalendar::Dates(groups.iter().map(|group| group.id).collect());
    let inside = Blocks::new().add("dates", Kind::Ledger(ledger));
    Blocks::new().section("dates-ahead", words::DATES, inside.then(to_calendar::blocks(view, draft, &hand)))
}

fn row(view: &View, told: &Told) -> LedgerRow {
    LedgerRow {
        name: words::what(&told.dated.what, view.system()),
        note: format!("{} · {}", told.group.name, words::away(told.dated.date, today(view))),
        value: Text::strong(&short_date(told.dated.date)),
        other: Text::default(),
    }
}

/// Returns the dates to come of these groups as alarms of the morning.
pub(crate) fn alarms(view: &View, groups: &[GroupId]) -> Vec<Alarm> {
    let groups: Vec<&Group> = groups.iter().filter_map(|group| view.flock.groups.get(group)).collect();
    let rings = NaiveTime::from_hms_opt(RINGS_AT.0, RINGS_AT.1, 0).unwrap_or_default();
    let alarm = |told: Told| {
        let what = words::what(&told.dated.what, view.system());
        Alarm {
            uid: format!("season-{}-{}@yeanling", told.group.id, words::key(&told.dated.what, told.place)),
            at: (view.at_local)(told.dated.date.and_time(rings)),
            lead: TimeDelta::zero(),
            summary: format!("{}: {what}", told.group.name),
            description: what,
            url: Screen::Season.hash(),
        }
    };
    all(view, &groups).into_iter().map(alarm).filter(|alarm| alarm.at > view.now).collect()
}
