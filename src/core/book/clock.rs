//! The clock of the book: when an entry counts as noted, and when a phone's own clock is to be doubted.
//!
//! It is a hybrid logical clock: a phone with a wrong clock cannot reorder what another has noted. What lies far ahead of
//! the phone's own clock is another matter: it was noted while a clock stood wrong, and pulls nothing along with it.
//!
//! An entry more than two days ahead of all clocks pulls none of them along; the preview asks about it first.

use super::{Book, DeviceId, Entry, Event};
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// How far ahead of a phone's clock an entry may lie and still move it (ours): two phones that differ by a day and a time
/// zone still keep one order; a clock that stood a month or a century ahead pins no other.
pub const SLACK: TimeDelta = TimeDelta::days(2);

/// How far an entry may be ahead of a phone's clock before that is told: two phones are seldom closer (ours).
pub const AHEAD: TimeDelta = TimeDelta::minutes(2);

impl Book {
    /// Returns when an entry written at `now` counts as noted: never behind anything already seen within [`SLACK`].
    #[must_use]
    pub fn next_noted(&self, now: Moment) -> Moment {
        after(self.latest_near(now), now)
    }

    /// Returns when a fact written at `now` counts as noted. Of corrections to one entry and of the farm's choices the one
    /// noted last stands, so these come after all that they vie with, however far ahead that lies.
    #[must_use]
    pub fn next_noted_of(&self, event: &Event, now: Moment) -> Moment {
        let next = self.next_noted(now);
        if self.latest.is_none_or(|latest| latest < next) {
            return next;
        }
        let vie = self.entries().filter(|entry| vies(event, entry)).map(|entry| entry.noted);
        after(vie.max().max(self.latest_near(now)), now)
    }

    /// Returns what was noted that a clock showing `now` has not reached yet, if that makes this phone's clock doubtful:
    /// something up to [`SLACK`] ahead, or most of what this phone itself noted.
    ///
    /// A few entries far ahead do not: then it was the clock that they were noted by that stood wrong.
    #[must_use]
    pub fn doubts(&self, now: Moment, device: DeviceId) -> Option<Moment> {
        let latest = self.latest?;
        if latest.since(now) <= AHEAD {
            return None;
        }
        let near = self.latest_near(now).filter(|near| near.since(now) > AHEAD);
        near.or_else(|| self.own_ahead(now, device))
    }

    /// The last but half of what this phone noted, if that lies far ahead of its clock.
    fn own_ahead(&self, now: Moment, device: DeviceId) -> Option<Moment> {
        let own = self.entries().filter(|entry| entry.device == device && entry.event.corrects().is_none());
        let mut own: Vec<Moment> = own.map(|entry| entry.noted).collect();
        own.sort_small();
        let median = own.get(own.len().saturating_sub(1) / 2)?;
        (median.since(now) > SLACK).then_some(*median)
    }

    /// The last that was noted up to [`SLACK`] after `now`. Only a book with something far ahead in it is gone through.
    fn latest_near(&self, now: Moment) -> Option<Moment> {
        let near = |noted: &Moment| noted.since(now) <= SLACK;
        self.latest
            .filter(near)
            .or_else(|| self.latest.and_then(|_| self.entries().map(|entry| entry.noted).filter(near).max()))
    }
}

impl Entry {
    /// Returns the instant in an entry that a clock showing `now` is furthest from reaching, when it was noted or when it
    /// happened; none if both are past or only just ahead.
    #[must_use]
    pub fn ahead_of(&self, now: Moment) -> Option<Moment> {
        let at = if let Event::Amended { at, .. } = self.event { self.at.max(at) } else { self.at };
        Some(self.noted.max(at)).filter(|latest| latest.since(now) > AHEAD)
    }
}

/// The later of `now` and just after `latest`.
fn after(latest: Option<Moment>, now: Moment) -> Moment {
    match latest {
        Some(latest) if latest >= now => {
            Moment::from_unix_milliseconds(latest.as_unix_milliseconds() + 1, now.offset_minutes())
        }
        Some(_) | None => now,
    }
}

/// Says whether of a fact and an entry only the one noted last stands, or the fact corrects the entry.
fn vies(event: &Event, entry: &Entry) -> bool {
    // What an entry was amended to say vies as if it had said so itself.
    let amended = if let Event::Amended { event, .. } = &entry.event { &**event } else { &entry.event };
    let said = [&entry.event, amended];
    if let Some(target) = event.corrects() {
        return entry.id == target || said.iter().any(|said| said.corrects() == Some(target));
    }
    let chooses = |event: &Event| matches!(event, Event::Chose(_));
    chooses(event) && said.into_iter().any(chooses)
}
