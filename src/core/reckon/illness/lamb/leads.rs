//! What alone leads to a row: the table asked one thing at a time, so that what is read of a row is what the table does.

use std::sync::LazyLock;

use super::{Case, Check, Row, decide};
use crate::terms::{Gate, LambSign as Sign};
use crate::units::TimeDelta;

/// What leads to a row by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lead {
    /// A sign.
    Sign(Sign),
    /// The worse answer to what is asked first.
    Not(Check),
}

/// One age of each kind that the table tells apart.
const AGES: [Option<TimeDelta>; 6] = [
    None,
    Some(TimeDelta::hours(2)),
    Some(TimeDelta::hours(26)),
    Some(TimeDelta::days(5)),
    Some(TimeDelta::days(15)),
    Some(TimeDelta::days(35)),
];

/// Every row with each thing that leads to it.
static LEADS: LazyLock<Vec<(Row, Lead)>> = LazyLock::new(|| {
    let mut leads: Vec<(Row, Lead)> = Vec::new();
    let mut add = |row: Row, lead: Lead| {
        if !leads.contains(&(row, lead)) {
            leads.push((row, lead));
        }
    };
    for sign in Sign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
        for (age, hard_birth) in AGES.into_iter().flat_map(|age| [(age, false), (age, true)]) {
            let case = Case { age, hard_birth, signs: vec![sign], ..Case::default() };
            decide(&case).rows.iter().for_each(|found| add(found.row, Lead::Sign(sign)));
        }
    }
    for check in [Check::HeadUp, Check::Swallows, Check::Warm] {
        for age in AGES {
            let rows = decide(&bad(check, age)).rows;
            rows.iter().for_each(|found| add(found.row, Lead::Not(check)));
        }
    }
    leads
});

fn bad(check: Check, age: Option<TimeDelta>) -> Case {
    let case = Case { age, ..Case::default() };
    match check {
        Check::HeadUp => Case { head_up: Gate::Bad, ..case },
        Check::Swallows => Case { swallows: Gate::Bad, ..case },
        Check::Warm => Case { warm: Gate::Bad, ..case },
    }
}

impl Row {
    /// Returns what leads to it by itself, signs first; nothing for a row that is measured or found.
    ///
    /// ```
    /// use yeanling_core::reckon::illness::lamb::{Lead, Row};
    /// use yeanling_core::terms::LambSign;
    /// assert_eq!(Row::Orf.leads().collect::<Vec<_>>(), [Lead::Sign(LambSign::ScabsOnLips)]);
    /// ```
    pub fn leads(self) -> impl Iterator<Item = Lead> {
        LEADS.iter().filter(move |(row, _)| *row == self).map(|(_, lead)| *lead)
    }
}
