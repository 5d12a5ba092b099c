//! How much powder so many lambs take until weaning, and whether what is in store will do. Nothing here is noted.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::reckon::powder::{self, Plan, USED};
use yeanling_core::units::{Mass, System, TypedError};

use super::why_text;
use crate::farm::use_farm;
use crate::parts::{Field, FieldKind, Figure, Remark, Section, WhyButton, WhyText};
use crate::words::{errors, powder as words, why};

/// Shows the powder wanted until weaning.
#[component]
pub(crate) fn PowderToWeaning(
    /// How many lambs stand there at first; empty for none.
    lambs: String,
    /// What these lambs have had so far.
    #[prop(into)]
    used: Signal<Mass>,
) -> impl IntoView {
    let farm = use_farm();
    let (lambs, stock) = (RwSignal::new(lambs), RwSignal::new(String::new()));
    let count = Memo::new(move |_| {
        let typed = lambs.with(|typed| typed.trim().to_owned());
        if typed.is_empty() {
            return Ok(None);
        }
        typed.parse::<u16>().map(Some).map_err(|_| words::not_lambs(&typed))
    });
    let planned = Memo::new(move |_| {
        let (rule, system) = (farm.practice().powder_rule, farm.system());
        let Some(count) = count.get()? else { return Ok(None) };
        powder::plan(count, rule, used.get()).map(Some).map_err(|wrong| errors::no_plan(&wrong, system))
    });
    let in_store = Memo::new(move |_| {
        let system = farm.system();
        match Mass::parse(&stock.get(), system) {
            Ok(mass) => USED
                .check(mass)
                .map(Some)
                .map_err(|wrong| errors::no_plan(&powder::NoPlan::Used(wrong), system)),
            Err(TypedError::Empty) => Ok(None),
            Err(wrong) => Err(errors::typed(&wrong, errors::Field::Mass, system)),
        }
    });
    let plan = Memo::new(move |_| planned.get().ok().flatten());
    let of_plan = move |read: fn(&Plan, System) -> String| {
        Signal::derive(move || {
            let system = farm.system();
            plan.with(|plan| plan.as_ref().map(|plan| read(plan, system)).unwrap_or_default())
        })
    };
    let some = Memo::new(move |_| plan.with(Option::is_some));
    let enough = Signal::derive(move || {
        let system = farm.system();
        match (plan.get(), in_store.get()) {
            (Some(plan), Ok(Some(stock))) => words::against(&plan, stock, system),
            (Some(_) | None, _) => String::new(),
        }
    });
    let why = Signal::derive(move || {
        let system = farm.system();
        plan.get().map_or_else(WhyText::default, |plan| why_text(why::powder(&plan, system)))
    });
    let unit = move || match farm.system() {
        System::Metric => "kg",
        System::Us => "lb",
    };
    view! {
        <Section title=words::TITLE>
            <Field
                label=words::LAMBS
                value=lambs
                kind=FieldKind::Whole
                error=Signal::derive(move || planned.get().err().unwrap_or_default())
            />
            {live(move || some.get().then(|| view! {
                <div class="answer">
                    <p class="answer-label">{words::WANTED}</p>
                    <Figure value=of_plan(|plan, system| words::range(plan.left, system)) />
                    <Remark text=of_plan(words::by)>
                        <WhyButton why=why />
                    </Remark>
                </div>
            }).into_any())}
            <Field
                label=words::STOCK
                value=stock
                kind=FieldKind::Decimal
                hint=words::STOCK_HINT
                error=Signal::derive(move || in_store.get().err().unwrap_or_default())
            >
                <span>{live(move || unit().into_any())}</span>
            </Field>
            <Remark text=enough />
        </Section>
    }
}
