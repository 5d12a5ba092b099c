//! What a figure answers when it is asked "why?": the working, the rule, the sources, the others, and the cautions.

mod birth_weight;
mod bottle;
mod chill;
mod cold_lamb;
mod colostrum;
mod condition;
mod dry;
mod feed;
mod flock_figures;
mod grown;
mod growth;
pub mod headings;
mod labor;
mod marking;
mod mixing;
mod next_feed;
mod passive_transfer;
mod people;
mod powder;
mod quality;
mod rams;
mod record;
mod season;
mod shopping;
mod ten_point;
mod tube;
mod vigor;
mod weaning;
mod what_if;
mod window;

pub use birth_weight::{against, birth_weight, verdict};
pub use bottle::bottle;
pub use chill::{chill, indoors};
pub use cold_lamb::cold_lamb;
pub use colostrum::colostrum;
pub use condition::condition;
pub use dry::{ewe_ketones, lamb_fluids};
pub use feed::{drink, feed_groups, hay, ration};
pub use flock_figures::flock_figures;
pub use grown::grown;
pub use growth::growth;
pub use labor::{LaborClock, labor};
pub use marking::{marking, vaccine};
pub use mixing::{MIXING, mixing};
pub use next_feed::next_feed;
pub use passive_transfer::passive_transfer;
pub use people::people;
pub use powder::powder;
pub use quality::{antibody, antibody_in, bag, brix};
pub use rams::rams;
pub use record::record;
pub use season::{lambing_forecast, nights, pens_wanted, season_subject};
pub use shopping::shopping;
pub use ten_point::{points, sign, ten_point};
pub use tube::{item, tube};
pub use vigor::{vigor, vigor_asks, vigor_meaning};
pub use weaning::weaning;
pub use what_if::what_if;
pub use window::window;

use yeanling_core::reckon::{PerKilogram, Subject};
use yeanling_core::source::{HowKnown, Source};
use yeanling_core::units::{Mass, System, Volume};

use super::cautions;
use super::common::{mass, number, volume_both};

/// Everything that stands behind one figure, ready to be shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Why {
    /// What the figure is.
    pub heading: String,
    /// The formula with the inputs filled in, a line a step.
    pub working: Vec<String>,
    /// The rule in one sentence.
    pub rule: String,
    /// Every source, cited.
    pub sources: Vec<String>,
    /// What other sources would say for these inputs.
    pub others: Vec<String>,
    /// What can go wrong.
    pub caution: Vec<String>,
}

/// Returns a source as one line, with how it is known unless it was read.
pub fn source_line(source: &Source) -> String {
    let author = match source.year {
        Some(year) => format!("{} {year}", source.authors),
        None => source.authors.to_owned(),
    };
    let parts = [author.trim(), source.title, source.place];
    let line = parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", ");
    match source.known {
        HowKnown::Seen => line,
        HowKnown::Memory => format!("{line} (unconfirmed)"),
        HowKnown::CommonPractice => format!("{line} (common practice, no source)"),
        HowKnown::Ours => format!("{line} (our own choice)"),
    }
}

/// Returns the heading under which a calculation's sources are listed.
pub fn subject(subject: Subject) -> &'static str {
    match subject {
        Subject::Colostrum => "How much colostrum",
        Subject::Window => "How long colostrum works",
        Subject::Feeds => "How often, and how much is too much",
        Subject::Quality => "How good colostrum is",
        Subject::Bottle => "Bottle lambs",
        Subject::BirthWeight => "Birth weight",
        Subject::Vigor => "Vigor",
        Subject::Labor => "Labor",
        Subject::PenStay => "Bonding pens",
        Subject::BodyTemperature => "A lamb’s temperature",
        Subject::ColdLamb => "A cold lamb",
        Subject::Warming => "Warming a lamb",
        Subject::PassiveTransfer => "Antibody in the blood",
        Subject::TenPoint => "Vigor, ten points",
        Subject::Chill => "Chill",
        Subject::Tube => "Feeding by tube",
        Subject::Mixing => "Mixing powder",
        Subject::Powder => "Powder until weaning",
        Subject::Weaning => "Weaning",
        Subject::Navel => "The navel",
        Subject::Marking => "Rings, tags, vaccine",
        Subject::Growth => "Growth to eight weeks",
        Subject::Gain => "Gain between two weights",
        Subject::AdjustedWeight => "Adjusted weights",
        Subject::Withholding => "Withdrawal of meat and milk",
        Subject::FlockFigures => "Season summary",
        Subject::Fisher => "Rams compared",
        Subject::Losses => "When lambs are lost",
        Subject::Survival => "Birth weight and survival",
        Subject::Illness => "When she or it is not right",
        Subject::EweIllness => "A ewe that is not right",
        Subject::LambIllness => "A lamb that is not right",
        Subject::Udder => "The udder after lambing",
        Subject::ByHand => "Without a thermometer",
        Subject::Fluids => "Dryness and fluids",
        Subject::Ketones => "Ketones in a ewe’s blood",
        Subject::Spread => "Several sick in a few days",
    }
}

