//! How often a newborn is fed, and how much is too much.
//!
//! The guard stands between a slip of the thumb and a lamb: 60 ml/kg at once and 300 ml/kg in a day are more than any
//! source asks for in the first week, and are refused with the reason (ours).

use super::PerKilogram;
use super::cited::{AHDB, IRISH_FARMERS, RUMA, VET_SUPPLIER, VET_TIMES, ours};
use super::colostrum::ColostrumTarget;
use super::window::CLOSE;
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, TimeDelta, Volume};

/// The most at once in the first week (ours: guidance is 50, and rounding must pass).
pub const MOST_AT_ONCE: PerKilogram = PerKilogram::from_milliliters(60.0);

/// The most in 24 h in the first week (ours: the widest printed range ends at 290).
pub const MOST_IN_A_DAY: PerKilogram = PerKilogram::from_milliliters(300.0);

/// The weight taken for a lamb of unknown weight: an ordinary triplet, 78% of 5 kg, rounded (ours).
///
/// It is the lightest ordinary lamb, so a heavier one is asked to be weighed before it is given more than 240 ml.
pub const ASSUMED: Mass = Mass::from_kilograms(4.0);

/// The age at which the first week is over.
pub const FIRST_WEEK: TimeDelta = TimeDelta::days(7);

/// The most at once after the first week: the largest feed printed in the vet supplier's table.
pub const MOST_AT_ONCE_LATER: Volume = Volume::from_milliliters(1000.0);

/// The most in 24 h after the first week: three of the largest feeds (ours; no table passes 2,100 ml).
pub const MOST_IN_A_DAY_LATER: Volume = Volume::from_milliliters(3000.0);

/// The shortest and the longest time between two feeds of the first day (ours).
pub const SPACING: (TimeDelta, TimeDelta) = (TimeDelta::hours(2), TimeDelta::hours(6));

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    AHDB,
    VET_TIMES,
    IRISH_FARMERS,
    RUMA,
    VET_SUPPLIER,
    ours("Over 60 ml/kg at once or 300 ml/kg in a day is refused in the first week"),
    ours("A lamb of unknown weight counts as 4 kg, an ordinary triplet"),
    ours("After a week, over 1000 ml at once or 3000 ml in a day is refused"),
    ours("Feeds are 2 to 6 h apart, spaced to meet the 6, 18 and 24 h volumes"),
];

/// Which of the two guards refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Guard {
    /// Under 7 days old: by weight.
    FirstWeek,
    /// 7 days and older: the same for all.
    Later,
}

/// Why a feed is refused.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum Rejection {
    /// It is no feed at all.
    #[error("not a feed: {0}")]
    NotAVolume(OutOfBounds<Volume>),
    /// The weight is none that a lamb has in its first week.
    #[error("not a weight: {0}")]
    NotAWeight(OutOfBounds<Mass>),
    /// One feed is too large.
    #[error("{given:?} at once is over {most:?}")]
    TooMuchAtOnce {
        /// What was to be given.
        given: Volume,
        /// The most that is let through.
        most: Volume,
        /// The lamb's weight; none if unknown, then `ASSUMED` was taken.
        weight: Option<Mass>,
        /// Which guard.
        guard: Guard,
    },
    /// The day would come to too much.
    #[error("{would_be:?} in a day is over {most:?}")]
    TooMuchInADay {
        /// What the last 24 h would come to.
        would_be: Volume,
        /// The most that is let through.
        most: Volume,
        /// The lamb's weight; none if unknown, then `ASSUMED` was taken.
        weight: Option<Mass>,
        /// Which guard.
        guard: Guard,
    },
}

/// The next feed of a lamb fed by hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Next {
    /// How much.
    pub volume: Volume,
    /// The age at which it is due; it lies in the past when the feed is late.
    pub due_age: TimeDelta,
    /// How many feeds are still wanted, this one among them.
    pub feeds_left: u8,
}

/// Returns how many feeds a total makes: `ceil(total ÷ most at once)`.
///
/// None if the most at once is not above zero, either is no number, or it would take more than 255 feeds.
///
/// ```
/// use yeanling_core::reckon::feeds::count;
/// use yeanling_core::units::Volume;
/// let feeds = count(Volume::from_milliliters(840.0), Volume::from_milliliters(200.0));
/// assert_eq!(feeds, Some(5));
/// ```
#[must_use]
pub fn count(total: Volume, most_at_once: Volume) -> Option<u8> {
    let most = most_at_once.as_milliliters();
    let enough = |feeds: &u8| f64::from(*feeds) * most + DUST >= total.as_milliliters();
    if most > 0.0 { (0..=u8::MAX).find(enough) } else { None }
}

/// What sums of binary fractions may be off by, in milliliters.
const DUST: f64 = 1e-6;

/// Half of the tenth of a milliliter to which a typed volume is kept.
const TYPED_TOLERANCE: f64 = 0.05;

