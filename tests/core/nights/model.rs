//! Why a lamb must not have milk, and when it was last worse, worked out by the tests themselves from what was noted.

use yeanling_core::book::{Animal, Care, Event, Illness, LambId, Mouth, Suck, VetSaid, VigorScale, Way};
use yeanling_core::flock::Flock;
use yeanling_core::terms::{Change, LambSign};
use yeanling_core::units::{Moment, TimeDelta};

/// Source: UK hypothermia sheet, no milk under 37 °C; from 39 °C a lamb is as normal.
const WARM: f64 = 37.0;
const NORMAL: f64 = 39.0;

/// A lamb's state as far as it was seen.
#[derive(Default)]
pub(super) struct Seen {
    pub(super) no_swallow: bool,
    pub(super) cold: bool,
    pub(super) failing: bool,
    pub(super) not_tried: bool,
    /// A tight belly, or from six hours on a chin wet again, until the vet allows milk.
    pub(super) belly: bool,
    /// A chin wet from birth, or one that does not suck yet: until it stays dry, or swallows.
    pub(super) mouth: bool,
    /// When something was last seen that was worse than before.
    pub(super) worse: Option<Moment>,
    /// When one of the signs of danger was last seen.
    pub(super) seen: Option<Moment>,
    /// When the vet saw it and left a plan, if nothing was noted of the vet since.
    pub(super) vet_saw: Option<Moment>,
    pub(super) last_reading: Option<(Moment, f64)>,
}

impl Seen {
    pub(super) const fn in_danger(&self) -> bool {
        self.no_swallow || self.cold || self.failing
    }

    pub(super) const fn holds(&self) -> bool {
        self.in_danger() || self.not_tried || self.belly || self.mouth
    }
}

/// What a look said of its warmth: colder than milk allows or not, and what was read.
struct Look {
    at: Moment,
    cold: bool,
    read: Option<f64>,
}

pub(super) fn seen(flock: &Flock, lamb: LambId) -> Seen {
    let mut seen = Seen::default();
    let mut looks: Vec<Look> = Vec::new();
    let mut felt: Vec<Look> = Vec::new();
    let (mut able, mut unable, mut failed) = (None, None, None);
    let (mut last_try, mut drank) = (None, None);
    let mut warm: Option<Moment> = None;
    let (mut wet_early, mut not_sucking) = (false, false);
    for line in flock.lines_of(Animal::Lamb(lamb)).filter(|line| !line.struck) {
        let at = line.at;
        match &line.event {
            Event::TemperatureTaken { temperature, .. } => {
                // Tenths of a degree, as they are typed.
                let read = (temperature.as_celsius() * 10.0).round() / 10.0;
                looks.push(Look { at, cold: read < WARM, read: Some(read) });
                seen.last_reading = Some((at, read));
                if read >= WARM {
                    warm = Some(at);
                }
            }
            Event::Care(Care::MouthFelt { mouth, suck, .. }) => match (mouth, suck) {
                (Mouth::Cold, _) | (Mouth::Cool, Suck::Weak | Suck::None) => {
                    felt.push(Look { at, cold: true, read: None });
                }
                (Mouth::Warm, Suck::Strong) => felt.push(Look { at, cold: false, read: None }),
                (Mouth::Cool, Suck::Strong) | (Mouth::Warm, Suck::Weak | Suck::None) => {}
            },
            Event::SwallowTried { able: does, .. } => {
                last_try = Some((at, *does));
                if *does {
                    (able, unable) = (Some(at), None);
                    not_sucking = false;
                } else {
                    unable = unable.or(Some(at));
                    seen.seen = seen.seen.max(Some(at));
                }
            }
            Event::VigorScored { scale: VigorScale::FourGrade, score: 4, .. } => failed = Some(at),
            Event::Sucked { .. } => (drank, not_sucking) = (Some(at), false),
            Event::Fed { way: Way::Bottle, .. } => drank = Some(at),
            Event::Illness(Illness::LambSeen { head_up, swallows, warm, signs, .. }) => {
                let age = flock.lamb(lamb).map_or(TimeDelta::zero(), |lamb| lamb.age(at));
                let not_yet = head_up.is_good() && swallows.is_bad() && age < TimeDelta::minutes(30);
                if not_yet {
                    not_sucking = true;
                } else if head_up.is_bad() || swallows.is_bad() {
                    (last_try, able) = (Some((at, false)), able);
                    unable = unable.or(Some(at));
                    seen.seen = seen.seen.max(Some(at));
                } else if head_up.is_good() && swallows.is_good() {
                    (last_try, able, unable) = (Some((at, true)), Some(at), None);
                    not_sucking = false;
                }
                if warm.is_bad() {
                    felt.push(Look { at, cold: true, read: None });
                }
                let old = age >= TimeDelta::hours(6);
                let wet = signs.iter().any(|sign| matches!(sign, LambSign::WetChin | LambSign::Rattles));
                wet_early = (wet_early && !signs.contains(&LambSign::ChinDry)) || wet && !old;
                seen.belly |= signs.contains(&LambSign::TightBelly) || wet && old;
            }
            Event::Illness(Illness::MilkAllowed { .. }) => {
                (seen.belly, wet_early, not_sucking) = (false, false, false);
            }
            Event::Illness(Illness::Changed { change: Change::Well, .. }) => {
                (wet_early, not_sucking) = (false, false);
            }
            Event::VetCalled { .. } => seen.vet_saw = None,
            Event::Care(Care::VetSaid { said, .. }) => {
                seen.vet_saw = matches!(said, VetSaid::Saw { .. }).then_some(at);
            }
            _ => {}
        }
    }
    // Of two at one instant the thermometer is told first.
    looks.extend(felt);
    looks.sort_by_key(|look| look.at);
    let (mut before, mut colder_at): (Option<f64>, Option<Moment>) = (None, None);
    let mut cold_at: Option<Moment> = None;
    for look in looks {
        let colder = look.read.zip(before).is_some_and(|(read, before)| read < before);
        if look.cold {
            if !seen.cold || colder {
                colder_at = Some(look.at);
            }
            before = look.read.or(before);
            cold_at = Some(look.at);
        } else {
            (before, colder_at, cold_at) = (None, None, None);
        }
        seen.cold = look.cold;
    }
    seen.no_swallow = unable.is_some();
    seen.mouth = wet_early || not_sucking;
    let after = |at: Option<Moment>| failed.is_none_or(|failed| at.is_some_and(|at| at >= failed));
    seen.failing = failed.is_some() && !(after(able) && after(warm));
    // What was worse for a time and is over since leaves what the vet saw as it was.
    seen.worse = colder_at.max(unable).max(failed.filter(|_| seen.failing));
    seen.seen = seen.seen.max(cold_at).max(failed.filter(|_| seen.failing));
    if let Some((at, read)) = seen.last_reading {
        let tried = last_try.is_some_and(|(tried, _)| tried >= at - TimeDelta::minutes(10));
        let drank = drank.is_some_and(|drank| drank >= at);
        seen.not_tried = (WARM..NORMAL).contains(&read) && !tried && !drank && !seen.no_swallow;
    }
    seen
}
