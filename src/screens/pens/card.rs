//! The card of a pen, for paper: the dam, her lambs with their times, and what is still to do.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, PenId};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, Product, withheld};

use crate::farm::use_farm;
use crate::parts::{CardList, PaperCard};
use crate::words::common::date;
use crate::words::{animals, life, pens as words, watch};

/// The card of a pen.
#[component]
pub(super) fn Card(
    /// Which pen.
    id: PenId,
) -> impl IntoView {
    let farm = use_farm();
    let sub = Signal::derive(move || words::printed(&farm.practice().farm_name, &date(farm.now())));
    let lists = Memo::new(move |_| {
        let now = farm.now();
        farm.with_duties(|ground, duties| lists(&ground.flock, id, duties, now))
    });
    view! { <PaperCard sub=sub lists=lists /> }
}

fn lists(flock: &Flock, id: PenId, duties: &[Duty], now: Moment) -> Vec<CardList> {
    let Some(pen) = flock.pens.get(&id) else { return Vec::new() };
    let mut lists = Vec::new();
    for stay in &pen.inside {
        let mut who = vec![stay.animal];
        let mut heading = animals::animal(flock, stay.animal);
        if let Animal::Ewe(ewe) = stay.animal {
            let born = flock.ewe_born(ewe).map(life::birth_day);
            let breed = flock.ewe(ewe).and_then(|ewe| ewe.breed.clone());
            heading = crate::words::ewe::about(breed, born, heading);
            let lambs = flock.lambs_at_foot(ewe);
            who.extend(lambs.iter().map(|lamb| Animal::Lamb(lamb.id)));
            let lines = lambs.iter().map(|lamb| words::card_lamb(flock, lamb)).collect();
            lists.push(CardList { heading, lines, boxes: false });
        } else {
            let lamb = |animal: Animal| match animal {
                Animal::Lamb(lamb) => flock.lamb(lamb),
                Animal::Ewe(_) => None,
            };
            let lines = lamb(stay.animal).map(|lamb: &Lamb| words::card_lamb(flock, lamb));
            lists.push(CardList { heading, lines: lines.into_iter().collect(), boxes: false });
        }
        let held = who.iter().filter_map(|animal| {
            let held = withheld(flock, *animal, Product::Meat, now)?;
            Some(format!(
                "{}: {}",
                animals::animal(flock, *animal),
                life::withheld(Product::Meat, &held, now)
            ))
        });
        let held: Vec<String> = held.map(|line| line.replace('*', "")).collect();
        lists.push(CardList { heading: words::CARD_WITHHELD.to_owned(), lines: held, boxes: false });
        let to_do = duties.iter().filter(|duty| who.contains(&duty.subject)).map(|duty| {
            let what = watch::task(duty.task, flock.practice.system).replace('*', "");
            let due = words::card_due(duty.due);
            format!("{}: {what}, {due}", animals::animal(flock, duty.subject))
        });
        lists.push(CardList { heading: words::CARD_TO_DO.to_owned(), lines: to_do.collect(), boxes: true });
    }
    lists
}
