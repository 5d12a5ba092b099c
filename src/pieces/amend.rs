//! A sheet in which an earlier entry is changed, in time and in content. The first reading stays in the book.

use crate::signals::prelude::*;
use yeanling_core::book::{
    Belly, Cause, Ease, EntryId, Event, Item, Life, Measure, Milk, Sex, VigorScale, Way,
};
use yeanling_core::units::{Condition, Mass, System, Temperature, Volume};

use super::ewe_sheets::{ScanFields, read_days};
use super::feed_sheet::{MilkChoices, WayChoices, typed_volume};
use super::small_sheets::{belly_choices, cause_choices, vigor_choices};
use super::weight_field::WeightField;
use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Field, FieldKind, Sheet, Toggle, Weight};
use crate::words::common::{field_time, number, read_field_time};
use crate::words::{errors, frame, lamb as words, lambing, life, noted, refusals, season, stores};

/// Changes an entry.
#[component]
pub(crate) fn AmendSheet(
    /// Which entry.
    entry: EntryId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let found = farm.peek(|ground| {
        let line = ground.flock.lines.iter().find(|line| line.entry == entry);
        line.map(|line| (line.event.clone(), line.at))
    });
    let Some((event, at)) = found else {
        return view! { <Sheet title=words::CHANGE on_close=on_close><p>{frame::GONE}</p></Sheet> }
            .into_any();
    };
    let system = untrack(|| farm.system());
    let draft = Draft::of(&event, system);
    let was = field_time(at);
    let time = RwSignal::new(was.clone());
    let error = RwSignal::new(String::new());
    let save = move || {
        error.set(String::new());
        let typed = time.get_untracked();
        let at = if typed == was {
            Some(at)
        } else {
            read_field_time(&typed).map(|local| farm.at_local_beside(local, at))
        };
        let Some(at) = at else { return error.set(words::NO_TIME.to_owned()) };
        let event = match draft.read(&event) {
            Ok(event) => Box::new(event),
            Err(wrong) => return error.set(wrong),
        };
        match farm.note(Event::Amended { entry, event, at }) {
            Ok(_) => on_close.run(()),
            Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system)),
        }
    };
    view! {
        <Sheet title=words::CHANGE on_close=on_close>
            <Field label=words::WHEN value=time kind=FieldKind::Moment error=error />
            {draft.view()}
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
    .into_any()
}

/// What can be changed about a fact beside its time.
#[derive(Clone, Copy)]
enum Draft {
    Weighed { text: RwSignal<String>, system: RwSignal<System> },
    Fed { text: RwSignal<String>, system: System, milk: RwSignal<Milk>, way: RwSignal<Way> },
    Temperature { text: RwSignal<String>, system: System },
    Born { sex: RwSignal<Option<Sex>>, alive: RwSignal<bool> },
    Ease(RwSignal<Ease>),
    Vigor(RwSignal<u8>),
    Belly(RwSignal<Belly>),
    Cause(RwSignal<Cause>),
    Text { text: RwSignal<String>, long: bool },
    Condition(RwSignal<String>),
    Scan { lambs: RwSignal<Option<u8>>, days: RwSignal<String> },
    Stock { text: RwSignal<String>, item: Item, system: System },
    Withheld { meat: RwSignal<String>, milk: RwSignal<String> },
    TimeAlone,
}

