//! Flocks that are made up from the handbook's own words, apart from the code that is tried on them: ewes come in heat
//! evenly over a cycle, hold or come back 17 days later, and carry for a Normal time.
//!
//! Each flock draws its own share that holds, 0.60 to 0.85. Some ewes are scanned, most of the empty ones are then sold,
//! and some leave for reasons of their own.

use yeanling_core::book::{Animal, Book, Cause, Departure, DeviceId, Entry, EntryId, Event, GroupId, Life};
use yeanling_core::units::{Moment, TimeDelta};

use uuid::Uuid;

/// Chance that comes out the same in every run (`SplitMix64`).
#[derive(Clone, Debug)]
pub(super) struct Dice(u64);

impl Dice {
    pub(super) const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// Evenly from 0 to 1.
    #[allow(clippy::cast_precision_loss, reason = "53 bits are a float's own")]
    pub(super) fn even(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.even()
    }

    fn one_of(&mut self, least: u32, most: u32) -> u32 {
        let places = f64::from(most - least + 1);
        (least..most).nth(whole(self.even() * places)).unwrap_or(most)
    }

    fn happens(&mut self, chance: f64) -> bool {
        self.even() < chance
    }

    /// Normal (Box and Muller).
    fn normal(&mut self, mean: f64, spread: f64) -> f64 {
        let (one, other) = (1.0 - self.even(), self.even());
        mean + spread * (-2.0 * one.ln()).sqrt() * (std::f64::consts::TAU * other).cos()
    }
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "what is drawn here is small")]
fn whole(number: f64) -> usize {
    number as usize
}

/// Gestation: Normal about 147 d, never outside of what is possible at all (Sheep 201, 138 to 159 d).
fn carried(dice: &mut Dice, spread: f64) -> f64 {
    loop {
        let days = dice.normal(147.0, spread);
        if (138.0..=159.0).contains(&days) {
            return days;
        }
    }
}

/// A ewe and what will become of her, in days after midnight of the first ram in.
#[derive(Clone, Debug)]
pub(super) struct Ewe {
    /// When she would lamb, if she holds.
    pub(super) lambs: Option<f64>,
    /// When she leaves, if she does.
    pub(super) leaves: Option<f64>,
}

/// A flock, its book to come, and the truth.
#[derive(Debug)]
pub(super) struct Made {
    pub(super) ewes: Vec<Ewe>,
    /// What is noted, by time.
    entries: Vec<Entry>,
    count: u128,
}

/// Midnight before the first ram is let in.
fn start() -> Moment {
    "2026-10-01T00:00:00.000+00:00".parse().expect("a moment")
}

/// So many days after that.
#[allow(clippy::cast_possible_truncation, reason = "a season is short")]
pub(super) fn day(days: f64) -> Moment {
    start() + TimeDelta::milliseconds((days * 86_400_000.0) as i64)
}

impl Made {
    /// Makes up a flock.
    pub(super) fn flock(dice: &mut Dice) -> Self {
        let size = dice.one_of(12, 300);
        let holds = dice.between(0.60, 0.85);
        let spread = dice.between(2.0, 2.5);
        // Half of all farms scan, and not every ewe of theirs.
        let scan_day = dice.happens(0.5).then(|| f64::from(dice.one_of(75, 105)) + 0.4);
        let mut made = Self { ewes: Vec::new(), entries: Vec::new(), count: 0 };
        let groups = dice.one_of(1, 3);
        for number in 0..groups {
            let group = made.note(-10.0, Event::GroupFormed { name: format!("{number}") }).as_group();
            let ram_in = if number == 0 { 0.0 } else { f64::from(dice.one_of(0, 20)) };
            let with_ram = f64::from([34, 42, 51][whole(dice.even() * 3.0)]);
            let some = size / groups + u32::from(number < size % groups);
            for _ in 0..some {
                made.ewe(dice, group, holds, spread, (ram_in, with_ram), scan_day);
            }
            made.note(ram_in + 0.3, Event::RamIn { group, ram: None, age: None });
            made.note(ram_in + with_ram - 1.0 + 0.7, Event::RamOut { group });
        }
        made.entries.sort_by_key(|entry| (entry.at, entry.id));
        for (entry, count) in made.entries.iter_mut().zip(0..) {
            // Noted as it happened, no two at once.
            entry.noted = entry.at + TimeDelta::milliseconds(count);
        }
        made
    }

