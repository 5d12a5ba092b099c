//! The farm's own choice among rules, and its own limits: a value a rule takes, never a global.
//!
//! Choices of the farm are entries, one choice each, latest by when they were noted. Day or night is the phone's.

mod clock;
mod cull_rules;
mod labor;
mod limits;
mod marking;
mod milk;
mod newborn;
mod season;
mod vet;

pub use clock::Clock;
pub use cull_rules::{CullRules, CullSigns};
pub use labor::{LaborLimits, PenStay};
pub use limits::{Limit, LimitError, Limits};
pub use marking::{DamsVaccinated, RINGS_OWN_DAYS, RingDaysError, RingRule, Rings};
pub use milk::{BottleTable, DayRule, FreezerLife, PowderRule, WeaningRule};
pub use newborn::{BreedMeans, ChillLimit, Housing, VigorInUse};
pub use season::{BreedType, Latitude};
pub use vet::{LEAST_DIGITS, MOST_DIGITS, MOST_SIGNS, VetAgreed, VetPhones, dialed};

use serde::{Deserialize, Serialize};

use crate::units::{Strength, System};

/// Everything the farm has chosen. Kept in the book, one choice an entry, so that every phone agrees.
#[derive(Clone, Debug, PartialEq)]
pub struct FarmSettings {
    /// What the farm is called; empty until it is named.
    pub farm_name: String,
    /// The units people read and type.
    pub system: System,
    /// How the time of day is written.
    pub clock: Clock,
    /// How much colostrum in 24 hours.
    pub day_rule: DayRule,
    /// Where newborns live.
    pub housing: Housing,
    /// How much a bottle lamb takes.
    pub bottle_table: BottleTable,
    /// When the watch speaks up for a newborn.
    pub limits: Limits,
    /// When it speaks up around lambing.
    pub labor: LaborLimits,
    /// How long a pair stays in its pen.
    pub stay: PenStay,
    /// How long frozen colostrum keeps.
    pub freezer_life: FreezerLife,
    /// The strength on the powder's label.
    pub powder_rate: Strength,
    /// How much powder until weaning.
    pub powder_rule: PowderRule,
    /// By which rule a bottle lamb is weaned.
    pub weaning_rule: WeaningRule,
    /// Whose mean birth weights stand in for the flock's own.
    pub breed_means: BreedMeans,
    /// On which scale vigor is scored.
    pub vigor: VigorInUse,
    /// Over which chill index lambs are at risk.
    pub chill_limit: ChillLimit,
    /// Which lambs get rings, and until when.
    pub rings: Rings,
    /// Whether the dams were vaccinated.
    pub dams_vaccinated: DamsVaccinated,
    /// Which kind of sheep, by how long it carries.
    pub breed_type: BreedType,
    /// Where the farm lies.
    pub latitude: Latitude,
    /// From when on a ewe is looked at again.
    pub cull_rules: CullRules,
    /// More that it minds of a ewe.
    pub cull_signs: CullSigns,
    /// Whom to call.
    pub vet_phones: VetPhones,
}

/// The strength taken until the farm reads its label: 200 g/L (a feed maker).
pub const USUAL_POWDER_RATE: Strength = Strength::from_grams_per_liter(200.0);

impl Default for FarmSettings {
    /// Every choice at its own default, and powder at `USUAL_POWDER_RATE`.
    fn default() -> Self {
        Self {
            farm_name: String::new(),
            system: System::default(),
            clock: Clock::default(),
            day_rule: DayRule::default(),
            housing: Housing::default(),
            bottle_table: BottleTable::default(),
            limits: Limits::default(),
            labor: LaborLimits::default(),
            stay: PenStay::default(),
            freezer_life: FreezerLife::default(),
            powder_rate: USUAL_POWDER_RATE,
            powder_rule: PowderRule::default(),
            weaning_rule: WeaningRule::default(),
            breed_means: BreedMeans::default(),
            vigor: VigorInUse::default(),
            chill_limit: ChillLimit::default(),
            rings: Rings::default(),
            dams_vaccinated: DamsVaccinated::default(),
            breed_type: BreedType::default(),
            latitude: Latitude::default(),
            cull_rules: CullRules::default(),
            cull_signs: CullSigns::default(),
            vet_phones: VetPhones::default(),
        }
    }
}

