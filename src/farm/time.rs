//! The phone's clock: kept, doubted where the book knows better, and asked what was missed while no one looked.
//!
//! A duty's instants come from `Farm::duties` as this phone's wall clock will show them, so that "03:40" is right
//! after a change of clocks; what was noted keeps the clock it was lived at.
//!
//! The clock beats once a minute and with every entry; nothing on screen shows seconds.

use std::cell::Cell;

use leptos::prelude::*;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, State};

use super::Farm;
use crate::browser::{badge, navigation, now, press, sound};

/// Returns the same instant as this phone's wall clock shows it: what was noted keeps the clock it was lived at, what
/// is to come is told by the clock that hangs there then.
#[must_use]
pub fn here(at: Moment) -> Moment {
    now::here(at)
}

impl Farm {
    /// Keeps the clock: looked at every second and on every return from a pocket, moved when another minute begins and
    /// when the alarm's next instant has come.
    ///
    /// Nothing on screen shows seconds, so nothing is worked out more often; an entry moves it at once.
    pub(super) fn keep_time(self) {
        let tick = move || {
            let (now, before) = (now::now(), self.clock.get_untracked());
            let minute = |moment: Moment| moment.as_unix_milliseconds().div_euclid(60_000);
            if minute(now) != minute(before) || self.alarm_comes(before, now) {
                press::ground_moves();
                self.clock.set(now);
            }
        };
        // Without a timer the clock still moves on every return and every entry.
        let every_second = move || {
            tick();
            sound::beat();
        };
        let _ = set_interval_with_handle(every_second, std::time::Duration::from_secs(1));
        let away = Cell::new(false);
        navigation::on_return(move |seen| {
            if !seen {
                away.set(true);
                return;
            }
            tick();
            self.seen_again();
            if away.replace(false) {
                self.returned_at.set(Some(now::now()));
            }
        });
    }

    /// Returns when something was noted that this phone's clock has not reached yet; nothing while the two agree.
    #[must_use]
    pub fn clock_is_behind(self, now: Moment) -> Option<Moment> {
        self.with(|records| records.book.doubts(now, self.device))
    }

    /// Returns what was late when someone came back to the page, until it is done or read.
    #[must_use]
    pub fn missed(self, now: Moment) -> Vec<Duty> {
        let Some(back) = self.returned_at.get() else { return Vec::new() };
        let late = |duty: &&Duty| duty.state(back) >= State::Late && duty.state(now) >= State::Late;
        self.with_duties(|_, duties| duties.iter().filter(late).cloned().collect())
    }

    /// A hand begins its work, unless it is at it: what is told as missed now keeps its room.
    pub(super) fn keep_missed(self) {
        untrack(|| {
            if !self.holds_still() {
                self.missed_stood.set(self.missed(self.now()));
            }
        });
    }

    /// Returns what was told as missed when the hand that is at work began; nothing once it was read.
    #[must_use]
    pub fn missed_stood(self) -> Vec<Duty> {
        if self.holds_still() && self.tells_of_missed() { self.missed_stood.get() } else { Vec::new() }
    }

    /// Says whether what was missed is still told of: nobody has said that it was read.
    #[must_use]
    pub fn tells_of_missed(self) -> bool {
        self.returned_at.with(Option::is_some)
    }

    /// Lets what was missed go once it was read.
    pub fn let_missed_go(self) {
        self.returned_at.set(None);
    }

    /// Tells outside the page how much is late or due; of the sample flock nothing.
    pub fn show_count(self, title: &str) {
        let now = self.now();
        let due =
            self.with_duties(|_, due| due.iter().filter(|duty| duty.state(now) > State::Coming).count());
        let due = if self.is_sample() { 0 } else { due };
        badge::show(title, u16::try_from(due).unwrap_or(u16::MAX));
    }
}
