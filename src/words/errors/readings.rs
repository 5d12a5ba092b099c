//! What is wrong with a reading: of a refractometer, of a laboratory.

use yeanling_core::units::{Brix, OutOfBounds, Strength};

use super::sayable;
use crate::common::number;

/// Returns what is wrong with a Brix reading, and what may have been meant.
pub fn brix(error: &OutOfBounds<Brix>) -> String {
    let allowed = "Enter 0% to 40%.";
    let given = error.given.as_percent();
    if !sayable(given) {
        return format!("That is not a Brix reading. {allowed}");
    }
    let said = format!("{}% is out of range. {allowed}", number(given, 1));
    // A lost point: 265 for 26.5.
    let meant = given / 10.0;
    if (10.0..=40.0).contains(&meant) { format!("{said} Did you mean {}?", number(meant, 1)) } else { said }
}

/// Returns what is wrong with antibody in a liter, of colostrum or of serum.
pub fn antibody(error: &OutOfBounds<Strength>) -> String {
    let (least, most) = (error.allowed.least, error.allowed.most);
    let allowed = format!(
        "Enter {} to {} g/L.",
        number(least.as_grams_per_liter(), 0),
        number(most.as_grams_per_liter(), 0)
    );
    let given = error.given.as_grams_per_liter();
    if sayable(given) {
        format!("{} g/L is out of range. {allowed} If the lab gives mg/dL, divide by 100.", number(given, 2))
    } else {
        format!("That is not a number of grams. {allowed}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::passive_transfer::reading;
    use yeanling_core::reckon::quality;
    use yeanling_core::units::TimeDelta;

    #[track_caller]
    fn wrong_brix(percent: f64, expected: &str) {
        let error = quality::reading(Brix::from_percent(percent)).expect_err("out of bounds");
        assert_eq!(brix(&error), expected);
    }

    #[test]
    fn a_brix_of_265_asks_for_its_point() {
        let allowed = "Enter 0% to 40%.";
        wrong_brix(265.0, &format!("265% is out of range. {allowed} Did you mean 26.5?"));
        wrong_brix(-2.0, &format!("-2% is out of range. {allowed}"));
        wrong_brix(f64::NAN, &format!("That is not a Brix reading. {allowed}"));
    }

    #[test]
    fn serum_in_milligrams_is_told_how_to_be_divided() {
        let error =
            reading(Strength::from_grams_per_liter(1500.0), TimeDelta::hours(24)).expect_err("too much");
        assert_eq!(
            antibody(&error),
            "1500 g/L is out of range. Enter 0 to 100 g/L. If the lab gives mg/dL, divide by 100."
        );
    }
}
