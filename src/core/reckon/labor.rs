//! How long labor may take before someone looks, puts in a clean hand, or calls the vet; and how a lamb may lie.
//!
//! Where sources differ the shorter time is kept.

use super::cited::{common, ours, seen};
use crate::source::{HowKnown, Source};
use crate::terms::Presentation;
use crate::units::TimeDelta;

/// A restless ewe is looked at so often (common practice).
pub const LOOK: TimeDelta = TimeDelta::hours(1);

/// Restless for longer without a water bag: examine her, or call the vet (North Canterbury Vets).
pub const RESTLESS: TimeDelta = TimeDelta::hours(6);

/// Waters or hard straining for so long and nothing shows: an internal check (memory, from extension guides).
pub const HAND_CHECK: TimeDelta = TimeDelta::minutes(30);

/// And for so long: step in (Maryland, Anexa, CHB Vets).
pub const STEP_IN: TimeDelta = TimeDelta::minutes(60);

/// What shows of the lamb comes further within so long (memory, common practice).
pub const PROGRESS: TimeDelta = TimeDelta::minutes(30);

/// A tight neck of the womb is tried gently for so long, then the vet (NADIS; Cornell prints 30).
pub const NECK: TimeDelta = TimeDelta::minutes(10);

/// What Cornell prints for the same.
pub const NECK_CORNELL: TimeDelta = TimeDelta::minutes(30);

/// A lamb that is not put right within 10 to 15 minutes is the vet's; the shorter is kept (veterinary red list).
pub const PUT_RIGHT: TimeDelta = TimeDelta::minutes(10);

/// The next lamb comes within so long (Anexa).
pub const NEXT_LAMB: TimeDelta = TimeDelta::minutes(30);

/// And is checked for after so long (Anexa).
pub const NEXT_CHECK: TimeDelta = TimeDelta::minutes(60);

/// The afterbirth is asked for, is late, and is the vet's after 6, 12 and 18 hours (MSD Vet Manual). Never pulled.
pub const AFTERBIRTH: [TimeDelta; 3] = [TimeDelta::hours(6), TimeDelta::hours(12), TimeDelta::hours(18)];

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    common("A restless ewe makes progress at least hourly; a part that shows, every 30 min"),
    seen("North Canterbury Vets", "Restless over 6 h", None, ""),
    Source {
        authors: "Extension guides",
        title: "30 min of waters or straining and nothing shows: an internal check",
        year: None,
        place: "",
        known: HowKnown::Memory,
    },
    seen("University of Maryland; Anexa; CHB Vets", "60 min: step in", None, ""),
    seen("NADIS", "Cervix not open: a gentle try of 10 min", None, ""),
    seen("Cornell", "Cervix not open: 30 min", None, ""),
    seen("Anexa", "Next lamb within 30 min, check at 60", None, ""),
    seen("MSD Vet Manual", "Afterbirth at 6, 12 and 18 h; never pull", None, ""),
    ours("A lamb not put right in 10 min, of the printed 10 to 15; which lies go straight to the vet"),
];

/// How a lamb lies, as it is told at the ewe's side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Needs {
    /// Nothing: she can do it alone.
    Nothing,
    /// A clean hand; the vet if it is not put right within [`PUT_RIGHT`].
    Help,
    /// The vet at once.
    Vet,
}

/// Says what a lamb that lies so needs (ours).
#[must_use]
pub const fn needs(lie: Presentation) -> Needs {
    match lie {
        Presentation::Normal => Needs::Nothing,
        Presentation::OneLegBack
        | Presentation::BothLegsBack
        | Presentation::HeadDown
        | Presentation::ElbowsLocked
        | Presentation::HindFeetFirst
        | Presentation::TailFirst
        | Presentation::HeadBack
        | Presentation::TwoTangled
        | Presentation::UpsideDown => Needs::Help,
        Presentation::Crosswise | Presentation::TooBig | Presentation::Deformed | Presentation::Dead => {
            Needs::Vet
        }
    }
}
