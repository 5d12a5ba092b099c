//! A volume as it is offered: what a button says, what it notes and what is read of it later are one number.

use super::{System, Volume};

/// From so many milliliters on, a bottle or a syringe is read to 5 ml; below that to 1 ml.
const BY_FIVES_ABOVE: f64 = 20.0;

/// A number this little under a step is the step itself: so far what is kept to a tenth of a milliliter may lie off.
const DUST: f64 = 0.02;

impl Volume {
    /// Returns the volume that is offered for this one: what can be read on a bottle in the farm's units. The nearest 5 ml
    /// (1 ml up to 20 ml), or the tenth of a fluid ounce at or under it, which is never more and costs less than 3 ml.
    ///
    /// Kept to a tenth of a milliliter, as what is typed is: to press a button and to type its number note the same.
    ///
    /// ```
    /// use yeanling_core::units::{System, Volume};
    /// let wanted = Volume::from_milliliters(139.0);
    /// assert_eq!(wanted.offered(System::Metric), Volume::from_milliliters(140.0));
    /// assert_eq!(wanted.offered(System::Us), Volume::from_milliliters(139.0));
    /// assert_eq!(Volume::parse("4.7", System::Us), Ok(wanted.offered(System::Us)));
    /// ```
    #[must_use]
    pub fn offered(self, system: System) -> Self {
        match system {
            System::Metric if self.as_milliliters() > BY_FIVES_ABOVE => self.to_nearest_five(),
            System::Metric => Self::from_milliliters(self.as_milliliters().round()),
            System::Us => {
                let read = Self::from_fluid_ounces((self.as_fluid_ounces() * 10.0 + DUST).floor() / 10.0);
                Self::from_milliliters((read.as_milliliters() * 10.0).round() / 10.0)
            }
        }
    }
}
