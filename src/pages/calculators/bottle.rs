//! How much a bottle lamb takes, from its age in days and, if it is known, its weight today.

use yeanling_core::reckon::bottle::{self, Day, NoRow};
use yeanling_core::reckon::mixing::mix;
use yeanling_core::settings::BottleTable;
use yeanling_core::units::{Mass, System, TimeDelta, Volume};
use yeanling_words::common::{volume_at_most, volume_at_most_number, volume_unit};
use yeanling_words::{bottle_round, calculators as words, cautions, errors, settings};

use super::answer::{answer, figure, head, in_both, other};
use super::typed::{Read, read, wrong};
use super::{DAYS, TODAY, choices, weight_field, weight_unit};
use crate::block::{Field, FieldKind, Figure, Shape};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Reason, Screen, powder};

const TABLE: &str = "figures-table";
const TABLES: [BottleTable; 2] = [BottleTable::VetSupplier, BottleTable::UsHandbook];

/// Returns the bottle by age.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let unit = weight_unit(view, fields);
    let table = fields.pick(TABLE, &TABLES, view.settings().bottle_table);
    let (days, weight) = (read_days(fields), read_weight(fields, TODAY, unit));
    let day = match (&days, &weight) {
        (Ok(Some(days)), Ok(weight)) => Some(bottle::day(TimeDelta::days(i64::from(*days)), *weight, table)),
        (Ok(None) | Err(_), _) | (_, Err(_)) => None,
    };
    let age_error = match (&days, &day) {
        (Err(wrong), _) => wrong.clone(),
        (Ok(_), Some(Err(error @ (NoRow::TooYoung { .. } | NoRow::TooOld { .. })))) => {
            errors::no_row(error, unit)
        }
        (Ok(_), Some(Ok(_) | Err(NoRow::NotAWeight(_))) | None) => String::new(),
    };
    let weight_error = match &weight {
        Ok(Some(weight)) => Mass::ON_THE_BOTTLE
            .check(*weight)
            .err()
            .map(|wrong| errors::weight(&wrong, unit))
            .unwrap_or_default(),
        Ok(None) | Err(_) => wrong(&weight),
    };
    let tables = choices(TABLE, words::TABLE, TABLES.into_iter().enumerate(), |one| {
        let (name, note) = settings::bottle_table(one);
        (one == table, name.to_owned(), note)
    });
    let mut blocks = Blocks::new()
        .field(DAYS, days_field(fields, age_error))
        .field(TODAY, weight_field(view, fields, TODAY, words::TODAY, weight_error))
        .small(words::WEIGHT_TODAY);
    if days == Ok(None) {
        blocks = blocks.small(words::TYPE_DAYS);
    }
    if let Some(Ok(day)) = day {
        blocks = blocks.then(feeds(&day, view.system()));
    }
    blocks
        .choices(TABLE, tables.labelled())
        .button(Button::new("bottle-round", bottle_round::LINK, Action::Go(Screen::BottleRound)))
        .then(powder::blocks(view, fields, "", Mass::from_kilograms(0.0)))
        .caution([words::MIX_CAUTION.to_owned(), words::SICK.to_owned(), cautions::TUBE.join(" ")])
}

/// Returns the feeds of the day and what goes into them.
fn feeds(day: &Day, system: System) -> Blocks {
    let why = || Some(Reason::Bottle(Box::new(*day)));
    let cap = day.cap.map(|cap| answer("cap", words::CAP, most_in_a_day(cap, system), why()));
    let mixes = (!day.colostrum).then(|| {
        [
            answer("mix-feed", words::MIX_FEED, mixed(day.per_feed, system), why()),
            answer("mix-day", words::MIX_DAY, mixed(day.day_total, system), why()),
        ]
    });
    let others = Blocks::new()
        .then([
            answer("feeds", words::FEEDS_A_DAY, figure(day.feeds.to_string(), "", ""), why()),
            answer("day", words::DAY_TOTAL, day_total(day, system), why()),
        ])
        .then(cap)
        .then(mixes.into_iter().flatten());
    let mut blocks = Blocks::new()
        .then([answer("feed", words::EACH_FEED, head(in_both(day.per_feed.offered(system), system)), why())])
        .small(words::row(day.feeds, day.least, day.most, system));
    if day.capped {
        blocks = blocks.text(words::CAPPED);
    }
    blocks = blocks.group("answers", Shape::Answers, others);
    if day.cap.is_none() {
        blocks = blocks.small(words::NO_CAP);
    }
    if day.colostrum { blocks.text(words::COLOSTRUM) } else { blocks }
}

/// A day held to its cap is shown as the cap is, rounded down, so that one volume never reads as two.
fn day_total(day: &Day, system: System) -> Figure {
    if day.capped && day.cap == Some(day.day_total) {
        let also = volume_at_most(day.day_total, other(system));
        figure(volume_at_most_number(day.day_total, system), volume_unit(system), also)
    } else {
        in_both(day.day_total, system)
    }
}

fn most_in_a_day(cap: Volume, system: System) -> Figure {
    figure(volume_at_most_number(cap, system), volume_unit(system), words::cap_also(cap, other(system)))
}

fn mixed(finished: Volume, system: System) -> Figure {
    let (powder, water) = mix(finished);
    figure(words::powder(powder), "g", words::water(water, system))
}

/// Returns the field of the age in days.
pub(super) fn days_field(fields: &Fields, error: String) -> Field {
    Field::new(words::DAYS, FieldKind::Whole, fields.text(DAYS, "")).hint(words::DAYS_HINT).error(error)
}

/// Reads whole days; nothing typed is none.
pub(super) fn read_days(fields: &Fields) -> Read<u16> {
    let text = fields.text(DAYS, "");
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    text.parse().map(Some).map_err(|_| words::days_error(text))
}

/// Reads a weight; nothing typed is none.
pub(super) fn read_weight(fields: &Fields, key: &str, unit: System) -> Read<Mass> {
    read(fields, key, unit, |text, unit| {
        Mass::parse(text, unit).map_err(|wrong| errors::typed(&wrong, errors::Field::Mass, unit))
    })
}
