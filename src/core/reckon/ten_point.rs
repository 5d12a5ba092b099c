//! The ten-point newborn score: five signs of 0, 1 or 2 points, 10 the liveliest, as published for 75 Polypay lambs.
//!
//! It runs against the four grades, of which 1 is the best, so points never travel without their scale. Without an ear
//! oximeter the breathing is left out and the scale is another one, out of eight: adapted (ours), without bands.
//!
//! Eight points have no bands: none are published without the oximeter, and none are scaled.

use super::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::{BoundFor, Bounds, OutOfBounds};

/// What a newborn's pulse can be, in beats a minute: 0 to 400 (ours).
pub const PULSE: Bounds<u16> = Bounds { least: 0, most: 400, why: BoundFor::Pulse };

/// What an ear oximeter can read, in percent.
pub const OXYGEN: Bounds<u8> = Bounds { least: 0, most: 100, why: BoundFor::Percent };

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Ten-point newborn score", "75 Polypay lambs", None, ""),
    memory("Bands 7–10, 4–6 and 0–3"),
    ours("Without an oximeter the score is out of 8 and has no bands"),
];

/// The points of one sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Points {
    /// 0.
    Zero,
    /// 1.
    One,
    /// 2.
    Two,
}

impl Points {
    /// Returns the number, 0 to 2.
    #[must_use]
    pub const fn number(self) -> u8 {
        match self {
            Self::Zero => 0,
            Self::One => 1,
            Self::Two => 2,
        }
    }
}

/// One of the five signs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// Beats a minute: under 100, 100 to 175, over 175.
    Pulse,
    /// Oxygen at the ear: under 45%, 45 to 65, over 65.
    Breathing,
    /// Gums: blue, pale, pink.
    Gums,
    /// The nose touched: nothing, slight, shakes its head.
    Nose,
    /// The rump touched: nothing, moves, tries to rise.
    Rump,
}

impl Sign {
    /// All five, in the order of the publication.
    pub const ALL: [Self; 5] = [Self::Pulse, Self::Breathing, Self::Gums, Self::Nose, Self::Rump];
}

/// The points of each sign; breathing only with an oximeter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Signs {
    /// The pulse.
    pub pulse: Points,
    /// The breathing; none without an oximeter.
    pub breathing: Option<Points>,
    /// The gums.
    pub gums: Points,
    /// The nose touched.
    pub nose: Points,
    /// The rump touched.
    pub rump: Points,
}

/// Which scale a score is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Out of ten, as published.
    TenPoint,
    /// Out of eight, without the breathing: adapted (ours).
    EightPointAdapted,
}

impl Scale {
    /// Returns the most points on it; the least are 0.
    #[must_use]
    pub const fn most(self) -> u8 {
        match self {
            Self::TenPoint => 10,
            Self::EightPointAdapted => 8,
        }
    }
}

/// What a score of ten comes to (memory), the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// 0 to 3.
    Weak,
    /// 4 to 6.
    Middling,
    /// 7 to 10.
    Strong,
}

/// A score, never without its scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Score {
    /// The points.
    pub points: u8,
    /// The scale they are on.
    pub scale: Scale,
    /// What they come to; none on the adapted scale, for which no bands are published and none are scaled (ours).
    pub band: Option<Band>,
}

/// More points than a scale has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{given} points are more than {most}")]
pub struct TooManyPoints {
    /// What was given.
    pub given: u8,
    /// The most on the scale.
    pub most: u8,
}

/// Returns the points of a pulse in beats a minute.
///
/// # Errors
/// It is outside `PULSE`.
pub fn pulse(beats: u16) -> Result<Points, OutOfBounds<u16>> {
    Ok(match PULSE.check(beats)? {
        0..100 => Points::Zero,
        100..=175 => Points::One,
        176..=u16::MAX => Points::Two,
    })
}

/// Returns the points of the oxygen at the ear, in percent.
///
/// # Errors
/// It is outside `OXYGEN`.
pub fn oxygen(percent: u8) -> Result<Points, OutOfBounds<u8>> {
    Ok(match OXYGEN.check(percent)? {
        0..45 => Points::Zero,
        45..=65 => Points::One,
        66..=u8::MAX => Points::Two,
    })
}

/// Returns the score of five signs, or of four without an oximeter.
///
/// ```
/// use yeanling_core::reckon::ten_point::{Band, Points, Scale, Signs, score};
/// let two = Points::Two;
/// let signs = Signs { pulse: two, breathing: Some(two), gums: two, nose: Points::One, rump: Points::Zero };
/// let whole = score(&signs);
/// assert_eq!((whole.points, whole.scale, whole.band), (7, Scale::TenPoint, Some(Band::Strong)));
/// let adapted = score(&Signs { breathing: None, ..signs });
/// assert_eq!((adapted.points, adapted.scale, adapted.band), (5, Scale::EightPointAdapted, None));
/// ```
#[must_use]
pub fn score(signs: &Signs) -> Score {
    let four = [signs.pulse, signs.gums, signs.nose, signs.rump];
    let points = four.into_iter().chain(signs.breathing).map(Points::number).sum();
    let scale = if signs.breathing.is_some() { Scale::TenPoint } else { Scale::EightPointAdapted };
    Score { points, scale, band: band(points, scale) }
}

/// Returns a score that was noted as a number on a scale.
///
/// # Errors
/// There are more points than the scale has.
pub fn from_points(points: u8, scale: Scale) -> Result<Score, TooManyPoints> {
    let most = scale.most();
    if points > most {
        return Err(TooManyPoints { given: points, most });
    }
    Ok(Score { points, scale, band: band(points, scale) })
}

const fn band(points: u8, scale: Scale) -> Option<Band> {
    match (scale, points) {
        (Scale::TenPoint, 0..=3) => Some(Band::Weak),
        (Scale::TenPoint, 4..=6) => Some(Band::Middling),
        (Scale::TenPoint, 7..=u8::MAX) => Some(Band::Strong),
        (Scale::EightPointAdapted, _) => None,
    }
}
