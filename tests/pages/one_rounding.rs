//! One figure has one rounding: what a lamb is to get reads the same on every page and sheet, in both unit systems.

use std::collections::BTreeMap;

use yeanling_core::book::{Event, LambId};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Page, Screen, Sheet};

use crate::phone::Phone;

/// Two figures that are nearer to each other than this share are one figure, rounded in two ways: what else is told of a lamb's
/// milk lies a fifth apart or more.
const NEAR: f64 = 0.03;

/// Returns the volumes in the farm's unit that stand in a text, those in brackets and those behind "of" left out: they are
/// conversions, and sums of a day.
fn volumes(text: &str, system: System) -> Vec<f64> {
    let unit = match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    };
    let text = text.replace('\u{a0}', " ");
    let outside: String = text.split('(').map(|part| part.rsplit(')').next().unwrap_or_default()).collect();
    let of = |(at, _): (usize, &str)| {
        let number = outside[..at].trim_end().rsplit(' ').next()?;
        number.parse().ok()
    };
    let ends = |(at, _): &(usize, &str)| {
        let rest = &outside[at + unit.len()..];
        !rest.starts_with('/') && !rest.starts_with(char::is_alphanumeric)
    };
    outside.match_indices(unit).filter(ends).filter_map(of).collect()
}

/// Returns what a page tells of milk that is to be given; not what was noted.
fn told(page: &Page) -> Vec<String> {
    let blocks =
        page.all().into_iter().filter(|block| !matches!(block.kind, Kind::Timeline(_) | Kind::Fold(_)));
    blocks.flat_map(|block| block.texts()).collect()
}

/// Returns the pages on which it stands what this lamb is to get.
fn pages(phone: &Phone, lamb: LambId, weight: &str) -> Vec<(String, Page)> {
    let screens =
        [Screen::Watch, Screen::Lamb(lamb), Screen::ColdLamb(Some(lamb)), Screen::BottleRound, Screen::Night];
    let mut all: Vec<(String, Page)> =
        screens.into_iter().map(|screen| (format!("{screen:?}"), phone.page_of(screen))).collect();
    let mut asked = phone.clone();
    // As its own page asks for another feed.
    let page = asked.page_of(Screen::Lamb(lamb));
    let ask =
        page.all().into_iter().flat_map(|block| block.buttons()).find_map(|button| match &button.does {
            Action::Ask(Sheet::Feed(..)) => Some(button.does.clone()),
            _ => None,
        });
    asked.open(Screen::Lamb(lamb)).act(&ask.expect("another feed can be noted"));
    all.push(("the sheet of a feed".to_owned(), asked.page()));
    let mut typed = phone.clone();
    typed.open(Screen::Calculators).write("Weight", weight);
    all.push(("the calculator".to_owned(), typed.page()));
    all
}

fn check(kilograms: f64, system: System, held: &mut usize) {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.note(Event::Chose(Choice::System(system)));
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    let weight = match system {
        System::Metric => format!("{kilograms:.2}"),
        System::Us => format!("{:.1}", Mass::from_kilograms(kilograms).as_pounds()),
    };
    let mass = Mass::parse(&weight, system).expect("a weight");
    phone.note(Event::Weighed { lamb, mass });
    for minutes in [10, 130, 200] {
        phone.later(minutes);
        let mut seen: BTreeMap<String, (String, f64)> = BTreeMap::new();
        for (place, page) in pages(&phone, lamb, &weight) {
            for text in told(&page) {
                for volume in volumes(&text, system).into_iter().filter(|volume| *volume > 0.0) {
                    *held += 1;
                    let near = seen.values().find(|(_, other)| {
                        (volume - other).abs() > 1e-9 && (volume - other).abs() < NEAR * volume.max(*other)
                    });
                    if let Some((other, was)) = near {
                        panic!("{weight} {system:?}: {volume} in {text:?} on {place}, {was} in {other}");
                    }
                    seen.insert(format!("{volume}"), (format!("{text:?} on {place}"), volume));
                }
            }
        }
    }
}

#[test]
fn what_a_lamb_is_to_get_reads_the_same_on_every_page() {
    let mut held = 0;
    for tenths in 20_u32..60 {
        let kilograms = f64::from(tenths) / 10.0 + 0.03;
        check(kilograms, System::Metric, &mut held);
        check(kilograms, System::Us, &mut held);
    }
    assert!(held > 2_000, "only {held} figures were held against each other");
}

#[test]
fn a_volume_is_read_with_its_unit_alone() {
    assert_eq!(volumes("Feed 6.6\u{a0}fl\u{a0}oz (195 ml), at most 50 ml/kg", System::Us), [6.6]);
    assert_eq!(volumes("Feed 195\u{a0}ml now, 200 ml/kg a day", System::Metric), [195.0]);
}
