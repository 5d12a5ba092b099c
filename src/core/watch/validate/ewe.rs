//! Whether a scan or a condition score can be read of a ewe.
//!
//! An impossible lambing is noted and remarked on, never refused: the ewe is right, a date may not be. An empty scan
//! does not rule out a mating of the last 30 days.

use super::Rejection;
use crate::book::EweId;
use crate::flock::{Flock, UNSEEN_DAYS};
use crate::units::{Condition, Moment, OutOfBounds, TimeDelta};

/// Why something cannot be noted of a ewe.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum EweRejection {
    /// No scan tells so many lambs apart.
    #[error("{given} lambs are more than {most}")]
    TooManyLambs {
        /// How many were given.
        given: u8,
        /// How many a scan tells apart.
        most: u8,
    },
    /// No lamb so young or so old is scanned.
    #[error("lambs of {given} days are not between {least} and {most}")]
    ScanAge {
        /// How many days were given.
        given: u16,
        /// The youngest that a scan shows.
        least: u16,
        /// The oldest that there can be.
        most: u16,
    },
    /// An empty ewe has no lambs whose age could be told.
    #[error("an age without lambs")]
    AgeOfNone,
    /// The ram has not been with her long enough for a scan to show anything.
    #[error("the ram came in at {ram_in}, {days} days ago; a scan shows lambs from {least} days on")]
    ScanTooEarly {
        /// When the ram came in.
        ram_in: Moment,
        /// How many days ago that was.
        days: i64,
        /// From how many days on a scan shows lambs.
        least: i64,
    },
    /// The score is not on the scale.
    #[error(transparent)]
    Condition(#[from] OutOfBounds<Condition>),
    /// The score is between two quarters.
    #[error("{given:?} is not of whole quarters")]
    NotAQuarter {
        /// The score that was given.
        given: Condition,
    },
}

/// So many lambs at most are told apart by a scan (ours).
const MOST_LAMBS: u8 = 4;
/// The age of lambs that a scan can show, in days: from when they are seen at all until birth (ours).
const SCAN_AGE: (u16, u16) = (30, 150);

pub(super) fn scanned(
    flock: &Flock,
    ewe: EweId,
    lambs: u8,
    age: Option<u16>,
    at: Moment,
) -> Result<(), Rejection> {
    if lambs > MOST_LAMBS {
        return Err(EweRejection::TooManyLambs { given: lambs, most: MOST_LAMBS }.into());
    }
    if let Some(given) = age {
        let (least, most) = SCAN_AGE;
        if lambs == 0 {
            return Err(EweRejection::AgeOfNone.into());
        }
        if !(least..=most).contains(&given) {
            return Err(EweRejection::ScanAge { given, least, most }.into());
        }
    }
    let before = flock.litters_of(ewe).into_iter().map(|litter| litter.began).find(|began| *began <= at);
    let first = flock.windows_after(ewe, before).into_iter().map(|window| window.ram_in).min();
    match first.map(|ram_in| (ram_in, at.since(ram_in))) {
        Some((ram_in, since)) if (TimeDelta::zero()..TimeDelta::days(UNSEEN_DAYS)).contains(&since) => {
            let (days, least) = (since.num_days(), UNSEEN_DAYS);
            Err(EweRejection::ScanTooEarly { ram_in, days, least }.into())
        }
        Some(_) | None => Ok(()),
    }
}

pub(super) fn conditioned(score: Condition) -> Result<(), Rejection> {
    let given = Condition::OF_A_EWE.check(score).map_err(EweRejection::from)?;
    if given.is_in_quarters() { Ok(()) } else { Err(EweRejection::NotAQuarter { given }.into()) }
}
