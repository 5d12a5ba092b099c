//! What to do with a lamb of this temperature and age that does or does not hold its head up and swallow, in order.
//!
//! Whatever is not known takes the safer branch: an unknown age counts as older than five hours, and a lamb of which
//! nobody says that it swallows counts as one that does not. Glucose is never a step for a lamb of up to five hours.

use super::PerKilogram;
use super::body_temperature::{Band, band};
use super::cited::{
    EALES_82, EALES_84, HENDERSON, HENDERSON_97, IRISH_FARMERS, UK_SHEET, US_EXTENSION, ours,
};
use super::colostrum::ONE_FEED;
use super::feeds::MOST_AT_ONCE_LATER;
use super::warming::LOOK_EVERY;
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, Temperature, TimeDelta, Volume};

/// Up to this age, 5 h 00 min included, a lamb is young; anything over it takes the older branch (ours).
///
/// Sources print "up to five hours" and "over five" or "over six"; the hour between counts as older.
pub const YOUNG_TO: TimeDelta = TimeDelta::hours(5);

/// What a lamb that is warm enough is fed.
pub const FEED: PerKilogram = ONE_FEED;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    IRISH_FARMERS,
    HENDERSON_97,
    HENDERSON,
    US_EXTENSION,
    EALES_82,
    EALES_84,
    UK_SHEET,
    ours("5 h 00 min is young, anything over it older; an unknown age counts as older"),
    ours("Nothing milk-based under 37 °C: the strictest reading where sources split"),
    ours("A vet now for any lamb that does not hold its head up and swallow, or of which that is not known"),
    ours("Drying comes before warming at any age"),
];

/// One thing to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// Leave it with the ewe, and see that it feeds.
    LeaveWithEwe,
    /// Call the vet now.
    CallVet,
    /// Glucose into the belly by a vet, or a person a vet has trained, before any warmth.
    GlucoseByVetFirst,
    /// Rub it dry.
    Dry,
    /// Out of wind and rain.
    Shelter,
    /// No tube.
    DoNotTube,
    /// Warm it.
    Warm,
    /// Warm it until it reads 37 °C.
    WarmTo37,
    /// Feed 50 ml/kg by bottle or tube.
    Feed,
    /// At 37 °C, with its head held up and swallowing, feed 50 ml/kg of colostrum.
    FeedAt37,
    /// Back to the ewe.
    BackToEwe,
    /// Take its temperature again in 20 minutes.
    LookAgain,
}

/// One thing not to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Never {
    /// No tube into a lamb that does not hold its head up and swallow.
    TubeWithoutSwallow,
    /// No milk and no colostrum into a lamb colder than 37 °C.
    MilkUnder37,
    /// No warmth for an older lamb before it has had energy.
    WarmBeforeGlucose,
    /// No glucose for a lamb of up to five hours.
    GlucoseWhenYoung,
}

/// Whether a vet is needed, the least first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Vet {
    /// Not for this.
    NotNeeded,
    /// If it is no better at the next look.
    IfNoBetter,
    /// Now.
    Now,
}

/// The row of the table that was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Branch {
    /// 39 to 40 °C.
    Normal,
    /// 37 to under 39 °C.
    Mild,
    /// Under 37 °C, up to 5 h old.
    SevereYoung,
    /// Under 37 °C, over 5 h old or of unknown age.
    SevereOlder,
    /// Over 40 °C.
    Fever,
}

/// What other sources would do instead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dissent {
    /// Some tube a lamb over five hours that holds its head up before they warm it (against Henderson 1996).
    TubeBeforeWarming,
}

/// What to do, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The temperature that was read.
    pub temperature: Temperature,
    /// The age, if known.
    pub age: Option<TimeDelta>,
    /// Whether it holds its head up and swallows, if known.
    pub head_up_and_swallows: Option<bool>,
    /// The band of the temperature.
    pub band: Band,
    /// The row that was taken.
    pub branch: Branch,
    /// What to do, in order.
    pub steps: Vec<Step>,
    /// What not to do.
    pub never: Vec<Never>,
    /// Whether a vet is needed.
    pub vet: Vet,
    /// When its temperature is taken again; none where the table asks for no second look.
    pub look_again: Option<TimeDelta>,
    /// What others would do.
    pub dissent: Option<Dissent>,
}

impl Answer {
    /// Returns where this row was printed.
    #[must_use]
    pub const fn sources(&self) -> &'static [Source] {
        match self.branch {
            Branch::Normal | Branch::Fever => &[UK_SHEET, IRISH_FARMERS],
            Branch::Mild => &[IRISH_FARMERS, HENDERSON_97],
            Branch::SevereYoung => &[HENDERSON, US_EXTENSION],
            Branch::SevereOlder => &[HENDERSON, EALES_82],
        }
    }
}

