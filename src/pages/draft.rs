//! What is on a screen but not in the book: what is typed and chosen, what is wrong with it, which sheets lie open.

use std::collections::BTreeMap;
use std::sync::Arc;

use yeanling_core::book::{EntryId, Event};
use yeanling_core::units::Moment;
use yeanling_core::watch::Rejection;

use crate::view::View;
use crate::watch::Stood;
use crate::{Block, Effect, Key, Sheet};

/// What was typed and chosen, each under its key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fields {
    typed: BTreeMap<Key, String>,
    chosen: BTreeMap<Key, usize>,
    wrong: BTreeMap<Key, String>,
}

/// What is on a screen but not in the book.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Draft {
    /// What was typed and chosen on the page.
    pub fields: Fields,
    /// The sheets that lie open, the uppermost last, each with its own fields.
    pub sheets: Vec<Open>,
    /// What was refused last and not read yet.
    pub refused: Option<Rejection>,
    /// What was said of something handed to the phone, until the screen is left.
    said: BTreeMap<Key, String>,
    /// What a screen keeps as it stood.
    pub(crate) kept: Kept,
    /// What is under way on Share & back up alone.
    pub(crate) share: crate::share::UnderWay,
    /// How many sheets were opened.
    opened: usize,
}

/// What a screen keeps as it stood.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Kept {
    /// The list that is out of sight while something is looked for.
    pub(crate) list: Option<Arc<Block>>,
    /// What stood on the Watch when the hand that is at work there pressed last.
    pub(crate) watch: Option<Arc<Stood>>,
}

/// A sheet that lies open.
#[derive(Clone, Debug, PartialEq)]
pub struct Open {
    /// Which.
    pub sheet: Sheet,
    /// The how manieth it is.
    pub number: usize,
    /// What was typed and chosen on it.
    pub fields: Fields,
}

/// Something to be noted: by which entry, what, and when it happened.
#[derive(Clone, Debug, PartialEq)]
pub struct Noting {
    /// The entry it will be.
    pub id: EntryId,
    /// The fact.
    pub event: Event,
    /// When it happened.
    pub at: Moment,
}

impl Fields {
    /// Returns what was typed, if anything was since it was last answered.
    #[must_use]
    pub fn typed(&self, key: &str) -> Option<&str> {
        self.typed.get(key).map(String::as_str)
    }

    /// Returns what was typed, or what stood there.
    #[must_use]
    pub fn text(&self, key: &str, stood: &str) -> String {
        self.typed(key).unwrap_or(stood).to_owned()
    }

    /// Returns what was written: without room around it, and nothing if nothing was.
    #[must_use]
    pub fn written(&self, key: &str) -> Option<String> {
        self.typed(key).map(|text| text.trim().to_owned()).filter(|text| !text.is_empty())
    }

    /// Returns the place of what was chosen.
    #[must_use]
    pub fn chosen(&self, key: &str) -> Option<usize> {
        self.chosen.get(key).copied()
    }

    /// Returns what was chosen of a list, or what stood there.
    #[must_use]
    pub fn pick<T: Copy>(&self, key: &str, of: &[T], stood: T) -> T {
        self.chosen(key).and_then(|place| of.get(place).copied()).unwrap_or(stood)
    }

    /// Returns what is wrong with what was typed; empty when nothing is.
    #[must_use]
    pub fn error(&self, key: &str) -> &str {
        self.wrong.get(key).map_or("", String::as_str)
    }

    /// Types.
    pub fn set(&mut self, key: impl Into<Key>, text: impl Into<String>) {
        self.typed.insert(key.into(), text.into());
    }

    /// Chooses.
    pub fn choose(&mut self, key: impl Into<Key>, place: usize) {
        self.chosen.insert(key.into(), place);
    }

    /// Says what is wrong with what was typed.
    pub fn wrong(&mut self, key: impl Into<Key>, said: impl Into<String>) {
        self.wrong.insert(key.into(), said.into());
    }

    /// Takes back what was said to be wrong.
    pub fn right(&mut self, key: &str) {
        self.wrong.remove(key);
    }

    /// Takes back all that was said to be wrong.
    pub fn all_right(&mut self) {
        self.wrong.clear();
    }

    /// Forgets what was typed, chosen and said under a key: it was answered.
    pub fn forget(&mut self, key: &str) {
        self.typed.remove(key);
        self.chosen.remove(key);
        self.wrong.remove(key);
    }

    /// Says whether nothing was typed.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.typed.values().all(String::is_empty)
    }

    /// Returns the keys under which something was typed.
    pub fn keys(&self) -> impl Iterator<Item = &Key> {
        self.typed.keys()
    }
}

impl Draft {
    /// Returns the fields of what lies uppermost: of a sheet, or of the page.
    #[must_use]
    pub fn top(&self) -> &Fields {
        self.sheets.last().map_or(&self.fields, |open| &open.fields)
    }

    /// Returns the fields of what lies uppermost, to be changed.
    pub fn top_mut(&mut self) -> &mut Fields {
        self.sheets.last_mut().map_or(&mut self.fields, |open| &mut open.fields)
    }

    /// Opens a sheet.
    pub fn ask(&mut self, sheet: Sheet) {
        // What was refused before it was opened is not about it.
        self.refused = None;
        self.opened += 1;
        self.sheets.push(Open { sheet, number: self.opened, fields: Fields::default() });
    }

    /// Closes the uppermost sheet.
    pub fn close(&mut self) {
        self.sheets.pop();
        self.refused = None;
    }

    /// Notes facts, all of them or none; a refusal is shown where the finger is.
    pub fn note(&mut self, view: &View, notings: Vec<Noting>) -> Vec<Effect> {
        self.refused = view.validate(&notings).err();
        if self.refused.is_none() { vec![Effect::Note(notings)] } else { Vec::new() }
    }

    /// Notes facts and closes the uppermost sheet, which stays open over what was refused.
    pub fn answer(&mut self, view: &View, notings: Vec<Noting>) -> Vec<Effect> {
        let effects = self.note(view, notings);
        if !effects.is_empty() {
            self.close();
        }
        effects
    }

    /// Notes what was typed and closes the uppermost sheet; a refusal is said at the field of this key.
    pub fn save(&mut self, view: &View, key: &'static str, notings: Vec<Noting>) -> Vec<Effect> {
        match view.validate(&notings) {
            Ok(()) => {
                self.close();
                vec![Effect::Note(notings)]
            }
            Err(rejection) => self
                .say_wrong(key, yeanling_words::rejections::rejection(&rejection, view.now, view.system())),
        }
    }

    /// Says what is wrong with what was typed, and does nothing else.
    pub fn say_wrong(&mut self, key: impl Into<Key>, said: impl Into<String>) -> Vec<Effect> {
        self.top_mut().wrong(key, said);
        Vec::new()
    }

    /// Returns what was said under a key; empty when nothing was.
    #[must_use]
    pub fn said(&self, key: &str) -> &str {
        self.said.get(key).map_or("", String::as_str)
    }

    /// Says something that stands until the screen is left.
    pub fn say(&mut self, key: impl Into<Key>, said: impl Into<String>) {
        self.said.insert(key.into(), said.into());
    }

    /// The screen is left: sheets on which nothing was typed are closed, and what was refused was read.
    pub fn leave(&mut self) {
        self.sheets.retain(|open| !open.fields.is_blank());
        self.kept.watch = None;
        self.refused = None;
        self.said.clear();
    }
}
