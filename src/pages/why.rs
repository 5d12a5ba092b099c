//! "Why?": what is asked. Its answer is put into words only when its sheet is open.

use std::sync::Arc;

use yeanling_core::reckon::birth_weight::Against;
use yeanling_core::reckon::birth_weight::Band;
use yeanling_core::reckon::bottle::Day;
use yeanling_core::reckon::chill::{Chill, Indoors};
use yeanling_core::reckon::cold_lamb::ColdLambAnswer;
use yeanling_core::reckon::colostrum::ColostrumTarget;
use yeanling_core::reckon::feeds::Next;
use yeanling_core::reckon::flock_figures::Figures;
use yeanling_core::reckon::growth::Expected;
use yeanling_core::reckon::illness::fluids::Fluids;
use yeanling_core::reckon::marking::{RingState, Vaccine, Window};
use yeanling_core::reckon::mixing::Mix;
use yeanling_core::reckon::powder::Plan;
use yeanling_core::reckon::quality::{self, Keeps, Store};
use yeanling_core::reckon::season::condition::{ConditionStage, System as Targets};
use yeanling_core::reckon::season::ewe::LambingForecast;
use yeanling_core::reckon::season::pens::Wanted;
use yeanling_core::reckon::ten_point::Score;
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::reckon::{Strength, passive_transfer, weaning};
use yeanling_core::seasons::SeasonForecast;
use yeanling_core::settings::FreezerLife;
use yeanling_core::units::{Ketones, Mass, TimeDelta, Volume};
use yeanling_words::label;
use yeanling_words::why::{self, LaborClock, Why};

use crate::Button;
use crate::block::{Fold, Item, Kind, ListLook};
use crate::cold_lamb;
use crate::page::{Blocks, SheetPage};
use crate::view::View;

/// What is asked about.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// What a newborn wants of first milk.
    Milk(ColostrumTarget),
    /// When something is due for a ewe at work.
    Labor(LaborClock),
    /// What to have on the shelf.
    Shopping,
    /// What a plan comes to.
    WhatIf,
    /// What a birth weight means.
    BirthWeight(Against),
    /// How a weight stands against the eight-week target.
    Growth {
        /// What it weighed at birth.
        birth_weight: Mass,
        /// What it weighs.
        weight: Mass,
        /// At what age.
        age: TimeDelta,
        /// What is expected then.
        at: Expected,
    },
    /// When a ring may go on.
    Ring(Window, RingState),
    /// When the first vaccine is due.
    Vaccine(Vaccine),
    /// When a ewe may lamb.
    LambingForecast(LambingForecast),
    /// What to do with a cold lamb, by its age as that is known.
    ColdLamb(Box<ColdLambAnswer>, cold_lamb::Age),
    /// What a birth weight means by its litter size alone.
    BirthBand(Box<Band>),
    /// What is made up to how much.
    Mixing(Mix),
    /// A grade of vigor, in the farm's limits.
    Vigor(FourGrade),
    /// A score of ten points.
    TenPoint(Score),

    /// How a group stands at a time of the year, by whose targets.
    Condition(Targets, ConditionStage),
    /// How much hay the winter takes.
    Hay,
    /// Extra feed by group.
    FeedGroups,
    /// What a ration gives against what she needs.
    Ration,
    /// How much water.
    Water,
    /// How lambs are told side by side.
    Grown,
    /// How many lambings per night.
    Nights(Arc<SeasonForecast>),
    /// How many pens they take.
    PensWanted(Arc<Wanted>),
    /// The same under the name of one of several figures that share it.
    Of(&'static str, Box<Self>),
    /// The next feed of a lamb that wants so much.
    NextFeed(Box<(Next, ColostrumTarget)>),
    /// How long colostrum works at this age.
    Window(TimeDelta),
    /// What a bottle lamb takes on a day.
    Bottle(Box<Day>),
    /// Whether a lamb can be weaned.
    Weaning(Box<weaning::WeaningAnswer>),
    /// How much powder is wanted until weaning.
    Powder(Plan),
    /// How good colostrum is by its Brix.
    Brix(quality::Reading),
    /// How good it is by its antibody.
    Antibody(Strength),
    /// How much antibody a feed brings.
    AntibodyIn(Volume, Strength),
    /// Whether a bag of colostrum still serves.
    Bag(Keeps, Store, FreezerLife),
    /// What antibody in the blood suggests.
    Blood(passive_transfer::Reading),
    /// How much a scouring lamb drinks.
    Fluids(Fluids),
    /// What a reading of ketones means.
    Ketones(Ketones),
    /// Whether the weather chills lambs outdoors.
    Chill(Chill),
    /// Whether the air chills them under a roof.
    Indoors(Indoors),
    /// The figures of a season.
    FlockFigures(Figures),
    /// What a ewe's record counts.
    Record,
    /// How rams are held against each other.
    Rams,
    /// Who keeps away at lambing.
    People,
}

