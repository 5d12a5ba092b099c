//! After her lambing: standing, eating and drinking, with feed and water before her. One look, asked with the udder check.
//!
//! Of a ewe that was seen since as not right the same is asked there, and sooner.

use super::{Completion, Duty, EweTask, counted, udder};
use crate::book::{Care, Event};
use crate::flock::{Ewe, Litter};
use crate::reckon::illness::udder::{DUE, LATE};
use crate::units::Moment;

pub(super) fn duty(ewe: &Ewe, litter: &Litter, now: Moment) -> Option<Duty> {
    let seen = ewe.settled.iter().any(|at| *at >= litter.latest);
    let ill = ewe.ill.iter().any(|seen| seen.at >= litter.began);
    if seen || ill || now.since(litter.latest) > udder::GONE {
        return None;
    }
    let settled = Completion::Note(Event::Care(Care::Settled { ewe: ewe.id }));
    let duty = counted(ewe, EweTask::Settled, litter.latest, DUE, LATE, settled);
    Some(Duty { from: duty.due - udder::AHEAD, ..duty })
}
