//! What a lamb's temperature means: severe under 37 °C, mild to 39, normal to 40, fever above.
//!
//! One rule for every gap: a reading is rounded to a hundredth of a degree, as it is kept, and belongs to the band
//! whose edge it has reached. So 36.95 °C is severe, 37.0 mild, 39.0 normal, 40.0 still normal, 40.05 fever.

use super::cited::{EALES_84, IRISH_FARMERS, UK_SHEET, ours, seen};
use crate::source::Source;
use crate::units::{OutOfBounds, Temperature, TimeDelta};

/// Mild cold begins here; anything under it is severe (UK hypothermia sheet; Irish Farmers Journal; Eales 1984).
pub const MILD_FROM: Temperature = Temperature::from_celsius(37.0);

/// Normal begins here.
pub const NORMAL_FROM: Temperature = Temperature::from_celsius(39.0);

/// Normal ends here, this reading included; anything over it is fever.
pub const NORMAL_TO: Temperature = Temperature::from_celsius(40.0);

/// How far a healthy lamb drops in its first hour in bad weather, in °C: 2 to 3 (Alexander & McCance 1958).
pub const DROP_IN_DEGREES_CELSIUS: (f64, f64) = (2.0, 3.0);

/// The age by which a healthy lamb has made up for that drop (Alexander & McCance 1958).
pub const RECOVERED_BY: TimeDelta = TimeDelta::hours(3);

/// Who saw the drop.
pub const ALEXANDER_MCCANCE: Source = seen(
    "Alexander & McCance",
    "A healthy lamb drops 2–3 °C in its first hour in bad weather",
    Some(1958),
    "Australian Journal of Agricultural Research 9:339",
);

/// Who prints other edges, in degrees Fahrenheit.
pub const US_GUIDANCE: Source =
    seen("New Mexico State University", "Normal 101.5–102.5 °F, severe under 98–99 °F", None, "");

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    UK_SHEET,
    IRISH_FARMERS,
    EALES_84,
    US_GUIDANCE,
    ALEXANDER_MCCANCE,
    ours("The edges: 39.0 and 40.0 °C are normal, 37.0 is mild, anything under it severe"),
];

/// Where a temperature lies, the coldest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// Under 37 °C.
    Severe,
    /// 37 to under 39 °C.
    Mild,
    /// 39 to 40 °C.
    Normal,
    /// Over 40 °C: call a vet.
    Fever,
}

/// Returns the band of a lamb's temperature.
///
/// # Errors
/// The temperature is outside `Temperature::IN_A_LAMB`, or no number.
///
/// ```
/// use yeanling_core::reckon::body_temperature::{Band, band};
/// use yeanling_core::units::Temperature;
/// assert_eq!(band(Temperature::from_celsius(36.9)), Ok(Band::Severe));
/// assert_eq!(band(Temperature::from_fahrenheit(98.6)), Ok(Band::Mild));
/// ```
pub fn band(temperature: Temperature) -> Result<Band, OutOfBounds<Temperature>> {
    let read = hundredths(Temperature::IN_A_LAMB.check(temperature)?);
    Ok(if read < hundredths(MILD_FROM) {
        Band::Severe
    } else if read < hundredths(NORMAL_FROM) {
        Band::Mild
    } else if read <= hundredths(NORMAL_TO) {
        Band::Normal
    } else {
        Band::Fever
    })
}

/// Returns whether a lamb is warm enough to be fed: 37.0 °C and over, rounded as in `band`.
///
/// False for what is no number.
#[must_use]
pub fn warm_enough_to_feed(temperature: Temperature) -> bool {
    hundredths(temperature) >= hundredths(MILD_FROM)
}

/// The hundredths of a degree to which a reading is kept: 98.6 °F is 37.00 °C, whatever binary fractions say.
fn hundredths(temperature: Temperature) -> f64 {
    (temperature.as_celsius() * 100.0).round()
}

/// Where a temperature lies by US guidance, the coldest first; shown beside the band, never in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum UsBand {
    /// Under 98 °F: severe by any of its texts.
    Severe,
    /// 98 to under 99 °F: severe by some.
    SevereBySome,
    /// 99 to under 101.5 °F.
    Below,
    /// 101.5 to 102.5 °F.
    Normal,
    /// Over 102.5 °F.
    Above,
}

/// Returns what US guidance calls a temperature (New Mexico State University).
///
/// ```
/// use yeanling_core::reckon::body_temperature::{UsBand, us_band};
/// use yeanling_core::units::Temperature;
/// assert_eq!(us_band(Temperature::from_fahrenheit(102.0)), UsBand::Normal);
/// ```
#[must_use]
pub fn us_band(temperature: Temperature) -> UsBand {
    let read = hundredths(temperature);
    let edge = |fahrenheit: f64| hundredths(Temperature::from_fahrenheit(fahrenheit));
    if read < edge(98.0) {
        UsBand::Severe
    } else if read < edge(99.0) {
        UsBand::SevereBySome
    } else if read < edge(101.5) {
        UsBand::Below
    } else if read <= edge(102.5) {
        UsBand::Normal
    } else {
        UsBand::Above
    }
}

/// Returns whether the lamb is so young that bad weather alone may have cooled it: under 3 h.
///
/// It says why the age stands beside a temperature; it never makes a cold lamb warm.
#[must_use]
pub fn may_be_the_first_drop(age: TimeDelta) -> bool {
    age < RECOVERED_BY
}
