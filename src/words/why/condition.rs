//! Why a condition score is under its target, and how long it takes to mend it.

use yeanling_core::reckon::season::condition::{ConditionStage, SOURCES, System as Targets, target};

use super::{Why, cited, general};
use crate::common::number;
use crate::score_ewes as words;

/// Returns where the targets of a time of the year are from, and what the other sources print.
pub fn condition(of: Targets, stage: ConditionStage) -> Why {
    let told = |system: Targets| {
        let target = target(system, stage, None)?;
        let high = target.high.filter(|high| (high - target.low).abs() > f64::EPSILON);
        let to = high.map(|high| format!(" to {}", number(high, 2))).unwrap_or_default();
        Some(format!("{}: {}{to}", words::targets(system), number(target.low, 2)))
    };
    let mut caution = vec![words::SLOWLY.to_owned()];
    caution.extend(general());
    Why {
        heading: words::stage(stage).to_owned(),
        working: told(of).into_iter().collect(),
        rule: "One whole score is about 12% of her weight. Days = weight to gain ÷ gain a day.".to_owned(),
        sources: cited(SOURCES),
        others: Targets::ALL.into_iter().filter(|other| *other != of).filter_map(told).collect(),
        caution,
    }
}
