//! What a lamb that is not right may have, and how urgent it is.
//!
//! A lamb that is cold goes on by the table of the cold lamb with what was already answered. A chin that is wet again after
//! wiping counts from six hours on: before that it may be the birth. What is not known of the age takes the worse branch.

mod leads;
mod row;

pub use leads::Lead;
pub use row::Row;

use super::cited::{DVM360, INFOVETS, NADIS, OURS};
use super::fluids;
use super::{Answer, Finding, Urgency, unchecked};
use crate::reckon::body_temperature::{Band, band};
use crate::reckon::cold_lamb::{BRIGHT_FEVER_TO, FEVER_AGAIN, YOUNG_TO};
use crate::reckon::warming::LOOK_EVERY;
use crate::source::Source;
use crate::terms::{Gate, LambSign as Sign};
use crate::units::{Temperature, TimeDelta};

/// From this age on a chin that is wet again after wiping is taken for watery mouth.
pub const WET_CHIN_FROM: TimeDelta = TimeDelta::hours(6);
/// Watery mouth is usual to this age.
pub const WATERY_MOUTH_TO: TimeDelta = TimeDelta::hours(72);
/// A hungry lamb that was fed is looked at again after so long (ours).
pub const AFTER_FEEDING: TimeDelta = TimeDelta::hours(1);
/// After a hard pull a lamb is looked at twice.
pub const AFTER_HARD_BIRTH: (TimeDelta, TimeDelta) = (TimeDelta::hours(2), TimeDelta::hours(4));

/// Up to this age a lamb whose head is up need not suck yet (it tries to stand and suck within 30 minutes: a veterinary
/// newsletter of 2017).
pub const SUCKS_BY: TimeDelta = TimeDelta::minutes(30);
/// One that does not suck yet is dried, rubbed and looked at again after so long (ours).
const SUCKS_AGAIN: TimeDelta = TimeDelta::minutes(10);

const FOUR_DAYS: TimeDelta = TimeDelta::days(4);
const THREE_DAYS: TimeDelta = TimeDelta::days(3);
const ONE_DAY: TimeDelta = TimeDelta::days(1);
const THREE_WEEKS: TimeDelta = TimeDelta::days(21);
const ONE_HOUR: TimeDelta = TimeDelta::hours(1);

/// Where the table's order comes from; each row has its own sources.
pub const SOURCES: &[Source] = &[INFOVETS, NADIS, DVM360, OURS];

/// What is asked first of every lamb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Check {
    /// Whether its head is up.
    HeadUp,
    /// Whether it swallows and sucks.
    Swallows,
    /// Whether it is warm.
    Warm,
}

/// What is known of a lamb that is not right.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Case {
    /// How old it is, at the most, if known.
    pub age: Option<TimeDelta>,
    /// How old it was when something was first seen, where that is some time ago; both ages then count.
    pub first_seen_age: Option<TimeDelta>,
    /// How old it was when its cold began, if it is cold and that is known.
    pub cold_since_age: Option<TimeDelta>,
    /// Whether its head is up.
    pub head_up: Gate,
    /// Whether it swallows and sucks.
    pub swallows: Gate,
    /// Whether it is warm.
    pub warm: Gate,
    /// What is seen of it.
    pub signs: Vec<Sign>,
    /// Its last temperature.
    pub temperature: Option<Temperature>,
    /// How long a fold of skin stands, in seconds.
    pub tent_seconds: Option<u8>,
    /// Whether its chin was seen wet only at an age at which it may have been wet from birth.
    pub chin_from_birth: bool,
    /// Whether it is on the bottle.
    pub on_bottle: bool,
    /// Whether its birth was a hard pull.
    pub hard_birth: bool,
    /// How many others of two weeks and more were found dead in these days.
    pub others_dead: usize,
}

impl Case {
    fn has(&self, sign: Sign) -> bool {
        self.signs.contains(&sign)
    }

