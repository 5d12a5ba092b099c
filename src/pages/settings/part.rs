//! The six parts of Farm settings, and what the farm has changed in each.

use yeanling_core::settings::{Choice, FarmSettings};
use yeanling_words::{settings as words, vet};

/// A part of Farm settings, on a page of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The farm, its units and its sheep.
    Farm,
    /// The vet's numbers, and what is agreed before lambing.
    Vet,
    /// When the Watch speaks up.
    AlertTimes,
    /// Colostrum, bottle, powder and weaning.
    Feeding,
    /// How care is judged, and which ewes are listed for culling.
    Care,
    /// How this phone looks.
    Display,
}

/// One choice as the farm has it.
type Chosen = fn(&FarmSettings) -> Choice;

/// What is a matter of taste or of the place goes back; the name, the numbers and the units are nobody's default.
const FARM: [Chosen; 4] = [
    |of| Choice::Clock(of.clock),
    |of| Choice::Housing(of.housing),
    |of| Choice::BreedType(of.breed_type),
    |of| Choice::Latitude(of.latitude),
];
const ALERT_TIMES: [Chosen; 3] =
    [|of| Choice::Limits(of.limits), |of| Choice::LaborLimits(of.labor), |of| Choice::PenStay(of.stay)];
const FEEDING: [Chosen; 6] = [
    |of| Choice::DayRule(of.day_rule),
    |of| Choice::BottleTable(of.bottle_table),
    |of| Choice::WeaningRule(of.weaning_rule),
    |of| Choice::PowderRate(of.powder_rate),
    |of| Choice::PowderRule(of.powder_rule),
    |of| Choice::FreezerLife(of.freezer_life),
];
const CARE: [Chosen; 7] = [
    |of| Choice::Vigor(of.vigor),
    |of| Choice::BreedMeans(of.breed_means),
    |of| Choice::Rings(of.rings),
    |of| Choice::DamsVaccinated(of.dams_vaccinated),
    |of| Choice::ChillLimit(of.chill_limit),
    |of| Choice::CullRules(of.cull_rules),
    |of| Choice::CullSigns(of.cull_signs),
];

impl Part {
    /// Every part, in the order of the page.
    pub const ALL: [Self; 6] =
        [Self::Farm, Self::Vet, Self::AlertTimes, Self::Feeding, Self::Care, Self::Display];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Farm => words::FARM,
            Self::Vet => vet::TITLE,
            Self::AlertTimes => words::ALERT_TIMES,
            Self::Feeding => words::FEEDING,
            Self::Care => words::CARE,
            Self::Display => words::LOOK,
        }
    }

    /// Returns what is in it, in a few words.
    #[must_use]
    pub const fn about(self) -> &'static str {
        match self {
            Self::Farm => words::FARM_ABOUT,
            Self::Vet => vet::ABOUT,
            Self::AlertTimes => words::ALERT_TIMES_ABOUT,
            Self::Feeding => words::FEEDING_ABOUT,
            Self::Care => words::CARE_ABOUT,
            Self::Display => words::LOOK_ABOUT,
        }
    }

    /// Returns the defaults of what the farm has changed here.
    pub(super) fn defaults(self, of: &FarmSettings) -> Vec<Choice> {
        let all: &[Chosen] = match self {
            Self::Farm => &FARM,
            Self::AlertTimes => &ALERT_TIMES,
            Self::Feeding => &FEEDING,
            Self::Care => &CARE,
            // A number is nobody's default, and the look is this phone's.
            Self::Vet | Self::Display => &[],
        };
        let usual = FarmSettings::default();
        all.iter()
            .map(|chosen| (chosen(of), chosen(&usual)))
            .filter(|(is, was)| is != was)
            .map(|(_, was)| was)
            .collect()
    }
}
