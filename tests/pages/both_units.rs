//! A page in metric units and the same page in US units say the same quantities; written for one region and for another it
//! says the same times and dates.

use std::collections::BTreeMap;

use yeanling_core::book::Event;
use yeanling_core::settings::{Choice, Clock};
use yeanling_core::units::{Moment, System};
use yeanling_pages::block::Kind;
use yeanling_pages::phone::Dates;
use yeanling_pages::{Action, Block, Page, sample};
use yeanling_words::own_unit;

use crate::phone::Phone;
use crate::times::{Time, times};

/// A quantity as it stands in a text: what kind it is of, in one unit, and how far its last digit lets it be off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Quantity {
    pub(crate) kind: &'static str,
    pub(crate) value: f64,
    pub(crate) off: f64,
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
pub(crate) fn quantities(text: &str) -> Vec<Quantity> {
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

/// The same phone as another farm has it: in the other units, with another clock, in another region.
fn elsewhere(phone: &Phone) -> Phone {
    let mut other = phone.clone();
    let metric = phone.flock.settings.system == System::Metric;
    let system = if metric { System::Us } else { System::Metric };
    other.note(Event::Chose(Choice::System(system)));
    other.note(Event::Chose(Choice::Clock(Clock::Twelve)));
    other.region.way.dates = Dates::MonthFirst;
    other
}

/// Returns the pages of a phone, each with the sheets that can be asked for on it.
fn pages(phone: &Phone) -> Vec<(String, Page)> {
    let sheets = crate::sheets::every(phone).into_iter().map(|sheet| {
        let mut asked = phone.clone();
        asked.act(&Action::Ask(sheet.clone()));
        (format!("{sheet:?}"), asked.page())
    });
    let screens = phone.screens().into_iter().map(|screen| (format!("{screen:?}"), phone.page_of(screen)));
    screens.chain(sheets).collect()
}

/// How much was held against each other.
#[derive(Clone, Copy, Debug, Default)]
struct Held {
    quantities: usize,
    times: usize,
}

/// Holds what a phone says against what the same phone says elsewhere.
fn hold(phone: &Phone, held: &mut Held) {
    for ((place, ours), (there, theirs)) in pages(phone).into_iter().zip(pages(&elsewhere(phone))) {
        // What is due has another order there: it is another sheet.
        if place != there {
            continue;
        }
        let (ours, theirs) = (told(&ours), told(&theirs));
        for (key, one) in &ours {
            let Some(two) = theirs.get(key).filter(|two| two.len() == one.len()) else { continue };
            for (one, two) in one.iter().zip(two) {
                held.quantities += alike(&place, one, two);
                let (first, second) = (times(one), times(two));
                let same = first.len() == second.len() && first.iter().zip(&second).all(|(a, b)| a.is(b));
                assert!(same, "{place}: {one:?} and {two:?} tell other times: {first:?}, {second:?}");
                held.times += first.len();
            }
        }
    }
}

/// Holds the quantities of two texts against each other, and returns how many.
fn alike(place: &str, one: &str, two: &str) -> usize {
    // Told in both units, the two stand in the other order there.
    let plain = |text: &str| text.replace('\u{a0}', " ");
    let (one_plain, two_plain) = (plain(one), plain(two));
    if [(&one_plain, &two_plain), (&two_plain, &one_plain)]
        .iter()
        .any(|(metric, us)| metric != us && own_unit::first(metric, System::Us) == **us)
    {
        return quantities(one).len();
    }
    let (first, second) = (quantities(one), quantities(two));
    if first.len() != second.len() || first.iter().zip(&second).any(|(a, b)| a.kind != b.kind) {
        return 0;
    }
    for (a, b) in first.iter().zip(&second) {
        // Each was rounded to its last digit; a volume is offered in steps that can be measured.
        let off = a.off + b.off + if a.kind == "volume" { 4.0 } else { 0.0 };
        assert!((a.value - b.value).abs() <= off, "{place}: {one:?} is not {two:?}");
    }
    first.len()
}

#[test]
fn a_flock_says_the_same_in_both_units_and_with_both_clocks() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut held = Held::default();
    for hours in [0, 5, 30] {
        let mut phone = Phone::with(sample::book(begins, System::Metric), begins);
        phone.later(hours * 60);
        hold(&phone, &mut held);
    }
    assert!(held.quantities > 100 && held.times > 500, "only so much was held: {held:?}");
}

