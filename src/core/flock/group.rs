//! A group of ewes that is put to the ram together, and the days on which each of them can have been mated.
//!
//! Where a ewe is at a time is kept with her, as her stays; a group's members are gathered from them.
//!
//! A ewe is in one group at a time; a ram is a label of his time with a group, and all go out at once.

use chrono::NaiveDate;

use super::{Flock, Scan, plan};
use crate::book::{Animal, EntryId, Event, EweId, GroupId, RamAge, Standing};
use crate::sort_small::SortSmall;
use crate::units::{Mass, Moment};

/// A group.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// Its id.
    pub id: GroupId,
    /// When it was formed.
    pub formed: Moment,
    /// What it is called.
    pub name: String,
    /// The rams that were ever in with it, in the order in which they came.
    pub rams: Vec<Ram>,
    /// The crayons, each with when it was put on.
    pub crayons: Vec<(Moment, String)>,
    /// What a ewe got of extra feed in a day, each with since when; nothing says that it ended.
    pub feeds: Vec<(Moment, Mass)>,
    /// Until which day the next step of its extra feed waits, if it does, and since when.
    pub feed_waits: Option<(Moment, NaiveDate)>,
    /// When its ewes had their booster.
    pub boosters: Vec<Moment>,
    /// When it was broken up.
    pub parted: Option<Moment>,
    /// Every stay of a ewe in it, by ewe and then by time.
    pub members: Vec<GroupStay>,
    /// Who joined it, while the book is read: whoever is still here when it is broken up leaves it then.
    joined: Vec<EweId>,
}

/// A ram's time with a group.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ram {
    /// The entry that noted that he came.
    pub entry: EntryId,
    /// What he is called by, if anything.
    pub label: Option<String>,
    /// How old he is, if said.
    pub age: Option<RamAge>,
    /// When he came in.
    pub came: Moment,
    /// When he was taken out.
    pub out: Option<Moment>,
    /// The entry that noted it.
    pub out_by: Option<EntryId>,
    /// Whether he stays with the group.
    pub stays: Staying,
}

/// Whether a ram that is in stays, as the farm answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Staying {
    /// Nobody said so: his day out will be noted.
    #[default]
    Unsaid,
    /// Until each ewe has lambed.
    UntilLambed,
    /// He counts as in until then.
    Until(Moment),
}

/// A ewe's stay in a group.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GroupStay {
    /// Who.
    pub ewe: EweId,
    /// When she joined.
    pub joined: Moment,
    /// Where.
    pub group: GroupId,
    /// The entry that noted that she joined.
    pub entry: EntryId,
    /// When she left: by herself, with all when the group was broken up, or by joining another.
    pub left: Option<Moment>,
    /// The entry that ended it.
    pub left_by: Option<EntryId>,
}

/// The time in which a ewe was with a ram.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MatingWindow {
    /// Who.
    pub ewe: EweId,
    /// In which group.
    pub group: GroupId,
    /// When that ram came to the group.
    pub came: Moment,
    /// Since when he was with her.
    pub ram_in: Moment,
    /// Until when; nothing while one still is.
    pub ram_out: Option<Moment>,
    /// Whether the ram that still is with her stays until she has lambed.
    pub stays: bool,
}

/// A crayon mark on a ewe.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CrayonMark {
    /// When it was seen.
    pub at: Moment,
    /// Its color, in the farm's own word.
    pub color: String,
}

impl Group {
    pub(super) const fn new(id: GroupId, formed: Moment, name: String) -> Self {
        Self {
            id,
            formed,
            name,
            rams: Vec::new(),
            crayons: Vec::new(),
            feeds: Vec::new(),
            feed_waits: None,
            boosters: Vec::new(),
            parted: None,
            members: Vec::new(),
            joined: Vec::new(),
        }
    }

    /// Returns the ewes that are in it, by id.
    pub fn ewes(&self) -> impl Iterator<Item = EweId> {
        self.members.iter().filter(|stay| stay.left.is_none()).map(|stay| stay.ewe)
    }

    /// Returns the times in which at least one ram was with it, oldest first; the last is open while one is in.
    #[must_use]
    pub fn ram_times(&self) -> Vec<(Moment, Option<Moment>)> {
        self.times().map(|(came, out, _)| (came, out)).collect()
    }

