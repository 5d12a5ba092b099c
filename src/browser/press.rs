//! A glove presses twice, and a finger is slower than a screen: what has moved takes no press where it now stands until
//! it has stood there for a while.
//!
//! A press is aimed at what was seen. So what stands on the glass is remembered just before it can change, by a press or
//! by the ground, and looked at again once the change is painted. Whatever then stands where something else could be
//! pressed, or under the finger that pressed last, is barred for a moment: `aria-disabled` says so, and a press on it goes
//! nowhere. Nothing is barred for the keyboard: the focus does not move under anyone's finger.
//!
//! A press within 48 px and 1.2 s counts only on what already stood there, also on the next screen
//! (`browser/press.rs`). In a journey tap the button or link itself: what is barred is `aria-disabled`, and waited
//! for.

use std::cell::RefCell;
use std::time::Duration;

use leptos::prelude::{document, request_animation_frame, set_timeout};
use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{Element, MouseEvent, MutationObserver, MutationObserverInit, Node};

use super::{navigation, window};

/// What has moved takes no press for so long, in milliseconds (ours): a hand that meant the old place has let go by then.
const STANDS_FOR: f64 = 1200.0;

/// A second press so near to the first, in pixels, comes from the same finger (ours: the least size of a target).
const NEAR: f64 = 48.0;

/// What has moved no further than this, in pixels, stands where it stood (ours).
const MOVED: f64 = 8.0;

/// What lies over another by less than this, in pixels, does not stand in its place.
const OVER: f64 = 4.0;

/// What the ground changes is drawn by so long after it, in milliseconds: the end of a long list comes a frame later.
const DRAWN_BY: f64 = 250.0;

/// What can be pressed by a finger that meant something else, to some effect. To come into a field, or to unfold
/// something, harms nobody.
const PRESSED: &str = "button, a[href]";

/// A place on the glass, in pixels from its left and upper edge.
#[derive(Clone, Copy, Debug)]
struct Place {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
}

impl Place {
    fn of(element: &Element) -> Self {
        let place = element.get_bounding_client_rect();
        let (left, top) = (place.x(), place.y());
        Self { left, top, right: left + place.width(), bottom: top + place.height() }
    }

    fn is_empty(self) -> bool {
        self.right <= self.left && self.bottom <= self.top
    }

    /// Says whether it lies over another by more than so much; less than nothing allows for a gap.
    fn is_over(self, other: Self, by: f64) -> bool {
        let across = self.right.min(other.right) - self.left.max(other.left);
        let down = self.bottom.min(other.bottom) - self.top.max(other.top);
        across > by && down > by
    }

    /// Says whether another stands in the same place, once the page was scrolled by so much.
    fn is_at(self, other: Self, scrolled: f64) -> bool {
        let near = |one: f64, other: f64| (one - other).abs() <= MOVED;
        near(self.left, other.left)
            && near(self.right, other.right)
            && near(self.top + scrolled, other.top)
            && near(self.bottom + scrolled, other.bottom)
    }

    /// Says whether a finger at a point may come upon it.
    fn is_near(self, (x, y): (f64, f64)) -> bool {
        let point = Self { left: x, top: y, right: x, bottom: y };
        self.is_over(point, -NEAR)
    }
}

/// Something to be pressed, and where it stood.
#[derive(Clone, Debug)]
struct Stood {
    element: Element,
    place: Place,
}

/// What stood on the glass before a change.
#[derive(Clone, Debug)]
struct Before {
    /// The screen, by its address.
    screen: String,
    /// How far that was scrolled which the hand can reach.
    scrolled: f64,
    /// What the hand can reach: the page, or the sheet over it.
    within: Option<Element>,
    stood: Vec<Stood>,
}

/// A press, what it was on, and whether that was down.
#[derive(Clone, Debug)]
struct Press {
    at: (f64, f64),
    on: Option<Element>,
    down: Option<String>,
}

