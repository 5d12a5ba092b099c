//! The aids as pages to read: the table of the cold lamb, both scales of vigor, rings, tags and vaccine.

use yeanling_core::reckon::cold_lamb::{ColdLambAnswer, decide};
use yeanling_core::reckon::marking::{ring, vaccine};
use yeanling_core::reckon::ten_point::Sign;
use yeanling_core::reckon::vigor::{FourGrade, GRADED_AT};
use yeanling_core::settings::{DamsVaccinated, Limits, RingRule, Rings};
use yeanling_core::terms::Ring;
use yeanling_core::units::{System, Temperature, TimeDelta};
use yeanling_words::cold_lamb::courses;
use yeanling_words::{cold_lamb as cold_words, help as words, marking as marks, why};

use super::{fold, read, steps};
use crate::block::{Item, ListLook};
use crate::page::Blocks;
use crate::{Action, Button, Screen};

/// Every row of the table, each with what stands for it.
fn rows() -> Vec<(ColdLambAnswer, bool)> {
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
pub(super) fn cold(system: System) -> Blocks {
    let open = Button::new("open", words::OPEN_COLD, Action::Go(Screen::ColdLamb(None)));
    let row = |blocks: Blocks, (place, (answer, able)): (usize, (ColdLambAnswer, bool))| {
        let heading = words::row(&cold_words::heading(&answer), able);
        fold(blocks, format!("cold-{place}"), heading, what_to_do(&answer, system))
    };
    let blocks = Blocks::new().button(open).small(words::COLD_SUB);
    rows()
        .into_iter()
        .enumerate()
        .fold(blocks, row)
        .small(cold_words::FIRST_DROP)
        .section("which", courses::TITLE, read(courses::WHICH))
        .section("young", courses::YOUNG_TITLE, steps(courses::YOUNG))
        .section("older", courses::OLDER_TITLE, steps(courses::OLDER))
        .small(courses::SOURCE)
        .then(read([cold_words::FEVER]))
}

fn what_to_do(answer: &ColdLambAnswer, system: System) -> Blocks {
    let steps = answer.steps.iter().map(|step| Item::new(cold_words::step(*step, None, system)));
    let nevers = answer.never.iter().map(|never| cold_words::never(*never));
    Blocks::new().list(ListLook::Ranked, steps).then(read(nevers))
}

/// Both scales of vigor, which run against each other.
pub(super) fn vigor(limits: &Limits) -> Blocks {
    let grade =
        |grade: FourGrade| Item::new(words::grade(grade)).note(why::vigor_asks(grade, limits, GRADED_AT));
    let grades = Blocks::new().list(ListLook::Reading, FourGrade::ALL.into_iter().map(grade));
    Blocks::new()
        .section("four-grades", words::FOUR_GRADES, grades)
        .section("ten-points", words::TEN_POINTS, read(Sign::ALL.into_iter().map(words::sign)))
        .small(words::VIGOR_SUB)
}

/// Every rule about rings and tags, and the vaccine by whether the dam had hers.
pub(super) fn rings() -> Blocks {
    let rules = [RingRule::EnglandWales, RingRule::Germany, RingRule::NewSouthWales, RingRule::NewZealand];
    let limits = rules.into_iter().flat_map(|rule| {
        let rings = Rings { rule, tails: true, ram_lambs: true };
        Ring::ALL.into_iter().filter_map(move |kind| ring(rings, kind))
    });
    let mut lines: Vec<String> = limits.map(|window| marks::window(&window)).collect();
    lines.extend(marks::laws());
    lines.extend(marks::RING_CARE.map(str::to_owned));
    lines.extend(marks::TAGS.into_iter().map(marks::tag));
    lines.extend([DamsVaccinated::Yes, DamsVaccinated::No].map(|dams| marks::vaccine(&vaccine(dams))));
    read(lines).small(words::RINGS_SUB)
}
