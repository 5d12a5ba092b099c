//! What is agreed with the vet before the first lamb, once a season: asked until it is done, and as long as a lambing is
//! awaited.
//!
//! The vet trains, prescribes glucose and agrees its amounts; two numbers for the night; what the law allows when an animal
//! must be killed. When to ask is ours.

use chrono::{Days, NaiveDate};

use super::lambing_forecasts::LambingForecasts;
use crate::flock::Flock;
use crate::settings::VetAgreed;
use crate::units::{Moment, TimeDelta};

/// It is asked from six weeks before the first day on which a ewe may lamb (ours).
const AHEAD: Days = Days::new(42);
/// What was agreed so long ago was for another season (ours: half a year).
const A_SEASON: TimeDelta = TimeDelta::days(182);

/// One thing to agree with the vet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ToAgree {
    /// What is said to be agreed.
    Agreed(VetAgreed),
    /// Two numbers for the night.
    NightNumbers,
}

impl ToAgree {
    /// All of it, in the order in which it is asked.
    pub const ALL: [Self; 4] = [
        Self::Agreed(VetAgreed::Trained),
        Self::Agreed(VetAgreed::Glucose),
        Self::NightNumbers,
        Self::Agreed(VetAgreed::Killing),
    ];
}

/// What is still to be agreed with the vet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BeforeSeason {
    /// The first day on which a ewe may lamb, as it looks now.
    pub first: NaiveDate,
    /// What is still open, in its order.
    pub open: Vec<ToAgree>,
}

/// Returns when something was agreed for the season of these days, if it was.
#[must_use]
pub fn agreed(flock: &Flock, what: VetAgreed, now: Moment) -> Option<Moment> {
    flock.vet_agreed.get(&what).copied().filter(|at| now.since(*at) < A_SEASON)
}

/// Says whether a thing needs no more to be asked.
#[must_use]
pub fn is_agreed(flock: &Flock, what: ToAgree, now: Moment) -> bool {
    match what {
        ToAgree::Agreed(what) => agreed(flock, what, now).is_some(),
        ToAgree::NightNumbers => flock.settings.vet_phones.has_two_for_the_night(),
    }
}

/// Returns what is still to be agreed with the vet; nothing when no lambing is near, and nothing once all is.
#[must_use]
pub fn before_season(flock: &Flock, forecasts: &LambingForecasts, now: Moment) -> Option<BeforeSeason> {
    let known = forecasts.awaited.iter().filter_map(|one| one.lambing_forecast.as_ref().ok());
    let first = known.map(|forecast| forecast.first).min()?;
    let near = first.checked_sub_days(AHEAD).is_none_or(|from| from <= now.local().date());
    let open: Vec<ToAgree> = ToAgree::ALL.into_iter().filter(|what| !is_agreed(flock, *what, now)).collect();
    (near && !open.is_empty()).then_some(BeforeSeason { first, open })
}
