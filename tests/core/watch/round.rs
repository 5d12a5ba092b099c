//! A round with the bottle serves the lambs whose feeds fall together.

use yeanling_core::book::{Animal, Milk, Way};
use yeanling_core::watch::round;

use super::all;
use crate::scribe::{Scribe, at, fed, ml};

#[test]
fn feeds_within_three_quarters_of_an_hour_make_one_round() {
    let mut scribe = Scribe::new(1);
    let born = at(-5 * 24 * 60);
    let lambs: Vec<_> = (0..4).map(|_| scribe.born(born, None)).collect();
    // Four feeds and a fifth of a day apart: five a day is every 288 minutes.
    for (lamb, minute) in lambs.iter().zip([0, 20, 45, 46]) {
        scribe.weighed(at(minute), *lamb, 5.0);
        scribe.note(at(minute), fed(*lamb, 125.0, Milk::Replacer, Way::Bottle));
    }
    let now = at(200);
    let found = round(&all(&scribe, now), now).expect("a round");
    assert_eq!(found.due, at(288));
    let served: Vec<_> = found.feeds.iter().map(|duty| duty.subject()).collect();
    assert_eq!(served, [lambs[0], lambs[1], lambs[2]].map(Animal::Lamb));
    assert_eq!(found.volume, ml(3.0 * 125.0));
    // Once the first are overdue, what is due soon from now goes along.
    let late = at(290);
    assert_eq!(round(&all(&scribe, late), late).map(|round| round.feeds.len()), Some(4));
}

#[test]
fn no_bottle_lamb_no_round() {
    let mut scribe = Scribe::new(1);
    scribe.born(at(0), None);
    assert_eq!(round(&all(&scribe, at(30)), at(30)), None);
}
