//! What was noted, in a line each, and the words of every choice that can be noted.

use yeanling_core::book::{
    Belly, Care, Cause, Event, GroupId, Item, LambingEase, Milk, Ring, Sex, VigorScale, Way,
};
use yeanling_core::flock::Flock;
use yeanling_core::settings::Choice;
use yeanling_core::units::{Amount, System};

use super::common::{clock, feed_mass, mass, number, temperature, typed, volume_as_given};
use super::{animals, danger, illness, labor, life, past, plan, season, settings, stores, watch};

/// Returns a noted thing as a line of a timeline.
pub fn line(event: &Event, flock: &Flock, system: System) -> String {
    match event {
        Event::EweCame { tag } => match tag {
            Some(tag) => format!("Added as ewe {tag}"),
            None => "Added".to_owned(),
        },
        Event::Tagged { tag, .. } => format!("Renamed *{}*", typed(tag)),
        Event::LambBorn { sex, alive, .. } => {
            let sex = match sex {
                Some(Sex::Ewe) => "Ewe lamb",
                Some(Sex::Ram) => "Ram lamb",
                None => "Lamb",
            };
            format!("{sex} {}", if *alive { "born" } else { "born dead" })
        }
        Event::DamGiven { dam, .. } => format!("Dam known: {}", animals::ewe_of(flock, *dam)),
        Event::BirthEase { ease: how, .. } => format!("Birth: {}", ease(*how)),
        Event::Stood { .. } => "Up, standing".to_owned(),
        Event::Sucked { .. } => "Nursed".to_owned(),
        Event::NavelDipped { .. } => "Navel dipped".to_owned(),
        Event::Weighed { mass: weight, .. } => format!("Weighed *{}*", mass(*weight, system)),
        Event::Fed { volume, milk: what, way: how, .. } => {
            format!("Fed *{}*, {}, {}", volume_as_given(*volume, system), milk(*what), way(*how))
        }
        Event::VigorScored { scale, score, .. } => match scale {
            VigorScale::FourGrade => format!("Vigor {score} of 4, 1 is best"),
            VigorScale::TenPoint => format!("Vigor {score} of 10 points, 10 is best"),
            VigorScale::EightPoint => format!("Vigor {score} of 8 points (adapted), 8 is best"),
        },
        Event::BellyFelt { belly: felt, .. } => format!("Belly {}", belly(*felt)),
        Event::SignSeen { sign, .. } => format!("Seen: {}", labor::sign(*sign).to_lowercase()),
        Event::WaterBagSeen { .. } => "Water bag, or waters".to_owned(),
        Event::StrainingSeen { .. } => "Straining hard".to_owned(),
        Event::PartShowing { part, .. } => format!("Showing: *{}*", labor::part(*part).to_lowercase()),
        Event::HandChecked { found, .. } => {
            format!("Internal check: *{}*", labor::found(*found).to_lowercase())
        }
        Event::HelpBegun { .. } => "Help begun".to_owned(),
        Event::VetCalled { .. } => "Vet called".to_owned(),
        Event::LookedAt { .. } => danger::LOOKED.to_owned(),
        Event::NotLambing { .. } => "Not lambing after all".to_owned(),
        Event::AfterbirthPassed { .. } => "Afterbirth passed".to_owned(),
        Event::Accepted { accepts: true, .. } => "Ewe accepts it".to_owned(),
        Event::Accepted { accepts: false, .. } => "Ewe rejects it".to_owned(),
        Event::TemperatureTaken { temperature: warm, .. } => {
            format!("Temperature *{}*", temperature(*warm, system))
        }
        Event::SwallowTried { able: true, .. } => "Holds its head up and swallows".to_owned(),
        Event::SwallowTried { able: false, .. } => "Does not hold its head up or swallow".to_owned(),
        Event::Warmed { .. } => "Warming begun".to_owned(),
        Event::SolidsEaten { mass: eaten, .. } => format!("Ate {} of feed", feed_mass(*eaten, system)),
        Event::Weaned { .. } => "Weaned".to_owned(),
        Event::Ringed { ring: Ring::Tail, .. } => "Tail ringed".to_owned(),
        Event::Ringed { ring: Ring::Castration, .. } => "Ringed (castration)".to_owned(),
        Event::PenMade { name, .. } => format!("Pen {name} set up"),
        Event::PenNamed { name, .. } => format!("Pen renamed *{}*", typed(name)),
        Event::PenCleaned { .. } => "Cleaned and bedded".to_owned(),
        Event::PenClosed { .. } => "Removed".to_owned(),
        Event::PutInPen { animal, pen } => {
            let name = flock.pens.get(pen).map_or("?", |pen| pen.name.as_str());
            format!("{} into pen {name}", animals::animal(flock, *animal))
        }
        Event::LetOut { .. } => "Out of the pen".to_owned(),
        Event::GroupFormed { name } => format!("Group {name} formed"),
        Event::GroupNamed { name, .. } => format!("Group renamed *{}*", typed(name)),
        Event::GroupParted { .. } => "Group ended".to_owned(),
        Event::JoinedGroup { ewe, group } => {
            format!("{} joined group {}", animals::ewe_of(flock, *ewe), group_name(flock, *group))
        }
        Event::LeftGroup { ewe, group } => {
            format!("{} left group {}", animals::ewe_of(flock, *ewe), group_name(flock, *group))
        }
        Event::RamIn { ram, age, .. } => format!("{} in", season::ram(ram.as_deref(), *age)),
        Event::RamOut { .. } => "Ram out".to_owned(),
        Event::CrayonChanged { color, .. } => format!("Crayon now *{}*", typed(color)),
        Event::CrayonMark { color, .. } if color == super::score_ewes::A_MARK => "Crayon mark".to_owned(),
        Event::CrayonMark { color, .. } => format!("Crayon mark: *{}*", typed(color)),
        Event::Scanned { lambs, days, .. } => season::scanned(*lambs, *days),
        Event::Conditioned { score, .. } => format!("Condition *{}*", season::score(*score)),
        Event::EweWeighed { mass: weight, .. } => format!("Weighed *{}*", mass(*weight, system)),
        Event::FeedSet { mass: none, .. } if none.as_kilograms() <= 0.0 => "Extra feed ended".to_owned(),
        Event::FeedSet { mass: feed, .. } => {
            format!("Extra feed: *{}* a ewe a day", feed_mass(*feed, system))
        }
        Event::BoosterGiven { .. } => "Booster given".to_owned(),
        Event::StoreIn { item, amount } => format!("Bought or made: {}", goods(*item, *amount, system)),
        Event::StoreUsed { item, amount } => format!("Used: {}", goods(*item, *amount, system)),
        Event::StoreThrown { item, amount } => format!("Thrown away: {}", goods(*item, *amount, system)),
        Event::StoreCounted { item, amount } => format!("Counted: {}", goods(*item, *amount, system)),
        Event::ColostrumFrozen { from, bags, volume, brix, label } => {
            let (bags, each) = (stores::bags(*bags), volume_as_given(*volume, system));
            let from = typed(&stores::milked_from(flock, *from));
            let read = brix.map(|brix| format!(", {}% Brix", number(brix.as_percent(), 1)));
            let label = label.as_deref().map(|label| format!(", “{label}”"));
            let more = [read, label].into_iter().flatten().collect::<String>();
            format!("Colostrum of {from} frozen: *{bags}* of {each}{more}")
        }
        Event::ColostrumThawed { bags, .. } => format!("Colostrum thawed: *{}*", stores::bags(*bags)),
        Event::ColostrumThrown { bags, .. } => format!("Colostrum thrown away: *{}*", stores::bags(*bags)),
        Event::PutOff { duty, until, .. } => {
            format!("Put off until {}: {}", clock(*until), watch::kind(*duty))
        }
        Event::AllBorn { .. } => "All lambs born".to_owned(),
        Event::Died { cause: of, .. } => format!("Died: {}", cause(*of)),
        Event::Remarked { text, .. } => text.clone(),
        Event::Life(fact) => life::line(fact, flock),
        Event::Care(fact) => care(fact),
        Event::Illness(fact) => illness::noted(fact, system),
        Event::Planning(fact) => plan::line(fact),
        Event::Past(fact) => past::line(fact, flock),
        Event::Chose(choice) => chose(choice, system),
        Event::SameAnimal { keep, also } => {
            format!("{} and {} are one animal", animals::animal(flock, *keep), animals::animal(flock, *also))
        }
        Event::Amended { .. } => "An entry was changed".to_owned(),
        Event::Deleted { .. } => "An entry was deleted".to_owned(),
        Event::Restored { .. } => "An entry was restored".to_owned(),
        Event::Unread(_) => "Written by a newer version; kept as it is".to_owned(),
    }
}

