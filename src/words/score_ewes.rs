//! Score ewes: what is noted of each in the race or in the field, and how the group stands.

use yeanling_core::reckon::season::condition::{Change, ConditionStage, System as Targets, Target};
use yeanling_core::units::{Condition, Moment, System};

use super::common::{day_and_clock, number, short_date};
use super::season;

/// The screen's name.
pub const TITLE: &str = "Score ewes";
/// Goes back to the group.
pub const GROUP: &str = "Group";
/// Leads to it.
pub const LINK: &str = "Score, scan or mark ewes";
/// Chooses what is noted.
pub const WHAT: &str = "What to note";
/// Says that no ewe is in the group.
pub const NO_EWES: &str = "No ewes in this group yet. Put them in first.";
/// Passes a ewe over.
pub const SKIP: &str = "Skip";
/// Goes back to the one before.
pub const BACK: &str = "Back one";
/// A mark of the crayon that is on the ram.
pub const MARKED: &str = "Marked";
/// The color where none was noted.
pub const A_MARK: &str = "mark";
/// Starts over.
pub const AGAIN: &str = "Start again";
/// Says that all were gone through.
pub const ALL_DONE: &str = "All ewes in this group done.";
/// Heads how the group stands.
pub const STANDS: &str = "Group condition";
/// Chooses by whose targets.
pub const BY_WHOM: &str = "Whose targets";
/// Chooses the time of the year.
pub const STAGE: &str = "Stage";
/// Says that nobody was scored.
pub const NONE_SCORED: &str = "No score in the last two weeks.";
/// No target is printed.
pub const NO_TARGET: &str = "This source has no target for this stage. Choose another source.";
/// What every change of condition late in pregnancy needs.
pub const SLOWLY: &str =
    "In the last six weeks let no ewe gain over half a score or lose condition: ask your vet.";

/// Returns how far the round has come: "7 of 24".
pub fn place(at: usize, of: usize) -> String {
    format!("{} of {of}", at + 1)
}

/// Returns her last score: "last 2.75 on 11 Jan".
pub fn last_score(score: Condition, at: Moment) -> String {
    format!("last {} on {}", season::score(score), short_date(at.local().date()))
}

/// Returns her last scan.
pub fn last_scan(lambs: u8, days: Option<u16>, at: Moment) -> String {
    format!("{} on {}", season::scanned(lambs, days), short_date(at.local().date()))
}

/// Returns her last mark.
pub fn last_mark(color: &str, at: Moment, now: Moment) -> String {
    format!("marked {color} {}", day_and_clock(at, now))
}

/// Returns whose targets they are.
pub const fn targets(targets: Targets) -> &'static str {
    match targets {
        Targets::Lowland => "UK lowland",
        Targets::Upland => "UK upland",
        Targets::Hill => "UK hill",
        Targets::Australia => "Australia",
        Targets::Us => "US (unconfirmed)",
    }
}

/// Returns a time of the year.
pub const fn stage(stage: ConditionStage) -> &'static str {
    match stage {
        ConditionStage::Mating => "mating",
        ConditionStage::MidPregnancy => "mid pregnancy",
        ConditionStage::LatePregnancy => "late pregnancy",
        ConditionStage::Lambing => "lambing",
        ConditionStage::Weaning => "weaning",
    }
}

/// Returns how a group stands: "12 scored, 2.8 on the mean. Target 3: 5 under it."
pub fn stands(scored: usize, mean: f64, target: Option<Target>, under: usize) -> String {
    let mean = format!("*{scored}* scored, mean *{}*", number(mean, 2));
    match target {
        None => format!("{mean}."),
        Some(Target { low, high: Some(high), .. }) if (low - high).abs() > f64::EPSILON => {
            format!("{mean}. Target {} to {}: *{under}* below.", number(low, 2), number(high, 2))
        }
        Some(Target { low, .. }) => format!("{mean}. Target {}: *{under}* below.", number(low, 2)),
    }
}

/// Returns why a ewe is told of that is too fat in her last month (NADIS).
pub fn too_fat(score: Condition) -> String {
    format!(
        "{}: too fat this close to lambing, at risk of prolapse and pregnancy toxemia. Ask your vet",
        season::score(score)
    )
}

/// Returns what mends a ewe: "2.25: needs 0.75, some 6.3 kg, 37 days at 170 g a day".
pub fn mends(score: Condition, short: f64, change: Option<&Change>, system: System) -> String {
    let needs = format!("{}: needs {}", season::score(score), number(short, 2));
    let Some(change) = change else { return format!("{needs}. Weigh her for the weight and the days") };
    let mass = super::common::mass(yeanling_core::units::Mass::from_kilograms(change.kilograms), system);
    match change.days {
        Some(days) => format!("{needs}, some {mass}, {} days at 170 g (6 oz) a day", number(days, 0)),
        None => format!("{needs}, some {mass}"),
    }
}
