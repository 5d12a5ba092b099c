//! The one live cell: the book, the flock it makes, and the clock. [`Farm::note`] is the only door that changes anything.
//!
//! A sample flock can stand in front of the real one; what is noted in it is never kept.

mod effects;
mod night;
mod phone;
mod saving;
mod share;
mod time;
mod view;

use leptos::prelude::*;
use std::collections::BTreeMap;
use std::sync::Arc;

use yeanling_core::book::{Book, DeviceId, Entry, EntryId, Event, LambId};
use yeanling_core::flock::{Flock, fold_in};
use yeanling_core::seasons::{LambingForecasts, lambing_forecasts};
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{self, Duty, Rejection};

pub use crate::browser::storage::Promised;
pub use crate::browser::theme::Look;
pub use crate::browser::worker::Offline;
pub use night::Night;
pub use saving::Saving;
pub use share::Outgoing;
pub use time::here;
use yeanling_pages::Last;

use crate::browser::local_storage::Broken;
use crate::browser::persistence::Keeper;
use crate::browser::worker;
use crate::browser::{draft, id, local_storage, navigation, now, press, region, storage, theme, width};
use saving::PendingWrites;
use yeanling_pages::everyone::Everyone;
use yeanling_pages::phone::{HalfTyped, Region, Unsent};
use yeanling_pages::sample;

/// A book and the flock it makes.
#[derive(Clone, Debug, Default)]
pub struct Records {
    /// What was noted.
    pub book: Book,
    /// What is.
    pub flock: Flock,
    /// In which units people read and type until the farm has chosen.
    units: System,
}

/// The farm. Cheap to copy; given to every screen.
#[derive(Clone, Copy, Debug)]
pub struct Farm {
    real: RwSignal<Records>,
    sample: RwSignal<Option<Records>>,
    clock: RwSignal<Moment>,
    duties: Memo<Arc<Vec<Duty>>>,
    lambing_forecasts: Memo<Arc<LambingForecasts>>,
    everyone: Memo<Arc<Everyone>>,
    outgoing: Memo<Arc<Option<Outgoing>>>,
    unsent: Memo<Option<Unsent>>,
    promise: RwSignal<Option<Promised>>,
    room_left: RwSignal<Option<(f64, f64)>>,
    saving: RwSignal<Saving>,
    offline: RwSignal<Offline>,
    update: RwSignal<bool>,
    broken: RwSignal<Vec<Broken>>,
    last: RwSignal<Last>,
    still: RwSignal<Option<Moment>>,
    refused: RwSignal<Option<Rejection>>,
    look: RwSignal<Look>,
    sent: RwSignal<Option<Moment>>,
    saved_here: RwSignal<Option<Moment>>,
    returned_at: RwSignal<Option<Moment>>,
    cold_lamb: RwSignal<String>,
    tables: RwSignal<String>,
    half_typed: RwSignal<BTreeMap<LambId, HalfTyped>>,
    wide: RwSignal<bool>,
    missed_stood: RwSignal<Vec<Duty>>,
    night: RwSignal<Night>,
    keeper: StoredValue<Keeper, LocalStorage>,
    pending_writes: StoredValue<PendingWrites>,
    device: DeviceId,
    region: Region,
}

