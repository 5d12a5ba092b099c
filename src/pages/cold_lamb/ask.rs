//! The three questions of the aid, one at a time: how warm, how old, whether it holds its head up and swallows.

use yeanling_core::book::Event;
use yeanling_core::units::{System, Temperature};
use yeanling_words::{cold_lamb as words, errors};

use super::case::{Able, Age};
use super::{Does, Hand};
use crate::block::{Choice, Choices, Kind, Notice, NoticeKind};
use crate::draft::Fields;
use crate::on_keys::{OnKeys, What};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Text};

/// What was typed for its temperature. It stays until it is a reading.
pub(super) const DEGREES: &str = "cold-degrees";
/// The scale on which that is read.
pub(super) const SCALE: &str = "cold-scale";

/// The scales, in the order in which they are offered.
pub(super) const SCALES: [System; 2] = [System::Metric, System::Us];

/// What is wrong with what was typed, and the scale on which it would make sense.
pub(super) struct Wrong {
    pub(super) text: String,
    other: Option<System>,
}

/// Returns the reading that was typed.
pub(super) fn reading(typed: &str, system: System) -> Result<Temperature, Wrong> {
    let read = Temperature::parse(typed, system).map_err(|error| Wrong {
        text: errors::typed(&error, errors::Field::LambTemperature, system),
        other: None,
    })?;
    read.in_a_lamb(system)
        .map_err(|error| Wrong { text: errors::lamb_temperature(&error), other: error.reads_like })
}

fn read(system: System) -> Action {
    Action::Does(crate::Does::ColdLamb(Does::Read(system)))
}

/// Asks how warm it is.
pub(super) fn how_warm(hand: Hand, title: &'static str) -> Blocks {
    let Hand { view, fields, .. } = hand;
    let (value, scale) = (fields.text(DEGREES, ""), scale(view, fields));
    let choice = |(place, system)| Choice::new(words::degrees(system), Action::Choose(SCALE.into(), place));
    let scales = SCALES.into_iter().enumerate().map(choice).collect();
    let chosen = SCALES.iter().position(|one| *one == scale);
    let scales = Choices::new(words::UNIT, scales, chosen).snug();
    let (types, label, system) = (DEGREES.into(), words::TEMPERATURE, scale);
    let on_keys = OnKeys { what: What::Temperature, types, label, value, system, anew: false };
    let inside = Blocks::new()
        .remark(words::NORMAL, [])
        .then(on_keys.pad(Some((SCALE.into(), scales)), None, wrong(fields, scale)))
        .button(Button::new("read", words::READ, read(scale)).filled().big());
    Blocks::new().section("how-warm", title, inside)
}

/// The scale on which a reading is typed.
pub(super) fn scale(view: &View, fields: &Fields) -> System {
    fields.pick(SCALE, &SCALES, view.system())
}

/// What is wrong with what was typed; a number that makes sense on the other scale is taken so with one tap.
fn wrong(fields: &Fields, scale: System) -> Blocks {
    let (said, typed) = (fields.error(DEGREES), fields.text(DEGREES, ""));
    if said.is_empty() {
        return Blocks::new();
    }
    let other = reading(&typed, scale).err().and_then(|wrong| wrong.other);
    let take = other.map(|other| Button::new("take", words::take_as(&typed, other), read(other)));
    let inside = take.into_iter().fold(Blocks::new().text(Text::typed(said)), Blocks::button);
    let notice = Notice { kind: NoticeKind::Bad, inside: inside.into(), buttons: Vec::new() };
    Blocks::new().add("wrong", Kind::Notice(notice))
}

/// Asks how old it is, where no record knows.
pub(super) fn how_old() -> Blocks {
    let choice = |age, label: &str| Choice::new(label, Action::Does(crate::Does::ColdLamb(Does::Age(age))));
    let ages = vec![
        choice(Age::UpToFive, words::UP_TO_FIVE),
        choice(Age::OverFive, words::OVER_FIVE),
        choice(Age::Unknown, words::AGE_UNKNOWN).note(words::AGE_UNKNOWN_SUB),
    ];
    let ages = Choices::new(words::HOW_OLD, ages, None).stacked();
    Blocks::new().section("how-old", words::HOW_OLD, Blocks::new().choices("ages", ages))
}

/// Asks whether it holds its head up and swallows; "not sure" is no fact.
pub(super) fn head_and_swallow(hand: Hand) -> Blocks {
    let choice = |able: Able, label: &str| {
        let does = match (hand.lamb, able) {
            (Some(lamb), Able::Yes | Able::No) => {
                Action::Note(vec![Event::SwallowTried { lamb, able: able == Able::Yes }])
            }
            (Some(_), Able::Ask | Able::NotSure) | (None, _) => {
                Action::Does(crate::Does::ColdLamb(Does::Able(able)))
            }
        };
        Choice::new(label, does)
    };
    let answers = vec![
        choice(Able::Yes, words::ABLE),
        choice(Able::No, words::NOT_ABLE),
        choice(Able::NotSure, words::NOT_SURE).note(words::NOT_SURE_SUB),
    ];
    let answers = Choices::new(words::HEAD_AND_SWALLOW, answers, None).stacked();
    let inside = Blocks::new().remark(words::HOW_TO_TRY, []).choices("answers", answers);
    Blocks::new().section("head-and-swallow", words::HEAD_AND_SWALLOW, inside)
}
