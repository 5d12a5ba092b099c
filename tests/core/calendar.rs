//! The calendar file, as an independent reader of iCalendar finds it.

use icalendar::parser::{read_calendar, unfold};
use icalendar::{Calendar, CalendarDateTime, Component, DatePerhapsTime};
use proptest::prelude::*;
use yeanling_core::calendar::{Alarm, write};
use yeanling_core::units::{Moment, TimeDelta};

fn moment(text: &str) -> Moment {
    text.parse().expect("a moment")
}

fn alarm(uid: &str, at: &str) -> Alarm {
    Alarm {
        uid: uid.to_owned(),
        at: moment(at),
        lead: TimeDelta::zero(),
        summary: "27a: not seen to suck".to_owned(),
        description: "Late from 03:55.".to_owned(),
        url: "https://farm.example/book/#/lamb/01935d5a-0000-7000-8000-000000000001".to_owned(),
    }
}

fn parsed(text: &str) -> Calendar {
    text.parse().unwrap_or_else(|error| panic!("{error}\n{text}"))
}

/// Returns the instant of a time that must be told in UTC, in seconds from 1970.
#[track_caller]
fn seconds(time: Option<DatePerhapsTime>) -> i64 {
    match time {
        Some(DatePerhapsTime::DateTime(CalendarDateTime::Utc(time))) => time.timestamp(),
        other => panic!("not in UTC: {other:?}"),
    }
}

/// Returns what the alarms inside the events say, each property as it is written.
fn of_alarms(text: &str, name: &str) -> Vec<String> {
    let text = unfold(text);
    let calendar = read_calendar(&text).expect("a calendar");
    let alarms = calendar.components.iter().flat_map(|event| event.components.iter());
    alarms.filter_map(|alarm| alarm.find_prop(name)).map(|found| found.val.as_str().to_owned()).collect()
}

#[test]
fn every_time_is_the_instant_whatever_the_wall_clock_said() {
    let given = [
        "2026-02-25T03:40:00.000-05:00",
        "2026-03-08T03:05:30.999-04:00",
        "2026-03-29T02:59:59+01:00",
        "2026-12-31T23:59:00+05:45",
        "2028-02-29T00:00:00Z",
    ];
    let alarms: Vec<Alarm> =
        given.iter().enumerate().map(|(number, at)| alarm(&number.to_string(), at)).collect();
    let stamp = moment("2026-02-25T03:12:45.500-05:00");
    let calendar = parsed(&write(&alarms, stamp));
    let events: Vec<_> = calendar.events().collect();
    assert_eq!(events.len(), given.len());
    for (event, alarm) in events.iter().zip(&alarms) {
        let at = alarm.at.as_unix_milliseconds().div_euclid(1000);
        assert_eq!(seconds(event.get_start()), at, "{}", alarm.at);
        assert_eq!(seconds(event.get_end()), at + 15 * 60, "{}", alarm.at);
        let written = stamp.as_unix_milliseconds().div_euclid(1000);
        assert_eq!(event.get_timestamp().map(|time| time.timestamp()), Some(written));
        assert_eq!(event.get_last_modified().map(|time| time.timestamp()), Some(written));
        assert_eq!(event.get_uid(), Some(alarm.uid.as_str()));
        assert_eq!(event.get_url(), Some(alarm.url.as_str()));
    }
}

#[test]
fn each_event_rings_so_many_minutes_before() {
    let leads = [0, 5, 90, -10].map(TimeDelta::minutes);
    let alarms: Vec<Alarm> =
        leads.iter().map(|lead| Alarm { lead: *lead, ..alarm("x", "2026-02-25T03:40:00Z") }).collect();
    let text = write(&alarms, moment("2026-02-25T03:12:00Z"));
    assert_eq!(of_alarms(&text, "ACTION"), ["DISPLAY"; 4]);
    assert_eq!(of_alarms(&text, "TRIGGER"), ["-PT0M", "-PT5M", "-PT90M", "-PT0M"]);
}

