//! What is planned for the season, whether it happened, and the ram that stays.

use chrono::NaiveDate;
use yeanling_core::book::{PlannedJob, Planning};
use yeanling_core::flock::Staying;
use yeanling_core::seasons::YoungEwe;

use super::common::{capital, short_date, typed};
use super::season_forecast::away;

/// Heads what is planned.
pub const PLANNED: &str = "Planned";
/// Plans for a group.
pub const PLAN: &str = "Plan dates";
/// Plans for the whole flock.
pub const PLAN_FLOCK: &str = "Plan shearing and turn-out";
/// Asks for the days of a group.
pub const PLAN_ASK: &str = "What is planned for this group?";
/// Asks for the days of the flock.
pub const PLAN_FLOCK_ASK: &str = "What is planned for the flock?";
/// Says what a plan is.
pub const PLAN_TEXT: &str = "A plan counts for nothing until it happens: on its day you are asked.";
/// Says that no day was changed.
pub const NO_CHANGE: &str = "Enter a day, or change one.";
/// The whole flock, where a group would be named.
pub const WHOLE_FLOCK: &str = "Whole flock";
/// Asks on the day.
pub const HAPPENED_ASK: &str = "did it happen?";
/// It did.
pub const YES: &str = "Yes";
/// It did or will on another.
pub const ANOTHER_DAY: &str = "Another day";
/// It did not, and is planned no more.
pub const NO: &str = "No";
/// Asks for that day.
pub const WHICH_DAY: &str = "On which day?";
/// Says what a day does.
pub const WHICH_DAY_TEXT: &str =
    "A day that has passed: it happened then. A day ahead: it is planned for then.";
/// A step of extra feed waits.
pub const PUT_OFF: &str = "Put off";
/// Asks until when.
pub const PUT_OFF_ASK: &str = "Give the next feed step when?";
/// Says what is asked then.
pub const PUT_OFF_TEXT: &str =
    "The step is asked for again that day. Raise feed slowly: a jump can make a ewe sick.";

/// Returns until when a step waits: "Tomorrow", "In 3 days".
pub fn put_off_days(days: u8) -> String {
    match days {
        1 => "Tomorrow".to_owned(),
        7 => "In a week".to_owned(),
        days => format!("In {days} days"),
    }
}

/// The ram stays.
pub const HE_STAYS: &str = "He stays";
/// Asks until when.
pub const HE_STAYS_ASK: &str = "The ram stays in";
/// Says what that means.
pub const HE_STAYS_TEXT: &str =
    "Lambs are expected from each ewe until she has lambed. If he comes out on a set day, enter it.";
/// Labels the day until which he counts as in.
pub const HE_STAYS_UNTIL: &str = "In until, if there is a day";
/// Heads the ewe lambs that may come into heat.
pub const YOUNG: &str = "Ewe lambs, keep apart from the ram";
/// Says why.
pub const YOUNG_TEXT: &str =
    "Ewe lambs can come into heat from 5 months (New Mexico State University, 5 to 12 months). A ram is in.";

/// Returns what is planned, as it is named.
pub const fn job(what: PlannedJob) -> &'static str {
    match what {
        PlannedJob::RamIn => "Ram in",
        PlannedJob::RamOut => "Ram out",
        PlannedJob::Scan => "Scan",
        PlannedJob::Shearing => "Shearing",
        PlannedJob::TurnOut => "Turn-out to grass",
    }
}

/// Returns a plan on its day: "Ram in, planned for 5 Oct".
pub fn planned_for(what: PlannedJob, on: NaiveDate) -> String {
    format!("{}, planned for {}", job(what), short_date(on))
}

/// Returns when a plan is: "5 Oct, in 12 days".
pub fn on(day: NaiveDate, today: NaiveDate) -> String {
    format!("*{}*, {}", short_date(day), away(day, today))
}

/// Returns a fact of planning as a line of a timeline.
pub fn line(planning: &Planning) -> String {
    match planning {
        Planning::RamStays { until, .. } => {
            capital(&stays(until.map_or(Staying::UntilLambed, Staying::Until)))
        }
        Planning::Planned { what, on: Some(on), .. } => {
            format!("Planned: {}, *{}*", job(*what).to_lowercase(), short_date(*on))
        }
        Planning::Planned { what, on: None, .. } => {
            format!("No longer planned: {}", job(*what).to_lowercase())
        }
        Planning::RamsMeant { rams, .. } => format!("Ram planned: *{}*", typed(&rams.join(", "))),
        Planning::FeedPutOff { until, .. } => format!("Extra feed step put off to *{}*", short_date(*until)),
        Planning::Happened { what, .. } => format!("{}: done", job(*what)),
    }
}

/// Returns how long a ram stays: "he stays until 1 Mar"; nothing where nobody said so.
pub fn stays(staying: Staying) -> String {
    match staying {
        Staying::Unsaid => String::new(),
        Staying::UntilLambed => "he stays until each ewe has lambed".to_owned(),
        Staying::Until(until) => format!("he stays until {}", short_date(until.local().date())),
    }
}

/// Returns since or from when a ewe lamb may come into heat: "may come into heat from 3 Aug, in 12 days".
pub fn heat(young: &YoungEwe, today: NaiveDate) -> String {
    format!("may come into heat from *{}*, {}", short_date(young.from), away(young.from, today))
}
