//! A sample flock to look round in: invented animals, their times relative to now, so that every screen has life.

use chrono::Datelike;
use uuid::Uuid;
use yeanling_core::book::{
    Animal, Belly, BirthDay, Book, Care, Cause, DeviceId, Entry, EntryId, Event, EweId, Illness, LambId,
    LambingEase, Life, Milk, PenSize, Route, Sex, Sign, Treatment, VigorScale, Way,
};
use yeanling_core::settings::Choice;
use yeanling_core::terms::UdderHalf;
use yeanling_core::units::{Condition, Length, Mass, Moment, System, TimeDelta, Volume};

/// Returns the made-up book as it would be at `now`, in the units that the farm reads.
#[must_use]
pub fn book(now: Moment, system: System) -> Book {
    let mut scribe = Scribe { now, book: Book::default(), count: 0 };
    scribe.note(201 * DAY, Event::Chose(Choice::FarmName("Quarry Bank".to_owned())));
    scribe.note(201 * DAY, Event::Chose(Choice::System(system)));
    let ewes: Vec<EweId> = ["5", "8", "12", "14", "19", "21", "27", "30", "33", "36", "41", "44"]
        .iter()
        .map(|tag| scribe.note(200 * DAY, Event::EweCame { tag: Some((*tag).to_owned()) }).as_ewe())
        .collect();
    let [five, eight, twelve, fourteen, nineteen, twenty_one, twenty_seven, _, thirty_three, ..] = ewes[..]
    else {
        return scribe.book;
    };
    autumn(&mut scribe, &ewes);
    bottle_lamb(&mut scribe, nineteen);
    three_days_ago(&mut scribe, five);
    yesterday(&mut scribe, thirty_three);
    single(&mut scribe, eight);
    triplets(&mut scribe, twelve);
    twins(&mut scribe, twenty_seven);
    nobody_s(&mut scribe);
    at_work(&mut scribe, fourteen, twenty_one);
    pens(&mut scribe, five, twelve, thirty_three);
    register(&mut scribe, &ewes, five);
    scribe.book
}

/// A day in minutes.
const DAY: i64 = 24 * 60;

/// Writes entries as a phone would, each with an id of its own.
struct Scribe {
    now: Moment,
    book: Book,
    count: u128,
}

impl Scribe {
    fn note(&mut self, minutes_ago: i64, event: Event) -> EntryId {
        self.count += 1;
        let id = EntryId::from_uuid(Uuid::from_u128((0x0001_0000_0000_7000_8000 << 48) + self.count));
        let device = DeviceId::from_uuid(Uuid::from_u128(1));
        let at = self.now - TimeDelta::minutes(minutes_ago);
        let noted = self.book.next_noted(at);
        self.book.add(Entry { id, device, noted, at, event });
        id
    }

    fn born(&mut self, minutes_ago: i64, dam: Option<EweId>, sex: Sex, ease: LambingEase) -> LambId {
        let born = Event::LambBorn { dam, beside: None, sex: Some(sex), alive: true };
        let lamb = self.note(minutes_ago, born).as_lamb();
        self.note(minutes_ago, Event::BirthEase { lamb, ease });
        lamb
    }

    fn weighed(&mut self, minutes_ago: i64, lamb: LambId, kilograms: f64) {
        self.note(minutes_ago, Event::Weighed { lamb, mass: Mass::from_kilograms(kilograms) });
    }

    fn vigor(&mut self, minutes_ago: i64, lamb: LambId, score: u8) {
        self.note(minutes_ago, Event::VigorScored { lamb, scale: VigorScale::FourGrade, score });
    }

    fn fed(&mut self, minutes_ago: i64, lamb: LambId, milliliters: f64, milk: Milk) {
        let volume = Volume::from_milliliters(milliliters);
        self.note(minutes_ago, Event::Fed { lamb, volume, milk, way: Way::Bottle });
    }
}

/// One group with one ram, the later ewes marked by his crayon, three of them scanned, all of them scored.
fn autumn(scribe: &mut Scribe, ewes: &[EweId]) {
    let group = scribe.note(175 * DAY, Event::GroupFormed { name: "Quarry field".to_owned() }).as_group();
    for ewe in ewes {
        scribe.note(174 * DAY, Event::JoinedGroup { ewe: *ewe, group });
    }
    scribe.note(162 * DAY, Event::RamIn { group, ram: Some("Flint".to_owned()), age: None });
    let marked = |place: usize| ewes.get(place).copied();
    for (place, days) in [(3, 148), (5, 147), (7, 146), (8, 149), (9, 143), (10, 138), (11, 130)] {
        if let Some(ewe) = marked(place) {
            scribe.note(days * DAY, Event::CrayonMark { ewe, color: "blue".to_owned() });
        }
    }
    scribe.note(111 * DAY, Event::RamOut { group });
    for (place, lambs) in [(7, 2), (9, 1), (10, 3)] {
        if let Some(ewe) = marked(place) {
            scribe.note(80 * DAY, Event::Scanned { ewe, lambs, days: None });
        }
    }
    for (place, ewe) in ewes.iter().enumerate() {
        let quarters = 9 + u8::try_from(place % 5).unwrap_or(0);
        let score = Condition::from_quarters(quarters);
        scribe.note(45 * DAY, Event::Conditioned { ewe: *ewe, score });
    }
}

