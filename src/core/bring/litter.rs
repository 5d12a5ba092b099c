//! A row of a litter: its dam, its day, and as many lambs as it tells of, one by one or by their number alone.

use super::lamb::{ease_of, sex_of};
use super::row::{Row, mass, whole};
use super::{RowTrouble, Table};
use crate::book::{Animal, Event, Past};
use crate::spreadsheet::{Code, CodeOf, Meaning};

/// So many lambs of a litter have columns of their own.
const MOST: u8 = 6;

impl Table<'_> {
    pub(super) fn litter(&mut self, row: &Row) -> Result<(), RowTrouble> {
        let name = row.text(Meaning::Dam).ok_or(RowTrouble::NoTag)?;
        let born = self.when(row, Meaning::Born)?.ok_or(RowTrouble::NoDay(Meaning::Born))?;
        let told = [Meaning::Tag, Meaning::Sex, Meaning::BirthWeight, Meaning::BornAlive];
        let one_by_one =
            (1..=MOST).rev().find(|slot| told.iter().any(|of| row.of_slot(*of, *slot).is_some()));
        let count = |of: Meaning| row.text(of).map(|text| whole(of, text)).transpose();
        let dead = count(Meaning::DeadCount)?.unwrap_or(0);
        let (said, one_by_one) = (count(Meaning::Count)?, one_by_one.unwrap_or(0));
        let lambs = said.unwrap_or(dead).max(one_by_one).max(dead);
        if lambs == 0 {
            return Err(RowTrouble::Nothing);
        }
        if lambs > MOST {
            let text = row.text(Meaning::Count).unwrap_or_default().to_owned();
            return Err(RowTrouble::Number { of: Meaning::Count, text });
        }
        let dam = self.parent(name, false)?;
        let ease = match row.text(Meaning::Ease) {
            Some(text) => {
                let wrong = || RowTrouble::Number { of: Meaning::Ease, text: text.to_owned() };
                Some(ease_of(text).ok_or_else(wrong)?)
            }
            None => None,
        };
        let mut left_dead = dead;
        for slot in 1..=lambs {
            let (sex, alive, weight) = self.one(row, slot)?;
            // Those of whom nothing is told are the dead, as far as their number goes.
            let open = row.of_slot(Meaning::BornAlive, slot).is_none();
            let is_dead = alive == Some(Code::Dead) || (open && left_dead > lambs - slot);
            if is_dead {
                left_dead = left_dead.saturating_sub(1);
            }
            let lamb = self
                .note(
                    Event::LambBorn { dam: Some(dam), beside: None, sex: sex_of(sex), alive: !is_dead },
                    born,
                )
                .as_lamb();
            let animal = Animal::Lamb(lamb);
            if let Some(tag) = row.of_slot(Meaning::Tag, slot) {
                let worn = self.known_as(tag).iter().any(|other| self.lives(*other))
                    || self.came(tag).next().is_some();
                if worn {
                    self.brought.as_names.push(tag.to_owned());
                    self.note(Event::Past(Past::Called { animal, name: tag.to_owned() }), born);
                } else {
                    self.note(Event::Tagged { animal, tag: tag.to_owned() }, born);
                }
                self.comes(tag, animal, false, Some(born));
            }
            if sex == Some(Code::Wether) {
                self.note(Event::Past(Past::IsWether { lamb }), born);
            }
            self.sired(row, animal, born)?;
            if let Some(ease) = ease.filter(|_| slot == 1) {
                self.note(Event::BirthEase { lamb, ease }, born);
            }
            if let Some(mass) = weight {
                self.note(Event::Weighed { lamb, mass }, born);
            }
        }
        self.remarks(row, Animal::Ewe(dam));
        Ok(())
    }

    /// What is told of one lamb: its sex, whether it was born alive, and its weight.
    #[expect(clippy::type_complexity, reason = "three things of one lamb, read together")]
    fn one(
        &mut self,
        row: &Row,
        slot: u8,
    ) -> Result<(Option<Code>, Option<Code>, Option<crate::units::Mass>), RowTrouble> {
        let sex =
            row.of_slot(Meaning::Sex, slot).map(|text| self.coded(CodeOf::Sex, text)).transpose()?.flatten();
        let alive = row
            .of_slot(Meaning::BornAlive, slot)
            .map(|text| self.coded(CodeOf::Alive, text))
            .transpose()?
            .flatten();
        let mut weight = None;
        for (column, text, _) in row.weights(Meaning::BirthWeight, slot) {
            let (mass, open) = mass(column, text, self.setup)?;
            self.brought.unit_open |= open;
            weight = Some(mass);
        }
        Ok((sex, alive, weight))
    }

    fn lives(&self, animal: Animal) -> bool {
        match animal {
            Animal::Ewe(id) => self.known.flock.grown(id).is_some_and(|grown| grown.lives()),
            Animal::Lamb(id) => self.known.flock.lamb(id).is_some_and(|lamb| lamb.lives()),
        }
    }
}
