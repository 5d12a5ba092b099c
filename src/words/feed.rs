//! Hay, ration and water: what is asked, what comes out, and what is out of range.

use yeanling_core::reckon::season::bounds::{Figure, Refused};
use yeanling_core::reckon::season::budget::{Becomes, Budget};
use yeanling_core::reckon::season::dates::Crop;
use yeanling_core::reckon::season::minerals::{Copper, Guarded, Selenium};
use yeanling_core::reckon::season::ration::{Checked, Held, Nutrient};
use yeanling_core::reckon::season::requirement::{Energy, FeedStage, OutsideTable};
use yeanling_core::reckon::season::water::Wanted;
use yeanling_core::seasons::{EweWeight, WhoseWeight};
use yeanling_core::units::{Length, Mass, System, Volume};

use super::common::{length, mass, number};

/// The screen's name.
pub const TITLE: &str = "Hay and feed";
/// What is there, where it is offered.
pub const SUB: &str = "Hay for winter, extra feed by group, rations, water";
/// Chooses what is worked out.
pub const WHAT: &str = "What to work out";
/// The hay.
pub const HAY: &str = "Hay";
/// A ration.
pub const RATION: &str = "Ration";
/// Water and trough.
pub const WATER: &str = "Water";
/// How many ewes.
pub const EWES: &str = "Ewes";
/// What one weighs.
pub const EWE_WEIGHT: &str = "Ewe weight";
/// For how many days.
pub const DAYS: &str = "Days of feeding";
/// The unit of days.
pub const DAYS_UNIT: &str = "days";
/// The share of her weight.
pub const SHARE: &str = "Hay a day, % of body weight";
/// What a breeder reckons with.
pub const SHARE_HINT: &str = "As fed. One breeder allows 4%, waste included. Less beside grain.";
/// How dry hay is.
pub const DRY_HINT: &str = "Hay is about 88% dry matter; a hay analysis says yours.";
/// What is wasted.
pub const WASTE: &str = "Wasted";
/// How much is wasted.
pub const WASTE_HINT: &str = "Rack 5 to 15%, on the ground 25 to 45%.";
/// One bale.
pub const BALE: &str = "Bale weight";
/// Heads the answer.
pub const NEEDED: &str = "Hay for the winter";
/// Asks for what is missing.
pub const TYPE_ALL: &str = "Fill in every field to see how much hay.";
/// Asks for what is missing of a ration.
pub const TYPE_RATION: &str = "Fill in every field to see what she gets. Copper and selenium can stay blank.";
/// The stage.
pub const STAGE: &str = "Her stage";
/// A feed.
pub const FED: &str = "As fed";
/// Dry matter.
pub const DRY_MATTER: &str = "Dry matter";
/// Energy.
pub const ENERGY: &str = "Energy (ME) of the dry matter";
/// Protein.
pub const PROTEIN: &str = "Crude protein";
/// Calcium.
pub const CALCIUM: &str = "Calcium";
/// Copper.
pub const COPPER: &str = "Copper, if known";
/// Selenium.
pub const SELENIUM: &str = "Selenium, if known";
/// Another feed.
pub const ANOTHER: &str = "Another feed";
/// Takes the last feed away.
pub const ONE_LESS: &str = "Remove the last feed";
/// Explains what is typed.
pub const ANALYSIS: &str = "Use the label or a hay analysis: a guess in is a guess out. Up to five feeds.";
/// Heads the answer.
pub const HELD: &str = "Against what she needs";
/// She leaves some of it.
pub const LEAVES: &str = "More dry matter than she can eat: she will leave some.";
/// What is said with every ration.
pub const CAUTION: [&str; 2] = [
    "A table alone cannot balance a ration: have feeds analyzed, score the ewes, ask your vet.",
    "Copper poisons sheep. Never give them feed or mineral made for other animals.",
];

/// Returns the unit of energy.
pub const fn energy_unit(system: System) -> &'static str {
    match system {
        System::Metric => "MJ/kg",
        System::Us => "Mcal/lb",
    }
}

/// The milliliters of a US gallon.
const GALLON: f64 = 3_785.411_784;
/// The kilograms of a pound.
pub(super) const POUND: f64 = 0.453_592_37;