    fn any(&self, signs: &[Sign]) -> bool {
        signs.iter().any(|sign| self.has(*sign))
    }

    fn good(&self, sign: Sign) -> bool {
        self.has(sign) && sign.ends().is_none_or(|bad| !self.has(bad))
    }

    fn dull(&self) -> bool {
        self.has(Sign::Dull)
    }

    fn bright_and_sucks(&self) -> bool {
        self.good(Sign::Lively) && self.swallows.is_good() && !self.head_up.is_bad()
    }

    fn no_suck(&self) -> bool {
        self.swallows.is_bad() || self.head_up.is_bad()
    }

    /// Younger than that, or nobody knows.
    fn may_be_under(&self, age: TimeDelta) -> bool {
        self.first_seen_age.or(self.age).is_none_or(|known| known < age)
    }

    /// So old, or nobody knows.
    fn may_be_from(&self, age: TimeDelta) -> bool {
        self.age.is_none_or(|known| known >= age)
    }

    fn band(&self) -> Option<Band> {
        self.temperature.and_then(|temperature| band(temperature).ok())
    }

    fn cold(&self) -> bool {
        self.band() == Some(Band::Severe) || self.warm.is_bad()
    }

    /// Wet again after wiping; a chin that may have been wet from birth is so until it is seen to stay dry.
    fn wet_chin(&self) -> bool {
        let dry = self.chin_from_birth && self.has(Sign::ChinDry);
        self.any(&[Sign::WetChin, Sign::Rattles]) && !dry
    }

    /// Its head is up and it does not suck yet, so young that it may still find out how.
    fn sucks_not_yet(&self) -> bool {
        let young = self.age.is_some_and(|age| age < SUCKS_BY);
        young
            && self.head_up.is_good()
            && self.swallows.is_bad()
            && !self.any(&[Sign::Dull, Sign::CannotStand])
    }
}

/// Returns what a lamb may have and how urgent that is.
///
/// ```
/// use yeanling_core::reckon::illness::{Urgency, lamb::{Case, Row, decide}};
/// use yeanling_core::terms::LambSign;
/// use yeanling_core::units::TimeDelta;
/// let drools = Case { age: Some(TimeDelta::hours(26)), signs: vec![LambSign::WetChin], ..Case::default() };
/// assert_eq!(decide(&drools).urgency, Urgency::Now);
/// assert!(decide(&drools).has(Row::WateryMouth));
/// ```
#[must_use]
pub fn decide(case: &Case) -> Answer<Row, Check> {
    let mut rows: Vec<Finding<Row>> = Row::ALL.into_iter().filter_map(|row| finding(case, row)).collect();
    let dull = dull(case);
    if let Some(dull) = dull
        && rows.iter().all(|found| found.urgency < dull.urgency)
    {
        rows.push(dull);
    }
    let gates = [(case.head_up, Check::HeadUp), (case.swallows, Check::Swallows), (case.warm, Check::Warm)];
    let mut answer = Answer::of(rows, unchecked(&gates), dull);
    answer.nothing_by_mouth =
        answer.rows.iter().any(|found| found.row.shuts_mouth()) || case.has(Sign::NoAnus);
    answer.hands_first = answer.has(Row::NotBreathing) || answer.has(Row::ColdYoung);
    answer
}

/// Returns what a well-grown lamb that was found dead says: the body is kept cool and taken to a laboratory within a day,
/// and the second of these days is the vet's now.
#[must_use]
pub fn found_dead(others_dead: usize) -> Answer<Row, Check> {
    let found = Finding::today(Row::FoundDead).or_now(others_dead > 0);
    Answer::of(vec![found], Vec::new(), None)
}

