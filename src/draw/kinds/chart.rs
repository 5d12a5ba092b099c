//! A chart: lines, bars and spreads over a strip of ground.

use yeanling_pages::chart::{Bar, Chart, ChartLine, ChartStart, ChartTick, LineKind, Spread};

use crate::node::{Element, Node, el};

const WIDE: f64 = 300.0;
const HIGH: f64 = 190.0;
const LEFT: f64 = 40.0;
const RIGHT: f64 = 24.0;
const TOP: f64 = 30.0;
const FOOT: f64 = 30.0;

fn x(at: f64) -> f64 {
    LEFT + at.clamp(0.0, 1.0) * (WIDE - LEFT - RIGHT)
}

fn y(at: f64) -> f64 {
    HIGH - FOOT - at.clamp(0.0, 1.0) * (HIGH - TOP - FOOT)
}

/// Draws a chart with its legend.
pub(super) fn chart(it: &Chart) -> Element {
    const STROKE: &str = "M0 6H28";
    let mut legend: Vec<Node> =
        it.lines.iter().map(|line| entry(line.kind.key(), STROKE, &line.name)).collect();
    for (kind, name) in [("band", &it.band_name), ("bar", &it.bars_name), ("spread", &it.spreads_name)] {
        if !name.is_empty() {
            legend.push(entry(kind, STROKE, name));
        }
    }
    legend.extend(it.starts.iter().map(|one| entry("start", "M8 1H20L14 11z", &one.name)));
    let drawn = |class, d: String| -> Node { el("path", class).has("d", d).into() };
    let rules = it.up.iter().map(|(at, _)| format!("M{LEFT:.1} {:.1}H{:.1}", y(*at), WIDE - RIGHT)).collect();
    let now = it.now.map(|at| drawn("chart-now", format!("M{:.1} {TOP:.1}V{:.1}", x(at), HIGH - FOOT)));
    let unit = (!it.unit.is_empty()).then(|| words(0.0, TOP - 16.0, "start", &it.unit));
    let side = it.up.iter().map(|(at, text)| words(LEFT - 8.0, y(*at) + 5.0, "end", text));
    let under = it.across.iter().map(|(at, text)| {
        // The last label may reach to the edge.
        if *at >= 1.0 {
            words(WIDE, HIGH - 8.0, "end", text)
        } else {
            words(x(*at), HIGH - 8.0, "middle", text)
        }
    });
    let drawing = el("svg", "chart-drawing")
        .has("viewBox", format!("0 0 {WIDE} {HIGH}"))
        .has("role", "img")
        .has("aria-label", it.label.as_str())
        .with(drawn("chart-band", area(&it.band)))
        .with(drawn("chart-rules", rules))
        .with(drawn("chart-ticks", it.across.iter().map(tick).collect()))
        .with(drawn("chart-bars", it.bars.iter().map(bar).collect()))
        .with(drawn("chart-spreads", it.spreads.iter().map(spread).collect()))
        .all(now)
        .all(it.lines.iter().flat_map(line))
        .with(drawn("chart-starts", it.starts.iter().map(start).collect()))
        .all(unit)
        .all(side)
        .all(under);
    el("figure", "chart")
        .with(drawing)
        .with(el("figcaption", "chart-legend").has("aria-hidden", "true").all(legend))
}

fn words(x: f64, y: f64, anchor: &'static str, text: &str) -> Node {
    el("text", "chart-text")
        .has("x", format!("{x:.1}"))
        .has("y", format!("{y:.1}"))
        .has("text-anchor", anchor)
        .with(text)
        .into()
}

/// Returns a mark on the foot above a label.
fn tick((at, _): &ChartTick) -> String {
    format!("M{:.1} {:.1}v5", x(*at), HIGH - FOOT)
}

/// Returns a triangle that points down to where something begins, and a line from it to the foot.
fn start(one: &ChartStart) -> String {
    let x = x(one.at);
    format!(
        "M{:.1} {:.1}h10l-5 9zM{:.1} {:.1}h1V{:.1}h-1z",
        x - 5.0,
        TOP - 12.0,
        x - 0.5,
        TOP - 4.0,
        HIGH - FOOT
    )
}

fn entry(kind: &'static str, drawn: &'static str, name: &str) -> Node {
    let key =
        el("svg", "chart-key").has("viewBox", "0 0 28 12").has("aria-hidden", "true").has("data-kind", kind);
    el("span", "chart-entry").with(key.with(el("path", "").has("d", drawn))).with(name).into()
}

fn line(line: &ChartLine) -> [Node; 2] {
    let dots = match line.kind {
        LineKind::Was | LineKind::Dots => line.places.iter().copied().map(dot).collect(),
        LineKind::Wanted => String::new(),
    };
    let drawn = el("path", "chart-line").has("data-kind", line.kind.key()).has("d", path(line));
    [drawn.into(), el("path", "chart-dots").has("d", dots).into()]
}

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
        assert_eq!(path(&line(&places, true)), "M40.0 160.0H158.0V95.0H276.0V30.0");
        assert_eq!(path(&line(&places, false)), "M40.0 160.0L158.0 95.0L276.0 30.0");
    }

    #[test]
    fn what_lies_outside_stays_on_the_edge() {
        assert_eq!(path(&line(&[(-1.0, 2.0)], false)), "M40.0 30.0");
    }

    #[test]
    fn a_band_of_one_place_is_none() {
        assert_eq!(area(&[(0.0, 0.0, 1.0)]), "");
        assert_eq!(
            area(&[(0.0, 0.0, 1.0), (1.0, 0.0, 1.0)]),
            "M40.0 30.0L276.0 30.0L276.0 160.0L40.0 160.0z"
        );
    }
}
