//! Whether tonight's weather chills lambs, by the farm's limit outdoors and by the air alone under a roof; and which
//! lambs of the book are at most risk.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::LambId;
use yeanling_core::flock::Flock;
use yeanling_core::practice::Housing;
use yeanling_core::reckon::chill::{self, AtRisk, Chill, NoIndex, Verdict};
use yeanling_core::units::{Moment, Rain, Speed, System, Temperature, TimeDelta};

use super::answer::{Answer, Shown};
use super::typed::{field, good, read};
use crate::farm::use_farm;
use crate::parts::{
    Choice, Choices, FigureSize, Notice, NoticeKind, Remark, Row, RowState, Rows, Section, WhyButton,
    WhyText, each,
};
use crate::pieces::why_text;
use crate::route::Screen;
use crate::words::common::number;
use crate::words::{animals, chill as words, errors, figures, practice, why};

/// What was typed of the weather.
#[derive(Clone, Copy)]
pub(super) struct Typed {
    air: RwSignal<String>,
    wind: RwSignal<String>,
    rain: RwSignal<String>,
}

impl Typed {
    pub(super) fn new() -> Self {
        let text = || RwSignal::new(String::new());
        Self { air: text(), wind: text(), rain: text() }
    }
}

/// The weather.
#[component]
pub(super) fn Weather(
    /// What was typed.
    typed: Typed,
    /// Where the lambs are.
    housing: RwSignal<Housing>,
) -> impl IntoView {
    let farm = use_farm();
    let air = read(typed.air, |text, system| {
        let read = Temperature::parse(text, system)
            .map_err(|wrong| errors::typed(&wrong, errors::Field::Air, system))?;
        let within = Temperature::OF_THE_AIR.check(read).map(Temperature::as_celsius);
        within.map_err(|wrong| errors::no_index(&NoIndex::Temperature(wrong), system))
    });
    let wind = read(typed.wind, |text, system| {
        let read =
            Speed::parse(text, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Wind, system))?;
        let within = Speed::OF_WIND.check(read).map(Speed::as_meters_per_second);
        within.map_err(|wrong| errors::no_index(&NoIndex::Wind(wrong), system))
    });
    let rain = read(typed.rain, |text, system| {
        let read =
            Rain::parse(text, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Rain, system))?;
        let within = Rain::OF_A_DAY.check(read).map(Rain::as_millimeters);
        within.map_err(|wrong| errors::no_index(&NoIndex::Rain(wrong), system))
    });
    let outdoors = Memo::new(move |_| housing.get() == Housing::Outdoors);
    let chill = Memo::new(move |_| {
        let air = Temperature::from_celsius(good(air)?);
        let (wind, rain) = (Speed::from_meters_per_second(good(wind)?), Rain::from_millimeters(good(rain)?));
        chill::chill(air, wind, rain, Housing::Outdoors, farm.practice().chill_limit).ok()
    });
    let indoors = Memo::new(move |_| {
        let indoors = chill::indoors(Temperature::from_celsius(good(air)?)).ok()?;
        let system = farm.system();
        Some((words::indoors(&indoors, system), why_text(why::indoors(&indoors, system))))
    });
    let housings = [Housing::Outdoors, Housing::Housed]
        .map(|housing| Choice::new(housing, practice::housing(housing)))
        .to_vec();
    view! {
        <Choices
            label=words::WHERE
            labelled=true
            options=housings
            chosen=Signal::derive(move || Some(housing.get()))
            on_choose=move |new| housing.set(new)
        />
        {field(words::AIR, typed.air, air, words::AIR_HINT, |system| match system {
            System::Metric => "°C",
            System::Us => "°F",
        })}
        {live(move || if outdoors.get() {
            view! {
                {field(words::WIND, typed.wind, wind, words::WIND_HINT, |system| match system {
                    System::Metric => "m/s",
                    System::Us => "mph",
                })}
                {field(words::RAIN, typed.rain, rain, words::RAIN_HINT, |system| match system {
                    System::Metric => "mm",
                    System::Us => "in",
                })}
                <Outdoors chill=chill />
            }
                .into_any()
        } else {
            view! {
                <Notice kind=NoticeKind::Calm>
                    <p>{live(move || errors::no_index(&NoIndex::Indoors, farm.system()).into_any())}</p>
                </Notice>
                {live(move || indoors.get().map(|(text, why)| view! {
                    <Remark text=format!("*{text}*")><WhyButton why=why /></Remark>
                }).into_any())}
            }
                .into_any()
        })}
        <MostAtRisk />
    }
}

/// The index, its verdict, and what to do.
#[component]
fn Outdoors(chill: Memo<Option<Chill>>) -> impl IntoView {
    let farm = use_farm();
    let some = Memo::new(move |_| chill.with(Option::is_some));
    let shown = Signal::derive(move || {
        let index = chill.get().map(|chill| number(chill.index.as_kilojoules(), 0));
        index.map(|index| Shown::new(&format!("{index} kJ/m²/h"), "")).unwrap_or_default()
    });
    let because = Signal::derive(move || {
        let system = farm.system();
        chill.get().map_or_else(WhyText::default, |chill| why_text(why::chill(&chill, system)))
    });
    let verdict = move || {
        let chill = chill.get()?;
        let kind = match chill.verdict {
            Verdict::HighRisk => NoticeKind::Warn,
            Verdict::Usual => NoticeKind::Calm,
        };
        Some(view! {
            <Notice kind=kind>
                <p role="status"><b>{words::verdict(&chill)}"."</b></p>
                <p>{words::advice(chill.verdict)}</p>
            </Notice>
        })
    };
    live(move || {
        if !some.get() {
            return view! { <p class="small-print">{words::TYPE_ALL}</p> }.into_any();
        }
        view! {
            <Answer label=words::INDEX shown=shown why=because size=FigureSize::Head />
            {live(move || verdict().into_any())}
        }
        .into_any()
    })
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

/// Which lambs are at most risk: the reasons, and those of the book.
#[component]
fn MostAtRisk() -> impl IntoView {
    let farm = use_farm();
    let lambs = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| at_risk(&ground.flock, now))
    });
    let some = Memo::new(move |_| lambs.with(|lambs| !lambs.is_empty()));
    let row = move |risk: Risk| {
        view! {
            <Row
                name=risk.name
                kind=risk.kind
                text=risk.says
                state=Signal::stored(RowState::Coming)
                href=Screen::Lamb(risk.id).hash()
            />
        }
        .into_any()
    };
    let key = |risk: &Risk| format!("{} {}", risk.id, risk.says);
    let reasons = move || {
        let system = farm.system();
        let line = |reason: AtRisk| {
            view! {
                <li>
                    {words::at_risk(reason, system)} " "
                    <small>{why::source_line(&reason.source())}</small>
                </li>
            }
            .into_any()
        };
        AtRisk::ALL.map(line).collect_view()
    };
    view! {
        <Section title=words::MOST_AT_RISK>
            <ol class="reading">{live(move || reasons().into_any())}</ol>
            {live(move || some.get().then(|| view! {
                <p class="small-print">{figures::IN_YOUR_BOOK}</p>
                <Rows>{each(move || lambs.get(), key, row)}</Rows>
            }).into_any())}
        </Section>
    }
}

fn at_risk(flock: &Flock, now: Moment) -> Vec<Risk> {
    let system = flock.practice.system;
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
    lambs.arrange_by(|one, other| {
        other.reasons.len().cmp(&one.reasons.len()).then_with(|| one.reasons.cmp(&other.reasons))
    });
    lambs.truncate(LISTED);
    lambs
}
