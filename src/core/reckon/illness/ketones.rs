//! What a ketone reading of a ewe means: three bands, and how far sources and meters differ. A low reading cancels no sign.

use super::super::cited::memory;
use super::cited::{LIMA, OPTIUM_25, OURS, RATANAPOB_19, SCIELO};
use crate::source::Source;
use crate::units::{Ketones, OutOfBounds};

/// From here on she is ketotic (Ratanapob 2019, laboratory; the handheld meter's study 2025, neck vein).
pub const KETOTIC_FROM: Ketones = Ketones::from_millimoles(0.8);

/// From here on she is clinically ill (memory).
pub const CLINICAL_FROM: Ketones = Ketones::from_millimoles(3.0);

/// Where others begin: blood from the ear, and a meter where the laboratory reads 0.8.
pub const OTHERS_FROM: [Ketones; 2] = [Ketones::from_millimoles(0.6), Ketones::from_millimoles(1.0)];

/// How far over the truth one veterinary meter read, in percent.
pub const METER_READS_HIGH_PERCENT: u8 = 51;

/// Where it was printed.
pub const SOURCES: &[Source] =
    &[RATANAPOB_19, OPTIUM_25, SCIELO, LIMA, memory("Underfed over 1.1, clinical from 3.0 mmol/L"), OURS];

/// Where a reading lies, the lowest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// Under 0.8 mmol/L: it cancels no sign.
    Low,
    /// 0.8 to 2.9 mmol/L.
    Ketotic,
    /// 3.0 mmol/L and over.
    Clinical,
}

/// Returns the band of a reading.
///
/// # Errors
/// No meter shows that.
///
/// ```
/// use yeanling_core::reckon::illness::ketones::{Band, band};
/// use yeanling_core::units::Ketones;
/// assert_eq!(band(Ketones::from_millimoles(2.9)), Ok(Band::Ketotic));
/// ```
pub fn band(reading: Ketones) -> Result<Band, OutOfBounds<Ketones>> {
    let reading = Ketones::ON_A_METER.check(reading)?;
    Ok(if reading < KETOTIC_FROM {
        Band::Low
    } else if reading < CLINICAL_FROM {
        Band::Ketotic
    } else {
        Band::Clinical
    })
}

/// Returns what the laboratory reads where a meter that reads so high shows this (`SciELO`).
#[must_use]
pub fn in_the_laboratory(meter: Ketones) -> Ketones {
    Ketones::from_millimoles(meter.as_millimoles() / (1.0 + f64::from(METER_READS_HIGH_PERCENT) / 100.0))
}
