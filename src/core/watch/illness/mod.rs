//! What an animal that is not right is due: the vet now or today, or a look, until it is well again.
//!
//! The tables say how urgent what was seen is; what is noted after it changes that one way only. No better makes a look
//! the vet's, worse makes all the vet's now, and so does a vet who was not reached. A call changes no urgency. What is now
//! is a danger: it ends with "well again", with death, or turns amber when the vet was there and left a plan.

mod ewe;
mod lamb;

pub use ewe::{ewe_case, ewe_illness, stage_of};
pub use lamb::{lamb_case, lamb_illness};

pub(super) use ewe::duties as of_ewe;
pub(super) use lamb::duties as of_lamb;

use super::vet::{self, Called};
use super::{Completion, Duty, Task};
use crate::book::{Animal, Event, VetSaid};
use crate::flock::VetCall;
use crate::reckon::illness::{Answer, CHECK_WITHIN, TODAY_WITHIN, Urgency};
use crate::terms::Change;
use crate::units::{Moment, TimeDelta};

/// A look is late so long after its time (ours).
const LOOK_LATE: TimeDelta = TimeDelta::minutes(30);

/// An illness as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Course<Row, Check> {
    /// When something was first seen.
    pub since: Moment,
    /// When it was last looked at.
    pub looked: Moment,
    /// What the table says of all that was seen.
    pub answer: Answer<Row, Check>,
    /// How urgent it is, by the table and by how it went on.
    pub urgency: Urgency,
    /// Since when it is the vet's now, if it is.
    pub now_since: Option<Moment>,
    /// The last call to the vet since it began, and what came of it.
    pub called: Option<Called>,
    /// When it last was worse: something new was seen, or someone said so.
    worsened: Moment,
}

/// What is noted of an animal beside what was seen of it.
struct Noted<'a> {
    /// When each look with signs was.
    seen: Vec<Moment>,
    /// When something was last seen that had not been seen before.
    newest: Moment,
    /// Since when the table says now, if it does.
    now_since: Option<Moment>,
    changed: &'a [(Moment, Change)],
    vet: &'a [VetCall],
}

/// Returns when something was last seen that had not been seen before, of looks that each say when, which bad signs were
/// seen, and whether it is new whatever was seen before; nothing without a look.
fn newest<Sign: PartialEq, Signs: IntoIterator<Item = Sign>>(
    looks: impl IntoIterator<Item = (Moment, Signs, bool)>,
) -> Option<Moment> {
    let mut known: Vec<Sign> = Vec::new();
    let mut newest: Option<Moment> = None;
    for (at, signs, anew) in looks {
        let before = known.len();
        for sign in signs {
            if !known.contains(&sign) {
                known.push(sign);
            }
        }
        if newest.is_none() || known.len() > before {
            newest = Some(at);
        } else if anew {
            newest = newest.max(Some(at));
        }
    }
    newest
}

/// Returns how an illness stands.
fn course<Row, Check>(answer: Answer<Row, Check>, noted: &Noted<'_>) -> Option<Course<Row, Check>> {
    let since = *noted.seen.first()?;
    let mut urgency = answer.urgency;
    let mut now_since = noted.now_since;
    let (mut looked, mut worsened) = (*noted.seen.last()?, noted.newest);
    for (at, change) in noted.changed.iter().filter(|(at, _)| *at >= since) {
        looked = looked.max(*at);
        let then = match change {
            Change::Better | Change::Well => continue,
            Change::Same if matches!(urgency, Urgency::Watch(_)) => answer.no_better,
            Change::Same => continue,
            Change::Worse => {
                worsened = worsened.max(*at);
                Urgency::Now
            }
        };
        if then == Urgency::Now {
            now_since.get_or_insert(*at);
        }
        urgency = urgency.max(then);
    }
    let called = vet::called(noted.vet, since, Some(looked));
    // Another call quiets nothing: only a vet who was reached does.
    let words = noted.vet.iter().rev().filter(|call| call.at >= since && call.said.is_some());
    if let Some(last) = words.into_iter().next()
        && last.said == Some(VetSaid::NobodyReached)
        && urgency == Urgency::Today
    {
        urgency = Urgency::Now;
        now_since.get_or_insert(last.at);
    }
    if urgency != Urgency::Now {
        now_since = None;
    }
    Some(Course { since, looked, answer, urgency, now_since, called, worsened })
}

impl<Row: Copy, Check> Course<Row, Check> {
    /// Returns the row that is told first.
    #[must_use]
    pub fn first(&self) -> Option<Row> {
        self.answer.rows.first().map(|found| found.row)
    }

    /// Says whether the vet was there and left a plan, and nothing was worse since.
    #[must_use]
    pub fn vet_saw(&self) -> bool {
        self.called.as_ref().is_some_and(|called| called.vet_saw() && called.at >= self.worsened)
    }

    /// Returns when it is looked at again by its own rule.
    #[must_use]
    pub fn look_again(&self) -> Moment {
        self.looked + self.answer.look.unwrap_or(TODAY_WITHIN)
    }

    fn reached(&self) -> bool {
        self.called.as_ref().is_some_and(|called| !called.nobody_reached())
    }

    /// The duties: the vet, and a look where none of the vet's own stands in its place.
    fn duties(&self, animal: Animal, vet_task: Task, look_task: Task) -> Vec<Duty> {
        let open =
            if self.reached() { Completion::Open } else { Completion::Note(Event::VetCalled { animal }) };
        let check = !self.answer.check_now.is_empty();
        let look = |late: TimeDelta| {
            let due = self.look_again();
            self.duty(look_task, self.looked, due, due + late, Completion::Open)
        };
        let mut duties = Vec::new();
        match self.urgency {
            Urgency::Now => {
                let since = self.now_since.unwrap_or(self.since);
                let mut vet = self.duty(vet_task, since, since, since, open);
                vet.danger = Some(since);
                if let Some(called) = self.called.as_ref().filter(|_| self.vet_saw()) {
                    vet.danger = None;
                    vet.late = vet.late.max(called.look_again);
                }
                vet.vet.clone_from(&self.called);
                duties.push(vet);
                duties.extend(check.then(|| look(CHECK_WITHIN)));
            }
            Urgency::Today => {
                if !self.reached() {
                    duties.push(self.duty(vet_task, self.since, self.since, self.since + TODAY_WITHIN, open));
                }
                duties.push(look(if check { CHECK_WITHIN } else { LOOK_LATE }));
            }
            Urgency::Watch(_) => duties.push(look(if check { CHECK_WITHIN } else { LOOK_LATE })),
        }
        duties
    }

    fn duty(&self, task: Task, since: Moment, due: Moment, late: Moment, completion: Completion) -> Duty {
        Duty { task, since, from: since, due, late, danger: None, vet: None, completion, put_off: None }
    }
}
