//! What is wrong with the weather that was given.

use yeanling_core::reckon::chill::NoIndex;
use yeanling_core::units::{OutOfBounds, Speed, System};

use super::sayable;
use crate::common::{number, rain, temperature, wind};

/// Returns why there is no chill index, and what to do instead.
pub fn no_index(error: &NoIndex, system: System) -> String {
    match error {
        NoIndex::Indoors => {
            "This holds outdoors only. Under a roof go by the air: wet lambs can chill at 15 °C (59 °F) and below."
                .to_owned()
        }
        NoIndex::Temperature(error) => {
            let (least, most) = (error.allowed.least, error.allowed.most);
            let allowed =
                format!("Between {} and {} is allowed.", temperature(least, system), temperature(most, system));
            if !sayable(error.given.as_celsius()) {
                return format!("That is not a temperature. {allowed}");
            }
            format!("{} is no weather to lamb in. {allowed}", temperature(error.given, system))
        }
        NoIndex::Wind(error) => no_wind(error, system),
        NoIndex::Rain(error) => {
            let most = rain(error.allowed.most, system);
            let allowed = format!("Between 0 and {most} in a day is allowed.");
            if sayable(error.given.as_millimeters()) {
                format!("{} cannot be a day’s rain. {allowed}", rain(error.given, system))
            } else {
                format!("That is not rain. {allowed}")
            }
        }
    }
}

fn no_wind(error: &OutOfBounds<Speed>, system: System) -> String {
    let allowed = format!("Between 0 and {} is allowed.", wind(error.allowed.most, system));
    let given = error.given.as_meters_per_second();
    if !sayable(given) {
        return format!("That is not a wind. {allowed}");
    }
    let said = format!("{} cannot be a wind. {allowed}", wind(error.given, system));
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
    use yeanling_core::practice::{ChillLimit, Housing};
    use yeanling_core::reckon::chill::chill;
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
        let wind = "Between 0 and 40 m/s is allowed.";
        check(5.0, -2.0, 0.0, out, &format!("-2 m/s cannot be a wind. {wind}"));
        check(5.0, 60.0, 0.0, out, &format!("60 m/s cannot be a wind. {wind} Did you mean 60 km/h?"));
        check(5.0, 1e9, 0.0, out, &format!("That is not a wind. {wind}"));
        check(5.0, 2.0, -1.0, out, "-1 mm cannot be a day’s rain. Between 0 and 300 mm in a day is allowed.");
        check(
            50.0,
            2.0,
            0.0,
            out,
            "50.0 °C is no weather to lamb in. Between -30.0 °C and 40.0 °C is allowed.",
        );
    }

    #[test]
    fn indoors_the_index_sends_to_the_wet_lambs() {
        check(
            5.0,
            2.0,
            0.0,
            Housing::Housed,
            "This holds outdoors only. Under a roof go by the air: wet lambs can chill at 15 °C (59 °F) and below.",
        );
    }
}
