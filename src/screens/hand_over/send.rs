//! The way out: the file is ready before the tap, since a share sheet opens only straight from one.
//!
//! What is saved on this phone is lost with it: only what was shared, or what someone says is safe, lies elsewhere.

use crate::parts::live;
use crate::signals::prelude::*;
use leptos::task::spawn_local;
use yeanling_core::book::SPEAK_FROM;

use crate::farm::{FileTrouble, Outgoing, use_farm};
use crate::parts::{Button, Notice, NoticeKind, Section, Weight};
use crate::words::common::day_and_clock;
use crate::words::hand_over as words;

/// Sends the book.
#[component]
pub(super) fn Send() -> impl IntoView {
    let farm = use_farm();
    let book = RwSignal::new(None::<Outgoing>);
    // Which of its files were saved, of a book that goes as several.
    let saved = RwSignal::new(Vec::<usize>::new());
    Effect::new(move |_| {
        farm.with_own(|ground| ground.book.len());
        book.set(farm.outgoing());
        saved.set(Vec::new());
    });
    let said = RwSignal::new(String::new());
    let wrong = RwSignal::new(String::new());
    let tell = move |news: &str| {
        said.set(news.to_owned());
        wrong.set(String::new());
    };
    let fail = move |news: String| {
        said.set(String::new());
        wrong.set(news);
    };
    let save = move |index: usize| {
        let Some(book) = book.get_untracked() else { return };
        let Some((name, text)) = book.files.get(index) else { return };
        match farm.save_file(name, text) {
            Ok(()) => {
                saved.update(|saved| saved.push(index));
                let all =
                    saved.with_untracked(|saved| (0..book.files.len()).all(|index| saved.contains(&index)));
                if all {
                    farm.keep_saved_here(book.up_to);
                }
                tell(if all { words::SAVED_FILE } else { words::SAVED_PART });
            }
            Err(FileTrouble::Failed(browser)) => fail(words::not_saved(&browser)),
            Err(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => tell(""),
        }
    };
    let share = move || {
        let Some(book) = book.get_untracked() else { return };
        spawn_local(async move {
            match farm.share(&book.files).await {
                Ok(()) => {
                    farm.keep_sent(book.up_to);
                    tell(words::SHARED);
                }
                Err(FileTrouble::CannotShare) if book.files.len() == 1 => save(0),
                Err(FileTrouble::CannotShare) => tell(words::SAVE_EACH),
                Err(FileTrouble::Failed(browser)) => fail(words::not_sent(&browser)),
                Err(FileTrouble::Closed | FileTrouble::TooLarge(_)) => tell(""),
            }
        });
    };
    let can_share = farm.can_share();
    let files = Memo::new(move |_| book.with(|book| book.as_ref().map_or(0, |book| book.files.len())));
    let large = Memo::new(move |_| {
        let bytes = book.with(|book| book.as_ref().map_or(0, Outgoing::bytes));
        (bytes >= SPEAK_FROM).then_some(bytes)
    });
    let names = move || {
        let all = book.with(|book| book.as_ref().map(|book| book.files.clone())).unwrap_or_default();
        let one = |(name, text): &(String, String)| view! { <p class="small-print">{words::file_is(name, text.len())}</p> };
        all.iter().map(one).collect_view()
    };
    let saves = move || {
        let weight = if can_share { Weight::Outline } else { Weight::Filled };
        let count = files.get();
        let one = |index: usize| {
            let label = if count == 1 { words::SAVE.to_owned() } else { words::save_part(index + 1, count) };
            view! { <Button label=label on_press=move || save(index) weight=weight /> }
        };
        (0..count).map(one).collect_view()
    };
    let own = move || {
        if files.get() == 0 {
            return view! { <p>{words::NOTHING_TO_SEND}</p> }.into_any();
        }
        view! {
            <p>{words::SEND_SUB}</p>
            {live(move || {
                large.get().map(|bytes| view! { <p>{words::large(bytes, files.get())}</p> }).into_any()
            })}
            {can_share.then(|| view! { <Button label=words::SHARE on_press=share weight=Weight::Filled /> })}
            {live(move || saves().into_any())}
            {live(move || names().into_any())}
            <StillHere />
        }
        .into_any()
    };
    view! {
        <Section title=words::SEND>
            {live(move || {
                if farm.is_made_up() { view! { <p>{words::MADE_UP}</p> }.into_any() } else { own().into_any() }
            }.into_any())}
            <p role="status">{said}</p>
            {live(move || {
                let wrong = wrong.get();
                (!wrong.is_empty())
                    .then(|| view! { <Notice kind=NoticeKind::Bad><p>{wrong.clone()}</p></Notice> })
            }.into_any())}
        </Section>
    }
}

/// Asks whether the file that was saved on this phone has left it.
#[component]
fn StillHere() -> impl IntoView {
    let farm = use_farm();
    live(move || {
        farm.saved_here()
            .map(|saved| {
                view! {
                    <Notice
                        kind=NoticeKind::Warn
                        action=move || {
                            view! { <Button label=words::SAFE_ELSEWHERE on_press=move || farm.keep_sent(saved) /> }
                        }
                    >
                        <p>{words::still_here(&day_and_clock(saved, farm.peek_now()))}</p>
                    </Notice>
                }
            })
            .into_any()
    })
}
