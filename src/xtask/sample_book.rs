//! Books as large as measurements want them, of facts as a lambing brings them: births, weights, feeds, ticks.
//!
//! The same number always makes the same book; nothing is left to chance.
use uuid::Uuid;
use yeanling_core::book::{
    Animal, Belly, Book, Cause, DeviceId, Entry, EntryId, Event, EweId, LambId, LambingEase, Milk, Sex, Way,
};
use yeanling_core::units::{Mass, Moment, TimeDelta, Volume};

/// When the first of these seasons begins, in milliseconds since 1970: a night in February.
const BEGAN: i64 = 1_740_000_000_000;
/// Ewes that lamb in a season, and as many are there at all.
const EWES: usize = 500;
/// How long it is from one season to the next.
const YEAR: TimeDelta = TimeDelta::days(365);
/// How long it is from one lambing to the next.
const NEXT: TimeDelta = TimeDelta::minutes(87);

/// A phone that notes what happens.
pub(crate) struct Phone {
    device: u128,
    count: u128,
    entries: Vec<Entry>,
    at: Moment,
    noted: Moment,
}

impl Phone {
    /// A phone of this number, whose ids are its own.
    pub(crate) fn new(device: u128) -> Self {
        let at = Moment::from_unix_milliseconds(BEGAN, -300);
        Self { device, count: 0, entries: Vec::new(), at, noted: at }
    }

    /// Notes so many entries of lambings, and returns them.
    pub(crate) fn lambings(mut self, entries: usize) -> Vec<Entry> {
        let mut season = 0;
        let mut ewes = Vec::new();
        while self.entries.len() < entries {
            self.at = Moment::from_unix_milliseconds(BEGAN, -300) + YEAR * season;
            season += 1;
            self.season(&mut ewes, entries);
        }
        self.entries.truncate(entries);
        self.entries
    }

    /// Notes so many seasons of five hundred ewes, and returns the book.
    pub(crate) fn seasons(mut self, seasons: i32) -> Book {
        let mut ewes = Vec::new();
        for season in 0..seasons {
            self.at = Moment::from_unix_milliseconds(BEGAN, -300) + YEAR * season;
            self.season(&mut ewes, usize::MAX);
        }
        self.entries.into_iter().collect()
    }

    /// Notes a season: every ewe lambs once, in order, until there are so many entries.
    fn season(&mut self, ewes: &mut Vec<EweId>, most: usize) {
        for number in 0..EWES {
            if self.entries.len() >= most {
                return;
            }
            self.at = self.at + NEXT;
            let ewe = match ewes.get(number) {
                Some(ewe) => *ewe,
                None => {
                    let ewe =
                        self.note(Event::EweCame { tag: Some(format!("UK 0123 {number:05}")) }).as_ewe();
                    ewes.push(ewe);
                    ewe
                }
            };
            self.lambing(ewe, number);
        }
    }

