//! How warm it is, what its birth weight means, and when rings, tags and vaccine come.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{self, Event, LambId, Sex};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::practice::{Practice, RingRule};
use yeanling_core::reckon::birth_weight::{OwnMean, against};
use yeanling_core::reckon::body_temperature;
use yeanling_core::reckon::cold_lamb::decide;
use yeanling_core::reckon::marking::{Ring, ring, ring_state, vaccine};
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{ColdSpell, cold_spell};

use crate::farm::use_farm;
use crate::parts::{Button, LinkButton, Notice, NoticeKind, Remark, Section, WhyButton, WhyText};
use crate::pieces::why_text;
use crate::route::Screen;
use crate::words::common::{date, day_and_clock, mass, temperature_both};
use crate::words::{
    animals, cold_lamb, lamb as words, marking as marks, practice as practice_words, watch, why,
};

/// The last reading with its band, when the next is due, and the way to the cold lamb.
#[component]
pub(super) fn Warmth(id: LambId) -> impl IntoView {
    let farm = use_farm();
    let told = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let lamb = ground.flock.lamb(id)?;
            last_reading(lamb, now, ground.flock.practice.system)
        })
    });
    let text =
        Signal::derive(move || told.get().map_or_else(|| words::NO_TEMPERATURE.to_owned(), |(text, _)| text));
    let again = Memo::new(move |_| told.get().and_then(|(_, again)| again));
    let label = Signal::derive(move || {
        if again.with(Option::is_some) { words::COLD_NOW.to_owned() } else { words::COLD.to_owned() }
    });
    view! {
        <Section title=words::TEMPERATURE>
            <Remark text=text />
            {live(move || again.get().map(|again| view! { <Remark text=again /> }.into_any()).into_any())}
            <LinkButton href=Screen::ColdLamb(Some(id)).hash() label=label />
        </Section>
    }
}

/// Returns the last reading in words, and when the next is due while it is cold.
fn last_reading(lamb: &Lamb, now: Moment, system: System) -> Option<(String, Option<String>)> {
    let last = lamb.temperatures.last()?;
    let band = body_temperature::band(last.temperature).ok().map(cold_lamb::band).unwrap_or_default();
    let age = lamb.age(last.at);
    let told = temperature_both(last.temperature, system);
    let text = words::last_reading(&told, band, &day_and_clock(last.at, now), &watch::age(age));
    let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
    let branch = spell.map_or(age, |spell| spell.age(lamb));
    let wait =
        decide(last.temperature, Some(branch), lamb.swallows()).ok().and_then(|answer| answer.look_again);
    Some((text, wait.map(|wait| words::again_at(&day_and_clock(last.at + wait, now)))))
}

/// What its birth weight means for its litter and its flock; red is told in words.
#[component]
pub(super) fn BirthWeightLine(id: LambId) -> impl IntoView {
    let farm = use_farm();
    let told = Memo::new(move |_| farm.with(|ground| weighed(&ground.flock, ground.flock.lamb(id)?)));
    live(move || {
        told.get()
            .map(|(text, why, red)| {
                let danger = red.then(|| {
                    view! { <Notice kind=NoticeKind::Bad><p>{words::IN_DANGER}</p></Notice> }.into_any()
                });
                view! {
                    <Remark text=text><WhyButton why=why /></Remark>
                    {danger}
                }
                .into_any()
            })
            .into_any()
    })
}

fn weighed(flock: &Flock, lamb: &Lamb) -> Option<(String, WhyText, bool)> {
    let practice = &flock.practice;
    let weight = lamb.birth_weight()?;
    let litter = flock.litter_of(lamb.id)?;
    let size = litter.lambs.len();
    let own = flock.birth_mean(size).map(|own| OwnMean { mean: own.mean, lambs: own.lambs });
    let counted = u8::try_from(size).unwrap_or(u8::MAX);
    let held = against(weight, counted, flock.litter_mean(litter), own, practice.breed_means).ok()?;
    let text = words::at_birth(
        &mass(weight, practice.system),
        why::verdict(held.band.verdict),
        animals::litter(size).as_ref(),
    );
    Some((text, why_text(why::against(&held, practice.system)), held.red))
}