impl Reason {
    /// Returns the answer.
    #[must_use]
    pub fn answer(&self, view: &View) -> Why {
        match self {
            Self::Milk(target) => why::colostrum(target, view.system()),
            Self::Labor(clock) => why::labor(*clock, view.settings(), view.now),
            Self::Shopping => why::shopping(),
            Self::WhatIf => why::what_if(),
            Self::BirthWeight(against) => why::against(against, view.system()),
            Self::Growth { birth_weight, weight, age, at } => {
                why::growth(*birth_weight, *weight, *age, at, view.system())
            }
            Self::Ring(window, state) => why::marking(window, *state),
            Self::Vaccine(vaccine) => why::vaccine(vaccine),
            Self::LambingForecast(lambing_forecast) => why::lambing_forecast(lambing_forecast),
            Self::ColdLamb(answer, age) => {
                why::cold_lamb(answer, &cold_lamb::old(*age, answer), view.system())
            }
            Self::BirthBand(band) => why::birth_weight(band, view.system()),
            Self::Mixing(mix) => why::mixing(mix, view.system()),
            Self::Vigor(grade) => why::vigor(*grade, &view.settings().limits),
            Self::TenPoint(score) => why::ten_point(score),

            Self::Condition(by, stage) => why::condition(*by, *stage),
            Self::Hay => why::hay(),
            Self::FeedGroups => why::feed_groups(),
            Self::Ration => why::ration(),
            Self::Water => why::drink(),
            Self::Grown => why::grown(),
            Self::Nights(ahead) => why::nights(ahead),
            Self::PensWanted(wanted) => why::pens_wanted(wanted),
            Self::Of(heading, reason) => Why { heading: (*heading).to_owned(), ..reason.answer(view) },
            Self::NextFeed(of) => why::next_feed(&of.0, &of.1, view.system()),
            Self::Window(age) => why::window(*age),
            Self::Bottle(day) => why::bottle(day, view.system()),
            Self::Weaning(answer) => why::weaning(answer, view.system()),
            Self::Powder(plan) => why::powder(plan, view.system()),
            Self::Brix(reading) => why::brix(reading),
            Self::Antibody(strength) => why::antibody(*strength),
            Self::AntibodyIn(volume, strength) => why::antibody_in(*volume, *strength, view.system()),
            Self::Bag(keeps, store, life) => why::bag(*keeps, *store, *life),
            Self::Blood(reading) => why::passive_transfer(reading),
            Self::Fluids(fluids) => why::lamb_fluids(fluids, view.system()),
            Self::Ketones(reading) => why::ewe_ketones(*reading),
            Self::Chill(chill) => why::chill(chill, view.system()),
            Self::Indoors(air) => why::indoors(air, view.system()),
            Self::FlockFigures(figures) => why::flock_figures(figures),
            Self::Record => why::record(),
            Self::Rams => why::rams(),
            Self::People => why::people(),
        }
    }

    /// Returns the button that asks it, named after the heading of its answer: for a page with few of them.
    #[must_use]
    pub(crate) fn button(self, view: &View) -> Button {
        crate::page::why(&self.answer(view).heading, self)
    }
}

/// Returns the sheet with the answer.
#[must_use]
pub(crate) fn sheet(reason: &Reason, view: &View) -> SheetPage {
    let Why { heading, working, rule, sources, others, caution } = reason.answer(view);
    SheetPage::new(heading, reasons(working, rule, sources, others, caution))
}

fn reasons(
    working: Vec<String>,
    rule: String,
    sources: Vec<String>,
    others: Vec<String>,
    caution: Vec<String>,
) -> Blocks {
    let lines = |blocks: Blocks, heading: &str, look: ListLook, lines: Vec<String>| {
        if lines.is_empty() {
            return blocks;
        }
        blocks.heading(heading).list(look, lines.into_iter().map(Item::new))
    };
    let rule = if rule.is_empty() { Vec::new() } else { vec![rule] };
    let blocks = lines(Blocks::new(), label::WORKING, ListLook::Working, working);
    let blocks = lines(blocks, label::RULE, ListLook::Rule, rule);
    let blocks = if caution.is_empty() { blocks } else { blocks.caution(caution) };
    let blocks = lines(blocks, label::OTHERS, ListLook::Others, others);
    if sources.is_empty() {
        return blocks;
    }
    let label = label::sources(sources.len()).into();
    let inside = Blocks::new().list(ListLook::Sources, sources.into_iter().map(Item::new));
    blocks.add("sources", Kind::Fold(Fold { label, sources: true, open: false, inside: inside.into() }))
}
