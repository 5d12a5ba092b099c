//! What this phone says of itself: its look, how the book is kept on it, its alarm.

use std::collections::BTreeMap;

use yeanling_core::book::{Animal, LambId};
use yeanling_core::settings::Clock;
use yeanling_core::units::{Mass, Moment, System};
use yeanling_core::watch::{Duty, State, Task};
pub use yeanling_words::time::{Dates, Hours, Way};

/// What this phone says of itself.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Phone {
    /// How the screen looks.
    pub look: Look,
    /// Whether it is set to the United States.
    pub region_us: bool,
    /// How far the app is from working with no signal.
    pub offline: Offline,
    /// Whether what was noted is on the disk.
    pub saving: Saving,
    /// Whether another version of the app waits.
    pub update: bool,
    /// The lines of either copy that could not be read.
    pub broken: Vec<String>,
    /// How many of them stand for an entry that neither copy has whole.
    pub lost_lines: usize,
    /// How many births are on this phone alone, once the book has not left it for three days.
    pub unsent: Option<Unsent>,
    /// When something was noted that this phone's clock has not reached yet.
    pub behind: Option<Moment>,
    /// What was late when someone came back to the page, until it is done or read.
    pub missed: Vec<Duty>,
    /// What was told so when the hand that is at work began: its room is kept. Nothing once it was read, or without a hand.
    pub missed_stood: Vec<Duty>,
    /// Whether this phone has a share sheet for files.
    pub can_share: bool,
    /// Up to when what was noted lies elsewhere too.
    pub sent: Option<Moment>,
    /// Up to when the book was saved as a file on this phone, as long as that is more than lies elsewhere.
    pub saved_here: Option<Moment>,
    /// What the browser promises about keeping the book, once it has answered.
    pub promised: Option<Promised>,
    /// About how many bytes the app and the book take, and how many the browser allows.
    pub room: Option<(f64, f64)>,
    /// Whether this phone's own book holds anything.
    pub own_book: bool,
    /// The night watch.
    pub night: Night,
    /// What was answered about a cold lamb without a record; empty when nothing was.
    pub cold_lamb: String,
    /// How tables were read, by their heads; empty while none was.
    pub tables: String,
    /// Digits of birth weights that are not noted yet.
    pub half_typed: BTreeMap<LambId, HalfTyped>,
}

/// Digits of a birth weight that are not noted yet: the keys have not rested, or they are still asked about. They stand there
/// again when one comes back to the lamb, unless it was weighed since.
#[derive(Clone, Debug, PartialEq)]
pub struct HalfTyped {
    /// What was typed.
    pub digits: String,
    /// In which unit.
    pub unit: System,
    /// The weight that stood noted.
    pub noted: Option<Mass>,
    /// When it was typed.
    pub at: Moment,
}

impl HalfTyped {
    /// Returns what was typed of all lambs as text, a line a lamb, as a phone keeps it.
    #[must_use]
    pub fn write(all: &BTreeMap<LambId, Self>) -> String {
        let line = |(lamb, left): (&LambId, &Self)| {
            let unit = match left.unit {
                System::Metric => "kg",
                System::Us => "lb",
            };
            let noted = left.noted.map_or("-".to_owned(), |mass| mass.as_kilograms().to_string());
            format!("{lamb} {unit} {noted} {} {}", left.at, left.digits)
        };
        all.iter().map(line).collect::<Vec<_>>().join("\n")
    }

    /// Reads it; a line that makes no sense is passed over.
    #[must_use]
    pub fn read(text: &str) -> BTreeMap<LambId, Self> {
        text.lines().filter_map(Self::line).collect()
    }

    fn line(line: &str) -> Option<(LambId, Self)> {
        let mut words = line.splitn(5, ' ');
        let lamb = words.next()?.parse().ok()?;
        let unit = match words.next()? {
            "kg" => System::Metric,
            "lb" => System::Us,
            _ => return None,
        };
        let noted = match words.next()? {
            "-" => None,
            kilograms => Some(Mass::from_kilograms(kilograms.parse().ok()?)),
        };
        let at = words.next()?.parse().ok()?;
        Some((lamb, Self { digits: words.next()?.to_owned(), unit, noted, at }))
    }
}

/// What of a book is on this phone alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unsent {
    /// How many births.
    pub births: usize,
    /// For how many whole days the book has not left it.
    pub days: i64,
}

/// How the phone's region writes, until the farm has chosen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Region {
    /// In which units.
    pub units: System,
    /// Times and dates.
    pub way: Way,
}

