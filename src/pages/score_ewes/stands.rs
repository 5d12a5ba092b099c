//! How a group stands against its target, and what the thin ones need.

use yeanling_core::book::EweId;
use yeanling_core::flock::Ewe;
use yeanling_core::reckon::season::condition::{
    Change, ConditionStage, Flag, Score, StageOfYear as AtStage, System as Targets, change, flags, mean,
    target,
};
use yeanling_core::seasons::standing;
use yeanling_core::units::{Condition, Mass, System, TimeDelta};
use yeanling_words::{animals, score_ewes as words};

use crate::block::{Choice, Choices, Row};
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Reason, Screen};

/// The time of the year.
const STAGE: &str = "race-stage";
/// By whose targets.
const BY: &str = "race-by";

/// A score this young tells how the group stands (ours).
const FRESH: TimeDelta = TimeDelta::days(14);
/// What a ewe gains a day while she is mended, as SRUC reckons with.
const GAIN: Mass = Mass::from_kilograms(0.17);

/// A ewe who was scored lately: as she was felt, and as she stands at that time of the year.
struct Scored<'a> {
    ewe: &'a Ewe,
    felt: Condition,
    score: Score,
    at: AtStage,
}

/// A ewe who needs something, and what.
type Told = (EweId, String, String);

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields, ewes: &[&Ewe]) -> Blocks {
    let usual = if view.system() == System::Us { Targets::Us } else { Targets::Lowland };
    let (stage, by) = (
        fields.pick(STAGE, &ConditionStage::ALL, ConditionStage::Mating),
        fields.pick(BY, &Targets::ALL, usual),
    );
    let stages = choices(STAGE, words::STAGE, &ConditionStage::ALL, stage, words::stage);
    let whose = choices(BY, words::BY_WHOM, &Targets::ALL, by, words::targets);
    let (text, told) = stands(view, ewes, by, stage);
    let row = |(ewe, name, text): &Told| {
        (format!("needs-{ewe}"), Row::new(name).text(text.as_str()).to(Screen::Ewe(*ewe)))
    };
    let inside = Blocks::new()
        .choices(STAGE, stages)
        .choices(BY, whose)
        .remark(text, [why(words::stage(stage), Reason::Condition(by, stage))])
        .rows("needs", told.iter().map(row));
    let inside = if told.is_empty() { inside } else { inside.caution([words::SLOWLY]) };
    Blocks::new().section("stands", words::STANDS, inside)
}

fn choices<T: Copy + PartialEq>(
    key: &'static str,
    label: &str,
    all: &[T],
    chosen: T,
    name: impl Fn(T) -> &'static str,
) -> Choices {
    let options = all.iter().enumerate();
    let options = options.map(|(place, one)| Choice::new(name(*one), Action::Choose(key.into(), place)));
    let chosen = all.iter().position(|one| *one == chosen);
    Choices::new(label, options.collect(), chosen).snug().labelled()
}

/// How they stand in words; those who are too fat, then those who are thin.
fn stands(view: &View, ewes: &[&Ewe], by: Targets, stage: ConditionStage) -> (String, Vec<Told>) {
    let scored: Vec<Scored> = ewes.iter().filter_map(|ewe| scored(view, ewe, stage)).collect();
    let scores: Vec<Score> = scored.iter().map(|one| one.score).collect();
    let Some(mean) = mean(&scores) else { return (words::NONE_SCORED.to_owned(), Vec::new()) };
    let thin: Vec<Told> = scored.iter().filter_map(|one| thin(view, one, by, stage)).collect();
    let target = target(by, stage, None);
    let text = words::stands(scores.len(), mean, target, thin.len());
    let text = if target.is_none() { format!("{text} {}", words::NO_TARGET) } else { text };
    let mut told: Vec<Told> = scored.iter().filter_map(|one| fat(one, by)).collect();
    told.extend(thin);
    (text, told)
}

fn scored<'a>(view: &View, ewe: &'a Ewe, stage: ConditionStage) -> Option<Scored<'a>> {
    let last = ewe.condition().filter(|last| view.now.since(last.at) <= FRESH)?;
    let (score, at) = standing(&view.lambing_forecasts, ewe, stage, view.now)?;
    Some(Scored { ewe, felt: last.score, score, at })
}

fn fat(one: &Scored, by: Targets) -> Option<Told> {
    let is = flags(by, one.score, one.at).contains(&Flag::TooFatLate);
    is.then(|| (one.ewe.id, animals::ewe(one.ewe), words::too_fat(one.felt)))
}

fn thin(view: &View, one: &Scored, by: Targets, stage: ConditionStage) -> Option<Told> {
    let under = |flag: &Flag| matches!(flag, Flag::Under | Flag::UnderLeast);
    let is = flags(by, one.score, one.at).iter().any(under);
    let target = target(by, stage, one.at.lambs).filter(|_| is)?;
    let low = Score::from_points(target.low).ok();
    let way: Option<Change> =
        one.ewe.weight().zip(low).and_then(|(weight, low)| change(weight.mass, one.score, low, GAIN).ok());
    let short = target.low - one.felt.as_score();
    let text = words::mends(one.felt, short, way.as_ref(), view.system());
    Some((one.ewe.id, animals::ewe(one.ewe), text))
}
