//! What a page reads of the farm: the ground, the hour, and what this phone says of itself.
//!
//! When each ewe may lamb is one memo of the farm (`View::lambing_forecasts`): the Watch, the season, her group and her
//! own screen read the same; what the season makes of it is worked out when the season is opened.

use std::sync::Arc;

use yeanling_core::units::Moment;
use yeanling_pages::phone::{Phone, Saving, Way};
use yeanling_pages::{Lazy, Screen, View};

use leptos::prelude::*;

use super::{Farm, Records, here};
use crate::browser::{id, now, region};

impl Farm {
    /// Reads all that a page is made from, at `now`; `from` is the screen that one came from. What it reads it follows.
    pub fn view<T>(self, now: Moment, from: (Screen, &'static str), read: impl FnOnce(&View) -> T) -> T {
        let (duties, lambing_forecasts) = (move || self.duties.get(), move || self.lambing_forecasts.get());
        let (everyone, phone) = (move || self.everyone.get(), move || Arc::new(self.phone(now)));
        let outgoing = move || self.outgoing.get();
        let sample = self.is_sample();
        let wide = move || Arc::new(self.wide.get());
        let still = move || Arc::new(self.holds_still());
        let read = |records: &Records, own: &Records| {
            read(&View {
                book: &records.book,
                flock: &records.flock,
                own_book: &own.book,
                own_flock: &own.flock,
                now,
                drawn: self.clock.get(),
                here,
                at_local: now::at_local,
                new_id: || id::new_entry(now::now()),
                device: self.device,
                region: self.region,
                from,
                sample,
                duties: Lazy::new(&duties),
                lambing_forecasts: Lazy::new(&lambing_forecasts),
                everyone: Lazy::new(&everyone),
                still: Lazy::new(&still),
                wide: Lazy::new(&wide),
                phone: Lazy::new(&phone),
                outgoing: Lazy::new(&outgoing),
            })
        };
        self.with(|records| self.with_own(|own| read(records, own)))
    }

    /// Returns what this phone says of itself.
    fn phone(self, now: Moment) -> Phone {
        Phone {
            look: self.look(),
            region_us: region::is_us(),
            offline: self.offline(),
            saving: self.saving(),
            update: self.update_waits(),
            broken: self.broken(),
            lost_lines: self.lost_lines(),
            unsent: self.unsent.get(),
            behind: self.clock_is_behind(now),
            missed: self.missed(now),
            missed_stood: self.missed_stood(),
            can_share: self.can_share(),
            sent: self.sent(),
            saved_here: self.saved_here(),
            promised: self.promise.get(),
            room: self.room_left.get(),
            own_book: self.with_own(|records| !records.book.is_empty()),
            night: self.night().seen(),
            cold_lamb: self.cold_lamb(),
            tables: self.tables(),
            half_typed: self.half_typed.get(),
        }
    }

    /// Returns the farm's name and whether everything is saved.
    #[must_use]
    pub fn top(self) -> yeanling_pages::Top {
        let saving: Saving = self.saving();
        let way = self.way();
        self.with(|records| yeanling_pages::top(&records.flock.settings.farm_name, &saving, way))
    }

    /// Returns how times and dates are written here.
    #[must_use]
    pub fn way(self) -> Way {
        self.with(|records| self.region.way(records.flock.settings.clock, records.flock.settings.system))
    }
}
