//! How much powder it takes until weaning: 7 to 13 kg a lamb, by whom you ask.

use super::cited::{ours, seen};
use crate::settings::PowderRule;
use crate::source::Source;
use crate::units::{BoundFor, Bounds, Mass, OutOfBounds};

const NEW_ZEALAND: Source = seen("New Zealand guidance", "7 kg of powder to weaning", None, "");
const NDSU: Source = seen("NDSU", "6.8–9.1 kg of powder to weaning", None, "");
const FARMERS_JOURNAL: Source = seen("Irish Farmers Journal", "13 kg of powder to weaning", None, "");

/// Lambs that can be planned for: 1 to 500 (ours).
pub const LAMBS: Bounds<u16> = Bounds { least: 1, most: 500, why: BoundFor::LambsOnTheBottle };

/// Powder that can have been used: nothing to 10 tonnes (ours).
pub const USED: Bounds<Mass> = Bounds {
    least: Mass::from_kilograms(0.0),
    most: Mass::from_kilograms(10_000.0),
    why: BoundFor::PowderInStore,
};

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    NEW_ZEALAND,
    NDSU,
    FARMERS_JOURNAL,
    ours("What is left is the plan less what was used, never under nothing"),
];

/// All rules, the least powder first.
pub const RULES: [PowderRule; 3] = [PowderRule::NewZealand, PowderRule::Ndsu, PowderRule::FarmersJournal];

/// Returns what one lamb takes until weaning by a rule: the least and the most.
#[must_use]
pub const fn for_one_lamb(rule: PowderRule) -> (Mass, Mass) {
    let (least, most) = match rule {
        PowderRule::NewZealand => (7.0, 7.0),
        PowderRule::Ndsu => (6.8, 9.1),
        PowderRule::FarmersJournal => (13.0, 13.0),
    };
    (Mass::from_kilograms(least), Mass::from_kilograms(most))
}

/// Returns who printed a rule.
#[must_use]
pub const fn source(rule: PowderRule) -> Source {
    match rule {
        PowderRule::NewZealand => NEW_ZEALAND,
        PowderRule::Ndsu => NDSU,
        PowderRule::FarmersJournal => FARMERS_JOURNAL,
    }
}

/// How much powder is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plan {
    /// The rule.
    pub rule: PowderRule,
    /// How many lambs.
    pub lambs: u16,
    /// For one lamb, the least and the most.
    pub each: (Mass, Mass),
    /// For all, the least and the most.
    pub total: (Mass, Mass),
    /// What these lambs have had so far.
    pub used: Mass,
    /// Still wanted, the least and the most; nothing once more was used than planned.
    pub left: (Mass, Mass),
}

/// Why there is no plan.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoPlan {
    /// There are no lambs, or more than a farm has.
    #[error("not a number of lambs: {0}")]
    Lambs(#[from] OutOfBounds<u16>),
    /// So much cannot have been used.
    #[error("not an amount of powder: {0}")]
    Used(#[from] OutOfBounds<Mass>),
}

/// Returns how much powder so many lambs take until weaning, and how much of it is still wanted.
///
/// # Errors
/// The number of lambs is outside `LAMBS`, or what was used outside `USED`.
///
/// ```
/// use yeanling_core::settings::PowderRule;
/// use yeanling_core::reckon::powder::plan;
/// use yeanling_core::units::Mass;
/// let plan = plan(3, PowderRule::NewZealand, Mass::from_kilograms(5.0)).unwrap();
/// assert_eq!(plan.left, (Mass::from_kilograms(16.0), Mass::from_kilograms(16.0)));
/// ```
pub fn plan(lambs: u16, rule: PowderRule, used: Mass) -> Result<Plan, NoPlan> {
    let lambs = LAMBS.check(lambs)?;
    let used = USED.check(used)?;
    let each = for_one_lamb(rule);
    let all = |one: Mass| Mass::from_kilograms(one.as_kilograms() * f64::from(lambs));
    let left = |all: Mass| Mass::from_kilograms((all.as_kilograms() - used.as_kilograms()).max(0.0));
    let total = (all(each.0), all(each.1));
    Ok(Plan { rule, lambs, each, total, used, left: (left(total.0), left(total.1)) })
}
