//! An animal that is not right: what is asked, what it may be, what to do until the vet is there. No doses.

pub mod ewe;
pub mod lamb;
pub mod udder;

use yeanling_core::book::Illness;
use yeanling_core::reckon::illness::{Urgency, ewe as ewe_table, lamb as lamb_table};
use yeanling_core::terms::{Change, Gate, Onset, UdderHalf};
use yeanling_core::units::{Ketones, Moment, System};

use super::common::{clock, number, span, temperature};

/// A row of a table in words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowWords {
    /// What it is called.
    pub name: &'static str,
    /// What it may be, in order.
    pub may_be: &'static [&'static str],
    /// What separates them.
    pub tells: &'static str,
    /// What to do until the vet has spoken.
    pub until: &'static [&'static str],
    /// What never to do.
    pub never: &'static [&'static str],
}

/// Where on an animal a sign is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// How it is altogether.
    Whole,
    /// Head and eyes.
    Head,
    /// Mouth and breathing.
    Breath,
    /// Belly, dung and navel.
    Belly,
    /// Under the tail.
    Behind,
    /// The udder.
    Udder,
    /// The legs.
    Legs,
    /// Seen of several.
    Flock,
}

impl Place {
    /// All, in the order in which an animal is looked over.
    pub const ALL: [Self; 8] = [
        Self::Whole,
        Self::Head,
        Self::Breath,
        Self::Belly,
        Self::Behind,
        Self::Udder,
        Self::Legs,
        Self::Flock,
    ];

    /// Returns its heading.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Whole => "All of it",
            Self::Head => "Head and eyes",
            Self::Breath => "Mouth and breathing",
            Self::Belly => "Belly and dung",
            Self::Behind => "Under the tail",
            Self::Udder => "Udder",
            Self::Legs => "Legs and joints",
            Self::Flock => "In the flock",
        }
    }
}

/// Heads lambs that are older than those listed first.
pub const OLDER_LAMBS: &str = "Older lambs";
/// What stands under every answer.
pub const HELPS: &str = "This helps you decide; it does not replace your vet.";
/// What stands in Help until a vet has read the tables.
pub const UNREAD: &str = "No vet has read these tables yet. We read them twice.";
/// Names the list of who is not right.
pub const TITLE: &str = "Not right";
/// Asks who.
pub const WHO: &str = "Who is not right?";
/// Leads to what to do.
pub const STEPS: &str = "What to do";
/// Heads the lambs of these weeks.
pub const LAMBS: &str = "Lambs";
/// Heads the ewes.
pub const EWES: &str = "Ewes";
/// Opens what was measured.
pub const MEASURE: &str = "Measured";
/// Asks what was measured.
pub const MEASURE_ASK: &str = "What did you measure?";
/// Labels a temperature.
pub const TEMPERATURE: &str = "Temperature";
/// Labels a pulse.
pub const PULSE: &str = "Pulse, beats a minute";
/// Labels breaths.
pub const BREATHS: &str = "Breaths a minute";
/// Labels ketones.
pub const KETONES: &str = "Ketones (BHB)";
/// Labels a skin fold.
pub const TENT: &str = "Skin fold stays up, in seconds";
/// Says what a low reading is worth.
pub const LOW_PROVES_NOTHING: &str = "A normal temperature or low ketones cancel no sign.";
/// What is said when nothing was typed.
pub const NOTHING_MEASURED: &str = "Nothing typed yet. Fill in what you measured.";
/// Heads what was not checked yet.
pub const CHECK_NOW: &str = "Check now";
/// She is here no more.
pub const GONE: &str = "She is not in the flock any more.";
/// Labels an age.
pub const AGE: &str = "Age";
/// Labels her stage.
pub const STAGE_LABEL: &str = "Stage";
/// Labels her scan.
pub const SCAN: &str = "Scanned";
/// Labels her last lambing.
pub const LAMBED: &str = "Lambed";
/// Labels her condition.
pub const CONDITION: &str = "Condition";
/// Labels a weight.
pub const WEIGHT: &str = "Weight";
/// Labels the last milk.
pub const LAST_MILK: &str = "Last milk";
/// Labels since when.
pub const SINCE: &str = "Since";
/// Labels what is seen.
pub const SEEN_LABEL: &str = "Seen";
/// Labels what was given.
pub const GIVEN: &str = "Given";
/// Nothing was given.
pub const NOTHING_GIVEN: &str = "nothing noted";
/// Heads what is asked first.
pub const FIRST: &str = "First";
/// Heads the signs.
pub const SEEN: &str = "What do you see?";
/// Says how.
pub const SEEN_HINT: &str = "Tap all that you see. What you do not tap counts as not noted.";
/// Heads what is good.
pub const GOOD: &str = "Good news, if you are sure";
/// Asks over how long.
pub const ONSET: &str = "Since when?";
/// Asks where she is in her year.
pub const STAGE: &str = "Where is she in her year?";
/// Notes what was seen and shows the answer.
pub const ANSWER: &str = "What now?";
/// Heads what it may be.
pub const MAY_BE: &str = "It may be, in this order";
/// Heads what to do.
pub const UNTIL: &str = "Until then";
/// Heads what not to do.
pub const NEVER: &str = "Never";
/// Heads the call card.
pub const CALL_CARD: &str = "For the call";
/// Says what the card is for.
pub const CALL_CARD_HINT: &str = "Read this out to your vet.";
/// Heads how it goes on.
pub const HOW_NOW: &str = "Looked again";
/// Opens the signs again.
pub const SEE_MORE: &str = "Something else";
/// Notes that the vet allows milk.
pub const MILK_ALLOWED: &str = "Vet allows milk again";
/// What is said where no sign was named.
pub const NOTHING_NAMED: &str = "Nothing was named. Look again soon; call your vet if you are not sure.";
/// Nothing by mouth.
pub const NOTHING_BY_MOUTH: &str = "Nothing by mouth.";
/// What a down ewe needs meanwhile.
pub const DOWN: [&str; 2] = [
    "On her chest, straw on both sides. Turn her every four to six hours.",
    "Shelter. Out of the wind and the wet.",
];
/// What her lambs need meanwhile.
pub const DOWN_LAMBS: &str = "See that her lambs are fed.";

