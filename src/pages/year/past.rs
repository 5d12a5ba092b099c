//! What was lost and what ailed, against the flock's own seasons before: the numbers, and whether they can be compared.

use yeanling_core::reckon::illness::Ailment;
use yeanling_core::reckon::survival::LEAST_LAMBS;
use yeanling_core::seasons::{AgainstPast, Ailed, LostAt, Rate, Season, Year};
use yeanling_words::{illness, year as words};

use super::{charts, row};
use crate::block::{Kind, Ledger, LedgerRow};
use crate::page::Blocks;

/// Returns what was lost at each age and of what.
pub(super) fn losses(season: &Season, year: &Year, past: &AgainstPast) -> Blocks {
    if past.losses.is_empty() {
        return Blocks::new().text(words::NO_LOSSES);
    }
    let lost = |lost: &LostAt| LedgerRow {
        other: before(past, lost.all.past),
        ..row(words::span(lost.span), words::rate(lost.all.season), words::causes(lost, past.seasons > 0))
    };
    let rows = past.losses.iter().map(lost).collect();
    charts::losses(year).then(ledger("lost", words::LOSSES, season, past, rows)).text(stands_out(past))
}

/// Returns what ailed ewes and lambs.
pub(super) fn ailments(season: &Season, past: &AgainstPast) -> Blocks {
    let ailed = |ailed: &Ailed| {
        let name = match ailed.ailment {
            Ailment::Ewe(row) => words::ailed(illness::ewe::row(row).name, true),
            Ailment::Lamb(row) => words::ailed(illness::lamb::row(row).name, false),
        };
        let all = ailed.all;
        LedgerRow {
            other: before(past, all.past),
            ..row(&name, words::rate(all.season), words::ages(&ailed.ages))
        }
    };
    let rows: Vec<LedgerRow> = past.ailments.iter().map(ailed).collect();
    if rows.is_empty() {
        return Blocks::new();
    }
    ledger("ailed-rows", words::AILED, season, past, rows).small(words::AILED_NOTE)
}

/// Nothing stands beside it while there was no season before.
fn before(past: &AgainstPast, rate: Rate) -> crate::Text {
    if past.seasons > 0 { words::rate(rate).into() } else { crate::Text::default() }
}

fn ledger(
    key: &'static str,
    label: &str,
    season: &Season,
    past: &AgainstPast,
    rows: Vec<LedgerRow>,
) -> Blocks {
    let heads = if past.seasons > 0 {
        (season.year().to_string(), words::BEFORE.to_owned())
    } else {
        (String::new(), String::new())
    };
    Blocks::new().add(key, Kind::Ledger(Ledger { label: label.to_owned(), heads, rows }))
}

/// Says which age stands out from the seasons before, or why that cannot be said.
fn stands_out(past: &AgainstPast) -> String {
    if past.seasons == 0 {
        return words::NO_SEASON_BEFORE.to_owned();
    }
    if !past.losses.iter().any(|lost| lost.all.can_be_compared()) {
        return words::too_few_to_compare(past.born, LEAST_LAMBS);
    }
    let of = |more: bool| {
        past.losses.iter().filter(move |lost| lost.all.more() == Some(more)).map(|lost| lost.span).collect()
    };
    words::stands_out(of(true), of(false))
}
