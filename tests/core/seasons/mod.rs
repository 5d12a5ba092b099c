//! The season in numbers.

mod against_past;
mod before_season;
mod by_ram;
mod coverage;
mod grown;
mod keeping;
mod planned;
mod put_to_ram;
mod record;
mod season_forecast;
mod stays;
mod this_week;
mod what_if;

use proptest::prelude::*;
use uuid::Uuid;
use yeanling_core::book::{Animal, Book, Cause, DeviceId, Entry, EntryId, Event, LambId, Life};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::reckon::flock_figures::Share;
use yeanling_core::reckon::losses::Span;
use yeanling_core::seasons::{Alive, Season, Year, record, seasons, year};
use yeanling_core::units::{Moment, TimeDelta};

use crate::book::arbitrary::{config, entries, three_books};
use crate::scribe::{Scribe, at, kg, night};

fn days(days: i64) -> Moment {
    night() + TimeDelta::days(days)
}

fn of(flock: &Flock, now: Moment) -> Vec<(Season, Year)> {
    seasons(flock)
        .into_iter()
        .map(|season| {
            let year = year(flock, &season, now);
            (season, year)
        })
        .collect()
}

#[track_caller]
fn only(scribe: &Scribe, now: Moment) -> Year {
    let [(_, year)] = &of(&scribe.flock(), now)[..] else { panic!("not one season") };
    year.clone()
}

/// Twins, triplets of which one is born dead, and a single without a dam; one twin dies of cold on its second day.
fn a_season() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let (a, b) = (scribe.ewe(at(-9), "14"), scribe.ewe(at(-8), "21"));
    let twins = [scribe.born(at(0), Some(a)), scribe.born(at(20), Some(a))];
    scribe.born(days(1), Some(b));
    scribe.born(days(1), Some(b));
    scribe.note(days(1), Event::LambBorn { dam: Some(b), beside: None, sex: None, alive: false });
    scribe.born(days(2), None);
    for (lamb, kilograms) in twins.into_iter().zip([4.0, 3.0]) {
        scribe.weighed(at(30), lamb, kilograms);
    }
    scribe.note(at(26 * 60), Event::Died { animal: Animal::Lamb(twins[1]), cause: Cause::Cold });
    (scribe, twins[0])
}

#[test]
fn births_of_one_spring_are_one_season_and_the_next_spring_is_another() {
    let (mut scribe, _) = a_season();
    scribe.born(days(92), None);
    assert_eq!(seasons(&scribe.flock()).len(), 1, "ninety days after the last");
    scribe.born(days(365), None);
    let found = seasons(&scribe.flock());
    assert_eq!(found.iter().map(Season::year).collect::<Vec<_>>(), [2027, 2026]);
    assert_eq!(found.iter().map(|season| season.lambs.len()).collect::<Vec<_>>(), [1, 7]);
    assert_eq!(seasons(&Scribe::new(1).flock()), []);
}

#[test]
fn a_season_is_counted_with_its_denominators() {
    let (scribe, _) = a_season();
    let year = only(&scribe, days(40));
    let counts = year.counts;
    assert_eq!((counts.lambed, year.without_dam), (3, 1));
    assert_eq!((counts.born_alive, counts.born_dead, counts.died, counts.weaned), (5, 1, 1, 0));
    assert_eq!(year.litters, [1, 1, 1]);
    assert_eq!(year.figures.prolificacy.map(|share| (share.count, share.of)), Some((6, 3)));
    assert_eq!(year.figures.fertility, None, "nobody noted how many were put to the ram");
    assert_eq!((year.at_a_day, year.at_a_week), (Alive { count: 5, of: 5 }, Alive { count: 4, of: 5 }));
    assert_eq!(year.by_day.iter().map(|(_, births)| *births).collect::<Vec<_>>(), [2, 3, 1]);
    assert_eq!(year.birth_weight, Some((kg(3.5), 2)));
}

#[test]
fn losses_are_told_by_when_and_of_what() {
    let (scribe, _) = a_season();
    let losses = only(&scribe, days(40)).losses;
    let told: Vec<_> = losses.iter().map(|loss| (loss.span, loss.lambs, loss.causes.clone())).collect();
    assert_eq!(told, [(Span::AtBirth, 1, vec![]), (Span::SecondDay, 1, vec![(Cause::Cold, 1)])]);
}

#[test]
fn a_lamb_too_young_to_tell_counts_neither_way() {
    let (scribe, _) = a_season();
    // Two days in: the single is just born, and one of the twins has died already.
    let year = only(&scribe, days(2));
    assert_eq!(year.at_a_day, Alive { count: 4, of: 4 });
    assert_eq!(year.at_a_week, Alive::default());
    assert_eq!(year.fates, [], "the dead one waits for its twin");
    let fates = only(&scribe, days(29)).fates;
    assert_eq!(fates.iter().map(|fate| fate.lived).collect::<Vec<_>>(), [true, false]);
}

#[test]
fn a_death_after_weaning_is_no_loss_before_it() {
    let (mut scribe, lamb) = a_season();
    scribe.weighed(days(58), lamb, 21.0);
    scribe.note(days(60), Event::Weaned { lamb });
    scribe.note(days(80), Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Predator });
    let counts = only(&scribe, days(90)).counts;
    assert_eq!((counts.died, counts.weaned, counts.weaned_mass), (1, 1, Some(kg(21.0))));
}

#[test]
fn what_is_struck_and_restored_leaves_the_figures_as_they_were() {
    let (mut scribe, _) = a_season();
    let before = only(&scribe, days(40));
    let entry = scribe.book.entries().last().expect("entries").id;
    scribe.note(days(3), Event::Deleted { entry });
    assert_ne!(only(&scribe, days(40)), before);
    scribe.note(days(3), Event::Restored { entry });
    assert_eq!(only(&scribe, days(40)), before);
}

