//! A farm's years as a book: groups with their rams, crayon marks, scans, scores, births, weights at three ages, weaning,
//! ewe lambs that are kept, old ewes that go.
//!
//! The years are always ten, so a larger book is a larger flock; the same number always makes the same book.
use yeanling_core::book::{
    Animal, BirthDay, Book, Cause, Departure, EntryId, Event, EweId, LambId, LambingEase, Life, RamAge, Ring,
    Sex, Treatment,
};
use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::{Condition, Mass, Moment, TimeDelta};

use crate::sample_book::Phone;

/// When the first ewes come, in milliseconds since 1970: a day in August.
const BEGAN: i64 = 1_440_000_000_000;
/// How many seasons there are.
pub(crate) const YEARS: usize = 10;
/// How long a year is from one mating to the next.
const YEAR: TimeDelta = TimeDelta::days(365);
/// Ewes in a group, at the most.
const IN_A_GROUP: usize = 45;
/// Of so many ewes one leaves each year, and a ewe lamb takes her place.
const ONE_IN: usize = 5;

/// Returns the history of a flock with so many lambs in ten years.
pub(crate) fn history(lambs: usize) -> Book {
    let mut farm = Farm::new(lambs);
    for season in 0..YEARS {
        farm.year(season, lambs * (season + 1) / YEARS);
    }
    farm.phone.noted().into_iter().collect()
}

/// Returns when such a history is looked at: half a year after its last lambs.
pub(crate) fn looked_at() -> Moment {
    Moment::from_unix_milliseconds(BEGAN, -300) + YEAR * 11
}

struct Farm {
    phone: Phone,
    ewes: Vec<EweId>,
    /// Lambs born so far, and ewe lambs of this year that can be kept.
    born: usize,
    young: Vec<LambId>,
}

impl Farm {
    /// A farm with as many ewes as bring so many lambs in ten years, at eight lambs to five ewes.
    fn new(lambs: usize) -> Self {
        let mut farm = Self { phone: Phone::new(1), ewes: Vec::new(), born: 0, young: Vec::new() };
        farm.at(0, 0);
        let keep = CullRules {
            hard_births: Some(2),
            lost: Some(3),
            turned_away: Some(2),
            barren: Some(2),
            years: Some(9),
        };
        farm.note(Event::Chose(Choice::CullRules(keep)));
        for number in 0..(lambs * 5 / 8).div_ceil(YEARS).max(1) {
            let ewe = farm.note(Event::EweCame { tag: Some(format!("UK 0123 {number:05}")) });
            let ewe = ewe.as_ewe();
            let born = Some(BirthDay::Year(u16::try_from(2010 + number % 5).unwrap_or(2010)));
            farm.note(Event::Life(Life::Described { ewe, born, breed: Some("Texel cross".to_owned()) }));
            farm.ewes.push(ewe);
        }
        farm
    }

    /// Notes the year of a season, until there are so many lambs.
    fn year(&mut self, season: usize, until: usize) {
        let ewes = self.ewes.clone();
        for (number, ewes) in ewes.chunks(IN_A_GROUP).enumerate() {
            self.group(season, number, ewes);
        }
        self.young.clear();
        let mut lambs = Vec::new();
        for (number, ewe) in ewes.iter().enumerate() {
            let twins = if (number + season) % 5 < 2 { 1 } else { 2 };
            let left = until - self.born;
            if (number + season) % 23 != 22 {
                self.lambing(season, number, *ewe, twins.min(left), &mut lambs);
            }
        }
        // Whoever is still missing is one more lamb of the first ewes.
        for (number, ewe) in ewes.iter().enumerate() {
            if self.born < until && (number + season) % 23 != 22 {
                self.lambing(season, number, *ewe, 1, &mut lambs);
            }
        }
        self.summer(season, &lambs);
        for number in (season % ONE_IN..self.ewes.len()).step_by(ONE_IN) {
            let Some(lamb) = self.young.pop() else { break };
            self.at(season * 365 + 330, number);
            let gone = self.ewes[number];
            self.note(Event::Life(Life::Went { animal: Animal::Ewe(gone), how: Departure::Sold, to: None }));
            self.ewes[number] = self.note(Event::Life(Life::KeptAsEwe { lamb })).as_ewe();
        }
    }

