//! The dates of a season: crayon changes, ram out, scoring, extra feed and its steps, the booster, the nights to watch.

use super::bounds::{DAYS_BEFORE, DAYS_BETWEEN_LOOKS, Refused};
use super::days::{between, float, later};
use super::feed_steps::Steps;
use super::mating::Mating;
use crate::reckon::cited::{common, ours, seen};
use crate::sort_small::SortSmall;
use crate::source::Source;
use crate::units::{Mass, NaiveDate};

/// The booster is due so many days before the earliest lambing (Maryland, NCSU, Missouri).
pub const BOOSTER_BEFORE: i64 = 28;

/// And may be given from so many days before it to so many (Maryland, NCSU, Missouri).
pub const BOOSTER_WINDOW: (i64, i64) = (42, 14);

/// Extra feed goes on for so many days after the last lambing, or until there is grass (common practice).
pub const FEED_AFTER: i64 = 56;

/// Ewes are scored so many days before the ram: a whole score takes that long (ours, from SRUC's 6 to 8 weeks).
pub const SCORE_BEFORE_RAM: i64 = 56;

/// Ewes are scored so many days after ram in, at mid pregnancy (ours).
pub const SCORE_AT_MID: i64 = 75;

/// Ewes are scored so many days before the earliest lambing: the lambs do most of their growing after it (ours).
pub const SCORE_LATE: i64 = 42;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Maryland, NCSU, Missouri", "Booster 28 d before the earliest lambing, window 42 to 14 d", None, ""),
    seen("Feed mill", "Extra feed from 3 to 4 weeks before at 130 to 175%, 4 to 6 at 180 to 225%", None, ""),
    seen("Guides", "Crayons are changed after 16 to 17 d, or 14 to 15, or weekly", None, ""),
    seen("NMSU", "About 70% of the lamb’s growth is in the last six weeks", None, ""),
    common("Extra feed from eight weeks before lambing to eight weeks after, or until grass"),
    ours("The longer of a feed mill’s weeks; 176% and more counts as prolific"),
    ours("Scoring 8 weeks before the ram, at ram in, 75 d after it, and 6 weeks before lambing"),
];

/// How many lambs a flock has, as it is fed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Crop {
    /// 130 to 175 lambs for a hundred ewes.
    #[default]
    Usual,
    /// 180 to 225.
    Prolific,
}

impl Crop {
    /// Returns the crop of so many lambs for a hundred ewes: over 175 is prolific (ours, the safer branch).
    #[must_use]
    pub const fn of_percent(percent: u16) -> Self {
        match percent {
            0..=175 => Self::Usual,
            176..=u16::MAX => Self::Prolific,
        }
    }
}

/// When extra feed starts, by whose rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FeedFrom {
    /// Four weeks before the earliest lambing, six when prolific: the longer end of a feed mill's.
    Mill(Crop),
    /// Eight weeks before (common practice).
    EightWeeks,
    /// The farm's own days before the earliest lambing, at most 120.
    Own {
        /// Days before.
        days: u16,
    },
}

impl FeedFrom {
    /// Returns the days before the earliest lambing.
    #[must_use]
    pub const fn days(self) -> i64 {
        match self {
            Self::Mill(Crop::Usual) => 28,
            Self::Mill(Crop::Prolific) => 42,
            Self::EightWeeks => 56,
            Self::Own { days } => days as i64,
        }
    }

    /// Returns the fewest and the most days before that the rule's own source prints.
    #[must_use]
    pub const fn range(self) -> (i64, i64) {
        match self {
            Self::Mill(Crop::Usual) => (21, 28),
            Self::Mill(Crop::Prolific) => (28, 42),
            Self::EightWeeks => (56, 56),
            Self::Own { days } => (days as i64, days as i64),
        }
    }
}

/// What a farm chose for its season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choices {
    /// Crayons are changed every so many days, 1 to 17.
    pub crayon_days: u8,
    /// When extra feed starts.
    pub feed_from: FeedFrom,
    /// How it is brought in.
    pub steps: Steps,
}

