//! An age as it is typed: "1.5", "1,5 h", "1 h 20", "1:20", "40 min".

use yeanling_core::units::{TimeDelta, parse_number};
use yeanling_words::calculators::{AgeError, MOST_HOURS};

/// Reads an age; nothing typed is `Ok(None)`.
///
/// A bare number is hours. Hours may carry a fraction when no minutes follow.
///
/// # Errors
/// What was typed is no age, lies before birth, or past three days.
pub(super) fn read(text: &str) -> Result<Option<TimeDelta>, AgeError> {
    let given = || text.trim().to_owned();
    let plain = text.trim().to_lowercase();
    if plain.is_empty() {
        return Ok(None);
    }
    let minutes = minutes(&plain).ok_or_else(|| AgeError::NotAnAge { given: given() })?;
    if minutes < 0.0 {
        return Err(AgeError::BeforeBirth { given: given() });
    }
    #[expect(clippy::cast_precision_loss, reason = "three days in minutes")]
    if minutes > (MOST_HOURS * 60) as f64 {
        return Err(AgeError::TooOld { given: given() });
    }
    #[expect(clippy::cast_possible_truncation, reason = "bounded just above")]
    Ok(Some(TimeDelta::minutes(minutes.round() as i64)))
}

fn minutes(plain: &str) -> Option<f64> {
    let number = |text: &str| parse_number(text).ok();
    if let Some((hours, minutes)) = plain.split_once(':') {
        return together(hours, minutes);
    }
    if let Some((hours, rest)) = plain.split_once('h') {
        let rest = rest.trim_start_matches(['o', 'u', 'r', 's']).trim();
        let minutes = rest.trim_end_matches(MINUTES).trim();
        return if minutes.is_empty() { Some(number(hours)? * 60.0) } else { together(hours, minutes) };
    }
    if plain.ends_with(MINUTES) {
        return number(plain.trim_end_matches(MINUTES));
    }
    Some(number(plain)? * 60.0)
}

/// The letters of "min", "mins", "minutes" and "m".
const MINUTES: [char; 7] = ['m', 'i', 'n', 's', 'u', 't', 'e'];

/// Returns whole hours and whole minutes together.
fn together(hours: &str, minutes: &str) -> Option<f64> {
    let hours: u8 = hours.trim().parse().ok()?;
    let minutes: u8 = minutes.trim().parse().ok().filter(|minutes| *minutes < 60)?;
    Some(f64::from(hours) * 60.0 + f64::from(minutes))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, minutes: i64) {
        assert_eq!(read(text), Ok(Some(TimeDelta::minutes(minutes))), "{text}");
    }

    #[test]
    fn an_age_is_read_as_people_write_it() {
        check("1.5", 90);
        check("1,5", 90);
        check("1.5 h", 90);
        check("1 h 20", 80);
        check("1h20", 80);
        check("1 h 20 min", 80);
        check("2 hours", 120);
        check("2 hrs 5", 125);
        check("1:20", 80);
        check("40 min", 40);
        check("40m", 40);
        check("0", 0);
        check(" 24 ", 1440);
    }

    #[test]
    fn nothing_typed_is_no_error() {
        assert_eq!(read("  "), Ok(None));
    }

    #[test]
    fn what_is_no_age_keeps_what_was_typed() {
        for text in ["abc", "1..5", "1 h 75", "1:2:3", "h", "1 2", "min"] {
            assert_eq!(read(text), Err(AgeError::NotAnAge { given: text.to_owned() }), "{text}");
        }
        assert_eq!(read("-3"), Err(AgeError::BeforeBirth { given: "-3".to_owned() }));
        assert_eq!(read("100"), Err(AgeError::TooOld { given: "100".to_owned() }));
    }
}
