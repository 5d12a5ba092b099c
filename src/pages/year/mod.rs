//! Season summary: figures, each with what it is a share of; beside it another season.

mod charts;
mod flock;
mod past;
mod rams;

use yeanling_core::reckon::flock_figures::Share;
use yeanling_core::seasons::{Season, Year, against_past, seasons, year};
use yeanling_core::units::{System, TimeDelta};
use yeanling_words::common::{date, mass};
use yeanling_words::pens::printed;
use yeanling_words::{frame, watch, year as words};

use crate::block::{Choice, Choices, Kind, Ledger, LedgerRow, Line, LineLook};
use crate::draft::Draft;
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Request, Screen};

/// Which season, by its place, and which beside it: none first.
const SEASON: &str = "year-season";
const BESIDE: &str = "year-beside";

/// A season with its figures.
type Counted<'a> = (&'a Season, Year);

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let all = seasons(view.flock);
    let chosen = draft.fields.chosen(SEASON).unwrap_or(0);
    let beside = draft.fields.chosen(BESIDE).unwrap_or(0);
    let page = Page::new(words::TITLE).back(Screen::Season, frame::SEASON);
    let Some(shown) = counted(view, &all, chosen) else {
        let lambing = Button::new("lambing", watch::LAMBING, Action::Go(Screen::Lambing));
        return page.blocks(Blocks::new().empty(words::EMPTY, [lambing]));
    };
    let other = beside.checked_sub(1).filter(|place| *place != chosen);
    let other = other.and_then(|place| counted(view, &all, place));
    let (season, year) = &shown;
    let past = against_past(view.flock, season, view.now);
    let print = Button::new("print", words::PRINT, Action::Phone(Request::Print));
    page.under(under(view, season)).blocks(
        Blocks::new()
            .add(
                "paper-head",
                Kind::Line(Line::new(
                    LineLook::PaperHead,
                    printed(&view.settings().farm_name, &date(view.now)),
                )),
            )
            .then(which(&all, chosen, beside))
            .section("flock", words::FLOCK, figures(view, &shown, other.as_ref()))
            .section("losses", words::LOSSES, past::losses(season, year, &past))
            .section("ailed", words::AILED, past::ailments(season, &past))
            .section("by-day", words::BY_DAY, charts::by_day(year))
            .section("survival", words::SURVIVAL, charts::survival(year, view.system()))
            .then(flock::gains(view, season))
            .then(rams::blocks(view, season))
            .then(flock::look_again(view))
            .button(print),
    )
}

/// A ewe that is awaited so long after the last birth belongs to another season (ours).
const SAME_SEASON: TimeDelta = TimeDelta::days(60);

/// How many ewes are still to lamb in a season: until then its rates are rates so far.
fn to_lamb(view: &View, season: &Season) -> usize {
    let until = (season.last + SAME_SEASON).local().date();
    let likely = view.lambing_forecasts.awaited.iter().filter_map(|one| one.lambing_forecast.as_ref().ok());
    // Of a season that was, none is awaited any more.
    let goes_on = view.now.since(season.last) < SAME_SEASON;
    likely.filter(|forecast| goes_on && forecast.likely <= until).count()
}

fn under(view: &View, season: &Season) -> String {
    match to_lamb(view, season) {
        0 => words::season(season),
        to_lamb => words::so_far(season, to_lamb),
    }
}

fn counted<'a>(view: &View, all: &'a [Season], place: usize) -> Option<Counted<'a>> {
    let season = all.get(place)?;
    Some((season, year(view.flock, season, view.now)))
}

/// Which season, and which beside it; nothing while there is only one.
fn which(all: &[Season], chosen: usize, beside: usize) -> Blocks {
    if all.len() < 2 {
        return Blocks::new();
    }
    let choices = |key: &'static str, label: &str, names: Vec<String>, chosen| {
        let option = |(place, name): (usize, String)| Choice::new(name, Action::Choose(key.into(), place));
        Choices::new(label, names.into_iter().enumerate().map(option).collect(), Some(chosen)).labelled()
    };
    let years = || all.iter().map(|season| season.year().to_string());
    let others = std::iter::once(words::ALONE.to_owned()).chain(years());
    Blocks::new()
        .choices(SEASON, choices(SEASON, words::SEASON, years().collect(), chosen))
        .choices(BESIDE, choices(BESIDE, words::AGAINST, others.collect(), beside))
}

