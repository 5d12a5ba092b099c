//! What is noted before a birth, after a death, and of a lamb that never lived.

use yeanling_core::book::{Animal, EntryId, Event};
use yeanling_core::units::Moment;
use yeanling_core::watch::Rejection;

use super::{Barn, amended, bottle, weighed};
use crate::scribe::{MS, at, birth, eased, scored};

#[test]
fn nothing_is_seen_of_a_lamb_before_its_birth() {
    let barn = Barn::new();
    let (lamb, born, early) = (barn.lamb, at(0), at(0) - MS);
    for event in [
        Event::Stood { lamb },
        Event::Sucked { lamb },
        Event::NavelDipped { lamb },
        weighed(lamb, 4.0),
        bottle(lamb, 60.0),
        scored(lamb, 2),
        Event::Died { animal: Animal::Lamb(lamb), cause: yeanling_core::book::Cause::Cold },
    ] {
        barn.check_at(&event, early, &Rejection::BeforeBirth { at: early, born });
        barn.ok_at(&event, born);
    }
    barn.ok_at(&eased(lamb), early);
}

#[test]
fn a_phone_with_another_offset_may_note_the_instant_of_birth_and_of_death() {
    let mut barn = Barn::new();
    let lamb = barn.lamb;
    let elsewhere =
        |moment: Moment, offset| Moment::from_unix_milliseconds(moment.as_unix_milliseconds(), offset);
    barn.ok_at(&Event::Stood { lamb }, elsewhere(at(0), -360));
    barn.scribe.died(at(60), Animal::Lamb(lamb));
    barn.ok_at(&Event::Stood { lamb }, elsewhere(at(60), 60));
}

#[test]
fn nothing_but_a_weight_and_a_word_is_noted_after_a_death() {
    let mut barn = Barn::new();
    let (lamb, died) = (barn.lamb, at(60));
    barn.scribe.died(died, Animal::Lamb(lamb));
    for event in [
        Event::Stood { lamb },
        Event::Sucked { lamb },
        Event::NavelDipped { lamb },
        bottle(lamb, 60.0),
        scored(lamb, 2),
    ] {
        barn.check_at(&event, died + MS, &Rejection::AfterDeath { at: died + MS, died });
        barn.ok_at(&event, died);
    }
    barn.ok(&weighed(lamb, 4.0));
    barn.ok(&eased(lamb));
    barn.ok(&Event::Remarked { animal: Animal::Lamb(lamb), text: "Sent to the lab".to_owned() });
}

#[test]
fn a_lamb_born_dead_was_never_seen_alive() {
    let mut barn = Barn::new();
    let lamb = barn.scribe.born_dead(at(5));
    barn.check(&Event::Stood { lamb }, &Rejection::AfterDeath { at: barn.now, died: at(5) });
    barn.check(&bottle(lamb, 60.0), &Rejection::AfterDeath { at: barn.now, died: at(5) });
    barn.ok(&weighed(lamb, 3.0));
}

#[test]
fn nothing_is_noted_of_a_lamb_whose_birth_was_struck() {
    let mut barn = Barn::new();
    barn.scribe.strike(at(50), barn.lamb.entry());
    barn.check(&Event::Stood { lamb: barn.lamb }, &Rejection::NoSuchAnimal);
    barn.ok(&Event::Restored { entry: barn.lamb.entry() });
}

#[test]
fn a_birth_may_not_move_past_what_was_seen_of_the_lamb() {
    let mut barn = Barn::new();
    let entry = barn.lamb.entry();
    let moved = |at| amended(entry, birth(None, None), at);
    barn.ok(&moved(at(-300)));
    barn.ok(&moved(at(25)));
    let late = at(25) + MS;
    barn.check(&moved(late), &Rejection::BornAfter { born: late, seen: at(25) });
    let weights: Vec<EntryId> =
        barn.scribe.flock().lines.iter().filter(|line| line.at == at(25)).map(|line| line.entry).collect();
    barn.scribe.strike(at(50), weights[0]);
    barn.ok(&moved(late));
    barn.check(&moved(at(40) + MS), &Rejection::BornAfter { born: at(40) + MS, seen: at(40) });
}
