//! A row of a lamb: its birth, its parents, its weights, its weaning, and what became of it.
//!
//! A ewe lamb whose tag a ewe wears was kept: she is that ewe. A tag that another animal wears, as where numbers begin anew
//! each year, is kept as a name.

use super::row::{Row, Taken, mass, whole};
use super::{RowTrouble, Table, small};
use crate::book::{Animal, EntryId, Event, EweId, LambId, LambingEase, Life, Past, Sex};
use crate::flock::Lamb;
use crate::spreadsheet::{Code, CodeOf, Meaning};
use crate::units::{Moment, TimeDelta};
use crate::watch::KEPT_FROM;

/// Births so far apart are of two animals, whatever they wear (ours).
const ANOTHER: TimeDelta = TimeDelta::days(60);

/// What becomes of the tag of a lamb.
enum Wears {
    /// It wears it.
    Tag,
    /// Another wears it: it is a name.
    Name,
    /// This ewe is she.
    Is(EweId),
}

impl Table<'_> {
    pub(super) fn lamb(&mut self, row: &Row) -> Result<(), RowTrouble> {
        let own: Option<EntryId> = row.text(Meaning::Id).and_then(|id| id.parse().ok());
        if own.is_some_and(|id| self.lamb_known(id.as_lamb())) {
            self.brought.known += 1;
            return Ok(());
        }
        let tag = row.text(Meaning::Tag);
        let dam_named = row.text(Meaning::Dam);
        if tag.is_none() && dam_named.is_none() && own.is_none() {
            return Err(RowTrouble::NoTag);
        }
        let born = self.when(row, Meaning::Born)?.ok_or(RowTrouble::NoDay(Meaning::Born))?;
        let sex = match self.code(row, Meaning::Sex, CodeOf::Sex)? {
            None => row.text(Meaning::Kind).and_then(|text| CodeOf::Sex.known(text)),
            told => told,
        };
        let alive = self.code(row, Meaning::BornAlive, CodeOf::Alive)? != Some(Code::Dead)
            && !row.text(Meaning::Status).is_some_and(is_born_dead);
        let wears = tag.map(|tag| self.wears(tag, sex, born)).transpose()?;
        let dam = dam_named.map(|name| self.parent(name, false)).transpose()?;
        let id = own.unwrap_or_else(|| (self.new_id)());
        let (lamb, animal) = (id.as_lamb(), Animal::Lamb(id.as_lamb()));
        self.note_as(id, Event::LambBorn { dam, beside: None, sex: sex_of(sex), alive }, born);
        match (&wears, tag) {
            (Some(Wears::Tag), Some(tag)) => {
                self.note(Event::Tagged { animal, tag: tag.to_owned() }, born);
            }
            (Some(Wears::Name), Some(tag)) => {
                self.note(Event::Past(Past::Called { animal, name: tag.to_owned() }), born);
                self.brought.as_names.push(tag.to_owned());
            }
            (Some(Wears::Is(_)) | None, _) | (_, None) => {}
        }
        if let Some(name) = row.text(Meaning::Name).filter(|_| own.is_none()) {
            self.note(Event::Past(Past::Called { animal, name: name.to_owned() }), born);
        }
        if sex == Some(Code::Wether) {
            self.note(Event::Past(Past::IsWether { lamb }), born);
        }
        self.sired(row, animal, born)?;
        self.born_as(row, animal, born)?;
        match self.code(row, Meaning::RearedAs, CodeOf::Litter)? {
            Some(Code::Of(of)) => _ = self.note(Event::Past(Past::RearedAs { lamb, of: Some(of) }), born),
            Some(Code::ByHand) => _ = self.note(Event::Past(Past::RearedAs { lamb, of: None }), born),
            Some(_) | None => {}
        }
        if let Some(text) = row.text(Meaning::Ease) {
            let ease = ease_of(text).ok_or_else(|| wrong(Meaning::Ease, text))?;
            self.note(Event::BirthEase { lamb, ease }, born);
        }
        let last = self.weighed(row, lamb, born)?;
        match wears {
            Some(Wears::Is(ewe)) => self.kept(row, lamb, ewe, born)?,
            Some(Wears::Tag | Wears::Name) | None if alive => self.fate(row, animal, last)?,
            Some(Wears::Tag | Wears::Name) | None => {}
        }
        self.remarks(row, animal);
        if let Some(tag) = tag {
            self.comes(tag, animal, false, Some(born));
        }
        Ok(())
    }

    /// Notes its weights and its weaning, and returns the last day that they tell of.
    fn weighed(&mut self, row: &Row, lamb: LambId, born: Moment) -> Result<Moment, RowTrouble> {
        let weaned = self.when(row, Meaning::WeanedOn)?;
        let mut last = weaned.unwrap_or(born);
        for meaning in [Meaning::BirthWeight, Meaning::WeaningWeight, Meaning::Weight] {
            for (column, text, taken) in row.weights(meaning, 0) {
                let (mass, open) = mass(column, text, self.setup)?;
                self.brought.unit_open |= open;
                let at = match (meaning, column.age, taken) {
                    (Meaning::BirthWeight, ..) => born,
                    (Meaning::WeaningWeight, Some(age), _) | (_, _, Taken::AtAge(age)) => {
                        born + TimeDelta::days(age.into())
                    }
                    (Meaning::WeaningWeight, None, _) => {
                        weaned.ok_or(RowTrouble::NoDay(Meaning::WeanedOn))?
                    }
                    (_, _, Taken::On(day)) => self.instant(Meaning::WeighedOn, day)?,
                    (_, _, Taken::Unsaid) => return Err(RowTrouble::NoDay(Meaning::WeighedOn)),
                };
                if at > self.known.now {
                    return Err(RowTrouble::Ahead(text.to_owned()));
                }
                self.note(Event::Weighed { lamb, mass }, at);
                last = last.max(at);
            }
        }
        if let Some(weaned) = weaned {
            self.note(Event::Weaned { lamb }, weaned);
        }
        Ok(last)
    }

    /// Who wears the tag of a lamb.
    fn wears(&self, tag: &str, sex: Option<Code>, born: Moment) -> Result<Wears, RowTrouble> {
        let flock = self.known.flock;
        let ewe_lamb = !matches!(sex, Some(Code::Ram | Code::Wether));
        let far = |other: Moment| other.since(born).abs() > ANOTHER;
        let mut worn = false;
        for comer in self.came(tag) {
            match (comer.animal, comer.born) {
                (Animal::Lamb(_), Some(other)) if !far(other) => {
                    return Err(RowTrouble::Again(tag.to_owned()));
                }
                (Animal::Ewe(ewe), _) if ewe_lamb && !comer.is_ram && self.may_be(born) => {
                    return Ok(Wears::Is(ewe));
                }
                (Animal::Lamb(_) | Animal::Ewe(_), _) => worn = true,
            }
        }
        if let Some((_, id, is_ram)) = self.announced.get(&small(tag)) {
            if ewe_lamb && !is_ram && self.may_be(born) {
                return Ok(Wears::Is(id.as_ewe()));
            }
            worn = true;
        }
        for animal in self.known_as(tag) {
            match animal {
                Animal::Lamb(id) => {
                    let Some(lamb) = flock.lamb(*id) else { continue };
                    if !far(lamb.born) && is_of(lamb, tag) {
                        return Err(RowTrouble::Here(tag.to_owned()));
                    }
                    worn |= lamb.lives() && is_of(lamb, tag);
                }
                Animal::Ewe(id) => {
                    let Some(grown) = flock.grown(*id) else { continue };
                    let same_year =
                        flock.ewe_born(grown.id).is_none_or(|told| told.year() == born_year(born));
                    if ewe_lamb && !grown.is_ram && grown.was.is_none() && same_year && self.may_be(born) {
                        return Ok(Wears::Is(grown.id));
                    }
                    worn |= grown.lives();
                }
            }
        }
        Ok(if worn { Wears::Name } else { Wears::Tag })
    }

    /// Says whether a lamb born then can be a ewe by now.
    fn may_be(&self, born: Moment) -> bool {
        self.known.now.since(born) >= KEPT_FROM
    }

    /// The lamb became this ewe.
    fn kept(&mut self, row: &Row, lamb: LambId, ewe: EweId, born: Moment) -> Result<(), RowTrouble> {
        let came = self.note(Event::Life(Life::KeptAsEwe { lamb }), born + KEPT_FROM).as_ewe();
        let (keep, also) = (Animal::Ewe(ewe), Animal::Ewe(came));
        self.note(Event::SameAnimal { keep, also }, self.known.now);
        if self.known.flock.ewe(ewe).is_some_and(|ewe| ewe.lives()) {
            self.fate(row, keep, self.known.now)?;
        }
        Ok(())
    }
}

