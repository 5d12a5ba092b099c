//! The field and the race: groups, rams, crayon marks, scans, condition, and a lambing that no mating explains.

use yeanling_core::book::RamAge;
use yeanling_core::flock::{Odd, OddBirth};
use yeanling_core::units::{Condition, Moment};

use super::common::{date, number};

/// Scores her condition.
pub const CONDITION: &str = "Condition";
/// Asks for it.
pub const CONDITION_ASK: &str = "Her body condition, by hand";
/// Says how.
pub const CONDITION_HOW: &str =
    "Feel the loin behind the last rib. 1 is very thin, 3 is good, 5 is very fat.";
/// Heads the whole scores.
pub const WHOLE: &str = "Score";
/// Heads the quarters.
pub const QUARTERS: &str = "And a quarter";
/// The quarters, as they are added.
pub const QUARTER: [&str; 4] = ["+ 0", "+ ¼", "+ ½", "+ ¾"];
/// Says that no whole score was chosen yet.
pub const NO_SCORE: &str = "Choose a score from 1 to 5.";
/// Weighs her.
pub const WEIGH: &str = "Weigh";
/// Asks for her weight.
pub const WEIGH_ASK: &str = "What does she weigh?";
/// Notes a scan.
pub const SCAN: &str = "Scan";
/// Asks what it showed.
pub const SCAN_ASK: &str = "What did the scan show?";
/// How many lambs a scan can show, from none.
pub const SCANNED: [&str; 5] = ["Empty", "One", "Two", "Three", "Four"];
/// Asks how old the lambs were said to be.
pub const SCAN_DAYS: &str = "Age of the lambs, if the scanner said";
/// The unit of that.
pub const DAYS: &str = "days";
/// Says that nothing was chosen yet.
pub const NO_SCAN: &str = "Tap how many lambs the scan showed.";
/// Notes a crayon mark.
pub const MARK: &str = "Crayon mark";
/// Asks for its color.
pub const MARK_ASK: &str = "What color is the mark?";
/// Names that field.
pub const COLOR: &str = "Color";

/// Returns a condition score: "2.75".
pub fn score(score: Condition) -> String {
    number(score.as_score(), 2)
}

/// Returns what a scan showed.
pub fn scanned(lambs: u8, days: Option<u16>) -> String {
    let lambs = match lambs {
        0 => "Scanned *empty*".to_owned(),
        1 => "Scanned: *one lamb*".to_owned(),
        lambs => format!("Scanned: *{lambs} lambs*"),
    };
    match days {
        Some(days) => format!("{lambs}, {days} days old"),
        None => lambs,
    }
}

/// Returns a ram for a line: "Ram Oscar, yearling", "A ram".
pub fn ram(label: Option<&str>, age: Option<RamAge>) -> String {
    let name = label.map_or_else(|| "A ram".to_owned(), |label| format!("Ram {label}"));
    match age {
        Some(age) => format!("{name}, {}", ram_age(age)),
        None => name,
    }
}

/// Returns how old a ram is.
pub const fn ram_age(age: RamAge) -> &'static str {
    match age {
        RamAge::Lamb => "ram lamb",
        RamAge::Yearling => "yearling",
        RamAge::Mature => "grown",
    }
}

/// Returns what does not fit about a lambing.
pub fn odd_birth(odd: &OddBirth) -> String {
    let day = |moment: Moment| date(moment);
    let OddBirth { how, window, days } = odd;
    match how {
        Odd::Early => format!(
            "Lambed {days} days after the ram went in on {}. Ewes carry 138 to 159 days. Another ram, another date, or aborted?",
            day(window.ram_in)
        ),
        Odd::Late => format!(
            "Lambed {days} days after the ram came out on {}. Ewes carry 138 to 159 days. Another ram, or another date?",
            day(window.ram_out.unwrap_or(window.ram_in))
        ),
    }
}
