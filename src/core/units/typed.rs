//! What people type into a field, read as a number: comma or point, a fraction, a unit behind it or none.
//!
//! Nothing is guessed: `1,000` may be one or a thousand, so it is asked back.
//!
//! A comma before three digits is asked back, and so is a point where the last of them is 0; `4.125` is a decimal, as
//! a scale and the app write it.

/// What is wrong with something typed. Each keeps what was given, so that a field can show it again.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TypedError {
    /// Nothing was typed.
    #[error("nothing was given")]
    Empty,
    /// It is no number.
    #[error("{given:?} is not a number")]
    NotANumber {
        /// What was typed.
        given: String,
    },
    /// It has more than one decimal point or comma.
    #[error("{given:?} has more than one point")]
    TwoPoints {
        /// What was typed.
        given: String,
    },
    /// It may be thousands or a decimal, such as `1,000`.
    #[error("{given:?} can be read as {decimal} or as {thousands}")]
    TwoWays {
        /// What was typed.
        given: String,
        /// It as a decimal, as it would be typed without doubt.
        decimal: String,
        /// It as thousands, as it would be typed without doubt.
        thousands: String,
    },
    /// The unit is none of this quantity's.
    #[error("{given:?} has a unit that does not fit")]
    OtherUnit {
        /// What was typed.
        given: String,
    },
    /// Of two units the larger is not a whole number, such as `9.5 lb 4 oz`.
    #[error("{given:?} has {larger:?} before {pair:?}")]
    LargerNotWhole {
        /// What was typed.
        given: String,
        /// The number of the larger unit, as typed.
        larger: String,
        /// The two units.
        pair: UnitPair,
    },
    /// Of two units the smaller comes to one of the larger or more, or is below nothing, such as `9 lb 16 oz`.
    #[error("{given:?} has {smaller:?} behind {pair:?}")]
    SmallerTooMuch {
        /// What was typed.
        given: String,
        /// The number of the smaller unit, as typed.
        smaller: String,
        /// The two units.
        pair: UnitPair,
    },
}

/// Two units that are typed behind each other, the larger first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnitPair {
    /// `9 lb 4 oz`.
    PoundsOunces,
    /// `5 ft 6 in`.
    FeetInches,
}

impl UnitPair {
    /// Returns how many of the smaller unit make one of the larger.
    #[must_use]
    pub const fn in_one(self) -> u8 {
        match self {
            Self::PoundsOunces => 16,
            Self::FeetInches => 12,
        }
    }

    /// Reads the numbers of both units into one of the larger: 9 and 4 are 9.25 lb.
    ///
    /// # Errors
    /// One is no number, the larger is not whole or below nothing, or the smaller is not less than one of the larger.
    pub(super) fn together(self, given: &str, larger: &str, smaller: &str) -> Result<f64, TypedError> {
        let given = given.trim().to_owned();
        let whole = parse_number(larger)?;
        if !larger.chars().all(|c| c.is_ascii_digit()) {
            return Err(TypedError::LargerNotWhole { given, larger: larger.to_owned(), pair: self });
        }
        let rest = parse_number(smaller)?;
        // Three digits behind feet are a thousand with a sign for feet in it, as the Swiss write 1'000.
        let is_grouped = smaller.chars().take_while(char::is_ascii_digit).count() > 2;
        if is_grouped || !(0.0..f64::from(self.in_one())).contains(&rest) {
            return Err(TypedError::SmallerTooMuch { given, smaller: smaller.to_owned(), pair: self });
        }
        Ok(whole + rest / f64::from(self.in_one()))
    }
}

/// Reads a number with a point or a comma, or with a fraction: `4.2`, `4,2`, `4½`, `4 1/2`. A sign is allowed, an
/// exponent is not.
///
/// A point or comma is a decimal one, unless it may part thousands: behind one to three digits, of which the first is
/// no 0, and before exactly three. That is asked back. A point before three digits of which the last is no 0 is a
/// decimal one still: a scale that reads grams writes `4.125`, and so does the app.
///
/// # Errors
/// The text is empty, has two points, may be thousands, or has anything else but digits and a fraction.
///
/// ```
/// use yeanling_core::units::{TypedError, parse_number};
/// assert_eq!(parse_number("4,2"), Ok(4.2));
/// assert_eq!(parse_number("4½"), Ok(4.5));
/// assert_eq!(parse_number("4..2"), Err(TypedError::TwoPoints { given: "4..2".into() }));
/// assert!(matches!(parse_number("1,000"), Err(TypedError::TwoWays { .. })));
/// ```
pub fn parse_number(text: &str) -> Result<f64, TypedError> {
    let text = text.trim();
    let given = || text.to_owned();
    let no_number = || TypedError::NotANumber { given: given() };
    if text.is_empty() {
        return Err(TypedError::Empty);
    }
    let (is_minus, digits) = unsigned(text);
    let sign = if is_minus { -1.0 } else { 1.0 };
    if digits.contains(is_of_a_fraction) {
        return with_fraction(digits).map(|number| sign * number).ok_or_else(no_number);
    }
    if digits.chars().any(|c| !c.is_ascii_digit() && !is_point(c))
        || !digits.contains(|c: char| c.is_ascii_digit())
    {
        return Err(no_number());
    }
    if digits.matches(is_point).count() > 1 {
        return Err(TypedError::TwoPoints { given: given() });
    }
    if let Some((decimal, thousands)) = two_ways(digits) {
        let with_sign = |number: String| if is_minus { format!("-{number}") } else { number };
        return Err(TypedError::TwoWays {
            given: given(),
            decimal: with_sign(decimal),
            thousands: with_sign(thousands),
        });
    }
    digits.replace(',', ".").parse::<f64>().map(|number| sign * number).map_err(|_| no_number())
}

