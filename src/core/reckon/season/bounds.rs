//! What each figure of a season may be, in one place: the least, the most, and whose figure it is.
//!
//! The season's figures have bounds and headings of their own (`season::bounds`, `season::Subject`).

/// Names a figure of the season, so that its error can say which was wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// The share of ewes that hold to the ram in one cycle; no unit.
    Conception,
    /// The mean length of gestation, in days.
    GestationMean,
    /// The spread (standard deviation) of gestation, in days.
    GestationSpread,
    /// How long a ram is with his group, in days.
    DaysWithRam,
    /// Cycles that a ram is with his group.
    Cycles,
    /// Ewes in a group, or in all groups together.
    Ewes,
    /// Lambs to be born.
    Lambs,
    /// The share of litters of one size; no unit.
    LitterShare,
    /// The shares of all litter sizes together; no unit.
    LitterShares,
    /// Days that a forecast covers.
    DaysOfForecast,
    /// The age of an unborn lamb at a scan, in days.
    AgeAtScan,
    /// Lambs counted at a scan.
    LambsAtScan,
    /// How often crayons are looked at, in days.
    DaysBetweenLooks,
    /// A condition score, 1 to 5.
    ConditionScore,
    /// What a ewe weighs, in kilograms.
    EweWeight,
    /// What a ewe gains in a day, in kilograms.
    GainInADay,
    /// What one ewe is fed of one feed in a day, in kilograms as fed.
    FedInADay,
    /// Feeds in a ration.
    Feeds,
    /// A share of the whole, 0 to 1.
    Share,
    /// Energy in a kilogram of dry matter, in megacalories.
    EnergyOfFeed,
    /// Copper in a feed, in milligrams per kilogram of dry matter.
    CopperInFeed,
    /// Selenium in a feed, in milligrams per kilogram of dry matter.
    SeleniumInFeed,
    /// Feed for one ewe in one season, in kilograms.
    FeedForOneEwe,
    /// Days of feeding.
    DaysOfFeeding,
    /// One bale or one bag, in kilograms.
    Bale,
    /// One step of a new feed, in kilograms.
    Step,
    /// Days between two steps of a new feed.
    DaysBetweenSteps,
    /// How many of a thing one use takes.
    UnitsPerUse,
    /// Colostrum kept frozen for one lamb, in milliliters.
    ColostrumEach,
    /// Days before lambing at which something starts.
    DaysBefore,
}

/// The least and the most that a figure may be, both allowed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowed {
    /// Whose.
    pub figure: Figure,
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

/// A figure outside what it may be: which, what was given, and what is allowed, in that figure's own unit.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{figure:?} of {given} is not between {least} and {most}", figure = .allowed.figure, least = .allowed.least, most = .allowed.most)]
pub struct Refused {
    /// What was given.
    pub given: f64,
    /// What is allowed.
    pub allowed: Allowed,
}

impl Allowed {
    /// Returns the figure if it lies within.
    ///
    /// # Errors
    /// It lies outside, or is no number.
    ///
    /// ```
    /// use yeanling_core::reckon::season::bounds::CONCEPTION;
    /// assert!(CONCEPTION.check(0.75).is_ok() && CONCEPTION.check(75.0).is_err());
    /// ```
    pub fn check(self, given: f64) -> Result<f64, Refused> {
        if given >= self.least && given <= self.most {
            Ok(given)
        } else {
            Err(Refused { given, allowed: self })
        }
    }
}

const fn allowed(figure: Figure, least: f64, most: f64) -> Allowed {
    Allowed { figure, least, most }
}

