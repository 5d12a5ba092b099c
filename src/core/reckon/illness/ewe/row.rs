//! The rows of the table of a ewe that is not right, in its order, and where each was printed.

use super::super::cited::{
    AHDB_19, AUSTRALIAN, AWANUI, COMMON, FARMERS_WEEKLY_96, FARMOW, FTHENAKIS, GOV_UK, GREECE, HAF,
    IRISH_FARMERS_18, IRISH_FARMERS_25, LIFESTYLE_NZ, LIMA, LIVESTOCK, MEMORY, MSD_2022, MSD_PHOTO, NADIS,
    NADIS_04, NEW_MEXICO, NFU, OHIO_09, OURS, OZARKS_10, POLL_DORSET, RAISING_SHEEP, SCOTTISH, SRVS, TEAGASC,
    UK_VET, VET_HELP, VETLIFE, VICTORIA, WARWICK, WIKIVET,
};
use crate::source::Source;

/// A row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Row {
    /// Many lame, blisters, swollen faces, lambs dying: it may be notifiable.
    MayBeNotifiable,
    /// Cast on her back.
    Cast,
    /// Low calcium.
    LowCalcium,
    /// Toxemia.
    Toxemia,
    /// Listeria: the face is one-sided.
    Listeria,
    /// Brain disease: her head drawn back, fits, blind outside the last weeks.
    Brain,
    /// Low magnesium: stiff, twitching.
    LowMagnesium,
    /// The vagina is out.
    VaginaOut,
    /// The womb is out, or nobody is sure.
    WombOut,
    /// Bowel is out.
    BowelOut,
    /// The cervix is tight in labor.
    CervixTight,
    /// The afterbirth is kept.
    AfterbirthKept,
    /// The womb is infected, or a dead lamb inside.
    WombInfected,
    /// The udder is cold or blue.
    UdderCold,
    /// The udder is hot and hard.
    UdderHot,
    /// Both halves firm, no milk.
    UdderFirm,
    /// No milk in either half, drawn twice.
    NoMilk,
    /// Lame.
    Lame,
    /// Cough or fast breath.
    Chest,
    /// Bloat.
    Bloat,
    /// She got at grain.
    Grain,
    /// Yellow gums or dark urine.
    Copper,
    /// She aborted.
    Aborted,
    /// Down after lambing: the nerve of the birth, or bleeding.
    HurtByBirth,
    /// Blood runs.
    Bleeding,
    /// Worms or fluke.
    Worms,
    /// Dull or off feed, and no other row.
    Dull,
}

impl Row {
    /// Every row, in the order of the table; what is only dull comes last.
    pub const ALL: [Self; 27] = [
        Self::MayBeNotifiable,
        Self::Cast,
        Self::LowCalcium,
        Self::Toxemia,
        Self::Listeria,
        Self::Brain,
        Self::LowMagnesium,
        Self::VaginaOut,
        Self::WombOut,
        Self::BowelOut,
        Self::CervixTight,
        Self::AfterbirthKept,
        Self::WombInfected,
        Self::UdderCold,
        Self::UdderHot,
        Self::UdderFirm,
        Self::NoMilk,
        Self::Lame,
        Self::Chest,
        Self::Bloat,
        Self::Grain,
        Self::Copper,
        Self::Aborted,
        Self::HurtByBirth,
        Self::Bleeding,
        Self::Worms,
        Self::Dull,
    ];

    /// Returns where the row was printed.
    #[must_use]
    pub const fn sources(self) -> &'static [Source] {
        match self {
            Self::MayBeNotifiable => &[GOV_UK, IRISH_FARMERS_25],
            Self::Cast => &[NFU, OURS],
            Self::LowCalcium => &[FTHENAKIS, VICTORIA, LIVESTOCK, SRVS],
            Self::Toxemia => &[NADIS, FTHENAKIS, LIMA],
            Self::Listeria => &[NADIS],
            Self::Brain => &[NADIS_04],
            Self::LowMagnesium => &[WIKIVET],
            Self::VaginaOut => &[NADIS, OURS],
            Self::WombOut => &[HAF],
            Self::BowelOut => &[MSD_PHOTO],
            Self::CervixTight => &[LIFESTYLE_NZ, FARMERS_WEEKLY_96],
            Self::AfterbirthKept => &[GREECE, MSD_2022],
            Self::WombInfected | Self::Bleeding | Self::HurtByBirth => &[MEMORY],
            Self::UdderCold => &[NADIS, NEW_MEXICO, POLL_DORSET],
            Self::UdderHot => &[AHDB_19, RAISING_SHEEP],
            Self::UdderFirm => &[OHIO_09],
            Self::NoMilk => &[OURS, COMMON],
            Self::Lame => &[WARWICK],
            Self::Chest => &[NADIS],
            Self::Bloat => &[OZARKS_10, HAF],
            Self::Grain => &[VETLIFE, FARMOW, AUSTRALIAN],
            Self::Copper => &[UK_VET, NADIS],
            Self::Aborted => &[TEAGASC, IRISH_FARMERS_18, AWANUI, VET_HELP, SCOTTISH, OURS],
            Self::Worms => &[IRISH_FARMERS_25, MEMORY],
            Self::Dull => &[OURS, MEMORY],
        }
    }

    /// Says whether people can catch what it may be (NADIS; Teagasc).
    #[must_use]
    pub const fn people_catch_it(self) -> bool {
        matches!(self, Self::Listeria | Self::Aborted)
    }
}