/// Says whether a step gives an animal anything by mouth: none is told of one that is down or must have nothing by mouth.
pub fn by_mouth(line: &str) -> bool {
    BY_MOUTH.contains(&line)
}

/// Says whether a step is for her lambs: none is told of a ewe that has none.
pub fn for_her_lambs(line: &str) -> bool {
    line.contains("her lambs")
}

const BY_MOUTH: [&str; 4] = [
    "Pen her with tasty feed and water.",
    "Propylene glycol by its label if she swallows well.",
    "Off the grain; hay and water.",
    "House and feed her.",
];
/// No vet in time.
pub const NO_VET: &str = "No vet in time: ask about humane killing.";

/// Returns an answer to what is asked first.
pub const fn gate(gate: Gate) -> &'static str {
    match gate {
        Gate::Good => "Yes",
        Gate::Bad => "No",
        Gate::NotChecked => "Not checked",
        Gate::CannotCheck => "Cannot check",
    }
}

/// Returns what is wrong with a count.
pub fn not_a_count(typed: &str) -> String {
    format!("“{typed}” is out of range. Enter a whole number, such as 12.")
}

/// Returns an age in years.
pub fn years(years: u16) -> String {
    if years == 1 { "1 year".to_owned() } else { format!("{years} years") }
}

/// Returns what her scan showed.
pub fn scanned(lambs: u8) -> String {
    match lambs {
        1 => "single".to_owned(),
        2 => "twins".to_owned(),
        3 => "triplets".to_owned(),
        more => format!("{more} lambs"),
    }
}

/// Returns since when, as a choice.
pub const fn onset(onset: Onset) -> &'static str {
    match onset {
        Onset::Hours => "Hours",
        Onset::Days => "Days",
    }
}

/// Returns how it is now, as a button.
pub const fn change(change: Change) -> &'static str {
    match change {
        Change::Better => "Better",
        Change::Same => "No better",
        Change::Worse => "Worse",
        Change::Well => "Well again",
    }
}

/// Returns how a half of an udder was.
pub const fn half(half: UdderHalf) -> &'static str {
    match half {
        UdderHalf::Milks => "milk, warm, soft",
        UdderHalf::Dry => "no milk",
        UdderHalf::HardOrHot => "hard or hot",
        UdderHalf::ColdOrBlue => "cold or blue",
    }
}

/// Returns the headline of an answer.
pub fn urgency(urgency: Urgency) -> String {
    match urgency {
        Urgency::Now => "*Call your vet now*".to_owned(),
        Urgency::Today => "*Call your vet today*: within twelve hours".to_owned(),
        Urgency::Watch(after) => format!("*Look again in {}*", span(after)),
    }
}

/// Returns what the next look decides.
pub const fn no_better(then: Urgency) -> &'static str {
    match then {
        Urgency::Now => "No better or worse then: call your vet at once.",
        Urgency::Today | Urgency::Watch(_) => "No better then: call your vet today. Worse: at once.",
    }
}

