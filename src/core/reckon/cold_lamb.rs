//! What to do with a lamb of this temperature and age that does or does not hold its head up and swallow, in order.
//!
//! Whatever is not known takes the safer branch: an unknown age counts as older than five hours, and a lamb of which
//! nobody says that it swallows counts as one that does not. Glucose is never a step for a lamb of up to five hours.
//!
//! 5 h 00 min is young, a second more is older, and an unknown age is older. What lies between two tenths of a degree
//! goes by the edge it has reached: 36.95 °C is severe.
//!
//! A vet now for every cold lamb that is not seen to swallow, also where the table alone would only warm it.

use super::PerKilogram;
use super::body_temperature::{Band, band};
use super::cited::{
    EALES_82, EALES_84, HENDERSON, HENDERSON_97, IRISH_FARMERS, UK_SHEET, US_EXTENSION, WRAPPED, ours,
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
    WRAPPED,
    ours("Drying comes before warming at any age"),
    ours("Over 5 h: shelter and a wrap at once, which is no heat; heat only after glucose"),
    ours(
        "No glucose within 30 min: the vet decides by phone; nobody reached: neither way is safe, warm slowly",
    ),
    ours(
        "40.1 to 40.5 °C, bright and sucking: out of the heat, read again in 30 min; above, or dull, the vet now",
    ),
];

/// What of the older branch is ours.
const OLDER_OURS: Source =
    ours("Shelter and a wrap at once, the vet by phone, heat only after glucose; milk never under 37 °C");

/// A fever of up to so much, in a lamb that is bright and sucks, is read again before the vet is called (ours).
pub const BRIGHT_FEVER_TO: Temperature = Temperature::from_celsius(40.5);

/// Out of the heat a fever is read again after so long (ours).
pub const FEVER_AGAIN: TimeDelta = TimeDelta::minutes(30);

/// One thing to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// Leave it with the ewe, and see that it feeds.
    LeaveWithEwe,
    /// Call the vet now.
    CallVet,
    /// Out of the wind, dry, wrapped with its nose free, off the floor, in a room of 20 to 25 °C: shelter, no heat.
    ShelterAndWrap,
    /// Nothing by mouth: it does not hold its head up and swallow.
    NothingByMouth,
    /// Glucose by mouth, a little at a time, as the vet has told, before any warmth.
    GlucoseByMouthFirst,
    /// Glucose into the belly by a vet, or a person a vet has trained, before any warmth.
    GlucoseByVetFirst,
    /// No glucose within half an hour: the vet decides by phone.
    NoGlucose,
    /// Nobody is reached: neither way is safe.
    NobodyReached,
    /// Then it is warmed slowly, and the heat stopped at fits.
    WarmSlowly,
    /// Out of the box, the lamp or the sun.
    OutOfHeat,
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
    /// Take its temperature again in 30 minutes, out of the heat.
    LookAfterHeat,
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
pub struct ColdLambAnswer {
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

impl ColdLambAnswer {
    /// Returns where this row was printed.
    #[must_use]
    pub const fn sources(&self) -> &'static [Source] {
        match self.branch {
            Branch::Normal | Branch::Fever => &[UK_SHEET, IRISH_FARMERS],
            Branch::Mild => &[IRISH_FARMERS, HENDERSON_97],
            Branch::SevereYoung => &[HENDERSON, US_EXTENSION],
            Branch::SevereOlder => &[HENDERSON, EALES_82, WRAPPED, OLDER_OURS],
        }
    }
}

/// Returns what to do with a lamb.
///
/// The age of a lamb under 37 °C is the one at which its cold spell began, so that one under warmth stays there. An age
/// below zero comes from clocks that disagree and is read as just born.
///
/// # Errors
/// The temperature is outside `Temperature::IN_A_LAMB`, or no number.
///
/// ```
/// use yeanling_core::reckon::cold_lamb::{Step, decide};
/// use yeanling_core::units::{Temperature, TimeDelta};
/// let answer = decide(Temperature::from_celsius(36.0), Some(TimeDelta::hours(9)), Some(true)).unwrap();
/// let first = [Step::ShelterAndWrap, Step::CallVet, Step::GlucoseByMouthFirst];
/// assert_eq!(answer.steps[..3], first);
/// ```
pub fn decide(
    temperature: Temperature,
    age: Option<TimeDelta>,
    head_up_and_swallows: Option<bool>,
) -> Result<ColdLambAnswer, OutOfBounds<Temperature>> {
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
    let bright = !weak && temperature <= BRIGHT_FEVER_TO;
    let steps = steps(branch, weak, bright);
    let vet = if steps.contains(&Step::CallVet) {
        Vet::Now
    } else if steps.contains(&Step::LookAgain) || steps.contains(&Step::LookAfterHeat) {
        Vet::IfNoBetter
    } else {
        Vet::NotNeeded
    };
    Ok(ColdLambAnswer {
        temperature,
        age,
        head_up_and_swallows,
        band,
        branch,
        never: never(branch, weak),
        vet,
        look_again: if branch == Branch::Fever {
            Some(FEVER_AGAIN)
        } else {
            steps.contains(&Step::LookAgain).then_some(LOOK_EVERY)
        },
        dissent: (branch == Branch::SevereOlder && swallows).then_some(Dissent::TubeBeforeWarming),
        steps,
    })
}

/// The steps of a row; `weak` is a lamb that does not hold its head up and swallow, `bright` one with a low fever that
/// does.
fn steps(branch: Branch, weak: bool, bright: bool) -> Vec<Step> {
    use Step::{
        BackToEwe, CallVet, DoNotTube, Dry, Feed, FeedAt37, GlucoseByMouthFirst, GlucoseByVetFirst,
        LeaveWithEwe, LookAfterHeat, LookAgain, NoGlucose, NobodyReached, NothingByMouth, OutOfHeat, Shelter,
        ShelterAndWrap, Warm, WarmSlowly, WarmTo37,
    };
    match (branch, weak) {
        (Branch::Normal, false) => vec![LeaveWithEwe],
        (Branch::Normal, true) => vec![DoNotTube, CallVet],
        (Branch::Mild, false) => vec![Dry, Shelter, Feed, BackToEwe, LookAgain],
        (Branch::Mild, true) => vec![DoNotTube, Dry, Warm, CallVet, LookAgain],
        (Branch::SevereYoung, false) => vec![Dry, WarmTo37, LookAgain, FeedAt37, BackToEwe],
        (Branch::SevereYoung, true) => vec![Dry, WarmTo37, CallVet, LookAgain, FeedAt37, BackToEwe],
        (Branch::SevereOlder, false) => {
            let first = [ShelterAndWrap, CallVet, GlucoseByMouthFirst];
            [&first[..], &[WarmTo37, LookAgain, FeedAt37, BackToEwe, NoGlucose, NobodyReached, WarmSlowly]]
                .concat()
        }
        (Branch::SevereOlder, true) => {
            let first = [ShelterAndWrap, CallVet, NothingByMouth, GlucoseByVetFirst];
            [&first[..], &[WarmTo37, LookAgain, FeedAt37, BackToEwe, NoGlucose, NobodyReached, WarmSlowly]]
                .concat()
        }
        (Branch::Fever, false) if bright => vec![OutOfHeat, LookAfterHeat],
        (Branch::Fever, _) => vec![OutOfHeat, CallVet, LookAfterHeat],
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