impl Draft {
    fn of(event: &Event, system: System) -> Self {
        match event {
            Event::Fed { volume, milk, way, .. } => Self::Fed {
                text: RwSignal::new(typed_volume(*volume, system)),
                system,
                milk: RwSignal::new(*milk),
                way: RwSignal::new(*way),
            },
            Event::LambBorn { sex, alive, .. } => {
                Self::Born { sex: RwSignal::new(*sex), alive: RwSignal::new(*alive) }
            }
            Event::BirthEase { ease, .. } => Self::Ease(RwSignal::new(*ease)),
            Event::VigorScored { scale: VigorScale::FourGrade, score, .. } => {
                Self::Vigor(RwSignal::new(*score))
            }
            Event::TemperatureTaken { temperature, .. } => {
                let degrees = match system {
                    System::Metric => temperature.as_celsius(),
                    System::Us => temperature.as_fahrenheit(),
                };
                Self::Temperature { text: RwSignal::new(number(degrees, 1)), system }
            }
            Event::PenMade { name, .. } | Event::PenNamed { name, .. } => {
                Self::Text { text: RwSignal::new(name.clone()), long: false }
            }
            Event::BellyFelt { belly, .. } => Self::Belly(RwSignal::new(*belly)),
            Event::Died { cause, .. } => Self::Cause(RwSignal::new(*cause)),
            Event::Remarked { text, .. } | Event::Life(Life::Examined { finding: text, .. }) => {
                Self::Text { text: RwSignal::new(text.clone()), long: true }
            }
            Event::Tagged { tag, .. } => Self::Text { text: RwSignal::new(tag.clone()), long: false },
            Event::EweCame { tag } => {
                Self::Text { text: RwSignal::new(tag.clone().unwrap_or_default()), long: false }
            }
            Event::Weighed { mass, .. } | Event::EweWeighed { mass, .. } | Event::FeedSet { mass, .. } => {
                Self::Weighed {
                    text: RwSignal::new(typed_mass(*mass, system)),
                    system: RwSignal::new(system),
                }
            }
            Event::Conditioned { score, .. } => Self::Condition(RwSignal::new(season::score(*score))),
            Event::Scanned { lambs, days, .. } => {
                let days = days.map(|days| days.to_string()).unwrap_or_default();
                Self::Scan { lambs: RwSignal::new(Some(*lambs)), days: RwSignal::new(days) }
            }
            Event::GroupFormed { name } | Event::GroupNamed { name, .. } => {
                Self::Text { text: RwSignal::new(name.clone()), long: false }
            }
            Event::CrayonChanged { color, .. } | Event::CrayonMark { color, .. } => {
                Self::Text { text: RwSignal::new(color.clone()), long: false }
            }
            Event::Life(Life::Marked { mark, .. }) => {
                Self::Text { text: RwSignal::new(mark.clone()), long: false }
            }
            Event::Life(Life::Treated { treatment, .. }) => Self::Withheld {
                meat: RwSignal::new(treatment.meat_days.map(|days| days.to_string()).unwrap_or_default()),
                milk: RwSignal::new(treatment.milk_days.map(|days| days.to_string()).unwrap_or_default()),
            },
            Event::RamIn { ram, .. } => {
                Self::Text { text: RwSignal::new(ram.clone().unwrap_or_default()), long: false }
            }
            Event::StoreIn { item, amount }
            | Event::StoreUsed { item, amount }
            | Event::StoreThrown { item, amount }
            | Event::StoreCounted { item, amount } => Self::Stock {
                text: RwSignal::new(stores::typed_amount(*item, *amount, system)),
                item: *item,
                system,
            },
            Event::DamGiven { .. }
            | Event::VigorScored { scale: VigorScale::TenPoint | VigorScale::EightPoint, .. }
            | Event::SignSeen { .. }
            | Event::WaterBagSeen { .. }
            | Event::StrainingSeen { .. }
            | Event::PartShowing { .. }
            | Event::HandChecked { .. }
            | Event::HelpBegun { .. }
            | Event::VetCalled { .. }
            | Event::LookedAt { .. }
            | Event::NotLambing { .. }
            | Event::AfterbirthPassed { .. }
            | Event::Accepted { .. }
            | Event::SwallowTried { .. }
            | Event::Warmed { .. }
            | Event::SolidsEaten { .. }
            | Event::Weaned { .. }
            | Event::Ringed { .. }
            | Event::PenCleaned { .. }
            | Event::PenClosed { .. }
            | Event::PutInPen { .. }
            | Event::LetOut { .. }
            | Event::PutOff { .. }
            | Event::GroupParted { .. }
            | Event::JoinedGroup { .. }
            | Event::LeftGroup { .. }
            | Event::RamOut { .. }
            | Event::BoosterGiven { .. }
            | Event::ColostrumFrozen { .. }
            | Event::ColostrumThawed { .. }
            | Event::ColostrumThrown { .. }
            | Event::Stood { .. }
            | Event::Sucked { .. }
            | Event::NavelDipped { .. }
            | Event::AllBorn { .. }
            | Event::Life(
                Life::Fostered { .. }
                | Life::KeptAsEwe { .. }
                | Life::Described { .. }
                | Life::Castrated { .. }
                | Life::Went { .. },
            )
            | Event::Care(_)
            | Event::Chose(_)
            | Event::SameAnimal { .. }
            | Event::Amended { .. }
            | Event::Struck { .. }
            | Event::Restored { .. }
            | Event::Unread(_) => Self::TimeAlone,
        }
    }

