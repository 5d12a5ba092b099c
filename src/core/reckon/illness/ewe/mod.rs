//! What a ewe that is not right may have, and how urgent it is. A down ewe is always the vet's now.
//!
//! Something that is out under the tail fits at any stage; only signs that mean another thing at another time go by the
//! stage, and where the stage is not known every row that they may mean is shown.

mod leads;
mod row;

pub use leads::Lead;
pub use row::Row;

use super::cited::{HOBBY_FARMS, INFOVETS, LIMA, NADIS, OURS, PENN, RAISING_SHEEP};
use super::ketones::CLINICAL_FROM;
use super::{Answer, Finding, unchecked};
use crate::source::Source;
use crate::terms::{EweSign as Sign, EweStage as Stage, Gate, Onset};
use crate::units::{Ketones, Temperature, TimeDelta};

/// From here on it is fever whatever the day is like (ours, by the printed normals).
pub const FEVER_FROM: Temperature = Temperature::from_celsius(40.5);
/// Twice so warm, half an hour apart and out of sun and heat, is fever too.
pub const FEVER_TWICE_FROM: Temperature = Temperature::from_celsius(40.0);
/// Normal, the least and the most (Pennsylvania; Hobby Farms).
pub const NORMAL: (Temperature, Temperature) =
    (Temperature::from_celsius(38.6), Temperature::from_celsius(40.0));
/// Colder than this a ewe is ill too (ours; the lowest normal that is printed).
pub const COLD_UNDER: Temperature = Temperature::from_celsius(38.3);
/// Heartbeats a minute at rest, the least and the most.
pub const PULSE: (u16, u16) = (60, 90);
/// Breaths a minute at rest, the least and the most; near 60 in heat.
pub const BREATHS: (u16, u16) = (12, 20);

/// An afterbirth is asked for after so long, is the vet's today, and then only while she is bright and eats.
pub const AFTERBIRTH: (TimeDelta, TimeDelta, TimeDelta) =
    (TimeDelta::hours(6), TimeDelta::hours(12), TimeDelta::hours(18));

/// Where the normal figures and the table of a down ewe come from; each row has its own.
pub const SOURCES: &[Source] = &[PENN, HOBBY_FARMS, INFOVETS, NADIS, RAISING_SHEEP, LIMA, OURS];

/// What is asked first of every ewe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Check {
    /// Whether she stands.
    Standing,
    /// Whether she eats.
    Eating,
    /// Whether there is no bleeding and nothing out.
    NothingOut,
}

/// What is known of a ewe that is not right.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Case {
    /// Where she is in her year.
    pub stage: Stage,
    /// Whether she stands.
    pub standing: Gate,
    /// Whether she eats.
    pub eating: Gate,
    /// Whether there is no bleeding and nothing out.
    pub nothing_out: Gate,
    /// What is seen of her.
    pub signs: Vec<Sign>,
    /// Over how long.
    pub onset: Option<Onset>,
    /// The highest temperature that was read.
    pub highest: Option<Temperature>,
    /// The lowest that was read.
    pub lowest: Option<Temperature>,
    /// Whether she read 40.0 °C and over twice, half an hour apart.
    pub warm_twice: bool,
    /// The highest ketone reading.
    pub ketones: Option<Ketones>,
    /// How long ago her last lamb was born, if it was in these days.
    pub since_last_lamb: Option<TimeDelta>,
    /// How many others aborted this season.
    pub others_aborted: usize,
}

impl Case {
    fn has(&self, sign: Sign) -> bool {
        self.signs.contains(&sign)
    }

    fn any(&self, signs: &[Sign]) -> bool {
        signs.iter().any(|sign| self.has(*sign))
    }

    /// Good news counts only where its bad counterpart was not seen.
    fn good(&self, sign: Sign) -> bool {
        self.has(sign) && sign.ends().is_none_or(|bad| !self.has(bad))
    }

    fn in_stage(&self, stages: &[Stage]) -> bool {
        self.stage == Stage::Unknown || stages.contains(&self.stage)
    }