    /// Returns whether the rams that are in stay; nothing while none is.
    #[must_use]
    pub fn staying(&self) -> Option<Staying> {
        self.rams_in().next().map(|ram| ram.stays)
    }

    fn times(&self) -> impl Iterator<Item = (Moment, Option<Moment>, Staying)> {
        // All rams are taken out at once, so those that went out together were in together.
        let mut last = None;
        self.rams
            .iter()
            .filter(move |ram| last.replace(ram.out) != Some(ram.out))
            .map(|ram| (ram.came, ram.out, ram.stays))
    }

    /// Returns how many rams are in, and of what age each is, if said.
    pub fn rams_in(&self) -> impl Iterator<Item = &Ram> {
        self.rams.iter().filter(|ram| ram.out.is_none())
    }

    /// Returns for each ewe and each time with a ram when she was with it, by ewe and then by time.
    #[must_use]
    pub fn windows(&self) -> Vec<MatingWindow> {
        self.members.iter().flat_map(|stay| self.windows_of(stay)).collect()
    }

    /// Returns the crayon that is on the rams, if it was noted.
    #[must_use]
    pub fn crayon(&self) -> Option<&str> {
        self.crayons.last().map(|(_, color)| color.as_str())
    }

    /// Returns what a ewe gets of extra feed in a day, if it was noted.
    #[must_use]
    pub fn feed(&self) -> Option<Mass> {
        self.feeds.last().map(|(_, mass)| *mass)
    }

    /// Returns the times in which a ewe's stay and a ram's met.
    pub(super) fn windows_of<'a>(&'a self, stay: &GroupStay) -> impl Iterator<Item = MatingWindow> + use<'a> {
        let GroupStay { ewe, group, joined, left, .. } = *stay;
        self.times().filter_map(move |(came, out, staying)| {
            let ram_in = joined.max(came);
            let out = match staying {
                Staying::Until(until) => out.or(Some(until)),
                Staying::Unsaid | Staying::UntilLambed => out,
            };
            let stays = staying == Staying::UntilLambed && left.is_none() && out.is_none();
            let ram_out = match (left, out) {
                (Some(left), Some(out)) => Some(left.min(out)),
                (one, other) => one.or(other),
            };
            ram_out.is_none_or(|out| out > ram_in).then_some(MatingWindow {
                ewe,
                group,
                came,
                ram_in,
                ram_out,
                stays,
            })
        })
    }

    /// Returns the end of the days that a stay here takes up: when she left, or when the last ram went out since.
    #[must_use]
    pub fn taken_until(&self, joined: Moment, left: Option<Moment>) -> Option<Moment> {
        left.or_else(|| {
            let (_, out) = self.ram_times().last().copied()?;
            out.filter(|out| *out > joined)
        })
    }
}

impl Flock {
    /// Returns the group that a ewe is in.
    #[must_use]
    pub fn group_of(&self, ewe: EweId) -> Option<&Group> {
        let stay = self.ewe(ewe)?.stays.last().filter(|stay| stay.left.is_none())?;
        self.groups.get(&stay.group)
    }

    /// Returns the times in which a ewe was with a ram, oldest first.
    #[must_use]
    pub fn windows_of(&self, ewe: EweId) -> Vec<MatingWindow> {
        self.ewe(ewe).map_or_else(Vec::new, |ewe| self.windows_in(&ewe.stays))
    }

    /// Returns the times of these stays in which a ram was there, oldest first.
    pub(super) fn windows_in(&self, stays: &[GroupStay]) -> Vec<MatingWindow> {
        let of = |stay: &GroupStay| self.groups.get(&stay.group).map(|group| group.windows_of(stay));
        let mut windows: Vec<MatingWindow> = stays.iter().filter_map(of).flatten().collect();
        windows.sort_small_by_key(|window| window.ram_in);
        windows
    }
}

