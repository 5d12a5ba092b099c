//! Two charts: the first day's milk against what is wanted, and the weight since birth against the eight-week target.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::LambId;
use yeanling_core::flock::Lamb;
use yeanling_core::practice::Practice;
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::growth::{TARGET, TARGET_AT, expected};
use yeanling_core::units::{Mass, Moment, System, TimeDelta, Volume};

use crate::farm::use_farm;
use crate::parts::{Chart, ChartLine, Drawn, LineKind, Remark, Section, WhyButton, WhyText};
use crate::pieces::why_text;
use crate::words::common::{mass, number, volume};
use crate::words::{growth as words, why};

/// Draws what was given by hand in the first day; nothing for a lamb that was never fed by hand or not weighed.
pub(super) fn first_day_milk(id: LambId) -> AnyView {
    let farm = use_farm();
    let drawn = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| ground.flock.lamb(id).and_then(|lamb| milk(lamb, &ground.flock.practice, now)))
    });
    live(move || {
        drawn
            .get()
            .map(|drawn| view! { <Section title=words::MILK><Chart drawn=Signal::stored(drawn) /></Section> })
            .into_any()
    })
}

/// Draws the weights since birth; nothing before the second weight.
pub(super) fn weights(id: LambId) -> AnyView {
    let farm = use_farm();
    let drawn = Memo::new(move |_| {
        farm.with(|ground| ground.flock.lamb(id).and_then(|lamb| weight(lamb, ground.flock.practice.system)))
    });
    live(move || {
        drawn
            .get()
            .map(|(drawn, stands, why)| {
                view! {
                    <Section title=words::TITLE>
                        <Chart drawn=Signal::stored(drawn) />
                        <Remark text=stands>{why.map(|why| view! { <WhyButton why=why /> })}</Remark>
                        <p class="small-print">{words::SOURCE}</p>
                    </Section>
                }
            })
            .into_any()
    })
}

const DAY: TimeDelta = TimeDelta::hours(24);

fn milk(lamb: &Lamb, practice: &Practice, now: Moment) -> Option<Drawn> {
    let system = practice.system;
    let want = colostrum::want(lamb.birth_weight()?, practice.day_rule, practice.housing).ok()?;
    let in_first_day = |at: Moment| at.since(lamb.born) < DAY;
    lamb.feeds.first().filter(|feed| in_first_day(feed.at))?;
    let most = want.by_24h.as_milliliters().max(lamb.given_first_day(now).as_milliliters());
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
    let wants = [(6, want.by_6h), (18, want.by_18h), (24, want.by_24h)];
    let mut wanted = vec![(0.0, 0.0)];
    wanted.extend(wants.iter().map(|(hours, want)| (at(TimeDelta::hours(*hours)), up(*want))));
    let told: Vec<(i64, String)> =
        wants.iter().map(|(hours, want)| (*hours, volume(*want, system))).collect();
    let unit = match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    };
    Some(Drawn {
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
        across: [0, 6, 12, 18, 24]
            .map(|hours: i64| {
                (at(TimeDelta::hours(hours)), if hours == 24 { "24 h".to_owned() } else { hours.to_string() })
            })
            .to_vec(),
        up: ticks(step, top, unit),
        now: (lamb.age(now) < DAY).then(|| at(age)),
        ..Drawn::default()
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

fn weight(lamb: &Lamb, system: System) -> Option<(Drawn, String, Option<WhyText>)> {
    let born = lamb.birth_weight()?;
    let last = lamb.weights.last()?;
    if lamb.weights.len() < 2 || last.at.since(lamb.born) < DAY {
        return None;
    }
    let age = last.at.since(lamb.born);
    let long = TARGET_AT.max(age);
    let heaviest =
        lamb.weights.iter().map(|weight| weight.mass.as_kilograms()).fold(TARGET.as_kilograms(), f64::max);
    let (step, top) = scale(shown_mass(Mass::from_kilograms(heaviest), system));
    let at = |age: TimeDelta| age.as_seconds_f64() / long.as_seconds_f64();
    let up = |mass: Mass| shown_mass(mass, system) / top;
    let on_line: Vec<_> = (0..=8)
        .filter_map(|weeks| {
            let age = TimeDelta::weeks(weeks);
            expected(born, age).ok().flatten().map(|expected| (age, expected))
        })
        .collect();
    let places: Vec<(i64, String)> = lamb
        .weights
        .iter()
        .map(|weight| (weight.at.since(lamb.born).num_days(), mass(weight.mass, system)))
        .collect();
    let weeks = long.num_days() / 7;
    let drawn = Drawn {
        label: words::weight_label(&places, words::target(system)),
        lines: vec![
            ChartLine {
                name: words::target(system).to_owned(),
                kind: LineKind::Wanted,
                places: on_line.iter().map(|(age, expected)| (at(*age), up(expected.target))).collect(),
                steps: false,
            },
            ChartLine {
                name: words::WEIGHTS.to_owned(),
                kind: LineKind::Was,
                places: lamb
                    .weights
                    .iter()
                    .map(|weight| (at(weight.at.since(lamb.born)), up(weight.mass)))
                    .collect(),
                steps: false,
            },
        ],
        band: on_line
            .iter()
            .map(|(age, expected)| (at(*age), up(expected.flag), up(expected.target)))
            .collect(),
        band_name: words::BAND.to_owned(),
        across: [0, weeks / 4, weeks / 2, weeks * 3 / 4, weeks]
            .map(|week| {
                let text = if week == weeks { format!("{week} wk") } else { week.to_string() };
                (at(TimeDelta::weeks(week)), text)
            })
            .to_vec(),
        up: ticks(
            step,
            top,
            match system {
                System::Metric => "kg",
                System::Us => "lb",
            },
        ),
        now: None,
        ..Drawn::default()
    };
    let expected = expected(born, age).ok().flatten();
    let stands = expected
        .map(|expected| words::stands(last.mass, age.num_days(), &expected, system))
        .unwrap_or_default();
    let why = expected.map(|expected| why_text(why::growth(born, last.mass, age, &expected, system)));
    Some((drawn, stands, why))
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
            (value / top, if value + step / 2.0 > top { format!("{text} {unit}") } else { text })
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