    /// Before her lambing: late in lamb, or in labor.
    fn before(&self) -> bool {
        self.in_stage(&[Stage::LateInLamb, Stage::Labor])
    }

    fn down(&self) -> bool {
        self.standing.is_bad()
    }

    fn fever(&self) -> bool {
        self.warm_twice || self.highest.is_some_and(|highest| tenths(highest) >= tenths(FEVER_FROM))
    }

    fn off_feed(&self) -> bool {
        self.eating.is_bad() || self.has(Sign::SecondMealRefused)
    }

    fn dull(&self) -> bool {
        self.has(Sign::Dull)
    }

    fn clinical(&self) -> bool {
        self.ketones.is_some_and(|ketones| ketones >= CLINICAL_FROM)
    }

    /// Ill by herself, whatever the row is about.
    fn ill(&self) -> bool {
        self.fever() || self.off_feed() || self.dull() || self.down()
    }

    fn slow(&self) -> bool {
        self.onset == Some(Onset::Days) || self.clinical()
    }
}

/// What can be out of her or run from her; where it was said that something is and not what, the worst is taken.
pub const OUT: [Sign; 6] =
    [Sign::SmoothOut, Sign::RawOut, Sign::BowelOut, Sign::AfterbirthHangs, Sign::Bleeds, Sign::FoulDischarge];

/// Tenths of a degree, as a thermometer shows them, whatever binary fractions say.
fn tenths(temperature: Temperature) -> f64 {
    (temperature.as_celsius() * 10.0).round()
}

/// Returns what a ewe may have and how urgent that is.
///
/// ```
/// use yeanling_core::reckon::illness::{Urgency, ewe::{Case, Row, decide}};
/// use yeanling_core::terms::EweSign;
/// let knobs = Case { signs: vec![EweSign::RawOut], ..Case::default() };
/// assert_eq!(decide(&knobs).urgency, Urgency::Now);
/// assert!(decide(&knobs).has(Row::WombOut));
/// ```
#[must_use]
pub fn decide(case: &Case) -> Answer<Row, Check> {
    let mut rows: Vec<Finding<Row>> = Vec::new();
    for row in order(case) {
        let told = rows.iter().any(|found| found.row == row);
        rows.extend(finding(case, row).filter(|_| !told));
    }
    let dull = dull(case);
    if let Some(dull) = dull
        && rows.iter().all(|found| found.urgency < dull.urgency)
    {
        rows.push(dull);
    }
    let gates = [
        (case.standing, Check::Standing),
        (case.eating, Check::Eating),
        (case.nothing_out, Check::NothingOut),
    ];
    let mut answer = Answer::of(rows, unchecked(&gates), dull);
    answer.nothing_by_mouth =
        case.down() || answer.has(Row::LowCalcium) || case.any(&[Sign::Fits, Sign::CudAtNose]);
    answer.hands_first = case.any(&[Sign::OnBack, Sign::Bleeds]);
    answer
}

/// The rows in the order in which they are told: for a down ewe in the order of its own table, then as they stand.
fn order(case: &Case) -> Vec<Row> {
    let mut order = vec![Row::MayBeNotifiable, Row::Cast];
    if case.down() {
        let seen_first = [
            Row::BowelOut,
            Row::WombOut,
            Row::VaginaOut,
            Row::Bleeding,
            Row::Bloat,
            Row::UdderCold,
            Row::UdderHot,
            Row::Listeria,
            Row::Copper,
            Row::Grain,
        ];
        order.extend(seen_first.into_iter().filter(|row| by_signs(case, *row).is_some()));
    }
    if case.before() && case.slow() && case.stage != Stage::Unknown {
        order.extend([Row::Toxemia, Row::LowCalcium]);
    } else if case.before() {
        order.extend([Row::LowCalcium, Row::Toxemia]);
    } else if case.stage == Stage::AfterLambing && case.down() {
        order.extend([Row::WombInfected, Row::LowCalcium, Row::HurtByBirth]);
    } else if case.down() || case.any(&[Sign::Fits, Sign::Stiff, Sign::Twitches]) {
        order.extend([
            Row::LowMagnesium,
            Row::LowCalcium,
            Row::Brain,
            Row::UdderHot,
            Row::WombInfected,
            Row::Chest,
        ]);
    }
    order.extend(Row::ALL.into_iter().filter(|row| *row != Row::Dull));
    order
}

