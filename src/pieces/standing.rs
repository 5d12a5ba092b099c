//! What stands above every screen while it is so: a made-up flock, an update, a book that is not safe, a clock that is
//! wrong, what was missed.

use crate::signals::prelude::*;

use crate::farm::{Saving, use_farm};
use crate::parts::{Button, Notice, NoticeKind, Remark, Said, SmallButton, SmallLink, live};
use crate::route::{Screen, Way};
use crate::words::{animals, frame, hand_over, night, watch};

/// Shows the standing notices; nothing when all is well.
#[component]
pub(crate) fn Standing() -> impl IntoView {
    let farm = use_farm();
    let made_up = move || {
        farm.is_made_up().then(|| {
            view! {
                <Notice kind=NoticeKind::Calm>
                    <Remark text=frame::MADE_UP>
                        <SmallButton
                            label=frame::LEAVE_MADE_UP
                            on_press=move || {
                                farm.stop_looking_round();
                                Screen::Watch.go();
                            }
                        />
                    </Remark>
                </Notice>
            }
        })
    };
    let update = move || {
        farm.update_waits().then(|| {
            view! {
                <Notice
                    kind=NoticeKind::Calm
                    action=move || view! { <Button label=frame::TAKE_UPDATE on_press=move || farm.take_update() /> }
                >
                    <p>{frame::UPDATE}</p>
                </Notice>
            }
        })
    };
    let save = move || {
        if let Some(book) = farm.outgoing()
            && book.files.iter().all(|(name, text)| farm.save_file(name, text).is_ok())
        {
            farm.keep_saved_here(book.up_to);
        }
    };
    let some = Memo::new(move |_| farm.with_own(|ground| !ground.book.is_empty()));
    let poorly = move || match farm.saving() {
        Saving::Poorly { memory_only, said } => Some(view! {
            <Notice
                kind=NoticeKind::Bad
                action=move || {
                    live(move || {
                        some.get().then(|| view! { <Button label=hand_over::SAVE on_press=save /> }).into_any()
                    })
                }
            >
                <p>{frame::poorly(memory_only, said.as_deref())}</p>
            </Notice>
        }),
        Saving::Opening | Saving::Under(_) | Saving::Saved(_) => None,
    };
    let broken = move || {
        let lines = farm.lost_lines();
        (lines > 0).then(|| view! { <Notice kind=NoticeKind::Warn><p>{frame::broken(lines)}</p></Notice> })
    };
    let stays = move || {
        farm.unsent_births().map(|births| {
            view! {
                <Notice
                    kind=NoticeKind::Warn
                    action=|| view! { <SmallLink href=Screen::HandOver.hash() label=hand_over::GO_SEND /> }
                >
                    <p><Said text=hand_over::unsent(births) /></p>
                </Notice>
            }
        })
    };
    let behind = live(move || {
        let now = farm.now();
        let noted = farm.clock_is_behind(now);
        noted
            .map(|noted| {
                let text = night::clock_behind(noted, now);
                view! { <Notice kind=NoticeKind::Bad><p><Said text=text /></p></Notice> }
            })
            .into_any()
    });
    let missed = live(move || {
        let missed = farm.missed(farm.now());
        let Some(first) = missed.first() else { return ().into_any() };
        let first_is = farm.with(|ground| {
            let task = watch::task(first.task, ground.flock.practice.system);
            night::line(&animals::animal(&ground.flock, first.subject), &task)
        });
        let text = night::missed(missed.len(), &first_is);
        let href = Screen::of(first.subject).hash();
        view! {
            <Notice
                kind=NoticeKind::Bad
                action=move || view! { <SmallButton label=frame::OK on_press=move || farm.let_missed_go() /> }
            >
                <a href=href><Said text=text /></a>
            </Notice>
        }
        .into_any()
    });
    view! {
        {live(move || made_up().into_any())}
        {live(move || update().into_any())}
        {live(move || poorly().into_any())}
        {live(move || broken().into_any())}
        {live(move || stays().into_any())}
        {behind}
        <div role="alert">{missed}</div>
    }
}
