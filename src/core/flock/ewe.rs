//! A ewe as the book has her.

use super::{
    CrayonMark, Death, EweIll, GroupStay, Labor, Left, Reading, Saw, Seen, UdderSeen, VetCall, Vital, Weight,
};
use crate::book::{BirthDay, EweId, LambId};
use crate::terms::{Change, Spread};
use crate::units::{Condition, Ketones, Moment};

/// A ewe. Everything seen of her is in the order in which it happened.
#[derive(Clone, Debug, PartialEq)]
pub struct Ewe {
    /// Her id.
    pub id: EweId,
    /// When she came into the book.
    pub came: Moment,
    /// What she is called by, if anything.
    pub tag: Option<String>,
    /// Tags she wore before and marks that were put on her, oldest first.
    pub worn: Vec<String>,
    /// Whether he is a ram; then he stands among the rams.
    pub is_ram: bool,
    /// Her sire, where it was said.
    pub sire: Option<EweId>,
    /// Her dam, where it was said.
    pub dam: Option<EweId>,
    /// Of how many she was born, where it was said.
    pub born_as: Option<u8>,
    /// The lamb that she was, if she was born here.
    pub was: Option<LambId>,
    /// When she was born, as it was said.
    pub born: Option<BirthDay>,
    /// Her breed in the farm's own words.
    pub breed: Option<String>,
    /// How she left the flock alive, if she did.
    pub left: Option<Left>,
    /// Her death, if she has died.
    pub died: Option<Death>,
    /// What was seen of her around lambing.
    pub seen: Vec<Seen>,
    /// Each call to the vet for her, and what came of it.
    pub vet: Vec<VetCall>,
    /// Her labor, if one goes on or is near.
    pub labor: Option<Labor>,
    /// Her weights.
    pub weights: Vec<Weight>,
    /// Her condition scores.
    pub scores: Vec<ConditionScore>,
    /// The crayon marks that were seen on her.
    pub marks: Vec<CrayonMark>,
    /// Her scans.
    pub scans: Vec<Scan>,
    /// Her stays in groups, one at a time.
    pub stays: Vec<GroupStay>,
    /// What was seen of her that is not right.
    pub ill: Vec<EweIll>,
    /// When something that goes round was seen to, told of her.
    pub spread_seen_to: Vec<(Moment, Spread)>,
    /// How she was when she was looked at again.
    pub changed: Vec<(Moment, Change)>,
    /// Her temperatures.
    pub temperatures: Vec<Reading>,
    /// Her ketone readings.
    pub ketones: Vec<(Moment, Ketones)>,
    /// Pulses and breaths that were counted.
    pub vitals: Vec<Vital>,
    /// Each check of her udder.
    pub udder: Vec<UdderSeen>,
    /// When she was seen settled after a lambing.
    pub settled: Vec<Moment>,
}

/// A condition score and when it was felt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ConditionScore {
    /// When.
    pub at: Moment,
    /// The score.
    pub score: Condition,
}

/// What a scan showed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scan {
    /// When.
    pub at: Moment,
    /// How many lambs; none when she is not in lamb.
    pub lambs: u8,
    /// How old they were said to be, in days since mating.
    pub days: Option<u16>,
}

impl Ewe {
    /// Returns a ewe of whom nothing else is known.
    #[must_use]
    pub const fn new(id: EweId, came: Moment) -> Self {
        Self {
            id,
            came,
            tag: None,
            worn: Vec::new(),
            is_ram: false,
            sire: None,
            dam: None,
            born_as: None,
            was: None,
            born: None,
            breed: None,
            left: None,
            died: None,
            seen: Vec::new(),
            vet: Vec::new(),
            labor: None,
            weights: Vec::new(),
            scores: Vec::new(),
            marks: Vec::new(),
            scans: Vec::new(),
            stays: Vec::new(),
            ill: Vec::new(),
            spread_seen_to: Vec::new(),
            changed: Vec::new(),
            temperatures: Vec::new(),
            ketones: Vec::new(),
            vitals: Vec::new(),
            udder: Vec::new(),
            settled: Vec::new(),
        }
    }

    /// Says whether she lives here: not dead, and not gone.
    #[must_use]
    pub const fn lives(&self) -> bool {
        self.died.is_none() && self.left.is_none()
    }

    /// Returns when she died or left the flock, the first of the two.
    #[must_use]
    pub fn gone(&self) -> Option<Moment> {
        let died = self.died.as_ref().map(|died| died.at);
        died.into_iter().chain(self.left.as_ref().map(|left| left.at)).min()
    }

    /// Returns the latest condition score.
    #[must_use]
    pub fn condition(&self) -> Option<ConditionScore> {
        self.scores.last().copied()
    }

    /// Returns the latest weight.
    #[must_use]
    pub fn weight(&self) -> Option<Weight> {
        self.weights.last().copied()
    }

    /// Returns when she was last looked at and all was well.
    #[must_use]
    pub fn last_look(&self) -> Option<Moment> {
        self.seen.iter().rev().find(|seen| seen.what == Saw::Look).map(|seen| seen.at)
    }

    /// Returns what was seen of her at this very instant, the last noted if several; nothing if nothing was.
    #[must_use]
    pub fn saw_at(&self, at: Moment) -> Option<Saw> {
        self.seen.iter().rev().find(|seen| seen.at == at).map(|seen| seen.what)
    }
}
