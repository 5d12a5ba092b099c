//! Files from strangers: whatever comes, nothing breaks, what is refused is refused in words, and what is taken in
//! leaves as it came. A refused file gives nothing that could be taken in.
//!
//! `YEANLING_CASES` says how many files are tried, over all; `cargo xtask soak` tries a million.

mod out;
mod tree;

use proptest::prelude::*;
use proptest::sample::Index;
use serde_json::Value;
use yeanling_core::book::{self, Animal, Book, BookFile, Entry, FileError};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::seasons::{grown, lambing_forecasts, season_forecast, seasons, usual_age, year};
use yeanling_core::units::Moment;
use yeanling_core::watch::{duties, round};

use super::arbitrary::{config, entries};
use super::file::Parts;
use super::forms::{SEASON_1, VERSION_1};
use super::{made, noting};
use crate::scribe::at;
use tree::{Change, Tree, change, tree};

/// How many files are tried by each of the laws below, so that together they are as many as was asked for.
fn cases() -> ProptestConfig {
    /// Where nobody asks for more.
    const FEW: u32 = 600;
    const LAWS: u32 = 5;
    let asked = std::env::var("YEANLING_CASES").ok().and_then(|cases| cases.parse().ok());
    config(asked.unwrap_or(FEW) / LAWS)
}

/// The farm's own book, which a file comes to.
fn own() -> Book {
    VERSION_1[..24].iter().zip(1..).map(|(event, number)| noting(number, event)).collect()
}

/// Lines of a book, one for each form that was ever written.
fn formed() -> impl Strategy<Value = Vec<String>> {
    let forms: Vec<&str> = VERSION_1.iter().chain(SEASON_1).copied().collect();
    prop::collection::vec(prop::sample::select(forms), 1..12).prop_map(|events| {
        let lines = events.into_iter().zip(1..).map(|(event, number)| line(&noting(number, event)));
        lines.collect()
    })
}

/// Lines of a book.
fn lines() -> impl Strategy<Value = Vec<String>> {
    prop_oneof![
        4 => formed(),
        1 => entries().prop_map(|entries| entries.iter().map(line).collect()),
    ]
}

fn line(entry: &Entry) -> String {
    serde_json::to_string(entry).expect("an entry can be written")
}

/// What can become of bytes on their way.
#[derive(Clone, Debug)]
enum Damage {
    Flipped(Index, u8),
    CutAt(Index),
    Without(Index, Index),
    Again(Index, Index),
    With(Index, Vec<u8>),
}

fn damage() -> impl Strategy<Value = Damage> {
    let index = any::<Index>;
    let bytes = prop_oneof![
        Just(vec![0]),
        Just(b"\xef\xbb\xbf".to_vec()),
        Just("\u{202e}".as_bytes().to_vec()),
        Just(b"\xff\xfe".to_vec()),
        Just(b"{\"format\":\"yeanling-book\",".to_vec()),
        Just(b"<script>".to_vec()),
        prop::collection::vec(any::<u8>(), 1..4),
    ];
    prop_oneof![
        4 => (index(), 0..8_u8).prop_map(|(place, bit)| Damage::Flipped(place, bit)),
        1 => index().prop_map(Damage::CutAt),
        1 => (index(), index()).prop_map(|(one, other)| Damage::Without(one, other)),
        1 => (index(), index()).prop_map(|(one, other)| Damage::Again(one, other)),
        2 => (index(), bytes).prop_map(|(place, bytes)| Damage::With(place, bytes)),
    ]
}

fn damaged(mut bytes: Vec<u8>, damage: &Damage) -> Vec<u8> {
    let place = |index: &Index| index.index(bytes.len() + 1);
    let span = |one: &Index, other: &Index| place(one).min(place(other))..place(one).max(place(other));
    match damage {
        Damage::Flipped(at, bit) => {
            let at = at.index(bytes.len().max(1));
            if let Some(byte) = bytes.get_mut(at) {
                *byte ^= 1 << bit;
            }
        }
        Damage::CutAt(at) => bytes.truncate(place(at)),
        Damage::Without(one, other) => _ = bytes.drain(span(one, other)),
        Damage::Again(one, other) => {
            let part = span(one, other);
            let again = bytes[part.clone()].to_vec();
            bytes.splice(part.end..part.end, again);
        }
        Damage::With(at, more) => {
            let at = place(at);
            bytes.splice(at..at, more.iter().copied());
        }
    }
    bytes
}

