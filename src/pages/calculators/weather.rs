//! Whether tonight's weather chills lambs, by the farm's limit outdoors and by the air alone under a roof; and which
//! lambs of the book are at most risk.

use yeanling_core::book::LambId;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::chill::{self, AtRisk, Chill, NoIndex, Verdict};
use yeanling_core::settings::Housing;
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::{Moment, Rain, Speed, System, Temperature, TimeDelta};
use yeanling_words::common::number;
use yeanling_words::{animals, calculators, chill as words, errors, settings, why};

use super::answer::{answer, figure, head};
use super::bag::degrees;
use super::typed::{Read, field, good, read};
use super::{HOUSING, HOUSINGS, choices, housing};
use crate::block::{Aloud, Item, Line, LineLook, ListLook, Notice, NoticeKind, Row};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Key, Kind, Reason, Screen, Text};

const AIR: &str = "figures-air";
const WIND: &str = "figures-wind";
const RAIN: &str = "figures-rain";

/// Returns the weather.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let system = view.system();
    let air = read(fields, AIR, system, |text, system| {
        let read = Temperature::parse(text, system)
            .map_err(|wrong| errors::typed(&wrong, errors::Field::Air, system))?;
        let within = Temperature::OF_THE_AIR.check(read);
        within.map_err(|wrong| errors::no_index(&NoIndex::Temperature(wrong), system))
    });
    let lives = housing(view, fields);
    let housings = choices(HOUSING, words::WHERE, HOUSINGS.into_iter().enumerate().rev(), |one| {
        (one == lives, settings::housing(one).to_owned(), "")
    });
    let blocks = Blocks::new()
        .choices(HOUSING, housings.labelled())
        .field(AIR, field(fields, AIR, words::AIR, &air, degrees(system)).hint(words::AIR_HINT));
    let blocks = match lives {
        Housing::Outdoors => blocks.then(outdoors(view, fields, &air)),
        Housing::Housed => blocks.then(under_a_roof(view, good(&air))),
    };
    blocks.then(most_at_risk(view))
}

/// Returns the wind and the rain, the index with its verdict, and what to do.
fn outdoors(view: &View, fields: &Fields, air: &Read<Temperature>) -> Blocks {
    let system = view.system();
    let wind = read(fields, WIND, system, |text, system| {
        let read =
            Speed::parse(text, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Wind, system))?;
        let within = Speed::OF_WIND.check(read);
        within.map_err(|wrong| errors::no_index(&NoIndex::Wind(wrong), system))
    });
    let rain = read(fields, RAIN, system, |text, system| {
        let read =
            Rain::parse(text, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Rain, system))?;
        let within = Rain::OF_A_DAY.check(read);
        within.map_err(|wrong| errors::no_index(&NoIndex::Rain(wrong), system))
    });
    let (wind_unit, rain_unit) = match system {
        System::Metric => ("m/s", "mm"),
        System::Us => ("mph", "in"),
    };
    let chill = || {
        let (air, wind, rain) = (good(air)?, good(&wind)?, good(&rain)?);
        chill::chill(air, wind, rain, Housing::Outdoors, view.settings().chill_limit).ok()
    };
    let blocks = Blocks::new()
        .field(WIND, field(fields, WIND, words::WIND, &wind, wind_unit).hint(words::WIND_HINT))
        .field(RAIN, field(fields, RAIN, words::RAIN, &rain, rain_unit).hint(words::RAIN_HINT));
    match chill() {
        Some(chill) => blocks.then(index(&chill)),
        None => blocks.small(words::TYPE_ALL),
    }
}

/// Returns the index with its verdict and what to do.
fn index(chill: &Chill) -> Blocks {
    let kind = match chill.verdict {
        Verdict::HighRisk => NoticeKind::Warn,
        Verdict::Usual => NoticeKind::Calm,
    };
    let shown = figure(number(chill.index.as_kilojoules(), 0), words::INDEX_UNIT, "");
    let verdict = Line {
        look: LineLook::Plain,
        text: Text::strong(&words::verdict(chill)),
        aloud: Aloud::Politely,
        buttons: Vec::new(),
    };
    let inside = Blocks::new().add("", Kind::Line(verdict)).text(words::advice(chill.verdict)).into();
    Blocks::new()
        .then([answer("index", words::INDEX, head(shown), Some(Reason::Chill(*chill)))])
        .add("verdict", Kind::Notice(Notice { kind, inside, buttons: Vec::new() }))
}

/// Returns what the air alone means.
fn under_a_roof(view: &View, air: Option<Temperature>) -> Blocks {
    let system = view.system();
    let only = errors::no_index(&NoIndex::Indoors, system);
    let blocks = Blocks::new().notice("indoors", NoticeKind::Calm, only, []);
    match air.and_then(|air| chill::indoors(air).ok()) {
        Some(air) => {
            let text = Text::strong(&words::indoors(&air, system));
            blocks.remark(text, [Reason::Indoors(air).button(view)])
        }
        None => blocks,
    }
}

/// One lamb that is at more risk than others.
#[derive(Clone, Debug, PartialEq)]
struct Risk {
    id: LambId,
    reasons: Vec<AtRisk>,
    name: String,
    kind: String,
    says: String,
}

/// Only lambs so young are listed (ours): older ones have their wool and their legs.
const LISTED_TO: TimeDelta = TimeDelta::days(7);
/// No more are listed (ours): the worst come first.
const LISTED: usize = 8;

/// Returns which lambs are at most risk: the reasons, and those of the book.
fn most_at_risk(view: &View) -> Blocks {
    let reasons = AtRisk::ALL.map(|reason| {
        Item::new(words::at_risk(reason, view.system())).note(why::source_line(&reason.source()))
    });
    let lambs = at_risk(view.flock, view.now);
    let mut blocks = Blocks::new().list(ListLook::Ranked, reasons);
    if !lambs.is_empty() {
        blocks = blocks.small(calculators::IN_YOUR_BOOK).rows("at-risk", lambs.into_iter().map(row));
    }
    Blocks::new().section("most-at-risk", words::MOST_AT_RISK, blocks)
}

fn row(risk: Risk) -> (Key, Row) {
    let row = Row::new(risk.name).kind(risk.kind).text(risk.says).to(Screen::Lamb(risk.id));
    (format!("lamb-{}", risk.id).into(), row)
}

fn at_risk(flock: &Flock, now: Moment) -> Vec<Risk> {
    let system = flock.settings.system;
    let mut lambs: Vec<Risk> = flock
        .born_after(now - LISTED_TO)
        .filter(|lamb| lamb.lives())
        .filter_map(|lamb| {
            let size = flock.litter_of(lamb.id).map_or(0, |litter| litter.lambs.len());
            let size = u8::try_from(size).unwrap_or(u8::MAX);
            let reasons = chill::at_risk(lamb.age(now), lamb.weight(), size, false);
            let matters = reasons.iter().any(|reason| *reason < AtRisk::OneOfSeveral);
            matters.then(|| Risk {
                id: lamb.id,
                name: animals::lamb(flock, lamb),
                kind: animals::lamb_kind(lamb, system),
                says: reasons
                    .iter()
                    .map(|reason| words::at_risk(*reason, system))
                    .collect::<Vec<_>>()
                    .join(" "),
                reasons,
            })
        })
        .collect();
    // The more reasons the worse, and among as many the worse reason first.
    lambs.sort_small_by(|one, other| {
        other.reasons.len().cmp(&one.reasons.len()).then_with(|| one.reasons.cmp(&other.reasons))
    });
    lambs.truncate(LISTED);
    lambs
}
