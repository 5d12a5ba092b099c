//! How a new feed is brought in: in small steps every second or third day, so that the stomach can follow.

use super::bounds::{DAYS_BETWEEN_STEPS, FED_IN_A_DAY, Refused, STEP};
use super::days::{float, whole};
use crate::reckon::cited::{memory, ours};
use crate::source::Source;
use crate::units::Mass;

/// The span over which a new feed is brought in, in days (memory).
pub const OVER_DAYS: (u16, u16) = (10, 14);

/// A step, the least and the most (memory).
pub const STEPS: (Mass, Mass) = (Mass::from_kilograms(0.05), Mass::from_kilograms(0.1));

/// Days between two steps, the fewest and the most (memory).
pub const EVERY_DAYS: (u8, u8) = (2, 3);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    memory("New feed in steps of 50 to 100 g every 2 to 3 d, over 10 to 14 d"),
    ours("Start with one step; the last step is cut to what is wanted"),
];

/// How a new feed is brought in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Steps {
    step: Mass,
    every_days: u8,
    to: Mass,
}

/// What must be said with a plan of steps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// A step is larger than 100 g, or comes more often than every second day.
    Fast,
}

impl Steps {
    /// Returns steps of this size, one every so many days, up to this much for a ewe in a day.
    ///
    /// # Errors
    /// The step is outside `STEP`, the days outside `DAYS_BETWEEN_STEPS`, or the whole outside `FED_IN_A_DAY`.
    ///
    /// ```
    /// use yeanling_core::reckon::season::feed_steps::Steps;
    /// use yeanling_core::units::Mass;
    /// let kg = Mass::from_kilograms;
    /// let steps = Steps::new(kg(0.1), 2, kg(0.6)).unwrap();
    /// let grams: Vec<f64> = (0..5).map(|day| (steps.on_day(day).as_kilograms() * 1000.0).round()).collect();
    /// assert_eq!(grams, [100.0, 100.0, 200.0, 200.0, 300.0]);
    /// ```
    pub fn new(step: Mass, every_days: u8, to: Mass) -> Result<Self, Refused> {
        STEP.check(step.as_kilograms())?;
        DAYS_BETWEEN_STEPS.check(f64::from(every_days))?;
        FED_IN_A_DAY.check(to.as_kilograms())?;
        Ok(Self { step, every_days, to })
    }

    /// Returns the same steps up to another amount for a ewe in a day.
    ///
    /// # Errors
    /// The amount is outside `FED_IN_A_DAY`.
    pub fn up_to(self, to: Mass) -> Result<Self, Refused> {
        FED_IN_A_DAY.check(to.as_kilograms())?;
        Ok(Self { to, ..self })
    }

    /// Returns what a ewe gets so many days after the first; 0 is the first day. Nothing before it.
    #[must_use]
    pub fn on_day(self, day: i64) -> Mass {
        if day < 0 {
            return Mass::from_kilograms(0.0);
        }
        let steps = float(day / i64::from(self.every_days) + 1);
        Mass::from_kilograms((self.step.as_kilograms() * steps).min(self.to.as_kilograms()))
    }

    /// Returns how many days after the first the whole is reached.
    #[must_use]
    pub fn days_to_whole(self) -> i64 {
        let steps = whole((self.to.as_kilograms() / self.step.as_kilograms() - 1e-9).ceil()).max(1);
        (steps - 1) * i64::from(self.every_days)
    }

    /// Returns each day on which the amount grows, counted from the first, and the amount from then on.
    #[must_use]
    pub fn all(self) -> Vec<(i64, Mass)> {
        let every = i64::from(self.every_days);
        (0..=self.days_to_whole() / every).map(|step| (step * every, self.on_day(step * every))).collect()
    }

    /// Returns what one ewe gets from the first day on, over so many days together.
    #[must_use]
    pub fn together(self, days: i64) -> Mass {
        Mass::from_kilograms((0..days).map(|day| self.on_day(day).as_kilograms()).sum())
    }

    /// Returns what must be said with these steps.
    #[must_use]
    pub fn caution(self) -> Option<Caution> {
        let fast = self.step.as_kilograms() > STEPS.1.as_kilograms() + 1e-9 || self.every_days < EVERY_DAYS.0;
        fast.then_some(Caution::Fast)
    }
}

impl Default for Steps {
    /// 100 g more every second day, up to 600 g (ours, from what is recalled).
    fn default() -> Self {
        Self { step: STEPS.1, every_days: EVERY_DAYS.0, to: Mass::from_kilograms(0.6) }
    }
}
