//! How much powder so many lambs take until weaning, and whether what is in store will do. Nothing here is noted.

use yeanling_core::reckon::powder::{self, Plan, USED};
use yeanling_core::units::{Mass, System, TypedError};
use yeanling_words::common::mass_unit;
use yeanling_words::{errors, powder as words};

use crate::block::{Aloud, Field, FieldKind, Figure, Line, LineLook, Shape};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Kind, Reason};

/// How many lambs, as typed.
const LAMBS: &str = "powder-lambs";
/// How much is in store, as typed.
const STOCK: &str = "powder-stock";

/// Returns the powder wanted until weaning, of `lambs` until others are typed; `used` is what they have had so far.
pub(crate) fn blocks(view: &View, fields: &Fields, lambs: &str, used: Mass) -> Blocks {
    let system = view.system();
    let typed = fields.text(LAMBS, lambs);
    let planned = plan(view, typed.trim(), used);
    let stock = read_stock(&fields.text(STOCK, ""), system);
    let lambs = Field::new(words::LAMBS, FieldKind::Whole, typed)
        .error(planned.as_ref().err().cloned().unwrap_or_default());
    let in_store = Field::new(words::STOCK, FieldKind::Decimal, fields.text(STOCK, ""))
        .hint(words::STOCK_HINT)
        .error(stock.as_ref().err().cloned().unwrap_or_default())
        .unit(mass_unit(system));
    let plan = planned.ok().flatten();
    let mut blocks = Blocks::new().field(LAMBS, lambs);
    if let Some(plan) = &plan {
        blocks = blocks.group("powder-wanted", Shape::Answer, wanted(view, plan));
    }
    blocks = blocks.field(STOCK, in_store);
    if let (Some(plan), Ok(Some(stock))) = (&plan, stock) {
        blocks = blocks.remark(words::against(plan, stock, system), []);
    }
    Blocks::new().section("powder", words::TITLE, blocks)
}

/// Returns what is wanted still, and by whose rule.
fn wanted(view: &View, plan: &Plan) -> Blocks {
    let system = view.system();
    let label = Line {
        look: LineLook::AnswerLabel,
        text: words::WANTED.into(),
        aloud: Aloud::Not,
        buttons: Vec::new(),
    };
    let figure = Figure { value: words::range(plan.left, system), ..Figure::default() };
    Blocks::new()
        .add("", Kind::Line(label))
        .add("", Kind::Figure(figure))
        .remark(words::by(plan, system), [Reason::Powder(*plan).button(view)])
}

/// Plans for as many lambs as were typed; for none while none were.
fn plan(view: &View, typed: &str, used: Mass) -> Result<Option<Plan>, String> {
    if typed.is_empty() {
        return Ok(None);
    }
    let lambs = typed.parse::<u16>().map_err(|_| words::not_lambs(typed))?;
    let plan = powder::plan(lambs, view.settings().powder_rule, used);
    plan.map(Some).map_err(|wrong| errors::no_plan(&wrong, view.system()))
}

fn read_stock(typed: &str, system: System) -> Result<Option<Mass>, String> {
    match Mass::parse(typed, system) {
        Ok(mass) => {
            let within = USED.check(mass).map(Some);
            within.map_err(|wrong| errors::no_plan(&powder::NoPlan::Used(wrong), system))
        }
        Err(TypedError::Empty) => Ok(None),
        Err(wrong) => Err(errors::typed(&wrong, errors::Field::Mass, system)),
    }
}
