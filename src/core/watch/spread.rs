//! What goes round in the flock: the same thing seen in several animals within days. It is told until it is seen to or old.
//!
//! Only what was noted of those days is read, however large the book is.

use std::collections::BTreeSet;

use crate::book::{Animal, Cause};
use crate::flock::Flock;
use crate::reckon::illness::Urgency;
use crate::reckon::illness::spread::{Rule, WELL_GROWN, rule};
use crate::terms::{EweSign, LambSign, Spread};
use crate::units::Moment;

/// Something that goes round.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spreading {
    /// What.
    pub spread: Spread,
    /// Who has it or had it in these days, the latest last.
    pub animals: Vec<Animal>,
    /// When it was last seen.
    pub last: Moment,
    /// How urgent it is.
    pub urgency: Urgency,
}

/// Returns what goes round in the flock, the most urgent first.
#[must_use]
pub fn spreading(flock: &Flock, now: Moment) -> Vec<Spreading> {
    Spread::ALL.into_iter().filter_map(|spread| goes_round(flock, spread, now)).collect()
}

fn goes_round(flock: &Flock, spread: Spread, now: Moment) -> Option<Spreading> {
    let Rule { animals: least, within, urgency, .. } = rule(spread);
    let recent = |at: Moment| at <= now && now.since(at) < within;
    let noted: BTreeSet<Animal> = flock
        .not_right
        .iter()
        .rev()
        .skip_while(|(at, _)| *at > now)
        .take_while(|(at, _)| recent(*at))
        .map(|(_, animal)| *animal)
        .collect();
    let seen_to = noted.iter().filter_map(|animal| seen_to(flock, *animal, spread, now)).max();
    let counts = |at: &Moment| recent(*at) && seen_to.is_none_or(|seen_to| *at > seen_to);
    let mut has: Vec<(Moment, Animal)> = noted
        .into_iter()
        .filter_map(|animal| {
            let latest = shown(flock, animal, spread).into_iter().filter(counts).max()?;
            Some((latest, animal))
        })
        .collect();
    has.sort_unstable();
    let last = has.last().map(|(at, _)| *at).filter(|_| has.len() >= least)?;
    Some(Spreading { spread, animals: has.into_iter().map(|(_, animal)| animal).collect(), last, urgency })
}

/// When it was last seen to, as far as that was told of this animal.
fn seen_to(flock: &Flock, animal: Animal, spread: Spread, now: Moment) -> Option<Moment> {
    let told = match animal {
        Animal::Ewe(id) => flock.ewe(id).map(|ewe| &ewe.spread_seen_to),
        Animal::Lamb(id) => flock.lamb(id).map(|lamb| &lamb.spread_seen_to),
    };
    told?.iter().filter(|(at, of)| *of == spread && *at <= now).map(|(at, _)| *at).max()
}

/// When an animal showed it.
fn shown(flock: &Flock, animal: Animal, spread: Spread) -> Vec<Moment> {
    match animal {
        Animal::Ewe(id) => {
            let Some(ewe) = flock.ewe(id) else { return Vec::new() };
            let shows = |sign: &EweSign| match spread {
                Spread::Notifiable => *sign == EweSign::ManyIll,
                Spread::ManyLame => matches!(sign, EweSign::Lame | EweSign::NoWeightOnLeg),
                Spread::Abortions => *sign == EweSign::Aborted,
                Spread::LambsDying | Spread::WetChins | Spread::Scours => false,
            };
            ewe.ill.iter().filter(|look| look.signs.iter().any(shows)).map(|look| look.at).collect()
        }
        Animal::Lamb(id) => {
            let Some(lamb) = flock.lamb(id) else { return Vec::new() };
            if spread == Spread::LambsDying {
                let died = lamb.died.as_ref().filter(|death| lamb.born_alive && of_illness(death.cause));
                let grown = |at: &Moment| at.since(lamb.born) >= WELL_GROWN;
                return died.map(|death| death.at).filter(grown).into_iter().collect();
            }
            let shows = |sign: &LambSign| match spread {
                Spread::Notifiable => *sign == LambSign::MoreDying,
                Spread::ManyLame => *sign == LambSign::Limps,
                Spread::WetChins => matches!(sign, LambSign::WetChin | LambSign::Rattles),
                Spread::Scours => {
                    matches!(sign, LambSign::WateryScour | LambSign::BloodInDung | LambSign::DarkStraining)
                }
                Spread::Abortions | Spread::LambsDying => false,
            };
            let wet_from_birth = |at: Moment| {
                spread == Spread::WetChins && lamb.age(at) < crate::reckon::illness::lamb::WET_CHIN_FROM
            };
            let looks = lamb.ill.iter().filter(|look| look.signs.iter().any(shows));
            looks.map(|look| look.at).filter(|at| !wet_from_birth(*at)).collect()
        }
    }
}

/// What may go round; a predator or an accident does not.
const fn of_illness(cause: Cause) -> bool {
    match cause {
        Cause::Infection | Cause::Unknown => true,
        Cause::Starved
        | Cause::Cold
        | Cause::HardBirth
        | Cause::Predator
        | Cause::Deformity
        | Cause::Accident => false,
    }
}
