//! The ten-point score: five signs of 0, 1 or 2 points, four without an oximeter, the scale always beside the score.

use yeanling_core::book::{Animal, Event, LambId, VigorScale};
use yeanling_core::reckon::ten_point::{Points, Scale, Score, Sign, Signs, score};
use yeanling_words::{lamb as words, why as reasons};

use super::parts::{choices, whose};
use super::vigor::{ask as ask_of, late};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage, why};
use crate::view::View;
use crate::{Action, Button, Effect, Reason};

/// The points that each place stands for; behind them, of breathing alone, that there is no oximeter.
const POINTS: [Points; 3] = [Points::Zero, Points::One, Points::Two];

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let blocks = Sign::ALL
        .into_iter()
        .fold(Blocks::new().text(words::TEN_POINT_SCALE), |blocks, sign| ask(blocks, fields, sign));
    let scored = scored(fields);
    let blocks = match &scored {
        None => blocks.remark(words::TEN_POINT_LEFT, []),
        Some(score) => {
            let points = reasons::points(score);
            blocks.remark(format!("*{points}*"), [why(&points, Reason::TenPoint(*score))])
        }
    };
    let save = Button::new("save", words::SAVE_SCORE, Action::Save).filled().off_if(scored.is_none());
    SheetPage::new(ask_of(view, lamb), late(view, lamb).then(blocks.button(save)))
        .whose(whose(view, Animal::Lamb(lamb)))
}

/// Asks for one sign.
fn ask(blocks: Blocks, fields: &Fields, sign: Sign) -> Blocks {
    let (name, looks) = reasons::sign(sign);
    let none = (sign == Sign::Breathing).then_some(words::NO_OXIMETER);
    let chosen = fields.chosen(key(sign));
    blocks.choices(key(sign), choices(key(sign), name, looks.into_iter().chain(none), chosen).labelled())
}

const fn key(sign: Sign) -> &'static str {
    match sign {
        Sign::Pulse => "vigor-pulse",
        Sign::Breathing => "vigor-breathing",
        Sign::Gums => "vigor-gums",
        Sign::Nose => "vigor-nose",
        Sign::Rump => "vigor-rump",
    }
}

/// Returns the score once every sign was seen.
fn scored(fields: &Fields) -> Option<Score> {
    let seen = |sign: Sign| fields.chosen(key(sign)).map(|place| POINTS.get(place).copied());
    Some(score(&Signs {
        pulse: seen(Sign::Pulse)??,
        breathing: seen(Sign::Breathing)?,
        gums: seen(Sign::Gums)??,
        nose: seen(Sign::Nose)??,
        rump: seen(Sign::Rump)??,
    }))
}

/// Saves the score.
pub(super) fn save(view: &View, draft: &mut Draft, lamb: LambId) -> Vec<Effect> {
    let Some(Score { points, scale, .. }) = scored(draft.top()) else { return Vec::new() };
    let scale = match scale {
        Scale::TenPoint => VigorScale::TenPoint,
        Scale::EightPointAdapted => VigorScale::EightPoint,
    };
    draft.answer(view, vec![view.noting(Event::VigorScored { lamb, scale, score: points })])
}
