//! What must be said wherever work can hurt a lamb or a person.

/// All of it must hold before a lamb is fed by tube; then how the tube goes in, and when it comes out.
pub const TUBE: &[&str] = &[
    "Never tube a lamb under 37 °C (98.6 °F).",
    "Never one that does not hold its head up and swallow.",
    "Never one that drools, or whose belly is swollen.",
    "Never more than 50 ml/kg (0.75 fl oz/lb) at once.",
    "Never deeper than from its nose to its last rib: mark the tube there.",
    "Let it swallow the tube. Feel the neck: the tube lies beside the windpipe, two pipes under your fingers. Only one, \
     or it coughs: stop and take it out.",
    "Never force the tube. If it fights, drools, or its belly swells: stop and take the tube out.",
    "If in doubt, call your vet. Local rules come first.",
];

/// Who keeps away at lambing.
pub const PEOPLE: &str = "Anyone who is or may be pregnant, or has weak immunity or heart-valve disease: keep away from lambing ewes, newborn lambs, \
     afterbirth and soiled clothes. Some infections of sheep can harm you or an unborn child.";

/// The same in a line.
pub const PEOPLE_SHORT: &str = "Pregnant, or may be? Keep away from lambing.";

/// Heads who keeps away, and why.
pub const PEOPLE_TITLE: &str = "Who keeps away";

/// What to do for who should have kept away.
pub const TOUCHED: &str = "Pregnant and already touched any of it: call your own doctor today.";

/// How people stay well with lambs, above all where lambs come into the kitchen.
pub const HYGIENE: &[&str] = &[
    "Wash hands and arms with soap after each ewe, each lamb and each bottle. And before you eat, drink or smoke.",
    "Gloves for births, afterbirth, dead lambs, scour and scabs.",
    "A lamb in the kitchen: away from food. Its own box, towels, bottle and tube, washed separately. Wipe down after it. Not if anyone in the house should keep away.",
    "No kissing lambs, no hands in your mouth. Watch children wash their hands.",
    "Scours can be salmonella or cryptosporidium, and people catch both: gloves, and keep children away.",
    "Scabs on the lips can be orf, and people catch it: gloves, its own bottle, check the ewe’s teats. A sore on your hand: see your doctor and say “sheep”.",
    "Abortion: gloves on, keep the ewe apart for three weeks. Bag lamb and afterbirth, keep cold, not frozen, for the vet or lab. Keep dogs and cats away. Never foster a lamb onto her. Burn or bag the bedding, wash boots and clothes separately.",
    TOUCHED,
];

/// Who says so.
pub const HYGIENE_SOURCE: &str = "Scottish Government, NADIS, Teagasc, Irish Farmers Journal 2018. Soap, towels and the kitchen: common practice.";

/// How a hand goes into a ewe.
pub const HANDS: &str = "Clean hand, short nails, glove, plenty of lubricant. Pull only as she strains, one person at most. If in doubt, call your vet.";

/// What the whole program is.
pub const GENERAL: &str = "This helps you decide. It does not replace your vet.";

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn says(lines: &[&str], told: &[&str]) {
        let text = lines.join(" ");
        for one in told {
            assert!(text.contains(one), "{one} is not in: {text}");
        }
    }

    #[test]
    fn the_tube_is_measured_felt_and_taken_out_in_time() {
        // Source: AHDB; Henderson; nose to last rib: US extension. Feeling the neck: common practice.
        says(
            TUBE,
            &[
                "from its nose to its last rib",
                "beside the windpipe",
                "drools",
                "swells",
                "50 ml/kg",
                "37 °C (98.6 °F)",
            ],
        );
    }

    #[test]
    fn people_are_kept_well_too() {
        // Source: Scottish Government; NADIS; Teagasc; Irish Farmers Journal 2018.
        says(HYGIENE, &["soap", "Gloves", "kitchen", "orf", "Abortion", "not frozen", "own doctor today"]);
        says(&[PEOPLE], &["pregnant", "weak immunity", "heart-valve"]);
    }
}