/// Gives a file to a book as the app does, and works all out that the screens ask for.
#[track_caller]
fn give(bytes: &[u8]) -> Result<(), FileError> {
    let read = book::read(bytes);
    if let Err(error) = &read {
        in_words(error);
    }
    let BookFile { made, device, entries } = read?;
    let alone: Book = entries.iter().cloned().collect();
    let text = book::write(&alone, made, device);
    let again = book::read(text.as_bytes()).expect("what was taken in goes out whole");
    assert_eq!((again.made, again.device), (made, device));
    let again: Book = again.entries.into_iter().collect();
    assert_eq!(again, alone);
    assert_eq!(book::write(&again, made, device), text, "to the byte");
    let (both, merged) = own().with(entries);
    assert_eq!(both.len(), own().len() + merged.added.len());
    for book in [&alone, &both] {
        worked_out(&fold(book));
    }
    Ok(())
}

/// Asks a flock for what the screens show, tonight and at both ends of time.
fn worked_out(flock: &Flock) {
    for now in
        [at(0), Moment::from_unix_milliseconds(i64::MIN, 0), Moment::from_unix_milliseconds(i64::MAX, 0)]
    {
        let _ = round(&duties(flock, now, &flock.settings), now);
        let _ = season_forecast(flock, &lambing_forecasts(flock, now), now);
        for season in seasons(flock) {
            let _ = year(flock, &season, now);
            let _ = grown(flock, &season, usual_age(flock, &season, now), now);
        }
    }
}

/// Fails unless an error is something that a person can be told: short, and with nothing in it that acts.
#[track_caller]
fn in_words(error: &FileError) {
    let text = error.to_string();
    assert!(text.contains(' ') && text.chars().count() <= 400, "{text:?}");
    assert!(!text.contains(acts), "{text:?}");
}

/// Says whether a character does something to the text around it, or to the line.
fn acts(c: char) -> bool {
    c.is_control() || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn any_bytes_at_all_break_nothing(bytes in prop::collection::vec(any::<u8>(), 0..200), text in any::<String>()) {
        prop_assert!(give(&bytes).is_err());
        prop_assert!(give(text.as_bytes()).is_err());
    }

    #[test]
    fn any_json_breaks_nothing(document in tree(), events in prop::collection::vec(tree(), 0..4)) {
        prop_assert!(give(document.json().as_bytes()).is_err());
        let lines: Vec<String> = events
            .iter()
            .zip(1..)
            .map(|(event, number)| {
                line(&noting(number, "\"x\"")).replace("\"event\":\"x\"", &format!("\"event\":{}", event.json()))
            })
            .collect();
        let given = give(Parts::of(&lines).text().as_bytes());
        let readable = events.iter().all(|event| event.json().starts_with(['{', '"']));
        prop_assert_eq!(given.is_ok(), readable, "{:?}", given);
    }

    #[test]
    fn a_file_damaged_on_its_way_breaks_nothing(lines in lines(), damage in prop::collection::vec(damage(), 1..4)) {
        let whole = Parts::of(&lines).text().into_bytes();
        let bytes = damage.iter().fold(whole.clone(), damaged);
        let given = give(&bytes);
        // What is between the tokens, and what comes before it all, is all that may change.
        prop_assert!(given.is_err() || bytes == whole || same_but_for_its_head(&bytes, &lines), "{:?}", given);
    }

    #[test]
    fn a_file_with_anything_in_its_entries_breaks_nothing(
        lines in lines(),
        changes in prop::collection::vec((any::<Index>(), change()), 1..4),
    ) {
        let _ = give(Parts::of(&changed(&lines, &changes)).text().as_bytes());
    }

    #[test]
    fn a_file_with_anything_in_its_head_breaks_nothing(
        lines in lines(),
        changes in prop::collection::vec(change(), 1..4),
    ) {
        let mut tree = Tree::of(&Parts::of(&lines).text());
        for change in &changes {
            tree.change(change);
        }
        let _ = give(tree.json().as_bytes());
    }
}