/// Lets a feed through or says why not.
///
/// In the first 7 days the limits go by weight: 60 ml/kg at once, 300 ml/kg in the last 24 h; an unknown weight counts
/// as 4 kg. A feed of 50 ml/kg rounded to 5 ml always passes. After that 1000 ml at once and 3000 ml in 24 h hold for
/// all and the weight is left aside, since it may be the birth weight.
///
/// # Errors
/// The volume is outside `Volume::ONE_FEED`, the weight of a lamb in its first week outside `Mass::AT_BIRTH`, the feed
/// too large, or the day too much.
///
/// ```
/// use yeanling_core::reckon::feeds::check;
/// use yeanling_core::units::{Mass, TimeDelta, Volume};
/// let lamb = Some(Mass::from_kilograms(3.9));
/// let feed = |ml| check(Volume::from_milliliters(ml), lamb, TimeDelta::hours(1), Volume::ZERO);
/// assert!(feed(195.0).is_ok());
/// assert!(feed(390.0).is_err());
/// ```
pub fn check(
    volume: Volume,
    weight: Option<Mass>,
    age: TimeDelta,
    given_last_24h: Volume,
) -> Result<(), Rejection> {
    let given = Volume::ONE_FEED.check(volume).map_err(Rejection::NotAVolume)?;
    let guard = if age < FIRST_WEEK { Guard::FirstWeek } else { Guard::Later };
    let (at_once, in_a_day) = match guard {
        Guard::FirstWeek => {
            let weight = Mass::AT_BIRTH.check(weight.unwrap_or(ASSUMED)).map_err(Rejection::NotAWeight)?;
            (MOST_AT_ONCE.of(weight), MOST_IN_A_DAY.of(weight))
        }
        Guard::Later => (MOST_AT_ONCE_LATER, MOST_IN_A_DAY_LATER),
    };
    if !within(given, at_once) {
        return Err(Rejection::TooMuchAtOnce { given, most: at_once, weight, guard });
    }
    let would_be = given_last_24h + given;
    if !within(would_be, in_a_day) {
        return Err(Rejection::TooMuchInADay { would_be, most: in_a_day, weight, guard });
    }
    Ok(())
}

fn within(volume: Volume, most: Volume) -> bool {
    volume.as_milliliters() <= most.as_milliliters() + TYPED_TOLERANCE
}

/// Returns the next feed of a lamb fed by hand in its first 24 h, or none if it has had enough or is 24 h old.
///
/// The volume is one feed, or what the day still wants if that is less. The first feed is due at birth. Every other is
/// due so that the feeds still wanted by 6 h, by 18 h and by 22 h (two hours before the window closes) fit in evenly,
/// 2 to 6 h after the one before (ours; 4 to 5 feeds in 24 h: Irish Farmers Journal). So a housed lamb on 200 ml/kg
/// is fed at 0, 6, 12 and 18 h, one outdoors on 210 every 4½ h. What is less than a tenth of a feed is left to
/// rounding and asks for no feed of its own (ours). After a very late feed the next may be due past 24 h.
///
/// ```
/// use yeanling_core::settings::{DayRule, Housing};
/// use yeanling_core::reckon::{colostrum::target, feeds::next};
/// use yeanling_core::units::{Mass, TimeDelta, Volume};
/// let target = target(Mass::from_kilograms(4.0), DayRule::Ahdb200, Housing::Housed).unwrap();
/// let first = Some(TimeDelta::minutes(30));
/// let next = next(&target, Volume::from_milliliters(200.0), first, TimeDelta::hours(1)).unwrap();
/// assert_eq!((next.volume, next.feeds_left), (Volume::from_milliliters(200.0), 3));
/// assert_eq!(next.due_age, TimeDelta::minutes(30 + 330));
/// ```
#[must_use]
pub fn next(
    target: &ColostrumTarget,
    given: Volume,
    last_fed_age: Option<TimeDelta>,
    age: TimeDelta,
) -> Option<Next> {
    let feeds_left = feeds_to(target.by_24h, given, target.next_feed)?;
    if feeds_left == 0 || age >= CLOSE {
        return None;
    }
    let missing = Volume::from_milliliters(target.by_24h.as_milliliters() - given.as_milliliters());
    let volume = if missing < target.next_feed { missing } else { target.next_feed };
    let due_age = match last_fed_age {
        None => TimeDelta::zero(),
        Some(last) => last + spacing(target, given, last),
    };
    Some(Next { volume, due_age, feeds_left })
}

/// Returns the time to the next feed: the shortest that any edge still ahead asks for, within `SPACING`.
fn spacing(target: &ColostrumTarget, given: Volume, last: TimeDelta) -> TimeDelta {
    let (shortest, longest) = SPACING;
    let edges = [
        (TimeDelta::hours(6), target.by_6h),
        (TimeDelta::hours(18), target.by_18h),
        (CLOSE - shortest, target.by_24h),
    ];
    edges
        .into_iter()
        .filter_map(|(edge, wanted)| {
            let feeds = feeds_to(wanted, given, target.next_feed)?;
            (feeds > 0).then(|| (edge - last) / i32::from(feeds))
        })
        .filter(|apart| *apart > TimeDelta::zero())
        .fold(longest, TimeDelta::min)
        .max(shortest)
}

/// Returns the feeds still wanted to reach a volume; less than a tenth of a feed is left to rounding.
fn feeds_to(wanted: Volume, given: Volume, one_feed: Volume) -> Option<u8> {
    let missing = wanted.as_milliliters() - given.as_milliliters() - one_feed.as_milliliters() / 10.0;
    count(Volume::from_milliliters(missing), one_feed)
}
