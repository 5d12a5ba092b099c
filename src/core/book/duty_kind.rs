//! The names under which the book knows duties: a duty was put off by its name alone.

use serde::{Deserialize, Serialize};

/// Which duty was put off. The watch works duties out; the book only knows them by these names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DutyKind {
    /// The first dip of the navel.
    DipNavel,
    /// The second dip of the navel.
    DipNavelAgain,
    /// To see it standing.
    GetUp,
    /// First milk.
    FirstMilk,
    /// The next feed by hand.
    Feed,
    /// What the first day is short of.
    DayTotal,
    /// To weigh it.
    Weigh,
    /// To score its vigor.
    ScoreVigor,
    /// To take its temperature again.
    TakeTemperature,
    /// To call the vet.
    CallVet,
    /// A newborn scored as failing.
    Failing,
    /// A belly felt hollow.
    Hollow,
    /// To ring it.
    Ring,
    /// To see whether it can be weaned.
    WeaningCheck,
    /// To look at a ewe.
    Look,
    /// A ewe that has been restless too long.
    LongRestless,
    /// To check with a clean hand.
    HandCheck,
    /// A part showing without progress.
    Progress,
    /// A cervix that does not open.
    #[serde(rename = "neck-tight")]
    CervixClosed,
    /// A lamb that is not put right.
    PutRight,
    /// The next lamb.
    NextLamb,
    /// The afterbirth.
    Afterbirth,
    /// To let a pair out of its pen.
    LetOut,
    /// The vet, for an animal that is not right.
    Illness,
    /// To look again at an animal that is not right.
    IllnessLook,
    /// The udder check after lambing.
    Udder,
    /// To see her standing, eating and drinking after lambing.
    Settled,
    /// Milk from elsewhere, since the ewe has none.
    DamDry,
    /// To weigh a lamb that is reared on one half of an udder.
    WeighAgain,
    /// To look at a lamb after a hard birth.
    HardBirth,
}

impl std::fmt::Display for DutyKind {
    /// Writes the name by which the book knows it, such as `first-milk`.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.serialize(f)
    }
}
