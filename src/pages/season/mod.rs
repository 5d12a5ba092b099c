//! The season ahead: who is near, lambings per night with their spread, pens, dates, and the groups it comes from.

mod charts;
mod dates;
mod doors;
mod new_group;
mod plan;

use std::sync::Arc;

use chrono::NaiveDate;
use yeanling_core::book::{EweId, GroupId, PlannedJob};
use yeanling_core::flock::{Flock, Group};
use yeanling_core::reckon::season::breeding::BreedingSeason;
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::reckon::season::pens::Wanted;
use yeanling_core::seasons::{
    Awaited, Overdue, SeasonForecast, YoungEwe, group_dates, overdue, season_forecast, young_ewes,
};
use yeanling_core::sort_small::SortSmall;
use yeanling_words::{animals, group as group_words, plan as words_plan, season_forecast as words};

pub(crate) use dates::{alarms, blocks as dates};
pub(crate) use new_group::{save as save_group, sheet as group_sheet};
pub(crate) use plan::{
    answers, blocks as plans, day_sheet, does as plan_happened, key as plan_key, save as save_plan, save_day,
    sheet as plan_sheet, whose,
};

use crate::block::{Fact, Kind, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, Sheet, State};

/// Who is likely enough within a day to be named (ours: one in fifty).
const NEAR: f64 = 0.02;
/// So many of them at most.
const MOST_NEAR: usize = 8;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let seen = Arc::new(season_forecast(view.flock, &view.lambing_forecasts, view.now));
    let groups = groups(view.flock);
    let new = || Button::new("new-group", words::NEW_GROUP, Action::Ask(Sheet::NewGroup));
    let blocks = if groups.is_empty() { Blocks::new().empty(words::EMPTY, [new()]) } else { Blocks::new() };
    let blocks = if seen.put_to_ram > 0 {
        blocks
            .section("near", words::WHO, near(view, &seen))
            .section("overdue", words::OVERDUE, past(view))
            .then(doors::blocks(view, &seen))
            .section("nights", words::NIGHTS, nights(view, &seen))
            .section(
                "pens-wanted",
                words::PENS,
                seen.pens.as_ref().map(|wanted| pens(view, wanted)).unwrap_or_default(),
            )
    } else {
        blocks.then(doors::blocks(view, &seen))
    };
    let again = (!groups.is_empty()).then(new);
    let rows = groups.iter().map(|group| row(view, group));
    Page::new(words::TITLE).under(words::stands(seen.put_to_ram, seen.lambed)).blocks(
        blocks
            .section("young-ewes", words_plan::YOUNG, young(view))
            .then(plans(view, None))
            .then(dates(view, draft, &groups))
            .section(
                "groups",
                words::GROUPS,
                again.into_iter().fold(Blocks::new().rows("all-groups", rows), Blocks::button),
            ),
    )
}

/// The groups that are not broken up, as they were formed.
fn groups(flock: &Flock) -> Vec<&Group> {
    let mut groups: Vec<&Group> = flock.groups.values().filter(|group| group.parted.is_none()).collect();
    groups.sort_small_by_key(|group| (group.formed, group.id));
    groups
}

fn row(view: &View, group: &Group) -> (Key, Row) {
    let stands = group_words::stands(group, ram_planned(view, group.id), view.now.local().date());
    (format!("group-{}", group.id).into(), Row::new(&group.name).text(stands).to(Screen::Group(group.id)))
}

/// The day for which a group's ram is planned.
pub(crate) fn ram_planned(view: &View, group: GroupId) -> Option<NaiveDate> {
    view.flock.plan_of(Some(group), PlannedJob::RamIn).map(|plan| plan.on)
}

/// The ewe lambs that may come into heat while a ram stays; nothing while there are none.
fn young(view: &View) -> Blocks {
    let today = view.now.local().date();
    let row = |one: &YoungEwe| {
        let row = Row::new(animals::lamb_of(view.flock, one.lamb)).text(words_plan::heat(one, today));
        (crate::page::key_of("young", one.lamb.entry()), row.to(Screen::Lamb(one.lamb)))
    };
    let rows: Vec<(Key, Row)> = young_ewes(view.flock, view.now).iter().map(row).collect();
    if rows.is_empty() {
        Blocks::new()
    } else {
        Blocks::new().text(words_plan::YOUNG_TEXT).rows("young", rows)
    }
}

