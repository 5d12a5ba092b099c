//! The words of the night: what comes, what rings, and what this phone can and cannot do about it.

use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, State};

use super::common::{clock, day_and_clock, span};

/// The screen's name.
pub const TITLE: &str = "Night clock";
/// Arms the alarm, and plays its test.
pub const ARM: &str = "Turn alarm on";
/// Arms it once more, when the phone gave no sound.
pub const ARM_AGAIN: &str = "No sound yet: tap again";
/// Disarms it.
pub const DISARM: &str = "Turn alarm off";
/// Says that it is not armed.
pub const OFF: &str = "*Alarm off.* Turning it on plays a test.";
/// Says that the phone gives no sound.
pub const MUTE: &str = "*No sound yet.* The phone wants one more tap.";
/// Says that it cannot sound.
pub const NO_SOUND: &str = "*No sound* in this browser. Use your phone’s own alarm.";
/// What must never be forgotten.
const ONLY_HERE: &str = "Rings only while this screen is on.";
/// Answers a ring.
pub const UP: &str = "I’m up";
/// Says where to tap.
pub const ANYWHERE: &str = "tap anywhere";
/// Labels the time to the next duty for those who listen.
pub const TIME_TO_IT: &str = "time to the next duty";
/// Says that nothing is due and nothing is known to come.
pub const NOTHING: &str = "Nothing due, and nothing known to come.";
/// Says that ewes are past their days: "2 ewes overdue. Look at each."
pub fn overdue(ewes: usize) -> String {
    format!("{} overdue. Look at each.", super::animals::ewes(ewes))
}
/// Hands all alarms to the calendar.
pub const ALL_TO_CALENDAR: &str = "Alarms to my calendar";
/// Hands one alarm to the calendar.
pub const ONE_TO_CALENDAR: &str = "only this to my calendar";
/// Says what became of it.
pub const IN_CALENDAR: &str = "Open the file to add the alarms. Send again after each round; they update. Jobs already done still ring.";
/// Says that there is nothing to hand over.
pub const NONE_AHEAD: &str = "No alarm to send: nothing is coming.";
/// Says why the sample flock stays out.
pub const MADE_UP: &str = "The sample flock stays out of your calendar.";
/// The name of the calendar file.
pub const FILE: &str = "yeanling-alarms.ics";

/// Returns when the alarm was tested.
pub fn armed(tested: Moment) -> String {
    format!("*Alarm on*, tested {}.", clock(tested))
}

/// Says whether the phone stays awake: nothing is said before it has answered.
const fn awake(held: Option<bool>) -> &'static str {
    match held {
        None => "",
        Some(true) => "Held awake.",
        Some(false) => "*This phone may go dark.* Set its screen to stay on, or use its own alarm.",
    }
}

/// Says what the alarm cannot do, and whether the phone stays awake.
pub fn only_here(held: Option<bool>) -> String {
    format!("{ONLY_HERE} {}", awake(held)).trim().to_owned()
}

/// Returns the plain line for a phone in a pocket.
pub fn set_alarm(at: Moment, now: Moment) -> String {
    format!("In a pocket? Set your phone’s alarm for *{}*", day_and_clock(at, now))
}

/// Returns that nothing is due, and when the next look is.
pub fn calm(next: Moment, now: Moment) -> String {
    format!("Nothing due. Next look: *{}*", day_and_clock(next, now))
}

/// Returns how a duty that is due or late stands, without how long, so that it can be read twice.
pub fn stands(duty: &Duty, now: Moment) -> String {
    let due = day_and_clock(duty.due, now);
    match duty.state(now) {
        State::Danger => format!("*danger* since {}", day_and_clock(duty.since, now)),
        State::Late => format!("*late*, was due {due}"),
        State::Now => format!("due {due}"),
        State::Coming => format!("due {}", day_and_clock(duty.comes(), now)),
    }
}

/// Returns how many more are due.
pub fn more(count: usize) -> String {
    format!("and {count} more")
}

/// Returns the time to a duty for reading across a room, its number and its unit: "12" and "min", "1 h 24" and none.
///
/// It is counted from the minute on the clock to the minute that is told, so that all three agree. From ten hours on,
/// hours are enough.
pub fn time_to(due: Moment, now: Moment) -> (String, &'static str) {
    let minute = |moment: Moment| moment.as_unix_milliseconds().div_euclid(60_000);
    let minutes = (minute(due) - minute(now)).max(0);
    match (minutes / 60, minutes % 60) {
        (0, 0) => ("now".to_owned(), ""),
        (0, minutes) => (minutes.to_string(), "min"),
        (hours @ 1..10, minutes @ 1..) => (format!("{hours} h {minutes:02}"), ""),
        (hours, _) => (hours.to_string(), "h"),
    }
}

/// Returns an animal and what to do for it, in one line without signs: "27a: Not seen to nurse".
pub fn line(name: &str, task: &str) -> String {
    format!("{name}: {}", task.replace('*', ""))
}

/// Returns what the calendar says of an alarm.
pub fn note(duty: &Duty) -> String {
    format!("Due {}, late from {}. The link opens Yeanling.", clock(duty.due), clock(duty.late))
}

/// Returns where an answered ring leads.
pub fn go_to(name: &str) -> String {
    format!("Go to {name}")
}

/// Returns what was missed while no one looked: "3 late. First 27a: Not seen to nurse".
pub fn missed(count: usize, first: &str) -> String {
    if count == 1 { format!("*Late*: {first}") } else { format!("*{count} late.* First {first}") }
}

/// Says that what was missed is done.
pub const MISSED_NONE: &str = "Done. Nothing you missed is still late.";

/// Returns the doubt about this phone's clock.
pub fn clock_behind(noted: Moment, now: Moment) -> String {
    format!(
        "*This phone’s clock is behind* what was noted at {}: it says {}, {} less. Check its time: until then, what is due \
         may show too late.",
        day_and_clock(noted, now),
        clock(now),
        span(noted.since(now))
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(due: &str, number: &str, unit: &str) {
        let now = "2026-02-25T03:12:59+01:00".parse().expect("a moment");
        let due = due.parse().expect("a moment");
        let (found, found_unit) = time_to(due, now);
        assert_eq!((found.as_str(), found_unit), (number, unit), "{due}");
    }

    #[test]
    fn the_time_to_a_duty_agrees_with_both_clocks() {
        check("2026-02-25T03:24:00+01:00", "12", "min");
        check("2026-02-25T03:24:59+01:00", "12", "min");
        check("2026-02-25T03:13:00+01:00", "1", "min");
        check("2026-02-25T03:12:59+01:00", "now", "");
        check("2026-02-25T03:00:00+01:00", "now", "");
        check("2026-02-25T04:12:00+01:00", "1", "h");
        check("2026-02-25T04:36:00+01:00", "1 h 24", "");
        check("2026-02-25T04:17:00+01:00", "1 h 05", "");
        check("2026-02-25T13:11:00+01:00", "9 h 59", "");
        check("2026-02-25T15:11:00+01:00", "11", "h");
    }

    #[test]
    fn one_that_was_missed_is_named_alone() {
        assert_eq!(missed(1, "27a: Feed"), "*Late*: 27a: Feed");
        assert_eq!(missed(3, "27a: Feed"), "*3 late.* First 27a: Feed");
    }
}
