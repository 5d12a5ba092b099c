//! What the Watch says of each duty.

use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Duty, State, Task};

use super::common::{day_and_clock, span, volume};

/// Starts a lambing.
pub(crate) const LAMBING: &str = "Lambing";
/// Heads what is late.
pub(crate) const LATE: &str = "Late";
/// Heads what is due.
pub(crate) const NOW: &str = "Now";
/// Heads what comes.
pub(crate) const COMING: &str = "Coming";
/// Heads newborns that want nothing.
pub(crate) const WELL: &str = "First day, nothing due";
/// Says what to do first.
pub(crate) const EMPTY: &str =
    "Nothing to watch yet. When a ewe starts, tap *Lambing*. The clocks start with the first lamb.";
/// Says that nothing is due.
pub(crate) const QUIET: &str = "Nothing is due. Newborns and bottle lambs show here.";
/// Offers the made-up flock.
pub(crate) const LOOK_ROUND: &str = "Look round a made-up flock";

/// Returns what is to be done, short, for a row.
pub(crate) fn task(task: Task, system: System) -> String {
    match task {
        Task::DipNavel => "Dip the navel".to_owned(),
        Task::DipNavelAgain => "Dip the navel again".to_owned(),
        Task::GetUp => "Not seen up".to_owned(),
        Task::FirstMilk { last_call: false } => "Not seen to suck".to_owned(),
        Task::FirstMilk { last_call: true } => {
            "No first milk yet: *last call*. Feed it or call your vet".to_owned()
        }
        Task::Feed { volume: Some(next) } => format!("Feed *{}*", volume(next, system)),
        Task::Feed { volume: None } => "Feed: weigh it for the volume".to_owned(),
        Task::DayTotal { given, want } => {
            format!("First day’s milk: *{}* of {}", volume(given, system), volume(want, system))
        }
        Task::Weigh => "Weigh it".to_owned(),
        Task::ScoreVigor => "Score its vigor".to_owned(),
    }
}

/// Returns the word on the button that discharges it.
pub(crate) fn done(task: Task, system: System) -> String {
    match task {
        Task::DipNavel | Task::DipNavelAgain => "Dipped".to_owned(),
        Task::GetUp => "Up".to_owned(),
        Task::FirstMilk { .. } => "Sucked".to_owned(),
        Task::Feed { volume: Some(next) } => format!("Fed {}", volume(next, system)),
        Task::Feed { volume: None } | Task::DayTotal { .. } => "Feed".to_owned(),
        Task::Weigh => "Weigh".to_owned(),
        Task::ScoreVigor => "Score".to_owned(),
    }
}

/// Returns how urgent it is: "due in 12 min", "due now", "24 min late".
pub(crate) fn when(duty: &Duty, now: Moment) -> String {
    match duty.state(now) {
        State::Coming if duty.due.since(now) < TimeDelta::hours(3) => {
            format!("in {}", span(duty.due.since(now)))
        }
        State::Coming => format!("at {}", day_and_clock(duty.due, now)),
        State::Now => match duty.task {
            Task::FirstMilk { .. } => "help it now".to_owned(),
            Task::DipNavel
            | Task::DipNavelAgain
            | Task::GetUp
            | Task::Feed { .. }
            | Task::DayTotal { .. }
            | Task::Weigh
            | Task::ScoreVigor => format!("due {}", day_and_clock(duty.due, now)),
        },
        State::Late => format!("*late*: was due {}", day_and_clock(duty.due, now)),
    }
}

/// Returns an age: "1 h 24 min old".
pub(crate) fn age(age: TimeDelta) -> String {
    if age < TimeDelta::minutes(1) { "just born".to_owned() } else { format!("{} old", span(age)) }
}

/// Says that nothing is due or coming.
pub(crate) const NOTHING: &str = "Nothing due";

/// Returns how many are late.
pub(crate) fn late(count: usize) -> String {
    format!("{count} late")
}

/// Returns how many are due.
pub(crate) fn now(count: usize) -> String {
    format!("{count} now")
}

/// Returns how many are coming.
pub(crate) fn coming(count: usize) -> String {
    format!("{count} coming")
}

/// Returns what stands behind the time left: "left · 1 h 24 min old".
pub(crate) fn left(age: &str) -> String {
    format!("left · {age}")
}

/// Returns a vigor score in few letters.
pub(crate) fn vigor(score: u8) -> String {
    format!("vigor {score} of 4")
}

/// Labels the volume of one feed.
pub(crate) const A_FEED: &str = "a feed";

/// Labels the instant by which a volume is wanted.
pub(crate) fn by(at: &str) -> String {
    format!("by {at}")
}

/// Returns what was given against what is wanted: "190 of 390 ml".
pub(crate) fn of(given: &str, wanted: &str) -> String {
    format!("*{given}* of {wanted}")
}

/// Returns how a newborn with nothing due is doing.
pub(crate) fn well(lamb: &yeanling_core::flock::Lamb, now: Moment) -> String {
    match (lamb.sucked.last(), lamb.feeds.last()) {
        (Some(sucked), _) => format!("Sucked {}", day_and_clock(*sucked, now)),
        (None, Some(feed)) => format!("Fed {}", day_and_clock(feed.at, now)),
        (None, None) => String::new(),
    }
}
