//! A season in figures: every share says of what it is one, so that none is taken for another.
//!
//! Fertility = ewes lambing ÷ put to the ram. Prolificacy = lambs born, dead or alive ÷ ewes lambing. Lambing % = born ÷ put
//! to the ram. Weaning % = weaned ÷ put to the ram. Stillbirth = dead at birth ÷ born. Loss = died before weaning ÷ born
//! alive. Weight weaned a ewe = all weaned ÷ put to the ram.

use super::cited::seen;
use crate::source::Source;
use crate::units::Mass;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Merck", "Flock figures and their denominators", None, "Veterinary Manual"),
    seen("Penn State", "Kilograms weaned a ewe; loss of 5% or less is the goal", None, ""),
    seen("Lane", "Worked example of 200 ewes", None, ""),
    seen("Oregon State", "Fertility 96 to 100%", None, ""),
    seen("UK levy board", "Reared indoors 160 to 175%", None, ""),
    seen("US and New Zealand", "Loss before weaning 11 to 15% and 20%", None, ""),
];

/// A printed mark to hold a figure against.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// From, in percent.
    pub from: f64,
    /// To, in percent.
    pub to: f64,
    /// Who says so.
    pub by: &'static str,
}

/// Fertility of a good flock (Oregon State).
pub const GOOD_FERTILITY: Mark = Mark { from: 96.0, to: 100.0, by: "Oregon State" };
/// Lambs reared indoors for each hundred ewes put to the ram (UK levy board).
pub const GOOD_WEANING: Mark = Mark { from: 160.0, to: 175.0, by: "UK levy board" };
/// What is aimed at of losses before weaning (Penn State).
pub const GOAL_LOSS: Mark = Mark { from: 0.0, to: 5.0, by: "Penn State" };
/// What is usual of losses before weaning in the United States.
pub const USUAL_LOSS: Mark = Mark { from: 11.0, to: 15.0, by: "US surveys" };

/// What a share is one of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShareOf {
    /// Ewes put to the ram.
    PutToRam,
    /// Ewes that lambed.
    Lambed,
    /// Lambs born, dead or alive.
    Born,
    /// Lambs born alive.
    BornAlive,
}

/// So many of so many.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Share {
    /// How many.
    pub count: u32,
    /// Of how many; never 0.
    pub of: u32,
    /// Of what.
    pub denominator: ShareOf,
}

impl Share {
    /// Returns the share; none of nothing.
    fn new(count: u32, of: u32, denominator: ShareOf) -> Option<Self> {
        (of > 0).then_some(Self { count, of, denominator })
    }

    /// Returns how many there are for each one.
    #[must_use]
    pub fn each(self) -> f64 {
        f64::from(self.count) / f64::from(self.of)
    }

    /// Returns the share in percent; over 100 where several are counted for each.
    #[must_use]
    pub fn percent(self) -> f64 {
        self.each() * 100.0
    }
}

/// Of what was counted, what is of ewes of which nobody noted that they were put to the ram: it is no part of those that
/// were.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Others {
    /// Of the ewes that lambed.
    pub lambed: u32,
    /// Of the lambs born, dead or alive.
    pub born: u32,
    /// Of the lambs weaned.
    pub weaned: u32,
    /// Of the weight of all that were weaned and weighed.
    pub weaned_mass: Mass,
}

/// What was counted in a season.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Counts {
    /// Ewes put to the ram; none when nobody noted it.
    pub put_to_ram: Option<u32>,
    /// What of all that follows is of other ewes than those.
    pub others: Others,
    /// Ewes that lambed, also those that lost all their lambs.
    pub lambed: u32,
    /// Lambs born alive.
    pub born_alive: u32,
    /// Lambs born dead.
    pub born_dead: u32,
    /// Lambs born alive that died before they were weaned.
    pub died: u32,
    /// Lambs weaned.
    pub weaned: u32,
    /// The weight of all that were weaned and weighed.
    pub weaned_mass: Option<Mass>,
    /// How many of the weaned were weighed.
    pub weaned_weighed: u32,
}

impl Counts {
    /// Returns the lambs born, dead or alive.
    #[must_use]
    pub const fn born(&self) -> u32 {
        self.born_alive + self.born_dead
    }
}

/// The figures of a season; none where nothing can be divided by, or nobody noted it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figures {
    /// Ewes lambing of those put to the ram.
    pub fertility: Option<Share>,
    /// Lambs born for each ewe lambing.
    pub prolificacy: Option<Share>,
    /// Lambs born for each ewe put to the ram.
    pub lambing: Option<Share>,
    /// Lambs weaned for each ewe put to the ram.
    pub weaning: Option<Share>,
    /// Dead at birth of all born.
    pub stillbirth: Option<Share>,
    /// Died before weaning of those born alive.
    pub loss: Option<Share>,
    /// Weaned for each ewe put to the ram.
    pub weaned_a_ewe: Option<Mass>,
}

/// Returns the figures of what was counted. A rate of the ewes put to the ram counts those alone, so never more of them
/// lamb than there are.
///
/// ```
/// use yeanling_core::reckon::flock_figures::{Counts, figures};
/// let season = Counts { put_to_ram: Some(200), lambed: 190, born_alive: 360, born_dead: 25, ..Counts::default() };
/// assert_eq!(format!("{:.1}", figures(&season).lambing.unwrap().percent()), "192.5");
/// ```
#[must_use]
pub fn figures(counts: &Counts) -> Figures {
    let others = &counts.others;
    let put = |count: u32, of_others: u32| {
        let count = count.saturating_sub(of_others);
        counts.put_to_ram.and_then(|of| Share::new(count, of, ShareOf::PutToRam))
    };
    let a_ewe = |mass: Mass, ewes: u32| {
        let mass = mass.as_kilograms() - others.weaned_mass.as_kilograms();
        (ewes > 0).then(|| Mass::from_kilograms(mass / f64::from(ewes)))
    };
    Figures {
        fertility: put(counts.lambed, others.lambed),
        prolificacy: Share::new(counts.born(), counts.lambed, ShareOf::Lambed),
        lambing: put(counts.born(), others.born),
        weaning: put(counts.weaned, others.weaned),
        stillbirth: Share::new(counts.born_dead, counts.born(), ShareOf::Born),
        loss: Share::new(counts.died, counts.born_alive, ShareOf::BornAlive),
        weaned_a_ewe: counts.weaned_mass.zip(counts.put_to_ram).and_then(|(mass, ewes)| a_ewe(mass, ewes)),
    }
}
