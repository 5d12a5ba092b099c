//! A lamb's cold spells: from the first reading under 37 °C, or the first cold mouth, to the first of 37 °C or more.
//!
//! A spell keeps the age at which it began: a lamb already under warmth is not taken out when it turns five hours old.
//! What was done in an older spell (warmth, glucose) ended with it.
//!
//! A cold spell keeps the age at which it began (`ColdSpell`): a lamb in the box does not lose its heat when it turns
//! five hours old; warmth and glucose of an older spell ended with it.
//!
//! A reading is acted on for two hours, a try of head and swallow only with its reading: a lamb changes in minutes.
//! Without a record "up to 5 h" is asked again at every reading that begins a spell of cold.

use crate::book::GlucoseBy;
use crate::flock::Lamb;
use crate::reckon::body_temperature::warm_enough_to_feed;
use crate::reckon::cold_lamb::YOUNG_TO;
use crate::reckon::illness::by_hand::{self, ByHand};
use crate::reckon::warming;
use crate::sort_small::SortSmall;
use crate::units::{Moment, Temperature, TimeDelta};

/// Looks asked for after a spell has ended (ours).
const LOOKS_AFTER: usize = 2;

/// A spell of cold.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdSpell {
    /// When it began.
    pub began: Moment,
    /// Each look within it, oldest first; no temperature where only the mouth was felt.
    pub looks: Vec<(Moment, Option<Temperature>)>,
    /// When it read 37 °C or more again, or sucked strongly with a warm mouth, and each look since.
    pub warm: Vec<Moment>,
}

impl ColdSpell {
    /// Says whether the lamb is still cold.
    #[must_use]
    pub const fn goes_on(&self) -> bool {
        self.warm.is_empty()
    }

    /// Returns the temperature read last within it, if one was.
    #[must_use]
    pub fn read(&self) -> Option<Temperature> {
        self.looks.iter().rev().find_map(|(_, temperature)| *temperature)
    }

    /// Returns when it was last looked at within it.
    #[must_use]
    pub fn looked(&self) -> Moment {
        self.looks.last().map_or(self.began, |(at, _)| *at)
    }

    /// Returns when it was last found colder than at the look before; its beginning if it never was.
    #[must_use]
    pub fn worsened(&self) -> Moment {
        let read: Vec<(Moment, Temperature)> =
            self.looks.iter().filter_map(|(at, read)| Some((*at, (*read)?))).collect();
        let colder = read.windows(2).rev().find(|pair| pair[1].1 < pair[0].1);
        colder.map_or(self.began, |pair| pair[1].0)
    }

    /// Returns since when it gains too little under warmth, if it does: then it is one for the vet.
    #[must_use]
    pub fn stalls(&self) -> Option<Moment> {
        let read: Vec<Temperature> = self.looks.iter().filter_map(|(_, read)| *read).collect();
        warming::stalls(&read).then(|| self.looked())
    }

    /// Says whether a lamb that became warm again is still to be looked at: within the hour, twice.
    #[must_use]
    pub const fn wants_a_look(&self) -> bool {
        !self.warm.is_empty() && self.warm.len() <= LOOKS_AFTER
    }

    /// Returns when warming began in this spell, if it did.
    #[must_use]
    pub fn warmed(&self, lamb: &Lamb) -> Option<Moment> {
        lamb.warmed.iter().copied().find(|at| *at >= self.began)
    }

    /// Returns when glucose was given in this spell, and by whom, if it was.
    #[must_use]
    pub fn glucose(&self, lamb: &Lamb) -> Option<(Moment, GlucoseBy)> {
        lamb.glucose.iter().copied().find(|(at, _)| *at >= self.began)
    }

    /// Returns the most that the lamb's age can have been when it began; the branch of the table hangs on it to its end.
    #[must_use]
    pub fn age(&self, lamb: &Lamb) -> TimeDelta {
        age_of_cold(lamb, self.began)
    }
}

/// A lamb that is read so long after it was found was already cold then (ours).
const FOUND_COLD: TimeDelta = TimeDelta::hours(1);

/// Returns the most that its age can be for the table of the cold lamb, if its cold began then. Of one that was found, and said
/// to be up to five hours old, a reading soon after counts as made when it was found: what was said stands.
#[must_use]
pub fn age_of_cold(lamb: &Lamb, began: Moment) -> TimeDelta {
    let found = lamb.found.filter(|found| {
        let soon = began.since(*found);
        soon >= TimeDelta::zero() && soon <= FOUND_COLD && lamb.age(*found) <= YOUNG_TO
    });
    lamb.age(found.unwrap_or(began))
}

/// What one look at a lamb said of its warmth.
enum Look {
    Cold(Option<Temperature>),
    Warm,
    Nothing,
}

/// Returns the lamb's last spell of cold, whether it goes on or not; nothing if it never was cold.
#[must_use]
pub fn cold_spell(lamb: &Lamb) -> Option<ColdSpell> {
    let read = lamb.temperatures.iter().map(|reading| {
        let warm = warm_enough_to_feed(reading.temperature);
        (reading.at, if warm { Look::Warm } else { Look::Cold(Some(reading.temperature)) })
    });
    let felt = lamb.mouth.iter().map(|felt| {
        let look = match by_hand::warmth(felt.mouth, felt.suck) {
            ByHand::AsCold => Look::Cold(None),
            ByHand::WarmAndSucks => Look::Warm,
            ByHand::LetItSuck | ByHand::Unproven => Look::Nothing,
        };
        (felt.at, look)
    });
    let mut looks: Vec<(Moment, Look)> = read.chain(felt).collect();
    // Of two at one instant a thermometer is told first, so that a cold mouth beside it still counts.
    looks.sort_small_by_key(|(at, _)| *at);
    let mut spell: Option<ColdSpell> = None;
    for (at, look) in looks {
        match (look, &mut spell) {
            (Look::Cold(read), Some(now)) if now.goes_on() => now.looks.push((at, read)),
            (Look::Cold(read), spell) => {
                *spell = Some(ColdSpell { began: at, looks: vec![(at, read)], warm: Vec::new() });
            }
            (Look::Warm, Some(now)) => now.warm.push(at),
            (Look::Warm, None) | (Look::Nothing, _) => {}
        }
    }
    spell
}
