//! What a lamb would have weighed at a set age, had it been a single ewe lamb of a grown dam: `A_n = birth + (W − birth) ÷
//! age × n`, times a factor each for the age of its dam, its sex, and how many it was born and reared with.
//!
//! Only lambs of one group, fed alike, may be set side by side.
//!
//! A lamb still fed by hand at three days is reared by hand: no factor is printed for it, so it stands apart.

use super::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, TimeDelta};

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("US sheep industry handbook", "Factors: dam of two years, ewe lamb, twin reared as twin", None, ""),
    memory("The other factors of the US sheep industry handbook"),
    seen("Boggess", "Weigh within 7 days of 60 days, within 28 of 90", Some(1991), ""),
    seen("Barkley", "Worked example of a twin", None, "Penn State Extension"),
    ours(
        "Weigh within 7 days of 30 days, within 28 of 120; dams of unknown age and sexes not seen have no factor",
    ),
];

/// The ages to which weights are adjusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ToAge {
    /// 30 days.
    Day30,
    /// 60 days.
    Day60,
    /// 90 days.
    Day90,
    /// 120 days.
    Day120,
}

impl ToAge {
    /// Every age, the youngest first.
    pub const ALL: [Self; 4] = [Self::Day30, Self::Day60, Self::Day90, Self::Day120];

    /// Returns the age in days.
    #[must_use]
    pub const fn days(self) -> u16 {
        match self {
            Self::Day30 => 30,
            Self::Day60 => 60,
            Self::Day90 => 90,
            Self::Day120 => 120,
        }
    }

    /// Returns how many days before or after that age a lamb may be weighed (Boggess 1991 for 60 and 90; else ours).
    #[must_use]
    pub const fn span_days(self) -> u16 {
        match self {
            Self::Day30 | Self::Day60 => 7,
            Self::Day90 | Self::Day120 => 28,
        }
    }

    /// Returns the age whose span holds this one, the nearest if several do.
    #[must_use]
    pub fn of(age: TimeDelta) -> Option<Self> {
        let days = age.num_days();
        let off = |at: &Self| (days - i64::from(at.days())).abs();
        Self::ALL.into_iter().filter(|at| at.holds(age)).min_by_key(off)
    }

    /// Says whether a lamb of this age may be weighed for it.
    #[must_use]
    pub fn holds(self, age: TimeDelta) -> bool {
        (age.num_days() - i64::from(self.days())).abs() <= i64::from(self.span_days())
    }
}

/// How old the dam was at lambing, in years.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DamAge {
    /// One year.
    One,
    /// Two years.
    Two,
    /// Three to six years.
    ThreeToSix,
    /// Over six years.
    OverSix,
}

impl DamAge {
    /// Returns the class of a dam of so many whole years; a ewe lamb that lambs counts as one year old.
    #[must_use]
    pub const fn of_years(years: u16) -> Self {
        match years {
            0 | 1 => Self::One,
            2 => Self::Two,
            3..=6 => Self::ThreeToSix,
            _ => Self::OverSix,
        }
    }

    /// Returns the factor.
    #[must_use]
    pub const fn factor(self) -> f64 {
        match self {
            Self::One => 1.14,
            Self::Two => 1.08,
            Self::ThreeToSix => 1.0,
            Self::OverSix => 1.05,
        }
    }
}

/// Which sex it was fed as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A ewe lamb.
    Ewe,
    /// A castrated ram lamb.
    Wether,
    /// A ram lamb.
    Ram,
}

impl Kind {
    /// Returns the factor.
    #[must_use]
    pub const fn factor(self) -> f64 {
        match self {
            Self::Ewe => 1.0,
            Self::Wether => 0.97,
            Self::Ram => 0.91,
        }
    }
}

