//! Plays a night: each step becomes an entry that passes the gate, as a tap would, and each law is asked at each step.

use uuid::Uuid;
use yeanling_core::book::{Book, DeviceId, Entry, EntryId, Event, EweId, LambId};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Completion, Duty, duties, may_wait_until, validate};

use super::event::{of_ewe, of_lamb};
use super::laws::{self, Broken, Scene};
use super::step::{Step, What};
use super::story::Story;

/// What one phone shows: its clock is ahead by so much, and set to this offset from UTC.
#[derive(Clone, Copy)]
struct Clock {
    ahead: TimeDelta,
    offset: i16,
}

/// A book, what it makes, and what the Watch said of it last.
#[derive(Clone)]
struct Side {
    book: Book,
    flock: Flock,
    said: Option<(Moment, Vec<Duty>)>,
}

/// Two phones in one night; they share one book but while they are apart.
struct Barn {
    /// What has passed of the night.
    passed: TimeDelta,
    clocks: [Clock; 2],
    sides: Vec<Side>,
    ewes: [EweId; 2],
    lambs: Vec<LambId>,
    entries: Vec<EntryId>,
    count: u128,
    thorough: bool,
}

/// Midnight.
fn begins() -> Moment {
    Moment::from_unix_milliseconds(1_771_995_600_000, -300)
}

/// Plays a night and returns the first law that it breaks.
pub(super) fn play(night: &[Step], thorough: bool, story: &mut Story) -> Result<(), Broken> {
    let mut barn = Barn::new(thorough);
    for step in night {
        barn.take(step, story)?;
    }
    barn.end()
}

impl Barn {
    fn new(thorough: bool) -> Self {
        let clock = Clock { ahead: TimeDelta::zero(), offset: -300 };
        let side = Side { book: Book::default(), flock: fold(&Book::default()), said: None };
        let mut barn = Self {
            passed: TimeDelta::zero(),
            clocks: [clock; 2],
            sides: vec![side],
            ewes: [EweId::from_uuid(Uuid::nil()); 2],
            lambs: Vec::new(),
            entries: Vec::new(),
            count: 0,
            thorough,
        };
        for place in 0..2 {
            let at = begins() - TimeDelta::days(300 - i64::from(place == 1));
            barn.ewes[place] = barn.write(0, at, at, Event::EweCame { tag: None }).as_ewe();
        }
        barn.entries.clear();
        barn
    }

    /// What this phone's clock shows.
    fn now(&self, phone: usize) -> Moment {
        let clock = self.clocks[phone];
        let now = begins() + self.passed + clock.ahead;
        Moment::from_unix_milliseconds(now.as_unix_milliseconds(), clock.offset)
    }

    fn side(&self, phone: usize) -> usize {
        phone.min(self.sides.len() - 1)
    }

    /// Writes an entry, into the flock that stands if it can learn it, as a phone does.
    fn write(&mut self, phone: usize, at: Moment, now: Moment, event: Event) -> EntryId {
        self.count += 1;
        let device = u128::try_from(phone).unwrap_or(0) + 1;
        let number = (0x0001_0000_0000_7000_8000 << 48) + (device << 32) + self.count;
        let place = self.side(phone);
        let side = &mut self.sides[place];
        let entry = Entry {
            id: EntryId::from_uuid(Uuid::from_u128(number)),
            device: DeviceId::from_uuid(Uuid::from_u128(device)),
            noted: side.book.next_noted(now),
            at,
            event,
        };
        let learned = side.flock.apply(&entry);
        let id = entry.id;
        side.book.add(entry);
        if !learned {
            side.flock = fold(&side.book);
        }
        self.entries.push(id);
        id
    }

    fn take(&mut self, step: &Step, story: &mut Story) -> Result<(), Broken> {
        self.passed += TimeDelta::seconds(step.wait);
        let phone = usize::from(step.second);
        match step.what {
            What::Jump(minutes) => {
                self.clocks[phone].ahead += TimeDelta::minutes(minutes);
                story.tell(self.now(phone), &format!("the clock of phone {} jumps", phone + 1));
            }
            What::Offset(offset) => {
                self.clocks[phone].offset = offset;
                story.tell(self.now(phone), &format!("phone {} goes by another offset", phone + 1));
            }
            What::Part => {
                if self.sides.len() == 1 {
                    self.sides.push(self.sides[0].clone());
                    story.tell(self.now(phone), "the phones part");
                }
            }
            What::Meet => self.meet(phone, story)?,
            What::Ewe(..)
            | What::Lamb(..)
            | What::Press(_)
            | What::PutOff(..)
            | What::Strike(_)
            | What::Restore(_)
            | What::Move(..) => self.note(step, phone, story)?,
        }
        Ok(())
    }

