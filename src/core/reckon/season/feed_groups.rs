//! Extra feed by what a ewe carries and how she is: what each group gets a day, step by step, and the bags it takes.
//!
//! What a group gets is the energy that its row asks for over that of the first 15 weeks, which its hay is taken to give:
//! `(row − first 15 weeks) ÷ energy of the feed as fed`, up to the next 10 g. Who is thin gets as much over twins as twins
//! get over a single.

use super::bounds::{BALE, DAYS_OF_FEEDING, DRY_MATTER, ENERGY_OF_FEED, EWES, Refused};
use super::chances::rounded_up;
use super::dates::Crop;
use super::feed_steps::Steps;
use super::requirement::{Energy, FeedStage, OutsideTable, late_2007, need};
use crate::reckon::cited::{common, memory, ours, seen};
use crate::source::Source;
use crate::units::{Condition, Mass};

/// Under this score a ewe is fed as thin in late pregnancy (Making More from Sheep: 2.5 at least).
pub const THIN_UNDER: f64 = 2.5;

/// Days before the first lamb from which it is brought in (a feed mill's longer span, for twins and more).
pub const DAYS_BEFORE_FIRST: i64 = 42;

/// Over this much a ewe in a day it is given in two feeds, in kilograms (common practice).
pub const TWO_FEEDS_OVER: f64 = 0.5;

/// Energy in the dry matter of grain, and how dry it is, until the farm reads its label (memory: barley and corn).
pub const USUAL_FEED: (Energy, f64) = (Energy::from_megacalories(3.0), 0.88);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("National Research Council", "Nutrient Requirements of Sheep, Table 1", Some(1985), ""),
    seen("Veterinary chapter", "NRC 2007: 4.37 and 4.95 Mcal late in pregnancy with two and three", None, ""),
    seen("Making More from Sheep", "Late in pregnancy a score of 2.5 at least", None, ""),
    seen("Feed mill", "Extra feed from 4 to 6 weeks before at 180 to 225%", None, ""),
    memory("Grain: 3.0 Mcal of energy in a kilogram of dry matter, 88% dry"),
    common("More than 500 g of grain a ewe a day is given in two feeds"),
    ours("Hay is taken to give what the first 15 weeks ask; the rest is extra feed, up to the next 10 g"),
    ours(
        "Three lambs: the row of twins by NRC 2007’s three to two; thin: as much over twins as twins over one",
    ),
];

/// By what ewes are fed together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FeedGroup {
    /// One lamb.
    Single,
    /// Two.
    Twins,
    /// Three and more.
    Triplets,
    /// Under [`THIN_UNDER`], whatever she carries up to two.
    Thin,
    /// Not scanned: fed as twins (ours, the safer branch).
    NotScanned,
}

impl FeedGroup {
    /// All of them, in the order of the card.
    pub const ALL: [Self; 5] = [Self::Single, Self::Twins, Self::Triplets, Self::Thin, Self::NotScanned];

    /// Returns the group of a ewe scanned with so many lambs, and scored so.
    ///
    /// ```
    /// use yeanling_core::reckon::season::feed_groups::FeedGroup;
    /// use yeanling_core::units::Condition;
    /// let thin = Some(Condition::from_quarters(8));
    /// assert_eq!(FeedGroup::of(Some(2), thin), FeedGroup::Thin);
    /// assert_eq!(FeedGroup::of(Some(3), thin), FeedGroup::Triplets);
    /// assert_eq!(FeedGroup::of(None, None), FeedGroup::NotScanned);
    /// ```
    #[must_use]
    pub fn of(lambs: Option<u8>, score: Option<Condition>) -> Self {
        let thin = score.is_some_and(|score| score.as_score() < THIN_UNDER);
        match lambs {
            Some(3..) => Self::Triplets,
            _ if thin => Self::Thin,
            Some(2) => Self::Twins,
            Some(1) => Self::Single,
            Some(0) | None => Self::NotScanned,
        }
    }

    /// Returns the energy that one ewe of this weight asks for over what her hay gives.
    fn over_hay(self, weight: Mass) -> Result<f64, OutsideTable> {
        let of = |stage| need(stage, weight).map(|need| need.row.energy.as_megacalories());
        let hay = of(FeedStage::FirstFifteenWeeks)?;
        let single = of(FeedStage::LastFourWeeks(Crop::Usual))?;
        let twins = of(FeedStage::LastFourWeeks(Crop::Prolific))?;
        let mcal = |lambs| late_2007(lambs).map_or(0.0, Energy::as_megacalories);
        let asked = match self {
            Self::Single => single,
            Self::Twins | Self::NotScanned => twins,
            Self::Triplets => twins * mcal(3) / mcal(2),
            Self::Thin => twins + (twins - single),
        };
        Ok(asked - hay)
    }
}

