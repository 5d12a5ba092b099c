//! The screen of the address as it stands in the browser: its page drawn, its presses done.
//!
//! The way back from an animal leads to the list it was opened from, to its row there, which has the focus again. Who comes
//! from elsewhere begins anew, and the Watch always at its top: the most urgent stands there.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;
use std::time::Duration;

use yeanling_draw::{Around, Frame, Node};
use yeanling_pages::{
    self as pages, Action, Block, Draft, Request, Screen, act, enter, in_way, leave, page, standing,
};

use crate::browser::after_paint::after_paint;
use crate::browser::{dom, navigation};
use crate::farm::Farm;
use crate::route::Way;
use crate::words::{frame as words, rejections};
use leptos::prelude::*;

/// So many rows of a list fill the screen of a phone: they are drawn first, the others once they are seen.
const AT_ONCE: usize = 5;

/// How long what was pressed stays in its place after a hand did something.
const STILL_FOR: Duration = Duration::from_secs(8);

/// The screen that is shown, and what is on it but not in the book. Cheap to copy.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Shown {
    farm: Farm,
    screen: RwSignal<Screen>,
    from: RwSignal<(Screen, &'static str)>,
    draft: RwSignal<Draft>,
    /// What is kept of other screens.
    left: StoredValue<BTreeMap<Screen, Draft>>,
    /// Whether a press leads to the address that comes next.
    led: StoredValue<bool>,
}

impl Shown {
    /// Draws the screen of the address, and follows it.
    pub(crate) fn start(farm: Farm) {
        let screen = RwSignal::new(Screen::from_hash(&navigation::hash()));
        let (draft, left) = (RwSignal::new(Draft::default()), StoredValue::new(BTreeMap::new()));
        let (from, led) = (RwSignal::new((Screen::Watch, words::WATCH)), StoredValue::new(false));
        let shown = Self { farm, screen, from, draft, left, led };
        shown.enter(screen.get_untracked());
        navigation::on_move(move || shown.go_to(Screen::from_hash(&navigation::hash())));
        Effect::new(move |_| farm.show_count(words::NAME));
        shown.move_in_time();
        shown.keep();
        shown.draw();
    }

    /// The address has changed: by a press that did something first, or by a link or the phone's back button, which are taps
    /// of their own.
    fn go_to(self, to: Screen) {
        if !self.led.try_update_value(std::mem::take).unwrap_or_default() {
            self.farm.let_offer_go();
        }
        let from = self.screen.get_untracked();
        let back = from.is_of_one() && to != Screen::Watch && self.from.get_untracked().0 == to;
        self.change(from, to);
        if let Some(name) = from.way_back() {
            self.from.set((from, name));
        }
        self.enter(to);
        self.screen.set(to);
        self.farm.let_refusal_go();
        navigation::to_top();
        navigation::to_heading();
        if back {
            navigation::to_link(&from.hash());
        }
    }

    /// Lets what keeps its place for a hand at work go after a while. The offer to undo stays.
    fn move_in_time(self) {
        let farm = self.farm;
        Effect::new(move |_| {
            let still = farm.still_since();
            if still.is_some() {
                let move_on = move || {
                    if untrack(|| farm.still_since()) == still {
                        farm.move_on();
                    }
                };
                set_timeout(move_on, STILL_FOR);
            }
        });
    }

    /// Leaves one screen for another.
    fn change(self, from: Screen, to: Screen) {
        let mut draft = self.draft.get_untracked();
        let (farm, came) = (self.farm, self.from.get_untracked());
        let effects = untrack(|| farm.view(farm.peek_now(), came, |view| leave(from, view, &mut draft)));
        self.run(from, effects);
        self.left.update_value(|left| _ = left.insert(from, draft));
        let kept = self.left.try_update_value(|left| left.remove(&to)).flatten();
        self.draft.set(kept.unwrap_or_default());
    }

    /// Comes to a screen.
    fn enter(self, screen: Screen) {
        let before = self.draft.get_untracked();
        let mut draft = before.clone();
        let (farm, came) = (self.farm, self.from.get_untracked());
        let effects = untrack(|| farm.view(farm.peek_now(), came, |view| enter(screen, view, &mut draft)));
        if draft != before {
            self.draft.set(draft);
        }
        self.run(screen, effects);
    }

    /// Returns the refusal that is shown above the thumb; one on a sheet is shown there.
    fn refused(self) -> Option<yeanling_core::watch::Rejection> {
        self.draft.with(|draft| draft.refused.clone().filter(|_| draft.sheets.is_empty()))
    }

    /// Does what was pressed. The offer to undo stays until then.
    fn act(self, action: &Action) {
        if *action != Action::Phone(Request::Undo) {
            self.farm.let_offer_go();
        }
        self.act_on(self.screen.get_untracked(), action);
    }