/// Ten days old and on the bottle since its dam had no milk.
fn bottle_lamb(scribe: &mut Scribe, dam: EweId) {
    let day = 24 * 60;
    let lamb = scribe.born(10 * day, Some(dam), Sex::Ewe, LambingEase::Alone);
    scribe.weighed(10 * day - 20, lamb, 3.4);
    scribe.fed(10 * day - 60, lamb, 170.0, Milk::EweColostrum);
    scribe.note(10 * day - 90, Event::NavelDipped { lamb });
    scribe.note(9 * day, Event::Tagged { animal: Animal::Lamb(lamb), tag: "Bramble".to_owned() });
    scribe.weighed(2 * day, lamb, 5.2);
    scribe.fed(330, lamb, 215.0, Milk::Replacer);
    scribe.note(
        11 * day,
        Event::Remarked {
            animal: Animal::Ewe(dam),
            text: "Hard on one side of the udder, vet seen.".to_owned(),
        },
    );
}

/// Twins of three days ago, one of them lost.
fn three_days_ago(scribe: &mut Scribe, dam: EweId) {
    let three_days = 3 * 24 * 60;
    let a = scribe.born(three_days, Some(dam), Sex::Ram, LambingEase::SlightByHand);
    let b = scribe.born(three_days - 22, Some(dam), Sex::Ewe, LambingEase::Alone);
    for lamb in [a, b] {
        scribe.note(three_days - 30, Event::NavelDipped { lamb });
        scribe.note(three_days - 45, Event::Sucked { lamb });
    }
    scribe.weighed(three_days - 50, a, 4.4);
    scribe.weighed(three_days - 50, b, 3.1);
    scribe.note(three_days - 55, Event::AllBorn { lamb: a });
    scribe.note(three_days - 200, Event::AfterbirthPassed { ewe: dam });
    scribe.note(three_days - 26 * 60, Event::Died { animal: Animal::Lamb(b), cause: Cause::Accident });
}

/// Twins of yesterday, everything as it should be.
fn yesterday(scribe: &mut Scribe, dam: EweId) {
    let began = 19 * 60;
    let a = scribe.born(began, Some(dam), Sex::Ewe, LambingEase::Alone);
    let b = scribe.born(began - 18, Some(dam), Sex::Ewe, LambingEase::Alone);
    for (lamb, kilograms) in [(a, 3.8), (b, 4.0)] {
        scribe.vigor(began - 24, lamb, 1);
        scribe.note(began - 25, Event::NavelDipped { lamb });
        scribe.note(began - 35, Event::Stood { lamb });
        scribe.note(began - 50, Event::Sucked { lamb });
        scribe.weighed(began - 60, lamb, kilograms);
        scribe.note(began - 400, Event::NavelDipped { lamb });
        scribe.note(began - 401, Event::BellyFelt { lamb, belly: Belly::Full });
    }
    scribe.note(began - 61, Event::AllBorn { lamb: a });
    settled(scribe, began - 55, dam);
    scribe.note(began - 240, Event::AfterbirthPassed { ewe: dam });
}

/// A single of this afternoon, its navel to be dipped again about now.
fn single(scribe: &mut Scribe, dam: EweId) {
    let born = 370;
    let lamb = scribe.born(born, Some(dam), Sex::Ram, LambingEase::HardByHand);
    scribe.vigor(born - 5, lamb, 2);
    scribe.note(born - 6, Event::NavelDipped { lamb });
    scribe.note(born - 25, Event::Stood { lamb });
    scribe.note(born - 40, Event::Sucked { lamb });
    scribe.weighed(born - 45, lamb, 5.1);
    scribe.note(born - 46, Event::AllBorn { lamb });
    settled(scribe, born - 50, dam);
    for minutes in [122, 243] {
        scribe.note(born - minutes, Event::LookedAt { animal: Animal::Lamb(lamb) });
    }
    scribe.note(born - 150, Event::AfterbirthPassed { ewe: dam });
}