fn born_year(born: Moment) -> i32 {
    use chrono::Datelike;
    born.local().year()
}

/// Says whether it wears the tag itself, and is not only called so after its dam.
fn is_of(lamb: &Lamb, tag: &str) -> bool {
    lamb.tag.as_ref().is_some_and(|own| small(own) == small(tag))
}

pub(super) fn is_born_dead(text: &str) -> bool {
    ["stillborn", "still born", "sb", "born dead"].contains(&small(text).as_str())
}

pub(super) const fn sex_of(code: Option<Code>) -> Option<Sex> {
    match code {
        Some(Code::Ewe) => Some(Sex::Ewe),
        Some(Code::Ram | Code::Wether) => Some(Sex::Ram),
        _ => None,
    }
}

fn wrong(of: Meaning, text: &str) -> RowTrouble {
    RowTrouble::Number { of, text: text.to_owned() }
}

pub(super) fn ease_of(text: &str) -> Option<LambingEase> {
    match whole(Meaning::Ease, text).ok()? {
        1 => Some(LambingEase::Alone),
        2 => Some(LambingEase::SlightByHand),
        3 => Some(LambingEase::HardByHand),
        4 => Some(LambingEase::Vet),
        5 => Some(LambingEase::Surgery),
        6 => Some(LambingEase::PlannedSurgery),
        _ => None,
    }
}