    /// Does on a screen what was pressed there, or what was to come after a while.
    fn act_on(self, screen: Screen, action: &Action) {
        let here = screen == self.screen.get_untracked();
        let before = if here {
            self.draft.get_untracked()
        } else {
            self.left.with_value(|left| left.get(&screen).cloned()).unwrap_or_default()
        };
        let mut draft = before.clone();
        let (farm, came) = (self.farm, self.from.get_untracked());
        let effects =
            untrack(|| farm.view(farm.peek_now(), came, |view| act(action, screen, view, &mut draft)));
        // The disk first: what breaks while it is drawn is lost to no one.
        let rest = self.run(screen, effects);
        if draft != before {
            if here {
                self.draft.set(draft);
            } else {
                self.left.update_value(|left| _ = left.insert(screen, draft));
            }
        }
        for effect in rest {
            if let pages::Effect::Go(to) | pages::Effect::Replace(to) = effect {
                self.led.set_value(to != self.screen.get_untracked());
            }
            self.go(effect);
        }
    }

    /// Does what is left to the farm, and returns what leads elsewhere: that comes last.
    fn run(self, screen: Screen, effects: Vec<pages::Effect>) -> Vec<pages::Effect> {
        let mut rest = Vec::new();
        for effect in effects {
            match effect {
                pages::Effect::Note(notings) => _ = self.farm.note_together(notings),
                pages::Effect::LetLastGo => self.farm.let_last_go(),
                pages::Effect::After(wait, action) => {
                    set_timeout(move || self.act_on(screen, &action), wait);
                }
                pages::Effect::There(to, action) => self.act_on(to, &action),
                pages::Effect::Phone(request) => {
                    self.farm.ask(request, move |action| self.act_on(screen, &action));
                }
                pages::Effect::Go(_) | pages::Effect::Replace(_) | pages::Effect::Show(_) => {
                    rest.push(effect);
                }
            }
        }
        rest
    }

    fn go(self, effect: pages::Effect) {
        match effect {
            pages::Effect::Go(screen) => screen.go(),
            pages::Effect::Replace(screen) => screen.replace(),
            pages::Effect::Show(key) => dom::show(&key),
            pages::Effect::Note(_)
            | pages::Effect::LetLastGo
            | pages::Effect::After(..)
            | pages::Effect::There(..)
            | pages::Effect::Phone(_) => {}
        }
    }

    /// Does what is to be done as long as a screen is seen: the night's holds the phone awake and hears what is due.
    fn keep(self) {
        let Self { farm, screen, .. } = self;
        let stood: RefCell<bool> = RefCell::default();
        Effect::new(move |_| {
            let stands = screen.get() == Screen::Night;
            if stood.replace(stands) != stands {
                if stands { farm.begin_night() } else { farm.end_night() }
            }
            if stands {
                let now = farm.now();
                farm.with_duties(|_, duties| farm.update_alarm(duties, now));
            }
        });
    }

    /// Draws the screen, and keeps drawing what changes.
    fn draw(self) {
        let Self { farm, screen, from, draft, .. } = self;
        let made = Memo::new(move |_| {
            let screen = screen.get();
            let page =
                draft.with(|draft| farm.view(farm.now(), from.get(), |view| page(screen, view, draft)));
            (screen, page)
        });
        let above: Memo<Vec<Arc<Block>>> = Memo::new(move |_| {
            let screen = screen.get();
            farm.view(farm.now(), from.get(), |view| standing(view, screen))
        });
        let top = Memo::new(move |_| farm.top());
        let undo = Memo::new(move |_| {
            let last = farm.last();
            farm.with(|records| in_way(farm.way(), || pages::offer(&last, &records.book, &records.flock)))
        });
        let refused = Memo::new(move |_| {
            let rejection = farm.refused().or_else(|| self.refused())?;
            Some(in_way(farm.way(), || rejections::rejection(&rejection, farm.peek_now(), farm.system())))
        });
        let drawn = move || {
            made.with(|(screen, page)| {
                let (undo, refused) = (undo.get(), refused.get());
                let mut nodes: Vec<Node> = above.with(|standing| {
                    top.with(|top| {
                        let undo = undo.as_deref();
                        yeanling_draw::page(*screen, page, Around { top, standing, undo })
                    })
                });
                let frame = Frame { undo: undo.as_deref(), refused: refused.as_deref() };
                nodes.extend(yeanling_draw::frame(*screen, frame));
                (*screen, nodes)
            })
        };
        let stands = dom::stand(move |action| {
            if action == Action::Read {
                farm.let_refusal_go();
            }
            self.act(&action);
        });
        let last: RefCell<Option<Screen>> = RefCell::default();
        Effect::new(move |_| {
            let (screen, nodes) = drawn();
            let before = last.replace(Some(screen));
            let first = before != Some(screen);
            stands.borrow_mut().draw(nodes, if first { AT_ONCE } else { usize::MAX });
            if before.is_none() {
                dom::say_it_stands();
            }
            if first {
                let stands = Rc::clone(&stands);
                after_paint(move || stands.borrow_mut().draw(untrack(drawn).1, usize::MAX));
            }
        });
    }
}