/// A fact of care.
fn care(fact: &Care) -> String {
    match fact {
        Care::VetSaid { said, .. } => danger::said_line(said),
        Care::GlucoseGiven { by, .. } => danger::glucose(*by).to_owned(),
        Care::MouthFelt { mouth, suck, .. } => danger::mouth_line(*mouth, *suck),
        Care::AfterbirthAwaited { seen, .. } => labor::awaited(*seen).to_owned(),
        Care::PutRight { .. } => danger::PUT_RIGHT.to_owned(),
        Care::Settled { .. } => illness::udder::SETTLED_LINE.to_owned(),
        Care::FoundBorn { .. } => danger::FOUND_LINE.to_owned(),
    }
}

fn group_name(flock: &Flock, group: GroupId) -> &str {
    flock.groups.get(&group).map_or("?", |group| group.name.as_str())
}

fn goods(item: Item, amount: Amount, system: System) -> String {
    format!("*{}* {}", stores::amount(item, amount, system), stores::item(item))
}

fn chose(choice: &Choice, system: System) -> String {
    match choice {
        Choice::FarmName(name) => format!("Farm called {name}"),
        Choice::System(system) => format!("Units: {}", settings::system(*system)),
        Choice::Clock(clock) => format!("Clock: {}", settings::clock(*clock)),
        Choice::DayRule(rule) => format!("Colostrum by {}", settings::day_rule(*rule).0),
        Choice::Housing(housing) => format!("Newborns {}", settings::housing(*housing)),
        Choice::BottleTable(table) => format!("Bottle by {}", settings::bottle_table(*table).0),
        Choice::Limits(_) => "Alert times changed".to_owned(),
        Choice::LaborLimits(_) => "Alert times around lambing changed".to_owned(),
        Choice::PenStay(_) => "Stay in the pens changed".to_owned(),
        Choice::FreezerLife(life) => format!("Frozen colostrum keeps {}", settings::freezer_life(*life).0),
        Choice::PowderRate(rate) => format!("Powder at {}", settings::rate(*rate, system)),
        Choice::PowderRule(rule) => format!("Powder to weaning by {}", settings::powder_rule(*rule).0),
        Choice::WeaningRule(rule) => format!("Weaning by {}", settings::weaning_rule(*rule).0),
        Choice::BreedMeans(means) => format!("Birth weights: {}", settings::breed_means(*means).0),
        Choice::CullRules(_) | Choice::CullSigns(_) => "Cull rules changed".to_owned(),
        Choice::Latitude(latitude) => format!("Farm lies {}", settings::latitude(*latitude).0),
        Choice::VetPhone(number) => super::vet::noted(number, "Vet’s number"),
        Choice::VetNightPhone(number) => super::vet::noted(number, "Vet’s night number"),
        Choice::VetSecondPhone(number) => super::vet::noted(number, "Vet’s second night number"),
        Choice::VetAgreed(what) => super::vet::noted_agreed(*what),
        Choice::BreedType(breed) => format!("Kind of sheep: {}", settings::breed_type(*breed).0),
        Choice::Vigor(scale) => format!("Vigor on {}", settings::vigor(*scale).0),
        Choice::ChillLimit(limit) => format!("Chill by {}", settings::chill_limit(*limit).0),
        Choice::Rings(rings) => format!("Rings: {}", settings::rings(*rings)),
        Choice::DamsVaccinated(vaccinated) => settings::dams_vaccinated(*vaccinated).to_owned(),
    }
}

