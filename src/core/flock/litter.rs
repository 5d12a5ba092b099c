//! The lambs of one birth.

use std::collections::BTreeMap;

use super::Flock;
use super::fold::top;
use crate::book::{EweId, LambId};
use crate::sort_small::{Gather, SortSmall};
use crate::units::{Mass, Moment, TimeDelta};

/// The longest that may lie between two births of one litter: seven days (ours; far longer than any, so that a late
/// entry still finds its litter, and far shorter than two lambings of one ewe).
pub const LITTER_APART: TimeDelta = TimeDelta::days(7);

/// A litter: lambs of one dam born together, or lambs noted beside each other while the dam is unknown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Litter {
    /// The first lamb, which names the litter.
    pub id: LambId,
    /// The dam, if known.
    pub dam: Option<EweId>,
    /// The lambs in the order of their birth.
    pub lambs: Vec<LambId>,
    /// When the first was born.
    pub began: Moment,
    /// When the last so far was born.
    pub latest: Moment,
    /// When all were said to be born.
    pub all_born: Option<Moment>,
}

/// A lambing counts as going on while its last birth is this fresh (ours).
const GOES_ON: TimeDelta = TimeDelta::hours(24);

impl Litter {
    const fn new(id: LambId, dam: Option<EweId>, began: Moment) -> Self {
        Self { id, dam, lambs: Vec::new(), began, latest: began, all_born: None }
    }

    /// Says whether all were said to be born, and none came after that was said.
    #[must_use]
    pub fn all_said_born(&self) -> bool {
        self.all_born.is_some_and(|said| self.latest <= said)
    }

    /// Says whether the lambing goes on: not all were said to be born, or one came after that was said.
    #[must_use]
    pub fn goes_on(&self, now: Moment) -> bool {
        !self.all_said_born() && now.since(self.latest) < GOES_ON
    }
}

/// How many lambs a litter counts as when one of them is judged by its birth weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Counted {
    /// Those born, or more that a scan saw while it goes on.
    pub lambs: usize,
    /// Whether one more may come that nobody counted on: there was no scan, and it is not long since the last.
    pub may_grow: bool,
}

/// The mean birth weight of a flock's lambs of one litter size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BirthMean {
    /// The mean.
    pub mean: Mass,
    /// Over so many lambs.
    pub lambs: u16,
}

impl Flock {
    /// Returns the mean birth weight of all lambs here that were born alive in litters of this size; triplets and
    /// more go together. None while none was weighed.
    #[must_use]
    pub fn birth_mean(&self, litter_size: usize) -> Option<BirthMean> {
        let size = |lambs: usize| lambs.clamp(1, 3);
        let of_size = |litter: &&Litter| size(self.born_in(litter)) == size(litter_size);
        mean(self.litters.values().filter(of_size).flat_map(|litter| self.weights(litter)).flatten())
    }

    /// Returns how many lambs a litter counts as at `now`. Without a scan another may come until the farm's time for looking
    /// for it is over.
    #[must_use]
    pub fn counted(&self, litter: &Litter, now: Moment) -> Counted {
        let born = litter.lambs.len();
        if !litter.goes_on(now) {
            return Counted { lambs: born, may_grow: false };
        }
        let wait = TimeDelta::minutes(i64::from(self.settings.labor.next_check_minutes));
        match litter.dam.and_then(|dam| self.scanned_for(dam, now)) {
            Some(scanned) => Counted { lambs: born.max(usize::from(scanned)), may_grow: false },
            None => Counted { lambs: born, may_grow: now.since(litter.latest) < wait },
        }
    }

    /// Returns the mean birth weight of a litter, if every lamb of it that was born alive was weighed.
    #[must_use]
    pub fn litter_mean(&self, litter: &Litter) -> Option<Mass> {
        let all: Option<Vec<Mass>> = self.weights(litter).collect();
        mean(all?.into_iter()).map(|mean| mean.mean)
    }

    /// The birth weights of a litter's lambs that were born alive; one that no lamb can have does not count.
    fn weights<'a>(&'a self, litter: &'a Litter) -> impl Iterator<Item = Option<Mass>> + 'a {
        let lambs = litter.lambs.iter().filter_map(|id| self.lambs.get(id)).filter(|lamb| lamb.born_alive);
        lambs.map(|lamb| lamb.birth_weight().filter(|weight| Mass::AT_BIRTH.check(*weight).is_ok()))
    }
}

fn mean(weights: impl Iterator<Item = Mass>) -> Option<BirthMean> {
    let (mut sum, mut lambs) = (0.0, 0_u16);
    for weight in weights {
        sum += weight.as_kilograms();
        lambs = lambs.checked_add(1)?;
    }
    (lambs > 0).then(|| BirthMean { mean: Mass::from_kilograms(sum / f64::from(lambs)), lambs })
}

