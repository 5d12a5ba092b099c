//! What may be noted: the one gate that every entry passes before it is written, with the reason when it may not.
//!
//! What comes in a file was let in elsewhere and is kept as it is; this gate is for what someone types here and now.

mod all;
mod care;
mod ewe;
mod feed;
mod group;
mod here;
mod illness;
mod life;
mod past;
mod rejection;
mod stores;

pub use all::{validate_all, validate_together};
pub use ewe::EweRejection;
pub(super) use feed::may_be_fed;
pub use group::GroupRejection;
pub use life::{KEPT_FROM, LifeRejection};
pub use rejection::Rejection;
pub use stores::StoreRejection;

use self::here::{
    alive, animal_here, any_living, born, ewe_here, group_here, lamb_here, living, pen_here, text,
};
use crate::book::{Animal, Book, EntryId, Event, MOST_REMARK, MOST_TAG, Planning, VigorScale};
use crate::flock::{Flock, Labor};
use crate::settings::{Choice, CullRules, dialed};
use crate::units::{Length, Mass, Moment, Strength, TimeDelta};

/// A phone's clock may run ahead of another's by so much before "in the future" is said (ours).
const CLOCK_SLACK: TimeDelta = TimeDelta::minutes(2);

/// No ring in the first 24 hours (AHDB).
const RINGED_FROM: TimeDelta = TimeDelta::hours(24);

/// What a lamb older than a day may weigh: up to 90 kg (ours; heavier than any lamb goes).
const MOST_LATER: Mass = Mass::from_kilograms(90.0);

/// Says whether a fact may be noted as having happened at `at`.
///
/// # Errors
/// The reason why not.
pub fn validate(flock: &Flock, book: &Book, event: &Event, at: Moment, now: Moment) -> Result<(), Rejection> {
    if at > now + CLOCK_SLACK {
        return Err(Rejection::InFuture { at, now });
    }
    if let Event::Deleted { entry } | Event::Restored { entry } = event {
        return book.entry(*entry).map(|_| ()).ok_or(Rejection::NoSuchEntry);
    }
    let Event::Amended { entry, event, at } = event else { return fact(flock, None, event, at, now) };
    let here = book.entry(*entry).ok_or(Rejection::NoSuchEntry)?;
    if event.corrects().is_some() || here.event.corrects().is_some() {
        return Err(Rejection::NoSuchEntry);
    }
    if *at > now + CLOCK_SLACK {
        return Err(Rejection::InFuture { at: *at, now });
    }
    amendable(flock, *entry, event, *at)?;
    fact(flock, Some(*entry), event, *at, now)
}

/// A birth may not move past what was seen of the lamb.
fn amendable(flock: &Flock, entry: EntryId, event: &Event, at: Moment) -> Result<(), Rejection> {
    if !matches!(event, Event::LambBorn { .. }) {
        return Ok(());
    }
    let id = entry.as_lamb();
    let own = |line: &&crate::flock::Line| {
        line.entry != entry && !line.struck && line.event.animals().any(|animal| animal == Animal::Lamb(id))
    };
    match flock.lines_of(Animal::Lamb(id)).find(own) {
        Some(first) if first.at < at => Err(Rejection::BornAfter { born: at, seen: first.at }),
        Some(_) | None => Ok(()),
    }
}

