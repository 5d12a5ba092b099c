//! Hay for the winter, a ration of up to five feeds against the table, and water.

use crate::signals::prelude::*;
use yeanling_core::book::Item;
use yeanling_core::reckon::season::requirement::{Stage, need};
use yeanling_core::reckon::season::{budget, ration, water};
use yeanling_core::units::{Mass, System, TypedError, parse_number};

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Caution, Choice, Choices, Field, FieldKind, Ledger, LedgerRow, Notice, NoticeKind, Page,
    Remark, Section, Title, Weight, WhyButton, live,
};
use crate::pieces::{Standing, Top, WeightField, why_text};
use crate::route::Screen;
use crate::words::common::number;
use crate::words::{errors, feed as words, frame, why};

/// The most feeds of a ration.
const MOST_FEEDS: usize = 5;

/// What is worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Hay,
    Ration,
    Water,
}

/// Hay, ration and water.
#[component]
pub(crate) fn FeedScreen() -> impl IntoView {
    let what = RwSignal::new(What::Hay);
    let options = vec![
        Choice::new(What::Hay, words::HAY),
        Choice::new(What::Ration, words::RATION),
        Choice::new(What::Water, words::WATER),
    ];
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE />
            <Standing />
            <Choices
                label=words::WHAT
                options=options
                chosen=Signal::derive(move || Some(what.get()))
                on_choose=move |new| what.set(new)
            />
            {live(move || match what.get() {
                What::Hay => view! { <Hay /> }.into_any(),
                What::Ration => view! { <Ration /> }.into_any(),
                What::Water => view! { <Water /> }.into_any(),
            })}
        </Page>
    }
}

/// A number that was typed, in one field with its unit.
#[derive(Clone, Copy)]
struct Typed {
    text: RwSignal<String>,
    error: RwSignal<String>,
}

impl Typed {
    fn new(text: impl Into<String>) -> Self {
        Self { text: RwSignal::new(text.into()), error: RwSignal::new(String::new()) }
    }

    /// Returns the number; nothing typed is nothing, what is wrong stands at the field.
    fn read(self) -> Option<f64> {
        self.error.set(String::new());
        match parse_number(&self.text.get()) {
            Ok(number) => Some(number),
            Err(TypedError::Empty) => None,
            Err(wrong) => {
                self.error.set(errors::typed(&wrong, errors::Field::Pieces, System::Metric));
                None
            }
        }
    }

    fn field(self, label: &'static str, unit: &'static str, hint: &'static str) -> AnyView {
        if unit.is_empty() {
            return view! { <Field label=label value=self.text kind=FieldKind::Decimal error=self.error hint=hint /> }
                .into_any();
        }
        view! {
            <Field label=label value=self.text kind=FieldKind::Decimal error=self.error hint=hint>
                <span>{unit}</span>
            </Field>
        }
        .into_any()
    }
}

/// A mass that was typed, in the unit beside it.
#[derive(Clone, Copy)]
struct TypedMass {
    text: RwSignal<String>,
    system: RwSignal<System>,
    error: RwSignal<String>,
}

impl TypedMass {
    fn new(kilograms: f64, system: System) -> Self {
        let shown = match system {
            System::Metric => kilograms,
            System::Us => Mass::from_kilograms(kilograms).as_pounds(),
        };
        let text = if kilograms > 0.0 { number(shown, 0) } else { String::new() };
        Self { text: RwSignal::new(text), system: RwSignal::new(system), error: RwSignal::new(String::new()) }
    }

    fn read(self) -> Option<Mass> {
        self.error.set(String::new());
        let unit = self.system.get();
        match Mass::parse(&self.text.get(), unit) {
            Ok(mass) => Some(mass),
            Err(TypedError::Empty) => None,
            Err(wrong) => {
                self.error.set(errors::typed(&wrong, errors::Field::Mass, unit));
                None
            }
        }
    }

    fn field(self, label: &'static str) -> AnyView {
        view! { <WeightField value=self.text system=self.system error=self.error label=label /> }.into_any()
    }
}

