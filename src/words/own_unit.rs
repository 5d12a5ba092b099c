//! Quantities in a line as a farm reads them. Of one told in both units the farm's own stands first: whoever writes a line writes "37 °C (98.6 °F)", and a farm in
//! US units reads "98.6 °F (37 °C)".

use std::borrow::Cow;

use yeanling_core::units::System;

/// The metric units that are told with a US one in brackets behind them.
const METRIC: [&str; 12] = ["°C", "ml/kg", "g/L", "ml", "kg", "g", "L", "m", "cm", "mm", "m/s", "km/h"];
/// The US units that are told so.
const US: [&str; 14] =
    ["°F", "fl oz/lb", "oz/gal", "oz/lb", "fl oz", "lb", "oz", "qt", "gal", "ft", "in", "mph", "pt", "in."];
/// What may stand between two numbers of a span.
const BETWEEN: [&str; 3] = ["to", "–", "or"];

/// Returns a text in which each quantity that is told in both units begins with the farm's own.
///
/// ```
/// use yeanling_core::units::System;
/// use yeanling_words::own_unit::first;
/// assert_eq!(first("Under 37 °C (98.6 °F): no milk.", System::Us), "Under 98.6 °F (37 °C): no milk.");
/// assert_eq!(first("Under 37 °C (98.6 °F): no milk.", System::Metric), "Under 37 °C (98.6 °F): no milk.");
/// ```
#[must_use]
pub fn first(text: &str, system: System) -> Cow<'_, str> {
    if system == System::Metric || !text.contains(" (") {
        return Cow::Borrowed(text);
    }
    let (mut done, mut rest) = (String::new(), text);
    while let Some((before, behind)) = rest.split_once(" (") {
        let Some((inside, after)) = behind.split_once(')') else { break };
        match own(before).filter(|_| is_quantity(inside, &US)) {
            Some(at) => {
                done.push_str(&before[..at]);
                done.push_str(inside);
                done.push_str(" (");
                done.push_str(&before[at..]);
                done.push(')');
            }
            None => {
                done.push_str(before);
                done.push_str(" (");
                done.push_str(inside);
                done.push(')');
            }
        }
        rest = after;
    }
    done.push_str(rest);
    Cow::Owned(done)
}

/// Returns the units that this farm reads first.
#[must_use]
pub fn farms() -> System {
    crate::time::system()
}

/// What is counted by the thousand, beside the units.
const COUNTED: [&str; 6] = ["ewes", "lambs", "entries", "lambings", "litters", "animals"];

/// Returns a text in which thousands are parted: with a comma on a farm in US units, "1,250 lb"; elsewhere, where a comma may be
/// read as a decimal one, by a thin space and only where there are five digits or more.
///
/// Only what has a unit, or is counted, is a number of things: a year, a tag and a telephone number stay as they are.
#[must_use]
pub fn parted(text: &str, system: System) -> Cow<'_, str> {
    let (least, sign) = match system {
        System::Us => (4, ','),
        System::Metric => (5, '\u{202f}'),
    };
    let runs: Vec<(usize, usize)> = runs(text).filter(|(from, to)| to - from >= least).collect();
    let counts = |to: usize| {
        let word = text[to..].strip_prefix([' ', '\u{a0}']).unwrap_or_default();
        let word = word.split([' ', '\u{a0}', '*', '/']).next().unwrap_or_default();
        let word = word.trim_end_matches(|c: char| !c.is_alphanumeric());
        word == "fl" || METRIC.contains(&word) || US.contains(&word) || COUNTED.contains(&word)
    };
    let runs: Vec<(usize, usize)> = runs.into_iter().filter(|(_, to)| counts(*to)).collect();
    if runs.is_empty() {
        return Cow::Borrowed(text);
    }
    let (mut done, mut at) = (String::new(), 0);
    for (from, to) in runs {
        done.push_str(&text[at..from]);
        for (place, digit) in text[from..to].chars().enumerate() {
            if place > 0 && (to - from - place) % 3 == 0 {
                done.push(sign);
            }
            done.push(digit);
        }
        at = to;
    }
    done.push_str(&text[at..]);
    Cow::Owned(done)
}

