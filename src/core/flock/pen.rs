//! A bonding pen as the book has it.
//!
//! A lamb of a ewe in a pen is in that pen unless it was taken out itself; only the ewe is noted.

use super::Flock;
use crate::book::{Animal, Event, PenId, PenSize, Standing};
use crate::units::Moment;

/// A pen.
#[derive(Clone, Debug, PartialEq)]
pub struct Pen {
    /// Its id.
    pub id: PenId,
    /// When it was set up.
    pub made: Moment,
    /// What it is called.
    pub name: String,
    /// How large it is, if said.
    pub size: Option<PenSize>,
    /// When it was last cleaned and bedded.
    pub cleaned: Option<Moment>,
    /// When the last animal left it.
    pub left: Option<Moment>,
    /// When it was taken down.
    pub closed: Option<Moment>,
    /// Who was put in, oldest first; the lambs of a ewe go with her and are not named.
    pub inside: Vec<Stay>,
}

/// An animal's stay in a pen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stay {
    /// Who.
    pub animal: Animal,
    /// Since when.
    pub since: Moment,
}

impl Pen {
    pub(super) const fn new(id: PenId, made: Moment, name: String, size: Option<PenSize>) -> Self {
        Self { id, made, name, size, cleaned: None, left: None, closed: None, inside: Vec::new() }
    }

    /// Says whether it was used since it was last cleaned and bedded.
    #[must_use]
    pub fn soiled(&self) -> bool {
        let used = self.inside.first().map(|stay| stay.since).max(self.left);
        used.is_some_and(|used| self.cleaned.is_none_or(|cleaned| used > cleaned))
    }
}

/// Tells what happened to a pen, or who went in or out. What concerns a pen that is not here waits.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>) {
    let at = line.at;
    if let Event::PutInPen { animal, pen } = line.event {
        let animal = flock.canonical(*animal);
        if flock.pens.contains_key(pen) {
            leave(flock, animal, line);
            flock.place.insert(animal, (*pen, at));
            if let Some(pen) = flock.pens.get_mut(pen) {
                pen.inside.push(Stay { animal, since: at });
            }
        }
    } else if let Event::LetOut { animal } = line.event {
        let animal = flock.canonical(*animal);
        flock.let_out.insert(animal, at);
        leave(flock, animal, line);
    } else if let Some(pen) = line.event.pen().and_then(|pen| flock.pens.get_mut(&pen)) {
        if let Event::PenNamed { name, .. } = line.event {
            pen.name.clone_from(name);
        } else if let Event::PenCleaned { .. } = line.event {
            pen.cleaned = Some(at);
        } else if let Event::PenClosed { .. } = line.event {
            pen.closed = Some(at);
        }
    }
}

pub(super) fn leave(flock: &mut Flock, animal: Animal, line: &Standing<'_>) {
    if let Some((pen, _)) = flock.place.remove(&animal)
        && let Some(pen) = flock.pens.get_mut(&pen)
    {
        pen.inside.retain(|stay| stay.animal != animal);
        pen.left = Some(line.at);
    }
}
