//! What is late stays late until something is noted, never by time alone.

use yeanling_core::book::{Animal, DutyKind, EweId, LambId};
use yeanling_core::flock::{Flock, Labor};
use yeanling_core::reckon::illness::Urgency;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, State, ewe_illness};

use super::{Kept, Law, broken, judges};
use crate::nights::story::clock;

pub(in crate::nights) fn what_is_late_stays_late_until_something_is_noted(
    flock: &Flock,
    then: Moment,
    said: &[Duty],
    now: Moment,
    duties: &[Duty],
) -> Kept {
    for duty in said.iter().filter(|duty| duty.state(then) >= State::Late) {
        judges(Law::Late);
        let same = |other: &&Duty| other.subject() == duty.subject() && other.task.kind() == duty.task.kind();
        let state = duties.iter().find(same).map(|duty| duty.state(now));
        if state < Some(duty.state(then)) && !ends(flock, duty, now) {
            let told = format!(
                "{:?} was {:?} at {}, and at {} {state:?}",
                duty.task,
                duty.state(then),
                clock(then),
                clock(now)
            );
            return broken("what is late stays late until something is noted", told);
        }
    }
    Ok(())
}

/// The ends that are told, each a limit of its own.
fn ends(flock: &Flock, duty: &Duty, now: Moment) -> bool {
    match duty.subject() {
        Animal::Ewe(ewe) => of_a_ewe(flock, ewe, duty, now),
        Animal::Lamb(lamb) => of_a_lamb(flock, lamb, duty, now),
    }
}

fn of_a_ewe(flock: &Flock, ewe: EweId, duty: &Duty, now: Moment) -> bool {
    let birth = flock.litters_of(ewe).first().map(|litter| now.since(litter.latest));
    let called = flock.ewe(ewe).and_then(|ewe| ewe.vet.last()).map(|call| now.since(call.at));
    match duty.task.kind() {
        // Another lamb, six hours after the last, where neither a scan nor what she does says that there is one; then
        // with the days in which the Watch looks at a litter: what she does has clocks of its own.
        DutyKind::NextLamb => {
            let litter = flock.litters_of(ewe).into_iter().next();
            let scanned = litter.and_then(|litter| flock.scanned_for(ewe, litter.latest));
            let born = litter.map_or(0, |litter| litter.lambs.len());
            let more = scanned.is_some_and(|lambs| usize::from(lambs) > born);
            let runs = flock.ewe(ewe).and_then(|ewe| ewe.labor.as_ref()).is_some_and(Labor::runs);
            birth >= Some(TimeDelta::hours(if more || runs { 7 * 24 } else { 24 }))
        }
        // What was found wrong took its lateness over from the clock of another lamb, which goes with those days.
        DutyKind::PutRight | DutyKind::CervixClosed => {
            birth >= Some(TimeDelta::hours(73)) && duty.due.since(duty.since) <= TimeDelta::zero()
        }
        // A look at one that is not right, once it is the vet's now.
        DutyKind::IllnessLook => ewe_illness(flock, flock.ewe(ewe).expect("a ewe"), now)
            .is_some_and(|course| course.urgency == Urgency::Now),
        // The afterbirth after three days.
        DutyKind::Afterbirth => birth > Some(TimeDelta::hours(72)),
        // What is asked of her after lambing, a day after the last birth, or after the draw that asked for the next.
        DutyKind::Udder => {
            let drawn = flock.ewe(ewe).and_then(|ewe| ewe.udder.last()).map(|seen| now.since(seen.at));
            birth > Some(TimeDelta::hours(24)) && drawn.is_none_or(|drawn| drawn > TimeDelta::hours(24))
        }
        DutyKind::Settled => birth > Some(TimeDelta::hours(24)),
        // The looks that a call asks for after a day, or with the clock of another lamb that they go with.
        DutyKind::Look => called >= Some(TimeDelta::hours(24)) || birth >= Some(TimeDelta::hours(24)),
        _ => false,
    }
}

fn of_a_lamb(flock: &Flock, id: LambId, duty: &Duty, now: Moment) -> bool {
    let Some(lamb) = flock.lamb(id) else { return false };
    let (age, least) = (lamb.age(now), lamb.least_age(now));
    let called = lamb.vet.last().map(|call| now.since(call.at));
    let since = now.since(duty.since);
    match duty.task.kind() {
        DutyKind::FirstMilk => least > TimeDelta::hours(48),
        DutyKind::DayTotal => least > TimeDelta::hours(26),
        DutyKind::GetUp | DutyKind::DipNavel | DutyKind::DipNavelAgain => age > TimeDelta::hours(24),
        DutyKind::Weigh => age >= TimeDelta::hours(24),
        DutyKind::DamDry => least > TimeDelta::hours(48),
        DutyKind::WeighAgain => age > TimeDelta::hours(72),
        DutyKind::HardBirth => age > TimeDelta::hours(24),
        DutyKind::ScoreVigor => age > TimeDelta::hours(1),
        DutyKind::Look => called >= Some(TimeDelta::hours(24)),
        // A danger, and what a reading asks for, after seven days.
        DutyKind::CallVet | DutyKind::TakeTemperature => since > TimeDelta::days(7),
        // The bottle table ends with its last row.
        DutyKind::Feed => age >= TimeDelta::days(35),
        _ => false,
    }
}