/// Returns what to do with a lamb.
///
/// An age below zero comes from clocks that disagree and is read as just born.
///
/// # Errors
/// The temperature is outside `Temperature::IN_A_LAMB`, or no number.
///
/// ```
/// use yeanling_core::reckon::cold_lamb::{Step, decide};
/// use yeanling_core::units::{Temperature, TimeDelta};
/// let answer = decide(Temperature::from_celsius(36.0), Some(TimeDelta::hours(9)), Some(true)).unwrap();
/// assert_eq!(answer.steps[..2], [Step::CallVet, Step::GlucoseByVetFirst]);
/// ```
pub fn decide(
    temperature: Temperature,
    age: Option<TimeDelta>,
    head_up_and_swallows: Option<bool>,
) -> Result<Answer, OutOfBounds<Temperature>> {
    let band = band(temperature)?;
    let swallows = head_up_and_swallows == Some(true);
    let young = age.is_some_and(|age| age <= YOUNG_TO);
    let branch = match band {
        Band::Fever => Branch::Fever,
        Band::Normal => Branch::Normal,
        Band::Mild => Branch::Mild,
        Band::Severe if young => Branch::SevereYoung,
        Band::Severe => Branch::SevereOlder,
    };
    // A warm lamb of which nothing is said is not taken for one that cannot swallow.
    let weak = match branch {
        Branch::Normal => head_up_and_swallows == Some(false),
        Branch::Mild | Branch::SevereYoung | Branch::SevereOlder | Branch::Fever => !swallows,
    };
    let steps = steps(branch, weak);
    let vet = if steps.contains(&Step::CallVet) {
        Vet::Now
    } else if steps.contains(&Step::LookAgain) {
        Vet::IfNoBetter
    } else {
        Vet::NotNeeded
    };
    Ok(Answer {
        temperature,
        age,
        head_up_and_swallows,
        band,
        branch,
        never: never(branch, weak),
        vet,
        look_again: steps.contains(&Step::LookAgain).then_some(LOOK_EVERY),
        dissent: (branch == Branch::SevereOlder && swallows).then_some(Dissent::TubeBeforeWarming),
        steps,
    })
}

/// The steps of a row; `weak` is a lamb that does not hold its head up and swallow.
fn steps(branch: Branch, weak: bool) -> Vec<Step> {
    use Step::{
        BackToEwe, CallVet, DoNotTube, Dry, Feed, FeedAt37, GlucoseByVetFirst, LeaveWithEwe, LookAgain,
        Shelter, Warm, WarmTo37,
    };
    match (branch, weak) {
        (Branch::Normal, false) => vec![LeaveWithEwe],
        (Branch::Normal, true) => vec![DoNotTube, CallVet],
        (Branch::Mild, false) => vec![Dry, Shelter, Feed, BackToEwe, LookAgain],
        (Branch::Mild, true) => vec![DoNotTube, Dry, Warm, CallVet, LookAgain],
        (Branch::SevereYoung, false) => vec![Dry, WarmTo37, LookAgain, FeedAt37, BackToEwe],
        (Branch::SevereYoung, true) => vec![Dry, WarmTo37, CallVet, LookAgain, FeedAt37, BackToEwe],
        (Branch::SevereOlder, _) => {
            vec![CallVet, GlucoseByVetFirst, Dry, WarmTo37, LookAgain, FeedAt37, BackToEwe]
        }
        (Branch::Fever, _) => vec![CallVet],
    }
}

fn never(branch: Branch, weak: bool) -> Vec<Never> {
    let mut never = match branch {
        Branch::Normal | Branch::Mild | Branch::Fever => Vec::new(),
        Branch::SevereYoung => vec![Never::MilkUnder37, Never::GlucoseWhenYoung],
        Branch::SevereOlder => vec![Never::WarmBeforeGlucose, Never::MilkUnder37],
    };
    if weak {
        never.push(Never::TubeWithoutSwallow);
    }
    never
}

/// Returns the one feed of 50 ml/kg that `Feed` and `FeedAt37` ask for, never over `MOST_AT_ONCE_LATER`.
///
/// # Errors
/// The weight is outside `Mass::ON_THE_BOTTLE`, 0.5 to 30 kg, or no number.
///
/// ```
/// use yeanling_core::reckon::cold_lamb::feed;
/// use yeanling_core::units::{Mass, Volume};
/// assert_eq!(feed(Mass::from_kilograms(4.0)), Ok(Volume::from_milliliters(200.0)));
/// ```
pub fn feed(weight: Mass) -> Result<Volume, OutOfBounds<Mass>> {
    let feed = FEED.of(Mass::ON_THE_BOTTLE.check(weight)?);
    Ok(if feed > MOST_AT_ONCE_LATER { MOST_AT_ONCE_LATER } else { feed })
}
