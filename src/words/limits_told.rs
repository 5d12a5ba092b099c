//! The law that what stands on the screen is the farm's own limit: each limit that can be set is found in the texts that
//! tell it, and no text holds the figure that Yeanling starts with.
//!
//! What a source prints is told as printed: its sentence says "Published" or stands in [`KEPT`].

#[path = "../../tests/pages/unusual.rs"]
#[allow(dead_code, reason = "the pages ask it of two farms, the words of one")]
mod unusual;

use std::fs;
use std::path::{Path, PathBuf};

use yeanling_core::book::{EweId, LambId, Part, Presentation};
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::settings::{FarmSettings, Limit};
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{BeforeMilk, EweTask, LambDanger, LambStep, LambTask, Task, Trouble};

use self::unusual::every_limit;
use super::common::span;
use super::why::LaborClock;
use super::{help, watch, why};

/// Returns a limit as it is told.
fn told(settings: &FarmSettings, limit: Limit) -> String {
    span(unusual::length(settings, limit))
}

/// Returns the texts that tell a limit, each with its name.
fn texts(settings: &FarmSettings, limit: Limit) -> Vec<(&'static str, String)> {
    let first_day = ("a newborn's first day", first_day(settings));
    let clocks = ("around lambing", help::lambing::clocks(&settings.labor, &settings.stay).join(" "));
    let ewe = ("when to call the vet, the ewe", help::vet_ewe(&settings.labor).join(" "));
    let lamb = ("when to call the vet, the lamb", help::vet_lamb(settings).join(" "));
    let because = |task| ("why?", why_labor(settings, task));
    match limit {
        Limit::Up => vec![first_day, ("why?", why_vigor(settings))],
        Limit::Help | Limit::Red | Limit::NavelAgain => vec![first_day],
        Limit::LastCall => vec![first_day, lamb],
        Limit::Look => vec![clocks, because(EweTask::Look)],
        Limit::Restless => vec![clocks, because(EweTask::LongRestless)],
        Limit::HandCheck | Limit::StepIn => {
            vec![
                clocks,
                ewe,
                because(EweTask::HandCheck { step_in: false }),
                because(EweTask::HandCheck { step_in: true }),
            ]
        }
        Limit::Progress => vec![clocks, because(EweTask::Progress)],
        Limit::Neck => vec![clocks, ewe, because(EweTask::CervixClosed)],
        Limit::PutRight => vec![
            clocks,
            ewe,
            because(EweTask::PutRight { trouble: Trouble::Helped }),
            because(EweTask::PutRight { trouble: Trouble::Lies(Presentation::HeadBack) }),
        ],
        Limit::NextLamb => vec![clocks, because(EweTask::NextLamb { check: false })],
        Limit::NextCheck => vec![clocks, ewe, because(EweTask::NextLamb { check: true })],
        Limit::AfterbirthAsk => vec![clocks, because(EweTask::Afterbirth { vet: false, hanging: false })],
        Limit::AfterbirthLate => {
            vec![clocks, ewe, because(EweTask::Afterbirth { vet: false, hanging: false })]
        }
        Limit::AfterbirthVet => vec![clocks, ewe, because(EweTask::Afterbirth { vet: true, hanging: false })],
        Limit::StaySingle | Limit::StayTwins | Limit::StayMore => vec![clocks, because(EweTask::LetOut)],
    }
}

fn first_day(settings: &FarmSettings) -> String {
    help::first_day(settings).into_iter().map(|(step, _)| step).collect::<Vec<_>>().join(" ")
}

fn why_labor(settings: &FarmSettings, task: EweTask) -> String {
    let now = Moment::from_unix_milliseconds(1_772_000_000_000, 0);
    let why = why::labor(LaborClock { task, since: now, due: now, late: now }, settings, now);
    let lines = [vec![why.rule], why.others, why.caution].concat();
    lines.join(" ")
}

fn why_vigor(settings: &FarmSettings) -> String {
    let grades = FourGrade::ALL.into_iter().map(|grade| {
        let why = why::vigor(grade, &settings.limits);
        [why.working, vec![why.rule], why.caution].concat().join(" ")
    });
    grades.collect::<Vec<_>>().join(" ")
}

/// A lamb in danger whose next step is this.
const fn in_danger(step: LambStep) -> LambDanger {
    LambDanger { cold: Some(None), no_swallow: true, failing: true, step }
}

