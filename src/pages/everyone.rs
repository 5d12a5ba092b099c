//! Who is found: by what is typed among all that ever were, else by where and how they are.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use yeanling_core::book::{Animal, EweId, LambId};
use yeanling_core::flock::{Ewe, Flock, Lamb};
use yeanling_core::seasons::{APART, seasons};
use yeanling_core::sort_small::{Gather, SortSmall};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Product, withdrawal};

use yeanling_words::{animals, flock as words, pens};

/// A lamb is weighed at eight weeks, give or take a week (AHDB); one that was not is asked for from then on.
const WEIGH_FROM: TimeDelta = TimeDelta::days(49);

/// Which animals are looked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// Everyone here, this season's lambs.
    Here,
    /// Ewes that have not lambed this season.
    ToLamb,
    /// On the bottle.
    Bottle,
    /// In a pen.
    Penned,
    /// Meat or milk withheld.
    Withdrawal,
    /// Without a tag of its own.
    Untagged,
    /// Lambs that were not weighed at eight weeks.
    Unweighed,
    /// Living lambs of earlier seasons.
    Earlier,
    /// Dead, sold or gone.
    Gone,
}

/// Each with its name.
pub const WHICH: [(Which, &str); 9] = [
    (Which::Here, words::HERE),
    (Which::ToLamb, words::TO_LAMB),
    (Which::Bottle, words::BOTTLE),
    (Which::Penned, words::PENNED),
    (Which::Withdrawal, words::WITHHELD),
    (Which::Untagged, words::UNTAGGED),
    (Which::Unweighed, words::UNWEIGHED),
    (Which::Earlier, words::EARLIER),
    (Which::Gone, words::GONE),
];

/// Returns the name of a choice.
#[must_use]
pub fn name(which: Which) -> &'static str {
    WHICH.iter().find(|(other, _)| *other == which).map_or("", |(_, name)| name)
}

/// The animals that are shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Found {
    /// Ewes.
    pub ewes: Vec<EweId>,
    /// Rams.
    pub rams: Vec<EweId>,
    /// Living lambs.
    pub lambs: Vec<LambId>,
    /// The dead and the gone.
    pub dead: Vec<LambId>,
    /// Whether just this name is worn already.
    pub taken: bool,
}

impl Found {
    #[must_use]
    /// Returns who was found, if that is one alone.
    pub fn only(&self) -> Option<Animal> {
        let lambs = self.lambs.iter().chain(&self.dead).map(|lamb| Animal::Lamb(*lamb));
        let mut all = self.ewes.iter().chain(&self.rams).map(|ewe| Animal::Ewe(*ewe)).chain(lambs);
        all.next().filter(|_| all.next().is_none())
    }

    /// Says whether nobody is.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.ewes.is_empty() && self.rams.is_empty() && self.lambs.is_empty() && self.dead.is_empty()
    }
}

/// All animals in the order of the list, with all that each is found by; who became a ewe is no lamb any more.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Everyone {
    /// By name, the short ones first.
    ewes: Index<EweId>,
    /// By name, the short ones first.
    rams: Index<EweId>,
    /// The living, the youngest first.
    lambs: Index<LambId>,
    /// The dead and the gone, the youngest first.
    dead: Index<LambId>,
    /// Every tag of a ewe and every name of a lamb, in small letters.
    taken: BTreeSet<String>,
    /// How many ewes, rams and lambs live.
    pub living: (usize, usize, usize),
}

impl Everyone {
    /// Returns all animals of a flock.
    #[must_use]
    pub fn of(flock: &Flock) -> Self {
        let pen =
            |animal: Animal| flock.pen_of(animal).and_then(|(pen, _)| flock.pens.get(&pen)).map(pens::pen);
        let living = (
            flock.ewes.values().filter(|ewe| ewe.lives()).count(),
            flock.rams.values().filter(|ram| ram.lives()).count(),
            flock.lambs.values().filter(|lamb| lamb.lives()).count(),
        );
        let mut everyone = Self { living, ..Self::default() };
        let mut ewes: Vec<(String, &Ewe)> = flock.ewes.values().map(|ewe| (animals::ewe(ewe), ewe)).collect();
        ewes.sort_small_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
        for (name, ewe) in ewes {
            everyone.taken.extend(ewe.tag.as_ref().map(|tag| tag.to_lowercase()));
            everyone.ewes.add(ewe.id, ewe.worn.iter().cloned().chain([name]).chain(pen(Animal::Ewe(ewe.id))));
        }
        let mut rams: Vec<(String, &Ewe)> = flock.rams.values().map(|ram| (animals::ewe(ram), ram)).collect();
        rams.sort_small_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
        for (name, ram) in rams {
            everyone.taken.extend(ram.tag.as_ref().map(|tag| tag.to_lowercase()));
            everyone.rams.add(ram.id, ram.worn.iter().cloned().chain([name]));
        }
        let mut lambs: Vec<&Lamb> = flock.lambs.values().filter(|lamb| lamb.kept.is_none()).collect();
        lambs.sort_small_by_key(|lamb| Reverse((lamb.born, lamb.id)));
        for lamb in lambs {
            let names = || lamb.worn.iter().cloned().chain([animals::lamb(flock, lamb)]);
            everyone.taken.extend(names().map(|name| name.to_lowercase()));
            let list = if lamb.lives() { &mut everyone.lambs } else { &mut everyone.dead };
            list.add(lamb.id, names().chain(pen(Animal::Lamb(lamb.id))));
        }
        everyone
    }

