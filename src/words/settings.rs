//! Farm settings: the farm's choices.

use yeanling_core::reckon::marking::banned;
use yeanling_core::settings::{
    BottleTable, BreedMeans, BreedType, ChillLimit, Clock, DamsVaccinated, DayRule, FreezerLife, Housing,
    Latitude, Limit, PowderRule, RingRule, Rings, VigorInUse, WeaningRule,
};
use yeanling_core::terms::Ring;
use yeanling_core::units::{Strength, System, TimeDelta};

use super::common::{number, span};

/// The screen's name.
pub const TITLE: &str = "Farm settings";
/// What the screen is for.
pub const SUB: &str = "How this farm does it. Kept in the book, so every phone agrees.";
/// Names the part with the alert times.
pub const ALERT_TIMES: &str = "Alert times";
/// What is in it.
pub const ALERT_TIMES_ABOUT: &str = "Newborn lambs, around lambing, bonding pens";
/// Names the part about feeding.
pub const FEEDING: &str = "Milk and feeding";
/// What is in it.
pub const FEEDING_ABOUT: &str = "Colostrum, bottle, powder, freezer, weaning";
/// Names the part about care.
pub const CARE: &str = "Care and culling";
/// What is in it.
pub const CARE_ABOUT: &str = "Vigor, birth weights, rings, chill, cull rules";
/// What is in the part about the farm.
pub const FARM_ABOUT: &str = "Name, units, clock, kind of sheep";
/// What is in the part about the look.
pub const LOOK_ABOUT: &str = "Day or night look of this phone";
/// Heads the way back to the defaults.
pub const DEFAULTS: &str = "Defaults";
/// Goes back to them.
pub const BACK_TO_DEFAULTS: &str = "Back to defaults";
/// Says what of the farm stays.
pub const DEFAULTS_FARM: &str = "Name, numbers and units stay. You can undo it.";
/// Says that it can be undone.
pub const DEFAULTS_SUB: &str = "All of this page at once. You can undo it.";
/// Says that nothing was changed.
pub const ALL_DEFAULTS: &str = "All at its default. Nothing here was changed.";

/// Returns what is in a part, and how much the farm changed there.
pub fn part(about: &str, changed: usize) -> String {
    if changed == 0 { about.to_owned() } else { format!("{about} · {changed} changed") }
}

/// Heads the look of this phone.
pub const LOOK: &str = "Display";
/// Heads the farm's name.
pub const FARM: &str = "Farm";
/// Labels the farm's name.
pub const FARM_NAME: &str = "Farm name";
/// Heads the units.
pub const UNITS: &str = "Units";
/// Heads the clock.
pub const CLOCK: &str = "Clock";
/// Heads the first-milk rule.
pub const FIRST_MILK: &str = "Colostrum in 24 hours";
/// Heads the housing.
pub const NEWBORNS: &str = "Newborns live";
/// Heads the bottle table.
pub const BOTTLE: &str = "Bottle lambs";
/// Heads the weaning rule.
pub const WEANING: &str = "Weaning";
/// Heads the strength on the label.
pub const POWDER_RATE: &str = "Strength on the powder’s label";
/// Labels the strength on the label.
pub const POWDER_RATE_LABEL: &str = "Grams in a liter of mix";
/// The unit of the strength.
pub const RATE_UNIT: &str = "g/L";
/// Saves the strength.
pub const SAVE_RATE: &str = "Save strength";
/// Heads the powder until weaning.
pub const POWDER: &str = "Powder until weaning";
/// Heads the freezer.
pub const FREEZER: &str = "Frozen colostrum keeps";
/// Heads the chill limit.
pub const CHILL: &str = "Chill alert above, in kJ/m²/h";
/// Heads the limits.
pub const LIMITS: &str = "Newborn lambs";
/// Explains the limits.
pub const LIMITS_SUB: &str = "Minutes after birth; for the navel, after the first dip.";
/// Saves the limits.
pub const SAVE_LIMITS: &str = "Save alert times";
/// Saves the name.
pub const SAVE_NAME: &str = "Save name";
/// Says that it was saved.
pub const SAVED: &str = "Noted in the book.";

/// Returns the units' name.
pub const fn system(system: System) -> &'static str {
    match system {
        System::Metric => "kg, ml, °C",
        System::Us => "lb, fl oz, °F",
    }
}

/// Returns how the time of day is written.
pub const fn clock(clock: Clock) -> &'static str {
    match clock {
        Clock::Phone => "as the phone",
        Clock::Twelve => "6:41 am",
        Clock::TwentyFour => "06:41",
    }
}