/// Returns the energy in a kilogram of dry matter from what was typed.
pub fn energy(typed: f64, system: System) -> Energy {
    match system {
        System::Metric => Energy::from_megajoules(typed),
        System::Us => Energy::from_megacalories(typed / POUND),
    }
}

/// Returns the name of a stage.
pub const fn stage(stage: FeedStage) -> &'static str {
    match stage {
        FeedStage::Maintenance => "dry (maintenance)",
        FeedStage::FirstFifteenWeeks => "first 15 weeks of pregnancy",
        FeedStage::LastFourWeeks(Crop::Usual) => "last 4 weeks, mostly singles",
        FeedStage::LastFourWeeks(Crop::Prolific) => "last 4 weeks, many twins",
        FeedStage::MilkingOne => "nursing one",
        FeedStage::MilkingTwo => "nursing two",
    }
}

/// Returns whose ewe weight stands there.
pub fn whose_weight(weight: &EweWeight, system: System) -> String {
    let told = heavy(weight.mass, system);
    match weight.whose {
        WhoseWeight::Own { ewes } => format!("{told}: mean of {ewes} of your ewes."),
        WhoseWeight::Kind(kind) => {
            format!("{told}: usual for {}, until you weigh 5 ewes.", super::settings::breed_type(kind).0)
        }
    }
}

/// Names the feed of this number.
pub fn feed(number: usize) -> String {
    format!("Feed {}", number + 1)
}

/// Returns a mass, without decimals once it is heavy.
pub(super) fn heavy(of: Mass, system: System) -> String {
    match system {
        System::Metric if of == Mass::from_kilograms(0.0) => "0 kg".to_owned(),
        System::Us if of == Mass::from_kilograms(0.0) => "0 lb".to_owned(),
        System::Metric if of.as_kilograms() >= 20.0 => format!("{} kg", number(of.as_kilograms(), 0)),
        System::Us if of.as_pounds() >= 40.0 => format!("{} lb", number(of.as_pounds(), 0)),
        System::Metric | System::Us => mass(of, system),
    }
}

/// Returns the hay that is needed: "6,300 kg, 315 bales of 20 kg".
pub fn hay(budget: &Budget, system: System) -> String {
    format!(
        "*{}* in all, *{} bales* of {}. For one ewe {} a day as fed, waste included: {} over {} days.",
        heavy(budget.total, system),
        budget.bales,
        heavy(budget.bale, system),
        heavy(budget.each_day, system),
        heavy(budget.each, system),
        budget.days
    )
}

/// Returns what becomes of a day’s hay: "A ewe eats 2.5 kg as fed, 2.2 kg dry matter; 0.3 kg is waste."
pub fn becomes(of: &Becomes, system: System) -> String {
    let told = |mass| heavy(mass, system);
    format!(
        "Of it a ewe eats *{}* as fed, *{}* dry matter; {} is waste.",
        told(of.eaten),
        told(of.dry_matter),
        told(of.wasted)
    )
}

/// Returns what the table of the ration asks, on the same basis.
pub fn table_asks(dry_matter: Mass, system: System) -> String {
    format!("The ration’s table, first 15 weeks: {} dry matter a day, no waste.", heavy(dry_matter, system))
}

/// Returns a ration on both bases: "Eaten, no waste: 1.8 kg as fed, 1.6 kg dry matter a day."
pub fn eaten(checked: &Checked, system: System) -> String {
    let [dry_matter, ..] = checked.held;
    let dry = Mass::from_kilograms(dry_matter.given);
    format!(
        "Eaten, no waste: *{}* as fed, *{}* dry matter a day.",
        mass(checked.as_fed, system),
        mass(dry, system)
    )
}

/// Returns how the stores stand against it.
pub fn in_store(there: Mass, budget: &Budget, system: System) -> String {
    let short = budget.total.as_kilograms() - there.as_kilograms();
    if short > 0.0 {
        let bales = number((short / budget.bale.as_kilograms()).ceil(), 0);
        format!(
            "On hand {}: *{}* short, {bales} bales.",
            heavy(there, system),
            heavy(Mass::from_kilograms(short), system)
        )
    } else {
        format!("On hand {}: enough.", heavy(there, system))
    }
}

