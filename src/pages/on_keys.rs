//! A number on the keys: a weight, a volume or a temperature, as it is typed and in the other units.

use yeanling_core::units::{Mass, System, Temperature, Volume};
use yeanling_words::common::{mass, mass_unit, temperature, temperature_unit, volume, volume_unit};

use crate::Key;
use crate::block::{Block, Choices, Keypad, Kind, Readout, Shape};
use crate::page::Blocks;

/// The sign of the larger of the two units that a scale in pounds shows.
const POUNDS: &str = "lb";

/// Stands where the ounces will.
const NOTHING_YET: &str = "–";

/// What is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum What {
    /// A weight, in pounds also as pounds and ounces.
    Weight,
    /// A volume of milk.
    Volume,
    /// A temperature.
    Temperature,
}

/// A number on the keys.
#[derive(Clone, Debug)]
pub(crate) struct OnKeys {
    /// What is typed.
    pub(crate) what: What,
    /// Under which key it is kept; the keypad's own key is made of it.
    pub(crate) types: Key,
    /// What it is called.
    pub(crate) label: &'static str,
    /// What stands there.
    pub(crate) value: String,
    /// In which unit it is read.
    pub(crate) system: System,
    /// Whether the next key begins anew.
    pub(crate) anew: bool,
}

impl OnKeys {
    /// Returns the keypad: the choice of its unit if there is one, what it comes to in its own room above the keys, and what
    /// is asked about it below them.
    pub(crate) fn pad(self, units: Option<(Key, Choices)>, says: Option<Blocks>, below: Blocks) -> Blocks {
        let key = |part: &str| -> Key { format!("{}-{part}", self.types).into() };
        let mut top = Blocks::new().add(key("readout"), Kind::Readout(self.readout()));
        if let Some((key, units)) = units {
            top = top.choices(key, units);
        }
        if let Some(says) = says {
            top = top.group(key("says"), Shape::KeypadSays, says);
        }
        let larger = (self.what == What::Weight && self.system == System::Us).then_some(POUNDS);
        let (most, pad) = (self.most(), key("keys"));
        let Self { types, value, anew, .. } = self;
        let (inside, below) = (top.into(), below.into());
        let keypad = Keypad { types, value, anew, point: true, larger, most, inside, below };
        Blocks::new().then([Block::new(pad, Kind::Keypad(keypad))])
    }

    const fn most(&self) -> usize {
        match self.what {
            What::Weight | What::Volume => 6,
            What::Temperature => 5,
        }
    }

    fn readout(&self) -> Readout {
        let (value, also) = (self.value.clone(), self.also().unwrap_or_default());
        let pair = |number: &str, unit: &str| (number.to_owned(), unit.to_owned());
        let figures = match value.split_once(&format!(" {POUNDS} ")) {
            Some((pounds, "")) => vec![pair(pounds, POUNDS), pair(NOTHING_YET, "oz")],
            Some((pounds, ounces)) => vec![pair(pounds, POUNDS), pair(ounces, "oz")],
            None if value.is_empty() => Vec::new(),
            None => vec![pair(&value, self.unit())],
        };
        Readout { label: self.label.to_owned(), value, figures, also }
    }

    const fn unit(&self) -> &'static str {
        match self.what {
            What::Weight => mass_unit(self.system),
            What::Volume => volume_unit(self.system),
            What::Temperature => temperature_unit(self.system),
        }
    }

    /// Returns the same in the other units; nothing while it is no number.
    fn also(&self) -> Option<String> {
        let (text, ours) = (self.value.as_str(), self.system);
        let other = match ours {
            System::Metric => System::Us,
            System::Us => System::Metric,
        };
        match self.what {
            What::Weight => Mass::parse(text, ours).ok().map(|weight| mass(weight, other)),
            What::Volume => Volume::parse(text, ours).ok().map(|milk| volume(milk, other)),
            What::Temperature => Temperature::parse(text, ours).ok().map(|read| temperature(read, other)),
        }
    }
}

/// Returns a weight as the keys would have typed it: pounds and ounces where it is whole ounces and no tenth of a pound.
pub(crate) fn keyed(weight: Mass, system: System) -> String {
    use yeanling_words::common::number;
    /// Kept to a gram, a weight lies so far off at most, in pounds.
    const DUST: f64 = 0.0012;
    if system == System::Metric {
        return number(weight.as_kilograms(), 2);
    }
    let pounds = weight.as_pounds();
    let is_whole = |parts: f64| (pounds - (pounds * parts).round() / parts).abs() < DUST;
    let ounces = (pounds * 16.0).round();
    if is_whole(16.0) && !is_whole(10.0) {
        format!("{} {POUNDS} {}", number((ounces / 16.0).floor(), 0), number(ounces % 16.0, 0))
    } else {
        number(pounds, 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(typed: &str, expected: &str) {
        let weight = Mass::parse(typed, System::Us).expect("a weight");
        assert_eq!(keyed(weight, System::Us), expected);
    }

    #[test]
    fn a_weight_stands_on_the_keys_as_it_was_typed() {
        check("8 lb 4", "8 lb 4");
        check("8.4", "8.4");
        check("9", "9");
        check("11 lb 15", "11 lb 15");
        check("4.17 kg", "9.2");
    }

    #[test]
    fn every_ounce_and_every_tenth_comes_back_as_it_was() {
        for pounds in 1..26 {
            for tenths in 0..10 {
                let typed = format!("{pounds}.{tenths}");
                check(&typed, typed.trim_end_matches(".0"));
            }
            // Eight ounces are half a pound, which is a tenth too.
            for ounces in (1..16).filter(|ounces| *ounces != 8) {
                check(&format!("{pounds} lb {ounces}"), &format!("{pounds} lb {ounces}"));
            }
        }
    }
}
