//! The ewe before the lamb: what is due for her now, the signs as large buttons, the clean hand, the vet.

use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Care, Event, EweId, Found, Lie, Part};
use yeanling_core::flock::{Ewe, Labor, Saw, Seen};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{self, Duty, Task, Trouble};

use crate::farm::{Ground, use_farm};
use crate::parts::{
    Button, Buttons, Card, Caution, Choice, Choices, DrawnButton, Figure, Pin, PinShape, Remark, Ribbon,
    Section, Sheet, Toggle, Weight, WhyButton, WhyText, live,
};
use crate::pieces::{DutyRibbon, VetSheet, why_text};
use crate::words::common::{clock, span};
use crate::words::{cautions, danger, labor as words, watch as duty_words, why};

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Part,
    Hand,
    Vet,
}

/// What is due for her, as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Due {
    heading: String,
    since: Option<String>,
    says: String,
    ribbon: DutyRibbon,
    why: WhyText,
    advice: String,
}

/// What was seen of a ewe, and what it asks for.
#[component]
pub(super) fn LaborPart(
    /// Which ewe.
    ewe: EweId,
) -> impl IntoView {
    let farm = use_farm();
    let open = RwSignal::new(Open::Nothing);
    let due = Memo::new(move |_| {
        let now = farm.now();
        farm.with_duties(|ground, duties| first_due(ground, duties, ewe, now))
    });
    let at_work =
        Memo::new(move |_| farm.with(|ground| ground.flock.ewe(ewe).is_some_and(|ewe| ewe.labor.is_some())));
    let animal = Animal::Ewe(ewe);
    let note = move |event: Event| {
        farm.tap(event);
    };
    // Each call counts, so it is no mark that a second tap takes back.
    let called = Signal::derive(move || {
        let last =
            farm.with(|ground| ground.flock.ewe(ewe).and_then(|ewe| ewe.vet.last().map(|call| call.at)));
        let recent = last.filter(|at| farm.now().since(*at) < TimeDelta::hours(24));
        recent.map_or_else(|| words::VET.to_owned(), |at| format!("{} {}", words::VET, clock(at)))
    });
    // What is due stands above the buttons when the screen is opened. What begins by a press on them comes below, so that
    // none of them moves under the finger.
    let above = due.with_untracked(Option::is_some);
    let card = move || live(move || due.get().map(|due| view! { <DueCard due=due /> }).into_any());
    view! {
        {above.then(|| view! { <div class="labor-due">{card()}</div> }.into_any())}
        <Section title=words::SIGNS_TITLE>
            <Buttons columns=2>
                {words::SIGNS
                    .map(|sign| {
                        seen(ewe, words::sign(sign), Saw::Sign(sign), Event::SignSeen { ewe, sign })
                    })
                    .into_iter()
                    .collect_view()}
            </Buttons>
        </Section>
        <Section title=words::LABOR_TITLE>
            <Buttons columns=2>
                {seen(ewe, words::WATERS, Saw::WaterBag, Event::WaterBagSeen { ewe })}
                {seen(ewe, words::STRAINING, Saw::Straining, Event::StrainingSeen { ewe })}
                <Button label=words::SHOWS on_press=move || open.set(Open::Part) />
                <Button label=words::HAND on_press=move || open.set(Open::Hand) />
                {seen(ewe, words::HELP, Saw::Help, Event::HelpBegun { ewe })}
                {seen(ewe, danger::PUT_RIGHT, Saw::PutRight, Event::Care(Care::PutRight { ewe }))}
                <Button label=called on_press=move || note(Event::VetCalled { animal }) />
                <Button label=danger::SAID on_press=move || open.set(Open::Vet) />
            </Buttons>
            {live(move || {
                at_work
                    .get()
                    .then(|| {
                        view! {
                            <Buttons columns=2>
                                <Button
                                    label=words::LOOKED
                                    on_press=move || note(Event::LookedAt { animal })
                                />
                                <Button
                                    label=words::NOT_LAMBING
                                    weight=Weight::Quiet
                                    on_press=move || note(Event::NotLambing { ewe })
                                />
                            </Buttons>
                        }
                    })
                    .into_any()
            })}
        </Section>
        {(!above).then(card)}
        {live(move || match open.get() {
            Open::Nothing => ().into_any(),
            Open::Part => view! { <PartSheet ewe=ewe on_close=move || open.set(Open::Nothing) /> }.into_any(),
            Open::Vet => view! { <VetSheet animal=animal on_close=move || open.set(Open::Nothing) /> }.into_any(),
            Open::Hand => view! { <HandSheet ewe=ewe on_close=move || open.set(Open::Nothing) /> }.into_any(),
        })}
    }
}

