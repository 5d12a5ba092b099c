//! Tables from any spreadsheet, held against the csv crate, which knows nothing of ours.

use proptest::prelude::*;
use yeanling_core::spreadsheet::{MOST_BYTES, MOST_ROWS, SheetError, decode, read};

use crate::book::arbitrary::config;

#[track_caller]
fn check(text: &str, separator: char, heads: &[&str], rows: &[&[&str]]) {
    let sheet = read(text).expect("a table");
    assert_eq!(sheet.separator, separator);
    assert_eq!(sheet.heads, heads);
    assert_eq!(sheet.rows, rows);
}

#[test]
fn commas_semicolons_and_tabs_are_told_by_the_first_line() {
    // Source: RFC 4180, its examples; semicolons and tabs as spreadsheets of other languages write them.
    check("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", ',', &["aaa", "bbb", "ccc"], &[&["zzz", "yyy", "xxx"]]);
    check("a;b\r\n1,5;2\r\n", ';', &["a", "b"], &[&["1,5", "2"]]);
    check("a\tb\n1;5\t2,3", '\t', &["a", "b"], &[&["1;5", "2,3"]]);
    check("\"a;b;c\",d\n1,2\n", ',', &["a;b;c", "d"], &[&["1", "2"]]);
    check("tag\r\n14\r\n21\r\n", ',', &["tag"], &[&["14"], &["21"]]);
}

#[test]
fn quotes_hold_separators_lines_and_doubled_quotes() {
    // Source: RFC 4180, rules 5 to 7.
    check(
        "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,\"say \"\"yes\"\"\",xxx",
        ',',
        &["aaa", "b\r\nbb", "ccc"],
        &[&["zzz", "say \"yes\"", "xxx"]],
    );
    check("a,b\n \"1\" ,2\n", ',', &["a", "b"], &[&["1", "2"]]);
    assert_eq!(read("a,b\n1,\"2\n3"), Err(SheetError::OpenQuote { line: 2 }));
}

#[test]
fn rows_are_as_long_as_the_heads_and_empty_lines_are_left_out() {
    // What stands beside the heads has a column too: nothing is dropped.
    check("a,b\n1\n\n,\n1,2,3\n", ',', &["a", "b", ""], &[&["1", "", ""], &["1", "2", "3"]]);
    for nothing in ["", "a,b", "a,b\n\n,\n", "\r\n"] {
        assert_eq!(read(nothing), Err(SheetError::Empty), "{nothing:?}");
    }
}

#[test]
fn too_much_is_said_to_be_too_much() {
    let rows = |count: usize| format!("tag\n{}", "1\n".repeat(count));
    assert_eq!(read(&rows(MOST_ROWS)).map(|sheet| sheet.rows.len()), Ok(MOST_ROWS));
    assert_eq!(read(&rows(100_000)), Err(SheetError::TooManyRows { given: 100_000 }));
    let large = vec![b'1'; MOST_BYTES + 1];
    assert_eq!(decode(&large), Err(SheetError::TooLarge { given: large.len() }));
}

#[test]
fn old_windows_text_utf_16_and_utf_8_come_out_alike() {
    // Source: the Unicode consortium's table CP1252.TXT: 0x80 is the euro sign, 0x92 the right quote, 0xe9 é.
    assert_eq!(
        decode(b"tag,breed\nCamille\x92s \x80,Ch\xe9viot\n").as_deref(),
        Ok("tag,breed\nCamille’s €,Chéviot\n")
    );
    assert_eq!(decode("tag,Chéviot".as_bytes()).as_deref(), Ok("tag,Chéviot"));
    assert_eq!(decode("\u{feff}tag".as_bytes()).as_deref(), Ok("tag"));
    let units: Vec<u16> = "Chéviot 🐑".encode_utf16().collect();
    let little: Vec<u8> = [0xfeff].iter().chain(&units).flat_map(|unit| unit.to_le_bytes()).collect();
    let big: Vec<u8> = [0xfeff].iter().chain(&units).flat_map(|unit| unit.to_be_bytes()).collect();
    assert_eq!(decode(&little).as_deref(), Ok("Chéviot 🐑"));
    assert_eq!(decode(&big).as_deref(), Ok("Chéviot 🐑"));
    // A spreadsheet's own file is a packed one, full of zero bytes.
    assert_eq!(decode(b"PK\x03\x04\x14\x00\x06\x00"), Err(SheetError::NoText));
}

proptest! {
    #![proptest_config(config(300))]

    #[test]
    fn what_the_csv_crate_writes_is_read_as_it_was(
        separator in prop::sample::select(vec![',', ';', '\t']),
        cells in prop::collection::vec(prop::collection::vec("[ -~éü\n\"]{1,8}x", 3), 1..6),
    ) {
        let mut writer = csv::WriterBuilder::new()
            .delimiter(u8::try_from(separator).expect("a byte"))
            .quote_style(csv::QuoteStyle::Always)
            .from_writer(Vec::new());
        writer.write_record(["h1", "h2", "h3"]).expect("a row");
        for row in &cells {
            writer.write_record(row).expect("a row");
        }
        let written = String::from_utf8(writer.into_inner().expect("all")).expect("text");
        let sheet = read(&written).expect("a table");
        prop_assert_eq!(sheet.separator, separator);
        prop_assert_eq!(sheet.rows, cells);
    }

    #[test]
    fn whatever_comes_is_read_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        if let Ok(text) = decode(&bytes) && let Ok(sheet) = read(&text) {
            prop_assert!(sheet.rows.iter().all(|row| row.len() == sheet.heads.len()));
        }
    }
}
