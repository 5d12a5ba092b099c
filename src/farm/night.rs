//! The night watch of this phone: the screen held awake, the alarm armed, and what it rings for.
//!
//! It rings for what becomes due, and again for what becomes late, once each; what was due when the night's screen
//! opened stands on it and does not ring, nor does what can wait for the next round.
//!
//! The alarm belongs to the Night screen. No web page rings with the phone locked, so nothing else pretends to: the
//! screen says so, and hands the alarms to the phone's calendar. What is due when it opens does not ring, it stands
//! there.

pub use yeanling_pages::phone::Alarm;
use yeanling_pages::phone::{self, Told};

use leptos::prelude::*;
use yeanling_core::book::Animal;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, State};

use super::Farm;
use crate::browser::wake::{self, Awake};
use crate::browser::{now, sound, theme};

/// The night watch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Night {
    /// Whether the screen is held awake.
    pub awake: Awake,
    /// How the alarm stands.
    pub alarm: Alarm,
    /// What it rings for now.
    pub ringing: Vec<Told>,
    /// The animal it rang for last, until someone goes there.
    pub answered: Option<Animal>,
    known: Option<Vec<Told>>,
    next: Option<Moment>,
    shown: bool,
}

impl Night {
    /// Returns what of it is seen.
    #[must_use]
    pub fn seen(&self) -> phone::Night {
        let Self { awake, alarm, ringing, answered, .. } = self;
        phone::Night { awake: *awake, alarm: *alarm, ringing: ringing.clone(), answered: *answered }
    }
}

impl Farm {
    /// Returns how the night watch stands.
    #[must_use]
    pub fn night(self) -> Night {
        self.night.get()
    }

    /// Changes the night watch; what stays the same is not drawn anew.
    fn change_night(self, change: impl FnOnce(&mut Night)) {
        let before = self.night.get_untracked();
        let mut night = before.clone();
        change(&mut night);
        if night != before {
            self.night.set(night);
        }
    }

    /// Begins the night's screen: it is held awake, and the phone's bars go black.
    pub fn begin_night(self) {
        self.change_night(|night| {
            (night.shown, night.known, night.answered) = (true, None, None);
        });
        theme::black_bars(true);
        self.seen_again();
    }

    /// Ends the night's screen: it may sleep, and nothing rings. An armed alarm is so again on return.
    pub fn end_night(self) {
        self.change_night(|night| {
            night.shown = false;
            night.next = None;
            night.ringing.clear();
        });
        theme::black_bars(false);
        sound::quiet();
        wake::release();
    }

    /// Takes up again what the phone lets go of while the page is out of sight.
    pub(super) fn seen_again(self) {
        if self.night.with_untracked(|night| night.shown) {
            wake::hold(move |awake| self.change_night(|night| night.awake = awake));
            sound::waken();
        }
    }

    /// Arms the alarm and plays its test; only ever in a tap.
    pub fn arm(self) {
        let told = move |sounds| {
            self.change_night(|night| {
                night.alarm = match (night.alarm, sounds) {
                    (Alarm::Armed(at), true) => Alarm::Armed(at),
                    (Alarm::Off | Alarm::Mute | Alarm::Unable, true) => Alarm::Armed(now::now()),
                    (Alarm::Off | Alarm::Mute | Alarm::Unable | Alarm::Armed(_), false) => Alarm::Mute,
                };
            });
        };
        self.change_night(|night| night.alarm = Alarm::Mute);
        if sound::arm(told).is_err() {
            self.change_night(|night| night.alarm = Alarm::Unable);
        }
    }

    /// Disarms the alarm.
    pub fn disarm(self) {
        sound::disarm();
        self.change_night(|night| night.alarm = Alarm::Off);
    }

    /// Hears what is due at `now`, and rings for what has become so.
    pub fn update_alarm(self, duties: &[Duty], now: Moment) {
        let rings = |told: &Told| told.state > State::Coming && told.task.rings();
        let due: Vec<Told> = duties.iter().map(|duty| Told::of(duty, now)).filter(rings).collect();
        let ahead = |at: &Moment| at.since(now) > TimeDelta::zero();
        self.change_night(|night| {
            night.next = duties.iter().flat_map(|duty| [duty.comes(), duty.late]).filter(ahead).min();
            // What was done meanwhile, here or on another phone, need not be rung for any longer.
            night.ringing.retain(|rung| due.iter().any(|told| told.task.asks_the_same(rung.task)));
            if let (Some(known), Alarm::Armed(_) | Alarm::Mute) = (&night.known, night.alarm) {
                let is_fresh = |told: &&Told| !known.iter().any(|known| known.is(told));
                let fresh: Vec<Told> = due.iter().filter(is_fresh).copied().collect();
                // One that rang when it was due and is late by now rings as one.
                night.ringing.retain(|rung| !fresh.iter().any(|told| told.task.asks_the_same(rung.task)));
                night.ringing.extend(fresh);
            }
            night.known = Some(due);
        });
        if self.night.with_untracked(|night| night.ringing.is_empty()) {
            sound::quiet();
        } else {
            sound::ring();
        }
    }

    /// Answers the ring: it is quiet, and leads to the animal.
    pub fn answer(self) {
        sound::quiet();
        self.change_night(|night| {
            night.answered = night.ringing.first().map(|rung| rung.task.subject());
            night.ringing.clear();
        });
    }

    /// Says whether the alarm's next instant lies between two looks at the clock.
    pub(super) fn alarm_comes(self, before: Moment, now: Moment) -> bool {
        let next = self.night.with_untracked(|night| night.next);
        next.is_some_and(|next| {
            before.since(next) < TimeDelta::zero() && now.since(next) >= TimeDelta::zero()
        })
    }
}
