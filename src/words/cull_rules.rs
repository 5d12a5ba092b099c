//! A ewe's record, and the farm's own cull rules.

use yeanling_core::seasons::{KeepMark, Record};
use yeanling_core::units::{Mass, System};

use super::common::{mass, number};

/// Heads her record.
pub const RECORD: &str = "Record";
/// Heads the ewes that meet a mark.
pub const LOOK_AGAIN: &str = "Cull candidates";
/// Says on her own screen that she meets a mark.
pub const LOOK_AGAIN_HER: &str = "Meets your cull rule";
/// Says that no marks are set.
pub const NO_MARKS: &str =
    "Set your own cull rules in Farm settings, such as 2 or more lambs lost. None is set.";
/// Says that nobody meets one.
pub const NONE: &str = "No ewe meets your cull rules.";
/// Heads the marks.
pub const MARKS: &str = "Cull rules";
/// Explains them.
pub const MARKS_SUB: &str = "Flag a ewe from this number. Blank: ignore. You set these; no handbook does.";
/// Hard births.
pub const HARD: &str = "Hard births";
/// Lambs lost.
pub const LOST: &str = "Lambs lost";
/// Lambs rejected.
pub const TURNED_AWAY: &str = "Lambs rejected";
/// Seasons without lambs.
pub const BARREN: &str = "Seasons put to the ram without lambs";
/// Her age.
pub const YEARS: &str = "Years of age";

/// Says that no lambing is noted, which is no count: she may have lambed before the book.
const NO_LAMBING: &str = "No lambing noted here";

/// Returns how many, with the word for one or for more.
fn count(count: u32, one: &str, more: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { more })
}

/// Says on her own screen that she meets a mark: "Meets your mark: *2 lambs lost*".
pub fn meets(mark: KeepMark, system: System) -> String {
    format!("{LOOK_AGAIN_HER}: *{}*", self::mark(mark, system))
}

/// Returns her record in lines, what is nothing left out.
pub fn record(record: &Record, system: System) -> Vec<String> {
    let fates = [(record.born_dead, "dead at birth"), (record.lost, "lost"), (record.reared, "reared")];
    let fates: Vec<String> = fates
        .into_iter()
        .filter(|(often, _)| *often > 0)
        .map(|(often, fate)| format!("*{often}* {fate}"))
        .collect();
    // Years of hers may lie before the book, so none is no count.
    if record.litters == 0 {
        let put = if record.barren > 0 { "put to the ram, " } else { "" };
        let barren = count(record.barren, "season without lambs", "seasons without lambs");
        return if record.barren > 0 {
            vec![NO_LAMBING.to_owned(), format!("{put}{barren}")]
        } else {
            vec![NO_LAMBING.to_owned()]
        };
    }
    let born = format!(
        "*{}*, *{}*",
        count(record.litters, "lambing", "lambings"),
        count(record.born, "lamb", "lambs")
    );
    let mut lines = vec![if fates.is_empty() { born } else { format!("{born}: {}", fates.join(", ")) }];
    if let Some(all) = record.kilograms {
        let a_lambing = Mass::from_kilograms(all.as_kilograms() / f64::from(record.litters.max(1)));
        lines.push(format!(
            "Reared *{}* in all, {} a lambing; {} of {} reared were weighed",
            mass(all, system),
            mass(a_lambing, system),
            record.weighed,
            record.reared
        ));
    }
    let parts = [
        (record.hard_births, count(record.hard_births, "hard birth", "hard births")),
        (record.turned_away, count(record.turned_away, "lamb rejected", "lambs rejected")),
        (record.barren, count(record.barren, "season without lambs", "seasons without lambs")),
    ];
    let parts: Vec<String> =
        parts.into_iter().filter(|(often, _)| *often > 0).map(|(_, text)| text).collect();
    if !parts.is_empty() {
        lines.push(parts.join(", "));
    }
    lines
}

/// Returns a mark that a ewe meets.
pub fn mark(mark: KeepMark, system: System) -> String {
    match mark {
        KeepMark::HardBirths(often) => count(often, "hard birth", "hard births"),
        KeepMark::Lost(often) => count(often, "lamb lost", "lambs lost"),
        KeepMark::TurnedAway(often) => count(often, "lamb rejected", "lambs rejected"),
        KeepMark::Barren(often) => count(often, "season without lambs", "seasons without lambs"),
        KeepMark::Years(years) => format!("{} years old", number(f64::from(years), 0)),
        KeepMark::Udder(often) => count(often, "season with a bad udder", "seasons with a bad udder"),
        KeepMark::Lame(often) => format!("lame {}", count(often, "time", "times")),
        KeepMark::Prolapse(often) => count(often, "prolapse", "prolapses"),
        KeepMark::Late(often) => count(often, "late lambing", "late lambings"),
        KeepMark::Thin(score) => format!("thin, score {}", number(score.as_score(), 2)),
        KeepMark::Light(weaned) => format!("light: {} weaned a season", mass(weaned, system)),
    }
}

/// Returns the marks that a ewe meets.
pub fn marks(marks: &[KeepMark], system: System) -> String {
    marks.iter().map(|one| mark(*one, system)).collect::<Vec<_>>().join(", ")
}
