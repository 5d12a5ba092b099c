//! Laws of the watch, on any book at all.

use proptest::prelude::*;
use uuid::Uuid;
use yeanling_core::book::{Animal, Book, DeviceId, Entry, EntryId, Event, Found, Part, Presentation, Sign};
use yeanling_core::flock::fold;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Completion, Duty, State, duties};

use crate::book::arbitrary::{config, entries};
use crate::scribe::{Scribe, at, birth};

fn of(book: &Book, now: Moment) -> Vec<Duty> {
    let flock = fold(book);
    duties(&flock, now, &flock.settings)
}

/// An instant within the days in which those books happen.
fn instant() -> impl Strategy<Value = Moment> {
    (0..100_i64).prop_map(|hours| Moment::from_unix_milliseconds(1_772_000_000_000 + hours * 1_800_000, 0))
}

proptest! {
    #![proptest_config(config(300))]

    #[test]
    fn the_order_is_total_and_hangs_on_the_set_alone(all in entries(), now in instant()) {
        let forth: Book = all.iter().cloned().collect();
        let back: Book = all.iter().rev().cloned().collect();
        let (one, two) = (of(&forth, now), of(&back, now));
        prop_assert_eq!(&one, &two);
        let rank = |duty: &Duty| std::cmp::Reverse(duty.state(now));
        prop_assert!(one.windows(2).all(|pair| rank(&pair[0]) <= rank(&pair[1])));
        for (index, duty) in one.iter().enumerate() {
            let twin = |other: &Duty| other.subject() == duty.subject() && other.task.kind() == duty.task.kind();
            prop_assert!(!one[..index].iter().any(twin), "twice: {:?}", duty);
        }
    }

    #[test]
    fn time_passing_never_un_lates_a_duty(all in entries(), now in instant(), minutes in 0..600_i64) {
        let book: Book = all.into_iter().collect();
        let later = now + TimeDelta::minutes(minutes);
        for duty in of(&book, now).iter().filter(|duty| duty.state(now) == State::Late) {
            prop_assert_eq!(duty.state(later), State::Late);
        }
    }

    #[test]
    fn noting_what_discharges_a_duty_removes_it(all in entries(), now in instant()) {
        let book: Book = all.into_iter().collect();
        for duty in of(&book, now) {
            let Completion::Note(event) = &duty.completion else { continue };
            // A feed is followed by the next feed, a first dip by the second.
            if matches!(event, Event::Fed { .. } | Event::NavelDipped { .. } | Event::LookedAt { .. }) {
                continue;
            }
            let (then, _) = book.with([noting(&book, now, event)]);
            // A call to the vet ends the duty to call, not the danger: it is not asked for once more.
            let called = matches!(event, Event::VetCalled { .. });
            let asked = |other: &Duty| !called || other.completion == duty.completion;
            let left: Vec<_> =
                of(&then, now).into_iter().filter(|other| same(other, &duty) && asked(other)).collect();
            prop_assert!(left.is_empty(), "{:?} is still there after {:?}", left, event);
        }
    }

    #[test]
    fn two_phones_together_owe_what_each_owed(one in script(), other in script(), minutes in 0..3000_i64) {
        let now = at(minutes);
        let (one, other) = (phone(1, &one), phone(2, &other));
        let (both, _) = one.with(other.entries().cloned());
        let names = |duties: Vec<Duty>| {
            let mut names: Vec<_> =
                duties.iter().map(|duty| (duty.subject(), duty.task.kind(), duty.due, duty.late)).collect();
            names.sort_unstable();
            names
        };
        let mut each = of(&one, now);
        each.extend(of(&other, now));
        prop_assert_eq!(names(of(&both, now)), names(each));
    }
}

/// What one phone notes: which fact, and how many minutes after the last.
fn script() -> impl Strategy<Value = Vec<(u8, i64)>> {
    prop::collection::vec((0..16_u8, 1..90_i64), 0..20)
}

/// The book of a phone that watches one ewe through a night.
fn phone(device: u128, script: &[(u8, i64)]) -> Book {
    let mut scribe = Scribe::new(device);
    let ewe = scribe.ewe(at(-100), "14");
    let pen = scribe.note(at(-99), Event::PenMade { name: "1".to_owned(), size: None }).as_pen();
    let mut lamb = scribe.born(at(0), Some(ewe));
    let (mut minute, animal) = (0, Animal::Ewe(ewe));
    for (fact, wait) in script {
        minute += wait;
        let event = match fact {
            0 => Event::SignSeen { ewe, sign: Sign::Restless },
            1 => Event::WaterBagSeen { ewe },
            2 => Event::StrainingSeen { ewe },
            3 => Event::PartShowing { ewe, part: Part::ForeFeet },
            4 => Event::HandChecked { ewe, found: Found::CervixClosed },
            5 => Event::HandChecked { ewe, found: Found::Lamb(Presentation::HeadBack) },
            6 => Event::HelpBegun { ewe },
            7 => Event::VetCalled { animal },
            8 => Event::LookedAt { animal },
            9 => Event::NotLambing { ewe },
            10 => Event::AfterbirthPassed { ewe },
            11 => Event::PutInPen { animal, pen },
            12 => Event::LetOut { animal },
            13 => Event::Sucked { lamb },
            14 => Event::AllBorn { lamb },
            _ => birth(Some(ewe), None),
        };
        let entry = scribe.note(at(minute), event);
        if *fact > 14 {
            lamb = entry.as_lamb();
        }
    }
    scribe.book
}

/// The same fact as an entry of this book, noted now.
fn noting(book: &Book, now: Moment, event: &Event) -> Entry {
    Entry {
        id: EntryId::from_uuid(Uuid::from_u128(0xffff)),
        device: DeviceId::from_uuid(Uuid::from_u128(1)),
        noted: book.next_noted(now),
        at: now,
        event: event.clone(),
    }
}

fn same(one: &Duty, other: &Duty) -> bool {
    one.subject() == other.subject() && one.task.kind() == other.task.kind()
}