    /// Returns the animals with this in a name or a pen, among all that ever were.
    pub fn find(&self, part: &str) -> Found {
        let part = part.to_lowercase();
        Found {
            ewes: self.ewes.find(&part),
            rams: self.rams.find(&part),
            lambs: self.lambs.find(&part),
            dead: self.dead.find(&part),
            taken: self.taken.contains(animals::tag_of(&part)),
        }
    }

    /// Returns the animals that wear one of these tags, in small letters.
    pub fn tagged(&self, flock: &Flock, tags: &BTreeSet<String>) -> Found {
        let wears = |tag: &Option<String>| tag.as_ref().is_some_and(|tag| tags.contains(&tag.to_lowercase()));
        let ewe = |id: &&EweId| flock.ewes.get(id).is_some_and(|ewe| wears(&ewe.tag));
        let ram = |id: &&EweId| flock.rams.get(id).is_some_and(|ram| wears(&ram.tag));
        let lamb = |id: &&LambId| flock.lambs.get(id).is_some_and(|lamb| wears(&lamb.tag));
        Found {
            ewes: self.ewes.ids.iter().filter(ewe).copied().collect(),
            rams: self.rams.ids.iter().filter(ram).copied().collect(),
            lambs: self.lambs.ids.iter().filter(lamb).copied().collect(),
            dead: self.dead.ids.iter().filter(lamb).copied().collect(),
            taken: false,
        }
    }

    /// Returns who is called just so: a living ewe or ram before a lamb, and both before the dead.
    pub fn called(&self, flock: &Flock, name: &str) -> Option<Animal> {
        let tag = animals::tag_of(name);
        let is = |other: &str| other.eq_ignore_ascii_case(tag);
        let grown = flock.ewes.values().chain(flock.rams.values());
        let mut ewes = grown.filter(|ewe| ewe.tag.as_deref().is_some_and(is));
        let ewe = ewes.clone().find(|ewe| ewe.lives()).or_else(|| ewes.next());
        let mut lambs = self.lambs.ids.iter().chain(&self.dead.ids);
        ewe.map(|ewe| Animal::Ewe(ewe.id)).or_else(|| {
            let lamb = lambs.find(|id| is(&animals::lamb_of(flock, **id)))?;
            Some(Animal::Lamb(*lamb))
        })
    }

    /// Returns who has a place in a small flock: ewes by tag, this season's lambs by name; those that died or left keep it for
    /// a season.
    pub fn places(&self, flock: &Flock, now: Moment) -> (Vec<EweId>, Vec<LambId>) {
        let lately = |at: Moment| now.since(at) <= APART;
        let ewe = |id: &&EweId| {
            flock.ewes.get(id).is_some_and(|ewe| {
                let gone = ewe.died.as_ref().map(|died| died.at).or(ewe.left.as_ref().map(|left| left.at));
                gone.is_none_or(lately)
            })
        };
        let latest = this_season(flock);
        let lambs =
            latest.into_iter().filter(|id| flock.lambs.get(id).is_some_and(|lamb| lamb.kept.is_none()));
        let mut lambs: Vec<(String, LambId)> = lambs.map(|id| (animals::lamb_of(flock, id), id)).collect();
        lambs.sort_small_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
        let ewes = self.ewes.ids.iter().filter(ewe).copied().collect();
        (ewes, lambs.into_iter().map(|(_, id)| id).collect())
    }

    /// Returns the animals by where and how they are.
    pub fn browse(&self, flock: &Flock, which: Which, now: Moment) -> Found {
        let latest = this_season(flock);
        let ewe = |id: &&EweId| flock.ewes.get(id).is_some_and(|ewe| ewe_is(flock, ewe, which, now));
        let ram = |id: &&EweId| flock.rams.get(id).is_some_and(|ram| ram_is(flock, ram, which, now));
        let lamb =
            |id: &&LambId| flock.lambs.get(id).is_some_and(|lamb| lamb_is(flock, lamb, which, &latest, now));
        Found {
            ewes: self.ewes.ids.iter().filter(ewe).copied().collect(),
            rams: self.rams.ids.iter().filter(ram).copied().collect(),
            lambs: self.lambs.ids.iter().filter(lamb).copied().collect(),
            dead: self.dead.ids.iter().filter(lamb).copied().collect(),
            taken: false,
        }
    }
}