#[derive(Default)]
struct Guard {
    /// What stood just now, as long as nothing can have changed since: until the next frame.
    now: Option<Before>,
    /// The last press, what stood then, and until when it counts; without one its change is not painted yet.
    press: Option<(Press, Before, Option<f64>)>,
    /// What stood before the ground changed last, and until when that is drawn; without one nothing of it is painted yet.
    ground: Option<(Before, Option<f64>)>,
    /// What takes no press, and until when.
    barred: Vec<(Element, f64)>,
    /// Watches for what is drawn, as long as one of the two counts.
    watch: Option<MutationObserver>,
    watches: bool,
    /// Whether a look is asked for.
    awaited: bool,
}

thread_local! {
    static GUARD: RefCell<Guard> = RefCell::default();
}

/// Guards every press from now on.
pub fn guard() {
    let listener = Closure::<dyn Fn(MouseEvent)>::new(pressed);
    // Before all others: who is barred must not hear of the press.
    let call = listener.as_ref().unchecked_ref();
    let _ = window().add_event_listener_with_callback_and_bool("click", call, true);
    listener.forget();
    let drawn = Closure::<dyn Fn()>::new(await_look);
    let watch = MutationObserver::new(drawn.as_ref().unchecked_ref()).ok();
    drawn.forget();
    GUARD.with_borrow_mut(|guard| guard.watch = watch);
}

/// Remembers what stands on the glass, since the ground is about to change: by an entry, by another tab, by the clock.
pub fn ground_moves() {
    // Of several changes in one frame the first counts: what stood before it is what was seen.
    if GUARD.with_borrow(|guard| guard.ground.as_ref().is_some_and(|(_, drawn)| drawn.is_none())) {
        return;
    }
    let before = GUARD.with_borrow_mut(|guard| guard.now.clone()).unwrap_or_else(Before::now);
    GUARD.with_borrow_mut(|guard| guard.ground = Some((before, None)));
    watch();
}

/// Lets a press through, or not.
fn pressed(event: MouseEvent) {
    // Only a press without a finger counts no clicks.
    if event.detail() == 0 {
        return;
    }
    let Some(target) = event.target().and_then(|target| target.dyn_into::<Element>().ok()) else { return };
    // What was drawn and not yet looked at. Where nothing was, a finger may have scrolled, which bars nothing.
    if GUARD.with_borrow(|guard| guard.awaited) {
        look();
    }
    let at = (f64::from(event.client_x()), f64::from(event.client_y()));
    let on = target.closest(PRESSED).ok().flatten();
    let when = event.time_stamp();
    if GUARD.with_borrow(|guard| guard.bars(on.as_ref(), &target, at, when)) {
        event.prevent_default();
        event.stop_immediate_propagation();
        return;
    }
    let down = on.as_ref().and_then(is_down);
    let before = Before::now();
    GUARD.with_borrow_mut(|guard| {
        guard.now = Some(before.clone());
        guard.press = Some((Press { at, on, down }, before, None));
    });
    watch();
}

fn is_down(element: &Element) -> Option<String> {
    element.get_attribute("aria-pressed")
}

impl Guard {
    /// Says whether a press goes nowhere.
    fn bars(&self, on: Option<&Element>, target: &Element, at: (f64, f64), when: f64) -> bool {
        let Some(on) = on else {
            // A sheet that came up under the finger is not closed by it, as by a press beside it.
            return self.press.as_ref().is_some_and(|(press, before, until)| {
                let point = Place { left: at.0, top: at.1, right: at.0, bottom: at.1 };
                let sheet = within().filter(|sheet| sheet.contains(Some(target.unchecked_ref::<Node>())));
                until.is_none_or(|until| when < until)
                    && point.is_near(press.at)
                    && sheet.is_some()
                    && sheet != before.within
            });
        };
        self.barred.iter().any(|(barred, until)| when < *until && barred == on)
    }