fn finding(case: &Case, row: Row) -> Option<Finding<Row>> {
    let now = |fits: bool| fits.then(|| Finding::now(row));
    let today = |fits: bool| fits.then(|| Finding::today(row).or_now(case.no_suck()));
    match row {
        Row::MayBeNotifiable => now(case.has(Sign::MoreDying)),
        Row::NotBreathing => now(case.has(Sign::NotBreathing)),
        Row::NoSwallow if case.sucks_not_yet() => Some(Finding::watch(row, SUCKS_AGAIN).else_now()),
        Row::NoSwallow => now(case.no_suck()),
        Row::WateryMouth => belly(case, row, case.may_be_under(WATERY_MOUTH_TO)),
        Row::Bloat => {
            let older = case.may_be_from(WATERY_MOUTH_TO);
            belly(case, row, older || case.on_bottle && case.has(Sign::TightBelly))
        }
        Row::ColdYoung => (case.cold() && young(case)).then(|| {
            let swallows = case.swallows.is_good() && !case.head_up.is_bad() || case.sucks_not_yet();
            Finding::watch(row, LOOK_EVERY).else_now().or_now(!swallows)
        }),
        Row::ColdOlder => now(case.cold() && !young(case)),
        Row::Hot => hot(case),
        Row::Dysentery => now(case.has(Sign::BloodInDung) && case.may_be_under(THREE_WEEKS)),
        Row::Coccidia => {
            let worse = case.has(Sign::BloodInDung) || case.dull() || case.no_suck();
            let blood = case.has(Sign::BloodInDung) && case.may_be_from(THREE_WEEKS);
            let fits = case.has(Sign::DarkStraining) || blood;
            fits.then(|| Finding::today(row).or_now(worse))
        }
        Row::Scour => scour(case),
        Row::NoDung => no_dung(case),
        Row::Joint => today(case.any(&[Sign::HotJoint, Sign::Limps])),
        Row::Navel => case.has(Sign::ThickNavel).then(|| {
            let fever = case.band() == Some(Band::Fever);
            Finding::today(row).or_now(case.dull() || fever || case.no_suck())
        }),
        Row::Chest => chest(case),
        Row::WhiteMuscle => {
            today(case.has(Sign::StiffLegs)).map(|found| found.or_now(case.has(Sign::CannotStand)))
        }
        Row::Wobbly => {
            let fits = case.any(&[Sign::WobblyBehind, Sign::ShakingHairy]);
            today(fits).map(|found| found.or_now(case.has(Sign::CannotStand)))
        }
        Row::Leg => {
            let fits = case.any(&[Sign::LegDangles, Sign::Limps, Sign::OpenOrThigh]);
            today(fits).map(|found| found.or_now(case.has(Sign::OpenOrThigh)))
        }
        Row::Tetanus => now(case.has(Sign::RigidJawShut)),
        Row::Fits => now(case.has(Sign::FitsHeadBack)),
        Row::BowelOut => now(case.has(Sign::BowelAtNavel)),
        Row::MilkInLung => now(case.has(Sign::MilkFromNose)),
        Row::Hungry => {
            case.any(&[Sign::HollowBelly, Sign::Hunched]).then(|| Finding::watch(row, AFTER_FEEDING))
        }
        Row::Eye => case.any(&[Sign::LidIn, Sign::CloudyEye]).then(|| {
            if case.good(Sign::EyeClear) {
                Finding::watch(row, TimeDelta::hours(12))
            } else {
                Finding::today(row)
            }
        }),
        Row::Orf => case.has(Sign::ScabsOnLips).then(|| {
            let unfed = case.has(Sign::HollowBelly) || case.no_suck();
            if unfed { Finding::today(row) } else { Finding::watch(row, TimeDelta::hours(24)) }
        }),
        Row::HardBirth => {
            let soon = case.may_be_under(WET_CHIN_FROM) && case.hard_birth;
            (soon && case.dull()).then(|| Finding::watch(row, ONE_HOUR).else_now())
        }
        Row::Wound => case
            .any(&[Sign::Wound, Sign::DeepWound])
            .then(|| Finding::today(row).or_now(case.has(Sign::DeepWound) || case.dull())),
        Row::FoundDead | Row::Dull => None,
    }
}

