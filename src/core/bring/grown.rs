//! A row of a grown animal, ewe or ram: who she is, her parents, what she weighed, and what became of her.

use chrono::NaiveDate;

use super::row::{Row, Taken, mass};
use super::{NOON, RowTrouble, Table, described, small};
use crate::book::{Animal, BirthDay, Cause, Departure, EntryId, Event, Life, Past};
use crate::spreadsheet::{Code, CodeOf, Dated, Meaning, TableKind};
use crate::units::Moment;

/// What kind of animal a row is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Is {
    Ewe,
    Ram,
    Lamb,
}

impl Table<'_> {
    /// What a row is of: as its own column tells, its sex, or the table.
    fn is(&mut self, row: &Row) -> Result<Is, RowTrouble> {
        match self.code(row, Meaning::Kind, CodeOf::Kind)? {
            Some(Code::Ewe) => return Ok(Is::Ewe),
            Some(Code::Ram) => return Ok(Is::Ram),
            Some(_) => return Ok(Is::Lamb),
            None => {}
        }
        match self.setup.kind {
            TableKind::Lambs => Ok(Is::Lamb),
            TableKind::Rams => Ok(Is::Ram),
            TableKind::Ewes | TableKind::Litters | TableKind::Weights => {
                match self.code(row, Meaning::Sex, CodeOf::Sex)? {
                    Some(Code::Ram) => Ok(Is::Ram),
                    // No grown wether is kept in the book.
                    Some(Code::Wether) => Err(RowTrouble::Code(
                        CodeOf::Sex,
                        row.text(Meaning::Sex).unwrap_or_default().to_owned(),
                    )),
                    Some(_) | None => Ok(Is::Ewe),
                }
            }
        }
    }

    /// Keeps which grown animals have a row of their own, so that others may name them before it comes.
    pub(super) fn announce(&mut self, line: usize, row: &Row) {
        if !matches!(self.setup.kind, TableKind::Ewes | TableKind::Rams | TableKind::Lambs) {
            return;
        }
        let is = self.is(row);
        self.brought.codes.clear();
        let (Ok(is @ (Is::Ewe | Is::Ram)), Some(tag)) = (is, row.text(Meaning::Tag)) else { return };
        let id = row.text(Meaning::Id).and_then(|id| id.parse().ok());
        if !self.announced.contains_key(&small(tag)) {
            let id = id.unwrap_or_else(|| (self.new_id)());
            self.announced.insert(small(tag), (line, id, is == Is::Ram));
        }
    }

    /// A row of one animal.
    pub(super) fn animal(&mut self, row: &Row) -> Result<(), RowTrouble> {
        match self.is(row)? {
            Is::Ewe => self.grown(row, false),
            Is::Ram => self.grown(row, true),
            Is::Lamb => self.lamb(row),
        }
    }

    fn grown(&mut self, row: &Row, is_ram: bool) -> Result<(), RowTrouble> {
        let own: Option<EntryId> = row.text(Meaning::Id).and_then(|id| id.parse().ok());
        if own.is_some_and(|id| self.known.flock.grown(id.as_ewe()).is_some()) {
            self.brought.known += 1;
            return Ok(());
        }
        let tag = row.text(Meaning::Tag);
        if tag.is_none() && own.is_none() {
            return Err(RowTrouble::NoTag);
        }
        let gone = self.when(row, Meaning::DiedOn)?.or(self.when(row, Meaning::LeftOn)?);
        if let Some(tag) = tag {
            self.is_free(tag, gone.is_some())?;
        }
        let came = match self.when(row, Meaning::Came)? {
            Some(came) => came,
            None => gone.unwrap_or(self.known.now),
        };
        let announced = tag.and_then(|tag| self.announced.get(&small(tag)).copied());
        let id = match (own, announced) {
            (Some(id), _) => id,
            (None, Some((line, id, _))) if line == self.line => id,
            (None, _) => (self.new_id)(),
        };
        let (ewe, animal) = (id.as_ewe(), Animal::Ewe(id.as_ewe()));
        self.note_as(id, Event::EweCame { tag: tag.map(str::to_owned) }, came);
        if is_ram {
            self.note(Event::Past(Past::IsRam { animal: ewe }), came);
        }
        let born = row.text(Meaning::Born).map(|text| self.dated(Meaning::Born, text)).transpose()?;
        let (birth, at) = self.birth(born, came)?;
        let breed = row.text(Meaning::Breed).map(str::to_owned);
        if birth.is_some() || breed.is_some() {
            self.note(described(ewe, birth, breed), at);
        }
        if let Some(name) = row.text(Meaning::Dam) {
            let dam = self.parent(name, false)?;
            self.note(Event::Past(Past::DamOf { animal: ewe, dam }), came);
        }
        self.sired(row, animal, came)?;
        self.born_as(row, animal, came)?;
        if let Some(name) = row.text(Meaning::Name).filter(|_| own.is_none()) {
            self.note(Event::Past(Past::Called { animal, name: name.to_owned() }), came);
        }
        for (column, text, taken) in row.weights(Meaning::Weight, 0) {
            let (mass, open) = mass(column, text, self.setup)?;
            self.brought.unit_open |= open;
            let at = match taken {
                Taken::On(day) => self.instant(Meaning::WeighedOn, day)?,
                Taken::AtAge(_) | Taken::Unsaid => return Err(RowTrouble::NoDay(Meaning::WeighedOn)),
            };
            self.note(Event::EweWeighed { ewe, mass }, at);
        }
        self.fate(row, animal, gone.unwrap_or(self.known.now))?;
        self.remarks(row, animal);
        if let Some(tag) = tag {
            self.comes(tag, animal, is_ram, None);
        }
        Ok(())
    }

    /// No living animal here wears this tag, and none that came with the table.
    fn is_free(&self, tag: &str, gone: bool) -> Result<(), RowTrouble> {
        let flock = self.known.flock;
        let wears = |other: &Option<String>| other.as_ref().is_some_and(|other| small(other) == small(tag));
        let worn = self.known_as(tag).iter().any(|animal| match animal {
            Animal::Ewe(id) => flock.grown(*id).is_some_and(|grown| grown.lives() && wears(&grown.tag)),
            Animal::Lamb(id) => flock.lamb(*id).is_some_and(|lamb| lamb.lives() && wears(&lamb.tag)),
        });
        if worn && !gone {
            return Err(RowTrouble::Here(tag.to_owned()));
        }
        let again = self.came(tag).any(|comer| matches!(comer.animal, Animal::Ewe(_)));
        if again && !gone { Err(RowTrouble::Again(tag.to_owned())) } else { Ok(()) }
    }

    /// When a grown animal was born, and when that is noted: then, so that its age is judged by that time.
    fn birth(&self, born: Option<Dated>, came: Moment) -> Result<(Option<BirthDay>, Moment), RowTrouble> {
        match born {
            None => Ok((None, came)),
            Some(Dated::Year(year)) => {
                let day = NaiveDate::from_ymd_opt(year.into(), 1, 1).unwrap_or_default();
                let at = self.on_day(day.and_time(NOON), &year.to_string())?;
                Ok((Some(BirthDay::Year(year)), at))
            }
            Some(Dated::Day(day)) => {
                let at = self.on_day(day.and_time(NOON), &day.to_string())?;
                Ok((Some(BirthDay::Day(day)), at))
            }
            Some(Dated::At(at)) => {
                let noted = self.on_day(at, &at.to_string())?;
                Ok((Some(BirthDay::Day(at.date())), noted))
            }
        }
    }

    /// What became of an animal; `last` is the last day that its row tells of, at which a fate without a day is noted.
    pub(super) fn fate(&mut self, row: &Row, animal: Animal, last: Moment) -> Result<(), RowTrouble> {
        let (died, left) = (self.when(row, Meaning::DiedOn)?, self.when(row, Meaning::LeftOn)?);
        let status = self.code(row, Meaning::Status, CodeOf::Status)?;
        let how = match status {
            Some(Code::Gone(how)) => Some(how),
            _ => None,
        };
        if let Some(how) = how.or(left.map(|_| Departure::Sold)) {
            let to = row.text(Meaning::LeftTo).map(str::to_owned);
            self.note(Event::Life(Life::Went { animal, how, to }), left.unwrap_or(last));
            self.day_open(animal, left);
        }
        let cause = row.text(Meaning::Cause);
        if died.is_some() || status == Some(Code::Dead) {
            let at = died.unwrap_or(last);
            let of = cause.and_then(cause_of);
            self.note(Event::Died { animal, cause: of.unwrap_or(Cause::Unknown) }, at);
            if let Some(finding) = cause.filter(|_| of.is_none()) {
                self.note(Event::Life(Life::Examined { animal, finding: finding.to_owned() }), at);
            }
            self.day_open(animal, died);
        }
        Ok(())
    }

    /// Remarks that nobody knows the day.
    fn day_open(&mut self, animal: Animal, day: Option<Moment>) {
        if day.is_none() {
            let text = self.known.day_not_known.to_owned();
            self.note(Event::Remarked { animal, text }, self.known.now);
        }
    }

    pub(super) fn remarks(&mut self, row: &Row, animal: Animal) {
        for (_, text) in row.all(Meaning::Remark) {
            if let Some(text) = text {
                self.note(Event::Remarked { animal, text: text.to_owned() }, self.known.now);
            }
        }
    }
}

/// Causes of death as they are commonly written, and as the app writes them.
fn cause_of(text: &str) -> Option<Cause> {
    let small = text.trim().to_lowercase();
    let of: [(Cause, &[&str]); 8] = [
        (Cause::Starved, &["starved/mismothered", "starved", "starvation", "mismothered"]),
        (Cause::Cold, &["cold", "hypothermia", "exposure", "chilled"]),
        (Cause::HardBirth, &["hard birth", "dystocia", "difficult birth"]),
        (Cause::Infection, &["infection", "sepsis", "pneumonia", "scours"]),
        (Cause::Accident, &["accident or overlain", "accident", "overlain", "laid on", "crushed"]),
        (Cause::Predator, &["predator", "coyote", "dog", "fox", "eagle"]),
        (Cause::Deformity, &["birth defect", "deformity", "defect"]),
        (Cause::Unknown, &["not known", "unknown", "?"]),
    ];
    of.iter().find(|(_, words)| words.contains(&small.as_str())).map(|(cause, _)| *cause)
}
