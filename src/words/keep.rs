//! Which ewe to keep: each ewe's years, the farm's rules with their reasons, and the ewe lambs that may follow.

use yeanling_core::book::Cause;
use yeanling_core::seasons::{Kept, Kin, Replacement, SeasonOf};
use yeanling_core::units::{Mass, System};

use super::common::{date, mass, number};
use super::noted::cause;
use super::weighing::{alike, gain};

/// The screen's name.
pub const TITLE: &str = "Which ewe to keep";
/// What is there before the first ewe.
pub const EMPTY: &str = "No ewes yet. Add them in Flock: each lambing then counts here.";
/// Chooses who is shown.
pub const SHOW: &str = "Show";
/// All ewes.
pub const ALL: &str = "All ewes";
/// Those that meet a rule.
pub const MET: &str = "Meet a rule";
/// Ewe lambs.
pub const YOUNG: &str = "Replacements";
/// Chooses their order.
pub const SORT: &str = "Sort by";
/// The orders.
pub const ORDERS: [&str; 5] = ["Rank", "Weaned", "Age", "Lost", "Tag"];
/// Heads the rules.
pub const RULES: &str = "Cull rules";
/// What they are.
pub const RULES_SUB: &str = "All off until you turn one on. Your farm decides, and your vet may advise.";
/// Turns a rule off.
pub const OFF: &str = "off";
/// Heads the table.
pub const TABLE: &str = "All ewes side by side";
/// Prints the table.
pub const PRINT: &str = "Print the table";
/// Nobody meets a rule.
pub const NONE_MET: &str = "No ewe meets your cull rules.";
/// No rule is on.
pub const NO_RULES: &str = "No cull rule is on. Turn rules on below: the ewes that meet them come first.";
/// There is no ewe lamb to choose from.
pub const NO_YOUNG: &str = "No ewe lambs under 18 months. Note a lamb’s sex to see her here.";
/// How the rank comes about.
pub const RANKED: &str =
    "Most rules met first, then the gravest: udder and prolapse, then lambs and seasons lost.";

/// Returns how it stands, where the screen is offered: "3 of 24 ewes meet your cull rules".
pub fn stands(met: usize, of: usize) -> String {
    let ewes = if of == 1 { "1 ewe".to_owned() } else { format!("{of} ewes") };
    match met {
        0 => ewes,
        1 => format!("*1* of {ewes} meets your cull rules"),
        met => format!("*{met}* of {ewes} meet your cull rules"),
    }
}

fn count(count: u32, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}

/// Returns her age and her lambings: "6 years · 4 lambings".
pub fn years(kept: &Kept) -> String {
    let years = kept.record.years.map(|years| count(years.into(), "year", "years"));
    let lambings = match kept.record.litters {
        0 => "no lambing noted".to_owned(),
        litters => count(litters, "lambing", "lambings"),
    };
    years.into_iter().chain([lambings]).collect::<Vec<_>>().join(" · ")
}

/// Returns why no lambing of a grown ewe is noted, as far as the book knows; nothing where one is, or she is young.
pub fn no_lambing(kept: &Kept) -> String {
    if !kept.no_lambing_noted() {
        return String::new();
    }
    let put = if kept.put_to_ram { "put to the ram here" } else { "no ram noted for her" };
    format!("In the book since {}: earlier years are not known; {put}", date(kept.since))
}

/// Returns what became of her lambs: "born 8 · reared 6 · lost 1 (cold) · dead at birth 1".
pub fn lambs(kept: &Kept) -> String {
    let record = &kept.record;
    if record.born == 0 && record.reared == 0 {
        return String::new();
    }
    // Lambs at her that are too young to be reared are neither lost nor forgotten.
    let reared = format!("reared {}{}", record.reared, if kept.growing > 0 { " so far" } else { "" });
    let mut parts = vec![format!("born {}", record.born), reared];
    let of = |(of, times): &(Option<Cause>, u32)| match of {
        Some(of) => format!("lost {times} ({})", cause(*of)),
        None => format!("dead at birth {times}"),
    };
    parts.extend(kept.lost_of.iter().map(of));
    parts.join(" · ")
}

/// Returns what she weaned in a season, and how many were weighed; nothing where none was.
pub fn weaned(kept: &Kept, system: System) -> String {
    let told = |(all, weighed): (Mass, u32)| {
        format!("{} weaned a season · {weighed} of {} reared weighed", mass(all, system), kept.record.reared)
    };
    kept.weaned_a_season.map(told).unwrap_or_default()
}

/// Returns what else is known of her, what is nothing left out: "helped 1 · rejected 1 · score 3".
pub fn rest(kept: &Kept) -> String {
    let counted = [
        (kept.helped, "helped"),
        (kept.record.turned_away, "lambs rejected"),
        (kept.udder, "bad udder"),
        (kept.prolapse, "prolapse"),
        (kept.lame, "lame"),
        (kept.record.barren, "seasons without lambs"),
        (kept.late, "late lambings"),
    ];
    let counted = counted.into_iter().filter(|(times, _)| *times > 0);
    let counted = counted.map(|(times, what)| format!("{what} {times}"));
    let score = kept.condition.map(|score| format!("score {}", number(score.as_score(), 2)));
    counted.chain(score).collect::<Vec<_>>().join(" · ")
}

