//! Where a stranger's words leave again: in a table or a calendar they stay words.

use icalendar::parser::{read_calendar, unfold};
use yeanling_core::book::{self, Book, Event};
use yeanling_core::calendar::{self, Alarm};
use yeanling_core::spreadsheet::{self, Cell};
use yeanling_core::units::TimeDelta;

use super::tree::WORDS;
use super::{acts, made, noting};
use crate::book::file::Parts;

/// The tags of ewes that came in a file, each with odd words for a tag.
fn tags() -> Vec<String> {
    let event = |words: &str| serde_json::json!({ "ewe-came": { "tag": words } }).to_string();
    let lines = WORDS.iter().zip(1..).map(|(words, number)| super::line(&noting(number, &event(words))));
    let read = book::read(Parts::of(&lines.collect::<Vec<_>>()).text().as_bytes()).expect("a whole file");
    let book: Book = read.entries.into_iter().collect();
    let tags: Vec<String> = book
        .entries()
        .map(|entry| match &entry.event {
            Event::EweCame { tag: Some(tag) } => tag.clone(),
            other => panic!("{other:?}"),
        })
        .collect();
    assert_eq!(tags, WORDS, "the book keeps every word as it came");
    tags
}

/// What a spreadsheet takes for a formula, whatever stands unseen before it.
fn is_formula(cell: &str) -> bool {
    let seen =
        cell.trim_start_matches(|c: char| c.is_whitespace() || c.is_control() || acts(c) || c == '\u{feff}');
    seen.starts_with(['=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'])
}

#[test]
fn in_a_table_a_strangers_words_stay_one_cell_of_text() {
    let tags = tags();
    assert!(tags.iter().filter(|tag| is_formula(tag)).count() >= 4);
    let rows = tags.iter().map(|tag| vec![Cell::Text(tag.clone()), Cell::Text("next".to_owned())]);
    let text = spreadsheet::write(&["tag", "note"], rows);
    let text = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let mut reader = csv::ReaderBuilder::new().from_reader(text.as_bytes());
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    assert_eq!(rows.len(), tags.len());
    for (row, tag) in rows.iter().zip(&tags) {
        assert_eq!(&row[1], "next", "{tag:?}");
        assert!(!is_formula(&row[0]), "{:?}", &row[0]);
        assert!(!row[0].contains(|c| acts(c) && !matches!(c, '\r' | '\n')), "{:?}", &row[0]);
        assert_eq!(row[0].contains("<script>"), tag.contains("<script>"));
    }
}

#[test]
fn in_a_calendar_a_strangers_words_stay_one_line_of_one_alarm() {
    let tags = tags();
    let alarms: Vec<Alarm> = tags
        .iter()
        .map(|tag| Alarm {
            uid: format!("{tag}-suck"),
            at: made(),
            lead: TimeDelta::zero(),
            summary: format!("{tag}: not seen to suck"),
            description: tag.clone(),
            url: format!("https://farm.example/#/{tag}"),
        })
        .collect();
    let text = calendar::write(&alarms, made());
    assert!(!text.contains(|c| acts(c) && !matches!(c, '\r' | '\n')), "{text:?}");
    for line in text.split("\r\n") {
        assert!(!line.contains(['\r', '\n']), "{line:?}");
    }
    let text = unfold(&text);
    let calendar = read_calendar(&text).expect("a calendar");
    assert_eq!(calendar.components.len(), tags.len(), "no alarm more, none less");
    for (event, tag) in calendar.components.iter().zip(&tags) {
        let script =
            |name: &str| event.find_prop(name).is_some_and(|found| found.val.as_str().contains("<script>"));
        assert_eq!(script("SUMMARY"), tag.contains("<script>"));
        assert_eq!(event.components.len(), 1, "{tag:?}");
    }
}
