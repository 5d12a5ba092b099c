//! Hay for the winter.

use yeanling_core::book::Item;
use yeanling_core::reckon::season::budget::{self, Budget};
use yeanling_core::units::Mass;
use yeanling_words::feed as words;

use super::typed::{Number, Weight};
use super::{USUAL_EWE, ewes};
use crate::Reason;
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;

/// What hay a breeder allows a ewe in a day, in parts of a hundred of her weight.
const USUAL_SHARE: &str = "4";

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let (ewes, days) = (ewes(view, fields), Number::of(fields, "hay-days", ""));
    let share = Number::of(fields, "hay-share", USUAL_SHARE);
    let weight = Weight::of(fields, "hay-ewe", USUAL_EWE, view.system());
    let bale = Weight::of(fields, "hay-bale", 0.0, view.system());
    let answer = match (ewes.whole(), weight.is, days.whole(), share.is, bale.is) {
        (Some(ewes), Some(weight), Some(days), Some(share), Some(bale)) => {
            let days = u16::try_from(days).unwrap_or(u16::MAX);
            match budget::by_body_weight(ewes, weight, days, share / 100.0, bale) {
                Ok(budget) => needed(view, &budget),
                Err(error) => Blocks::new().failed(words::refused(&error, view.system())),
            }
        }
        _ => Blocks::new().small(words::TYPE_ALL),
    };
    let blocks = ewes.field(Blocks::new(), words::EWES, "", "");
    let blocks = weight.field(blocks, words::EWE_WEIGHT);
    let blocks = days.field(blocks, words::DAYS, words::DAYS_UNIT, "");
    let blocks = share.field(blocks, words::SHARE, "%", words::SHARE_HINT);
    bale.field(blocks, words::BALE).then(answer)
}

/// How much it is, and how far what lies in the store goes.
fn needed(view: &View, budget: &Budget) -> Blocks {
    let needed = Blocks::new().remark(words::hay(budget, view.system()), [why(words::NEEDED, Reason::Hay)]);
    let stored = view
        .flock
        .stores
        .level(Item::Hay)
        .map(|there| words::in_store(Mass::from_kilograms(there.as_units()), budget, view.system()));
    let needed = match stored {
        Some(stored) => needed.remark(stored, []),
        None => needed,
    };
    Blocks::new().section("hay-needed", words::NEEDED, needed)
}
