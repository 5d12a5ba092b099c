//! The card that is read out over the phone: who, her stage, her scan, what was read, since when, what was seen and given.

use yeanling_core::book::Animal;
use yeanling_core::flock::{Ewe, Lamb, Treated, Vital};
use yeanling_core::terms::EweStage;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::stage_of;
use yeanling_words::common::{day_and_clock, mass, temperature, typed};
use yeanling_words::{animals, illness as words, season};

use super::answer::line;
use crate::view::View;

/// What was given in these days is told (ours).
const GIVEN: TimeDelta = TimeDelta::days(14);

/// Returns the card of a ewe.
pub(super) fn of_ewe(view: &View, ewe: &Ewe, stage: EweStage, seen: &[&str]) -> Vec<String> {
    let (flock, now, system) = (view.flock, view.now, view.system());
    let stage = if stage == EweStage::Unknown { stage_of(flock, ewe, now) } else { stage };
    let years = flock.ewe_years(ewe.id, now).map(words::years);
    let mut card = vec![animals::ewe(ewe)];
    card.extend(years.map(|years| line(words::AGE, &years)));
    card.push(line(words::STAGE_LABEL, words::ewe::stage(stage)));
    if let Some(lambs) = flock.scanned_for(ewe.id, now) {
        card.push(line(words::SCAN, &words::scanned(lambs)));
    }
    if let Some(litter) =
        flock.litters_of(ewe.id).first().filter(|litter| now.since(litter.latest) < GIVEN * 9)
    {
        card.push(line(words::LAMBED, &day_and_clock(litter.latest, now)));
    }
    if let Some(scored) = ewe.condition() {
        card.push(line(words::CONDITION, &season::score(scored.score)));
    }
    if let Some(weight) = ewe.weight() {
        card.push(line(words::WEIGHT, &mass(weight.mass, system)));
    }
    if let Some(read) = ewe.temperatures.last() {
        let told = format!("{}, {}", temperature(read.temperature, system), day_and_clock(read.at, now));
        card.push(line(words::TEMPERATURE, &told));
    }
    if let Some((at, ketones)) = ewe.ketones.last() {
        let told = format!("{}, {}", words::ketones(*ketones), day_and_clock(*at, now));
        card.push(line(words::KETONES, &told));
    }
    card.extend(vitals(&ewe.vitals));
    card.extend(first_seen(ewe.illness().first().map(|first| first.at), now));
    card.push(line(words::SEEN_LABEL, &words::seen_or_nothing(seen)));
    card.push(given(view, Animal::Ewe(ewe.id)));
    card
}

/// How old it is.
fn age_of(lamb: &Lamb, now: Moment) -> String {
    line(words::AGE, &yeanling_words::lamb::age(lamb, now))
}

/// Returns the card of a lamb.
pub(super) fn of_lamb(view: &View, lamb: &Lamb, seen: &[&str]) -> Vec<String> {
    let (flock, now, system) = (view.flock, view.now, view.system());
    let mut card = vec![animals::lamb(flock, lamb), age_of(lamb, now)];
    if let Some(weight) = lamb.weight() {
        card.push(line(words::WEIGHT, &mass(weight, system)));
    }
    if let Some(read) = lamb.temperatures.last() {
        let told = format!("{}, {}", temperature(read.temperature, system), day_and_clock(read.at, now));
        card.push(line(words::TEMPERATURE, &told));
    }
    card.extend(vitals(&lamb.vitals));
    let fed = lamb.feeds.last().map(|feed| feed.at);
    if let Some(at) = fed.into_iter().chain(lamb.sucked.last().copied()).max() {
        card.push(line(words::LAST_MILK, &day_and_clock(at, now)));
    }
    card.extend(first_seen(lamb.illness().first().map(|first| first.at), now));
    card.push(line(words::SEEN_LABEL, &words::seen_or_nothing(seen)));
    card.push(given(view, Animal::Lamb(lamb.id)));
    card
}

fn first_seen(at: Option<Moment>, now: Moment) -> Option<String> {
    at.map(|at| line(words::SINCE, &day_and_clock(at, now)))
}

fn vitals(vitals: &[Vital]) -> Vec<String> {
    let last = |breaths: bool| vitals.iter().rev().find(|vital| vital.breaths == breaths);
    [(last(false), words::PULSE), (last(true), words::BREATHS)]
        .into_iter()
        .filter_map(|(vital, label)| Some(line(label, &vital?.per_minute.to_string())))
        .collect()
}

/// What it was given in these days; that nothing was noted is told too.
fn given(view: &View, animal: Animal) -> String {
    let recent = |treated: &&Treated| view.now.since(treated.at) < GIVEN;
    let told: Vec<String> = view
        .flock
        .treated(animal)
        .into_iter()
        .filter(recent)
        .map(|treated| {
            format!("{} {}", typed(&treated.treatment.product), day_and_clock(treated.at, view.now))
        })
        .collect();
    let told = if told.is_empty() { words::NOTHING_GIVEN.to_owned() } else { told.join(", ") };
    line(words::GIVEN, &told)
}
