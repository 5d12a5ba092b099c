//! Who rears a lamb, what is withheld, who left, and a ewe lamb that becomes a ewe.

use yeanling_core::book::{
    Animal, BirthDay, Castration, CullReason, Departure, Event, EweId, LambId, Life, Treatment,
};
use yeanling_core::flock::{Flock, Gone, Reared};
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::units::{Price, TimeDelta};
use yeanling_core::watch::{Product, withdrawal};

use crate::scribe::{Scribe, at, hour};

fn foster(scribe: &mut Scribe, minute: i64, lamb: LambId, dam: EweId) {
    scribe.note(at(minute), Event::Life(Life::Fostered { lamb, dam }));
}

/// A ewe with triplets and one with a single, all born within two hours.
struct Two {
    scribe: Scribe,
    many: EweId,
    few: EweId,
    three: [LambId; 3],
    one: LambId,
}

impl Two {
    fn new() -> Self {
        let mut scribe = Scribe::new(1);
        let (many, few) = (scribe.ewe(at(-600), "40"), scribe.ewe(at(-600), "41"));
        let three = [0, 20, 40].map(|minute| scribe.born(at(minute), Some(many)));
        let one = scribe.born(at(90), Some(few));
        Self { scribe, many, few, three, one }
    }
}

fn at_foot(flock: &Flock, ewe: EweId) -> Vec<LambId> {
    flock.lambs_at_foot(ewe).into_iter().map(|lamb| lamb.id).collect()
}

#[test]
fn a_fostered_lamb_keeps_its_birth_and_changes_who_rears_it() {
    let mut two = Two::new();
    let lamb = two.three[2];
    foster(&mut two.scribe, 120, lamb, two.few);
    let flock = two.scribe.flock();
    let fostered = flock.lamb(lamb).expect("it is here");
    assert_eq!((fostered.dam, flock.rearer(fostered)), (Some(two.many), Some(two.few)));
    assert_eq!(flock.litter_of(lamb).map(|litter| litter.lambs.len()), Some(3));
    assert_eq!(at_foot(&flock, two.many), two.three[..2]);
    assert_eq!(at_foot(&flock, two.few), [two.one, lamb]);
    let reared = |id| flock.reared(flock.lamb(id).expect("it is here"), hour(1000));
    assert_eq!(reared(lamb), Some(Reared::ByEwe(2)));
    assert_eq!(reared(two.one), Some(Reared::ByEwe(2)));
    assert_eq!(reared(two.three[0]), Some(Reared::ByEwe(2)));
}

#[test]
fn back_with_its_dam_it_is_one_of_three_again() {
    let mut two = Two::new();
    let lamb = two.three[2];
    foster(&mut two.scribe, 120, lamb, two.few);
    foster(&mut two.scribe, 180, lamb, two.many);
    let flock = two.scribe.flock();
    assert_eq!(at_foot(&flock, two.many), two.three);
    assert_eq!(at_foot(&flock, two.few), [two.one]);
    let again = flock.lamb(lamb).expect("it is here");
    assert_eq!(flock.reared(again, hour(1000)), Some(Reared::ByEwe(3)));
}

#[test]
fn who_comes_to_a_foster_dam_again_is_with_her_once() {
    let mut two = Two::new();
    let lamb = two.three[2];
    foster(&mut two.scribe, 120, lamb, two.few);
    foster(&mut two.scribe, 180, lamb, two.many);
    foster(&mut two.scribe, 240, lamb, two.few);
    let flock = two.scribe.flock();
    assert_eq!(at_foot(&flock, two.few), [two.one, lamb]);
    assert_eq!(at_foot(&flock, two.many), two.three[..2]);
}

#[test]
fn the_foster_dam_takes_the_lamb_into_her_pen() {
    let mut two = Two::new();
    let pen = two.scribe.note(at(0), Event::PenMade { name: "1".to_owned(), size: None }).as_pen();
    two.scribe.note(at(100), Event::PutInPen { animal: Animal::Ewe(two.few), pen });
    let lamb = two.three[2];
    assert_eq!(two.scribe.flock().pen_of(Animal::Lamb(lamb)), None);
    foster(&mut two.scribe, 120, lamb, two.few);
    assert_eq!(two.scribe.flock().pen_of(Animal::Lamb(lamb)), Some((pen, at(120))));
}

