//! What a ewe needs in a day, by her weight and the time of her year: NRC 1985, Table 1, and the energy of NRC 2007.
//!
//! Between two printed weights the row is drawn straight and says so; outside of 50 to 90 kg there is no answer.

use super::dates::Crop;
use crate::reckon::cited::{memory, ours, seen};
use crate::source::{HowKnown, Source};
use crate::units::Mass;

/// Digestible energy in a kilogram of TDN, in megacalories (NRC 1985).
pub const DIGESTIBLE_IN_TDN: f64 = 4.4;

/// The share of digestible energy that can be metabolized (NRC 1985).
pub const METABOLIZABLE: f64 = 0.82;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "National Research Council",
        "Nutrient Requirements of Sheep, Table 1: mature ewes, maintenance and the first 15 weeks",
        Some(1985),
        "",
    ),
    memory(
        "NRC 1985, Table 1: the last 4 weeks and milking; its 70 kg row of the last 4 weeks is also in Montana State",
    ),
    seen(
        "Veterinary chapter",
        "NRC 2007: 3.45, 4.37 and 4.95 Mcal late in pregnancy, 70 kg, by lambs",
        None,
        "",
    ),
    ours("A straight line between two printed weights; nothing outside of them"),
];

/// An amount of energy. Kept in megacalories.
///
/// ```
/// use yeanling_core::reckon::season::requirement::Energy;
/// assert!((Energy::from_megacalories(2.0).as_megajoules() - 8.368).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Energy(f64);

/// Megajoules in one megacalorie, exact by definition (thermochemical calorie).
const MEGAJOULES_IN_A_MEGACALORIE: f64 = 4.184;

impl Energy {
    /// Returns so many megacalories.
    #[must_use]
    pub const fn from_megacalories(megacalories: f64) -> Self {
        Self(megacalories)
    }

    /// Returns so many megajoules.
    #[must_use]
    pub const fn from_megajoules(megajoules: f64) -> Self {
        Self(megajoules / MEGAJOULES_IN_A_MEGACALORIE)
    }

    /// Returns megacalories.
    #[must_use]
    pub const fn as_megacalories(self) -> f64 {
        self.0
    }

    /// Returns megajoules.
    #[must_use]
    pub const fn as_megajoules(self) -> f64 {
        self.0 * MEGAJOULES_IN_A_MEGACALORIE
    }

    /// Returns the metabolizable energy of so much TDN: `kg × 4.4 × 0.82`.
    ///
    /// ```
    /// use yeanling_core::reckon::season::requirement::Energy;
    /// use yeanling_core::units::Mass;
    /// let energy = Energy::of_tdn(Mass::from_kilograms(0.66));
    /// assert!((energy.as_megacalories() - 2.38).abs() < 0.005);
    /// ```
    #[must_use]
    pub const fn of_tdn(tdn: Mass) -> Self {
        Self(tdn.as_kilograms() * DIGESTIBLE_IN_TDN * METABOLIZABLE)
    }
}

/// A time of a ewe's year, as the table has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FeedStage {
    /// Neither in lamb nor milking.
    Maintenance,
    /// The first 15 weeks in lamb.
    FirstFifteenWeeks,
    /// The last 4 weeks in lamb, by the crop that is expected.
    LastFourWeeks(Crop),
    /// The first 6 to 8 weeks milking one lamb.
    MilkingOne,
    /// The first 6 to 8 weeks milking two.
    MilkingTwo,
}

impl FeedStage {
    /// All of them, in the order of the table.
    pub const ALL: [Self; 6] = [
        Self::Maintenance,
        Self::FirstFifteenWeeks,
        Self::LastFourWeeks(Crop::Usual),
        Self::LastFourWeeks(Crop::Prolific),
        Self::MilkingOne,
        Self::MilkingTwo,
    ];

    /// Returns how its rows are known.
    #[must_use]
    pub const fn known(self) -> HowKnown {
        match self {
            Self::Maintenance | Self::FirstFifteenWeeks => HowKnown::Seen,
            Self::LastFourWeeks(_) | Self::MilkingOne | Self::MilkingTwo => HowKnown::Memory,
        }
    }
}

/// What one ewe needs in a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// What she weighs.
    pub weight: Mass,
    /// Dry matter.
    pub dry_matter: Mass,
    /// Total digestible nutrients.
    pub tdn: Mass,
    /// Metabolizable energy.
    pub energy: Energy,
    /// Crude protein.
    pub protein: Mass,
    /// Calcium.
    pub calcium: Mass,
    /// Phosphorus.
    pub phosphorus: Mass,
}

