//! Tables for a spreadsheet, read back by the csv crate, which knows nothing of ours.

use proptest::prelude::*;
use yeanling_core::spreadsheet::{Cell, write};
use yeanling_core::units::Moment;

use crate::book::arbitrary::config;

/// Returns the rows as the csv crate reads them, the heads first; every row must be as long as the heads.
fn read(text: &str) -> Vec<Vec<String>> {
    let text = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes());
    reader.records().map(|record| record.expect("a row").iter().map(str::to_owned).collect()).collect()
}

#[track_caller]
fn check(cell: Cell, expected: &str) {
    let rows = read(&write(&["head", "other"], [vec![cell]]));
    assert_eq!(rows[1], [expected, ""]);
}

#[test]
fn cells_are_written_so_that_any_spreadsheet_reads_them() {
    // Source: RFC 4180.
    let at: Moment = "2026-02-05T03:07:59.999-05:00".parse().expect("a moment");
    check(Cell::Text("Bramble, \"the small one\"".to_owned()), "Bramble, \"the small one\"");
    check(Cell::Text("two\r\nlines".to_owned()), "two\r\nlines");
    check(Cell::Text(" 14 ".to_owned()), " 14 ");
    check(Cell::Number(4.2, 2), "4.20");
    check(Cell::Number(f64::NAN, 2), "");
    check(Cell::At(at), "2026-02-05 03:07");
    check(Cell::Day(at.local().date()), "2026-02-05");
    check(Cell::Nothing, "");
}

#[test]
fn a_formula_in_someones_words_stays_text() {
    // Source: OWASP, CSV injection: cells that begin with = + - @, a tab or a carriage return.
    for text in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "=HYPERLINK(\"http://x\",\"y\")"] {
        check(Cell::Text(text.to_owned()), &format!("'{text}"));
    }
    check(Cell::Text("14 - white face".to_owned()), "14 - white face");
}

#[test]
fn a_row_is_as_long_as_its_heads() {
    // Ours.
    let rows = read(&write(&["a", "b"], [vec![], vec![Cell::Number(1.0, 0); 5]]));
    assert_eq!(rows[1..], [["", ""], ["1", "1"]]);
}

proptest! {
    #![proptest_config(config(256))]

    #[test]
    fn whatever_is_written_is_read_back(texts in prop::collection::vec("\\PC{0,12}|[=+@,;\"\r\n\t ]{0,6}", 0..20)) {
        let rows: Vec<Vec<Cell>> = texts.iter().map(|text| vec![Cell::Number(1.0, 0), Cell::Text(text.clone())]).collect();
        let back = read(&write(&["n", "text"], rows));
        prop_assert_eq!(back.len(), texts.len() + 1);
        for (row, text) in back[1..].iter().zip(&texts) {
            prop_assert_eq!(row[1].strip_prefix('\'').filter(|_| !text.starts_with('\'')).unwrap_or(&row[1]), text);
        }
    }
}
