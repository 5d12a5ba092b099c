//! A glove presses twice, and a finger is slower than a screen: what has moved takes no press where it now stands until
//! it has stood there for a while.
//!
//! A press is aimed at what was seen. So what stands on the glass is remembered just before it can change, by a press or
//! by the ground, and looked at again once the change is painted. Whatever then stands where something else could be
//! pressed, or under the finger that pressed last, is barred for a moment: `aria-disabled` says so, and a press on it goes
//! nowhere. Nothing is barred for the keyboard: the focus does not move under anyone's finger.

use std::cell::RefCell;
use std::time::Duration;

use leptos::prelude::{document, request_animation_frame, set_timeout};
use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{Element, MouseEvent, Node};

use super::{place, window};

/// What has moved takes no press for so long, in milliseconds (ours): a hand that meant the old place has let go by then.
const STANDS_FOR: f64 = 1200.0;

/// A second press so near to the first, in pixels, comes from the same finger (ours: the least size of a target).
const NEAR: f64 = 48.0;

/// What has moved no further than this, in pixels, stands where it stood (ours).
const MOVED: f64 = 8.0;

/// What lies over another by less than this, in pixels, does not stand in its place.
const OVER: f64 = 4.0;

/// What comes later than the first frame, as the end of a long list does, is there by then.
const LATER: Duration = Duration::from_millis(100);

/// What can be pressed by a finger that meant something else, to some effect. To come into a field harms nobody.
const PRESSED: &str = "button, a[href], summary";

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
    /// How far the page was scrolled.
    scrolled: f64,
    /// What the hand can reach: the page, or the sheet over it.
    within: Option<Element>,
    stood: Vec<Stood>,
    /// Where a press made the change, on what, and whether that was down.
    press: Option<Pressed>,
    /// Whether the ground changed, and not only what is shown of it.
    ground: bool,
}

/// A press, and what it was on.
#[derive(Clone, Debug)]
struct Pressed {
    at: (f64, f64),
    on: Option<Element>,
    down: Option<String>,
}

#[derive(Default)]
struct Guard {
    /// What stood before a change that is not looked at yet, and how often such a look was asked for.
    before: Option<Before>,
    looks: u32,
    /// The last press and what stood there then, until this instant; without one its change is not painted yet.
    last: Option<(Before, Option<f64>)>,
    /// What takes no press, and until when.
    barred: Vec<(Element, f64)>,
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
}

/// Remembers what stands on the glass, since the ground is about to change: by an entry, by another tab, by the clock.
pub fn ground_moves() {
    let fresh = GUARD.with_borrow_mut(|guard| match &mut guard.before {
        Some(before) => {
            before.ground = true;
            false
        }
        None => true,
    });
    if fresh {
        remember(None, true);
    }
}

/// Lets a press through, or not.
fn pressed(event: MouseEvent) {
    // Only a press without a finger counts no clicks.
    if event.detail() == 0 {
        return;
    }
    let Some(target) = event.target().and_then(|target| target.dyn_into::<Element>().ok()) else { return };
    look();
    let at = (f64::from(event.client_x()), f64::from(event.client_y()));
    let on = target.closest(PRESSED).ok().flatten();
    let now = event.time_stamp();
    if GUARD.with_borrow(|guard| guard.bars(on.as_ref(), &target, at, now)) {
        event.prevent_default();
        event.stop_immediate_propagation();
        return;
    }
    let down = on.as_ref().and_then(is_down);
    GUARD.with_borrow_mut(|guard| guard.before = None);
    remember(Some(Pressed { at, on, down }), false);
}

fn is_down(element: &Element) -> Option<String> {
    element.get_attribute("aria-pressed")
}

impl Guard {
    /// Says whether a press goes nowhere: what it is on is barred, or came under the finger since it pressed last.
    fn bars(&self, on: Option<&Element>, target: &Element, at: (f64, f64), now: f64) -> bool {
        let same_finger = |before: &Before| {
            before.press.as_ref().is_some_and(|press| {
                (press.at.0 - at.0).abs() < NEAR && (press.at.1 - at.1).abs() < NEAR
            })
        };
        let last = self.last.as_ref().filter(|(_, until)| until.is_none_or(|until| now < until));
        let last = last.map(|(before, _)| before).filter(|before| same_finger(before));
        match on {
            Some(on) => {
                self.barred.iter().any(|(barred, until)| now < *until && barred == on)
                    || last.is_some_and(|before| !before.had(on, Place::of(on)))
            }
            // A sheet that came up under the finger is not closed by it, as a press beside it does.
            None => last.is_some_and(|before| within().is_some_and(|sheet| {
                sheet.contains(Some(target.unchecked_ref::<Node>())) && before.within.as_ref() != Some(&sheet)
            })),
        }
    }
}