/// The most urgent duty of this ewe, with its ribbon.
fn first_due(ground: &Ground, duties: &[Duty], id: EweId, now: Moment) -> Option<Due> {
    let of_her = |duty: &&Duty| duty.subject == Animal::Ewe(id) && duty.task != Task::LetOut;
    let duty = duties.iter().find(of_her)?;
    let ewe = ground.flock.ewe(id)?;
    let advice = match duty.task {
        Task::PutRight { trouble: Trouble::Lies(lie) } => words::what_to_do(lie).to_owned(),
        Task::DipNavel
        | Task::DipNavelAgain
        | Task::GetUp
        | Task::FirstMilk { .. }
        | Task::Feed { .. }
        | Task::DayTotal { .. }
        | Task::Weigh { .. }
        | Task::ScoreVigor
        | Task::TakeTemperature
        | Task::CallVet
        | Task::Danger(_)
        | Task::Hollow { .. }
        | Task::Ring { .. }
        | Task::WeaningCheck { .. }
        | Task::Look
        | Task::LongRestless
        | Task::HandCheck { .. }
        | Task::Progress
        | Task::NeckTight
        | Task::PutRight { trouble: Trouble::Shows(_) | Trouble::Helped }
        | Task::NextLamb { .. }
        | Task::Afterbirth { .. }
        | Task::LetOut => String::new(),
    };
    Some(Due {
        heading: duty_words::task(duty.task, ground.flock.practice.system),
        since: (now.since(duty.since) >= TimeDelta::minutes(1)).then(|| span(now.since(duty.since))),
        says: format!(
            "{} · {}",
            words::since(ewe.saw_at(duty.since), &clock(duty.since)),
            duty_words::when(duty, now)
        ),
        ribbon: DutyRibbon::of(duty, now, false, &pins(ewe)),
        why: why_text(why::labor(duty, &ground.flock.practice, now)),
        advice,
    })
}

/// What was seen of her, as pins.
fn pins(ewe: &Ewe) -> Vec<(Moment, Pin)> {
    let pin = |seen: &Seen| {
        let shape = match seen.what {
            Saw::Look => PinShape::Bar,
            Saw::Check(_) | Saw::Help | Saw::PutRight | Saw::Vet => PinShape::Dot,
            Saw::Sign(_)
            | Saw::WaterBag
            | Saw::Straining
            | Saw::Part(_)
            | Saw::NotLambing
            | Saw::Awaited(_)
            | Saw::Afterbirth => PinShape::Ring,
        };
        (seen.at, Pin { at: 0.0, shape, title: format!("{} {}", words::saw(seen.what), clock(seen.at)) })
    };
    ewe.seen.iter().map(pin).collect()
}

/// What is due, large, with its reasons.
#[component]
fn DueCard(due: Due) -> impl IntoView {
    let Due { heading, since, says, ribbon, why, advice } = due;
    let also = if since.is_some() { words::SO_FAR } else { "" };
    view! {
        <Card>
            <Remark text=heading />
            <Figure value=since.unwrap_or_else(|| words::JUST_BEGUN.to_owned()) also=also>
                <WhyButton why=why />
            </Figure>
            <Ribbon
                label=ribbon.label
                stretches=ribbon.stretches
                ticks=ribbon.ticks
                now=ribbon.now
                pins=ribbon.pins
            />
            <Remark text=says />
            {(!advice.is_empty()).then(|| view! { <Caution lines=vec![advice] /> }.into_any())}
        </Card>
    }
}

