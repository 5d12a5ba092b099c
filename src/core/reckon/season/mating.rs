//! When a ram is with his ewes, and the days on which they may lamb for it: ram in + 142 to ram out + 152.
//!
//! A day of mating is a whole day: ewes mate evenly over it, so a mark on day m is `F(t; m, m+1)`, a group's cycle
//! `F(t; 17(k−1), 17k)`, and a night the 24 h of its date. The ram's day in and day out both count.

use super::bounds::{DAYS_WITH_RAM, Refused};
use super::cycles::CYCLE_DAYS;
use super::days::{between, float, later};
use super::gestation::Gestation;
use crate::reckon::cited::{ours, seen};
use crate::source::Source;
use crate::terms::RamAge;
use crate::units::NaiveDate;

/// A ram whose day out is not known counts as taken out after three cycles, in days (ours).
pub const OPEN_DAYS: i64 = 51;

/// A ram that stays counts for twelve cycles, in days (ours): of those that hold three times in four, one in sixteen
/// million is open after them.
pub const STAYS_DAYS: i64 = 204;

/// A ewe lamb comes into heat for the first time so many days after her birth: 5 to 12 months (New Mexico State
/// University).
pub const FIRST_HEAT_DAYS: (u64, u64) = (152, 365);

/// A mating so many days back has brought its lambs: 159 days at most, and one cycle (ours).
const BROUGHT: i64 = 176;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    ours("Ram in + 142 d to ram out + 152 d; the day he comes and the day he goes both count"),
    ours("A ram whose day out is not noted counts as taken out after three cycles, 51 d"),
    ours("A ram that stays counts for twelve cycles, those of which all lambs would be born left out"),
    seen("New Mexico State University", "Ewes reach puberty at 5 to 12 months", None, ""),
    seen("Veterinary manual", "Ewes to a grown ram 35 to 50", None, ""),
    seen("Breed society", "Ewes to a yearling ram 30, to a ram lamb 15 to 25", None, ""),
    ours("Several rams serve together as many as each of them"),
];

/// Returns the fewest and the most ewes that are printed for one ram of this age.
#[must_use]
pub const fn ewes_to_one(ram: RamAge) -> (u32, u32) {
    match ram {
        RamAge::Lamb => (15, 25),
        RamAge::Yearling => (30, 30),
        RamAge::Mature => (35, 50),
    }
}

/// Returns the fewest and the most ewes that are printed for these rams together.
///
/// ```
/// use yeanling_core::reckon::season::mating::ewes_to_rams;
/// use yeanling_core::terms::RamAge;
/// assert_eq!(ewes_to_rams(&[RamAge::Mature, RamAge::Lamb]), (50, 75));
/// ```
#[must_use]
pub fn ewes_to_rams(rams: &[RamAge]) -> (u32, u32) {
    rams.iter()
        .map(|ram| ewes_to_one(*ram))
        .fold((0, 0), |(few, many), (least, most)| (few.saturating_add(least), many.saturating_add(most)))
}

/// A ram with a group: from the day he went in to the day he came out, both counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mating {
    ram_in: NaiveDate,
    ram_out: NaiveDate,
    open: bool,
}

/// Why a ram cannot have been in so.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum WrongDates {
    /// Out before in.
    #[error("ram out on {ram_out} is before ram in on {ram_in}")]
    OutBeforeIn {
        /// The day he went in.
        ram_in: NaiveDate,
        /// The day he came out.
        ram_out: NaiveDate,
    },
    /// In for longer than a season can be.
    #[error("too long with the ram: {0}")]
    TooLong(#[from] Refused),
}

