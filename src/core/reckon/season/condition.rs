//! What a ewe's condition should be, how far she is from it, and how long it takes to mend.
//!
//! Scored by hand over the loin behind the last rib, 1 to 5 in quarters (Russel, Doney & Gunn 1969); 0 is near death.

use super::bounds::{CONDITION_SCORE, EWE_WEIGHT, GAIN_IN_A_DAY, Refused};
use super::days::{counted, whole};
use crate::reckon::cited::{ours, seen};
use crate::source::{HowKnown, Source};
use crate::units::Mass;

/// One whole score is this share of body weight, and the range that is printed (FAS, SRUC, Montana: 10 to 14%).
pub const SCORE_IS: f64 = 0.12;

/// The least and the most that is printed for it.
pub const SCORE_IS_RANGE: (f64, f64) = (0.10, 0.14);

/// One whole score takes about so many weeks.
pub const SCORE_TAKES_WEEKS: u8 = 8;

/// A change of more than so many scores late in pregnancy is flagged (ours).
pub const LATE_CHANGE: f64 = 0.5;

/// From this score on a ewe is too fat in her last month: prolapse and toxemia (NADIS).
pub const TOO_FAT: f64 = 4.0;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Russel, Doney & Gunn", "Condition scores", Some(1969), ""),
    seen("FAS Scotland", "Targets for lowland, upland and hill; a score is 10 to 14% of weight", None, ""),
    seen("Making More from Sheep", "Targets and least scores, Australia", None, ""),
    Source {
        authors: "Oregon State University",
        title: "Targets, EC 1433",
        year: None,
        place: "",
        known: HowKnown::Memory,
    },
    seen("SRUC", "80 kg, one score: 9.5 kg, 6 to 8 weeks", None, ""),
    seen("NADIS", "Score 4 and over in the last month: risk of prolapse and toxemia", None, ""),
    ours("A change of more than half a score late in pregnancy is flagged"),
];

/// A condition score, 1 to 5. Kept in quarters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Score(u8);

impl Score {
    /// Returns a score; what lies between two quarters goes to the nearer one.
    ///
    /// # Errors
    /// The score is outside 1 to 5, or no number.
    ///
    /// ```
    /// use yeanling_core::reckon::season::condition::Score;
    /// assert_eq!(Score::from_points(2.7).unwrap().as_points(), 2.75);
    /// assert!(Score::from_points(0.5).is_err());
    /// ```
    pub fn from_points(points: f64) -> Result<Self, Refused> {
        let quarters = whole((CONDITION_SCORE.check(points)? * 4.0).round());
        Ok(Self(u8::try_from(quarters).unwrap_or(4)))
    }

    /// Returns the score in points, 1 to 5.
    #[must_use]
    pub fn as_points(self) -> f64 {
        f64::from(self.0) / 4.0
    }
}

/// By whose targets a flock is kept.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum System {
    /// UK lowland (FAS Scotland).
    #[default]
    Lowland,
    /// UK upland (FAS Scotland).
    Upland,
    /// UK hill (FAS Scotland).
    Hill,
    /// Australia (Making More from Sheep).
    Australia,
    /// US (Oregon EC 1433, memory).
    Us,
}

impl System {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Lowland, Self::Upland, Self::Hill, Self::Australia, Self::Us];

    /// Returns how its targets are known.
    #[must_use]
    pub const fn known(self) -> HowKnown {
        match self {
            Self::Lowland | Self::Upland | Self::Hill | Self::Australia => HowKnown::Seen,
            Self::Us => HowKnown::Memory,
        }
    }
}

/// A time of a ewe's year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ConditionStage {
    /// The ram goes in.
    Mating,
    /// The middle of pregnancy.
    MidPregnancy,
    /// Late in pregnancy.
    LatePregnancy,
    /// At lambing.
    Lambing,
    /// When lambs are weaned.
    Weaning,
}