#[test]
fn with_twelve_hours_every_time_says_which_half_of_the_day() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let phone = elsewhere(&Phone::with(sample::book(begins, System::Metric), begins));
    let mut told = 0;
    for (place, page) in pages(&phone) {
        // A strip of time has room for the figures alone; its whole is read out.
        let strips = |block: &&std::sync::Arc<Block>| !matches!(block.kind, Kind::Ribbon(_));
        // There both clocks stand to be chosen from.
        if place.starts_with("Settings") {
            continue;
        }
        for text in page.all().into_iter().filter(strips).flat_map(|block| block.texts()) {
            for time in times(&text) {
                assert!(!matches!(time, Time::Clock { half: None, .. }), "{place}: {text:?}");
                told += 1;
            }
        }
    }
    assert!(told > 100, "only {told} times were told");
}

#[test]
fn a_quantity_is_read_with_its_unit() {
    assert_eq!(quantities("Feed 6.6\u{a0}fl\u{a0}oz now").len(), 1);
    let mass = quantities("3.9 kg, 100.4 °F.");
    assert_eq!(mass[0], Quantity { kind: "mass", value: 3.9, off: 0.1 });
    assert!((mass[1].value - 38.0).abs() < 1e-9);
    assert_eq!(quantities("5 lambs in 3 pens"), Vec::new());
}

/// The signs of metric units, and those of the units that a farm in US units reads.
const METRIC: [&str; 13] =
    ["kg", "g", "ml", "L", "liter", "liters", "°C", "cm", "mm", "m/s", "km/h", "ml/kg", "g/L"];
const AMERICAN: [&str; 14] =
    ["lb", "oz", "fl", "°F", "in", "ft", "mph", "qt", "gal", "gallon", "oz/gal", "oz/lb", "pound", "in."];

/// What is measured in the same unit everywhere: antibody, as a laboratory gives it.
const EVERYWHERE: [&str; 2] = ["antibod", "serum"];

/// Says whether a text tells a metric quantity with none that a farm in US units reads beside it.
fn is_foreign(text: &str) -> bool {
    let text = text.replace('\u{a0}', " ");
    let words: Vec<&str> = text
        .split_whitespace()
        .map(|word| word.trim_matches(['(', ')', ',', '.', ';', ':', '?', '*']))
        .collect();
    let tells = words.windows(2).any(|pair| {
        pair[0].starts_with(|sign: char| sign.is_ascii_digit() || sign == '-') && METRIC.contains(&pair[1])
    });
    let american = words.iter().any(|word| AMERICAN.contains(word));
    let everywhere = EVERYWHERE.iter().any(|one| text.to_lowercase().contains(one));
    tells && !american && !everywhere
}

/// Returns the texts of a block and of those inside it. A figure tells both units as one; what was published is told as it
/// was.
fn told_by(block: &Block) -> Vec<String> {
    let published = block.key == "sources" || matches!(&block.kind, Kind::Fold(fold) if fold.sources);
    if published {
        return Vec::new();
    }
    let own = block.texts();
    let own =
        if matches!(block.kind, Kind::Figure(_) | Kind::Readout(_)) { vec![own.join(" ")] } else { own };
    own.into_iter().chain(block.inside().into_iter().flat_map(|inside| told_by(inside))).collect()
}

