//! The duties of a ewe at lambing, one rule a file: from the first restlessness to the afterbirth.
//!
//! A call to the vet, a clean hand, help or a birth each end the clocks that asked for them; time alone ends none.

mod afterbirth;
mod hand_check;
mod long_restless;
mod look;
mod neck;
mod next_lamb;
mod progress;
mod put_right;

use super::{Discharge, Duty, Task};
use crate::book::{Animal, Found, Lie};
use crate::flock::{Ewe, Flock, Labor, Litter};
use crate::practice::LaborLimits;
use crate::reckon::labor::Needs;
use crate::units::{Moment, TimeDelta};

/// Returns the duties of a ewe whose labor goes on.
pub(super) fn before_birth(ewe: &Ewe, labor: &Labor, now: Moment, limits: LaborLimits) -> Vec<Duty> {
    [
        look::duty(ewe, labor, limits),
        long_restless::duty(ewe, labor, limits),
        hand_check::duty(ewe, labor, now, limits),
        progress::duty(ewe, labor, limits),
        neck::duty(ewe, labor, limits),
        put_right::duty(ewe, labor, limits),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Returns the duties that follow the last birth of a litter.
pub(super) fn after_birth(flock: &Flock, litter: &Litter, now: Moment, limits: LaborLimits) -> Vec<Duty> {
    let Some(ewe) = litter.dam.and_then(|dam| flock.ewe(dam)).filter(|ewe| ewe.lives()) else {
        return Vec::new();
    };
    [next_lamb::duty(ewe, litter, now, limits), afterbirth::duty(ewe, litter, now, limits)]
        .into_iter()
        .flatten()
        .collect()
}

/// Says what a lamb that lies so needs (ours).
#[must_use]
pub const fn needs(lie: Lie) -> Needs {
    match lie {
        Lie::Normal => Needs::Nothing,
        Lie::OneLegBack
        | Lie::BothLegsBack
        | Lie::HeadDown
        | Lie::ElbowsLocked
        | Lie::HindFeetFirst
        | Lie::TailFirst
        | Lie::HeadBack
        | Lie::TwoTangled
        | Lie::UpsideDown => Needs::Help,
        Lie::Crosswise | Lie::TooBig | Lie::Deformed => Needs::Vet,
    }
}

/// The last check, if it found nothing wrong: from then the clock of waters and straining runs anew.
fn clear_check(labor: &Labor) -> Option<Moment> {
    match labor.check? {
        (at, Found::NothingYet | Found::Lamb(Lie::Normal)) => Some(at),
        (_, Found::NeckTight | Found::Empty | Found::Lamb(_)) => None,
    }
}

/// Says whether the vet was called since.
fn vet_since(labor: &Labor, since: Moment) -> bool {
    labor.vet.is_some_and(|vet| vet >= since)
}

/// A duty of this ewe, counted from an instant.
fn counted(
    ewe: &Ewe,
    task: Task,
    from: Moment,
    due: TimeDelta,
    late: TimeDelta,
    discharge: Discharge,
) -> Duty {
    Duty {
        subject: Animal::Ewe(ewe.id),
        task,
        since: from,
        from,
        due: from + due,
        late: from + late,
        discharge,
        put_off: None,
    }
}

fn minutes(minutes: u16) -> TimeDelta {
    TimeDelta::minutes(i64::from(minutes))
}
