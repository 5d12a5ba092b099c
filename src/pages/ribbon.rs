//! The ribbon: a strip of time with its window drawn on it, a mark at now, and what was done pinned to it.
//!
//! A stretch tells how good its time is by its height first and by its ink second, so the ribbon narrows as the
//! window closes and reads the same in one color. Places are fractions of the whole (0 to 1); the caller chooses
//! the scale. Ticks that would touch each other on a narrow screen give way by rank.
//!
//! A ribbon's now stands at its minute, so that a row on which nothing happened is not drawn anew with every entry.

use yeanling_core::sort_small::SortSmall;

/// A strip of time.
#[derive(Clone, Debug, PartialEq)]
pub struct Ribbon {
    /// The whole picture in words, read out instead of it.
    pub label: String,
    /// The stretches, from start to end.
    pub stretches: Vec<Stretch>,
    /// The labels under it.
    pub ticks: Vec<Tick>,
    /// Where now is; nothing is drawn without it.
    pub now: Option<f64>,
    /// What was done.
    pub pins: Vec<Pin>,
}

/// What a stretch of time is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RibbonKind {
    /// The best time, full height.
    Best,
    /// Still good.
    Good,
    /// Getting weak.
    Fair,
    /// Nearly over, a thin line.
    Poor,
    /// Time that passes and means nothing yet.
    Plain,
    /// Time in which something must not be done, hatched.
    Held,
    /// Time past its limit, full height in the ink of what is late.
    Over,
}

impl RibbonKind {
    /// Returns the value of `data-kind` that style knows.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Best => "best",
            Self::Good => "good",
            Self::Fair => "fair",
            Self::Poor => "poor",
            Self::Plain => "plain",
            Self::Held => "held",
            Self::Over => "over",
        }
    }

    /// Returns the height in pixels of the strip's [`HEIGHT`].
    #[must_use]
    pub const fn height(self) -> u8 {
        match self {
            Self::Best | Self::Held | Self::Over => HEIGHT,
            Self::Good => 17,
            Self::Fair => 11,
            Self::Poor | Self::Plain => 5,
        }
    }
}

/// The height of the strip in CSS pixels.
pub const HEIGHT: u8 = 24;

/// A stretch of time on the strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// Where it starts, 0 to 1.
    pub from: f64,
    /// Where it ends, 0 to 1.
    pub to: f64,
    /// What it is worth.
    pub kind: RibbonKind,
    /// What it is, for the pointer that rests on it.
    pub label: String,
}

/// A label under the strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Tick {
    /// Where it stands, 0 to 1.
    pub at: f64,
    /// What it says, in very few letters.
    pub text: String,
    /// Who gives way: where two would touch, the one with the higher rank is hidden.
    pub rank: u8,
}

impl Tick {
    /// Returns a tick: rank 0 at the strip's ends, 1 elsewhere.
    pub fn new(at: f64, text: impl Into<String>) -> Self {
        let rank = u8::from(at > 0.0 && at < 1.0);
        Self { at, text: text.into(), rank }
    }

    /// Returns the same tick with another rank.
    #[must_use]
    pub fn rank(self, rank: u8) -> Self {
        Self { rank, ..self }
    }
}

/// The shape of something done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PinShape {
    /// Seen or done by the animal itself.
    Ring,
    /// Done by hand.
    Dot,
    /// Went wrong or was stopped.
    Cross,
    /// A look, a check.
    Bar,
}

/// Something done, pinned to the strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Pin {
    /// When, 0 to 1.
    pub at: f64,
    /// Its shape.
    pub shape: PinShape,
    /// What it was, for the pointer that rests on it.
    pub title: String,
}

/// Pins that would lie on each other, as one with their count.
#[derive(Clone, Debug, PartialEq)]
pub struct Gathered {
    /// Where it stands, 0 to 1.
    pub at: f64,
    /// The shape of all of them; a disc where they differ.
    pub shape: PinShape,
    /// What they were, for the pointer that rests on it.
    pub title: String,
    /// How many.
    pub count: usize,
}

/// Two pins nearer than this share of the strip would lie on each other on a narrow phone: 14 px of 280 (ours).
const PIN_WIDE: f64 = 0.05;

/// Returns the pins as they can be told apart, from start to end.
#[must_use]
pub fn gather(pins: &[Pin]) -> Vec<Gathered> {
    let mut pins: Vec<&Pin> = pins.iter().collect();
    pins.sort_small_by(|one, other| one.at.total_cmp(&other.at));
    let mut all: Vec<Gathered> = Vec::new();
    for pin in pins {
        match all.last_mut().filter(|last| pin.at - last.at < PIN_WIDE) {
            Some(last) => {
                last.count += 1;
                last.title = format!("{}, {}", last.title, pin.title);
                last.shape = if last.shape == pin.shape { pin.shape } else { PinShape::Dot };
            }
            None => {
                all.push(Gathered { at: pin.at, shape: pin.shape, title: pin.title.clone(), count: 1 });
            }
        }
    }
    all
}

