//! Ewes from a spreadsheet: the table is read whole and shown before anything changes, then added in one piece or left.

use std::collections::BTreeSet;

use crate::signals::prelude::*;
use leptos::html;
use leptos::task::spawn_local;
use yeanling_core::book::{DayOrder, EweId};
use yeanling_core::spreadsheet::{Column, NewEwe, Preview, Sheet, columns, decode, preview, read};

use super::pick::{Pick, why_not};
use crate::farm::use_farm;
use crate::parts::{
    Button, Buttons, Choice, Choices, Notice, NoticeKind, Remark, Section, Weight, Wrong, live,
};
use crate::words::{ewes_in as words, refusals};

/// How many rows that bring no ewe are told one by one.
const TOLD: usize = 20;

/// How far it is.
#[derive(Clone, Debug)]
enum Reading {
    Nothing,
    Going,
    Read(Sheet),
    Wrong(String),
    Done(Vec<EweId>),
}

/// Takes ewes in from a table.
#[component]
pub(super) fn EwesIn() -> impl IntoView {
    let farm = use_farm();
    let field = NodeRef::<html::Input>::new();
    let reading = RwSignal::new(Reading::Nothing);
    let sheet = |bytes: Vec<u8>| match decode(&bytes).and_then(|text| read(&text)) {
        Ok(sheet) => Reading::Read(sheet),
        Err(error) => Reading::Wrong(words::no_sheet(error)),
    };
    let picked = move || {
        reading.set(Reading::Going);
        spawn_local(async move {
            reading.set(match farm.read_picked(field).await {
                Ok(Some(bytes)) => sheet(bytes),
                Ok(None) => Reading::Nothing,
                Err(trouble) => why_not(trouble).map_or(Reading::Nothing, Reading::Wrong),
            });
        });
    };
    let outcome = move || match reading.get() {
        Reading::Nothing => ().into_any(),
        Reading::Going => view! { <p role="status">{words::READING}</p> }.into_any(),
        Reading::Read(sheet) => view! { <WouldBring sheet=sheet reading=reading /> }.into_any(),
        Reading::Wrong(wrong) => view! { <Notice kind=NoticeKind::Bad><p>{wrong}</p></Notice> }.into_any(),
        Reading::Done(ewes) => {
            // Who was taken back again was not added.
            let here =
                farm.with(|ground| ewes.iter().filter(|ewe| ground.flock.ewes.contains_key(ewe)).count());
            (here > 0).then(|| view! { <p role="status">{words::added(here)}</p> }).into_any()
        }
    };
    view! {
        <Section title=words::TITLE>
            <p>{words::SUB}</p>
            <Pick id="ewes-file" label=words::OPEN field=field on_pick=picked />
        </Section>
        {live(outcome)}
    }
}

/// What a table would bring by the columns chosen, with both answers.
#[component]
fn WouldBring(sheet: Sheet, reading: RwSignal<Reading>) -> impl IntoView {
    let farm = use_farm();
    let chosen = columns(&sheet).map(|(column, place)| (column, RwSignal::new(place)));
    let order = RwSignal::new(None::<DayOrder>);
    let heads = sheet.heads.clone();
    let sheet = StoredValue::new(sheet);
    let found = Memo::new(move |_| {
        let here: BTreeSet<String> = farm.with(|ground| {
            let ewes =
                ground.flock.ewes.values().filter(|ewe| ewe.lives()).filter_map(|ewe| ewe.tag.as_ref());
            let lambs =
                ground.flock.lambs.values().filter(|lamb| lamb.lives()).filter_map(|lamb| lamb.tag.as_ref());
            ewes.chain(lambs).map(|tag| tag.to_lowercase()).collect()
        });
        let columns: Vec<(Column, Option<usize>)> =
            chosen.iter().map(|(column, place)| (*column, place.get())).collect();
        sheet.with_value(|sheet| preview(sheet, &columns, &here, order.get()))
    });
    // Once it was asked it stays, so that the answer can be changed.
    let asks = Memo::new(move |before: Option<&Option<String>>| {
        before.cloned().flatten().or_else(|| found.with(|found| found.two_ways().map(str::to_owned)))
    });
    let choice = move || {
        asks.get()
            .map(|text| {
                let one = |order| Choice::new(order, words::order(order)).note(words::would_be(&text, order));
                view! {
                    <Choices
                        label=words::ORDER
                        labelled=true
                        options=[DayOrder::DayFirst, DayOrder::MonthFirst].map(one).to_vec()
                        chosen=Signal::derive(move || order.get())
                        on_choose=move |new| order.set(Some(new))
                        stacked=true
                    />
                }
            })
            .into_any()
    };
    let error = RwSignal::new(String::new());
    let add = move || {
        let ewes: Vec<NewEwe> = found.with_untracked(|found| found.ewes.clone());
        match farm.take_ewes(&ewes) {
            Ok(came) => reading.set(Reading::Done(came)),
            Err((tag, refusal)) => {
                let why = refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system()));
                error.set(words::refused(&tag, &why));
            }
        }
    };
    let has_tags =
        move || chosen.iter().any(|(column, place)| *column == Column::Tag && place.get().is_some());
    let choices = chosen.map(|(column, place)| {
        let mut options = vec![Choice::new(None, words::NO_COLUMN)];
        options.extend(heads.iter().enumerate().map(|(at, head)| Choice::new(Some(at), head.clone())));
        view! {
            <Choices
                label=words::column(column)
                labelled=true
                options=options
                chosen=Signal::derive(move || Some(place.get()))
                on_choose=move |new| place.set(new)
                snug=true
            />
        }
        .into_any()
    });
    view! {
        <Section title=words::COLUMNS>
            {Vec::from(choices)}
            {live(choice)}
            {live(move || {
                let found = found.get();
                if !has_tags() {
                    return view! { <Notice kind=NoticeKind::Warn><p>{words::NO_TAGS}</p></Notice> }.into_any();
                }
                view! { {left_out(&found)} {would_add(&found)} }.into_any()
            })}
            <Wrong error=error />
            <Buttons columns=2>
                {live(move || {
                    let count = found.with(|found| found.ewes.len());
                    (count > 0 && has_tags())
                        .then(|| view! { <Button label=words::add(count) on_press=add weight=Weight::Filled /> })
                        .into_any()
                })}
                <Button label=words::LEAVE on_press=move || reading.set(Reading::Nothing) />
            </Buttons>
        </Section>
    }
}

fn would_add(found: &Preview) -> AnyView {
    let tags: Vec<&str> = found.ewes.iter().map(|ewe| ewe.tag.as_str()).collect();
    (!tags.is_empty()).then(|| view! { <Remark text=words::would_add(&tags) /> }).into_any()
}

fn left_out(found: &Preview) -> AnyView {
    let rows = &found.left_out;
    if rows.is_empty() {
        return ().into_any();
    }
    let more = rows.len().saturating_sub(TOLD);
    let lines: Vec<AnyView> =
        rows.iter().take(TOLD).map(|row| view! { <li>{words::left_out(row)}</li> }.into_any()).collect();
    let more = (more > 0).then(|| view! { <li>{words::and_more(more)}</li> });
    view! {
        <Notice kind=NoticeKind::Warn>
            <p>{words::LEFT_OUT}</p>
            <ul>{lines}{more}</ul>
        </Notice>
    }
    .into_any()
}