impl Region {
    /// Returns how times, dates and quantities are written on this phone on a farm that has chosen this clock and these units.
    #[must_use]
    pub const fn way(self, clock: Clock, system: System) -> Way {
        let hours = match clock {
            Clock::Phone => self.way.hours,
            Clock::Twelve => Hours::Twelve,
            Clock::TwentyFour => Hours::TwentyFour,
        };
        Way { hours, dates: self.way.dates, system }
    }
}

/// How the screen looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Look {
    /// As the phone has it.
    #[default]
    Phone,
    /// Ink on paper.
    Day,
    /// Dim amber on black.
    Night,
}

/// How far the app is from working with no signal.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Offline {
    /// Not known yet, or being fetched.
    #[default]
    Preparing,
    /// The worker is active and every file is in its cache.
    Ready,
    /// This browser, or an address without https, has no workers.
    Unable,
}

/// Whether what was noted is on the disk.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Saving {
    /// The book is being opened.
    #[default]
    Opening,
    /// So many entries are on their way.
    Under(usize),
    /// Everything is saved; when the last was.
    Saved(Option<Moment>),
    /// It is kept less well than it should be: in local storage, or only while this page is open.
    Poorly {
        /// Whether it lives in this page's memory alone.
        memory_only: bool,
        /// What the browser said; nothing while it does not answer, as when another tab holds on to the book.
        said: Option<String>,
    },
}

/// What the browser promises about keeping the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Promised {
    /// It is never cleared to make room.
    ForGood,
    /// It may be cleared when room runs short.
    UntilRoomIsShort,
    /// This browser makes no promises that can be asked for.
    Unknown,
}

/// Whether the screen stays on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Awake {
    /// Not asked for, or not answered yet.
    #[default]
    Unasked,
    /// It is.
    Held,
    /// The phone refuses, as it may when its battery is low.
    Refused,
    /// This browser cannot.
    Unable,
}

/// How the alarm stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Alarm {
    /// Not armed.
    #[default]
    Off,
    /// Armed, but the phone holds its voice back until it is tapped again.
    Mute,
    /// Armed; when it was tested.
    Armed(Moment),
    /// This browser has no sound.
    Unable,
}

/// One duty that someone has been told of, by what it is and how urgent it was.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Told {
    /// What, and for which animal.
    pub task: Task,
    /// How urgent.
    pub state: State,
}

impl Told {
    /// Returns what is told of a duty.
    #[must_use]
    pub fn of(duty: &Duty, now: Moment) -> Self {
        Self { task: duty.task, state: duty.state(now) }
    }

    /// Says whether this is the same duty, as urgent.
    #[must_use]
    pub fn is(&self, other: &Self) -> bool {
        self.task.asks_the_same(other.task) && self.state == other.state
    }
}

/// The night watch as it is seen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Night {
    /// Whether the screen is held awake.
    pub awake: Awake,
    /// How the alarm stands.
    pub alarm: Alarm,
    /// What it rings for now.
    pub ringing: Vec<Told>,
    /// The animal it rang for last, until someone goes there.
    pub answered: Option<Animal>,
}

/// Why a file did not go the way it should.
#[derive(Clone, Debug, PartialEq)]
pub enum FileTrouble {
    /// The person closed the share sheet.
    Closed,
    /// This browser cannot share files.
    CannotShare,
    /// It is larger than may be read; bytes.
    TooLarge(f64),
    /// The browser failed; what it said.
    Failed(String),
}

/// The book as it goes out.
#[derive(Clone, Debug, PartialEq)]
pub struct Outgoing {
    /// Its files, each with its name; more than one of a large book. At least one.
    pub files: Vec<(String, String)>,
    /// Up to when what was noted is in them.
    pub up_to: Moment,
}

impl Outgoing {
    /// Returns how many bytes all of it has.
    #[must_use]
    pub fn bytes(&self) -> usize {
        self.files.iter().map(|(_, text)| text.len()).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_that_are_kept_are_read_as_they_were_typed() {
        let lamb = |number: u128| LambId::from_uuid(uuid::Uuid::from_u128((0x019c << 112) + number));
        let at: Moment = "2026-02-25T03:12:00.000-05:00".parse().expect("a moment");
        let left = |digits: &str, unit, noted: Option<f64>| HalfTyped {
            digits: digits.to_owned(),
            unit,
            noted: noted.map(Mass::from_kilograms),
            at,
        };
        let all: BTreeMap<LambId, HalfTyped> = [
            (lamb(1), left("42", System::Metric, None)),
            (lamb(2), left("8 lb 4", System::Us, Some(3.742))),
            (lamb(3), left("8 lb ", System::Us, Some(4.0))),
        ]
        .into();
        assert_eq!(HalfTyped::read(&HalfTyped::write(&all)), all);
        assert_eq!(HalfTyped::read("what is this\n\n1 kg"), BTreeMap::new());
    }
}
