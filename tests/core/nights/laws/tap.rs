//! Every duty can be done: what one tap notes passes the gate, and ends what was asked for.

use uuid::Uuid;
use yeanling_core::book::{Animal, Book, DeviceId, Entry, EntryId, Event};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Completion, Duty, duties, validate};

use super::{Kept, Law, Scene, broken, judges};

const ONCE: &str = "what was tapped is not asked again at once";

pub(in crate::nights) fn every_tap_passes_the_gate(
    flock: &Flock,
    book: &Book,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    for duty in duties {
        let Completion::Note(event) = &duty.completion else { continue };
        judges(Law::Tap);
        if let Err(refused) = validate(flock, book, event, now, now) {
            return broken("every tap passes the gate", format!("{:?}: {refused}", duty.task));
        }
    }
    Ok(())
}

pub(in crate::nights) fn what_was_tapped_is_not_asked_again_at_once(scene: &Scene<'_>) -> Kept {
    let ahead = scene.event.animals().any(|animal| ahead(scene.flock, animal, scene.now));
    if !scene.pressed || again(scene.event) || ahead {
        return Ok(());
    }
    judges(Law::Once);
    let asks = |duty: &&Duty| duty.completion == Completion::Note(scene.event.clone());
    match scene.after.iter().find(asks) {
        Some(duty) => broken(ONCE, format!("{:?} after {:?}", duty.task, scene.event)),
        None => Ok(()),
    }
}

/// Taps each duty for itself and looks whether it is still asked.
pub(in crate::nights) fn every_tap_does_what_it_says(
    flock: &Flock,
    book: &Book,
    now: Moment,
    said: &[Duty],
) -> Kept {
    for duty in said {
        let Completion::Note(event) = &duty.completion else { continue };
        if again(event) || ahead(flock, duty.subject(), now) {
            continue;
        }
        let entry = Entry {
            id: EntryId::from_uuid(Uuid::from_u128(0xffff)),
            device: DeviceId::from_uuid(Uuid::from_u128(1)),
            noted: book.next_noted(now),
            at: now,
            event: event.clone(),
        };
        let mut then = flock.clone();
        if !then.apply(&entry) {
            then = yeanling_core::flock::fold(&book.with([entry]).0);
        }
        let left = duties(&then, now, &then.settings);
        let asks = |other: &&Duty| other.subject() == duty.subject() && other.completion == duty.completion;
        if let Some(left) = left.iter().find(asks) {
            return broken(ONCE, format!("{:?} after {event:?}", left.task));
        }
    }
    Ok(())
}

/// Says whether something of the animal was noted by a clock that is ahead of this one: a tap comes before it, and the
/// phone says that its clock is behind.
fn ahead(flock: &Flock, animal: Animal, now: Moment) -> bool {
    flock.lines_of(animal).any(|line| line.at > now)
}

/// A feed is followed by the next feed, a first dip by the second, a look by the next.
const fn again(event: &Event) -> bool {
    matches!(event, Event::Fed { .. } | Event::NavelDipped { .. } | Event::LookedAt { .. })
}
