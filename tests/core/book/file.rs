//! A book file: what is whole is read, whatever its layout; what is not is refused with what is wrong with it.

use std::fmt::Write as _;

use serde::Serialize;
use sha2::{Digest, Sha256};
use yeanling_core::book::{self, Book, Entry, Event, FORMAT, FileError, MOST_BYTES, VERSION};
use yeanling_core::flock::fold;

use super::arbitrary::UNKNOWN;
use super::{device, made, noting};

/// A book of a ewe, a lamb and two facts of a later version.
fn small() -> Book {
    [
        noting(1, r#"{"ewe-came":{"tag":"Bärbel 🐑"}}"#),
        noting(2, r#"{"lamb-born":{"dam":"019c0000-0000-7000-8000-000000000001","alive":true}}"#),
        noting(3, UNKNOWN[3]),
        noting(4, UNKNOWN[2]),
    ]
    .into_iter()
    .collect()
}

/// A file whose parts are as given; a part without a value is left out.
#[derive(Clone)]
pub(super) struct Parts {
    format: Option<String>,
    version: Option<String>,
    made: Option<String>,
    device: Option<String>,
    count: Option<String>,
    digest: Option<String>,
    entries: Option<String>,
}

impl Parts {
    /// The parts of a whole file with these entries, each given as JSON.
    pub(super) fn of(lines: &[String]) -> Self {
        let entries = format!("[{}]", lines.join(","));
        Self {
            format: Some(format!("{FORMAT:?}")),
            version: Some(VERSION.to_string()),
            made: Some(format!("\"{}\"", made())),
            device: Some(format!("\"{}\"", device())),
            count: Some(lines.len().to_string()),
            digest: Some(sealed(&entries)),
            entries: Some(entries),
        }
    }

    pub(super) fn text(&self) -> String {
        let parts = [
            ("format", &self.format),
            ("version", &self.version),
            ("made", &self.made),
            ("device", &self.device),
            ("count", &self.count),
            ("digest", &self.digest),
            ("entries", &self.entries),
        ];
        let parts: Vec<String> = parts
            .into_iter()
            .filter_map(|(name, value)| value.as_ref().map(|value| format!("\"{name}\":{value}")))
            .collect();
        format!("{{{}}}", parts.join(","))
    }
}

/// The digest of entries, given as JSON without white space.
fn sealed(entries: &str) -> String {
    let mut text = String::from("\"sha256-");
    for byte in Sha256::digest(entries) {
        let _ = write!(text, "{byte:02x}");
    }
    text + "\""
}

fn lines(book: &Book) -> Vec<String> {
    book.entries().map(|entry| serde_json::to_string(entry).expect("an entry can be written")).collect()
}

fn parts() -> Parts {
    Parts::of(&lines(&small()))
}

#[track_caller]
fn check(bytes: impl AsRef<[u8]>, expected: &FileError) {
    assert_eq!(book::read(bytes.as_ref()).as_ref(), Err(expected));
}

#[track_caller]
fn whole(bytes: impl AsRef<[u8]>, expected: &Book) {
    let read = book::read(bytes.as_ref()).expect("a whole file");
    assert_eq!((read.made, read.device), (made(), device()));
    assert_eq!(&read.entries.into_iter().collect::<Book>(), expected);
}

/// Fails unless the file is refused for this part.
#[track_caller]
fn part(change: impl FnOnce(&mut Parts), part: &'static str) {
    let mut parts = parts();
    change(&mut parts);
    check(parts.text(), &FileError::Part { part });
}

#[test]
fn a_whole_file_is_read() {
    whole(super::file(&small()), &small());
    whole(parts().text(), &small());
    whole(super::file(&Book::default()), &Book::default());
}

#[test]
fn what_other_programs_put_around_a_file_does_no_harm() {
    let text = super::file(&small());
    whole(format!("\u{feff}{text}"), &small());
    whole(format!("\r\n\t {text}\r\n\r\n"), &small());
    whole(text.replace('\n', "\r\n"), &small());
}

#[test]
fn a_file_laid_out_by_another_tool_is_still_whole() {
    #[derive(Serialize)]
    struct Document<'a> {
        format: &'a str,
        version: u64,
        made: String,
        device: String,
        count: usize,
        digest: String,
        entries: Vec<&'a Entry>,
    }
    let book = small();
    let compact = super::file(&book);
    let (_, digest) = compact.split_once("\"digest\":\"").expect("a digest");
    let (digest, _) = digest.split_once('"').expect("an end");
    let document = Document {
        format: FORMAT,
        version: VERSION,
        made: made().to_string(),
        device: device().to_string(),
        count: book.len(),
        digest: digest.to_owned(),
        entries: book.entries().collect(),
    };
    let laid_out = serde_json::to_string_pretty(&document).expect("it can be written");
    assert!(laid_out.lines().count() > 40, "{laid_out}");
    whole(&laid_out, &book);
    whole(laid_out.replace('\n', "\r\n").replace("  ", "\t"), &book);
}

#[test]
fn the_parts_may_come_in_any_order_and_a_later_version_may_add_some() {
    let text = parts().text();
    let (head, tail) = text.split_once(",\"count\"").expect("a count");
    let turned = format!("{{\"count\"{},{},\"more\":[1,{{}}]}}", tail.trim_end_matches('}'), &head[1..]);
    // The last entry's own bracket went with the file's.
    whole(turned.replace("]}}}]", "]}}]").replace("]},\"format\"", "],\"format\""), &small());
}

#[test]
fn an_empty_file_says_so() {
    for text in ["", " ", "\n\r\n\t", "\u{feff}", "\u{feff}\n"] {
        check(text, &FileError::Empty);
    }
}

#[test]
fn a_file_cut_short_anywhere_says_so() {
    let text = super::file(&small());
    let bytes = text.trim_end().as_bytes();
    for length in 1..bytes.len() {
        let line = 1 + bytes[..length].iter().filter(|byte| **byte == b'\n').count();
        // White space at the end is cut away first, so the line is that of the last token.
        let line = line - usize::from(bytes[length - 1] == b'\n');
        assert_eq!(book::read(&bytes[..length]), Err(FileError::CutShort { line }), "{length}");
    }
    whole(bytes, &small());
}

#[test]
fn a_file_too_large_for_any_book_is_not_looked_into() {
    let bytes = MOST_BYTES + 1;
    check(vec![b' '; bytes], &FileError::TooLarge { bytes, most: MOST_BYTES });
    check(vec![0xff; MOST_BYTES], &FileError::NotText);
}

#[test]
fn what_is_no_text_says_so() {
    check([0xff, 0xfe, b'{', 0], &FileError::NotText);
    check(b"PK\x03\x04\x14\x00\x80\x99", &FileError::NotText);
    check(b"{\"format\":\"\xe9\"}", &FileError::NotText);
}

#[test]
fn what_is_no_json_says_where() {
    for (text, line, column) in [
        ("Hello", 1, 1),
        ("{\n  format", 2, 3),
        ("{\"format\":\"yeanling-book\",}", 1, 27),
        ("{} {}", 1, 4),
        ("tag,sex\n23,ewe", 1, 2),
        ("{\"count\":1.}", 1, 12),
    ] {
        check(text, &FileError::NotJson { line, column });
    }
}

#[test]
fn json_of_another_kind_is_no_book() {
    let array = format!("[{FORMAT:?},1,\"{}\",\"{}\",0,{},[]]", made(), device(), sealed("[]"));
    for text in ["[]", "7", "1e999", "null", "true", "{}", "[{}]", array.as_str(), "{\"format\":7}"] {
        check(text, &FileError::OtherFormat { given: None });
    }
    check("\"yeanling-book\"", &FileError::OtherFormat { given: None });
    check(r#"{"format":null,"version":1}"#, &FileError::OtherFormat { given: None });
}

#[test]
fn another_format_is_named() {
    let mut other = parts();
    other.format = Some("\"geojson\"".to_owned());
    check(other.text(), &FileError::OtherFormat { given: Some("geojson".to_owned()) });
    other.format = Some(format!("\"{}\"", "é".repeat(200)));
    check(other.text(), &FileError::OtherFormat { given: Some("é".repeat(60)) });
}

#[test]
fn a_part_named_twice_makes_it_no_book() {
    let text = parts().text();
    check(text.replacen('{', "{\"count\":4,", 1), &FileError::OtherFormat { given: None });
}

#[test]
fn a_later_version_is_named_whatever_else_changed() {
    let text = r#"{"format":"yeanling-book","version":2,"pages":[]}"#;
    check(text, &FileError::NewerVersion { given: 2 });
    let mut newer = parts();
    newer.version = Some(u64::MAX.to_string());
    check(newer.text(), &FileError::NewerVersion { given: u64::MAX });
}

#[test]
fn a_version_that_never_was_is_wrong() {
    for version in ["0", "-1", "1.0", "\"1\"", "null", "[1]", "99999999999999999999"] {
        part(|parts| parts.version = Some(version.to_owned()), "version");
    }
}

#[test]
fn each_part_must_be_there_and_of_its_kind() {
    let mut without = parts();
    without.format = None;
    check(without.text(), &FileError::OtherFormat { given: None });
    part(|parts| parts.version = None, "version");
    part(|parts| parts.made = None, "made");
    part(|parts| parts.device = None, "device");
    part(|parts| parts.count = None, "count");
    part(|parts| parts.digest = None, "digest");
    part(|parts| parts.entries = None, "entries");
    for other in ["\"soon\"", "0", "{}", "\"2026-02-30T00:00:00.000+00:00\"", "\"2026-02-25\""] {
        part(|parts| parts.made = Some(other.to_owned()), "made");
    }
    for other in ["\"phone\"", "0", "{}"] {
        part(|parts| parts.device = Some(other.to_owned()), "device");
    }
    for other in ["\"4\"", "-4", "4.0", "4e0"] {
        part(|parts| parts.count = Some(other.to_owned()), "count");
    }
    part(|parts| parts.digest = Some("7".to_owned()), "digest");
    for other in ["{}", "\"\"", "4"] {
        part(|parts| parts.entries = Some(other.to_owned()), "entries");
    }
}

#[test]
fn an_entry_lost_or_gained_is_counted() {
    let all = lines(&small());
    let mut fewer = Parts::of(&all[..3]);
    fewer.count = Some("4".to_owned());
    check(fewer.text(), &FileError::Count { said: 4, found: 3 });
    let mut more = parts();
    more.count = Some("0".to_owned());
    check(more.text(), &FileError::Count { said: 0, found: 4 });
}

#[test]
fn an_entry_changed_breaks_the_digest() {
    let text = super::file(&small());
    for (from, to) in [
        ("Bärbel", "Barbel"),
        ("\"alive\":true", "\"alive\":false"),
        ("1e3", "1000"),
        ("\\u00e9", "é"),
        ("two  spaces", "two spaces"),
    ] {
        let changed = text.replacen(from, to, 1);
        if changed == text {
            // This one is in another of the later version's facts.
            assert!(UNKNOWN.iter().any(|json| json.contains(from)), "{from}");
            continue;
        }
        check(changed, &FileError::Digest);
    }
    let mut other = parts();
    other.digest = Some(sealed("[]"));
    check(other.text(), &FileError::Digest);
    other.digest = Some("\"\"".to_owned());
    check(other.text(), &FileError::Digest);
}

#[test]
fn an_entry_of_the_wrong_form_is_named_by_its_number() {
    let good = lines(&small());
    let array = format!("[\"{}\",\"{}\",\"{}\",\"{}\",\"x\"]", device(), device(), made(), made());
    let bad = [
        "{}".to_owned(),
        "7".to_owned(),
        "null".to_owned(),
        array,
        good[0].replacen("\"id\":\"019c", "\"id\":\"xxxx", 1),
        good[0].replacen("\"noted\":", "\"written\":", 1),
        good[0].replacen("{\"id\":", "{\"more\":1,\"id\":", 1),
        good[0].replacen("\"at\":\"2026-02-25", "\"at\":\"2026-02-31", 1),
        good[0].replacen("{\"id\":", "{\"at\":\"2026-02-25T08:00:00.000+00:00\",\"id\":", 1),
        noting_raw("7"),
        noting_raw("null"),
        noting_raw("[{}]"),
    ];
    for line in bad {
        let text = Parts::of(&[good[1].clone(), line.clone()]).text();
        let read = book::read(text.as_bytes());
        assert!(matches!(read, Err(FileError::Entry { number: 2, .. })), "{line}: {read:?}");
    }
}

/// An entry with this in place of a fact.
fn noting_raw(event: &str) -> String {
    let line = serde_json::to_string(&noting(7, "\"x\"")).expect("an entry can be written");
    line.replace("\"event\":\"x\"", &format!("\"event\":{event}"))
}

#[test]
fn an_entry_may_come_twice_if_it_says_the_same() {
    let mut all = lines(&small());
    all.push(all[0].clone());
    let read = book::read(Parts::of(&all).text().as_bytes()).expect("a whole file");
    assert_eq!(read.entries.len(), 5);
    assert_eq!(read.entries.into_iter().collect::<Book>(), small());
}

#[test]
fn an_id_that_comes_twice_with_other_content_is_refused() {
    let mut all = lines(&small());
    all.push(all[0].replace("Bärbel", "Berta"));
    check(Parts::of(&all).text(), &FileError::Repeated { number: 5 });
    all.swap(1, 4);
    check(Parts::of(&all).text(), &FileError::Repeated { number: 2 });
}

#[test]
fn a_fact_nested_without_end_is_kept_and_brings_nothing_down() {
    // A call takes over a hundred bytes of a test's two million: twenty thousand of them bring down what goes down with them.
    let deep = |open: &str, close: &str| format!("{}1{}", open.repeat(20_000), close.repeat(20_000));
    for event in [
        format!("{{\"shorn\":{}}}", deep("[", "]")),
        format!("{{\"shorn\":{}}}", deep("{\"a\":", "}")),
        format!("{{\"stood\":{}}}", deep("[", "]")),
        deep("{\"amended\":{\"entry\":\"019c0000-0000-7000-8000-000000000001\",\"event\":", "}}"),
    ] {
        let text = Parts::of(&[noting_raw(&event)]).text();
        let read = book::read(text.as_bytes()).expect("a whole file");
        let book: Book = read.entries.into_iter().collect();
        assert_eq!(fold(&book).unread.len(), 1);
        assert!(super::file(&book).contains(&event), "it leaves as it came");
    }
}

#[test]
fn brackets_without_end_are_cut_short() {
    for bracket in ["[", "{\"a\":"] {
        check(bracket.repeat(200_000), &FileError::CutShort { line: 1 });
    }
}

#[test]
fn a_known_fact_with_odd_content_is_kept_unread() {
    let lamb = "\"lamb\":\"019c0000-0000-7000-8000-000000000002\"";
    let ewe = |tag: &str| format!("{{\"ewe-came\":{{\"tag\":{tag}}}}}");
    for event in [
        format!("{{\"weighed\":{{{lamb},\"kg\":1e999}}}}"),
        format!("{{\"weighed\":{{{lamb},\"kg\":-1.0}}}}"),
        format!("{{\"weighed\":{{{lamb},\"kg\":501.0}}}}"),
        format!("{{\"weighed\":{{{lamb},\"kg\":\"4\"}}}}"),
        format!("{{\"weighed\":{{{lamb},{lamb},\"kg\":4.0}}}}"),
        format!("{{\"weighed\":{{{lamb}}}}}"),
        format!("{{\"vigor-scored\":{{{lamb},\"scale\":\"four-grade\",\"score\":256}}}}"),
        format!("{{\"vigor-scored\":{{{lamb},\"scale\":\"five-grade\",\"score\":2}}}}"),
        ewe("\"\\ud800\""),
        ewe("\"\\udc11\\ud83d\""),
        ewe("7"),
        "{\"struck\":{}}".to_owned(),
        "{\"stood\":{},\"sucked\":{}}".to_owned(),
        "{}".to_owned(),
        "\"stood\"".to_owned(),
    ] {
        let text = Parts::of(&[noting_raw(&event)]).text();
        let read = book::read(text.as_bytes()).expect("a whole file");
        let [Entry { event: Event::Unread(unread), .. }] = &read.entries[..] else {
            panic!("{event} was read as {read:?}")
        };
        assert_eq!(unread.as_json(), event);
    }
}
