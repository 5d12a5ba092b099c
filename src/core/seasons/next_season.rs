//! Next season from this one: the groups that have lambed, with their rams, a year on by the same weekday; culls are left out,
//! ewes that were kept and never put to a ram come in.

use std::collections::BTreeSet;

use chrono::{NaiveDate, TimeDelta};

use super::keeping::Kept;
use super::lambing_forecasts::LambingForecasts;
use crate::book::{EweId, GroupId};
use crate::flock::{EARLIEST_BIRTH, Ewe, Flock, Group, Staying, days};
use crate::sort_small::{Gather, SortSmall};
use crate::units::Moment;

/// A year by whole weeks, so that the weekday stays.
const A_YEAR: TimeDelta = TimeDelta::days(364);

/// A group as it may be next season.
#[derive(Clone, Debug, PartialEq)]
pub struct NextGroup {
    /// The group that it comes from.
    pub from: GroupId,
    /// What it is called, with the year in which the ram goes in.
    pub name: String,
    /// The rams that were in, by what they are called.
    pub rams: Vec<String>,
    /// The day the ram goes in.
    pub ram_in: NaiveDate,
    /// The day he comes out; nothing where none was noted.
    pub ram_out: Option<NaiveDate>,
    /// Who goes in: who was in it, lives and is no cull, and who is new.
    pub ewes: Vec<EweId>,
    /// Who was in it and meets a cull rule.
    pub culls: Vec<EweId>,
    /// Who is new: kept as a ewe, and never put to a ram.
    pub new: Vec<EweId>,
}

/// Returns the groups of next season: of each group of the last ram season of which no ewe is awaited any more, and whose ram
/// does not stay. Who is new goes to the first.
#[must_use]
pub fn next_season(
    flock: &Flock,
    kept: &[Kept],
    forecasts: &LambingForecasts,
    now: Moment,
) -> Vec<NextGroup> {
    let came = |group: &Group| group.ram_times().last().map(|(came, _)| *came);
    let Some(latest) = flock.groups.values().filter_map(came).max() else { return Vec::new() };
    let is_last = |group: &&Group| came(group).is_some_and(|came| days(came, latest) < EARLIEST_BIRTH);
    let stays = |group: &Group| group.staying().is_some_and(|staying| staying == Staying::UntilLambed);
    let awaits = |group: &Group| forecasts.awaited.iter().any(|awaited| awaited.group == group.id);
    let is_over = |group: &&Group| !stays(group) && !awaits(group);
    let mut groups: Vec<&Group> = flock.groups.values().filter(is_last).filter(is_over).collect();
    groups.sort_small_by_key(|group| (group.formed, group.id));
    let culls: BTreeSet<EweId> =
        kept.iter().filter(|one| !one.marks.is_empty()).map(|one| one.ewe).gathered();
    let mut new: Vec<EweId> =
        flock.ewes.values().filter(|ewe| is_new(flock, ewe)).map(|ewe| ewe.id).collect();
    new.retain(|ewe| !culls.contains(ewe));
    let mut next: Vec<NextGroup> =
        groups.into_iter().filter_map(|group| of_group(flock, group, &culls, now)).collect();
    if let Some(first) = next.first_mut() {
        first.ewes.extend(&new);
        first.new = new;
    }
    next.retain(|one| !one.ewes.is_empty());
    next
}

/// Says whether a ewe was kept and never put to a ram.
fn is_new(flock: &Flock, ewe: &Ewe) -> bool {
    ewe.lives() && ewe.was.is_some() && ewe.stays.is_empty() && flock.litters_of(ewe.id).is_empty()
}

fn of_group(flock: &Flock, group: &Group, culls: &BTreeSet<EweId>, now: Moment) -> Option<NextGroup> {
    let today = now.local().date();
    let (came, out) = group.ram_times().last().copied()?;
    let of_that_time = group.rams.iter().filter(|ram| ram.out == out);
    let rams = of_that_time.filter_map(|ram| ram.label.clone()).collect();
    let mut ram_in = came.local().date() + A_YEAR;
    let long = out.map(|out| out.local().date() - came.local().date());
    while ram_in < today {
        ram_in += A_YEAR;
    }
    // Who was there to the end: in it still, or until it ended.
    let to_the_end = group.members.iter().filter(|stay| stay.left.is_none() || stay.left == group.parted);
    let living = to_the_end.map(|stay| stay.ewe).filter(|ewe| flock.ewe(*ewe).is_some_and(Ewe::lives));
    let mut ewes: Vec<EweId> = living.collect();
    ewes.dedup();
    let (culled, ewes): (Vec<EweId>, Vec<EweId>) = ewes.into_iter().partition(|ewe| culls.contains(ewe));
    let year = chrono::Datelike::year(&ram_in);
    Some(NextGroup {
        from: group.id,
        name: named(&group.name, year),
        rams,
        ram_in,
        ram_out: long.map(|long| ram_in + long),
        ewes,
        culls: culled,
        new: Vec::new(),
    })
}

/// Returns a name with a year, in the place of one that stood behind it.
fn named(name: &str, year: i32) -> String {
    let is_year = |word: &str| word.len() == 4 && word.bytes().all(|byte| byte.is_ascii_digit());
    let plain = match name.rsplit_once(' ') {
        Some((plain, last)) if is_year(last) => plain,
        Some(_) | None => name,
    };
    let plain: String = plain.chars().take(19).collect();
    format!("{} {year}", plain.trim_end())
}
