//! How lively a newborn is: four grades at 5 minutes, before any tube feed; and by when it should be up and fed.
//!
//! Grade 1 is the best. Other scales run the other way, so a grade never travels without its scale's name.

use super::cited::{VET_NEWSLETTER, common, ours, seen};
use crate::source::Source;
use crate::units::TimeDelta;

/// The age at which the four grades are given.
pub const GRADED_AT: TimeDelta = TimeDelta::minutes(5);

/// The age after which a score says little about survival (Gronqvist et al. 2020).
pub const SCORED_UNTIL: TimeDelta = TimeDelta::hours(1);

/// Up and sucking by this age is quick (New Zealand smallholder press 2021).
pub const QUICK: TimeDelta = TimeDelta::minutes(15);

/// How many of 100 quick lambs are alive at 90 days, the least and the most (the same).
pub const QUICK_ALIVE_AT_90_DAYS_PERCENT: (u8, u8) = (90, 95);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("UK levy-board breeding scheme with SRUC", "Lamb vigor, four grades", None, ""),
    VET_NEWSLETTER,
    seen(
        "Gronqvist et al.",
        "Score in the first hour",
        Some(2020),
        "Asian-Australasian J. Anim. Sci. 33:1848",
    ),
    seen(
        "New Zealand smallholder press",
        "Up and sucking in 15 min: 90–95% alive at 90 days",
        Some(2021),
        "",
    ),
    common("Help if it has not nursed at 1 h"),
    ours("Amber at 30 and 60 min, red at 2 h, colostrum deadline at 6 h; what each grade asks for"),
];

/// The four grades at 5 minutes; `One` is the best.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FourGrade {
    /// Up, or trying to rise.
    One,
    /// On its chest, knees under it, not yet rising.
    Two,
    /// Flat, its head held up.
    Three,
    /// Head down, little movement, may labor to breathe.
    Four,
}

/// A number that is none of the four grades.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{given} is not a grade from 1 to 4")]
pub struct NotAGrade {
    /// What was given.
    pub given: u8,
}

/// What a grade asks for (ours).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ask {
    /// Leave it to its dam.
    LeaveToDam,
    /// Watch that it gets up.
    WatchUp,
    /// Help it to suck.
    HelpToSuck,
    /// Act now: clear the airway, dry, warm, look at its breathing.
    ActNow,
}

impl FourGrade {
    /// All four, the best first.
    pub const ALL: [Self; 4] = [Self::One, Self::Two, Self::Three, Self::Four];

    /// Returns the grade of a number from 1 to 4.
    ///
    /// # Errors
    /// The number is none of the four.
    ///
    /// ```
    /// use yeanling_core::reckon::vigor::{Ask, FourGrade};
    /// assert_eq!(FourGrade::from_number(4).unwrap().ask(), Ask::ActNow);
    /// assert!(FourGrade::from_number(0).is_err());
    /// ```
    pub const fn from_number(number: u8) -> Result<Self, NotAGrade> {
        match number {
            1 => Ok(Self::One),
            2 => Ok(Self::Two),
            3 => Ok(Self::Three),
            4 => Ok(Self::Four),
            given => Err(NotAGrade { given }),
        }
    }

    /// Returns the number of the grade, 1 to 4.
    #[must_use]
    pub const fn number(self) -> u8 {
        match self {
            Self::One => 1,
            Self::Two => 2,
            Self::Three => 3,
            Self::Four => 4,
        }
    }

    /// Returns what the grade asks for (ours).
    #[must_use]
    pub const fn ask(self) -> Ask {
        match self {
            Self::One => Ask::LeaveToDam,
            Self::Two => Ask::WatchUp,
            Self::Three => Ask::HelpToSuck,
            Self::Four => Ask::ActNow,
        }
    }
}

/// What should have happened by an age.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Milestone {
    /// Up by 30 min, or it needs a look.
    Up,
    /// Sucked by 60 min, or it needs help.
    Sucked,
    /// Sucked or fed by 2 h, or it is in danger.
    Fed,
    /// The last call for colostrum, 6 h.
    LastCall,
}

impl Milestone {
    /// All milestones in the order of their ages.
    pub const ALL: [Self; 4] = [Self::Up, Self::Sucked, Self::Fed, Self::LastCall];

    /// Returns the age by which it should have happened; the farm's limits start from these (ours, from the sources).
    #[must_use]
    pub const fn age(self) -> TimeDelta {
        match self {
            Self::Up => TimeDelta::minutes(30),
            Self::Sucked => TimeDelta::hours(1),
            Self::Fed => TimeDelta::hours(2),
            Self::LastCall => TimeDelta::hours(6),
        }
    }
}

/// Returns whether a vigor score still says something: in the first hour (Gronqvist et al. 2020).
///
/// ```
/// use yeanling_core::reckon::vigor::worth_scoring;
/// use yeanling_core::units::TimeDelta;
/// assert!(worth_scoring(TimeDelta::minutes(5)));
/// assert!(!worth_scoring(TimeDelta::hours(3)));
/// ```
#[must_use]
pub fn worth_scoring(age: TimeDelta) -> bool {
    age < SCORED_UNTIL
}