/// Groups lambs, in the order of their birth, by the mate they were noted beside, else by dam and time.
pub(super) fn make(flock: &mut Flock) {
    let mates = mates(&flock.beside);
    let mut order: Vec<(Moment, LambId)> = flock.lambs.values().map(|lamb| (lamb.born, lamb.id)).collect();
    order.sort_small();
    let mut litters: BTreeMap<LambId, Litter> = BTreeMap::new();
    let mut of_mates: BTreeMap<LambId, LambId> = BTreeMap::new();
    let mut last: BTreeMap<EweId, LambId> = BTreeMap::new();
    for (born, id) in order {
        let dam = flock.lambs.get(&id).and_then(|lamb| lamb.dam);
        let mate = mates.get(&id).and_then(|of| of_mates.get(of).copied());
        let by_dam = dam.and_then(|dam| last.get(&dam).copied());
        let near =
            |litter: &LambId| litters.get(litter).is_some_and(|l| born.since(l.latest) <= LITTER_APART);
        let of_another = |litter: &LambId| {
            litters.get(litter).is_some_and(|l| l.dam.is_some() && dam.is_some() && l.dam != dam)
        };
        let found = mate.filter(|litter| !of_another(litter)).or(by_dam).filter(near);
        let key = found.unwrap_or(id);
        let litter = litters.entry(key).or_insert_with(|| Litter::new(key, dam, born));
        litter.lambs.push(id);
        litter.latest = born;
        litter.dam = litter.dam.or(dam);
        if let Some(of) = mates.get(&id) {
            of_mates.insert(*of, key);
        }
        if let Some(dam) = litter.dam {
            last.insert(dam, key);
        }
    }
    for litter in litters.values() {
        for (order, id) in litter.lambs.iter().enumerate() {
            if let Some(lamb) = flock.lambs.get_mut(id) {
                lamb.litter = litter.id;
                lamb.order = order;
                lamb.dam = lamb.dam.or(litter.dam);
            }
        }
    }
    for litter in litters.values() {
        if let Some(dam) = litter.dam {
            flock.of_dam.entry(dam).or_default().push(litter.id);
        }
    }
    flock.litters = litters;
}

/// Adds the lamb that was born last, noted beside no other, to its dam's litter, or makes a litter of it.
pub(super) fn add(flock: &mut Flock, id: LambId) {
    let Some((born, dam)) = flock.lambs.get(&id).map(|lamb| (lamb.born, lamb.dam)) else { return };
    let of_dam = dam.and_then(|dam| flock.of_dam.get(&dam)).map_or(&[][..], Vec::as_slice);
    let last = of_dam.iter().filter_map(|id| flock.litters.get(id));
    let last = last.max_by_key(|litter| (litter.latest, litter.lambs.last().copied()));
    let key = last.filter(|litter| born.since(litter.latest) <= LITTER_APART).map_or(id, |litter| litter.id);
    let litter = flock.litters.entry(key).or_insert_with(|| Litter::new(key, dam, born));
    litter.lambs.push(id);
    litter.latest = born;
    if let Some(lamb) = flock.lambs.get_mut(&id) {
        lamb.litter = key;
        lamb.order = litter.lambs.len() - 1;
    }
    if let Some(dam) = dam.filter(|_| key == id) {
        let litters = flock.of_dam.entry(dam).or_default();
        litters.insert(litters.partition_point(|litter| *litter < key), key);
    }
}

/// Notes that all lambs of a litter are born.
pub(super) fn all_born(flock: &mut Flock, lamb: LambId, at: Moment) {
    let id = flock.lamb(lamb).map(|lamb| lamb.litter);
    if let Some(litter) = id.and_then(|id| flock.litters.get_mut(&id)) {
        litter.all_born = Some(at);
    }
}

/// Returns, for each lamb noted beside another or named so, one lamb that stands for all that hang together.
///
/// Which of two was noted beside the other does not matter, since a birth may be moved before that of its mate.
fn mates(beside: &[(LambId, LambId)]) -> BTreeMap<LambId, LambId> {
    let mut up: BTreeMap<LambId, LambId> = BTreeMap::new();
    for (one, other) in beside {
        let (one, other) = (top(&mut up, *one), top(&mut up, *other));
        if one != other {
            up.insert(one.max(other), one.min(other));
        }
    }
    let named = beside.iter().flat_map(|(one, other)| [*one, *other]);
    named.map(|lamb| (lamb, top(&mut up, lamb))).gathered()
}
