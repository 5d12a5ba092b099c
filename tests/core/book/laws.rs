//! The laws of the book: any number of phones, in any order, any number of times, end with the same book and flock.

use proptest::prelude::*;
use yeanling_core::book::{self, Book, Entry, EntryId, Event, Merged, SLACK, Standing, standing};
use yeanling_core::flock::fold;
use yeanling_core::units::Moment;

use super::arbitrary::{UNKNOWN, config, entries, three_books};
use super::{file, noting};
use crate::scribe::{Scribe, at};

fn union(one: &Book, other: &Book) -> Book {
    one.with(other.entries().cloned()).0
}

proptest! {
    #![proptest_config(config(200))]

    #[test]
    fn union_commutes([a, b, _] in three_books()) {
        prop_assert_eq!(union(&a, &b), union(&b, &a));
    }

    #[test]
    fn union_associates([a, b, c] in three_books()) {
        prop_assert_eq!(union(&union(&a, &b), &c), union(&a, &union(&b, &c)));
    }

    #[test]
    fn union_with_what_is_known_changes_nothing([a, b, _] in three_books()) {
        let both = union(&a, &b);
        let (again, merged) = both.with(b.entries().cloned());
        prop_assert_eq!(&again, &both);
        prop_assert_eq!(merged, Merged { known: b.len(), ..Merged::default() });
    }

    #[test]
    fn a_preview_says_what_the_union_adds([a, b, _] in three_books()) {
        let (both, merged) = a.with(b.entries().cloned());
        let new: Vec<EntryId> =
            b.entries().map(|entry| entry.id).filter(|id| a.entry(*id).is_none()).collect();
        prop_assert_eq!(both.len(), a.len() + new.len());
        prop_assert_eq!(merged.known, b.len() - new.len());
        prop_assert_eq!(merged.added, new);
        prop_assert_eq!(merged.clashes, vec![]);
    }

    #[test]
    fn the_flock_hangs_on_the_set_alone(
        (noted, shuffled) in entries().prop_flat_map(|all| (Just(all.clone()), Just(all).prop_shuffle()))
    ) {
        let at_once: Book = noted.iter().cloned().collect();
        let mut one_by_one = Book::default();
        for entry in &shuffled {
            one_by_one.add(entry.clone());
        }
        let (left, right) = shuffled.split_at(shuffled.len() / 2);
        let left: Book = left.iter().cloned().collect();
        let right: Book = right.iter().cloned().collect();
        prop_assert_eq!(&one_by_one, &at_once);
        prop_assert_eq!(fold(&one_by_one), fold(&at_once));
        prop_assert_eq!(fold(&union(&right, &left)), fold(&at_once));
    }

    #[test]
    fn a_file_gives_back_the_book_to_the_byte(all in entries()) {
        let before: Book = all.into_iter().collect();
        let text = file(&before);
        let read = book::read(text.as_bytes()).expect("a whole file");
        let after: Book = read.entries.into_iter().collect();
        prop_assert_eq!(&after, &before);
        prop_assert_eq!(file(&after), text);
    }

    #[test]
    fn an_entry_gives_back_its_line_to_the_byte(all in entries()) {
        for entry in all {
            let line = serde_json::to_string(&entry).expect("an entry can be written");
            prop_assert_eq!(&super::entry(&line), &entry);
            prop_assert_eq!(serde_json::to_string(&super::entry(&line)).ok(), Some(line));
        }
    }

    #[test]
    fn of_several_corrections_the_latest_stands(all in entries()) {
        let book: Book = all.iter().cloned().collect();
        let mut expected: Vec<Standing<'_>> =
            all.iter().map(|entry| by_hand(&all, entry)).filter(|line| line.event.corrects().is_none()).collect();
        expected.sort_by_key(|line| (line.at, line.entry.noted, line.entry.id));
        prop_assert_eq!(standing(&book), expected);
    }

    #[test]
    fn struck_then_restored_is_as_before(all in entries(), which in any::<prop::sample::Index>()) {
        prop_assume!(!all.is_empty());
        let mut scribe = Scribe::new(9);
        scribe.book.union(all.iter().cloned());
        let target = which.get(&all);
        let before = read_as(&scribe.book, target.id);
        prop_assume!(before.as_ref().is_none_or(|(_, _, struck)| !struck));
        scribe.strike(at(0), target.id);
        if let Some((_, _, struck)) = read_as(&scribe.book, target.id) {
            prop_assert!(struck);
        }
        scribe.restore(at(0), target.id);
        prop_assert_eq!(read_as(&scribe.book, target.id), before);
    }

    #[test]
    fn what_is_noted_is_always_later_than_all_that_was_seen_near_its_clock(
        clocks in prop::collection::vec((-90_000_000..90_000_000_i64, -720_i16..=720), 1..40),
        all in entries(),
    ) {
        let mut scribe = Scribe::new(9);
        scribe.book.union(all);
        for (milliseconds, offset) in clocks {
            let clock = Moment::from_unix_milliseconds(1_772_000_000_000 + milliseconds, offset);
            let near = |noted: &Moment| noted.since(clock) <= SLACK;
            let seen = scribe.book.entries().map(|entry| entry.noted).filter(near).max();
            let id = scribe.note(clock, Event::EweCame { tag: None });
            let entry = scribe.book.entry(id).expect("it was noted");
            prop_assert!(seen.is_none_or(|seen| entry.noted > seen));
            prop_assert!(entry.noted >= clock);
            prop_assert_eq!(entry.noted.offset_minutes(), offset);
        }
    }
}

