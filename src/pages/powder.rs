//! How much powder so many lambs take until weaning, and whether what is in store will do. Nothing here is noted.

use yeanling_core::book::Item;
use yeanling_core::reckon::powder::{self, NoPlan, Plan, USED};
use yeanling_core::units::{Mass, TypedError};
use yeanling_words::{errors, powder as words, stores};

use crate::Reason;
use crate::block::{Field, FieldKind, Figure, Kind, Line, LineLook, Shape};
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;

const LAMBS: &str = "powder-lambs";
const STOCK: &str = "powder-stock";

/// Returns the part of a page that tells the powder wanted until weaning: for as many lambs as stand there at first (none
/// where that is empty), of whom `used` was given so far.
pub(crate) fn section(view: &View, fields: &Fields, lambs: &str, used: Mass) -> Blocks {
    let lambs = fields.text(LAMBS, lambs);
    let (plan, wrong) = match planned(view, &lambs, used) {
        Ok(plan) => (plan, String::new()),
        Err(wrong) => (None, wrong),
    };
    let typed = fields.text(STOCK, "");
    let (stock, not_stock) = match in_store(view, &typed) {
        Ok(stock) => (stock, String::new()),
        Err(wrong) => (None, wrong),
    };
    let mut blocks =
        Blocks::new().field(LAMBS, Field::new(words::LAMBS, FieldKind::Whole, lambs).error(wrong));
    if let Some(plan) = &plan {
        blocks = blocks.group("powder-wanted", Shape::Answer, wanted(view, plan));
    }
    let stock_field = Field::new(words::STOCK, FieldKind::Decimal, typed)
        .hint(words::STOCK_HINT)
        .error(not_stock)
        .unit(stores::unit(Item::MilkPowder, view.system()));
    blocks = blocks.field(STOCK, stock_field);
    if let Some((plan, stock)) = plan.zip(stock) {
        blocks = blocks.remark(words::against(&plan, stock, view.system()), []);
    }
    Blocks::new().section("powder", words::TITLE, blocks)
}

fn wanted(view: &View, plan: &Plan) -> Blocks {
    let value = words::range(plan.left, view.system());
    Blocks::new()
        .add("", Kind::Line(Line::new(LineLook::AnswerLabel, words::WANTED)))
        .add("powder-left", Kind::Figure(Figure { value, ..Figure::default() }))
        .remark(words::by(plan, view.system()), [why(words::TITLE, Reason::Powder(*plan))])
}

/// The plan for as many lambs as were typed; nothing while nothing is.
fn planned(view: &View, lambs: &str, used: Mass) -> Result<Option<Plan>, String> {
    let lambs = lambs.trim();
    if lambs.is_empty() {
        return Ok(None);
    }
    let count: u16 = lambs.parse().map_err(|_| words::not_lambs(lambs))?;
    let wrong = |wrong: NoPlan| errors::no_plan(&wrong, view.system());
    powder::plan(count, view.practice().powder_rule, used).map(Some).map_err(wrong)
}

/// What is in store, as it was typed; nothing while nothing is.
fn in_store(view: &View, typed: &str) -> Result<Option<Mass>, String> {
    let system = view.system();
    match Mass::parse(typed, system) {
        Ok(mass) => USED.check(mass).map(Some).map_err(|wrong| errors::no_plan(&NoPlan::Used(wrong), system)),
        Err(TypedError::Empty) => Ok(None),
        Err(wrong) => Err(errors::typed(&wrong, errors::Field::Mass, system)),
    }
}
