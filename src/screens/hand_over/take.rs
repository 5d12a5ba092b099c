//! The way in: a file is read whole and shown before anything changes, then added or left.

use crate::signals::prelude::*;
use leptos::html;
use leptos::task::spawn_local;
use yeanling_core::book::Event;

use super::pick::{Pick, why_not};
use super::twice::tags_twice;
use crate::farm::{FileTrouble, Preview, use_farm};
use crate::parts::{Button, Buttons, Notice, NoticeKind, Said, Section, Weight, live};
use crate::words::common::day_and_clock;
use crate::words::{frame, hand_over as words};

/// How far taking a file in is.
#[derive(Clone, Debug)]
enum Taking {
    /// No file is picked.
    Nothing,
    /// It is being read.
    Reading,
    /// It was read and found whole.
    Read(Box<Preview>),
    /// It is no book that can be taken in; why, in words.
    Wrong(String),
    /// It was taken in; how many entries came.
    Done(usize),
}

/// Takes a book in.
#[component]
pub(super) fn Take() -> impl IntoView {
    let farm = use_farm();
    let field = NodeRef::<html::Input>::new();
    let taking = RwSignal::new(Taking::Nothing);
    let read = move |bytes: Result<Option<Vec<u8>>, FileTrouble>| match bytes {
        Ok(None) => Taking::Nothing,
        Ok(Some(bytes)) => match farm.preview(&bytes) {
            Ok(preview) => Taking::Read(Box::new(preview)),
            Err(error) => Taking::Wrong(words::file_error(&error)),
        },
        Err(trouble) => why_not(trouble).map_or(Taking::Nothing, Taking::Wrong),
    };
    let picked = move || {
        taking.set(Taking::Reading);
        spawn_local(async move { taking.set(read(farm.read_picked(field).await)) });
    };
    // A file that was shared to the app, or opened with it, stands here by itself.
    spawn_local(async move {
        let handed = read(farm.handed_in().await);
        if !matches!(handed, Taking::Nothing) {
            taking.set(handed);
        }
    });
    let outcome = move || match taking.get() {
        Taking::Nothing => ().into_any(),
        Taking::Reading => view! { <p role="status">{words::READING}</p> }.into_any(),
        Taking::Read(preview) => view! { <WouldAdd preview=*preview taking=taking /> }.into_any(),
        Taking::Wrong(wrong) => view! { <Notice kind=NoticeKind::Bad><p>{wrong}</p></Notice> }.into_any(),
        Taking::Done(entries) => view! { <p role="status">{words::taken_in(entries)}</p> }.into_any(),
    };
    view! {
        <Section title=words::TAKE>
            <p>{words::TAKE_SUB}</p>
            <Pick id="book-file" label=words::OPEN field=field on_pick=picked />
        </Section>
        {live(outcome)}
    }
}

/// What a file would add, with both answers.
#[component]
fn WouldAdd(preview: Preview, taking: RwSignal<Taking>) -> impl IntoView {
    let farm = use_farm();
    let now = farm.peek_now();
    let here = preview.file.device == farm.device();
    let from = words::from(here, &preview.file.device.to_string(), &day_and_clock(preview.file.made, now));
    let entries = preview.merged.added.len();
    let clashes = preview.merged.clashes.len();
    let unread = preview.file.entries.iter().filter(|entry| matches!(entry.event, Event::Unread(_))).count();
    let known = untrack(|| farm.with_own(|ground| tags_twice(&ground.flock)));
    let asked: Vec<String> =
        tags_twice(&preview.flock).into_iter().filter(|tag| !known.contains(tag)).collect();
    let text = if entries > 0 {
        words::would_add(preview.ewes, preview.lambs, entries)
    } else {
        words::NOTHING_NEW.to_owned()
    };
    let ahead = preview.ahead.map(|ahead| {
        words::dated_ahead(
            ahead.entries,
            &day_and_clock(ahead.latest, now),
            &day_and_clock(now, ahead.latest),
        )
    });
    let merge = if ahead.is_some() { words::MERGE_ALL_THE_SAME } else { words::MERGE };
    let add = move || {
        farm.take_in(preview.clone());
        taking.set(Taking::Done(entries));
    };
    let leave = move || taking.set(Taking::Nothing);
    view! {
        <Section title=words::PREVIEW>
            <p class="lead" role="status">
                <Said text=text />
            </p>
            <p class="small-print">{from}</p>
            {live(move || farm.is_made_up().then(|| view! { <p>{words::INTO_YOUR_OWN}</p> }).into_any())}
            {ahead.map(|ahead| view! { <Notice kind=NoticeKind::Bad><p>{ahead}</p></Notice> })}
            {(!asked.is_empty()).then(|| view! { <p>{words::would_ask(&asked)}</p> })}
            {(unread > 0).then(|| view! { <p>{frame::unread(unread)}</p> })}
            {(clashes > 0)
                .then(|| view! { <Notice kind=NoticeKind::Warn><p>{words::clashes(clashes)}</p></Notice> })}
            <Buttons columns=2>
                {(entries > 0)
                    .then(|| view! { <Button label=merge on_press=add weight=Weight::Filled /> })}
                <Button label=words::LEAVE on_press=leave />
            </Buttons>
        </Section>
    }
}