#[test]
fn a_second_file_moves_what_the_first_brought() {
    let first = parsed(&write(&[alarm("suck", "2026-02-25T03:40:00Z")], moment("2026-02-25T03:12:00Z")));
    let second = parsed(&write(&[alarm("suck", "2026-02-25T05:40:00Z")], moment("2026-02-25T03:12:01Z")));
    let (first, second) = (first.events().next().expect("one"), second.events().next().expect("one"));
    assert_eq!(first.get_uid(), second.get_uid());
    assert!(first.get_sequence() < second.get_sequence());
    assert!(second.get_sequence() < Some(1 << 31));
    assert!(first.get_last_modified() < second.get_last_modified());
}

#[test]
fn no_alarms_are_a_calendar_too() {
    let text = write(&[], moment("2026-02-25T03:12:00Z"));
    assert_eq!(parsed(&text).events().count(), 0);
    assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"), "{text}");
    assert!(text.contains("\r\nMETHOD:PUBLISH\r\n"), "{text}");
    assert!(text.ends_with("END:VCALENDAR\r\n"), "{text}");
}

#[test]
fn an_instant_before_the_sequence_begins_counts_as_the_first() {
    let text = write(&[alarm("x", "1999-01-01T00:00:00Z")], moment("1999-01-01T00:00:00Z"));
    assert!(text.contains("\r\nSEQUENCE:0\r\n"), "{text}");
}

#[track_caller]
fn comes_back(summary: &str, expected: &str) {
    let odd = Alarm { summary: summary.to_owned(), ..alarm("x", "2026-02-25T03:40:00Z") };
    let calendar = parsed(&write(&[odd], moment("2026-02-25T03:12:00Z")));
    let events: Vec<_> = calendar.events().collect();
    assert_eq!(events.len(), 1, "{summary:?}");
    assert_eq!(events[0].get_summary(), Some(expected), "{summary:?}");
    assert!(events[0].get_start().is_some(), "{summary:?}");
}

#[test]
fn odd_texts_come_back_as_they_were() {
    for odd in [
        "Feed 190 ml, then look; again",
        "back\\slash \\n \\, \\;",
        "two\nlines",
        "a:b=c \"quoted\"",
        "Ärger, œuf, 羊, 🐑🐑🐑",
        "",
    ] {
        comes_back(odd, odd);
    }
    comes_back("END:VEVENT\r\nBEGIN:VEVENT", "END:VEVENT\nBEGIN:VEVENT");
    comes_back("nothing\u{0}\u{7f}\u{85} hidden", "nothing hidden");
}

#[test]
fn an_address_cannot_begin_another_line() {
    let odd = Alarm { url: "https://a/\r\nX: y".to_owned(), ..alarm("x", "2026-02-25T03:40:00Z") };
    let text = write(&[odd], moment("2026-02-25T03:12:00Z"));
    assert!(text.contains("\r\nURL:https://a/X:y\r\n"), "{text}");
}

proptest! {
    #[test]
    fn no_line_is_longer_than_75_bytes_and_none_splits_a_character(
        summary in any::<String>(),
        description in "[ -~ä羊🐑\\n]{0,400}",
        milliseconds in -2_000_000_000_000_i64..200_000_000_000_000,
    ) {
        let at = Moment::from_unix_milliseconds(milliseconds, 0);
        let given = Alarm { summary, description: description.clone(), at, ..alarm("x", "2026-02-25T03:40:00Z") };
        let text = write(&[given], at);
        // A `String` that was split inside a character could not be one; each line by itself is text too.
        for line in text.split("\r\n") {
            prop_assert!(line.len() <= 75, "{} bytes: {line}", line.len());
            prop_assert!(!line.contains(['\r', '\n']), "{line:?}");
        }
        let calendar = parsed(&text);
        let event = calendar.events().next().expect("one event");
        prop_assert_eq!(event.get_description(), Some(description.as_str()));
        prop_assert_eq!(seconds(event.get_start()), milliseconds.div_euclid(1000));
    }
}
