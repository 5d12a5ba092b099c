//! The facts of an animal's life beyond birth, milk and mating: who rears it, how it is marked, what it was treated
//! with, and how it left.
//!
//! A life's facts are one variant of `Event` (`book/life.rs`), as the farm's choices are: the long list stays
//! readable.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::animal::Animal;
use super::ids::{EweId, LambId};
use crate::terms::CullReason;
use crate::units::Price;

/// A fact of an animal's life.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Life {
    /// A lamb is reared by this ewe from now on; whose lamb it was born stays.
    Fostered {
        /// Which lamb.
        lamb: LambId,
        /// Who rears it.
        dam: EweId,
    },
    /// An animal was marked with paint or the like; unlike a tag, several may wear the same.
    Marked {
        /// Which animal.
        animal: Animal,
        /// What is written on it.
        mark: String,
    },
    /// A ewe lamb was kept and is a ewe of the flock from now on; this entry brings the ewe in.
    KeptAsEwe {
        /// The lamb that she was.
        lamb: LambId,
    },
    /// What is known of a ewe from before she came into the book.
    Described {
        /// Which ewe.
        ewe: EweId,
        /// When she was born, if known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        born: Option<BirthDay>,
        /// Her breed in the farm's own words, if known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        breed: Option<String>,
    },
    /// A ram lamb was castrated otherwise than by a ring.
    Castrated {
        /// Which lamb.
        lamb: LambId,
        /// How.
        way: Castration,
    },
    /// An animal was treated.
    Treated {
        /// Which animal.
        animal: Animal,
        /// With what, and until when it counts.
        treatment: Box<Treatment>,
    },
    /// An animal left the flock alive, or was slaughtered.
    Went {
        /// Which animal.
        animal: Animal,
        /// How.
        how: Departure,
        /// To whom or where, if said.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        to: Option<String>,
    },
    /// A ewe had her booster before lambing, a treatment like any other.
    Boosted {
        /// Which ewe.
        ewe: EweId,
        /// With what, and until when it counts.
        treatment: Box<Treatment>,
    },
    /// What an animal that left was sold for.
    SoldFor {
        /// Which animal.
        animal: Animal,
        /// For how much of the farm's own money.
        price: Price,
    },
    /// Why an animal that left or died was culled.
    Culled {
        /// Which animal.
        animal: Animal,
        /// Why.
        why: CullReason,
    },
    /// A dead animal was looked into: by the vet, a laboratory, or on the farm.
    Examined {
        /// Which animal.
        animal: Animal,
        /// What was found, in the words of who looked.
        finding: String,
    },
}

/// When an animal was born, as far as it is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BirthDay {
    /// In this year.
    Year(u16),
    /// On this day.
    Day(NaiveDate),
}

/// What stands first in a date with strokes, as in `4/3/2022`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayOrder {
    /// The day: 4 March.
    DayFirst,
    /// The month: April 3.
    MonthFirst,
}

/// How a ram lamb was castrated, rings apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Castration {
    /// With the knife.
    Cut,
    /// With the clamp.
    Clamped,
}

/// How a medicine was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Route {
    /// By mouth.
    Mouth,
    /// By injection.
    Injection,
    /// On the skin or the fleece.
    Skin,
    /// In the eye.
    Eye,
    /// In the udder.
    Udder,
    /// Any other way.
    Other,
}

/// A treatment, in the fields that medicine records usually ask for. Everything but the product may be left open.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Treatment {
    /// What the medicine is called.
    pub product: String,
    /// How much was given, in the words of label or vet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub amount: Option<String>,
    /// How it was given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<Route>,
    /// Against what.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reason: Option<String>,
    /// The number of the batch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch: Option<String>,
    /// Who gave it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<String>,
    /// Whether only the day is known, not the hour.
    pub day_only: bool,
    /// For how many days its meat is withheld; nothing when nobody knows, which withholds it until someone does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub meat_days: Option<u16>,
    /// For how many days its milk is withheld; nothing when nobody knows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub milk_days: Option<u16>,
}

/// How an animal left the flock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Departure {
    /// Sold alive.
    Sold,
    /// Sold alive inside a withholding time that the buyer was told of in writing.
    SoldWithWarning,
    /// Slaughtered to be eaten.
    Slaughtered,
    /// Given away alive.
    Given,
    /// Gone, nobody knows where.
    Missing,
}

