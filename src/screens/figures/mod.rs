//! Ready figures: every calculation without any record. Nothing typed here is noted.
//!
//! What is typed once stays while the screen is open, and a birth weight is known to all that ask for one; the weight
//! of today is another, so that a birth weight never starves an older lamb.

mod age;
mod answer;
mod bag;
mod bottle;
mod first_milk;
mod typed;
mod weaning;
mod weather;
mod window;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::practice::{BottleTable, DayRule, Housing, WeaningRule};
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
    Weaning,
    Bag,
    Weather,
}

/// What was typed and chosen, for all of them.
#[derive(Clone, Copy)]
struct Asked {
    /// The birth weight as typed.
    weight: RwSignal<String>,
    /// The weight of today as typed.
    today: RwSignal<String>,
    /// The unit they are typed in.
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
    /// Whether it eats solids.
    solids: RwSignal<Option<bool>>,
    /// The rule of weaning.
    weaning: RwSignal<WeaningRule>,
    /// The bag of colostrum.
    bag: bag::Typed,
    /// The weather.
    weather: weather::Typed,
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
            today: RwSignal::new(String::new()),
            solids: RwSignal::new(None),
            weaning: RwSignal::new(practice.weaning_rule),
            bag: bag::Typed::new(),
            weather: weather::Typed::new(),
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
        Choice::new(Which::Weaning, words::WEANING),
        Choice::new(Which::Bag, words::BAG),
        Choice::new(Which::Weather, words::WEATHER),
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
                Which::Weaning => view! { <weaning::Weaning asked=asked /> }.into_any(),
                Which::Bag => view! { <bag::Bag typed=asked.bag /> }.into_any(),
                Which::Weather => view! { <weather::Weather typed=asked.weather housing=asked.housing /> }.into_any(),
            } }.into_any())}
            <LinkButton href=Screen::ColdLamb(None).hash() label=words::COLD_LAMB />
            <p class="small-print">{cautions::GENERAL}</p>
        </Page>
    }
}
