//! How the season's lambs grew by class, and the ewes that meet the farm's own marks.

use crate::signals::prelude::*;
use yeanling_core::book::EweId;
use yeanling_core::figures::{ClassGain, Season, by_dam_age, by_litter, grown, marked};
use yeanling_core::flock::Flock;
use yeanling_core::units::{Moment, System};

use crate::farm::use_farm;
use crate::parts::{Ledger, LedgerRow, LinkButton, Row, RowState, Rows, Section, each, live};
use crate::route::Screen;
use crate::words::{animals, keep, weighing as words};

/// The mean gains by litter and by the age of the dam.
pub(super) fn gains(flock: &Flock, season: &Season, now: Moment) -> AnyView {
    let all = grown(flock, season, now);
    let system = flock.practice.system;
    let litters =
        by_litter(&all).into_iter().map(|(class, gained)| row(words::litter(class), gained, system));
    let dams =
        by_dam_age(&all).into_iter().map(|(age, gained)| row(words::dam_age(age).to_owned(), gained, system));
    view! { {table(words::BY_LITTER, litters.collect())} {table(words::BY_DAM, dams.collect())} }.into_any()
}

fn row(name: String, gained: ClassGain, system: System) -> LedgerRow {
    LedgerRow {
        name,
        note: words::lambs(gained),
        value: format!("*{}*", words::gain(gained.grams_a_day, system)),
        other: String::new(),
    }
}

fn table(title: &'static str, rows: Vec<LedgerRow>) -> Option<AnyView> {
    (!rows.is_empty()).then(|| {
        view! {
            <Section title=title>
                <Ledger
                    label=title
                    heads=Signal::stored((String::new(), String::new()))
                    rows=Signal::stored(rows)
                />
            </Section>
        }
        .into_any()
    })
}

/// The ewes that meet a mark of the farm.
#[component]
pub(super) fn LookAgain() -> impl IntoView {
    let farm = use_farm();
    let shown = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let flock = &ground.flock;
            marked(flock, now)
                .into_iter()
                .map(|(ewe, record, marks)| {
                    let marks: Vec<String> = marks.into_iter().map(keep::mark).collect();
                    let lines = keep::record(&record, flock.practice.system);
                    let text = lines.into_iter().next().unwrap_or_default();
                    (ewe, animals::ewe_of(flock, ewe), text, marks.join(", "))
                })
                .collect::<Vec<(EweId, String, String, String)>>()
        })
    });
    let set = Memo::new(move |_| farm.practice().keep_marks != yeanling_core::practice::KeepMarks::default());
    let row = |(ewe, name, text, says): (EweId, String, String, String)| {
        view! {
            <Row name=name text=text says=says state=Signal::stored(RowState::Coming) href=Screen::Ewe(ewe).hash() />
        }
        .into_any()
    };
    view! {
        <Section title=keep::LOOK_AGAIN>
            {live(move || {
                if !set.get() {
                    view! {
                        <p>{keep::NO_MARKS}</p>
                        <LinkButton href=Screen::Practice.hash() label=crate::words::more::PRACTICE />
                    }
                        .into_any()
                } else if shown.with(Vec::is_empty) {
                    view! { <p>{keep::NONE}</p> }.into_any()
                } else {
                    ().into_any()
                }
            })}
            <Rows>{each(move || shown.get(), |(ewe, _, text, says)| format!("{ewe} {text} {says}"), row)}</Rows>
        </Section>
    }
}
