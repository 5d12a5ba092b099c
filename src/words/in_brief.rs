//! What is said of an animal in a list, in a few words, and on a tile, in one or two.

use chrono::{Datelike, NaiveDate};
use yeanling_core::book::BirthDay;
use yeanling_core::units::{Condition, TimeDelta};

use super::common::{short_date, span};
use super::season;

/// Her last day has passed and she has not lambed.
pub const OVERDUE: &str = "overdue";
/// A scan saw no lamb in her.
pub const EMPTY: &str = "empty";
/// A medicine keeps meat or milk back.
pub const WITHDRAWAL: &str = "withdrawal";
/// Something was seen of it that is not right.
pub const NOT_RIGHT: &str = "not right";
/// A life hangs on what was seen of it.
pub const DANGER: &str = "danger";
/// The afterbirth was not seen to pass.
pub const AFTERBIRTH: &str = "afterbirth";
/// She may go out of her pen.
pub const TURN_OUT: &str = "turn out";
/// It is fed by hand.
pub const BOTTLE: &str = "on bottle";
/// A feed by hand is due.
pub const FEED: &str = "feed";
/// It was seen to suck.
pub const SUCKED: &str = "sucked";
/// It has died.
pub const DIED: &str = "died";
/// It was born dead.
pub const BORN_DEAD: &str = "born dead";
/// The vet is to be called.
pub const VET: &str = "vet";
/// Its temperature is to be taken.
pub const HOW_WARM: &str = "how warm?";

/// Returns when she is likeliest to lamb: "due 16 Mar".
pub fn due(likely: NaiveDate) -> String {
    format!("due {}", short_date(likely))
}

/// Returns that she is lambing, and for how long: "lambing 20 min".
pub fn lambing(since: TimeDelta) -> String {
    format!("lambing {}", coarse(since))
}

/// Returns how long it has had no milk: "unfed 2 h".
pub fn unfed(since: TimeDelta) -> String {
    format!("unfed {}", coarse(since))
}

/// Returns that a ewe has lambed, on a tile: "lambed 2", "1 of 2 alive".
pub fn lambed(alive: usize, lambs: usize) -> String {
    if alive == lambs { format!("lambed {lambs}") } else { of_alive(alive, lambs) }
}

/// Returns the same in a list, with the day: "lambed 3 Mar · 2 lambs", "lambed 3 Mar · 1 of 2 alive".
pub fn lambed_on(day: NaiveDate, alive: usize, lambs: usize) -> String {
    let lambs = match lambs {
        lambs if alive != lambs => of_alive(alive, lambs),
        1 => "1 lamb".to_owned(),
        lambs => format!("{lambs} lambs"),
    };
    format!("lambed {} · {lambs}", short_date(day))
}

/// Returns how many of a litter live: "1 of 2 alive".
pub fn of_alive(alive: usize, lambs: usize) -> String {
    format!("{alive} of {lambs} alive")
}

/// Returns an age in whole years, or in months up to two years; nothing for a day to come.
pub fn ewe_age(born: BirthDay, today: NaiveDate) -> Option<String> {
    match born {
        BirthDay::Year(year) => {
            let years = today.year().checked_sub(i32::from(year)).filter(|years| *years >= 0)?;
            Some(format!("{years} y"))
        }
        BirthDay::Day(day) => {
            let months = (today.year() - day.year()) * 12 + today.month0().cast_signed()
                - day.month0().cast_signed()
                - i32::from(today.day() < day.day());
            let months = Some(months).filter(|months| *months >= 0)?;
            Some(if months < 24 { format!("{months} mo") } else { format!("{} y", months / 12) })
        }
    }
}

/// Returns an age of a lamb: "5 h", "3 d", "14 wk".
pub fn lamb_age(age: TimeDelta) -> String {
    match age.num_days() {
        0 => format!("{} h", age.num_hours()),
        days @ 1..21 => format!("{days} d"),
        days => format!("{} wk", days / 7),
    }
}

/// Returns a condition score with its name: "BCS 3".
pub fn score(score: Condition) -> String {
    format!("BCS {}", season::score(score))
}

/// Minutes up to an hour, then hours: what is looked up at a glance.
fn coarse(since: TimeDelta) -> String {
    if since < TimeDelta::hours(1) { span(since) } else { format!("{} h", since.num_hours()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_age_is_in_years_or_months() {
        let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).expect("a day");
        let today = day(2026, 3, 15);
        let age = |born| ewe_age(born, today);
        assert_eq!(age(BirthDay::Year(2020)).as_deref(), Some("6 y"));
        assert_eq!(age(BirthDay::Day(day(2024, 3, 16))).as_deref(), Some("23 mo"));
        assert_eq!(age(BirthDay::Day(day(2024, 3, 15))).as_deref(), Some("2 y"));
        assert_eq!(age(BirthDay::Day(day(2025, 12, 15))).as_deref(), Some("3 mo"));
        assert_eq!(age(BirthDay::Day(day(2026, 3, 16))), None);
        assert_eq!(age(BirthDay::Year(2027)), None);
        assert_eq!(lamb_age(TimeDelta::hours(5)), "5 h");
        assert_eq!(lamb_age(TimeDelta::days(20)), "20 d");
        assert_eq!(lamb_age(TimeDelta::days(99)), "14 wk");
    }
}
