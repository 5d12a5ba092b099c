//! What the keys of the number pad do to what stands there.

use crate::Action;
use crate::block::Keypad;

/// A key of the number pad.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeyPress {
    /// A digit.
    Digit(char),
    /// The point.
    Point,
    /// Takes the last sign back.
    Backspace,
}

impl Keypad {
    /// Returns what a key does.
    #[must_use]
    pub fn presses(&self, press: KeyPress) -> Action {
        // To take a digit back is to go on with what stands there.
        let stood = if self.anew && press != KeyPress::Backspace { "" } else { &self.value };
        Action::Type(self.types.clone(), typed(stood, press, self.point, self.most))
    }
}

/// Returns what stands there after a key: at most one point and `most` signs; a nought in front gives way.
fn typed(before: &str, press: KeyPress, with_point: bool, most: usize) -> String {
    let mut after = before.to_owned();
    match press {
        KeyPress::Backspace => {
            after.pop();
        }
        KeyPress::Point if !with_point || before.contains('.') || before.len() >= most => {}
        KeyPress::Point if before.is_empty() => after.push_str("0."),
        KeyPress::Point => after.push('.'),
        KeyPress::Digit(digit) if before == "0" => after = digit.to_string(),
        KeyPress::Digit(_) if before.len() >= most => {}
        KeyPress::Digit(digit) => after.push(digit),
    }
    after
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(keys: &str, expected: &str) {
        let typed = keys.chars().fold(String::new(), |before, key| {
            let press = match key {
                '<' => KeyPress::Backspace,
                '.' => KeyPress::Point,
                digit => KeyPress::Digit(digit),
            };
            typed(&before, press, true, 5)
        });
        assert_eq!(typed, expected);
    }

    #[test]
    fn digits_and_one_point_make_a_number() {
        check("4.2", "4.2");
        check("4.2.5", "4.25");
    }

    #[test]
    fn a_point_first_means_nought_point() {
        check(".5", "0.5");
    }

    #[test]
    fn a_nought_in_front_gives_way() {
        check("04", "4");
    }

    #[test]
    fn backspace_takes_back_one_sign_and_stops_at_nothing() {
        check("4.<<<<7", "7");
    }

    #[test]
    fn no_more_signs_than_allowed() {
        check("1234567", "12345");
    }
}
