//! A chart: lines, bars and spreads over a strip of ground, for what is to be seen at a glance rather than read.
//!
//! Places are fractions (0 to 1) from the foot at the left; the caller chooses the scales. Each line has a shape of
//! its own (drawn, dashed, dots) before its ink, and what the chart shows is told in words for those who listen.

use super::live;
use crate::signals::prelude::*;

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineKind {
    /// What was: drawn, with a dot at each place.
    Was,
    /// What was, each place for itself: dots alone.
    Dots,
    /// What is wanted: dashed.
    Wanted,
}

impl LineKind {
    const fn key(self) -> &'static str {
        match self {
            Self::Was => "was",
            Self::Dots => "dots",
            Self::Wanted => "wanted",
        }
    }
}

/// A line with its name.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartLine {
    /// What it is, for the legend.
    pub name: String,
    /// How it is drawn.
    pub kind: LineKind,
    /// Its places, from left to right.
    pub places: Vec<(f64, f64)>,
    /// Whether it goes up in steps.
    pub steps: bool,
}

/// A bar that stands on the foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bar {
    /// Its left edge.
    pub from: f64,
    /// Its right edge.
    pub to: f64,
    /// Its head.
    pub head: f64,
}

/// How far a figure may lie from where it is drawn: place, lowest, highest.
pub type Spread = (f64, f64, f64);

/// A label beside or under the chart.
pub type ChartTick = (f64, String);

/// All that a chart shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawn {
    /// What it shows, in words.
    pub label: String,
    /// The lines.
    pub lines: Vec<ChartLine>,
    /// The ground between two lines, from left to right: place, foot, head.
    pub band: Vec<(f64, f64, f64)>,
    /// What the ground is, for the legend; empty for none.
    pub band_name: String,
    /// The bars, from left to right.
    pub bars: Vec<Bar>,
    /// What the bars are, for the legend; empty for none.
    pub bars_name: String,
    /// The spreads, from left to right.
    pub spreads: Vec<Spread>,
    /// What the spreads are, for the legend; empty for none.
    pub spreads_name: String,
    /// Labels under it.
    pub across: Vec<ChartTick>,
    /// Labels at the side.
    pub up: Vec<ChartTick>,
    /// Where now is.
    pub now: Option<f64>,
}

/// The drawing's own measure: `WIDE` by `HIGH`, with room for the labels at the left and at the foot.
const WIDE: f64 = 300.0;
const HIGH: f64 = 170.0;
const LEFT: f64 = 58.0;
const RIGHT: f64 = 14.0;
const TOP: f64 = 12.0;
const FOOT: f64 = 28.0;

/// Draws a chart with its legend.
#[component]
pub fn Chart(
    /// What it shows.
    #[prop(into)]
    drawn: Signal<Drawn>,
) -> impl IntoView {
    live(move || chart(drawn.get()))
}

fn x(at: f64) -> f64 {
    LEFT + at.clamp(0.0, 1.0) * (WIDE - LEFT - RIGHT)
}

fn y(at: f64) -> f64 {
    HIGH - FOOT - at.clamp(0.0, 1.0) * (HIGH - TOP - FOOT)
}

fn chart(drawn: Drawn) -> AnyView {
    let Drawn { label, lines, band, band_name, bars, bars_name, spreads, spreads_name, across, up, now } =
        drawn;
    let mut legend: Vec<AnyView> =
        lines.iter().map(|line| entry(line.kind.key(), line.name.clone())).collect();
    for (kind, name) in [("band", band_name), ("bar", bars_name), ("spread", spreads_name)] {
        if !name.is_empty() {
            legend.push(entry(kind, name));
        }
    }
    let bars = bars.iter().map(bar).collect::<String>();
    let spreads = spreads.iter().map(spread).collect::<String>();
    let rules =
        up.iter().map(|(at, _)| format!("M{LEFT:.1} {:.1}H{:.1}", y(*at), WIDE - RIGHT)).collect::<String>();
    let mut texts: Vec<AnyView> = Vec::new();
    texts.extend(up.into_iter().map(|(at, text)| words(LEFT - 8.0, y(at) + 5.0, "end", text)));
    texts.extend(across.into_iter().map(|(at, text)| {
        let anchor = if at <= 0.0 {
            "start"
        } else if at >= 1.0 {
            "end"
        } else {
            "middle"
        };
        words(x(at), HIGH - 8.0, anchor, text)
    }));
    let now = now.map(|at| {
        let path = format!("M{:.1} {TOP:.1}V{:.1}", x(at), HIGH - FOOT);
        view! { <path class="chart-now" d=path /> }.into_any()
    });
    let paths = lines.into_iter().map(|line| drawn_line(&line)).collect_view();
    view! {
        <figure class="chart">
            <svg class="chart-drawing" viewBox=format!("0 0 {WIDE} {HIGH}") role="img" aria-label=label>
                <path class="chart-band" d=area(&band) />
                <path class="chart-rules" d=rules />
                <path class="chart-bars" d=bars />
                <path class="chart-spreads" d=spreads />
                {now}
                {paths}
                {texts}
            </svg>
            <figcaption class="chart-legend" aria-hidden="true">{legend}</figcaption>
        </figure>
    }
    .into_any()
}

