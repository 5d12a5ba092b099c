//! One lamb.

use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::reckon::illness::lamb::Row;
use yeanling_core::settings::Limits;
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{BeforeMilk, Hold};

use super::common::{clock, day_and_clock, mass, short_date, span, temperature, temperature_both};
use super::{animals, illness, life};

/// Leads to the ewe that she became.
pub const AS_EWE: &str = "Her life as a ewe";
/// Goes back to the lamb.
pub const BACK: &str = "Lamb";
/// Heads the window.
pub const FIRST_MILK: &str = "Colostrum";
/// Behind the time left.
pub const LEFT: &str = "left";
/// When the window has closed.
pub const CLOSED: &str = "Closed";
/// Explains a closed window.
pub const CLOSED_ALSO: &str = "its gut takes up no more antibody";
/// Heads the next feed.
pub const NEXT_FEED: &str = "Next feed, if it needs the bottle";
/// Heads the next feed of a hand-fed lamb.
pub const NEXT_FEED_HAND: &str = "Next feed, bottle or tube";
/// Heads the bottle feed of an older lamb.
pub const BOTTLE_FEED: &str = "Each feed, by bottle";
/// Asks for the weight.
pub const NO_WEIGHT: &str = "Weigh it to see the volumes.";
/// Heads the tube.
pub const BY_TUBE: &str = "By tube";
/// Another feed.
pub const OTHER_FEED: &str = "Other feed";
/// Heads the next feed while milk must wait.
pub const HOLD: &str = "No milk yet";
/// Heads the looks.
pub const LOOK: &str = "Look at it";
/// Heads what fits its age.
pub const FITS: &str = "Note about it";
/// Notes that it sucked.
pub const SUCKED: &str = "Nursed";
/// Notes that it is up.
pub const UP: &str = "Up";
/// Notes the navel.
pub const NAVEL: &str = "Navel";
/// Opens the belly.
pub const BELLY: &str = "Belly";
/// Opens the vigor check.
pub const VIGOR: &str = "Vigor";
/// Opens the weight.
pub const WEIGH: &str = "Weigh";
/// Opens the tag.
pub const TAG: &str = "Tag";
/// Opens a remark.
pub const REMARK: &str = "Note";
/// Opens the death.
pub const DIED: &str = "Died";
/// Asks the vigor.
pub const VIGOR_ASK: &str = "How is it at five minutes?";
/// Asks the vigor of a lamb so old: what was meant for five minutes is not said of one of an hour.
pub fn vigor_ask(age: TimeDelta) -> String {
    if age <= TimeDelta::minutes(10) {
        VIGOR_ASK.to_owned()
    } else {
        format!("How is it now, at {}?", span(age))
    }
}
/// Says what a score is worth that comes late.
pub const VIGOR_LATE: &str = "For five minutes after birth. This late it says little.";
/// Leads to the ewe that rears it.
pub fn reared_by(ewe: &str) -> String {
    format!("Reared by {ewe}")
}
/// Names the scale.
pub const VIGOR_SCALE: &str = "Four-grade scale, 1 is best, before any tube feed.";
/// Asks the belly.
pub const BELLY_ASK: &str = "Both flanks in front of the hip";
/// A full belly.
pub const FULL: &str = "Full, they resist";
/// A hollow belly.
pub const HOLLOW: &str = "Hollow";
/// Asks the weight.
pub const WEIGH_ASK: &str = "How heavy is it?";
/// Labels the weight.
pub const WEIGHT: &str = "Weight";
/// Names the choice of the unit.
pub const UNIT: &str = "Unit of weight";
/// Asks the volume.
pub const FEED_ASK: &str = "What did it get?";
/// Labels how much of its feed it took.
pub const PARTS: &str = "It took";

/// Returns a part of its feed in quarters.
pub const fn part(quarters: u8) -> &'static str {
    match quarters {
        1 => "¼",
        2 => "½",
        3 => "¾",
        _ => "All",
    }
}

/// Returns which milk it was: "Milk: ewe's colostrum".
pub fn which_milk(milk: &str) -> String {
    format!("Milk: {milk}")
}

