//! An animal's life beyond birth and milk: fostering, marks, medicines, leaving, and what is refused of it.

use yeanling_core::book::{BirthDay, Castration, CullReason, Departure, Life, NoBirthDay, Route, Treatment};
use yeanling_core::flock::{Flock, Gone, IN_COLOSTRUM_AFTER, Left, Treated};
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::units::{Mass, Moment, Price, System};
use yeanling_core::watch::{LifeRejection, Product, Withdrawal};

use super::animals;
use super::common::{capital, date, day_and_clock, long_date, mass, number, short_date, typed};

/// Heads what can be noted of a life.
pub const LIFE: &str = "Records";
/// Opens fostering.
pub const FOSTER: &str = "Foster";
/// Asks for the foster dam.
pub const FOSTER_ASK: &str = "Which ewe will rear it?";
/// Says what fostering changes.
pub const FOSTER_SUB: &str =
    "Its birth stays with its own dam. Be sure it is full of colostrum before you move it.";
/// Says why no lamb is fostered onto her.
pub const SHE_ABORTED: &str =
    "She aborted this season. Never foster a lamb onto her: it can catch what she has.";

/// Returns which ewes are not offered, and why.
pub fn aborted_left_out(ewes: &[String]) -> String {
    format!("Aborted this season, so not listed: {}. Never foster onto them.", ewes.join(", "))
}

/// Returns which lambs are not offered, and why.
pub fn lambs_left_out(lambs: &[String]) -> String {
    format!("Not listed, their ewe aborted: {}. They can carry what she has.", lambs.join(", "))
}

/// Opens the choice of a lamb to rear.
pub const TAKE_ON: &str = "Foster a lamb on";
/// Asks for the lamb.
pub const TAKE_ON_ASK: &str = "Which lamb will she rear?";
/// Gives her a lamb that is in danger or on hold, once that was read.
pub const TAKE_ON_ALL_THE_SAME: &str = "Foster all the same";
/// Says that there is none.
pub const NO_YOUNG_LAMBS: &str = "No lamb under two weeks old is with another ewe or on the bottle.";
/// A lamb that is fed by hand.
pub const ON_BOTTLE: &str = "on the bottle";
/// A lamb whose ewe is dead, unknown or turns it away.
pub const ALONE: &str = "without a ewe";
/// Says that not all young lambs are offered.
pub fn more_young(lambs: usize) -> String {
    format!("And {lambs} more: open the lamb and tap Foster.")
}
/// Heads the lambs of others that she rears.
pub const FOSTERED_ON: &str = "Fostered to her";
/// Opens a mark.
pub const MARK: &str = "Paint mark";
/// Asks for the mark.
pub const MARK_ASK: &str = "What mark is on it?";
/// Labels the mark.
pub const MARK_LABEL: &str = "Mark";
/// Notes what was found in a dead animal.
pub const EXAMINED: &str = "Post-mortem";
/// Asks for it.
pub const EXAMINED_ASK: &str = "What did the post-mortem find?";
/// Labels it.
pub const EXAMINED_LABEL: &str = "What was found";
/// The care it needs.
pub const EXAMINED_HINT: &str = "By the vet, a lab or you. Wear gloves: what killed it may harm people.";
/// Opens a treatment.
pub const TREAT: &str = "Medicine";
/// Heads a treatment.
pub const TREAT_ASK: &str = "What was given?";
/// Medicines that were given before.
pub const BEFORE: &str = "Given before";
/// Names the medicine.
pub const MEDICINE: &str = "Name of the medicine";
/// How much.
pub const AMOUNT: &str = "Amount, as the label or vet says";
/// By which way.
pub const ROUTE: &str = "How it was given";
/// Against what.
pub const REASON: &str = "For what";
/// The batch.
pub const BATCH: &str = "Batch number";
/// Who gave it.
pub const BY: &str = "Who gave it";
/// The days for meat.
pub const MEAT_DAYS: &str = "Meat withdrawal";
/// The days for milk.
pub const MILK_DAYS: &str = "Milk withdrawal";
/// What an empty field means.
pub const DAYS_HINT: &str =
    "From the label, or longer if the vet says so. Blank: not known, so it stays in withdrawal.";
/// The unit.
pub const DAYS: &str = "days";
/// Folds the rest of the record.
pub const RECORD: &str = "More details";
/// Time not known, only the day.
pub const DAY_ONLY: &str = "Time not known, only the day";
/// When it was given.
pub const WHEN: &str = "When";
/// A medicine that is the booster before lambing.
pub const IS_BOOSTER: &str = "Booster before lambing";
/// The booster, where its name was never noted.
pub const BOOSTER: &str = "Booster";
/// Heads the booster of a group.
pub const BOOST_ASK: &str = "Which booster was given?";