/// How an entry reads, worked out the slow and plain way: a correction counts if it was written after what it corrects
/// and does not itself stand struck; what it corrects is what it says after its own corrections.
fn by_hand<'a>(all: &'a [Entry], target: &'a Entry) -> Standing<'a> {
    let later = all.iter().filter(|entry| (entry.noted, entry.id) > (target.noted, target.id));
    let mut corrections: Vec<Standing<'_>> = later
        .map(|entry| by_hand(all, entry))
        .filter(|line| !line.struck && line.event.corrects() == Some(target.id))
        .collect();
    corrections.sort_by_key(|line| (line.entry.noted, line.entry.id));
    let amended = corrections.iter().rev().find_map(|line| match line.event {
        Event::Amended { event, at, .. } => Some((&**event, *at)),
        _ => None,
    });
    let (event, at) = amended.unwrap_or((&target.event, target.at));
    let struck = corrections.last().is_some_and(|last| matches!(last.event, Event::Deleted { .. }));
    Standing { entry: target, event, at, amended: amended.is_some(), struck }
}

fn read_as(book: &Book, id: EntryId) -> Option<(Event, Moment, bool)> {
    let line = standing(book).into_iter().find(|line| line.entry.id == id)?;
    Some((line.event.clone(), line.at, line.struck))
}

#[test]
fn an_amendment_outlives_being_struck_and_restored() {
    let mut scribe = Scribe::new(1);
    let ewe = |tag: &str| Event::EweCame { tag: Some(tag.to_owned()) };
    let id = scribe.note(at(0), ewe("23"));
    scribe.amend(at(1), id, ewe("32"), at(-5));
    scribe.strike(at(2), id);
    assert_eq!(read_as(&scribe.book, id), Some((ewe("32"), at(-5), true)));
    scribe.restore(at(3), id);
    assert_eq!(read_as(&scribe.book, id), Some((ewe("32"), at(-5), false)));
}

#[test]
fn an_amendment_that_is_struck_gives_way_to_the_one_before() {
    let mut scribe = Scribe::new(1);
    let ewe = |tag: &str| Event::EweCame { tag: Some(tag.to_owned()) };
    let id = scribe.note(at(0), ewe("1"));
    scribe.amend(at(1), id, ewe("2"), at(1));
    let last = scribe.amend(at(2), id, ewe("3"), at(2));
    scribe.strike(at(3), last);
    assert_eq!(read_as(&scribe.book, id), Some((ewe("2"), at(1), false)));
    scribe.restore(at(4), last);
    assert_eq!(read_as(&scribe.book, id), Some((ewe("3"), at(2), false)));
}

#[test]
fn a_correction_counts_although_its_clock_was_behind() {
    let mut scribe = Scribe::new(1);
    let id = scribe.note(at(600), Event::EweCame { tag: None });
    scribe.strike(at(0), id);
    assert_eq!(read_as(&scribe.book, id).map(|(_, _, struck)| struck), Some(true));
}

#[test]
fn corrections_in_a_circle_come_to_an_end() {
    let mut scribe = Scribe::new(1);
    let ids: Vec<EntryId> = (1..=4).map(|number| noting(number, r#""x""#).id).collect();
    for (number, target) in (1..=4).zip(ids.iter().cycle().skip(1)) {
        scribe.book.add(noting(number, &format!(r#"{{"struck":{{"entry":"{target}"}}}}"#)));
    }
    let of_itself = format!(r#"{{"struck":{{"entry":"{}"}}}}"#, noting(9, r#""x""#).id);
    scribe.book.add(noting(9, &of_itself));
    assert_eq!(standing(&scribe.book), vec![]);
}

#[test]
fn a_fact_of_a_later_version_leaves_as_it_came() {
    for (number, json) in (1..).zip(UNKNOWN) {
        let entry = noting(number, json);
        assert!(matches!(&entry.event, Event::Unread(unread) if unread.as_json() == *json), "{json}");
        let book: Book = [entry].into_iter().collect();
        let text = file(&book);
        assert!(text.contains(&format!(r#""event":{json}}}"#)), "{text}");
        let read = book::read(text.as_bytes()).expect("a whole file");
        assert_eq!(file(&read.entries.into_iter().collect()), text);
        assert_eq!(fold(&book).unread.len(), 1);
    }
}

#[test]
fn white_space_between_tokens_is_no_part_of_a_fact() {
    let laid_out = "{ \"shorn\" :\n\t{ \"kg\" : 1.0 ,\r\n \"text\" : \"a  b \\\" c\" , \"end\" : \"\\\\\" , \"n\" : 1 } }";
    let entry = noting(1, laid_out);
    let Event::Unread(unread) = &entry.event else { panic!("{entry:?}") };
    assert_eq!(unread.as_json(), r#"{"shorn":{"kg":1.0,"text":"a  b \" c","end":"\\","n":1}}"#);
    assert_eq!(entry, noting(1, unread.as_json()));
}