/// Labels the volume.
pub const VOLUME: &str = "Volume";
/// Leads to the cold lamb.
pub const COLD: &str = "Take its temperature";
/// Leads to the cold lamb while it is cold.
pub const COLD_NOW: &str = "Cold lamb: what to do";
/// Says that nobody took it.
pub const NO_TEMPERATURE: &str = "Not taken yet. Cold, dull or hollow: take it.";
/// Notes that the dam takes it.
pub const ACCEPTED: &str = "Ewe accepts it";
/// Notes that the dam turns it away.
pub const TURNED_AWAY: &str = "Rejected";
/// Heads rings, tags and vaccine.
pub const MARKING: &str = "Rings, tags, vaccine";
/// Says what a red birth weight means.
pub const IN_DANGER: &str = "Over 1 kg (2.2 lb) lighter than its littermates, in a light litter: under half survive. Help it feed, keep it warm, look often.";
/// Saves a score.
pub const SAVE_SCORE: &str = "Note the score";
/// Says that no oximeter is at hand.
pub const NO_OXIMETER: &str = "No oximeter";
/// Names the scale of ten points.
pub const TEN_POINT_SCALE: &str =
    "Ten-point score, 10 is best, before any tube feed. Without an ear oximeter it is out of 8, adapted.";
/// Asks for what is missing.
pub const TEN_POINT_LEFT: &str = "Answer every sign to see the score.";
/// Names a pin.
pub const PIN_TEMPERATURE: &str = "temperature";
/// Labels a temperature.
pub const TEMPERATURE: &str = "Temperature";
/// Labels the milk.
pub const MILK: &str = "What";
/// Labels the way.
pub const WAY: &str = "How";
/// A bottle.
pub const BOTTLE: &str = "Bottle";
/// A tube.
pub const TUBE: &str = "Tube";
/// Asks the tag.
pub const TAG_ASK: &str = "What is it called?";
/// Labels the tag.
pub const TAG_LABEL: &str = "Tag or mark";
/// Asks the remark.
pub const REMARK_ASK: &str = "Anything worth remembering";
/// Labels the remark.
pub const REMARK_LABEL: &str = "Note";
/// Asks the cause.
pub const DIED_ASK: &str = "What did it die of?";
/// Says that the weight is asked about.
pub const SIGNS: &str = "Fed or not? Lively and warm, a warm mouth that sucks a finger, full flanks: it has fed. (Common practice, no source.)";
/// Labels the time.
pub const WHEN: &str = "When";
/// Heads a change.
pub const CHANGE: &str = "Change what was noted";
/// Labels the sex.
pub const SEX: &str = "What it is";
/// It lives no more.
pub const DEAD: &str = "This lamb is dead. Its record stays.";

/// Returns why milk must wait, a line each.
pub fn hold(hold: Hold, system: System) -> Vec<String> {
    let why = match hold {
        Hold::NoSwallow { .. } => {
            "Its head was down, or it did not swallow: *no milk*, it would run into the lungs. *Call your vet.*"
                .to_owned()
        }
        Hold::Cold { read: None, .. } => {
            "Its mouth was cold: taken as under 37 °C (98.6 °F). *No milk*, neither by bottle nor by tube.".to_owned()
        }
        Hold::Cold { read: Some(read), .. } => format!(
            "It read {}: *no milk* under 37 °C (98.6 °F), neither by bottle nor by tube.",
            temperature_both(read, system)
        ),
        Hold::Belly { .. } => {
            return vec![
                "Its belly was tight, or its chin wet again: *no milk*, neither by bottle nor by tube, until your vet allows it. *Call your vet.*".to_owned(),
                "Electrolyte only on your vet’s word.".to_owned(),
            ];
        }
        Hold::Mouth { row, .. } => return mouth_shut(row),
        Hold::NotTried { read, .. } => format!(
            "It read {}: see that it holds its head up and swallows *before any milk*.",
            temperature_both(read, system)
        ),
        Hold::Failing { .. } => {
            "It was scored *failing*: take its temperature. See that it holds its head up and swallows, before any milk."
                .to_owned()
        }
    };
    vec![why, "What comes first is under *Cold lamb*. If in doubt, call your vet.".to_owned()]
}

/// Returns why nothing may be given by mouth, a line each.
fn mouth_shut(row: Row) -> Vec<String> {
    let name = illness::lamb::row(row).name;
    let line = match row {
        Row::NoSwallow => "It does not suck yet: *no milk* by bottle or tube until it swallows. Dry it, rub it, look again.".to_owned(),
        Row::NotBreathing => "It did not breathe: *nothing by mouth* until it breathes and swallows.".to_owned(),
        Row::WateryMouth => "Its chin was wet again: *no milk*, neither by bottle nor by tube, until it stays dry or your vet allows it.".to_owned(),
        _ => format!("May be {}: *nothing by mouth*, no milk, until your vet allows it. *Call your vet.*", name.to_lowercase()),
    };
    vec![line, "What comes first is under *It is not right*. If in doubt, call your vet.".to_owned()]
}