    fn ewe(
        &mut self,
        dice: &mut Dice,
        group: GroupId,
        holds: f64,
        spread: f64,
        (ram_in, with_ram): (f64, f64),
        scan_day: Option<f64>,
    ) {
        let ewe = self.note(-10.0, Event::EweCame { tag: None }).as_ewe();
        self.note(-9.0, Event::JoinedGroup { ewe, group });
        let mut heat = dice.between(0.0, 17.0);
        let mut held = None;
        while heat < with_ram && held.is_none() {
            held = dice.happens(holds).then_some(ram_in + heat);
            heat += 17.0;
        }
        let lambs = held.map(|held| held + carried(dice, spread));
        let mut leaves = dice.happens(0.06).then(|| dice.between(40.0, 205.0));
        if let Some(at) =
            scan_day.filter(|_| dice.happens(0.8)).filter(|at| leaves.is_none_or(|gone| gone > *at))
        {
            let seen = held.is_some_and(|held| at - held >= 30.0);
            let count = if seen { 1 + u8::from(dice.happens(0.6)) + u8::from(dice.happens(0.1)) } else { 0 };
            self.note(at, Event::Scanned { ewe, lambs: count, days: None });
            if !seen && dice.happens(0.6) {
                leaves = Some(at + dice.between(5.0, 30.0));
            }
        }
        if let Some(at) = leaves {
            let animal = Animal::Ewe(ewe);
            let sold = Event::Life(Life::Went { animal, how: Departure::Sold, to: None });
            let died = Event::Died { animal, cause: Cause::Unknown };
            self.note(at, if dice.happens(0.7) { sold } else { died });
        }
        if let Some(at) = lambs.filter(|at| leaves.is_none_or(|gone| gone > *at)) {
            self.note(at, Event::LambBorn { dam: Some(ewe), beside: None, sex: None, alive: true });
        }
        self.ewes.push(Ewe { lambs, leaves });
    }

    fn note(&mut self, at: f64, event: Event) -> EntryId {
        self.count += 1;
        let id = EntryId::from_uuid(Uuid::from_u128((0x0001_0000_0000_7000_8000 << 48) + self.count));
        let at = day(at);
        self.entries.push(Entry {
            id,
            device: DeviceId::from_uuid(Uuid::from_u128(1)),
            noted: at,
            at,
            event,
        });
        id
    }

    /// The book as it stands on a day.
    pub(super) fn book(&self, now: Moment) -> Book {
        self.entries.iter().filter(|entry| entry.at <= now).cloned().collect()
    }

    /// How many ewes that are here now will lamb from one time to another if they stay.
    ///
    /// Who leaves later counts as if she stayed: no forecast can know of it, and none is made of it.
    pub(super) fn lambing(&self, now: f64, from: f64, to: f64) -> usize {
        let here = self.ewes.iter().filter(|ewe| ewe.leaves.is_none_or(|gone| gone > now));
        here.filter(|ewe| ewe.lambs.is_some_and(|at| at > from && at <= to)).count()
    }

    /// How many will have lambed in the end: all that have by now, and of those that are here all that hold.
    pub(super) fn ever(&self, now: f64) -> usize {
        self.lambed(now) + self.lambing(now, now, f64::INFINITY)
    }

    /// How many have lambed by now, whether they are still here or not.
    pub(super) fn lambed(&self, now: f64) -> usize {
        let had =
            |ewe: &&Ewe| ewe.lambs.is_some_and(|at| at <= now && ewe.leaves.is_none_or(|gone| gone > at));
        self.ewes.iter().filter(had).count()
    }
}