/// What is fed, and the bag it comes in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Feed {
    /// Metabolizable energy in a kilogram of dry matter.
    pub energy: Energy,
    /// The share of dry matter.
    pub dry_matter: f64,
    /// What one bag weighs.
    pub bag: Mass,
}

/// What one group gets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Portion {
    /// Which group.
    pub group: FeedGroup,
    /// How many ewes.
    pub ewes: u32,
    /// What each gets in a day once it is brought in, as fed.
    pub each: Mass,
    /// How it is brought in.
    pub steps: Steps,
    /// What the group gets in all.
    pub total: Mass,
}

impl Portion {
    /// Returns what goes into the trough for the whole group so many days after the first.
    #[must_use]
    pub fn trough(&self, day: i64) -> Mass {
        Mass::from_kilograms(self.steps.on_day(day).as_kilograms() * f64::from(self.ewes))
    }
}

/// What to feed each group, and what to buy.
#[derive(Clone, Debug, PartialEq)]
pub struct FeedingCard {
    /// The groups with ewes in them, in the order of the card.
    pub portions: Vec<Portion>,
    /// Days of feeding.
    pub days: u16,
    /// What all get in all.
    pub given: Mass,
    /// What one bag weighs.
    pub bag: Mass,
    /// Bags to buy, rounded up.
    pub bags: u32,
}

/// Why there is no card.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoCard {
    /// A figure outside what it may be.
    #[error(transparent)]
    Refused(#[from] Refused),
    /// No row for ewes so light or so heavy.
    #[error(transparent)]
    Outside(#[from] OutsideTable),
}

/// Returns the feeding card of ewes of this weight over so many days.
///
/// # Errors
/// A figure is outside what it may be, there are no ewes, or the table has no row for the weight.
///
/// ```
/// use yeanling_core::reckon::season::feed_groups::{Feed, FeedGroup, USUAL_FEED, card};
/// use yeanling_core::units::Mass;
/// let kg = Mass::from_kilograms;
/// let feed = Feed { energy: USUAL_FEED.0, dry_matter: USUAL_FEED.1, bag: kg(25.0) };
/// // 70 kg: 3.8 and 4.4 less 2.8 Mcal, at 2.64 Mcal in a kilogram as fed.
/// let card = card(kg(70.0), &[(FeedGroup::Single, 10), (FeedGroup::Twins, 10)], feed, 42).unwrap();
/// assert_eq!(card.portions.iter().map(|one| one.each).collect::<Vec<_>>(), [kg(0.38), kg(0.61)]);
/// ```
pub fn card(weight: Mass, ewes: &[(FeedGroup, u32)], feed: Feed, days: u16) -> Result<FeedingCard, NoCard> {
    let all = ewes.iter().fold(0_u32, |sum, (_, ewes)| sum.saturating_add(*ewes));
    EWES.check(f64::from(all))?;
    DAYS_OF_FEEDING.check(f64::from(days))?;
    let energy = ENERGY_OF_FEED.check(feed.energy.as_megacalories())?;
    let as_fed = (energy * DRY_MATTER.check(feed.dry_matter)?).max(0.1);
    let bag = BALE.check(feed.bag.as_kilograms())?;
    let mut portions = Vec::new();
    for group in FeedGroup::ALL {
        let count = ewes.iter().filter(|(of, _)| *of == group).map(|(_, ewes)| ewes).sum::<u32>();
        if count == 0 {
            continue;
        }
        let over = group.over_hay(weight)?;
        let each = Mass::from_kilograms((over / as_fed * 100.0 - 1e-9).ceil().max(1.0) / 100.0);
        let usual = Steps::default();
        let steps = usual.up_to(each)?;
        let total = steps.together(i64::from(days)).as_kilograms() * f64::from(count);
        portions.push(Portion { group, ewes: count, each, steps, total: Mass::from_kilograms(total) });
    }
    let given: f64 = portions.iter().map(|portion| portion.total.as_kilograms()).sum();
    let bags = rounded_up(given / bag);
    Ok(FeedingCard { portions, days, given: Mass::from_kilograms(given), bag: feed.bag, bags })
}