impl Farm {
    /// Opens the farm: paints from local storage, then joins IndexedDB, the clock, other tabs and the worker.
    #[must_use]
    pub fn open() -> Self {
        let (held, region) = (local_storage::load(), region::region());
        let real = RwSignal::new(Records::from_book(held.entries.into_iter().collect(), region.units));
        let (sample, clock) = (RwSignal::new(None), RwSignal::new(now::now()));
        let (sent, device) = (RwSignal::new(storage::sent()), id::device(now::now()));
        let farm = Self {
            real,
            sample,
            clock,
            duties: Memo::new(move |_| {
                Arc::new(with_ground(real, sample, |records| due(records, clock.get())))
            }),
            lambing_forecasts: Memo::new(move |_| {
                Arc::new(with_ground(real, sample, |records| lambing_forecasts(&records.flock, clock.get())))
            }),
            everyone: Memo::new(move |_| {
                Arc::new(with_ground(real, sample, |records| Everyone::of(&records.flock)))
            }),
            outgoing: Memo::new(move |_| Arc::new(real.with(|records| share::written(records, device)))),
            unsent: share::unsent_memo(real, sample, clock, sent, device),
            promise: RwSignal::new(None),
            room_left: RwSignal::new(None),
            saving: RwSignal::new(Saving::Opening),
            offline: RwSignal::new(Offline::Preparing),
            update: RwSignal::new(false),
            broken: RwSignal::new(held.broken),
            last: RwSignal::new(Last::Nothing),
            still: RwSignal::new(None),
            refused: RwSignal::new(None),
            look: RwSignal::new(theme::load()),
            sent,
            saved_here: RwSignal::new(storage::saved_here()),
            returned_at: RwSignal::new(None),
            cold_lamb: RwSignal::new(draft::cold_lamb()),
            tables: RwSignal::new(draft::tables()),
            half_typed: RwSignal::new(HalfTyped::read(&draft::half_typed())),
            wide: RwSignal::new(width::is_wide()),
            missed_stood: RwSignal::new(Vec::new()),
            night: RwSignal::new(Night::default()),
            keeper: StoredValue::new_local(Keeper::default()),
            pending_writes: StoredValue::new(PendingWrites::default()),
            device,
            region,
        };
        farm.join_base();
        farm.keep_time();
        local_storage::on_other_tab(move |entries| {
            press::ground_moves();
            farm.real.update(|records| records.take(entries));
            farm.clock.set(now::now());
        });
        local_storage::on_erased(navigation::start_anew);
        draft::on_other_tab(move |kept| farm.cold_lamb.set(kept));
        width::on_resize(move |wide| {
            if farm.wide.get_untracked() != wide {
                farm.wide.set(wide);
            }
        });
        worker::register(move |offline| farm.offline.set(offline), move || farm.update.set(true));
        farm
    }

    /// Reads the ground: the sample flock while it is looked round in, else the real one.
    pub fn with<T>(self, read: impl FnOnce(&Records) -> T) -> T {
        with_ground(self.real, self.sample, read)
    }

    /// Reads this phone's own ground, also while the sample flock is looked round in.
    pub fn with_own<T>(self, read: impl FnOnce(&Records) -> T) -> T {
        self.real.with(read)
    }

    /// Reads the ground without following it.
    pub fn peek<T>(self, read: impl FnOnce(&Records) -> T) -> T {
        untrack(|| self.with(read))
    }

    /// Returns the units people read and type.
    #[must_use]
    pub fn system(self) -> System {
        self.with(|records| records.flock.settings.system)
    }

    /// Returns now as a signal that moves every minute and with every entry.
    #[must_use]
    pub fn now(self) -> Moment {
        self.clock.get()
    }

    /// Returns now without following it.
    #[must_use]
    pub fn peek_now(self) -> Moment {
        now::now()
    }

    /// Reads the ground and what is due at [`Farm::now`], the most urgent first, each instant as this phone's wall clock
    /// will show it.
    pub fn with_duties<T>(self, read: impl FnOnce(&Records, &[Duty]) -> T) -> T {
        self.with(|records| self.duties.with(|duties| read(records, duties)))
    }

    /// Says how far the app is from working with no signal.
    #[must_use]
    pub fn offline(self) -> Offline {
        self.offline.get()
    }

    /// Says whether another version of the app waits.
    #[must_use]
    pub fn update_waits(self) -> bool {
        self.update.get()
    }

    /// Lets the waiting version take over.
    pub fn take_update(self) {
        worker::take_update();
    }

    /// Returns what was done last in this visit, until it is let go.
    #[must_use]
    pub fn last(self) -> Last {
        self.last.get()
    }

    /// Lets the offer to undo it go: it stays done.
    pub fn let_offer_go(self) {
        if self.last.with_untracked(|last| *last != Last::Nothing) {
            self.last.set(Last::Nothing);
        }
    }

    /// Lets the offer go, and what kept its place may move.
    pub fn let_last_go(self) {
        self.let_offer_go();
        self.move_on();
    }

    /// Says, as a signal, whether what stands on a screen keeps its place: a hand was at work there a moment ago.
    #[must_use]
    pub fn holds_still(self) -> bool {
        self.still.with(Option::is_some)
    }

    /// Returns, as a signal, when a hand was at work last, as long as what it saw keeps its place.
    #[must_use]
    pub fn still_since(self) -> Option<Moment> {
        self.still.get()
    }

    /// What kept its place may move.
    pub fn move_on(self) {
        if self.still.with_untracked(Option::is_some) {
            press::ground_moves();
            self.still.set(None);
        }
    }

