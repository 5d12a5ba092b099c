//! When milk waits: holds with names, each with an end of its own. Milk needs all of them ended.
//!
//! None goes by with time. A thermometer says nothing of swallowing, standing and sucking nothing of warmth.
//!
//! Holds on milk have names, and each its own end (`Hold`): cold ends at 37 °C or more (or a warm mouth and a strong
//! suck), no swallow at head up and swallow seen, a tight belly or a wet chin on the vet's word alone, a chin that may be wet
//! from birth when it stays dry, every other sign that shuts the mouth when it is well again or the vet allows milk, failing at
//! both, not tried at a try or a suck. Time and a call to the vet end none.

use super::warmth::cold_spell;
use crate::book::Way;
use crate::flock::{Lamb, LambIll};
use crate::reckon::body_temperature::{Band, band};
use crate::reckon::illness::lamb::{Case, Row, WET_CHIN_FROM, decide};
use crate::terms::LambSign;
use crate::units::{Moment, Temperature, TimeDelta};

/// Why milk waits, the worst first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hold {
    /// It did not hold its head up and swallow when it was last tried; ends when it is seen to do both.
    NoSwallow {
        /// Since when.
        since: Moment,
    },
    /// Its belly was tight, or its chin wet again after wiping; ends only when the vet allows milk again.
    Belly {
        /// Since when.
        since: Moment,
    },
    /// What was seen of it lets nothing be given by mouth; ends with good news about that very sign, when it is well again, or
    /// when the vet allows it milk.
    Mouth {
        /// Since when.
        since: Moment,
        /// What it may be.
        row: Row,
    },
    /// It is under 37 °C, or its mouth was cold; ends at 37 °C or more, or with a warm mouth and a strong suck.
    Cold {
        /// Since when.
        since: Moment,
        /// What was read last; nothing where only its mouth was felt.
        read: Option<Temperature>,
    },
    /// It was scored failing; ends when it has since read 37 °C or more, and held its head up and swallowed.
    Failing {
        /// Since when.
        since: Moment,
    },
    /// It read under 39 °C and nobody has tried since then whether it holds its head up and swallows; ends with that, or
    /// when it is seen to suck, from its dam or a bottle.
    NotTried {
        /// Since when.
        since: Moment,
        /// What was read.
        read: Temperature,
    },
}

/// Returns every reason why the lamb must not be given milk yet, the worst first; none when nothing speaks against it.
#[must_use]
pub fn holds(lamb: &Lamb) -> Vec<Hold> {
    [no_swallow(lamb), belly(lamb), mouth(lamb), cold(lamb), failing(lamb), not_tried(lamb)]
        .into_iter()
        .flatten()
        .collect()
}

/// Returns the worst reason why the lamb must not be given milk yet.
#[must_use]
pub fn hold_milk(lamb: &Lamb) -> Option<Hold> {
    holds(lamb).first().copied()
}

/// A try of head and swallow says so long that it may be tubed (ours: as long as a reading is acted on).
const TRIED: TimeDelta = TimeDelta::hours(2);

/// Says whether it was seen to hold its head up and swallow so lately that a tube may go in, and nothing holds milk back.
#[must_use]
pub fn may_be_tubed(lamb: &Lamb, now: Moment) -> bool {
    let tried = lamb.swallow.last().is_some_and(|(at, able)| *able && now.since(*at) < TRIED);
    tried && hold_milk(lamb).is_none()
}

fn no_swallow(lamb: &Lamb) -> Option<Hold> {
    let (last, able) = lamb.swallow.last()?;
    let able_before = lamb.swallow.iter().rev().find(|(_, able)| *able).map(|(at, _)| *at);
    let tries = lamb.swallow.iter().filter(|(_, able)| !able).map(|(at, _)| *at);
    let since = tries.filter(|at| able_before.is_none_or(|able| *at >= able)).min().unwrap_or(*last);
    (!able).then_some(Hold::NoSwallow { since })
}

fn belly(lamb: &Lamb) -> Option<Hold> {
    lamb.belly_or_chin().map(|since| Hold::Belly { since })
}