/// Returns why milk must wait in a few words, for a row.
pub fn held(hold: Hold, system: System) -> String {
    match hold {
        Hold::NoSwallow { .. } => "Does not swallow: *no milk*".to_owned(),
        Hold::Cold { read: None, .. } => "*Cold mouth*: no milk yet".to_owned(),
        Hold::Cold { read: Some(read), .. } => format!("*{}*: no milk yet", temperature(read, system)),
        Hold::Belly { .. } => "*Tight belly or wet chin*: no milk".to_owned(),
        Hold::Mouth { row: Row::NoSwallow, .. } => "*Does not suck yet*: no milk".to_owned(),
        Hold::Mouth { row: Row::WateryMouth, .. } => "*Chin wet again*: no milk".to_owned(),
        Hold::Mouth { row, .. } => format!("*{}*: no milk", illness::lamb::row(row).name),
        Hold::NotTried { read, .. } => format!("*{}*: see that it swallows first", temperature(read, system)),
        Hold::Failing { .. } => "Failing: its temperature before any milk".to_owned(),
    }
}

/// Returns what comes before milk, a line each.
pub fn first(before: BeforeMilk, system: System) -> Vec<String> {
    let line = match before {
        BeforeMilk::Hold(hold) => return self::hold(hold, system),
        BeforeMilk::Ill => "It is in danger: *your vet before any milk*.",
        BeforeMilk::Vet => "Its temperature asks for your vet: *your vet before any milk*.",
        BeforeMilk::Look => "It is not right: *before any milk* look at it. Head up? Swallows, sucks? Warm?",
        BeforeMilk::Temperature => "Take its *temperature before any milk*, or feel its mouth.",
        BeforeMilk::Weigh => "Its feeds go by an old weight: *weigh it first*.",
    };
    vec![line.to_owned()]
}

/// What is asked before a tube goes in.
pub const TUBE_HEAD: &str = "Does it hold its head up?";
/// The same of its swallow.
pub const TUBE_SWALLOW: &str = "Does it swallow?";
/// Yes.
pub const TUBE_YES: &str = "Yes";
/// No.
pub const TUBE_NO: &str = "No";
/// Says what comes before a feed by tube.
pub const TUBE_FIRST: &str = "Answer both before the tube goes in.";
/// What one that does not is told.
pub const NO_TUBE: &str = "No tube: it would run into the lungs. *Call your vet.*";
/// Notes that it does not.
pub const NO_TUBE_NOTE: &str = "Save: no swallow";
/// Opens the record of a feed by tube that was given without asking.
pub const TUBED_UNCHECKED: &str = "Tubed already, not checked";

/// Heads what comes before milk where nothing holds it back.
pub const BEFORE_MILK: &str = "Before any milk";
/// Opens the record of milk that it had already.
pub const ALREADY_FED: &str = "Already fed";
/// Says what that record is.
pub const RECORD: &str = "Save here only the milk that it has already had.";
/// It sucked from a ewe.
pub const NURSED: &str = "Nursed";
/// Saves that record.
pub const SAVE_RECORD: &str = "Save the record";
/// Says which half of its dam is drawn.
pub const LEFT_HALF: &str = "Draw it from her left half: the right one is not fit.";
/// The same of the other.
pub const RIGHT_HALF: &str = "Draw it from her right half: the left one is not fit.";
/// Says that its dam has no milk to give.
pub const NEITHER_HALF: &str = "Not from its ewe: her udder is not fit to be milked. Use other colostrum.";

/// Returns what must be known or mended before milk, behind "no milk yet".
pub fn before_milk(before: BeforeMilk, system: System) -> String {
    match before {
        BeforeMilk::Hold(hold) => before_hold_ends(hold, system),
        BeforeMilk::Ill | BeforeMilk::Vet => "your vet first".to_owned(),
        BeforeMilk::Look => "look at it first".to_owned(),
        BeforeMilk::Temperature => "its temperature first".to_owned(),
        BeforeMilk::Weigh => "weigh it first".to_owned(),
    }
}

fn before_hold_ends(hold: Hold, system: System) -> String {
    match hold {
        Hold::NoSwallow { .. } => "it does not swallow".to_owned(),
        Hold::Cold { read: None, .. } => "its mouth is cold".to_owned(),
        Hold::Cold { read: Some(read), .. } => format!("it read *{}*", temperature(read, system)),
        Hold::Belly { .. } => "belly tight or chin wet".to_owned(),
        Hold::Mouth { row: Row::NoSwallow, .. } => "it does not suck yet".to_owned(),
        Hold::Mouth { row: Row::WateryMouth, .. } => "chin wet again".to_owned(),
        Hold::Mouth { row, .. } => illness::lamb::row(row).name.to_lowercase(),
        Hold::NotTried { .. } => "see that it swallows first".to_owned(),
        Hold::Failing { .. } => "temperature and swallow first".to_owned(),
    }
}