/// Returns a colostrum rule's name and a few words about it.
pub const fn day_rule(rule: DayRule) -> (&'static str, &'static str) {
    match rule {
        DayRule::Ahdb200 => ("AHDB, 200 ml/kg (3.05 fl oz/lb)", "our default: a levy board’s plain figure"),
        DayRule::Ruma210 => ("RUMA, 210 ml/kg (3.2 fl oz/lb)", "the lower end of its 210–290"),
        DayRule::TenPercent => ("10% of body weight", "the popular floor, half the guidance"),
    }
}

/// Returns where newborns live.
pub const fn housing(housing: Housing) -> &'static str {
    match housing {
        Housing::Housed => "under a roof",
        Housing::Outdoors => "outdoors",
    }
}

/// Returns a bottle table's name and a few words about it.
pub const fn bottle_table(table: BottleTable) -> (&'static str, &'static str) {
    match table {
        BottleTable::VetSupplier => ("Vet supplier’s table", "our default: steps by week, in ml"),
        BottleTable::UsHandbook => ("US handbook’s table", "smaller feeds, in fl oz"),
    }
}

/// Returns how long frozen colostrum keeps, and a few words about it.
pub const fn freezer_life(life: FreezerLife) -> (&'static str, &'static str) {
    match life {
        FreezerLife::SixMonths => ("6 months", "Ozarks Farm, the strictest"),
        FreezerLife::OneYear => ("1 year", "our default: common practice, between the two published"),
        FreezerLife::TwoYears => ("2 years", "SRUC, at −18 °C (0 °F)"),
    }
}

/// Returns a powder rule's name and a few words about it.
pub const fn powder_rule(rule: PowderRule) -> (&'static str, &'static str) {
    match rule {
        PowderRule::NewZealand => ("New Zealand, 7 kg (15 lb)", "the least published"),
        PowderRule::Ndsu => {
            ("NDSU, 6.8 to 9.1 kg (15 to 20 lb)", "our default: the middle of what is printed")
        }
        PowderRule::FarmersJournal => ("Irish Farmers Journal, 13 kg (29 lb)", "the most published"),
    }
}

/// Returns a weaning rule's name and a few words about it.
pub const fn weaning_rule(rule: WeaningRule) -> (&'static str, &'static str) {
    match rule {
        WeaningRule::FeedMaker => (
            "feed maker’s rule",
            "our default: 35 days, 2.5 × its birth weight, 250 g (9 oz) of solids on 3 days running",
        ),
        WeaningRule::Teagasc => {
            ("Teagasc’s rule", "about 5 weeks, 9 kg (20 lb), 250 g (9 oz) of solids on 3 days running")
        }
        WeaningRule::FourWeeks => {
            ("the four-week rule", "common practice: 4 weeks at the earliest, and the same solids")
        }
    }
}

/// Returns whose mean birth weights, and a few words about it.
pub const fn breed_means(means: BreedMeans) -> (&'static str, &'static str) {
    match means {
        BreedMeans::NoBreed => ("no breed’s", "our default: the flock’s own once there are 15"),
        BreedMeans::Katahdin => ("Katahdin", "unconfirmed"),
        BreedMeans::StCroix => ("St Croix", "unconfirmed; singles only"),
        BreedMeans::Dorper => ("Dorper", "unconfirmed; singles only"),
    }
}

/// Returns a kind of sheep by how long it carries, and a few words about it.
pub const fn breed_type(breed: BreedType) -> (&'static str, &'static str) {
    match breed {
        BreedType::Any => ("any sheep", "our default: 147 days"),
        BreedType::Hair => ("hair sheep", "149.8 days with one, 147.4 with two, 146.7 with three"),
        BreedType::Finn => ("Finn", "144 days"),
        BreedType::Prolific => ("prolific breeds", "145 days"),
        BreedType::Suffolk => ("Suffolk", "146 days"),
        BreedType::Meat => ("meat breeds", "147 days"),
        BreedType::FineWool => ("fine-wool breeds", "150 to 151 days"),
    }
}

/// Heads where the farm lies.
pub const LATITUDE: &str = "Where the farm lies";
/// Says what hangs on it.
pub const LATITUDE_SUB: &str = "Decides when ewes are in season. Out of season the forecast is left wide.";

/// Returns where a farm lies, and when its ewes are in season.
pub const fn latitude(latitude: Latitude) -> (&'static str, &'static str) {
    match latitude {
        Latitude::North => ("north of 30° N", "our default: in season August to January"),
        Latitude::South => ("south of 30° S", "in season February to July"),
        Latitude::Tropics => ("between 30° N and 30° S", "in season all year"),
    }
}