/// Returns this season of hers beside the last: "2027: 2 born, 2 at her, 41 kg weaned (2 weighed)".
pub fn season(season: &SeasonOf, system: System) -> String {
    let year = season.year;
    if season.missed {
        return format!("{year}: put to the ram, no lambs");
    }
    if season.born == 0 && season.at_her == 0 {
        return format!("{year}: no lambing noted");
    }
    let mut parts = vec![format!("{year}: {} born", season.born)];
    let dead = season.born - season.born_alive;
    parts.extend((dead > 0).then(|| format!("{dead} dead")));
    parts.push(format!("{} at her", season.at_her));
    let weaned = |(all, weighed): (Mass, u32)| format!("{} weaned ({weighed} weighed)", mass(all, system));
    parts.extend(season.weaned.map(weaned));
    parts.extend(season.gain.map(|(grams, lambs)| format!("{} ({lambs})", gain(grams, system))));
    parts.join(" · ")
}

/// The heads of the table.
pub const HEADS: [&str; 13] = [
    "Ewe",
    "Rules met",
    "Years",
    "Lambings",
    "Born",
    "Reared",
    "Lost",
    "Weaned a season",
    "Helped",
    "Rejected",
    "Udder · feet",
    "Score",
    "Missed · late",
];

/// Returns what stands over the table on paper.
pub fn table_head(farm: &str, day: &str) -> String {
    if farm.is_empty() { format!("{TITLE} · {day}") } else { format!("{farm} · {TITLE} · {day}") }
}

/// Returns her row of the table after her name: as the heads say, nothing where nothing is known.
pub fn cells(kept: &Kept, reasons: String, system: System) -> Vec<String> {
    let record = &kept.record;
    let lost = record.lost + record.born_dead;
    let weaned = kept.weaned_a_season;
    vec![
        reasons,
        record.years.map(|years| years.to_string()).unwrap_or_default(),
        record.litters.to_string(),
        record.born.to_string(),
        record.reared.to_string(),
        lost.to_string(),
        weaned.map(|(all, weighed)| format!("{} ({weighed})", mass(all, system))).unwrap_or_default(),
        kept.helped.to_string(),
        record.turned_away.to_string(),
        format!("{} · {}", kept.udder, kept.lame),
        kept.condition.map(|score| number(score.as_score(), 2)).unwrap_or_default(),
        format!("{} · {}", record.barren, kept.late),
    ]
}

/// Returns how a ewe lamb was born and how old she is: "born twin · 14 weeks".
pub fn young(born: u8, weeks: i64) -> String {
    let born = match born {
        1 => "born single",
        2 => "born twin",
        _ => "born triplet or more",
    };
    format!("{born} · {weeks} weeks")
}

/// Returns how she grew; that she was not weighed where she was not.
pub fn young_grew(one: &Replacement, system: System) -> String {
    let Some(grown) = &one.grown else { return "not weighed since birth".to_owned() };
    let gained = grown.since_birth.map(|grams| gain(grams, system));
    let adjusted = alike(&grown.adjusted, system).replace('*', "");
    gained.into_iter().chain([adjusted]).collect::<Vec<_>>().join(" · ")
}

/// Returns whose she is and how that ewe did: "of Ewe 12: 8 born, 7 reared, no rule met".
pub fn dam(name: &str, kept: Option<&Kept>, reasons: &str) -> String {
    let Some(kept) = kept else { return format!("of {name}, who is not here") };
    let (born, reared) = (kept.record.born, kept.record.reared);
    let met = if reasons.is_empty() { "no rule met".to_owned() } else { reasons.to_owned() };
    format!("of {name}: {born} born, {reared} reared · {met}")
}

/// Returns which ram she is close kin to: "daughter of Boss: another ram for her".
pub fn kin(kin: &[(String, Kin)]) -> String {
    let told = |(ram, kin): &(String, Kin)| match kin {
        Kin::Sire => format!("daughter of {ram}: another ram for her"),
        Kin::MaybeSire => format!("may be a daughter of {ram}: another ram for her"),
        Kin::Brother => format!("{ram} had the same dam: another ram for her"),
    };
    kin.iter().map(told).collect::<Vec<_>>().join(" · ")
}

/// One rule: what it is called, and why farms cull by it, with who says so.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// What it is called.
    pub name: &'static str,
    /// Why, and who says so.
    pub why: &'static str,
}

/// The rules, in the order in which they stand.
pub const RULE: [Rule; 11] = [
    Rule {
        name: "Udder: bad seasons",
        why: "A half that was hard, cold or dry seldom milks well again. Common practice, no source.",
    },
    Rule { name: "Prolapses", why: "It often comes back the next year (NADIS, unconfirmed)." },
    Rule { name: "Lambs lost", why: "Dead at birth counted. Common practice, no source." },
    Rule { name: "Lambs rejected", why: "A poor mother is often one again. Common practice, no source." },
    Rule { name: "Hard births", why: "Hard pulls, vet, C-section. Common practice, no source." },
    Rule {
        name: "Seasons without lambs",
        why: "Put to the ram, and no lambs: a year’s feed. Common practice, no source.",
    },
    Rule {
        name: "Times lame",
        why: "Lame again and again: she keeps foot rot in the flock (UK five-point plan, unconfirmed).",
    },
    Rule {
        name: "Late lambings",
        why: "Over 20 days after the first of her group: not settled in the first cycle (Oregon State).",
    },
    Rule { name: "Years of age", why: "Teeth and udders wear out. Common practice, no source." },
    Rule {
        name: "Thin: last score under",
        why: "Too thin at weaning for the next ram. Common practice, no source.",
    },
    Rule {
        name: "Light: weaned a season under",
        why: "In percent of your flock’s mean, from four ewes weighed on. Common practice, no source.",
    },
];