/// Returns water and trough: "120 to 320 L of water a day; 16 to 20 m of trough".
pub fn water(wanted: &Wanted, system: System) -> String {
    let liters = |volume: Volume| match system {
        System::Metric => format!("{} L", number(volume.as_milliliters() / 1000.0, 0)),
        System::Us => format!("{} gal", number(volume.as_milliliters() / GALLON, 0)),
    };
    let along = |side: Length| length(side, system);
    format!(
        "*{} to {}* of water a day, most while nursing. *{} to {}* of trough along one side.",
        liters(wanted.water.0),
        liters(wanted.water.1),
        along(wanted.trough.0),
        along(wanted.trough.1)
    )
}

/// Returns the name of a nutrient.
pub const fn nutrient(nutrient: Nutrient) -> &'static str {
    match nutrient {
        Nutrient::DryMatter => "dry matter",
        Nutrient::Energy => "energy",
        Nutrient::Protein => "protein",
        Nutrient::Calcium => "calcium",
    }
}

/// Returns what a nutrient comes to: "1.62 of 1.80 kg".
pub fn held(held: Held, system: System) -> String {
    let (given, needed) = (held.given, held.needed);
    let mass_of = |factor: f64, unit: &str, places: usize| {
        format!("{} of {} {unit}", number(given * factor, places), number(needed * factor, places))
    };
    match (held.nutrient, system) {
        (Nutrient::Energy, System::Metric) => mass_of(4.184, "MJ", 1),
        (Nutrient::Energy, System::Us) => mass_of(1.0, "Mcal", 2),
        (Nutrient::DryMatter, System::Metric) => mass_of(1.0, "kg", 2),
        (Nutrient::DryMatter, System::Us) => mass_of(1.0 / POUND, "lb", 2),
        (Nutrient::Protein | Nutrient::Calcium, System::Metric) => mass_of(1000.0, "g", 0),
        (Nutrient::Protein | Nutrient::Calcium, System::Us) => mass_of(16.0 / POUND, "oz", 2),
    }
}

/// Returns what is shortest, or that nothing is.
pub fn limiting(checked: &Checked) -> String {
    match checked.limiting {
        Some(which) => {
            let share =
                checked.held.iter().find(|held| held.nutrient == which).map_or(0.0, |held| held.share());
            format!("Most short: *{}*, {}% of what she needs.", nutrient(which), number(share * 100.0, 0))
        }
        None => "Nothing is short.".to_owned(),
    }
}

/// Returns copper and selenium in words.
pub fn minerals(guarded: &Guarded) -> [String; 2] {
    let copper = number(guarded.copper_ppm, 1);
    let selenium =
        format!("{} ppm, {} mg a day", number(guarded.selenium_ppm, 2), number(guarded.selenium_mg, 2));
    [
        match guarded.copper {
            Copper::Safe => format!("Copper {copper} ppm: under 10."),
            Copper::Watch => {
                format!("*Copper {copper} ppm*: can poison where molybdenum is low. Ask your vet.")
            }
            Copper::TooMuch => {
                format!("*Copper {copper} ppm is too much for sheep*: over 15. Do not feed it; ask your vet.")
            }
            Copper::Unknown => format!("Copper is not known for every feed; {copper} ppm from the others."),
        },
        match guarded.selenium {
            Selenium::Within => format!("Selenium {selenium}: within US law."),
            Selenium::TooMuch => {
                format!(
                    "*Selenium {selenium} is too much*: at most 0.3 ppm and 0.7 mg a day by US law. Ask your vet."
                )
            }
            Selenium::Unknown => format!("Selenium is not known for every feed; {selenium} from the others."),
        },
    ]
}

/// Returns that no row of the table is so light or so heavy.
pub fn outside(error: &OutsideTable, system: System) -> String {
    format!(
        "{} is out of range. The table has {} to {}.",
        mass(error.least, system),
        mass(error.most, system),
        mass(error.given, system)
    )
}

/// Returns why a figure cannot be, with what was given and what is allowed.
pub fn refused(error: &Refused, system: System) -> String {
    let told = |value: f64| figure(error.allowed.figure, value, system);
    format!(
        "{}: {} is out of range. Enter {} to {}.",
        name(error.allowed.figure),
        told(error.given),
        told(error.allowed.least),
        told(error.allowed.most)
    )
}