/// Something seen in this labor, or not: a tap notes it, another takes it back.
fn seen(ewe: EweId, label: &'static str, what: Saw, event: Event) -> AnyView {
    let farm = use_farm();
    let found = move |ground: &Ground| {
        let found = ground.flock.ewe(ewe)?;
        let labor = found.labor.as_ref()?;
        let last = found.seen.iter().rev().find(|seen| seen.what == what)?;
        in_labor(labor, what, last.at).then_some((last.entry, last.at))
    };
    let noted = Memo::new(move |_| farm.with(found));
    let when = Signal::derive(move || noted.get().map(|(_, at)| clock(at)).unwrap_or_default());
    let pressed = Signal::derive(move || noted.get().is_some());
    let press = move || match noted.get_untracked() {
        Some((entry, _)) => {
            farm.tap(Event::Struck { entry });
        }
        None => {
            farm.tap(event.clone());
        }
    };
    view! { <Toggle label=label pressed=pressed note=when on_press=press /> }.into_any()
}

/// Says whether something seen then is part of this labor.
fn in_labor(labor: &Labor, what: Saw, at: Moment) -> bool {
    match what {
        Saw::Sign(sign) => labor.signs.contains(&(at, sign)),
        Saw::WaterBag => labor.waters.is_some_and(|first| first <= at),
        Saw::Straining => labor.straining.is_some_and(|first| first <= at),
        Saw::Help => labor.help.contains(&at),
        Saw::PutRight => labor.put_right.contains(&at),
        Saw::Part(_)
        | Saw::Check(_)
        | Saw::Vet
        | Saw::Look
        | Saw::NotLambing
        | Saw::Awaited(_)
        | Saw::Afterbirth => false,
    }
}

/// What shows of the lamb.
#[component]
fn PartSheet(ewe: EweId, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let parts: Vec<Choice<Part>> =
        words::PARTS.iter().map(|part| Choice::new(*part, words::part(*part))).collect();
    let choose = move |part: Part| {
        if farm.tap(Event::PartShowing { ewe, part }).is_some() {
            on_close.run(());
        }
    };
    view! {
        <Sheet title=words::SHOWS_ASK on_close=on_close>
            <Choices
                label=words::SHOWS_ASK
                options=parts
                chosen=Signal::stored(None)
                on_choose=choose
                stacked=true
            />
        </Sheet>
    }
}

/// What a clean hand found: the way itself, or a lamb and how it lies.
#[component]
fn HandSheet(ewe: EweId, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let note = move |found: Found| {
        if farm.tap(Event::HandChecked { ewe, found }).is_some() {
            on_close.run(());
        }
    };
    let ways: Vec<Choice<Found>> = [Found::NothingYet, Found::NeckTight, Found::Empty]
        .into_iter()
        .map(|found| Choice::new(found, words::found(found)))
        .collect();
    let lies = words::LIES.map(|lie: Lie| {
        view! {
            <DrawnButton
                href=format!("lies.svg#{}", words::drawing(lie))
                label=words::lie(lie)
                note=words::needs(watch::needs(lie))
                on_press=move || note(Found::Lamb(lie))
            />
        }
        .into_any()
    });
    view! {
        <Sheet title=words::HAND_ASK on_close=on_close>
            <Caution lines=vec![cautions::HANDS.to_owned()] />
            <Choices
                label=words::HAND_ASK
                options=ways
                chosen=Signal::stored(None)
                on_choose=note
                stacked=true
            />
            <Section title=words::LIES_TITLE>
                <Buttons columns=2>{lies.into_iter().collect_view()}</Buttons>
            </Section>
        </Sheet>
    }
}
