//! Ewe after ewe: one group gone through in the race or in the field, a tap or two for each, then how it stands.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::figures::{Outlooks, standing};
use yeanling_core::flock::{Ewe, Flock};
use yeanling_core::reckon::season::condition::{
    Change, Flag, Score, Stage, Standing as AtStage, System as Targets, change, flags, mean, target,
};
use yeanling_core::units::{Condition, Mass, Moment, System, TimeDelta};

use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Card, Caution, Choice, Choices, Empty, Page, Remark, Row, RowState, Rows, Said, Section,
    Title, Weight, WhyButton,
};
use crate::pieces::{Standing, Top, why_text};
use crate::route::Screen;
use crate::words::{animals, race as words, season, why};

/// A score this young tells how the group stands (ours).
const FRESH: TimeDelta = TimeDelta::days(14);
/// What a ewe gains a day while she is mended, as SRUC reckons with.
const GAIN: Mass = Mass::from_kilograms(0.17);

/// What is noted of each ewe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Score,
    Scan,
    Mark,
}

/// One group, ewe after ewe.
#[component]
pub(crate) fn Race(
    /// Which group.
    id: GroupId,
) -> impl IntoView {
    let farm = use_farm();
    let ewes = Memo::new(move |_| farm.with(|ground| in_order(&ground.flock, id)));
    let name = Signal::derive(move || {
        farm.with(|ground| ground.flock.groups.get(&id).map(|group| group.name.clone()).unwrap_or_default())
    });
    let what = RwSignal::new(What::Score);
    let at = RwSignal::new(0_usize);
    let kinds = vec![
        Choice::new(What::Score, season::CONDITION),
        Choice::new(What::Scan, season::SCAN),
        Choice::new(What::Mark, season::MARK),
    ];
    let choose = move |new: What| {
        what.set(new);
        at.set(0);
    };
    view! {
        <Page>
            <Top back=(Screen::Group(id), words::GROUP.to_owned()) />
            <Title text=words::TITLE>
                <Said text=name />
            </Title>
            <Standing />
            <Choices
                label=words::WHAT
                options=kinds
                chosen=Signal::derive(move || Some(what.get()))
                on_choose=choose
            />
            {live(move || {
                let ewes = ewes.get();
                if ewes.is_empty() {
                    return view! { <Empty text=words::NO_EWES /> }.into_any();
                }
                match ewes.get(at.get()).copied() {
                    Some(ewe) => one(id, ewe, what.get(), at, ewes.len()),
                    None => view! {
                        <p>{words::ALL_DONE}</p>
                        <Button label=words::AGAIN on_press=move || at.set(0) />
                    }
                    .into_any(),
                }
            })}
            {live(move || (what.get() == What::Score).then(|| view! { <Stands id=id /> }).into_any())}
        </Page>
    }
}

/// The living ewes of a group by their tags: 2 before 10.
fn in_order(flock: &Flock, id: GroupId) -> Vec<EweId> {
    let Some(group) = flock.groups.get(&id) else { return Vec::new() };
    let mut ewes: Vec<&Ewe> =
        group.ewes().filter_map(|ewe| flock.ewe(ewe)).filter(|ewe| ewe.lives()).collect();
    ewes.arrange_by_key(|ewe| (ewe.tag.as_ref().map_or(0, String::len), ewe.tag.clone(), ewe.id));
    ewes.into_iter().map(|ewe| ewe.id).collect()
}

/// One ewe: her name, what was noted of her last, and the taps.
fn one(group: GroupId, ewe: EweId, what: What, at: RwSignal<usize>, of: usize) -> AnyView {
    let farm = use_farm();
    let now = farm.now();
    let (name, last, crayon) = farm.with(|ground| {
        let flock = &ground.flock;
        let crayon = flock.groups.get(&group).and_then(|group| group.crayon().map(str::to_owned));
        let last = flock.ewe(ewe).map(|ewe| last(ewe, what, now)).unwrap_or_default();
        (animals::ewe_of(flock, ewe), last, crayon)
    });
    let next = move || at.update(|at| *at += 1);
    let note = move |event: Event| {
        if farm.tap(event).is_some() {
            next();
        }
    };
    let press = move |label: String, event: Event| {
        view! { <Button label=label on_press=move || note(event.clone()) /> }.into_any()
    };
    let buttons: Vec<AnyView> = match what {
        // Half scores, as a hand tells them apart at speed; quarters are noted on the ewe herself.
        What::Score => (2..=10_u8)
            .map(|halves| {
                let score = Condition::from_quarters(halves * 2);
                press(season::score(score), Event::Conditioned { ewe, score })
            })
            .collect(),
        What::Scan => season::SCANNED
            .iter()
            .zip(0_u8..)
            .map(|(label, lambs)| press((*label).to_owned(), Event::Scanned { ewe, lambs, days: None }))
            .collect(),
        What::Mark => {
            let color = crayon.unwrap_or_else(|| words::A_MARK.to_owned());
            vec![press(format!("{} {color}", words::MARKED), Event::CrayonMark { ewe, color })]
        }
    };
    let place = words::place(at.get_untracked(), of);
    let back = (at.get_untracked() > 0).then(|| {
        view! { <Button label=words::BACK on_press=move || at.update(|at| *at -= 1) weight=Weight::Quiet /> }
    });
    view! {
        <Card>
            <Remark text=place />
            <h2 class="race-name">{name}</h2>
            <p><Said text=last /></p>
            <Buttons columns=3>{buttons}</Buttons>
            <Buttons columns=2>
                <Button label=words::SKIP on_press=next />
                {back}
            </Buttons>
        </Card>
    }
    .into_any()
}

