//! What is withheld of an animal that was treated, and until when.

use crate::book::Animal;
use crate::flock::{Flock, Treated};
use crate::reckon::withholding::{LastDose, Usable, usable};
use crate::units::Moment;

/// What of an animal is withheld.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Product {
    /// Its meat.
    Meat,
    /// Its milk.
    Milk,
}

/// The treatment that withholds longest, and until when.
#[derive(Clone, Debug, PartialEq)]
pub struct Withdrawal {
    /// From when it may be used again.
    pub usable: Usable,
    /// What the medicine is called.
    pub product: String,
}

/// Returns from when one treatment lets meat or milk be used.
///
/// A number of days past every bound, which only a file can bring, withholds like one that nobody knows.
#[must_use]
pub fn usable_after(treated: &Treated, product: Product) -> Usable {
    let Treated { at, treatment, .. } = treated;
    let last = if treatment.day_only { LastDose::On(at.local().date()) } else { LastDose::At(*at) };
    let days = match product {
        Product::Meat => treatment.meat_days,
        Product::Milk => treatment.milk_days,
    };
    usable(last, days).unwrap_or(Usable::Unknown)
}

/// Returns what withholds an animal's meat or milk at `now`: of all treatments up to then the one that does so longest;
/// nothing when nothing does.
#[must_use]
pub fn withdrawal(flock: &Flock, animal: Animal, product: Product, now: Moment) -> Option<Withdrawal> {
    let given = flock.treated(animal).into_iter().filter(|treated| treated.at <= now);
    let ends = given.map(|treated| (usable_after(treated, product), treated));
    let (usable, treated) =
        ends.reduce(|one, other| if one.0.later(other.0) == one.0 { one } else { other })?;
    (!usable.at(now)).then(|| Withdrawal { usable, product: treated.treatment.product.clone() })
}