/// Returns where whole numbers begin and end: digits that belong to nothing longer.
fn runs(text: &str) -> impl Iterator<Item = (usize, usize)> {
    let joined = |side: Option<char>| {
        side.is_some_and(|side| side.is_alphanumeric() || ['.', ',', '-', '–', ':', '#', '+'].contains(&side))
    };
    let mut at = 0;
    std::iter::from_fn(move || {
        loop {
            let from = at + text.get(at..)?.find(|sign: char| sign.is_ascii_digit())?;
            let rest = &text[from..];
            let to = from + rest.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(rest.len());
            at = to;
            if !joined(text[..from].chars().next_back()) && !joined(text[to..].chars().next()) {
                return Some((from, to));
            }
        }
    })
}

/// Says whether a text is a quantity in one of these units, and nothing else.
fn is_quantity(text: &str, units: &[&str]) -> bool {
    own_in(text, units) == Some(0)
}

/// Returns where the metric quantity begins with which a text ends.
fn own(text: &str) -> Option<usize> {
    own_in(text, &METRIC)
}

/// Returns where the quantity in one of these units begins with which a text ends: "of 20 to 25 °C" has it behind "of ".
fn own_in(text: &str, units: &[&str]) -> Option<usize> {
    let ends =
        |unit: &&&str| text.strip_suffix(**unit).is_some_and(|number| number.ends_with([' ', '\u{a0}']));
    let unit = units.iter().filter(ends).max_by_key(|unit| unit.len())?;
    let numbers = text[..text.len() - unit.len()].trim_end_matches([' ', '\u{a0}']);
    let mut begins = None;
    let mut at = numbers.len();
    // Word by word from the end, as long as they are numbers, or stand between two.
    for word in numbers.rsplit(' ') {
        let start = at - word.len();
        if is_number(word) {
            begins = Some(start);
        } else if begins.is_none() || !BETWEEN.contains(&word) {
            break;
        }
        at = start.saturating_sub(1);
    }
    begins
}

/// Says whether a word is a number, or a span of two: "37", "−18", "39–40", "1,250".
fn is_number(word: &str) -> bool {
    let mut digits = 0;
    let fits = word.chars().all(|sign| {
        digits += usize::from(sign.is_ascii_digit());
        sign.is_ascii_digit() || ['.', ',', '–', '-', '−'].contains(&sign)
    });
    fits && digits > 0 && !word.ends_with([',', '.'])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, us: &str) {
        assert_eq!(first(text, System::Us), us);
        assert_eq!(first(text, System::Metric), text);
    }

    #[test]
    fn a_farm_in_us_units_reads_its_own_first() {
        check("Normal is 39 to 40 °C (102.2 to 104 °F).", "Normal is 102.2 to 104 °F (39 to 40 °C).");
        check("Fever is 40.6–41.7 °C (105–107 °F). (A)", "Fever is 105–107 °F (40.6–41.7 °C). (A)");
        check("SRUC, at −18 °C (0 °F)", "SRUC, at 0 °F (−18 °C)");
        check("up to 45 °C (113 °F); 60 °C (140 °F)", "up to 113 °F (45 °C); 140 °F (60 °C)");
        check("80 to 100 ml/kg (1.2 to 1.5 fl oz/lb) a day", "1.2 to 1.5 fl oz/lb (80 to 100 ml/kg) a day");
        check("37 days at 170 g (6 oz) a day", "37 days at 6 oz (170 g) a day");
    }

    #[test]
    fn a_thousand_of_something_is_parted_and_no_year_or_tag() {
        let us = |text| parted(text, System::Us).into_owned();
        assert_eq!(us("12500 lb of hay, 1250 ewes."), "12,500 lb of hay, 1,250 ewes.");
        assert_eq!(us("*4449 lambs* in 2026"), "*4,449 lambs* in 2026");
        for same in ["2026: 24 born", "UK 012345 00023", "+1 555 0100199", "999 lb", "0.1250 kg", "Ewe 1204"]
        {
            assert_eq!(us(same), same);
        }
        assert_eq!(parted("1250 ml", System::Metric), "1250 ml");
        assert_eq!(parted("12500 kg", System::Metric), "12\u{202f}500 kg");
    }

    #[test]
    fn what_is_no_pair_stays_as_it_is() {
        check("3.9 kg (twin)", "3.9 kg (twin)");
        check("6.6 fl oz (195 ml)", "6.6 fl oz (195 ml)");
        check("Kept (see 5 lb", "Kept (see 5 lb");
        check("from 2, 37 °C (98.6 °F)", "from 2, 98.6 °F (37 °C)");
    }
}
