//! What can be read with no network. A list at the top leads down the page; the address stays, since it names screens.

mod care;
mod lambing;
mod milk;

use crate::parts::live;
use crate::signals::prelude::*;
use leptos::html;
use yeanling_core::reckon::{all_sources, season};

use crate::farm::use_farm;
use crate::parts::{Caution, Page, Said, Section, SmallButton, Title};
use crate::pieces::{Standing, Top, tube};
use crate::route::Screen;
use crate::words::cold_lamb::courses;
use crate::words::help as words;
use crate::words::help::lambing as lambing_words;
use crate::words::help::milk as pages;
use crate::words::{cautions, more, why};

/// A part of the page that the list at the top leads to.
#[derive(Clone, Copy)]
struct Topic {
    title: &'static str,
    place: NodeRef<html::Div>,
}

impl Topic {
    fn new(title: &'static str) -> Self {
        Self { title, place: NodeRef::new() }
    }

    /// Goes there, so that reading goes on from there too.
    fn go(self) {
        if let Some(place) = self.place.get_untracked() {
            place.scroll_into_view();
            // A place that cannot be focused is still scrolled to.
            let _ = place.focus();
        }
    }
}

/// Decision aids, cautions and sources.
#[component]
pub(crate) fn Help() -> impl IntoView {
    let topics = [
        lambing_words::CLOCKS,
        lambing_words::LIES,
        words::FIRST_DAY,
        words::FED,
        words::COLD,
        courses::THERMOMETER,
        words::VIGOR,
        words::RINGS,
        words::TUBE,
        pages::BOTTLE,
        pages::WEANING,
        pages::BAG,
        pages::WEATHER,
        words::VET,
        words::PEOPLE,
        words::HYGIENE,
        words::INSTALL,
        words::LIMITS,
        words::SOURCES,
    ]
    .map(Topic::new);
    let [
        clocks,
        lies,
        first_day,
        fed,
        cold,
        thermometer,
        vigor,
        rings,
        tubing,
        bottle,
        weaning,
        bag,
        weather,
        vet,
        people,
        hygiene,
        install,
        limits,
        sources,
    ] = topics;
    view! {
        <Page>
            <Top back=(Screen::More, more::TITLE.to_owned()) />
            <Title text=words::TITLE>{words::SUB}</Title>
            <Standing />
            <p class="small-print">{cautions::GENERAL}</p>
            <nav class="contents" aria-label=words::CONTENTS>
                <ul role="list">
                    {topics
                        .map(|topic| {
                            view! {
                                <li><SmallButton label=topic.title on_press=move || topic.go() /></li>
                            }
                            .into_any()
                        })
                        .collect_view()}
                </ul>
            </nav>
            <Part topic=clocks>{lambing::clocks()}</Part>
            <Part topic=lies>{lambing::lies()}</Part>
            <Part topic=first_day>
                <FirstDay />
            </Part>
            <Part topic=fed>
                {list(words::FED_SIGNS)} <p class="small-print">{words::FED_SOURCE}</p>
            </Part>
            <Part topic=cold>{care::cold()}</Part>
            <Part topic=thermometer>
                {list(&courses::THERMOMETER_STEPS)}
                <p class="small-print">{courses::THERMOMETER_SOURCE}</p>
            </Part>
            <Part topic=vigor>{care::vigor()}</Part>
            <Part topic=rings>{care::rings()}</Part>
            <Part topic=tubing>
                <Caution lines=tube() />
            </Part>
            <Part topic=bottle>{milk::page(pages::bottle)}</Part>
            <Part topic=weaning>{milk::page(|_| pages::weaning())}</Part>
            <Part topic=bag>{milk::page(pages::bag)}</Part>
            <Part topic=weather>{milk::page(pages::weather)}</Part>
            <Part topic=vet>
                <h3>{words::EWE}</h3>
                {milk::page(|practice| words::vet_ewe(&practice.labor))}
                <h3>{words::LAMB}</h3>
                {milk::page(words::vet_lamb)}
                <p class="small-print">{words::VET_SOURCE}</p>
            </Part>
            <Part topic=people>
                <Caution lines=vec![cautions::PEOPLE.to_owned()] />
            </Part>
            <Part topic=hygiene>
                {list(cautions::HYGIENE)} <p class="small-print">{cautions::HYGIENE_SOURCE}</p>
            </Part>
            <Part topic=install>{list(words::INSTALL_STEPS)}</Part>
            <Part topic=limits>{list(words::LIMITS_LIST)}</Part>
            <Part topic=sources>
                <Sources />
            </Part>
        </Page>
    }
}

/// A part of the page under its heading.
#[component]
fn Part(topic: Topic, children: Children) -> impl IntoView {
    view! {
        <div class="help-part" tabindex="-1" node_ref=topic.place>
            <Section title=topic.title>{children()}</Section>
        </div>
    }
}

/// A newborn's first day, step by step, each with who says so.
#[component]
fn FirstDay() -> impl IntoView {
    let farm = use_farm();
    let steps = move || {
        words::first_day(&farm.practice())
            .into_iter()
            .map(|(step, source)| {
                view! {
                    <li>
                        <Said text=step />
                        <small>{source}</small>
                    </li>
                }
                .into_any()
            })
            .collect_view()
    };
    view! {
        <ol class="reading">{live(move || steps().into_any())}</ol>
        <p class="small-print">{live(move || words::by_rule(&farm.practice()).into_any())}</p>
    }
}

/// Every source, folded under its subject.
#[component]
fn Sources() -> impl IntoView {
    let of_lambs = all_sources().into_iter().map(|(subject, sources)| (why::subject(subject), sources));
    let of_season =
        season::all_sources().into_iter().map(|(subject, sources)| (why::season_subject(subject), sources));
    of_lambs
        .chain(of_season)
        .map(|(subject, sources)| {
            view! {
                <details class="source-fold">
                    <summary>{words::sources_of(subject, sources.len())}</summary>
                    <ul class="reading">
                        {sources
                            .iter()
                            .map(|source| view! { <li>{why::source_line(source)}</li> }.into_any())
                            .collect_view()}
                    </ul>
                </details>
            }
            .into_any()
        })
        .collect_view()
}

fn list(lines: &'static [&'static str]) -> impl IntoView {
    let items = lines.iter().map(|line| view! { <li><Said text=*line /></li> }.into_any()).collect_view();
    view! { <ul class="reading">{items}</ul> }
}