/// Every task of a ewe, with and without what is asked next.
const EWE_TASKS: [EweTask; 19] = [
    EweTask::Look,
    EweTask::LongRestless,
    EweTask::HandCheck { step_in: false },
    EweTask::HandCheck { step_in: true },
    EweTask::Progress,
    EweTask::CervixClosed,
    EweTask::PutRight { trouble: Trouble::Helped },
    EweTask::PutRight { trouble: Trouble::Shows(Part::Tail) },
    EweTask::PutRight { trouble: Trouble::Lies(Presentation::HeadBack) },
    EweTask::PutRight { trouble: Trouble::Lies(Presentation::Crosswise) },
    EweTask::NextLamb { check: false },
    EweTask::NextLamb { check: true },
    EweTask::Afterbirth { vet: false, hanging: false },
    EweTask::Afterbirth { vet: true, hanging: false },
    EweTask::Afterbirth { vet: true, hanging: true },
    EweTask::Udder { again: false },
    EweTask::Udder { again: true },
    EweTask::Settled,
    EweTask::LetOut,
];

/// Every task of a lamb, with and without what is asked next.
const LAMB_TASKS: [LambTask; 24] = [
    LambTask::DipNavel,
    LambTask::DipNavelAgain,
    LambTask::GetUp,
    LambTask::FirstMilk { last_call: false, before: None },
    LambTask::FirstMilk { last_call: true, before: None },
    LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) },
    LambTask::Feed { volume: None, before: None },
    LambTask::Weigh { for_feeds: false },
    LambTask::Weigh { for_feeds: true },
    LambTask::ScoreVigor,
    LambTask::TakeTemperature,
    LambTask::CallVet,
    LambTask::Danger(in_danger(LambStep::WarmNow)),
    LambTask::Danger(in_danger(LambStep::GlucoseFirst)),
    LambTask::Danger(in_danger(LambStep::CheckNow)),
    LambTask::Hollow { before: None },
    LambTask::Hollow { before: Some(BeforeMilk::Temperature) },
    LambTask::DamDry { before: None },
    LambTask::DamDry { before: Some(BeforeMilk::Look) },
    LambTask::WeighAgain,
    LambTask::HardBirth,
    LambTask::Look,
    LambTask::WeaningCheck { ready: true },
    LambTask::WeaningCheck { ready: false },
];

/// What the Watch says of every task.
fn tasks() -> impl Iterator<Item = String> {
    let id = uuid::Uuid::from_u128(1);
    let of_ewes = EWE_TASKS.into_iter().map(move |task| Task::Ewe(EweId::from_uuid(id), task));
    let of_lambs = LAMB_TASKS.into_iter().map(move |task| Task::Lamb(LambId::from_uuid(id), task));
    of_ewes.chain(of_lambs).map(|task| watch::task(task, System::Metric))
}

/// What no text may hold once a limit is set: the figures Yeanling starts with, as they are told.
fn defaults() -> Vec<String> {
    let settings = FarmSettings::default();
    let mut told: Vec<String> = every_limit().map(|limit| told(&settings, limit)).collect();
    told.extend(
        ["60 min", "24 h", "48 h", "72 h", "an hour", "half an hour", "for hours"].map(str::to_owned),
    );
    told
}

/// Says whether a figure stands in a text by itself: "1 h" does not stand in "1 h 24 min" nor in "11 h".
fn holds(text: &str, figure: &str) -> bool {
    text.match_indices(figure).any(|(at, _)| {
        let (before, after) = (&text[..at], &text[at + figure.len()..]);
        let grows = after.starts_with(char::is_alphanumeric)
            || after.strip_prefix(' ').is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
        !before.ends_with(|c: char| c.is_alphanumeric() || c == '.') && !grows
    })
}

/// Published figures that are told as published, and what is no limit of the farm: each with why it stays.
const KEPT: &[(&str, &str)] = &[
    ("*By 6 h*", "the volume for the first six hours, printed by Bond 2020 and cited beside it"),
    ("By 6 h:", "the working of that volume"),
    ("By 18 h:", "the working of the volume of Mellor & Murray"),
    ("that of the first 18 h", "the same"),
    ("2 to 6 h apart", "our own spacing of feeds, which is no limit that can be set"),
    ("read it again in 30 min", "a fever is read twice; ours"),
    ("No glucose within 30 min?", "how long the vet is waited for before the phone decides; ours"),
    ("look every 10 min. Fits", "a lamb warmed without glucose; ours"),
    ("temperature again in 30 min", "a fever is read twice; ours"),
    ("*by 24 h*", "the volume for the first day, by the farm's rule"),
    ("÷ 12 h", "the curve of Dominguez"),
    ("Up to half an hour", "where the curve of Dominguez bends"),
    ("*2 h*: the goal", "by when a lamb is first fed; its sources are cited beside it"),
    ("*6 h*: the latest", "the same"),
    ("(AHDB says 4 to 6 h; Teagasc 6 h)", "what two of them say"),
    ("*12 h*: treat it as the last chance", "what is left of the uptake; its sources are cited beside it"),
    (
        "ook again in an hour",
        "when a row of the illness tables is looked at again; held to them in tests/pages/help_illness.rs",
    ),
    ("ook again an hour after it was fed", "the same"),
    ("in half an hour. Up to 40.5", "the same: a fever is read twice"),
    ("about half an hour after a feed. (NZAgbiz)", "what a source says"),
    ("Calcium opens it in half an hour (Farmers Weekly 1996)", "what that source says"),
    ("over 12 to 18 hours (MSD manual 2022)", "the same"),
    ("a first feed at 2 h and at 14 h", "the study of Hernández-Castellano 2015"),
];

