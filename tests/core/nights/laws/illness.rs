//! What is always the vet's now stays first until the animal is well again, or the vet saw it.

use yeanling_core::book::{Animal, Care, Event, Illness, VetSaid};
use yeanling_core::flock::Flock;
use yeanling_core::terms::{Change, EweSign, LambSign};
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, EweTask, LambTask, State, Task};

use super::{Kept, Law, broken, judges};

/// Signs that are the vet's now whatever else is seen.
const EWE: [EweSign; 5] =
    [EweSign::RawOut, EweSign::BowelOut, EweSign::FaceOneSided, EweSign::LeftFlankDrum, EweSign::UdderCold];
const LAMB: [LambSign; 3] = [LambSign::FitsHeadBack, LambSign::RigidJawShut, LambSign::BloodInDung];

pub(in crate::nights) fn what_is_always_now_stays_so_until_well(
    flock: &Flock,
    animal: Animal,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    let lives = match animal {
        Animal::Ewe(ewe) => flock.ewe(ewe).is_some_and(|ewe| ewe.lives()),
        Animal::Lamb(lamb) => flock.lamb(lamb).is_some_and(|lamb| lamb.lives()),
    };
    let (mut grave, mut worse, mut saw) = (None, None, None);
    for line in flock.lines_of(animal).filter(|line| !line.struck) {
        match &line.event {
            Event::Illness(Illness::EweSeen { signs, .. }) => {
                worse = Some(line.at);
                if signs.iter().any(|sign| EWE.contains(sign)) {
                    grave = grave.or(Some(line.at));
                }
            }
            Event::Illness(Illness::LambSeen { signs, .. }) => {
                worse = Some(line.at);
                if signs.iter().any(|sign| LAMB.contains(sign)) {
                    grave = grave.or(Some(line.at));
                }
            }
            Event::Illness(Illness::Changed { change: Change::Well, .. }) => (grave, saw) = (None, None),
            Event::Illness(Illness::Changed { change: Change::Worse, .. }) => worse = Some(line.at),
            Event::Care(Care::VetSaid { said: VetSaid::Saw { .. }, .. }) => saw = Some(line.at),
            _ => {}
        }
    }
    let ahead = flock.lines_of(animal).any(|line| line.at > now);
    if !lives || ahead || saw.is_some() || grave.is_none() || worse.is_none() {
        return Ok(());
    }
    judges(Law::Ill);
    let told = |duty: &Duty| {
        let ill = matches!(
            duty.task,
            Task::Ewe(_, EweTask::Ill { now: true, .. }) | Task::Lamb(_, LambTask::Ill { now: true, .. })
        );
        ill && duty.subject() == animal && duty.state(now) == State::Danger
    };
    if duties.iter().any(told) {
        return Ok(());
    }
    broken("what is always now stays so until well", format!("{animal:?}, since {grave:?}"))
}
