//! How the book is kept on this phone, said plainly, with what can be done about it.

use crate::parts::live;
use crate::signals::prelude::*;
use leptos::task::spawn_local;

use crate::farm::{Offline, Promised, Saving, use_farm};
use crate::parts::{ActionButton, Button, Row, RowState, Rows, Section};
use crate::words::common::day_and_clock;
use crate::words::{frame, hand_over as words};

/// The name of the file of lines that could not be read.
const BROKEN_FILE: &str = "yeanling-unread-lines.txt";

/// Says how the book is kept.
#[component]
pub(super) fn HowKept() -> impl IntoView {
    let farm = use_farm();
    let room = RwSignal::new(None::<(f64, f64)>);
    spawn_local(async move { room.set(farm.room().await) });

    let entries = Memo::new(move |_| farm.with_own(|ground| ground.book.len()));
    let (phone_state, phone_says) = phone(entries);
    let offline_state = Signal::derive(move || match farm.offline() {
        Offline::Ready => RowState::Done,
        Offline::Preparing => RowState::Coming,
        Offline::Unable => RowState::Now,
    });
    let offline_says = Signal::derive(move || {
        match farm.offline() {
            Offline::Ready => frame::WORKS_OFFLINE,
            Offline::Preparing => frame::NOT_YET_OFFLINE,
            Offline::Unable => frame::NO_OFFLINE,
        }
        .to_owned()
    });
    let sent_state =
        Signal::derive(move || if farm.sent().is_some() { RowState::Done } else { RowState::Coming });
    let sent_says = Signal::derive(move || match farm.sent() {
        Some(at) => day_and_clock(at, farm.now()),
        None if farm.saved_here().is_some() => words::ONLY_HERE.to_owned(),
        None => words::NEVER_SENT.to_owned(),
    });
    let unread = Memo::new(move |_| farm.with_own(|ground| ground.flock.unread.len()));
    let broken = move || {
        let lines = farm.broken();
        (!lines.is_empty()).then(|| {
            let save = move || {
                // Should the browser fail, the lines still lie where they were.
                let _ = farm.save_file(BROKEN_FILE, &lines.join("\n"));
            };
            view! { <Button label=words::SAVE_BROKEN on_press=save /> }
        })
    };
    view! {
        <Section title=words::KEPT>
            <Rows>
                <Row name=words::ON_PHONE says=phone_says state=phone_state />
                <Row name=words::OFFLINE says=offline_says state=offline_state />
                <ForGood />
                <Row name=words::SENT says=sent_says state=sent_state />
                {live(move || room.get().map(|(used, most)| view! {
                        <Row
                            name=words::ROOM
                            text=words::room(used, most)
                            state=Signal::stored(RowState::Done)
                        />
                    }).into_any())}
            </Rows>
            {live(move || (unread.get() > 0).then(|| view! { <p>{frame::unread(unread.get())}</p> }).into_any())}
            {live(move || broken().into_any())}
        </Section>
    }
}

/// Returns how well the entries are kept, as a state and in words.
fn phone(entries: Memo<usize>) -> (Signal<RowState>, Signal<String>) {
    let farm = use_farm();
    let state = Signal::derive(move || match farm.saving() {
        Saving::Opening | Saving::Under(_) => RowState::Coming,
        Saving::Saved(_) => RowState::Done,
        Saving::Poorly { .. } => RowState::Late,
    });
    let says = Signal::derive(move || {
        let how = match farm.saving() {
            Saving::Opening => frame::OPENING.to_owned(),
            Saving::Under(_) => frame::SAVING.to_owned(),
            Saving::Saved(None) => frame::SAVED.to_owned(),
            Saving::Saved(Some(at)) => frame::saved_at(at),
            Saving::Poorly { .. } => frame::NOT_SAFE.to_owned(),
        };
        words::entries_are(entries.get(), &how)
    });
    (state, says)
}

/// What the browser promises, and the button that asks it for more.
#[component]
fn ForGood() -> impl IntoView {
    let farm = use_farm();
    let promised = RwSignal::new(None::<Promised>);
    let said_no = RwSignal::new(false);
    spawn_local(async move { promised.set(Some(farm.promised().await)) });
    let ask = move || {
        spawn_local(async move {
            let answer = farm.ask_for_good().await;
            said_no.set(answer == Promised::UntilRoomIsShort);
            promised.set(Some(answer));
        });
    };
    let state = Signal::derive(move || match promised.get() {
        Some(Promised::ForGood) => RowState::Done,
        Some(Promised::UntilRoomIsShort | Promised::Unknown) | None => RowState::Coming,
    });
    let says = Signal::derive(move || {
        match promised.get() {
            None => words::ASKING,
            Some(Promised::ForGood) => words::FOR_GOOD,
            Some(Promised::UntilRoomIsShort) => words::UNTIL_ROOM,
            Some(Promised::Unknown) => words::NO_PROMISE,
        }
        .to_owned()
    });
    let text = Signal::derive(move || if said_no.get() { words::SAID_NO.to_owned() } else { String::new() });
    // The holder is made once; what it holds follows the answer.
    let button = move || {
        view! {
            {live(move || (promised.get() == Some(Promised::UntilRoomIsShort) && !said_no.get())
                    .then(|| view! { <ActionButton label=words::KEEP_FOR_GOOD on_press=ask /> }).into_any())}
        }
    };
    view! {
        <Row name=words::PROMISE text=text says=says state=state action=button />
    }
}