#[test]
fn a_lamb_that_its_own_dam_turned_away_is_not_turned_away_by_the_next() {
    let mut two = Two::new();
    let lamb = two.three[0];
    two.scribe.note(at(60), Event::Accepted { lamb, accepts: false });
    assert!(two.scribe.flock().lamb(lamb).is_some_and(yeanling_core::flock::Lamb::turned_away));
    foster(&mut two.scribe, 120, lamb, two.few);
    assert!(!two.scribe.flock().lamb(lamb).is_some_and(yeanling_core::flock::Lamb::turned_away));
}

#[test]
fn a_lamb_on_the_bottle_after_three_days_is_reared_by_hand_and_the_others_are_fewer() {
    let mut two = Two::new();
    two.scribe.fed(hour(80), two.three[2], 150.0);
    let flock = two.scribe.flock();
    let reared = |id| flock.reared(flock.lamb(id).expect("it is here"), hour(1000));
    assert_eq!(reared(two.three[2]), Some(Reared::ByHand));
    assert_eq!(reared(two.three[0]), Some(Reared::ByEwe(2)));
}

#[test]
fn a_lamb_that_died_before_the_weighing_was_not_reared_with_it() {
    let mut two = Two::new();
    two.scribe.died(hour(100), Animal::Lamb(two.three[1]));
    let flock = two.scribe.flock();
    let lamb = flock.lamb(two.three[0]).expect("it is here");
    assert_eq!(flock.reared(lamb, hour(99)), Some(Reared::ByEwe(3)));
    assert_eq!(flock.reared(lamb, hour(200)), Some(Reared::ByEwe(2)));
}

fn treated(animal: Animal, product: &str, day_only: bool, meat_days: Option<u16>) -> Event {
    let treatment = Treatment {
        product: product.to_owned(),
        amount: None,
        route: None,
        reason: None,
        batch: None,
        by: None,
        day_only,
        meat_days,
        milk_days: Some(0),
    };
    Event::Life(Life::Treated { animal, treatment: Box::new(treatment) })
}

#[test]
fn the_treatment_that_withholds_longest_is_told() {
    let mut two = Two::new();
    let ewe = Animal::Ewe(two.few);
    // Source: Finnish Medicines Agency: six days, the day alone known: usable on the seventh day after.
    two.scribe.note(at(0), treated(ewe, "Six days", true, Some(6)));
    two.scribe.note(at(10), treated(ewe, "Two days", false, Some(2)));
    let flock = two.scribe.flock();
    let held = withdrawal(&flock, ewe, Product::Meat, at(20)).expect("withheld");
    let day: chrono::NaiveDate = "2026-03-04".parse().expect("a day");
    assert_eq!((held.usable, held.product.as_str()), (Usable::FromDay(day), "Six days"));
    assert_eq!(withdrawal(&flock, ewe, Product::Meat, hour(24 * 8)), None);
    assert_eq!(withdrawal(&flock, ewe, Product::Meat, at(-1)), None, "not yet treated");
    assert_eq!(withdrawal(&flock, Animal::Lamb(two.one), Product::Meat, at(20)), None);
    let all: Vec<&str> = flock.treatments().iter().map(|one| one.treatment.product.as_str()).collect();
    assert_eq!(all, ["Two days", "Six days"]);
}

#[test]
fn who_left_lives_here_no_more_and_is_in_no_pen() {
    let mut two = Two::new();
    let pen = two.scribe.note(at(0), Event::PenMade { name: "1".to_owned(), size: None }).as_pen();
    let ewe = Animal::Ewe(two.few);
    two.scribe.note(at(100), Event::PutInPen { animal: ewe, pen });
    two.scribe.note(at(200), Event::Life(Life::Went { animal: ewe, how: Departure::Sold, to: None }));
    let flock = two.scribe.flock();
    assert!(!flock.ewe(two.few).expect("her record stays").lives());
    assert_eq!(flock.pen_of(ewe), None);
    assert!(flock.pens[&pen].inside.is_empty());
}

