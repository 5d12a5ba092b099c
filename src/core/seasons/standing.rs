//! A ewe's latest score, and where she stands in her year: how near her lambing is decides what a score calls for.

use super::lambing_forecasts::LambingForecasts;
use crate::flock::{ConditionScore, Ewe};
use crate::reckon::season::condition::{ConditionStage, Score, StageOfYear};
use crate::units::{Moment, TimeDelta};

/// A score as old as this says nothing of how fast she changes now (ours: late pregnancy, six weeks).
const SAME_TIME: TimeDelta = TimeDelta::days(42);

/// Returns a ewe's latest score with where she stands at a time of year, as known at `now`; none without a score.
///
/// Her earliest lambing is the first day of her outlook; a scan counts where one of her expected litter is known.
#[must_use]
pub fn standing(
    lambing_forecasts: &LambingForecasts,
    ewe: &Ewe,
    stage: ConditionStage,
    now: Moment,
) -> Option<(Score, StageOfYear)> {
    let of = |one: &ConditionScore| Score::from_points(one.score.as_score()).ok();
    let last = ewe.condition()?;
    let awaited = lambing_forecasts.of(ewe.id);
    let first = awaited
        .and_then(|awaited| awaited.lambing_forecast.as_ref().ok())
        .map(|lambing_forecast| lambing_forecast.first);
    let earlier = ewe.scores.iter().rev().skip(1).find(|one| one.at < last.at);
    let standing = StageOfYear {
        stage,
        lambs: awaited.and_then(|awaited| awaited.lambs),
        days_to_lambing: first.map(|first| first.signed_duration_since(now.local().date()).num_days()),
        before: earlier.filter(|one| last.at.since(one.at) <= SAME_TIME).and_then(of),
    };
    Some((of(&last)?, standing))
}
