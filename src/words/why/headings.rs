//! What figures are called that are asked "why?": on the button, and above the answer.

/// How long colostrum still works.
pub const WINDOW: &str = "Colostrum window";
/// How much colostrum a newborn wants.
pub const COLOSTRUM: &str = "Colostrum wanted";
/// The next feed of a newborn.
pub const NEXT_FEED: &str = "Next feed";
/// What a bottle lamb takes in a day.
pub const BOTTLE: &str = "Bottle today";
/// A birth weight against its litter and its flock.
pub const BIRTH_WEIGHT: &str = "Birth weight";
/// Whether a bottle lamb can be weaned.
pub const WEANING: &str = "Weaning";
/// The vaccine against clostridial diseases.
pub const VACCINE: &str = "Clostridial vaccine";
