//! What lies in the stores and in the freezer.
//!
//! A count settles how much there is, whatever was noted before; nothing is ever less than none.
//!
//! A count settles a store; no level falls under nothing, though two phones each used the last.

use std::collections::BTreeMap;

use super::Flock;
use crate::book::{Animal, BatchId, EntryId, Event, Item, MilkedFrom, Standing};
use crate::sort_small::SortSmall;
use crate::units::{Amount, Brix, Moment, Volume};

/// The stores.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stores {
    /// What was noted of each thing, oldest first.
    pub moves: BTreeMap<Item, Vec<StoreMove>>,
    /// The colostrum that was ever frozen.
    pub batches: BTreeMap<BatchId, Batch>,
}

/// One change of what there is of a thing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StoreMove {
    /// The entry that noted it.
    pub entry: EntryId,
    /// When.
    pub at: Moment,
    /// What changed.
    pub change: StoreChange,
}

/// How a store changes, in the thing's own unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StoreChange {
    /// So much came in.
    In(Amount),
    /// So much was used.
    Used(Amount),
    /// So much was thrown away.
    Thrown(Amount),
    /// So much was there when it was counted.
    Counted(Amount),
}

/// Colostrum that was frozen at one time.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// Its id.
    pub id: BatchId,
    /// When it was frozen.
    pub frozen: Moment,
    /// Whom it was milked from.
    pub from: MilkedFrom,
    /// How many bags it was.
    pub bags: u8,
    /// How much each bag holds.
    pub volume: Volume,
    /// What the refractometer read, if anyone looked.
    pub brix: Option<Brix>,
    /// What is written on it, if anything.
    pub label: Option<String>,
    /// The bags that were taken out, oldest first.
    pub taken: Vec<Taken>,
}

/// Bags that were taken out of the freezer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The entry that noted it.
    pub entry: EntryId,
    /// When.
    pub at: Moment,
    /// How many.
    pub bags: u8,
    /// Whether they were thrown away, and not thawed to be fed.
    pub thrown: bool,
}

impl StoreChange {
    fn apply(self, level: Amount) -> Amount {
        match self {
            Self::In(amount) => level + amount,
            Self::Used(amount) | Self::Thrown(amount) => level.less(amount),
            Self::Counted(amount) => amount,
        }
    }
}

impl Stores {
    /// Returns how much there is of a thing, in its own unit; nothing when nothing was ever noted of it.
    #[must_use]
    pub fn level(&self, item: Item) -> Option<Amount> {
        let moves = self.moves.get(&item)?;
        Some(moves.iter().fold(Amount::NONE, |level, change| change.change.apply(level)))
    }

    /// Returns how much of a thing could still be taken at `at`: the least that lies there from then on until it is
    /// next counted. The entry `except` does not count.
    #[must_use]
    pub fn spare(&self, item: Item, at: Moment, except: Option<EntryId>) -> Amount {
        let (mut level, mut least) = (Amount::NONE, None);
        let moves = self.moves.get(&item).into_iter().flatten();
        for change in moves.filter(|change| Some(change.entry) != except) {
            if change.at > at {
                if matches!(change.change, StoreChange::Counted(_)) {
                    break;
                }
                let before = least.unwrap_or(level);
                level = change.change.apply(level);
                least = Some(if level < before { level } else { before });
            } else {
                level = change.change.apply(level);
            }
        }
        least.unwrap_or(level)
    }

    /// Returns the colostrum of which some is still frozen, the oldest first.
    #[must_use]
    pub fn freezer(&self) -> Vec<&Batch> {
        let mut batches: Vec<&Batch> = self.batches.values().filter(|batch| batch.left() > 0).collect();
        batches.sort_small_by_key(|batch| (batch.frozen, batch.id));
        batches
    }

    /// Returns how much colostrum is still frozen.
    #[must_use]
    pub fn frozen(&self) -> Volume {
        self.batches.values().map(Batch::volume_left).sum()
    }
}

impl Batch {
    /// Returns how many bags are still frozen.
    #[must_use]
    pub fn left(&self) -> u8 {
        self.left_without(None)
    }

    /// Returns how many bags are still frozen when the entry `except` does not count.
    #[must_use]
    pub fn left_without(&self, except: Option<EntryId>) -> u8 {
        let taken = self.taken.iter().filter(|taken| Some(taken.entry) != except);
        taken.fold(self.bags, |left, taken| left.saturating_sub(taken.bags))
    }

    /// Returns how much is still frozen.
    #[must_use]
    pub fn volume_left(&self) -> Volume {
        Volume::from_milliliters(self.volume.as_milliliters() * f64::from(self.left()))
    }
}

/// Brings in colostrum that was frozen.
pub(super) fn create(flock: &mut Flock, line: &Standing<'_>) {
    if let Event::ColostrumFrozen { from, bags, volume, brix, label } = line.event {
        let from = match *from {
            MilkedFrom::Ewe(ewe) => match flock.canonical(Animal::Ewe(ewe)) {
                Animal::Ewe(ewe) => MilkedFrom::Ewe(ewe),
                Animal::Lamb(_) => MilkedFrom::SomeEwe,
            },
            MilkedFrom::SomeEwe => MilkedFrom::SomeEwe,
            MilkedFrom::Goat => MilkedFrom::Goat,
            MilkedFrom::Cow => MilkedFrom::Cow,
        };
        let (id, frozen) = (line.entry.id.as_batch(), line.at);
        let (bags, volume, brix, label) = (*bags, *volume, *brix, label.clone());
        let batch = Batch { id, frozen, from, bags, volume, brix, label, taken: Vec::new() };
        flock.stores.batches.insert(id, batch);
    }
}

/// Tells what came into the stores or went out. What concerns colostrum that is not here waits.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>) {
    let (entry, at) = (line.entry.id, line.at);
    let mut put = |item: Item, change: StoreChange| {
        flock.stores.moves.entry(item).or_default().push(StoreMove { entry, at, change });
    };
    if let Event::StoreIn { item, amount } = line.event {
        put(*item, StoreChange::In(*amount));
    } else if let Event::StoreUsed { item, amount } = line.event {
        put(*item, StoreChange::Used(*amount));
    } else if let Event::StoreThrown { item, amount } = line.event {
        put(*item, StoreChange::Thrown(*amount));
    } else if let Event::StoreCounted { item, amount } = line.event {
        put(*item, StoreChange::Counted(*amount));
    } else if let Event::ColostrumThawed { batch, bags } = line.event {
        take(flock, *batch, Taken { entry, at, bags: *bags, thrown: false });
    } else if let Event::ColostrumThrown { batch, bags } = line.event {
        take(flock, *batch, Taken { entry, at, bags: *bags, thrown: true });
    }
}

fn take(flock: &mut Flock, batch: BatchId, taken: Taken) {
    if let Some(batch) = flock.stores.batches.get_mut(&batch) {
        batch.taken.push(taken);
    }
}