#[test]
fn no_page_of_a_farm_in_us_units_tells_a_quantity_in_metric_units_alone() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut foreign = std::collections::BTreeSet::new();
    for hours in [0, 5, 30] {
        let mut phone = Phone::with(sample::book(begins, System::Us), begins);
        phone.later(hours * 60);
        for screen in phone.screens() {
            let page = phone.page_of(screen);
            for block in page.blocks.iter().chain(&page.thumb) {
                let told = told_by(block).into_iter().filter(|text| is_foreign(text));
                foreign.extend(told.map(|text| format!("{screen:?}: {text}")));
            }
        }
    }
    assert!(foreign.is_empty(), "{}", foreign.into_iter().collect::<Vec<_>>().join("\n"));
}

/// Says whether a text tells a quantity in the other system's unit first, with the farm's own in brackets behind it.
fn is_backwards(text: &str, system: System) -> bool {
    let (theirs, own) = match system {
        System::Metric => (&AMERICAN[..], &METRIC[..]),
        System::Us => (&METRIC[..], &AMERICAN[..]),
    };
    let text = text.replace('\u{a0}', " ");
    text.match_indices(" (").any(|(at, _)| {
        let unit = text[..at].rsplit(' ').next().unwrap_or_default();
        let inside = text[at + 2..].split(')').next().unwrap_or_default();
        let number = inside.trim_start_matches('−').starts_with(|sign: char| sign.is_ascii_digit());
        number && theirs.contains(&unit) && inside.split(' ').any(|word| own.contains(&word))
    })
}

#[test]
fn of_a_quantity_in_both_units_the_farms_own_stands_first() {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut backwards = std::collections::BTreeSet::new();
    let mut told = 0;
    for system in [System::Metric, System::Us] {
        for hours in [0, 30] {
            let mut phone = Phone::with(sample::book(begins, system), begins);
            phone.later(hours * 60);
            for (place, page) in pages(&phone) {
                for block in page.all().into_iter().filter(|block| block.key != "sources") {
                    for text in block.texts() {
                        told += usize::from(text.contains("°F)") || text.contains("°C)"));
                        if is_backwards(&text, system) {
                            backwards.insert(format!("{system:?} {place}: {text}"));
                        }
                    }
                }
            }
        }
    }
    assert!(told > 100, "only {told} were told in both");
    assert!(backwards.is_empty(), "{}", backwards.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn a_quantity_that_stands_backwards_is_found() {
    assert!(is_backwards("under 37 °C (98.6 °F)", System::Us));
    assert!(!is_backwards("under 37 °C (98.6 °F)", System::Metric));
    assert!(!is_backwards("40 °C (twice)", System::Us));
}

#[test]
fn a_farm_in_us_units_reads_no_metric_unit_alone_and_parts_its_thousands_over_years_too() {
    let mut phone = crate::year::two_seasons();
    phone.note(Event::Chose(Choice::System(System::Us)));
    let mut wrong = std::collections::BTreeSet::new();
    let mut read = 0;
    for (place, page) in pages(&phone) {
        for text in page.blocks.iter().chain(&page.thumb).flat_map(|block| told_by(block)) {
            let pairs: Vec<&str> = text.split([' ', '\u{a0}']).collect();
            let long = pairs.windows(2).any(|pair| {
                let number = pair[0].trim_matches(|c: char| !c.is_alphanumeric());
                number.len() > 3
                    && number.bytes().all(|byte| byte.is_ascii_digit())
                    && AMERICAN.contains(&pair[1].trim_end_matches(['.', ',']))
            });
            read += 1;
            if long || is_foreign(&text) {
                wrong.insert(format!("{place}: {text}"));
            }
        }
    }
    assert!(read > 1_000, "only {read} texts were read");
    assert!(wrong.is_empty(), "{}", wrong.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn a_quantity_in_metric_units_alone_is_found() {
    assert!(is_foreign("Never over 50 ml/kg."));
    assert!(is_foreign("200 g added to 1 L of water"));
    assert!(!is_foreign("50 ml/kg (0.75 fl oz/lb)"));
    assert!(!is_foreign("6.6 fl oz"));
}
