//! What is wrong with an amount of powder, or with the farm's own limit for rings.

use yeanling_core::reckon::mixing::NoMix;
use yeanling_core::reckon::powder::NoPlan;
use yeanling_core::settings::RingDaysError;
use yeanling_core::units::{OutOfBounds, Strength, System};

use super::sayable;
use crate::common::{mass, number, volume_as_given};

/// Returns what is wrong with a label's rate.
pub fn powder_rate(error: &OutOfBounds<Strength>) -> String {
    let allowed = "Enter 100 to 300 g/L. Look on the label for grams in a liter of mix.";
    let given = error.given.as_grams_per_liter();
    if sayable(given) {
        format!("{} g/L is out of range. {allowed}", number(given, 1))
    } else {
        format!("That is not a rate. {allowed}")
    }
}

/// Returns why there is no mix.
pub fn no_mix(error: &NoMix, system: System) -> String {
    match error {
        NoMix::Rate(error) => powder_rate(error),
        NoMix::Finished(error) => {
            let (least, most) = (error.allowed.least, error.allowed.most);
            let allowed =
                format!("Enter {} to {}.", volume_as_given(least, system), volume_as_given(most, system));
            if sayable(error.given.as_milliliters()) {
                format!("{} is out of range for one round. {allowed}", volume_as_given(error.given, system))
            } else {
                format!("That is not a volume. {allowed}")
            }
        }
    }
}

/// Returns why there is no plan for powder.
pub fn no_plan(error: &NoPlan, system: System) -> String {
    match error {
        NoPlan::Lambs(error) => {
            let (least, most) = (error.allowed.least, error.allowed.most);
            format!("{} lambs is out of range. Enter {least} to {most}.", error.given)
        }
        NoPlan::Used(error) => {
            let most = mass(error.allowed.most, system);
            if sayable(error.given.as_kilograms()) {
                format!("{} of powder is out of range. Enter 0 to {most}.", mass(error.given, system))
            } else {
                format!("That is not a weight. Enter 0 to {most}.")
            }
        }
    }
}

/// Returns what is wrong with the farm's own limit for rings.
pub fn ring_days(error: &RingDaysError) -> String {
    let RingDaysError { given, least, most } = error;
    format!(
        "{given} days is out of range. Enter {least} to {most}: never on the first day, and no law listed here goes past 6 months."
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::{mixing, powder};
    use yeanling_core::settings::{PowderRule, RingRule, Rings};
    use yeanling_core::units::{Mass, Volume};

    #[test]
    fn a_rate_of_nothing_sends_to_the_label() {
        let rate = Strength::from_grams_per_liter(0.0);
        let error = mixing::sample_to(Volume::from_milliliters(500.0), rate).expect_err("no rate");
        assert_eq!(
            no_mix(&error, System::Metric),
            "0 g/L is out of range. Enter 100 to 300 g/L. Look on the label for grams in a liter of mix."
        );
        let error = mixing::sample_to(Volume::ZERO, mixing::MIX).expect_err("nothing");
        let said = "0 ml is out of range for one round. Enter 1 ml to 100000 ml.";
        assert_eq!(no_mix(&error, System::Metric), said);
    }

    #[test]
    fn a_plan_for_no_lambs_says_what_is_allowed() {
        let error = powder::plan(0, PowderRule::Ndsu, Mass::from_kilograms(0.0)).expect_err("no lambs");
        let said = "0 lambs is out of range. Enter 1 to 500.";
        assert_eq!(no_plan(&error, System::Metric), said);
        let error = powder::plan(3, PowderRule::Ndsu, Mass::from_kilograms(-1.0)).expect_err("no powder");
        assert_eq!(
            no_plan(&error, System::Metric),
            "-1.0 kg of powder is out of range. Enter 0 to 10000.0 kg."
        );
    }

    #[test]
    fn an_own_limit_of_one_day_is_refused() {
        let rings = Rings { rule: RingRule::Own { days: 1 }, tails: true, ram_lambs: false };
        assert_eq!(
            ring_days(&rings.checked().expect_err("too early")),
            "1 days is out of range. Enter 2 to 181: never on the first day, and no law \
             listed here goes past 6 months."
        );
    }
}
