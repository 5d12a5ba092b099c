//! A ewe or a lamb that is not right: how urgent it is, what it may be in order, and what is to be looked at now.
//!
//! Every row that fits is shown and the highest urgency wins. What was not pressed is not noted: it adds no cause and
//! lowers nothing. Only named good news lowers an urgency; a low ketone reading or a normal temperature never does.
//! What cannot be checked counts as the worse answer, what was not checked yet is checked within ten minutes.
//!
//! It helps to decide and replaces no vet; the tables were read twice by us and not yet by a practicing vet.

pub mod by_hand;
pub mod ewe;
pub mod fluids;
pub mod ketones;
pub mod lamb;
pub mod spread;
pub mod udder;

mod cited;

use std::cmp::Ordering;

use crate::source::Source;
use crate::terms::Gate;
use crate::units::TimeDelta;

use super::cited::{memory, ours};

/// What was not checked at first is checked within so long (ours).
pub const CHECK_WITHIN: TimeDelta = TimeDelta::minutes(10);

/// A vet who is wanted today is reached within so long (ours).
pub const TODAY_WITHIN: TimeDelta = TimeDelta::hours(12);

/// An animal of which nothing was named is looked at again after so long (ours).
pub const NOTHING_NAMED: TimeDelta = TimeDelta::hours(2);

/// A down ewe is turned so often, the soonest and the latest (memory).
pub const TURN_EVERY: (TimeDelta, TimeDelta) = (TimeDelta::hours(4), TimeDelta::hours(6));

/// Where the rules that stand above the tables come from.
pub const SOURCES: &[Source] = &[
    ours("Now: the vet by phone first, but where hands come first; today: within 12 h, not reached is now"),
    ours("Looked at again after some hours: no better is today, worse is now"),
    ours("What was not pressed lowers nothing; what cannot be checked counts as the worse answer"),
    memory("A down ewe on her chest, straw on both sides, turned every 4 to 6 h"),
];

/// A row of either table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ailment {
    /// Of the table of a ewe.
    Ewe(ewe::Row),
    /// Of the table of a lamb.
    Lamb(lamb::Row),
}

impl Ailment {
    /// Returns every row of both tables, the ewe's first.
    pub fn all() -> impl Iterator<Item = Self> {
        ewe::Row::ALL.into_iter().map(Self::Ewe).chain(lamb::Row::ALL.into_iter().map(Self::Lamb))
    }

    /// Returns where it was printed.
    #[must_use]
    pub const fn sources(self) -> &'static [Source] {
        match self {
            Self::Ewe(row) => row.sources(),
            Self::Lamb(row) => row.sources(),
        }
    }

    /// Says whether people can catch what it may be.
    #[must_use]
    pub const fn people_catch_it(self) -> bool {
        match self {
            Self::Ewe(row) => row.people_catch_it(),
            Self::Lamb(row) => row.people_catch_it(),
        }
    }
}

/// How urgent it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Urgency {
    /// Looked at again after so long.
    Watch(TimeDelta),
    /// The vet within 12 hours.
    Today,
    /// The vet by phone, now.
    Now,
}

impl Urgency {
    /// A look after so many hours.
    #[must_use]
    pub const fn hours(hours: i64) -> Self {
        Self::Watch(TimeDelta::hours(hours))
    }

    /// A look after so many minutes.
    #[must_use]
    pub const fn minutes(minutes: i64) -> Self {
        Self::Watch(TimeDelta::minutes(minutes))
    }

    const fn rank(self) -> u8 {
        match self {
            Self::Watch(_) => 0,
            Self::Today => 1,
            Self::Now => 2,
        }
    }
}

impl Ord for Urgency {
    /// A sooner look is more urgent than a later one.
    fn cmp(&self, other: &Self) -> Ordering {
        match (self, other) {
            (Self::Watch(one), Self::Watch(two)) => two.cmp(one),
            (one, two) => one.rank().cmp(&two.rank()),
        }
    }
}