/// A tick with its guessed width and the narrowest strip that has room for it, both in em of its own type.
#[derive(Debug)]
pub struct Placed {
    /// Where it stands, 0 to 1.
    pub at: f64,
    /// What it says.
    pub text: String,
    /// Its width in em.
    pub wide: f64,
    /// The narrowest strip with room for it, in em.
    pub room: u8,
}

/// The strip widths in em that style has a container query for; a tick that needs more is left out.
const ROOMS: [u8; 8] = [0, 14, 18, 22, 26, 32, 40, 52];

/// Returns the ticks that can be shown, each with the width of strip it needs.
///
/// Measuring is not needed: the type is tabular, so letters are counted. Ticks are placed by rank, and each one
/// asks for the narrowest strip on which it stays clear of those placed before.
#[must_use]
pub fn place(mut ticks: Vec<Tick>) -> Vec<Placed> {
    ticks.sort_small_by(|one, other| one.rank.cmp(&other.rank).then(one.at.total_cmp(&other.at)));
    let mut placed: Vec<Placed> = Vec::new();
    for tick in ticks {
        let wide = width(&tick.text);
        let at = tick.at.clamp(0.0, 1.0);
        let room = ROOMS.into_iter().find(|room| {
            let strip = f64::from(*room).max(11.0);
            let start = left(at, wide, strip);
            placed.iter().filter(|other| other.room <= *room).all(|other| {
                let other_start = left(other.at, other.wide, strip);
                start >= other_start + other.wide + GAP || other_start >= start + wide + GAP
            })
        });
        if let Some(room) = room {
            placed.push(Placed { at, text: tick.text, wide, room });
        }
    }
    placed.sort_small_by(|one, other| one.at.total_cmp(&other.at));
    placed
}

/// The least room between two ticks, in em.
const GAP: f64 = 0.5;

/// Returns where a tick's box starts on a strip of the given width; style does the same with `clamp`.
fn left(at: f64, wide: f64, strip: f64) -> f64 {
    (at * strip - wide / 2.0).clamp(0.0, (strip - wide).max(0.0))
}

/// Returns a generous guess of a text's width in em.
fn width(text: &str) -> f64 {
    text.chars()
        .map(|letter| match letter {
            ' ' | ':' | '.' | ',' | 'i' | 'l' | '·' => 0.32,
            'm' | 'w' | 'M' | 'W' => 0.9,
            _ => 0.62,
        })
        .sum::<f64>()
        + 0.1
}

/// Returns a place as an SVG length that stretches with the strip.
#[must_use]
pub fn percent(at: f64) -> String {
    format!("{:.3}%", at.clamp(0.0, 1.0) * 100.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(ticks: &[(f64, &str)], strip: u8, expected: &[&str]) {
        let ticks = ticks.iter().map(|(at, text)| Tick::new(*at, *text)).collect();
        let placed = place(ticks);
        let shown: Vec<&str> =
            placed.iter().filter(|tick| tick.room <= strip).map(|tick| tick.text.as_str()).collect();
        assert_eq!(shown, expected);
    }

    const FIRST_MILK: [(f64, &str); 6] =
        [(0.0, "born"), (0.204, "1 h"), (0.289, "2"), (0.5, "6"), (0.707, "12"), (1.0, "24 h")];

    #[test]
    fn a_wide_strip_shows_every_tick() {
        check(&FIRST_MILK, 40, &["born", "1 h", "2", "6", "12", "24 h"]);
    }

    #[test]
    fn the_ends_stay_on_the_narrowest_strip() {
        check(&[(0.0, "01:48"), (0.05, "1 h"), (1.0, "01:48")], 14, &["01:48", "01:48"]);
    }

    #[test]
    fn pins_that_would_lie_on_each_other_are_counted() {
        let pin = |at, shape| Pin { at, shape, title: format!("at {at}") };
        let told = |pins: &[Pin]| -> Vec<(f64, usize, PinShape)> {
            gather(pins).into_iter().map(|one| (one.at, one.count, one.shape)).collect()
        };
        let apart = [pin(0.1, PinShape::Bar), pin(0.2, PinShape::Ring)];
        assert_eq!(told(&apart), [(0.1, 1, PinShape::Bar), (0.2, 1, PinShape::Ring)]);
        let near = [pin(0.12, PinShape::Ring), pin(0.1, PinShape::Bar), pin(0.13, PinShape::Ring)];
        assert_eq!(told(&near), [(0.1, 3, PinShape::Dot)]);
        let same = [pin(0.5, PinShape::Dot), pin(0.51, PinShape::Dot)];
        assert_eq!(
            (told(&same), gather(&same)[0].title.as_str()),
            (vec![(0.5, 2, PinShape::Dot)], "at 0.5, at 0.51")
        );
    }

    #[test]
    fn two_ticks_at_one_place_are_never_both_shown() {
        check(&[(0.5, "6 h"), (0.5, "now")], 52, &["6 h"]);
    }
}