/// Tells what happened to a group, or who came or went. What concerns a group or a ewe that is not here waits.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>) {
    let (at, entry) = (line.at, line.entry.id);
    if let Event::JoinedGroup { ewe, group } = line.event {
        join(flock, *ewe, *group, line);
    } else if let Event::LeftGroup { ewe, group } = line.event {
        if let Some(stay) = last_stay(flock, *ewe).filter(|stay| stay.group == *group) {
            end(stay, line);
        }
    } else if let Event::GroupParted { group } = line.event {
        let Some(parted) = flock.groups.get_mut(group) else { return };
        parted.parted.get_or_insert(at);
        take_out(parted, line);
        for ewe in std::mem::take(&mut parted.joined) {
            if let Some(stay) = last_stay(flock, ewe).filter(|stay| stay.group == *group) {
                end(stay, line);
            }
        }
    } else if let Some(group) = line.event.group().and_then(|group| flock.groups.get_mut(&group)) {
        if let Event::GroupNamed { name, .. } = line.event {
            group.name.clone_from(name);
        } else if let Event::RamIn { ram, age, .. } = line.event {
            let stays = Staying::default();
            group.rams.push(Ram {
                entry,
                label: ram.clone(),
                age: *age,
                came: at,
                out: None,
                out_by: None,
                stays,
            });
        } else if let Event::RamOut { .. } = line.event {
            take_out(group, line);
        } else if let Event::CrayonChanged { color, .. } = line.event {
            group.crayons.push((at, color.clone()));
        } else if let Event::FeedSet { mass, .. } = line.event {
            group.feeds.push((at, *mass));
        } else if let Event::BoosterGiven { .. } = line.event {
            group.boosters.push(at);
        }
    }
    plan::came_about(flock, line.event);
}

/// A ewe is in one group at a time: who joins another has left the last. A group that was broken up takes no one.
fn join(flock: &mut Flock, ewe: EweId, group: GroupId, line: &Standing<'_>) {
    let Animal::Ewe(id) = flock.canonical(Animal::Ewe(ewe)) else { return };
    let Some(here) = flock.groups.get_mut(&group).filter(|group| group.parted.is_none()) else { return };
    let Some(ewe) = flock.ewes.get_mut(&id) else { return };
    if let Some(last) = ewe.stays.last_mut().filter(|stay| stay.left.is_none()) {
        if last.group == group {
            return;
        }
        end(last, line);
    }
    here.joined.push(id);
    let entry = line.entry.id;
    ewe.stays.push(GroupStay { ewe: id, joined: line.at, group, entry, left: None, left_by: None });
}

fn last_stay(flock: &mut Flock, ewe: EweId) -> Option<&mut GroupStay> {
    let Animal::Ewe(id) = flock.canonical(Animal::Ewe(ewe)) else { return None };
    flock.ewes.get_mut(&id)?.stays.last_mut()
}

fn end(stay: &mut GroupStay, line: &Standing<'_>) {
    if stay.left.is_none() {
        stay.left = Some(line.at);
        stay.left_by = Some(line.entry.id);
    }
}

fn take_out(group: &mut Group, line: &Standing<'_>) {
    // All went out at the last time, so those that are in came since.
    for ram in group.rams.iter_mut().rev().take_while(|ram| ram.out.is_none()) {
        ram.out = Some(line.at);
        ram.out_by = Some(line.entry.id);
    }
}

/// Notes a mark or a scan with its ewe.
pub(super) fn seen(flock: &mut Flock, line: &Standing<'_>) {
    let at = line.at;
    if let Event::CrayonMark { ewe, color } = line.event {
        flock.on_ewe(*ewe, |ewe| ewe.marks.push(CrayonMark { at, color: color.clone() }));
    } else if let Event::Scanned { ewe, lambs, days } = line.event {
        let (lambs, days) = (*lambs, *days);
        flock.on_ewe(*ewe, |ewe| ewe.scans.push(Scan { at, lambs, days }));
    }
}

/// Gathers each group's members from the stays of the ewes.
pub(super) fn members(flock: &mut Flock) {
    for group in flock.groups.values_mut() {
        group.joined = Vec::new();
    }
    for stay in flock.ewes.values().flat_map(|ewe| &ewe.stays) {
        if let Some(group) = flock.groups.get_mut(&stay.group) {
            group.members.push(*stay);
        }
    }
}
