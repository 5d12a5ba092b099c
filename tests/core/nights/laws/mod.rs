//! The laws of a night, each a function named by what it says.

mod danger;
mod illness;
mod milk;
pub(super) mod order;
pub(super) mod tap;
mod time;
mod volume;
pub(super) mod wait;
mod worse;

use std::cell::Cell;

use yeanling_core::book::{Animal, Book, Event, LambId};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;
use yeanling_core::watch::Duty;

/// The laws, as far as it is counted how often each had something to judge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Law {
    Worse,
    LambInDanger,
    LaborInDanger,
    Hold,
    Volume,
    Late,
    Tap,
    Once,
    PutOff,
    TwoBooks,
    Learned,
    Ill,
    First,
}

impl Law {
    pub(super) const ALL: [Self; 13] = [
        Self::Worse,
        Self::LambInDanger,
        Self::LaborInDanger,
        Self::Hold,
        Self::Volume,
        Self::Late,
        Self::Tap,
        Self::Once,
        Self::PutOff,
        Self::TwoBooks,
        Self::Learned,
        Self::Ill,
        Self::First,
    ];
}

thread_local! {
    static JUDGED: Cell<[u32; Law::ALL.len()]> = const { Cell::new([0; Law::ALL.len()]) };
}

/// Counts that a law had something to judge: one that never has cannot fail.
fn judges(law: Law) {
    let mut judged = JUDGED.get();
    judged[law as usize] += 1;
    JUDGED.set(judged);
}

/// Returns how often each law had something to judge on this thread.
pub(super) fn judged() -> [(Law, u32); Law::ALL.len()] {
    Law::ALL.map(|law| (law, JUDGED.get()[law as usize]))
}

/// A law that does not hold.
pub(super) struct Broken {
    pub(super) law: &'static str,
    pub(super) told: String,
}

pub(super) type Kept = Result<(), Broken>;

/// What was noted in a step, and what the Watch said right before and right after.
pub(super) struct Scene<'a> {
    pub(super) now: Moment,
    pub(super) at: Moment,
    pub(super) event: &'a Event,
    pub(super) before: &'a [Duty],
    pub(super) after: &'a [Duty],
    pub(super) flock: &'a Flock,
    pub(super) book: &'a Book,
    /// The flock as it was before, where the hours that follow are compared too.
    pub(super) was: Option<Flock>,
    pub(super) pressed: bool,
}

/// What holds of every step.
pub(super) fn of_a_step(scene: &Scene<'_>) -> Kept {
    worse::a_worse_sign_never_makes_an_alarm_later_or_milder(scene)?;
    danger::labors_danger_ends_by_good_news_alone(scene)?;
    tap::every_tap_passes_the_gate(scene.flock, scene.book, scene.now, scene.after)?;
    tap::what_was_tapped_is_not_asked_again_at_once(scene)
}

/// What holds at every instant.
pub(super) fn of_an_instant(
    flock: &Flock,
    book: &Book,
    lambs: &[LambId],
    now: Moment,
    duties: &[Duty],
) -> Kept {
    danger::danger_stands_before_all_else(now, duties)?;
    for lamb in lambs {
        danger::a_lamb_in_danger_stays_so_until_good_news(flock, *lamb, now, duties)?;
        milk::no_milk_is_one_tap_for_a_lamb_on_hold(flock, *lamb, now, duties)?;
        milk::what_comes_before_milk_comes_first(flock, *lamb, now, duties)?;
    }
    let ewes = flock.ewes.keys().map(|ewe| Animal::Ewe(*ewe));
    for animal in ewes.chain(lambs.iter().map(|lamb| Animal::Lamb(*lamb))) {
        illness::what_is_always_now_stays_so_until_well(flock, animal, now, duties)?;
    }
    volume::no_volume_is_over_the_guard(flock, book, now, duties)?;
    wait::putting_off_never_passes_the_red_limit(flock, now, duties)
}

/// What holds of two instants between which nothing was noted.
pub(super) fn of_time(flock: &Flock, then: Moment, said: &[Duty], now: Moment, duties: &[Duty]) -> Kept {
    time::what_is_late_stays_late_until_something_is_noted(flock, then, said, now, duties)
}

fn broken(law: &'static str, told: String) -> Kept {
    Err(Broken { law, told })
}