/// What belly or chin does not hold back already.
fn mouth(lamb: &Lamb) -> Option<Hold> {
    let allowed = lamb.milk_allowed.last().copied();
    let mut looks = lamb.illness().iter().filter(|look| allowed.is_none_or(|allowed| look.at > allowed));
    looks.find_map(|look| {
        let row = shuts(look, lamb).into_iter().find(|row| !is_over(look, *row, lamb))?;
        Some(Hold::Mouth { since: look.at, row })
    })
}

/// Returns the rows for which what was seen at one look lets nothing be given by mouth.
pub(in crate::watch) fn shuts(look: &LambIll, lamb: &Lamb) -> Vec<Row> {
    let case = Case {
        age: Some(lamb.age(look.at)),
        head_up: look.head_up,
        swallows: look.swallows,
        signs: look.signs.clone(),
        on_bottle: lamb.on_bottle(),
        ..Case::default()
    };
    let no_anus = look.signs.contains(&LambSign::NoAnus);
    let rows = decide(&case).rows.into_iter().map(|found| found.row);
    rows.filter(|row| row.shuts_mouth() || no_anus && *row == Row::NoDung).collect()
}

/// Says whether good news about that very sign came since: it breathes and swallows, or a chin that may have been wet from
/// birth stays dry. What a try of head and swallow says has a hold of its own.
fn is_over(look: &LambIll, row: Row, lamb: &Lamb) -> bool {
    let swallows = || {
        let sucked = lamb.sucked.iter().any(|at| *at > look.at);
        sucked || lamb.swallow.iter().any(|(at, able)| *able && *at > look.at)
    };
    match row {
        Row::NoSwallow => swallows() || lamb.swallow.iter().any(|(at, _)| *at == look.at),
        Row::NotBreathing => swallows(),
        Row::WateryMouth => {
            let dry = |other: &LambIll| other.at > look.at && other.signs.contains(&LambSign::ChinDry);
            lamb.age(look.at) < WET_CHIN_FROM
                && !look.signs.contains(&LambSign::TightBelly)
                && lamb.ill.iter().any(dry)
        }
        Row::MayBeNotifiable
        | Row::ColdYoung
        | Row::ColdOlder
        | Row::Hungry
        | Row::Bloat
        | Row::NoDung
        | Row::Hot
        | Row::Dysentery
        | Row::Coccidia
        | Row::Scour
        | Row::Joint
        | Row::Navel
        | Row::Eye
        | Row::Chest
        | Row::WhiteMuscle
        | Row::Wobbly
        | Row::Tetanus
        | Row::Fits
        | Row::Orf
        | Row::Leg
        | Row::FoundDead
        | Row::BowelOut
        | Row::MilkInLung
        | Row::HardBirth
        | Row::Wound
        | Row::Dull => false,
    }
}

fn cold(lamb: &Lamb) -> Option<Hold> {
    let spell = cold_spell(lamb).filter(super::warmth::ColdSpell::goes_on)?;
    Some(Hold::Cold { since: spell.began, read: spell.read() })
}

fn failing(lamb: &Lamb) -> Option<Hold> {
    let since = lamb.vigor.iter().rev().find(|scored| scored.is_failing())?.at;
    let swallows = lamb.swallow.iter().any(|(at, able)| *able && *at >= since);
    let warm = lamb.temperatures.iter().any(|reading| {
        reading.at >= since && band(reading.temperature).is_ok_and(|band| band > Band::Severe)
    });
    (!swallows || !warm).then_some(Hold::Failing { since })
}

fn not_tried(lamb: &Lamb) -> Option<Hold> {
    let last = lamb.temperatures.last().filter(|_| no_swallow(lamb).is_none())?;
    let mild = band(last.temperature).is_ok_and(|band| band == Band::Mild);
    let bottles = lamb.feeds.iter().filter(|feed| feed.way == Way::Bottle).map(|feed| feed.at);
    let drank = lamb.sucked.iter().copied().chain(bottles).any(|at| at >= last.at);
    (mild && lamb.swallows().is_none() && !drank)
        .then_some(Hold::NotTried { since: last.at, read: last.temperature })
}
