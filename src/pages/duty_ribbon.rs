//! The ribbon of one duty that is counted from an instant: time that runs, time that is due, time that is over.

use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::Duty;

use yeanling_words::common::{clock, clock_figures};
use yeanling_words::watch as words;

use crate::ribbon::{Pin, Ribbon, RibbonKind, Stretch, Tick};

/// Returns the ribbon of a duty at an instant; `held` draws the time before it is due as one to wait through.
pub(crate) fn duty_ribbon(duty: &Duty, now: Moment, held: bool, pins: &[(Moment, Pin)]) -> Ribbon {
    let (due, late) = (duty.due.since(duty.since), duty.late.since(duty.since));
    // Now stands at its minute, so that a ribbon on which nothing happened is not drawn anew with every entry.
    let passed = now.minute().max(duty.since).since(duty.since);
    // Some room behind the last limit, and never so little that now falls off the end.
    let whole = late.max(passed).max(TimeDelta::minutes(1));
    let whole = whole.as_seconds_f64() * 1.12;
    let at = |span: TimeDelta| (span.as_seconds_f64() / whole).clamp(0.0, 1.0);
    let first = if held { RibbonKind::Held } else { RibbonKind::Plain };
    let mut stretches = vec![Stretch { from: 0.0, to: at(due), kind: first, label: String::new() }];
    if late > due {
        stretches.push(Stretch { from: at(due), to: at(late), kind: RibbonKind::Fair, label: String::new() });
    }
    stretches.push(Stretch { from: at(late), to: 1.0, kind: RibbonKind::Over, label: String::new() });
    let mut ticks =
        vec![Tick::new(0.0, clock_figures(duty.since)), Tick::new(at(due), clock_figures(duty.due))];
    if late > due {
        ticks.push(Tick::new(at(late), clock_figures(duty.late)).rank(2));
    }
    let pins = pins
        .iter()
        .filter(|(when, _)| *when >= duty.since && *when <= now)
        .map(|(when, pin)| Pin { at: at(when.since(duty.since)), ..pin.clone() })
        .collect();
    let label = words::ribbon(&clock(duty.since), &clock(duty.due), &words::when(duty, now));
    Ribbon { label, stretches, ticks, now: Some(at(passed)), pins }
}