/// Triplets, the smallest of them fed by hand.
fn triplets(scribe: &mut Scribe, dam: EweId) {
    let began = 250;
    let a = scribe.born(began, Some(dam), Sex::Ewe, LambingEase::Alone);
    let b = scribe.born(began - 15, Some(dam), Sex::Ram, LambingEase::Alone);
    let c = scribe.born(began - 32, Some(dam), Sex::Ewe, LambingEase::SlightByHand);
    for (lamb, kilograms, score) in [(a, 3.6, 1), (b, 3.5, 1), (c, 2.6, 3)] {
        scribe.vigor(began - 37, lamb, score);
        scribe.note(began - 38, Event::NavelDipped { lamb });
        scribe.weighed(began - 60, lamb, kilograms);
    }
    for lamb in [a, b] {
        scribe.note(began - 45, Event::Stood { lamb });
        scribe.note(began - 55, Event::Sucked { lamb });
    }
    scribe.note(began - 61, Event::AllBorn { lamb: a });
    settled(scribe, began - 62, dam);
    scribe.fed(began - 70, c, 130.0, Milk::EweColostrum);
    scribe.note(began - 90, Event::Stood { lamb: c });
    scribe.note(began - 91, Event::BellyFelt { lamb: c, belly: Belly::Full });
}

/// Twins of two hours ago, one of them late for its first milk.
fn twins(scribe: &mut Scribe, dam: EweId) {
    let began = 134;
    let a = scribe.born(began, Some(dam), Sex::Ewe, LambingEase::Alone);
    let b = scribe.born(began - 12, Some(dam), Sex::Ram, LambingEase::Alone);
    scribe.vigor(began - 5, a, 2);
    scribe.note(began - 6, Event::NavelDipped { lamb: a });
    scribe.note(began - 20, Event::Stood { lamb: a });
    scribe.weighed(began - 30, a, 3.9);
    scribe.vigor(began - 17, b, 1);
    scribe.note(began - 18, Event::NavelDipped { lamb: b });
    scribe.note(began - 26, Event::Stood { lamb: b });
    scribe.note(began - 34, Event::Sucked { lamb: b });
    scribe.weighed(began - 35, b, 4.2);
    scribe.note(began - 50, Event::AllBorn { lamb: a });
}

/// Both halves of her udder run, and she is up and eating.
fn settled(scribe: &mut Scribe, minutes_ago: i64, ewe: EweId) {
    let milks = UdderHalf::Milks;
    scribe.note(minutes_ago, Event::Illness(Illness::UdderChecked { ewe, left: milks, right: milks }));
    scribe.note(minutes_ago - 1, Event::Care(Care::Settled { ewe }));
}

/// A lamb found alone in the straw, no ewe owning up to it.
fn nobody_s(scribe: &mut Scribe) {
    scribe.born(26, None, Sex::Ram, LambingEase::Alone);
}

/// One ewe whose waters came a while ago, and one that may lamb tonight.
fn at_work(scribe: &mut Scribe, ewe: EweId, near: EweId) {
    scribe.note(95, Event::SignSeen { ewe, sign: Sign::Restless });
    scribe.note(37, Event::WaterBagSeen { ewe });
    scribe.note(300, Event::SignSeen { ewe: near, sign: Sign::UdderTight });
    scribe.note(60, Event::SignSeen { ewe: near, sign: Sign::Apart });
}

/// Four pens: a pair that waits for its second day, triplets, one to be cleaned, and one that is ready.
fn pens(scribe: &mut Scribe, left: EweId, triplets: EweId, pair: EweId) {
    let meters = Length::from_meters;
    let [one, two, three, _] = ["1", "2", "3", "4"].map(|name| {
        let size = PenSize { wide: meters(1.5), deep: meters(1.8) };
        let made = Event::PenMade { name: name.to_owned(), size: Some(size) };
        scribe.note(280 * 60, made).as_pen()
    });
    let ewe = Animal::Ewe;
    scribe.note(70 * 60, Event::PutInPen { animal: ewe(left), pen: three });
    scribe.note(20 * 60, Event::LetOut { animal: ewe(left) });
    scribe.note(17 * 60, Event::PutInPen { animal: ewe(pair), pen: one });
    scribe.note(150, Event::PutInPen { animal: ewe(triplets), pen: two });
}

/// What is known of the ewes from before, and a drench that still withholds one of them.
fn register(scribe: &mut Scribe, ewes: &[EweId], drenched: EweId) {
    let this_year = u16::try_from(scribe.now.local().year()).unwrap_or_default();
    for (years, ewe) in (2..).zip(ewes) {
        let born = Some(BirthDay::Year(this_year.saturating_sub(2 + years % 5)));
        let breed = Some("hill cross".to_owned());
        scribe.note(199 * DAY, Event::Life(Life::Described { ewe: *ewe, born, breed }));
    }
    let treatment = Treatment {
        product: "worm drench".to_owned(),
        amount: None,
        route: Some(Route::Mouth),
        reason: Some("worms".to_owned()),
        batch: None,
        by: None,
        day_only: false,
        meat_days: Some(8),
        milk_days: Some(7),
    };
    let animal = Animal::Ewe(drenched);
    scribe.note(50 * 60, Event::Life(Life::Treated { animal, treatment: Box::new(treatment) }));
}
