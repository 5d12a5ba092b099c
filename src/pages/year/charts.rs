//! Three charts of a season: what was lost at which age, births by day, and birth weight against survival.

use yeanling_core::reckon::losses::Span;
use yeanling_core::reckon::survival::{self, Bin, by_birth_weight};
use yeanling_core::seasons::Year;
use yeanling_core::units::System;
use yeanling_words::common::{mass, short_date};
use yeanling_words::year as words;

use crate::block::Kind;
use crate::chart::{Bar, Chart};
use crate::page::Blocks;

fn drawn(key: &'static str, chart: Chart) -> Blocks {
    Blocks::new().add(key, Kind::Chart(chart))
}

/// Returns labels at the side for whole numbers up to `most`, five at most, and the number at the head.
fn whole_numbers(most: u32) -> (Vec<(f64, String)>, f64) {
    let step = [1, 2, 5, 10, 20, 50, 100].into_iter().find(|step| most <= step * 4).unwrap_or(250);
    let top = most.div_ceil(step).max(1) * step;
    let up = (0..=top / step)
        .map(|number| (f64::from(number * step) / f64::from(top), (number * step).to_string()))
        .collect();
    (up, f64::from(top))
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

/// Draws what was lost in each span of age.
pub(super) fn losses(year: &Year) -> Blocks {
    let lost = |span: Span| year.losses.iter().find(|loss| loss.span == span).map_or(0, |loss| loss.lambs);
    let counts = Span::ALL.map(lost);
    let (up, top) = whole_numbers(counts.into_iter().max().unwrap_or(0));
    let heads = counts.map(|count| f64::from(count) / top);
    let label =
        |(place, span): (usize, Span)| (middle(place, Span::ALL.len()), words::span_short(span).to_owned());
    let chart = Chart {
        label: words::losses_label(&year.losses),
        bars: bars(&heads),
        across: Span::ALL.into_iter().enumerate().map(label).collect(),
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
    let (up, top) = whole_numbers(days.iter().copied().max().unwrap_or(0));
    let heads: Vec<f64> = days.iter().map(|births| f64::from(*births) / top).collect();
    let mut across = vec![(0.0, short_date(*first))];
    if days.len() > 1 {
        across.push((1.0, short_date(*last)));
    }
    let label = words::by_day_label(&year.by_day);
    drawn("chart-by-day", Chart { label, bars: bars(&heads), across, up, ..Chart::default() })
}

/// Draws which share of each birth weight lived; says what is missing while there are too few.
pub(super) fn survival(year: &Year, system: System) -> Blocks {
    let Some(bins) = by_birth_weight(&year.fates) else {
        return Blocks::new().small(words::too_few(year.fates.len(), survival::LEAST_LAMBS));
    };
    let of = bins.len();
    let shares: Vec<f64> = bins.iter().map(|bin| bin.interval.share).collect();
    let spread = |(place, bin): (usize, &Bin)| (middle(place, of), bin.interval.from, bin.interval.to);
    // Every second label where they would run together.
    let every = if of > 5 { 2 } else { 1 };
    let label = |(place, bin): (usize, &Bin)| (middle(place, of), mass(bin.from, system));
    let chart = Chart {
        label: words::bins(&bins, system),
        bars: bars(&shares),
        bars_name: words::LIVED.to_owned(),
        spreads: bins.iter().enumerate().map(spread).collect(),
        spreads_name: words::SPREAD.to_owned(),
        across: bins.iter().enumerate().step_by(every).map(label).collect(),
        up: words::PERCENTS.map(|(at, text)| (at, text.to_owned())).to_vec(),
        ..Chart::default()
    };
    drawn("chart-survival", chart)
}