    /// Says whether what stands here now is under the finger that pressed last, and was not.
    fn came_under_the_finger(&self, one: &Stood) -> bool {
        self.press.as_ref().is_some_and(|(press, before, _)| {
            let turned = press.on.as_ref() == Some(&one.element) && press.down != is_down(&one.element);
            one.place.is_near(press.at) && (turned || !before.had(one))
        })
    }

    /// Says whether what stands here now could be pressed by a hand that meant what stood here before the ground changed.
    fn took_a_place(&self, one: &Stood, screen: &str) -> bool {
        self.ground.as_ref().is_some_and(|(before, _)| {
            // What was only drawn anew, with the same words in the same place, is what was seen there.
            let drawn_anew = |other: &Stood| {
                one.place.is_at(other.place, 0.0) && name(&other.element) == name(&one.element)
            };
            let other = |other: &Stood| {
                one.place.is_over(other.place, OVER) && other.element != one.element && !drawn_anew(other)
            };
            before.screen == screen && before.stood.iter().any(other) && !before.had(one)
        })
    }

    /// Lets go what has stood or counted long enough, and says whether a press or a change of the ground still counts.
    fn goes_on(&mut self, when: f64) -> bool {
        let is_over = |until: &Option<f64>| until.is_some_and(|until| when >= until);
        self.press.take_if(|(.., until)| is_over(until));
        self.ground.take_if(|(_, drawn)| is_over(drawn));
        self.barred.retain(|(element, until)| {
            if when >= *until {
                let _ = element.remove_attribute("aria-disabled");
            }
            when < *until
        });
        let goes_on = self.press.is_some() || self.ground.is_some();
        if !goes_on && let Some(watch) = &self.watch {
            watch.disconnect();
            self.watches = false;
        }
        goes_on
    }
}

impl Before {
    fn now() -> Self {
        let within = within();
        let (scrolled, stood) = (scrolled(within.as_ref()), standing(within.as_ref()));
        Self { screen: navigation::hash(), scrolled, within, stood }
    }

    /// Takes in what came since and misleads nobody.
    fn learn(&mut self, mut one: Stood) {
        if !self.had(&one) {
            let since = scrolled(self.within.as_ref()) - self.scrolled;
            one.place.top += since;
            one.place.bottom += since;
            self.stood.push(one);
        }
    }

    /// Says whether this stood in this place already; what a finger scrolled stands where it stood.
    fn had(&self, one: &Stood) -> bool {
        let since = scrolled(self.within.as_ref()) - self.scrolled;
        let here = |other: &&Stood| one.place.is_at(other.place, 0.0) || one.place.is_at(other.place, since);
        self.stood.iter().filter(here).any(|other| other.element == one.element)
    }
}

fn name(element: &Element) -> Option<String> {
    element.get_attribute("aria-label").or_else(|| element.text_content())
}

/// Looks once the next frame is drawn, and again after all that is drawn in the moments to come.
fn watch() {
    GUARD.with_borrow_mut(|guard| {
        if guard.watches {
            return;
        }
        let all = MutationObserverInit::new();
        all.set_subtree(true);
        all.set_child_list(true);
        all.set_attributes(true);
        if let (Some(watch), Some(body)) = (&guard.watch, document().body()) {
            guard.watches = watch.observe_with_options(&body, &all).is_ok();
        }
    });
    await_look();
}

/// Looks after the next frame: its layout is worked out by then, and what changed is seen no later for the look.
fn await_look() {
    if GUARD.with_borrow_mut(|guard| std::mem::replace(&mut guard.awaited, true)) {
        return;
    }
    let painted = || set_timeout(look, Duration::ZERO);
    if document().hidden() {
        painted();
    } else {
        request_animation_frame(painted);
    }
}

