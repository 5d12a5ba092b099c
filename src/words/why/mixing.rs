//! Why this much powder and this much water.

use yeanling_core::reckon::mixing::{Mix, SOURCES};
use yeanling_core::units::System;

use super::{Why, cited, general};
use crate::common::{number, volume_as_given};
use crate::settings::rate;

/// Heads the answer.
pub const MIXING: &str = "Mixing";

/// Returns why this much powder and water make the mix.
pub fn mixing(mix: &Mix, system: System) -> Why {
    let exact = |volume| {
        let metric = volume_as_given(volume, System::Metric);
        match system {
            System::Metric => metric,
            System::Us => format!("{} ({metric})", volume_as_given(volume, System::Us)),
        }
    };
    let (grams, ounces) =
        (number(mix.powder.as_kilograms() * 1000.0, 0), number(mix.powder.as_pounds() * 16.0, 1));
    let powder = match system {
        System::Metric => format!("{grams} g"),
        System::Us => format!("{ounces} oz ({grams} g)"),
    };
    let mut caution = vec![
        "The label’s own rate comes first. Weigh the powder.".to_owned(),
        "Never water of 45 °C (113 °F) or more.".to_owned(),
        "Lamb milk replacer: 30% fat, at least 24% protein. Never calf milk replacer.".to_owned(),
    ];
    caution.extend(general());
    Why {
        heading: MIXING.to_owned(),
        working: vec![
            format!("{} at {}: {powder} of powder", exact(mix.finished), rate(mix.rate, system)),
            format!("Made up with {} of water", exact(mix.water)),
            format!(
                "Added to {} of water, it would be only {} g/L",
                exact(mix.finished),
                number(mix.if_added.as_grams_per_liter(), 0)
            ),
        ],
        rule: "Powder is made up to the volume, never added to it.".to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::mixing::{MIX, sample_to};
    use yeanling_core::units::Volume;

    #[track_caller]
    fn check(system: System, working: [&str; 3]) {
        let mix = sample_to(Volume::from_milliliters(1000.0), MIX).expect("in bounds");
        assert_eq!(mixing(&mix, system).working, working);
    }

    #[test]
    fn the_weak_mix_is_shown() {
        check(
            System::Metric,
            [
                "1000 ml at 200 g/L: 200 g of powder",
                "Made up with 800 ml of water",
                "Added to 1000 ml of water, it would be only 167 g/L",
            ],
        );
        check(
            System::Us,
            [
                "33.81 fl oz (1000 ml) at 26.7 oz/gal (200 g/L): 7.1 oz (200 g) of powder",
                "Made up with 27.05 fl oz (800 ml) of water",
                "Added to 33.81 fl oz (1000 ml) of water, it would be only 167 g/L",
            ],
        );
    }
}
