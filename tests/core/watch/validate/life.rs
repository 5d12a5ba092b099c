//! Who rears whom, which tag is free, what a treatment withholds, and what comes after an animal left.

use yeanling_core::book::{Animal, BirthDay, CullReason, Departure, Event, Life, Treatment};
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::units::{Mass, OutOfBounds, Price, TimeDelta};
use yeanling_core::watch::{LifeRejection, Rejection, Withdrawal};

use super::{Barn, amended, weighed};
use crate::scribe::{MS, at, hour, kg};

fn drench(animal: Animal, meat_days: Option<u16>) -> Event {
    Event::Life(Life::Treated {
        animal,
        treatment: Box::new(Treatment {
            product: "White drench".to_owned(),
            amount: None,
            route: None,
            reason: None,
            batch: None,
            by: None,
            day_only: false,
            meat_days,
            milk_days: None,
        }),
    })
}

fn went(animal: Animal, how: Departure) -> Event {
    Event::Life(Life::Went { animal, how, to: None })
}

fn refused(rejection: LifeRejection) -> Rejection {
    rejection.into()
}

#[test]
fn a_lamb_is_not_fostered_on_to_a_dead_ewe_nor_to_the_one_it_is_with() {
    let mut barn = Barn::new();
    let (lamb, own) = (barn.lamb, barn.ewe);
    let other = barn.scribe.ewe(at(-500), "31");
    let foster = |dam| Event::Life(Life::Fostered { lamb, dam });
    barn.check(&foster(own), &refused(LifeRejection::WithHer));
    barn.ok(&foster(other));
    barn.scribe.died(at(30), Animal::Ewe(other));
    barn.check(&foster(other), &Rejection::AfterDeath { at: barn.now, died: at(30) });
}

#[test]
fn a_tag_that_a_living_animal_wears_is_not_given_again() {
    let mut barn = Barn::new();
    let (ewe, lamb) = (Animal::Ewe(barn.ewe), Animal::Lamb(barn.lamb));
    let worn = refused(LifeRejection::TagWorn { tag: "23".to_owned(), by: ewe });
    barn.check(&Event::EweCame { tag: Some("23".to_owned()) }, &worn);
    barn.check(&Event::Tagged { animal: lamb, tag: " 23 ".to_owned() }, &worn);
    barn.ok(&Event::Tagged { animal: ewe, tag: "23".to_owned() });
    barn.ok(&Event::Life(Life::Marked { animal: lamb, mark: "23".to_owned() }));
    barn.scribe.died(at(100), ewe);
    barn.ok(&Event::Tagged { animal: lamb, tag: "23".to_owned() });
}

#[test]
fn an_animal_dies_once_but_what_was_noted_of_it_can_be_changed() {
    let mut barn = Barn::new();
    let lamb = Animal::Lamb(barn.lamb);
    let dies = |cause| Event::Died { animal: lamb, cause };
    let noted = barn.scribe.died(at(60), lamb);
    barn.check(
        &dies(yeanling_core::book::Cause::Cold),
        &refused(LifeRejection::AlreadyDead { died: at(60) }),
    );
    barn.ok(&amended(noted, dies(yeanling_core::book::Cause::Cold), at(50)));
}

#[test]
fn what_was_found_in_an_animal_is_noted_once_it_is_dead() {
    let mut barn = Barn::new();
    let (ewe, lamb) = (Animal::Ewe(barn.ewe), Animal::Lamb(barn.lamb));
    let found = |animal, finding: &str| Event::Life(Life::Examined { animal, finding: finding.to_owned() });
    for animal in [ewe, lamb] {
        barn.check(&found(animal, "milk in the lungs"), &refused(LifeRejection::NotDead));
        barn.scribe.died(at(60), animal);
        barn.ok(&found(animal, "milk in the lungs"));
    }
    barn.check(&found(Animal::Lamb(barn.lamb), " "), &Rejection::NoText);
}

#[test]
fn a_weight_that_no_lamb_has_at_that_age_or_after_that_weight_is_refused() {
    let mut barn = Barn::new();
    let lamb = barn.lamb;
    barn.now = hour(10 * 24);
    // Ten days at a kilogram a day over the heaviest at birth.
    let most = Mass::AT_BIRTH.most.as_kilograms() + 10.0;
    let Err(Rejection::Weight(out)) = barn.try_at(&weighed(lamb, 62.0), barn.now) else {
        panic!("62 kg at ten days");
    };
    assert_eq!(out.given, kg(62.0));
    assert!((out.allowed.most.as_kilograms() - most).abs() < 1e-9, "{out:?}");
    // Four kilograms at birth; sixteen ten days later is over a kilogram a day.
    let Err(Rejection::Life(LifeRejection::Growth { before, at: when, grams_a_day })) =
        barn.try_at(&weighed(lamb, 16.0), barn.now)
    else {
        panic!("16 kg at ten days");
    };
    assert_eq!((before, when), (kg(4.0), at(25)));
    assert!((1200.0..1203.0).contains(&grams_a_day), "{grams_a_day}");
    barn.ok(&weighed(lamb, 7.5));
}

#[test]
fn the_first_weight_can_be_put_right_though_the_next_would_not_follow_it() {
    let mut barn = Barn::new();
    let lamb = barn.lamb;
    let wrong = barn.scribe.weighed(hour(48), lamb, 5.5);
    barn.scribe.weighed(hour(20 * 24), lamb, 10.0);
    barn.now = hour(21 * 24);
    barn.ok(&amended(wrong, weighed(lamb, 4.6), hour(48)));
}

