//! What goes round in the flock: what it is, what to do, and that it was seen to.

use yeanling_core::reckon::illness::spread::rule;
use yeanling_core::terms::Spread;

/// Heads it on the Watch.
pub const TITLE: &str = "In the flock";
/// Notes that it was seen to.
pub const SEEN_TO: &str = "Seen to";

/// Returns what goes round, short.
pub const fn name(spread: Spread) -> &'static str {
    match spread {
        Spread::Notifiable => "May have to be reported",
        Spread::ManyLame => "Many lame",
        Spread::LambsDying => "Lambs dying",
        Spread::Abortions => "Abortions",
        Spread::WetChins => "Wet chins",
        Spread::Scours => "Scours",
    }
}

/// Returns in how many animals within how many days: "3 lambs in 5 days".
pub fn count(spread: Spread, animals: usize) -> String {
    let (one, many) = match spread {
        Spread::Notifiable | Spread::ManyLame => ("animal", "animals"),
        Spread::Abortions => ("ewe", "ewes"),
        Spread::LambsDying | Spread::WetChins | Spread::Scours => ("lamb", "lambs"),
    };
    let noun = if animals == 1 { one } else { many };
    format!("{animals} {noun} in {} days", rule(spread).within.num_days())
}

/// Returns what to do.
pub const fn step(spread: Spread) -> &'static str {
    match spread {
        Spread::Notifiable => "*Call your vet now.* Move no animal, person or vehicle.",
        Spread::ManyLame => "Look for blisters. It may have to be reported: *call your vet now*.",
        Spread::LambsDying => {
            "It may have to be reported: *call your vet now*. Keep a fresh dead lamb cool for the lab."
        }
        Spread::Abortions => {
            "*Call your vet now.* Keep each ewe apart, gloves on; lamb and afterbirth cold, not frozen, for the lab."
        }
        Spread::WetChins => "Clean the pens, colostrum early to every lamb, and ask your vet.",
        Spread::Scours => "Clean, dry pens. Set the sick apart, wash hands, no children. Ask your vet.",
    }
}

/// Returns it in a line of the timeline.
pub fn seen_to(spread: Spread) -> String {
    format!("{} in the flock: *seen to*", name(spread))
}
