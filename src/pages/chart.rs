//! A chart: lines, bars and spreads over a strip of ground, for what is to be seen at a glance rather than read.
//!
//! Places are fractions (0 to 1) from the foot at the left; the caller chooses the scales. Each line has a shape of
//! its own (drawn, dashed, dots) before its ink, and what the chart shows is told in words for those who listen.

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
    /// Returns the value of `data-kind` that style knows.
    #[must_use]
    pub const fn key(self) -> &'static str {
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
pub struct Chart {
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
