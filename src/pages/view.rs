//! All that a page is made from: the flock, the hour, and what this phone says of itself.

use std::cell::OnceCell;
use std::ops::Deref;
use std::sync::Arc;

use chrono::{NaiveDate, NaiveDateTime, NaiveTime};
use yeanling_core::book::{Book, DeviceId, EntryId, Event};
use yeanling_core::flock::Flock;
use yeanling_core::seasons::LambingForecasts;
use yeanling_core::settings::FarmSettings;
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{self, Duty, Rejection};

use crate::Screen;
use crate::draft::Noting;
use crate::everyone::Everyone;
use crate::phone::{Outgoing, Phone, Region, Way};

/// What a page reads and a press is judged by.
#[derive(Debug)]
pub struct View<'a> {
    /// What was noted in the book that is looked at.
    pub book: &'a Book,
    /// What it makes.
    pub flock: &'a Flock,
    /// What was noted in this phone's own book, also while the sample flock is looked round in.
    pub own_book: &'a Book,
    /// What that makes.
    pub own_flock: &'a Flock,
    /// Now.
    pub now: Moment,
    /// The instant at which the page was drawn that is pressed now; of a page that is drawn, now.
    pub drawn: Moment,
    /// Returns the same instant as this phone's wall clock shows it.
    pub here: fn(Moment) -> Moment,
    /// Returns the instant at which this phone's wall clock shows this.
    pub at_local: fn(NaiveDateTime) -> Moment,
    /// Returns the id of an entry to be noted; only for a press, never for a page.
    pub new_id: fn() -> EntryId,
    /// This phone's id.
    pub device: DeviceId,
    /// How this phone's region writes.
    pub region: Region,
    /// The screen that one came from, with its name.
    pub from: (Screen, &'static str),
    /// Whether the sample flock is looked round in.
    pub sample: bool,
    /// What is due, the most urgent first, each instant as this phone's wall clock will show it.
    pub duties: Lazy<'a, Vec<Duty>>,
    /// When each ewe may lamb.
    pub lambing_forecasts: Lazy<'a, LambingForecasts>,
    /// All animals by all that they are found by.
    pub everyone: Lazy<'a, Everyone>,
    /// Whether a hand is at work: what it did last is still offered to be undone, or was undone just now. As long as it is,
    /// what it sees keeps its place.
    pub still: Lazy<'a, bool>,
    /// Whether the screen has room for a list beside an animal.
    pub wide: Lazy<'a, bool>,
    /// What this phone says of itself.
    pub phone: Lazy<'a, Phone>,
    /// This phone's own book as it goes out; none while nothing is noted in it.
    pub outgoing: Lazy<'a, Option<Outgoing>>,
}

/// What is worked out once for all screens, and only when a page asks for it.
pub struct Lazy<'a, T> {
    got: OnceCell<Arc<T>>,
    get: &'a dyn Fn() -> Arc<T>,
}

impl<'a, T> Lazy<'a, T> {
    /// Returns what `get` will give.
    pub fn new(get: &'a dyn Fn() -> Arc<T>) -> Self {
        Self { got: OnceCell::new(), get }
    }
}

impl<T> Deref for Lazy<'_, T> {
    type Target = T;

    fn deref(&self) -> &T {
        self.got.get_or_init(self.get)
    }
}

impl<T> std::fmt::Debug for Lazy<'_, T> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Lazy")
    }
}

impl View<'_> {
    /// Returns what the farm has chosen.
    #[must_use]
    pub const fn settings(&self) -> &FarmSettings {
        &self.flock.settings
    }

    /// Returns the units people read and type.
    #[must_use]
    pub const fn system(&self) -> System {
        self.flock.settings.system
    }

    /// Returns how times and dates are written.
    #[must_use]
    pub const fn way(&self) -> Way {
        self.region.way(self.flock.settings.clock, self.flock.settings.system)
    }

    /// Returns a fact that happens now, to be noted.
    #[must_use]
    pub fn noting(&self, event: Event) -> Noting {
        self.noting_at(event, self.now)
    }

    /// Returns a fact that happened at `at`, to be noted.
    #[must_use]
    pub fn noting_at(&self, event: Event, at: Moment) -> Noting {
        Noting { id: (self.new_id)(), event, at }
    }

    /// Returns when something is noted of which the day alone is known: now if that is today, else its morning, and of a day to
    /// come its morning too, which the gate refuses.
    #[must_use]
    pub fn on_day(&self, day: NaiveDate) -> Moment {
        let eight = NaiveTime::from_hms_opt(8, 0, 0).unwrap_or_default();
        if day == self.now.local().date() { self.now } else { (self.at_local)(day.and_time(eight)) }
    }

    /// Says whether facts may be noted one after the other.
    ///
    /// # Errors
    /// The reason of the first that may not.
    pub fn validate(&self, notings: &[Noting]) -> Result<(), Rejection> {
        self.allow_each(notings).map_err(|(_, rejection)| rejection)
    }

    /// Says whether facts may be noted one after the other.
    ///
    /// # Errors
    /// The place of the first that may not, and the reason.
    pub fn allow_each(&self, notings: &[Noting]) -> Result<(), (usize, Rejection)> {
        let facts = notings.iter().map(|noting| (noting.id, &noting.event, noting.at));
        watch::validate_all(self.flock, self.book, facts, self.device, self.now)
    }

    /// Returns the instant at which the wall clock that shows `moment` as it was noted shows `local`: this phone's own, if
    /// that agrees with it there and then, else one at the same offset.
    #[must_use]
    pub fn at_local_beside(&self, local: NaiveDateTime, moment: Moment) -> Moment {
        if (self.here)(moment).offset_minutes() == moment.offset_minutes() {
            (self.at_local)(local)
        } else {
            Moment::from_local(local, moment.offset_minutes())
        }
    }

    /// Returns the way back: the screen one came from, or the Watch where that is this one.
    #[must_use]
    pub fn back(&self, here: Screen) -> (Screen, String) {
        let (screen, name) = self.from;
        if screen == here {
            (Screen::Watch, yeanling_words::frame::WATCH.to_owned())
        } else {
            (screen, name.to_owned())
        }
    }
}
