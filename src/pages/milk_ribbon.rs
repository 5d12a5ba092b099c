//! The ribbon of first milk: a day on a square-root scale, so that the first two hours get the room they deserve.

use yeanling_core::book::Way;
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::{body_temperature, window};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_words::common::{clock, clock_figures, span};
use yeanling_words::lamb as words;

use crate::ribbon::{Pin, PinShape, Ribbon, RibbonKind, Stretch, Tick};

/// Returns the ribbon of a lamb at an instant; with clock times at its ends, or with hours alone.
pub(crate) fn milk_ribbon(lamb: &Lamb, now: Moment, clocks: bool) -> Ribbon {
    let age = lamb.age(now);
    let at = |moment: Moment| window::place_on_ribbon(moment.since(lamb.born));
    let (start, end) = if clocks {
        (clock_figures(lamb.born), clock_figures(lamb.born + TimeDelta::hours(24)))
    } else {
        (words::RIBBON_BORN.to_owned(), "24 h".to_owned())
    };
    let hour = |hours: i64| window::place_on_ribbon(TimeDelta::hours(hours));
    let ticks = vec![
        Tick::new(0.0, start),
        Tick::new(hour(1), "1 h").rank(1),
        Tick::new(hour(2), "2").rank(2),
        Tick::new(hour(6), "6").rank(1),
        Tick::new(hour(12), "12").rank(2),
        Tick::new(1.0, end),
    ];
    let within = |moment: &Moment| moment.since(lamb.born) < TimeDelta::hours(24);
    let pin = |moment: Moment, shape: PinShape, what: &str| Pin {
        at: at(moment),
        shape,
        title: format!("{what} {}", clock(moment)),
    };
    let mut pins: Vec<Pin> = Vec::new();
    pins.extend(lamb.stood.iter().filter(|at| within(at)).map(|at| pin(*at, PinShape::Bar, words::PIN_UP)));
    pins.extend(
        lamb.sucked.iter().filter(|at| within(at)).map(|at| pin(*at, PinShape::Ring, words::PIN_SUCKED)),
    );
    pins.extend(lamb.feeds.iter().filter(|feed| within(&feed.at)).map(|feed| {
        let what = match feed.way {
            Way::Bottle => words::PIN_BOTTLE,
            Way::Tube => words::PIN_TUBE,
        };
        pin(feed.at, PinShape::Dot, what)
    }));
    pins.extend(lamb.temperatures.iter().filter(|reading| within(&reading.at)).map(|reading| {
        let warm = reading.temperature >= body_temperature::NORMAL_FROM;
        pin(reading.at, if warm { PinShape::Bar } else { PinShape::Cross }, words::PIN_TEMPERATURE)
    }));
    let left = match window::left(age) {
        Some(left) => words::ribbon_label(&yeanling_words::watch::age(age), &span(left)),
        None => words::RIBBON_CLOSED.to_owned(),
    };
    let done: Vec<String> = pins.iter().map(|pin| pin.title.clone()).collect();
    let label = if done.is_empty() { left } else { format!("{left} {}.", done.join(", ")) };
    // Now stands at its minute, so that a ribbon on which nothing happened is not drawn anew with every entry.
    let now = (age < TimeDelta::hours(24)).then(|| at(now.minute().max(lamb.born)));
    Ribbon { label, stretches: stretches(), ticks, now, pins }
}

fn stretches() -> Vec<Stretch> {
    let hour = |hours: i64| window::place_on_ribbon(TimeDelta::hours(hours));
    [
        (0, 1, RibbonKind::Best),
        (1, 2, RibbonKind::Best),
        (2, 6, RibbonKind::Good),
        (6, 12, RibbonKind::Fair),
        (12, 24, RibbonKind::Poor),
    ]
    .into_iter()
    .map(|(from, to, kind)| Stretch { from: hour(from), to: hour(to), kind, label: words::stretch(from, to) })
    .collect()
}
