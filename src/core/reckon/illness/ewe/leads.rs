//! What alone leads to a row: the table asked one thing at a time, so that what is read of a row is what the table does.

use std::sync::LazyLock;

use super::{Case, Check, Row, decide};
use crate::terms::{EweSign as Sign, EweStage as Stage, Gate, Onset};

/// What leads to a row by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lead {
    /// A sign.
    Sign(Sign),
    /// The worse answer to what is asked first.
    Not(Check),
}

const STAGES: [Stage; 6] =
    [Stage::Unknown, Stage::LateInLamb, Stage::Labor, Stage::AfterLambing, Stage::Milking, Stage::Other];

/// Every row with each thing that leads to it.
static LEADS: LazyLock<Vec<(Row, Lead)>> = LazyLock::new(|| {
    let mut leads: Vec<(Row, Lead)> = Vec::new();
    let mut add = |row: Row, lead: Lead| {
        if !leads.contains(&(row, lead)) {
            leads.push((row, lead));
        }
    };
    for sign in Sign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
        for stage in STAGES {
            let case = Case { stage, signs: vec![sign], ..Case::default() };
            decide(&case).rows.iter().for_each(|found| add(found.row, Lead::Sign(sign)));
        }
    }
    // Much may lay a ewe down: it is told where the row comes first.
    for check in [Check::Standing, Check::Eating, Check::NothingOut] {
        for (stage, onset) in STAGES.into_iter().flat_map(|stage| [(stage, None), (stage, Some(Onset::Days))])
        {
            let first = decide(&bad(check, stage, onset)).rows.first().map(|found| found.row);
            first.into_iter().for_each(|row| add(row, Lead::Not(check)));
        }
    }
    leads
});

fn bad(check: Check, stage: Stage, onset: Option<Onset>) -> Case {
    let case = Case { stage, onset, ..Case::default() };
    match check {
        Check::Standing => Case { standing: Gate::Bad, ..case },
        Check::Eating => Case { eating: Gate::Bad, ..case },
        Check::NothingOut => Case { nothing_out: Gate::Bad, ..case },
    }
}

impl Row {
    /// Returns what leads to it by itself, signs first; nothing for a row that only stands beside others.
    ///
    /// ```
    /// use yeanling_core::reckon::illness::ewe::{Lead, Row};
    /// use yeanling_core::terms::EweSign;
    /// assert_eq!(Row::Cast.leads().collect::<Vec<_>>(), [Lead::Sign(EweSign::OnBack)]);
    /// ```
    pub fn leads(self) -> impl Iterator<Item = Lead> {
        LEADS.iter().filter(move |(row, _)| *row == self).map(|(_, lead)| *lead)
    }
}
