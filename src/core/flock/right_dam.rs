//! Putting a lamb right that was given to the wrong ewe: which entries are to be amended, and how, so that all that hangs
//! on it goes along.
//!
//! Nothing is noted anew and nothing is struck: each entry that named the wrong ewe says the right one. Taken back
//! together, the amendments leave everything as it was.

use super::{Flock, Line, SIGNS_FOR};
use crate::book::{Animal, Care, Event, EweId, LambId};
use crate::units::{Moment, TimeDelta};

/// What is noted of a ewe so long after her last lamb still belongs to that lambing (ours; as long as the afterbirth is
/// asked for).
const AFTER: TimeDelta = TimeDelta::days(3);

/// What goes to the right ewe along with a lamb.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct GoesAlong {
    /// The other lambs of its litter.
    pub litter: bool,
    /// What was noted of the wrong ewe at this lambing: see [`Flock::noted_at_lambing`].
    pub noted: bool,
}

impl Flock {
    /// Returns what was noted of the dam of this lamb at its lambing, oldest first: signs, waters, what showed, checks,
    /// help, the vet, looks, the afterbirth, and the pen she was put in with her lambs. What she showed for an earlier
    /// litter, or for a later one, is not among it.
    #[must_use]
    pub fn noted_at_lambing(&self, lamb: LambId) -> Vec<&Line> {
        let Some(litter) = self.litter_of(lamb) else { return Vec::new() };
        let Some(dam) = litter.dam else { return Vec::new() };
        let others = self.litters_by(dam).filter(|other| other.id != litter.id);
        let before = others.map(|other| other.latest).filter(|latest| *latest < litter.began).max();
        let from = litter.began - SIGNS_FOR;
        let until = litter.latest + AFTER;
        let then = |at: Moment| at >= from && at <= until && before.is_none_or(|before| at > before);
        let is = |line: &&Line| {
            let of_lambing = match of_ewe(&line.event, dam) {
                Some((Kind::Labor, _)) => true,
                // Where she stood before says nothing of who lambed, and a pen that was taken down takes nobody.
                Some((Kind::Pen, _)) => line.at >= litter.began && self.is_open(&line.event),
                None => false,
            };
            of_lambing && !line.struck && then(line.at)
        };
        self.lines_of(Animal::Ewe(dam)).filter(is).collect()
    }

    /// Returns the corrections that give this lamb to the ewe it is of, with what goes along; none when it is hers, or not
    /// here.
    #[must_use]
    pub fn given_to(&self, lamb: LambId, dam: EweId, along: GoesAlong) -> Vec<Event> {
        let Some(litter) = self.litter_of(lamb) else { return Vec::new() };
        let Some(found) = self.lamb(lamb).filter(|lamb| lamb.dam != Some(dam)) else { return Vec::new() };
        let goes = |id: &LambId| along.litter || *id == found.id;
        // One that stays can stand for the litter.
        let stays = litter.lambs.iter().copied().find(|id| !goes(id));
        let mut corrections = Vec::new();
        for id in &litter.lambs {
            for line in self.lines_of(Animal::Lamb(*id)).filter(|line| !line.struck) {
                let right = if goes(id) {
                    of_one_that_goes(&line.event, dam, stays)
                } else {
                    self.of_one_that_stays(&line.event, *id, found.id, stays)
                };
                corrections.extend(right.map(|event| amended(line, event)));
            }
        }
        if along.noted {
            let lines = self.noted_at_lambing(lamb);
            let right = |line: &Line| of_ewe(&line.event, dam).map(|(_, event)| amended(line, event));
            corrections.extend(lines.into_iter().filter_map(right));
        }
        corrections
    }

    fn is_open(&self, event: &Event) -> bool {
        let pen = event.pen().and_then(|pen| self.pens.get(&pen));
        pen.is_none_or(|pen| pen.closed.is_none())
    }

    /// Returns what an entry of a lamb that stays should say, if it stands beside the one that goes.
    fn of_one_that_stays(
        &self,
        event: &Event,
        id: LambId,
        gone: LambId,
        stays: Option<LambId>,
    ) -> Option<Event> {
        let Event::LambBorn { dam, beside: Some(beside), sex, alive } = event else { return None };
        let is_gone = self.canonical(Animal::Lamb(*beside)) == Animal::Lamb(gone);
        let beside = stays.filter(|other| *other != id);
        is_gone.then_some(Event::LambBorn { dam: *dam, beside, sex: *sex, alive: *alive })
    }
}

fn amended(line: &Line, event: Event) -> Event {
    Event::Amended { entry: line.entry, event: Box::new(event), at: line.at }
}

/// Returns what an entry of a lamb that goes should say, if it says something else.
fn of_one_that_goes(event: &Event, dam: EweId, stays: Option<LambId>) -> Option<Event> {
    if let Event::LambBorn { beside, sex, alive, .. } = event {
        // Beside one that stays it was not born: the two are of two litters.
        let beside = beside.filter(|_| stays.is_none());
        return Some(Event::LambBorn { dam: Some(dam), beside, sex: *sex, alive: *alive });
    }
    if let Event::DamGiven { lamb, .. } = event {
        return Some(Event::DamGiven { lamb: *lamb, dam });
    }
    // That all are born was said of the litter, and stays with it.
    if let Event::AllBorn { .. } = event {
        return stays.map(|lamb| Event::AllBorn { lamb });
    }
    None
}

