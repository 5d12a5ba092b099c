//! Until when colostrum works: 2, 6, 12 and 24 hours after birth, as published; and when this farm is told.

use yeanling_core::settings::Limits;

use crate::common::minutes;

/// The page's name.
pub const TITLE: &str = "When colostrum is too late";
/// Heads what comes first.
pub const FIRST: &str = "A lamb that has not fed";
/// Heads the farm's own times.
pub const OWN: &str = "When Yeanling tells you";
/// Leads to the calculator.
pub const OPEN: &str = "Time left, by age";

/// What is true by which hour, as published.
pub const HOURS: [&str; 5] = [
    "*2 h*: the goal for the first feed. The sooner the more gets through. (RUMA, SRUC, Vet Times 2018)",
    "*6 h*: the latest for the first feed. (AHDB says 4 to 6 h; Teagasc 6 h)",
    "*12 h*: treat it as the last chance. Of the antibody it swallows, about 10% still reaches its blood, from 17% at birth. (Kerr, WSU; Oregon State; Dominguez et al. 2001)",
    "*24 h*: closed. No antibody gets through. (Dominguez et al. 2001)",
    "*After that* colostrum still feeds it and coats its gut. It has no protection of its own: call your vet, and watch it closely.",
];

/// What to do with a lamb that has not fed.
pub const STEPS: [&str; 4] = [
    "Its temperature first. Under 37 °C (98.6 °F), or it does not swallow: no milk. Go to A cold lamb.",
    "Strip both teats: the wax plug is out and milk comes.",
    "Hold it to the teat. Watch it swallow and its tail wag.",
    "No luck in 20 minutes: bottle, or tube, with its own dam’s colostrum first.",
];

/// Who says so.
pub const SOURCE: &str = "Steps: common practice, no source; the 20 minutes are ours. One study found no difference between a first feed at 2 h and at 14 h in 40 lambs (Hernández-Castellano 2015): do not count on it.";

/// Returns when the farm is told that a lamb has not fed, by its own alert times.
pub fn own(limits: &Limits) -> String {
    format!(
        "Your alert times: help it nurse at {}, late at {}, deadline at {}. Change them in Farm settings.",
        minutes(limits.help_minutes),
        minutes(limits.red_minutes),
        minutes(limits.last_call_minutes)
    )
}
