//! The order in which the entries of two phones arrive does not matter, nor whether they were learned or folded.

use yeanling_core::book::{Book, Entry};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::Moment;
use yeanling_core::watch::duties;

use super::{Broken, Kept, Law, broken, judges};

/// Returns the flock of both books.
pub(in crate::nights) fn two_books_make_the_same_either_way(
    one: &Book,
    other: &Book,
    now: Moment,
) -> Result<Flock, Broken> {
    judges(Law::TwoBooks);
    let (forth, _) = one.with(other.entries().cloned());
    let (back, _) = other.with(one.entries().cloned());
    // As they might come through the air: the odd before the even, the last first.
    let mut mixed: Vec<Entry> = forth.entries().cloned().collect();
    mixed.reverse();
    mixed.sort_by_key(|entry| entry.id.as_uuid().as_u128() % 2);
    let mixed: Book = mixed.into_iter().collect();
    let folded = fold(&forth);
    let say = |flock: &Flock| duties(flock, now, &flock.settings);
    let said = say(&folded);
    if said == say(&fold(&back)) && said == say(&fold(&mixed)) {
        return Ok(folded);
    }
    Err(Broken { law: "two books make the same either way", told: format!("{said:?}") })
}

pub(in crate::nights) fn what_was_learned_is_what_is_folded(book: &Book, learned: &Flock) -> Kept {
    judges(Law::Learned);
    if fold(book) == *learned {
        return Ok(());
    }
    broken("what was learned is what is folded", format!("{learned:?}"))
}