fn cited(sources: &[Source]) -> Vec<String> {
    sources.iter().map(source_line).collect()
}

fn general() -> Vec<String> {
    vec![cautions::GENERAL.to_owned()]
}

fn with_tube() -> Vec<String> {
    let tube = cautions::TUBE.join(" ");
    vec![tube, cautions::GENERAL.to_owned()]
}

fn rate(rate: PerKilogram) -> String {
    format!("{} ml/kg", number(rate.as_milliliters(), 0))
}

/// Returns "50 ml/kg × 3.9 kg = 195 ml", with fluid ounces behind it where the farm reads them.
fn times(figure: PerKilogram, weight: Mass, system: System) -> String {
    let answer = milk(figure.of(weight), system);
    format!("{} × {} = {answer}", rate(figure), mass(weight, System::Metric))
}

/// Returns the exact milliliters, what they are read as, and fluid ounces where the farm reads them.
fn milk(volume: Volume, system: System) -> String {
    let exact = format!("{} ml", number(volume.as_milliliters(), 1));
    let read = super::common::volume(volume, System::Metric);
    let metric = if exact == read { read } else { format!("{exact}, about {read}") };
    match system {
        System::Metric => metric,
        System::Us => format!("{metric} ({})", super::common::volume(volume, System::Us)),
    }
}

/// Returns "195 ml" or "6.6 fl oz (195 ml)": what the farm reads, never without milliliters.
fn told(volume: Volume, system: System) -> String {
    match system {
        System::Metric => super::common::volume(volume, system),
        System::Us => volume_both(volume, system),
    }
}

/// Returns "8.6 lb = 3.9 kg" as a first step for a farm in pounds.
fn converted(weight: Mass, system: System) -> Option<String> {
    match system {
        System::Metric => None,
        System::Us => Some(format!("{} = {}", mass(weight, System::Us), mass(weight, System::Metric))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::all_sources;

    fn source(authors: &'static str, title: &'static str, known: HowKnown) -> Source {
        Source { authors, title, year: None, place: "", known }
    }

    #[track_caller]
    fn check(source: &Source, expected: &str) {
        assert_eq!(source_line(source), expected);
    }

    #[test]
    fn a_source_says_how_it_is_known() {
        let mellor = Source {
            authors: "Mellor & Murray",
            title: "",
            year: Some(1986),
            place: "Veterinary Record",
            known: HowKnown::Seen,
        };
        check(&mellor, "Mellor & Murray 1986, Veterinary Record");
        check(&source("", "Under 3.0 kg", HowKnown::Memory), "Under 3.0 kg (unconfirmed)");
        check(
            &source("", "Help at 1 h", HowKnown::CommonPractice),
            "Help at 1 h (common practice, no source)",
        );
        check(&source("", "Rounded", HowKnown::Ours), "Rounded (our own choice)");
    }

    #[test]
    fn every_source_makes_a_line() {
        for (_, sources) in all_sources() {
            for source in sources {
                let line = source_line(source);
                assert!(!line.is_empty() && !line.starts_with([',', ' ']), "{line:?}");
            }
        }
    }
}
