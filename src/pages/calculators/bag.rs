//! A bag of colostrum: whether it is good, what a feed of it brings, how old it is, how to thaw it; and what antibody
//! in a lamb's blood suggests.

use std::sync::Arc;

use yeanling_core::reckon::quality::{self, GOOD_ANTIBODY, Keeps, Origin, Store};
use yeanling_core::reckon::{Strength, passive_transfer};
use yeanling_core::settings::FreezerLife;
use yeanling_core::units::{Brix, System, Temperature, TimeDelta, Volume};
use yeanling_words::common::{number, read_field_day, volume_unit};
use yeanling_words::{bag as words, errors};

use super::answer::{answer, figure};
use super::choices;
use super::typed::{Read, field, good, read};
use crate::Reason;
use crate::block::{Block, Field, FieldKind, Item, ListLook};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;

const BRIX: &str = "figures-brix";
const ANTIBODY: &str = "figures-antibody";
const VOLUME: &str = "figures-volume";
const FILLED: &str = "figures-filled";
const STORE: &str = "figures-store";
const STORES: [(Store, &str); 2] = [(Store::Freezer, words::FREEZER), (Store::Fridge, words::FRIDGE)];
const WATER: &str = "figures-water";
const SERUM: &str = "figures-serum";
const TAKEN: &str = "figures-taken";
/// Whether the blood was taken early.
const TAKENS: [(bool, &str); 2] = [(false, words::FROM_24), (true, words::BEFORE_24)];

/// Returns a bag of colostrum.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let origins = Origin::ALL.map(|origin| Item::new(words::origin(origin)));
    let none_there = Blocks::new().list(ListLook::Ranked, origins).small(words::ORIGIN_SOURCE);
    Blocks::new()
        .section("good", words::GOOD, is_good(view, fields))
        .section("old", words::OLD, how_old(view, fields))
        .section("thaw", words::THAW, thaw(view, fields))
        .section("none-there", words::NONE_THERE, none_there)
        .section("blood", words::BLOOD, blood(view, fields))
}

/// A verdict with its reasons; nothing while there is none.
fn verdict(blocks: Blocks, view: &View, verdict: Option<(String, Reason)>) -> Blocks {
    match verdict {
        Some((text, reason)) => blocks.remark(text, [reason.button(view)]),
        None => blocks,
    }
}

/// Returns whether it is good, and what a feed brings.
fn is_good(view: &View, fields: &Fields) -> Blocks {
    let system = view.system();
    let brix = read(fields, BRIX, system, |text, system| {
        let brix = Brix::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Brix, system))?;
        Brix::OF_COLOSTRUM.check(brix).map_err(|wrong| errors::brix(&wrong))
    });
    let antibody = read(fields, ANTIBODY, system, |text, system| {
        let read =
            Strength::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Antibody, system))?;
        Strength::IN_COLOSTRUM.check(read).map_err(|wrong| errors::antibody(&wrong))
    });
    let volume = read(fields, VOLUME, system, |text, system| {
        let read = Volume::parse(text, system)
            .map_err(|wrong| errors::typed(&wrong, errors::Field::Volume, system))?;
        Volume::ONE_FEED.check(read).map_err(|wrong| errors::feed(&wrong, system))
    });
    let by_brix = good(&brix).and_then(|brix| {
        let reading = quality::reading(brix).ok()?;
        Some((words::bold(&words::brix(&reading)), Reason::Brix(reading)))
    });
    let by_antibody = good(&antibody).map(|strength| {
        let said = words::antibody(strength, strength >= GOOD_ANTIBODY);
        (words::bold(&said), Reason::Antibody(strength))
    });
    let blocks =
        Blocks::new().field(BRIX, field(fields, BRIX, words::BRIX, &brix, "%").hint(words::BRIX_HINT));
    let blocks = verdict(blocks, view, by_brix).field(
        ANTIBODY,
        field(fields, ANTIBODY, words::ANTIBODY, &antibody, "g/L").hint(words::ANTIBODY_HINT),
    );
    let blocks = verdict(blocks, view, by_antibody)
        .field(VOLUME, field(fields, VOLUME, words::VOLUME, &volume, volume_unit(system)));
    match (good(&volume), good(&antibody)) {
        (Some(_), None) => blocks.small(words::WANTS_ANTIBODY),
        (Some(volume), Some(strength)) => blocks.then([in_feed(volume, strength)]),
        (None, _) => blocks,
    }
}

