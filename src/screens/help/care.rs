//! The aids as pages to read: the table of the cold lamb, both scales of vigor, rings, tags and vaccine.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::{DamsVaccinated, RingRule, Rings};
use yeanling_core::reckon::cold_lamb::{Answer, decide};
use yeanling_core::reckon::marking::{Ring, ring, vaccine};
use yeanling_core::reckon::ten_point::Sign;
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::units::{System, Temperature, TimeDelta};

use crate::farm::use_farm;
use crate::parts::{LinkButton, Said};
use crate::route::Screen;
use crate::words::cold_lamb::courses;
use crate::words::{cold_lamb as cold_words, help as words, marking as marks, why};

/// Every row of the table, each with what stands for it.
fn rows() -> Vec<(Answer, bool)> {
    let (young, older) = (Some(TimeDelta::hours(2)), Some(TimeDelta::hours(9)));
    [(36.0, young), (36.0, older), (38.0, young), (39.5, young), (40.5, young)]
        .into_iter()
        .flat_map(|(celsius, age)| [true, false].map(|able| (celsius, age, able)))
        .filter_map(|(celsius, age, able)| {
            decide(Temperature::from_celsius(celsius), age, Some(able)).ok().map(|answer| (answer, able))
        })
        .collect()
}

/// The table of the cold lamb, row by row.
pub(super) fn cold() -> AnyView {
    let farm = use_farm();
    view! {
        <LinkButton href=Screen::ColdLamb(None).hash() label=words::OPEN_COLD />
        <p class="small-print">{words::COLD_SUB}</p>
        {live(move || {
            let system = farm.system();
            rows().into_iter().map(|(answer, able)| row(&answer, able, system)).collect::<Vec<AnyView>>().into_any()
        })}
        <p class="small-print">{cold_words::FIRST_DROP}</p>
        <h3>{courses::TITLE}</h3>
        <ul class="reading">{lines(&courses::WHICH)}</ul>
        <h3>{courses::YOUNG_TITLE}</h3>
        <ol class="reading">{lines(&courses::YOUNG)}</ol>
        <h3>{courses::OLDER_TITLE}</h3>
        <ol class="reading">{lines(&courses::OLDER)}</ol>
        <p class="small-print">{courses::SOURCE}</p>
        <ul class="reading">{lines(&[cold_words::FEVER])}</ul>
    }
    .into_any()
}

fn lines(lines: &[&'static str]) -> Vec<AnyView> {
    lines.iter().map(|line| view! { <li><Said text=*line /></li> }.into_any()).collect()
}

fn row(answer: &Answer, able: bool, system: System) -> AnyView {
    let heading = words::row(&cold_words::heading(answer), able);
    let lines = answer.steps.iter().map(|step| cold_words::step(*step, None, system));
    let steps: Vec<AnyView> = lines.map(|line| view! { <li>{line}</li> }.into_any()).collect();
    let nevers = answer.never.iter().map(|never| cold_words::never(*never));
    let nevers: Vec<AnyView> = nevers.map(|line| view! { <li>{line}</li> }.into_any()).collect();
    let never = (!nevers.is_empty()).then(|| view! { <ul class="reading">{nevers}</ul> }.into_any());
    view! {
        <details class="source-fold">
            <summary>{heading}</summary>
            <ol class="reading">{steps}</ol>
            {never}
        </details>
    }
    .into_any()
}

/// Both scales of vigor, which run against each other.
pub(super) fn vigor() -> AnyView {
    let farm = use_farm();
    let grades = move || {
        let limits = farm.practice().limits;
        let grade = |grade: FourGrade| {
            let line = format!("*Grade {}:* {}", grade.number(), why::vigor_meaning(grade));
            view! { <li><Said text=line /><small>{why::vigor_asks(grade, &limits)}</small></li> }.into_any()
        };
        FourGrade::ALL.into_iter().map(grade).collect::<Vec<AnyView>>()
    };
    let signs: Vec<AnyView> = Sign::ALL
        .into_iter()
        .map(|sign| {
            let (name, [zero, one, two]) = why::sign(sign);
            let line = format!("*{name}:* 0 {zero} · 1 {one} · 2 {two}");
            view! { <li><Said text=line /></li> }.into_any()
        })
        .collect();
    view! {
        <h3>{words::FOUR_GRADES}</h3>
        <ul class="reading">{live(move || grades().into_any())}</ul>
        <h3>{words::TEN_POINTS}</h3>
        <ul class="reading">{signs}</ul>
        <p class="small-print">{words::VIGOR_SUB}</p>
    }
    .into_any()
}

/// Every rule about rings and tags, and the vaccine by whether the dam had hers.
pub(super) fn rings() -> AnyView {
    let rules = [RingRule::EnglandWales, RingRule::Germany, RingRule::NewSouthWales, RingRule::NewZealand];
    let limits = rules.into_iter().flat_map(|rule| {
        let rings = Rings { rule, tails: true, ram_lambs: true };
        [Ring::Tail, Ring::Castration].into_iter().filter_map(move |kind| ring(rings, kind))
    });
    let mut lines: Vec<String> = limits.map(|window| marks::window(&window)).collect();
    lines.extend(marks::laws());
    lines.extend(marks::RING_CARE.map(str::to_owned));
    lines.extend(marks::TAGS.into_iter().map(marks::tag));
    lines.extend([DamsVaccinated::Yes, DamsVaccinated::No].map(|dams| marks::vaccine(&vaccine(dams))));
    let lines: Vec<AnyView> = lines.into_iter().map(|line| view! { <li>{line}</li> }.into_any()).collect();
    view! {
        <ul class="reading">{lines}</ul>
        <p class="small-print">{words::RINGS_SUB}</p>
    }
    .into_any()
}
