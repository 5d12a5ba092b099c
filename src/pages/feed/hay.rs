//! Hay for the winter.

use yeanling_core::book::Item;
use yeanling_core::reckon::season::budget::{self, Budget, Offered};
use yeanling_core::reckon::season::requirement::{FeedStage, need};
use yeanling_core::units::Mass;
use yeanling_words::common::number;
use yeanling_words::feed as words;

use super::ewes;
use super::typed::{Number, Weight};
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
    let weight = super::ewe_weight(view, fields, "hay-ewe");
    let bale = Weight::of(fields, "hay-bale", 0.0, view.system());
    let dry = Number::of(fields, "hay-dry", &number(budget::USUAL_DRY_MATTER * 100.0, 0));
    let waste = Number::of(fields, "hay-waste", &number(Offered::Rack.usual_waste() * 100.0, 0));
    let answer = match (ewes.whole(), weight.is, days.whole(), share.is, bale.is) {
        (Some(ewes), Some(weight), Some(days), Some(share), Some(bale)) => {
            let days = u16::try_from(days).unwrap_or(u16::MAX);
            match budget::by_body_weight(ewes, weight, days, share / 100.0, bale) {
                Ok(budget) => needed(view, &budget).then(parts(view, &budget, weight, dry.is, waste.is)),
                Err(error) => Blocks::new().failed(words::refused(&error, view.system())),
            }
        }
        _ => Blocks::new().small(words::TYPE_ALL),
    };
    let blocks = ewes.field(Blocks::new(), words::EWES, "", "");
    let blocks = weight.field(blocks, words::EWE_WEIGHT).small(super::whose_weight(view));
    let blocks = days.field(blocks, words::DAYS, words::DAYS_UNIT, "");
    let blocks = share.field(blocks, words::SHARE, "%", words::SHARE_HINT);
    let blocks = dry.field(blocks, words::DRY_MATTER, "%", words::DRY_HINT);
    let blocks = waste.field(blocks, words::WASTE, "%", words::WASTE_HINT);
    bale.field(blocks, words::BALE).then(answer)
}

/// What of it she eats, its dry matter and what is waste, beside what the table of the ration asks: one basis for both.
fn parts(view: &View, budget: &Budget, weight: Mass, dry: Option<f64>, waste: Option<f64>) -> Blocks {
    let (Some(dry), Some(waste)) = (dry, waste) else { return Blocks::new() };
    match budget::becomes(budget.each_day, dry / 100.0, waste / 100.0) {
        Ok(of) => {
            let row = need(FeedStage::FirstFifteenWeeks, weight).ok();
            let row =
                row.map(|need| words::table_asks(need.row.dry_matter, view.system())).unwrap_or_default();
            Blocks::new().text(words::becomes(&of, view.system())).text(row)
        }
        Err(error) => Blocks::new().failed(words::refused(&error, view.system())),
    }
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
