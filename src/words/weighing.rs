//! Weigh lambs: one after another over the scales, and how they grew.

use yeanling_core::flock::Reared;
use yeanling_core::reckon::adjusted_weight::{Adjusted, DamAge, NotAdjusted, ToAge};
use yeanling_core::seasons::{ClassGain, Grown, NoAdjusted};
use yeanling_core::units::{Mass, System};

use super::common::{mass, number};

/// The screen's name.
pub const TITLE: &str = "Weigh lambs";
/// Says that there is none.
pub const NO_LAMBS: &str = "No live lambs this season.";
/// Asks for the tag or the mark.
pub const FIND: &str = "Find by tag or mark";
/// Goes to the next without a weight.
pub const SKIP: &str = "Skip";
/// Goes back to the one before.
pub const BACK: &str = "Back one";
/// Notes the weight and goes on.
pub const NEXT: &str = "Save, next";
/// Starts over.
pub const AGAIN: &str = "Start again";
/// Says that all were gone through.
pub const ALL_DONE: &str = "All lambs done.";
/// Says that nothing was typed.
pub const NOTHING: &str = "Type the weight, or skip it.";
/// Heads weaning.
pub const WEANING: &str = "Weaning";
/// Asks whether all of them are weaned.
pub const WEAN_ASK: &str = "Wean them all?";
/// Heads how they grew.
pub const GROWN: &str = "How they grew";
/// Says that no weight is late enough.
pub const NONE_GROWN: &str = "A weight at two weeks or older shows how a lamb grew.";
/// What may be set side by side.
pub const ALIKE: &str = "Compare only lambs of one group, fed alike. Those reared by hand are listed below.";
/// Chooses the age to set them side by side at.
pub const TO_AGE: &str = "Age";
/// A lamb that lags.
pub const LAGS: &str = "*lags behind*";
/// Heads the gains by litter.
pub const BY_LITTER: &str = "Gain by litter";
/// Heads the gains by the age of the dam.
pub const BY_DAM: &str = "Gain by age of the dam";

/// Returns how far the round has come: "7 of 24 · weighed today 5".
pub fn place(at: usize, of: usize, weighed: usize) -> String {
    format!("{} of {of} · weighed today *{weighed}*", at + 1)
}

/// Asks about a weight unlike the last: "It weighed 20 kg on 27 Aug. If 2.1 kg is right, tap Save again."
pub fn odd(before: &str, when: &str, typed: &str) -> String {
    format!("It weighed {before} on {when}. If {typed} is right, tap Save again.")
}

/// Returns who can be weaned: "24 lambs with their ewes, six weeks or older".
pub fn with_ewes(lambs: usize) -> String {
    let lambs = if lambs == 1 { "*1* lamb".to_owned() } else { format!("*{lambs}* lambs") };
    format!("{lambs} with their ewes, six weeks or older. Wean a bottle lamb on its own screen.")
}

/// Returns the button that weans them: "Wean all 24…".
pub fn wean(lambs: usize) -> String {
    if lambs == 1 { "Wean it".to_owned() } else { format!("Wean all {lambs}") }
}

/// Returns the button that says so: "Yes, all 24 today".
pub fn weaned(lambs: usize) -> String {
    if lambs == 1 { "Yes, today".to_owned() } else { format!("Yes, all {lambs} today") }
}

/// Returns what it weighed, and how old it was: "*18 kg* at 40 days".
pub fn weighed(weight: Mass, days: i64, system: System) -> String {
    format!("*{}* at {days} days", mass(weight, system))
}

/// Returns what it is and what it weighed last.
pub fn last(kind: &str, days: i64, last: Option<&str>) -> String {
    let last = last.map(|last| format!(" · last {last}")).unwrap_or_default();
    format!("{kind} · {days} days{last}")
}

/// Returns a gain: "286 g a day", or "0.63 lb a day".
pub fn gain(grams: f64, system: System) -> String {
    match system {
        System::Metric => format!("{} g a day", number(grams, 0)),
        System::Us => format!("{} lb a day", number(Mass::from_kilograms(grams / 1000.0).as_pounds(), 2)),
    }
}

/// Returns how a lamb grew: "20.4 kg at 58 days, 281 g a day since birth".
pub fn grew(grown: &Grown, system: System) -> String {
    let mut text = format!("*{}* at {} days", mass(grown.mass, system), grown.age.num_days());
    if let Some(grams) = grown.since_birth {
        text += &format!(", *{}* since birth", gain(grams, system));
    }
    if let Some(grams) = grown.since_last {
        text += &format!(", {} since the last", gain(grams, system));
    }
    text
}

/// Returns an age to set lambs side by side at, and how many were weighed for it: "60 days (24)".
pub fn age(to: ToAge, lambs: usize) -> String {
    format!("{} days ({lambs})", to.days())
}

/// Says in which order lambs stand: "Adjusted to *60* days. Those that lag first, then the lightest."
pub fn in_order(to: ToAge) -> String {
    format!("Adjusted to *{}* days. Those that lag first, then the lightest.", to.days())
}

/// Says from when to when the gains of a season are: "Gain from birth to *60* days, by the weight nearest to that age."
pub fn gain_to(to: ToAge) -> String {
    format!("Gain from birth to *{}* days, by the weight nearest to that age.", to.days())
}

/// Returns its adjusted weight, or why there is none.
pub fn alike(adjusted: &Result<Adjusted, NoAdjusted>, system: System) -> String {
    match adjusted {
        Ok(adjusted) => {
            format!("adjusted to {} days: *{}*", adjusted.at.days(), mass(adjusted.mass, system))
        }
        Err(NoAdjusted::NoBirthWeight) => "no birth weight, so not adjusted".to_owned(),
        Err(NoAdjusted::ByHand) => "reared by hand".to_owned(),
        Err(NoAdjusted::RearerUnknown) => "who rears it is not known".to_owned(),
        Err(NoAdjusted::Table(NotAdjusted::WrongAge(_))) => "not weighed near that age".to_owned(),
        Err(NoAdjusted::Table(NotAdjusted::Birth(_))) => "its birth weight is out of range".to_owned(),
        Err(NoAdjusted::Table(NotAdjusted::NoFactor { born, reared })) => {
            format!("born one of {born}, reared one of {reared}: no published factor")
        }
    }
}

/// Returns a class by litter: "twins, reared as twins".
pub fn litter((born, reared): (u8, Option<u8>)) -> String {
    let name = |count: u8| match count {
        1 => "single",
        2 => "twin",
        _ => "triplet or more",
    };
    match reared {
        Some(reared) => format!("born {}, reared {}", name(born), name(reared)),
        None => format!("born {}, reared by hand", name(born)),
    }
}

/// Returns a class by the age of the dam.
pub const fn dam_age(age: DamAge) -> &'static str {
    match age {
        DamAge::One => "one year",
        DamAge::Two => "two years",
        DamAge::ThreeToSix => "three to six years",
        DamAge::OverSix => "over six years",
    }
}

/// Returns how many lambs a class has.
pub fn lambs(gained: ClassGain) -> String {
    format!("{} {}", gained.lambs, if gained.lambs == 1 { "lamb" } else { "lambs" })
}

/// Returns how a lamb was born and reared.
pub fn born_and_reared(born: u8, reared: Option<Reared>) -> String {
    match reared {
        Some(Reared::ByEwe(count)) => litter((born.min(3), Some(count.min(3)))),
        Some(Reared::ByHand) => litter((born.min(3), None)),
        None => String::new(),
    }
}
