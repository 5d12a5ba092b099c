//! The rows of the tables of a lamb that is not right, in their order, and where each was printed.

use super::super::cited::{
    ARKANSAS, DVM360, EALES_86, FARM_HEALTH, FARMERS_WEEKLY_02, FARMOW, FAS_18, GOTLANDS, GOV_UK,
    IRISH_FARMERS_25, JORDAN, LAMB_CARE, LEVIN, MARYLAND_19, MEMORY, NADIS, NEW_MEXICO, NEWBORN, NSW, NSW_07,
    NZ_AGBIZ, OURS, PURDUE_02, RAISING_SHEEP, RONAS_VOE, RURAL_NEWS_23, SCOTT, SRUC, WIKIVET,
};
use crate::source::Source;

/// A row of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Row {
    /// Many lambs die, or blisters: it may be notifiable.
    MayBeNotifiable,
    /// It does not breathe.
    NotBreathing,
    /// It does not hold its head up, suck or swallow.
    NoSwallow,
    /// Cold, up to five hours when it began.
    ColdYoung,
    /// Cold, older or of unknown age.
    ColdOlder,
    /// Hunched or hollow: hungry.
    Hungry,
    /// Watery mouth.
    WateryMouth,
    /// Abomasal bloat.
    Bloat,
    /// No dung.
    NoDung,
    /// Over 40 °C.
    Hot,
    /// Lamb dysentery.
    Dysentery,
    /// Coccidia and worms.
    Coccidia,
    /// Scour.
    Scour,
    /// Joint ill.
    Joint,
    /// Navel ill.
    Navel,
    /// The eyelid is turned in, or the eye cloudy.
    Eye,
    /// Pneumonia.
    Chest,
    /// White muscle.
    WhiteMuscle,
    /// Swayback, or a fault of birth.
    Wobbly,
    /// Tetanus.
    Tetanus,
    /// Fits.
    Fits,
    /// Orf.
    Orf,
    /// A leg.
    Leg,
    /// Found dead.
    FoundDead,
    /// Bowel through the navel.
    BowelOut,
    /// Milk in the lung.
    MilkInLung,
    /// After a hard birth.
    HardBirth,
    /// A wound.
    Wound,
    /// Dull, and no other row.
    Dull,
}

impl Row {
    /// Every row, in the order in which it is told; what is only dull comes last.
    pub const ALL: [Self; 29] = [
        Self::MayBeNotifiable,
        Self::NotBreathing,
        Self::NoSwallow,
        Self::WateryMouth,
        Self::Bloat,
        Self::ColdYoung,
        Self::ColdOlder,
        Self::Hot,
        Self::Dysentery,
        Self::Coccidia,
        Self::Scour,
        Self::NoDung,
        Self::Joint,
        Self::Navel,
        Self::Chest,
        Self::WhiteMuscle,
        Self::Wobbly,
        Self::Leg,
        Self::Tetanus,
        Self::Fits,
        Self::BowelOut,
        Self::MilkInLung,
        Self::Hungry,
        Self::Eye,
        Self::Orf,
        Self::FoundDead,
        Self::HardBirth,
        Self::Wound,
        Self::Dull,
    ];

    /// Says whether nothing may be given by mouth, milk with it, to a lamb of which this row is told.
    #[must_use]
    pub const fn shuts_mouth(self) -> bool {
        matches!(
            self,
            Self::NoSwallow
                | Self::NotBreathing
                | Self::WateryMouth
                | Self::Bloat
                | Self::Tetanus
                | Self::Fits
                | Self::BowelOut
                | Self::MilkInLung
        )
    }

    /// Returns where the row was printed.
    #[must_use]
    pub const fn sources(self) -> &'static [Source] {
        match self {
            Self::MayBeNotifiable => &[GOV_UK, IRISH_FARMERS_25],
            Self::NotBreathing | Self::Wound => &[MEMORY],
            Self::NoSwallow | Self::ColdYoung | Self::ColdOlder => &[NEWBORN, OURS],
            Self::Hungry => &[GOTLANDS],
            Self::WateryMouth => &[EALES_86, IRISH_FARMERS_25, NADIS, RONAS_VOE],
            Self::Bloat => &[NZ_AGBIZ, LEVIN, RURAL_NEWS_23],
            Self::NoDung => &[JORDAN, MEMORY],
            Self::Hot | Self::Dull => &[OURS],
            Self::Dysentery => &[SRUC, WIKIVET],
            Self::Coccidia => &[IRISH_FARMERS_25],
            Self::Scour => &[MARYLAND_19],
            Self::Joint => &[NADIS, FARM_HEALTH],
            Self::Navel => &[RAISING_SHEEP],
            Self::Eye => &[FAS_18],
            Self::Chest => &[LAMB_CARE],
            Self::WhiteMuscle => &[NEW_MEXICO, FARMOW],
            Self::Wobbly => &[NSW],
            Self::Tetanus => &[PURDUE_02, FARMOW],
            Self::Fits => &[SCOTT, SRUC],
            Self::Orf => &[ARKANSAS],
            Self::Leg => &[MEMORY],
            Self::FoundDead => &[SRUC, FARMERS_WEEKLY_02, NSW_07],
            Self::BowelOut | Self::HardBirth => &[DVM360],
            Self::MilkInLung => &[MEMORY],
        }
    }

    /// Says whether people can catch what it may be (University of Maryland 2019; University of Arkansas).
    #[must_use]
    pub const fn people_catch_it(self) -> bool {
        matches!(self, Self::Scour | Self::Orf)
    }
}
