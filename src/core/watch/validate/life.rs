//! Whether something of an animal's life may be noted: who rears whom, tags, treatments, and who leaves.
//!
//! A tag is worn by one living animal; a paint mark by as many as like. Both are found by either.
//!
//! Sale inside withholding is refused, except with the buyer told in writing, which is a choice of its own.

use chrono::Datelike;

use super::Rejection;
use super::here::{alive, animal_here, any_living, ewe_here, grown_here, lamb_here, living, text};
use crate::book::{
    Animal, BirthDay, EntryId, EweId, LambId, Life, MOST_REMARK, MOST_TAG, MOST_WORDS, Sex, Treatment,
};
use crate::flock::{Flock, Lamb};
use crate::reckon::{gain, withholding};
use crate::units::{BoundFor, Mass, Moment, OutOfBounds, Price, TimeDelta};
use crate::watch::{Product, Withdrawal, withdrawal};

/// Why something cannot be noted of an animal's life.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LifeRejection {
    /// Another animal that lives here wears this tag.
    #[error("{tag} is worn by another living animal")]
    TagWorn {
        /// The tag.
        tag: String,
        /// Who wears it.
        by: Animal,
    },
    /// It has died already.
    #[error("it died at {died}")]
    AlreadyDead {
        /// When.
        died: Moment,
    },
    /// It is not known to be dead.
    #[error("it is not known to be dead")]
    NotDead,
    /// It has not left the flock.
    #[error("it has not left")]
    NotGone,
    /// No sheep is sold for that.
    #[error(transparent)]
    Price(OutOfBounds<Price>),
    /// It has left the flock.
    #[error("{at} is after it left at {left}")]
    AfterLeft {
        /// When it was said to happen.
        at: Moment,
        /// When it left.
        left: Moment,
    },
    /// The lamb is with this ewe already.
    #[error("the lamb is with her already")]
    WithHer,
    /// A ram lamb becomes no ewe, and a ewe lamb no wether.
    #[error("not of that sex")]
    WrongSex,
    /// She is too young to leave the lambs: she still needs looking after as one.
    #[error("kept as a ewe from {from} on")]
    TooYoungToKeep {
        /// From when on she may be kept.
        from: Moment,
    },
    /// She was kept as a ewe before.
    #[error("kept already")]
    Kept,
    /// No ewe here was born then.
    #[error("{given} is not between {least} and {most}")]
    BirthYear {
        /// The year that was given.
        given: u16,
        /// The earliest.
        least: u16,
        /// The latest.
        most: u16,
    },
    /// She has lambs, was a lamb here, or was put to a ram: she is no ram.
    #[error("she is a ewe")]
    SheIsAEwe,
    /// A sire is a ram of the book.
    #[error("no ram")]
    NotARam,
    /// Nobody is its own parent.
    #[error("its own parent")]
    OwnParent,
    /// A parent is born in a year before.
    #[error("a parent born in {parent} of one born in {own}")]
    ParentYounger {
        /// When the parent was born.
        parent: i32,
        /// When its young was.
        own: i32,
    },
    /// Nobody is born or reared as one of so many.
    #[error("one of {given} is not one of 1 to {most}")]
    LitterOf {
        /// How many were given.
        given: u8,
        /// How many are allowed.
        most: u8,
    },
    /// No label withholds so long.
    #[error("{given} days are more than {most}")]
    TooManyDays {
        /// How many were given.
        given: u16,
        /// How many are allowed.
        most: u16,
    },
    /// A mark for keeping or culling is set to none or to too much.
    #[error("a mark is not between 1 and {most}")]
    KeepMark {
        /// The most.
        most: u8,
    },
    /// Its meat is withheld.
    #[error("withheld by {}", .0.product)]
    Withdrawal(Withdrawal),
    /// No lamb gains or loses so much in that time.
    #[error("{grams_a_day} g a day since {before:?} at {at}")]
    Growth {
        /// The weight beside it.
        before: Mass,
        /// When that was taken.
        at: Moment,
        /// What it would have gained a day, in grams; less than nothing when it lost.
        grams_a_day: f64,
    },
}

/// No ewe is so old (ours).
const MOST_YEARS: u16 = 30;

/// A lamb is kept as a ewe from this age on (ours): before, the Watch must not lose sight of it by one press.
pub const KEPT_FROM: TimeDelta = TimeDelta::days(60);