impl PartialOrd for Urgency {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

/// One row of a table that fits, and how urgent it is in this animal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Finding<Row> {
    /// Which row.
    pub row: Row,
    /// How urgent.
    pub urgency: Urgency,
    /// How urgent it becomes if the animal is no better at its next look.
    pub no_better: Urgency,
    /// When it is looked at again, where the row says so.
    pub look: Option<TimeDelta>,
}

impl<Row> Finding<Row> {
    /// A row of which the vet must hear now.
    const fn now(row: Row) -> Self {
        Self { row, urgency: Urgency::Now, no_better: Urgency::Now, look: None }
    }

    /// A row of which the vet must hear today.
    const fn today(row: Row) -> Self {
        Self { row, urgency: Urgency::Today, no_better: Urgency::Today, look: None }
    }

    /// A row that is looked at again; no better is today.
    const fn watch(row: Row, after: TimeDelta) -> Self {
        Self { row, urgency: Urgency::Watch(after), no_better: Urgency::Today, look: Some(after) }
    }

    /// The same, looked at again after so long.
    const fn looked_at(self, after: TimeDelta) -> Self
    where
        Row: Copy,
    {
        Self { look: Some(after), ..self }
    }

    /// The same, no better being the vet's now.
    const fn else_now(self) -> Self
    where
        Row: Copy,
    {
        Self { no_better: Urgency::Now, ..self }
    }

    /// Now if that holds, else as it is.
    const fn or_now(self, now: bool) -> Self
    where
        Row: Copy,
    {
        if now { Self { urgency: Urgency::Now, no_better: Urgency::Now, ..self } } else { self }
    }
}

/// What a table says of an animal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer<Row, Check> {
    /// How urgent: the highest of all rows.
    pub urgency: Urgency,
    /// How urgent it becomes if the animal is no better at its next look.
    pub no_better: Urgency,
    /// When it is looked at again; none where the vet is wanted and no row asks for a look of its own.
    pub look: Option<TimeDelta>,
    /// Every row that fits, in the order in which it is told.
    pub rows: Vec<Finding<Row>>,
    /// What was not checked yet.
    pub check_now: Vec<Check>,
    /// Whether nothing may be given by mouth: the head is not up, or it was not seen to swallow.
    pub nothing_by_mouth: bool,
    /// Whether hands come before the phone.
    pub hands_first: bool,
}

impl<Row: Copy, Check> Answer<Row, Check> {
    fn of(rows: Vec<Finding<Row>>, check_now: Vec<Check>, least: Option<Finding<Row>>) -> Self {
        let judged = || rows.iter().chain(&least);
        let nothing = Urgency::Watch(NOTHING_NAMED);
        let urgency = judged().map(|found| found.urgency).max().unwrap_or(nothing);
        let no_better = judged().map(|found| found.no_better).max().unwrap_or(Urgency::Today);
        let asked = judged().filter_map(|found| found.look).min();
        let look = asked.or_else(|| matches!(urgency, Urgency::Watch(_)).then_some(NOTHING_NAMED));
        let look = if check_now.is_empty() {
            look
        } else {
            Some(look.map_or(CHECK_WITHIN, |look| look.min(CHECK_WITHIN)))
        };
        Self { urgency, no_better, look, rows, check_now, nothing_by_mouth: false, hands_first: false }
    }

    /// Returns whether a row is among those that fit.
    #[must_use]
    pub fn has(&self, row: Row) -> bool
    where
        Row: PartialEq,
    {
        self.rows.iter().any(|found| found.row == row)
    }
}

/// Returns the checks that were not done yet, in their order.
fn unchecked<Check: Copy>(gates: &[(Gate, Check)]) -> Vec<Check> {
    gates.iter().filter(|(gate, _)| *gate == Gate::NotChecked).map(|(_, check)| *check).collect()
}
