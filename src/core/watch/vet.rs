//! What a call to the vet changes: it ends the duty to call, never the danger, and it brings a look again.
//!
//! A call to the vet ends the duty to call, and brings a look (`watch/vet.rs`): after 20 minutes, or when the vet
//! said. "Nobody reached" brings the call back; "was here, left a plan" turns danger amber until something new is
//! seen.

use crate::book::VetSaid;
use crate::flock::VetCall;
use crate::units::{Moment, TimeDelta};

/// After a call an animal is looked at again so soon, and so often until the vet is there (ours).
const LOOK_AGAIN: TimeDelta = TimeDelta::minutes(20);
/// After a look at the time that the vet gave, the next follows so much later (ours).
const LOOK_LATER: TimeDelta = TimeDelta::hours(1);
/// A look is late so long after its time (ours).
pub(super) const LOOK_LATE: TimeDelta = TimeDelta::minutes(20);

/// The call to the vet that was noted last, and what came of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Called {
    /// When it, or what came of it, was noted.
    pub at: Moment,
    /// What came of it; nothing while only the call was noted.
    pub said: Option<VetSaid>,
    /// When the animal is looked at again.
    pub look_again: Moment,
}

impl Called {
    /// Says whether the vet still has to be called: nobody was reached.
    #[must_use]
    pub fn nobody_reached(&self) -> bool {
        self.said == Some(VetSaid::NobodyReached)
    }

    /// Says whether the vet saw the animal and left a plan.
    #[must_use]
    pub const fn vet_saw(&self) -> bool {
        matches!(self.said, Some(VetSaid::Saw { .. }))
    }
}

/// Returns the last call noted since `since`, if any; `looked` is when the animal was looked at last.
///
/// One call more makes no look later that an earlier one asks for; what the vet says stands instead of it.
pub(super) fn called(calls: &[VetCall], since: Moment, looked: Option<Moment>) -> Option<Called> {
    let last = calls.last().filter(|call| call.at >= since)?;
    let mut asked: Option<Moment> = None;
    for call in calls.iter().filter(|call| call.at >= since) {
        let looked = looked.filter(|looked| *looked > call.at);
        asked = Some(match &call.said {
            None => {
                let again = looked.unwrap_or(call.at) + LOOK_AGAIN;
                asked.map_or(again, |asked| asked.min(again))
            }
            Some(VetSaid::Coming | VetSaid::NobodyReached) => looked.unwrap_or(call.at) + LOOK_AGAIN,
            Some(VetSaid::Advised { look_again, .. } | VetSaid::Saw { look_again, .. }) => match looked {
                Some(looked) if looked >= *look_again => looked + LOOK_LATER,
                Some(_) | None => *look_again,
            },
        });
    }
    Some(Called { at: last.at, said: last.said.clone(), look_again: asked? })
}
