//! Two charts: the first day's milk against what is wanted, and the weight since birth against the eight-week target.

use yeanling_core::flock::Lamb;
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::growth::{Expected, TARGET, TARGET_AT, expected};
use yeanling_core::units::{Mass, Moment, System, TimeDelta, Volume};
use yeanling_words::common::{mass, mass_unit, volume};
use yeanling_words::growth as words;

use crate::Reason;
use crate::block::Kind;
use crate::chart::{Chart, ChartLine, LineKind, scale};
use crate::milk::volume_unit;
use crate::page::{Blocks, why};
use crate::view::View;

/// Draws what was given by hand in the first day; nothing for a lamb that was never fed by hand or not weighed.
pub(super) fn first_day_milk(view: &View, lamb: &Lamb) -> Blocks {
    match milk(view, lamb) {
        Some(chart) => {
            let chart = Blocks::new().add("milk-drawn", Kind::Chart(chart));
            Blocks::new().section("milk", words::MILK, chart)
        }
        None => Blocks::new(),
    }
}

/// Draws the weights since birth; nothing before the second weight.
pub(super) fn weights(view: &View, lamb: &Lamb) -> Blocks {
    let Some((chart, stands)) = weight(lamb, view.system()) else { return Blocks::new() };
    let blocks = Blocks::new().add("weights-drawn", Kind::Chart(chart));
    let blocks = match stands {
        Some((text, reason)) => blocks.remark(text, [why(words::TITLE, reason)]),
        None => blocks,
    };
    Blocks::new().section("weights", words::TITLE, blocks.small(words::SOURCE))
}

const DAY: TimeDelta = TimeDelta::hours(24);

fn milk(view: &View, lamb: &Lamb) -> Option<Chart> {
    let (settings, now, system) = (view.settings(), view.now, view.system());
    let target = colostrum::target(lamb.birth_weight()?, settings.day_rule, settings.housing).ok()?;
    let in_first_day = |at: Moment| at.since(lamb.born) < DAY;
    lamb.feeds.first().filter(|feed| in_first_day(feed.at))?;
    let most = target.by_24h.as_milliliters().max(lamb.given_first_day(now).as_milliliters());
    let (up_labels, top) = scale(shown_volume(most, system));
    let up = |volume: Volume| shown_volume(volume.as_milliliters(), system) / top;
    let at = |age: TimeDelta| age.as_seconds_f64() / DAY.as_seconds_f64();
    let mut so_far = Volume::ZERO;
    let mut given = vec![(0.0, 0.0)];
    for feed in lamb.feeds.iter().filter(|feed| in_first_day(feed.at)) {
        so_far = so_far + feed.volume;
        given.push((at(feed.at.since(lamb.born)), up(so_far)));
    }
    let age = lamb.age(now).min(DAY);
    given.push((at(age), up(so_far)));
    let wants = [(6, target.by_6h), (18, target.by_18h), (24, target.by_24h)];
    let mut wanted = vec![(0.0, 0.0)];
    wanted.extend(wants.iter().map(|(hours, target)| (at(TimeDelta::hours(*hours)), up(*target))));
    let told: Vec<(i64, String)> =
        wants.iter().map(|(hours, target)| (*hours, volume(*target, system))).collect();
    let across = [0, 6, 12, 18, 24].map(|hours: i64| {
        let text = if hours == 24 { words::hours(hours) } else { hours.to_string() };
        (at(TimeDelta::hours(hours)), text)
    });
    Some(Chart {
        label: words::milk_label(&volume(so_far, system), &told),
        lines: vec![
            ChartLine {
                name: words::WANTED.to_owned(),
                kind: LineKind::Wanted,
                places: wanted,
                steps: false,
            },
            ChartLine { name: words::GIVEN.to_owned(), kind: LineKind::Was, places: given, steps: true },
        ],
        across: across.to_vec(),
        unit: volume_unit(system).to_owned(),
        up: up_labels,
        now: (lamb.age(now) < DAY).then(|| at(age)),
        ..Chart::default()
    })
}

fn shown_volume(milliliters: f64, system: System) -> f64 {
    match system {
        System::Metric => milliliters,
        System::Us => Volume::from_milliliters(milliliters).as_fluid_ounces(),
    }
}

fn shown_mass(mass: Mass, system: System) -> f64 {
    match system {
        System::Metric => mass.as_kilograms(),
        System::Us => mass.as_pounds(),
    }
}

/// Returns the chart of the weights, and how the last one stands with its reasons, where a line says so.
fn weight(lamb: &Lamb, system: System) -> Option<(Chart, Option<(String, Reason)>)> {
    let born = lamb.birth_weight()?;
    let last = lamb.weights.last()?;
    let age = last.at.since(lamb.born);
    if lamb.weights.len() < 2 || age < DAY {
        return None;
    }
    let long = TARGET_AT.max(age);
    let heaviest =
        lamb.weights.iter().map(|weight| weight.mass.as_kilograms()).fold(TARGET.as_kilograms(), f64::max);
    let (up_labels, top) = scale(shown_mass(Mass::from_kilograms(heaviest), system));
    let at = |age: TimeDelta| age.as_seconds_f64() / long.as_seconds_f64();
    let up = |mass: Mass| shown_mass(mass, system) / top;
    let on_line = target_line(born);
    let wanted = on_line.iter().map(|(age, expected)| (at(*age), up(expected.target))).collect();
    let was = lamb.weights.iter().map(|weight| (at(weight.at.since(lamb.born)), up(weight.mass))).collect();
    let told: Vec<(i64, String)> = lamb
        .weights
        .iter()
        .map(|weight| (weight.at.since(lamb.born).num_days(), mass(weight.mass, system)))
        .collect();
    let across = weeks(long.num_days() / 7).map(|week| (at(TimeDelta::weeks(week)), words::weeks(week)));
    let target = words::target(system);
    let chart = Chart {
        label: words::weight_label(&told, target),
        lines: vec![
            ChartLine { name: target.to_owned(), kind: LineKind::Wanted, places: wanted, steps: false },
            ChartLine { name: words::WEIGHTS.to_owned(), kind: LineKind::Was, places: was, steps: false },
        ],
        band: on_line
            .iter()
            .map(|(age, expected)| (at(*age), up(expected.flag), up(expected.target)))
            .collect(),
        band_name: words::BAND.to_owned(),
        across: across.collect(),
        unit: mass_unit(system).to_owned(),
        up: up_labels,
        ..Chart::default()
    };
    let stands = expected(born, age).ok().flatten().map(|expected| {
        let text = words::stands(last.mass, age.num_days(), &expected, system);
        (text, Reason::Growth { birth_weight: born, weight: last.mass, age, at: expected })
    });
    Some((chart, stands))
}

/// Returns the weeks to be labelled: at most five at even steps.
fn weeks(last: i64) -> impl Iterator<Item = i64> {
    let step = [1, 2, 4, 8, 13, 26].into_iter().find(|step| last / step <= 4).unwrap_or(52);
    (0..=4).map(move |place| place * step).take_while(move |week| *week <= last)
}

/// Returns what is expected of a lamb at each week up to the target.
fn target_line(born: Mass) -> Vec<(TimeDelta, Expected)> {
    let week = |weeks| {
        let age = TimeDelta::weeks(weeks);
        expected(born, age).ok().flatten().map(|expected| (age, expected))
    };
    (0..=8).filter_map(week).collect()
}
