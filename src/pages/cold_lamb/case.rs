//! What is known of a lamb that may be cold: from its record, or from what was answered on this phone.

use yeanling_core::book::GlucoseBy;
use yeanling_core::flock::{Lamb, Reading, VetCall};
use yeanling_core::reckon::body_temperature::warm_enough_to_feed;
use yeanling_core::reckon::cold_lamb::{self, ColdLambAnswer, Step, YOUNG_TO, decide};
use yeanling_core::reckon::warming::{self, Progress};
use yeanling_core::units::{Mass, Moment, System, Temperature, TimeDelta, Volume};
use yeanling_core::watch::{ColdSpell, age_of_cold, cold_spell};

/// A reading this old says nothing of now: another is asked for (ours).
const STALE: TimeDelta = TimeDelta::hours(2);
/// Readings of so long before the last one are shown with it (ours).
const TOGETHER: TimeDelta = TimeDelta::hours(24);

/// How old the lamb was at its last reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Age {
    /// Nobody was asked yet.
    #[default]
    Ask,
    /// As its record has it.
    Known(TimeDelta),
    /// Up to five hours, somebody says.
    UpToFive,
    /// Over five hours, somebody says.
    OverFive,
    /// Nobody knows.
    Unknown,
}

/// Whether it holds its head up and swallows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Able {
    /// Nobody tried since the last reading.
    #[default]
    Ask,
    /// It does both.
    Yes,
    /// It does not.
    No,
    /// It was tried, and is not sure.
    NotSure,
}

/// What is known of one lamb.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Case {
    /// Its readings, oldest first.
    pub(super) readings: Vec<Reading>,
    /// Its age at the last one.
    pub(super) age: Age,
    /// Whether it holds its head up and swallows.
    pub(super) able: Able,
    /// Its weight.
    pub(super) weight: Option<Mass>,
    /// When its warming began.
    pub(super) warmed: Option<Moment>,
    /// When it was given glucose in this spell, and by whom.
    pub(super) glucose: Option<(Moment, GlucoseBy)>,
    /// The last call to the vet in this spell.
    pub(super) vet: Option<VetCall>,
    /// What it was fed since the last reading.
    pub(super) fed: Option<(Moment, Volume)>,
}

impl Case {
    /// Returns what the record of a lamb knows; `unsure` is the reading at which nobody was sure of its swallow.
    pub(super) fn of_lamb(lamb: &Lamb, unsure: Option<Moment>, now: Moment) -> Self {
        let weight = lamb.last_weight(now).map(|weight| weight.mass);
        let Some(last) = lamb.temperatures.last() else { return Self { weight, ..Self::default() } };
        let since = |at: &Moment| *at >= last.at;
        let able = match lamb.swallows() {
            Some(true) => Able::Yes,
            Some(false) => Able::No,
            None if unsure == Some(last.at) => Able::NotSure,
            None => Able::Ask,
        };
        let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
        let began = spell.as_ref().map_or(last.at, |spell| spell.began);
        let together = |reading: &&Reading| last.at.since(reading.at) < TOGETHER;
        Self {
            readings: lamb.temperatures.iter().filter(together).copied().collect(),
            // Under 37 °C the branch is fixed when the spell begins: a lamb under warmth stays there.
            age: Age::Known(
                spell.as_ref().map_or_else(|| age_of_cold(lamb, last.at), |spell| spell.age(lamb)),
            ),
            able,
            weight,
            warmed: spell
                .as_ref()
                .map_or_else(|| lamb.warmed.last().copied().filter(since), |spell| spell.warmed(lamb)),
            glucose: spell.as_ref().and_then(|spell| spell.glucose(lamb)),
            vet: lamb.vet.last().filter(|call| call.at >= began).cloned(),
            fed: lamb.feeds.last().filter(|feed| since(&feed.at)).map(|feed| (feed.at, feed.volume)),
        }
    }

    /// Returns the last reading.
    pub(super) fn last(&self) -> Option<Reading> {
        self.readings.last().copied()
    }

    /// Says whether the last reading is too old to act on, or there is none.
    pub(super) fn stale(&self, now: Moment) -> bool {
        self.last().is_none_or(|last| now.since(last.at) >= STALE)
    }

    /// Returns what to do, once everything was asked.
    pub(super) fn answer(&self) -> Option<ColdLambAnswer> {
        let age = match self.age {
            Age::Ask => return None,
            Age::Known(age) => Some(age),
            Age::UpToFive => Some(YOUNG_TO),
            Age::OverFive => Some(YOUNG_TO + TimeDelta::minutes(1)),
            Age::Unknown => None,
        };
        let able = match self.able {
            Able::Ask => return None,
            Able::Yes => Some(true),
            Able::No => Some(false),
            Able::NotSure => None,
        };
        decide(self.last()?.temperature, age, able).ok()
    }

    /// Returns the one feed the table speaks of, as it is offered; none while the weight is not known.
    pub(super) fn feed(&self, system: System) -> Option<Volume> {
        let most = cold_lamb::feed(self.weight?).ok()?;
        Some(most.offered(system))
    }

    /// Says whether it gains too little under warmth: then it is the vet's.
    pub(super) fn stalls(&self) -> bool {
        let cold = |reading: &&Reading| !warm_enough_to_feed(reading.temperature);
        let spell = self.readings.iter().rev().take_while(cold).map(|reading| reading.temperature);
        let mut spell: Vec<Temperature> = spell.collect();
        spell.reverse();
        warming::stalls(&spell)
    }

    /// Returns what the last two readings say, if the one before was under 37 °C.
    pub(super) fn progress(&self) -> Option<(Reading, Progress)> {
        let [.., before, last] = self.readings.as_slice() else { return None };
        let severe = before.temperature < yeanling_core::reckon::body_temperature::MILD_FROM;
        severe.then(|| (*before, warming::progress(before.temperature, last.temperature)))
    }
}

/// Says whether the table lets it be fed now; what waits for 37 °C does not count.
pub(super) fn may_be_fed(answer: &ColdLambAnswer) -> bool {
    answer.steps.contains(&Step::Feed)
}

/// Says whether a feed is among the steps, now or later.
pub(super) fn asks_for_milk(answer: &ColdLambAnswer) -> bool {
    may_be_fed(answer) || answer.steps.contains(&Step::FeedAt37)
}

/// Says whether it is warmed.
pub(super) fn is_warmed(answer: &ColdLambAnswer) -> bool {
    answer.steps.contains(&Step::Warm) || answer.steps.contains(&Step::WarmTo37)
}
