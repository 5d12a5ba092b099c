//! The udder check after lambing: what to do, how a half was, and what follows.

/// Heads it.
pub const TITLE: &str = "Udder check";
/// Opens it where both halves are not well, or to answer each half apart.
pub const BY_HALF: &str = "Half by half";
/// Asks how a half was.
pub const LEFT: &str = "Left half";
/// Asks how the other was.
pub const RIGHT: &str = "Right half";
/// Notes that both are well.
pub const BOTH: &str = "Both run, soft";
/// The same on a line of the Watch.
pub const BOTH_SHORT: &str = "Both run";
/// What to do.
pub const DRAW: &str = "Draw each teat: the plug comes out, then milk.";
/// What else to do.
pub const FEEL: &str = "Feel each half: warm and soft.";
/// What a half without milk means.
pub const DRY_NOTE: &str = "No milk in a half: draw it again in an hour.";
/// What an extra teat means.
pub const EXTRA_TEAT: &str = "An extra teat beside the main one: put the lamb on the main one.";

/// Heads what follows for a ewe with one half.
pub const ONE_HALF: &str = "One half of her udder gives milk";
/// What follows.
pub const ONE_HALF_STEPS: &str = "Leave one lamb on her. Foster the others or feed them by bottle.";
/// Heads what follows for a ewe without milk.
pub const NO_MILK: &str = "Her udder gives no milk";
/// What follows.
pub const NO_MILK_STEPS: &str = "Other colostrum for her lambs now. Draw both teats again in an hour.";

/// Says that a ewe is settled after lambing.
pub const SETTLED: &str = "Up, eating";
/// The same as it was noted.
pub const SETTLED_LINE: &str = "Up, eating and drinking; feed and water before her";