fn fact(
    flock: &Flock,
    instead_of: Option<EntryId>,
    event: &Event,
    at: Moment,
    now: Moment,
) -> Result<(), Rejection> {
    match event {
        Event::EweCame { tag } => {
            let own = instead_of.map(|entry| Animal::Ewe(entry.as_ewe()));
            tag.as_deref().map_or(Ok(()), |tag| life::tag(flock, tag, own))
        }
        Event::Tagged { animal, tag } => {
            animal_here(flock, *animal)?;
            life::tag(flock, tag, Some(*animal))
        }
        Event::LambBorn { dam, beside, .. } => {
            dam.map_or(Ok(()), |dam| ewe_here(flock, dam).map(|_| ()))?;
            beside.map_or(Ok(()), |mate| animal_here(flock, Animal::Lamb(mate)))
        }
        Event::DamGiven { lamb, dam } => {
            ewe_here(flock, *dam)?;
            lamb_here(flock, *lamb).map(|_| ())
        }
        Event::BirthEase { lamb, .. } | Event::AllBorn { lamb } => lamb_here(flock, *lamb).map(|_| ()),
        Event::Stood { lamb }
        | Event::Sucked { lamb }
        | Event::NavelDipped { lamb }
        | Event::BellyFelt { lamb, .. }
        | Event::Accepted { lamb, .. }
        | Event::SwallowTried { lamb, .. }
        | Event::Warmed { lamb }
        | Event::Weaned { lamb } => alive(flock, *lamb, at).map(|_| ()),
        Event::TemperatureTaken { lamb, temperature } => {
            alive(flock, *lamb, at)?;
            temperature.in_a_lamb(flock.settings.system)?;
            Ok(())
        }
        Event::SolidsEaten { lamb, mass } => {
            alive(flock, *lamb, at)?;
            Mass::SOLIDS_IN_A_DAY.check(*mass)?;
            Ok(())
        }
        Event::Ringed { lamb, .. } => {
            let from = alive(flock, *lamb, at)?.born + RINGED_FROM;
            if at.since(from) < TimeDelta::zero() { Err(Rejection::TooYoungToRing { from }) } else { Ok(()) }
        }
        Event::SignSeen { ewe, .. }
        | Event::WaterBagSeen { ewe }
        | Event::StrainingSeen { ewe }
        | Event::PartShowing { ewe, .. }
        | Event::HandChecked { ewe, .. }
        | Event::HelpBegun { ewe }
        | Event::AfterbirthPassed { ewe } => living(flock, Animal::Ewe(*ewe), at),
        Event::NotLambing { ewe } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            let labor = flock.ewe(*ewe).and_then(|ewe| ewe.labor.as_ref());
            if labor.is_some_and(Labor::is_sure) { Err(Rejection::SheIsLambing) } else { Ok(()) }
        }
        Event::VetCalled { animal } | Event::LookedAt { animal } | Event::LetOut { animal } => {
            living(flock, *animal, at)
        }
        Event::PenMade { name, size } => {
            text(name, MOST_TAG)?;
            let sides = size.iter().flat_map(|size| [size.wide, size.deep]);
            sides.map(|side| Length::PEN_SIDE.check(side)).collect::<Result<Vec<_>, _>>()?;
            Ok(())
        }
        Event::PenNamed { pen, name } => {
            pen_here(flock, *pen)?;
            text(name, MOST_TAG)
        }
        Event::PenCleaned { pen } => pen_here(flock, *pen).map(|_| ()),
        Event::PenClosed { pen } => {
            if pen_here(flock, *pen)?.inside.is_empty() {
                Ok(())
            } else {
                Err(Rejection::PenInUse)
            }
        }
        Event::PutInPen { animal, pen } => {
            living(flock, *animal, at)?;
            if pen_here(flock, *pen)?.closed.is_none() { Ok(()) } else { Err(Rejection::NoSuchPen) }
        }
        Event::GroupFormed { name } => text(name, MOST_TAG),
        Event::GroupNamed { group, name } => {
            group_here(flock, *group)?;
            text(name, MOST_TAG)
        }
        Event::GroupParted { group } => group::parted(flock, instead_of, *group, at),
        Event::JoinedGroup { ewe, group } => group::joined(flock, instead_of, *ewe, *group, at),
        Event::LeftGroup { ewe, group } => group::left(flock, instead_of, *ewe, *group, at),
        Event::RamIn { group, ram, .. } => {
            ram.as_deref().map_or(Ok(()), |ram| text(ram, MOST_TAG))?;
            group::ram_in(flock, instead_of, *group, at)
        }
        Event::RamOut { group } => group::ram_out(flock, instead_of, *group, at),
        Event::CrayonChanged { group, color } => {
            group_here(flock, *group)?;
            text(color, MOST_TAG)
        }
        Event::FeedSet { group, mass } => {
            group_here(flock, *group)?;
            Mass::EXTRA_FEED.check(*mass)?;
            Ok(())
        }
        Event::BoosterGiven { group } => group_here(flock, *group).map(|_| ()),
        Event::CrayonMark { ewe, color } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            text(color, MOST_TAG)
        }
        Event::Scanned { ewe, lambs, days } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            ewe::scanned(flock, *ewe, *lambs, *days, at)
        }
        Event::Conditioned { ewe, score } => {
            any_living(flock, Animal::Ewe(*ewe), at)?;
            ewe::conditioned(*score)
        }
        Event::EweWeighed { ewe, mass } => {
            animal_here(flock, Animal::Ewe(*ewe))?;
            Mass::OF_A_EWE.check(*mass)?;
            Ok(())
        }
        Event::StoreIn { item, amount } => stores::put_in(*item, *amount),
        Event::StoreUsed { item, amount } | Event::StoreThrown { item, amount } => {
            stores::taken(flock, instead_of, *item, *amount, at)
        }
        Event::StoreCounted { item, amount } => stores::counted(*item, *amount),
        Event::ColostrumFrozen { from, bags, volume, brix, label } => {
            label.as_deref().map_or(Ok(()), |label| text(label, MOST_TAG))?;
            stores::frozen(flock, *from, *bags, *volume, *brix)
        }
        Event::ColostrumThawed { batch, bags } | Event::ColostrumThrown { batch, bags } => {
            stores::thawed(flock, instead_of, *batch, *bags, at)
        }
        Event::PutOff { animal, duty, until } if instead_of.is_none() => {
            living(flock, *animal, at)?;
            let most = super::may_wait_until(flock, *animal, *duty, now).ok_or(Rejection::NoSuchDuty)?;
            if *until <= most { Ok(()) } else { Err(Rejection::PutOffTooLong { until: *until, most }) }
        }
        Event::PutOff { animal, .. } => animal_here(flock, *animal),
        Event::Weighed { lamb, mass } => {
            let lamb = born(flock, *lamb, at)?;
            life::weighed(lamb, *mass, at, MOST_LATER)?;
            let was = instead_of.and_then(|entry| flock.lines.iter().find(|line| line.entry == entry));
            life::follows(lamb, was.map(|line| line.at), *mass, at)
        }
        Event::Fed { lamb, volume, .. } => feed::fed(flock, instead_of, *lamb, *volume, at),
        Event::VigorScored { lamb, scale, score } => {
            alive(flock, *lamb, at)?;
            let (least, most) = match scale {
                VigorScale::FourGrade => (1, 4),
                VigorScale::TenPoint => (0, 10),
                VigorScale::EightPoint => (0, 8),
            };
            let given = *score;
            if (least..=most).contains(&given) {
                Ok(())
            } else {
                Err(Rejection::Score { given, least, most })
            }
        }
        Event::Care(care) => care::care(flock, care, at),
        Event::Illness(fact) => illness::illness(flock, fact, at),
        Event::Planning(Planning::RamStays { group, until }) => group::ram_stays(flock, *group, *until, at),
        Event::Planning(Planning::RamsMeant { group, rams }) => group::rams_meant(flock, *group, rams),
        Event::Planning(Planning::FeedPutOff { group, .. }) if instead_of.is_some() => {
            group_here(flock, *group).map(|_| ())
        }
        Event::Planning(Planning::FeedPutOff { group, until }) => {
            group::feed_put_off(flock, *group, *until, at)
        }
        // What was planned once stays as it was, also when its day has passed.
        Event::Planning(Planning::Planned { .. }) if instead_of.is_some() => Ok(()),
        Event::Planning(Planning::Planned { group, on, .. }) => group::planned(flock, *group, *on, at),
        Event::Planning(Planning::Happened { group, .. }) => {
            group.map_or(Ok(()), |group| group_here(flock, group).map(|_| ()))
        }
        Event::Past(fact) => past::past(flock, fact),
        Event::Life(fact) => life::life(flock, instead_of, fact, at),
        Event::Died { animal, .. } => {
            life::died(flock, instead_of, *animal)?;
            match animal {
                Animal::Lamb(lamb) => born(flock, *lamb, at).map(|_| ()),
                Animal::Ewe(_) => Ok(()),
            }
        }
        Event::Remarked { animal, text: remark } => {
            animal_here(flock, *animal)?;
            text(remark, MOST_REMARK)
        }
        Event::Chose(Choice::Limits(limits)) => limits.checked().map(|_| ()).map_err(Rejection::from),
        Event::Chose(Choice::LaborLimits(limits)) => limits.checked().map(|_| ()).map_err(Rejection::from),
        Event::Chose(Choice::PenStay(stay)) => stay.checked().map(|_| ()).map_err(Rejection::from),
        Event::Chose(Choice::FarmName(name)) if name.is_empty() => Ok(()),
        Event::Chose(Choice::FarmName(name)) => text(name, MOST_TAG),
        Event::Chose(
            Choice::VetPhone(number) | Choice::VetNightPhone(number) | Choice::VetSecondPhone(number),
        ) => {
            if number.is_empty() || dialed(number).is_some() {
                Ok(())
            } else {
                Err(Rejection::NotAPhoneNumber)
            }
        }
        Event::Chose(Choice::PowderRate(rate)) => {
            Strength::ON_A_LABEL.check(*rate).map(|_| ()).map_err(Rejection::from)
        }
        Event::Chose(Choice::CullRules(marks)) => {
            marks.checked().map(|_| ()).ok_or(LifeRejection::KeepMark { most: CullRules::MOST }.into())
        }
        Event::Chose(Choice::CullSigns(signs)) => {
            signs.checked().map(|_| ()).ok_or(LifeRejection::KeepMark { most: CullRules::MOST }.into())
        }
        Event::Chose(Choice::Rings(rings)) => rings.checked().map(|_| ()).map_err(Rejection::from),
        Event::Chose(
            Choice::System(_)
            | Choice::Clock(_)
            | Choice::DayRule(_)
            | Choice::Housing(_)
            | Choice::BottleTable(_)
            | Choice::FreezerLife(_)
            | Choice::PowderRule(_)
            | Choice::WeaningRule(_)
            | Choice::BreedMeans(_)
            | Choice::Vigor(_)
            | Choice::ChillLimit(_)
            | Choice::DamsVaccinated(_)
            | Choice::BreedType(_)
            | Choice::Latitude(_)
            | Choice::VetAgreed(_),
        )
        | Event::Unread(_) => Ok(()),
        Event::SameAnimal { keep, also } => {
            animal_here(flock, *keep)?;
            animal_here(flock, *also)?;
            let alike =
                matches!((keep, also), (Animal::Ewe(_), Animal::Ewe(_)) | (Animal::Lamb(_), Animal::Lamb(_)));
            // What is judged by a flock that has it already joins what is joined.
            let apart = flock.canonical(*keep) != flock.canonical(*also);
            if alike && (apart || instead_of.is_some()) { Ok(()) } else { Err(Rejection::NotOneAnimal) }
        }
        Event::Amended { .. } | Event::Deleted { .. } | Event::Restored { .. } => Err(Rejection::NoSuchEntry),
    }
}