    fn note(&mut self, step: &Step, phone: usize, story: &mut Story) -> Result<(), Broken> {
        let now = self.now(phone);
        // What is tapped on the Watch is tapped now.
        let ago = if matches!(step.what, What::Press(_)) { 0 } else { step.ago };
        let at = now - TimeDelta::minutes(ago);
        let place = self.side(phone);
        let before = self.waited(place, now)?;
        let Some(event) = self.event(step.what, place, now, &before) else {
            self.sides[place].said = Some((now, before));
            return Ok(());
        };
        let side = &self.sides[place];
        if let Err(refused) = validate(&side.flock, &side.book, &event, at, now) {
            if matches!(step.what, What::Press(_)) {
                return Err(Broken {
                    law: "every tap passes the gate",
                    told: format!("{event:?}: {refused}"),
                });
            }
            self.sides[place].said = Some((now, before));
            return Ok(());
        }
        let was = self.thorough.then(|| side.flock.clone());
        story.watch(&side.flock, self.names(), now, &before, &event);
        let born = matches!(event, Event::LambBorn { .. });
        let id = self.write(phone, at, now, event.clone());
        if born {
            self.lambs.push(id.as_lamb());
        }
        let side = &self.sides[place];
        let after = duties(&side.flock, now, &side.flock.settings);
        story.noted(self.names(), now, at, &event);
        story.watch(&side.flock, self.names(), now, &after, &event);
        let (flock, book, lambs) = (&side.flock, &side.book, &self.lambs[..]);
        let pressed = matches!(step.what, What::Press(_));
        let scene =
            Scene { now, at, event: &event, before: &before, after: &after, flock, book, was, pressed };
        laws::of_a_step(&scene)?;
        laws::of_an_instant(flock, book, lambs, now, &after)?;
        self.sides[place].said = Some((now, after));
        Ok(())
    }

    /// What the Watch says after the wait; time alone makes nothing milder.
    fn waited(&mut self, place: usize, now: Moment) -> Result<Vec<Duty>, Broken> {
        let side = &mut self.sides[place];
        if let Some((_, said)) = side.said.take_if(|(then, _)| *then == now) {
            return Ok(said);
        }
        let duties = duties(&side.flock, now, &side.flock.settings);
        if let Some((then, said)) = side.said.take_if(|(then, _)| now.since(*then) > TimeDelta::zero()) {
            laws::of_time(&side.flock, then, &said, now, &duties)?;
        }
        laws::of_an_instant(&side.flock, &side.book, &self.lambs, now, &duties)?;
        Ok(duties)
    }

    fn meet(&mut self, phone: usize, story: &mut Story) -> Result<(), Broken> {
        if self.sides.len() == 2 {
            let now = self.now(phone);
            story.tell(now, "the phones meet");
            let other = self.sides.pop().map(|side| side.book).unwrap_or_default();
            let one = self.sides[0].book.clone();
            self.sides[0].flock = laws::order::two_books_make_the_same_either_way(&one, &other, now)?;
            self.sides[0].book.union(other.entries().cloned());
            self.sides[0].said = None;
        }
        Ok(())
    }

    fn end(mut self) -> Result<(), Broken> {
        for phone in 0..self.sides.len() {
            self.passed += TimeDelta::minutes(17);
            let now = self.now(phone);
            let duties = self.waited(phone, now)?;
            let side = &self.sides[phone];
            if self.thorough {
                laws::order::what_was_learned_is_what_is_folded(&side.book, &side.flock)?;
                laws::wait::a_danger_is_never_put_off(&side.flock, now, &duties)?;
                laws::tap::every_tap_does_what_it_says(&side.flock, &side.book, now, &duties)?;
            }
        }
        if self.sides.len() == 2 { self.meet(0, &mut Story::default()) } else { Ok(()) }
    }

    fn names(&self) -> (&[EweId], &[LambId]) {
        (&self.ewes, &self.lambs)
    }

    fn entry_back(&self, back: usize) -> Option<EntryId> {
        self.entries.iter().rev().nth(back).copied()
    }

    fn event(&self, what: What, place: usize, now: Moment, duties: &[Duty]) -> Option<Event> {
        let side = &self.sides[place];
        match what {
            What::Ewe(ewe, fact) => Some(of_ewe(self.ewes[ewe], fact, now)),
            What::Lamb(lamb, fact) => self.lambs.get(lamb).map(|lamb| of_lamb(*lamb, fact, now, &self.ewes)),
            What::Press(nth) => {
                let taps = duties.iter().filter_map(|duty| match &duty.completion {
                    Completion::Note(event) => Some(event),
                    Completion::Open => None,
                });
                let taps: Vec<&Event> = taps.collect();
                (!taps.is_empty()).then(|| taps[nth % taps.len()].clone())
            }
            What::PutOff(nth, quarters) => {
                let duty = duties.get(nth % duties.len().max(1))?;
                let (animal, kind) = (duty.subject(), duty.task.kind());
                let most = may_wait_until(&side.flock, animal, kind, now)?;
                let part = most.since(now) * i32::try_from(quarters).ok()? / 4;
                Some(Event::PutOff { animal, duty: kind, until: now + part })
            }
            What::Strike(back) => self.entry_back(back).map(|entry| Event::Deleted { entry }),
            What::Restore(back) => {
                let struck = side.flock.lines.iter().filter(|line| line.struck);
                struck.rev().nth(back).map(|line| Event::Restored { entry: line.entry })
            }
            What::Move(back, minutes) => {
                let entry = side.book.entry(self.entry_back(back)?)?;
                let (event, at) = (Box::new(entry.event.clone()), entry.at + TimeDelta::minutes(minutes));
                Some(Event::Amended { entry: entry.id, event, at })
            }
            What::Jump(_) | What::Offset(_) | What::Part | What::Meet => None,
        }
    }
}
