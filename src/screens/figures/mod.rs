//! Ready figures: every calculation without any record. Nothing typed here is noted.
//!
//! What is typed once is known to all three: a weight given for first milk stands ready for the bottle.

mod age;
mod answer;
mod bottle;
mod first_milk;
mod window;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::{BottleTable, DayRule, Housing};
use yeanling_core::units::{Mass, System};

use crate::farm::{Farm, use_farm};
use crate::parts::{Choice, Choices, LinkButton, Page, Title};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::{cautions, figures as words};

/// What is worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Which {
    FirstMilk,
    Window,
    Bottle,
}

/// What was typed and chosen, for all three.
#[derive(Clone, Copy)]
struct Asked {
    /// The weight as typed.
    weight: RwSignal<String>,
    /// The unit it is typed in.
    unit: RwSignal<System>,
    /// A weight that was asked about and confirmed.
    confirmed: RwSignal<Option<Mass>>,
    /// The rule, until the farm's own is wanted again.
    rule: RwSignal<DayRule>,
    /// Where the lamb lives.
    housing: RwSignal<Housing>,
    /// Whether the age is given by the time of birth.
    by_birth: RwSignal<bool>,
    /// The age as typed.
    age: RwSignal<String>,
    /// The time of birth as typed.
    born: RwSignal<String>,
    /// The days as typed.
    days: RwSignal<String>,
    /// The table.
    table: RwSignal<BottleTable>,
}

impl Asked {
    /// Starts from what the farm has chosen.
    fn of(farm: Farm) -> Self {
        let practice = untrack(|| farm.practice());
        Self {
            weight: RwSignal::new(String::new()),
            unit: RwSignal::new(practice.system),
            confirmed: RwSignal::new(None),
            rule: RwSignal::new(practice.day_rule),
            housing: RwSignal::new(practice.housing),
            by_birth: RwSignal::new(false),
            age: RwSignal::new(String::new()),
            born: RwSignal::new(String::new()),
            days: RwSignal::new(String::new()),
            table: RwSignal::new(practice.bottle_table),
        }
    }
}

/// Every calculation without any record.
#[component]
pub(crate) fn Figures() -> impl IntoView {
    let asked = Asked::of(use_farm());
    let which = RwSignal::new(Which::FirstMilk);
    let tabs = vec![
        Choice::new(Which::FirstMilk, words::FIRST_MILK),
        Choice::new(Which::Window, words::WINDOW),
        Choice::new(Which::Bottle, words::BOTTLE),
    ];
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>{words::SUB}</Title>
            <Standing />
            <Choices
                label=words::WHICH
                options=tabs
                chosen=Signal::derive(move || Some(which.get()))
                on_choose=move |new| which.set(new)
            />
            {live(move || { match which.get() {
                Which::FirstMilk => view! { <first_milk::FirstMilk asked=asked /> }.into_any(),
                Which::Window => view! { <window::Window asked=asked /> }.into_any(),
                Which::Bottle => view! { <bottle::Bottle asked=asked /> }.into_any(),
            } }.into_any())}
            <LinkButton href=Screen::ColdLamb(None).hash() label=words::COLD_LAMB />
            <p class="small-print">{cautions::GENERAL}</p>
        </Page>
    }
}