const fn name(figure: Figure) -> &'static str {
    match figure {
        Figure::Conception => "Conception rate",
        Figure::GestationMean => "Gestation",
        Figure::GestationSpread => "Spread of gestation",
        Figure::DaysWithRam => "Days with the ram",
        Figure::Cycles => "Cycles",
        Figure::Ewes => "Ewes",
        Figure::Lambs => "Lambs",
        Figure::LitterShare => "Share of a litter size",
        Figure::LitterShares => "Litter sizes together",
        Figure::DaysOfForecast => "Days ahead",
        Figure::AgeAtScan => "Lambs’ age at the scan",
        Figure::LambsAtScan => "Lambs at the scan",
        Figure::DaysBetweenLooks => "Days between looks",
        Figure::ConditionScore => "Condition",
        Figure::EweWeight => "Ewe weight",
        Figure::GainInADay => "Gain a day",
        Figure::FedInADay => "One feed, a ewe a day",
        Figure::Feeds => "Feeds",
        Figure::Share => "The share",
        Figure::EnergyOfFeed => "Energy in dry matter",
        Figure::CopperInFeed => "Copper in a feed",
        Figure::SeleniumInFeed => "Selenium in a feed",
        Figure::FeedForOneEwe => "Feed, a ewe a season",
        Figure::DaysOfFeeding => "Days of feeding",
        Figure::Bale => "One bale",
        Figure::Step => "One step of feed",
        Figure::DaysBetweenSteps => "Days between steps",
        Figure::UnitsPerUse => "For one use",
        Figure::ColostrumEach => "Colostrum for one lamb",
        Figure::DaysBefore => "Days before lambing",
    }
}

fn figure(figure: Figure, value: f64, system: System) -> String {
    match figure {
        Figure::EweWeight
        | Figure::GainInADay
        | Figure::FedInADay
        | Figure::FeedForOneEwe
        | Figure::Bale
        | Figure::Step => heavy(Mass::from_kilograms(value), system),
        Figure::Share | Figure::Conception | Figure::LitterShare | Figure::LitterShares => {
            format!("{}%", number(value * 100.0, 1))
        }
        Figure::EnergyOfFeed => match system {
            System::Metric => format!("{} MJ/kg", number(value * 4.184, 1)),
            System::Us => format!("{} Mcal/lb", number(value * POUND, 2)),
        },
        Figure::CopperInFeed | Figure::SeleniumInFeed => format!("{} ppm", number(value, 1)),
        Figure::ColostrumEach => super::common::volume(Volume::from_milliliters(value), system),
        Figure::GestationMean
        | Figure::GestationSpread
        | Figure::DaysWithRam
        | Figure::DaysOfForecast
        | Figure::AgeAtScan
        | Figure::DaysBetweenLooks
        | Figure::DaysOfFeeding
        | Figure::DaysBetweenSteps
        | Figure::DaysBefore => format!("{} days", number(value, 0)),
        Figure::Cycles
        | Figure::Ewes
        | Figure::Lambs
        | Figure::LambsAtScan
        | Figure::ConditionScore
        | Figure::Feeds
        | Figure::UnitsPerUse => number(value, 0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::season::{budget, ration, requirement};

    #[test]
    fn three_tons_for_one_ewe_are_refused_and_300_ppm_of_copper_judged_in_words() {
        let kg = Mass::from_kilograms;
        let wrong = budget::flock(1, 300, kg(10.0), kg(20.0)).expect_err("3 t");
        assert_eq!(
            refused(&wrong, System::Metric),
            "Feed, a ewe a season: 3000 kg is out of range. Enter 0 kg to 1500 kg."
        );
        let feed = ration::Feed {
            fed: kg(1.0),
            dry_matter: 0.9,
            energy: Energy::from_megajoules(9.0),
            protein: 0.1,
            calcium: 0.005,
            copper_ppm: Some(300.0),
            selenium_ppm: None,
        };
        let need = requirement::need(FeedStage::Maintenance, kg(70.0)).expect("a row");
        let [copper, _] = minerals(&ration::check(&[feed], need).expect("it is reckoned").minerals);
        assert_eq!(copper, "*Copper 300 ppm is too much for sheep*: over 15. Do not feed it; ask your vet.");
    }

    #[test]
    fn energy_typed_by_the_pound_is_kept_by_the_kilogram() {
        assert!((energy(1.0, System::Us).as_megacalories() - 2.204_62).abs() < 1e-4);
        assert!((energy(4.184, System::Metric).as_megacalories() - 1.0).abs() < 1e-3);
    }
}