impl ConditionStage {
    /// All of them, in the order of the year.
    pub const ALL: [Self; 5] =
        [Self::Mating, Self::MidPregnancy, Self::LatePregnancy, Self::Lambing, Self::Weaning];
}

/// What a score should be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Target {
    /// The least that is good.
    pub low: f64,
    /// The most that is good; none where only a least is printed.
    pub high: Option<f64>,
    /// The least that no ewe should be under; none where none is printed.
    pub least: Option<f64>,
}

const fn just(score: f64) -> Option<Target> {
    Some(Target { low: score, high: Some(score), least: None })
}

const fn from_to(low: f64, high: f64) -> Option<Target> {
    Some(Target { low, high: Some(high), least: None })
}

const fn australia(score: f64) -> Option<Target> {
    Some(Target { low: score, high: Some(score), least: Some(2.5) })
}

/// Returns what the score should be at a time of year, for so many lambs if known; none where none is printed.
///
/// Lambs count in late pregnancy and at lambing; where they are not known the range spans one and two.
///
/// ```
/// use yeanling_core::reckon::season::condition::{ConditionStage, System, target};
/// assert_eq!(target(System::Hill, ConditionStage::Mating, None).unwrap().low, 2.5);
/// assert!(target(System::Hill, ConditionStage::LatePregnancy, None).is_none());
/// ```
#[must_use]
pub const fn target(system: System, stage: ConditionStage, lambs: Option<u8>) -> Option<Target> {
    match (system, stage) {
        (System::Lowland, ConditionStage::Mating) => just(3.5),
        (System::Lowland, ConditionStage::MidPregnancy | ConditionStage::Lambing)
        | (System::Upland, ConditionStage::Mating) => just(3.0),
        (System::Lowland, ConditionStage::Weaning)
        | (System::Upland, ConditionStage::MidPregnancy | ConditionStage::Lambing)
        | (System::Hill, ConditionStage::Mating) => just(2.5),
        (System::Upland, ConditionStage::Weaning)
        | (System::Hill, ConditionStage::MidPregnancy | ConditionStage::Lambing | ConditionStage::Weaning) => {
            just(2.0)
        }
        (System::Lowland | System::Upland | System::Hill, ConditionStage::LatePregnancy)
        | (System::Australia, ConditionStage::Lambing | ConditionStage::Weaning) => None,
        (System::Australia, ConditionStage::Mating | ConditionStage::MidPregnancy) => australia(3.0),
        (System::Australia, ConditionStage::LatePregnancy) => match lambs {
            Some(0 | 1) => australia(3.0),
            Some(2..=u8::MAX) => australia(3.3),
            None => Some(Target { low: 3.0, high: Some(3.3), least: Some(2.5) }),
        },
        (System::Us, ConditionStage::Mating) => from_to(3.0, 4.0),
        (System::Us, ConditionStage::MidPregnancy) => from_to(2.5, 4.0),
        (System::Us, ConditionStage::LatePregnancy | ConditionStage::Lambing) => match lambs {
            Some(0 | 1) => from_to(3.0, 3.5),
            Some(2..=u8::MAX) => from_to(3.5, 4.0),
            None => from_to(3.0, 4.0),
        },
        (System::Us, ConditionStage::Weaning) => Some(Target { low: 2.0, high: None, least: None }),
    }
}

/// How far one score is from another, and how long the way is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// Scores to gain; under zero to lose.
    pub scores: f64,
    /// Kilograms to gain at 12% of body weight a score; under zero to lose.
    pub kilograms: f64,
    /// The same at 10 and at 14%.
    pub range_kilograms: (f64, f64),
    /// Days at the gain that was given; none where there is nothing to gain.
    pub days: Option<f64>,
}