/// Animals and what they are found by, as one text: to look through that is quicker than through many.
#[derive(Clone, Debug, PartialEq)]
struct Index<Id> {
    ids: Vec<Id>,
    /// What each is found by, in small letters, a line each.
    text: String,
    /// Where the words of each end.
    ends: Vec<usize>,
}

impl<Id> Default for Index<Id> {
    fn default() -> Self {
        Self { ids: Vec::new(), text: String::new(), ends: Vec::new() }
    }
}

impl<Id: Copy> Index<Id> {
    fn add(&mut self, id: Id, words: impl Iterator<Item = String>) {
        self.ids.push(id);
        for word in words {
            self.text.push_str(&word.to_lowercase());
            self.text.push('\n');
        }
        self.ends.push(self.text.len());
    }

    /// Returns those that have this in one of their words, in order.
    fn find(&self, part: &str) -> Vec<Id> {
        let mut found = Vec::new();
        let mut ends = self.ends.iter().zip(&self.ids);
        let mut until = 0;
        // Of several places in one animal's words only the first counts.
        for (at, _) in self.text.match_indices(part) {
            if at >= until
                && let Some((end, id)) = ends.find(|(end, _)| **end > at)
            {
                until = *end;
                found.push(*id);
            }
        }
        found
    }
}

/// The lambs of the latest season.
fn this_season(flock: &Flock) -> BTreeSet<LambId> {
    seasons(flock).into_iter().next().map(|season| season.lambs.into_iter().gathered()).unwrap_or_default()
}

fn ewe_is(flock: &Flock, ewe: &Ewe, which: Which, now: Moment) -> bool {
    let animal = Animal::Ewe(ewe.id);
    match which {
        Which::Here => ewe.lives(),
        Which::ToLamb => {
            let lambed = flock.litters_of(ewe.id).first().is_some_and(|last| now.since(last.began) <= APART);
            ewe.lives() && !lambed
        }
        Which::Penned => ewe.lives() && flock.pen_of(animal).is_some(),
        Which::Withdrawal => {
            let held = |product| withdrawal(flock, animal, product, now).is_some();
            ewe.lives() && (held(Product::Meat) || held(Product::Milk))
        }
        Which::Untagged => ewe.lives() && ewe.tag.is_none(),
        Which::Gone => !ewe.lives(),
        Which::Bottle | Which::Unweighed | Which::Earlier => false,
    }
}

fn ram_is(flock: &Flock, ram: &Ewe, which: Which, now: Moment) -> bool {
    match which {
        Which::Here => ram.lives(),
        Which::Withdrawal => {
            ram.lives() && withdrawal(flock, Animal::Ewe(ram.id), Product::Meat, now).is_some()
        }
        Which::Untagged => ram.lives() && ram.tag.is_none(),
        Which::Gone => !ram.lives(),
        Which::ToLamb | Which::Penned | Which::Bottle | Which::Unweighed | Which::Earlier => false,
    }
}

fn lamb_is(flock: &Flock, lamb: &Lamb, which: Which, latest: &BTreeSet<LambId>, now: Moment) -> bool {
    let animal = Animal::Lamb(lamb.id);
    match which {
        Which::Here => {
            latest.contains(&lamb.id) && (lamb.lives() || (lamb.kept.is_none() && lamb.left.is_none()))
        }
        Which::ToLamb => false,
        Which::Bottle => lamb.on_bottle(),
        Which::Penned => lamb.lives() && flock.pen_of(animal).is_some(),
        Which::Withdrawal => lamb.lives() && withdrawal(flock, animal, Product::Meat, now).is_some(),
        Which::Untagged => lamb.lives() && lamb.tag.is_none(),
        Which::Unweighed => {
            let weighed = lamb.weights.iter().any(|weight| weight.at.since(lamb.born) >= WEIGH_FROM);
            lamb.lives() && lamb.age(now) >= WEIGH_FROM && latest.contains(&lamb.id) && !weighed
        }
        Which::Earlier => lamb.lives() && !latest.contains(&lamb.id),
        Which::Gone => !lamb.lives() && lamb.kept.is_none(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_animal_is_found_once_by_any_of_its_words() {
        let mut index = Index::default();
        for (id, words) in [(1, vec!["Ewe 14", "14", "Pen 4"]), (2, vec!["Ewe 5"]), (3, vec!["41 blue"])] {
            index.add(id, words.into_iter().map(str::to_owned));
        }
        for (part, expected) in [
            ("4", vec![1, 3]),
            ("ewe", vec![1, 2]),
            ("blue", vec![3]),
            ("5", vec![2]),
            ("45", vec![]),
            ("", vec![1, 2, 3]),
        ] {
            assert_eq!(index.find(part), expected, "{part}");
        }
    }

    #[test]
    fn words_of_two_animals_make_no_match_together() {
        let mut index = Index::default();
        index.add(1, ["a1".to_owned()].into_iter());
        index.add(2, ["2b".to_owned()].into_iter());
        assert_eq!(index.find("12"), Vec::<i32>::new());
    }
}