/// Says who has it: "Noted for 12 ewes that have not had it."
pub fn boosted(ewes: usize) -> String {
    match ewes {
        0 => "Every ewe here has had it.".to_owned(),
        1 => "Noted for *1 ewe* that has not had it.".to_owned(),
        ewes => format!("Noted for *{ewes} ewes* that have not had it."),
    }
}

/// Returns that a lamb's dam had her booster: "Dam boosted *9 Mar*"; so late that it hardly counts, that too.
pub fn dam_boosted(at: Moment, born: Moment) -> String {
    let days = born.since(at).num_days();
    let day = short_date(at.local().date());
    if born.since(at) < IN_COLOSTRUM_AFTER {
        format!("Dam boosted *{day}*, {days} days before the birth: too late to count on")
    } else {
        format!("Dam boosted *{day}*")
    }
}

/// What every medicine record needs to hear.
pub const TREAT_CAUTION: [&str; 2] = [
    "Label and vet come first. Yeanling works out no doses.",
    "Your country’s law says what to record, and for how long.",
];
/// Opens how it left.
pub const LEAVE: &str = "Sold or gone";
/// Asks how it left.
pub const LEAVE_ASK: &str = "How did it leave?";
/// On which day it left.
pub const LEAVE_DAY: &str = "Day";
/// Says that what was typed is not a day.
pub const NO_LEAVE_DAY: &str = "That is not a date. Enter the day it left.";
/// What it was sold for.
pub const PRICE: &str = "Price";
/// Whose money that is.
pub const PRICE_HINT: &str = "In your own money, for this animal. Blank if none.";
/// What it weighed then.
pub const LEAVE_WEIGHT: &str = "Weight that day";
/// Why it was culled.
pub const CULL: &str = "Culled for";
/// Folds why it was culled.
pub const CULL_FOLD: &str = "Was it culled?";
/// It was no cull.
pub const NOT_CULLED: &str = "not a cull";
/// To whom.
pub const TO: &str = "To whom or where, if you like";
/// Asks for one of them.
pub const NO_HOW: &str = "Tap how it left.";
/// Keeps a ewe lamb.
pub const KEEP: &str = "Keep for breeding";
/// Castrates.
pub const CASTRATE: &str = "Castrated";
/// Asks how.
pub const CASTRATE_ASK: &str = "How was it castrated?";
/// What castration needs.
pub const CASTRATE_CAUTION: &str =
    "Ages, methods and pain relief are set by law and differ by country. Check yours, and ask your vet.";
/// Opens what is known of a ewe.
pub const DESCRIBE: &str = "Born, breed";
/// Heads it.
pub const DESCRIBE_ASK: &str = "Birth and breed";
/// When she was born.
pub const BORN: &str = "Year or day of birth";
/// How to write it.
pub const BORN_HINT: &str = "2022, or 2022-03-14.";
/// Her breed.
pub const BREED: &str = "Breed";
/// Leads from a ewe to the lamb she was.
pub const WAS: &str = "Her life as a lamb";

/// Every way of giving a medicine.
pub const ROUTES: [Route; 6] =
    [Route::Injection, Route::Mouth, Route::Skin, Route::Eye, Route::Udder, Route::Other];

/// Returns how a medicine was given.
pub const fn route(route: Route) -> &'static str {
    match route {
        Route::Mouth => "by mouth",
        Route::Injection => "by injection",
        Route::Skin => "on the skin",
        Route::Eye => "in the eye",
        Route::Udder => "in the udder",
        Route::Other => "otherwise",
    }
}

/// Every way of leaving; the last is for an animal in withdrawal alone.
pub const DEPARTURES: [Departure; 5] = [
    Departure::Sold,
    Departure::Slaughtered,
    Departure::Given,
    Departure::Missing,
    Departure::SoldWithWarning,
];

/// Returns how an animal left.
pub const fn departure(how: Departure) -> &'static str {
    match how {
        Departure::Sold => "Sold",
        Departure::SoldWithWarning => "Sold, buyer told of the withdrawal in writing",
        Departure::Slaughtered => "Slaughtered to be eaten",
        Departure::Given => "Given away",
        Departure::Missing => "Missing",
    }
}

/// Returns a price in the farm's own money: "180", "182.50".
pub fn price(price: Price) -> String {
    let money = price.as_money();
    if money.fract().abs() < 0.005 { format!("{money:.0}") } else { format!("{money:.2}") }
}

/// Returns why an animal was culled.
pub const fn cull_reason(why: CullReason) -> &'static str {
    match why {
        CullReason::Udder => "udder or teats",
        CullReason::Age => "teeth or age",
        CullReason::Empty => "empty or missed a season",
        CullReason::Prolapse => "prolapse",
        CullReason::Lambing => "trouble at lambing",
        CullReason::Mothering => "poor mothering",
        CullReason::PoorLambs => "poor lambs",
        CullReason::Feet => "lame or bad feet",
        CullReason::Condition => "stays thin",
        CullReason::Health => "often sick, or worms",
        CullReason::Temper => "temper",
        CullReason::Other => "another reason",
    }
}

