//! Lists of ear tags as people type or paste them.

use proptest::prelude::*;
use yeanling_core::units::{MOST_TAGS, Unread, parse_tags};

#[track_caller]
fn check(text: &str, tags: &[&str]) {
    let list = parse_tags(text);
    assert_eq!(list.tags, tags, "{text:?}");
    assert_eq!((list.repeated, list.unread), (Vec::<String>::new(), Vec::new()), "{text:?}");
}

#[track_caller]
fn unread(text: &str, bit: &str, why: Unread) {
    let list = parse_tags(text);
    assert_eq!(list.unread, [(bit.to_owned(), why)], "{text:?}");
}

#[test]
fn numbers_names_and_ranges_are_read() {
    check("101–103, 7, 9 12", &["101", "102", "103", "7", "9", "12"]);
    check("101-103", &["101", "102", "103"]);
    check("101 - 103 7", &["101", "102", "103", "7"]);
    check("101 -103", &["101", "102", "103"]);
    check("101— 103", &["101", "102", "103"]);
    check("7;8\n9\r\n10\t11", &["7", "8", "9", "10", "11"]);
    check("  ", &[]);
    check("Daisy, red 5", &["Daisy", "red", "5"]);
    check("5-5", &["5"]);
}

#[test]
fn a_range_keeps_its_letters_and_zeros() {
    check("A008–A011", &["A008", "A009", "A010", "A011"]);
    check("A8-10", &["A8", "A9", "A10"]);
    check("098-101", &["098", "099", "100", "101"]);
    check("UK-17", &["UK-17"]);
}

#[test]
fn a_range_of_tags_that_have_a_dash_of_their_own_is_written_with_to_or_a_dash_between_both() {
    check("Y-01 to Y-03", &["Y-01", "Y-02", "Y-03"]);
    check("Y-09 to 11, 4", &["Y-09", "Y-10", "Y-11", "4"]);
    check("Y-01–Y-03", &["Y-01", "Y-02", "Y-03"]);
    check("Y-01 - Y-02", &["Y-01", "Y-02"]);
    check("1 TO 3", &["1", "2", "3"]);
    check("to 3", &["to", "3"]);
    unread("Daisy to Bella", "Daisy to Bella", Unread::NoRange);
    unread("Y-03 to Y-01", "Y-03 to Y-01", Unread::Backwards);
    unread("Y-01 to Z-03", "Y-01 to Z-03", Unread::NoRange);
    unread("1-2-3-4", "1-2-3-4", Unread::NoRange);
}

#[test]
fn what_stands_twice_is_kept_once_and_told() {
    let list = parse_tags("7, 5-8, 7, 6");
    assert_eq!(list.tags, ["7", "5", "6", "8"]);
    assert_eq!(list.repeated, ["7", "6"]);
}

#[test]
fn what_cannot_be_read_is_handed_back() {
    unread("140–101", "140–101", Unread::Backwards);
    unread("5, 12-", "12-", Unread::NoRange);
    unread("-12", "-12", Unread::NoRange);
    unread("A1-B9", "A1-B9", Unread::NoRange);
    unread("1-2-3", "1-2-3", Unread::NoRange);
    unread("–", "–", Unread::NoRange);
    unread("1-2001", "1-2001", Unread::TooMany);
    unread("1-99999999999999999999999", "1-99999999999999999999999", Unread::TooMany);
    assert_eq!(parse_tags("1-2000").tags.len(), MOST_TAGS);
    let list = parse_tags("1-1500, 3001-4000, 9001");
    assert_eq!((list.tags.len(), list.unread), (1501, vec![("3001-4000".to_owned(), Unread::TooMany)]));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn whatever_is_typed_no_tag_comes_twice(text in "[0-9a-cA ,;–-]{0,60}|([0-9a-c–-]{0,3} (to )?){0,9}|\\PC{0,40}") {
        let list = parse_tags(&text);
        let mut tags = list.tags.clone();
        tags.sort();
        tags.dedup();
        prop_assert_eq!(tags.len(), list.tags.len());
        prop_assert!(tags.len() <= MOST_TAGS);
        prop_assert!(tags.iter().all(|tag| !tag.is_empty() && !tag.contains(char::is_whitespace)));
        prop_assert!(list.repeated.iter().all(|tag| list.tags.contains(tag)));
    }

    #[test]
    fn a_range_has_every_number_of_it(from in 0..100_000_u32, more in 0..2000_u32) {
        let list = parse_tags(&format!("{from}–{}", from + more));
        let numbers: Vec<String> = (from..=from + more).map(|number| number.to_string()).collect();
        prop_assert_eq!(list.tags, numbers);
    }
}