/// Kilograms of body, kilograms of dry matter and TDN, megacalories, grams of protein, calcium and phosphorus.
const fn row(printed: [f64; 7]) -> Row {
    let [weight, dry_matter, tdn, energy, protein, calcium, phosphorus] = printed;
    Row {
        weight: Mass::from_kilograms(weight),
        dry_matter: Mass::from_kilograms(dry_matter),
        tdn: Mass::from_kilograms(tdn),
        energy: Energy::from_megacalories(energy),
        protein: Mass::from_kilograms(protein / 1000.0),
        calcium: Mass::from_kilograms(calcium / 1000.0),
        phosphorus: Mass::from_kilograms(phosphorus / 1000.0),
    }
}

const MAINTENANCE: [Row; 5] = [
    row([50.0, 1.0, 0.55, 2.0, 95.0, 2.0, 1.8]),
    row([60.0, 1.1, 0.61, 2.2, 104.0, 2.3, 2.1]),
    row([70.0, 1.2, 0.66, 2.4, 113.0, 2.5, 2.4]),
    row([80.0, 1.3, 0.72, 2.6, 122.0, 2.7, 2.8]),
    row([90.0, 1.4, 0.78, 2.8, 131.0, 2.9, 3.1]),
];

const FIRST_FIFTEEN_WEEKS: [Row; 5] = [
    row([50.0, 1.2, 0.67, 2.4, 112.0, 2.9, 2.1]),
    row([60.0, 1.3, 0.72, 2.6, 121.0, 3.2, 2.5]),
    row([70.0, 1.4, 0.77, 2.8, 130.0, 3.5, 2.9]),
    row([80.0, 1.5, 0.82, 3.0, 139.0, 3.8, 3.3]),
    row([90.0, 1.6, 0.87, 3.2, 148.0, 4.1, 3.6]),
];

const LAST_FOUR_WEEKS: [Row; 5] = [
    row([50.0, 1.6, 0.94, 3.4, 175.0, 5.9, 4.8]),
    row([60.0, 1.7, 1.00, 3.6, 184.0, 6.0, 5.2]),
    row([70.0, 1.8, 1.06, 3.8, 193.0, 6.2, 5.6]),
    row([80.0, 1.9, 1.12, 4.0, 202.0, 6.3, 6.1]),
    row([90.0, 2.0, 1.18, 4.2, 212.0, 6.4, 6.5]),
];

const LAST_FOUR_WEEKS_PROLIFIC: [Row; 5] = [
    row([50.0, 1.7, 1.10, 4.0, 196.0, 6.2, 3.4]),
    row([60.0, 1.8, 1.17, 4.2, 205.0, 6.9, 4.0]),
    row([70.0, 1.9, 1.24, 4.4, 214.0, 7.6, 4.5]),
    row([80.0, 2.0, 1.30, 4.7, 223.0, 8.3, 5.1]),
    row([90.0, 2.1, 1.37, 5.0, 232.0, 8.9, 5.7]),
];

const MILKING_ONE: [Row; 5] = [
    row([50.0, 2.1, 1.36, 4.9, 304.0, 8.9, 6.1]),
    row([60.0, 2.3, 1.50, 5.4, 319.0, 9.1, 6.6]),
    row([70.0, 2.5, 1.63, 5.9, 334.0, 9.3, 7.0]),
    row([80.0, 2.6, 1.69, 6.1, 344.0, 9.5, 7.4]),
    row([90.0, 2.7, 1.75, 6.3, 353.0, 9.6, 7.8]),
];

const MILKING_TWO: [Row; 5] = [
    row([50.0, 2.4, 1.56, 5.6, 389.0, 10.5, 7.3]),
    row([60.0, 2.6, 1.69, 6.1, 405.0, 10.7, 7.7]),
    row([70.0, 2.8, 1.82, 6.6, 420.0, 11.0, 8.1]),
    row([80.0, 3.0, 1.95, 7.0, 435.0, 11.2, 8.6]),
    row([90.0, 3.2, 2.08, 7.5, 450.0, 11.4, 9.0]),
];

/// Returns the printed rows of a time of year, the lightest ewe first.
#[must_use]
pub const fn rows(stage: FeedStage) -> &'static [Row; 5] {
    match stage {
        FeedStage::Maintenance => &MAINTENANCE,
        FeedStage::FirstFifteenWeeks => &FIRST_FIFTEEN_WEEKS,
        FeedStage::LastFourWeeks(Crop::Usual) => &LAST_FOUR_WEEKS,
        FeedStage::LastFourWeeks(Crop::Prolific) => &LAST_FOUR_WEEKS_PROLIFIC,
        FeedStage::MilkingOne => &MILKING_ONE,
        FeedStage::MilkingTwo => &MILKING_TWO,
    }
}

