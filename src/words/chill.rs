//! Whether the weather chills lambs.

use yeanling_core::reckon::chill::{AtRisk, Chill, Indoors, Verdict};
use yeanling_core::units::System;

use super::common::{mass, number, temperature_both};
use super::settings::chill_limit;

/// Asks where the lambs are.
pub const WHERE: &str = "The lambs are";
/// Labels the air.
pub const AIR: &str = "Air";
/// Helps with the air.
pub const AIR_HINT: &str = "The night’s mean.";
/// Labels the wind.
pub const WIND: &str = "Wind";
/// Helps with the wind.
pub const WIND_HINT: &str = "At lamb height: less than the forecast says. You can type 15 km/h or 9 mph.";
/// Labels the rain.
pub const RAIN: &str = "Rain in the day";
/// Helps with the rain.
pub const RAIN_HINT: &str = "0 if it stays dry.";
/// What to type first.
pub const TYPE_ALL: &str = "Enter all three to see the verdict.";
/// Labels the index.
pub const INDEX: &str = "Chill index, outdoors";
/// The unit of the index.
pub const INDEX_UNIT: &str = "kJ/m²/h";
/// Heads the lambs at most risk.
pub const MOST_AT_RISK: &str = "Most at risk first";

/// Returns the verdict with its index and whose limit it was: "High risk: 1271 kJ/m²/h, over …".
pub fn verdict(chill: &Chill) -> String {
    let index = number(chill.index.as_kilojoules(), 0);
    let limit = chill_limit(chill.limit).0;
    match chill.verdict {
        Verdict::HighRisk => {
            format!("High risk for lambs: {index} {INDEX_UNIT} is over the limit ({limit}).")
        }
        Verdict::Usual => format!("Usual risk: {index} {INDEX_UNIT} is not over the limit ({limit})."),
    }
}

/// Returns what to do tonight.
pub const fn advice(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::HighRisk => "Bring in or shelter wet lambs, newborns, small lambs and big litters first.",
        Verdict::Usual => "Still check wet lambs, newborns and small lambs.",
    }
}

/// Returns what the air means under a roof.
pub fn indoors(indoors: &Indoors, system: System) -> String {
    let air = temperature_both(indoors.air, system);
    if indoors.wet_can_chill {
        format!("At {air} a wet lamb can chill under a roof too. Rub it dry.")
    } else if indoors.dry_makes_heat {
        format!("At {air} a dry newborn keeps warm if it is fed.")
    } else {
        format!("At {air} a dry newborn keeps warm without effort.")
    }
}

/// Returns why a lamb is at more risk than others.
pub fn at_risk(reason: AtRisk, system: System) -> String {
    match reason {
        AtRisk::Wet => "It is wet.".to_owned(),
        AtRisk::Newborn => "It is under a day old.".to_owned(),
        AtRisk::Light => {
            let under = yeanling_core::reckon::birth_weight::WATCH_UNDER;
            format!("It is under {}.", mass(under, system))
        }
        AtRisk::OneOfSeveral => "It is from a big litter.".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::chill;
    use yeanling_core::settings::{ChillLimit, Housing};
    use yeanling_core::units::{Rain, Speed, Temperature};

    fn outdoors(celsius: f64, meters: f64, millimeters: f64) -> Chill {
        let air = Temperature::from_celsius(celsius);
        let (wind, rain) = (Speed::from_meters_per_second(meters), Rain::from_millimeters(millimeters));
        chill::chill(air, wind, rain, Housing::Outdoors, ChillLimit::default()).expect("in bounds")
    }

    #[test]
    fn a_verdict_says_the_index_and_whose_limit() {
        let limit = "the limit (Agriculture Victoria, 1000)";
        let high = format!("High risk for lambs: 1271 kJ/m²/h is over {limit}.");
        assert_eq!(verdict(&outdoors(5.0, 5.0, 10.0)), high);
        let usual = format!("Usual risk: 715 kJ/m²/h is not over {limit}.");
        assert_eq!(verdict(&outdoors(20.0, 0.0, 0.0)), usual);
    }

    #[test]
    fn under_a_roof_the_air_decides() {
        let says = |celsius| {
            indoors(&chill::indoors(Temperature::from_celsius(celsius)).expect("in bounds"), System::Metric)
        };
        assert_eq!(says(12.0), "At 12.0 °C (53.6 °F) a wet lamb can chill under a roof too. Rub it dry.");
        assert_eq!(says(20.0), "At 20.0 °C (68.0 °F) a dry newborn keeps warm if it is fed.");
        assert_eq!(says(30.0), "At 30.0 °C (86.0 °F) a dry newborn keeps warm without effort.");
    }

    #[test]
    fn a_light_lamb_is_told_in_the_farms_units() {
        assert_eq!(at_risk(AtRisk::Light, System::Metric), "It is under 3.0 kg.");
        assert_eq!(at_risk(AtRisk::Light, System::Us), "It is under 6.6 lb.");
    }
}
