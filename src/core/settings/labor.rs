//! The farm's limits around lambing and in the bonding pens.

use serde::{Deserialize, Serialize};

use super::limits::{Limit, LimitError, check_all};

/// Minutes after which the watch asks for a look, a hand or the vet around lambing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct LaborLimits {
    /// A restless ewe is looked at so often.
    pub look_minutes: u16,
    /// Restless for so long without waters: examine, or the vet.
    pub restless_minutes: u16,
    /// Waters or hard straining for so long and nothing shows: a clean hand check.
    pub hand_check_minutes: u16,
    /// And for so long: step in.
    pub step_in_minutes: u16,
    /// A part that shows makes progress within so long.
    pub progress_minutes: u16,
    /// A tight neck of the womb is tried for so long, then the vet.
    pub neck_minutes: u16,
    /// A lamb that is not put right within so long: the vet.
    pub put_right_minutes: u16,
    /// The next lamb is looked for after so long.
    pub next_lamb_minutes: u16,
    /// And checked for with a clean hand after so long.
    pub next_check_minutes: u16,
    /// The afterbirth is asked for after so long.
    pub afterbirth_ask_minutes: u16,
    /// It is late after so long.
    pub afterbirth_late_minutes: u16,
    /// And a matter for the vet after so long.
    pub afterbirth_vet_minutes: u16,
}

impl Default for LaborLimits {
    /// The figures of `reckon::labor`.
    fn default() -> Self {
        Self {
            look_minutes: 60,
            restless_minutes: 360,
            hand_check_minutes: 30,
            step_in_minutes: 60,
            progress_minutes: 30,
            neck_minutes: 10,
            put_right_minutes: 10,
            next_lamb_minutes: 30,
            next_check_minutes: 60,
            afterbirth_ask_minutes: 360,
            afterbirth_late_minutes: 720,
            afterbirth_vet_minutes: 1080,
        }
    }
}

impl LaborLimits {
    /// Returns the limits if each is sensible and those of one clock come in order.
    ///
    /// A farm may be stricter than the handbooks, or somewhat looser, never so loose that a clock keeps silent where
    /// ewe or lamb is in danger (ours).
    ///
    /// # Errors
    /// The first limit that is not, with what is allowed in minutes.
    pub fn checked(self) -> Result<Self, LimitError> {
        check_all(&[
            (Limit::Look, self.look_minutes, 15, 180),
            (Limit::Restless, self.restless_minutes, 60, 720),
            (Limit::HandCheck, self.hand_check_minutes, 10, 60),
            (Limit::StepIn, self.step_in_minutes, self.hand_check_minutes.saturating_add(1), 120),
            (Limit::Progress, self.progress_minutes, 10, 60),
            (Limit::Neck, self.neck_minutes, 5, 30),
            (Limit::PutRight, self.put_right_minutes, 5, 30),
            (Limit::NextLamb, self.next_lamb_minutes, 10, 60),
            (Limit::NextCheck, self.next_check_minutes, self.next_lamb_minutes.saturating_add(1), 120),
            (Limit::AfterbirthAsk, self.afterbirth_ask_minutes, 60, 720),
            (
                Limit::AfterbirthLate,
                self.afterbirth_late_minutes,
                self.afterbirth_ask_minutes.saturating_add(1),
                1080,
            ),
            (
                Limit::AfterbirthVet,
                self.afterbirth_vet_minutes,
                self.afterbirth_late_minutes.saturating_add(1),
                1440,
            ),
        ])?;
        Ok(self)
    }
}

/// Hours a ewe and her lambs stay in a bonding pen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PenStay {
    /// With one lamb.
    pub single_hours: u16,
    /// With two.
    pub twins_hours: u16,
    /// With three and more.
    pub more_hours: u16,
}

impl Default for PenStay {
    /// One day, two days and three: the longer end of what is printed, since a pair that parts is hard to mend (ours).
    fn default() -> Self {
        Self { single_hours: 24, twins_hours: 48, more_hours: 72 }
    }
}

impl PenStay {
    /// Returns the stays if each lies between 2 hours and 10 days.
    ///
    /// # Errors
    /// The first that does not, in hours.
    pub fn checked(self) -> Result<Self, LimitError> {
        check_all(&[
            (Limit::StaySingle, self.single_hours, 2, 240),
            (Limit::StayTwins, self.twins_hours, 2, 240),
            (Limit::StayMore, self.more_hours, 2, 240),
        ])?;
        Ok(self)
    }

    /// Returns the hours for a litter of so many living lambs.
    #[must_use]
    pub const fn hours(self, lambs: usize) -> u16 {
        match lambs {
            0 | 1 => self.single_hours,
            2 => self.twins_hours,
            3.. => self.more_hours,
        }
    }
}