/// A ewe by her name, as a row that leads to her.
fn ewe(view: &View, noun: &'static str, id: EweId) -> (Key, Row) {
    let name = animals::ewe_of(view.flock, id);
    (crate::page::key_of(noun, id.entry()), Row::new(name).to(Screen::Ewe(id)))
}

/// The ewes that may lamb within a day, the likeliest first.
fn near(view: &View, seen: &SeasonForecast) -> Blocks {
    let row = |one: &Awaited| {
        let lambing_forecast = one
            .lambing_forecast
            .as_ref()
            .ok()
            .filter(|lambing_forecast| lambing_forecast.within_24h >= NEAR)?;
        let (key, row) = ewe(view, "near", one.ewe);
        Some((
            key,
            row.text(words::within(lambing_forecast)).says(State::Coming, words::days(lambing_forecast)),
        ))
    };
    let rows: Vec<(Key, Row)> = seen.awaited.iter().filter_map(row).take(MOST_NEAR).collect();
    let blocks = if rows.is_empty() { Blocks::new().text(words::NOBODY_NEAR) } else { Blocks::new() };
    blocks.rows("who-is-near", rows).small(words::SIGNS_COUNT)
}

/// The ewes whose days have passed without a lamb; nothing while there are none.
fn past(view: &View) -> Blocks {
    let today = view.now.local().date();
    let row = |one: &Overdue| {
        let (key, row) = ewe(view, "past", one.ewe);
        (key, row.text(words::overdue(one, today)).says(State::Now, ""))
    };
    let rows: Vec<(Key, Row)> =
        overdue(view.flock, &view.lambing_forecasts, view.now).iter().map(row).collect();
    if rows.is_empty() {
        return Blocks::new();
    }
    Blocks::new().text(words::OVERDUE_LEAD).rows("past-her-days", rows)
}

/// Lambings per night.
fn nights(view: &View, seen: &Arc<SeasonForecast>) -> Blocks {
    let Some(forecast) = &seen.forecast else { return Blocks::new().text(words::NOBODY) };
    let births = charts::births(forecast, &seen.happened, &starts(view.flock), view.now.local().date());
    let births = births.map(Kind::Chart);
    let blocks = births.into_iter().fold(Blocks::new(), |blocks, chart| blocks.add("births", chart));
    let blocks = blocks.remark(words::most(forecast), [why(words::NIGHTS, Reason::Nights(Arc::clone(seen)))]);
    let out = match seen.conception.season {
        BreedingSeason::Within => "",
        BreedingSeason::Outside => words::OUT_OF_SEASON,
    };
    blocks.text(seen.likely.as_ref().map(words::likely).unwrap_or_default()).text(out)
}

/// When the first lambs of each group are possible, the earliest first.
fn starts(flock: &Flock) -> Vec<charts::Start> {
    let start = |group: &Group| {
        let dates = group_dates(flock, group);
        let first = dates.into_iter().find(|dated| matches!(dated.what, DateTask::WatchFrom))?;
        Some(charts::Start { group: group.name.clone(), on: first.date })
    };
    let mut starts: Vec<charts::Start> = groups(flock).into_iter().filter_map(start).collect();
    starts.sort_small_by_key(|start| start.on);
    starts
}

/// The pens that the births take, in one sentence; how sure that is and when they are taken is folded behind it.
fn pens(view: &View, wanted: &Wanted) -> Blocks {
    let span = |least: u32| {
        let mut nights = wanted.nights.iter().filter(|night| night.enough[1] >= least);
        nights.clone().next().zip(nights.next_back()).map(|(first, last)| (first.date, last.date))
    };
    let pens = view.flock.pens.values().filter(|pen| pen.closed.is_none());
    let taken = pens.clone().filter(|pen| !pen.inside.is_empty()).count();
    let says = words::have_pens(wanted.enough[1], span(wanted.enough[1]), span(1), (pens.count(), taken));
    let facts = [90, 95, 99].into_iter().zip(wanted.enough);
    let facts = facts.map(|(sure, pens)| Fact::new(format!("*{pens}*"), words::sure(sure)));
    let chart = charts::pens(wanted).map(Kind::Chart);
    let blocks = chart.into_iter().fold(Blocks::new(), |blocks, chart| blocks.add("pens-in-use", chart));
    Blocks::new().remark(says, [why(words::PENS, Reason::PensWanted(Arc::new(wanted.clone())))]).fold(
        "pens-by-night",
        words::PENS_BY_NIGHT,
        blocks.facts(facts),
    )
}
