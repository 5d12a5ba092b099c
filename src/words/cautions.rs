//! What must be said wherever work can hurt a lamb or a person.

/// All of it must hold before a lamb is fed by tube.
pub const TUBE: &[&str] = &[
    "Tube only a lamb that is at 37 °C (98.6 °F) or warmer,",
    "that is awake and holds its head up,",
    "that swallows,",
    "whose belly is not bloated or swollen,",
    "and never more than 50 ml/kg at once.",
    "Never force the tube. If it coughs or fights, take the tube out.",
    "If in doubt, call your vet. Local rules come first.",
];

/// Who keeps away at lambing.
pub const PEOPLE: &str = "Anyone who is or may be pregnant keeps away from lambing ewes, newborn lambs, afterbirth and \
     soiled clothes: some infections of sheep can harm an unborn child.";

/// How a hand goes into a ewe.
pub const HANDS: &str = "Clean hand, short nails, a glove, plenty of lubricant. One person’s pull at most, with her straining. If in \
     doubt, call your vet.";

/// What the whole program is.
pub const GENERAL: &str = "This helps you decide. It does not replace your vet.";
