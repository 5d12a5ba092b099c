//! Why something cannot be noted, with what was given and what is allowed; the words are chosen where people read them.

use super::{EweRejection, GroupRejection, LifeRejection, StoreRejection};
use crate::reckon::feeds;
use crate::settings::{LimitError, RingDaysError};
use crate::units::{Ketones, Length, Mass, Moment, NotInALamb, OutOfBounds, Strength, Temperature, Volume};

/// Why something cannot be noted.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Rejection {
    /// It would happen later than now.
    #[error("{at} is later than now, {now}")]
    InFuture {
        /// When it was said to happen.
        at: Moment,
        /// What time it is.
        now: Moment,
    },
    /// It would happen before the animal was born.
    #[error("{at} is before the birth at {born}")]
    BeforeBirth {
        /// When it was said to happen.
        at: Moment,
        /// When the animal was born.
        born: Moment,
    },
    /// Something was seen of the animal earlier than the birth that is given.
    #[error("a birth at {born} is after something seen at {seen}")]
    BornAfter {
        /// The birth that was given.
        born: Moment,
        /// The first thing seen of it.
        seen: Moment,
    },
    /// It would happen after the animal died.
    #[error("{at} is after the death at {died}")]
    AfterDeath {
        /// When it was said to happen.
        at: Moment,
        /// When the animal died.
        died: Moment,
    },
    /// The animal is not in the book, or its entry was struck.
    #[error("no such animal")]
    NoSuchAnimal,
    /// The entry is not in the book, or is itself a correction of another kind.
    #[error("no such entry")]
    NoSuchEntry,
    /// No animal weighs that, or eats that.
    #[error(transparent)]
    Weight(#[from] OutOfBounds<Mass>),
    /// The feed is too much.
    #[error(transparent)]
    Feed(#[from] feeds::Rejection),
    /// The feed comes so soon after another that both together are too much.
    #[error("{together:?} within an hour of {last}")]
    TooSoon {
        /// When the other was given.
        last: Moment,
        /// Both together.
        together: Volume,
    },
    /// A text is empty.
    #[error("nothing was written")]
    NoText,
    /// It is no telephone number that can be dialed.
    #[error("not a telephone number")]
    NotAPhoneNumber,
    /// A text is too long.
    #[error("{given} characters are more than {most}")]
    LongText {
        /// How many characters were given.
        given: usize,
        /// How many are allowed.
        most: usize,
    },
    /// The score is not on its scale.
    #[error("a score of {given} is not between {least} and {most}")]
    Score {
        /// The score that was given.
        given: u8,
        /// The lowest on the scale.
        least: u8,
        /// The highest on the scale.
        most: u8,
    },
    /// No thermometer reads that in a living lamb.
    #[error(transparent)]
    Temperature(#[from] NotInALamb),
    /// No pen is so narrow or so wide.
    #[error(transparent)]
    PenSide(#[from] OutOfBounds<Length>),
    /// A lamb is not ringed in its first 24 hours.
    #[error("not ringed before {from}")]
    TooYoungToRing {
        /// When it is a day old.
        from: Moment,
    },
    /// The pen is not in the book, or was taken down.
    #[error("no such pen")]
    NoSuchPen,
    /// A pen is taken down when it is empty.
    #[error("the pen is in use")]
    PenInUse,
    /// It does not fit the group, or the ram's time with it.
    #[error(transparent)]
    Group(#[from] GroupRejection),
    /// It cannot be read of a ewe.
    #[error(transparent)]
    Ewe(#[from] EweRejection),
    /// It does not fit the animal's life.
    #[error(transparent)]
    Life(#[from] LifeRejection),
    /// It does not fit what lies in the stores.
    #[error(transparent)]
    Store(#[from] StoreRejection),
    /// Nothing of that kind is due for the animal.
    #[error("no such duty")]
    NoSuchDuty,
    /// A duty can wait, but not past its red limit.
    #[error("{until} is later than {most}")]
    PutOffTooLong {
        /// Until when it was to wait.
        until: Moment,
        /// Until when it may.
        most: Moment,
    },
    /// A lamb shows or was found, she is being helped, or the neck of the womb is tight: she is lambing.
    #[error("she is lambing")]
    SheIsLambing,
    /// The vet's next look is not ahead, or too far.
    #[error("a look at {given} is not after {after} and by {most}")]
    LookAgain {
        /// When it was to be.
        given: Moment,
        /// It is after this.
        after: Moment,
        /// And by then.
        most: Moment,
    },
    /// The two records cannot be of one animal.
    #[error("these two cannot be one animal")]
    NotOneAnimal,
    /// No ewe reads that.
    #[error(transparent)]
    EweTemperature(#[from] OutOfBounds<Temperature>),
    /// No meter shows that.
    #[error(transparent)]
    Ketones(#[from] OutOfBounds<Ketones>),
    /// No pulse is so slow or so quick, and no breath.
    #[error("{given} a minute is not between {least} and {most}")]
    PerMinute {
        /// How many were given.
        given: u16,
        /// The fewest.
        least: u16,
        /// The most.
        most: u16,
    },
    /// Nothing holds milk back that the vet could allow.
    #[error("nothing holds milk back")]
    NothingHeld,
    /// A limit of the farm is out of its own bounds.
    #[error(transparent)]
    Limit(#[from] LimitError),
    /// No label asks for so little or so much powder.
    #[error(transparent)]
    PowderRate(#[from] OutOfBounds<Strength>),
    /// The farm's own limit for rings makes no sense.
    #[error(transparent)]
    Rings(#[from] RingDaysError),
}
