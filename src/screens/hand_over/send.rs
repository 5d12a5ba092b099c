//! The way out: the file is ready before the tap, since a share sheet opens only straight from one.

use crate::parts::live;
use crate::signals::prelude::*;
use leptos::task::spawn_local;

use crate::farm::{FileTrouble, use_farm};
use crate::parts::{Button, Notice, NoticeKind, Section, Weight};
use crate::words::hand_over as words;

/// Sends the book.
#[component]
pub(super) fn Send() -> impl IntoView {
    let farm = use_farm();
    let file = RwSignal::new(None::<(String, String)>);
    Effect::new(move |_| {
        let entries = farm.with(|ground| ground.book.len());
        file.set((entries > 0).then(|| farm.book_file()));
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
    let save_file = move |name: &str, text: &str| match farm.save_file(name, text) {
        Ok(()) => {
            farm.keep_sent();
            tell(words::SAVED_FILE);
        }
        Err(FileTrouble::Failed(browser)) => fail(words::not_saved(&browser)),
        Err(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => tell(""),
    };
    let save = move || {
        if let Some((name, text)) = file.get_untracked() {
            save_file(&name, &text);
        }
    };
    let share = move || {
        let Some((name, text)) = file.get_untracked() else { return };
        spawn_local(async move {
            match farm.share(&name, &text).await {
                Ok(()) => {
                    farm.keep_sent();
                    tell(words::SHARED);
                }
                Err(FileTrouble::CannotShare) => save_file(&name, &text),
                Err(FileTrouble::Failed(browser)) => fail(words::not_sent(&browser)),
                Err(FileTrouble::Closed | FileTrouble::TooLarge(_)) => tell(""),
            }
        });
    };
    let can_share = farm.can_share();
    let ready = Memo::new(move |_| file.with(Option::is_some));
    let is = move || {
        file.with(|file| {
            file.as_ref().map(|(name, text)| words::file_is(name, text.len())).unwrap_or_default()
        })
    };
    let own = move || {
        if !ready.get() {
            return view! { <p>{words::NOTHING_TO_SEND}</p> }.into_any();
        }
        let save_weight = if can_share { Weight::Outline } else { Weight::Filled };
        view! {
            <p>{words::SEND_SUB}</p>
            {can_share.then(|| view! { <Button label=words::SHARE on_press=share weight=Weight::Filled /> })}
            <Button label=words::SAVE on_press=save weight=save_weight />
            <p class="small-print">{is}</p>
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