/// Returns a vigor scale's name and a few words about it.
pub const fn vigor(scale: VigorInUse) -> (&'static str, &'static str) {
    match scale {
        VigorInUse::FourGrade => ("four grades", "our default: 1 is best, no instrument"),
        VigorInUse::TenPoint => ("ten points", "10 is best; 8 without an ear oximeter"),
    }
}

/// Returns a chill limit's name and a few words about it.
pub const fn chill_limit(limit: ChillLimit) -> (&'static str, &'static str) {
    match limit {
        ChillLimit::Victoria1000 => ("Agriculture Victoria, 1000", "our default: the stricter"),
        ChillLimit::Murdoch1100 => ("Murdoch, 1100", "cold stress"),
    }
}

/// Returns a ring rule’s name and a few words about it.
pub fn ring_rule(rule: RingRule) -> (String, &'static str) {
    let (name, note) = match rule {
        RingRule::NoRings => ("no rings", "our default: no reminder"),
        RingRule::EnglandWales => ("England and Wales", "only in the first 7 days"),
        RingRule::Germany => {
            ("Germany", "tails under 8 days, only if indispensable; castration rings banned")
        }
        RingRule::NewSouthWales => ("New South Wales", "to 6 months"),
        RingRule::NewZealand => ("New Zealand", "to 6 months"),
        RingRule::Own { days } => return (format!("the farm’s own, {days} days"), "set below"),
    };
    (name.to_owned(), note)
}

/// Returns the farm's choice about rings: by whose rule, and on which lambs.
pub fn rings(rings: Rings) -> String {
    let on = match (rings.tails, rings.ram_lambs) {
        (true, true) => "tails and ram lambs",
        (true, false) => "tails",
        (false, true) => "ram lambs",
        (false, false) => "no lambs",
    };
    match rings.rule {
        RingRule::NoRings => "none".to_owned(),
        RingRule::EnglandWales
        | RingRule::Germany
        | RingRule::NewSouthWales
        | RingRule::NewZealand
        | RingRule::Own { .. } => {
            let told = format!("{on}, {}", ring_rule(rings.rule).0);
            if is_banned(rings) { format!("{told}: castration rings are banned there") } else { told }
        }
    }
}

/// Says whether the farm has chosen a ring that its rule bans: nothing then asks for it.
pub const fn is_banned(rings: Rings) -> bool {
    rings.ram_lambs && banned(rings.rule, Ring::Castration)
}

/// Says what becomes of such a choice.
pub const RINGS_BANNED: &str =
    "Castration rings are banned in Germany: nothing here will ask for one. Ask your vet about other ways.";

/// Returns whether the dams had their vaccine.
pub const fn dams_vaccinated(vaccinated: DamsVaccinated) -> &'static str {
    match vaccinated {
        DamsVaccinated::Unknown => "Dams’ vaccine not known",
        DamsVaccinated::Yes => "Dams vaccinated",
        DamsVaccinated::No => "Dams not vaccinated",
    }
}

/// Returns a powder rate without its unit, as it is typed: "200".
pub fn rate_number(rate: Strength) -> String {
    number(rate.as_grams_per_liter(), 1)
}

/// Returns what helps with the strength on the label.
pub fn powder_rate_hint(usual: Strength, system: System) -> String {
    let usual = rate(usual, system);
    format!("{usual} unless your label says another: a feed maker’s. The label comes first.")
}

/// Returns a powder rate: "200 g/L", "26.7 oz/gal (200 g/L)".
pub fn rate(rate: Strength, system: System) -> String {
    super::common::strength(rate.as_grams_per_liter(), system)
}

/// Returns what a limit is about.
pub const fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::Up => "Up on its feet",
        Limit::Help => "Help it nurse",
        Limit::Red => "Colostrum late",
        Limit::LastCall => "Colostrum deadline",
        Limit::NavelAgain => "Dip the navel again",
        Limit::Look => "Look at a restless ewe every",
        Limit::Restless => "Restless, no waters: examine or vet",
        Limit::HandCheck => "Waters, nothing shows: check inside",
        Limit::StepIn => "Waters, nothing shows: assist",
        Limit::Progress => "Feet or nose: progress within",
        Limit::Neck => "Cervix not open: try for, then vet",
        Limit::PutRight => "Malpresentation: try for, then vet",
        Limit::NextLamb => "Look for the next lamb",
        Limit::NextCheck => "Check for the next lamb",
        Limit::AfterbirthAsk => "Ask for the afterbirth",
        Limit::AfterbirthLate => "Afterbirth late",
        Limit::AfterbirthVet => "Afterbirth: call the vet",
        Limit::StaySingle => "A single stays",
        Limit::StayTwins => "Twins stay",
        Limit::StayMore => "Triplets and more stay",
    }
}