/// The same lines, some of them changed.
fn changed(lines: &[String], changes: &[(Index, Change)]) -> Vec<String> {
    let mut lines = lines.to_vec();
    for (which, change) in changes {
        if lines.is_empty() {
            break;
        }
        let which = which.index(lines.len());
        let mut tree = Tree::of(&lines[which]);
        tree.change(change);
        lines[which] = tree.json();
    }
    lines
}

/// Says whether a damaged file still holds these very entries: the digest covers them and not the rest.
fn same_but_for_its_head(bytes: &[u8], lines: &[String]) -> bool {
    let read = book::read(bytes).map(|file| file.entries);
    read == book::read(Parts::of(lines).text().as_bytes()).map(|file| file.entries)
}

#[test]
fn the_changes_reach_what_lies_behind_the_digest() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let (mut taken, mut refused) = (0, 0);
    for _ in 0..200 {
        let lines = formed().new_tree(&mut runner).expect("lines").current();
        let change = (any::<Index>(), change()).new_tree(&mut runner).expect("a change").current();
        match give(Parts::of(&changed(&lines, &[change])).text().as_bytes()) {
            Ok(()) => taken += 1,
            Err(FileError::Entry { .. }) => refused += 1,
            Err(_) => {}
        }
    }
    assert!(taken > 40 && refused > 20, "{taken} taken, {refused} refused");
}

#[test]
fn a_refusal_carries_no_more_of_the_file_than_can_be_told() {
    let long = "\u{202e}".repeat(3) + &"x".repeat(10_000) + "\u{0}";
    let name = Value::from(long.as_str()).to_string();
    let odd = line(&noting(1, "\"x\"")).replacen("{\"id\":", &format!("{{{name}:1,\"id\":"), 1);
    let other = line(&noting(1, "\"x\"")).replacen(&made().to_string(), &long.replace('\u{0}', ""), 1);
    for line in [odd, other] {
        let error = give(Parts::of(&[line]).text().as_bytes()).expect_err("not an entry");
        assert!(matches!(error, FileError::Entry { number: 1, .. }), "{error}");
    }
    let error = give(format!("{{\"format\":{name}}}").as_bytes()).expect_err("not a book");
    assert_eq!(error, FileError::OtherFormat { given: Some("x".repeat(60)) });
}

#[test]
fn a_million_entries_are_refused_by_their_bytes() {
    let one = line(&noting(1, "{\"ewe-came\":{}}"));
    let bytes = (one.len() + 1) * 1_000_000;
    assert!(bytes > 4 * book::MOST_BYTES, "{bytes}");
    let error = give(vec![b'x'; bytes].as_slice()).expect_err("too large");
    assert_eq!(error, FileError::TooLarge { bytes, most: book::MOST_BYTES });
    assert_eq!(
        error.to_string(),
        format!("the file has {bytes} bytes, at most {} are read", book::MOST_BYTES)
    );
}

#[test]
fn records_joined_in_one_long_chain_are_one() {
    let most: u32 = 10_000;
    let id = |number: u32| format!("019c0000-0000-7000-8000-{number:012}");
    let chain = |event: &dyn Fn(u32) -> String| -> Book {
        (1..most).map(|number| noting(number, &event(number))).collect()
    };
    for up in [true, false] {
        let next = |number: u32| if up { number + 1 } else { number - 1 };
        let joined = chain(&|number| {
            let (keep, also) = (id(next(number)), id(number));
            format!("{{\"same-animal\":{{\"keep\":{{\"ewe\":\"{keep}\"}},\"also\":{{\"ewe\":\"{also}\"}}}}}}")
        });
        let (first, last) = if up { (1, most) } else { (most - 1, 0) };
        let animal = |number| Animal::Ewe(noting(number, "\"x\"").id.as_ewe());
        let flock = fold(&joined);
        assert_eq!(flock.canonical(animal(first)), animal(last));
        let beside = chain(&|number| {
            format!("{{\"lamb-born\":{{\"beside\":\"{}\",\"alive\":true}}}}", id(next(number)))
        });
        assert_eq!(fold(&beside).litters.len(), 1);
    }
}
