//! The season in figures, each with what it is a share of; beside it another season.

mod charts;
mod flock;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::figures::{Season, Year as Figures, put_to_ram, seasons, year};
use yeanling_core::units::System;

use crate::farm::use_farm;
use crate::parts::{
    Button, Choice, Choices, Empty, Ledger, LedgerRow, Page, Remark, Said, Section, Title, WhyButton,
};
use crate::pieces::{Standing, Top, why_text};
use crate::route::Screen;
use crate::words::{frame, why, year as words};

/// A season with its figures.
type Counted = (Season, Figures);

/// The season in figures.
#[component]
pub(crate) fn Year() -> impl IntoView {
    let farm = use_farm();
    let all = Memo::new(move |_| farm.with(|ground| seasons(&ground.flock)));
    let chosen = RwSignal::new(0_usize);
    let beside = RwSignal::new(None::<usize>);
    let counted = move |place: usize| -> Option<Counted> {
        let season = all.with(|all| all.get(place).cloned())?;
        let now = farm.now();
        let figures =
            farm.with(|ground| year(&ground.flock, &season, put_to_ram(&ground.flock, &season), now));
        Some((season, figures))
    };
    let shown = Memo::new(move |_| counted(chosen.get()));
    let other = Memo::new(move |_| {
        let place = beside.get().filter(|place| *place != chosen.get())?;
        counted(place)
    });
    let sub = Signal::derive(move || {
        shown.with(|shown| shown.as_ref().map(|(season, _)| words::season(season)).unwrap_or_default())
    });
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE>
                <Said text=sub />
            </Title>
            <Standing />
            {live(move || {
                if shown.with(Option::is_none) {
                    return view! { <Empty text=words::EMPTY /> }.into_any();
                }
                view! {
                    {live(move || which(&all.get(), chosen, beside))}
                    <Flock shown=shown other=other />
                    {live(move || shown.get().map(|(_, year)| losses(&year)).into_any())}
                    {live(move || shown.get().map(|(_, year)| charts::by_day(&year)).into_any())}
                    {live(move || {
                        let system = farm.system();
                        shown.get().map(|(_, year)| charts::survival(&year, system)).into_any()
                    })}
                    {live(move || {
                        let now = farm.now();
                        let gains = |(season, _)| farm.with(|ground| flock::gains(&ground.flock, &season, now));
                        shown.get().map(gains).into_any()
                    })}
                    <flock::LookAgain />
                    <Button label=words::PRINT on_press=move || farm.print() />
                }
                    .into_any()
            })}
        </Page>
    }
}

/// Which season, and which beside it; nothing while there is only one.
fn which(all: &[Season], chosen: RwSignal<usize>, beside: RwSignal<Option<usize>>) -> AnyView {
    if all.len() < 2 {
        return ().into_any();
    }
    let years: Vec<(usize, String)> =
        all.iter().enumerate().map(|(place, season)| (place, season.year().to_string())).collect();
    let options: Vec<Choice<usize>> =
        years.iter().map(|(place, year)| Choice::new(*place, year.clone())).collect();
    let mut others = vec![Choice::new(None, words::ALONE)];
    others.extend(years.iter().map(|(place, year)| Choice::new(Some(*place), year.clone())));
    view! {
        <Choices
            label=words::SEASON
            labelled=true
            options=options
            chosen=Signal::derive(move || Some(chosen.get()))
            on_choose=move |place| chosen.set(place)
        />
        <Choices
            label=words::AGAINST
            labelled=true
            options=others
            chosen=Signal::derive(move || Some(beside.get()))
            on_choose=move |place| beside.set(place)
        />
    }
    .into_any()
}