/// Returns the question about a weight that may be in pounds.
pub fn ask_pounds(kilograms: &str, pounds: &str) -> String {
    format!("{kilograms} is very heavy for a newborn. Did you mean {pounds}?")
}

/// Returns the button that keeps a weight as typed.
pub fn keep(weight: &str) -> String {
    format!("No, {weight}")
}

/// Returns the button that takes the other unit.
pub fn meant(weight: &str) -> String {
    format!("Yes, {weight}")
}

/// Returns the last reading: "*36.0 °C (96.8 °F)*, dangerously cold · 03:12, 2 h old".
pub fn last_reading(told: &str, band: &str, when: &str, age: &str) -> String {
    format!("*{told}*, {band} · {when}, {age}")
}

/// Returns when it is taken again.
pub fn again_at(when: &str) -> String {
    format!("Again at *{when}*")
}

/// Returns a birth weight with its verdict: "*3.9 kg* at birth: good for a twin".
pub fn at_birth(weight: &str, verdict: &str) -> String {
    format!("*{weight}* at birth: {verdict}")
}

/// Labels the start of the ribbon.
pub const RIBBON_BORN: &str = "born";
/// Tells the ribbon of a closed window.
pub const RIBBON_CLOSED: &str = "Colostrum: closed, over 24 hours old.";
/// Names a pin.
pub const PIN_UP: &str = "up";
/// Names a pin.
pub const PIN_SUCKED: &str = "nursed";
/// Names a pin.
pub const PIN_BOTTLE: &str = "bottle";
/// Names a pin.
pub const PIN_TUBE: &str = "tube";

/// Tells the ribbon in words.
pub fn ribbon_label(age: &str, left: &str) -> String {
    format!("Colostrum: {age}, {left} left of 24 hours.")
}

/// Names a stretch of the ribbon.
pub fn stretch(from: i64, to: i64) -> String {
    format!("{from} to {to} hours")
}

/// Says that a change could not be taken, which must never happen in silence.
pub const NOT_CHANGED: &str = "This cannot be changed here. Nothing was changed.";
/// Says that a time is missing.
pub const NO_TIME: &str = "Give the day and the time.";

/// Returns when it was born, with the day; of one that was found, what is known: "born before 3:00, up to 5 h old then".
pub fn born(lamb: &Lamb, now: Moment) -> String {
    match lamb.found {
        Some(found) => {
            let before = day_and_clock(found, now);
            format!("born before {before}, up to {} old then", span(found.since(lamb.born)))
        }
        None => format!("born {}", day_and_clock(lamb.born, now)),
    }
}

/// Returns how old it is, at the most where nobody saw its birth.
pub fn age(lamb: &Lamb, now: Moment) -> String {
    let age = super::watch::age(lamb.age(now));
    if lamb.found.is_some() { format!("up to {age}") } else { age }
}

/// Returns what a lamb is, under its name: "ram lamb · twin · born 02:14 · *3.9 kg*".
pub fn about(flock: &Flock, lamb: &Lamb, now: Moment) -> String {
    let size = usize::from(flock.born_as(lamb));
    let mut parts = vec![animals::sex(lamb.sex).to_owned(), animals::litter(size), born(lamb, now)];
    parts.extend(lamb.foster_dam().map(|ewe| life::with_ewe(&animals::ewe_of(flock, ewe))));
    parts.extend(lamb.weight().map(|weight| format!("*{}*", mass(weight, flock.settings.system))));
    let boosted = flock.dam_boosted(lamb).filter(|_| lamb.lives() && lamb.weaned.is_none());
    parts.extend(boosted.map(|at| format!("dam boosted {}", short_date(at.local().date()))));
    parts.join(" · ")
}

/// Returns the button of something that was seen or done already: "Navel ✓".
pub fn seen(label: &str) -> String {
    format!("{label} ✓")
}