/// Every grade of birth ease, in order.
pub const EASES: [LambingEase; 6] = [
    LambingEase::Alone,
    LambingEase::SlightByHand,
    LambingEase::HardByHand,
    LambingEase::Vet,
    LambingEase::Surgery,
    LambingEase::PlannedSurgery,
];

/// Returns how a birth went.
pub const fn ease(ease: LambingEase) -> &'static str {
    match ease {
        LambingEase::Alone => "no help",
        LambingEase::SlightByHand => "slight help by hand",
        LambingEase::HardByHand => "hard pull by hand",
        LambingEase::Vet => "the vet helped",
        LambingEase::Surgery => "C-section",
        LambingEase::PlannedSurgery => "planned C-section",
    }
}

/// Returns how a birth went, for a button.
pub const fn ease_short(ease: LambingEase) -> &'static str {
    match ease {
        LambingEase::Alone => "No help",
        LambingEase::SlightByHand => "Light pull",
        LambingEase::HardByHand => "Hard pull",
        LambingEase::Vet => "Vet",
        LambingEase::Surgery => "C-section",
        LambingEase::PlannedSurgery => "Planned",
    }
}

/// Every kind of milk, in the order in which a lamb should have it.
pub const MILKS: [Milk; 6] = [
    Milk::DamColostrum,
    Milk::EweColostrum,
    Milk::OtherColostrum,
    Milk::PowderColostrum,
    Milk::Replacer,
    Milk::Milk,
];

/// Returns what was in the bottle.
pub const fn milk(milk: Milk) -> &'static str {
    match milk {
        Milk::DamColostrum => "its dam’s colostrum",
        Milk::EweColostrum => "another ewe’s colostrum",
        Milk::OtherColostrum => "goat’s or cow’s colostrum",
        Milk::PowderColostrum => "powdered colostrum",
        Milk::Replacer => "milk replacer",
        Milk::Milk => "milk",
    }
}

/// Returns how it was given.
pub const fn way(way: Way) -> &'static str {
    match way {
        Way::Bottle => "by bottle",
        Way::Tube => "by tube",
    }
}

/// Returns how a belly felt.
pub const fn belly(belly: Belly) -> &'static str {
    match belly {
        Belly::Full => "full",
        Belly::Hollow => "hollow",
    }
}

/// Every cause of death, in the order of the list.
pub const CAUSES: [Cause; 8] = [
    Cause::Unknown,
    Cause::Starved,
    Cause::Cold,
    Cause::HardBirth,
    Cause::Infection,
    Cause::Accident,
    Cause::Predator,
    Cause::Deformity,
];

/// Returns what an animal died of.
pub const fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Starved => "starved/mismothered",
        Cause::Cold => "cold",
        Cause::HardBirth => "hard birth",
        Cause::Infection => "infection",
        Cause::Predator => "predator",
        Cause::Deformity => "birth defect",
        Cause::Accident => "accident or overlain",
        Cause::Unknown => "not known",
    }
}