/// Returns what it takes to bring a ewe from one score to another.
///
/// `Δkg = Δscore × 0.12 × W`, `days = Δkg ÷ gain`. `gain` is a ewe's gain in a day.
///
/// # Errors
/// The weight is outside `EWE_WEIGHT`, or the gain outside `GAIN_IN_A_DAY`.
///
/// ```
/// use yeanling_core::reckon::season::condition::{Score, change};
/// use yeanling_core::units::Mass;
/// let score = |points| Score::from_points(points).unwrap();
/// let change = change(Mass::from_kilograms(80.0), score(2.0), score(3.0), Mass::from_kilograms(0.17)).unwrap();
/// assert!((change.kilograms - 9.6).abs() < 1e-9 && (change.days.unwrap() - 56.5).abs() < 0.05);
/// ```
pub fn change(weight: Mass, from: Score, to: Score, gain: Mass) -> Result<Change, Refused> {
    let weight = EWE_WEIGHT.check(weight.as_kilograms())?;
    let gain = GAIN_IN_A_DAY.check(gain.as_kilograms())?;
    let scores = to.as_points() - from.as_points();
    let kilograms = scores * SCORE_IS * weight;
    let range_kilograms = (scores * SCORE_IS_RANGE.0 * weight, scores * SCORE_IS_RANGE.1 * weight);
    let days = (scores > 0.0).then(|| kilograms / gain);
    Ok(Change { scores, kilograms, range_kilograms, days })
}

/// What a score calls for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flag {
    /// Under the least that is printed.
    UnderLeast,
    /// Under the target.
    Under,
    /// Over the target.
    Over,
    /// Changed by more than half a score late in pregnancy.
    ChangedLate,
    /// Score 4 and over in the last month: prolapse and toxemia.
    TooFatLate,
}

/// Where a ewe stands in her year, as far as flags need it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StageOfYear {
    /// Her time of year.
    pub stage: ConditionStage,
    /// Lambs she carries, if known.
    pub lambs: Option<u8>,
    /// Days until her earliest lambing, if she is in lamb.
    pub days_to_lambing: Option<i64>,
    /// The score before this one.
    pub before: Option<Score>,
}

/// Returns what a score calls for, most urgent first; nothing if all is well.
///
/// ```
/// use yeanling_core::reckon::season::condition::{Flag, Score, ConditionStage, StageOfYear, System, flags};
/// let score = |points| Score::from_points(points).unwrap();
/// let late = StageOfYear { stage: ConditionStage::LatePregnancy, lambs: Some(2), days_to_lambing: Some(20), before: Some(score(3.0)) };
/// assert_eq!(flags(System::Lowland, score(4.0), late), [Flag::TooFatLate, Flag::ChangedLate]);
/// ```
#[must_use]
pub fn flags(system: System, score: Score, standing: StageOfYear) -> Vec<Flag> {
    let points = score.as_points();
    let target = target(system, standing.stage, standing.lambs);
    let last = |days: i64| standing.days_to_lambing.is_some_and(|left| (0..=days).contains(&left));
    let is_late = last(42) || standing.stage == ConditionStage::LatePregnancy;
    let changed = standing.before.map_or(0.0, |before| (points - before.as_points()).abs());
    let mut flags = Vec::new();
    if target.and_then(|target| target.least).is_some_and(|least| points < least) {
        flags.push(Flag::UnderLeast);
    }
    if last(30) && points >= TOO_FAT {
        flags.push(Flag::TooFatLate);
    }
    if is_late && changed > LATE_CHANGE {
        flags.push(Flag::ChangedLate);
    }
    // Targets such as 3.3 lie between two quarters: the quarter under them is good enough.
    if target.is_some_and(|target| points < target.low - 0.125) {
        flags.push(Flag::Under);
    }
    if target.and_then(|target| target.high).is_some_and(|high| points > high + 0.125) {
        flags.push(Flag::Over);
    }
    flags
}

/// Returns the mean of scores; none of none.
#[must_use]
pub fn mean(scores: &[Score]) -> Option<f64> {
    let sum: f64 = scores.iter().map(|score| score.as_points()).sum();
    (!scores.is_empty()).then(|| sum / counted(scores.len()))
}
