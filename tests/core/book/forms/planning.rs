//! The forms of what is meant for the season.
//!
//! These too were written by the version named above them, and are never edited.

use chrono::NaiveDate;
use yeanling_core::book::{Event, GroupId, PlannedJob, Planning};
use yeanling_core::units::Moment;

/// What version 1 writes.
pub(in super::super) const PLANNING_1: &[&str] = &[
    r#"{"planning":{"ram-stays":{"group":"019c0000-0000-7000-8000-000000000005"}}}"#,
    r#"{"planning":{"ram-stays":{"group":"019c0000-0000-7000-8000-000000000005","until":"2027-03-01T23:59:00.000-05:00"}}}"#,
    r#"{"planning":{"planned":{"what":"ram-in","group":"019c0000-0000-7000-8000-000000000005","on":"2026-10-01"}}}"#,
    r#"{"planning":{"planned":{"what":"ram-out","group":"019c0000-0000-7000-8000-000000000005","on":"2026-11-20"}}}"#,
    r#"{"planning":{"planned":{"what":"scan","group":"019c0000-0000-7000-8000-000000000005"}}}"#,
    r#"{"planning":{"planned":{"what":"shearing","on":"2027-04-20"}}}"#,
    r#"{"planning":{"planned":{"what":"turn-out"}}}"#,
    r#"{"planning":{"happened":{"what":"scan","group":"019c0000-0000-7000-8000-000000000005"}}}"#,
    r#"{"planning":{"happened":{"what":"shearing"}}}"#,
    r#"{"planning":{"feed-put-off":{"group":"019c0000-0000-7000-8000-000000000005","until":"2027-01-25"}}}"#,
    r#"{"planning":{"rams-meant":{"group":"019c0000-0000-7000-8000-000000000005","rams":["Flint","Boss"]}}}"#,
];

/// The facts that these lines stand for, in their order.
pub(super) fn facts() -> Vec<Event> {
    let group: GroupId = "019c0000-0000-7000-8000-000000000005".parse().expect("an id");
    let until: Moment = "2027-03-01T23:59:00.000-05:00".parse().expect("a moment");
    let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day);
    let planned = |what, group, on| Planning::Planned { what, group, on };
    [
        Planning::RamStays { group, until: None },
        Planning::RamStays { group, until: Some(until) },
        planned(PlannedJob::RamIn, Some(group), day(2026, 10, 1)),
        planned(PlannedJob::RamOut, Some(group), day(2026, 11, 20)),
        planned(PlannedJob::Scan, Some(group), None),
        planned(PlannedJob::Shearing, None, day(2027, 4, 20)),
        planned(PlannedJob::TurnOut, None, None),
        Planning::Happened { what: PlannedJob::Scan, group: Some(group) },
        Planning::Happened { what: PlannedJob::Shearing, group: None },
        Planning::FeedPutOff { group, until: day(2027, 1, 25).expect("a day") },
        Planning::RamsMeant { group, rams: vec!["Flint".to_owned(), "Boss".to_owned()] },
    ]
    .map(Event::Planning)
    .into()
}