    /// Returns the fact as it should have been, or what is wrong with what was typed. Each fact says here what of it can be
    /// changed, so that nothing typed is dropped in silence.
    fn read(self, was: &Event) -> Result<Event, String> {
        let mut event = was.clone();
        match &mut event {
            Event::Weighed { mass, .. } | Event::EweWeighed { mass, .. } | Event::FeedSet { mass, .. } => {
                let Self::Weighed { text, system } = self else { return self.dropped() };
                let unit = system.get_untracked();
                *mass = Mass::parse(&text.get_untracked(), unit)
                    .map_err(|wrong| errors::typed(&wrong, errors::Field::Mass, unit))?;
            }
            Event::Fed { volume, milk: m, way: w, .. } => {
                let Self::Fed { text, system, milk, way } = self else { return self.dropped() };
                *volume = Volume::parse(&text.get_untracked(), system)
                    .map_err(|wrong| errors::typed(&wrong, errors::Field::Volume, system))?;
                *m = milk.get_untracked();
                *w = way.get_untracked();
            }
            Event::TemperatureTaken { temperature, .. } => {
                let Self::Temperature { text, system } = self else { return self.dropped() };
                *temperature = Temperature::parse(&text.get_untracked(), system)
                    .map_err(|wrong| errors::typed(&wrong, errors::Field::LambTemperature, system))?;
            }
            Event::LambBorn { sex: s, alive: a, .. } => {
                let Self::Born { sex, alive } = self else { return self.dropped() };
                *s = sex.get_untracked();
                *a = alive.get_untracked();
            }
            Event::BirthEase { ease, .. } => {
                let Self::Ease(new) = self else { return self.dropped() };
                *ease = new.get_untracked();
            }
            Event::VigorScored { scale: VigorScale::FourGrade, score, .. } => {
                let Self::Vigor(new) = self else { return self.dropped() };
                *score = new.get_untracked();
            }
            Event::VigorScored { scale: VigorScale::TenPoint | VigorScale::EightPoint, .. } => {
                return self.time_alone(event);
            }
            Event::BellyFelt { belly, .. } => {
                let Self::Belly(new) = self else { return self.dropped() };
                *belly = new.get_untracked();
            }
            Event::Died { cause, .. } => {
                let Self::Cause(new) = self else { return self.dropped() };
                *cause = new.get_untracked();
            }
            Event::Conditioned { score, .. } => {
                let Self::Condition(text) = self else { return self.dropped() };
                *score = Condition::parse(&text.get_untracked())
                    .map_err(|wrong| errors::typed(&wrong, errors::Field::Condition, System::Metric))?;
            }
            Event::Scanned { lambs: l, days: d, .. } => {
                let Self::Scan { lambs, days } = self else { return self.dropped() };
                *l = lambs.get_untracked().unwrap_or(*l);
                *d = read_days(&days.get_untracked())?;
            }
            Event::Life(Life::Treated { treatment, .. }) => {
                let Self::Withheld { meat, milk } = self else { return self.dropped() };
                treatment.meat_days = read_days(&meat.get_untracked())?;
                treatment.milk_days = read_days(&milk.get_untracked())?;
            }
            Event::StoreIn { amount, .. }
            | Event::StoreUsed { amount, .. }
            | Event::StoreThrown { amount, .. }
            | Event::StoreCounted { amount, .. } => {
                let Self::Stock { text, item, system } = self else { return self.dropped() };
                *amount = stores::read_amount(&text.get_untracked(), item, system)
                    .map_err(|wrong| errors::typed(&wrong, stock_field(item), system))?;
            }
            Event::Remarked { text: words, .. }
            | Event::Life(Life::Examined { finding: words, .. } | Life::Marked { mark: words, .. })
            | Event::Tagged { tag: words, .. }
            | Event::GroupFormed { name: words }
            | Event::GroupNamed { name: words, .. }
            | Event::CrayonChanged { color: words, .. }
            | Event::CrayonMark { color: words, .. }
            | Event::PenMade { name: words, .. }
            | Event::PenNamed { name: words, .. } => {
                let Self::Text { text, .. } = self else { return self.dropped() };
                text.get_untracked().trim().clone_into(words);
            }
            Event::EweCame { tag: words } | Event::RamIn { ram: words, .. } => {
                let Self::Text { text, .. } = self else { return self.dropped() };
                let text = text.get_untracked();
                *words = Some(text.trim().to_owned()).filter(|words| !words.is_empty());
            }
            Event::DamGiven { .. }
            | Event::SignSeen { .. }
            | Event::WaterBagSeen { .. }
            | Event::StrainingSeen { .. }
            | Event::PartShowing { .. }
            | Event::HandChecked { .. }
            | Event::HelpBegun { .. }
            | Event::VetCalled { .. }
            | Event::LookedAt { .. }
            | Event::NotLambing { .. }
            | Event::AfterbirthPassed { .. }
            | Event::Accepted { .. }
            | Event::SwallowTried { .. }
            | Event::Warmed { .. }
            | Event::SolidsEaten { .. }
            | Event::Weaned { .. }
            | Event::Ringed { .. }
            | Event::PenCleaned { .. }
            | Event::PenClosed { .. }
            | Event::PutInPen { .. }
            | Event::LetOut { .. }
            | Event::PutOff { .. }
            | Event::GroupParted { .. }
            | Event::JoinedGroup { .. }
            | Event::LeftGroup { .. }
            | Event::RamOut { .. }
            | Event::BoosterGiven { .. }
            | Event::ColostrumFrozen { .. }
            | Event::ColostrumThawed { .. }
            | Event::ColostrumThrown { .. }
            | Event::Stood { .. }
            | Event::Sucked { .. }
            | Event::NavelDipped { .. }
            | Event::AllBorn { .. }
            | Event::Life(
                Life::Fostered { .. }
                | Life::KeptAsEwe { .. }
                | Life::Described { .. }
                | Life::Castrated { .. }
                | Life::Went { .. },
            )
            | Event::Care(_)
            | Event::Chose(_)
            | Event::SameAnimal { .. }
            | Event::Amended { .. }
            | Event::Struck { .. }
            | Event::Restored { .. }
            | Event::Unread(_) => return self.time_alone(event),
        }
        Ok(event)
    }

