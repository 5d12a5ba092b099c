//! Whether a fact of illness may be noted.

use super::Rejection;
use super::here::{alive, animal_here, born, living};
use crate::book::{Animal, Illness};
use crate::flock::Flock;
use crate::units::{Ketones, Moment, Temperature};
use crate::watch::newborn::shuts;

/// What can be counted in a minute, pulse or breath (ours).
const PER_MINUTE: (u16, u16) = (0, 300);

pub(super) fn illness(flock: &Flock, fact: &Illness, at: Moment) -> Result<(), Rejection> {
    match fact {
        Illness::EweSeen { ewe, .. } | Illness::UdderChecked { ewe, .. } => {
            living(flock, Animal::Ewe(*ewe), at)
        }
        Illness::LambSeen { lamb, .. } | Illness::SkinTent { lamb, .. } => {
            alive(flock, *lamb, at).map(|_| ())
        }
        // What goes round is seen to also where the animal that had it has died.
        Illness::SpreadSeenTo { animal, .. } => match animal {
            Animal::Ewe(_) => animal_here(flock, *animal),
            Animal::Lamb(lamb) => born(flock, *lamb, at).map(|_| ()),
        },
        Illness::Changed { animal, .. } => living(flock, *animal, at),
        Illness::EweTemperature { ewe, temperature } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            Temperature::IN_A_EWE.check(*temperature)?;
            Ok(())
        }
        Illness::Pulse { animal, per_minute } | Illness::Breaths { animal, per_minute } => {
            living(flock, *animal, at)?;
            let ((least, most), given) = (PER_MINUTE, *per_minute);
            if (least..=most).contains(&given) {
                Ok(())
            } else {
                Err(Rejection::PerMinute { given, least, most })
            }
        }
        Illness::KetonesRead { ewe, ketones } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            Ketones::ON_A_METER.check(*ketones)?;
            Ok(())
        }
        Illness::MilkAllowed { lamb } => {
            let lamb = alive(flock, *lamb, at)?;
            // What was allowed since does not count: an entry may be amended.
            let held = lamb
                .ill
                .iter()
                .any(|ill| ill.at <= at && (ill.holds_milk(lamb) || !shuts(ill, lamb).is_empty()));
            if held { Ok(()) } else { Err(Rejection::NothingHeld) }
        }
    }
}