/// Returns what is known of an animal that is here no more: "sold for *180*, weighed *62 kg*, culled for udder or teats".
pub fn gone_more(gone: &Gone, weight: Option<Mass>, system: System) -> String {
    let price = gone.price.map(|sold| format!("sold for *{}*", price(sold)));
    let weight = weight.map(|weight| format!("weighed *{}*", mass(weight, system)));
    let culled = gone.culled.map(|why| format!("culled: *{}*", cull_reason(why)));
    capital(&[price, weight, culled].into_iter().flatten().collect::<Vec<_>>().join(" · "))
}

/// Asks of what a lamb died that was born dead.
pub const CAUSE: &str = "Cause";

/// Returns what is known of a lamb that was born dead: "Ram lamb · weighed *3.2 kg* · cause: *hard birth*".
pub fn born_dead(sex: &str, weight: Option<&str>, cause: Option<&str>) -> String {
    let weight = weight.map(|weight| format!("weighed *{weight}*"));
    let cause = cause.map(|cause| format!("cause: *{cause}*"));
    capital(&std::iter::once(sex.to_owned()).chain(weight).chain(cause).collect::<Vec<_>>().join(" · "))
}

/// Returns how a lamb was castrated.
pub const fn castration(way: Castration) -> &'static str {
    match way {
        Castration::Cut => "with the knife",
        Castration::Clamped => "with the clamp",
    }
}

/// Returns a fact of a life as a line of a timeline.
pub fn line(life: &Life, flock: &Flock) -> String {
    match life {
        Life::Fostered { dam, lamb } => {
            format!(
                "{} fostered to *{}*",
                typed(&animals::lamb_of(flock, *lamb)),
                typed(&animals::ewe_of(flock, *dam))
            )
        }
        Life::Marked { mark, .. } => format!("Marked *{}*", typed(mark)),
        Life::KeptAsEwe { .. } => "Kept for breeding".to_owned(),
        Life::Described { born, breed, .. } => {
            let born = born.map(|born| format!("Born {}", birth_day(born)));
            let breed = breed.as_ref().map(|breed| format!("breed {breed}"));
            let parts: Vec<String> = born.into_iter().chain(breed).collect();
            if parts.is_empty() { "Described".to_owned() } else { parts.join(", ") }
        }
        Life::Castrated { way, .. } => format!("Castrated {}", castration(*way)),
        Life::Treated { treatment, .. } => treatment_line(treatment),
        Life::Boosted { treatment, .. } => format!("Booster: {}", treatment_line(treatment)),
        Life::SoldFor { price: sold, .. } => format!("Sold for *{}*", price(*sold)),
        Life::Culled { why, .. } => format!("Culled: {}", cull_reason(*why)),
        Life::Went { how, to, .. } => match to {
            Some(to) => format!("{}: {to}", departure(*how)),
            None => departure(*how).to_owned(),
        },
        Life::Examined { finding, .. } => format!("Post-mortem: {finding}"),
    }
}

/// Returns a treatment in a line: "*Drench*, 8 ml, by mouth, against worms; meat withdrawal 8 days".
pub fn treatment_line(treatment: &Treatment) -> String {
    let mut parts = vec![format!("*{}*", typed(&treatment.product))];
    parts.extend(treatment.amount.as_deref().map(typed));
    parts.extend(treatment.route.map(|way| route(way).to_owned()));
    parts.extend(treatment.reason.as_ref().map(|reason| format!("against {}", typed(reason))));
    parts.extend(treatment.batch.as_ref().map(|batch| format!("batch {}", typed(batch))));
    parts.extend(treatment.by.as_ref().map(|by| format!("by {}", typed(by))));
    let days = |what: &str, days: Option<u16>| match days {
        Some(1) => format!("{what} withdrawal 1 day"),
        Some(days) => format!("{what} withdrawal {days} days"),
        None => format!("{what} withdrawal not known"),
    };
    format!("{}; {}", parts.join(", "), days("meat", treatment.meat_days))
}

/// Returns a treatment that was given, in a line; of the booster that it was that.
pub fn given_line(given: &Treated) -> String {
    let line = treatment_line(&given.treatment);
    if given.booster { format!("Booster: {line}") } else { line }
}

/// Returns when an animal was born.
pub fn birth_day(born: BirthDay) -> String {
    match born {
        BirthDay::Year(year) => year.to_string(),
        BirthDay::Day(day) => long_date(day),
    }
}