/// One line about a ring: what it says, its reasons, and whether it can still be noted.
#[derive(Clone, Debug, PartialEq)]
struct RingLine {
    kind: Ring,
    text: String,
    why: Option<WhyText>,
}

/// Rings with the farm's limits, tags, and when the vaccine is due.
#[component]
pub(super) fn Marking(id: LambId) -> impl IntoView {
    let farm = use_farm();
    let rings = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground
                .flock
                .lamb(id)
                .map(|lamb| ring_lines(lamb, now, &ground.flock.practice))
                .unwrap_or_default()
        })
    });
    let others = Memo::new(move |_| {
        farm.with(|ground| ground.flock.lamb(id).map(|lamb| tags_and_vaccine(lamb, &ground.flock.practice)))
    });
    view! {
        <details class="fold">
            <summary>{words::MARKING}</summary>
            {live(move || others.get().map(|(lines, why)| {
                let lines: Vec<AnyView> = lines.into_iter().map(|line| view! { <Remark text=line /> }.into_any()).collect();
                view! { {lines} <Remark text=""><WhyButton why=why /></Remark> }.into_any()
            }).into_any())}
        </details>
        {live(move || rings.get().into_iter().map(|line| {
            let kind = line.kind;
            let put_on = move || {
                farm.tap(Event::Ringed { lamb: id, ring: in_book(kind) });
            };
            let open = line.why.is_some();
            view! {
                <Remark text=line.text>{line.why.map(|why| view! { <WhyButton why=why /> }.into_any())}</Remark>
                {open.then(|| view! { <Button label=marks::ringed(kind) on_press=put_on /> }.into_any())}
            }
            .into_any()
        }).collect::<Vec<AnyView>>().into_any())}
    }
}

fn ring_lines(lamb: &Lamb, now: Moment, practice: &Practice) -> Vec<RingLine> {
    let fits = |kind: Ring| match kind {
        Ring::Tail => true,
        Ring::Castration => lamb.sex == Some(Sex::Ram),
    };
    let line = |kind: Ring| {
        let on = lamb.rings.iter().find(|(_, ring)| *ring == in_book(kind));
        if let Some((at, _)) = on {
            return Some(RingLine {
                kind,
                text: marks::ringed_at(kind, &day_and_clock(*at, now)),
                why: None,
            });
        }
        if kind == Ring::Castration && fits(kind) && practice_words::is_banned(practice.rings) {
            return Some(RingLine { kind, text: marks::banned(kind), why: None });
        }
        let window = ring(practice.rings, kind).filter(|_| fits(kind))?;
        let state = ring_state(&window, lamb.age(now));
        let text = format!("{} *{}*", marks::window(&window), marks::ring_state(state));
        Some(RingLine { kind, text, why: Some(why_text(why::marking(&window, state))) })
    };
    [Ring::Tail, Ring::Castration].into_iter().filter_map(line).collect()
}

const fn in_book(kind: Ring) -> book::Ring {
    match kind {
        Ring::Tail => book::Ring::Tail,
        Ring::Castration => book::Ring::Castration,
    }
}

/// The rules about tags that may be this farm's, and when the first vaccine is due.
fn tags_and_vaccine(lamb: &Lamb, practice: &Practice) -> (Vec<String>, WhyText) {
    let mut lines: Vec<String> = Vec::new();
    if practice.rings.rule == RingRule::NoRings {
        lines.push(marks::NO_RINGS.to_owned());
    }
    lines.extend(marks::TAGS.into_iter().map(marks::tag));
    let due = vaccine(practice.dams_vaccinated);
    let (first, last) = due.first;
    lines.push(format!(
        "{} {}",
        marks::vaccine(&due),
        marks::vaccine_days(&date(lamb.born + first), &date(lamb.born + last))
    ));
    (lines, why_text(why::vaccine(&due)))
}