/// Heads the scale for vigor.
pub const VIGOR: &str = "Vigor";
/// Heads the means of a breed.
pub const BREED_MEANS: &str = "Compare birth weights with";
/// Explains them.
pub const BREED_MEANS_SUB: &str = "Your own flock’s mean takes over from 15 lambs of a litter size. A breed’s unconfirmed mean raises no alarm.";
/// Heads the kind of sheep.
pub const BREED_TYPE: &str = "How long your ewes carry";
/// Explains it.
pub const BREED_TYPE_SUB: &str =
    "From mating to lambing. Your own flock’s mean takes over from 15 lambings with a known mark.";
/// Heads the rings.
pub const RINGS: &str = "Rings";
/// Explains them.
pub const RINGS_SUB: &str = "Never in the first 24 h.";
/// Explains them, with what holds of local rules.
pub fn rings_sub(local_rules: &str) -> String {
    format!("{RINGS_SUB} {local_rules}")
}
/// The farm's own limit.
pub const RINGS_OWN: &str = "the farm’s own limit";
/// Labels it.
pub const RINGS_DAYS: &str = "Rings go on before";
/// Its unit.
pub const DAYS: &str = "days";
/// Saves it.
pub const SAVE_DAYS: &str = "Save days";
/// Asks which lambs.
pub const RINGS_ON: &str = "On";
/// Tails alone.
pub const RINGS_TAILS: &str = "tails";
/// Ram lambs alone.
pub const RINGS_RAMS: &str = "ram lambs";
/// Both.
pub const RINGS_BOTH: &str = "tails and ram lambs";
/// Heads the dams' vaccine.
pub const DAMS: &str = "Clostridial vaccine of the dams";
/// Explains it.
pub const DAMS_SUB: &str = "Not known is our default and taken as none: the lambs’ own comes earlier then. University of Maryland; the label wins.";

/// Returns what the farm's own limit may be.
pub fn between_days(least: u16, most: u16) -> String {
    format!("{least} to {most} days. Local rules may be stricter.")
}

/// Heads how this phone looks: as the phone has it.
pub const LOOK_PHONE: &str = "As the phone";
/// Ink on paper.
pub const LOOK_DAY: &str = "Day";
/// Dim amber on black.
pub const LOOK_NIGHT: &str = "Night";
/// Explains the look.
pub const LOOK_SUB: &str = "This phone alone. Night is dim amber on black, kind to eyes and ewes.";
/// Explains the farm's name.
pub const FARM_NAME_SUB: &str = "Shown above the Watch and in the names of your files.";
/// The unit of the limits.
pub const MINUTES: &str = "min";
/// Says that nothing was changed.
pub const UNCHANGED: &str = "Nothing was changed.";

/// The unit of the stays.
pub const HOURS: &str = "h";
/// Heads the limits around lambing.
pub const LABOR: &str = "Around lambing";
/// Explains them.
pub const LABOR_SUB: &str = "From waters, from what shows, from a hand, from the last lamb. Stricter is fine; ask your vet before looser.";
/// Heads the stays in the pens.
pub const STAY: &str = "Bonding pens";
/// Explains them.
pub const STAY_SUB: &str =
    "No pair is ready to turn out before its stay is over. Nor while a lamb is unfed, cold or rejected.";
/// Saves the stays.
pub const SAVE_STAY: &str = "Save the stays";

/// Returns what stands under a limit: in hours too from two hours on, and what holds until the farm sets its own:
/// "6 h 30 min · usual: 360".
pub fn usual(typed: Option<u16>, usual: u16, unit: &str) -> String {
    let usual = format!("usual: {usual}");
    match typed {
        Some(minutes) if unit == MINUTES && minutes >= 120 => {
            format!("{} · {usual}", span(TimeDelta::minutes(minutes.into())))
        }
        Some(_) | None => usual,
    }
}

/// Returns what is wrong with a limit that is no whole number.
pub fn not_whole(given: &str, usual: u16) -> String {
    if given.is_empty() {
        format!("Nothing is typed. Type a whole number, such as {usual}.")
    } else {
        format!("“{given}” is not a whole number. Type it like {usual}.")
    }
}
