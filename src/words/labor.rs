//! The words around lambing: signs, what shows, what a hand finds, and what each asks for.

use yeanling_core::book::{Awaited, Found, Part, Presentation, Sign};
use yeanling_core::flock::Saw;
use yeanling_core::reckon::labor::Needs;
use yeanling_core::units::Moment;

use super::common::clock;

/// Every sign, the one that starts the clock first.
pub const SIGNS: [Sign; 5] = [Sign::Restless, Sign::Apart, Sign::UdderTight, Sign::Slack, Sign::Discharge];

/// Returns a sign, for a button.
pub const fn sign(sign: Sign) -> &'static str {
    match sign {
        Sign::Restless => "Restless",
        Sign::Apart => "Off alone",
        Sign::UdderTight => "Udder tight",
        Sign::Slack => "Vulva slack",
        Sign::Discharge => "Discharge",
    }
}

/// Every part that can show, the best first.
pub const PARTS: [Part; 6] =
    [Part::FeetAndNose, Part::ForeFeet, Part::OneFoot, Part::Head, Part::HindFeet, Part::Tail];

/// Returns what shows, for a button.
pub const fn part(part: Part) -> &'static str {
    match part {
        Part::FeetAndNose => "Two feet and nose",
        Part::ForeFeet => "Two feet, soles down",
        Part::OneFoot => "One foot",
        Part::Head => "Head alone",
        Part::HindFeet => "Two feet, soles up",
        Part::Tail => "Tail",
    }
}

/// Every lie, the good one first.
pub const LIES: [Presentation; 14] = [
    Presentation::Normal,
    Presentation::OneLegBack,
    Presentation::BothLegsBack,
    Presentation::HeadBack,
    Presentation::HeadDown,
    Presentation::ElbowsLocked,
    Presentation::HindFeetFirst,
    Presentation::TailFirst,
    Presentation::TwoTangled,
    Presentation::UpsideDown,
    Presentation::Crosswise,
    Presentation::TooBig,
    Presentation::Deformed,
    Presentation::Dead,
];

/// Returns how a lamb lies.
pub const fn lie(lie: Presentation) -> &'static str {
    match lie {
        Presentation::Normal => "Two feet and nose",
        Presentation::OneLegBack => "One leg back",
        Presentation::BothLegsBack => "Both legs back",
        Presentation::HeadBack => "Head turned back",
        Presentation::HeadDown => "Head tucked down",
        Presentation::ElbowsLocked => "Elbows locked",
        Presentation::HindFeetFirst => "Hind feet first",
        Presentation::TailFirst => "Tail first",
        Presentation::Crosswise => "Crosswise",
        Presentation::TwoTangled => "Two tangled",
        Presentation::TooBig => "Too big",
        Presentation::UpsideDown => "Upside down",
        Presentation::Deformed => "Deformed",
        Presentation::Dead => "Dead",
    }
}

/// Returns the name of a lie's drawing in `lies.svg`.
pub const fn drawing(lie: Presentation) -> &'static str {
    match lie {
        Presentation::Normal => "normal",
        Presentation::OneLegBack => "one-leg-back",
        Presentation::BothLegsBack => "both-legs-back",
        Presentation::HeadBack => "head-back",
        Presentation::HeadDown => "head-down",
        Presentation::ElbowsLocked => "elbows-locked",
        Presentation::HindFeetFirst => "hind-feet-first",
        Presentation::TailFirst => "tail-first",
        Presentation::Crosswise => "crosswise",
        Presentation::TwoTangled => "two-tangled",
        Presentation::TooBig => "too-big",
        Presentation::UpsideDown => "upside-down",
        Presentation::Deformed => "deformed",
        Presentation::Dead => "dead",
    }
}

/// Returns what to do for a lamb that lies so, in a line. Common practice, no source; a vet teaches the hand.
pub const fn what_to_do(lie: Presentation) -> &'static str {
    match lie {
        Presentation::Normal => "She can do it. Give her time.",
        Presentation::OneLegBack => {
            "Push it back in between contractions, cup the hoof, bring the leg forward."
        }
        Presentation::BothLegsBack => {
            "Push it back gently in between contractions, bring one leg forward, then the other."
        }
        Presentation::HeadBack => {
            "Push it back in between contractions, bring the nose round. If the head does not come, call your vet."
        }
        Presentation::HeadDown => {
            "Push it back in between contractions, lift the nose over the edge of the pelvis."
        }
        Presentation::ElbowsLocked => {
            "Push it back a little, ease one elbow over the edge of the pelvis, then the other."
        }
        Presentation::HindFeetFirst => {
            "Pull straight out, then down, and be quick once the hips are through."
        }
        Presentation::TailFirst => {
            "Push it back in between contractions, cup each hind hoof, bring both legs up. Then out, hind feet first."
        }
        Presentation::Crosswise => "Call your vet. Do not pull.",
        Presentation::TwoTangled => "Sort head and two legs of one lamb. Push the other back.",
        Presentation::TooBig => "Call your vet. Plenty of lubricant; one person’s pull at most.",
        Presentation::UpsideDown => {
            "Push it back in between contractions, turn it over. If it does not turn, call your vet."
        }
        Presentation::Deformed => "Call your vet. Do not pull.",
        Presentation::Dead => "Call your vet. Gloves, plenty of lubricant: what killed it may harm people.",
    }
}

