//! A book that outgrows one file goes as several, each whole and readable, and together the book.

use proptest::prelude::*;
use yeanling_core::book::{
    self, Book, Entry, FileError, MOST_BYTES, MOST_ENTRY, Written, split, split_within,
};

use super::arbitrary::{config, entries};
use super::{device, entry, made, noting};

/// An entry noted in this month, with so much text of a later version in it.
fn noted(number: u32, month: &str, bytes: usize) -> Entry {
    let text = "x".repeat(bytes);
    entry(&format!(
        r#"{{"id":"019c0000-0000-7000-8000-{number:012}","device":"{}","noted":"{month}-15T03:00:00.000-05:00","at":"{}","event":{{"shorn":"{text}"}}}}"#,
        device(),
        made(),
    ))
}

/// Returns what the files make together, each read as another phone would.
#[track_caller]
fn together(files: &[Written]) -> Book {
    let mut book = Book::default();
    for file in files {
        book.union(book::read(file.text.as_bytes()).expect("a whole file").entries);
    }
    book
}

#[track_caller]
fn check(noted_in: &[&str], most: usize, expected: &[(i32, i32)]) {
    let book: Book = (1..).zip(noted_in).map(|(number, month)| noted(number, month, 1000)).collect();
    let files = split_within(most, &book, made(), device());
    let years: Vec<(i32, i32)> = files.iter().filter_map(|file| file.years).collect();
    assert_eq!(years, expected);
    assert!(files.iter().all(|file| file.text.len() <= most));
    assert_eq!(together(&files), book);
}

#[test]
fn a_book_that_fits_is_one_file_as_ever() {
    let book: Book = (1..=3).map(|number| noting(number, "\"shorn\"")).collect();
    let files = split(&book, made(), device());
    assert_eq!(files.iter().map(|file| file.text.clone()).collect::<Vec<_>>(), [super::file(&book)]);
    assert_eq!(split(&Book::default(), made(), device()).len(), 1);
}

#[test]
fn a_book_is_cut_between_seasons() {
    let months = ["2023-12", "2024-03", "2024-12", "2025-02", "2025-05", "2025-12"];
    check(&months, 20_000, &[(2024, 2026)]);
    // Three of about 1,200 bytes fit beside what stands around them.
    check(&months, 4_100, &[(2024, 2024), (2025, 2025), (2026, 2026)]);
    check(&months, 5_300, &[(2024, 2024), (2025, 2026)]);
    // From July to June, so that a lambing over the new year stays in one.
    check(&["2024-06", "2024-07"], 2_000, &[(2024, 2024), (2025, 2025)]);
}

#[test]
fn a_season_too_large_for_a_file_is_cut_in_itself() {
    check(&["2025-01", "2025-02", "2025-03", "2025-04", "2025-05"], 3_000, &[(2025, 2025); 3]);
}

#[test]
fn the_largest_entry_that_is_read_can_be_written_and_read_again() {
    let whole = noting(1, "\"x\"");
    let empty = serde_json::to_string(&whole).expect("it can be written").len();
    let largest = noted(1, "2026-02", MOST_ENTRY - empty - 9);
    let line = serde_json::to_string(&largest).expect("it can be written");
    assert!(MOST_ENTRY - line.len() < 10, "{}", line.len());
    let book: Book = [largest].into_iter().collect();
    let [file] = &split(&book, made(), device())[..] else { panic!("one entry is one file") };
    assert!(file.text.len() <= MOST_BYTES);
    assert_eq!(together(std::slice::from_ref(file)), book);
}

#[test]
fn an_entry_that_could_not_be_written_again_is_refused() {
    let longer = noted(1, "2026-02", MOST_ENTRY);
    let text = super::file(&[longer].into_iter().collect());
    assert!(text.len() < MOST_BYTES);
    assert!(matches!(book::read(text.as_bytes()), Err(FileError::Entry { number: 1, .. })));
}

proptest! {
    #![proptest_config(config(200))]

    #[test]
    fn whatever_is_in_it_the_files_give_the_book_back(all in entries(), most in 0..6_000_usize) {
        let book: Book = all.into_iter().collect();
        let files = split_within(most, &book, made(), device());
        prop_assert_eq!(&together(&files), &book);
        for file in &files {
            let of_one = file.text.contains("\"count\":1,") || book.is_empty();
            prop_assert!(file.text.len() <= most || of_one, "{} bytes of {most}", file.text.len());
        }
        prop_assert_eq!(split_within(most, &book, made(), device()), files);
    }
}
