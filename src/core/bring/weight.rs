//! A row of weights of an animal that is here: one, or several beside each other.

use super::row::{Row, Taken, mass};
use super::{RowTrouble, Table};
use crate::book::{Animal, EntryId, Event};
use crate::spreadsheet::Meaning;
use crate::units::{Moment, TimeDelta};

impl Table<'_> {
    pub(super) fn weights(&mut self, row: &Row) -> Result<(), RowTrouble> {
        let weaned = self.when(row, Meaning::WeanedOn)?;
        let mut told = false;
        for meaning in [Meaning::BirthWeight, Meaning::Weight, Meaning::WeaningWeight] {
            for (column, text, taken) in row.weights(meaning, 0) {
                let (mass, open) = mass(column, text, self.setup)?;
                self.brought.unit_open |= open;
                let on = match (meaning, taken) {
                    (Meaning::WeaningWeight, _) => Some(weaned.ok_or(RowTrouble::NoDay(Meaning::WeanedOn))?),
                    (_, Taken::On(day)) => Some(self.instant(Meaning::WeighedOn, day)?),
                    (_, Taken::AtAge(_) | Taken::Unsaid) => None,
                };
                let animal = self.whose(row, on)?;
                let born = self.birth_of(animal);
                let at = match (meaning, on, column.age, born) {
                    (Meaning::BirthWeight, _, _, Some(born)) => born,
                    (_, Some(at), ..) => at,
                    (_, None, Some(age), Some(born)) => born + TimeDelta::days(age.into()),
                    (_, None, ..) => return Err(RowTrouble::NoDay(Meaning::WeighedOn)),
                };
                // A day is noted at noon: of the day of its birth it is the birth.
                let at =
                    born.filter(|born| at < *born && at.local().date() == born.local().date()).unwrap_or(at);
                told = true;
                match animal {
                    Animal::Ewe(ewe) => self.note(Event::EweWeighed { ewe, mass }, at),
                    Animal::Lamb(lamb) => self.note(Event::Weighed { lamb, mass }, at),
                };
            }
        }
        if let Some(weaned) = weaned
            && let Animal::Lamb(lamb) = self.whose(row, Some(weaned))?
        {
            told = true;
            self.note(Event::Weaned { lamb }, weaned);
        }
        if told { Ok(()) } else { Err(RowTrouble::Nothing) }
    }

    /// Of whom a row is: by its id, else by its tag or name, whoever of that name was here at that time.
    fn whose(&self, row: &Row, at: Option<Moment>) -> Result<Animal, RowTrouble> {
        let flock = self.known.flock;
        let own: Option<EntryId> = row.text(Meaning::Id).and_then(|id| id.parse().ok());
        if let Some(id) = own {
            if flock.lamb(id.as_lamb()).is_some() {
                return Ok(Animal::Lamb(id.as_lamb()));
            }
            if flock.grown(id.as_ewe()).is_some() {
                return Ok(Animal::Ewe(id.as_ewe()));
            }
        }
        let name = row.text(Meaning::Tag).ok_or(RowTrouble::NoTag)?;
        let mut found: Vec<Animal> = self.known_as(name).to_vec();
        if found.is_empty() {
            return Err(RowTrouble::Unknown(name.to_owned()));
        }
        let was_here = |animal: &Animal| {
            let (born, gone) = match animal {
                Animal::Ewe(id) => (None, flock.grown(*id).and_then(|grown| grown.gone())),
                Animal::Lamb(id) => {
                    let Some(lamb) = flock.lamb(*id) else { return false };
                    let left =
                        lamb.left.as_ref().map(|left| left.at).or(lamb.kept.map(|_| lamb.born + YOUNG));
                    (Some(lamb.born), lamb.died.map(|death| death.at).into_iter().chain(left).min())
                }
            };
            let day = |moment: Moment| moment.local().date();
            at.is_none_or(|at| {
                born.is_none_or(|born| day(born) <= day(at)) && gone.is_none_or(|gone| day(at) <= day(gone))
            })
        };
        found.retain(was_here);
        // Of lambs of one number the youngest by then; a lamb before a grown animal that wears the same.
        found.sort_by_key(|animal| std::cmp::Reverse(self.birth_of(*animal)));
        match found[..] {
            [] => Err(RowTrouble::Unknown(name.to_owned())),
            [one] => Ok(one),
            [first, second, ..] if self.birth_of(first) != self.birth_of(second) => Ok(first),
            [..] => Err(RowTrouble::Many(name.to_owned())),
        }
    }

    fn birth_of(&self, animal: Animal) -> Option<Moment> {
        match animal {
            Animal::Lamb(id) => self.known.flock.lamb(id).map(|lamb| lamb.born),
            Animal::Ewe(_) => None,
        }
    }
}

/// Who was kept is weighed as a lamb until this age (ours), and as a ewe after it.
const YOUNG: TimeDelta = TimeDelta::days(270);
