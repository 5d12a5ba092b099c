//! The screen of the address as it stands in the browser: its page drawn, its presses done.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;

use leptos::html;
use yeanling_draw::{Around, Patcher};
use yeanling_pages::{
    self as pages, Action, Block, Draft, Page, Screen, act, enter, is_made, leave, page, standing,
};

use crate::browser::dom::{self, Browser};
use crate::farm::Farm;
use crate::route::Way;
use crate::signals::after_paint;
use crate::signals::prelude::*;

/// So many rows of a list fill the screen of a phone: they are drawn first, the others once they are seen.
const AT_ONCE: usize = 5;

/// The screen that is shown, and what is on it but not in the book. Cheap to copy.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Shown {
    farm: Farm,
    screen: RwSignal<Screen>,
    from: RwSignal<(Screen, &'static str)>,
    draft: RwSignal<Draft>,
    /// What is kept of other screens.
    left: StoredValue<BTreeMap<Screen, Draft>>,
}

impl Shown {
    /// Begins with a screen.
    pub(crate) fn new(farm: Farm, screen: RwSignal<Screen>, from: RwSignal<(Screen, &'static str)>) -> Self {
        let (draft, left) = (RwSignal::new(Draft::default()), StoredValue::new(BTreeMap::new()));
        let shown = Self { farm, screen, from, draft, left };
        shown.enter(screen.get_untracked());
        shown
    }

    /// Leaves one screen for another.
    pub(crate) fn change(self, from: Screen, to: Screen) {
        let mut draft = self.draft.get_untracked();
        let (farm, came) = (self.farm, self.from.get_untracked());
        let effects = untrack(|| farm.view(farm.peek_now(), came, |view| leave(from, view, &mut draft)));
        self.run(from, effects);
        self.left.update_value(|left| _ = left.insert(from, draft));
        let kept = self.left.try_update_value(|left| left.remove(&to)).flatten();
        self.draft.set(kept.unwrap_or_default());
    }

    /// Comes to a screen.
    pub(crate) fn enter(self, screen: Screen) {
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
    pub(crate) fn refused(self) -> Option<yeanling_core::watch::Refusal> {
        self.draft.with(|draft| draft.refused.clone().filter(|_| draft.sheets.is_empty()))
    }

    /// Does what was pressed.
    pub(crate) fn act(self, action: &Action) {
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
            self.go(effect);
        }
    }

    /// Does what is left to the farm, and returns what leads elsewhere: that comes last.
    fn run(self, screen: Screen, effects: Vec<pages::Effect>) -> Vec<pages::Effect> {
        let mut rest = Vec::new();
        for effect in effects {
            match effect {
                pages::Effect::Note(notings) => self.farm.note_together(notings),
                pages::Effect::LetLastGo => self.farm.let_last_go(),
                pages::Effect::After(wait, action) => {
                    set_timeout(move || self.act_on(screen, &action), wait);
                }
                pages::Effect::There(to, action) => self.act_on(to, &action),
                pages::Effect::Phone(request) => {
                    self.farm.ask(request, move |action| self.act_on(screen, &action))
                }
                pages::Effect::Go(_) | pages::Effect::Replace(_) | pages::Effect::Show(_) => {
                    rest.push(effect)
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
                farm.with_duties(|_, duties| farm.hear(duties, now));
            }
        });
    }

    /// Draws the screen, and keeps drawing what changes.
    pub(crate) fn view(self) -> AnyView {
        let Self { farm, screen, from, draft, .. } = self;
        self.keep();
        let made = Memo::new(move |_| {
            let screen = screen.get();
            let page =
                draft.with(|draft| farm.view(farm.now(), from.get(), |view| page(screen, view, draft)));
            (screen, page)
        });
        let above: Memo<Vec<Arc<Block>>> = Memo::new(move |_| farm.view(farm.now(), from.get(), standing));
        let top = Memo::new(move |_| farm.top());
        let root = NodeRef::<html::Div>::new();
        let stands: RefCell<Option<dom::Standing>> = RefCell::default();
        let last: RefCell<Option<Screen>> = RefCell::default();
        Effect::new(move |_| {
            let Some(root) = root.get() else { return };
            let mut stands = stands.borrow_mut();
            let patcher = stands.get_or_insert_with(|| {
                let patcher = Rc::new(RefCell::new(Patcher::new(Browser::new(), root.clone().into())));
                dom::hear(&root, &patcher, move |action| self.act(&action));
                patcher
            });
            let (screen, nodes) = drawn(made, above, top);
            let first = last.replace(Some(screen)) != Some(screen);
            patcher.borrow_mut().draw(nodes, if first { AT_ONCE } else { usize::MAX });
            if first {
                let patcher = Rc::clone(patcher);
                after_paint(move || {
                    let (_, nodes) = untrack(|| drawn(made, above, top));
                    patcher.borrow_mut().draw(nodes, usize::MAX);
                });
            }
        });
        view! { <div class="screen" node_ref=root></div> }.into_any()
    }
}

/// Returns the screen that is to be seen, and what it looks like.
fn drawn(
    made: Memo<(Screen, Option<Page>)>,
    above: Memo<Vec<Arc<Block>>>,
    top: Memo<yeanling_pages::Top>,
) -> (Screen, Vec<yeanling_draw::Node>) {
    made.with(|(screen, page)| {
        let nodes = page.as_ref().map(|page| {
            above
                .with(|standing| top.with(|top| yeanling_draw::page(*screen, page, Around { top, standing })))
        });
        (*screen, nodes.unwrap_or_default())
    })
}

/// Says whether a screen is drawn here.
pub(crate) const fn shows(screen: Screen) -> bool {
    is_made(screen)
}