/// How a row was come by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RowFrom {
    /// It is printed.
    Printed,
    /// It lies on a straight line between the rows of two printed weights (ours).
    Between {
        /// The lighter.
        lighter: Mass,
        /// The heavier.
        heavier: Mass,
    },
}

/// What a ewe needs in a day, and how that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Need {
    /// The time of her year.
    pub stage: FeedStage,
    /// What she needs.
    pub row: Row,
    /// How the row was come by.
    pub how: RowFrom,
    /// How the printed rows are known.
    pub known: HowKnown,
}

/// A weight outside of the table: which row is nearest, for who wants to look at it.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{given:?} is outside the table, {least:?} to {most:?}; its nearest row is {nearest:?}")]
pub struct OutsideTable {
    /// What was given.
    pub given: Mass,
    /// The lightest ewe of the table.
    pub least: Mass,
    /// The heaviest.
    pub most: Mass,
    /// The weight of the nearest row.
    pub nearest: Mass,
}

/// Returns what a ewe of this weight needs at this time of year.
///
/// # Errors
/// The weight is outside the table, 50 to 90 kg, or no number: nothing is drawn beyond what is printed.
///
/// ```
/// use yeanling_core::reckon::season::requirement::{RowFrom, FeedStage, need};
/// use yeanling_core::units::Mass;
/// let need_of = |kilograms| need(FeedStage::Maintenance, Mass::from_kilograms(kilograms));
/// assert_eq!(need_of(70.0).unwrap().row.protein, Mass::from_kilograms(0.113));
/// assert!(matches!(need_of(65.0).unwrap().how, RowFrom::Between { .. }));
/// assert!(need_of(95.0).is_err());
/// ```
pub fn need(stage: FeedStage, weight: Mass) -> Result<Need, OutsideTable> {
    let rows = rows(stage);
    let (least, most) = (rows[0].weight, rows[4].weight);
    let known = stage.known();
    if let Some(row) = rows.iter().find(|row| row.weight == weight) {
        return Ok(Need { stage, row: *row, how: RowFrom::Printed, known });
    }
    for pair in rows.windows(2) {
        let (lighter, heavier) = (pair[0], pair[1]);
        if weight > lighter.weight && weight < heavier.weight {
            let how = RowFrom::Between { lighter: lighter.weight, heavier: heavier.weight };
            return Ok(Need { stage, row: between(lighter, heavier, weight), how, known });
        }
    }
    let nearest = if weight > most { most } else { least };
    Err(OutsideTable { given: weight, least, most, nearest })
}

fn between(lighter: Row, heavier: Row, weight: Mass) -> Row {
    let span = heavier.weight.as_kilograms() - lighter.weight.as_kilograms();
    let part = (weight.as_kilograms() - lighter.weight.as_kilograms()) / span;
    let line = |of: fn(&Row) -> f64| of(&lighter) + part * (of(&heavier) - of(&lighter));
    Row {
        weight,
        dry_matter: Mass::from_kilograms(line(|row| row.dry_matter.as_kilograms())),
        tdn: Mass::from_kilograms(line(|row| row.tdn.as_kilograms())),
        energy: Energy::from_megacalories(line(|row| row.energy.as_megacalories())),
        protein: Mass::from_kilograms(line(|row| row.protein.as_kilograms())),
        calcium: Mass::from_kilograms(line(|row| row.calcium.as_kilograms())),
        phosphorus: Mass::from_kilograms(line(|row| row.phosphorus.as_kilograms())),
    }
}

/// Returns the energy that a ewe of 70 kg needs late in pregnancy with so many lambs; none for none (NRC 2007).
///
/// Three and more count as three. Shown beside the table of 1985, which knows no litters.
///
/// ```
/// use yeanling_core::reckon::season::requirement::{Energy, late_2007};
/// assert_eq!(late_2007(2), Some(Energy::from_megacalories(4.37)));
/// ```
#[must_use]
pub const fn late_2007(lambs: u8) -> Option<Energy> {
    match lambs {
        0 => None,
        1 => Some(Energy(3.45)),
        2 => Some(Energy(4.37)),
        3..=u8::MAX => Some(Energy(4.95)),
    }
}
