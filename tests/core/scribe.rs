//! Writes books as a phone would: each entry with an id of its own, noted when it happened unless said otherwise.

use uuid::Uuid;
use yeanling_core::book::{
    Animal, Book, Cause, DeviceId, Entry, EntryId, Event, EweId, GroupId, LambId, LambingEase, Milk,
    VigorScale, Way,
};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::{Mass, Moment, TimeDelta, Volume};

/// The night in which these books begin.
pub(crate) fn night() -> Moment {
    "2026-02-25T03:00:00.000-05:00".parse().expect("a moment")
}

/// So many minutes into that night.
pub(crate) fn at(minutes: i64) -> Moment {
    night() + TimeDelta::minutes(minutes)
}

/// So many hours into that night.
pub(crate) fn hour(hours: i64) -> Moment {
    night() + TimeDelta::hours(hours)
}

pub(crate) const MS: TimeDelta = TimeDelta::milliseconds(1);

pub(crate) fn kg(kilograms: f64) -> Mass {
    Mass::from_kilograms(kilograms)
}

pub(crate) fn ml(milliliters: f64) -> Volume {
    Volume::from_milliliters(milliliters)
}

/// A phone and its book.
#[derive(Clone)]
pub(crate) struct Scribe {
    pub(crate) book: Book,
    device: u128,
    count: u128,
}

impl Scribe {
    pub(crate) fn new(device: u128) -> Self {
        Self { book: Book::default(), device, count: 0 }
    }

    /// Notes a fact that happened at `at`, which is also what the clock shows.
    pub(crate) fn note(&mut self, at: Moment, event: Event) -> EntryId {
        self.note_when(at, at, event)
    }

    /// Notes a fact that happened at `at` while the clock shows `now`.
    pub(crate) fn note_when(&mut self, at: Moment, now: Moment, event: Event) -> EntryId {
        self.count += 1;
        let id = EntryId::from_uuid(Uuid::from_u128(
            (0x0001_0000_0000_7000_8000 << 48) + (self.device << 32) + self.count,
        ));
        let device = DeviceId::from_uuid(Uuid::from_u128(self.device));
        let noted = self.book.next_noted_of(&event, now);
        self.book.add(Entry { id, device, noted, at, event });
        id
    }

    /// Takes over what another phone has.
    pub(crate) fn meet(&mut self, other: &Self) {
        self.book.union(other.book.entries().cloned());
    }

    pub(crate) fn flock(&self) -> Flock {
        fold(&self.book)
    }

    pub(crate) fn ewe(&mut self, at: Moment, tag: &str) -> EweId {
        self.note(at, Event::EweCame { tag: Some(tag.to_owned()) }).as_ewe()
    }

    pub(crate) fn group(&mut self, at: Moment, name: &str) -> GroupId {
        self.note(at, Event::GroupFormed { name: name.to_owned() }).as_group()
    }

    pub(crate) fn ram_in(&mut self, at: Moment, group: GroupId) -> EntryId {
        self.note(at, Event::RamIn { group, ram: None, age: None })
    }

    pub(crate) fn born(&mut self, at: Moment, dam: Option<EweId>) -> LambId {
        self.note(at, birth(dam, None)).as_lamb()
    }

    pub(crate) fn born_beside(&mut self, at: Moment, mate: LambId) -> LambId {
        self.note(at, birth(None, Some(mate))).as_lamb()
    }

    pub(crate) fn born_dead(&mut self, at: Moment) -> LambId {
        self.note(at, Event::LambBorn { dam: None, beside: None, sex: None, alive: false }).as_lamb()
    }

    pub(crate) fn weighed(&mut self, at: Moment, lamb: LambId, kilograms: f64) -> EntryId {
        self.note(at, Event::Weighed { lamb, mass: kg(kilograms) })
    }

    pub(crate) fn fed(&mut self, at: Moment, lamb: LambId, milliliters: f64) -> EntryId {
        self.note(at, fed(lamb, milliliters, Milk::DamColostrum, Way::Bottle))
    }

    pub(crate) fn sucked(&mut self, at: Moment, lamb: LambId) -> EntryId {
        self.note(at, Event::Sucked { lamb })
    }

    pub(crate) fn died(&mut self, at: Moment, animal: Animal) -> EntryId {
        self.note(at, Event::Died { animal, cause: Cause::Unknown })
    }

    pub(crate) fn same(&mut self, at: Moment, keep: Animal, also: Animal) -> EntryId {
        self.note(at, Event::SameAnimal { keep, also })
    }

    pub(crate) fn strike(&mut self, at: Moment, entry: EntryId) -> EntryId {
        self.note(at, Event::Deleted { entry })
    }

    pub(crate) fn restore(&mut self, at: Moment, entry: EntryId) -> EntryId {
        self.note(at, Event::Restored { entry })
    }

    /// Amends an entry at `now` to have happened at `at`.
    pub(crate) fn amend(&mut self, now: Moment, entry: EntryId, event: Event, at: Moment) -> EntryId {
        self.note(now, Event::Amended { entry, event: Box::new(event), at })
    }
}

pub(crate) fn birth(dam: Option<EweId>, beside: Option<LambId>) -> Event {
    Event::LambBorn { dam, beside, sex: None, alive: true }
}

pub(crate) fn fed(lamb: LambId, milliliters: f64, milk: Milk, way: Way) -> Event {
    Event::Fed { lamb, volume: ml(milliliters), milk, way }
}

pub(crate) fn scored(lamb: LambId, score: u8) -> Event {
    Event::VigorScored { lamb, scale: VigorScale::FourGrade, score }
}

pub(crate) fn eased(lamb: LambId) -> Event {
    Event::BirthEase { lamb, ease: LambingEase::Alone }
}
