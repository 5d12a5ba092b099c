//! Whether tonight's weather chills lambs outdoors: `C = (11.7 + 3.1·√v)·(40 − T) + 481 + 418·(1 − e^(−0.04·r))`.
//!
//! C in kJ/m²/h, v the wind in m/s at lamb height (0.4 m), T the mean air in °C, r the rain of the day in mm. The
//! index is not valid inside a barn and is refused there; indoors the facts about wet lambs answer instead.

use super::birth_weight::WATCH_UNDER;
use super::cited::{common, memory, ours, seen};
use crate::settings::{ChillLimit, Housing};
use crate::source::{HowKnown, Source};
use crate::units::{Mass, OutOfBounds, Rain, Speed, Temperature, TimeDelta};

/// Who wrote the formula.
pub const FORMULA: Source = Source {
    authors: "Nixon-Smith, used by Donnelly 1984",
    title: "",
    year: Some(1972),
    place: "Australian Journal of Agricultural Research 35:709",
    known: HowKnown::Memory,
};

const VICTORIA: Source = seen("Agriculture Victoria", "Over 1000 kJ/m²/h: high risk", None, "");
const MURDOCH: Source = seen("Murdoch University", "Over 1100 kJ/m²/h: cold stress", None, "");
const ALEXANDER_61: Source =
    seen("Alexander", "A dry newborn makes heat to keep warm below about 29 °C", Some(1961), "");
const ALEXANDER_62: Source = seen("Alexander", "Summit heat 17 kcal/kg/h", Some(1962), "");
const MCCUTCHEON: Source =
    seen("McCutcheon et al.", "A wet lamb can chill at 15 °C and below", Some(1983), "");

/// A wet lamb can chill at this air and below (McCutcheon et al. 1983).
pub const WET_CHILLS_AT: Temperature = Temperature::from_celsius(15.0);

/// Below this air a dry newborn keeps warm only by making heat (Alexander 1961).
pub const DRY_MAKES_HEAT_BELOW: Temperature = Temperature::from_celsius(29.0);

/// What being wet adds to what a lamb must make, in W/kg, the least and the most (McCutcheon et al. 1983).
pub const WET_ADDS_WATTS_PER_KILOGRAM: (f64, f64) = (3.8, 7.0);

/// The most heat a lamb can make, in W/kg: 17 kcal/kg/h (Alexander 1962).
pub const SUMMIT_WATTS_PER_KILOGRAM: f64 = 19.8;

/// A lamb this young counts as a newborn here (ours).
pub const NEWBORN_TO: TimeDelta = TimeDelta::hours(24);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    FORMULA,
    VICTORIA,
    MURDOCH,
    ALEXANDER_61,
    ALEXANDER_62,
    MCCUTCHEON,
    memory("Under 3.0 kg: watch"),
    common("Twins and triplets are smaller and share one ewe"),
    ours("A newborn is under 24 h here"),
];

/// A loss of heat for each square meter of skin. Kept in kJ/m²/h.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeatLoss(f64);

impl HeatLoss {
    /// Returns the loss of so many kilojoules per square meter and hour.
    #[must_use]
    pub const fn from_kilojoules(kilojoules: f64) -> Self {
        Self(kilojoules)
    }

    /// Returns kilojoules per square meter and hour.
    #[must_use]
    pub const fn as_kilojoules(self) -> f64 {
        self.0
    }
}

/// Why there is no index.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoIndex {
    /// It is not valid inside a barn.
    #[error("the index is not valid indoors")]
    Indoors,
    /// No such air.
    #[error("not a temperature: {0}")]
    Temperature(#[from] OutOfBounds<Temperature>),
    /// No such wind.
    #[error("not a wind: {0}")]
    Wind(#[from] OutOfBounds<Speed>),
    /// No such rain.
    #[error("not a day's rain: {0}")]
    Rain(#[from] OutOfBounds<Rain>),
}

/// How much at risk lambs are, the least first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Not over the limit.
    Usual,
    /// Over it.
    HighRisk,
}

/// The weather's index, and what it comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chill {
    /// The mean air.
    pub air: Temperature,
    /// The wind at lamb height.
    pub wind: Speed,
    /// The rain of the day.
    pub rain: Rain,
    /// The index.
    pub index: HeatLoss,
    /// Whose limit it was held against.
    pub limit: ChillLimit,
    /// What it comes to.
    pub verdict: Verdict,
}

/// Returns the index over which a rule speaks of risk.
#[must_use]
pub const fn limit_of(limit: ChillLimit) -> HeatLoss {
    HeatLoss(match limit {
        ChillLimit::Victoria1000 => 1000.0,
        ChillLimit::Murdoch1100 => 1100.0,
    })
}

