//! What comes before milk: one rule, told by each duty of milk.

use yeanling_core::book::{Animal, Belly, Cause, Event, Illness, LambId};
use yeanling_core::terms::{Change, Gate, LambSign};
use yeanling_core::units::Moment;
use yeanling_core::watch::{BeforeMilk, Completion, Hold, before_milk};

use super::danger::{taken, tried, with_lamb};
use super::{feed, find, first_milk};
use crate::scribe::{Scribe, at, hour};

fn before(scribe: &Scribe, lamb: LambId, now: Moment) -> Option<BeforeMilk> {
    let flock = scribe.flock();
    before_milk(flock.lamb(lamb)?, now, &flock.settings)
}

fn seen(lamb: LambId, swallows: Gate, signs: &[LambSign]) -> Event {
    let (head_up, warm) = (Gate::Good, Gate::Good);
    Event::Illness(Illness::LambSeen { lamb, head_up, swallows, warm, signs: signs.to_vec() })
}

#[test]
fn a_lamb_that_is_well_may_be_fed_until_it_is_late_and_unseen() {
    let (mut scribe, lamb) = with_lamb();
    assert_eq!(before(&scribe, lamb, at(10)), None);
    assert_eq!(before(&scribe, lamb, hour(2)), Some(BeforeMilk::Temperature), "late, and not seen to nurse");
    scribe.note(hour(2), tried(lamb, true));
    scribe.note(hour(2), taken(lamb, 39.2));
    assert_eq!(before(&scribe, lamb, hour(2)), None);
    scribe.note(hour(2), Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown });
    assert_eq!(before(&scribe, lamb, hour(5)), None, "it lives no more");
}

#[test]
fn a_reading_that_is_due_again_comes_before_the_next_feed() {
    let (mut scribe, lamb) = with_lamb();
    scribe.fed(at(30), lamb, 100.0);
    scribe.note(at(60), tried(lamb, true));
    scribe.note(at(60), taken(lamb, 38.0));
    assert_eq!(before(&scribe, lamb, at(79)), None);
    assert_eq!(before(&scribe, lamb, at(80)), Some(BeforeMilk::Temperature));
    let duty = find(&scribe, hour(6), feed).expect("its feed");
    assert_eq!(duty.completion, Completion::Open);
    scribe.note(at(80), taken(lamb, 39.3));
    assert_eq!(before(&scribe, lamb, at(81)), None);
}

#[test]
fn of_an_ill_lamb_what_was_not_checked_and_a_look_that_is_due_come_first_and_in_danger_the_vet() {
    let (mut scribe, lamb) = with_lamb();
    scribe.fed(at(30), lamb, 100.0);
    scribe.note(hour(1), seen(lamb, Gate::NotChecked, &[LambSign::Limps]));
    assert_eq!(before(&scribe, lamb, hour(1)), Some(BeforeMilk::Look), "nobody tried whether it swallows");
    scribe.note(hour(1), seen(lamb, Gate::Good, &[LambSign::Limps]));
    assert_eq!(before(&scribe, lamb, hour(1)), None);
    assert_eq!(before(&scribe, lamb, hour(30)), Some(BeforeMilk::Look), "a look is due");
    scribe.note(hour(30), seen(lamb, Gate::Good, &[LambSign::BloodInDung]));
    assert_eq!(before(&scribe, lamb, hour(30)), Some(BeforeMilk::Ill));
    let well = Illness::Changed { animal: Animal::Lamb(lamb), change: Change::Well };
    scribe.note(hour(31), Event::Illness(well));
    assert_eq!(before(&scribe, lamb, hour(31)), None);
}

#[test]
fn a_hold_stands_before_all_else() {
    let (mut scribe, lamb) = with_lamb();
    scribe.note(hour(3), Event::BellyFelt { lamb, belly: Belly::Hollow });
    assert_eq!(before(&scribe, lamb, hour(3)), Some(BeforeMilk::Temperature));
    scribe.note(hour(3), taken(lamb, 36.0));
    assert!(matches!(before(&scribe, lamb, hour(3)), Some(BeforeMilk::Hold(Hold::Cold { .. }))));
    let duty = find(&scribe, hour(3), first_milk).expect("its first milk");
    assert_eq!(duty.completion, Completion::Open);
}