/// Returns the antibody that a feed brings.
fn in_feed(volume: Volume, strength: Strength) -> Arc<Block> {
    let brings = quality::antibody(volume, strength);
    let share = words::share(quality::percent_of_wanted(brings));
    let shown = figure(number(brings.as_kilograms() * 1000.0, 1), "g", share);
    answer("in-feed", words::IN_FEED, shown, Some(Reason::AntibodyIn(volume, strength)))
}

/// Reads how old the bag is.
fn read_age(view: &View, text: &str) -> Result<Option<TimeDelta>, &'static str> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let day = read_field_day(text).ok_or(words::NO_DAY)?;
    let age = TimeDelta::days(view.now.local().date().signed_duration_since(day).num_days());
    if age < TimeDelta::zero() { Err(words::DAY_TO_COME) } else { Ok(Some(age)) }
}

/// Returns how old it is, by the farm's choice and by the others.
fn how_old(view: &View, fields: &Fields) -> Blocks {
    let text = fields.text(FILLED, "");
    let age = read_age(view, &text);
    let (store, _) = fields.pick(STORE, &STORES, STORES[0]);
    let own = view.settings().freezer_life;
    let stores = choices(STORE, words::WHERE, STORES.into_iter().enumerate(), |(one, name)| {
        (one == store, name.to_owned(), "")
    });
    let keeps = age.ok().flatten().map(|age| {
        let keep = quality::bag(age, store, own);
        (words::bold(&words::keeps(keep, store)), Reason::Bag(keep, store, own))
    });
    let by_other = |age| {
        let still = move |life| matches!(quality::bag(age, Store::Freezer, life), Keeps::Still(_));
        [FreezerLife::SixMonths, FreezerLife::OneYear, FreezerLife::TwoYears]
            .into_iter()
            .filter(move |life| *life != own)
            .map(move |life| Item::new(words::by_other(life, still(life))))
    };
    let in_freezer = age.ok().flatten().filter(|_| store == Store::Freezer);
    let filled = Field::new(words::FILLED, FieldKind::Date, text).error(age.err().unwrap_or_default());
    let blocks = Blocks::new().choices(STORE, stores).field(FILLED, filled);
    verdict(blocks, view, keeps).list(ListLook::Reading, in_freezer.into_iter().flat_map(by_other))
}

/// Returns how it is thawed.
fn thaw(view: &View, fields: &Fields) -> Blocks {
    let system = view.system();
    let water: Read<Temperature> = read(fields, WATER, system, |text, system| {
        Temperature::parse(text, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Water, system))
    });
    let blocks = Blocks::new()
        .list(ListLook::Reading, words::THAWING.iter().map(|line| Item::new(*line)))
        .field(WATER, field(fields, WATER, words::WATER, &water, degrees(system)));
    match good(&water) {
        Some(water) => blocks.remark(words::thaw(quality::thaw(water)), []),
        None => blocks,
    }
}

/// Returns the sign of the unit in which a temperature is typed.
pub(super) const fn degrees(system: System) -> &'static str {
    match system {
        System::Metric => "°C",
        System::Us => "°F",
    }
}

/// Returns what antibody in a lamb's blood suggests.
fn blood(view: &View, fields: &Fields) -> Blocks {
    let serum = read(fields, SERUM, view.system(), |text, system| {
        let read =
            Strength::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Serum, system))?;
        Strength::IN_SERUM.check(read).map_err(|wrong| errors::antibody(&wrong))
    });
    let (early, _) = fields.pick(TAKEN, &TAKENS, TAKENS[0]);
    let says = good(&serum).and_then(|serum| {
        let age = if early { TimeDelta::zero() } else { passive_transfer::MEASURED_AT };
        let reading = passive_transfer::reading(serum, age).ok()?;
        Some((words::blood(&reading), Reason::Blood(reading)))
    });
    let ages = choices(TAKEN, words::TAKEN, TAKENS.into_iter().enumerate(), |(one, name)| {
        (one == early, name.to_owned(), "")
    });
    let blocks = Blocks::new()
        .field(SERUM, field(fields, SERUM, words::SERUM, &serum, "g/L").hint(words::SERUM_HINT))
        .choices(TAKEN, ages.labelled());
    verdict(blocks, view, says)
}
