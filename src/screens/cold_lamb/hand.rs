//! Where the answers go: into the book for a lamb with a record, else onto this phone.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Care, Event, GlucoseBy, LambId, Way};
use yeanling_core::flock::{Reading, VetCall};
use yeanling_core::units::{Mass, Moment, Temperature, Volume};
use yeanling_core::watch::next_milk;

use super::case::{Able, Age, Case};
use super::draft;
use crate::farm::Farm;
use crate::words::refusals;

/// The lamb in hand.
#[derive(Clone, Copy)]
pub(super) struct Hand {
    pub(super) farm: Farm,
    /// Which lamb; none without a record.
    pub(super) lamb: Option<LambId>,
    draft: RwSignal<Case>,
    unsure: RwSignal<Option<Moment>>,
    asks: RwSignal<Asks>,
}

/// What is asked on a sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Asks {
    /// Nothing.
    #[default]
    Nothing,
    /// What the vet said.
    Vet,
    /// What a finger in its mouth felt.
    Mouth,
}

impl Hand {
    pub(super) fn new(farm: Farm, lamb: Option<LambId>) -> Self {
        let draft = if lamb.is_none() { draft::read(&farm.cold_lamb()) } else { Case::default() };
        Self {
            farm,
            lamb,
            draft: RwSignal::new(draft),
            unsure: RwSignal::new(None),
            asks: RwSignal::new(Asks::default()),
        }
    }

    /// Returns what is known; nothing once the lamb is gone from the book.
    pub(super) fn case(self) -> Option<Case> {
        let Some(id) = self.lamb else { return Some(self.draft.get()) };
        let (now, unsure) = (self.farm.now(), self.unsure.get());
        self.farm.with(|ground| ground.flock.lamb(id).map(|lamb| Case::of_lamb(lamb, unsure, now)))
    }

    fn change(self, change: impl FnOnce(&mut Case)) {
        self.draft.update(change);
        self.farm.keep_cold_lamb(&self.draft.with_untracked(draft::write));
    }

    /// Takes a reading in, or says why not.
    pub(super) fn read(self, temperature: Temperature) -> Result<(), String> {
        let now = self.farm.peek_now();
        match self.lamb {
            Some(lamb) => match self.farm.note(Event::TemperatureTaken { lamb, temperature }) {
                Ok(_) => Ok(()),
                Err(refusal) => Err(refusals::refusal(&refusal, now, untrack(|| self.farm.system()))),
            },
            None => {
                self.change(|case| draft::take(case, Reading { at: now, temperature }));
                Ok(())
            }
        }
    }

    pub(super) fn age(self, age: Age) {
        self.change(|case| case.age = age);
    }

    /// Takes the answer about head and swallow; "not sure" is no fact, so it is not noted.
    pub(super) fn able(self, able: Able) {
        match (self.lamb, able) {
            (None, able) => self.change(|case| case.able = able),
            (Some(lamb), Able::Yes | Able::No) => {
                self.farm.tap(Event::SwallowTried { lamb, able: able == Able::Yes });
            }
            (Some(lamb), Able::Ask | Able::NotSure) => {
                let last = |lamb: &yeanling_core::flock::Lamb| lamb.temperatures.last().map(|last| last.at);
                self.unsure.set(self.farm.peek(|ground| ground.flock.lamb(lamb).and_then(last)));
            }
        }
    }

    pub(super) fn warmed(self) {
        let now = self.farm.peek_now();
        match self.lamb {
            Some(lamb) => {
                self.farm.tap(Event::Warmed { lamb });
            }
            None => self.change(|case| case.warmed = Some(now)),
        }
    }

    /// Notes that it was given glucose.
    pub(super) fn glucose(self, by: GlucoseBy) {
        let now = self.farm.peek_now();
        match self.lamb {
            Some(lamb) => {
                self.farm.tap(Event::Care(Care::GlucoseGiven { lamb, by }));
            }
            None => self.change(|case| case.glucose = Some((now, by))),
        }
    }

    /// Opens a sheet, or closes it.
    pub(super) fn ask(self, asks: Asks) {
        self.asks.set(asks);
    }

    /// Returns the sheet that lies open.
    pub(super) fn asks(self) -> Asks {
        self.asks.get()
    }

    pub(super) fn vet_called(self) {
        let now = self.farm.peek_now();
        match self.lamb {
            Some(lamb) => {
                self.farm.tap(Event::VetCalled { animal: Animal::Lamb(lamb) });
            }
            None => self.change(|case| case.vet = Some(VetCall { at: now, said: None })),
        }
    }

    /// Notes a feed by bottle, of the milk that comes next.
    pub(super) fn fed(self, volume: Volume) {
        let Some(id) = self.lamb else { return };
        let now = self.farm.peek_now();
        let milk = self.farm.peek(|ground| {
            let flock = &ground.flock;
            flock.lamb(id).map(|lamb| next_milk(lamb, now, &flock.practice))
        });
        if let Some(milk) = milk {
            self.farm.tap(Event::Fed { lamb: id, volume, milk, way: Way::Bottle });
        }
    }

    /// Keeps the weight of a lamb without a record.
    pub(super) fn weight(self, weight: Option<Mass>) {
        self.change(|case| case.weight = weight);
    }

    /// Forgets everything that was answered without a record.
    pub(super) fn start_over(self) {
        self.change(|case| *case = Case::default());
    }
}