/// The figures of the flock.
fn figures(view: &View, (season, year): &Counted, other: Option<&Counted>) -> Blocks {
    let system = view.system();
    let name = |season: &Season| {
        let goes_on = to_lamb(view, season) > 0;
        if goes_on { words::year_so_far(season.year()) } else { season.year().to_string() }
    };
    let others = other.map(|(_, year)| rows(year, system)).unwrap_or_default();
    let beside = |row: LedgerRow| {
        let same = others.iter().find(|other| other.name == row.name);
        LedgerRow { other: same.map(|row| row.value.clone()).unwrap_or_default(), ..row }
    };
    let heads = (name(season), other.map(|(season, _)| name(season)).unwrap_or_default());
    let rows = rows(year, system).into_iter().map(beside).collect();
    let unknown = match year.counts.put_to_ram {
        None => words::NOT_PUT.to_owned(),
        Some(_) => words::others(year.counts.others.lambed),
    };
    Blocks::new()
        .add("figures", Kind::Ledger(Ledger { label: words::FLOCK.to_owned(), heads, rows }))
        .remark(unknown, [why(words::FLOCK, Reason::FlockFigures(year.figures))])
}

/// Returns a ledger of one column; nothing without a row.
fn ledger(key: impl Into<Key>, label: &str, rows: Vec<LedgerRow>) -> Blocks {
    if rows.is_empty() {
        return Blocks::new();
    }
    let heads = (String::new(), String::new());
    Blocks::new().add(key, Kind::Ledger(Ledger { label: label.to_owned(), heads, rows }))
}

fn row(name: &str, value: impl Into<crate::Text>, note: impl Into<String>) -> LedgerRow {
    LedgerRow { name: name.to_owned(), note: note.into(), value: value.into(), ..LedgerRow::default() }
}

/// Returns the figures of one season, in the order in which a season goes.
fn rows(year: &Year, system: System) -> Vec<LedgerRow> {
    let (counts, figures) = (&year.counts, &year.figures);
    let share = |name: &str, share: Option<Share>| {
        share.map(|share| row(name, words::percent(share), words::of(share)))
    };
    let alive = |name: &str, alive| {
        let (value, note) = words::alive(alive);
        row(name, value, note)
    };
    let weaned = match figures.weaning {
        Some(of) => share(words::WEANED, Some(of)),
        None => Some(row(words::WEANED, words::count(counts.weaned), "")),
    };
    let weaned_a_ewe = figures.weaned_a_ewe.map(|of| words::bold(&mass(of, system)));
    let birth_weight = year.birth_weight.map(|mean| words::mean(mean, system));
    [
        Some(row(words::LAMBED, words::count(counts.lambed), words::without_dam(year.without_dam))),
        Some(row(words::BORN, words::count(counts.born()), words::born(counts.born_alive, counts.born_dead))),
        Some(row(words::LITTERS, words::litters(year.litters), words::LITTERS_NOTE)),
        share(words::FERTILITY, figures.fertility),
        share(words::LAMBING, figures.lambing),
        figures.prolificacy.map(|of| row(words::PROLIFICACY, words::each(of), words::of(of))),
        share(words::STILLBIRTH, figures.stillbirth),
        Some(alive(words::AT_A_DAY, year.at_a_day)),
        Some(alive(words::AT_A_WEEK, year.at_a_week)),
        share(words::LOSS, figures.loss),
        weaned,
        weaned_a_ewe.map(|value| row(words::WEANED_A_EWE, value, words::weaned_weighed(counts))),
        birth_weight.map(|(value, note)| row(words::BIRTH_WEIGHT, value, note)),
    ]
    .into_iter()
    .flatten()
    .collect()
}
