//! A chart: lines, bars and spreads over a strip of ground, for what is to be seen at a glance rather than read.
//!
//! Places are fractions (0 to 1) from the foot at the left; the caller chooses the scales. Each line has a shape of
//! its own (drawn, dashed, dots) before its ink, and what the chart shows is told in words for those who listen.

use yeanling_words::common::number;

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

/// Where something begins, drawn above the chart.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartStart {
    /// Its place.
    pub at: f64,
    /// What begins, and when, for the legend.
    pub name: String,
}

/// All that a chart shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Chart {
    /// What it shows, in words.
    pub label: String,
    /// What the labels at the side count or measure: "lambings", "kg".
    pub unit: String,
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
    /// Where something begins, from left to right.
    pub starts: Vec<ChartStart>,
    /// Labels under it, at even steps.
    pub across: Vec<ChartTick>,
    /// Labels at the side, at even steps from nothing up.
    pub up: Vec<ChartTick>,
    /// Where now is.
    pub now: Option<f64>,
}

/// Returns the labels at the side from nothing to at least `most`, and the number at the head: one to five even steps of 1, 2
/// or 5 with their zeros, so that every label is a whole number.
///
/// A `most` under 1, or one that is no number, counts as 1.
#[must_use]
pub fn scale(most: f64) -> (Vec<ChartTick>, f64) {
    let most = if most > 1.0 && most.is_finite() { most } else { 1.0 };
    let tens = std::iter::successors(Some(1.0), |ten| Some(ten * 10.0));
    let mut steps = tens.flat_map(|ten| [1.0, 2.0, 5.0].map(|step| step * ten));
    let step = steps.find(|step| most <= step * 5.0).unwrap_or(most);
    let count = (most / step - 1e-9).ceil().max(1.0);
    let top = count * step;
    let labels = (0_u8..=5).map(f64::from).take_while(|place| *place <= count);
    (labels.map(|place| (place / count, number(place * step, 0))).collect(), top)
}

#[cfg(test)]
mod tests {
    use super::scale;

    #[track_caller]
    fn check(most: f64, labels: &[&str]) {
        let (up, top) = scale(most);
        let texts: Vec<&str> = up.iter().map(|(_, text)| text.as_str()).collect();
        assert_eq!(texts, labels);
        assert!(top >= most && (up[up.len() - 1].0 - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_scale_holds_the_most_in_at_most_five_even_steps() {
        check(0.0, &["0", "1"]);
        check(0.6, &["0", "1"]);
        check(3.0, &["0", "1", "2", "3"]);
        check(5.0, &["0", "1", "2", "3", "4", "5"]);
        check(7.0, &["0", "2", "4", "6", "8"]);
        check(20.0, &["0", "5", "10", "15", "20"]);
        check(26.4, &["0", "10", "20", "30"]);
        check(44.1, &["0", "10", "20", "30", "40", "50"]);
        check(780.0, &["0", "200", "400", "600", "800"]);
    }
}
