//! Three charts of a season: what was lost at which age, births by day, and birth weight against survival.

use yeanling_core::reckon::losses::Span;
use yeanling_core::reckon::survival::{self, Bin, by_birth_weight};
use yeanling_core::seasons::Year;
use yeanling_core::units::{Mass, System};
use yeanling_words::common::mass;
use yeanling_words::year as words;

use crate::block::Kind;
use crate::chart::{Bar, Chart, scale};
use crate::chart_days::Days;
use crate::page::Blocks;

fn drawn(key: &'static str, chart: Chart) -> Blocks {
    Blocks::new().add(key, Kind::Chart(chart))
}

/// Returns a bar for each figure, side by side over the whole width.
fn bars(figures: &[f64]) -> Vec<Bar> {
    let half = middle(0, figures.len());
    let bar = |(place, head): (usize, &f64)| {
        let at = middle(place, figures.len());
        Bar { from: at - half, to: at + half, head: *head }
    };
    figures.iter().enumerate().map(bar).collect()
}

/// Returns the middle of a bar among so many.
fn middle(place: usize, of: usize) -> f64 {
    let number = |count: usize| f64::from(u32::try_from(count).unwrap_or(u32::MAX));
    (number(place) + 0.5) / number(of.max(1))
}

/// Returns where a bar among so many begins, and the one before it ends.
fn edge(place: usize, of: usize) -> f64 {
    middle(place, of) - middle(0, of)
}

/// So many lambs lost after birth are drawn; fewer are told one by one beside it (ours).
const LEAST_LOST: u32 = 5;

/// Draws what was lost after birth in each span of age, the label of each bar at both its ends; nothing of a few.
pub(super) fn losses(year: &Year) -> Blocks {
    let ages = Span::ALL.into_iter().filter(|span| *span != Span::AtBirth).collect::<Vec<_>>();
    let lost = |span: Span| year.losses.iter().find(|loss| loss.span == span).map_or(0, |loss| loss.lambs);
    let counts: Vec<u32> = ages.iter().map(|span| lost(*span)).collect();
    if counts.iter().sum::<u32>() < LEAST_LOST {
        return Blocks::new();
    }
    let (up, top) = scale(f64::from(counts.iter().copied().max().unwrap_or(0)));
    let heads: Vec<f64> = counts.iter().map(|count| f64::from(*count) / top).collect();
    let edge = |(place, label): (usize, &str)| (edge(place, ages.len()), label.to_owned());
    let chart = Chart {
        label: words::losses_label(&year.losses),
        bars: bars(&heads),
        unit: words::LAMBS.to_owned(),
        across: words::AGES.into_iter().enumerate().map(edge).collect(),
        up,
        ..Chart::default()
    };
    drawn("chart-losses", chart)
}

/// Draws how many lambs were born on each day of the season; nothing without a birth.
pub(super) fn by_day(year: &Year) -> Blocks {
    let (Some((first, _)), Some((last, _))) = (year.by_day.first(), year.by_day.last()) else {
        return Blocks::new();
    };
    let births = |day| year.by_day.iter().find(|(on, _)| *on == day).map_or(0, |(_, births)| *births);
    let days: Vec<u32> = first.iter_days().take_while(|day| day <= last).map(births).collect();
    let (up, top) = scale(f64::from(days.iter().copied().max().unwrap_or(0)));
    let heads: Vec<f64> = days.iter().map(|births| f64::from(*births) / top).collect();
    let chart = Chart {
        label: words::by_day_label(&year.by_day),
        bars: bars(&heads),
        unit: words::LAMBS.to_owned(),
        across: Days::new(*first, *last).ticks(),
        up,
        ..Chart::default()
    };
    drawn("chart-by-day", chart)
}

/// Draws which share of each birth weight lived; says what is missing while there are too few.
pub(super) fn survival(year: &Year, system: System) -> Blocks {
    let Some(bins) = by_birth_weight(&year.fates) else {
        return Blocks::new().small(words::too_few(year.fates.len(), survival::LEAST_LAMBS));
    };
    let of = bins.len();
    let shares: Vec<f64> = bins.iter().map(|bin| bin.interval.share).collect();
    let spread = |(place, bin): (usize, &Bin)| (middle(place, of), bin.interval.from, bin.interval.to);
    // Each bar has its label at both ends; every second one where they would run together.
    let every = if of > 5 { 2 } else { 1 };
    let ends = bins.iter().map(|bin| bin.from).chain(bins.last().map(|bin| bin.to)).enumerate();
    let label = |(place, end): (usize, Mass)| (edge(place, of), mass(end, system));
    let chart = Chart {
        label: words::bins(&bins, system),
        bars: bars(&shares),
        bars_name: words::LIVED.to_owned(),
        spreads: bins.iter().enumerate().map(spread).collect(),
        spreads_name: words::SPREAD.to_owned(),
        across: ends.step_by(every).map(label).collect(),
        up: words::PERCENTS.map(|(at, text)| (at, text.to_owned())).to_vec(),
        ..Chart::default()
    };
    drawn("chart-survival", chart)
}
