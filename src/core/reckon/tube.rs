//! Whether a lamb may be fed by tube: only if every item of the safety list holds; what is not known does not hold.
//!
//! A lamb that drools or whose belly is swollen gets no milk by tube at all: that looks like watery mouth, and is for
//! a vet.

use super::PerKilogram;
use super::body_temperature::{MILD_FROM, warm_enough_to_feed};
use super::cited::{AHDB, HENDERSON, US_EXTENSION, ours, seen};
use super::colostrum::ONE_FEED;
use super::feeds::MOST_AT_ONCE_LATER;
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, Temperature, TimeDelta, Volume};

/// The lamb is at least this warm.
pub const AT_LEAST: Temperature = MILD_FROM;

/// The most at once.
pub const AT_MOST: PerKilogram = ONE_FEED;

/// How long the tube is, in centimeters, the shortest and the longest.
pub const LENGTH_IN_CENTIMETERS: (f64, f64) = (40.0, 46.0);

/// So much runs in over `PORTION_TAKES`.
pub const PORTION: Volume = Volume::from_milliliters(60.0);

/// How long 60 ml take, the quickest and the slowest.
pub const PORTION_TAKES: (TimeDelta, TimeDelta) = (TimeDelta::seconds(20), TimeDelta::seconds(25));

/// The age to which watery mouth is usual (AHDB; Henderson).
pub const WATERY_MOUTH_USUAL_TO: TimeDelta = TimeDelta::days(3);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    HENDERSON,
    seen("Cornell", "", None, ""),
    US_EXTENSION,
    AHDB,
    ours("The strictest reading of each; what is not known does not hold"),
    ours("Drooling or a swollen belly alone is taken for watery mouth; dullness alone is not"),
];

/// One item of the safety list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Item {
    /// 37 °C or warmer.
    Warm,
    /// Awake.
    Awake,
    /// Its head held up.
    HeadUp,
    /// It swallows.
    Swallows,
    /// Its belly not bloated.
    NotBloated,
    /// No more than 50 ml/kg.
    NotTooMuch,
    /// No sign of watery mouth.
    NoWateryMouth,
}

impl Item {
    /// The whole list, in the order in which it is asked.
    pub const ALL: [Self; 7] = [
        Self::Warm,
        Self::Awake,
        Self::HeadUp,
        Self::Swallows,
        Self::NotBloated,
        Self::NoWateryMouth,
        Self::NotTooMuch,
    ];
}

/// What is known of the lamb and of the feed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TubeChecks {
    /// Its temperature.
    pub temperature: Option<Temperature>,
    /// Whether it is awake.
    pub awake: Option<bool>,
    /// Whether it holds its head up.
    pub head_up: Option<bool>,
    /// Whether it swallows.
    pub swallows: Option<bool>,
    /// Whether its belly is bloated or swollen.
    pub swollen_belly: Option<bool>,
    /// Whether it drools.
    pub drools: Option<bool>,
    /// Its weight.
    pub weight: Option<Mass>,
    /// What is to be given.
    pub volume: Option<Volume>,
}

/// Whether a lamb may be fed by tube.
#[derive(Clone, Debug, PartialEq)]
pub struct TubeAnswer {
    /// What was known.
    pub known: TubeChecks,
    /// Items that do not hold.
    pub unmet: Vec<Item>,
    /// Items of which nothing is known; none of them may be left.
    pub unknown: Vec<Item>,
    /// The most that may be given, never over `feeds::MOST_AT_ONCE_LATER`; none while the weight is unknown.
    pub most: Option<Volume>,
}

impl TubeAnswer {
    /// Returns whether every item holds.
    #[must_use]
    pub const fn may(&self) -> bool {
        self.unmet.is_empty() && self.unknown.is_empty()
    }
}

/// Returns whether a lamb may be fed by tube.
///
/// # Errors
/// The weight is outside `Mass::ON_THE_BOTTLE`.
///
/// ```
/// use yeanling_core::reckon::tube::{Item, TubeChecks, check};
/// use yeanling_core::units::Temperature;
/// let cold = TubeChecks { temperature: Some(Temperature::from_celsius(36.0)), ..TubeChecks::default() };
/// assert_eq!(check(cold).unwrap().unmet, [Item::Warm]);
/// ```
pub fn check(known: TubeChecks) -> Result<TubeAnswer, OutOfBounds<Mass>> {
    let weight = known.weight.map(|weight| Mass::ON_THE_BOTTLE.check(weight)).transpose()?;
    let most = weight.map(|weight| {
        let most = AT_MOST.of(weight);
        if most > MOST_AT_ONCE_LATER { MOST_AT_ONCE_LATER } else { most }
    });
    let holds = |item: Item| match item {
        Item::Warm => known.temperature.map(warm_enough_to_feed),
        Item::Awake => known.awake,
        Item::HeadUp => known.head_up,
        Item::Swallows => known.swallows,
        Item::NotBloated => known.swollen_belly.map(|swollen| !swollen),
        Item::NoWateryMouth => known.drools.map(|drools| !drools),
        Item::NotTooMuch => known.volume.zip(most).map(|(volume, most)| within(volume, most)),
    };
    let those = |wanted: Option<bool>| Item::ALL.into_iter().filter(|item| holds(*item) == wanted).collect();
    Ok(TubeAnswer { known, unmet: those(Some(false)), unknown: those(None), most })
}

/// A typed volume is kept to a tenth of a milliliter.
fn within(volume: Volume, most: Volume) -> bool {
    volume.as_milliliters() <= most.as_milliliters() + 0.05
}

/// Returns whether the signs look like watery mouth: no milk by tube, and a vet (AHDB; Henderson).
#[must_use]
pub const fn looks_like_watery_mouth(drools: bool, swollen_belly: bool) -> bool {
    drools || swollen_belly
}

/// Returns how long so much takes by tube, the quickest and the slowest: 60 ml over 20 to 25 s; below zero is nothing.
///
/// ```
/// use yeanling_core::reckon::tube::pour_takes;
/// use yeanling_core::units::{TimeDelta, Volume};
/// let slow = (TimeDelta::seconds(60), TimeDelta::seconds(75));
/// assert_eq!(pour_takes(Volume::from_milliliters(180.0)), slow);
/// ```
#[must_use]
pub fn pour_takes(volume: Volume) -> (TimeDelta, TimeDelta) {
    let portions = (volume.as_milliliters() / PORTION.as_milliliters()).max(0.0);
    // No volume that a book can hold comes near to a day.
    let portions = portions.min(1000.0);
    let seconds = |span: TimeDelta| {
        let whole = span.as_seconds_f64() * portions;
        (0..=25_000).find(|second| f64::from(*second) + 0.5 > whole).unwrap_or(25_000)
    };
    let (quick, slow) = PORTION_TAKES;
    (TimeDelta::seconds(i64::from(seconds(quick))), TimeDelta::seconds(i64::from(seconds(slow))))
}
