//! That an animal's meat or milk is withheld, and until when.

use crate::signals::prelude::*;
use yeanling_core::book::Animal;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Product, withheld};

use crate::farm::{here, use_farm};
use crate::parts::{Notice, NoticeKind, Said, live};
use crate::words::life as words;

/// Shows what of an animal is withheld; nothing when nothing is. Milk is told of ewes alone.
#[component]
pub(crate) fn Withheld(
    /// Which animal.
    animal: Animal,
) -> impl IntoView {
    let farm = use_farm();
    let told = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| told_withheld(&ground.flock, animal, now))
    });
    live(move || {
        (!told.with(Vec::is_empty))
            .then(|| {
                let lines = told.get().into_iter().map(|line| view! { <p><Said text=line /></p> }.into_any());
                view! { <Notice kind=NoticeKind::Warn>{lines.collect_view()}</Notice> }
            })
            .into_any()
    })
}

/// Returns in a line each what of an animal is withheld, as this phone's clock will show its end. Milk is told of ewes
/// alone.
fn told_withheld(flock: &Flock, animal: Animal, now: Moment) -> Vec<String> {
    let products = match animal {
        Animal::Ewe(_) => &[Product::Meat, Product::Milk][..],
        Animal::Lamb(_) => &[Product::Meat][..],
    };
    let told = |product: &Product| {
        let mut held = withheld(flock, animal, *product, now)?;
        if let Usable::From(at) = &mut held.usable {
            *at = here(*at);
        }
        Some(words::withheld(*product, &held, now))
    };
    products.iter().filter_map(told).collect()
}