    /// Undoes what was done last, all of it.
    pub fn undo(self) {
        let last = self.last.get_untracked();
        let (entries, events) = match last {
            Last::Nothing | Last::Undone(_) => return,
            Last::Noted(entries) => {
                let events = entries.iter().map(|entry| Event::Deleted { entry: *entry }).collect();
                (entries, events)
            }
            Last::TakenBack(entry) => (vec![entry], vec![Event::Restored { entry }]),
            Last::Changed { entry, event, at } => (vec![entry], vec![Event::Amended { entry, event, at }]),
        };
        // Nothing can be wrong with undoing what was just done; were it so, the offer simply stays.
        if self.note_events(events) {
            self.last.set(Last::Undone(entries));
            self.still.set(Some(self.peek_now()));
        }
    }

    /// Returns what the noting of a fact leaves to be undone.
    fn last_of(self, id: EntryId, event: &Event) -> Last {
        if let Event::Deleted { entry } = event {
            Last::TakenBack(*entry)
        } else if let Event::Amended { entry, .. } = event {
            self.peek(|records| {
                let line = records.flock.lines.iter().rev().find(|line| line.entry == *entry);
                line.map_or(Last::Nothing, |line| Last::Changed {
                    entry: *entry,
                    event: Box::new(line.event.clone()),
                    at: line.at,
                })
            })
        } else if event.corrects().is_some() {
            Last::Nothing
        } else {
            Last::Noted(vec![id])
        }
    }

    /// Takes entries that were checked, in one piece, into the flock that is looked at.
    fn take(self, entries: Vec<Entry>, now: Moment, last: Last) {
        press::ground_moves();
        self.keep_missed();
        if self.looks_round() {
            self.sample.update(|records| {
                if let Some(records) = records {
                    records.take(entries);
                }
            });
        } else {
            // The disk first: what breaks while it is drawn is lost to no one.
            let keeping = self.begin_keeping(entries.clone());
            self.real.update(|records| records.take(entries));
            self.go_on_keeping(keeping);
        }
        self.clock.set(now);
        self.still.set((last != Last::Nothing).then_some(now));
        self.last.set(last);
    }

    /// Returns the refusal that has not been read yet.
    #[must_use]
    pub fn refused(self) -> Option<Rejection> {
        self.refused.get()
    }

    /// Lets the refusal go once it was read.
    pub fn let_refusal_go(self) {
        self.refused.set(None);
    }

    /// Says whether the sample flock is being looked round in.
    #[must_use]
    pub fn looks_round(self) -> bool {
        self.sample.with_untracked(Option::is_some)
    }

    /// Says, as a signal, whether the sample flock is being looked round in.
    #[must_use]
    pub fn is_sample(self) -> bool {
        self.sample.with(Option::is_some)
    }

    /// Puts the sample flock in front of the real one.
    pub fn look_round(self) {
        self.let_last_go();
        let units = self.peek(|records| records.flock.settings.system);
        self.sample.set(Some(Records::from_book(sample::book(now::now(), units), units)));
    }

    /// Returns to the real flock; the made-up one is forgotten.
    pub fn stop_looking_round(self) {
        self.let_last_go();
        self.sample.set(None);
    }
}

/// More entries than this are folded anew at once (ours).
const MANY: usize = 200;

impl Records {
    fn from_book(book: Book, units: System) -> Self {
        let flock = fold_in(&book, units);
        Self { book, flock, units }
    }

    /// Takes entries in. What comes after all that is known is told to the flock as it stands; else it is folded anew.
    fn take(&mut self, entries: Vec<Entry>) {
        // A table brings thousands: to fold once is quicker than to find the place of each.
        let mut learned = entries.len() <= MANY;
        for entry in entries {
            let news = self.book.entry(entry.id).is_none();
            learned = learned && (!news || self.flock.apply(&entry));
            self.book.add(entry);
        }
        if !learned {
            self.flock = fold_in(&self.book, self.units);
        }
        debug_assert_eq!(
            self.flock,
            fold_in(&self.book, self.units),
            "what the flock learned is what the book says"
        );
    }
}

fn with_ground<T>(
    real: RwSignal<Records>,
    sample: RwSignal<Option<Records>>,
    read: impl FnOnce(&Records) -> T,
) -> T {
    if sample.with(Option::is_some) {
        sample.with(|records| read(records.as_ref().unwrap_or(&Records::default())))
    } else {
        real.with(read)
    }
}

fn due(records: &Records, now: Moment) -> Vec<Duty> {
    let mut duties = watch::duties(&records.flock, now, &records.flock.settings);
    for duty in &mut duties {
        for at in [&mut duty.from, &mut duty.due, &mut duty.late].into_iter().chain(&mut duty.put_off) {
            *at = now::here(*at);
        }
    }
    duties
}
