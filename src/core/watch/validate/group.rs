//! Whether something may be noted of a group: a ewe is in one at a time, and a ram goes out after he came in.
//!
//! When a group was formed binds nothing: the ram often went in weeks before anyone wrote it down. Where a ram stays,
//! or nobody noted that he came out, a ewe is free for another group once she has lambed, or his days are over.

use chrono::NaiveDate;

use super::Rejection;
use super::here::{group_here, living, text};
use crate::book::{Animal, EntryId, EweId, GroupId, MOST_TAG};
use crate::flock::{Flock, Group, GroupStay};
use crate::reckon::season::mating::OPEN_DAYS;
use crate::units::{Moment, TimeDelta};

/// Why something cannot be noted of a group.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum GroupRejection {
    /// The group is not in the book, or was broken up by then.
    #[error("no such group")]
    NoSuchGroup,
    /// The ewe is in this or another group over the same days.
    #[error("she is in the group {name} since {since}")]
    InAGroup {
        /// What that group is called.
        name: String,
        /// Since when she is in it.
        since: Moment,
    },
    /// The ewe is not in this group at that time.
    #[error("she is not in this group")]
    NotInGroup,
    /// The ram would go out before he came in.
    #[error("the ram would go out at {ram_out} before he came in at {ram_in}")]
    OutBeforeIn {
        /// When he came in.
        ram_in: Moment,
        /// When he would go out.
        ram_out: Moment,
    },
    /// No ram is in the group at that time.
    #[error("no ram is in")]
    NoRamIn,
    /// The group would be broken up before something that was noted of it.
    #[error("broken up at {at}, before what happened at {later}")]
    UsedLater {
        /// When it would be broken up.
        at: Moment,
        /// What was noted last of who came in.
        later: Moment,
    },
    /// A plan is for a day that has passed, or lies too far ahead.
    #[error("{day} is not from {today} to {most}")]
    NotAhead {
        /// The day.
        day: NaiveDate,
        /// Today.
        today: NaiveDate,
        /// The last day that can be planned.
        most: NaiveDate,
    },
}

/// The group, if it was not broken up by then.
fn whole(flock: &Flock, group: GroupId, at: Moment) -> Result<&Group, Rejection> {
    let group = group_here(flock, group)?;
    match group.parted {
        Some(parted) if parted <= at => Err(GroupRejection::NoSuchGroup.into()),
        Some(_) | None => Ok(group),
    }
}

/// A ewe joins when she is in no other group over the same days: those until she leaves, or its ram is out.
pub(super) fn joined(
    flock: &Flock,
    instead_of: Option<EntryId>,
    ewe: EweId,
    id: GroupId,
    at: Moment,
) -> Result<(), Rejection> {
    living(flock, Animal::Ewe(ewe), at)?;
    let group = whole(flock, id, at)?;
    let until = group.taken_until(at, group.parted);
    let stays = flock.ewe(ewe).map_or(&[][..], |ewe| ewe.stays.as_slice());
    for stay in stays.iter().filter(|stay| Some(stay.entry) != instead_of) {
        let Some(there) = flock.groups.get(&stay.group) else { continue };
        // What ended by the join that is now amended goes on without it.
        let left = stay.left.filter(|_| instead_of.is_none() || stay.left_by != instead_of);
        let end = if stay.group == id { left } else { free_from(flock, stay, there, left) };
        if end.is_none_or(|end| end > at) && until.is_none_or(|until| until > stay.joined) {
            return Err(GroupRejection::InAGroup { name: there.name.clone(), since: stay.joined }.into());
        }
    }
    Ok(())
}

/// When a stay no longer stands in the way of another group: when she left or the ram went out, when she has lambed since
/// she joined, or when a ram that was never taken out no longer counts.
fn free_from(flock: &Flock, stay: &GroupStay, there: &Group, left: Option<Moment>) -> Option<Moment> {
    there.taken_until(stay.joined, left).or_else(|| {
        let lambed = flock.lambed_since(stay.ewe, stay.joined).map(|litter| litter.began);
        let counted =
            there.ram_times().last().map(|(came, _)| stay.joined.max(*came) + TimeDelta::days(OPEN_DAYS));
        lambed.into_iter().chain(counted).min()
    })
}

pub(super) fn left(
    flock: &Flock,
    instead_of: Option<EntryId>,
    ewe: EweId,
    group: GroupId,
    at: Moment,
) -> Result<(), Rejection> {
    living(flock, Animal::Ewe(ewe), at)?;
    group_here(flock, group)?;
    let here = |stay: &&GroupStay| {
        let goes_on = stay.left.is_none_or(|left| left > at) || stay.left_by == instead_of;
        stay.group == group && stay.joined <= at && goes_on
    };
    let stays = flock.ewe(ewe).map_or(&[][..], |ewe| ewe.stays.as_slice());
    stays.iter().find(here).map(|_| ()).ok_or(Rejection::Group(GroupRejection::NotInGroup))
}

