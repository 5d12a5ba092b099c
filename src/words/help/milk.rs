//! What can be read of the bottle, of weaning, of a bag of colostrum and of the weather; in the words that the screens use.

use yeanling_core::reckon::bottle::{Row, rows};
use yeanling_core::reckon::chill::{AtRisk, Verdict};
use yeanling_core::reckon::mixing::sample_to;
use yeanling_core::reckon::quality::Origin;
use yeanling_core::reckon::{powder, weaning};
use yeanling_core::settings::FarmSettings;
use yeanling_core::units::{System, Volume};

use crate::common::{per_weight, strength, volume};
use crate::settings::{bottle_table, chill_limit, freezer_life, powder_rule, weaning_rule};
use crate::{bag, bottle_round, calculators, cautions, chill};

/// Heads the bottle.
pub const BOTTLE: &str = "Bottle lambs";
/// Heads weaning.
pub const WEANING: &str = "Weaning";
/// Heads the bag.
pub const BAG: &str = "Colostrum quality";
/// Heads the weather.
pub const WEATHER: &str = "Chill";

/// Returns what is read of a bottle lamb: the farm's table, the cap, the mix, the powder.
pub fn bottle(settings: &FarmSettings) -> Vec<String> {
    let system = settings.system;
    let mut lines =
        vec![format!("By {}; Farm settings has the other.", bottle_table(settings.bottle_table).0)];
    lines.extend(rows(settings.bottle_table).iter().map(|row| table_row(row, system)));
    lines.push(format!(
        "Never over {} in a day, whatever the table says: vet supplier.",
        per_weight(200.0, system)
    ));
    let powder = strength(settings.powder_rate.as_grams_per_liter(), system);
    lines.push(format!("Powder at {powder}. {}", bottle_round::LABEL_FIRST));
    if let Ok(liter) = sample_to(Volume::from_milliliters(1000.0), settings.powder_rate) {
        lines.push(bottle_round::trap(&liter, system));
    }
    lines.push(
        "Water under 45 °C (113 °F). Lamb replacer, never calf replacer (feed maker, NDSU).".to_owned(),
    );
    let plans = powder::RULES.map(|rule| powder_rule(rule).0).join(" · ");
    lines.push(format!("Powder until weaning, for one lamb: {plans}."));
    lines.push(calculators::SICK.to_owned());
    lines.extend(cautions::HYGIENE.iter().take(4).map(|line| (*line).to_owned()));
    lines
}

fn table_row(row: &Row, system: System) -> String {
    let Row { first_day, last_day, least, most, feeds, colostrum } = row;
    let what = if *colostrum { " of colostrum" } else { "" };
    format!(
        "*Day {first_day} to {last_day}:* {feeds} feeds of {} to {}{what}",
        volume(*least, system),
        volume(*most, system)
    )
}

/// Returns what is read of weaning: every rule by its name, and how it is asked.
pub fn weaning() -> Vec<String> {
    let mut lines: Vec<String> = weaning::RULES
        .into_iter()
        .map(|rule| {
            let (name, note) = weaning_rule(rule);
            format!("By {name}: {}.", note.trim_start_matches("our default: "))
        })
        .collect();
    lines.push(
        "What is not known counts as not met: weigh it, and note what it eats on three days running."
            .to_owned(),
    );
    lines.push("The Watch asks at the rule’s earliest age, and again a day after each look.".to_owned());
    lines
}

/// Returns what is read of a bag of colostrum.
pub fn bag(settings: &FarmSettings) -> Vec<String> {
    let mut lines = vec![
        "Good at *26.5% Brix* or more (Page et al. 2022). The mark of 22 is for cows only.".to_owned(),
        "Good at *20 g/L* of antibody or more (Kessler et al. 2021); older targets are 50 and 60.".to_owned(),
        "About 30 g of antibody are wanted in the first 24 h (Alves et al. 2015, unconfirmed). Grams are liters times g/L."
            .to_owned(),
        format!("Frozen it keeps {} by your farm’s choice, in a fridge 2 days (SRUC).", freezer_life(settings.freezer_life).0),
    ];
    lines.extend(bag::THAWING.iter().map(|line| (*line).to_owned()));
    let origins = Origin::ALL.map(bag::origin).join("; ");
    lines.push(format!("Best first: {origins} (SRUC)."));
    lines
}

/// Returns what is read of the weather.
pub fn weather(settings: &FarmSettings) -> Vec<String> {
    let mut lines = vec![
        format!("Outdoors the chill index puts air, wind and rain into one figure. Your limit: {}.", chill_limit(settings.chill_limit).0),
        chill::WIND_HINT.to_owned(),
        chill::advice(Verdict::HighRisk).to_owned(),
        "Under a roof go by the air: a wet lamb can chill at 15 °C (59 °F) and below (McCutcheon et al. 1983).".to_owned(),
    ];
    let risks = AtRisk::ALL.map(|reason| chill::at_risk(reason, settings.system)).join(" ");
    lines.push(format!("Most at risk first: {risks}"));
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::settings::BottleTable;

    #[test]
    fn every_row_of_the_farms_table_is_told() {
        for table in [BottleTable::VetSupplier, BottleTable::UsHandbook] {
            let settings = FarmSettings { bottle_table: table, ..FarmSettings::default() };
            let told = bottle(&settings);
            assert_eq!(told.iter().filter(|line| line.starts_with("*Day ")).count(), rows(table).len());
        }
    }

    #[test]
    fn every_weaning_rule_is_told_by_its_name() {
        let told = weaning().join(" ");
        assert!(weaning::RULES.iter().all(|rule| told.contains(weaning_rule(*rule).0)));
    }

    #[test]
    fn the_bag_and_the_weather_go_by_the_farms_choice() {
        let settings = FarmSettings::default();
        assert!(bag(&settings).join(" ").contains("Frozen it keeps 1 year"));
        assert!(weather(&settings).join(" ").contains("Agriculture Victoria, 1000"));
    }
}