/// What a lamb weighs at most at birth and gains at most in a day, so that no weight of any age is past it.
fn most_at(age: TimeDelta) -> Mass {
    let days = age.as_seconds_f64() / 86_400.0;
    let gained = days.max(0.0) * gain::MOST_GRAMS_A_DAY / 1000.0;
    Mass::from_kilograms(Mass::AT_BIRTH.most.as_kilograms() + gained)
}

/// Checks a weight against the age and against the weights beside it.
pub(super) fn weighed(lamb: &Lamb, mass: Mass, at: Moment, most: Mass) -> Result<(), Rejection> {
    let mut allowed = Mass::AT_BIRTH;
    if at.since(lamb.born) >= TimeDelta::hours(24) {
        let grown = most_at(at.since(lamb.born));
        allowed.most = if grown < most { grown } else { most };
        allowed.why = BoundFor::LambOfItsAge;
    }
    allowed.check(mass)?;
    Ok(())
}

/// Checks a weight against the ones taken before and after it; the one that is amended does not count.
pub(super) fn follows(lamb: &Lamb, instead: Option<Moment>, mass: Mass, at: Moment) -> Result<(), Rejection> {
    let others = || lamb.weights.iter().filter(|weight| Some(weight.at) != instead);
    let before = others().rev().find(|weight| weight.at < at).map(|weight| (weight, true));
    let after = others().find(|weight| weight.at > at).map(|weight| (weight, false));
    for (weight, earlier) in before.into_iter().chain(after) {
        let (one, two) = ((weight.at, weight.mass), (at, mass));
        let (one, two) = if earlier { (one, two) } else { (two, one) };
        if !gain::plausible(one, two) {
            let grams_a_day = gain::gain(one, two).map_or(0.0, |gain| gain.grams_a_day);
            return Err(LifeRejection::Growth { before: weight.mass, at: weight.at, grams_a_day }.into());
        }
    }
    Ok(())
}

/// A tag that another living animal wears is not given again; the animal itself may keep its own.
pub(super) fn tag(flock: &Flock, tag: &str, own: Option<Animal>) -> Result<(), Rejection> {
    text(tag, MOST_TAG)?;
    let own = own.map(|animal| flock.canonical(animal));
    let same =
        |other: &Option<String>| other.as_ref().is_some_and(|other| other.eq_ignore_ascii_case(tag.trim()));
    let ewes = flock.ewes.values().chain(flock.rams.values());
    let ewes = ewes.filter(|ewe| ewe.lives() && same(&ewe.tag)).map(|ewe| Animal::Ewe(ewe.id));
    let lambs = flock.lambs.values().filter(|lamb| lamb.lives() && same(&lamb.tag));
    match ewes.chain(lambs.map(|lamb| Animal::Lamb(lamb.id))).find(|other| Some(*other) != own) {
        Some(by) => Err(LifeRejection::TagWorn { tag: tag.trim().to_owned(), by }.into()),
        None => Ok(()),
    }
}

/// An animal dies once; changing what was noted of its death is another matter.
pub(super) fn died(flock: &Flock, instead_of: Option<EntryId>, animal: Animal) -> Result<(), Rejection> {
    let died = match animal {
        Animal::Ewe(ewe) => grown_here(flock, ewe)?.died,
        Animal::Lamb(lamb) => lamb_here(flock, lamb)?.died,
    };
    match died {
        Some(death) if instead_of.is_none() => Err(LifeRejection::AlreadyDead { died: death.at }.into()),
        Some(_) | None => Ok(()),
    }
}

