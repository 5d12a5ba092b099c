//! Why the season ahead looks as it does: whose gestation, whose share that holds, whose litters.

use yeanling_core::reckon::season::breeding::{self, BreedingSeason};
use yeanling_core::reckon::season::conception::{self, Learned, Whose};
use yeanling_core::reckon::season::ewe::{self, LambingForecast};
use yeanling_core::reckon::season::gestation::{self, MeanUsed};
use yeanling_core::reckon::season::pens::{self, Wanted};
use yeanling_core::reckon::season::{Subject, cycles, forecast, litters};
use yeanling_core::seasons::SeasonForecast;

use super::{Why, cited, general};
use crate::common::number;
use crate::season_forecast as words;

/// Returns the heading under which a calculation of the season has its sources listed.
pub fn season_subject(subject: Subject) -> &'static str {
    match subject {
        Subject::Gestation => "Gestation",
        Subject::Mating => "The ram’s days",
        Subject::Cycles => "Conception, cycle by cycle",
        Subject::Breeding => "Mating in season and out of it",
        Subject::Conception => "Conception rate",
        Subject::Litters => "Litter sizes",
        Subject::Forecast => "Lambings per night",
        Subject::Ewe => "When one ewe will lamb",
        Subject::Pens => "How many bonding pens",
        Subject::Dates => "The dates of a season",
        Subject::FeedSteps => "Bringing in a new feed",
        Subject::FeedGroups => "Extra feed by group",
        Subject::Condition => "Body condition",
        Subject::Requirement => "What a ewe needs a day",
        Subject::Ration => "What her feeds give her",
        Subject::Minerals => "Copper and selenium",
        Subject::Budget => "Hay and grain",
        Subject::Water => "Water and trough",
        Subject::Shopping => "What to have on hand",
    }
}

/// Whose figure it is where no figure is sure.
const OUT_OF_SEASON: &str = "a wide guess: out of season ewes may not be in heat";

/// Returns between which shares the one that holds lies nine times in ten: "64 to 85".
fn range(conception: &Learned) -> String {
    let percent = |chance| number(conception.at_most(chance) * 100.0, 0);
    format!("{} to {}", percent(0.05), percent(0.95))
}

/// Returns how the lambings per night are reckoned.
pub fn nights(ahead: &SeasonForecast) -> Why {
    let mean = number(ahead.gestation.gestation.mean_days(), 1);
    let whose = match ahead.gestation.used {
        MeanUsed::Own { lambings } => format!("this flock’s own, over {lambings} lambings"),
        MeanUsed::Handbook { lambings } => {
            format!("the handbook’s; this flock’s own from 15, {lambings} so far")
        }
    };
    let holds = number(ahead.conception.conception.as_share() * 100.0, 0);
    let held = match (ahead.conception.season, ahead.conception.whose) {
        (BreedingSeason::Within, Whose::Handbook) => "the handbook’s",
        (BreedingSeason::Within, Whose::Own) => "the handbook’s, adjusted by lambings so far",
        (BreedingSeason::Outside, Whose::Handbook) => OUT_OF_SEASON,
        (BreedingSeason::Outside, Whose::Own) => "out of season, learned from lambings so far",
    };
    let litter = number(ahead.litters.litters.mean(), 2);
    let litters = if ahead.litters.own { "this flock’s own" } else { "of 762 litters of an open data set" };
    Why {
        heading: words::NIGHTS.to_owned(),
        working: vec![
            format!("Gestation {mean} days, {whose}"),
            format!("{holds} in 100 settle per 17-day cycle, {held}; 9 times in 10 {}", range(&ahead.conception)),
            format!("{litter} lambs a lambing, {litters}"),
            "Each ewe by her marks, scan and signs, or her group’s days; all ewes added up exactly"
                .to_owned(),
        ],
        rule: "Assumes matings spread evenly over a cycle and gestation normal about its mean; days gone by count for nothing."
            .to_owned()
            + " "
            + words::MAY_BUNCH,
        sources: [forecast::SOURCES, gestation::SOURCES, cycles::SOURCES, breeding::SOURCES, conception::SOURCES, litters::SOURCES]
            .into_iter()
            .flat_map(cited)
            .collect(),
        others: Vec::new(),
        caution: Vec::new(),
    }
}

/// Returns how the pens are reckoned, and what the rules of thumb say.
pub fn pens_wanted(wanted: &Wanted) -> Why {
    Why {
        heading: words::PENS.to_owned(),
        working: vec![words::pens_label(wanted.enough, wanted.busiest)],
        rule:
            "A ewe takes a pen from her lambing to the end of her litter’s stay: set that in Farm settings."
                .to_owned(),
        sources: cited(pens::SOURCES),
        others: wanted.rules.iter().map(|(rule, pens)| words::rule(*rule, *pens)).collect(),
        caution: Vec::new(),
    }
}

/// Returns the sum first, then on what else it rests.
fn working(lambing_forecast: &LambingForecast) -> Vec<String> {
    let carries = lambing_forecast.gestation.mean_days();
    let grounds = &lambing_forecast.grounds;
    let sum = grounds.iter().find_map(|ground| words::sum(ground, carries));
    sum.into_iter().chain(grounds.iter().map(words::ground)).collect()
}

/// Returns the one model of a service, with or without a mark, and what the days that are told hold.
fn rule(lambing_forecast: &LambingForecast) -> String {
    let holds = number(lambing_forecast.holds * 100.0, 0);
    let mark = if lambing_forecast.to_mark.is_some() {
        "One that did not comes back in 14 to 19 days, seen marked 2 times in 3; 1 mark in 20 is no service. "
    } else {
        ""
    };
    format!(
        "{holds} in 100 settle at each service, marked or not. {mark}8 in 10 lamb within the days named, 1 in 1,000 after the last. {}",
        words::SIGNS_COUNT
    )
}

/// Returns on what the days of one ewe rest.
pub fn lambing_forecast(lambing_forecast: &LambingForecast) -> Why {
    Why {
        heading: words::HERS.to_owned(),
        working: working(lambing_forecast),
        rule: rule(lambing_forecast),
        sources: [ewe::SOURCES, gestation::SOURCES].into_iter().flat_map(cited).collect(),
        others: Vec::new(),
        caution: general(),
    }
}
