//! Whether a fact of care may be noted.

use super::Rejection;
use super::here::{alive, lamb_here, living, text};
use crate::book::{Animal, Care, MOST_REMARK, VetSaid};
use crate::flock::Flock;
use crate::units::{Moment, TimeDelta};

/// The furthest that the vet's next look may lie ahead (ours).
const MOST_AHEAD: TimeDelta = TimeDelta::days(14);

pub(super) fn care(flock: &Flock, care: &Care, at: Moment) -> Result<(), Rejection> {
    match care {
        Care::VetSaid { animal, said } => {
            living(flock, *animal, at)?;
            match said {
                VetSaid::Coming | VetSaid::NobodyReached => Ok(()),
                VetSaid::Advised { what: words, look_again } | VetSaid::Saw { plan: words, look_again } => {
                    words.as_deref().map_or(Ok(()), |words| text(words, MOST_REMARK))?;
                    let ahead = look_again.since(at);
                    if ahead > TimeDelta::zero() && ahead <= MOST_AHEAD {
                        Ok(())
                    } else {
                        Err(Rejection::LookAgain { given: *look_again, after: at, most: at + MOST_AHEAD })
                    }
                }
            }
        }
        Care::GlucoseGiven { lamb, .. } | Care::MouthFelt { lamb, .. } => alive(flock, *lamb, at).map(|_| ()),
        Care::FoundBorn { lamb } => {
            let born = lamb_here(flock, *lamb)?.born;
            if at.since(born) < TimeDelta::zero() { Err(Rejection::BeforeBirth { at, born }) } else { Ok(()) }
        }
        Care::AfterbirthAwaited { ewe, .. } | Care::PutRight { ewe } | Care::Settled { ewe } => {
            living(flock, Animal::Ewe(*ewe), at)
        }
    }
}
