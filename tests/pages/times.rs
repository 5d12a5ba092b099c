//! Times and dates as they stand in a text, in whichever way they are written.

/// A time of day, or a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Time {
    /// Minutes since midnight, or since noon where the half of the day is not told.
    Clock {
        /// So many.
        minutes: u32,
        /// Which half of the day, where that is told: by its word, or by an hour that has no other.
        half: Option<bool>,
    },
    /// A day of a month.
    Day {
        /// Which month, 1 to 12.
        month: u32,
        /// Which day.
        day: u32,
    },
}

impl Time {
    /// Says whether both can be the same; a half of the day that is not told is either.
    pub(crate) fn is(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Clock { minutes: a, half: one }, Self::Clock { minutes: b, half: two }) => {
                a % 720 == b % 720 && (one.is_none() || two.is_none() || a == b)
            }
            (one, other) => one == other,
        }
    }
}

const MONTHS: [&str; 12] =
    ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/// Returns the times and days of a text, in their order.
pub(crate) fn times(text: &str) -> Vec<Time> {
    let text = text.replace('\u{a0}', " ");
    let bare = |word: &str| word.trim_matches(|c: char| !c.is_alphanumeric()).to_owned();
    let words: Vec<String> = text.split_whitespace().map(bare).collect();
    let mut found = Vec::new();
    for (at, word) in words.iter().enumerate() {
        if let Some(minutes) = clock(word) {
            let half = match words.get(at + 1).map(String::as_str) {
                Some("am") => Some((false, minutes % 720)),
                Some("pm") => Some((true, minutes % 720 + 720)),
                // With twenty-four hours there are always two figures before the colon.
                _ if word.len() == 5 && (word.starts_with('0') || minutes >= 780) => {
                    Some((minutes >= 720, minutes))
                }
                _ => None,
            };
            found.push(match half {
                Some((late, minutes)) => Time::Clock { minutes, half: Some(late) },
                None => Time::Clock { minutes, half: None },
            });
        }
        if let Some(month) = MONTHS.iter().position(|month| month == word) {
            let number = |at: Option<usize>| at.and_then(|at| words.get(at)).and_then(|word| day(word));
            // The day stands beside its month: before it, or behind it.
            let (before, behind) = (number(at.checked_sub(1)), number(Some(at + 1)));
            if let (Some(day), Ok(month)) = (before.or(behind), u32::try_from(month + 1)) {
                found.push(Time::Day { month, day });
            }
        }
    }
    found
}

fn clock(word: &str) -> Option<u32> {
    let (hour, minute) = word.split_once(':')?;
    let (hour, minute): (u32, u32) = (hour.parse().ok()?, minute.parse().ok().filter(|_| minute.len() == 2)?);
    (hour < 24 && minute < 60).then_some(hour * 60 + minute)
}

fn day(word: &str) -> Option<u32> {
    word.parse().ok().filter(|day| (1..=31).contains(day) && word.len() <= 2)
}

#[test]
fn a_time_is_read_in_either_way() {
    let clock = |minutes, half| Time::Clock { minutes, half };
    assert_eq!(times("due 03:12, late 15:40."), [clock(192, Some(false)), clock(940, Some(true))]);
    assert_eq!(times("due 3:12\u{a0}am, late 3:40 pm."), [clock(192, Some(false)), clock(940, Some(true))]);
    assert_eq!(times("12:05 am"), [clock(5, Some(false))]);
    assert_eq!(times("3:12"), [clock(192, None)]);
    assert_eq!(times("born 14 Mar 2026"), [Time::Day { month: 3, day: 14 }]);
    assert_eq!(
        times("born Mar 14, 2026; due Apr 2"),
        [Time::Day { month: 3, day: 14 }, Time::Day { month: 4, day: 2 }]
    );
    assert_eq!(times("May lamb tonight: 3 ewes"), []);
    assert!(times("03:12")[0].is(&times("3:12 am")[0]) && times("15:12")[0].is(&times("3:12")[0]));
    assert!(!times("03:12")[0].is(&times("3:12 pm")[0]) && !times("03:12")[0].is(&times("4:12")[0]));
}
