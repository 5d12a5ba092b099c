//! The card of a pen, for paper: the dam, her lambs with their times, and what is still to do.

use yeanling_core::book::{Animal, EweId};
use yeanling_core::flock::{Lamb, Pen};
use yeanling_core::watch::{Product, withdrawal};
use yeanling_words::common::date;
use yeanling_words::{animals, ewe as ewe_words, life, pens as words, watch};

use crate::Text;
use crate::block::{CardList, PaperCard};
use crate::view::View;

/// Returns the card.
pub(super) fn card(view: &View, pen: &Pen) -> PaperCard {
    PaperCard {
        sub: words::printed(&view.settings().farm_name, &date(view.now)),
        lists: pen.inside.iter().flat_map(|stay| lists(view, stay.animal)).collect(),
    }
}

/// The lists of one who is in: who, what is withheld, what is to do.
fn lists(view: &View, animal: Animal) -> [CardList; 3] {
    let lambs: Vec<&Lamb> = match animal {
        Animal::Ewe(ewe) => view.flock.lambs_at_foot(ewe),
        Animal::Lamb(lamb) => view.flock.lamb(lamb).into_iter().collect(),
    };
    let heading = match animal {
        Animal::Ewe(ewe) => dam(view, ewe),
        Animal::Lamb(_) => animals::animal(view.flock, animal),
    };
    let lines = lambs.iter().map(|lamb| words::card_lamb(view.flock, lamb)).collect();
    let mut who = vec![animal];
    who.extend(lambs.iter().map(|lamb| Animal::Lamb(lamb.id)).filter(|lamb| *lamb != animal));
    [
        CardList { heading, lines, boxes: false },
        CardList { heading: words::CARD_WITHHELD.to_owned(), lines: held(view, &who), boxes: false },
        CardList { heading: words::CARD_TO_DO.to_owned(), lines: to_do(view, &who), boxes: true },
    ]
}

fn dam(view: &View, ewe: EweId) -> String {
    let born = view.flock.ewe_born(ewe).map(life::birth_day);
    let breed = view.flock.ewe(ewe).and_then(|ewe| ewe.breed.clone());
    ewe_words::about(breed, born, animals::animal(view.flock, Animal::Ewe(ewe)))
}

/// What must not be sold of them yet.
fn held(view: &View, who: &[Animal]) -> Vec<String> {
    let line = |animal: &Animal| {
        let held = withdrawal(view.flock, *animal, Product::Meat, view.now)?;
        Some(about(view, *animal, &life::withdrawal(Product::Meat, &held, view.now)))
    };
    who.iter().filter_map(line).collect()
}

/// What is still to do for them, each with its time.
fn to_do(view: &View, who: &[Animal]) -> Vec<String> {
    let duties = view.duties.iter().filter(|duty| who.contains(&duty.subject()));
    let line = |duty: &yeanling_core::watch::Duty| {
        let what = watch::task(duty.task, view.system());
        about(view, duty.subject(), &format!("{what}, {}", words::card_due(duty.due)))
    };
    duties.map(line).collect()
}

/// A line about one of them; paper has no bold.
fn about(view: &View, animal: Animal, said: &str) -> String {
    format!("{}: {}", animals::animal(view.flock, animal), Text::said(said).plain())
}
