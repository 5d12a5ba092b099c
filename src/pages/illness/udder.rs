//! The udder check after lambing: both halves with one press, or each with its own; and what follows on her page.

use yeanling_core::book::{Animal, Event, EweId, Illness};
use yeanling_core::flock::{Ewe, LITTER_APART, UdderSeen};
use yeanling_core::reckon::illness::udder::illness;
use yeanling_core::terms::UdderHalf;
use yeanling_words::illness::{self as words, udder};

use super::Does;
use crate::block::{Choice, Choices, NoticeKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::sheets::whose;
use crate::view::View;
use crate::{Action, Button, Effect, Screen};

const HALVES: [UdderHalf; 4] =
    [UdderHalf::Milks, UdderHalf::Dry, UdderHalf::HardOrHot, UdderHalf::ColdOrBlue];
const LEFT: &str = "udder-left";
const RIGHT: &str = "udder-right";

/// Returns the sheet: it closes with one press where both are well, else once both halves were answered.
pub(crate) fn sheet(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let chosen = |key| fields.chosen(key).and_then(|place| HALVES.get(place).copied());
    let (left, right) = (chosen(LEFT), chosen(RIGHT));
    let half = |key: &'static str, label, of: &dyn Fn(UdderHalf) -> Option<(UdderHalf, UdderHalf)>| {
        let option = |(place, half): (usize, &UdderHalf)| {
            let does = of(*half)
                .map_or(Action::Choose(key.into(), place), |(left, right)| checked(ewe, left, right));
            Choice::new(words::half(*half), does)
        };
        Choices::new(label, HALVES.iter().enumerate().map(option).collect(), fields.chosen(key)).labelled()
    };
    let lefts = half(LEFT, udder::LEFT, &|one| right.map(|right| (one, right)));
    let rights = half(RIGHT, udder::RIGHT, &|one| left.map(|left| (left, one)));
    let both = Button::new("udder-both", udder::BOTH, checked(ewe, UdderHalf::Milks, UdderHalf::Milks));
    let blocks = Blocks::new()
        .text(udder::DRAW)
        .text(udder::FEEL)
        .choices(LEFT, lefts)
        .choices(RIGHT, rights)
        .small(udder::DRY_NOTE)
        .small(udder::EXTRA_TEAT)
        // What saves stands last on a sheet, under the thumb.
        .button(both.big().filled());
    SheetPage::new(udder::TITLE, blocks).whose(whose(view, Animal::Ewe(ewe)))
}

fn checked(ewe: EweId, left: UdderHalf, right: UdderHalf) -> Action {
    Action::Does(crate::Does::Illness(Does::Udder(ewe, left, right)))
}

/// Notes a check, and leads on: to what ails her, or to what follows on her page.
pub(super) fn check(
    view: &View,
    draft: &mut Draft,
    ewe: EweId,
    (left, right): (UdderHalf, UdderHalf),
) -> Vec<Effect> {
    let event = Event::Illness(Illness::UdderChecked { ewe, left, right });
    let mut effects = draft.answer(view, vec![view.noting(event)]);
    if effects.is_empty() {
        return effects;
    }
    if illness(left).or(illness(right)).is_some() {
        effects.push(Effect::Go(Screen::IllEwe(ewe)));
    } else if left == UdderHalf::Dry || right == UdderHalf::Dry {
        effects.push(Effect::Go(Screen::Ewe(ewe)));
    }
    effects
}

/// Returns what follows from her last check, while it is of these days: for her lambs, whatever ails herself.
pub(crate) fn follows(view: &View, ewe: &Ewe) -> Blocks {
    let Some(seen) = ewe.udder.last().filter(|seen| view.now.since(seen.at) < LITTER_APART) else {
        return Blocks::new();
    };
    let (title, steps) = match (UdderSeen::is_dry(seen), UdderSeen::is_one_half(seen)) {
        (true, _) => (udder::NO_MILK, udder::NO_MILK_STEPS),
        (false, true) => (udder::ONE_HALF, udder::ONE_HALF_STEPS),
        (false, false) => return Blocks::new(),
    };
    Blocks::new().section("udder", title, Blocks::new().notice("udder-steps", NoticeKind::Warn, steps, []))
}