pub(super) fn life(
    flock: &Flock,
    instead_of: Option<EntryId>,
    fact: &Life,
    at: Moment,
) -> Result<(), Rejection> {
    match fact {
        Life::Fostered { lamb, dam } => fostered(flock, instead_of, *lamb, *dam, at),
        Life::Marked { animal, mark } => {
            animal_here(flock, *animal)?;
            text(mark, MOST_TAG)
        }
        Life::KeptAsEwe { lamb } => {
            let lamb = if instead_of.is_some() { lamb_here(flock, *lamb)? } else { alive(flock, *lamb, at)? };
            if lamb.sex == Some(Sex::Ram) {
                return Err(LifeRejection::WrongSex.into());
            }
            let from = lamb.born + KEPT_FROM;
            if at.since(from) < TimeDelta::zero() {
                return Err(LifeRejection::TooYoungToKeep { from }.into());
            }
            if lamb.kept.is_some() && instead_of.is_none() { Err(LifeRejection::Kept.into()) } else { Ok(()) }
        }
        Life::Described { ewe, born, breed } => {
            let gone = grown_here(flock, *ewe)?.gone();
            breed.as_deref().map_or(Ok(()), |breed| text(breed, MOST_WORDS))?;
            // How old she is is judged by when it is told of, or by her end.
            let then = gone.map_or(at, |gone| gone.min(at));
            born.map_or(Ok(()), |born| birth_day(born, then))
        }
        Life::Castrated { lamb, .. } => {
            let ewe_lamb = alive(flock, *lamb, at)?.sex == Some(Sex::Ewe);
            if ewe_lamb { Err(LifeRejection::WrongSex.into()) } else { Ok(()) }
        }
        Life::Treated { animal, treatment } => {
            any_living(flock, *animal, at)?;
            treated(treatment)
        }
        Life::Boosted { ewe, treatment } => {
            living(flock, Animal::Ewe(*ewe), at)?;
            treated(treatment)
        }
        Life::SoldFor { animal, price } => {
            Price::OF_AN_ANIMAL.check(*price).map_err(LifeRejection::Price)?;
            if left(flock, *animal)? { Ok(()) } else { Err(LifeRejection::NotGone.into()) }
        }
        Life::Culled { animal, .. } => {
            if left(flock, *animal)? || is_dead(flock, *animal)? {
                Ok(())
            } else {
                Err(LifeRejection::NotGone.into())
            }
        }
        Life::Examined { animal, finding } => {
            if is_dead(flock, *animal)? {
                text(finding, MOST_REMARK)
            } else {
                Err(LifeRejection::NotDead.into())
            }
        }
        Life::Went { animal, how, to } => {
            to.as_deref().map_or(Ok(()), |to| text(to, MOST_WORDS))?;
            if instead_of.is_none() {
                any_living(flock, *animal, at)?;
            } else {
                animal_here(flock, *animal)?;
            }
            match withdrawal(flock, *animal, Product::Meat, at) {
                Some(withdrawal) if how.is_for_meat() => Err(LifeRejection::Withdrawal(withdrawal).into()),
                Some(_) | None => Ok(()),
            }
        }
    }
}

fn is_dead(flock: &Flock, animal: Animal) -> Result<bool, Rejection> {
    Ok(match animal {
        Animal::Ewe(ewe) => grown_here(flock, ewe)?.died.is_some(),
        Animal::Lamb(lamb) => {
            let lamb = lamb_here(flock, lamb)?;
            lamb.died.is_some() || !lamb.born_alive
        }
    })
}

/// Says whether it left the flock.
fn left(flock: &Flock, animal: Animal) -> Result<bool, Rejection> {
    Ok(match animal {
        Animal::Ewe(ewe) => grown_here(flock, ewe)?.left.is_some(),
        Animal::Lamb(lamb) => lamb_here(flock, lamb)?.left.is_some(),
    })
}

fn fostered(
    flock: &Flock,
    instead_of: Option<EntryId>,
    lamb: LambId,
    dam: EweId,
    at: Moment,
) -> Result<(), Rejection> {
    let lamb = alive(flock, lamb, at)?;
    living(flock, Animal::Ewe(dam), at)?;
    let ewe = ewe_here(flock, dam)?;
    if instead_of.is_none() && flock.rearer(lamb) == Some(ewe.id) {
        return Err(LifeRejection::WithHer.into());
    }
    Ok(())
}

/// A year in which a ewe of that time can have been born, and no day after it.
fn birth_day(born: BirthDay, then: Moment) -> Result<(), Rejection> {
    let given = match born {
        BirthDay::Year(year) => year,
        BirthDay::Day(day) => u16::try_from(day.year()).unwrap_or(0),
    };
    let today = then.local().date();
    let most = u16::try_from(today.year()).unwrap_or(u16::MAX);
    let least = most.saturating_sub(MOST_YEARS);
    let ahead = matches!(born, BirthDay::Day(day) if day > today);
    if (least..=most).contains(&given) && !ahead {
        Ok(())
    } else {
        Err(LifeRejection::BirthYear { given, least, most }.into())
    }
}

fn treated(treatment: &Treatment) -> Result<(), Rejection> {
    text(&treatment.product, MOST_WORDS)?;
    for words in [&treatment.amount, &treatment.reason, &treatment.batch, &treatment.by].into_iter().flatten()
    {
        text(words, MOST_WORDS)?;
    }
    let most = withholding::MOST_DAYS;
    match [treatment.meat_days, treatment.milk_days].into_iter().flatten().find(|days| *days > most) {
        Some(given) => Err(LifeRejection::TooManyDays { given, most }.into()),
        None => Ok(()),
    }
}
