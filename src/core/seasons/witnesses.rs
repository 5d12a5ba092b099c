//! What each ewe's matings tell of the share that holds: that she lambed, that she has not so far, that she left before,
//! or that a scan found her empty.
//!
//! Matings that can have brought one litter are one story, from the first ram in to the last ram out. A ewe that left is
//! asked about the time until then, and no further.

use std::collections::BTreeMap;

use chrono::{NaiveDate, NaiveDateTime};

use super::matings::{Mated, count, counted};
use crate::book::EweId;
use crate::flock::{Flock, MatingWindow, UNSEEN_DAYS};
use crate::reckon::season::conception::{Fate, Witness};
use crate::reckon::season::gestation::Gestation;
use crate::reckon::season::mating::Mating;
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// Matings of one ewe that can have brought one litter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Story {
    ewe: EweId,
    ram_in: Moment,
    ram_out: Option<Moment>,
    stays: bool,
    /// When her litter began, if it did.
    pub(super) litter: Option<Moment>,
}

impl Story {
    /// Says whether her last scan since the ram came in found her empty.
    pub(super) fn scanned_empty(&self, flock: &Flock) -> bool {
        let scan = flock.ewe(self.ewe).and_then(|ewe| ewe.scans.last());
        scan.is_some_and(|scan| scan.at >= self.ram_in && scan.lambs == 0)
    }
}

/// Returns the stories of these matings, ewe by ewe.
pub(super) fn stories(matings: &[Mated]) -> Vec<Story> {
    let mut stories: Vec<Story> = Vec::with_capacity(matings.len());
    let mut in_order: Vec<&Mated> = matings.iter().collect();
    in_order.sort_small_by_key(|mated| (mated.window.ewe, mated.window.ram_in));
    for Mated { window, litter } in in_order {
        if let Some(story) = stories.last_mut()
            && story.ewe == window.ewe
            && (story.litter.is_none() || story.litter == *litter)
        {
            story.ram_out = window.ram_out;
            story.stays = window.stays;
            story.litter = *litter;
            continue;
        }
        let MatingWindow { ewe, ram_in, ram_out, stays, .. } = *window;
        stories.push(Story { ewe, ram_in, ram_out, stays, litter: *litter });
    }
    stories
}

/// By what ewes are alike: the ram's days, and what became of them.
type Alike = (NaiveDate, Option<NaiveDate>, Fate);

/// Returns what these stories tell, as known at `now` by the wall clock of `now`.
pub(super) fn witnesses(flock: &Flock, stories: &[Story], gestation: Gestation, now: Moment) -> Vec<Witness> {
    let mut alike: BTreeMap<Alike, usize> = BTreeMap::new();
    for story in stories {
        for told in told(flock, story, now.local()).into_iter().flatten() {
            *alike.entry(told).or_default() += 1;
        }
    }
    let witness = |((ram_in, ram_out, fate), ewes): (Alike, usize)| {
        let mating = Mating::new(ram_in, ram_out).ok()?;
        Some(Witness { ewes: count(ewes), mating, gestation, fate })
    };
    alike.into_iter().filter_map(witness).collect()
}

/// What one story tells; an empty scan tells of the days before it and leaves those after it.
fn told(flock: &Flock, story: &Story, now: NaiveDateTime) -> [Option<Alike>; 2] {
    let day = |at: Moment| at.local().date();
    // As it was when he came: what each ewe tells of it is told of all his days.
    let mating = counted(story.ram_in, story.ram_out, story.stays, day(story.ram_in));
    let is_open = story.ram_out.is_none() && !story.stays;
    let ram_in = day(story.ram_in);
    let ram_out = if is_open { None } else { mating.map(Mating::ram_out) };
    if let Some(began) = story.litter {
        return [Some((ram_in, ram_out, Fate::Lambed(day(began)))), None];
    }
    let Some(ewe) = flock.ewe(story.ewe) else { return [None, None] };
    let gone = [ewe.left.as_ref().map(|left| left.at), ewe.died.as_ref().map(|died| died.at)];
    let until = gone.into_iter().flatten().map(Moment::local).fold(now, NaiveDateTime::min);
    match ewe.scans.last().filter(|scan| scan.at >= story.ram_in) {
        None => [Some((ram_in, ram_out, Fate::Open(until))), None],
        Some(scan) if scan.lambs > 0 => [Some((ram_in, ram_out, Fate::Carrying(until))), None],
        Some(scan) => {
            // A lamb younger than this is not seen: what came of the last days is open.
            let seen_to = day(scan.at - TimeDelta::days(UNSEEN_DAYS));
            let last = Mating::new(ram_in, ram_out).map_or(ram_in, Mating::ram_out);
            let missed = (seen_to > ram_in).then_some(());
            let missed_to = seen_to.pred_opt().unwrap_or(seen_to).min(last);
            [
                missed.map(|()| (ram_in, Some(missed_to), Fate::Missed)),
                (seen_to <= last).then_some((seen_to.max(ram_in), Some(last), Fate::Open(until))),
            ]
        }
    }
}
