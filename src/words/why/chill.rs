//! Why tonight's weather does or does not chill lambs.

use yeanling_core::reckon::chill::{Chill, Indoors, SOURCES, Verdict, limit_of, source};
use yeanling_core::settings::ChillLimit;
use yeanling_core::units::System;

use super::{Why, cited, general, source_line};
use crate::chill::{advice, indoors as under_roof, verdict};
use crate::common::{number, rain, temperature_both, wind};

/// Returns why this weather comes to its verdict.
pub fn chill(chill: &Chill, system: System) -> Why {
    let inputs = format!(
        "Air {}, wind {} at lamb height, rain {} in the day",
        temperature_both(chill.air, system),
        wind(chill.wind, system),
        rain(chill.rain, system)
    );
    let formula = format!(
        "(11.7 + 3.1 × √{}) × (40 − {}) + 481 + 418 × (1 − e^(−0.04 × {})) = {} kJ/m²/h",
        number(chill.wind.as_meters_per_second(), 2),
        number(chill.air.as_celsius(), 1),
        number(chill.rain.as_millimeters(), 1),
        number(chill.index.as_kilojoules(), 1)
    );
    let other = match chill.limit {
        ChillLimit::Victoria1000 => ChillLimit::Murdoch1100,
        ChillLimit::Murdoch1100 => ChillLimit::Victoria1000,
    };
    let over = if chill.index > limit_of(other) { "over" } else { "not over" };
    Why {
        heading: "Chill".to_owned(),
        working: vec![inputs, formula, verdict(chill), advice(chill.verdict).to_owned()],
        rule: "The index adds up the heat lost to air, wind and rain, outdoors. Wind is at the height of a lamb (40 cm, 16 in): \
               less than a forecast’s."
            .to_owned(),
        sources: cited(SOURCES),
        others: vec![format!("{}: it is {over} this limit", source_line(&source(other)))],
        caution: general(),
    }
}

/// Returns what stands behind the answer under a roof.
pub fn indoors(air: &Indoors, system: System) -> Why {
    Why {
        heading: "Cold indoors".to_owned(),
        working: vec![
            under_roof(air, system),
            "Wet adds 3.8 to 7.0 W/kg; a lamb makes 19.8 W/kg at most".to_owned(),
            advice(Verdict::Usual).to_owned(),
        ],
        rule:
            "A wet lamb can chill at 15 °C (59 °F) and below; a dry newborn makes heat below 29 °C (84 °F)."
                .to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution: general(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::chill as reckon;
    use yeanling_core::settings::Housing;
    use yeanling_core::units::{Rain, Speed, Temperature};

    #[test]
    fn the_formula_is_filled_in() {
        let (wind, rain) = (Speed::from_meters_per_second(5.0), Rain::from_millimeters(10.0));
        let air = Temperature::from_celsius(5.0);
        let limit = ChillLimit::Victoria1000;
        let night = reckon::chill(air, wind, rain, Housing::Outdoors, limit).expect("in bounds");
        let why = chill(&night, System::Us);
        assert_eq!(
            why.working[0],
            "Air 41.0 °F (5.0 °C), wind 11.2 mph at lamb height, rain 0.39 in in the day"
        );
        assert_eq!(
            why.working[1],
            "(11.7 + 3.1 × √5) × (40 − 5) + 481 + 418 × (1 − e^(−0.04 × 10)) = 1270.9 kJ/m²/h"
        );
        assert!(why.others[0].ends_with("it is over this limit"), "{:?}", why.others);
        assert!(why.sources[0].ends_with("(unconfirmed)"));
    }

    #[test]
    fn under_a_roof_the_wet_lamb_is_named() {
        let air = reckon::indoors(Temperature::from_celsius(12.0)).expect("in bounds");
        assert!(indoors(&air, System::Metric).working[0].contains("a wet lamb can chill"));
    }
}