#[test]
fn a_ewe_lamb_that_was_kept_is_a_ewe_with_her_tag_her_age_and_her_medicines() {
    let mut two = Two::new();
    let lamb = two.one;
    two.scribe.note(hour(50), Event::Tagged { animal: Animal::Lamb(lamb), tag: "901".to_owned() });
    two.scribe.note(hour(60), treated(Animal::Lamb(lamb), "Unknown", false, None));
    let kept = two.scribe.note(hour(24 * 200), Event::Life(Life::KeptAsEwe { lamb }));
    let flock = two.scribe.flock();
    let ewe = flock.ewe(kept.as_ewe()).expect("she is a ewe");
    assert_eq!((ewe.tag.as_deref(), ewe.was), (Some("901"), Some(lamb)));
    assert!(!flock.lamb(lamb).expect("her lamb's record stays").lives());
    let birthday = at(90).local().date();
    assert_eq!(flock.ewe_born(ewe.id), Some(BirthDay::Day(birthday)));
    assert_eq!(flock.ewe_years(ewe.id, at(90) + TimeDelta::days(366)), Some(1));
    assert!(withdrawal(&flock, Animal::Ewe(ewe.id), Product::Meat, hour(24 * 300)).is_some());
    let lines = flock.lines_of(Animal::Ewe(ewe.id)).count();
    assert_eq!(lines, 1, "the day she was kept opens her story");
}

#[test]
fn tags_and_marks_worn_before_are_kept_to_be_found_by() {
    let mut two = Two::new();
    let lamb = Animal::Lamb(two.one);
    two.scribe.note(at(100), Event::Life(Life::Marked { animal: lamb, mark: "41 red".to_owned() }));
    two.scribe.note(at(200), Event::Tagged { animal: lamb, tag: "7".to_owned() });
    two.scribe.note(at(300), Event::Tagged { animal: lamb, tag: "8".to_owned() });
    let cut = Life::Castrated { lamb: two.one, way: Castration::Cut };
    two.scribe.note(at(400), Event::Life(cut));
    let flock = two.scribe.flock();
    let lamb = flock.lamb(two.one).expect("it is here");
    assert_eq!(
        (lamb.tag.as_deref(), lamb.worn.as_slice()),
        (Some("8"), &["41 red".to_owned(), "7".to_owned()][..])
    );
    assert!(lamb.is_wether());
}

#[test]
fn a_booster_is_a_treatment_that_reaches_the_lambs_of_the_next_lambing_alone() {
    let mut two = Two::new();
    let (ewe, other) = (two.few, two.many);
    let Event::Life(Life::Treated { treatment, .. }) =
        treated(Animal::Ewe(ewe), "Eight in one", false, Some(21))
    else {
        panic!("a treatment is a treatment")
    };
    let start = at(0);
    two.scribe.note(start, Event::Life(Life::Boosted { ewe, treatment }));
    let group = two.scribe.group(start, "Top");
    two.scribe.note(start, Event::JoinedGroup { ewe: other, group });
    two.scribe.note(start + TimeDelta::days(1), Event::BoosterGiven { group });
    let day = |days: i64| start + TimeDelta::days(days);
    let lamb = two.scribe.born(day(98), Some(ewe));
    let of_group = two.scribe.born(day(40), Some(other));
    let late = two.scribe.born(day(360), Some(ewe));
    let flock = two.scribe.flock();
    let boosted = |lamb| flock.dam_boosted(flock.lamb(lamb).expect("it is here"));
    assert_eq!(boosted(lamb), Some(start));
    assert_eq!(boosted(of_group), Some(day(1)));
    assert_eq!(boosted(late), None);
    assert!(flock.treated(Animal::Ewe(ewe)).iter().all(|given| given.booster));
    assert!(withdrawal(&flock, Animal::Ewe(ewe), Product::Meat, day(20)).is_some());
}

#[test]
fn what_one_brought_and_why_it_was_culled_stay_with_it() {
    let mut two = Two::new();
    let animal = Animal::Ewe(two.few);
    two.scribe.note(at(200), Event::Life(Life::Went { animal, how: Departure::Sold, to: None }));
    let price = Price::from_money(182.5);
    two.scribe.note(at(200), Event::Life(Life::SoldFor { animal, price }));
    let culled = two.scribe.note(at(200), Event::Life(Life::Culled { animal, why: CullReason::Udder }));
    assert_eq!(two.scribe.flock().gone(animal), Gone { price: Some(price), culled: Some(CullReason::Udder) });
    two.scribe.strike(at(201), culled);
    assert_eq!(two.scribe.flock().gone(animal), Gone { price: Some(price), culled: None });
}