/// One choice, as it is noted in the book.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Choice {
    /// What the farm is called.
    FarmName(String),
    /// The units.
    System(System),
    /// The clock.
    Clock(Clock),
    /// The colostrum rule.
    DayRule(DayRule),
    /// Housed or outdoors.
    Housing(Housing),
    /// The bottle table.
    BottleTable(BottleTable),
    /// The limits of the watch.
    Limits(Limits),
    /// The limits of the watch around lambing.
    LaborLimits(LaborLimits),
    /// The stay in a bonding pen.
    PenStay(PenStay),
    /// How long frozen colostrum keeps.
    FreezerLife(FreezerLife),
    /// The strength on the powder's label, in grams per liter.
    PowderRate(Strength),
    /// How much powder until weaning.
    PowderRule(PowderRule),
    /// The weaning rule.
    WeaningRule(WeaningRule),
    /// Whose mean birth weights.
    BreedMeans(BreedMeans),
    /// The scale for vigor.
    Vigor(VigorInUse),
    /// The limit of the chill index.
    ChillLimit(ChillLimit),
    /// Rings.
    Rings(Rings),
    /// Whether the dams were vaccinated.
    DamsVaccinated(DamsVaccinated),
    /// Which kind of sheep, by how long it carries.
    BreedType(BreedType),
    /// Where the farm lies.
    Latitude(Latitude),
    /// The farm's own marks for keeping or culling.
    #[serde(rename = "keep-marks")]
    CullRules(CullRules),
    /// More that it minds of a ewe.
    CullSigns(CullSigns),
    /// The vet's number by day, as it is written; empty for none.
    VetPhone(String),
    /// The vet's number at night, as it is written; empty for none.
    VetNightPhone(String),
    /// The second number for the night, as it is written; empty for none.
    VetSecondPhone(String),
    /// Something was agreed with the vet for the season; it counts from when it was.
    VetAgreed(VetAgreed),
}

impl FarmSettings {
    /// Says whether the farm keeps hair sheep, which are born lighter than the wool breeds of the printed figures.
    #[must_use]
    pub fn keeps_hair_sheep(&self) -> bool {
        self.breed_type == BreedType::Hair || self.breed_means != BreedMeans::NoBreed
    }

    /// Takes one choice over; one out of its bounds, which only a file can bring, changes nothing.
    pub fn choose(&mut self, choice: &Choice) {
        match choice {
            Choice::FarmName(name) => self.farm_name.clone_from(name),
            Choice::System(system) => self.system = *system,
            Choice::Clock(clock) => self.clock = *clock,
            Choice::DayRule(rule) => self.day_rule = *rule,
            Choice::Housing(housing) => self.housing = *housing,
            Choice::BottleTable(table) => self.bottle_table = *table,
            Choice::Limits(limits) => self.limits = limits.checked().unwrap_or(self.limits),
            Choice::LaborLimits(limits) => self.labor = limits.checked().unwrap_or(self.labor),
            Choice::PenStay(stay) => self.stay = stay.checked().unwrap_or(self.stay),
            Choice::FreezerLife(life) => self.freezer_life = *life,
            Choice::PowderRate(rate) => {
                self.powder_rate = Strength::ON_A_LABEL.check(*rate).unwrap_or(self.powder_rate);
            }
            Choice::PowderRule(rule) => self.powder_rule = *rule,
            Choice::WeaningRule(rule) => self.weaning_rule = *rule,
            Choice::BreedMeans(means) => self.breed_means = *means,
            Choice::Vigor(scale) => self.vigor = *scale,
            Choice::ChillLimit(limit) => self.chill_limit = *limit,
            Choice::Rings(rings) => self.rings = rings.checked().unwrap_or(self.rings),
            Choice::DamsVaccinated(vaccinated) => self.dams_vaccinated = *vaccinated,
            Choice::BreedType(breed) => self.breed_type = *breed,
            Choice::Latitude(latitude) => self.latitude = *latitude,
            Choice::CullRules(marks) => self.cull_rules = marks.checked().unwrap_or(self.cull_rules),
            Choice::CullSigns(signs) => self.cull_signs = signs.checked().unwrap_or(self.cull_signs),
            Choice::VetPhone(number) => take_number(&mut self.vet_phones.day, number),
            Choice::VetNightPhone(number) => take_number(&mut self.vet_phones.night, number),
            Choice::VetSecondPhone(number) => take_number(&mut self.vet_phones.second, number),
            // It is no choice that stands: the flock knows when it was.
            Choice::VetAgreed(_) => {}
        }
    }
}

/// Takes a number over, or lets it go; what cannot be dialed changes nothing.
fn take_number(stood: &mut String, number: &str) {
    if number.is_empty() || dialed(number).is_some() {
        number.trim().clone_into(stood);
    }
}