/// Returns whom a lamb that lies so needs.
pub const fn needs(needs: Needs) -> &'static str {
    match needs {
        Needs::Nothing => "no help",
        Needs::Help => "help",
        Needs::Vet => "vet",
    }
}

/// Returns what a hand found.
pub const fn found(found: Found) -> &'static str {
    match found {
        Found::CervixClosed => "Cervix not open",
        Found::NothingYet => "Open, no lamb in reach",
        Found::Empty => "No further lamb",
        Found::Lamb(how) => lie(how),
    }
}

/// Heads what can be seen of her.
pub const SIGNS_TITLE: &str = "What I see";
/// Heads what can be done for her.
pub const HELP_TITLE: &str = "Help and vet";
/// The water bag, or waters.
pub const WATERS: &str = "Water bag";
/// Hard straining.
pub const STRAINING: &str = "Straining";
/// Opens what shows.
pub const SHOWS: &str = "What shows";
/// Asks what shows.
pub const SHOWS_ASK: &str = "What shows?";
/// Opens what a hand found.
pub const HAND: &str = "Check inside";
/// Asks what a hand found.
pub const HAND_ASK: &str = "What did you feel?";
/// Heads the lies.
pub const LIES_TITLE: &str = "How it lies";
/// Help was begun.
pub const HELP: &str = "Helping";
/// The vet was called.
pub const VET: &str = "Vet called";

/// Returns the button that notes a call, with when the last was.
pub fn vet_called(last: Option<Moment>) -> String {
    last.map_or_else(|| VET.to_owned(), |at| format!("{VET} {}", clock(at)))
}

/// Returns the button that notes a look; what may not be well is not called so.
pub const fn looked(may_be_well: bool) -> &'static str {
    if may_be_well { "Looked, all well" } else { super::danger::LOOKED }
}
/// The signs came to nothing.
pub const NOT_LAMBING: &str = "Not lambing";
/// Stands in the place of a span under a minute.
pub const UNDER_A_MINUTE: &str = "under 1 min";

/// Returns what a duty is counted from: "since her waters 02:10"; where nothing was seen then, it was a birth.
pub fn since(saw: Option<Saw>, clock: &str) -> String {
    let what = match saw {
        None => "since the last lamb",
        Some(Saw::Sign(Sign::Restless)) => "restless since",
        Some(Saw::Sign(_)) => "signs since",
        Some(Saw::WaterBag) => "since her waters",
        Some(Saw::Straining) => "straining since",
        Some(Saw::Part(_)) => "showing since",
        Some(Saw::Check(_)) => "since the internal check",
        Some(Saw::Help) => "helped since",
        Some(Saw::PutRight) => "since it was put right",
        Some(Saw::Vet) => "since the vet was called",
        Some(Saw::Look | Saw::NotLambing | Saw::Afterbirth | Saw::Awaited(_)) => "since the last look",
    };
    format!("{what} {clock}")
}

/// Returns what was seen and when: "Water bag 02:10".
pub fn saw_at(what: Saw, at: Moment) -> String {
    format!("{} {}", saw(what), clock(at))
}

/// Returns what was seen, in a few words.
pub fn saw(saw: Saw) -> &'static str {
    match saw {
        Saw::Sign(how) => sign(how),
        Saw::WaterBag => WATERS,
        Saw::Straining => STRAINING,
        Saw::Part(what) => part(what),
        Saw::Check(what) => found(what),
        Saw::Help => HELP,
        Saw::PutRight => super::danger::PUT_RIGHT,
        Saw::Vet => VET,
        Saw::Look => super::danger::LOOKED,
        Saw::NotLambing => NOT_LAMBING,
        Saw::Afterbirth => "Afterbirth",
        Saw::Awaited(seen) => awaited(seen),
    }
}

/// Returns what was seen of an afterbirth that has not passed.
pub const fn awaited(seen: Awaited) -> &'static str {
    match seen {
        Awaited::Hanging => "Afterbirth hangs",
        Awaited::NotSeenBright => "Not seen; bright, eats",
    }
}