/// Says whether a row is among those that a down ewe of this stage may have, whatever else is seen of her.
fn may_lay_her_down(case: &Case, row: Row) -> bool {
    if !case.down() {
        return false;
    }
    let milking = [Row::UdderHot, Row::WombInfected, Row::Chest].contains(&row);
    row == Row::LowCalcium
        || row == Row::Toxemia && case.before()
        || row == Row::CervixTight && case.stage == Stage::Labor
        || row == Row::HurtByBirth && case.in_stage(&[Stage::AfterLambing])
        || row == Row::LowMagnesium && case.in_stage(&[Stage::Milking])
        || milking && case.stage == Stage::Milking
}

/// Returns how urgent a row is in this ewe, if it fits her. In a down ewe each row is the vet's now.
fn finding(case: &Case, row: Row) -> Option<Finding<Row>> {
    let found = by_signs(case, row);
    if case.down() && (found.is_some() || may_lay_her_down(case, row)) {
        return Some(Finding::now(row));
    }
    found
}

fn by_signs(case: &Case, row: Row) -> Option<Finding<Row>> {
    let now = |fits: bool| fits.then(|| Finding::now(row));
    let today = |fits: bool| fits.then(|| Finding::today(row));
    let unsure_out = case.nothing_out == Gate::CannotCheck || case.nothing_out.is_bad() && !case.any(&OUT);
    match row {
        Row::MayBeNotifiable => now(case.has(Sign::ManyIll)),
        Row::Cast => {
            let up = Finding::watch(row, TimeDelta::hours(1)).else_now();
            case.has(Sign::OnBack).then(|| up.or_now(!case.standing.is_good()))
        }
        Row::LowCalcium => now(case.any(&[Sign::Wobbly, Sign::CudAtNose]) || case.before() && shakes(case)),
        Row::Toxemia => toxemia(case),
        Row::Listeria => now(case.any(&[Sign::FaceOneSided, Sign::Circles, Sign::Drools])),
        Row::Brain => {
            let not_before = !case.before() || case.stage == Stage::Unknown;
            let blind = case.any(&[Sign::Blind, Sign::PressesHead, Sign::MuzzleTremor]);
            now(case.any(&[Sign::StarGazing, Sign::Fits])
                || not_before && blind
                || case.before() && shakes(case))
        }
        Row::LowMagnesium => now(shakes(case) && (!case.before() || case.stage == Stage::Unknown)),
        Row::VaginaOut => {
            let back = case.good(Sign::WentBack) && !case.has(Sign::StrainsWithIt);
            let out = case.any(&[Sign::SmoothOut, Sign::StrainsWithIt, Sign::WentBack]);
            out.then(|| Finding::today(row).looked_at(TimeDelta::hours(2)).else_now().or_now(!back))
        }
        Row::WombOut => now(case.has(Sign::RawOut) || unsure_out),
        Row::BowelOut => now(case.has(Sign::BowelOut)),
        Row::CervixTight => now(case.has(Sign::CervixTight)),
        Row::AfterbirthKept => case.has(Sign::AfterbirthHangs).then(|| afterbirth(case)),
        Row::WombInfected => case.has(Sign::FoulDischarge).then(|| Finding::today(row).or_now(case.ill())),
        Row::UdderCold => now(case.has(Sign::UdderCold)),
        Row::UdderHot => {
            case.has(Sign::UdderHot).then(|| Finding::today(row).or_now(case.fever() || case.off_feed()))
        }
        Row::UdderFirm => today(case.has(Sign::UdderFirm)),
        Row::NoMilk => today(case.has(Sign::NoMilk)),
        Row::Lame if case.has(Sign::NoWeightOnLeg) => today(true),
        Row::Lame => case.has(Sign::Lame).then(|| Finding::watch(row, TimeDelta::hours(24))),
        Row::Chest => {
            let worse = case.fever() || case.dull() || case.has(Sign::MouthOpen);
            let chest = case.any(&[Sign::Coughs, Sign::FastBreath, Sign::MouthOpen]);
            chest.then(|| Finding::today(row).or_now(worse))
        }
        Row::Bloat => now(case.has(Sign::LeftFlankDrum)),
        Row::Grain => now(case.has(Sign::GotAtGrain)),
        Row::Copper => now(case.has(Sign::YellowOrDarkUrine)),
        Row::Aborted => {
            // A second ewe is now (ours, sooner than printed).
            let another = case.others_aborted >= 1;
            case.has(Sign::Aborted).then(|| Finding::today(row).or_now(another || case.ill()))
        }
        Row::HurtByBirth => None,
        Row::Bleeding => now(case.has(Sign::Bleeds) || unsure_out),
        Row::Worms => today(case.any(&[Sign::PaleEyelids, Sign::SwollenJaw])),
        Row::Dull => None,
    }
}

