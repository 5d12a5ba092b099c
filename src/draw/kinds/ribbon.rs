//! A strip of time: its stretches, what was done pinned to it, now, and the labels under it.

use yeanling_pages::Key;
use yeanling_pages::ribbon::{
    Gathered, HEIGHT, PinShape, Placed, Ribbon, RibbonKind, Stretch, gather, percent, place,
};

use crate::node::{Element, Node, el};

pub(super) fn ribbon(key: &Key, it: &Ribbon) -> Element {
    let hatch = format!("hatch-{key}");
    let held = it.stretches.iter().any(|one| one.kind == RibbonKind::Held);
    let lines = held.then(|| {
        let line = el("rect", "ribbon-hatch").has("width", "3").has("height", "7");
        let pattern = el("pattern", "")
            .has("id", hatch.clone())
            .has("width", "7")
            .has("height", "7")
            .has("patternUnits", "userSpaceOnUse")
            .has("patternTransform", "rotate(45)");
        el("defs", "").with(pattern.with(line)).into()
    });
    let strip = el("svg", "ribbon-strip").has("aria-hidden", "true").all(lines);
    let strip = strip.all(it.stretches.iter().map(|one| stretch(one, &hatch)));
    let strip = strip.all(it.stretches.iter().skip(1).map(gap));
    let pins = el("svg", "ribbon-pins").has("aria-hidden", "true").all(gather(&it.pins).iter().map(pin));
    let ticks = el("div", "ribbon-ticks").has("aria-hidden", "true");
    el("div", "ribbon")
        .has("role", "img")
        .has("aria-label", it.label.as_str())
        .with(strip)
        .with(pins.all(it.now.map(now)))
        .with(ticks.all(place(it.ticks.clone()).iter().map(tick)))
}

fn stretch(one: &Stretch, hatch: &str) -> Node {
    let height = one.kind.height();
    let width = (one.to.clamp(0.0, 1.0) - one.from.clamp(0.0, 1.0)).max(0.0);
    let fill = (one.kind == RibbonKind::Held).then(|| format!("url(#{hatch})"));
    el("rect", "ribbon-stretch")
        .has("data-kind", one.kind.key())
        .has("x", percent(one.from))
        .has("width", percent(width))
        .has("y", (f64::from(HEIGHT - height) / 2.0).to_string())
        .has("height", height.to_string())
        .has_some("fill", fill)
        .with(el("title", "").with(one.label.as_str()))
        .into()
}

/// The thin parting between two stretches, after both of them.
fn gap(one: &Stretch) -> Node {
    el("line", "ribbon-gap")
        .has("x1", percent(one.from))
        .has("x2", percent(one.from))
        .has("y1", "0")
        .has("y2", HEIGHT.to_string())
        .into()
}

fn pin(pin: &Gathered) -> Node {
    let title = el("title", "").with(pin.title.as_str());
    if pin.count > 1 {
        let number = el("text", "ribbon-count").has("text-anchor", "middle").has("y", "5");
        return el("svg", "ribbon-pin")
            .has("data-shape", "many")
            .has("x", percent(pin.at))
            .has("y", "26")
            .with(title)
            .with(el("circle", "").has("r", "9"))
            .with(number.with(pin.count.to_string().as_str()))
            .into();
    }
    let (key, shape) = match pin.shape {
        PinShape::Ring => ("ring", "M0-5a5 5 0 1 1 0 10a5 5 0 1 1 0-10z"),
        PinShape::Dot => ("dot", "M0-5a5 5 0 1 1 0 10a5 5 0 1 1 0-10z"),
        PinShape::Cross => ("cross", "M-5-5L5 5M-5 5L5-5"),
        PinShape::Bar => ("bar", "M0-7V7"),
    };
    el("svg", "ribbon-pin")
        .has("data-shape", key)
        .has("x", percent(pin.at))
        .has("y", "26")
        .with(title)
        .with(el("path", "ribbon-halo").has("d", shape))
        .with(el("path", "").has("d", shape))
        .into()
}

fn now(at: f64) -> Node {
    el("svg", "ribbon-now")
        .key("now")
        .has("x", percent(at))
        .has("y", "0")
        .with(el("path", "ribbon-halo").has("d", "M0 4V42"))
        .with(el("path", "").has("d", "M0 6V42"))
        .with(el("circle", "").has("cx", "0").has("cy", "5").has("r", "5"))
        .into()
}

fn tick(tick: &Placed) -> Node {
    let side = if tick.at <= 0.0 {
        "start"
    } else if tick.at >= 1.0 {
        "end"
    } else {
        "middle"
    };
    el("span", "ribbon-tick")
        .has("data-side", side)
        .has("data-room", tick.room.to_string())
        .has("--at", format!("{:.4}", tick.at.clamp(0.0, 1.0)))
        .has("--wide", format!("{:.2}em", tick.wide))
        .with(tick.text.as_str())
        .into()
}