/// What kind of fact of a lambing ewe it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Labor,
    Pen,
}

/// Returns the same fact of care of another ewe, if it is one of a ewe.
fn care_of_ewe(care: &Care, ewe: EweId) -> Option<Care> {
    match care {
        Care::VetSaid { animal: Animal::Ewe(_), said } => {
            Some(Care::VetSaid { animal: Animal::Ewe(ewe), said: said.clone() })
        }
        Care::AfterbirthAwaited { seen, .. } => Some(Care::AfterbirthAwaited { ewe, seen: *seen }),
        Care::PutRight { .. } => Some(Care::PutRight { ewe }),
        Care::Settled { .. } => Some(Care::Settled { ewe }),
        Care::VetSaid { animal: Animal::Lamb(_), .. }
        | Care::GlucoseGiven { .. }
        | Care::MouthFelt { .. }
        | Care::FoundBorn { .. } => None,
    }
}

/// Returns the same fact of another ewe, if it is one that goes with a lambing.
fn of_ewe(event: &Event, ewe: EweId) -> Option<(Kind, Event)> {
    let animal = Animal::Ewe(ewe);
    let labor = match event {
        Event::SignSeen { sign, .. } => Event::SignSeen { ewe, sign: *sign },
        Event::WaterBagSeen { .. } => Event::WaterBagSeen { ewe },
        Event::StrainingSeen { .. } => Event::StrainingSeen { ewe },
        Event::PartShowing { part, .. } => Event::PartShowing { ewe, part: *part },
        Event::HandChecked { found, .. } => Event::HandChecked { ewe, found: *found },
        Event::HelpBegun { .. } => Event::HelpBegun { ewe },
        Event::NotLambing { .. } => Event::NotLambing { ewe },
        Event::AfterbirthPassed { .. } => Event::AfterbirthPassed { ewe },
        Event::VetCalled { animal: Animal::Ewe(_) } => Event::VetCalled { animal },
        Event::LookedAt { animal: Animal::Ewe(_) } => Event::LookedAt { animal },
        Event::Care(care) => Event::Care(care_of_ewe(care, ewe)?),
        Event::PutInPen { animal: Animal::Ewe(_), pen } => {
            return Some((Kind::Pen, Event::PutInPen { animal, pen: *pen }));
        }
        Event::LetOut { animal: Animal::Ewe(_) } => return Some((Kind::Pen, Event::LetOut { animal })),
        Event::VetCalled { animal: Animal::Lamb(_) }
        | Event::LookedAt { animal: Animal::Lamb(_) }
        | Event::PutInPen { animal: Animal::Lamb(_), .. }
        | Event::LetOut { animal: Animal::Lamb(_) }
        | Event::EweCame { .. }
        | Event::Tagged { .. }
        | Event::LambBorn { .. }
        | Event::DamGiven { .. }
        | Event::BirthEase { .. }
        | Event::Stood { .. }
        | Event::Sucked { .. }
        | Event::NavelDipped { .. }
        | Event::Weighed { .. }
        | Event::Fed { .. }
        | Event::VigorScored { .. }
        | Event::BellyFelt { .. }
        | Event::Accepted { .. }
        | Event::TemperatureTaken { .. }
        | Event::SwallowTried { .. }
        | Event::Warmed { .. }
        | Event::SolidsEaten { .. }
        | Event::Weaned { .. }
        | Event::Ringed { .. }
        | Event::PenMade { .. }
        | Event::PenNamed { .. }
        | Event::PenCleaned { .. }
        | Event::PenClosed { .. }
        | Event::GroupFormed { .. }
        | Event::GroupNamed { .. }
        | Event::GroupParted { .. }
        | Event::JoinedGroup { .. }
        | Event::LeftGroup { .. }
        | Event::RamIn { .. }
        | Event::RamOut { .. }
        | Event::CrayonChanged { .. }
        | Event::CrayonMark { .. }
        | Event::Scanned { .. }
        | Event::Conditioned { .. }
        | Event::EweWeighed { .. }
        | Event::FeedSet { .. }
        | Event::BoosterGiven { .. }
        | Event::StoreIn { .. }
        | Event::StoreUsed { .. }
        | Event::StoreThrown { .. }
        | Event::StoreCounted { .. }
        | Event::ColostrumFrozen { .. }
        | Event::ColostrumThawed { .. }
        | Event::ColostrumThrown { .. }
        | Event::PutOff { .. }
        | Event::AllBorn { .. }
        | Event::Died { .. }
        | Event::Remarked { .. }
        | Event::Life(_)
        | Event::Planning(_)
        | Event::Past(_)
        // What ails her is hers, whoever lambed.
        | Event::Illness(_)
        | Event::Chose(_)
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Deleted { .. }
        | Event::Restored { .. }
        | Event::Unread(_) => return None,
    };
    Some((Kind::Labor, labor))
}