    /// Notes a group from its forming to its scan.
    fn group(&mut self, season: usize, number: usize, ewes: &[EweId]) {
        let day = season * 365;
        self.at(day + 10, number);
        let group = self.note(Event::GroupFormed { name: format!("Field {}", number + 1) }).as_group();
        for ewe in ewes {
            self.note(Event::JoinedGroup { ewe: *ewe, group });
        }
        let score = |of: usize| Condition::from_quarters(u8::try_from(10 + of % 6).unwrap_or(10));
        for (of, ewe) in ewes.iter().enumerate() {
            self.note(Event::Conditioned { ewe: *ewe, score: score(of) });
        }
        self.at(day + 45, number);
        let ram = Some(format!("R{}", number % 9 + 1));
        self.note(Event::RamIn { group, ram, age: Some(RamAge::Mature) });
        for (of, ewe) in ewes.iter().enumerate() {
            self.at(day + 46 + of % 34, number);
            if of % 3 != 2 {
                self.note(Event::CrayonMark {
                    ewe: *ewe,
                    color: if of % 34 < 17 { "red" } else { "blue" }.to_owned(),
                });
            }
        }
        self.at(day + 96, number);
        self.note(Event::RamOut { group });
        self.at(day + 130, number);
        for (of, ewe) in ewes.iter().enumerate() {
            let lambs = u8::try_from(if of % 5 < 2 { 1 } else { 2 }).unwrap_or(1);
            self.note(Event::Scanned { ewe: *ewe, lambs, days: None });
            self.note(Event::Conditioned { ewe: *ewe, score: score(of + 1) });
        }
        self.at(day + 160, number);
        self.note(Event::BoosterGiven { group });
        self.note(Event::GroupParted { group });
    }

    /// Notes a ewe's lambing of so many lambs and their first day.
    fn lambing(
        &mut self,
        season: usize,
        number: usize,
        dam: EweId,
        lambs: usize,
        all: &mut Vec<(LambId, usize)>,
    ) {
        for order in 0..lambs {
            self.at(season * 365 + 193 + number % 34, number + order);
            let sex = Some(if (self.born + order).is_multiple_of(2) { Sex::Ewe } else { Sex::Ram });
            let alive = self.born % 37 != 36;
            let lamb = self.note(Event::LambBorn { dam: Some(dam), beside: None, sex, alive }).as_lamb();
            let ease = if self.born % 19 == 18 { LambingEase::HardByHand } else { LambingEase::Alone };
            self.note(Event::BirthEase { lamb, ease });
            if alive {
                let tenths = u32::try_from(self.born % 23).unwrap_or_default();
                self.note(Event::Weighed {
                    lamb,
                    mass: Mass::from_kilograms(3.1 + f64::from(tenths) / 10.0),
                });
                self.note(Event::Sucked { lamb });
                self.note(Event::Tagged {
                    animal: Animal::Lamb(lamb),
                    tag: format!("{season}{:05}", self.born),
                });
                if self.born % 17 == 16 {
                    self.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Starved });
                } else {
                    all.push((lamb, self.born));
                    if sex == Some(Sex::Ewe) {
                        self.young.push(lamb);
                    }
                }
            }
            self.born += 1;
        }
    }

    /// Notes what a summer brings: two weights, a drench for some, a ring for ram lambs, and weaning.
    fn summer(&mut self, season: usize, lambs: &[(LambId, usize)]) {
        for (lamb, number) in lambs {
            let gain = 0.20 + f64::from(u32::try_from(number % 29).unwrap_or_default()) / 200.0;
            for (day, age) in [(60, 50.0), (110, 100.0)] {
                self.at(season * 365 + 193 + day, *number);
                self.note(Event::Weighed { lamb: *lamb, mass: Mass::from_kilograms(4.0 + gain * age) });
            }
            if number % 2 == 1 {
                self.note(Event::Ringed { lamb: *lamb, ring: Ring::Castration });
            }
            if number % 7 == 6 {
                let treatment = Box::new(Treatment {
                    product: "White drench".to_owned(),
                    amount: Some("as on the label".to_owned()),
                    route: None,
                    reason: None,
                    batch: None,
                    by: None,
                    day_only: true,
                    meat_days: Some(14),
                    milk_days: None,
                });
                self.note(Event::Life(Life::Treated { animal: Animal::Lamb(*lamb), treatment }));
            }
            self.note(Event::Weaned { lamb: *lamb });
        }
    }

    /// Goes to a day, counted from the first, at an hour of its own.
    fn at(&mut self, day: usize, number: usize) {
        let day = TimeDelta::days(i64::try_from(day).unwrap_or_default());
        let minutes = TimeDelta::minutes(i64::try_from(number % 700).unwrap_or_default());
        self.phone.go(Moment::from_unix_milliseconds(BEGAN, -300) + day + minutes);
    }

    fn note(&mut self, event: Event) -> EntryId {
        self.phone.note(event)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::flock::fold;
    use yeanling_core::seasons::{put_to_ram, seasons};

    #[test]
    fn a_history_has_as_many_lambs_as_was_asked_in_ten_seasons_with_all_that_is_noted_of_them() {
        for lambs in [882, 4449] {
            let flock = fold(&history(lambs));
            assert_eq!(flock.lambs.len(), lambs);
            let seasons = seasons(&flock);
            assert_eq!(seasons.len(), YEARS);
            assert!(seasons.iter().all(|season| !put_to_ram(&flock, season).is_empty()));
            assert!(flock.ewes.values().filter(|ewe| ewe.was.is_some()).count() * 3 > flock.ewes.len());
            assert!(flock.ewes.values().all(|ewe| !ewe.scans.is_empty() || ewe.was.is_some()));
            assert!(flock.unread.is_empty());
        }
    }
}