impl Mating {
    /// Returns a ram's time with a group; one whose day out is not known counts as `OPEN_DAYS`.
    ///
    /// # Errors
    /// He comes out before he goes in, or stays longer than `DAYS_WITH_RAM`, 366 d.
    ///
    /// ```
    /// use chrono::NaiveDate;
    /// use yeanling_core::reckon::season::mating::Mating;
    /// let date = |month, day| NaiveDate::from_ymd_opt(2026, month, day).unwrap();
    /// assert_eq!(Mating::new(date(10, 1), Some(date(11, 20))).unwrap().days(), 51);
    /// assert!(Mating::new(date(10, 1), Some(date(9, 30))).is_err());
    /// ```
    pub fn new(ram_in: NaiveDate, ram_out: Option<NaiveDate>) -> Result<Self, WrongDates> {
        let open = ram_out.is_none();
        let ram_out = ram_out.unwrap_or_else(|| later(ram_in, OPEN_DAYS - 1));
        if ram_out < ram_in {
            return Err(WrongDates::OutBeforeIn { ram_in, ram_out });
        }
        DAYS_WITH_RAM.check(float(between(ram_in, ram_out) + 1))?;
        Ok(Self { ram_in, ram_out, open })
    }

    /// Returns the time of a ram that stays, or stayed for longer than `STAYS_DAYS`, as it counts on a day for a ewe that
    /// has not lambed: whole cycles of which all lambs would be born by then are left out, which changes no later one.
    ///
    /// ```
    /// use chrono::NaiveDate;
    /// use yeanling_core::reckon::season::mating::Mating;
    /// let date = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
    /// let stays = |today| Mating::staying(date(2026, 10, 1), None, today);
    /// assert_eq!((stays(date(2026, 11, 1)).ram_in(), stays(date(2026, 11, 1)).days()), (date(2026, 10, 1), 204));
    /// // 211 days in: two whole cycles are left out, since their lambs would be born.
    /// assert_eq!(stays(date(2027, 4, 30)).ram_in(), date(2026, 11, 4));
    /// ```
    #[must_use]
    pub fn staying(ram_in: NaiveDate, ram_out: Option<NaiveDate>, today: NaiveDate) -> Self {
        let cycle = i64::from(CYCLE_DAYS);
        let days = ram_out.map_or(i64::MAX, |out| between(ram_in, out) + 1).max(1);
        let brought = (between(ram_in, today) - BROUGHT).clamp(0, (days - 1).min(1_000_000));
        let ram_in = later(ram_in, brought / cycle * cycle);
        let last = later(ram_in, STAYS_DAYS - 1);
        Self { ram_in, ram_out: ram_out.map_or(last, |out| out.min(last)).max(ram_in), open: false }
    }

    /// Returns the day he went in.
    #[must_use]
    pub const fn ram_in(self) -> NaiveDate {
        self.ram_in
    }

    /// Returns the day he came out, or is taken to.
    #[must_use]
    pub const fn ram_out(self) -> NaiveDate {
        self.ram_out
    }

    /// Returns whether the day out was not known, so that three cycles stand for it.
    #[must_use]
    pub const fn is_open(self) -> bool {
        self.open
    }

    /// Returns the days he was in, the first and the last both counted.
    #[must_use]
    pub fn days(self) -> i64 {
        between(self.ram_in, self.ram_out) + 1
    }

    /// Returns whether a ewe cannot have been in both, because they share a day.
    #[must_use]
    pub fn overlaps(self, other: Self) -> bool {
        self.ram_in <= other.ram_out && other.ram_in <= self.ram_out
    }

    /// Returns the first and the last day on which a ewe of this group may lamb.
    ///
    /// ```
    /// use chrono::NaiveDate;
    /// use yeanling_core::reckon::season::gestation::Gestation;
    /// use yeanling_core::reckon::season::mating::Mating;
    /// let date = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
    /// let mating = Mating::new(date(2026, 10, 1), Some(date(2026, 11, 20))).unwrap();
    /// assert_eq!(mating.window(Gestation::default()), (date(2027, 2, 20), date(2027, 4, 21)));
    /// ```
    #[must_use]
    pub fn window(self, gestation: Gestation) -> (NaiveDate, NaiveDate) {
        let (first, last) = gestation.watch_days();
        (later(self.ram_in, first), later(self.ram_out, last))
    }
}
