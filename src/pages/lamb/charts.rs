//! Two charts: the first day's milk against what is wanted, and the weight since birth against the eight-week target.

use yeanling_core::flock::Lamb;
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::growth::{Expected, TARGET, TARGET_AT, expected};
use yeanling_core::units::{Mass, Moment, System, TimeDelta, Volume};
use yeanling_words::common::{mass, mass_unit, number, volume};
use yeanling_words::growth as words;

use crate::Reason;
use crate::block::Kind;
use crate::chart::{Chart, ChartLine, LineKind};
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
    let (step, top) = scale(shown_volume(most, system));
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
        up: ticks(step, top, volume_unit(system)),
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
    let (step, top) = scale(shown_mass(Mass::from_kilograms(heaviest), system));
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
    let weeks = long.num_days() / 7;
    let across = [0, weeks / 4, weeks / 2, weeks * 3 / 4, weeks].map(|week| {
        let text = if week == weeks { words::weeks(week) } else { week.to_string() };
        (at(TimeDelta::weeks(week)), text)
    });
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
        across: across.to_vec(),
        up: ticks(step, top, mass_unit(system)),
        ..Chart::default()
    };
    let stands = expected(born, age).ok().flatten().map(|expected| {
        let text = words::stands(last.mass, age.num_days(), &expected, system);
        (text, Reason::Growth { birth_weight: born, weight: last.mass, age, at: expected })
    });
    Some((chart, stands))
}

/// Returns what is expected of a lamb at each week up to the target.
fn target_line(born: Mass) -> Vec<(TimeDelta, Expected)> {
    let week = |weeks| {
        let age = TimeDelta::weeks(weeks);
        expected(born, age).ok().flatten().map(|expected| (age, expected))
    };
    (0..=8).filter_map(week).collect()
}

/// Returns the step between two labels and the head of the scale, so that three to five steps hold the most.
fn scale(most: f64) -> (f64, f64) {
    let steps = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 250.0, 500.0, 1000.0];
    let step = steps.into_iter().find(|step| most / step <= 5.0).unwrap_or(2000.0);
    (step, (most / step).ceil().max(1.0) * step)
}

/// Returns the labels at the side; the uppermost has the unit.
fn ticks(step: f64, top: f64, unit: &str) -> Vec<(f64, String)> {
    (0_u8..)
        .map(|count| f64::from(count) * step)
        .take_while(|value| *value <= top + step / 2.0)
        .map(|value| {
            let text = number(value, 0);
            (value / top, if value + step / 2.0 > top { words::head(&text, unit) } else { text })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_holds_the_most_in_at_most_five_steps() {
        assert_eq!(scale(780.0), (200.0, 800.0));
        assert_eq!(scale(26.4), (10.0, 30.0));
        assert_eq!(scale(20.0), (5.0, 20.0));
        assert_eq!(scale(44.1), (10.0, 50.0));
    }

    #[test]
    fn the_uppermost_label_has_the_unit() {
        let texts: Vec<String> = ticks(5.0, 20.0, "kg").into_iter().map(|(_, text)| text).collect();
        assert_eq!(texts, ["0", "5", "10", "15", "20 kg"]);
    }
}
