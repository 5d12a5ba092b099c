//! The vet's telephone numbers, as people write them and as they are dialed, and what is agreed before the season.

use serde::{Deserialize, Serialize};

/// The most digits of a number (ITU-T E.164).
pub const MOST_DIGITS: usize = 15;
/// The least digits of a number (ours: the shortest numbers of emergency services have three).
pub const LEAST_DIGITS: usize = 3;
/// The most signs of a number as it is written (ours).
pub const MOST_SIGNS: usize = 32;

/// The vet's telephone numbers; empty where none is given.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct VetPhones {
    /// By day.
    pub day: String,
    /// At night and on days off.
    pub night: String,
    /// At night, where the first is not reached.
    pub second: String,
}

/// What is agreed with the vet before the first lamb.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VetAgreed {
    /// The vet trained someone here: glucose for a cold lamb, a tube, and what else may be done without one.
    Trained,
    /// Glucose is here, prescribed, and its amounts are agreed.
    Glucose,
    /// Who may kill an animal that must be, and how, by the law of the place.
    Killing,
}

impl VetAgreed {
    /// All of it, in the order in which it is asked.
    pub const ALL: [Self; 3] = [Self::Trained, Self::Glucose, Self::Killing];
}

/// Returns what is dialed for a number as people write it, or nothing if it is none: digits, with a plus sign before them at
/// most, once the signs that only part them are gone (RFC 3966).
///
/// ```
/// use yeanling_core::settings::dialed;
/// assert_eq!(dialed("+1 (555) 010-0199").as_deref(), Some("+15550100199"));
/// assert_eq!(dialed("555.0100"), Some("5550100".to_owned()));
/// assert_eq!(dialed("the vet"), None);
/// ```
#[must_use]
pub fn dialed(written: &str) -> Option<String> {
    let written = written.trim();
    if written.chars().count() > MOST_SIGNS {
        return None;
    }
    let (plus, rest) = written.strip_prefix('+').map_or(("", written), |rest| ("+", rest));
    let parts = |sign: &char| matches!(sign, ' ' | '-' | '.' | '(' | ')' | '/' | '\u{a0}');
    let digits: String = rest.chars().filter(|sign| !parts(sign)).collect();
    let counts = (LEAST_DIGITS..=MOST_DIGITS).contains(&digits.len());
    (counts && digits.bytes().all(|sign| sign.is_ascii_digit())).then(|| format!("{plus}{digits}"))
}

impl VetPhones {
    /// Says whether no number is given.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.day.is_empty() && self.night.is_empty() && self.second.is_empty()
    }

    /// Says whether two numbers are given for the night.
    #[must_use]
    pub const fn has_two_for_the_night(&self) -> bool {
        !self.night.is_empty() && !self.second.is_empty()
    }
}
