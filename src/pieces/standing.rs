//! What stands above every screen while it is so: a made-up flock, an update, a book that is not safe, a clock that is
//! wrong, what was missed.

use crate::signals::prelude::*;

use yeanling_core::units::Moment;

use crate::farm::{Farm, Saving, use_farm};
use crate::parts::{Button, Notice, NoticeKind, Remark, Room, Said, SmallButton, SmallLink, live};
use crate::route::{Screen, Way};
use crate::words::{animals, frame, hand_over, night, watch};

/// What was missed while no one looked, as it is told.
#[derive(Clone, Debug, PartialEq)]
struct Missed {
    text: String,
    /// The text whose room is kept; nothing while it takes its own.
    room: String,
    href: String,
}

impl Missed {
    /// Returns it in no less room than what was told before it took.
    fn in_room_of(mut self, before: Option<&Self>) -> Self {
        self.room = before.map(|before| before.kept().clone()).unwrap_or_default();
        self
    }

    /// Returns what is told once all of it was done.
    fn done(&self) -> Self {
        Self { text: night::MISSED_NONE.to_owned(), room: self.kept().clone(), href: Screen::Watch.hash() }
    }

    fn kept(&self) -> &String {
        if self.room.is_empty() { &self.text } else { &self.room }
    }
}

fn missed(farm: Farm, now: Moment) -> Option<Missed> {
    let missed = farm.missed(now);
    let first = missed.first()?;
    let first_is = farm.with(|ground| {
        let task = watch::task(first.task, ground.flock.practice.system);
        night::line(&animals::animal(&ground.flock, first.subject), &task)
    });
    let text = night::missed(missed.len(), &first_is);
    Some(Missed { text, room: String::new(), href: Screen::of(first.subject).hash() })
}

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
    // It makes no room for what was just done: rows stand below it, and the hand is still at them.
    let missed = Memo::new(move |before: Option<&Option<Missed>>| {
        let (now, still) = (farm.now(), farm.holds_still());
        let before = before.and_then(Option::as_ref).filter(|_| still && farm.tells_of_missed());
        match missed(farm, now) {
            Some(missed) => Some(missed.in_room_of(before)),
            None => before.map(Missed::done),
        }
    });
    let any_missed = Memo::new(move |_| missed.with(Option::is_some));
    let missed = live(move || {
        let of = move |read: fn(&Missed) -> &String| -> Signal<String> {
            Memo::new(move |_| {
                missed.with(|missed| missed.as_ref().map(|missed| read(missed).clone()).unwrap_or_default())
            })
            .into()
        };
        let notice = move || {
            view! {
                <Notice
                    kind=NoticeKind::Bad
                    action=move || view! { <SmallButton label=frame::OK on_press=move || farm.let_missed_go() /> }
                >
                    <a href=of(|missed| &missed.href)>
                        <Room text=of(|missed| &missed.text) room=of(|missed| &missed.room) />
                    </a>
                </Notice>
            }
            .into_any()
        };
        any_missed.get().then(notice).into_any()
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