    /// What was changed beside the time of a fact of which nothing else can be changed; a draft is made of its own fact.
    fn time_alone(self, event: Event) -> Result<Event, String> {
        if let Self::TimeAlone = self { Ok(event) } else { self.dropped() }
    }

    /// Refuses what would drop what was typed: a draft that is not of this fact.
    fn dropped(self) -> Result<Event, String> {
        Err(words::NOT_CHANGED.to_owned())
    }

    fn view(self) -> AnyView {
        match self {
            Self::Weighed { text, system } => {
                view! { <WeightField value=text system=system error=Signal::stored(String::new()) /> }
                    .into_any()
            }
            Self::Fed { text, system, milk, way } => {
                let unit = match system {
                    System::Metric => "ml",
                    System::Us => "fl oz",
                };
                view! {
                    <Field label=words::VOLUME value=text kind=FieldKind::Decimal>
                        <span>{unit}</span>
                    </Field>
                    <WayChoices way=way />
                    <MilkChoices milk=milk />
                }
                .into_any()
            }
            Self::Temperature { text, system } => {
                let unit = match system {
                    System::Metric => "°C",
                    System::Us => "°F",
                };
                view! {
                    <Field label=words::TEMPERATURE value=text kind=FieldKind::Decimal>
                        <span>{unit}</span>
                    </Field>
                }
                .into_any()
            }
            Self::Born { sex, alive } => view! {
                <Choices
                    label=words::SEX
                    options=sex_choices()
                    chosen=Signal::derive(move || Some(sex.get()))
                    on_choose=move |new| sex.set(new)
                />
                <Toggle
                    label=lambing::BORN_DEAD
                    pressed=Signal::derive(move || !alive.get())
                    on_press=move || alive.update(|alive| *alive = !*alive)
                />
            }
            .into_any(),
            Self::Ease(ease) => choices(
                lambing::HELP,
                noted::EASES.iter().map(|ease| Choice::new(*ease, noted::ease(*ease))).collect(),
                ease,
            ),
            Self::Vigor(score) => {
                choices(words::VIGOR_ASK, vigor_choices(&untrack(|| use_farm().practice().limits)), score)
            }
            Self::Belly(belly) => choices(words::BELLY_ASK, belly_choices(), belly),
            Self::Cause(cause) => choices(words::DIED_ASK, cause_choices(), cause),
            Self::Text { text, long } => {
                let (label, kind) = if long {
                    (words::REMARK_LABEL, FieldKind::Long)
                } else {
                    (words::TAG_LABEL, FieldKind::Text)
                };
                view! { <Field label=label value=text kind=kind /> }.into_any()
            }
            Self::Condition(text) => {
                view! { <Field label=season::WHOLE value=text kind=FieldKind::Decimal /> }.into_any()
            }
            Self::Scan { lambs, days } => view! { <ScanFields lambs=lambs days=days /> }.into_any(),
            Self::Stock { text, item, system } => view! {
                <Field label=stores::HOW_MUCH value=text kind=FieldKind::Decimal>
                    <span>{stores::unit(item, system)}</span>
                </Field>
            }
            .into_any(),
            Self::Withheld { meat, milk } => view! {
                <Field label=life::MEAT_DAYS value=meat kind=FieldKind::Whole hint=life::DAYS_HINT>
                    <span>{life::DAYS}</span>
                </Field>
                <Field label=life::MILK_DAYS value=milk kind=FieldKind::Whole>
                    <span>{life::DAYS}</span>
                </Field>
            }
            .into_any(),
            Self::TimeAlone => ().into_any(),
        }
    }
}

fn typed_mass(mass: Mass, system: System) -> String {
    match system {
        System::Metric => number(mass.as_kilograms(), 3),
        System::Us => number(mass.as_pounds(), 2),
    }
}

const fn stock_field(item: Item) -> errors::Field {
    match item.measure() {
        Measure::Kilograms => errors::Field::Stock,
        Measure::Milliliters => errors::Field::Volume,
        Measure::Pieces => errors::Field::Pieces,
    }
}

fn choices<T: Copy + PartialEq + Send + Sync + 'static>(
    label: &'static str,
    options: Vec<Choice<T>>,
    chosen: RwSignal<T>,
) -> AnyView {
    let now = Signal::derive(move || Some(chosen.get()));
    view! {
        <Choices label=label options=options chosen=now on_choose=move |new| chosen.set(new) stacked=true />
    }
    .into_any()
}

fn sex_choices() -> Vec<Choice<Option<Sex>>> {
    vec![
        Choice::new(Some(Sex::Ewe), lambing::EWE_LAMB),
        Choice::new(Some(Sex::Ram), lambing::RAM_LAMB),
        Choice::new(None, lambing::NOT_SEEN),
    ]
}

#[cfg(test)]
mod tests;
