//! Minutes at which the watch speaks up: the farm's own, within what makes sense.

use serde::{Deserialize, Serialize};

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

impl Limit {
    /// Of a newborn's first day, in its order.
    pub const OF_A_NEWBORN: [Self; 5] = [Self::Up, Self::Help, Self::Red, Self::LastCall, Self::NavelAgain];
    /// Around lambing, in the order of a night.
    pub const OF_LABOR: [Self; 12] = [
        Self::Look,
        Self::Restless,
        Self::HandCheck,
        Self::StepIn,
        Self::Progress,
        Self::Neck,
        Self::PutRight,
        Self::NextLamb,
        Self::NextCheck,
        Self::AfterbirthAsk,
        Self::AfterbirthLate,
        Self::AfterbirthVet,
    ];
    /// Of the stay in a pen, by how many lambs there are.
    pub const OF_THE_STAY: [Self; 3] = [Self::StaySingle, Self::StayTwins, Self::StayMore];
}

pub(super) fn check_all(spans: &[(Limit, u16, u16, u16)]) -> Result<(), LimitError> {
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
