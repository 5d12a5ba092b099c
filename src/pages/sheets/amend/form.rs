//! What of a fact is asked for: each asks and reads in one, so that what can be typed is what is noted.

use yeanling_core::book::{Belly, Cause, CullReason, Item, LambingEase, Measure, Milk, Sex, Way};
use yeanling_core::reckon::vigor::{FourGrade, GRADED_AT};
use yeanling_core::settings::Limits;
use yeanling_core::units::{Amount, Condition, Mass, Price, System, Temperature, Volume};
use yeanling_words::common::number;
use yeanling_words::{errors, lamb as words, lambing, life, noted, season, stores};

use super::super::ewe_in_field::{DAYS, LAMBS, SCANNED, scanned};
use super::super::parts::{choices, read_days};
use super::super::seen::BELLIES;
use super::super::vigor::{self, GRADES};
use crate::Action;
use crate::block::{Choice, Choices, Field, FieldKind, Toggle};
use crate::draft::Fields;
use crate::milk::{milk as chosen_milk, milks, typed_volume, volume_unit, way as chosen_way, ways};
use crate::page::Blocks;
use crate::view::View;
use crate::{Key, Kind, weight};

const MASS: &str = "amend-mass";
const VOLUME: &str = "amend-volume";
const WAY: &str = "amend-way";
const MILK: &str = "amend-milk";
const TEMPERATURE: &str = "amend-temperature";
const SEX: &str = "amend-sex";
const DEAD: &str = "amend-dead";
const EASE: &str = "amend-ease";
const VIGOR: &str = "amend-vigor";
const BELLY: &str = "amend-belly";
const CAUSE: &str = "amend-cause";
const CONDITION: &str = "amend-condition";
const WORDS: &str = "amend-words";
const STOCK: &str = "amend-stock";
const MEAT: &str = "amend-meat";
const DAIRY: &str = "amend-dairy";
const PRICE: &str = "amend-price";
const CULLED: &str = "amend-culled";

const SEXES: [(Option<Sex>, &str); 3] =
    [(Some(Sex::Ewe), lambing::EWE_LAMB), (Some(Sex::Ram), lambing::RAM_LAMB), (None, lambing::NOT_SEEN)];

/// Goes over a fact: gathers what it asks, puts into it what was typed, and keeps what was wrong with that.
pub(super) struct Form<'a> {
    fields: &'a Fields,
    system: System,
    limits: &'a Limits,
    /// What is asked.
    pub(super) asks: Blocks,
    /// What is wrong with what was typed, each under its key.
    pub(super) wrong: Vec<(Key, String)>,
}

impl<'a> Form<'a> {
    /// Returns one that asks nothing yet.
    pub(super) fn new(view: &'a View, fields: &'a Fields) -> Self {
        let limits = &view.settings().limits;
        Self { fields, system: view.system(), limits, asks: Blocks::new(), wrong: Vec::new() }
    }

    fn ask(&mut self, add: impl FnOnce(Blocks) -> Blocks) {
        self.asks = add(std::mem::take(&mut self.asks));
    }

    /// Takes what was read, unless something is wrong with it.
    fn take<T>(&mut self, key: &'static str, read: Result<T, String>, into: &mut T) {
        match read {
            Ok(read) => *into = read,
            Err(wrong) => self.wrong.push((key.into(), wrong)),
        }
    }

    /// Asks in a field, and returns what stands in it.
    fn field(
        &mut self,
        key: &'static str,
        (label, kind): (&str, FieldKind),
        stood: &str,
        unit: &str,
    ) -> String {
        let text = self.fields.text(key, stood);
        let field = Field::new(label, kind, text.clone()).error(self.fields.error(key)).unit(unit);
        self.ask(|asks| asks.field(key, field));
        text
    }

