//! Alarms as a calendar file (iCalendar, RFC 5545), for the phone's own calendar to ring when this app cannot.
//!
//! A later file moves what an earlier one brought: the `UID` of an alarm stays, and the `SEQUENCE` grows with the
//! instant of writing. All times are UTC, so daylight saving is the calendar's to add.
//!
//! An alarm in a calendar is named by animal and kind of duty, never by time, and has one DISPLAY alarm: phones show
//! a second one twice.

use chrono::{Datelike, Timelike};

use crate::sanitize::turns_text;
use crate::units::{Moment, TimeDelta};

/// One alarm. The texts are for people and may hold anything; what a calendar cannot hold is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Alarm {
    /// What names it for good, the same in every file.
    pub uid: String,
    /// When the thing is to be done, to the second.
    pub at: Moment,
    /// How long before that it rings; whole minutes, never after.
    pub lead: TimeDelta,
    /// What to do, in one line.
    pub summary: String,
    /// The same at more length.
    pub description: String,
    /// Where it is told in full; an absolute address.
    pub url: String,
}

/// How long a calendar shows each alarm (ours): long enough to be seen in a day's column.
const SHOWN_FOR: TimeDelta = TimeDelta::minutes(15);

/// The most bytes of a line, its end not counted (RFC 5545, 3.1).
const LONGEST_LINE: usize = 75;

/// Seconds from 1970 to 2020: a `SEQUENCE` is held in 31 bits, which last from there to 2088.
const SEQUENCE_FROM: i64 = 1_577_836_800;

/// Returns the calendar file of these alarms, written at `stamp`.
#[must_use]
pub fn write(alarms: &[Alarm], stamp: Moment) -> String {
    let mut text = String::new();
    let mut line = |content: &str| fold(content, &mut text);
    let written = utc(stamp);
    let sequence = (stamp.as_unix_milliseconds().div_euclid(1000) - SEQUENCE_FROM).max(0);
    for content in
        ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Yeanling//EN", "CALSCALE:GREGORIAN", "METHOD:PUBLISH"]
    {
        line(content);
    }
    for alarm in alarms {
        let description = escaped(&alarm.description);
        line("BEGIN:VEVENT");
        line(&format!("UID:{}", escaped(&alarm.uid)));
        line(&format!("DTSTAMP:{written}"));
        line(&format!("LAST-MODIFIED:{written}"));
        line(&format!("SEQUENCE:{sequence}"));
        line(&format!("DTSTART:{}", utc(alarm.at)));
        line(&format!("DTEND:{}", utc(alarm.at + SHOWN_FOR)));
        line(&format!("SUMMARY:{}", escaped(&alarm.summary)));
        line(&format!("DESCRIPTION:{description}"));
        line(&format!(
            "URL:{}",
            alarm.url.replace(|c: char| c.is_control() || c == ' ' || turns_text(c), "")
        ));
        line("TRANSP:TRANSPARENT");
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line(&format!("TRIGGER:-PT{}M", alarm.lead.num_minutes().max(0)));
        line(&format!("DESCRIPTION:{description}"));
        line("END:VALARM");
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    text
}

/// Returns an instant as UTC to the second: "20260225T081200Z".
fn utc(moment: Moment) -> String {
    let utc = Moment::from_unix_milliseconds(moment.as_unix_milliseconds(), 0).local();
    let (hour, minute, second) = (utc.hour(), utc.minute(), utc.second());
    format!("{:04}{:02}{:02}T{hour:02}{minute:02}{second:02}Z", utc.year(), utc.month(), utc.day())
}

/// Returns a text with what means something to a calendar escaped, and what it may not hold left out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' => out.push_str("\\n"),
            '\t' => out.push(c),
            _ if c.is_control() || turns_text(c) => {}
            _ => out.push(c),
        }
    }
    out
}

/// Writes one line, folded where it is too long; no character is ever split.
fn fold(content: &str, out: &mut String) {
    let mut bytes = 0;
    for c in content.chars() {
        if bytes + c.len_utf8() > LONGEST_LINE {
            out.push_str("\r\n ");
            bytes = 1;
        }
        out.push(c);
        bytes += c.len_utf8();
    }
    out.push_str("\r\n");
}
