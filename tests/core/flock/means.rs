//! The flock's own mean birth weights, by litter size.

use crate::scribe::{Scribe, at, kg};

#[test]
fn the_mean_of_a_litter_size_counts_only_lambs_weighed_at_birth() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-9), "14");
    let (one, two) = (scribe.born(at(0), Some(ewe)), scribe.born(at(10), Some(ewe)));
    let single = scribe.born(at(20), None);
    scribe.weighed(at(1), one, 4.0);
    let flock = scribe.flock();
    let litter = flock.litter_of(one).expect("a litter");
    assert_eq!(flock.litter_mean(litter), None, "one twin is not weighed");
    assert_eq!(flock.birth_mean(1), None);
    scribe.weighed(at(11), two, 3.0);
    scribe.weighed(at(60 * 24 * 3), single, 6.0);
    let flock = scribe.flock();
    let litter = flock.litter_of(two).expect("a litter");
    assert_eq!(flock.litter_mean(litter), Some(kg(3.5)));
    let twins = flock.birth_mean(2).expect("twins were weighed");
    assert_eq!((twins.mean, twins.lambs), (kg(3.5), 2));
    assert_eq!(flock.birth_mean(1), None, "weighed too late for a birth weight");
}

#[test]
fn triplets_and_more_go_together_and_the_born_dead_do_not_count() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-9), "14");
    for order in 0..4 {
        let lamb = scribe.born(at(order), Some(ewe));
        scribe.weighed(at(order), lamb, 2.0);
    }
    let dead = scribe.born_dead(at(9));
    scribe.weighed(at(9), dead, 1.0);
    let flock = scribe.flock();
    assert_eq!(flock.birth_mean(3).map(|mean| mean.lambs), Some(4));
    assert_eq!(flock.birth_mean(4), flock.birth_mean(3));
    assert_eq!(flock.birth_mean(1), None);
}