/// Returns who set a limit.
#[must_use]
pub const fn source(limit: ChillLimit) -> Source {
    match limit {
        ChillLimit::Victoria1000 => VICTORIA,
        ChillLimit::Murdoch1100 => MURDOCH,
    }
}

/// Returns how the weather chills lambs outdoors.
///
/// # Errors
/// The lambs are housed; or the air, the wind or the rain lies outside `Temperature::OF_THE_AIR`, `Speed::OF_WIND` or
/// `Rain::OF_A_DAY`.
///
/// ```
/// use yeanling_core::settings::{ChillLimit, Housing};
/// use yeanling_core::reckon::chill::{Verdict, chill};
/// use yeanling_core::units::{Rain, Speed, Temperature};
/// let (air, wind) = (Temperature::from_celsius(10.0), Speed::from_meters_per_second(4.0));
/// let dry = chill(air, wind, Rain::from_millimeters(0.0), Housing::Outdoors, ChillLimit::Victoria1000).unwrap();
/// assert_eq!((dry.index.as_kilojoules().round(), dry.verdict), (1018.0, Verdict::HighRisk));
/// ```
pub fn chill(
    air: Temperature,
    wind: Speed,
    rain: Rain,
    housing: Housing,
    limit: ChillLimit,
) -> Result<Chill, NoIndex> {
    match housing {
        Housing::Housed => return Err(NoIndex::Indoors),
        Housing::Outdoors => {}
    }
    let air = Temperature::OF_THE_AIR.check(air)?;
    let wind = Speed::OF_WIND.check(wind)?;
    let rain = Rain::OF_A_DAY.check(rain)?;
    let blown = (11.7 + 3.1 * wind.as_meters_per_second().sqrt()) * (40.0 - air.as_celsius());
    let wet = 418.0 * (1.0 - (-0.04 * rain.as_millimeters()).exp());
    let index = HeatLoss(blown + 481.0 + wet);
    let verdict = if index > limit_of(limit) { Verdict::HighRisk } else { Verdict::Usual };
    Ok(Chill { air, wind, rain, index, limit, verdict })
}

/// What the air alone means for a lamb under a roof.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Indoors {
    /// The air.
    pub air: Temperature,
    /// A wet lamb can chill: 15 °C and below.
    pub wet_can_chill: bool,
    /// A dry newborn keeps warm only by making heat: below 29 °C.
    pub dry_makes_heat: bool,
}

/// Returns what the air means for a lamb under a roof.
///
/// # Errors
/// The air is outside `Temperature::OF_THE_AIR`.
pub fn indoors(air: Temperature) -> Result<Indoors, OutOfBounds<Temperature>> {
    let air = Temperature::OF_THE_AIR.check(air)?;
    Ok(Indoors { air, wet_can_chill: air <= WET_CHILLS_AT, dry_makes_heat: air < DRY_MAKES_HEAT_BELOW })
}

/// Why a lamb is more at risk than others in the same weather, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum AtRisk {
    /// It is wet (McCutcheon et al. 1983).
    Wet,
    /// It is under a day old (Alexander 1961).
    Newborn,
    /// It is under 3.0 kg (memory).
    Light,
    /// It is one of several (common practice).
    OneOfSeveral,
}

impl AtRisk {
    /// All of them, the worst first.
    pub const ALL: [Self; 4] = [Self::Wet, Self::Newborn, Self::Light, Self::OneOfSeveral];

    /// Returns who says so.
    #[must_use]
    pub const fn source(self) -> Source {
        match self {
            Self::Wet => MCCUTCHEON,
            Self::Newborn => ALEXANDER_61,
            Self::Light => memory("Under 3.0 kg: watch"),
            Self::OneOfSeveral => common("Twins and triplets are smaller and share one ewe"),
        }
    }
}

/// Returns why a lamb is at more risk than others, the worst first; empty if nothing speaks for it.
///
/// An unknown weight says nothing either way, and a litter of 0 is of unknown size.
#[must_use]
pub fn at_risk(age: TimeDelta, weight: Option<Mass>, litter_size: u8, wet: bool) -> Vec<AtRisk> {
    let speaks = |reason: &AtRisk| match reason {
        AtRisk::Wet => wet,
        AtRisk::Newborn => age < NEWBORN_TO,
        AtRisk::Light => weight.is_some_and(|weight| weight < WATCH_UNDER),
        AtRisk::OneOfSeveral => litter_size > 1,
    };
    AtRisk::ALL.into_iter().filter(speaks).collect()
}
