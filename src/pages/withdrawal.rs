//! That an animal's meat or milk is withheld, and until when.

use yeanling_core::book::Animal;
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::watch::{Product, withdrawal};
use yeanling_words::life as words;

use crate::Kind;
use crate::block::{Notice, NoticeKind};
use crate::page::Blocks;
use crate::view::View;

/// Returns what of an animal is withheld as a notice; nothing when nothing is.
pub(crate) fn notice(view: &View, animal: Animal) -> Blocks {
    let lines = told_withheld(view, animal);
    if lines.is_empty() {
        return Blocks::new();
    }
    let inside = lines.into_iter().fold(Blocks::new(), Blocks::text).into();
    let notice = Notice { kind: NoticeKind::Warn, inside, buttons: Vec::new() };
    Blocks::new().add("withheld", Kind::Notice(notice))
}

/// Returns in a line each what of an animal is withheld, as this phone's clock will show its end. Milk is told of ewes
/// alone.
pub(crate) fn told_withheld(view: &View, animal: Animal) -> Vec<String> {
    let products = match animal {
        Animal::Ewe(_) => &[Product::Meat, Product::Milk][..],
        Animal::Lamb(_) => &[Product::Meat][..],
    };
    let told = |product: &Product| {
        let mut held = withdrawal(view.flock, animal, *product, view.now)?;
        if let Usable::From(at) = &mut held.usable {
            *at = (view.here)(*at);
        }
        Some(words::withdrawal(*product, &held, view.now))
    };
    products.iter().filter_map(told).collect()
}
