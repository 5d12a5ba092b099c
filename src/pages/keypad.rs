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
    /// The larger of two units: what follows is of the smaller.
    Larger,
    /// Takes the last sign back.
    Backspace,
}

impl Keypad {
    /// Returns what a key does.
    #[must_use]
    pub fn presses(&self, press: KeyPress) -> Action {
        // To take a digit back is to go on with what stands there.
        let stood = if self.anew && press != KeyPress::Backspace { "" } else { &self.value };
        Action::Type(self.types.clone(), self.typed(stood, press))
    }

    /// Returns what stands there after a key: at most one point a number and `most` digits and points; a nought in front gives
    /// way. Of two units the larger is whole.
    fn typed(&self, before: &str, press: KeyPress) -> String {
        let sign = self.larger.map(|larger| format!(" {larger} "));
        let part = sign.as_deref().and_then(|sign| before.split_once(sign));
        // The number that is being typed.
        let number = part.map_or(before, |(_, smaller)| smaller);
        let is_full =
            before.chars().filter(|sign| sign.is_ascii_digit() || *sign == '.').count() >= self.most;
        let mut after = before.to_owned();
        match press {
            KeyPress::Backspace => match part {
                Some((larger, "")) => larger.clone_into(&mut after),
                Some(_) | None => _ = after.pop(),
            },
            KeyPress::Larger => {
                let is_whole = !number.is_empty() && !number.contains('.');
                let sign = sign.as_deref().filter(|_| part.is_none() && is_whole);
                after.push_str(sign.unwrap_or_default());
            }
            KeyPress::Point if !self.point || number.contains('.') || is_full => {}
            KeyPress::Point if number.is_empty() => after.push_str("0."),
            KeyPress::Point => after.push('.'),
            KeyPress::Digit(digit) if number == "0" => {
                after.pop();
                after.push(digit);
            }
            KeyPress::Digit(_) if is_full => {}
            KeyPress::Digit(digit) => after.push(digit),
        }
        after
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(keys: &str, expected: &str) {
        let keypad = Keypad { point: true, larger: Some("lb"), most: 5, ..Keypad::default() };
        let typed = keys.chars().fold(String::new(), |before, key| {
            let press = match key {
                '<' => KeyPress::Backspace,
                '.' => KeyPress::Point,
                'l' => KeyPress::Larger,
                digit => KeyPress::Digit(digit),
            };
            keypad.typed(&before, press)
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

    #[test]
    fn pounds_and_ounces_are_two_numbers_of_which_the_first_is_whole() {
        check("8l4", "8 lb 4");
        check("8l04", "8 lb 4");
        check("8l.5", "8 lb 0.5");
        check("8ll4", "8 lb 4");
        check("8.2l5", "8.25");
        check("l8", "8");
    }

    #[test]
    fn backspace_takes_a_unit_back_as_one_sign() {
        check("8l4<", "8 lb ");
        check("8l4<<5", "85");
    }
}