impl Default for Choices {
    /// Crayons every 16 days, extra feed from four weeks before, by the usual steps.
    fn default() -> Self {
        Self { crayon_days: 16, feed_from: FeedFrom::Mill(Crop::Usual), steps: Steps::default() }
    }
}

/// What is to be done on a date.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DateTask {
    /// Score the ewes while there is time to mend them.
    ScoreBeforeRam,
    /// Score the ewes as the ram goes in.
    ScoreAtRam,
    /// Change the crayon for another color.
    CrayonChange {
        /// Which change, counted from 1.
        number: u16,
    },
    /// Take the ram out.
    RamOut,
    /// Score the ewes at mid pregnancy.
    ScoreAtMid,
    /// Score the ewes before the lambs' last growth.
    ScoreLate,
    /// Start the extra feed, or give more of it.
    Feed {
        /// For one ewe a day from now on.
        each: Mass,
    },
    /// Give the booster.
    Booster {
        /// The first day on which it may be given.
        from: NaiveDate,
        /// The last day on which it may be given.
        until: NaiveDate,
    },
    /// Watch the ewes by night from now on.
    WatchFrom,
    /// The last night to watch.
    WatchUntil,
    /// Stop the extra feed, if there is grass.
    FeedUntil,
}

/// One date of a season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dated {
    /// When.
    pub date: NaiveDate,
    /// What.
    pub what: DateTask,
}

/// Returns the dates of a group's season, the earliest first.
///
/// `window` are the first and the last day on which a ewe may lamb: `Mating::window`, or narrower once marks and scans
/// tell more.
///
/// # Errors
/// The crayon's days are outside `DAYS_BETWEEN_LOOKS`, or the farm's own days before lambing outside `DAYS_BEFORE`.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::dates::{Choices, DateTask, dates};
/// use yeanling_core::reckon::season::gestation::Gestation;
/// use yeanling_core::reckon::season::mating::Mating;
/// let date = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
/// let mating = Mating::new(date(2026, 10, 1), None).unwrap();
/// let all = dates(mating, mating.window(Gestation::default()), &Choices::default()).unwrap();
/// let booster = all.iter().find(|one| matches!(one.what, DateTask::Booster { .. })).unwrap();
/// assert_eq!(booster.date, date(2027, 1, 23));
/// ```
pub fn dates(
    mating: Mating,
    window: (NaiveDate, NaiveDate),
    choices: &Choices,
) -> Result<Vec<Dated>, Refused> {
    let every = DAYS_BETWEEN_LOOKS.check(f64::from(choices.crayon_days)).map(|_| choices.crayon_days)?;
    let feed_days = choices.feed_from.days();
    DAYS_BEFORE.check(float(feed_days))?;
    let (ram_in, ram_out) = (mating.ram_in(), mating.ram_out());
    let (first, last) = window;
    let on = |date, what| Dated { date, what };
    let before = |days: i64| later(first, -days);
    let (booster_from, booster_until) = (before(BOOSTER_WINDOW.0), before(BOOSTER_WINDOW.1));

    let mut all = vec![
        on(later(ram_in, -SCORE_BEFORE_RAM), DateTask::ScoreBeforeRam),
        on(ram_in, DateTask::ScoreAtRam),
        on(ram_out, DateTask::RamOut),
        on(later(ram_in, SCORE_AT_MID), DateTask::ScoreAtMid),
        on(before(SCORE_LATE), DateTask::ScoreLate),
        on(before(BOOSTER_BEFORE), DateTask::Booster { from: booster_from, until: booster_until }),
        on(first, DateTask::WatchFrom),
        on(last, DateTask::WatchUntil),
        on(later(last, FEED_AFTER), DateTask::FeedUntil),
    ];
    let changes = (between(ram_in, ram_out) / i64::from(every)).max(0);
    for number in 1..=u16::try_from(changes).unwrap_or(u16::MAX) {
        let date = later(ram_in, i64::from(number) * i64::from(every));
        if date < ram_out {
            all.push(on(date, DateTask::CrayonChange { number }));
        }
    }
    let start = before(feed_days);
    all.extend(
        choices.steps.all().into_iter().map(|(day, each)| on(later(start, day), DateTask::Feed { each })),
    );
    all.sort_small_by_key(|one| one.date);
    Ok(all)
}
