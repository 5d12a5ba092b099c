//! The same id with other content: what was here stays, the other is set aside and said.

use yeanling_core::book::{Added, Book, Merged};

use super::noting;

#[test]
fn the_copy_that_was_here_stays_and_the_other_is_set_aside() {
    let here = noting(1, r#"{"ewe-came":{"tag":"23"}}"#);
    let other = noting(1, r#"{"ewe-came":{"tag":"32"}}"#);
    let mut book: Book = [here.clone()].into_iter().collect();
    assert_eq!(book.add(other.clone()), Added::Clash);
    assert_eq!(book.entry(here.id), Some(&here));
    assert_eq!(book.set_aside(), [other]);
    assert_eq!(book.len(), 1);
}

#[test]
fn a_clash_is_set_aside_once() {
    let here = noting(1, r#"{"ewe-came":{"tag":"23"}}"#);
    let other = noting(1, r#"{"ewe-came":{"tag":"32"}}"#);
    let mut book: Book = [here.clone()].into_iter().collect();
    for _ in 0..3 {
        let clashes = vec![other.clone()];
        assert_eq!(
            book.union([other.clone(), here.clone()]),
            Merged { known: 1, clashes, ..Merged::default() }
        );
    }
    assert_eq!(book.set_aside(), [other]);
}

#[test]
fn any_part_that_differs_makes_a_clash() {
    let here = noting(1, r#"{"ewe-came":{}}"#);
    let book: Book = [here.clone()].into_iter().collect();
    let later = here.noted + yeanling_core::units::TimeDelta::milliseconds(1);
    let elsewhere = "019c0000-0000-7000-8000-0000000000d2".parse().expect("an id");
    let mut others = [here.clone(), here.clone(), here.clone()];
    others[0].noted = later;
    others[1].at = later;
    others[2].device = elsewhere;
    for other in others {
        assert_eq!(book.clone().add(other), Added::Clash);
    }
    assert_eq!(book.clone().add(here), Added::Known);
}

#[test]
fn a_preview_names_the_clash_and_changes_nothing() {
    let here = noting(1, r#"{"ewe-came":{"tag":"23"}}"#);
    let other = noting(1, r#"{"ewe-came":{"tag":"32"}}"#);
    let book: Book = [here].into_iter().collect();
    let (after, merged) = book.with([other.clone(), noting(2, r#"{"ewe-came":{}}"#)]);
    assert_eq!((merged.added.len(), merged.known, merged.clashes), (1, 0, vec![other]));
    assert_eq!((book.len(), book.set_aside().len(), after.len(), after.set_aside().len()), (1, 0, 2, 1));
}

#[test]
fn what_was_set_aside_is_in_no_file() {
    let mut book: Book = [noting(1, r#"{"ewe-came":{"tag":"23"}}"#)].into_iter().collect();
    let before = super::file(&book);
    book.add(noting(1, r#"{"ewe-came":{"tag":"32"}}"#));
    assert_eq!(super::file(&book), before);
}
