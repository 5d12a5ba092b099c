//! A page in metric units and the same page in US units say the same quantities.

use std::collections::BTreeMap;

use yeanling_core::book::Event;
use yeanling_core::practice::Choice;
use yeanling_core::units::{Moment, System};
use yeanling_pages::{Page, made_up};

use crate::phone::Phone;

/// A quantity as it stands in a text: what kind it is of, in one unit, and how far its last digit lets it be off.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Quantity {
    kind: &'static str,
    value: f64,
    off: f64,
}

/// The units that are told: kind, factor to the one inside, and what is added after.
const UNITS: [(&str, &str, f64, f64); 15] = [
    ("kg", "mass", 1.0, 0.0),
    ("g", "mass", 0.001, 0.0),
    ("lb", "mass", 0.453_592_37, 0.0),
    ("oz", "mass", 0.028_349_523_125, 0.0),
    ("ml", "volume", 1.0, 0.0),
    ("L", "volume", 1000.0, 0.0),
    ("fl oz", "volume", 29.573_529_562_5, 0.0),
    ("qt", "volume", 946.352_946, 0.0),
    ("gal", "volume", 3_785.411_784, 0.0),
    ("°C", "temperature", 1.0, 0.0),
    ("°F", "temperature", 5.0 / 9.0, -160.0 / 9.0),
    ("cm", "length", 1.0, 0.0),
    ("in", "length", 2.54, 0.0),
    ("km/h", "speed", 1.0, 0.0),
    ("mph", "speed", 1.609_344, 0.0),
];

/// Returns the quantities of a text that stands alone in one unit; of one given in both, nothing.
fn quantities(text: &str) -> Vec<Quantity> {
    let text = text.replace('\u{a0}', " ").replace("fl oz", "floz");
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut found = Vec::new();
    for pair in words.windows(2) {
        let number = pair[0].trim_start_matches(['(', '~', '–', '+']);
        let Ok(value) = number.replace(',', "").parse::<f64>() else { continue };
        let unit = pair[1].trim_end_matches([',', '.', ';', ':', ')', '?']);
        let unit = if unit == "floz" { "fl oz" } else { unit };
        let Some((_, kind, factor, plus)) = UNITS.iter().find(|(name, ..)| *name == unit) else { continue };
        let digits = number.split_once('.').map_or(0, |(_, after)| after.len());
        let step = 10_f64.powi(-i32::try_from(digits).unwrap_or(0));
        found.push(Quantity { kind, value: value * factor + plus, off: step * factor });
    }
    found
}

/// Returns the texts of a page by the key of their block.
fn told(page: &Page) -> BTreeMap<(usize, String), Vec<String>> {
    let blocks = page.all().into_iter().enumerate();
    blocks.map(|(place, block)| ((place, block.key.to_string()), block.texts())).collect()
}

/// Holds a phone's screens in one system against those in the other; returns how many quantities were held.
fn hold(phone: &Phone) -> usize {
    let mut other = phone.clone();
    let metric = phone.flock.practice.system == System::Metric;
    let system = if metric { System::Us } else { System::Metric };
    other.note(Event::Chose(Choice::System(system)));
    let mut held = 0;
    for screen in phone.screens() {
        let (ours, theirs) = (told(&phone.page_of(screen)), told(&other.page_of(screen)));
        for (key, one) in &ours {
            let Some(two) = theirs.get(key).filter(|two| two.len() == one.len()) else { continue };
            for (one, two) in one.iter().zip(two) {
                let (first, second) = (quantities(one), quantities(two));
                let alike =
                    first.len() == second.len() && first.iter().zip(&second).all(|(a, b)| a.kind == b.kind);
                if !alike {
                    continue;
                }
                for (a, b) in first.iter().zip(&second) {
                    // Each was rounded to its last digit; a volume is offered in steps that can be measured.
                    let off = a.off + b.off + if a.kind == "volume" { 4.0 } else { 0.0 };
                    assert!((a.value - b.value).abs() <= off, "{screen:?}: {one:?} is not {two:?}");
                    held += 1;
                }
            }
        }
    }
    held
}

#[test]
fn a_flock_says_the_same_in_both_units() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut held = 0;
    for hours in [0, 5, 30] {
        let mut phone = Phone::with(made_up::book(begins, System::Metric), begins);
        phone.later(hours * 60);
        held += hold(&phone);
    }
    assert!(held > 100, "{held} quantities were held");
}

#[test]
fn a_quantity_is_read_with_its_unit() {
    assert_eq!(quantities("Feed 6.6\u{a0}fl\u{a0}oz now").len(), 1);
    let mass = quantities("3.9 kg, 100.4 °F.");
    assert_eq!(mass[0], Quantity { kind: "mass", value: 3.9, off: 0.1 });
    assert!((mass[1].value - 38.0).abs() < 1e-9);
    assert_eq!(quantities("5 lambs in 3 pens"), Vec::new());
}