/// Looks at what stands on the glass now, and bars what misleads.
fn look() {
    let when = now();
    let goes_on = GUARD.with_borrow_mut(|guard| {
        guard.awaited = false;
        guard.now = None;
        guard.goes_on(when)
    });
    if !goes_on {
        return;
    }
    let screen = navigation::hash();
    let until = when + STANDS_FOR;
    let stood = standing(within().as_ref());
    GUARD.with_borrow_mut(|guard| {
        for one in stood {
            if guard.came_under_the_finger(&one) || guard.took_a_place(&one, &screen) {
                if !guard.barred.iter().any(|(barred, _)| *barred == one.element) {
                    let _ = one.element.set_attribute("aria-disabled", "true");
                    guard.barred.push((one.element, until));
                }
            } else if let Some((_, before, _)) = &mut guard.press {
                // Where it came to is not under the finger; should a finger scroll it there, that is meant.
                before.learn(one);
            }
        }
        if let Some((.., counts)) = &mut guard.press {
            counts.get_or_insert(until);
        }
        if let Some((_, drawn)) = &mut guard.ground {
            drawn.get_or_insert(when + DRAWN_BY);
        }
    });
    let let_go = || _ = GUARD.with_borrow_mut(|guard| guard.goes_on(now()));
    set_timeout(let_go, Duration::from_millis(1210));
}

/// Returns the sheet that lies over the page, if one does.
fn within() -> Option<Element> {
    let sheets = document().query_selector_all("dialog[open]").ok()?;
    sheets.item(sheets.length().checked_sub(1)?)?.dyn_into().ok()
}

/// Returns all that can be pressed and is on the glass.
fn standing(within: Option<&Element>) -> Vec<Stood> {
    let mut stood = Vec::new();
    let document = document();
    let (Some(body), Some(page)) = (document.body(), document.document_element()) else { return stood };
    let glass = Place {
        left: 0.0,
        top: 0.0,
        right: f64::from(page.client_width()),
        bottom: f64::from(page.client_height()),
    };
    inside(within.unwrap_or(&body), glass, &mut stood);
    stood
}

/// Looks through what stands inside an element. What lies off the glass is passed over whole: its layout may be put off,
/// and to ask for places in it would have it worked out. Each place costs a look, so no more are asked for than needed.
fn inside(element: &Element, glass: Place, stood: &mut Vec<Stood>) {
    let mut next = element.first_element_child();
    while let Some(one) = next {
        next = one.next_element_sibling();
        match one.local_name().as_str() {
            // Nothing to press is in these.
            "svg" | "dialog" | "span" | "b" | "small" | "h1" | "h2" | "h3" | "input" | "label" | "output" => {
            }
            // What is folded away has places too, where no one sees it.
            "details" if !one.has_attribute("open") => {}
            "li" => {
                let place = Place::of(&one);
                if place.top >= glass.bottom {
                    // So do all that follow.
                    return;
                }
                if place.is_over(glass, 0.0) {
                    on_item(&one, glass, stood);
                }
            }
            "a" | "button" => take(one, glass, stood),
            _ => {
                let place = Place::of(&one);
                if (place.is_empty() || place.is_over(glass, 0.0)) && !one.has_attribute("hidden") {
                    inside(&one, glass, stood);
                }
            }
        }
    }
}

/// Looks through an item of a list, which is small: all that can be pressed on it is found at once.
fn on_item(item: &Element, glass: Place, stood: &mut Vec<Stood>) {
    if let Ok(Some(_)) = item.query_selector("details:not([open])") {
        return inside(item, glass, stood);
    }
    let Ok(found) = item.query_selector_all(PRESSED) else { return };
    for at in 0..found.length() {
        if let Some(one) = found.item(at).and_then(|one| one.dyn_into().ok()) {
            take(one, glass, stood);
        }
    }
}

fn take(element: Element, glass: Place, stood: &mut Vec<Stood>) {
    let place = Place::of(&element);
    if place.is_over(glass, 0.0) {
        stood.push(Stood { element, place });
    }
}

/// Returns how far what the hand can reach was scrolled: the page, or the sheet over it.
fn scrolled(within: Option<&Element>) -> f64 {
    match within {
        Some(sheet) => f64::from(sheet.scroll_top()),
        None => window().scroll_y().unwrap_or_default(),
    }
}

fn now() -> f64 {
    window().performance().map(|performance| performance.now()).unwrap_or_default()
}
