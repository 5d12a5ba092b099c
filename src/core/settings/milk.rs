//! Choices about what a lamb drinks: colostrum, the bottle, powder, and when it ends.

use serde::{Deserialize, Serialize};

/// Which published rule says how much colostrum a lamb wants in its first 24 hours.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DayRule {
    /// 200 ml/kg (AHDB). Our default: a levy board's plain figure, in the middle of the guidance.
    #[default]
    Ahdb200,
    /// 210 ml/kg, the lower end of the 210–290 of the RUMA campaign.
    Ruma210,
    /// 10 % of body weight, 100 ml/kg: the popular floor, half the guidance.
    TenPercent,
}

/// Which published table says how much a bottle lamb takes by age.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BottleTable {
    /// A vet supplier's table, in milliliters.
    #[default]
    VetSupplier,
    /// A US handbook's table, in fluid ounces.
    UsHandbook,
}

/// How long frozen colostrum keeps.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum FreezerLife {
    /// 6 months (Ozarks Farm).
    SixMonths,
    /// 1 year. Our default: common practice, between the two printed figures.
    #[default]
    OneYear,
    /// 2 years at −18 °C (SRUC).
    TwoYears,
}

/// How much powder a lamb takes until weaning.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PowderRule {
    /// 7 kg (New Zealand).
    NewZealand,
    /// 6.8 to 9.1 kg (NDSU). Our default: a range, in the middle of what is printed.
    #[default]
    Ndsu,
    /// 13 kg (Irish Farmers Journal).
    FarmersJournal,
}

/// By which rule a bottle lamb is weaned.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum WeaningRule {
    /// 35 days, 2.5 times the birth weight, 250 g of solids on 3 days running (a feed maker).
    ///
    /// Our default: it goes by the lamb's own birth weight, so a small lamb is not held to a large one's figure.
    #[default]
    FeedMaker,
    /// About 5 weeks, 9 kg, the same solids (Teagasc).
    Teagasc,
    /// 4 weeks at the earliest (common practice), and the same solids (ours).
    FourWeeks,
}