impl Before {
    /// Says whether this stood in this place already; what a finger scrolled stands where it stood.
    fn had(&self, element: &Element, place: Place) -> bool {
        let since = scrolled() - self.scrolled;
        let here = |one: &&Stood| place.is_at(one.place, 0.0) || place.is_at(one.place, since);
        let turned = self.press.as_ref().is_some_and(|press| {
            press.on.as_ref() == Some(element) && press.down != is_down(element)
        });
        !turned && self.stood.iter().filter(here).any(|one| one.element == *element)
    }

    /// Says whether what stands here now could be pressed by a hand that meant something else.
    fn misleads(&self, element: &Element, place: Place, same_screen: bool) -> bool {
        if self.had(element, place) {
            return false;
        }
        if self.press.as_ref().is_some_and(|press| place.is_near(press.at)) {
            return true;
        }
        // What was only drawn anew, with the same words in the same place, is what was seen there.
        let drawn_anew = |one: &Stood| place.is_at(one.place, 0.0) && name(&one.element) == name(element);
        let other = |one: &&Stood| place.is_over(one.place, OVER) && one.element != *element;
        self.ground
            && same_screen
            && self.stood.iter().any(|one| other(&one) && !drawn_anew(one))
    }
}

fn name(element: &Element) -> Option<String> {
    element.get_attribute("aria-label").or_else(|| element.text_content())
}

/// Remembers what stands on the glass, and looks at it again once the change is painted.
fn remember(press: Option<Pressed>, ground: bool) {
    let within = within();
    let before = Before {
        screen: place::hash(),
        scrolled: scrolled(),
        stood: standing(within.as_ref()),
        within,
        press,
        ground,
    };
    let look_is = GUARD.with_borrow_mut(|guard| {
        if before.press.is_some() {
            guard.last = Some((before.clone(), None));
        }
        guard.before = Some(before);
        guard.looks += 1;
        guard.looks
    });
    let is_awaited = move || GUARD.with_borrow(|guard| guard.looks == look_is && guard.before.is_some());
    let first = move || {
        if is_awaited() {
            look();
        }
    };
    let last = move || {
        if is_awaited() {
            look();
            GUARD.with_borrow_mut(|guard| guard.before = None);
        }
    };
    // After the frame: its layout is worked out by then, and the change is seen no later for the look.
    let painted = move || {
        set_timeout(first, Duration::ZERO);
        set_timeout(last, LATER);
    };
    if document().hidden() {
        set_timeout(painted, Duration::ZERO);
    } else {
        request_animation_frame(painted);
    }
}

/// Looks at what stands on the glass now, and bars what misleads.
fn look() {
    let Some(before) = GUARD.with_borrow(|guard| guard.before.clone()) else { return };
    let same_screen = before.screen == place::hash();
    let until = now() + STANDS_FOR;
    let misleading = standing(within().as_ref())
        .into_iter()
        .filter(|one| before.misleads(&one.element, one.place, same_screen))
        .map(|one| one.element);
    GUARD.with_borrow_mut(|guard| {
        if let Some((_, last_until)) = &mut guard.last {
            last_until.get_or_insert(until);
        }
        for element in misleading {
            if !guard.barred.iter().any(|(barred, _)| *barred == element) {
                let _ = element.set_attribute("aria-disabled", "true");
                guard.barred.push((element, until));
            }
        }
    });
    set_timeout(let_go, Duration::from_millis(1210));
}

/// Lets those go that have stood long enough.
fn let_go() {
    let now = now();
    GUARD.with_borrow_mut(|guard| {
        guard.barred.retain(|(element, until)| {
            if now >= *until {
                let _ = element.remove_attribute("aria-disabled");
            }
            now < *until
        });
    });
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
/// and to ask for places in it would have it worked out.
fn inside(element: &Element, glass: Place, stood: &mut Vec<Stood>) {
    let mut next = element.first_element_child();
    while let Some(one) = next {
        next = one.next_element_sibling();
        let place = Place::of(&one);
        if !place.is_empty() && !place.is_over(glass, 0.0) {
            continue;
        }
        match one.local_name().as_str() {
            "svg" | "dialog" => {}
            "a" | "button" | "summary" => {
                if !place.is_empty() {
                    stood.push(Stood { element: one, place });
                }
            }
            // What is folded away has places too, where no one sees it.
            "details" if !one.has_attribute("open") => {
                let summary = one.query_selector("summary").ok().flatten();
                stood.extend(summary.map(|element| Stood { place: Place::of(&element), element }));
            }
            _ if one.has_attribute("hidden") => {}
            _ => inside(&one, glass, stood),
        }
    }
}

fn scrolled() -> f64 {
    window().scroll_y().unwrap_or_default()
}

fn now() -> f64 {
    window().performance().map(|performance| performance.now()).unwrap_or_default()
}