impl Departure {
    /// Says whether its meat may be eaten soon after by someone who was not warned.
    #[must_use]
    pub const fn is_for_meat(self) -> bool {
        match self {
            Self::Sold | Self::Slaughtered | Self::Given => true,
            Self::SoldWithWarning | Self::Missing => false,
        }
    }
}

impl Life {
    /// Returns the animals that the fact is about, two at most.
    pub(super) const fn animals(&self) -> [Option<Animal>; 2] {
        match self {
            Self::Fostered { lamb, dam } => [Some(Animal::Lamb(*lamb)), Some(Animal::Ewe(*dam))],
            Self::Marked { animal, .. }
            | Self::Treated { animal, .. }
            | Self::Went { animal, .. }
            | Self::SoldFor { animal, .. }
            | Self::Culled { animal, .. }
            | Self::Examined { animal, .. } => [Some(*animal), None],
            Self::KeptAsEwe { lamb } | Self::Castrated { lamb, .. } => [Some(Animal::Lamb(*lamb)), None],
            Self::Described { ewe, .. } | Self::Boosted { ewe, .. } => [Some(Animal::Ewe(*ewe)), None],
        }
    }
}

/// Why a birth day cannot be read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NoBirthDay {
    /// It is no year and no day.
    #[error("{0} is no year and no day")]
    Unknown(String),
    /// It may be read with the day first or with the month first.
    #[error("{0} can be read in two ways")]
    TwoWays(String),
}

impl BirthDay {
    /// Returns the year.
    #[must_use]
    pub fn year(self) -> i32 {
        match self {
            Self::Year(year) => year.into(),
            Self::Day(day) => chrono::Datelike::year(&day),
        }
    }

    /// Reads a year, `2022`, or a day: `2022-03-14`, `14.3.2022`, and with strokes where only one reading is a day.
    ///
    /// # Errors
    /// It is neither, or strokes leave two readings open.
    ///
    /// ```
    /// use yeanling_core::book::BirthDay;
    /// assert_eq!(BirthDay::parse(" 2022 "), Ok(BirthDay::Year(2022)));
    /// assert_eq!(BirthDay::parse("14/3/2022"), BirthDay::parse("2022-03-14"));
    /// assert!(BirthDay::parse("4/3/2022").is_err());
    /// ```
    pub fn parse(text: &str) -> Result<Self, NoBirthDay> {
        Self::parse_in(text, None)
    }

    /// Reads it where it is known what stands first in a date with strokes.
    ///
    /// # Errors
    /// It is neither, or it can be read both ways and no order is given.
    ///
    /// ```
    /// use yeanling_core::book::{BirthDay, DayOrder};
    /// assert_eq!(BirthDay::parse_in("4/3/2022", Some(DayOrder::DayFirst)), BirthDay::parse("2022-03-04"));
    /// assert_eq!(BirthDay::parse_in("4/3/2022", Some(DayOrder::MonthFirst)), BirthDay::parse("2022-04-03"));
    /// ```
    pub fn parse_in(text: &str, order: Option<DayOrder>) -> Result<Self, NoBirthDay> {
        let text = text.trim();
        let unknown = || NoBirthDay::Unknown(text.to_owned());
        if text.len() == 4 && text.bytes().all(|byte| byte.is_ascii_digit()) {
            return text.parse().map(Self::Year).map_err(|_| unknown());
        }
        let parts = |stroke: char| -> Option<[u32; 3]> {
            let parts: Vec<u32> =
                text.split(stroke).map(|part| part.trim().parse().ok()).collect::<Option<_>>()?;
            parts.try_into().ok()
        };
        let day = |year: u32, month: u32, day: u32| {
            let year = i32::try_from(year).ok().filter(|year| (1000..=9999).contains(year))?;
            NaiveDate::from_ymd_opt(year, month, day)
        };
        let read = if let Some([y, m, d]) = parts('-') {
            day(y, m, d)
        } else if let Some([d, m, y]) = parts('.') {
            day(y, m, d)
        } else if let Some([one, two, y]) = parts('/') {
            match (day(y, two, one), day(y, one, two)) {
                (Some(a), Some(b)) if a != b => match order {
                    Some(DayOrder::DayFirst) => Some(a),
                    Some(DayOrder::MonthFirst) => Some(b),
                    None => return Err(NoBirthDay::TwoWays(text.to_owned())),
                },
                (a, b) => a.or(b),
            }
        } else {
            None
        };
        read.map(Self::Day).ok_or_else(unknown)
    }
}
