//! How heavy: kilograms inside.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, UnitPair, split_units};
use super::{System, parse_number};

/// A mass. Kept in kilograms.
///
/// ```
/// use yeanling_core::units::Mass;
/// assert!((Mass::from_pounds(10.0).as_kilograms() - 4.535_923_7).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Mass(f64);

quantity!(Mass, "kg", 0, 500);

/// Kilograms in one international pound, exact by definition (1959 agreement).
const KILOGRAMS_IN_A_POUND: f64 = 0.453_592_37;

impl Mass {
    /// What a lamb can weigh at birth: 0.5 to 12 kg (ours; wider than any published range).
    pub const AT_BIRTH: Bounds<Self> =
        Bounds { least: Self(0.5), most: Self(12.0), why: BoundFor::LambAtBirth };

    /// What a lamb can weigh while it is on the bottle: 0.5 to 30 kg (ours).
    pub const ON_THE_BOTTLE: Bounds<Self> =
        Bounds { least: Self(0.5), most: Self(30.0), why: BoundFor::LambOnTheBottle };

    /// What a lamb can eat of solid feed in a day: nothing to 3 kg (ours).
    pub const SOLIDS_IN_A_DAY: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(3.0), why: BoundFor::SolidsInADay };

    /// What a ewe can weigh: 20 to 200 kg (ours; wider than any breed).
    pub const OF_A_EWE: Bounds<Self> =
        Bounds { least: Self(20.0), most: Self(200.0), why: BoundFor::EweWeight };

    /// What a ewe can be given of an extra feed in a day: nothing to 3 kg (ours; more than any table asks for).
    pub const EXTRA_FEED: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(3.0), why: BoundFor::ExtraFeed };

    /// A birth weight from which the farm is asked whether pounds were meant, in kilograms (ours).
    pub const ASK_FROM: Self = Self(8.0);

    /// Returns the mass of so many kilograms.
    #[must_use]
    pub const fn from_kilograms(kilograms: f64) -> Self {
        Self(kilograms)
    }

    /// Returns the mass of so many avoirdupois pounds.
    #[must_use]
    pub const fn from_pounds(pounds: f64) -> Self {
        Self(pounds * KILOGRAMS_IN_A_POUND)
    }

    /// Returns the mass in kilograms.
    #[must_use]
    pub const fn as_kilograms(self) -> f64 {
        self.0
    }

    /// Returns the mass in avoirdupois pounds.
    #[must_use]
    pub const fn as_pounds(self) -> f64 {
        self.0 / KILOGRAMS_IN_A_POUND
    }

    /// Reads a mass as people type it: `4.2`, `4,2`, `4.2 kg`, `4200 g`, `9.3 lb`, `9½ lb`, `9 lb 4 oz`, `9lb4`.
    ///
    /// A bare number is taken in the unit of `system`. The result is rounded to a gram.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, names a unit that is no mass, or is of pounds that are
    /// not whole or ounces that make a pound.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let kilograms = match parts.as_slice() {
            [(number, unit)] => one_part(text, number, unit, system)?,
            [(pounds, lb), (ounces, oz)] if is_pounds(lb) && (oz.is_empty() || is_ounces(oz)) => {
                UnitPair::PoundsOunces.together(text, pounds, ounces)? * KILOGRAMS_IN_A_POUND
            }
            _ => return Err(TypedError::NotANumber { given: text.trim().to_owned() }),
        };
        Ok(Self((kilograms * 1000.0).round() / 1000.0))
    }
}

fn one_part(text: &str, number: &str, unit: &str, system: System) -> Result<f64, TypedError> {
    let number = parse_number(number)?;
    match (unit, system) {
        ("kg" | "kgs" | "kilo" | "kilos", _) | ("", System::Metric) => Ok(number),
        ("g" | "grams", _) => Ok(number / 1000.0),
        ("", System::Us) => Ok(number * KILOGRAMS_IN_A_POUND),
        (lb, _) if is_pounds(lb) => Ok(number * KILOGRAMS_IN_A_POUND),
        (oz, _) if is_ounces(oz) => Ok(number / 16.0 * KILOGRAMS_IN_A_POUND),
        _ => Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
    }
}

fn is_pounds(unit: &str) -> bool {
    matches!(unit, "lb" | "lbs" | "pound" | "pounds" | "#")
}

fn is_ounces(unit: &str) -> bool {
    matches!(unit, "oz" | "ounce" | "ounces")
}

impl std::iter::Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        Self(masses.map(Self::as_kilograms).sum())
    }
}
