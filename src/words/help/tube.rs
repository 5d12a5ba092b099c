//! How to feed a lamb by tube: first when not to, then how much, then step by step.

use yeanling_core::reckon::tube::AT_MOST;
use yeanling_core::units::{Mass, System};

use crate::common::{mass, volume};

/// The page's name.
pub const TITLE: &str = "How to tube";
/// Heads what must hold first.
pub const FIRST: &str = "Do not tube unless all of this is true";
/// Heads how much it gets.
pub const HOW_MUCH: &str = "How much at once";
/// Heads the steps.
pub const STEPS_TITLE: &str = "How";

/// What must not be done, before anything else.
pub const NEVER: [&str; 3] = [
    "Cold, limp, not swallowing, drooling or with a swollen belly: *nothing by tube*. Milk in the lungs kills. Call your vet.",
    "Never force the tube, and never push the plunger.",
    "Never do your first one alone: have someone show you on a live lamb.",
];

/// What must hold, all of it.
pub const ONLY_IF: [&str; 5] = [
    "Its temperature, measured, is 37 °C (98.6 °F) or more.",
    "It is awake and holds its head up.",
    "It swallows: a finger in its mouth shows it.",
    "It does not drool, and its belly is not swollen.",
    "The feed is no more than its weight allows.",
];

/// The steps, in order.
pub const STEPS: [&str; 9] = [
    "Wash your hands. Take a clean tube, 40 to 46 cm (16 to 18 in) long. Take a clean 60 ml (2 fl oz) syringe.",
    "Warm the colostrum to 39 °C (102 °F) in warm water, never in a microwave.",
    "Sit down with the lamb on your lap, its head level and not bent back.",
    "Lay the tube along it, from nose to last rib, and mark it there.",
    "Wet the tube. Slide it in at the side of the mouth, over the tongue. Let the lamb swallow it down to the mark.",
    "Feel the neck: the tube lies beside the windpipe, two pipes under your fingers. Only one, or it coughs: take it out.",
    "Join the syringe without its plunger and hold it up. The milk runs in by itself: 60 ml (2 fl oz) in 20 to 25 seconds.",
    "It fights, drools, or its belly swells: stop. Pinch the tube shut and take it out. When the feed is in: the same.",
    "Note the feed. Wash and disinfect tube and syringe before the next lamb.",
];

/// Who says so.
pub const SOURCE: &str =
    "Henderson; Cornell; AHDB; US extension. Lap, wetting and pinching: common practice, no source.";

/// Returns the most at once for lambs of common weights, by the published figure.
pub fn most(system: System) -> Vec<String> {
    let line = |kilograms: f64| {
        let weight = Mass::from_kilograms(kilograms);
        format!("*{}*: {}", mass(weight, system), volume(AT_MOST.of(weight), system))
    };
    [2.0, 3.0, 4.0, 5.0].map(line).to_vec()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_must_not_be_done_and_how_the_tube_is_checked_are_told() {
        // Source: Henderson; Cornell; US extension: 40 to 46 cm, nose to last rib, 60 ml over 20 to 25 s. AHDB: no milk for a
        // lamb that drools.
        let told = [&NEVER[..], &ONLY_IF[..], &STEPS[..]].concat().join(" ");
        for part in [
            "37 °C (98.6 °F)",
            "swallows",
            "drools",
            "40 to 46 cm",
            "nose to last rib",
            "60 ml",
            "beside the windpipe",
        ] {
            assert!(told.contains(part), "{part}");
        }
        // Source: AHDB: 250 ml for a lamb of 5.0 kg.
        assert!(most(System::Metric).iter().any(|line| line.contains("250") && line.contains('5')));
    }
}