/// The figures of the flock.
#[component]
fn Flock(shown: Memo<Option<Counted>>, other: Memo<Option<Counted>>) -> impl IntoView {
    let farm = use_farm();
    let heads = Signal::derive(move || {
        let name = |counted: &Option<Counted>| {
            counted.as_ref().map(|(season, _)| season.year().to_string()).unwrap_or_default()
        };
        (shown.with(name), other.with(name))
    });
    let rows = Signal::derive(move || {
        let system = farm.system();
        shown.with(|shown| {
            other.with(|other| {
                let one = shown.as_ref().map(|(_, year)| rows(year, system)).unwrap_or_default();
                let two = other.as_ref().map(|(_, year)| rows(year, system)).unwrap_or_default();
                one.into_iter()
                    .map(|row| {
                        let same = two.iter().find(|other| other.name == row.name);
                        LedgerRow { other: same.map(|row| row.value.clone()).unwrap_or_default(), ..row }
                    })
                    .collect::<Vec<_>>()
            })
        })
    });
    let because = Signal::derive(move || {
        shown.with(|shown| {
            shown.as_ref().map(|(_, year)| why_text(why::flock_figures(&year.figures))).unwrap_or_default()
        })
    });
    let unknown = Memo::new(move |_| {
        shown.with(|shown| shown.as_ref().is_some_and(|(_, year)| year.counts.put_to_ram.is_none()))
    });
    view! {
        <Section title=words::FLOCK>
            <Ledger label=words::FLOCK heads=heads rows=rows />
            <Remark text=Signal::derive(move || {
                if unknown.get() { words::NOT_PUT.to_owned() } else { String::new() }
            })>
                <WhyButton why=because />
            </Remark>
        </Section>
    }
}

/// Returns the figures of one season, in the order in which a season goes.
fn rows(year: &Figures, system: System) -> Vec<LedgerRow> {
    let row = |name: &str, value: String, note: String| LedgerRow {
        name: name.to_owned(),
        note,
        value,
        other: String::new(),
    };
    let counts = &year.counts;
    let figures = &year.figures;
    let share = |name: &str, share| {
        Some(share).flatten().map(|share| row(name, words::percent(share), words::of(share)))
    };
    let alive = |name: &str, alive| {
        let (value, note) = words::alive(alive);
        row(name, value, note)
    };
    let [one, two, more] = year.litters;
    let mut rows = vec![
        row(words::LAMBED, format!("*{}*", counts.lambed), words::without_dam(year.without_dam)),
        row(words::BORN, format!("*{}*", counts.born()), words::born(counts.born_alive, counts.born_dead)),
        row(words::LITTERS, format!("*{one} · {two} · {more}*"), words::LITTERS_NOTE.to_owned()),
    ];
    rows.extend(share(words::FERTILITY, figures.fertility));
    rows.extend(share(words::LAMBING, figures.lambing));
    rows.extend(figures.prolificacy.map(|of| row(words::PROLIFICACY, words::each(of), words::of(of))));
    rows.extend(share(words::STILLBIRTH, figures.stillbirth));
    rows.push(alive(words::AT_A_DAY, year.at_a_day));
    rows.push(alive(words::AT_A_WEEK, year.at_a_week));
    rows.extend(share(words::LOSS, figures.loss));
    match figures.weaning {
        Some(of) => rows.extend(share(words::WEANED, Some(of))),
        None => rows.push(row(words::WEANED, format!("*{}*", counts.weaned), String::new())),
    }
    rows.extend(figures.weaned_a_ewe.map(|mass| {
        row(words::WEANED_A_EWE, format!("*{}*", crate::words::common::mass(mass, system)), String::new())
    }));
    rows.extend(year.birth_weight.map(|mean| {
        let (value, note) = words::mean(mean, system);
        row(words::BIRTH_WEIGHT, value, note)
    }));
    rows
}

/// What was lost: how many in which span of age, and of what.
fn losses(year: &Figures) -> AnyView {
    let row = |loss: &yeanling_core::figures::Loss| LedgerRow {
        name: words::span(loss.span).to_owned(),
        note: words::causes(loss),
        value: format!("*{}*", loss.lambs),
        other: String::new(),
    };
    let rows: Vec<LedgerRow> = year.losses.iter().map(row).collect();
    let none = rows.is_empty();
    let drawn = (!none).then(|| charts::losses(year));
    view! {
        <Section title=words::LOSSES>
            {none.then(|| view! { <p>{words::NO_LOSSES}</p> }.into_any())}
            {drawn}
            <Ledger
                label=words::LOSSES
                heads=Signal::stored((String::new(), String::new()))
                rows=Signal::stored(rows)
            />
        </Section>
    }
    .into_any()
}
