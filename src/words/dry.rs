//! Calculators for a scouring lamb and for the ketones of a ewe.

use yeanling_core::reckon::illness::fluids::{Dry, EVERY, NoFluids};
use yeanling_core::reckon::illness::ketones::{Band, CLINICAL_FROM, KETOTIC_FROM};
use yeanling_core::reckon::illness::{Ailment, Urgency, lamb};
use yeanling_core::units::{Ketones, OutOfBounds, System, Volume};

use super::common::volume;
use super::help::illness::more;
use super::illness::ketones;
use super::{errors, illness};

/// The row of the tables that it is about.
pub const SCOURS: Ailment = Ailment::Lamb(lamb::Row::Scour);

/// What a scouring lamb drinks.
pub const FLUIDS: &str = "Scours";
/// What a reading of ketones means.
pub const KETONES: &str = "Ketones";
/// Asks how dry it is.
pub const HOW_DRY: &str = "How dry is it?";
/// Asks whether it may be given by mouth.
pub const BY_MOUTH: &str = "By mouth only if: head up, swallows, belly soft, 37 °C (98.6 °F) or warmer.";
/// Asks for all of them.
pub const ALL_FOUR: &str = "Are all four true?";
/// It may.
pub const YES: &str = "Yes, all of it";
/// It may not, or nobody knows.
pub const NO: &str = "No, or not sure";
/// What to enter first.
pub const TYPE: &str = "Enter its weight, how dry it is and the answer above to see the fluids.";
/// Heads a day's fluids.
pub const DAY: &str = "In 24 h, at least";
/// Heads what it has lost.
pub const LOST: &str = "Lost so far";
/// Heads a day's upkeep.
pub const UPKEEP: &str = "A day’s upkeep";
/// Heads the most at once.
pub const AT_ONCE: &str = "Each time, at most";
/// What goes with it.
pub const BESIDE: &str =
    "This is beside its milk and apart from it: milk goes on. Mix electrolyte by its label.";
/// Nothing may be given by mouth.
pub const NOTHING: &str = "Nothing by mouth, and no milk. Call your vet now.";
/// It is too dry for the mouth.
pub const NEEDS_A_VEIN: &str = "Over 8% needs fluids into a vein. Call your vet now.";
/// What to enter first.
pub const TYPE_KETONES: &str = "Enter a reading to see what it means.";
/// A reading cancels no sign.
pub const GO_BY_HER: &str = "Go by what you see. A low reading cancels no sign.";

/// Returns how dry a lamb is, for a button, with how that looks.
pub const fn dry(dry: Dry) -> (&'static str, &'static str) {
    match dry {
        Dry::Little => ("up to 5%", "eyes normal, a skin fold drops back in under 2 seconds"),
        Dry::EyesSunken => ("6%", "eyes sunken a little"),
        Dry::FoldStands => ("8%", "a skin fold stands 2 to 5 seconds"),
        Dry::Deep => ("over 8%", "eyes deep, a gap; a fold stands 6 seconds or more; or it cannot stand"),
    }
}

/// Returns how urgent it is.
pub fn urgency(dry: Dry) -> String {
    match dry.urgency() {
        Urgency::Watch(_) => more(SCOURS).call.to_owned(),
        other => illness::urgency(other),
    }
}

/// Returns how often it is given: "the first at once, then every 3 to 6 hours".
pub fn how_often() -> String {
    let (least, most) = EVERY;
    format!("The first at once, then every {} to {} hours.", least.num_hours(), most.num_hours())
}

/// Returns why no volume is told.
pub fn no_fluids(error: &NoFluids, system: System) -> String {
    match error {
        NoFluids::Weight(wrong) => errors::weight(wrong, system),
        NoFluids::NeedsAVein { .. } => NEEDS_A_VEIN.to_owned(),
        NoFluids::NothingByMouth => NOTHING.to_owned(),
    }
}

/// Returns the most at once behind its figure: "7.8 fl oz · 50 ml/kg (0.75 fl oz/lb)".
pub fn at_once_also(at_once: Volume, other: System) -> String {
    format!("{} · 50 ml/kg (0.75 fl oz/lb)", volume(at_once, other))
}

/// Returns what a reading means.
pub fn band(band: Band) -> String {
    let (ketotic, clinical) = (ketones(KETOTIC_FROM), ketones(CLINICAL_FROM));
    match band {
        Band::Low => format!("Under {ketotic}: low."),
        Band::Ketotic => {
            format!("{ketotic} or more: ketotic. Any sign with it, or close to lambing: call your vet today.")
        }
        Band::Clinical => format!("{clinical} or more: call your vet now."),
    }
}

/// Returns what is wrong with a reading of ketones.
pub fn not_ketones(error: &OutOfBounds<Ketones>) -> String {
    let (least, most) = (ketones(error.allowed.least), ketones(error.allowed.most));
    format!("{} is out of range. Enter {least} to {most}.", ketones(error.given))
}