    /// Asks for one of a few, and puts what is chosen into the fact.
    fn one_of<T: Copy + PartialEq>(
        &mut self,
        key: &'static str,
        label: &str,
        all: &[(T, &'static str)],
        into: &mut T,
    ) {
        let names = all.iter().map(|(_, name)| *name);
        let values: Vec<T> = all.iter().map(|(value, _)| *value).collect();
        *into = self.fields.pick(key, &values, *into);
        let place = values.iter().position(|value| *value == *into);
        let choices = choices(key, label, names, place).stacked();
        self.ask(|asks| asks.choices(key, choices));
    }

    pub(super) fn mass(&mut self, mass: &mut Mass) {
        let (fields, system) = (self.fields, self.system);
        let stood = weight::as_typed(*mass, system);
        let field = weight::field(fields, MASS, words::WEIGHT, (&stood, system));
        let unit = weight::unit(fields, MASS, system);
        // What was not typed anew stays to the gram.
        if field.value != stood || unit != system {
            let read = Mass::parse(&field.value, unit);
            self.take(MASS, read.map_err(|wrong| errors::typed(&wrong, errors::Field::Mass, unit)), mass);
        }
        self.ask(|asks| asks.field(MASS, field));
    }

    pub(super) fn fed(&mut self, volume: &mut Volume, way: &mut Way, milk: &mut Milk) {
        let (fields, system) = (self.fields, self.system);
        let stood = typed_volume(*volume, system);
        let text = self.field(VOLUME, (words::VOLUME, FieldKind::Decimal), &stood, volume_unit(system));
        if text != stood {
            let read = Volume::parse(&text, system);
            let read = read.map_err(|wrong| errors::typed(&wrong, errors::Field::Volume, system));
            self.take(VOLUME, read, volume);
        }
        let (ways, milks) = (ways(fields, WAY, *way), milks(fields, MILK, *milk));
        *way = chosen_way(fields, WAY, *way);
        *milk = chosen_milk(fields, MILK, *milk);
        self.ask(|asks| asks.choices(WAY, ways).choices(MILK, milks));
    }

    pub(super) fn temperature(&mut self, temperature: &mut Temperature) {
        let system = self.system;
        let (degrees, unit) = match system {
            System::Metric => (temperature.as_celsius(), "°C"),
            System::Us => (temperature.as_fahrenheit(), "°F"),
        };
        let stood = number(degrees, 1);
        let text = self.field(TEMPERATURE, (words::TEMPERATURE, FieldKind::Decimal), &stood, unit);
        if text != stood {
            let read = Temperature::parse(&text, system);
            let read = read.map_err(|wrong| errors::typed(&wrong, errors::Field::LambTemperature, system));
            self.take(TEMPERATURE, read, temperature);
        }
    }

    pub(super) fn born(&mut self, sex: &mut Option<Sex>, alive: &mut bool) {
        let fields = self.fields;
        *sex = fields.pick(SEX, &SEXES.map(|(sex, _)| sex), *sex);
        let place = SEXES.iter().position(|(one, _)| *one == *sex);
        let sexes = choices(SEX, words::SEX, SEXES.map(|(_, name)| name), place);
        *alive = fields.pick(DEAD, &[true, false], *alive);
        let does = Action::Choose(DEAD.into(), usize::from(*alive));
        let dead = Toggle { label: lambing::BORN_DEAD.to_owned(), pressed: !*alive, note: None, does };
        self.ask(|asks| asks.choices(SEX, sexes).add(DEAD, Kind::Toggle(dead)));
    }

    pub(super) fn ease(&mut self, ease: &mut LambingEase) {
        self.one_of(EASE, lambing::HELP, &noted::EASES.map(|ease| (ease, noted::ease(ease))), ease);
    }

    pub(super) fn vigor(&mut self, score: &mut u8) {
        *score = self.fields.pick(VIGOR, &GRADES.map(FourGrade::number), *score);
        let grade = |(place, grade): (usize, &FourGrade)| -> Choice {
            vigor::choice(*grade, (self.limits, GRADED_AT), Action::Choose(VIGOR.into(), place))
        };
        let place = GRADES.iter().position(|grade| grade.number() == *score);
        let grades = GRADES.iter().enumerate().map(grade).collect();
        let choices = Choices::new(words::VIGOR_ASK, grades, place).stacked();
        self.ask(|asks| asks.choices(VIGOR, choices));
    }

    pub(super) fn belly(&mut self, belly: &mut Belly) {
        self.one_of(BELLY, words::BELLY_ASK, &BELLIES, belly);
    }

    pub(super) fn cause(&mut self, cause: &mut Cause) {
        self.one_of(CAUSE, words::DIED_ASK, &noted::CAUSES.map(|cause| (cause, noted::cause(cause))), cause);
    }

    pub(super) fn condition(&mut self, score: &mut Condition) {
        let text = self.field(CONDITION, (season::WHOLE, FieldKind::Decimal), &season::score(*score), "");
        let read = Condition::parse(&text);
        let read = read.map_err(|wrong| errors::typed(&wrong, errors::Field::Condition, System::Metric));
        self.take(CONDITION, read, score);
    }

    pub(super) fn scan(&mut self, lambs: &mut u8, days: &mut Option<u16>) {
        let (fields, stood) = (self.fields, typed_days(*days));
        let asks = scanned(fields, Some(*lambs), &stood);
        self.ask(|all| all.then(asks));
        *lambs = fields.pick(LAMBS, &SCANNED, *lambs);
        self.take(DAYS, read_days(&fields.text(DAYS, &stood)), days);
    }

    pub(super) fn stock(&mut self, item: Item, amount: &mut Amount) {
        let system = self.system;
        let stood = stores::typed_amount(item, *amount, system);
        let unit = stores::unit(item, system);
        let text = self.field(STOCK, (stores::HOW_MUCH, FieldKind::Decimal), &stood, unit);
        if text != stood {
            let read = stores::read_amount(&text, item, system);
            let read = read.map_err(|wrong| errors::typed(&wrong, stock_field(item), system));
            self.take(STOCK, read, amount);
        }
    }

    pub(super) fn withdrawal(&mut self, meat: &mut Option<u16>, milk: &mut Option<u16>) {
        let fields = self.fields;
        let field = |key: &'static str, label: &str, stood: Option<u16>| {
            Field::new(label, FieldKind::Whole, fields.text(key, &typed_days(stood)))
                .error(fields.error(key))
                .unit(life::DAYS)
        };
        let of_meat = field(MEAT, life::MEAT_DAYS, *meat).hint(life::DAYS_HINT);
        let of_milk = field(DAIRY, life::MILK_DAYS, *milk);
        self.take(MEAT, read_days(&of_meat.value), meat);
        self.take(DAIRY, read_days(&of_milk.value), milk);
        self.ask(|asks| asks.field(MEAT, of_meat).field(DAIRY, of_milk));
    }

    pub(super) fn price(&mut self, price: &mut Price) {
        let stood = life::price(*price);
        let text = self.field(PRICE, (life::PRICE, FieldKind::Decimal), &stood, "");
        if text != stood {
            let read = Price::parse(&text);
            let read = read.map_err(|wrong| errors::typed(&wrong, errors::Field::Price, System::Metric));
            self.take(PRICE, read, price);
        }
    }

    pub(super) fn culled(&mut self, why: &mut CullReason) {
        self.one_of(CULLED, life::CULL, &CullReason::ALL.map(|why| (why, life::cull_reason(why))), why);
    }

    pub(super) fn words(&mut self, label: &str, kind: FieldKind, words: &mut String) {
        let text = self.field(WORDS, (label, kind), words, "");
        text.trim().clone_into(words);
    }

    pub(super) fn words_or_none(&mut self, words: &mut Option<String>) {
        let stood = words.clone().unwrap_or_default();
        let text = self.field(WORDS, (words::TAG_LABEL, FieldKind::Text), &stood, "");
        *words = Some(text.trim().to_owned()).filter(|words| !words.is_empty());
    }
}

fn typed_days(days: Option<u16>) -> String {
    days.map(|days| days.to_string()).unwrap_or_default()
}

const fn stock_field(item: Item) -> errors::Field {
    match item.measure() {
        Measure::Kilograms => errors::Field::Stock,
        Measure::Milliliters => errors::Field::Volume,
        Measure::Pieces => errors::Field::Pieces,
    }
}
