//! A weight as it is typed: unit beside it, the error under it, and the question whether pounds were meant.

use yeanling_core::book::{Event, LambId};
use yeanling_core::reckon::gain::odd;
use yeanling_core::units::{Mass, System};
use yeanling_core::watch::validate;
use yeanling_words::common::{mass, number, short_date};
use yeanling_words::{errors, lamb as words, weighing};

use crate::block::{Aloud, Block, Choice, Choices, Field, FieldKind, Line, LineLook, Notice, NoticeKind};
use crate::draft::Fields;
use crate::on_keys::{OnKeys, What};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key, Kind};

/// The units a weight can be typed in, each with its sign.
const UNITS: [(System, &str); 2] = [(System::Metric, "kg"), (System::Us, "lb")];
/// What a unit's key ends in; before it stands the key of its weight.
const UNIT: &str = "-unit";
/// What the key ends in under which is kept of which digits someone was asked.
const ASKED: &str = "-asked";

/// What was made of a typed weight.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Weighed {
    /// Nothing is typed.
    Nothing,
    /// A weight.
    Good(Mass),
    /// A birth weight so heavy that the other unit may have been meant: as typed, and as meant.
    Ask(Mass, Mass),
    /// What is wrong, in words.
    Wrong(String),
}

impl Weighed {
    /// Reads a birth weight. Typed as kilograms and from 8 kg on, it is asked about.
    pub(crate) fn at_birth(text: &str, system: System) -> Self {
        if text.trim().is_empty() {
            return Self::Nothing;
        }
        let typed = match Mass::parse(text, system) {
            Ok(typed) => typed,
            Err(error) => return Self::Wrong(errors::typed(&error, errors::Field::Mass, system)),
        };
        let meant = Mass::parse(&number(typed.as_kilograms(), 3), System::Us).ok();
        let likely = meant.filter(|meant| {
            typed >= Mass::ASK_FROM && system == System::Metric && Mass::AT_BIRTH.check(*meant).is_ok()
        });
        match (Mass::AT_BIRTH.check(typed), likely) {
            (Ok(typed), Some(meant)) => Self::Ask(typed, meant),
            (Ok(typed), None) => Self::Good(typed),
            (Err(error), _) => Self::Wrong(errors::weight(&error, system)),
        }
    }
}

/// Returns the key under which the unit of a weight is chosen.
pub(crate) fn unit_key(key: &str) -> Key {
    format!("{key}{UNIT}").into()
}

fn asked_key(key: &str) -> Key {
    format!("{key}{ASKED}").into()
}

/// Returns the unit that a weight is typed in; `stood` before one was chosen.
pub(crate) fn unit(fields: &Fields, key: &str, stood: System) -> System {
    fields.pick(&unit_key(key), &UNITS.map(|(system, _)| system), stood)
}

/// Returns the place of a unit among those to choose from.
pub(crate) fn unit_place(unit: System) -> Option<usize> {
    UNITS.iter().position(|(system, _)| *system == unit)
}

/// Returns the choice of a weight's unit.
pub(crate) fn units(fields: &Fields, key: &str, stood: System) -> Choices {
    let chosen = unit(fields, key, stood);
    let option = |(place, (_, sign)): (usize, &(System, &str))| {
        Choice::new(*sign, Action::Choose(unit_key(key), place))
    };
    let place = unit_place(chosen);
    Choices::new(words::UNIT, UNITS.iter().enumerate().map(option).collect(), place).snug()
}

/// Returns a field for a weight with the choice of its unit; `text` is what stood there before something was typed.
pub(crate) fn field(fields: &Fields, key: &'static str, label: &str, (text, stood): (&str, System)) -> Field {
    Field::new(label, FieldKind::Decimal, fields.text(key, text))
        .error(fields.error(key))
        .units(units(fields, key, stood))
}

/// Returns the keys for a weight with the choice of its unit; what is wrong with it, then `below`, stands under them.
pub(crate) fn pad(
    fields: &Fields,
    key: impl Into<Key>,
    label: &'static str,
    stood: System,
    below: Blocks,
) -> Blocks {
    let key = key.into();
    let units = units(fields, &key, stood);
    let below = Blocks::new().wrong(fields.error(&key)).then(below);
    let (value, system) = (fields.text(&key, ""), unit(fields, &key, stood));
    let on_keys = OnKeys { what: What::Weight, types: key.clone(), label, value, system, anew: false };
    on_keys.pad(Some((unit_key(&key), units)), None, below)
}