/// A share that holds: none to all.
pub const CONCEPTION: Allowed = allowed(Figure::Conception, 0.0, 1.0);
/// A mean gestation: what is possible at all, 138 to 159 d.
pub const GESTATION_MEAN: Allowed = allowed(Figure::GestationMean, 138.0, 159.0);
/// A spread of gestation: 1 to 5 d (ours, around the recalled 2.0 to 2.5).
pub const GESTATION_SPREAD: Allowed = allowed(Figure::GestationSpread, 1.0, 5.0);
/// A ram with his group: 1 to 366 d (ours).
pub const DAYS_WITH_RAM: Allowed = allowed(Figure::DaysWithRam, 1.0, 366.0);
/// Cycles: none to 22, as many as a year holds (ours).
pub const CYCLES: Allowed = allowed(Figure::Cycles, 0.0, 22.0);
/// Ewes: 1 to 3,000 (ours; all groups together).
pub const EWES: Allowed = allowed(Figure::Ewes, 1.0, 3000.0);
/// One litter size: none to all.
pub const LITTER_SHARE: Allowed = allowed(Figure::LitterShare, 0.0, 1.0);
/// All litter sizes together: the whole, to a millionth.
pub const LITTER_SHARES: Allowed = allowed(Figure::LitterShares, 0.999_999, 1.000_001);
/// Days of a forecast: at most 800 (ours: two ram seasons).
pub const DAYS_OF_FORECAST: Allowed = allowed(Figure::DaysOfForecast, 1.0, 800.0);
/// The age of an unborn lamb that a scan can tell: 30 to 120 d (ours; usually 40 to 90, memory).
pub const AGE_AT_SCAN: Allowed = allowed(Figure::AgeAtScan, 30.0, 120.0);
/// Lambs at a scan: none to 7 (ours).
pub const LAMBS_AT_SCAN: Allowed = allowed(Figure::LambsAtScan, 0.0, 7.0);
/// Crayons are looked at each day, or at least every 17 d, one cycle (ours).
pub const DAYS_BETWEEN_LOOKS: Allowed = allowed(Figure::DaysBetweenLooks, 1.0, 17.0);
/// A condition score (Russel, Doney & Gunn 1969; 0 is near death and is none here).
pub const CONDITION_SCORE: Allowed = allowed(Figure::ConditionScore, 1.0, 5.0);
/// A grown ewe: 25 to 200 kg (ours).
pub const EWE_WEIGHT: Allowed = allowed(Figure::EweWeight, 25.0, 200.0);
/// A ewe's gain: 10 to 500 g a day (ours).
pub const GAIN_IN_A_DAY: Allowed = allowed(Figure::GainInADay, 0.01, 0.5);
/// One feed for one ewe in a day: nothing to 15 kg as fed, as much as wet silage or roots (ours).
pub const FED_IN_A_DAY: Allowed = allowed(Figure::FedInADay, 0.0, 15.0);
/// Feeds in a ration.
pub const FEEDS: Allowed = allowed(Figure::Feeds, 1.0, 5.0);
/// Any share: nothing to the whole.
pub const SHARE: Allowed = allowed(Figure::Share, 0.0, 1.0);
/// Dry matter of a feed: 5 to 100 % (ours).
pub const DRY_MATTER: Allowed = allowed(Figure::Share, 0.05, 1.0);
/// What is wasted of a feed: nothing to 60 % (ours; printed up to 45).
pub const WASTE: Allowed = allowed(Figure::Share, 0.0, 0.6);
/// Metabolizable energy: nothing to 5 Mcal/kg; pure starch has less than 4, fat more (ours).
pub const ENERGY_OF_FEED: Allowed = allowed(Figure::EnergyOfFeed, 0.0, 5.0);
/// Copper: nothing to all of it, a million ppm; what is too much is judged by the whole diet, not refused (ours).
pub const COPPER_IN_FEED: Allowed = allowed(Figure::CopperInFeed, 0.0, 1_000_000.0);
/// Selenium: nothing to 90 ppm, the most that US law lets into a free-choice mineral (FDA 1997).
pub const SELENIUM_IN_FEED: Allowed = allowed(Figure::SeleniumInFeed, 0.0, 90.0);
/// Feed for one ewe in one season: nothing to 1,500 kg, four kilograms a day for a year (ours).
pub const FEED_FOR_ONE_EWE: Allowed = allowed(Figure::FeedForOneEwe, 0.0, 1500.0);
/// Days of feeding: 1 to 366.
pub const DAYS_OF_FEEDING: Allowed = allowed(Figure::DaysOfFeeding, 1.0, 366.0);
/// A bale or a bag: 5 to 1,000 kg (ours).
pub const BALE: Allowed = allowed(Figure::Bale, 5.0, 1000.0);
/// A step of a new feed: 10 to 250 g (ours; 50 to 100 are recalled).
pub const STEP: Allowed = allowed(Figure::Step, 0.01, 0.25);
/// Days between two steps: 1 to 7 (ours; 2 to 3 are recalled).
pub const DAYS_BETWEEN_STEPS: Allowed = allowed(Figure::DaysBetweenSteps, 1.0, 7.0);
/// Units a use takes: up to 1,000 (ours).
pub const UNITS_PER_USE: Allowed = allowed(Figure::UnitsPerUse, 0.0, 1000.0);
/// Frozen colostrum for one lamb: nothing to 2,000 ml (ours).
pub const COLOSTRUM_EACH: Allowed = allowed(Figure::ColostrumEach, 0.0, 2000.0);
/// Days before lambing: nothing to 120 (ours).
pub const DAYS_BEFORE: Allowed = allowed(Figure::DaysBefore, 0.0, 120.0);