/// Returns the factor for a lamb born one of `born` and reared one of `reared`; none where no factor is printed.
///
/// More than three count as three.
#[must_use]
pub fn born_and_reared(born: u8, reared: u8) -> Option<f64> {
    match (born.min(3), reared.min(3)) {
        (1, 1) => Some(1.0),
        (1, 2) => Some(1.17),
        (2, 1) => Some(1.11),
        (2, 2) => Some(1.21),
        (3, 1) => Some(1.19),
        (3, 2) => Some(1.29),
        (3, 3) => Some(1.36),
        _ => None,
    }
}

/// What is known of a lamb that was weighed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weighed {
    /// Its birth weight, within `Mass::AT_BIRTH`.
    pub birth: Mass,
    /// Its weight now.
    pub weight: Mass,
    /// Its age now.
    pub age: TimeDelta,
    /// How old its dam was.
    pub dam: DamAge,
    /// What it is.
    pub kind: Kind,
    /// How many its dam bore.
    pub born: u8,
    /// With how many it was reared, itself included.
    pub reared: u8,
}

/// An adjusted weight with the way to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Adjusted {
    /// To which age.
    pub at: ToAge,
    /// Straight from birth to that age, before any factor.
    pub straight: Mass,
    /// For the age of its dam.
    pub dam: f64,
    /// For its sex.
    pub kind: f64,
    /// For how many it was born and reared with.
    pub litter: f64,
    /// The adjusted weight.
    pub mass: Mass,
}

/// Why there is no adjusted weight.
#[derive(Clone, Debug, PartialEq)]
pub enum NotAdjusted {
    /// It was not weighed within the span of any age.
    WrongAge(TimeDelta),
    /// The birth weight is none.
    Birth(OutOfBounds<Mass>),
    /// No factor is printed for a lamb so born and reared.
    NoFactor {
        /// How many its dam bore.
        born: u8,
        /// With how many it was reared.
        reared: u8,
    },
}

/// Returns the adjusted weight for the age whose span holds the lamb's.
///
/// # Errors
/// Weighed outside every span, a birth weight outside its bounds, or a litter without a factor.
///
/// ```
/// use yeanling_core::reckon::adjusted_weight::{DamAge, Kind, Weighed, adjust};
/// use yeanling_core::units::{Mass, TimeDelta};
/// let twin = Weighed {
///     birth: Mass::from_pounds(10.0),
///     weight: Mass::from_pounds(62.0),
///     age: TimeDelta::days(61),
///     dam: DamAge::Two,
///     kind: Kind::Ewe,
///     born: 2,
///     reared: 2,
/// };
/// assert_eq!(format!("{:.2}", adjust(&twin).unwrap().mass.as_pounds()), "79.91");
/// ```
pub fn adjust(lamb: &Weighed) -> Result<Adjusted, NotAdjusted> {
    let at = ToAge::of(lamb.age).ok_or(NotAdjusted::WrongAge(lamb.age))?;
    adjust_to(at, lamb)
}

/// Returns the weight adjusted to this age.
///
/// # Errors
/// Weighed outside the span of this age, a birth weight outside its bounds, or a litter without a factor.
pub fn adjust_to(at: ToAge, lamb: &Weighed) -> Result<Adjusted, NotAdjusted> {
    if !at.holds(lamb.age) {
        return Err(NotAdjusted::WrongAge(lamb.age));
    }
    let birth = Mass::AT_BIRTH.check(lamb.birth).map_err(NotAdjusted::Birth)?.as_kilograms();
    let (born, reared) = (lamb.born, lamb.reared);
    let litter = born_and_reared(born, reared).ok_or(NotAdjusted::NoFactor { born, reared })?;
    let days = lamb.age.as_seconds_f64() / 86_400.0;
    let straight = birth + (lamb.weight.as_kilograms() - birth) / days * f64::from(at.days());
    let (dam, kind) = (lamb.dam.factor(), lamb.kind.factor());
    Ok(Adjusted {
        at,
        straight: Mass::from_kilograms(straight),
        dam,
        kind,
        litter,
        mass: Mass::from_kilograms(straight * dam * kind * litter),
    })
}