fn living() -> String {
    let farm = use_farm();
    let ewes = farm.peek(|ground| ground.flock.ewes.values().filter(|ewe| ewe.lives()).count());
    if ewes > 0 { ewes.to_string() } else { String::new() }
}

/// Returns a whole count from a number that was typed.
fn whole(number: f64) -> Option<u32> {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "rounded and within")]
    let whole = (0.0..=1e9).contains(&number).then_some(number.round() as u32);
    whole
}

fn wrong(text: String) -> AnyView {
    view! { <Notice kind=NoticeKind::Bad><p>{text}</p></Notice> }.into_any()
}

/// A usual ewe, until hers is typed, in kilograms.
const USUAL_EWE: f64 = 70.0;

#[component]
fn Hay() -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let (ewes, days, share) = (Typed::new(living()), Typed::new(""), Typed::new("4"));
    let (weight, bale) = (TypedMass::new(USUAL_EWE, system), TypedMass::new(0.0, system));
    let answer = move || {
        let read = (ewes.read(), weight.read(), days.read(), share.read(), bale.read());
        let (Some(ewes), Some(weight), Some(days), Some(share), Some(bale)) = read else {
            return view! { <p class="small-print">{words::TYPE_ALL}</p> }.into_any();
        };
        let count = whole(ewes).unwrap_or(0);
        let long = whole(days).and_then(|days| u16::try_from(days).ok()).unwrap_or(u16::MAX);
        let system = farm.system();
        match budget::by_body_weight(count, weight, long, share / 100.0, bale) {
            Err(error) => wrong(words::refused(&error, system)),
            Ok(budget) => {
                let there = farm.with(|ground| ground.flock.stores.level(Item::Hay));
                let stored = there
                    .map(|there| words::in_store(Mass::from_kilograms(there.as_units()), &budget, system));
                view! {
                    <Section title=words::NEEDED>
                        <Remark text=words::hay(&budget, system)>
                            <WhyButton why=why_text(why::hay()) />
                        </Remark>
                        {stored.map(|text| view! { <Remark text=text /> })}
                    </Section>
                }
                .into_any()
            }
        }
    };
    view! {
        {ewes.field(words::EWES, "", "")}
        {weight.field(words::EWE_WEIGHT)}
        {days.field(words::DAYS, words::DAYS_UNIT, "")}
        {share.field(words::SHARE, "%", words::SHARE_HINT)}
        {bale.field(words::BALE)}
        {live(answer)}
    }
}

/// One feed of a ration as it is typed.
#[derive(Clone, Copy)]
struct TypedFeed {
    fed: TypedMass,
    dry_matter: Typed,
    energy: Typed,
    protein: Typed,
    calcium: Typed,
    copper: Typed,
    selenium: Typed,
}

impl TypedFeed {
    fn new(system: System) -> Self {
        let typed = || Typed::new("");
        Self {
            fed: TypedMass::new(0.0, system),
            dry_matter: typed(),
            energy: typed(),
            protein: typed(),
            calcium: typed(),
            copper: typed(),
            selenium: typed(),
        }
    }

    /// Returns the feed once all but copper and selenium are typed.
    fn read(self, system: System) -> Option<ration::Feed> {
        let (fed, dry_matter, energy) = (self.fed.read(), self.dry_matter.read(), self.energy.read());
        let (protein, calcium) = (self.protein.read(), self.calcium.read());
        let (copper_ppm, selenium_ppm) = (self.copper.read(), self.selenium.read());
        Some(ration::Feed {
            fed: fed?,
            dry_matter: dry_matter? / 100.0,
            energy: words::energy(energy?, system),
            protein: protein? / 100.0,
            calcium: calcium? / 100.0,
            copper_ppm,
            selenium_ppm,
        })
    }

    fn view(self, number: usize, system: System) -> AnyView {
        view! {
            <Section title=words::feed(number)>
                {self.fed.field(words::FED)}
                {self.dry_matter.field(words::DRY_MATTER, "%", "")}
                {self.energy.field(words::ENERGY, words::energy_unit(system), "")}
                {self.protein.field(words::PROTEIN, "%", "")}
                {self.calcium.field(words::CALCIUM, "%", "")}
                {self.copper.field(words::COPPER, "ppm", "")}
                {self.selenium.field(words::SELENIUM, "ppm", "")}
            </Section>
        }
        .into_any()
    }
}

