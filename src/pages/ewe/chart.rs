//! Her lambings over the years: lambs born, and those of them that were not lost.

use chrono::Datelike;
use yeanling_core::book::EweId;
use yeanling_core::flock::Litter;
use yeanling_words::ewe as words;

use crate::block::Kind;
use crate::chart::{Bar, Chart, ChartLine, LineKind, scale};
use crate::page::Blocks;
use crate::view::View;

/// So many lambings at least are drawn; fewer are told by the litters themselves.
const LEAST: usize = 2;
/// So many have room side by side: her last.
const MOST: usize = 8;

/// Returns the chart, the first lambing first; nothing before her second.
pub(super) fn of(view: &View, ewe: EweId) -> Blocks {
    let mut litters: Vec<&Litter> = view.flock.litters_of(ewe).into_iter().take(MOST).collect();
    litters.reverse();
    if litters.len() < LEAST {
        return Blocks::new();
    }
    let float = |count: usize| f64::from(u32::try_from(count).unwrap_or(u32::MAX));
    let born: Vec<usize> = litters.iter().map(|litter| litter.lambs.len()).collect();
    let kept = |litter: &&Litter| {
        let lambs = litter.lambs.iter().filter_map(|id| view.flock.lamb(*id));
        lambs.filter(|lamb| lamb.born_alive && lamb.lost().is_none()).count()
    };
    let alive: Vec<usize> = litters.iter().map(kept).collect();
    let (up, top) = scale(float(born.iter().copied().max().unwrap_or(1)));
    let of = float(litters.len());
    let middle = |place: usize| (float(place) + 0.5) / of;
    let bar = |(place, count): (usize, &usize)| Bar {
        from: middle(place) - 0.35 / of,
        to: middle(place) + 0.35 / of,
        head: float(*count) / top,
    };
    let years: Vec<i32> = litters.iter().map(|litter| litter.began.local().date().year()).collect();
    let chart = Chart {
        label: words::lambings_label(&years, &born, &alive),
        unit: words::LAMBS_UNIT.to_owned(),
        bars: born.iter().enumerate().map(bar).collect(),
        bars_name: words::BORN.to_owned(),
        lines: vec![ChartLine {
            name: words::NOT_LOST.to_owned(),
            kind: LineKind::Dots,
            places: alive
                .iter()
                .enumerate()
                .map(|(place, count)| (middle(place), float(*count) / top))
                .collect(),
            steps: false,
        }],
        across: years.iter().enumerate().map(|(place, year)| (middle(place), format!("{year}"))).collect(),
        up,
        ..Chart::default()
    };
    Blocks::new().section(
        "her-years",
        words::HER_YEARS,
        Blocks::new().add("chart-lambings", Kind::Chart(chart)),
    )
}
