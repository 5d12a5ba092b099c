//! Whether a bottle lamb can be weaned, by a rule with a name, condition by condition.
//!
//! What is not known is never taken as met. No rule lets a lamb off the bottle before four weeks.

use super::cited::{common, ours, seen};
use crate::settings::WeaningRule;
use crate::source::Source;
use crate::units::{BoundFor, Bounds, Mass, OutOfBounds, TimeDelta};

/// The earliest age by any rule (common practice).
pub const EARLIEST: TimeDelta = TimeDelta::days(28);

/// The age by the feed maker (35 days) and Teagasc ("about 5 weeks").
pub const FIVE_WEEKS: TimeDelta = TimeDelta::days(35);

/// So many times its birth weight (feed maker).
pub const TIMES_BIRTH_WEIGHT: f64 = 2.5;

/// The least weight by Teagasc.
pub const NINE_KILOGRAMS: Mass = Mass::from_kilograms(9.0);

/// Solid feed on each of three days running (feed maker; Teagasc).
pub const SOLIDS: Mass = Mass::from_kilograms(0.25);

/// What a lamb at weaning can weigh: 0.5 to 60 kg (ours).
pub const WEIGHT: Bounds<Mass> = Bounds {
    least: Mass::from_kilograms(0.5),
    most: Mass::from_kilograms(60.0),
    why: BoundFor::LambAtWeaning,
};

/// What a lamb can eat of solids in a day: nothing to 3 kg (ours).
pub const SOLIDS_IN_A_DAY: Bounds<Mass> =
    Bounds { least: Mass::from_kilograms(0.0), most: Mass::from_kilograms(3.0), why: BoundFor::SolidsInADay };

const FEED_MAKER: Source =
    seen("Feed maker", "Weaning at 35 days, 2.5 × birth weight, 250 g solids on 3 days running", None, "");
const TEAGASC: Source =
    seen("Teagasc", "Weaning at about 5 weeks, 9 kg, 250 g solids on 3 days running", None, "");
const FOUR_WEEKS: Source = common("Weaning at 4 weeks at the earliest");

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    FEED_MAKER,
    TEAGASC,
    FOUR_WEEKS,
    ours("The four-week rule asks for the same solids"),
    ours("What is not known is not met"),
];

/// All rules, the strictest on age first.
pub const RULES: [WeaningRule; 3] = [WeaningRule::FeedMaker, WeaningRule::Teagasc, WeaningRule::FourWeeks];

/// What is known of a lamb that may be weaned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lamb {
    /// Its age.
    pub age: TimeDelta,
    /// Its present weight, if known.
    pub weight: Option<Mass>,
    /// Its birth weight, if known.
    pub birth_weight: Option<Mass>,
    /// Whether it has eaten 250 g of solids on each of the last three days, if known.
    pub eats_solids: Option<bool>,
}

/// Whether a condition is met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Met {
    /// It is.
    Yes,
    /// It is not.
    No,
    /// It is not known, which counts as not met.
    Unknown,
}

/// One condition of a rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Condition {
    /// Old enough.
    Age {
        /// From this age on.
        from: TimeDelta,
    },
    /// Heavy enough.
    Weight {
        /// From this weight on; none while the birth weight is unknown.
        from: Option<Mass>,
    },
    /// 250 g of solids on three days running.
    Solids,
}

/// Whether it can be weaned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// All conditions are met.
    Ready,
    /// One is not met.
    NotYet,
    /// None is unmet, but one is not known.
    Unknown,
}

/// The verdict of one rule.
#[derive(Clone, Debug, PartialEq)]
pub struct WeaningAnswer {
    /// The rule.
    pub rule: WeaningRule,
    /// What was known of the lamb.
    pub lamb: Lamb,
    /// The verdict.
    pub verdict: Verdict,
    /// Each condition, and whether it is met.
    pub conditions: Vec<(Condition, Met)>,
}

/// Returns who printed a rule.
#[must_use]
pub const fn source(rule: WeaningRule) -> Source {
    match rule {
        WeaningRule::FeedMaker => FEED_MAKER,
        WeaningRule::Teagasc => TEAGASC,
        WeaningRule::FourWeeks => FOUR_WEEKS,
    }
}

/// Returns whether solids of the last three days were enough on each.
///
/// # Errors
/// A day is outside `SOLIDS_IN_A_DAY`.
pub fn eats_enough(days: [Mass; 3]) -> Result<bool, OutOfBounds<Mass>> {
    let mut enough = true;
    for day in days {
        enough &= SOLIDS_IN_A_DAY.check(day)? >= SOLIDS;
    }
    Ok(enough)
}

/// Returns whether a lamb can be weaned by a rule.
///
/// # Errors
/// The present weight is outside `WEIGHT`, or the birth weight outside `Mass::AT_BIRTH`.
///
/// ```
/// use yeanling_core::settings::WeaningRule;
/// use yeanling_core::reckon::weaning::{Lamb, Verdict, wean};
/// use yeanling_core::units::{Mass, TimeDelta};
/// let kg = Mass::from_kilograms;
/// let lamb = Lamb {
///     age: TimeDelta::days(36),
///     weight: Some(kg(10.5)),
///     birth_weight: Some(kg(4.0)),
///     eats_solids: Some(true),
/// };
/// assert_eq!(wean(lamb, WeaningRule::FeedMaker).unwrap().verdict, Verdict::Ready);
/// ```
pub fn wean(lamb: Lamb, rule: WeaningRule) -> Result<WeaningAnswer, OutOfBounds<Mass>> {
    let weight = lamb.weight.map(|weight| WEIGHT.check(weight)).transpose()?;
    let birth_weight = lamb.birth_weight.map(|weight| Mass::AT_BIRTH.check(weight)).transpose()?;
    let from_birth = birth_weight.map(|born| Mass::from_kilograms(born.as_kilograms() * TIMES_BIRTH_WEIGHT));
    let age = |from: TimeDelta| (Condition::Age { from }, met(Some(lamb.age >= from)));
    let heavy = |from: Option<Mass>| {
        let enough = from.zip(weight).map(|(from, weight)| reaches(weight, from));
        (Condition::Weight { from }, met(enough))
    };
    let solids = (Condition::Solids, met(lamb.eats_solids));
    let conditions = match rule {
        WeaningRule::FeedMaker => vec![age(FIVE_WEEKS), heavy(from_birth), solids],
        WeaningRule::Teagasc => vec![age(FIVE_WEEKS), heavy(Some(NINE_KILOGRAMS)), solids],
        WeaningRule::FourWeeks => vec![age(EARLIEST), solids],
    };
    let any = |wanted: Met| conditions.iter().any(|(_, met)| *met == wanted);
    let verdict = if any(Met::No) {
        Verdict::NotYet
    } else if any(Met::Unknown) {
        Verdict::Unknown
    } else {
        Verdict::Ready
    };
    Ok(WeaningAnswer { rule, lamb, verdict, conditions })
}

const fn met(known: Option<bool>) -> Met {
    match known {
        Some(true) => Met::Yes,
        Some(false) => Met::No,
        None => Met::Unknown,
    }
}

/// Weights are kept to a gram, so that 2.5 × 4.2 kg is reached by 10.5 kg, whatever binary fractions say.
fn reaches(weight: Mass, from: Mass) -> bool {
    weight.as_kilograms() + 0.000_5 >= from.as_kilograms()
}
