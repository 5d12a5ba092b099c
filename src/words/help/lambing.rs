//! Around lambing, to be read with no network: by when to look, to put in a hand, to call; and how a lamb lies.

use yeanling_core::reckon::labor::needs;
use yeanling_core::settings::{LaborLimits, PenStay};

use crate::common::{hours, minutes};
use crate::labor;

/// Heads the clocks.
pub const CLOCKS: &str = "Around lambing";
/// Heads the lies.
pub const LIES: &str = "Presentation";
/// Explains the clocks.
pub const CLOCKS_SUB: &str = "In your farm’s limits, set in Farm settings. Published figures are under “why?”: North Canterbury Vets, Maryland, Anexa, CHB Vets, NADIS, MSD Vet Manual; looks are common practice.";
/// Explains the lies.
pub const LIES_SUB: &str =
    "Common practice, no source: have a vet teach you. Push back in between contractions, never against one.";

/// Returns by when to look, to put in a hand, and to call, in the farm's limits.
pub fn clocks(limits: &LaborLimits, stay: &PenStay) -> Vec<String> {
    vec![
        format!(
            "*Restless*: look every {}. Over {} and no waters: examine her, or call your vet.",
            minutes(limits.look_minutes),
            minutes(limits.restless_minutes)
        ),
        format!(
            "*Waters or hard straining*, and nothing shows: check inside at {}, assist at {}.",
            minutes(limits.hand_check_minutes),
            minutes(limits.step_in_minutes)
        ),
        format!(
            "*Feet or nose show*: they must come further within {}; if not, check inside.",
            minutes(limits.progress_minutes)
        ),
        format!("*Cervix not open*: a gentle try of {}, then the vet.", minutes(limits.neck_minutes)),
        format!(
            "*A lamb not put right* in {}: the vet. Crosswise, too big or deformed: the vet at once.",
            minutes(limits.put_right_minutes)
        ),
        format!(
            "*The next lamb*: look at {}, check inside at {}.",
            minutes(limits.next_lamb_minutes),
            minutes(limits.next_check_minutes)
        ),
        format!(
            "*Afterbirth*: ask at {}, late at {}. The vet then if it hangs, at {} if nobody saw it. Never pull it.",
            minutes(limits.afterbirth_ask_minutes),
            minutes(limits.afterbirth_late_minutes),
            minutes(limits.afterbirth_vet_minutes)
        ),
        format!(
            "*Bonding pen*: a single {}, twins {}, more {}; and not out while a lamb is unfed, cold or rejected.",
            hours(stay.single_hours),
            hours(stay.twins_hours),
            hours(stay.more_hours)
        ),
    ]
}

/// Returns each way a lamb can lie: its drawing, its name, what it needs, and what to do.
pub fn lies() -> Vec<(String, String)> {
    let one = |lie| {
        let asks = labor::needs(needs(lie));
        let text = format!("*{}* ({asks}). {}", labor::lie(lie), labor::what_to_do(lie));
        (format!("lies.svg#{}", labor::drawing(lie)), text)
    };
    labor::LIES.into_iter().map(one).collect()
}
