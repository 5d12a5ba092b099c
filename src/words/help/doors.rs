//! The words by which people look for a screen, in small letters.

/// Heads what is found of the app's own screens.
pub const TITLE: &str = "In Yeanling";
/// Of the Watch.
pub const WATCH: &str = "watch home due now late tonight jobs to do";
/// Of a lambing.
pub const LAMBING: &str = "lambing who is lambing labor birth born add a lamb newborn start";
/// Of an animal that is not right.
pub const NOT_RIGHT: &str = "who is not right sick ill illness down vet";
/// Of the flock.
pub const FLOCK: &str = "all animals find ewe lamb ram tag add ewes list rounds";
/// Of the pens.
pub const PENS: &str = "pen jug bonding who is in which";
/// Of the bottle round.
pub const BOTTLE: &str = "bottle lambs feed milk mix powder orphan replacer";
/// Of the cold lamb.
pub const COLD: &str = "hypothermia warm temperature steps chilled";
/// Of sending and importing the book.
pub const SHARE: &str = "send backup back up save file other phone import a book open";
/// Of the tables.
pub const TABLES: &str = "export table spreadsheet csv excel print ewes on paper list ewes from a table";
/// Of the choices.
pub const SETTINGS: &str = "choices options units defaults preferences change";
/// Of the farm.
pub const FARM: &str = "more about version sample flock";
/// Of the season.
pub const SEASON: &str = "forecast dates group due ram breeding nights pens needed who lambs when plan";
/// Of what if.
pub const PLAN: &str = "plan what if try dates ram in out scan shearing";
/// Of the supplies.
pub const SUPPLIES: &str = "stores kit shopping list to buy on hand freezer colostrum bank iodine gloves";
/// Of the medicines.
pub const MEDICINES: &str =
    "medicine record withdrawal treatment vaccine booster wormer dose given sale slaughter";
/// Of the scales.
pub const WEIGH: &str = "weight scales growth gain wean weaning how they grew";
/// Of tags.
pub const TAG: &str = "tags ear tag paint mark number lambs";
/// Of feed.
pub const FEED: &str = "feed to buy bags ration grain water extra feed";
/// Of the summary.
pub const SUMMARY: &str = "figures rates losses year lambing rate deaths results by ram";
/// Of who is kept.
pub const KEEP: &str = "cull culling rank best ewes sell replacement record";
/// Of the night clock.
pub const NIGHT: &str = "alarm wake ring calendar clock";
/// Of the first run.
pub const SETUP: &str = "set up first run start again units pens";
/// Of erasing.
pub const ERASE: &str = "delete reset wipe start over clear";