/// Returns a weight as it would be typed.
pub(crate) fn as_typed(mass: Mass, system: System) -> String {
    match system {
        System::Metric => number(mass.as_kilograms(), 3),
        System::Us => number(mass.as_pounds(), 2),
    }
}

/// Chooses the unit in which a weight is typed.
pub(crate) fn choose_unit(fields: &mut Fields, key: &str, unit: System) {
    if let Some(place) = UNITS.iter().position(|(system, _)| *system == unit) {
        fields.choose(unit_key(key), place);
    }
}

/// A unit was chosen: what was said of the same digits in the other is taken back.
pub(crate) fn chose_unit(key: &str, fields: &mut Fields) {
    if let Some(weight) = key.strip_suffix(UNIT) {
        fields.right(weight);
    }
}

/// Asks whether pounds were meant, with both answers as buttons; `does` is what a press does with the one that is right.
pub(crate) fn ask_pounds(typed: Mass, meant: Mass, does: impl Fn(Mass) -> Action) -> Blocks {
    pounds_question(typed, meant).buttons(2, pounds_or_not(typed, meant, does))
}

/// The question alone.
pub(crate) fn pounds_question(typed: Mass, meant: Mass) -> Blocks {
    let ask = words::ask_pounds(&mass(typed, System::Metric), &mass(meant, System::Us));
    let line = Line { look: LineLook::Plain, text: ask.into(), aloud: Aloud::AtOnce, buttons: Vec::new() };
    let inside = vec![Block::new("", Kind::Line(line))];
    let notice = Notice { kind: NoticeKind::Warn, inside, buttons: Vec::new() };
    Blocks::new().add("ask-pounds", Kind::Notice(notice))
}

/// Both answers.
pub(crate) fn pounds_or_not(typed: Mass, meant: Mass, does: impl Fn(Mass) -> Action) -> [Button; 2] {
    let (kilograms, pounds) = (mass(typed, System::Metric), mass(meant, System::Us));
    let meant = Button::new("pounds-meant", words::meant(&pounds), does(meant));
    [meant, Button::new("kilograms-meant", words::keep(&kilograms), does(typed))]
}

/// What was typed and in which unit, as one.
fn digits(fields: &Fields, key: &str, stood: System) -> String {
    format!("{} {:?}", fields.text(key, ""), unit(fields, key, stood))
}

/// Says whether just what is typed was asked about.
pub(crate) fn was_asked(fields: &Fields, key: &str, stood: System) -> bool {
    fields.typed(&asked_key(key)) == Some(&digits(fields, key, stood))
}

/// Keeps that just what is typed was asked about.
pub(crate) fn keep_asked(fields: &mut Fields, key: &str, stood: System) {
    let digits = digits(fields, key, stood);
    fields.set(asked_key(key), digits);
}

/// What was typed was noted: it is forgotten, with what was asked about it.
pub(crate) fn answered(fields: &mut Fields, key: &str) {
    fields.forget(key);
    fields.forget(&asked_key(key));
}

/// Returns the question about a weight that is unlike the lamb's last: once for what was typed, so that pressed again it is
/// taken.
pub(crate) fn asks_once(
    view: &View,
    fields: &mut Fields,
    key: &str,
    lamb: LambId,
    weighed: Mass,
) -> Option<String> {
    if was_asked(fields, key, view.system()) {
        return None;
    }
    let last = view.flock.lamb(lamb)?.weights.last()?;
    // What cannot be noted at all is refused with its own reason.
    validate(view.flock, view.book, &Event::Weighed { lamb, mass: weighed }, view.now, view.now).ok()?;
    if !odd((last.at, last.mass), (view.now, weighed)) {
        return None;
    }
    keep_asked(fields, key, view.system());
    // A number stays on one line with its unit.
    let told = |weight: Mass| mass(weight, view.system()).replace(' ', "\u{a0}");
    let on = short_date(last.at.local().date());
    Some(weighing::odd(&told(last.mass), &on, &told(weighed)))
}