    /// Notes a lambing: a single for every fourth ewe, else twins, some of them fed by hand, a few of them lost.
    fn lambing(&mut self, ewe: EweId, number: usize) {
        self.note(Event::WaterBagSeen { ewe });
        let lambs = if number.is_multiple_of(4) { 1 } else { 2 };
        for order in 0..lambs {
            self.after(22);
            let sex = if (number + order).is_multiple_of(2) { Sex::Ewe } else { Sex::Ram };
            let born =
                Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(sex), alive: number % 31 != 30 };
            let lamb = self.note(born).as_lamb();
            self.note(Event::BirthEase {
                lamb,
                ease: if number % 9 == 8 { LambingEase::SlightByHand } else { LambingEase::Alone },
            });
            if number % 31 != 30 {
                self.first_day(lamb, number + order);
            }
        }
        self.note(Event::AfterbirthPassed { ewe });
        if number % 20 == 19 {
            let text = format!("Slow with her first, hard on the left side; looked at {number} times.");
            self.note(Event::Remarked { animal: Animal::Ewe(ewe), text });
        }
    }

    fn first_day(&mut self, lamb: LambId, number: usize) {
        let tenths = u32::try_from(number % 23).unwrap_or_default();
        let mass = Mass::from_kilograms(3.1 + f64::from(tenths) / 10.0);
        self.after(9);
        let up = self.note(Event::Stood { lamb });
        self.note(Event::NavelDipped { lamb });
        let weighed = self.note(Event::Weighed { lamb, mass });
        if number % 40 == 39 {
            let (event, at) = (Box::new(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) }), self.at);
            self.note(Event::Amended { entry: weighed, event, at });
            self.note(Event::Deleted { entry: up });
        }
        self.after(14);
        if number % 5 == 4 {
            for _ in 0..3 {
                let volume = Volume::from_milliliters(190.0 + f64::from(tenths));
                self.note(Event::Fed { lamb, volume, milk: Milk::EweColostrum, way: Way::Bottle });
                self.after(5);
            }
        } else {
            self.note(Event::Sucked { lamb });
        }
        self.note(Event::BellyFelt { lamb, belly: Belly::Full });
        let tag = format!("{:05}", self.count % 100_000);
        self.note(Event::Tagged { animal: Animal::Lamb(lamb), tag });
        if number % 29 == 28 {
            self.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Starved });
        }
    }

    /// Goes on to this time.
    pub(crate) fn go(&mut self, at: Moment) {
        self.at = at;
    }

    /// Returns all that it noted.
    pub(crate) fn noted(self) -> Vec<Entry> {
        self.entries
    }

    fn after(&mut self, minutes: i64) {
        self.at = self.at + TimeDelta::minutes(minutes);
    }

    /// Notes a fact now, with an id as a phone makes it: the time first, then what is the phone's own.
    pub(crate) fn note(&mut self, event: Event) -> EntryId {
        self.count += 1;
        let milliseconds = BEGAN.unsigned_abs() + u64::try_from(self.count).unwrap_or_default() * 40_000;
        let id =
            (u128::from(milliseconds) << 80) | (0x7000_8000_u128 << 48) | (self.device << 32) | self.count;
        let id = EntryId::from_uuid(Uuid::from_u128(id));
        let device = DeviceId::from_uuid(Uuid::from_u128((0x019c_0000_0000_7000_8000 << 48) | self.device));
        self.noted = self.at.max(self.noted + TimeDelta::milliseconds(1));
        let noted = self.noted;
        self.entries.push(Entry { id, device, noted, at: self.at, event });
        id
    }
}

/// Returns a book of so many entries.
pub(crate) fn book(entries: usize) -> Book {
    Phone::new(1).lambings(entries).into_iter().collect()
}

/// Returns the device that writes these books out.
pub(crate) fn device() -> DeviceId {
    DeviceId::from_uuid(Uuid::from_u128(1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::flock::fold;

    #[test]
    fn a_book_is_as_large_as_was_asked_and_much_like_a_season() {
        let book = book(20_000);
        assert_eq!(book.len(), 20_000);
        let flock = fold(&book);
        assert_eq!(flock.ewes.len(), EWES);
        assert!(flock.unread.is_empty());
        assert!(
            flock.lambs.len() * 12 > book.len() && flock.lambs.len() * 7 < book.len(),
            "{}",
            flock.lambs.len()
        );
    }

    #[test]
    fn seasons_are_told_apart() {
        let flock = fold(&Phone::new(1).seasons(10));
        let seasons = yeanling_core::seasons::seasons(&flock);
        assert_eq!(seasons.len(), 10);
        assert!(seasons.iter().all(|season| season.lambs.len() == 875));
    }

    #[test]
    fn two_phones_share_no_id() {
        let mut book: Book = Phone::new(1).lambings(500).into_iter().collect();
        let merged = book.union(Phone::new(2).lambings(500));
        assert_eq!((merged.added.len(), merged.known, merged.clashes.len()), (500, 0, 0));
    }
}