proptest! {
    #![proptest_config(config(64))]

    #[test]
    fn two_books_together_have_the_figures_of_their_union([one, two, _] in three_books()) {
        let union = |first: &Book, second: &Book| {
            let mut book = first.clone();
            book.union(second.entries().cloned());
            of(&fold(&book), days(400))
        };
        prop_assert_eq!(union(&one, &two), union(&two, &one));
    }

    #[test]
    fn fostering_changes_no_figure_of_births_and_striking_it_nothing_at_all(
        entries in entries(),
        moves in prop::collection::vec((1..=10_u128, 1..=10_u128, 0..40_i64), 1..6),
    ) {
        let book: Book = entries.into_iter().collect();
        let (before, mut moved) = (of(&fold(&book), days(400)), book.clone());
        let id = |number: u128| EntryId::from_uuid(Uuid::from_u128(number));
        let mut add = |number: u128, hours: i64, event: Event| {
            let at = night() + TimeDelta::hours(hours);
            let device = DeviceId::from_uuid(Uuid::from_u128(9));
            moved.add(Entry { id: id(number), device, noted: at, at, event });
        };
        for (number, (lamb, dam, hours)) in (100..).zip(&moves) {
            let life = Life::Fostered { lamb: id(*lamb).as_lamb(), dam: id(*dam).as_ewe() };
            add(number, *hours, Event::Life(life));
        }
        prop_assert_eq!(&of(&fold(&moved), days(400)), &before);
        for (number, (.., hours)) in (100..).zip(&moves) {
            let at = night() + TimeDelta::hours(*hours);
            let device = DeviceId::from_uuid(Uuid::from_u128(9));
            let event = Event::Deleted { entry: id(number) };
            moved.add(Entry { id: id(number + 100), device, noted: at, at, event });
        }
        let (plain, struck) = (fold(&book), fold(&moved));
        for (ewe, lambs) in plain.ewes.keys().map(|ewe| (*ewe, plain.lambs_at_foot(*ewe))) {
            prop_assert_eq!(struck.lambs_at_foot(ewe), lambs);
        }
    }

    #[test]
    fn every_lamb_is_in_one_season_and_is_lost_once(entries in entries()) {
        let flock = fold(&entries.into_iter().collect());
        let all = of(&flock, days(400));
        let lambs: usize = all.iter().map(|(season, _)| season.lambs.len()).sum();
        prop_assert_eq!(lambs, flock.lambs.len());
        for (_, year) in &all {
            let lost: u32 = year.losses.iter().map(|loss| loss.lambs).sum();
            prop_assert_eq!(lost, year.counts.died + year.counts.born_dead);
            prop_assert!(year.counts.died <= year.counts.born_alive);
            prop_assert!(year.figures.fertility.is_none_or(|share| share.count <= share.of));
            let births: u32 = year.by_day.iter().map(|(_, births)| births).sum();
            prop_assert_eq!(births, year.counts.born());
        }
    }
}

#[test]
fn a_lamb_is_lost_by_one_rule_in_the_season_and_in_its_dams_record() {
    for (weaned, died, lost) in
        [(Some(60), 50, 1), (Some(60), 61, 0), (None, 41, 1), (None, 50, 1), (None, 119, 1), (None, 121, 0)]
    {
        let mut scribe = Scribe::new(1);
        let dam = scribe.ewe(at(-600), "7");
        let lamb = scribe.born(at(0), Some(dam));
        if let Some(weaned) = weaned {
            scribe.note(days(weaned), Event::Weaned { lamb });
        }
        scribe.note(days(died), Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown });
        let hers = record(&scribe.flock(), dam, days(400)).expect("a record");
        let year = only(&scribe, days(400));
        assert_eq!((hers.lost, year.counts.died), (lost, lost), "weaned {weaned:?}, died {died}");
        assert_eq!(hers.reared, 1 - lost, "weaned {weaned:?}, died {died}");
    }
}

/// A group of two ewes of which one lambs, and three ewes in no group that lamb too.
fn half_noted() -> Scribe {
    let mut scribe = Scribe::new(1);
    let ewes: Vec<_> = (0..5).map(|tag| scribe.ewe(days(-200), &tag.to_string())).collect();
    let group = scribe.group(days(-190), "Top");
    for ewe in &ewes[..2] {
        scribe.note(days(-189), Event::JoinedGroup { ewe: *ewe, group });
    }
    scribe.ram_in(days(-150), group);
    scribe.note(days(-100), Event::RamOut { group });
    for ewe in &ewes[1..] {
        let lamb = scribe.born(at(0), Some(*ewe));
        scribe.note(days(60), Event::Weaned { lamb });
        scribe.weighed(days(60), lamb, 20.0);
    }
    scribe.born(at(0), None);
    scribe
}

#[test]
fn of_half_noted_groups_only_those_put_to_the_ram_count_and_the_others_are_told() {
    let year = only(&half_noted(), days(100));
    let (counts, figures) = (year.counts, year.figures);
    assert_eq!((counts.put_to_ram, counts.lambed, counts.others.lambed), (Some(2), 5, 4));
    let told = |share: Option<Share>| share.map(|share| (share.count, share.of));
    assert_eq!(told(figures.fertility), Some((1, 2)));
    assert_eq!((told(figures.lambing), told(figures.weaning)), (Some((1, 2)), Some((1, 2))));
    assert_eq!(figures.weaned_a_ewe, Some(kg(10.0)));
}
