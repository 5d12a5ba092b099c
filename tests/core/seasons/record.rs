//! A ewe's record over her years, and the farm's own marks.

use yeanling_core::book::{Animal, Cause, Event, LambingEase, Life};
use yeanling_core::seasons::{KeepMark, marked, marks, record};
use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::TimeDelta;

use super::days;
use crate::scribe::{Scribe, at, kg};

#[test]
fn a_record_counts_births_help_losses_and_what_she_reared() {
    let mut scribe = Scribe::new(1);
    let (ewe, other) = (scribe.ewe(at(-600), "12"), scribe.ewe(at(-600), "13"));
    // First year: twins, one pulled hard, one lost at five days.
    let twins = [scribe.born(at(0), Some(ewe)), scribe.born(at(10), Some(ewe))];
    scribe.note(at(1), Event::BirthEase { lamb: twins[0], ease: LambingEase::HardByHand });
    scribe.note(at(11), Event::Accepted { lamb: twins[1], accepts: false });
    scribe.note(days(5), Event::Died { animal: Animal::Lamb(twins[1]), cause: Cause::Starved });
    scribe.note(days(60), Event::Weighed { lamb: twins[0], mass: kg(21.0) });
    scribe.note(days(60), Event::Weaned { lamb: twins[0] });
    // The next: a single born dead, and a lamb of another ewe fostered to her.
    let next = at(0) + TimeDelta::days(365);
    scribe.note(next, Event::LambBorn { dam: Some(ewe), beside: None, sex: None, alive: false });
    let foster = scribe.born(next + TimeDelta::hours(1), Some(other));
    scribe.note(next + TimeDelta::hours(2), Event::Life(Life::Fostered { lamb: foster, dam: ewe }));
    scribe.note(next + TimeDelta::days(50), Event::Weighed { lamb: foster, mass: kg(18.0) });
    let flock = scribe.flock();
    let hers = record(&flock, ewe, days(365 + 60)).expect("a record");
    assert_eq!((hers.litters, hers.born, hers.born_dead, hers.lost), (2, 3, 1, 1));
    assert_eq!((hers.reared, hers.hard_births, hers.turned_away, hers.barren), (2, 1, 1, 0));
    assert_eq!(hers.kilograms, Some(kg(39.0)));
    let others = record(&flock, other, days(365 + 60)).expect("a record");
    assert_eq!((others.litters, others.born, others.reared, others.kilograms), (1, 1, 0, None));
}

#[test]
fn a_ewe_put_to_the_ram_that_did_not_lamb_was_barren_that_season() {
    let mut scribe = Scribe::new(1);
    let (lambed, barren) = (scribe.ewe(at(-600), "1"), scribe.ewe(at(-600), "2"));
    let group = scribe.group(at(-590), "Top");
    for ewe in [lambed, barren] {
        scribe.note(at(-580), Event::JoinedGroup { ewe, group });
    }
    scribe.ram_in(at(-570), group);
    scribe.note(days(34), Event::RamOut { group });
    scribe.born(days(150), Some(lambed));
    let flock = scribe.flock();
    let of = |ewe| record(&flock, ewe, days(200)).expect("a record").barren;
    assert_eq!((of(lambed), of(barren)), (0, 1));
}

#[test]
fn the_farm_marks_from_its_own_numbers_on_and_without_them_nobody() {
    let mut scribe = Scribe::new(1);
    let (bad, good) = (scribe.ewe(at(-600), "1"), scribe.ewe(at(-600), "2"));
    for (minute, ewe) in [(0, bad), (100, good)] {
        scribe.born(at(minute), Some(ewe));
    }
    for minute in [5, 6] {
        scribe.note(at(minute), Event::LambBorn { dam: Some(bad), beside: None, sex: None, alive: false });
    }
    assert_eq!(marked(&scribe.flock(), days(9)), []);
    let keep = CullRules { lost: Some(2), hard_births: Some(1), ..CullRules::default() };
    scribe.note(days(8), Event::Chose(Choice::CullRules(keep)));
    let flock = scribe.flock();
    let found = marked(&flock, days(9));
    let [(ewe, record, why)] = &found[..] else { panic!("one ewe") };
    assert_eq!((*ewe, why.as_slice()), (bad, &[KeepMark::Lost(2)][..]));
    assert_eq!(marks(record, &CullRules { lost: Some(3), ..keep }), []);
}