/// Returns a text without the sentences that tell what is published.
fn own(text: &str) -> String {
    let sentences = text.split_inclusive([';', '.']);
    let own: String = sentences.filter(|sentence| !sentence.contains("Published")).collect();
    KEPT.iter().fold(own, |own, (kept, _)| own.replace(kept, ""))
}

#[test]
fn every_limit_is_told_as_the_farm_has_set_it() {
    let settings = unusual::first();
    for limit in every_limit() {
        let figure = told(&settings, limit);
        for (name, text) in texts(&settings, limit) {
            assert!(holds(&text, &figure), "{limit:?} is {figure}, which {name} does not say: {text}");
        }
    }
}

#[test]
fn no_text_holds_a_figure_that_the_farm_has_changed() {
    let settings = unusual::first();
    let mut all: Vec<String> = tasks().collect();
    all.extend(every_limit().flat_map(|limit| texts(&settings, limit)).map(|(_, text)| text));
    all.extend(EWE_TASKS.into_iter().map(|task| why_labor(&settings, task)));
    for text in all {
        let own = own(&text);
        for figure in defaults() {
            assert!(!holds(&own, &figure), "{figure} stands in: {text}");
        }
    }
}

/// The rooms of words in which the farm's limits are told; a folder stands for all that is in it.
const TOLD_IN: [&str; 12] = [
    "why",
    "help",
    "help.rs",
    "watch.rs",
    "lambing.rs",
    "labor.rs",
    "settings.rs",
    "night.rs",
    "pens.rs",
    "cautions.rs",
    "cold_lamb.rs",
    "lamb.rs",
];

fn sources(path: &Path, found: &mut Vec<PathBuf>) {
    if path.is_dir() {
        for entry in fs::read_dir(path).expect("a folder of words").flatten() {
            sources(&entry.path(), found);
        }
    } else {
        found.push(path.to_owned());
    }
}

/// Returns the text for people in a source: what stands between quotes, its tests and comments left out.
fn written(source: &str) -> Vec<String> {
    let source = source.split("#[cfg(test)]").next().unwrap_or_default();
    let code: String = source
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .map(|line| line.trim().to_owned() + "\n")
        .collect();
    code.replace("\\\n", "").split('"').skip(1).step_by(2).map(str::to_owned).collect()
}

#[test]
fn no_text_is_written_with_a_figure_that_the_farm_can_change() {
    let words = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut files = Vec::new();
    for room in TOLD_IN {
        sources(&words.join(room), &mut files);
    }
    assert!(files.len() > 30, "{files:?}");
    let mut kept_here = vec![false; KEPT.len()];
    let mut faults = Vec::new();
    for file in files {
        let source = fs::read_to_string(&file).expect("a source");
        for text in written(&source) {
            for (place, (kept, _)) in KEPT.iter().enumerate() {
                kept_here[place] |= text.contains(kept);
            }
            let figures = minutes_and_hours().into_iter().filter(|figure| holds(&own(&text), figure));
            faults.extend(figures.map(|figure| format!("{figure} stands in {}: {text}", file.display())));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    let gone: Vec<_> =
        KEPT.iter().zip(kept_here).filter(|(_, here)| !here).map(|((kept, _), _)| kept).collect();
    assert!(gone.is_empty(), "kept for nothing: {gone:?}");
}

/// The figures that Yeanling starts with, as people write them. Whole days of a stay are not among them: a lamb's first
/// day is no limit.
const fn minutes_and_hours() -> [&'static str; 16] {
    [
        "10 min",
        "10 minutes",
        "30 min",
        "30 minutes",
        "60 min",
        "60 minutes",
        "120 min",
        "1 h",
        "2 h",
        "6 h",
        "12 h",
        "18 h",
        "18 hours",
        "an hour",
        "half an hour",
        "for hours",
    ]
}
