//! What is wrong with the weather that was given.

use yeanling_core::reckon::chill::NoIndex;
use yeanling_core::units::{OutOfBounds, Speed, System};

use super::sayable;
use crate::common::{number, rain, temperature, wind};

/// Returns why there is no chill index, and what to do instead.
pub fn no_index(error: &NoIndex, system: System) -> String {
    match error {
        NoIndex::Indoors => {
            "For outdoors only. Indoors go by the air: wet lambs can chill at 15 °C (59 °F) and below."
                .to_owned()
        }
        NoIndex::Temperature(error) => {
            let (least, most) = (error.allowed.least, error.allowed.most);
            let allowed = format!("Enter {} to {}.", temperature(least, system), temperature(most, system));
            if !sayable(error.given.as_celsius()) {
                return format!("That is not a temperature. {allowed}");
            }
            format!("{} is out of range. {allowed}", temperature(error.given, system))
        }
        NoIndex::Wind(error) => no_wind(error, system),
        NoIndex::Rain(error) => {
            let most = rain(error.allowed.most, system);
            let allowed = format!("Enter 0 to {most} a day.");
            if sayable(error.given.as_millimeters()) {
                format!("{} of rain a day is out of range. {allowed}", rain(error.given, system))
            } else {
                format!("That is not an amount of rain. {allowed}")
            }
        }
    }
}

fn no_wind(error: &OutOfBounds<Speed>, system: System) -> String {
    let allowed = format!("Enter 0 to {}.", wind(error.allowed.most, system));
    let given = error.given.as_meters_per_second();
    if !sayable(given) {
        return format!("That is not a wind speed. {allowed}");
    }
    let said = format!("{} is out of range. {allowed}", wind(error.given, system));
    // Forecasts give kilometers an hour, and the index wants meters a second.
    let meant = Speed::from_kilometers_per_hour(given);
    match system {
        System::Metric if given > 0.0 && error.allowed.check(meant).is_ok() => {
            format!("{said} Did you mean {} km/h?", number(given, 1))
        }
        System::Metric | System::Us => said,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::chill::chill;
    use yeanling_core::settings::{ChillLimit, Housing};
    use yeanling_core::units::{Rain, Temperature};

    #[track_caller]
    fn check(celsius: f64, meters: f64, millimeters: f64, housing: Housing, expected: &str) {
        let air = Temperature::from_celsius(celsius);
        let (wind, rain) = (Speed::from_meters_per_second(meters), Rain::from_millimeters(millimeters));
        let error = chill(air, wind, rain, housing, ChillLimit::default()).expect_err("refused");
        assert_eq!(no_index(&error, System::Metric), expected);
    }

    #[test]
    fn weather_that_is_none_says_what_is_allowed() {
        let out = Housing::Outdoors;
        let wind = "Enter 0 to 40 m/s.";
        check(5.0, -2.0, 0.0, out, &format!("-2 m/s is out of range. {wind}"));
        check(5.0, 60.0, 0.0, out, &format!("60 m/s is out of range. {wind} Did you mean 60 km/h?"));
        check(5.0, 1e9, 0.0, out, &format!("That is not a wind speed. {wind}"));
        check(5.0, 2.0, -1.0, out, "-1 mm of rain a day is out of range. Enter 0 to 300 mm a day.");
        check(50.0, 2.0, 0.0, out, "50.0 °C is out of range. Enter -30.0 °C to 40.0 °C.");
    }

    #[test]
    fn indoors_the_index_sends_to_the_wet_lambs() {
        check(
            5.0,
            2.0,
            0.0,
            Housing::Housed,
            "For outdoors only. Indoors go by the air: wet lambs can chill at 15 °C (59 °F) and below.",
        );
    }
}
