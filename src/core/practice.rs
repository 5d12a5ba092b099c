//! The farm's own choice among rules, and its own limits: a value a rule takes, never a global.

mod labor;

use serde::{Deserialize, Serialize};

pub use labor::{LaborLimits, PenStay};

use crate::units::System;

/// Which published rule says how much colostrum a lamb wants in its first 24 hours.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DayRule {
    /// 200 ml/kg (AHDB). Our default: a levy board's plain figure, in the middle of the guidance.
    #[default]
    Ahdb200,
    /// 210 ml/kg, the lower end of the 210–290 of the RUMA campaign.
    Ruma210,
    /// 10 % of body weight, 100 ml/kg: the popular floor, half the guidance.
    TenPercent,
}

/// Where the newborn lives for its first day.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Housing {
    /// Under a roof, out of the wind.
    #[default]
    Housed,
    /// In the field.
    Outdoors,
}

/// Which published table says how much a bottle lamb takes by age.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BottleTable {
    /// A vet supplier's table, in milliliters.
    #[default]
    VetSupplier,
    /// A US handbook's table, in fluid ounces.
    UsHandbook,
}

/// Minutes after birth at which the watch speaks up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Limits {
    /// Not up by then: amber.
    pub up_minutes: u16,
    /// Not seen to suck by then: help.
    pub help_minutes: u16,
    /// Not sucked or fed by then: red.
    pub red_minutes: u16,
    /// The last call for first milk.
    pub last_call_minutes: u16,
    /// The navel is dipped again so long after the first dip.
    pub navel_again_minutes: u16,
}

/// A limit outside what makes sense: which, what was given, what is allowed, in that limit's own unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{limit:?} of {given} is not between {least} and {most}")]
pub struct LimitError {
    /// Which limit.
    pub limit: Limit,
    /// What was given: minutes, or hours for a stay.
    pub given: u16,
    /// The least that is allowed.
    pub least: u16,
    /// The most that is allowed.
    pub most: u16,
}

/// Names one of the limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limit {
    /// `up_minutes`
    Up,
    /// `help_minutes`
    Help,
    /// `red_minutes`
    Red,
    /// `last_call_minutes`
    LastCall,
    /// `navel_again_minutes`
    NavelAgain,
    /// `look_minutes`
    Look,
    /// `restless_minutes`
    Restless,
    /// `hand_check_minutes`
    HandCheck,
    /// `step_in_minutes`
    StepIn,
    /// `progress_minutes`
    Progress,
    /// `neck_minutes`
    Neck,
    /// `put_right_minutes`
    PutRight,
    /// `next_lamb_minutes`
    NextLamb,
    /// `next_check_minutes`
    NextCheck,
    /// `afterbirth_ask_minutes`
    AfterbirthAsk,
    /// `afterbirth_late_minutes`
    AfterbirthLate,
    /// `afterbirth_vet_minutes`
    AfterbirthVet,
    /// `single_hours`
    StaySingle,
    /// `twins_hours`
    StayTwins,
    /// `more_hours`
    StayMore,
}

fn check_all(spans: &[(Limit, u16, u16, u16)]) -> Result<(), LimitError> {
    for (limit, given, least, most) in spans.iter().copied() {
        if given < least || given > most {
            return Err(LimitError { limit, given, least, most });
        }
    }
    Ok(())
}

impl Default for Limits {
    /// Up by 30 min, sucked by 60, red at 120, last call at 6 h, navel again after 6 h (`reckon::window`).
    fn default() -> Self {
        Self {
            up_minutes: 30,
            help_minutes: 60,
            red_minutes: 120,
            last_call_minutes: 360,
            navel_again_minutes: 360,
        }
    }
}

impl Limits {
    /// Returns the limits if each is sensible and they come in order.
    ///
    /// # Errors
    /// The first limit that is not: up 5–120 min, help 15–180, red after help and at most 240, last call after red
    /// and at most 12 h, navel again 60 min–24 h. A farm may be stricter than the handbooks, or somewhat looser,
    /// never so loose that the watch keeps silent past 12 h (ours).
    pub fn checked(self) -> Result<Self, LimitError> {
        check_all(&[
            (Limit::Up, self.up_minutes, 5, 120),
            (Limit::Help, self.help_minutes, 15, 180),
            (Limit::Red, self.red_minutes, self.help_minutes.saturating_add(1).max(30), 240),
            (Limit::LastCall, self.last_call_minutes, self.red_minutes.saturating_add(1), 720),
            (Limit::NavelAgain, self.navel_again_minutes, 60, 1440),
        ])?;
        Ok(self)
    }
}

/// Everything the farm has chosen. Kept in the book, one choice an entry, so that every phone agrees.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Practice {
    /// What the farm is called; empty until it is named.
    pub farm_name: String,
    /// The units people read and type.
    pub system: System,
    /// How much colostrum in 24 hours.
    pub day_rule: DayRule,
    /// Where newborns live.
    pub housing: Housing,
    /// How much a bottle lamb takes.
    pub bottle_table: BottleTable,
    /// When the watch speaks up for a newborn.
    pub limits: Limits,
    /// When it speaks up around lambing.
    pub labor: LaborLimits,
    /// How long a pair stays in its pen.
    pub stay: PenStay,
}

/// One choice, as it is noted in the book.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Choice {
    /// What the farm is called.
    FarmName(String),
    /// The units.
    System(System),
    /// The colostrum rule.
    DayRule(DayRule),
    /// Housed or outdoors.
    Housing(Housing),
    /// The bottle table.
    BottleTable(BottleTable),
    /// The limits of the watch for a newborn.
    Limits(Limits),
    /// The limits of the watch around lambing.
    LaborLimits(LaborLimits),
    /// The stay in a bonding pen.
    PenStay(PenStay),
}

impl Practice {
    /// Takes one choice over.
    pub fn choose(&mut self, choice: &Choice) {
        match choice {
            Choice::FarmName(name) => self.farm_name.clone_from(name),
            Choice::System(system) => self.system = *system,
            Choice::DayRule(rule) => self.day_rule = *rule,
            Choice::Housing(housing) => self.housing = *housing,
            Choice::BottleTable(table) => self.bottle_table = *table,
            Choice::Limits(limits) => self.limits = limits.checked().unwrap_or(self.limits),
            Choice::LaborLimits(limits) => self.labor = limits.checked().unwrap_or(self.labor),
            Choice::PenStay(stay) => self.stay = stay.checked().unwrap_or(self.stay),
        }
    }
}