/// Leads to giving a dam.
pub const GIVE_DAM: &str = "Give its dam";
/// Leads to putting right which ewe is the dam.
pub const WRONG_EWE: &str = "Wrong ewe?";
/// Asks which ewe is the dam.
pub const RIGHT_EWE_ASK: &str = "Which ewe is its dam?";
/// Asks which lambs go to the right ewe.
pub const WHICH_GO: &str = "Which lambs are hers?";
/// The whole litter goes.
pub fn all_go(lambs: usize) -> String {
    if lambs == 2 { "Both lambs".to_owned() } else { format!("All {lambs} lambs") }
}
/// This lamb goes alone.
pub fn one_goes(lamb: &str) -> String {
    format!("Only {lamb}")
}
/// Asks what was noted of the wrong ewe, and whether it was the right one: "Noted of ewe 14 at this lambing".
pub fn noted_of(ewe: &str) -> String {
    format!("Noted of {} at this lambing", in_a_sentence(ewe))
}
/// It was the right ewe: "That was ewe 41 too".
pub fn was_her(ewe: &str) -> String {
    format!("That was {} too", in_a_sentence(ewe))
}
/// It was the other, and stays.
pub fn stays_with(ewe: &str) -> String {
    format!("That was {}", in_a_sentence(ewe))
}
/// Returns the button that puts it right: "Move to ewe 41".
pub fn move_to(ewe: &str) -> String {
    format!("Move to {}", in_a_sentence(ewe))
}
/// Says whom it is moved from and to: "From ewe 14 to ewe 41."
pub fn from_to(from: &str, to: &str) -> String {
    format!("From {} to *{}*.", in_a_sentence(from), in_a_sentence(to))
}
/// Returns what was noted then: "03:10 · Waters broken".
pub fn noted_then(when: &str, noted: &str) -> String {
    format!("{when} · {noted}")
}
/// Leads back to the choice of a ewe.
pub const ANOTHER_EWE: &str = "Another ewe";

/// A ewe's name inside a sentence: "ewe 14".
fn in_a_sentence(ewe: &str) -> String {
    ewe.strip_prefix("Ewe ").map_or_else(|| ewe.to_owned(), |tag| format!("ewe {tag}"))
}
/// Says that the day's milk is given.
pub const ENOUGH: &str = "It has had all it needs for its first day.";
/// Labels the number of feeds.
pub const FEEDS_A_DAY: &str = "feeds a day";
/// Labels the day's volume.
pub const IN_A_DAY: &str = "in a day";
/// Labels what was given.
pub const GIVEN_IN_A_DAY: &str = "given in the last 24 h";

/// Leads to the dam.
pub fn dam(ewe: &str) -> String {
    format!("Dam: {ewe}")
}

/// Returns what was given by hand of the day's want.
pub fn given(given: &str, target: &str) -> String {
    format!("{given} of {target} given by hand")
}

/// Returns the word on the button of a bottle feed: "Fed 195".
pub fn fed(number: &str) -> String {
    format!("Fed {number}")
}

/// Returns the word on the button of a tube feed.
pub fn tubed(volume: &str) -> String {
    format!("All true: save {volume}")
}

/// Returns how a newborn stands with its first milk.
/// `before` is what comes before milk.
pub fn stands(lamb: &Lamb, before: Option<BeforeMilk>, limits: &Limits, now: Moment) -> String {
    let age = lamb.age(now);
    let minutes = |minutes: u16| TimeDelta::minutes(i64::from(minutes));
    match (lamb.first_milk(), lamb.sucked.last()) {
        (Some(first), _) if lamb.hand_fed() => format!("*fed by hand* since {}", clock(first)),
        (Some(_), Some(last)) => format!("*nursed* {}", clock(*last)),
        (Some(first), None) => format!("*fed by hand* {}", clock(first)),
        _ if matches!(before, Some(BeforeMilk::Hold(_))) => {
            "*not seen to nurse*, but no milk yet: see below".to_owned()
        }
        _ if before.is_some() => "*not seen to nurse*: see below what comes first".to_owned(),
        _ if age >= TimeDelta::hours(24) => "*no colostrum in 24 h*: call your vet".to_owned(),
        _ if age >= minutes(limits.last_call_minutes) => "*no milk yet*: colostrum deadline".to_owned(),
        _ if age >= minutes(limits.red_minutes) => "*not seen to nurse*: late, feed it".to_owned(),
        _ if age >= minutes(limits.help_minutes) => "*not seen to nurse*: help it now".to_owned(),
        _ => format!("*not seen to nurse*: help from {}", clock(lamb.born + minutes(limits.help_minutes))),
    }
}

/// Asks why the first day wants so much.
pub const WHY_DAY: &str = "why so much in a day?";

/// The same for those who listen, with what is asked about: "why so much in a day? Colostrum wanted".
pub fn why_day(about: &str) -> String {
    format!("{WHY_DAY} {about}")
}