/// Returns what is withheld and until when: "Meat withdrawal: until 12 Mar 14:30 (Drench)".
pub fn withdrawal(product: Product, held: &Withdrawal, now: Moment) -> String {
    let what = match product {
        Product::Meat => "Meat",
        Product::Milk => "Milk",
    };
    format!("{what} withdrawal: {} ({})", until(held.usable, now), typed(&held.product))
}

/// Returns until when: "until 12 Mar 14:30", "before 8 Mar", or that nobody knows.
pub fn until(usable: Usable, now: Moment) -> String {
    match usable {
        Usable::From(at) => format!("until *{}*", day_and_clock(at, now)),
        Usable::FromDay(day) => format!("until the start of *{}*", short_date(day)),
        Usable::Unknown => "*not known*, check the label or ask your vet".to_owned(),
    }
}

/// Returns how and when an animal left.
pub fn left(left: &Left) -> String {
    let to = left.to.as_ref().map(|to| format!(": {to}")).unwrap_or_default();
    format!("{} on {}{to}. The record stays.", departure(left.how), date(left.at))
}

/// Returns with whom a fostered lamb is: "with Ewe 41".
pub fn with_ewe(name: &str) -> String {
    format!("fostered to *{}*", typed(name))
}

/// Says that she is a ewe now.
pub fn kept(name: &str) -> String {
    format!("Kept for breeding as {name}.")
}

/// Returns why a birth day cannot be read.
pub fn no_birth_day(error: &NoBirthDay) -> String {
    match error {
        NoBirthDay::Unknown(text) => format!("“{text}” is not a year or a date. Enter 2022 or 2022-03-14."),
        NoBirthDay::TwoWays(text) => {
            format!("“{text}” can be read day first or month first. Enter it as 2022-03-14.")
        }
    }
}

/// Returns why something of a life cannot be noted.
pub fn rejection(rejection: &LifeRejection, now: Moment, system: System) -> String {
    let when = |at: Moment| day_and_clock(at, now);
    match rejection {
        LifeRejection::TagWorn { tag, .. } => {
            format!("Tag {tag} is on another live animal. Use another tag or merge the two.")
        }
        LifeRejection::AlreadyDead { died } => {
            format!("Its death is noted already ({}). Change that entry if it is wrong.", when(*died))
        }
        LifeRejection::NotDead => "Its death is not noted. Note it first.".to_owned(),
        LifeRejection::NotGone => "It has not left the flock. First note how it left.".to_owned(),
        LifeRejection::Price(error) => format!(
            "{} is out of range. Enter {} to {}.",
            price(error.given),
            price(error.allowed.least),
            price(error.allowed.most)
        ),
        LifeRejection::AfterLeft { at, left } => {
            format!("It left at {}, so this cannot be at {}.", when(*left), when(*at))
        }
        LifeRejection::WithHer => "It is already with this ewe.".to_owned(),
        LifeRejection::WrongSex => {
            "That does not fit its sex. If the sex is wrong, change the birth entry.".to_owned()
        }
        LifeRejection::TooYoungToKeep { from } => {
            format!("She counts as a lamb until {}. You can keep her for breeding after that.", when(*from))
        }
        LifeRejection::Kept => "She is already kept for breeding.".to_owned(),
        LifeRejection::BirthYear { given, least, most } => {
            format!("{given} is out of range. Enter {least} to {most}, and no day to come.")
        }
        LifeRejection::SheIsAEwe => {
            "She was put to a ram, has lambs, or was born here as a ewe lamb. So she is no ram.".to_owned()
        }
        LifeRejection::NotARam => "The sire is not a ram of your book.".to_owned(),
        LifeRejection::OwnParent => "An animal is not its own dam or sire.".to_owned(),
        LifeRejection::ParentYounger { parent, own } => {
            format!("Born in {own}, so its dam or sire is not of {parent}. Check both years.")
        }
        LifeRejection::LitterOf { given, most } => {
            format!("{given} is out of range for a litter. Enter 1 to {most}.")
        }
        LifeRejection::TooManyDays { given, most } => {
            format!("{given} days is out of range. Enter 0 to {most}.")
        }
        LifeRejection::KeepMark { most } => format!("Enter 1 to {most}, or leave it blank."),
        LifeRejection::Withdrawal(held) => format!(
            "{}. Do not sell or slaughter until then. Where your law allows it, choose “Sold, buyer told of the withdrawal in writing”.",
            withdrawal(Product::Meat, held, now).replace('*', "")
        ),
        LifeRejection::Growth { before, at, grams_a_day } => format!(
            "It weighed {} at {}. That would be {} g a day, more than any lamb. If the other weight is wrong, change that one.",
            mass(*before, system),
            when(*at),
            number(*grams_a_day, 0)
        ),
    }
}