/// The branch of a cold lamb is fixed when its cold begins.
fn young(case: &Case) -> bool {
    case.cold_since_age.or(case.age).is_some_and(|age| age <= YOUNG_TO)
}

/// A tight belly or a wet chin: the vet's now, but for a tight belly in a lamb that is seen bright and sucking, and for a
/// chin that may still be wet from birth: those are looked at in an hour.
fn belly(case: &Case, row: Row, of_its_age: bool) -> Option<Finding<Row>> {
    let wet = row == Row::WateryMouth && case.wet_chin();
    let tight = case.has(Sign::TightBelly) && of_its_age;
    let now = wet && case.may_be_from(WET_CHIN_FROM) || tight && !case.bright_and_sucks();
    (wet || tight).then(|| Finding::watch(row, ONE_HOUR).else_now().or_now(now))
}

/// Over 40 °C: out of the heat and read again; today only up to 40.5 °C while it is seen bright and sucking.
fn hot(case: &Case) -> Option<Finding<Row>> {
    let read = case.temperature.filter(|_| case.band() == Some(Band::Fever))?;
    let mild = read <= BRIGHT_FEVER_TO && case.bright_and_sucks();
    Some(Finding::today(Row::Hot).looked_at(FEVER_AGAIN).else_now().or_now(!mild))
}

fn scour(case: &Case) -> Option<Finding<Row>> {
    let row = Row::Scour;
    let tent = case.tent_seconds.and_then(fluids::tent);
    if !case.any(&[Sign::WateryScour, Sign::EyesSunken, Sign::EyesDeep]) && tent.is_none() {
        return None;
    }
    let scours = case.has(Sign::WateryScour);
    let dry = tent == Some(Urgency::Now) || case.any(&[Sign::EyesDeep, Sign::CannotStand]);
    if dry || scours && (case.no_suck() || case.dull() && case.may_be_under(FOUR_DAYS)) {
        return Some(Finding::now(row));
    }
    if tent == Some(Urgency::Today) || case.has(Sign::EyesSunken) {
        return Some(Finding::today(row));
    }
    let lively = case.bright_and_sucks() && case.tent_seconds.is_some();
    let watched = lively && !case.may_be_under(FOUR_DAYS);
    scours.then(|| if watched { Finding::watch(row, TimeDelta::hours(6)) } else { Finding::today(row) })
}

fn no_dung(case: &Case) -> Option<Finding<Row>> {
    let row = Row::NoDung;
    if case.has(Sign::NoAnus) || case.has(Sign::NoDung) && case.has(Sign::TightBelly) {
        return Some(Finding::now(row));
    }
    case.has(Sign::NoDung).then(|| {
        if case.may_be_from(ONE_DAY) { Finding::today(row) } else { Finding::watch(row, TimeDelta::hours(6)) }
    })
}

fn chest(case: &Case) -> Option<Finding<Row>> {
    let fits = case.any(&[Sign::CoughsOften, Sign::BreathesFast, Sign::BreathesByMouth]);
    let worse = case.has(Sign::BreathesByMouth) || case.no_suck() || case.band() == Some(Band::Fever);
    fits.then(|| Finding::today(Row::Chest).or_now(worse))
}

/// Dull, or down, told where no other row says as much, and never less urgent for another.
fn dull(case: &Case) -> Option<Finding<Row>> {
    let row = Row::Dull;
    if case.has(Sign::CannotStand) {
        return Some(Finding::now(row));
    }
    case.dull().then(|| match (case.may_be_under(THREE_DAYS), case.may_be_from(THREE_DAYS)) {
        (true, false) => Finding::watch(row, ONE_HOUR).else_now(),
        (false, true | false) => Finding::today(row),
        (true, true) => Finding::today(row).looked_at(ONE_HOUR).else_now(),
    })
}