/// Returns when it is looked at again, as the headline of an answer.
pub fn look_again_lead(at: Moment) -> String {
    format!("*{}*", look_again(at))
}

/// Returns when it is looked at again.
pub fn look_again(at: Moment) -> String {
    format!("Look again at {}", clock(at))
}

/// Returns a ketone reading with its unit.
pub fn ketones(reading: Ketones) -> String {
    format!("{} mmol/L", number(reading.as_millimoles(), 1))
}

/// Returns what the Watch says of a ewe that is the vet's.
pub fn ewe_task(now: bool, row: Option<ewe_table::Row>) -> String {
    vet_task(now, row.map(|row| ewe::row(row).name), ewe::NOT_RIGHT)
}

/// Returns what the Watch says of a lamb that is the vet's.
pub fn lamb_task(now: bool, row: Option<lamb_table::Row>) -> String {
    vet_task(now, row.map(|row| lamb::row(row).name), lamb::NOT_RIGHT)
}

fn vet_task(now: bool, name: Option<&str>, not_right: &str) -> String {
    let what = name.map_or_else(|| not_right.to_owned(), |name| format!("May be {}", name.to_lowercase()));
    if now { format!("{what}: *call your vet now*") } else { format!("{what}: *vet today*") }
}

/// Returns what the Watch says of a look.
pub fn look_task(check: bool, name: Option<&str>, not_right: &str) -> String {
    if check {
        return format!("{not_right}: *check now what was not checked*");
    }
    format!("Look again: {}", name.unwrap_or(not_right).to_lowercase())
}

/// Returns what is seen, for the card; that nothing was named is told too.
pub fn seen_or_nothing(names: &[&str]) -> String {
    if names.is_empty() { "nothing named".to_owned() } else { listed(names.iter().copied()) }
}

/// Returns a list of signs in running text.
pub fn listed<'a>(names: impl IntoIterator<Item = &'a str>) -> String {
    names.into_iter().map(str::to_lowercase).collect::<Vec<_>>().join(", ")
}

/// Returns a list of signs as a sentence; nothing of none.
pub fn sentence(names: &[&str]) -> String {
    let Some((first, others)) = names.split_first() else { return String::new() };
    let others = others.iter().map(|name| name.to_lowercase());
    let all: Vec<String> = std::iter::once((*first).to_owned()).chain(others).collect();
    format!("{}.", all.join("; "))
}

/// Returns a line of the timeline.
pub fn noted(fact: &Illness, system: System) -> String {
    match fact {
        Illness::EweSeen { standing, eating, nothing_out, signs, .. } => {
            let gates = [
                (*standing, "not standing"),
                (*eating, "not eating"),
                (*nothing_out, "bleeding or something out"),
            ];
            seen(gates, signs.iter().map(|sign| ewe::sign(*sign)))
        }
        Illness::LambSeen { head_up, swallows, warm, signs, .. } => {
            let gates = [(*head_up, "head down"), (*swallows, "no suck or swallow"), (*warm, "cold")];
            seen(gates, signs.iter().map(|sign| lamb::sign(*sign)))
        }
        Illness::Changed { change: how, .. } => format!("Looked again: *{}*", change(*how).to_lowercase()),
        Illness::EweTemperature { temperature: warm, .. } => {
            format!("Temperature *{}*", temperature(*warm, system))
        }
        Illness::Pulse { per_minute, .. } => format!("Pulse *{per_minute}* a minute"),
        Illness::Breaths { per_minute, .. } => format!("*{per_minute}* breaths a minute"),
        Illness::KetonesRead { ketones: read, .. } => format!("Ketones *{}*", ketones(*read)),
        Illness::SkinTent { seconds, .. } => format!("Skin fold stays up *{seconds} s*"),
        Illness::UdderChecked { left, right, .. } => {
            format!("Udder: left {}, right {}", half(*left), half(*right))
        }
        Illness::SpreadSeenTo { spread, .. } => super::spread::seen_to(*spread),
        Illness::MilkAllowed { .. } => MILK_ALLOWED.to_owned(),
    }
}

fn seen<'a>(gates: [(Gate, &'a str); 3], signs: impl Iterator<Item = &'a str>) -> String {
    let bad = gates.into_iter().filter(|(gate, _)| gate.is_bad()).map(|(_, bad)| bad);
    let all = listed(bad.chain(signs));
    if all.is_empty() { "Not right: nothing named".to_owned() } else { format!("Not right: *{all}*") }
}
