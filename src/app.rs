//! The frame: the screen of the address, the offer to undo, the tabs. It lives as long as the page.
//!
//! The way back from an animal leads to the list it was opened from (`CameFrom`), to its row there, which has the
//! focus again; Flock keeps what was sought (`Sought`). Who comes from elsewhere begins anew, and the Watch always at
//! its top: the most urgent stands there.

use std::collections::BTreeSet;

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::EntryId;
use yeanling_core::flock::Line;
use yeanling_pages::Action;

use crate::browser::safety::Safety;
use crate::browser::{focus, look, panic, place, press};
use crate::farm::{Farm, Last};
use crate::parts::{Frame, Refusal, Refused, Tab, TabBar, UndoBar};
use crate::pieces::CameFrom;
use crate::route::Screen;
use crate::screens;
use crate::show::{self, Shown};
use crate::words::{animals, frame as words, noted, refusals};

/// How long the offer to undo stays, and what was pressed in its place.
const UNDO_FOR: std::time::Duration = std::time::Duration::from_secs(8);

/// The whole app.
#[component]
pub(crate) fn App() -> impl IntoView {
    panic::on_panic(broke, words::RELOAD);
    look::show(look::load());
    press::guard();
    focus::keep();
    let farm = Farm::open();
    provide_context(farm);
    let screen = RwSignal::new(Screen::from_hash(&place::hash()));
    let came_from = CameFrom::provide();
    let shown = Shown::new(farm, screen, came_from.signal());
    let refused = move || {
        farm.refused()
            .or_else(|| shown.refused())
            .map(|refusal| refusals::refusal(&refusal, farm.peek_now(), farm.system()))
    };
    Refused::provide(
        Memo::new(move |_| refused()).into(),
        Callback::new(move |()| {
            farm.let_refusal_go();
            shown.act(&Action::Read);
        }),
    );
    place::on_move(move || {
        let (from, to) = (screen.get_untracked(), Screen::from_hash(&place::hash()));
        let back = came_from.goes_back(from, to);
        shown.change(from, to);
        came_from.leave(from);
        shown.enter(to);
        screen.set(to);
        farm.let_refusal_go();
        place::to_top();
        place::to_heading();
        if back {
            place::to_link(&from.hash());
        }
    });
    Effect::new(move |_| farm.show_count(words::NAME));
    view! {
        <Frame>
            {shown.view()}
            {live(move || {
                let screen = screen.get();
                if show::shows(screen) { ().into_any() } else { screens::show(screen) }
            })}
            <Undo />
            <Refusal />
            <TabBar items=tabs(screen) />
        </Frame>
    }
}

/// Says that the app broke, and what became of what was noted.
const fn broke(safety: Safety) -> &'static str {
    match safety {
        Safety::Saved => words::BROKE_SAVED,
        Safety::OnItsWay => words::BROKE_ON_ITS_WAY,
        Safety::LocalOnly => words::BROKE_LOCAL_ONLY,
        Safety::MemoryOnly => words::BROKE_MEMORY_ONLY,
    }
}

/// Offers to take the last entry back, for a while.
#[component]
fn Undo() -> impl IntoView {
    let farm = crate::farm::use_farm();
    Effect::new(move |_| {
        let last = farm.last();
        if last != Last::Nothing {
            let let_go = move || {
                if untrack(|| farm.last()) == last {
                    farm.let_last_go();
                }
            };
            set_timeout(let_go, UNDO_FOR);
        }
    });
    let text = Signal::derive(move || {
        let last = farm.last();
        let entries = match &last {
            Last::Nothing | Last::Undone(_) => return None,
            Last::Noted(entries) => entries.clone(),
            Last::TakenBack(entry) | Last::Changed { entry, .. } => vec![*entry],
        };
        farm.with(|ground| {
            // What was corrected is told by the line that it now reads as.
            let corrected = |entry: &EntryId| ground.book.entry(*entry)?.event.corrects();
            let changed = entries.iter().any(|entry| corrected(entry).is_some());
            let entries: BTreeSet<EntryId> =
                entries.iter().map(|entry| corrected(entry).unwrap_or(*entry)).collect();
            let of_them = |line: &&Line| entries.contains(&line.entry);
            let lines: Vec<&Line> =
                ground.flock.lines.iter().rev().filter(of_them).take(entries.len()).collect();
            // They stand the latest first.
            let line = *lines.last()?;
            let animals: BTreeSet<_> = lines.iter().flat_map(|line| line.event.animals()).collect();
            let others = animals.len().saturating_sub(1);
            let noted =
                noted::line(&line.event, &ground.flock, ground.flock.practice.system).replace('*', "");
            let whose = line.event.animals().next().map(|animal| animals::animal(&ground.flock, animal));
            let said = match whose {
                Some(whose) if !noted.starts_with(&whose) => format!("{whose}: {noted}"),
                Some(_) | None => noted,
            };
            Some(match last {
                Last::TakenBack(_) => words::taken_back(&said),
                Last::Changed { .. } => words::changed(&said),
                Last::Noted(_) if changed => words::changed(&words::and_others(said, others)),
                Last::Nothing | Last::Undone(_) | Last::Noted(_) => words::and_others(said, others),
            })
        })
    });
    view! { <UndoBar text=text on_undo=move || farm.undo() /> }
}

fn tabs(screen: RwSignal<Screen>) -> Vec<Tab> {
    let tab = |to: Screen, label: &str, current: fn(Screen) -> bool| Tab {
        href: to.hash(),
        label: label.to_owned(),
        current: Signal::derive(move || current(screen.get())),
    };
    vec![
        tab(Screen::Watch, words::WATCH, |screen| {
            matches!(
                screen,
                Screen::Watch
                    | Screen::Lambing
                    | Screen::LambingEwe(_)
                    | Screen::LambingUnknown
                    | Screen::LambingLamb(_)
                    | Screen::BottleRound
                    | Screen::Pens
                    | Screen::Pen(_)
            )
        }),
        tab(Screen::Flock, words::FLOCK, |screen| {
            matches!(screen, Screen::Flock | Screen::Ewe(_) | Screen::Lamb(_) | Screen::ColdLamb(Some(_)))
        }),
        tab(Screen::Figures, words::FIGURES, |screen| {
            matches!(screen, Screen::Figures | Screen::ColdLamb(None))
        }),
        tab(Screen::HandOver, words::HAND_OVER, |screen| screen == Screen::HandOver),
        tab(Screen::More, words::MORE, |screen| {
            matches!(
                screen,
                Screen::More
                    | Screen::Help
                    | Screen::Practice
                    | Screen::Night
                    | Screen::Season
                    | Screen::Group(_)
                    | Screen::Race(_)
                    | Screen::Stores
                    | Screen::Medicines
                    | Screen::Weighing
                    | Screen::Feed
                    | Screen::Year
            )
        }),
    ]
}