/// A ram comes in whenever the group is whole; his coming may not be moved past his going.
pub(super) fn ram_in(
    flock: &Flock,
    instead_of: Option<EntryId>,
    group: GroupId,
    at: Moment,
) -> Result<(), Rejection> {
    let group = whole(flock, group, at)?;
    let own = group.rams.iter().find(|ram| Some(ram.entry) == instead_of);
    match own.and_then(|ram| ram.out) {
        Some(ram_out) if ram_out <= at => Err(GroupRejection::OutBeforeIn { ram_in: at, ram_out }.into()),
        Some(_) | None => Ok(()),
    }
}

pub(super) fn ram_out(
    flock: &Flock,
    instead_of: Option<EntryId>,
    group: GroupId,
    at: Moment,
) -> Result<(), Rejection> {
    let group = group_here(flock, group)?;
    let goes_on = |out: Option<Moment>, out_by: Option<EntryId>| {
        out.is_none_or(|out| out > at) || (instead_of.is_some() && out_by == instead_of)
    };
    let in_then = |ram: &&crate::flock::Ram| goes_on(ram.out, ram.out_by);
    let first = group.rams.iter().filter(in_then).map(|ram| ram.came).min();
    match first {
        Some(came) if came < at => Ok(()),
        Some(ram_in) => Err(GroupRejection::OutBeforeIn { ram_in, ram_out: at }.into()),
        None => Err(GroupRejection::NoRamIn.into()),
    }
}

/// A group is broken up after all who came into it.
pub(super) fn parted(
    flock: &Flock,
    instead_of: Option<EntryId>,
    id: GroupId,
    at: Moment,
) -> Result<(), Rejection> {
    let group = if instead_of.is_some() { group_here(flock, id)? } else { whole(flock, id, at)? };
    let joined = group.members.iter().map(|stay| stay.joined);
    let later = joined.chain(group.rams.iter().map(|ram| ram.came)).max();
    match later {
        Some(later) if later > at => Err(GroupRejection::UsedLater { at, later }.into()),
        Some(_) | None => Ok(()),
    }
}

/// A ram stays where one is in, and counts as in for some time yet after he came.
pub(super) fn ram_stays(
    flock: &Flock,
    group: GroupId,
    until: Option<Moment>,
    at: Moment,
) -> Result<(), Rejection> {
    let group = whole(flock, group, at)?;
    let came = group.rams.iter().filter(|ram| ram.out.is_none_or(|out| out > at)).map(|ram| ram.came).min();
    match (came, until) {
        (None, _) => Err(GroupRejection::NoRamIn.into()),
        (Some(ram_in), _) if ram_in > at => Err(GroupRejection::OutBeforeIn { ram_in, ram_out: at }.into()),
        (Some(ram_in), Some(ram_out)) if ram_out <= ram_in => {
            Err(GroupRejection::OutBeforeIn { ram_in, ram_out }.into())
        }
        (Some(_), _) => Ok(()),
    }
}

/// A day lies ahead, at most so many days (ours: two seasons).
pub(super) const MOST_DAYS_AHEAD: i64 = 730;

/// What is planned, is planned for a day that is to come, and for a group that stands.
pub(super) fn planned(
    flock: &Flock,
    group: Option<GroupId>,
    on: Option<NaiveDate>,
    at: Moment,
) -> Result<(), Rejection> {
    group.map_or(Ok(()), |group| whole(flock, group, at).map(|_| ()))?;
    let Some(day) = on else { return Ok(()) };
    let today = at.local().date();
    let most = today + TimeDelta::days(MOST_DAYS_AHEAD);
    if (today..=most).contains(&day) {
        Ok(())
    } else {
        Err(GroupRejection::NotAhead { day, today, most }.into())
    }
}

/// A step of feed waits so many days at most (ours): after that the next step has come.
const MOST_DAYS_PUT_OFF: i64 = 14;

/// A step of extra feed waits until a day that is to come, and not long.
pub(super) fn feed_put_off(
    flock: &Flock,
    group: GroupId,
    until: NaiveDate,
    at: Moment,
) -> Result<(), Rejection> {
    whole(flock, group, at)?;
    let today = at.local().date();
    let most = today + TimeDelta::days(MOST_DAYS_PUT_OFF);
    if until > today && until <= most {
        Ok(())
    } else {
        Err(GroupRejection::NotAhead { day: until, today, most }.into())
    }
}

/// Each ram that is meant for a group has a name.
pub(super) fn rams_meant(flock: &Flock, group: GroupId, rams: &[String]) -> Result<(), Rejection> {
    group_here(flock, group)?;
    rams.iter().try_for_each(|ram| text(ram, MOST_TAG))
}
