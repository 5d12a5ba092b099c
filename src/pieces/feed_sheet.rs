//! A sheet in which a feed by hand is noted, with whatever volume, milk and way it had.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::units::{System, Volume};
use yeanling_core::watch::hold_milk;

use super::whose::whose;
use crate::farm::use_farm;
use crate::parts::{Button, Caution, Choice, Choices, Field, FieldKind, Sheet, Weight};
use crate::words::common::number;
use crate::words::{cautions, errors, frame, lamb as words, noted, refusals};

/// Notes a feed.
#[component]
pub(crate) fn FeedSheet(
    /// Which lamb.
    lamb: LambId,
    /// The volume that is filled in.
    volume: Option<Volume>,
    /// The milk that is chosen at first.
    milk: Milk,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let hold = farm.peek(|ground| ground.flock.lamb(lamb).and_then(hold_milk));
    // A volume that lies ready asks to be given.
    let volume = volume.filter(|_| hold.is_none());
    let value = RwSignal::new(volume.map(|volume| typed_volume(volume, system)).unwrap_or_default());
    let error = RwSignal::new(String::new());
    let milk = RwSignal::new(milk);
    let way = RwSignal::new(Way::Bottle);
    let save = move || {
        error.set(String::new());
        let volume = match Volume::parse(&value.get_untracked(), system) {
            Ok(volume) => volume,
            Err(wrong) => return error.set(errors::typed(&wrong, errors::Field::Volume, system)),
        };
        let fed = Event::Fed { lamb, volume, milk: milk.get_untracked(), way: way.get_untracked() };
        match farm.note(fed) {
            Ok(_) => on_close.run(()),
            Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system)),
        }
    };
    let unit = match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    };
    view! {
        <Sheet title=words::FEED_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            {hold.map(|hold| view! { <Caution lines=words::hold(hold, system) /> }.into_any())}
            <Field label=words::VOLUME value=value kind=FieldKind::Decimal error=error>
                <span>{unit}</span>
            </Field>
            <WayChoices way=way />
            <MilkChoices milk=milk />
            {live(move || (way.get() == Way::Tube).then(|| view! { <Caution lines=tube() /> }).into_any())}
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}

/// The choice between bottle and tube.
#[component]
pub(crate) fn WayChoices(
    /// What is chosen.
    way: RwSignal<Way>,
) -> impl IntoView {
    let ways = vec![Choice::new(Way::Bottle, words::BOTTLE), Choice::new(Way::Tube, words::TUBE)];
    let chosen = Signal::derive(move || Some(way.get()));
    view! { <Choices label=words::WAY options=ways chosen=chosen on_choose=move |new| way.set(new) /> }
}

/// The choice among kinds of milk.
#[component]
pub(crate) fn MilkChoices(
    /// What is chosen.
    milk: RwSignal<Milk>,
) -> impl IntoView {
    let milks: Vec<Choice<Milk>> =
        noted::MILKS.iter().map(|milk| Choice::new(*milk, noted::milk(*milk))).collect();
    let chosen = Signal::derive(move || Some(milk.get()));
    view! {
        <Choices
            label=words::MILK
            labelled=true
            options=milks
            chosen=chosen
            on_choose=move |new| milk.set(new)
            stacked=true
        />
    }
}

/// Returns the safety list of the tube.
pub(crate) fn tube() -> Vec<String> {
    cautions::TUBE.iter().map(|line| (*line).to_owned()).collect()
}

/// Returns a volume as it would be typed.
pub(crate) fn typed_volume(volume: Volume, system: System) -> String {
    match system {
        System::Metric => number(volume.as_milliliters(), 1),
        System::Us => number(volume.as_fluid_ounces(), 2),
    }
}