#[test]
fn a_sale_inside_withholding_is_refused_until_it_ends_or_the_buyer_is_told() {
    let mut barn = Barn::new();
    let ewe = Animal::Ewe(barn.ewe);
    barn.scribe.note(at(0), drench(ewe, Some(8)));
    let ends = at(0) + TimeDelta::days(8);
    let withdrawal = Withdrawal { usable: Usable::From(ends), product: "White drench".to_owned() };
    for how in [Departure::Sold, Departure::Slaughtered, Departure::Given] {
        barn.check(&went(ewe, how), &refused(LifeRejection::Withdrawal(withdrawal.clone())));
    }
    barn.ok(&went(ewe, Departure::SoldWithWarning));
    barn.ok(&went(ewe, Departure::Missing));
    barn.now = ends;
    barn.ok(&went(ewe, Departure::Sold));
    barn.check_at(&went(ewe, Departure::Sold), ends - MS, &refused(LifeRejection::Withdrawal(withdrawal)));
}

#[test]
fn withholding_that_nobody_knows_blocks_and_the_latest_end_stands() {
    let mut barn = Barn::new();
    let ewe = Animal::Ewe(barn.ewe);
    barn.scribe.note(at(0), drench(ewe, Some(8)));
    barn.scribe.note(at(10), drench(ewe, None));
    barn.now = hour(24 * 365);
    let unknown = Withdrawal { usable: Usable::Unknown, product: "White drench".to_owned() };
    barn.check(&went(ewe, Departure::Slaughtered), &refused(LifeRejection::Withdrawal(unknown)));
    barn.check(&drench(ewe, Some(366)), &refused(LifeRejection::TooManyDays { given: 366, most: 365 }));
}

#[test]
fn nothing_is_done_with_an_animal_that_left() {
    let mut barn = Barn::new();
    let lamb = Animal::Lamb(barn.lamb);
    barn.scribe.note(at(60), went(lamb, Departure::Sold));
    let left = refused(LifeRejection::AfterLeft { at: barn.now, left: at(60) });
    barn.check(&Event::Stood { lamb: barn.lamb }, &left);
    barn.check(&went(lamb, Departure::Sold), &left);
    barn.check(&drench(lamb, Some(1)), &left);
    barn.ok(&Event::Remarked { animal: lamb, text: "Fetched a good price".to_owned() });
}

#[test]
fn a_price_and_a_reason_to_cull_are_of_one_that_left() {
    let mut barn = Barn::new();
    let animal = Animal::Ewe(barn.ewe);
    let sold = |money| Event::Life(Life::SoldFor { animal, price: Price::from_money(money) });
    let culled = Event::Life(Life::Culled { animal, why: CullReason::Udder });
    barn.check(&sold(180.0), &refused(LifeRejection::NotGone));
    barn.check(&culled, &refused(LifeRejection::NotGone));
    barn.scribe.note(at(60), went(animal, Departure::Sold));
    barn.ok(&sold(0.0));
    barn.ok(&culled);
    let out = OutOfBounds { given: Price::from_money(100_001.0), allowed: Price::OF_AN_ANIMAL };
    barn.check(&sold(100_001.0), &refused(LifeRejection::Price(out)));
    let died = Animal::Lamb(barn.lamb);
    barn.check(
        &Event::Life(Life::Culled { animal: died, why: CullReason::Other }),
        &refused(LifeRejection::NotGone),
    );
    barn.scribe.died(at(70), died);
    barn.ok(&Event::Life(Life::Culled { animal: died, why: CullReason::Other }));
}

#[test]
fn a_ewe_was_born_in_the_last_thirty_years() {
    let barn = Barn::new();
    let described = |born| Event::Life(Life::Described { ewe: barn.ewe, born: Some(born), breed: None });
    for year in [1995, 2027] {
        let expected = LifeRejection::BirthYear { given: year, least: 1996, most: 2026 };
        barn.check(&described(BirthDay::Year(year)), &refused(expected));
    }
    let day = |text: &str| BirthDay::Day(text.parse().expect("a day"));
    barn.ok(&described(BirthDay::Year(2026)));
    barn.ok(&described(day("2026-02-25")));
    let expected = LifeRejection::BirthYear { given: 2026, least: 1996, most: 2026 };
    barn.check(&described(day("2026-02-26")), &refused(expected));
}

#[test]
fn sexes_are_minded_where_they_matter() {
    let mut barn = Barn::new();
    let born = |sex| Event::LambBorn { dam: Some(barn.ewe), beside: None, sex: Some(sex), alive: true };
    let (he, she) = (born(yeanling_core::book::Sex::Ram), born(yeanling_core::book::Sex::Ewe));
    let he = barn.scribe.note(at(1), he).as_lamb();
    let she = barn.scribe.note(at(2), she).as_lamb();
    let cut = |lamb| Event::Life(Life::Castrated { lamb, way: yeanling_core::book::Castration::Cut });
    let kept = |lamb| Event::Life(Life::KeptAsEwe { lamb });
    barn.check(&cut(she), &refused(LifeRejection::WrongSex));
    barn.check(&kept(he), &refused(LifeRejection::WrongSex));
    barn.ok(&cut(he));
    // A newborn must not leave the Watch by one press.
    let from = at(2) + TimeDelta::days(60);
    barn.check(&kept(she), &refused(LifeRejection::TooYoungToKeep { from }));
    barn.now = from;
    barn.ok(&kept(she));
}