/// Returns whether a number has a minus before it, and the number without its sign.
fn unsigned(text: &str) -> (bool, &str) {
    match text.strip_prefix(['-', '\u{2212}']) {
        Some(digits) => (true, digits),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    }
}

const fn is_point(c: char) -> bool {
    matches!(c, '.' | ',')
}

/// Returns a number that may be thousands in both of its ways: `1,250` is 1.25 and 1250.
fn two_ways(digits: &str) -> Option<(String, String)> {
    let (before, after) = digits.split_once(is_point)?;
    let may_group = (1..=3).contains(&before.len()) && !before.starts_with('0') && after.len() == 3;
    let by_grams = digits.contains('.') && !after.ends_with('0');
    if !may_group || by_grams {
        return None;
    }
    let decimals = after.trim_end_matches('0');
    let decimal = if decimals.is_empty() { before.to_owned() } else { format!("{before}.{decimals}") };
    Some((decimal, format!("{before}{after}")))
}

/// The fractions that have a sign of their own, and what they come to.
const SIGNS: [(char, u8, u8); 9] = [
    ('½', 1, 2),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
];

/// What a ruler, a scale or a spoon is divided into.
const PARTS: [u8; 5] = [2, 3, 4, 8, 16];

fn is_of_a_fraction(c: char) -> bool {
    c == '/' || SIGNS.iter().any(|(sign, ..)| *sign == c)
}

/// Reads a number that ends in a fraction: `½`, `4½`, `4 ½`, `1/2`, `4 1/2`. What stands before it is whole.
fn with_fraction(digits: &str) -> Option<f64> {
    let (whole, over, under) = match SIGNS.iter().find(|(sign, ..)| digits.ends_with(*sign)) {
        Some((sign, over, under)) => (digits.strip_suffix(*sign)?, *over, *under),
        None => {
            let (before, under) = digits.split_once('/')?;
            let (whole, over) = before.rsplit_once(char::is_whitespace).unwrap_or(("", before));
            (whole, digit(over)?, digit(under)?)
        }
    };
    let whole = match whole.trim_end() {
        "" => 0.0,
        whole if whole.chars().all(|c| c.is_ascii_digit()) => whole.parse::<f64>().ok()?,
        _ => return None,
    };
    let is_part = over > 0 && over < under && PARTS.contains(&under);
    is_part.then(|| whole + f64::from(over) / f64::from(under))
}

/// Reads the number over or under a stroke: digits alone.
fn digit(text: &str) -> Option<u8> {
    text.chars().all(|c| c.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

/// Splits `9 lb 4 oz` into its numbers and their units, the units in small letters without spaces or stops.
pub(super) fn split_units(text: &str) -> Result<Vec<(String, String)>, TypedError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(TypedError::Empty);
    }
    let no_number = || TypedError::NotANumber { given: text.to_owned() };
    let mut parts: Vec<(String, String)> = Vec::new();
    let mut after_gap = false;
    for (at, c) in text.char_indices() {
        let numeric = c.is_ascii_digit()
            || matches!(c, '.' | ',' | '-' | '+' | '\u{2212}')
            || (c != '/' && is_of_a_fraction(c));
        match parts.last_mut() {
            _ if c.is_whitespace() => {}
            // The stroke of "1/2"; that of "m/s" stands in a unit.
            Some((number, unit)) if c == '/' && unit.is_empty() && !after_gap => number.push(c),
            Some((_, unit)) if !numeric || (c == '.' && !unit.is_empty()) => {
                if c != '.' {
                    unit.extend(c.to_lowercase());
                }
            }
            Some((number, unit)) if unit.is_empty() && after_gap => {
                // "4 2" may be 4.2, 42 or two weights: nobody can tell. "4 1/2" and "4 ½" are plain.
                if !begins_a_fraction(&text[at..]) {
                    return Err(no_number());
                }
                number.push(' ');
                number.push(c);
            }
            Some((number, unit)) if unit.is_empty() => number.push(c),
            None if !numeric => return Err(no_number()),
            _ => parts.push((c.to_string(), String::new())),
        }
        after_gap = c.is_whitespace();
    }
    Ok(parts)
}

/// Says whether a text begins with `½` or `1/2`.
fn begins_a_fraction(text: &str) -> bool {
    text.trim_start_matches(|c: char| c.is_ascii_digit()).starts_with(is_of_a_fraction)
}
