//! The shared sheets, each opened by itself: what it asks, what a press notes, what is refused and how that is said.

mod amend;
mod every;
mod ewe;
mod feed;
mod pick;
mod trouble;
mod weight;
mod words;

pub(crate) use every::every;

use yeanling_core::book::{Event, EweId, LambId, Sex};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Screen, Sheet};

use crate::phone::Phone;
use crate::reach::{reached, texts};

/// A phone one night in February.
pub(crate) fn phone() -> Phone {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Farm);
    phone
}

/// The same with ewe 7 and her lamb, born a moment ago.
pub(crate) fn with_lamb() -> (Phone, EweId, LambId) {
    let mut phone = phone();
    let ewe = phone.ewe("7");
    let born = Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(Sex::Ram), alive: true };
    let lamb = phone.note(born).as_lamb();
    phone.later(1);
    (phone, ewe, lamb)
}

impl Phone {
    /// Opens a sheet.
    pub(crate) fn ask(&mut self, sheet: Sheet) -> &mut Self {
        self.act(&Action::Ask(sheet));
        self
    }

    /// Asserts that the page says this somewhere, and goes on.
    #[track_caller]
    pub(crate) fn tells(&mut self, text: &str) -> &mut Self {
        // A number that stays with its unit is read as one that does not.
        let said = |text: &str| text.replace('\u{a0}', " ");
        let all: Vec<String> = texts(&self.page()).iter().map(|one| said(one)).collect();
        assert!(
            all.iter().any(|one| one.contains(&said(text))),
            "{text:?} stands nowhere:\n{}",
            all.join("\n")
        );
        self
    }

    /// Asserts that the page says this nowhere, and goes on.
    #[track_caller]
    pub(crate) fn tells_not(&mut self, text: &str) -> &mut Self {
        self.says_nowhere(text);
        self
    }

    /// Asserts that no sheet lies open.
    #[track_caller]
    pub(crate) fn is_closed(&mut self) -> &mut Self {
        let open = self.page().sheets.last().map(|sheet| texts_of(self, &sheet.title));
        assert!(open.is_none(), "open still: {open:?}");
        self
    }

    /// Returns what was noted last, as it was noted.
    #[track_caller]
    pub(crate) fn noted(&self) -> &Event {
        let last = self.book.entries().max_by_key(|entry| (entry.noted, entry.id));
        &last.expect("something was noted").event
    }

    /// Asserts that what was noted last is this.
    #[track_caller]
    pub(crate) fn has_noted(&mut self, event: &Event) -> &mut Self {
        assert_eq!(self.noted(), event);
        self
    }
}

fn texts_of(phone: &Phone, title: &str) -> Vec<String> {
    let on_it = reached(&phone.page()).into_iter().flat_map(|block| {
        let error = match &block.kind {
            Kind::Field(field) => field.value.clone(),
            _ => String::new(),
        };
        block.texts().into_iter().chain([error])
    });
    std::iter::once(title.to_owned()).chain(on_it).collect()
}

impl Phone {
    /// Returns the field of this label.
    #[track_caller]
    fn field(&self, label: &str) -> yeanling_pages::block::Field {
        let all = crate::reach::fields_and_keys(&self.page());
        let found = all.iter().find(|(_, field)| field.label == label);
        found.unwrap_or_else(|| panic!("no field {label:?}")).1.clone()
    }

    /// Asserts that this stands in the field of this label.
    #[track_caller]
    pub(crate) fn has_typed(&mut self, label: &str, text: &str) -> &mut Self {
        assert_eq!(self.field(label).value, text, "{label}");
        self
    }

    /// Asserts that something is said to be wrong with what stands in the field of this label.
    #[track_caller]
    pub(crate) fn wrong_at(&mut self, label: &str) -> &mut Self {
        assert!(!self.field(label).error.is_empty(), "nothing is wrong with {:?}", self.field(label).value);
        self
    }
}