fn last(ewe: &Ewe, what: What, now: Moment) -> String {
    match what {
        What::Score => ewe.condition().map(|last| words::last_score(last.score, last.at)),
        What::Scan => ewe.scans.last().map(|scan| words::last_scan(scan.lambs, scan.days, scan.at)),
        What::Mark => ewe.marks.last().map(|mark| words::last_mark(&mark.color, mark.at, now)),
    }
    .unwrap_or_default()
}

/// A ewe who needs something, and what.
type Told = (EweId, String, String);

/// How the group stands against its target, and what the thin ones need.
#[component]
fn Stands(id: GroupId) -> impl IntoView {
    let farm = use_farm();
    let us = untrack(|| farm.system()) == System::Us;
    let by = RwSignal::new(if us { Targets::Us } else { Targets::Lowland });
    let stage = RwSignal::new(Stage::Mating);
    let seen = Memo::new(move |_| {
        let now = farm.now();
        let (by, stage) = (by.get(), stage.get());
        farm.with_outlooks(|ground, outlooks| stands(&ground.flock, outlooks, id, by, stage, now))
    });
    let whose: Vec<Choice<Targets>> =
        Targets::ALL.into_iter().map(|one| Choice::new(one, words::targets(one))).collect();
    let stages: Vec<Choice<Stage>> =
        Stage::ALL.into_iter().map(|one| Choice::new(one, words::stage(one))).collect();
    let because = Signal::derive(move || why_text(why::condition(by.get(), stage.get())));
    view! {
        <Section title=words::STANDS>
            <Choices
                label=words::STAGE
                labelled=true
                options=stages
                chosen=Signal::derive(move || Some(stage.get()))
                on_choose=move |new| stage.set(new)
                snug=true
            />
            <Choices
                label=words::BY_WHOM
                labelled=true
                options=whose
                chosen=Signal::derive(move || Some(by.get()))
                on_choose=move |new| by.set(new)
                snug=true
            />
            <Remark text=Signal::derive(move || seen.with(|(text, _)| text.clone()))>
                <WhyButton why=because />
            </Remark>
            <Rows>
                {each(
                    move || seen.with(|(_, told)| told.clone()),
                    |(id, name, text)| format!("{id} {name} {text}"),
                    |(ewe, name, text)| view! {
                        <Row
                            name=name
                            text=text
                            state=Signal::stored(RowState::Coming)
                            href=Screen::Ewe(ewe).hash()
                        />
                    }
                    .into_any(),
                )}
            </Rows>
            {live(move || seen.with(|(_, told)| !told.is_empty()).then(|| view! {
                <Caution lines=vec![words::SLOWLY.to_owned()] />
            }).into_any())}
        </Section>
    }
}

fn stands(
    flock: &Flock,
    outlooks: &Outlooks,
    id: GroupId,
    by: Targets,
    stage: Stage,
    now: Moment,
) -> (String, Vec<Told>) {
    let fresh: Vec<(&Ewe, Condition, Score, AtStage)> = in_order(flock, id)
        .into_iter()
        .filter_map(|ewe| flock.ewe(ewe))
        .filter_map(|ewe| {
            let last = ewe.condition().filter(|last| now.since(last.at) <= FRESH)?;
            let (score, at_stage) = standing(outlooks, ewe, stage, now)?;
            Some((ewe, last.score, score, at_stage))
        })
        .collect();
    let scores: Vec<Score> = fresh.iter().map(|(.., score, _)| *score).collect();
    let Some(mean) = mean(&scores) else { return (words::NONE_SCORED.to_owned(), Vec::new()) };
    let (mut fat, mut thin): (Vec<Told>, Vec<Told>) = (Vec::new(), Vec::new());
    for (ewe, felt, score, at_stage) in &fresh {
        let flags = flags(by, *score, *at_stage);
        if flags.contains(&Flag::TooFatLate) {
            fat.push((ewe.id, animals::ewe(ewe), words::too_fat(*felt)));
        }
        let under = flags.iter().any(|flag| matches!(flag, Flag::Under | Flag::UnderLeast));
        if let Some(target) = target(by, stage, at_stage.lambs).filter(|_| under) {
            let low = Score::from_points(target.low).ok();
            let way: Option<Change> =
                ewe.weight().zip(low).and_then(|(weight, low)| change(weight.mass, *score, low, GAIN).ok());
            let text = words::mends(*felt, target.low - felt.as_score(), way.as_ref(), flock.practice.system);
            thin.push((ewe.id, animals::ewe(ewe), text));
        }
    }
    let target = target(by, stage, None);
    let mut text = words::stands(scores.len(), mean, target, thin.len());
    if target.is_none() {
        text = format!("{text} {}", words::NO_TARGET);
    }
    fat.extend(thin);
    (text, fat)
}
