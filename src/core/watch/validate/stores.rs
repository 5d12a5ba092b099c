//! Whether something may come into the stores or go out: never more than there is, and pieces are whole.

use super::Rejection;
use super::here::ewe_here;
use crate::book::{BatchId, EntryId, Item, Measure, MilkedFrom};
use crate::flock::Flock;
use crate::units::{Amount, BoundFor, Bounds, Brix, Moment, OutOfBounds, Volume};

/// Why something cannot be noted of the stores.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum StoreRejection {
    /// No store holds so little or so much of it.
    #[error("{item:?}: {out}")]
    Amount {
        /// Of what.
        item: Item,
        /// What was given, and what is allowed.
        out: OutOfBounds<Amount>,
    },
    /// What is counted one by one is whole.
    #[error("{given:?} of {item:?} is not whole")]
    NotWhole {
        /// Of what.
        item: Item,
        /// What was given.
        given: Amount,
    },
    /// There is not so much of it.
    #[error("{given:?} of {item:?} is more than {there:?}")]
    NotThatMuch {
        /// Of what.
        item: Item,
        /// How much was to go.
        given: Amount,
        /// How much there is.
        there: Amount,
    },
    /// The frozen colostrum is not in the book.
    #[error("no such colostrum")]
    NoSuchBatch,
    /// There are not so many bags of it.
    #[error("{given} bags are more than {there}")]
    NotThatManyBags {
        /// How many were to go.
        given: u8,
        /// How many there are.
        there: u8,
    },
    /// It would be thawed before it was frozen.
    #[error("{at} is before it was frozen at {frozen}")]
    BeforeFrozen {
        /// When it was said to be thawed.
        at: Moment,
        /// When it was frozen.
        frozen: Moment,
    },
    /// No one freezes so few or so many bags at once.
    #[error("{given} bags are not between {least} and {most}")]
    Bags {
        /// How many were given.
        given: u8,
        /// The fewest.
        least: u8,
        /// The most.
        most: u8,
    },
    /// No bag holds so little or so much.
    #[error(transparent)]
    Bag(#[from] OutOfBounds<Volume>),
    /// No colostrum reads so low or so high.
    #[error(transparent)]
    Brix(#[from] OutOfBounds<Brix>),
}

/// The most bags that are noted at once (ours).
const MOST_BAGS: u8 = 50;

/// What a store can hold of a thing, from the least that is worth a line (ours; wider than any farm's shelf).
const fn in_store(measure: Measure) -> Bounds<Amount> {
    let (least, most) = match measure {
        Measure::Kilograms => (0.01, 500_000.0),
        Measure::Milliliters => (1.0, 200_000.0),
        Measure::Pieces => (1.0, 50_000.0),
    };
    Bounds { least: Amount::from_units(least), most: Amount::from_units(most), why: BoundFor::InStore }
}

pub(super) fn put_in(item: Item, amount: Amount) -> Result<(), Rejection> {
    within(item, amount, in_store(item.measure()))
}

/// A count may find nothing.
pub(super) fn counted(item: Item, amount: Amount) -> Result<(), Rejection> {
    within(item, amount, Bounds { least: Amount::NONE, ..in_store(item.measure()) })
}

fn within(item: Item, given: Amount, allowed: Bounds<Amount>) -> Result<(), Rejection> {
    allowed.check(given).map_err(|out| StoreRejection::Amount { item, out })?;
    if item.measure() == Measure::Pieces && !given.is_whole() {
        return Err(StoreRejection::NotWhole { item, given }.into());
    }
    Ok(())
}

pub(super) fn taken(
    flock: &Flock,
    instead_of: Option<EntryId>,
    item: Item,
    given: Amount,
    at: Moment,
) -> Result<(), Rejection> {
    put_in(item, given)?;
    let there = flock.stores.spare(item, at, instead_of);
    if given <= there { Ok(()) } else { Err(StoreRejection::NotThatMuch { item, given, there }.into()) }
}

pub(super) fn frozen(
    flock: &Flock,
    from: MilkedFrom,
    bags: u8,
    volume: Volume,
    brix: Option<Brix>,
) -> Result<(), Rejection> {
    match from {
        MilkedFrom::Ewe(ewe) => ewe_here(flock, ewe).map(|_| ())?,
        MilkedFrom::SomeEwe | MilkedFrom::Goat | MilkedFrom::Cow => {}
    }
    some_bags(bags)?;
    Volume::FROZEN_BAG.check(volume).map_err(StoreRejection::from)?;
    brix.map_or(Ok(()), |brix| Brix::OF_COLOSTRUM.check(brix).map(|_| ())).map_err(StoreRejection::from)?;
    Ok(())
}

pub(super) fn thawed(
    flock: &Flock,
    instead_of: Option<EntryId>,
    batch: BatchId,
    given: u8,
    at: Moment,
) -> Result<(), Rejection> {
    let batch = flock.stores.batches.get(&batch).ok_or(StoreRejection::NoSuchBatch)?;
    some_bags(given)?;
    if at < batch.frozen {
        return Err(StoreRejection::BeforeFrozen { at, frozen: batch.frozen }.into());
    }
    let there = batch.left_without(instead_of);
    if given <= there { Ok(()) } else { Err(StoreRejection::NotThatManyBags { given, there }.into()) }
}

fn some_bags(given: u8) -> Result<(), Rejection> {
    let (least, most) = (1, MOST_BAGS);
    if (least..=most).contains(&given) {
        Ok(())
    } else {
        Err(StoreRejection::Bags { given, least, most }.into())
    }
}