#[component]
fn Ration() -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let stage = RwSignal::new(Stage::LastFourWeeks(yeanling_core::reckon::season::dates::Crop::Usual));
    let weight = TypedMass::new(USUAL_EWE, system);
    // All are made at once, so that what is typed of one outlives the list that shows it.
    let feeds: [TypedFeed; MOST_FEEDS] = std::array::from_fn(|_| TypedFeed::new(system));
    let many = RwSignal::new(1_usize);
    let stages = Stage::ALL.map(|one| Choice::new(one, words::stage(one))).to_vec();
    let answer = move || {
        let typed: Option<Vec<ration::Feed>> =
            feeds.iter().take(many.get()).map(|feed| feed.read(system)).collect();
        let (Some(weight), Some(feeds)) = (weight.read(), typed) else {
            return view! { <p class="small-print">{words::TYPE_RATION}</p> }.into_any();
        };
        let need = match need(stage.get(), weight) {
            Ok(need) => need,
            Err(error) => return wrong(words::outside(&error, system)),
        };
        match ration::check(&feeds, need) {
            Err(error) => wrong(words::refused(&error, system)),
            Ok(checked) => held(&checked, system),
        }
    };
    view! {
        <p class="small-print">{words::ANALYSIS}</p>
        <Choices
            label=words::STAGE
            labelled=true
            options=stages
            chosen=Signal::derive(move || Some(stage.get()))
            on_choose=move |new| stage.set(new)
            snug=true
        />
        {weight.field(words::EWE_WEIGHT)}
        {live(move || {
            let shown: Vec<AnyView> =
                feeds.iter().take(many.get()).enumerate().map(|(number, feed)| feed.view(number, system)).collect();
            shown.into_any()
        })}
        <Buttons columns=2>
            {live(move || (many.get() < MOST_FEEDS).then(|| view! {
                <Button label=words::ANOTHER on_press=move || many.update(|many| *many += 1) />
            }).into_any())}
            {live(move || (many.get() > 1).then(|| view! {
                <Button label=words::ONE_LESS on_press=move || many.update(|many| *many -= 1) weight=Weight::Quiet />
            }).into_any())}
        </Buttons>
        {live(answer)}
        <Caution lines=words::CAUTION.map(str::to_owned).to_vec() />
    }
}

/// What a ration comes to.
fn held(checked: &ration::Checked, system: System) -> AnyView {
    let row = |held: ration::Held| LedgerRow {
        name: words::nutrient(held.nutrient).to_owned(),
        note: words::held(held, system),
        value: format!("*{} %*", number(held.share() * 100.0, 0)),
        other: String::new(),
    };
    let rows: Vec<LedgerRow> = checked.held.into_iter().map(row).collect();
    let minerals: Vec<AnyView> =
        words::minerals(&checked.minerals).map(|text| view! { <Remark text=text /> }.into_any()).into();
    let (limiting, leaves) = (words::limiting(checked), checked.leaves);
    view! {
        <Section title=words::HELD>
            <Remark text=limiting>
                <WhyButton why=why_text(why::ration()) />
            </Remark>
            <Ledger
                label=words::HELD
                heads=Signal::stored((String::new(), String::new()))
                rows=Signal::stored(rows)
            />
            {leaves.then(|| view! { <p>{words::LEAVES}</p> })}
            {minerals}
        </Section>
    }
    .into_any()
}

#[component]
fn Water() -> impl IntoView {
    let farm = use_farm();
    let ewes = Typed::new(living());
    let answer = move || {
        let Some(count) = ewes.read() else { return ().into_any() };
        let system = farm.system();
        match water::wanted(whole(count).unwrap_or(0)) {
            Err(error) => wrong(words::refused(&error, system)),
            Ok(wanted) => view! {
                <Remark text=words::water(&wanted, system)>
                    <WhyButton why=why_text(why::drink()) />
                </Remark>
            }
            .into_any(),
        }
    };
    view! { {ewes.field(words::EWES, "", "")} {live(answer)} }
}
