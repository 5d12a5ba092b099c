//! What a grown ewe weighs by the kind of sheep, until a flock has weighed its own.

use super::cited::{memory, ours, seen};
use crate::settings::BreedType;
use crate::source::Source;
use crate::units::Mass;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "University of the Virgin Islands",
        "St Croix ewes 100 to 120 lb; crossed with Dorper 110 to 130 lb",
        None,
        "",
    ),
    seen("National Breeding Center, Belize", "Katahdin ewes 120 to 160 lb, Dorper 110 to 176 lb", None, ""),
    memory("Finn 60, prolific breeds 65, Suffolk 90, meat breeds 80, fine-wool breeds 65 kg"),
    ours("Hair sheep 60 kg, the middle of Katahdin, Dorper and St Croix; any sheep 70 kg"),
];

/// Returns what a grown ewe of this kind usually weighs.
///
/// ```
/// use yeanling_core::reckon::mature_weight::usual;
/// use yeanling_core::settings::BreedType;
/// assert!(usual(BreedType::Hair) < usual(BreedType::Any));
/// ```
#[must_use]
pub const fn usual(kind: BreedType) -> Mass {
    Mass::from_kilograms(match kind {
        BreedType::Any => 70.0,
        BreedType::Hair | BreedType::Finn => 60.0,
        BreedType::Prolific | BreedType::FineWool => 65.0,
        BreedType::Suffolk => 90.0,
        BreedType::Meat => 80.0,
    })
}
