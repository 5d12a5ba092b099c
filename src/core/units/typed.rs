//! What people type into a field, read as a number: comma or point, a unit behind it or none.

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
    /// The unit is none of this quantity's.
    #[error("{given:?} has a unit that does not fit")]
    OtherUnit {
        /// What was typed.
        given: String,
    },
}

/// Reads a decimal number with a point or a comma; a sign is allowed, an exponent and grouping are not.
///
/// # Errors
/// The text is empty, has two points, or anything else but digits.
///
/// ```
/// use yeanling_core::units::{TypedError, parse_number};
/// assert_eq!(parse_number("4,2"), Ok(4.2));
/// assert_eq!(parse_number("4..2"), Err(TypedError::TwoPoints { given: "4..2".into() }));
/// ```
pub fn parse_number(text: &str) -> Result<f64, TypedError> {
    let text = text.trim();
    let given = || text.to_owned();
    if text.is_empty() {
        return Err(TypedError::Empty);
    }
    let plain = text.replace(',', ".").replace('\u{2212}', "-");
    let digits = plain.strip_prefix(['-', '+']).unwrap_or(&plain);
    if digits.chars().any(|c| !c.is_ascii_digit() && c != '.') || !digits.chars().any(|c| c.is_ascii_digit())
    {
        return Err(TypedError::NotANumber { given: given() });
    }
    if digits.matches('.').count() > 1 {
        return Err(TypedError::TwoPoints { given: given() });
    }
    plain.parse().map_err(|_| TypedError::NotANumber { given: given() })
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
    for c in text.chars() {
        let numeric = c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+' | '\u{2212}');
        match parts.last_mut() {
            _ if c.is_whitespace() => {}
            Some((_, unit)) if !numeric || (c == '.' && !unit.is_empty()) => {
                if c != '.' {
                    unit.extend(c.to_lowercase());
                }
            }
            // "4 2" may be 4.2, 42 or two weights: nobody can tell.
            Some((_, unit)) if unit.is_empty() && after_gap => return Err(no_number()),
            Some((number, unit)) if unit.is_empty() => number.push(c),
            None if !numeric => return Err(no_number()),
            _ => parts.push((c.to_string(), String::new())),
        }
        after_gap = c.is_whitespace();
    }
    Ok(parts)
}