/// Fits, stiffness and twitching, which mean another thing before her lambing than after.
fn shakes(case: &Case) -> bool {
    case.any(&[Sign::Fits, Sign::Stiff, Sign::Twitches])
}

fn toxemia(case: &Case) -> Option<Finding<Row>> {
    let seen =
        [Sign::KeepsApart, Sign::Blind, Sign::PressesHead, Sign::MuzzleTremor, Sign::Wobbly, Sign::CudAtNose];
    let before = case.before() && (case.any(&seen) || case.off_feed() || shakes(case));
    let ketotic = case.ketones.is_some_and(|ketones| ketones >= super::ketones::KETOTIC_FROM);
    if !before && !case.has(Sign::SweetBreath) && !ketotic {
        return None;
    }
    let worse = [Sign::Blind, Sign::PressesHead, Sign::MuzzleTremor, Sign::Wobbly, Sign::CudAtNose];
    let well = case.eating.is_good() && case.good(Sign::Sees) && !case.has(Sign::SecondMealRefused);
    let now = !well || case.clinical() || case.any(&worse) || shakes(case) || case.dull();
    Some(Finding::today(Row::Toxemia).else_now().or_now(now))
}

fn afterbirth(case: &Case) -> Finding<Row> {
    let row = Row::AfterbirthKept;
    let (ask, late, long) = AFTERBIRTH;
    let well = case.eating.is_good() && case.good(Sign::Bright);
    let found = match case.since_last_lamb {
        Some(since) if since < late => Finding::watch(row, ask),
        Some(since) if since < long => Finding::today(row).looked_at(ask),
        // Nobody knows for how long, or long: today only while she is seen bright and eating.
        Some(_) | None => Finding::today(row).looked_at(ask).or_now(!well),
    };
    found.or_now(case.ill())
}

/// Dull, off feed, apart or feverish: told where no other row says as much, and never less urgent for another.
fn dull(case: &Case) -> Option<Finding<Row>> {
    let cold = case.lowest.is_some_and(|lowest| tenths(lowest) < tenths(COLD_UNDER));
    let told = [Sign::Dull, Sign::KeepsApart, Sign::Scours];
    let dull = case.any(&told) || case.off_feed() || case.fever() || cold || case.down();
    let poorly = case.dull() || case.off_feed();
    let refused =
        case.has(Sign::SecondMealRefused) || case.eating.is_bad() && case.onset == Some(Onset::Days);
    let late = case.in_stage(&[Stage::LateInLamb]) && poorly;
    let now = case.down() || late || refused || case.fever() && poorly || cold && poorly;
    dull.then(|| Finding::today(Row::Dull).or_now(now))
}
