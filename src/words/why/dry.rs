//! How much a scouring lamb drinks, and what a reading of ketones means.

use yeanling_core::reckon::illness::fluids::{self, Fluids};
use yeanling_core::reckon::illness::ketones::{
    self, CLINICAL_FROM, KETOTIC_FROM, METER_READS_HIGH_PERCENT, OTHERS_FROM, in_the_laboratory,
};
use yeanling_core::units::{Ketones, System};

use super::{Why, cited, converted, general, milk};
use crate::common::mass;
use crate::dry::{self, SCOURS};
use crate::help::illness::more;
use crate::illness::{LOW_PROVES_NOTHING, ketones as told};

/// Returns what stands behind the fluids of a lamb.
pub fn lamb_fluids(of: &Fluids, system: System) -> Why {
    let weight = mass(of.weight, System::Metric);
    let mut working: Vec<String> = converted(of.weight, system).into_iter().collect();
    working.extend([
        format!("Lost: {weight} × {}% = {}", of.percent, milk(of.deficit, system)),
        format!("Upkeep: 53 ml/kg × {weight} = {}", milk(of.upkeep, system)),
        format!("Together: {} in 24 h", milk(of.day, system)),
        format!("Each time at most 50 ml/kg × {weight} = {}", milk(of.at_once, system)),
    ]);
    let mut others: Vec<String> = more(SCOURS).differ.iter().map(|line| (*line).to_owned()).collect();
    others.push(
        "Young lambs are given 80 to 100 ml/kg (1.2 to 1.5 fl oz/lb) a day in all (unconfirmed).".to_owned(),
    );
    let mut caution =
        vec!["Nothing by mouth with a tight belly, under 37 °C (98.6 °F), or without a swallow.".to_owned()];
    caution.extend(general());
    Why {
        heading: dry::FLUIDS.to_owned(),
        working,
        rule: "What it has lost and a day’s upkeep, beside its milk: the least. Over 8% needs a vein."
            .to_owned(),
        sources: cited(fluids::SOURCES),
        others,
        caution,
    }
}

/// Returns what stands behind the meaning of a reading of ketones: each source for this reading.
pub fn ewe_ketones(reading: Ketones) -> Why {
    let against = |from: Ketones, whose: &str| {
        let meaning = if reading >= from { "ketotic" } else { "not yet ketotic" };
        format!("{whose}, from {}: {meaning}", told(from))
    };
    let [ear, meter] = OTHERS_FROM;
    let laboratory = told(in_the_laboratory(reading));
    let mut caution = vec![LOW_PROVES_NOTHING.to_owned()];
    caution.extend(general());
    Why {
        heading: dry::KETONES.to_owned(),
        working: vec![
            against(KETOTIC_FROM, "Laboratory, or neck blood by a handheld meter"),
            format!("Clinically ill from {}", told(CLINICAL_FROM)),
        ],
        rule: "Ketones rise while she lives off her fat. They tell how far it has gone, and not whether she lives.".to_owned(),
        sources: cited(ketones::SOURCES),
        others: vec![
            against(ear, "Ear blood by a handheld meter (2025)"),
            against(meter, "Another meter (Ratanapob 2019)"),
            format!(
                "A veterinary meter read {METER_READS_HIGH_PERCENT}% high in ewes: by that the laboratory would read {laboratory}."
            ),
        ],
        caution,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::units::Mass;

    #[test]
    fn the_printed_example_is_worked_line_by_line() {
        // Source: infovets and dvm360: 5 kg, 6%: 300 and 265 ml, 565 ml in 24 h.
        let five = fluids::fluids(Mass::from_kilograms(5.0), 6, true).expect("by mouth");
        let why = lamb_fluids(&five, System::Metric);
        assert_eq!(why.working[0], "Lost: 5.0 kg × 6% = 300 ml");
        assert!(why.working[2].starts_with("Together: 565 ml"), "{:?}", why.working);
    }

    #[test]
    fn between_the_marks_sources_differ() {
        // Source: Ratanapob 2019: 1.0 by meter; 0.8 in the laboratory.
        let why = ewe_ketones(Ketones::from_millimoles(0.9));
        assert!(why.working[0].ends_with(": ketotic"));
        assert!(why.others[1].ends_with("not yet ketotic"));
    }
}