fn words(x: f64, y: f64, anchor: &'static str, text: String) -> AnyView {
    view! {
        <text class="chart-text" x=format!("{x:.1}") y=format!("{y:.1}") text-anchor=anchor>{text}</text>
    }
    .into_any()
}

fn entry(kind: &'static str, name: String) -> AnyView {
    view! {
        <span class="chart-entry">
            <svg class="chart-key" viewBox="0 0 28 12" aria-hidden="true" data-kind=kind>
                <path d="M0 6H28" />
            </svg>
            {name}
        </span>
    }
    .into_any()
}

fn drawn_line(line: &ChartLine) -> AnyView {
    let kind = line.kind.key();
    let dots = match line.kind {
        LineKind::Was | LineKind::Dots => line.places.iter().copied().map(dot).collect(),
        LineKind::Wanted => String::new(),
    };
    view! {
        <path class="chart-line" data-kind=kind d=path(line) />
        <path class="chart-dots" d=dots />
    }
    .into_any()
}

/// Returns a bar as a path, with a hair of ground between it and the next.
fn bar(bar: &Bar) -> String {
    let (left, right) = (x(bar.from) + 0.5, x(bar.to) - 0.5);
    format!("M{left:.1} {:.1}V{:.1}H{right:.1}V{:.1}z", y(0.0), y(bar.head), y(0.0))
}

/// Returns a spread as a path: a stroke with a foot and a head.
fn spread(&(at, low, high): &Spread) -> String {
    let (x, low, high) = (x(at), y(low), y(high));
    format!("M{x:.1} {low:.1}V{high:.1}M{:.1} {low:.1}h8M{:.1} {high:.1}h8", x - 4.0, x - 4.0)
}

/// Returns a small disc as a path.
fn dot((at, up): (f64, f64)) -> String {
    format!("M{:.1} {:.1}a4 4 0 1 0 8 0a4 4 0 1 0-8 0z", x(at) - 4.0, y(up))
}

/// Returns a line as a path; in steps it goes across first, then up.
fn path(line: &ChartLine) -> String {
    let mut path = String::new();
    for (number, (at, up)) in line.places.iter().enumerate() {
        let (x, y) = (x(*at), y(*up));
        path += &match (number, line.steps) {
            (0, _) => format!("M{x:.1} {y:.1}"),
            (_, true) => format!("H{x:.1}V{y:.1}"),
            (_, false) => format!("L{x:.1} {y:.1}"),
        };
    }
    path
}

/// Returns the ground between foot and head as a path.
fn area(band: &[(f64, f64, f64)]) -> String {
    if band.len() < 2 {
        return String::new();
    }
    let heads = band.iter().map(|(at, _, head)| (x(*at), y(*head)));
    let feet = band.iter().rev().map(|(at, foot, _)| (x(*at), y(*foot)));
    let points: Vec<String> = heads.chain(feet).map(|(x, y)| format!("{x:.1} {y:.1}")).collect();
    format!("M{}z", points.join("L"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(places: &[(f64, f64)], steps: bool) -> ChartLine {
        ChartLine { name: String::new(), kind: LineKind::Was, places: places.to_vec(), steps }
    }

    #[test]
    fn steps_go_across_before_they_go_up() {
        let places = [(0.0, 0.0), (0.5, 0.5), (1.0, 1.0)];
        assert_eq!(path(&line(&places, true)), "M58.0 142.0H172.0V77.0H286.0V12.0");
        assert_eq!(path(&line(&places, false)), "M58.0 142.0L172.0 77.0L286.0 12.0");
    }

    #[test]
    fn what_lies_outside_stays_on_the_edge() {
        assert_eq!(path(&line(&[(-1.0, 2.0)], false)), "M58.0 12.0");
    }

    #[test]
    fn a_band_of_one_place_is_none() {
        assert_eq!(area(&[(0.0, 0.0, 1.0)]), "");
        assert_eq!(
            area(&[(0.0, 0.0, 1.0), (1.0, 0.0, 1.0)]),
            "M58.0 12.0L286.0 12.0L286.0 142.0L58.0 142.0z"
        );
    }
}
