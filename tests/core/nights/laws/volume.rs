//! No volume is over what a stomach holds, nor over what the gate lets through when it comes.

use yeanling_core::book::{Animal, Book, Event, LambId, Milk, Way};
use yeanling_core::flock::Flock;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, LambTask, Task, validate};

use super::{Kept, Law, broken, judges};

const LAW: &str = "no volume is over the guard of the lightest credible weight";

/// Ours: at most 60 ml/kg at once in the first week, 4 kg for a lamb that was never weighed; half a tenth for rounding.
const PER_KILOGRAM: f64 = 60.0;
const UNWEIGHED: f64 = 4.0;
const ROUNDING: f64 = 0.05;

pub(in crate::nights) fn no_volume_is_over_the_guard(
    flock: &Flock,
    book: &Book,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    for duty in duties {
        let Task::Lamb(lamb, LambTask::Feed { volume: Some(volume), .. }) = duty.task else { continue };
        judges(Law::Volume);
        let comes = duty.comes().max(now);
        let most = weight(flock, lamb) * PER_KILOGRAM + ROUNDING;
        let young = flock.lamb(lamb).is_some_and(|lamb| comes.since(lamb.born) < TimeDelta::days(7));
        if young && volume.as_milliliters() > most {
            return broken(LAW, format!("{:.0} ml, and at most {most:.0}", volume.as_milliliters()));
        }
        // The gate as it stands when the feed comes.
        let event = Event::Fed { lamb, volume, milk: Milk::EweColostrum, way: Way::Bottle };
        if let Err(refused) = validate(flock, book, &event, comes, comes) {
            return broken(LAW, format!("{:.0} ml is refused: {refused}", volume.as_milliliters()));
        }
    }
    Ok(())
}

/// The last weight that was noted, in kilograms.
fn weight(flock: &Flock, lamb: LambId) -> f64 {
    let weighed = flock.lines_of(Animal::Lamb(lamb)).rev().find_map(|line| match &line.event {
        Event::Weighed { mass, .. } if !line.struck => Some(mass.as_kilograms()),
        _ => None,
    });
    weighed.unwrap_or(UNWEIGHED)
}
